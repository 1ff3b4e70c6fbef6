package rule

import (
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Message is a text with figures in it: "Salt is {dough.salt_pct} of the flour."
type Message struct {
	pieces []piece
}

type piece struct {
	text    string
	expr    *expr.Expr // a figure instead of the text
	unit    string
	written string
}

// message reads and checks a text with {figures}. A figure is a fact, a limit or an expression.
// Facts and limits are printed with their unit.
func message(r *reading.Reader, e hclsyntax.Expression, n *expr.Names, what string) *Message {
	text, offsets, ok := source.DecodeString(r.File, e)
	if !ok {
		if _, _, isText := r.Text(e, what); isText {
			r.Fault(r.Place(e.Range()), "%s must be a plain text", what)
		}
		return nil
	}
	if fault := textFault(what, text); fault != "" {
		r.Fault(r.Place(e.Range()), "%s", fault)
		return nil
	}
	runes := []rune(text)
	m := &Message{}
	figures := 0
	from := 0
	for i := 0; i < len(runes); i++ {
		switch runes[i] {
		case '}':
			r.Fault(place(r, offsets, i, i+1), "%s: this } closes nothing; a figure stands in { }",
				what)
			return nil
		case '{':
			end := i + 1
			for end < len(runes) && runes[end] != '}' && runes[end] != '{' {
				end++
			}
			if end == len(runes) || runes[end] == '{' {
				r.Fault(place(r, offsets, i, i+1),
					"%s: this { is never closed; a figure stands in { }", what)
				return nil
			}
			if figures++; figures > MaxFigures {
				r.Fault(place(r, offsets, i, end+1),
					"%s holds more than %d figures in { }; split the rule", what, MaxFigures)
				return nil
			}
			m.add(piece{text: string(runes[from:i])})
			x := expr.ParseText(r, string(runes[i+1:end]), offsets[i+1:end+1], n,
				"a figure in "+what)
			if x == nil {
				return nil
			}
			m.add(piece{expr: x, unit: unit(x, n.Limits), written: string(runes[i+1 : end])})
			from, i = end+1, end
		}
	}
	m.add(piece{text: string(runes[from:])})
	return m
}

func place(r *reading.Reader, offsets []int, from, to int) source.Place {
	return source.Place{File: r.File, Start: source.Offset(offsets, from),
		End: source.Offset(offsets, to)}
}

func (m *Message) add(p piece) {
	if p.expr != nil || p.text != "" {
		m.pieces = append(m.pieces, p)
	}
}

// unit is the unit of an expression that is one fact or limit; a computed figure has none.
func unit(x *expr.Expr, limits []expr.Limit) string {
	i, single := x.Single()
	if !single {
		return ""
	}
	r := &x.Reads()[i]
	if r.Fact == nil {
		return limits[r.Limit].Unit()
	}
	return r.Fact.Unit
}

// sentences writes a message. A sentence with a figure that nobody knows is left out, but for the
// first: that one says what is wrong, and the figure's name stands there for it.
type sentences struct {
	strings.Builder
	from    int // where the sentence at hand begins
	unknown bool
}

// text adds words of the message, in which sentences may end.
func (s *sentences) text(words string) {
	for {
		end := strings.Index(words, ". ")
		if end < 0 {
			s.WriteString(words)
			return
		}
		s.WriteString(words[:end+2])
		s.end()
		words = words[end+2:]
	}
}

// end ends the sentence at hand, and takes it out where it holds an unknown figure.
func (s *sentences) end() {
	if s.unknown && s.from > 0 {
		kept := s.Builder.String()[:s.from]
		s.Reset()
		s.WriteString(kept)
	}
	s.from, s.unknown = s.Len(), false
}

// nameless stands for an unknown figure in a sentence, by its unit.
var nameless = map[string]string{
	"C": "an unknown temperature", "min": "an unknown time", "h": "an unknown time",
	"days": "an unknown time", "g": "an unknown weight", "%": "an unknown share",
}

// unknownFigure notes an unknown figure, and names it.
func (s *sentences) unknownFigure(unit string) {
	s.unknown = true
	words := nameless[unit]
	if words == "" {
		words = "an unknown amount"
	}
	s.WriteString(words)
}

// say prints a message on a subject.
func (j *Judge) say(m *Message, subject facts.Subject, limits []expr.Limit) string {
	if len(m.pieces) == 1 && m.pieces[0].expr == nil {
		return m.pieces[0].text // the same for every formula: one copy serves them all
	}
	var b sentences
	for _, p := range m.pieces {
		if p.expr == nil {
			b.text(p.text)
			continue
		}
		if i, single := p.expr.Single(); single && p.expr.Reads()[i].Fact != nil {
			j.judge.Set(p.expr, subject, limits)
			f := p.expr.Reads()[i].Fact
			if shown := Show(f, j.judge.Value(i)); shown == noFigure {
				b.unknownFigure(f.Unit)
			} else {
				b.WriteString(shown)
			}
			continue
		}
		x := j.judge.Result(p.expr, subject, limits)
		switch p.expr.Type() {
		case facts.Number:
			if shown := quantity.FormatInterval(x.Interval(), p.unit); shown == noFigure {
				b.unknownFigure(p.unit)
			} else {
				b.WriteString(shown)
			}
		case facts.YesNo:
			b.WriteString([...]string{figure.No: "no", figure.Yes: "yes",
				figure.Open: "unknown"}[x.Truth()])
		default:
			b.text(words(x.Words())) // a text of the message may end in a sentence
		}
	}
	b.end()
	return strings.TrimRight(b.String(), " ")
}
