package geometry

// TinVolumeML gives the volume in mL of a straight tin, inside lengths in mm. Tins taper and have
// round corners, and labels are often outside sizes: the box is 5-15 % too much (common practice;
// two published tins: 6 and 13 %, read). Measure with water where it matters.
func TinVolumeML(lengthMM, widthMM, heightMM float64) (volumeML float64, ok bool) {
	if !positive(lengthMM, widthMM, heightMM) {
		return 0, false
	}
	return size(lengthMM * widthMM * heightMM / 1000)
}
