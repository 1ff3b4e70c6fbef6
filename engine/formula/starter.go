package formula

import (
	"math"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/larder"
	"forebake/engine/science/bakersmath"
)

// stiffShare is the larder's share of flour in a stiff starter: two parts of flour
// and one of water. A house's own starter gives its share.
const stiffShare = 2.0 / 3

// eitherStarter are names that bakers use for a stiff starter and for a liquid one (read).
var eitherStarter = []string{"lievito madre", "pasta madre"}

// Starter is a culture's water over its flour, g/g, as written, else by its name.
// ok is false for other ingredients.
func (in *Ingredient) Starter() (hydration figure.Estimate, ok bool) {
	item := in.Item
	if item == nil || item.Yeast != 0 || item.Flour == 0 || !item.Is(larder.Leavens) {
		return figure.Estimate{}, false
	}
	switch {
	case in.Hydration != nil:
		h := in.Hydration.Interval.Scale(0.01)
		return figure.Estimate{Low: h.Lo, Mid: h.Mid(), High: h.Hi}, true
	case math.Abs(item.Flour-stiffShare) > 0.001:
		return figure.Exactly(1/item.Flour - 1), true
	case slices.Contains(eitherStarter, strings.ToLower(strings.Join(strings.Fields(in.Name), " "))):
		return bakersmath.UnsaidStarter, true
	}
	return bakersmath.StiffStarter, true
}

// starterShares are the grams of flour and of water in a gram of the culture.
func (in *Ingredient) starterShares() (flour, water Interval, ok bool) {
	h, ok := in.Starter()
	if !ok {
		return Interval{}, Interval{}, false
	}
	f, w, silent := bakersmath.StarterShares(h)
	if silent != "" { // a house's own share may lie outside the starters that are published
		f, w = figure.Exactly(in.Item.Flour), figure.Exactly(1-in.Item.Flour)
	}
	return f.Interval(), w.Interval(), true
}

// FlourShare is the flour in a gram of an ingredient of the larder, g.
func (in *Ingredient) FlourShare() Interval {
	if flour, _, ok := in.starterShares(); ok {
		return flour
	}
	if span := in.Item.FlourSpan; span != (Interval{}) {
		return span
	}
	return figure.Point(in.Item.Flour)
}

// StarterWater is the water in a gram of a culture, g, without the flour's own moisture.
func (in *Ingredient) StarterWater() (Interval, bool) {
	_, water, ok := in.starterShares()
	return water, ok
}
