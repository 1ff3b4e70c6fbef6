package bakersmath

import "math"

// Butter takes up HeatMeltingButterKJ between these, C (memory). Its
// fat melts unevenly over the whole span: the figure is a mean.
const (
	ButterMeltsFromC = 15
	ButterMeltedC    = 35
)

// Ingredient is something in the bowl: kg, kJ/(kg K), and its own
// temperature, C, 0 or above: nothing here thaws.
type Ingredient struct {
	MassKg, SpecificHeatKJ, TempC float64

	// Butter softens as the dough warms it: HeatMeltingButterKJ between
	// ButterMeltsFromC and ButterMeltedC. Not for butter poured in
	// melted, which sets again hours later.
	Butter bool
	// Dissolves is for crystal sugar: it takes up SugarDissolvingKJ as
	// well. That cools a dough with 20 % by under 1 C. A rise measured
	// in the same dough includes it.
	Dissolves bool
}

// takesUp is the heat in kJ that brings the ingredient to tC.
func (i Ingredient) takesUp(tC float64) float64 {
	heat := i.MassKg * i.SpecificHeatKJ * (tC - i.TempC)
	if i.Butter {
		within := func(t float64) float64 { return max(ButterMeltsFromC, min(ButterMeltedC, t)) }
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

// HeatBalanceDoughC is the common temperature of all ingredients,
// liquids included, and riseC more, C: the heat that some give is what
// the others take up. The bowl is left out, since the measured rises
// include it.
//
// ok is false where there is nothing to warm, a mass or a specific heat
// is below zero, or a figure is not a number.
func HeatBalanceDoughC(ingredients []Ingredient, riseC float64) (doughC float64, ok bool) {
	// Heat is linear in temperature but for butter's two corners.
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

// HeatBalanceLiquidC is the inverse of HeatBalanceDoughC: the
// temperature of the one free liquid, C, so that the dough ends at
// desiredC after rising riseC. It may lie below 0 C or above 100 C,
// where the liquid alone cannot do it: Water says so.
func HeatBalanceLiquidC(
	desiredC, riseC, liquidKg, specificHeatKJ float64,
	others []Ingredient,
) (liquidC float64, ok bool) {
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

// ColdestLiquidC is the coldest liquid without ice, C: from an ice bath
// or the back of the fridge (judgement).
const ColdestLiquidC = 1
