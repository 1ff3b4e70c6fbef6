// Package bakersmath is the arithmetic of the bowl: how much a mix
// warms a dough, the heat balance for the dough's temperature and the
// liquid's, ice, the trade factor as a check, the flour and water of a
// starter, and the liquid that a soak leaves outside its fruit.
//
// Package facts calls it with figures of one run each (see figure.Run).
// It reads no ingredient table, rounds nothing for the scale, and holds
// no limit of good practice. A silent model gives the reason in place
// of a figure; an impossible sum gives ok false and 0.
package bakersmath

import "math"

// answer refuses what is not a finite number.
func answer(x float64) (float64, bool) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, false
	}
	return x, true
}
