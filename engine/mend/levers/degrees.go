package levers

import (
	"math"

	"forebake/engine/formula"
)

// Bounds of temperatures where the rule gives none, C.
const (
	coldestC = -25
	hottestC = 300
)

// degreeStep is the step of temperatures in their own unit, for setting
// and for choosing.
const degreeStep = 1

// givenDegrees reads a temperature in a unit; NaN where none
// is written.
func givenDegrees(g formula.Given, unit string) Setting {
	if !g.Set {
		return At(math.NaN())
	}
	return At(inUnit(g.Hi, unit))
}

// degreesText writes another temperature, C. A range keeps its width.
func degreesText(g formula.Given, high float64) string {
	if !g.Set {
		return plain(high) + " C"
	}
	return g.Written(high-(g.Hi-g.Lo), high)
}

// ovenFromC is what an oven or hot fat has at least, C, and ovenRound
// the degrees in which a baker sets it.
const ovenFromC, ovenRound = 100, 5.0

// degreeGrid gives the values of a step's temperature in its own unit,
// else in C.
func degreeGrid(g formula.Given) Grid {
	unit := "C"
	if g.Set {
		unit = g.Unit
	}
	low, high := inUnit(coldestC, unit), inUnit(hottestC, unit)
	round := float64(degreeStep)
	if g.Set && g.Lo > ovenFromC {
		round = ovenRound
	}
	return Grid{unit, degreeStep, round, low, high, Coarse{}}
}
