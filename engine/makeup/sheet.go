// Package makeup gives a part's composition: the sums over its
// ingredients, its solutes and their effect on yeast, its thermal
// properties, its allergens and other traits.
//
// Package process builds on it. Of steps it reads only their effect on
// the make-up, and it follows no temperature.
package makeup

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/source"
)

// Short names of package figure.
type (
	Interval = figure.Interval
	Value    = figure.Value
)

// Sheet holds the parts of one formula in one kitchen.
type Sheet struct {
	Formula *formula.Formula
	Kitchen *kitchen.Kitchen
	// Pinned are masses in place of open ones, g; nil on a sheet of the
	// formula as written.
	Pinned map[*formula.Ingredient]Interval

	parts []Part
}

// Reset makes the sheet serve another formula, keeping its memory.
func (s *Sheet) Reset(f *formula.Formula, k *kitchen.Kitchen) {
	s.Formula, s.Kitchen, s.Pinned = f, k, nil
	if cap(s.parts) < len(f.Parts) {
		s.parts = make([]Part, len(f.Parts))
	}
	s.parts = s.parts[:len(f.Parts)]
	for i := range s.parts {
		s.parts[i] = Part{sheet: s, Part: f.Parts[i]}
	}
}

// Given is a quantity's value as written; what says what to write if it
// is not.
func Given(g formula.Given, what string, at source.Place) Value {
	if !g.Set {
		return figure.Absent(what, at)
	}
	v := figure.ValueOf(g.Interval)
	v.Origin = figure.AsGiven
	return v
}

// Part is a part of the formula on this sheet.
func (s *Sheet) Part(p *formula.Part) *Part { return &s.parts[p.Serial] }

// TakenAsUsual reports whether a span stands for an open amount: at
// most its class's usual.
func (s *Sheet) TakenAsUsual(in *formula.Ingredient) bool {
	g, ok := s.Pinned[in]
	return ok && g.Lo < g.Hi
}

// Mass gives an ingredient's mass, pinned while looking for what
// settles a fact.
func (s *Sheet) Mass(in *formula.Ingredient) formula.Mass {
	if g, ok := s.Pinned[in]; ok {
		return formula.Mass{FixedG: g}
	}
	if s.Pinned != nil && in.Amount.All && in.Of != nil {
		return formula.Mass{FixedG: s.Part(in.Of).Grams(Mass)}
	}
	return in.Grams
}

// Amount is an ingredient's mass in grams.
func (s *Sheet) Amount(in *formula.Ingredient) Interval {
	return s.Mass(in).Grams(s.Part(in.Part).TotalFlour())
}
