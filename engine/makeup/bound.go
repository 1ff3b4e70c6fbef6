package makeup

import (
	"math"

	"forebake/engine/formula"
	"forebake/engine/larder"
)

// wheres names the kind of part for a bound, by a part's kind.
var wheres = map[formula.Kind]larder.Where{
	formula.Dough:      larder.InDough,
	formula.Preferment: larder.InPreferment,
	formula.Filling:    larder.InFilling,
	formula.Topping:    larder.InTopping,
	formula.Wash:       larder.InWash,
	formula.Syrup:      larder.InSyrup,
}

// bound is the bound of the class of an ingredient in this kind
// of part.
func (p *Part) bound(in *formula.Ingredient) (larder.Bound, bool) {
	if in.Item == nil {
		return larder.Bound{}, false
	}
	return larder.BoundOf(in.Item, wheres[p.Kind])
}

// Seasons reports whether an ingredient's class bounds its usual share
// of the part.
func (p *Part) Seasons(in *formula.Ingredient) bool {
	_, ok := p.bound(in)
	return ok
}

// MostUsual is the most of an open ingredient that is usual in the
// part, g, by its class. ok is false without a bound, or where
// something else in the part is open without one, so that the part's
// weight is unknown.
func (p *Part) MostUsual(in *formula.Ingredient) (grams float64, ok bool) {
	mine, ok := p.bound(in)
	if !ok || !in.Amount.Open || in.Grams.FixedG.IsFinite() {
		return 0, false
	}
	known, share := 0.0, 0.0
	for _, other := range p.Ingredients {
		if !other.Amount.Open || other.Grams.FixedG.IsFinite() {
			known += p.sheet.Amount(other).Hi
			continue
		}
		b, bounded := p.bound(other)
		if !bounded {
			return 0, false
		}
		share += b.MostPct / 100
	}
	grams = mine.MostPct / 100 * known / (1 - share)
	return grams, share < 1 && grams > 0 && !math.IsInf(grams, 0)
}
