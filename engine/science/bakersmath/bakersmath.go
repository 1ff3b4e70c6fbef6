// Package bakersmath is the baker's arithmetic that is not physics:
// percentages, scaling, losses, water temperature, ice, tins, yeast and
// weighing; and the heat balance of the bowl, which stands beside the trade factor.
//
// It is called by whoever works out the figures of a formula or a step. It
// never reads an ingredient table, never rounds for the scale, and holds no limit of
// good practice. Masses may be in any one unit unless the name says which.
//
// A function that can fail to have an answer (nothing to divide by, a figure
// below zero, not a number) says so with ok false and gives 0. Checked
// against published worked examples.
package bakersmath

import "math"

// answer refuses what is not a finite number.
func answer(x float64) (float64, bool) {
	if math.IsNaN(x) || math.IsInf(x, 0) {
		return 0, false
	}
	return x, true
}

// Percent gives a part as baker's percent, 100*partG/flourG, with flourG all
// the flour, preferments included.
func Percent(partG, flourG float64) (pct float64, ok bool) {
	if !(partG >= 0 && flourG > 0) {
		return 0, false
	}
	return answer(100 * partG / flourG)
}

// PartG gives the mass of a part from its baker's percent.
func PartG(pct, flourG float64) (partG float64, ok bool) {
	if !(pct >= 0 && flourG >= 0) {
		return 0, false
	}
	return answer(pct / 100 * flourG)
}

// TotalPercent adds up a formula's percentages, the flour's own 100 included.
func TotalPercent(pcts ...float64) float64 {
	total := 0.0
	for _, pct := range pcts {
		total += pct
	}
	return total
}

// ScaleFlour gives the flour for a dough of doughG whose percentages total
// totalPct (100 for flour alone).
func ScaleFlour(doughG, totalPct float64) (flourG float64, ok bool) {
	if !(doughG >= 0 && totalPct > 0) {
		return 0, false
	}
	return answer(doughG / (totalPct / 100))
}

// LossFraction gives the part of doughG that is gone from bakedG, 0 to 1.
// Common practice: bread 0.10-0.13, filled rolls 0.06-0.10, fermentation
// 0.005-0.02, mixing and scaling up to 0.05.
func LossFraction(doughG, bakedG float64) (fraction float64, ok bool) {
	if !(doughG > 0 && bakedG >= 0 && bakedG <= doughG) {
		return 0, false
	}
	return answer((doughG - bakedG) / doughG)
}

// DoughForBaked gives the dough that leaves bakedG after losses, each a
// fraction in [0, 1) of what reaches it. Losses follow one another: they
// multiply and are never added.
func DoughForBaked(bakedG float64, losses ...float64) (doughG float64, ok bool) {
	if !(bakedG >= 0) {
		return 0, false
	}
	kept := 1.0
	for _, loss := range losses {
		if !(loss >= 0 && loss < 1) {
			return 0, false
		}
		kept *= 1 - loss
	}
	return answer(bakedG / kept)
}

// Split is a dough parted into a preferment and what is added later.
type Split struct {
	PrefermentG, LaterWaterG, LaterFlourG float64
}

// PrefermentSplit takes fermentedPct of flourG, with water at prefermentPct of
// that flour, out of a dough at hydrationPct. Percentages are of flour. ok is
// false when the preferment asks for more flour or water than there is.
func PrefermentSplit(flourG, hydrationPct, fermentedPct, prefermentPct float64) (Split, bool) {
	flour := flourG * fermentedPct / 100
	water := flour * prefermentPct / 100
	s := Split{flour + water, flourG*hydrationPct/100 - water, flourG - flour}
	if !(flour >= 0 && water >= 0 && s.LaterWaterG >= 0 && s.LaterFlourG >= 0) || math.IsInf(flourG+s.PrefermentG+s.LaterWaterG, 0) {
		return Split{}, false
	}
	return s, true
}

// FrustumVolumeML gives the volume in mL of a tapered tin, inside lengths in
// mm, top l1 by w1, bottom l2 by w2, height h: h/3*(A1+A2+sqrt(A1*A2)). Tin
// labels are often outside sizes and corners are round: 5-15 % too much.
// Measure with water where it matters.
func FrustumVolumeML(l1MM, w1MM, l2MM, w2MM, hMM float64) (volumeML float64, ok bool) {
	if !(l1MM > 0 && w1MM > 0 && l2MM >= 0 && w2MM >= 0 && hMM > 0) {
		return 0, false
	}
	top, bottom := l1MM*w1MM, l2MM*w2MM
	return answer(hMM / 3 * (top + bottom + math.Sqrt(top*bottom)) / 1000)
}

// DoughForTin gives the dough in g for a tin of volumeML at mlPerG mL of tin
// for each g of dough: 4.4 wholesale white and 3.8-4.3 milk bread (read),
// brioche 2.6-3.6 (common practice).
func DoughForTin(volumeML, mlPerG float64) (doughG float64, ok bool) {
	if !(volumeML >= 0 && mlPerG > 0) {
		return 0, false
	}
	return answer(volumeML / mlPerG)
}

// YeastAsInstant gives the instant yeast that amount of another kind counts
// for, at instantPerUnit g of instant a gram (about 0.35 fresh, 0.75 active
// dry).
func YeastAsInstant(amountG, instantPerUnit float64) (instantG float64, ok bool) {
	if !(amountG >= 0 && instantPerUnit >= 0) {
		return 0, false
	}
	return answer(amountG * instantPerUnit)
}

// FreshToDryWater gives the water in g to add when freshG of fresh yeast is
// replaced by dryPerFresh g of dry a gram, so that the dough weighs the same:
// 60-67 g per 100 g fresh at factors 0.40-0.33.
func FreshToDryWater(freshG, dryPerFresh float64) (waterG float64, ok bool) {
	if !(freshG >= 0 && dryPerFresh >= 0 && dryPerFresh <= 1) {
		return 0, false
	}
	return answer(freshG * (1 - dryPerFresh))
}

// WeighingError gives the error in % of amountG on a scale that shows steps of
// resolutionG, read readings times (1, or 2 where a tare is taken off): the
// worst is half a step a reading, the standard error 0.29 of a step for one
// reading and 0.41 for two (even spread, in quadrature; derived).
func WeighingError(resolutionG, amountG float64, readings int) (worstPct, standardPct float64, ok bool) {
	if !(resolutionG >= 0 && amountG > 0) || readings < 1 {
		return 0, 0, false
	}
	n := float64(readings)
	worst, fine := answer(100 * n * resolutionG / 2 / amountG)
	if !fine {
		return 0, 0, false
	}
	return worst, 100 * math.Sqrt(n/12) * resolutionG / amountG, true
}
