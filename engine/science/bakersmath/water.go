package bakersmath

import "math"

// WaterTemperature is the trade factor: factorK*desired less friction and the
// temperatures of all the others (flour, room, preferment), in one unit
// throughout, C or F. factorK is 3 for flour and room, 4 with a preferment;
// friction is factorK times the dough's real rise, as the trade keeps it.
//
// The factor counts the room as if it lay in the bowl, and knows nothing of
// cold eggs, milk or butter: beyond 6 C either side of 22 C, or in a rich
// dough, trust HeatBalanceWaterC. NaN for NaN.
func WaterTemperature(factorK, desired, friction float64, others ...float64) float64 {
	t := factorK*desired - friction
	for _, other := range others {
		t -= other
	}
	return t
}

// MeltingAsCoolingC is what ice takes up in melting, as degrees C of water:
// 334 kJ/kg over 4.18, rounded by the trade to 80 (144 degrees F).
const MeltingAsCoolingC = 80

// IceReplacing gives the kg of ice at 0 C that stands for as much of waterKg,
// so that both together are waterKg at wantedC: waterKg*(tap-wanted)/(tap+80).
// Not the same as IceAdded: the two differ by a tenth. No ice is needed for
// wantedC at or above tapC. ok is false for wantedC below 0 C.
func IceReplacing(waterKg, tapC, wantedC float64) (iceKg float64, ok bool) {
	return ice(waterKg, tapC, wantedC, tapC)
}

// IceAdded gives the kg of ice at 0 C to add on top of waterKg of tap water to
// bring all of it to wantedC: waterKg*(tap-wanted)/(wanted+80). Limits as
// IceReplacing.
func IceAdded(waterKg, tapC, wantedC float64) (iceKg float64, ok bool) {
	return ice(waterKg, tapC, wantedC, wantedC)
}

func ice(waterKg, tapC, wantedC, divisorC float64) (float64, bool) {
	if !(waterKg >= 0 && wantedC >= 0) || math.IsNaN(tapC) {
		return 0, false
	}
	if wantedC >= tapC {
		return 0, true
	}
	return answer(waterKg * (tapC - wantedC) / (divisorC + MeltingAsCoolingC))
}

// Specific heats in kJ/(kg K) for HeatBalanceWaterC, and what melting ice takes.
const (
	HeatFlourKJ         = 1.76 // read
	HeatWaterKJ         = 4.18 // read
	HeatSugarKJ         = 1.25 // memory, as the rest
	HeatEggKJ           = 3.4
	HeatMilkKJ          = 3.9
	HeatButterKJ        = 2.3
	HeatMeltingButterKJ = 4.5 // butter on its way through 15-35 C
	HeatOilKJ           = 2.0
	HeatSaltKJ          = 0.88
	IceMeltKJ           = 334 // kJ/kg
)

// Ingredient is something in the bowl besides the water, with its specific
// heat in kJ/(kg K) and the temperature it comes in at, in C.
type Ingredient struct {
	MassKg, SpecificHeatKJ, TempC float64
}

// HeatBalanceWaterC gives the temperature in C of the water to pour so that the
// dough ends at desiredC after rising riseC by mixing. waterKg is all the
// water; iceKg of it goes in as ice at 0 C and only the rest is poured.
//
// riseC is measured in the house (about 1 C by hand, 2-6 home mixer, 4-9 to
// full development). Hydration heat is in it already: the textbook 15 kJ/kg
// alone would be 5.6 C, more than hand mixing shows, so never add it. The
// bowl and the room are left out.
//
// The answer may be below 0 C or above 100 C: then water alone cannot do it.
// ok is false where no water is poured, or a mass or a specific heat is below
// zero or any figure is not a number.
func HeatBalanceWaterC(desiredC, riseC, waterKg, iceKg float64, others []Ingredient) (waterC float64, ok bool) {
	if !(iceKg >= 0 && waterKg > iceKg) {
		return 0, false
	}
	capacity, brought := waterKg*HeatWaterKJ, 0.0
	for _, o := range others {
		if !(o.MassKg >= 0 && o.SpecificHeatKJ >= 0) {
			return 0, false
		}
		capacity += o.MassKg * o.SpecificHeatKJ
		brought += o.MassKg * o.SpecificHeatKJ * o.TempC
	}
	return answer((capacity*(desiredC-riseC) - brought + IceMeltKJ*iceKg) / ((waterKg - iceKg) * HeatWaterKJ))
}
