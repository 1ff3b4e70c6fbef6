package ferment

import (
	"math"

	"forebake/engine/figure"
)

// The one error of a rise in percent-hours at 26 C, factors either way.
//
// sameDayError is twice the standard deviation of ln E for a new card,
// from the four published cards for a doubling: D-055, quantity rolls,
// challah, and the sweet dough F-50 that was used in no fit. They have
// 8.6 to 20 % sugar and 26 to 32 C; the model's errors there, in sugar,
// warmth and dose together, are in their scatter.
//
// overnightError adds that of the cold, in quadrature. measuredError is
// one standard deviation: how far a doubling differs between cards once
// the rise itself was read.
const (
	sameDayError   = 1.4
	overnightError = 1.8
	measuredError  = 1.17
)

// Errors of TemperatureFactor: warmError holds its four points,
// coldError the one below ColdBelowC. There a retard rule for levain
// bread has 2.25 from 5.6 to 10 C and the curve 3.43 (read).
const (
	warmError = 1.3
	coldError = 1.6
)

// RiseModel states what a rise in percent-hours stands on.
var RiseModel = figure.Model{
	Name: "rise", Unit: "%-hours",
	Error: "factor 1.4; with a long retard 1.8; after a measured rise 1.17",
	Source: "one doubling is 1.25, from three published cards (computed); the error is twice the " +
		"scatter of those and of one more that was used in no fit",
}

// RiseError is the error factor of a rise: with a long retard, and
// where the baker has measured a rise of the same dough. It covers the
// whole model; the error of Pace is not added.
func RiseError(retarded, measured bool) float64 {
	switch {
	case measured:
		return measuredError
	case retarded:
		return overnightError
	}
	return sameDayError
}

// MostRise is the largest size of a dough that is printed, against 1 at
// the start. A dough with more gas has long lost it (judgement).
const MostRise = 6

// RiseOf gives a dough's size against 1 at the start, after yeast work
// in percent-hours: DoublingE doubles it.
func RiseOf(work float64) float64 { return math.Exp2(work / DoublingE) }

// WorkOf is the inverse of RiseOf: the yeast work behind a
// measured rise.
func WorkOf(rise float64) float64 { return DoublingE * math.Log2(rise) }

// TemperatureError is the error factor of hours at 26 C, by the dough's
// coldest working temperature, C.
func TemperatureError(coldestC float64) float64 {
	if coldestC < ColdBelowC {
		return coldError
	}
	return warmError
}

// Yeast dies in dough between these, C: 130 to 140 F (read). DeadC is
// the textbooks' 138 F (memory).
const (
	diesFromC = 54.4
	deadC     = 58.9
)

// Dead reports whether a dough's yeast is dead after a temperature in
// C; open between the two published ends.
func Dead(dough figure.Interval) figure.Truth {
	switch {
	case dough.Lo >= deadC:
		return figure.Yes
	case dough.Hi < diesFromC:
		return figure.No
	}
	return figure.Open
}
