package makeup

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/science/wateractivity"
)

// Activity: the solutes at their most in the least water give the low end, the other way round the high end, and
// the model's error widens both. Yeast splits sucrose in a dough, so a dough's low end has it split.
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
	if dry.Hi < driestSolution { // see highestActivity
		return figure.Absent("water_activity of \""+p.Name+"\" (too dry for the model: measure it)", p.Place)
	}
	lo, lowOK := wateractivity.Of(p.solution(strongest))
	hi, highOK := wateractivity.Of(wateractivity.Dissolved(p.solution(weakest)))
	// Sugar beyond what the water holds is crystal. Glucose stays dissolved in the middle: honey and syrups hold more for months.
	middle := p.solution(strongest)
	full := wateractivity.Dissolved(middle)
	middle.SucroseG, middle.SaltG = full.SucroseG, full.SaltG
	mid, midOK := wateractivity.Of(middle)
	if p.Kind == formula.Dough || p.Kind == formula.Preferment {
		mid, midOK = wateractivity.Of(p.solution(strongest))
		lo, _ = wateractivity.Of(wateractivity.Inverted(p.solution(strongest))) // 0 where the split leaves no water
	}
	e := p.waterActivityError()
	v := Value{Lo: max(0, lo-e), Hi: min(1, hi+e), Mid: mid, Origin: figure.ByModel}
	if !lowOK || dry.Lo < driestSolution {
		v.Lo = 0
	}
	if !highOK {
		v.Hi = 1
	}
	if !midOK || !p.Grams(Mass).IsPoint() {
		v.Mid = (v.Lo + v.Hi) / 2
	}
	return v
}

// HighestActivity is the most that a part too dry for the model can have: that of the syrup which its water and sugar would make, with
// the model's error; what is dissolved can only be stronger where solids take up water. 1 where there is nothing to go by.
func (p *Part) HighestActivity() float64 {
	high, ok := wateractivity.Of(wateractivity.Dissolved(p.solution(weakest)))
	if !ok {
		return 1
	}
	return min(1, high+p.waterActivityError())
}

// driestSolution is the share of water below which the model does not answer: cookies, crusts and dry pastes.
const driestSolution = 0.12

func (p *Part) waterActivityError() float64 {
	p.add()
	switch {
	case p.TotalFlour().Hi > 0 && (p.Kind == formula.Dough || p.Kind == formula.Preferment):
		return wateractivity.WorkingErrorCrumb
	case p.traits&(larder.Fruit|larder.Pectin) != 0:
		return wateractivity.WorkingErrorJam
	}
	return wateractivity.WorkingErrorCustard
}

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
		WaterG: one(Water, !strong), SucroseG: one(Sucrose, strong), GlucoseG: one(Glucose, strong), FructoseG: one(Fructose, strong),
		MaltoseG: one(Maltose, strong), LactoseG: one(Lactose, strong), GalactoseG: one(Galactose, strong), SaltG: one(Salt, strong),
		EthanolG: one(Alcohol, strong),
	}
	if other := one(OtherSolute, strong); other > 0 {
		s.OtherG, s.OtherMolar = other, other/one(OtherMoles, strong)
	}
	return s
}
