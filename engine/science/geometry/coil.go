package geometry

import "math"

// Coil is a sheet rolled up.
type Coil struct {
	DiameterMM, Turns float64
}

// CoilFromSheet rolls up sheetLengthMM of a sheet whose layer, dough
// and filling together, is layerMM thick, around a core of coreMM (0
// for none):
//
//	D = sqrt(4*L*h/pi + d^2)    N = (D - d)/(2*h)
//
// The coil's end face is the sheet's wound edge, so the area is exact.
// A true spiral is a little longer, which makes D up to 1 % too large
// from three turns up and 4 % at one turn (computed). A roll pulled
// tight thins its sheet and is smaller. L = 457 mm, h = 7.9 mm: 68 mm,
// 4.3 turns.
func CoilFromSheet(sheetLengthMM, layerMM, coreMM float64) (Coil, bool) {
	if !positive(sheetLengthMM, layerMM) || !(coreMM >= 0) {
		return Coil{}, false
	}
	grown := 4 * sheetLengthMM * layerMM / math.Pi
	d := math.Sqrt(grown + coreMM*coreMM)
	// D - d without losing digits around a large core.
	turns := grown / (d + coreMM) / (2 * layerMM)
	if !positive(d, turns) {
		return Coil{}, false
	}
	return Coil{d, turns}, true
}

// Slices gives the whole slices of sliceMM in a roll of rollMM, and the
// remaining length in mm, without losses at knife or ends. A 12 in log
// in 1 in slices gives 12. ok is false for over a million.
func Slices(rollMM, sliceMM float64) (slices int, restMM float64, ok bool) {
	if !positive(rollMM, sliceMM) {
		return 0, 0, false
	}
	n := math.Floor(rollMM / sliceMM * (1 + countSlack))
	if !(n <= mostCount) {
		return 0, 0, false
	}
	return int(n), math.Max(0, rollMM-n*sliceMM), true
}
