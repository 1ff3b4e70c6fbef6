package formula

import (
	"forebake/engine/figure"
)

// sum adds the parts of a formula up anew after an amount was narrowed; it was weighed before.
func (f *Formula) sum() {
	for _, p := range f.Order {
		flour, mass := Mass{}, Mass{}
		for _, in := range p.Ingredients {
			if in.Amount.All && in.Of != nil {
				in.Grams = Mass{FixedG: in.Of.MassG}
			}
			if in.HeldAll {
				in.Held = in.HeldBack()
			}
			if share := in.FlourIn(); share != (Interval{}) {
				flour = flour.Add(in.Grams.Times(share))
			}
			mass = mass.Add(in.Grams)
		}
		p.FlourG = flour.FixedG.Div(figure.Point(1).Sub(flour.PerFlour))
		p.MassG = mass.Grams(p.FlourG)
	}
}

// HeldBack is the reserve of an ingredient that is a share of it, or all.
func (in *Ingredient) HeldBack() Mass {
	if in.HeldPart > 0 {
		return in.Grams.Times(figure.Point(in.HeldPart))
	}
	return in.Grams
}

// FlourIn gives the grams of flour in a gram of the ingredient.
func (in *Ingredient) FlourIn() Interval {
	if in.Of == nil {
		return in.FlourShare()
	}
	if in.Of.FlourG.Hi == 0 {
		return Interval{}
	}
	return share(in.Of.FlourG, in.Of.MassG)
}

// share divides a part of a mass by the whole, within 0 and 1: plain division of
// ranges does not know that bound.
func share(part, whole Interval) Interval {
	s := part.Div(whole)
	return figure.Between(max(0, min(1, s.Lo)), max(0, min(1, s.Hi)))
}
