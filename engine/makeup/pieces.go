package makeup

import (
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/science/bakersmath"
)

const (
	// g per 100 g: dried and candied fruit have less, fresh fruit and
	// purees more
	driedFruitWater = 40
	cocoaSugars     = 10 // g per 100 g: chocolate holds more, cocoa less
)

// IsMelted reports whether a fat is worked in as a liquid on purpose, by its
// words; a figure alone may be a slip.
func IsMelted(in *formula.Ingredient) bool {
	return strings.Contains(strings.ToLower(in.Form+" "+in.Temp.Text), "melted")
}

// isPieces reports whether an ingredient lies in a dough as pieces:
// dried and candied fruit, nuts, unmelted chocolate. Published
// hydrations, sugars and fats of such doughs leave them out, and the
// yeast does not feel them.
func isPieces(in *formula.Ingredient) bool {
	switch item := in.Item; item.Class {
	case larder.ClassFruit:
		return isDriedFruit(item) || item.Is(larder.KeptOut) && !slices.ContainsFunc(
			strings.Fields(strings.ToLower(in.Form)), isBroken)
	case larder.ClassNut:
		return true
	case larder.ClassChocolate:
		return item.Sugars > cocoaSugars && in.Form != "melted"
	}
	return false
}

// isBroken reports whether a word of an ingredient's as says that fresh
// fruit is no longer in pieces.
func isBroken(word string) bool {
	switch word {
	case "puree", "pureed", "puréed", "purée", "mashed", "grated", "crushed", "juiced":
		return true
	}
	return false
}

func isDriedFruit(item *larder.Item) bool {
	return item.Class == larder.ClassFruit && !item.Is(larder.Pectin) &&
		item.Water < driedFruitWater
}

// isSoakLiquid reports whether fruit takes the ingredient up: water,
// juice, milk, spirits.
func isSoakLiquid(item *larder.Item) bool {
	return item.Class == larder.ClassLiquid || item.Is(larder.Pourable)
}

// soaked is the liquid of one soak of fruit, with its share outside
// the pieces.
type soaked struct {
	liquids []*formula.Ingredient
	outside Interval
}

// outside is the share of an ingredient's water, sugar and the like
// outside of pieces, where the part is a dough or goes into one.
// p.soaks is filled before.
func (p *Part) outside(in *formula.Ingredient) Interval {
	if isPieces(in) {
		return Interval{}
	}
	for i := range p.soaks {
		if slices.Contains(p.soaks[i].liquids, in) {
			return p.soaks[i].outside
		}
	}
	return figure.Point(1)
}

// addSoaks fills p.soaks. A soak step takes its fruit and liquid. Fruit
// and liquid that make up a part lie together even without a step. What
// the fruit has taken up by the dough is then open.
func (p *Part) addSoaks() {
	p.soaks = nil
	for _, s := range p.Steps {
		if !s.Verb.Soaks() {
			continue
		}
		list := s.With
		if len(list) == 0 {
			list = p.Ingredients
		}
		p.addSoak(list, false)
	}
	if len(p.soaks) == 0 && !p.IsDough() {
		p.addSoak(p.Ingredients, true)
	}
}

func (p *Part) addSoak(list []*formula.Ingredient, open bool) {
	var out soaked
	fruit, liquid := formula.Mass{}, formula.Mass{}
	for _, in := range list {
		switch {
		case in.Of != nil, in.Item.Flour > 0, in.Item.Yeast > 0:
			return // a dough or a sponge, no soak of fruit
		case isDriedFruit(in.Item):
			fruit = fruit.Add(p.sheet.Mass(in))
		case isSoakLiquid(in.Item):
			liquid = liquid.Add(p.sheet.Mass(in))
			out.liquids = append(out.liquids, in)
		}
	}
	if fruit == (formula.Mass{}) || len(out.liquids) == 0 {
		return
	}
	out.outside = outsideShare(liquid.Grams(p.FlourG), fruit.Grams(p.FlourG))
	if open {
		out.outside = out.outside.Hull(figure.Point(1))
	}
	p.soaks = append(p.soaks, out)
}

// outsideShare is the share of a soak's liquid outside the pieces:
// least for little liquid on much fruit.
func outsideShare(liquidG, piecesG Interval) Interval {
	share := func(liquid, pieces float64) Interval {
		if liquid == 0 {
			return figure.Between(0, 1)
		}
		left, silent := bakersmath.SoakedOutside(liquid, pieces)
		if silent != "" {
			return figure.Between(0, 1)
		}
		return left.Interval().Scale(1 / liquid)
	}
	return share(liquidG.Lo, piecesG.Hi).Hull(share(liquidG.Hi, piecesG.Lo))
}
