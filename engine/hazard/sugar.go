package hazard

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
)

// boilingSugarC is the least boiling point of a sugar syrup, C: from
// there on it counts as hot.
const boilingSugarC = 100

// SugarCooked reports whether a cook or a melt heats sugar, honey or
// syrup of the part to boilingSugarC or more. Without a temperature it
// is open.
func SugarCooked(p *Part) Value {
	out := figure.YesNo(false)
	if p.IsDough() {
		return out
	}
	for _, step := range p.Steps {
		if !step.Verb.Cooks() && !step.Verb.Melts() || !sugarIn(p, step) {
			continue
		}
		hottest, known := Interval{}, false
		for _, at := range []formula.Given{step.To, step.Core} {
			if at.Set {
				hottest, known = Interval{
					Lo: max(hottest.Lo, at.Lo),
					Hi: max(hottest.Hi, at.Hi),
				}, true
			}
		}
		if r := step.Reading; r != nil && r.Temp.Set {
			hottest, known = Interval{
				Lo: max(hottest.Lo, r.Temp.Lo),
				Hi: max(hottest.Hi, r.Temp.Hi),
			}, true
		}
		switch {
		case known && hottest.Lo >= boilingSugarC:
			return figure.YesNo(true)
		case !known || hottest.Hi >= boilingSugarC:
			out = figure.Maybe("to = \"85 C\" in this "+step.Verb.Name, step.Place)
		}
	}
	return out
}

// sugarIn reports whether a step heats sugar, honey, syrup or jam with
// pectin; a part named a syrup counts as one.
func sugarIn(p *Part, step *formula.Step) bool {
	found := p.Kind == formula.Syrup
	for _, in := range p.Ingredients {
		found = found || makeup.TakesIn(step, in) && in.Item != nil &&
			(in.Item.Class == larder.ClassSugar || in.Item.Is(larder.Pectin))
	}
	return found
}
