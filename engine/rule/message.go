package rule

import (
	"math"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"forebake/engine/rule/show"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Message is a text with figures in it: "Salt is {dough.salt_pct} of
// the flour." A clause in brackets, "[, about {x}]", is left out
// where its figure is unknown. "[{x}|too much]" has other words for
// that case.
type Message struct {
	pieces func() []piece
}

type piece struct {
	text    string
	expr    *expr.Expr // a figure instead of the text
	unit    string
	written string
	clause  clauseMark // a bracket instead of the text
}

// clauseMark is what a bracket of a message does.
type clauseMark int

const (
	noMark clauseMark = iota
	clauseBegins
	clauseElse
	clauseEnds
)

// clauseMarks are the signs of a clause.
var clauseMarks = map[rune]clauseMark{'[': clauseBegins, '|': clauseElse, ']': clauseEnds}

// clauseEnd finds the end of a clause that begins at a bracket. ok is
// false for a bracket that holds no figure or does not end.
func clauseEnd(runes []rune, from int) (end int, ok bool) {
	depth, figures := 0, 0
	for i := from; i < len(runes); i++ {
		switch {
		case runes[i] == '{':
			depth++
			figures++
		case runes[i] == '}':
			depth--
		case runes[i] == ']' && depth == 0:
			return i, figures > 0
		}
	}
	return 0, false
}

// message reads and checks a text with {figures}: facts, limits or
// expressions. Facts and limits print with their unit. Of a shipped
// pack it is read when it is first printed, which most are not. There
// is none for a key that is not there.
func message(r *reading.Reader, attr hclsyntax.Attributes, n *expr.Names, what string,
	o Options) *Message {
	a := attr[what]
	if a == nil {
		return nil
	}
	m := &Message{sync.OnceValue(func() []piece { return readPieces(r, a.Expr, n, what) })}
	if !o.later() && m.pieces() == nil {
		return nil
	}
	return m
}

// readPieces gives none for a faulty text.
func readPieces(r *reading.Reader, e hclsyntax.Expression, n *expr.Names, what string) (
	list []piece) {
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
	add := func(p piece) {
		if p.expr != nil || p.text != "" {
			list = append(list, p)
		}
	}
	figures := 0
	from, clause := 0, 0 // clause is where the clause at hand ends, 0 outside
	for i := 0; i < len(runes); i++ {
		switch runes[i] {
		case '[', '|', ']':
			switch {
			case runes[i] == '[' && clause == 0:
				end, ok := clauseEnd(runes, i)
				if !ok {
					continue
				}
				clause = end
			case runes[i] == '|' && clause > 0:
			case i == clause && clause > 0:
				clause = 0
			default:
				continue
			}
			add(piece{text: string(runes[from:i])})
			add(piece{text: string(runes[i]), clause: clauseMarks[runes[i]]})
			from = i + 1
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
			add(piece{text: string(runes[from:i])})
			x := expr.ParseText(r, string(runes[i+1:end]), offsets[i+1:end+1], n,
				"a figure in "+what)
			if x == nil {
				return nil
			}
			add(piece{expr: x, unit: unit(x, n.Limits, string(runes[end+1:])),
				written: string(runes[i+1 : end])})
			from, i = end+1, end
		}
	}
	add(piece{text: string(runes[from:])})
	return list
}

func place(r *reading.Reader, offsets []int, from, to int) source.Place {
	return source.Place{File: r.File, Start: source.Offset(offsets, from),
		End: source.Offset(offsets, to)}
}

// unit is the unit of an expression that is one fact or limit, or a choice
// between some of one unit. A computed figure has none, nor has one whose
// unit follows in the text.
func unit(x *expr.Expr, limits []expr.Limit, follows string) string {
	out := ""
	for k, i := range x.Choices() {
		r := &x.Reads()[i]
		one := ""
		if r.Fact == nil {
			one = limits[r.Limit].Unit()
		} else {
			one = r.Fact.Unit
		}
		if k > 0 && one != out {
			return ""
		}
		out = one
	}
	if _, single := x.Single(); !single && strings.HasPrefix(follows, " "+out) {
		return ""
	}
	return out
}

// sentences writes a message. A clause or sentence with an unknown
// figure is left out. The first sentence stays, with words for the
// figure, since it says what is wrong.
type sentences struct {
	strings.Builder
	from    int // where the sentence at hand begins
	unknown bool
	clause  clause
}

// clause is a clause of a message as written.
type clause struct {
	inside  bool
	from    int  // where it begins
	unknown bool // a figure of it is
	skip    bool // the words at hand are those of the other case
}

// mark begins a clause, switches to its other words, or ends it.
func (s *sentences) mark(m clauseMark) {
	c := &s.clause
	switch m {
	case clauseBegins:
		*c = clause{inside: true, from: s.Len()}
		return
	case clauseElse:
		c.skip = !c.unknown
	case clauseEnds:
		c.inside = false
		c.skip = false
	}
	if c.unknown {
		s.cut(c.from)
		c.unknown = false
	}
}

// cut removes the text from a place on.
func (s *sentences) cut(from int) {
	kept := s.String()[:min(from, s.Len())]
	s.Reset()
	s.WriteString(kept)
}

// text adds words of the message, in which sentences may end. A small
// letter continues the sentence: S. aureus.
func (s *sentences) text(words string) {
	for at := 0; ; {
		end := strings.Index(words[at:], ". ")
		if end < 0 {
			s.WriteString(words)
			return
		}
		at += end + 2
		if next, _ := utf8.DecodeRuneInString(words[at:]); unicode.IsLower(next) {
			continue
		}
		s.WriteString(words[:at])
		s.end()
		words, at = words[at:], 0
	}
}

// end ends the sentence, and drops it if a figure in it is unknown.
func (s *sentences) end() {
	if s.unknown && s.from > 0 {
		s.cut(s.from)
	}
	s.from, s.unknown = s.Len(), false
}

// nameless stands for an unknown figure in a sentence, by its unit.
var nameless = map[string]string{
	"C": "some temperature", "min": "some time", "h": "some time", "days": "some days",
	"g": "some weight", "%": "some share",
}

// figure adds a figure as shown; words replace an unknown one.
func (s *sentences) figure(shown, unit string) {
	if shown != show.NoFigure {
		if strings.HasPrefix(shown, "up to ") && strings.HasSuffix(s.String(), " to ") {
			shown = "no more than " + shown[len("up to "):] // "gets to up to 65 C"
		}
		s.WriteString(shown)
		return
	}
	if s.clause.inside {
		s.clause.unknown = true
	} else {
		s.unknown = true
	}
	words := nameless[unit]
	if words == "" {
		words = "some amount"
	}
	s.WriteString(words)
}

// say prints a message on a subject. With doubt, modelled figures print
// from end to end: the middle alone would not show the doubtful end.
func (j *Judge) say(m *Message, subject facts.Subject, limits []expr.Limit, doubt bool) string {
	list := m.pieces()
	if len(list) == 1 && list[0].expr == nil {
		return list[0].text // the same for every formula: one copy serves them all
	}
	var b sentences
	for _, p := range list {
		switch {
		case p.clause != noMark:
			b.mark(p.clause)
		case b.clause.skip:
		case p.expr == nil:
			b.text(p.text)
		default:
			j.sayFigure(&b, p, subject, limits, doubt)
		}
	}
	b.end()
	return strings.TrimRight(b.String(), " ")
}

// sayFigure prints a figure of a message.
func (j *Judge) sayFigure(b *sentences, p piece, subject facts.Subject, limits []expr.Limit,
	doubt bool) {
	if i, single := p.expr.Single(); single && p.expr.Reads()[i].Fact != nil {
		j.judge.Set(p.expr, subject, limits)
		f := p.expr.Reads()[i].Fact
		v := j.judge.Value(i)
		shown := show.Fact(f, v)
		switch {
		case f.Type == facts.Number && v.Lo <= 0 && math.IsInf(v.Hi, 1):
			shown = show.NoFigure // anything from nothing on
		case doubt && v.Origin == figure.ByModel && shown != show.NoFigure:
			shown = show.Range(f, v)
		}
		b.figure(shown, f.Unit)
		return
	}
	x := j.judge.Result(p.expr, subject, limits)
	switch p.expr.Type() {
	case facts.Number:
		b.figure(show.Interval(x.Interval(), p.unit), p.unit)
	case facts.YesNo:
		b.figure([...]string{figure.No: "no", figure.Yes: "yes",
			figure.Open: show.NoFigure}[x.Truth()], "")
	case facts.Text:
		if x.Open() {
			b.figure(show.NoFigure, "")
			return
		}
		b.text(show.Words(x.Words())) // a text of the message may end in a sentence
	default:
		b.text(show.Words(x.Words()))
	}
}
