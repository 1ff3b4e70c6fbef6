package history_test

import (
	"math"

	"forebake/engine/science/ferment"
)

// hoursApproaching adds up the hours at 26 C of a dough whose excess
// over the surroundings decays exponentially with a time constant in
// hours: many midpoints.
func hoursApproaching(fromC, ambientC, tauH, hours float64) float64 {
	const n = 20000
	sum := 0.0
	for i := range n {
		sum += ferment.TemperatureFactor(
			ambientC + (fromC-ambientC)*math.Exp(-(float64(i)+0.5)*hours/n/tauH),
		)
	}
	return sum * hours / n
}
