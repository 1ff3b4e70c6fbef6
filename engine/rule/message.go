package rule

import (
	"math"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

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
	expr    *Expr // a figure instead of the text
	unit    string
	written string
}

// message reads and checks a text with {figures}. A figure is a fact, a limit or an expression; facts and limits print with
// their unit.
func message(r *reading.Reader, e hclsyntax.Expression, n *names, what string) *Message {
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
			r.Fault(place(r, offsets, i, i+1), "%s: this } closes nothing; a figure stands in { }", what)
			return nil
		case '{':
			end := i + 1
			for end < len(runes) && runes[end] != '}' && runes[end] != '{' {
				end++
			}
			if end == len(runes) || runes[end] == '{' {
				r.Fault(place(r, offsets, i, i+1), "%s: this { is never closed; a figure stands in { }", what)
				return nil
			}
			if figures++; figures > MaxFigures {
				r.Fault(place(r, offsets, i, end+1), "%s holds more than %d figures in { }; split the rule", what, MaxFigures)
				return nil
			}
			m.add(piece{text: string(runes[from:i])})
			x := parseExpr(r, string(runes[i+1:end]), offsets[i+1:end+1], n, "a figure in "+what)
			if x == nil {
				return nil
			}
			m.add(piece{expr: x, unit: x.unit(n), written: string(runes[i+1 : end])})
			from, i = end+1, end
		}
	}
	m.add(piece{text: string(runes[from:])})
	return m
}

func place(r *reading.Reader, offsets []int, from, to int) source.Place {
	return source.Place{File: r.File, Start: source.Offset(offsets, from), End: source.Offset(offsets, to)}
}

func (m *Message) add(p piece) {
	if p.expr != nil || p.text != "" {
		m.pieces = append(m.pieces, p)
	}
}

// unit gives the unit of an expression that is one fact or limit; a computed figure has none.
func (x *Expr) unit(n *names) string {
	if x.root.op != opRead {
		return ""
	}
	r := &x.reads[x.root.read]
	if r.fact == nil {
		return n.limits[r.limit].Unit()
	}
	return r.fact.Unit
}

// say prints a message on a subject.
func (j *Judge) say(m *Message, subject facts.Subject, limits []Limit) string {
	if len(m.pieces) == 1 && m.pieces[0].expr == nil {
		return m.pieces[0].text // the same for every formula: one copy serves them all
	}
	var b strings.Builder
	for _, p := range m.pieces {
		if p.expr == nil {
			b.WriteString(p.text)
			continue
		}
		j.expr, j.subject, j.limits = p.expr, subject, limits
		if root := p.expr.root; root.op == opRead && p.expr.reads[root.read].fact != nil {
			b.WriteString(Show(p.expr.reads[root.read].fact, j.value(root.read)))
			continue
		}
		x := j.eval(p.expr.root)
		switch p.expr.root.typ {
		case facts.Number:
			b.WriteString(quantity.FormatInterval(x.interval(), p.unit))
		case facts.YesNo:
			b.WriteString([...]string{"no", "yes", "unknown"}[x.truth()])
		default:
			b.WriteString(words(x.words))
		}
	}
	return b.String()
}

// Show prints the value of a fact as a baker reads it, with its unit; a model's figure has "about" before it.
func Show(f *facts.Fact, v *facts.Value) string {
	switch f.Type {
	case facts.Text, facts.List:
		if v.Absent {
			return "unknown"
		}
		return words(v.Words)
	case facts.YesNo:
		switch {
		case v.Lo == 1:
			return "yes"
		case v.Hi == 0 && !v.Absent:
			return "no"
		}
		return "unknown"
	}
	if v.Absent {
		return "unknown"
	}
	if v.Origin == figure.ByModel && !math.IsNaN(v.Mid) && !math.IsInf(v.Mid, 0) {
		by, unit := longTime(f, v)
		return "about " + quantity.Format(honest(by*v.Mid, by*(v.Hi-v.Lo), unit), unit)
	}
	return quantity.FormatInterval(v.Interval(), f.Unit)
}

// longTime gives the unit that a model's figure is printed in and the factor that takes it there: two hours and more of
// minutes are read as hours.
func longTime(f *facts.Fact, v *facts.Value) (by float64, unit string) {
	if f.Unit == "min" && v.Mid >= 120 {
		return 1.0 / 60, "h"
	}
	return 1, f.Unit
}

// honest rounds a model's figure to what its error leaves of it: to the power of ten that half the width of the error holds,
// and two figures at the coarsest. A temperature, whose nought means nothing, is rounded to a degree at the coarsest; a
// pure number, such as a water activity near 1, keeps a figure more.
func honest(x, width float64, unit string) float64 {
	if width == 0 && unit != "C" { // no range went in, which makes a model no finer than a twentieth
		width = math.Abs(x) / 10
	}
	if !(width > 0) || math.IsInf(width, 1) || x == 0 || math.IsInf(x, 0) {
		return x
	}
	step, most := width/2, math.Abs(x)/10
	switch unit {
	case "", "ratio":
		step, most = width/5, width
	case "C":
		most = 1
	case "h": // whole hours from five up
		most = math.Abs(x) / 5
	case "x": // a share of a time that was set by a round figure
		step = most
	}
	step = math.Pow(10, math.Floor(math.Log10(min(step, most))))
	return math.Round(x/step) * step
}

// ShowRange prints the ends of a model's figure, rounded as honestly as its middle.
func ShowRange(f *facts.Fact, v *facts.Value) string {
	by, unit := longTime(f, v)
	return honestRange(Interval{Lo: by * v.Lo, Hi: by * v.Hi}, unit)
}

func honestRange(iv Interval, unit string) string {
	width := iv.Hi - iv.Lo
	return quantity.FormatInterval(Interval{Lo: honest(iv.Lo, width, unit), Hi: honest(iv.Hi, width, unit)}, unit)
}

func words(list []string) string {
	if len(list) == 0 {
		return "none"
	}
	return strings.Join(list, ", ")
}
