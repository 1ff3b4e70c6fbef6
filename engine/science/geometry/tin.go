package geometry

// TinVolumeML gives the volume in mL of a straight tin, inside lengths in mm.
// Tins taper and have round corners, and labels are often outside sizes: the box
// is 5-15 % too much (common practice; two published tins: 6 and 13 %, read). Measure with water where it matters.
func TinVolumeML(lengthMM, widthMM, heightMM float64) (volumeML float64, ok bool) {
	if !positive(lengthMM, widthMM, heightMM) {
		return 0, false
	}
	return size(lengthMM * widthMM * heightMM / 1000)
}

// FillMLPerG gives mL of tin for each g of dough, and for each g of dough and
// filling together. A filling does not rise, so the dough must fill the tin:
// perTotal = perDough*dough/(dough + filling). fillingG may be 0.
//
// Published per g of dough: 4.4 wholesale white, 3.8-4.3 milk bread (read);
// brioche 2.6-3.6, and 2.4-3.2 per g in all for filled and twisted loaves (common practice).
func FillMLPerG(volumeML, doughG, fillingG float64) (perDough, perTotal float64, ok bool) {
	if !positive(volumeML, doughG, doughG+fillingG) || fillingG < 0 {
		return 0, 0, false
	}
	perDough, perTotal = volumeML/doughG, volumeML/(doughG+fillingG)
	if !positive(perDough, perTotal) {
		return 0, 0, false
	}
	return perDough, perTotal, true
}

// DoughForTinG is FillMLPerG the other way round: the dough in g for a tin of
// volumeML at perTotal mL for each g of dough and filling, with fillingPerDough
// g of filling a gram of dough (0 for a plain loaf).
func DoughForTinG(volumeML, perTotal, fillingPerDough float64) (doughG float64, ok bool) {
	if !positive(volumeML, perTotal, 1+fillingPerDough) || fillingPerDough < 0 {
		return 0, false
	}
	return size(volumeML / perTotal / (1 + fillingPerDough))
}
