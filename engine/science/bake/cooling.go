package bake

import (
	"math"

	"forebake/engine/science/heat"
)

// Figures of a baked crumb as it cools.
const (
	CrumbHeat = 2600 // J/(kg K) (memory: 2740 to 2800 where crumb and crust are told apart)
	// CrumbConductivity is CrumbConducts half way from 95 to 30 C, W/(m
	// K), where one conductivity is used.
	CrumbConductivity = 0.33
	// CoolingError is the joint relative error of a crumb's surface
	// coefficient and its conductivity (judgement: 30 % each).
	CoolingError = 0.40
)

// CrumbConducts is the effective conductivity of a baked crumb at tC,
// W/(m K). Water evaporates at the warm side of every pore and
// condenses at the cold one, which carries several times what a dry
// crumb conducts.
//
// It is 0.2 + 0.9/(1 + exp(-(T - 80)/10)): Purlis & Salvadori, J. Food
// Engineering 91:428-433 (2009) (memory); cold crumb 0.23 to 0.25 (Rask
// 1989, quoted); 4.8e-7 m2/s of a hot one (Zanoni, Peri & Gianotti
// 1995, read). Vapour diffusing in saturated pores gives 0.17 at 25,
// 0.26 at 40 and 0.5 at 60 C (computed).
func CrumbConducts(tC float64) float64 {
	return crumbCold + crumbSteam/(1+math.Exp((crumbHalfC-tC)/crumbSpanK))
}

// Figures of CrumbConducts: the conductivity of a cold crumb and the
// most that vapour adds, W/(m K). Half of that is reached at
// crumbHalfC, C, over crumbSpanK, K.
const crumbCold, crumbSteam, crumbHalfC, crumbSpanK = 0.2, 0.9, 80, 10

// CrumbShare is CrumbConducts over CrumbConductivity.
var CrumbShare = heat.NewCurve(-20, 105, 126, func(tC float64) float64 {
	return CrumbConducts(tC) / CrumbConductivity
})

// steamShare is the share of an open, hot loaf's heat that its lost
// water carries away: 2 % of its weight, 1 to 2 % by handbooks (memory)
// and 2.5 % measured (a Japanese practitioner, read), at 2400 kJ/kg, of
// the 190 kJ/kg from 95 to 25 C.
const steamShare = 0.25

// crust is the resistance of an enriched dough's dry crust, m2 K/W: 1
// to 2 mm (judgement) at 0.04 to 0.055 W/(m K) (Rask 1989, quoted).
const crust = 0.030

// OpenCrumb is the surface coefficient of a hot crumb, W/(m2 K), that
// cools from startC in air of the given typical coefficient. It is dry
// under a lid; open, lost steam carries heat away too. still is for a
// room's air, whose own draught grows with the difference.
func OpenCrumb(typical, startC, airC float64, still bool) (dry, open float64) {
	dry = typical
	if excess := startC - airC; still && excess > 0 {
		dry = math.Max(dry, heat.StillAir(airC+heat.SurfaceLag*excess, airC))
	}
	dry = heat.InSeries(dry, crust)
	return dry, dry / (1 - steamShare)
}
