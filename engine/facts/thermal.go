package facts

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/heat"
)

const srcChoi = "Choi & Okos (1986) by composition, Maxwell-Eucken for gas"

// thermalValues are the four figures that heat flow needs.
type thermalValues struct{ density, specificHeat, conductivity, diffusivity Value }

const thermalAtC = 20

// Gas in the part, as a share of its volume: 5 to 15 % in a dough fresh from the mixer, none elsewhere (memory).
var doughGas = figure.Between(0.05, 0.15)

// thermal computes the four together, at both ends of the gas. A part whose make-up is still open has none of them.
func (p *part) thermal() thermalValues {
	c, ok := p.composition()
	if !ok {
		v := absent("all amounts of \""+p.Name+"\"", p.Place)
		return thermalValues{v, v, v, v}
	}
	gas := Interval{}
	if p.Kind == formula.Dough || p.Kind == formula.Preferment {
		gas = doughGas
	}
	loose, ok1 := heat.PropertiesAt(c, thermalAtC, gas.Hi)
	tight, ok2 := heat.PropertiesAt(c, thermalAtC, gas.Lo)
	mid, ok3 := heat.PropertiesAt(c, thermalAtC, gas.Mid())
	if !ok1 || !ok2 || !ok3 {
		v := absent("a make-up of \""+p.Name+"\" that the model of heat can answer for", p.Place)
		return thermalValues{v, v, v, v}
	}
	model := func(a, b, m, e float64) Value {
		return Value{Lo: min(a, b) * (1 - e), Hi: max(a, b) * (1 + e), Mid: m, Origin: Model}
	}
	return thermalValues{
		density:      model(loose.DensityKgM3/1000, tight.DensityKgM3/1000, mid.DensityKgM3/1000, 0.05),
		specificHeat: model(loose.SpecificHeat, tight.SpecificHeat, mid.SpecificHeat, 0.05),
		conductivity: model(loose.ConductivityWmK, tight.ConductivityWmK, mid.ConductivityWmK, 0.12),
		diffusivity:  model(loose.DiffusivityM2s, tight.DiffusivityM2s, mid.DiffusivityM2s, 0.15),
	}
}

// composition gives the mass fractions; ok is false while an amount is open or a range.
func (p *part) composition() (heat.Composition, bool) {
	total := p.grams(mass)
	if !total.IsPoint() || total.Lo == 0 {
		return heat.Composition{}, false
	}
	share := func(c component) float64 { return p.grams(c).Mid() / total.Lo }
	return heat.Composition{
		Water: share(allWater), Protein: share(protein), Fat: share(allFat),
		Carbohydrate: share(carbohydrate) - share(fibre), Fibre: share(fibre), Ash: share(ash),
	}, true
}
