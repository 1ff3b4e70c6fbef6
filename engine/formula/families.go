package formula

import (
	"math"

	"forebake/engine/family"
	"forebake/engine/larder"
)

// MakeUp is what the first dough is made of, % on its flour; NaN where an amount is open.
func (f *Formula) MakeUp() family.MakeUp {
	for _, p := range f.Parts {
		var m family.MakeUp
		if p.Kind == Dough && p.FlourG.IsFinite() && p.FlourG.Lo > 0 &&
			p.addTo(&m, 100/p.FlourG.Mid()) {
			return m
		}
	}
	nan := math.NaN()
	return family.MakeUp{Hydration: nan, Sugar: nan, Fat: nan, Egg: nan}
}

// addTo adds the part's ingredients to a make-up, each gram counting factor. It is
// false for an unknown amount. Parts form no circle: order has checked.
func (p *Part) addTo(m *family.MakeUp, factor float64) bool {
	for _, in := range p.Ingredients {
		g := in.Grams.Grams(p.FlourG)
		x := factor * g.Mid()
		switch {
		case !g.IsFinite() || in.Item == nil && in.Of == nil:
			return false
		case in.Of != nil:
			whole := in.Of.MassG
			if !whole.IsFinite() || whole.Lo <= 0 || !in.Of.addTo(m, x/whole.Mid()) {
				return false
			}
			continue
		case in.Item.Flour < 1: // the water that flour holds is no hydration
			m.Hydration += x * in.Item.Water / 100
		}
		m.Sugar += x * in.Item.Sugars / 100
		m.Fat += x * in.Item.Fat / 100
		if in.Item.Is(larder.Egg) {
			m.Egg += x
		}
	}
	return true
}
