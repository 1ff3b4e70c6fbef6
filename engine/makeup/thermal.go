package makeup

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/science/heat"
	"forebake/engine/science/melt"
)

// ThermalValues are the four figures that heat flow needs.
type ThermalValues struct{ Density, SpecificHeat, Conductivity, Diffusivity Value }

const thermalAtC = 20

// Gas in the part, as a share of its volume: 5 to 15 % in a dough fresh
// from the mixer, none elsewhere (memory).
var doughGas = figure.Between(0.05, 0.15)

// Thermal computes the four together, at both ends of the gas; none for
// a part whose make-up is open.
func (p *Part) Thermal() ThermalValues {
	c, ok := p.composition()
	if !ok {
		v := figure.Absent("all amounts of \""+p.Name+"\"", p.Place)
		return ThermalValues{v, v, v, v}
	}
	gas := Interval{}
	if p.Kind == formula.Dough || p.Kind == formula.Preferment {
		gas = doughGas
	}
	loose, ok1 := heat.PropertiesAt(c, thermalAtC, gas.Hi)
	tight, ok2 := heat.PropertiesAt(c, thermalAtC, gas.Lo)
	mid, ok3 := heat.PropertiesAt(c, thermalAtC, gas.Mid())
	if !ok1 || !ok2 || !ok3 {
		v := figure.Absent(
			"a make-up of \""+p.Name+"\" that the model of heat can answer for",
			p.Place,
		)
		return ThermalValues{v, v, v, v}
	}
	open := p.OpenShare()
	model := func(a, b, m, e float64) Value {
		e += open
		return Value{
			Lo:     min(a, b) * (1 - e),
			Hi:     max(a, b) * (1 + e),
			Mid:    m,
			Origin: figure.ByModel,
		}
	}
	return ThermalValues{
		Density: model(loose.DensityKgM3/1000, tight.DensityKgM3/1000, mid.DensityKgM3/1000,
			0.05),
		SpecificHeat: model(loose.SpecificHeat, tight.SpecificHeat, mid.SpecificHeat, 0.05),
		Conductivity: model(loose.ConductivityWmK, tight.ConductivityWmK, mid.ConductivityWmK,
			0.12),
		Diffusivity: model(loose.DiffusivityM2s, tight.DiffusivityM2s, mid.DiffusivityM2s, 0.15),
	}
}

// mostSpirit is the share of alcohol up to which it conducts and holds
// heat as fat does: ethanol has 2.4 kJ/(kg K), 0.17 W/(m K) and 790 kg/m3
// (memory). Fruit in rum and a syrup with it lie below; the figures move by
// some 2 % at most (computed).
const mostSpirit = 0.15

// composition gives the mass fractions; ok is false until the mass
// is settled.
func (p *Part) composition() (heat.Composition, bool) {
	total := p.Grams(Mass)
	if !p.IsSettled(total) || total.Lo == 0 {
		return heat.Composition{}, false
	}
	share := func(c Component) float64 { return p.Grams(c).Mid() / total.Mid() }
	fat := share(AllFat)
	if spirit := share(Alcohol); spirit <= mostSpirit {
		fat += spirit
	}
	return heat.Composition{
		Water: share(AllWater), Protein: share(Protein), Fat: fat,
		Carbohydrate: share(Carbohydrate) - share(Fibre), Fibre: share(Fibre), Ash: share(Ash),
	}, true
}

// OpenShare is how much of the part is still open, on its least mass.
func (p *Part) OpenShare() float64 {
	total := p.Grams(Mass)
	return total.Width() / total.Lo
}

// settledWithin is the share of a part's mass that may be open while
// its middle still carries the heat, such as a lemon's zest or flour by
// the cup. At 30 K colder or warmer it moves the mix by 1.5 K at most,
// and times widen by the share (computed).
const settledWithin = 0.1

// IsSettled reports whether a weight in the part is known well enough
// to follow heat with its middle.
func (p *Part) IsSettled(g Interval) bool {
	return g.IsFinite() && g.Width() <= settledWithin*p.Grams(Mass).Lo
}

// Freezing is the part's water that can freeze, without its onset, and
// the onset, C; both are zero where nothing freezes. why is the reason
// for silence.
func (p *Part) Freezing() (ice melt.Ice, onset figure.Estimate, why string) {
	made, ok := p.composition()
	m, wet := p.molality()
	if !ok || !wet {
		return ice, onset, ""
	}
	ice.Made = made
	if p.Kind == formula.Dough || p.Kind == formula.Preferment {
		ice.Gas = doughGas.Mid()
	}
	low, why1 := melt.OnsetC(m.Hi)
	mid, why2 := melt.OnsetC(m.Mid())
	high, why3 := melt.OnsetC(m.Lo)
	if why := figure.FirstReason(why1, why2, why3); why != "" {
		return melt.Ice{}, onset, why
	}
	return ice, figure.Estimate{Low: low.Low, Mid: mid.Mid, High: high.High}, ""
}

// Chocolate is the mass share of chocolate put in to melt and to set,
// not of pieces in a dough.
func (p *Part) Chocolate() float64 {
	total := p.Grams(Mass).Mid()
	if !(total > 0) || p.IsDough() {
		return 0
	}
	grams := 0.0
	for _, in := range p.Ingredients {
		if in.Item != nil && in.Item.Class == larder.ClassChocolate {
			grams += p.sheet.Amount(in).Mid()
		}
	}
	return grams / total
}
