package geometry

import "math"

// BallRadiusMM gives the radius in mm of a ball: (3*m/(4*pi*rho))^(1/3).
func BallRadiusMM(massG, densityGPerML float64) (radiusMM float64, ok bool) {
	if !positive(massG, densityGPerML) {
		return 0, false
	}
	return size(math.Cbrt(3 * 1000 * massG / densityGPerML / (4 * math.Pi)))
}

// HalfSize is half of a piece's length, width and height, mm, for a
// heat model.
type HalfSize struct {
	LengthMM, WidthMM, HeightMM float64
}

// Usual height to width of a free-standing piece, and length to width
// of a long loaf (common practice). A fifth either way is usual.
const (
	BunHeight  = 0.5
	LoafHeight = 0.6
	LoafLength = 2.5
)

// BunHalfMM gives the half dimensions of a bun, a ball flattened to
// heightToWidth (in (0, 1]; usually BunHeight): V = pi/6*w*w*h. Use its
// density into the oven. A bun has a flat foot and fuller sides.
// Against two stated buns the width is 15 % over and 8 % under
// (computed); a fifth either way is fair.
func BunHalfMM(massG, densityGPerML, heightToWidth float64) (HalfSize, bool) {
	return LoafHalfMM(massG, densityGPerML, 1, heightToWidth)
}

// LoafHalfMM gives the half dimensions of a free-standing loaf: an
// ellipsoid, V = pi/6*l*w*h, lengthToWidth at least 1 (usually
// LoafLength) and heightToWidth in (0, 1] (usually LoafHeight). Error
// as BunHalfMM.
func LoafHalfMM(massG, densityGPerML, lengthToWidth, heightToWidth float64) (HalfSize, bool) {
	if !positive(massG, densityGPerML, lengthToWidth, heightToWidth) || lengthToWidth < 1 ||
		heightToWidth > 1 {
		return HalfSize{}, false
	}
	// An ellipsoid's half width is that of the ball before flattening.
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

// RingHalfMM gives the half dimensions of a ring, as a loaf of even
// thickness: V = pi/4*l*w*h. aroundToWidth (at least 1) is the length
// along its middle over its width. No heat enters at its joined ends:
// the length given is that of an endless one. Error as BunHalfMM.
func RingHalfMM(massG, densityGPerML, aroundToWidth, heightToWidth float64) (HalfSize, bool) {
	if !positive(massG, densityGPerML, aroundToWidth, heightToWidth) || aroundToWidth < 1 ||
		heightToWidth > 1 {
		return HalfSize{}, false
	}
	volume := 1000 * massG / densityGPerML // mm3
	wide, ok := size(math.Cbrt(volume / (math.Pi / 4 * aroundToWidth * heightToWidth)))
	if !ok {
		return HalfSize{}, false
	}
	return HalfSize{wide * aroundToWidth / 2, wide / 2, wide / 2 * heightToWidth}, true
}

// TinLoafHalfMM gives the half dimensions of a loaf that fills its
// tin's inside length and width. The height follows from the volume,
// with a flat top, over the rim or not. Two stated plant loaves are
// within 10 % of their height at 0.30 g/mL (computed); a dome is higher
// in the middle.
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
