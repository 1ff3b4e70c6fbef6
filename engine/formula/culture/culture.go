// Package culture tells how wet a sourdough culture is: by its label,
// else by its name.
package culture

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

// Hydration is a culture's water over its flour, g/g, as written in %, else by
// its name. ok is false for other ingredients.
func Hydration(item *larder.Item, name string, written *figure.Interval) (h figure.Estimate,
	ok bool) {
	if item == nil || item.Yeast != 0 || item.Flour == 0 || !item.Is(larder.Leavens) {
		return figure.Estimate{}, false
	}
	switch {
	case written != nil:
		h := written.Scale(0.01)
		return figure.Estimate{Low: h.Lo, Mid: h.Mid(), High: h.Hi}, true
	case math.Abs(item.Flour-stiffShare) > 0.001:
		return figure.Exactly(1/item.Flour - 1), true
	case slices.Contains(eitherStarter, strings.ToLower(strings.Join(strings.Fields(name), " "))):
		return bakersmath.UnsaidStarter, true
	}
	return bakersmath.StiffStarter, true
}

// Shares are the grams of flour and of water in a gram of the culture.
func Shares(item *larder.Item, h figure.Estimate) (flour, water figure.Interval) {
	f, w, silent := bakersmath.StarterShares(h)
	if silent != "" { // a house's own share may lie outside the starters that are published
		f, w = figure.Exactly(item.Flour), figure.Exactly(1-item.Flour)
	}
	return f.Interval(), w.Interval()
}
