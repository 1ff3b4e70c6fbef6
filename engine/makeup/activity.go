package makeup

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/larder"
	"forebake/engine/science/wateractivity"
)

// Activity is the water activity at 25 C, as measured or by the model.
// The most solutes in the least water give the low end, the reverse the
// high one. Yeast splits sucrose, so a dough's low end has it split.
func (p *Part) Activity() Value {
	if p.WaterActivity.Set {
		v := figure.ValueOf(p.WaterActivity.Interval)
		v.Origin = figure.Measured
		return v
	}
	if p.Grams(AllWater).Hi == 0 {
		return figure.Absent("water in \""+p.Name+"\"", p.Place)
	}
	dry := p.Over(AllWater, Mass)
	if dry.Hi < driestSolution { // see HighestActivity
		return figure.Absent(
			"water_activity of \""+p.Name+"\" (too dry for the model: measure it)",
			p.Place,
		)
	}
	v := p.activity(figure.Point(1))
	if dry.Lo < driestSolution {
		v.Lo = 0
	}
	return v
}

// CrumbActivity is the water activity of a dough's crumb, after a bake
// has taken water off. kept is the share of water left.
func (p *Part) CrumbActivity(kept Interval) Value {
	if p.WaterActivity.Set {
		return p.Activity()
	}
	return p.activity(kept)
}

// CrumbLows spans the low end of a baked crumb's water activity over
// what its amounts may be: one figure where each is one.
func (p *Part) CrumbLows() Interval {
	water := p.Over(AllWater, Mass)
	low := func(end strength, share float64) float64 {
		s := p.solution(end)
		if math.IsInf(s.WaterG, 1) {
			return 1
		}
		s.WaterG *= max(0, 1-bakeLoss.Hi/share)
		aw, _ := wateractivity.Estimate(wateractivity.Inverted(s), p.class())
		return aw.Low
	}
	dry := low(strongest, water.Lo)
	return figure.Between(dry, max(dry, low(weakest, water.Hi)))
}

// WaterKept is the share of a dough's water left by a bake's
// usual loss.
func (p *Part) WaterKept() Interval {
	water := p.Over(AllWater, Mass)
	if water.Lo <= bakeLoss.Hi {
		return figure.Between(0, 1)
	}
	return figure.Point(1).Sub(bakeLoss.Div(water))
}

// activity answers by the model with a share of the water kept.
func (p *Part) activity(kept Interval) Value {
	class := p.class()
	strong, weak := p.solution(strongest), p.solution(weakest)
	strong.WaterG, weak.WaterG = strong.WaterG*kept.Lo, weak.WaterG*kept.Hi
	// Sugar beyond what the water holds is crystal. Glucose stays
	// dissolved in the middle: honey and syrups hold more for months.
	middle := strong
	if !p.IsDough() {
		full := wateractivity.Dissolved(strong)
		middle.SucroseG, middle.SaltG = full.SucroseG, full.SaltG
	}
	if kept.IsFinite() {
		middle.WaterG *= kept.Mid() / max(kept.Lo, 1e-9)
	}
	mid, silent := wateractivity.Estimate(middle, class)
	least := strong
	if p.IsDough() {
		least = wateractivity.Inverted(strong)
	}
	low, lowSilent := wateractivity.Estimate(least, class)
	v := Value{Lo: low.Low, Hi: p.highest(weak, class), Mid: mid.Mid, Origin: figure.ByModel}
	if lowSilent != "" {
		v.Lo = 0
	}
	if silent == "" && !p.Grams(Mass).IsPoint() {
		v.Mid = (v.Lo + v.Hi) / 2
	}
	return v
}

// highest is the careful end: the equation with no bound water, and its
// error. A working error narrower than that of milk and egg is not
// trusted on this side.
func (p *Part) highest(weak wateractivity.Solution, class wateractivity.Class) float64 {
	weak = wateractivity.Dissolved(weak)
	all, ok := wateractivity.Of(weak)
	if !ok {
		return 1
	}
	estimate, _ := wateractivity.Estimate(weak, class)
	careful := max(class.WorkingError(), wateractivity.WorkingErrorCustard)
	return min(1, max(estimate.High, all+careful))
}

// HighestActivity bounds a part too dry for the model by the syrup of
// its water and sugar, with the model's error. Where solids take up
// water, the solution is only stronger. It is 1 where nothing is known.
func (p *Part) HighestActivity() float64 { return p.highest(p.solution(weakest), p.class()) }

// driestSolution is the share of water below which the model is silent:
// cookies, crusts and dry pastes.
const driestSolution = 0.12

// class is the kind of food that holds the part's water.
func (p *Part) class() wateractivity.Class {
	p.add()
	switch {
	case p.TotalFlour().Hi > 0 && p.IsDough():
		return wateractivity.Crumb
	case p.traits&(larder.Fruit|larder.Pectin) != 0:
		return wateractivity.Jam
	case p.Grams(Cocoa).Hi > 0:
		return wateractivity.Ganache
	case p.traits&(larder.Dairy|larder.Egg|larder.MilkFat) != 0:
		return wateractivity.Custard
	}
	return wateractivity.Syrup
}

// dryFlour is the dry matter of flour, g/g.
const dryFlour = 1 - flourMoisture

// solution gives what is dissolved at one end.
func (p *Part) solution(end strength) wateractivity.Solution {
	strong := end == strongest
	one := func(c Component, high bool) float64 {
		x := p.Grams(c)
		if r, ok := p.OfFlour(c); ok {
			x = r.Scale(100)
		}
		if high {
			return x.Hi
		}
		return x.Lo
	}
	s := wateractivity.Solution{
		WaterG: one(Water, !strong), SucroseG: one(Sucrose, strong),
		GlucoseG: one(Glucose, strong), FructoseG: one(Fructose, strong),
		MaltoseG: one(Maltose, strong), LactoseG: one(Lactose, strong),
		GalactoseG: one(Galactose, strong), SaltG: one(Salt, strong),
		EthanolG: one(Alcohol, strong), CocoaG: one(Cocoa, strong),
		MilkProteinG: one(MilkProtein, strong),
	}
	if p.IsDough() {
		// The flour's moisture is part of the water that its starch and
		// protein hold.
		s.WaterG += flourMoisture * one(Flour, !strong)
		s.DryFlourG = dryFlour * one(Flour, strong)
	}
	if other := one(OtherSolute, strong); other > 0 {
		s.OtherG, s.OtherMolar = other, other/one(OtherMoles, strong)
	}
	if math.IsInf(s.DryFlourG, 1) {
		s.DryFlourG = 0
	}
	return s
}
