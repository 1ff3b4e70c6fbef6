package bakersmath

// WaterTemperature is the trade factor: factorK times the dough wanted,
// less friction and the other temperatures (flour, room, preferment).
// The unit is C or F throughout. factorK is 3 for flour and room, 4
// with a preferment; friction is factorK times the dough's real rise.
//
// It checks Water and is never the answer. It counts the room as in the
// bowl, and leaves out cold eggs, milk and butter. Flour and preferment
// go in at their own temperatures. NaN for NaN.
func WaterTemperature(factorK, desired, friction float64, others ...float64) float64 {
	t := factorK*desired - friction
	for _, other := range others {
		t -= other
	}
	return t
}

// Specific heats for the heat balance, kJ/(kg K), and the heat of
// melting ice and dissolving sugar.
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
