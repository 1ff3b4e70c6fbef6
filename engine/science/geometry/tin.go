package geometry

import "math"

// TinVolumeML gives the volume in mL of a straight tin, inside
// lengths in mm. Tins taper and have round corners, and labels
// often give outside sizes. The box is 5-15 % too much (common
// practice; two published tins: 6 and 13 %, read). Measure with
// water where it matters.
func TinVolumeML(lengthMM, widthMM, heightMM float64) (volumeML float64, ok bool) {
	if !positive(lengthMM, widthMM, heightMM) {
		return 0, false
	}
	return size(lengthMM * widthMM * heightMM / 1000)
}

// RoundTin is a round tin's base, in mm: long and wide are equal unless
// it is an oval. chimneyMM is the tube in its middle, or 0.
type RoundTin struct{ LongMM, WideMM, ChimneyMM float64 }

// areaMM2 is the tin's base without the tube.
func (r RoundTin) areaMM2() float64 {
	return math.Pi / 4 * (r.LongMM*r.WideMM - r.ChimneyMM*r.ChimneyMM)
}

// VolumeML gives the volume in mL of a straight round tin of a height
// in mm. A kugelhopf tin has flutes and tapers: a tenth to a fifth less
// (common practice). Measure with water.
func (r RoundTin) VolumeML(heightMM float64) (volumeML float64, ok bool) {
	if !(r.ChimneyMM >= 0) || !positive(r.LongMM, r.WideMM, heightMM, r.areaMM2()) {
		return 0, false
	}
	return size(r.areaMM2() * heightMM / 1000)
}

// HalfMM gives the half dimensions of what fills the tin's base, as a
// box: with a tube it is the ring unrolled, as long as its middle and
// as wide as its gap. Without one it is the tin's long and wide. The
// height follows from the volume.
func (r RoundTin) HalfMM(massG, densityGPerML float64) (HalfSize, bool) {
	if !(r.ChimneyMM >= 0) || !positive(massG, densityGPerML, r.LongMM, r.WideMM, r.areaMM2()) {
		return HalfSize{}, false
	}
	height, ok := size(1000 * massG / densityGPerML / r.areaMM2())
	h := HalfSize{r.LongMM / 2, r.WideMM / 2, height / 2}
	if r.ChimneyMM > 0 {
		across := math.Sqrt(r.LongMM * r.WideMM)
		h.LengthMM, h.WidthMM = math.Pi*(across+r.ChimneyMM)/4, (across-r.ChimneyMM)/4
	}
	if !ok || !positive(h.LengthMM, h.WidthMM, h.HeightMM) {
		return HalfSize{}, false
	}
	return h, true
}
