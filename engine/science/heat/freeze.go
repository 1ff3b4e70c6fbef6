package heat

import "math"

// PlankError is the relative error of PlankTime, either way.
const PlankError = 0.30

// FreezableHeat is the heat, J per kg of food, given up by the water that
// freezes: 334 kJ/kg of water less 0.3 kg held by each kg of solids without fat
// (memory). Fractions of the food; never below 0.
func FreezableHeat(water, fatFreeSolids float64) float64 {
	return 334e3 * math.Max(water-0.3*fatFreeSolids, 0)
}

// Freezing is what Plank's formula asks for.
type Freezing struct {
	Body        Body    // Slab, Cylinder or Sphere
	H           float64 // W/(m2 K), above 0 or +Inf
	KFrozen     float64 // W/(m K), dough 0.9 to 1.1 (memory)
	DensityKgM3 float64
	HeatJkg     float64 // FreezableHeat
	OnsetC      float64 // dough -3 to -6, lower with sugar (memory)
	AmbientC    float64
}

// PlankTime is a bound on the time, s, from the freezing onset until the middle is
// frozen, PlankError either way: rho dH/(T_f - T_a) (P D/h + R D^2/k), D the full
// thickness or diameter, P 1/2, 1/4, 1/6 and R 1/8, 1/16, 1/24 for slab, cylinder
// and sphere (Plank, memory). ok is false for other bodies, and surroundings that are not below the onset.
func (f Freezing) PlankTime() (g Guess, ok bool) {
	if _, n, _, good := f.Body.directions(); !good || n > 1 || f.Body.Shape > Sphere ||
		!(f.H > 0) || !positive(f.KFrozen) || !positive(f.DensityKgM3) || !(f.HeatJkg >= 0) || !(f.AmbientC < f.OnsetC) {
		return Guess{}, false
	}
	d := float64(f.Body.Shape) + 1
	full := 2 * f.Body.Half[0]
	mid := f.DensityKgM3 * f.HeatJkg / (f.OnsetC - f.AmbientC) * (full/(2*d*f.H) + full*full/(8*d*f.KFrozen))
	return Guess{mid, mid * (1 - PlankError), mid * (1 + PlankError)}, finite(mid)
}
