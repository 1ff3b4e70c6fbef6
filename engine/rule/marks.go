package rule

import (
	"math"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// mark gives the line that a condition on a part is about, and the temperature that a step there is to reach, "" for none.
// A condition on a formula, or one that begins with a figure that marks no line, is general and has none.
func mark(when *Expr, x facts.Subject) (at source.Place, heat string) {
	if x.Part == nil {
		return source.Place{}, ""
	}
	for i := range when.reads {
		f := when.reads[i].fact
		if f == nil {
			continue
		}
		at, heatC, marks := facts.Mark(f.Name, x.Part)
		if !marks && i == 0 {
			return source.Place{}, ""
		}
		if at.IsZero() {
			continue
		}
		if !math.IsInf(heatC.Hi, 1) {
			heat = quantity.FormatInterval(heatC, "C")
		}
		return at, heat
	}
	return x.Part.Place, ""
}

// brief prints a short line. The words of a list in it are kept apart, so that the lines of several formulas can be put
// together: finding.ListHere stands for them.
func (j *Judge) brief(m *Message, x facts.Subject) (line string, list []string) {
	for _, p := range m.pieces {
		if p.expr == nil || p.expr.root.typ != facts.List {
			line += j.say(&Message{pieces: []piece{p}}, x, nil)
			continue
		}
		j.expr, j.subject, j.limits = p.expr, x, nil
		list = append(list, j.eval(p.expr.root).words...)
		line += finding.ListHere
	}
	return line, list
}
