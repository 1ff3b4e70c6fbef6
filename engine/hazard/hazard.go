// Package hazard gives the hazards of an ingredient by itself: a dose,
// raw meat or pulses without heat, a long warm soak, raw flour on
// baked goods.
//
//	hazard.go   doses of poisons and additives   the larder's figures (larder/hazards.csv)
//	raw.go      raw meat, fish and pulses        FDA Food Code 2022, 3-401.11; FDA, Bad Bug Book
//	soak.go     soaks before the mix             FDA Fish and Fishery Hazards Guide, ch. 15
//	claims.go   promises that a name makes       the larder's allergens
//	words.go    poisons and things in words      lists of gardeners and poison centres (memory)
//	sugar.go    sugar hot enough to burn         its boiling point
//
// The unfavourable end of every range is in the figures; the rules
// take it.
package hazard

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/safety"
)

// Short names of what is asked.
type (
	Interval = figure.Interval
	Value    = figure.Value
	Sheet    = safety.Sheet
	Part     = safety.Part
)

// Of lists what the part's own ingredients hold that hurts, by the
// words of hazards.csv.
func Of(p *Part) Value {
	var out []string
	for _, in := range p.Ingredients {
		if in.Item != nil && in.Item.Hazard != "" && !slices.Contains(out, string(in.Item.Hazard)) {
			out = append(out, string(in.Item.Hazard))
		}
	}
	return figure.List(out)
}

// Holds reports whether an ingredient of the part itself holds
// the hazard.
func Holds(p *Part, h larder.Hazard) bool {
	return slices.ContainsFunc(p.Ingredients, func(in *formula.Ingredient) bool {
		return in.Item != nil && in.Item.Hazard == h
	})
}

// Dose is the amount of a hazard in a kilogram of the goods. Its unit
// follows the larder's figure for a gram: mg/kg of coumarin, g/kg of
// nutmeg. The oven's loss is taken off at the high end.
func Dose(s *Sheet, h larder.Hazard) Value {
	dose, mass := Interval{}, Interval{}
	for _, p := range s.Formula.Parts {
		part := s.Part(p)
		if len(part.TakenBy()) == 0 {
			mass = mass.Add(part.Grams(makeup.Mass))
		}
		for _, in := range p.Ingredients {
			if in.Item != nil && in.Item.Hazard == h {
				dose = dose.Add(s.Amount(in).Scale(in.Item.HazardFigure))
			}
		}
	}
	if dose.Hi == 0 {
		return figure.ValueOf(Interval{})
	}
	mass.Lo *= 1 - s.BakeLoss().Hi
	return figure.ValueOf(dose.Div(mass).Scale(1000))
}
