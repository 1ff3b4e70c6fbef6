package levers

import (
	"math"

	"forebake/engine/quantity"
)

// rounded removes the error of binary fractions.
func rounded(x float64) float64 { return math.Round(x*1e9) / 1e9 }

// toStep gives the multiple of step nearest to x.
func toStep(x, step float64) float64 { return rounded(math.Round(x/step) * step) }

// Rounded gives the multiple of step nearest to x.
func Rounded(x, step float64) float64 { return toStep(x, step) }

// plain writes a number as a baker does.
func plain(x float64) string { return quantity.Plain(x) }

// inUnit converts a number of a base unit into the unit that the baker wrote.
func inUnit(base float64, unit string) float64 {
	x, ok := quantity.FromBase(base, unit)
	if !ok {
		return base
	}
	return rounded(x)
}

// inBase converts a number of a unit into its base unit.
func inBase(x float64, unit string) float64 {
	b, _, ok := quantity.ToBase(x, unit)
	if !ok {
		return x
	}
	return b
}

// InUnit converts a figure in base units to the lever's unit.
func (l *Lever) InUnit(base float64) float64 { return inUnit(base, l.Unit) }

// fineStep is the finest step that a person sets or weighs near x. scale is the
// step of the kitchen's scale, g.
func fineStep(unit string, x, scale float64) float64 {
	weighed := func(nice float64) float64 { // a multiple of nice that the scale can show
		return nice * max(1, math.Ceil(inUnit(scale, unit)/nice-1e-9))
	}
	switch unit {
	case "g":
		if x >= 100 {
			return max(scale, 1)
		}
		return scale
	case "kg":
		return weighed(0.001)
	case "mg":
		return weighed(1)
	case "oz":
		return weighed(0.05)
	case "lb":
		return weighed(0.01)
	case "%":
		return 0.1
	case "ml":
		if x >= 100 {
			return 5
		}
		return 1
	case "l":
		return 0.01
	case "tsp", "cup":
		return 0.25
	case "tbsp", "floz":
		return 0.5
	case "cm":
		return 0.1
	case "in":
		return 0.05
	case "m":
		return 0.001
	}
	return 1
}

// coarsest is the widest step in which a baker chooses, by base unit. A % is of
// the flour.
var coarsest = map[string]float64{"g": 5, "%": 1, "ml": 5, "mm": 5, "pieces": 1}

// RoundAt is the step in which a baker would choose a value near x. Long times are told by the
// quarter, the half and the whole hour.
func (g Grid) RoundAt(x float64) float64 {
	if g.Unit != "min" || g.Round < roundMin && x <= shortEnds {
		return g.Round
	}
	switch {
	case x < 90:
		return roundMin
	case x < 4*60:
		return 15
	case x < 12*60:
		return 30
	}
	return 60
}

// roundStep is a baker's step near x. It is 1, 2 or 5 times a power of
// ten, at most a twentieth of x. It is never finer than fine, nor wider
// than coarsest allows.
func roundStep(unit string, x, fine float64) float64 {
	most := math.Abs(x) / 20
	if _, kind, ok := quantity.ToBase(1, unit); ok {
		if widest, known := coarsest[kind.Base()]; known {
			most = min(most, inUnit(widest, unit))
		}
	}
	step := fine
	for _, nice := range []float64{1, 2, 5} {
		if most > 0 {
			power := math.Pow(10, math.Floor(math.Log10(most/nice)+1e-9))
			step = max(step, rounded(nice*power))
		}
	}
	return toStep(step, fine)
}
