package makeup

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/ferment"
)

// Solids is all but water and alcohol, % of the mass.
func (p *Part) Solids() Value {
	m := p.Grams(Mass)
	if m.Hi == 0 {
		return figure.Absent("the amounts of \""+p.Name+"\"", p.Place)
	}
	rest := p.Over(AllWater, Mass).Add(p.Over(Alcohol, Mass))
	s := figure.Point(1).Sub(rest)
	return figure.ValueOf(figure.Between(max(0, s.Lo), max(0, min(1, s.Hi))).Scale(100))
}

// FreeWaterPct counts the water of all but flour, less what the
// flour binds.
func (p *Part) FreeWaterPct() Value {
	free := p.Over(Water, Mass).Sub(p.Over(Flour, Mass).Scale(ferment.BoundWater))
	return figure.ValueOf(
		figure.Between(max(0, min(1, free.Lo)), max(0, min(1, free.Hi))).Scale(100),
	)
}

// strength is one end of what can be dissolved.
type strength uint8

const (
	weakest   strength = iota // the least solutes in the most water
	strongest                 // the most solutes in the least water
)

// molality gives the osmolality of the free water at its ends: low with
// the least solutes in the most water.
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
			SucroseG:        one(Sucrose, high),
			MonosaccharideG: one(Glucose, high) + one(Fructose, high) + one(Galactose, high),
			LactoseG:        one(Lactose, high),
			MaltoseG:        one(Maltose, high),
			SaltG:           one(Salt, high),
			WaterG:          one(Water, !high),
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
		// No water even at the wettest end: there is no solution.
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

// NoFreeWater answers where the flour binds all the water: the yeast
// feels no solution.
func (p *Part) NoFreeWater() Value {
	return figure.Absent("free water in \""+p.Name+"\"", p.Place)
}

// MayLackFreeWater reports whether the flour may bind all the water.
func (p *Part) MayLackFreeWater() bool {
	return p.Grams(Water).Lo <= ferment.BoundWater*p.Grams(Flour).Hi
}

// Unweighed answers where a range of amounts is too wide for a figure.
func (p *Part) Unweighed() Value {
	return figure.Absent("all amounts of \""+p.Name+"\", each as one figure", p.Place)
}

// Molality is the osmolality of the free water, as a value.
func (p *Part) Molality() Value {
	m, ok := p.molality()
	if !ok {
		return p.NoFreeWater()
	}
	return figure.ValueOf(m)
}

// strainsOf are the strains of a part's yeasts. An unwritten strain
// takes the standard curve, with the wider error.
func (p *Part) strainsOf() []ferment.Strain {
	var out []ferment.Strain
	p.yeasts(func(in *formula.Ingredient) {
		one := ferment.Unsaid
		switch {
		case in.Strain == formula.Osmotolerant:
			one = ferment.Osmotolerant
		case in.Strain != "":
			one = ferment.Standard
		}
		if !slices.Contains(out, one) {
			out = append(out, one)
		}
	})
	return out
}

// PaceSpan is the range of the yeast's pace against one without sugar
// and salt, without the error. The molality's range and mixed strains
// widen it. Without yeast it is that of an unwritten strain.
func (p *Part) PaceSpan() (Interval, bool) {
	m, ok := p.molality()
	if !ok {
		return Interval{}, false
	}
	strains := p.strainsOf()
	if len(strains) == 0 {
		strains = []ferment.Strain{ferment.Unsaid}
	}
	span := ferment.PaceSpan(m, strains[0])
	for _, s := range strains[1:] {
		span = span.Hull(ferment.PaceSpan(m, s))
	}
	return span, true
}

// PaceError is the error factor of PaceSpan.
func (p *Part) PaceError() float64 {
	m, _ := p.molality()
	factor := 0.0
	for _, s := range p.strainsOf() {
		factor = max(factor, ferment.PaceError(m, s))
	}
	if factor == 0 {
		return ferment.PaceError(m, ferment.Unsaid)
	}
	return factor
}

// OsmoticFactor is the yeast's pace against one that feels no sugar and
// salt, with the model's error.
func (p *Part) OsmoticFactor() Value {
	if p.Strain() == "none" {
		return p.NoYeast()
	}
	span, ok := p.PaceSpan()
	if !ok {
		return p.NoFreeWater()
	}
	return p.withPaceError(span)
}

// withPaceError lays its error on a pace. Above the model's molality it gives
// no middle.
func (p *Part) withPaceError(span Interval) Value {
	v := figure.Modelled(span, p.PaceError())
	if m, _ := p.molality(); m.Lo > ferment.HighestMolality {
		v.Mid = math.NaN()
	}
	return v
}

// leanMolality is the osmolality of lean dough's free water: 2 % salt
// at 62 % water, osmol/kg.
const leanMolality = 1.6

// Pace is the yeast's pace against the same dose in a lean dough, %.
func (p *Part) Pace() Value {
	if p.Strain() == "none" {
		return p.NoYeast()
	}
	span, ok := p.PaceSpan()
	if !ok {
		return p.NoFreeWater()
	}
	return p.withPaceError(span.Scale(100 / ferment.OsmoticFactor(leanMolality)))
}
