package geometry

import "math"

// BallRadiusMM gives the radius in mm of a ball: (3*m/(4*pi*rho))^(1/3).
func BallRadiusMM(massG, densityGPerML float64) (radiusMM float64, ok bool) {
	if !positive(massG, densityGPerML) {
		return 0, false
	}
	return size(math.Cbrt(3 * 1000 * massG / densityGPerML / (4 * math.Pi)))
}

// HalfSize is half of a piece's length, width and height, in mm: what a heat
// model of a piece wants.
type HalfSize struct {
	LengthMM, WidthMM, HeightMM float64
}

// Usual height:width of a piece standing free, and length:width of a long
// loaf. Common practice.
const (
	BunHeightLow, BunHeight, BunHeightHigh    = 0.4, 0.5, 0.6
	LoafHeightLow, LoafHeight, LoafHeightHigh = 0.5, 0.6, 0.7
	LoafLengthLow, LoafLength, LoafLengthHigh = 1.5, 2.0, 2.5
)

// BunHalfMM gives the half dimensions of a bun, a ball flattened to
// heightToWidth (in (0, 1]; usually BunHeight): V = pi/6*w*w*h. Take the density it goes to the
// oven with. A bun has a flat foot and fuller sides: against two stated buns the
// width is 15 % over and 8 % under (computed), a fifth either way is fair.
func BunHalfMM(massG, densityGPerML, heightToWidth float64) (HalfSize, bool) {
	return LoafHalfMM(massG, densityGPerML, 1, heightToWidth)
}

// LoafHalfMM gives the half dimensions of a loaf that stands free: an
// ellipsoid, V = pi/6*l*w*h, lengthToWidth at least 1 (usually LoafLength) and heightToWidth in (0, 1]
// (usually LoafHeight). Error as BunHalfMM.
func LoafHalfMM(massG, densityGPerML, lengthToWidth, heightToWidth float64) (HalfSize, bool) {
	if !positive(massG, densityGPerML, lengthToWidth, heightToWidth) || lengthToWidth < 1 || heightToWidth > 1 {
		return HalfSize{}, false
	}
	// The half width of an ellipsoid is that of the ball it was squeezed from.
	ball, ok := BallRadiusMM(massG, densityGPerML)
	if !ok {
		return HalfSize{}, false
	}
	half := ball / math.Cbrt(lengthToWidth) / math.Cbrt(heightToWidth)
	h := HalfSize{half * lengthToWidth, half, half * heightToWidth}
	if !positive(h.LengthMM, h.WidthMM, h.HeightMM) {
		return HalfSize{}, false
	}
	return h, true
}

// TinLoafHalfMM gives the half dimensions of a loaf that fills its tin's
// inside length and width: the height is what the volume asks for, as a flat top,
// over the rim or not. Two stated plant loaves come out within 10 % of their height at ProofedDensityLow
// (computed); a dome is higher in the middle.
func TinLoafHalfMM(massG, densityGPerML, insideLengthMM, insideWidthMM float64) (HalfSize, bool) {
	if !positive(massG, densityGPerML, insideLengthMM, insideWidthMM) {
		return HalfSize{}, false
	}
	height, ok := size(1000 * massG / densityGPerML / insideLengthMM / insideWidthMM)
	if !ok {
		return HalfSize{}, false
	}
	h := HalfSize{insideLengthMM / 2, insideWidthMM / 2, height / 2}
	if !positive(h.LengthMM, h.WidthMM, h.HeightMM) {
		return HalfSize{}, false
	}
	return h, true
}

// Braid is a flat plait of equal strands.
type Braid struct {
	StrandMM                    float64 // diameter of a strand before plaiting
	LengthMM, WidthMM, HeightMM float64 // of the plait
}

// A plait is shorter than its strands by the way they take from side to side,
// and thicker than one strand and thinner than two where they cross. Both are
// judgements from common practice; no measurement was found.
const (
	braidShortening = 0.75 // plait length : strand length
	braidThickness  = 1.6  // plait height : strand diameter
)

// BraidStrand gives the diameter of each of strands equal strands, 2 to 12,
// rolled to strandMM of length from massG in all: sqrt(4*m/(n*pi*rho*L)). That is exact for even
// strands. The plait's own size is a ROUGH estimate, right to a third: a flat
// plait, its section an ellipse that holds the volume. A high plait of four strands or
// more is narrower and taller. Tapered ends are left out.
func BraidStrand(massG, densityGPerML float64, strands int, strandMM float64) (Braid, bool) {
	if strands < 2 || strands > 12 {
		return Braid{}, false
	}
	d, ok := LogDiameterMM(massG/float64(strands), densityGPerML, strandMM)
	if !ok {
		return Braid{}, false
	}
	// n*pi/4*d^2*L = pi/4*width*height*shortening*L
	b := Braid{d, braidShortening * strandMM, float64(strands) * d / (braidThickness * braidShortening), braidThickness * d}
	if !positive(b.StrandMM, b.LengthMM, b.WidthMM, b.HeightMM) {
		return Braid{}, false
	}
	return b, true
}
