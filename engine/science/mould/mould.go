// Package mould gives the mould-free life of baked goods from their equilibrium humidity.
//
// Package facts calls it. It answers for cakes only, where the relation was fitted; bread crumb is moister, and for it there
// is a handbook range and nothing else. It never extrapolates.
package mould

import "math"

// Range of the relation, % equilibrium relative humidity (100 x water activity): as quoted by a pastry forum writer (read).
const LowestERH, HighestERH = 74.0, 90.0

// Bread crumb lies outside the relation. The 21 C line would give about 2 days at 94 to 96 %; plain bread keeps 3 to 6 days in
// practice (memory). Clean wrap, no preservative, about 21 C.
const CrumbLowDays, CrumbHighDays = 2.0, 6.0

// Temperatures of the two published lines, C.
const coolC, warmC = 21.0, 27.0

// FreeDays is the mould-free life in days of a cake with no preservative in a clean wrap, at an equilibrium humidity in % and a
// storage temperature in C. The lines are log10(days) = 7.91 - 0.081 ERH at 21 C (as quoted by a pastry forum writer, read) and
// 6.42 - 0.0647 ERH at 27 C (Cauvain & Seiler, FMBRA Report 150, 1992; Adams & Moss eq. 3.34, read); between them the logarithm is
// interpolated. Published points lie within a tenth. ok is false outside 74 to 90 % and 21 to 27 C, where no line holds.
func FreeDays(erhPercent, tC float64) (days float64, ok bool) {
	if !(erhPercent >= LowestERH && erhPercent <= HighestERH) || !(tC >= coolC && tC <= warmC) {
		return 0, false
	}
	cool := 7.91 - 0.081*erhPercent
	warm := 6.42 - 0.0647*erhPercent
	share := (tC - coolC) / (warmC - coolC)
	return math.Pow(10, cool*(1-share)+warm*share), true
}
