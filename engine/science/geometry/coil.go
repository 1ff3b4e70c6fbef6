package geometry

import "math"

// Coil is a sheet rolled up.
type Coil struct {
	DiameterMM, Turns float64
}

// CoilFromSheet rolls up sheetLengthMM of a sheet whose layer, dough and
// filling together, is layerMM thick, around a core of coreMM (0 for none):
//
//	D = sqrt(4*L*h/pi + d^2)    N = (D - d)/(2*h)
//
// The end face of the coil is the edge of the sheet wound up, so the area is
// exact. The length along a true spiral is a little more, which makes D up to 1 %
// too large from three turns up and 4 % at one turn (computed). A roll pulled tight thins its sheet and
// is smaller. L = 457 mm, h = 7.9 mm: 68 mm, 4.3 turns.
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

// LogDiameterMM gives the diameter in mm of a round log, or of a coil without
// a core, from its mass: sqrt(4*m/(pi*rho*W)) for a length W in mm. A filled coil has the
// MeanDensity of dough and filling; the answer then agrees with CoilFromSheet.
func LogDiameterMM(massG, densityGPerML, lengthMM float64) (diameterMM float64, ok bool) {
	if !positive(massG, densityGPerML, lengthMM) {
		return 0, false
	}
	return size(math.Sqrt(4 * 1000 * massG / (math.Pi * densityGPerML * lengthMM)))
}

// LogLengthMM gives the length in mm of a round log of diameterMM.
func LogLengthMM(massG, densityGPerML, diameterMM float64) (lengthMM float64, ok bool) {
	if !positive(massG, densityGPerML, diameterMM) {
		return 0, false
	}
	return size(4 * 1000 * massG / densityGPerML / (math.Pi * diameterMM * diameterMM))
}

// Slices gives how many whole slices of sliceMM a roll of rollMM holds, and
// the length in mm left over. Nothing is lost to the knife, and the ends are
// not trimmed. A 12 in log in 1 in slices gives 12. ok is false for over a million.
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

// CoilFit is a coil in a tin: its diameter in mm when risen, and the room in mm
// across the tin now and then. Room below zero means that it does not fit.
type CoilFit struct {
	ProofedMM, RoomMM, ProofedRoomMM float64
}

// CoilInTin sets a coil across a tin's inside width and lets it rise to
// volumeGain times its volume (2 for doubling, at least 1), the same in all directions: D times the
// cube root, 1.26 for doubling. A roll held at both ends grows across only, by
// the square root, 1.41. A loaf is meant to reach the tin's sides; a coil of
// slices is not.
func CoilInTin(diameterMM, insideWidthMM, volumeGain float64) (CoilFit, bool) {
	if !positive(diameterMM, insideWidthMM, volumeGain) || volumeGain < 1 {
		return CoilFit{}, false
	}
	proofed := diameterMM * math.Cbrt(volumeGain)
	if !positive(proofed) {
		return CoilFit{}, false
	}
	return CoilFit{proofed, insideWidthMM - diameterMM, insideWidthMM - proofed}, true
}
