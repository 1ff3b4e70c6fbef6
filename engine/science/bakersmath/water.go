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

// Specific heats in kJ/(kg K) for the heat balance, and what melting ice and
// dissolving sugar take up.
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
	SugarDissolvingKJ   = 17  // kJ/kg of sucrose
)
