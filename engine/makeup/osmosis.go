package makeup

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/science/ferment"
)

// Solids is all that is neither water nor alcohol, in percent of the mass.
func (p *Part) Solids() Value {
	m := p.Grams(Mass)
	if m.Hi == 0 {
		return figure.Absent("the amounts of \""+p.Name+"\"", p.Place)
	}
	rest := p.Over(AllWater, Mass).Add(p.Over(Alcohol, Mass))
	s := figure.Point(1).Sub(rest)
	return figure.ValueOf(figure.Between(max(0, s.Lo), max(0, min(1, s.Hi))).Scale(100))
}

// FreeWaterPct counts the water of everything but flour, less what the flour binds.
func (p *Part) FreeWaterPct() Value {
	free := p.Over(Water, Mass).Sub(p.Over(Flour, Mass).Scale(ferment.BoundWater))
	return figure.ValueOf(figure.Between(max(0, min(1, free.Lo)), max(0, min(1, free.Hi))).Scale(100))
}

// strength is one end of what can be dissolved.
type strength uint8

const (
	weakest   strength = iota // the least solutes in the most water
	strongest                 // the most solutes in the least water
)

// molality gives the osmolality of the free water at the two ends: low where the solutes are least and the water most.
func (p *Part) molality() (Interval, bool) {
	one := func(c Component, high bool) float64 {
		x := p.Grams(c)
		if r, ok := p.OfFlour(c); ok {
			x = r
		}
		if high {
			return x.Hi
		}
		return x.Lo
	}
	at := func(end strength) (float64, bool) {
		high := end == strongest
		s := ferment.Solutes{
			SucroseG: one(Sucrose, high), MonosaccharideG: one(Glucose, high) + one(Fructose, high) + one(Galactose, high),
			LactoseG: one(Lactose, high), MaltoseG: one(Maltose, high), SaltG: one(Salt, high), WaterG: one(Water, !high),
		}
		if other := one(OtherSolute, high); other > 0 {
			s.OtherG, s.OtherMolar = other, other/one(OtherMoles, high)
		}
		if p.TotalFlour().Hi > 0 {
			s.FlourG = 1
		}
		return ferment.Molality(s)
	}
	lo, ok := at(weakest)
	if !ok {
		// No water even at the wettest end: there is no solution to speak of.
		const high = true
		if one(Water, high) < math.Inf(1) {
			return Interval{}, false
		}
		lo = 0
	}
	hi, ok := at(strongest)
	if !ok {
		hi = math.Inf(1)
	}
	return figure.Between(lo, hi), true
}

// NoFreeWater is the answer where the flour binds all the water: there is no solution that the yeast could feel.
func (p *Part) NoFreeWater() Value {
	return figure.Absent("free water in \""+p.Name+"\"", p.Place)
}

// Molality is the osmolality of the free water, as a value.
func (p *Part) Molality() Value {
	m, ok := p.molality()
	if !ok {
		return p.NoFreeWater()
	}
	return figure.ValueOf(m)
}

// FactorWithoutError gives the osmotic factor without its error: an interval where the molality is one, or where strains are mixed.
func (p *Part) FactorWithoutError() (Interval, bool) {
	m, ok := p.molality()
	if !ok {
		return Interval{}, false
	}
	at := func(s ferment.Strain) Interval {
		return figure.Between(ferment.OsmoticFactor(m.Hi, s), ferment.OsmoticFactor(m.Lo, s))
	}
	switch p.Strain() {
	case "osmotolerant":
		return at(ferment.Osmotolerant), true
	case "mixed":
		return at(ferment.Osmotolerant).Hull(at(ferment.Standard)), true
	}
	return at(ferment.Standard), true
}

// OsmoticFactor is the pace of the yeast against one that feels no sugar and salt, with the error of the model.
func (p *Part) OsmoticFactor() Value {
	if p.Strain() == "none" {
		return p.NoYeast()
	}
	f, ok := p.FactorWithoutError()
	if !ok {
		return p.NoFreeWater()
	}
	v := figure.Modelled(f, ferment.OsmoticErrorFactor)
	v.Hi = min(v.Hi, 1)
	return v
}

// leanMolality is the osmolality of lean dough's free water: 2 % salt at 62 % water, osmol/kg.
const leanMolality = 1.6

// Pace is the pace of the yeast against the same dose in a lean dough, %.
func (p *Part) Pace() Value {
	if p.Strain() == "none" {
		return p.NoYeast()
	}
	f, ok := p.FactorWithoutError()
	if !ok {
		return p.NoFreeWater()
	}
	return figure.Modelled(f.Scale(100/ferment.OsmoticFactor(leanMolality, ferment.Standard)), ferment.OsmoticErrorFactor)
}
