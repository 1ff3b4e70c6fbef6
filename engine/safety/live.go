package safety

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/safety/clock"
	"forebake/engine/science/microbe"
)

// IsLiveDough reports whether live yeast or a lactic culture is mixed in, so
// that growth measured in live dough applies. Meat, fish and fillings in a
// dough get no credit: the yeast does not work in them.
func (p *Part) IsLiveDough() bool {
	return p.IsDough() && p.Traits()&larder.Leavens != 0 &&
		!p.Controls(larder.ControlMeat, larder.ControlFish)
}

// muchButterPct is the butterfat on flour from which a dough counts as
// enriched, % (judgement).
const muchButterPct = 20

// liveFactor scales microbe.LiveStaph: doubled with egg, milk, cheese or much
// butter, less by water activity, and nothing where a culture has made the
// dough as sour as measured.
func (p *Part) liveFactor() figure.Estimate {
	if !p.IsLiveDough() {
		return figure.Estimate{}
	}
	aw := p.awEnds()
	if p.PH.Set && p.HasCulture().Lo == 1 &&
		microbe.AcidStops(aw, microbe.Interval{Lo: p.PH.Lo, Hi: p.PH.Hi}) {
		return figure.Estimate{}
	}
	f, more := microbe.AwCredit(aw), microbe.Enriched
	if p.isEnriched() {
		f = figure.Estimate{Low: f.Low * more.Low, Mid: f.Mid * more.Mid, High: f.High * more.High}
	}
	return f
}

// isEnriched reports whether growth is doubled. A milk-free dough raised by a
// sourdough culture is not: a culture held S. aureus 700 times lower than a
// chance ferment did (rye, Korean J. Food Preserv. 32(2):232 (2025), table 7,
// read). One with milk is safe only once soured (Univ. Wisconsin Extension,
// 2011, quoted).
func (p *Part) isEnriched() bool {
	milk := p.Traits()&larder.Dairy != 0 || p.NeedsFor(func(c larder.Control) bool {
		return c != larder.ControlProtein
	})
	butter := p.Pct(makeup.Butterfat)
	rich := p.Traits()&larder.Egg != 0 || !butter.Absent && butter.Hi >= muchButterPct ||
		p.AnyControl()
	return milk || rich && !p.isSoured()
}

// leastCulture is the share of a dough's weight from which its culture sours
// it (judgement): the sourdough of a panettone's first dough is 10 to 20 %
// of it.
const leastCulture = 0.05

// isSoured reports whether the dough's sourdough culture leads its ferment.
func (p *Part) isSoured() bool {
	culture := 0.0
	for in := range p.Foods() {
		if makeup.IsCulture(in) {
			culture += p.sheet.Amount(in).Lo
		}
	}
	return culture >= leastCulture*p.Grams(makeup.Mass).Hi && culture > 0
}

// LiveStaph is the rise of S. aureus in a live dough over all stages, log10.
func (p *Part) LiveStaph() Value {
	if !p.IsLiveDough() {
		return figure.ValueOf(Interval{})
	}
	return p.spentValue(p.ownClock().Grown(func(g clock.Growth) float64 { return g.LiveStaph }))
}

// LiveStaphMost is LiveStaph at its careful end; the levels go by it.
func (p *Part) LiveStaphMost() Value {
	v := p.LiveStaph()
	v.Lo, v.Mid = v.Hi, v.Hi
	return v
}

// LiveStaphOpen is LiveStaphMost from what is written alone to what the open may add.
func (p *Part) LiveStaphOpen() Value {
	v := p.LiveStaphMost()
	if p.IsLiveDough() {
		v.Lo = min(v.Hi, p.ownClock().Written(func(g clock.Growth) float64 { return g.LiveStaph }))
	}
	return v
}

// HasRawMilk reports whether the part holds unpasteurised milk, or cheese of
// it, that no cook has pasteurised: see milkCookC. A bake does not count,
// since the milk is in the raw dough.
func (p *Part) HasRawMilk() Value { return figure.YesNo(p.rawMilk()) }

// rawMilk is cached: parts within parts ask for it by every path to them.
func (p *Part) rawMilk() bool {
	if p.milky == nil {
		found := slices.ContainsFunc(p.Ingredients, func(in *formula.Ingredient) bool {
			raw := in.Item != nil && in.Item.ControlOf() == larder.ControlRawMilk
			if in.Of != nil {
				raw = p.sheet.Part(in.Of).rawMilk()
			}
			return raw && p.boiled(in, milkCookC) != figure.Yes
		})
		p.milky = &found
	}
	return *p.milky
}

// BCereusGrown is the rise of B. cereus in cooked starch, rice, potato, vegetables
// and custard, log10; nothing in other parts.
func (p *Part) BCereusGrown() Value {
	if p.IsDough() || !p.grows(microbe.BCereus) || p.NeedsControl().Hi == 0 {
		return figure.ValueOf(Interval{})
	}
	switch has := p.Traits(); {
	case has&(larder.Egg|larder.Dairy) != 0 && p.IsCooked():
		return p.spentValue(p.clock().Grown(func(g clock.Growth) float64 {
			return g.CustardCereus
		}))
	case has&(larder.Starch|larder.RawFlour) != 0 && p.IsCooked(),
		p.Controls(larder.ControlCookedStarch, larder.ControlCookedVegetable),
		p.IsCooked() && p.Controls(larder.ControlRawVegetable, larder.ControlPlantMilk):
		return p.spentValue(p.clock().Grown(func(g clock.Growth) float64 { return g.StarchCereus }))
	}
	return figure.ValueOf(Interval{})
}
