package rule

import (
	"math"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// markedPlace gives the line that a part's condition is about, and the
// temperature that a step there must reach, "" for none. A condition
// on a formula, or one that begins with a figure that marks no line,
// has none.
func markedPlace(when *expr.Expr, x facts.Subject) (at source.Place, heats string) {
	if x.Part == nil {
		return source.Place{}, ""
	}
	for i, read := range when.Reads() {
		f := read.Fact
		if f == nil {
			continue
		}
		in, step, marks := facts.Mark(f.Name, x.Part)
		switch {
		case in != nil:
			return in.Place, ""
		case step != nil:
			return step.Place, heat(step)
		case !marks && i == 0:
			return source.Place{}, ""
		}
	}
	return x.Part.Place, ""
}

// heat gives a step's target temperature, else its own; "" for none.
func heat(s *formula.Step) string {
	for _, g := range []formula.Given{s.To, s.At} {
		if g.Set && !math.IsInf(g.Hi, 0) {
			return quantity.FormatInterval(figure.Interval{Lo: g.Lo, Hi: g.Hi}, "C")
		}
	}
	return ""
}

// brief prints a short line. The words of its list are kept
// apart: finding.ListHere stands for them, so that formulas'
// lines can be joined.
func (j *Judge) brief(m *Message, x facts.Subject) (line string, list []string) {
	for _, p := range m.pieces() {
		if p.expr == nil || p.expr.Type() != facts.List {
			line += j.say(&Message{func() []piece { return []piece{p} }}, x, nil, false)
			continue
		}
		words := j.judge.Result(p.expr, x, nil)
		if words.Open() { // as a caution it is never empty
			list = append(list, "not known: ask for every one?")
		}
		list = append(list, words.Words()...)
		line += finding.ListHere
	}
	return line, list
}
