// Package bakersmath is the arithmetic of the bowl: a mix's warming,
// the heat balance for the temperatures of dough and liquid, ice, the
// trade factor as a check, a starter's flour and water, and a soak's
// free liquid.
//
// Package facts calls it with figures of one run each (see figure.Run).
// It reads no ingredient table, rounds nothing for the scale, and holds
// no limit of good practice. A silent model gives its reason; an
// impossible sum gives ok false and 0.
package bakersmath

import "math"

// answer refuses what is not a finite number.
func answer(x float64) (float64, bool) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, false
	}
	return x, true
}
