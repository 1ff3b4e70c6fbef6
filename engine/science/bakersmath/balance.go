package bakersmath

import "math"

// Butter takes up HeatMeltingButterKJ between these, in C (memory). Its fat
// melts over the whole span, and unevenly: the figure is a mean.
const (
	ButterMeltsFromC = 15
	ButterMeltedC    = 35
)

// Ingredient is something in the bowl, with its specific heat in kJ/(kg K) and
// the temperature it comes in at, in C (0 or above: nothing here thaws).
type Ingredient struct {
	MassKg, SpecificHeatKJ, TempC float64

	// Butter that softens as the dough warms it: HeatMeltingButterKJ stands in
	// between ButterMeltsFromC and ButterMeltedC. Not for butter poured in
	// melted, which sets again only hours later.
	Butter bool
	// Dissolves is for crystal sugar: it takes up SugarDissolvingKJ as well,
	// which cools a dough with 20 % by under 1 C. Leave it out with a rise that was
	// measured in the same dough, which has it already.
	Dissolves bool
}

// takesUp gives the heat in kJ that brings the ingredient to tC.
func (i Ingredient) takesUp(tC float64) float64 {
	heat := i.MassKg * i.SpecificHeatKJ * (tC - i.TempC)
	if i.Butter {
		within := func(t float64) float64 { return math.Max(ButterMeltsFromC, math.Min(ButterMeltedC, t)) }
		heat += i.MassKg * (HeatMeltingButterKJ - i.SpecificHeatKJ) * (within(tC) - within(i.TempC))
	}
	if i.Dissolves {
		heat += i.MassKg * SugarDissolvingKJ
	}
	return heat
}

func takeUp(ingredients []Ingredient, tC float64) (heatKJ float64, ok bool) {
	for _, i := range ingredients {
		if !(i.MassKg >= 0 && i.SpecificHeatKJ >= 0) {
			return 0, false
		}
		heatKJ += i.takesUp(tC)
	}
	return answer(heatKJ)
}

// HeatBalanceDoughC gives the temperature in C of a dough whose ingredients,
// the liquids among them, meet and then rise by riseC through mixing. What they
// give and take adds up to nothing.
//
// riseC is measured in the house, or FrictionRiseC. Hydration heat is in it
// already: the textbook 15 kJ/kg alone would be 5.6 C, more than hand mixing
// shows, so never add it. The bowl and the room are left out.
//
// ok is false where there is nothing to warm, or a mass or a specific heat is
// below zero or any figure is not a number.
func HeatBalanceDoughC(ingredients []Ingredient, riseC float64) (doughC float64, ok bool) {
	// Heat against temperature is straight but for the two corners of butter.
	below, ok := takeUp(ingredients, ButterMeltsFromC)
	above, ok2 := takeUp(ingredients, ButterMeltedC)
	if !ok || !ok2 {
		return 0, false
	}
	var apart float64 // capacity outside the corners, kJ/K
	for _, i := range ingredients {
		apart += i.MassKg * i.SpecificHeatKJ
	}
	switch {
	case below >= 0:
		return answer(ButterMeltsFromC - below/apart + riseC)
	case above <= 0:
		return answer(ButterMeltedC - above/apart + riseC)
	}
	return answer(ButterMeltsFromC - below/(above-below)*(ButterMeltedC-ButterMeltsFromC) + riseC)
}

// HeatBalanceLiquidC gives the temperature in C of the one liquid that is
// free, liquidKg at specificHeatKJ (HeatMilkKJ, HeatWaterKJ), so that the dough ends at desiredC after rising riseC:
// HeatBalanceDoughC the other way round, and its limits.
//
// The answer may be below 0 C or above 100 C: then the liquid alone cannot do
// it. ok is false where there is none of it, and as in HeatBalanceDoughC.
func HeatBalanceLiquidC(desiredC, riseC, liquidKg, specificHeatKJ float64, others []Ingredient) (liquidC float64, ok bool) {
	if !(liquidKg > 0 && specificHeatKJ > 0) || math.IsInf(liquidKg*specificHeatKJ, 1) {
		return 0, false
	}
	meetC := desiredC - riseC
	heat, ok := takeUp(others, meetC)
	if !ok {
		return 0, false
	}
	return answer(meetC + heat/(liquidKg*specificHeatKJ))
}

// HeatBalanceWaterC is HeatBalanceLiquidC for water with ice in it. waterKg is
// all the water; iceKg of it goes in as ice at 0 C and only the rest is
// poured, at the answer. ok is false where no water is poured, and as there.
func HeatBalanceWaterC(desiredC, riseC, waterKg, iceKg float64, others []Ingredient) (waterC float64, ok bool) {
	if !(iceKg >= 0 && waterKg > iceKg) || math.IsInf(waterKg*HeatWaterKJ, 1) {
		return 0, false
	}
	meetC := desiredC - riseC
	heat, ok := takeUp(others, meetC)
	if !ok {
		return 0, false
	}
	heat += iceKg * (IceMeltKJ + HeatWaterKJ*meetC)
	return answer(meetC + heat/((waterKg-iceKg)*HeatWaterKJ))
}

// ColdestLiquidC is the coldest that a liquid can be had without ice, in C: an
// ice bath or the back of the fridge. A judgement.
const ColdestLiquidC = 1

// IceForLiquidG gives the g of ice at 0 C that go in place of as much of a
// liquid, so that the dough ends at desiredC after rising riseC. liquidC is how
// cold the liquid can be had: ColdestLiquidC asks for ice only where
// HeatBalanceLiquidC would be under that; tap temperature, for ice in place of chilling.
//
// It is 0 where the dough needs no ice. Melted ice is water: in place of milk it thins the dough's
// solids. Ice straight from a freezer at -18 C cools by a tenth more
// (38 kJ/kg; computed). ok is false where all of the liquid as ice would not
// be enough, where the dough before its rise would be under 0 C, and as in HeatBalanceLiquidC.
func IceForLiquidG(desiredC, riseC, liquidKg, specificHeatKJ, liquidC float64, others []Ingredient) (iceG float64, ok bool) {
	needC, ok := HeatBalanceLiquidC(desiredC, riseC, liquidKg, specificHeatKJ, others)
	if !ok || math.IsNaN(liquidC) {
		return 0, false
	}
	if needC >= liquidC {
		return 0, true
	}
	meetC := desiredC - riseC
	if meetC < 0 { // the ice would not melt
		return 0, false
	}
	// Each kg of ice for liquid takes up this much more on its way to meetC.
	gain := IceMeltKJ + HeatWaterKJ*meetC - specificHeatKJ*(meetC-liquidC)
	iceKg, ok := answer(liquidKg * specificHeatKJ * (liquidC - needC) / gain)
	if !ok || !(gain > 0 && iceKg <= liquidKg) {
		return 0, false
	}
	return answer(1000 * iceKg)
}

// Mixer is a kind of mixer.
type Mixer uint8

// The kinds of mixer.
const (
	AnyMixer Mixer = iota // nobody says which
	ByHand
	StandMixer // for the home
	Planetary
	Spiral
	FoodProcessor
	HighSpeed
	mixerCount
)

// frictionRises are real rises in C (not the trade's factor, which is three or
// four times that): low, typical and high.
var frictionRises = [mixerCount][3]float64{
	// From a light hand to a mixer at full development (judgement).
	AnyMixer: {0.5, 4, 9},
	// About 1 C; a factor of 5 F for one loaf is 0.9 C (Cook's Illustrated, read). The ends are a judgement.
	ByHand: {0.5, 1, 2},
	// Common practice. A factor of 20 F is 3.7 C (Cook's Illustrated, read). One page
	// gives 2-3 F, 1.1-1.7 C, for a small mixer (read): below this range, for short mixing.
	StandMixer: {2, 4, 6},
	// Common practice, enriched dough to full development, 10-15 min.
	Planetary: {4, 6, 9},
	Spiral:    {4, 6, 9},
	// A factor of 25 F is 4.6 C (Cook's Illustrated, read). The ends are a judgement.
	FoodProcessor: {3, 4.6, 7},
	// 2-35 F in plants of 1905 (Wihlfahrt, read); 11 kJ/kg over 2.7 kJ/(kg K) is 4.1 C (derived from memory).
	HighSpeed: {1.1, 4.1, 19.4},
}

// FrictionRiseC gives the real rise in C that mixing gives a dough, low,
// typical and high. It stands in for a rise measured in the house, which always
// beats it; the spread is that wide because time, speed and load decide. ok is
// false for any other mixer.
func FrictionRiseC(m Mixer) (low, typical, high float64, ok bool) {
	if m >= mixerCount {
		return 0, 0, 0, false
	}
	r := frictionRises[m]
	return r[0], r[1], r[2], true
}
