package scale

import (
	"math"

	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/quantity"
)

// weighed is an amount at another size, in the words of a baker.
type weighed struct {
	text string
	unit quantity.Kind // of text
}

// stepOf is the smallest step in which an amount of a unit is
// weighed or measured out, in that unit. scaleG is the step of the
// kitchen's scale.
func stepOf(unit string, scaleG float64) float64 {
	_, kind, _ := quantity.ToBase(1, unit)
	switch kind {
	case quantity.Mass:
		s, _ := quantity.FromBase(scaleG, unit)
		return niceStep(s)
	case quantity.Volume:
		switch unit {
		case "tsp", "cup":
			return 0.25
		case "tbsp", "floz":
			return 0.5
		case "l":
			return 0.005
		case "dl":
			return 0.05
		case "cl":
			return 0.5
		}
	}
	return 1
}

// niceStep is the smallest of 1, 2 and 5 times a power of ten that a
// scale of that step can show, or x where it is one.
func niceStep(x float64) float64 {
	power := math.Pow(10, math.Floor(math.Log10(x)+1e-9))
	for _, n := range []float64{1, 2, 5, 10} {
		if s := n * power; s >= x*(1-1e-9) {
			return s
		}
	}
	return x
}

// toStep is the multiple of step nearest to x, without the error of
// binary fractions.
func toStep(x, step float64) float64 {
	return math.Round(math.Round(x/step)*step*1e9) / 1e9
}

// onScale rounds x to a step. A figure that would come to nothing keeps
// two digits: it is too small for the scale, and the report says so.
func onScale(x, step float64) float64 {
	if y := toStep(x, step); y > 0 || x <= 0 {
		return y
	}
	power := math.Pow(10, math.Floor(math.Log10(x))-1)
	return math.Max(1e-6, math.Round(math.Round(x/power)*power*1e9)/1e9)
}

// nearlyWhole is how far a number of eggs may lie from a whole one and
// still be counted.
const nearlyWhole = 0.02

// scaled writes an amount, times a factor. A number of pieces that is
// not whole is written by weight: an egg is beaten and weighed.
func scaled(g formula.Given, item *larder.Item, factor, scaleG float64) weighed {
	lo, hi := g.Lo*factor, g.Hi*factor
	if g.Kind == quantity.Count {
		whole := math.Round(hi)
		switch {
		case g.IsPoint() && whole >= 1 && math.Abs(hi-whole) <= nearlyWhole:
			return weighed{g.Written(whole, whole), quantity.Count}
		case item == nil || item.Piece <= 0:
			return weighed{g.Written(toCents(lo), toCents(hi)), quantity.Count}
		}
		step := niceStep(scaleG)
		in := quantity.Quantity{Kind: quantity.Mass, Unit: "g"}
		return weighed{in.Written(onScale(lo*item.Piece, step), onScale(hi*item.Piece, step)),
			quantity.Mass}
	}
	step := stepOf(g.Unit, scaleG)
	base := func(x float64) float64 {
		y, _ := quantity.FromBase(x, g.Unit)
		b, _, _ := quantity.ToBase(onScale(y, step), g.Unit)
		return b
	}
	return weighed{g.Written(base(lo), base(hi)), g.Kind}
}

// byWeight is a number of pieces in g.
func byWeight(g formula.Given, item *larder.Item) formula.Given {
	if g.Kind == quantity.Count {
		g.Quantity = quantity.Quantity{Kind: quantity.Mass, Interval: g.Interval.Scale(item.Piece),
			Unit: "g"}
	}
	return g
}

func toCents(x float64) float64 { return math.Round(100*x) / 100 }

// isCritical reports whether an error of the scale shows in the dough. Small
// weights of yeast, salt, leaven and spice have large effects.
func isCritical(item *larder.Item) bool {
	switch item.Class {
	case larder.ClassYeast, larder.ClassSalt, larder.ClassSpice, larder.ClassLeaven:
		return true
	}
	return false
}
