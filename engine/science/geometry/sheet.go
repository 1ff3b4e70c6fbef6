package geometry

import "math"

// SheetAreaCM2 gives the area in cm2 of a sheet of massG at an even
// thickness: m/(rho*t). 1 kg at 1.15 g/mL and 5 mm is 1739 cm2, 0.174
// m2. A real sheet is within SheetError.
func SheetAreaCM2(massG, densityGPerML, thicknessMM float64) (areaCM2 float64, ok bool) {
	if !positive(massG, densityGPerML, thicknessMM) {
		return 0, false
	}
	return size(massG / densityGPerML / (thicknessMM / 10))
}

// SheetMassG is the inverse of SheetAreaCM2: the mass in g for areaCM2
// at that thickness.
func SheetMassG(areaCM2, densityGPerML, thicknessMM float64) (massG float64, ok bool) {
	if !positive(areaCM2, densityGPerML, thicknessMM) {
		return 0, false
	}
	return size(areaCM2 * densityGPerML * thicknessMM / 10)
}

// LayerThicknessMM gives the thickness of a dough or a filling in mm, spread evenly
// to the edges of areaCM2: m/(rho*A). A bare strip makes it thicker.
func LayerThicknessMM(massG, densityGPerML, areaCM2 float64) (thicknessMM float64, ok bool) {
	if !positive(massG, densityGPerML, areaCM2) {
		return 0, false
	}
	return size(10 * massG / densityGPerML / areaCM2)
}

// BenchMarginMM is kept free along each bench edge, in mm, for hands
// and pin. A judgement.
const BenchMarginMM = 20

// BenchSheet is how a dough is rolled out on a bench, in equal lots.
type BenchSheet struct {
	WidthMM, LengthMM float64 // of one lot's sheet; the width is the shorter
	Fits              bool    // all of it in one lot
	LargestG          float64 // the largest mass that fits at this thickness
	Lots              int     // 1 where it fits
}

// SheetForBench gives the sheet that a dough of massG makes at
// thicknessMM on a bench. The sheet is as near square as the bench
// allows. Once its side is the bench's shorter side less BenchMarginMM
// on both, it grows only along the longer one. The convention changes
// neither the area nor the fit; a baker states another shape. Rolled
// up, the width gives the turns and the length is the roll's.
//
// The bench's two sides may come in either order. Areas carry
// SheetError: a dough within that part of LargestG may or may not
// fit. ok is false for a bench that is all margin and for over a
// million lots.
func SheetForBench(
	massG, densityGPerML, thicknessMM, benchLengthMM, benchWidthMM float64,
) (BenchSheet, bool) {
	long := math.Max(benchLengthMM, benchWidthMM) - 2*BenchMarginMM
	short := math.Min(benchLengthMM, benchWidthMM) - 2*BenchMarginMM
	if !positive(long, short) {
		return BenchSheet{}, false
	}
	largest, ok := SheetMassG(long*short/100, densityGPerML, thicknessMM)
	if !ok || !positive(massG) {
		return BenchSheet{}, false
	}
	lots := math.Max(1, math.Ceil(massG/largest*(1-countSlack)))
	if !(lots <= mostCount) {
		return BenchSheet{}, false
	}
	area, ok := SheetAreaCM2(massG/lots, densityGPerML, thicknessMM)
	if !ok {
		return BenchSheet{}, false
	}
	areaMM2 := 100 * area
	width := math.Min(short, math.Sqrt(areaMM2))
	return BenchSheet{width, areaMM2 / width, lots == 1, largest, int(lots)}, true
}
