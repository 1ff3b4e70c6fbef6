package heat

import "math"

// LumpedBiot is the largest h (V/A)/k at which a body may be taken as even inside; the centre is
// then off by under 5 % of the step (Incropera ch. 5, memory).
const LumpedBiot = 0.1

// Relative errors of a surface coefficient, for TimeError (basis memory).
const (
	AirError   = 0.30
	WaterError = 0.50 // ice water, where it matters little
)

// Relative errors of a food's density times specific heat, and of its conductivity (memory).
const rhoCpError, kError = 0.07, 0.15

// FermentationIncluded is added to TimeError for dough that ferments (basis computed).
const FermentationIncluded = 0.10

// TimeError is the relative error of a cooling or warming time at Biot number
// bi = h L/k, 0 to +Inf, given the relative error of h: rho cp (7 %), h and k
// (15 %) in quadrature, the last two by their share of the resistance. Fridge
// dough (Bi 0.5) 27 %, ice bath (Bi 20) 16 %. Basis derived. The solvers' own error
// is nothing beside it. Bulk meat measured against such formulas was 11 % off
// (Rollin, Matthews & Lund 1979, read).
func TimeError(bi, hError float64) float64 {
	share := 1 / (1 + math.Max(bi, 0)/3)
	a, b := share*hError, (1-share)*kError
	return math.Sqrt(rhoCpError*rhoCpError + a*a + b*b)
}

// DTSteadyState is the excess, K, that a source of q W/kg keeps up in the
// middle of a slab of half thickness L, m, above what it would be without:
// q rho (L^2/(2k) + L/h), SI. Use q at the starting temperature. +Inf at h 0.
func DTSteadyState(qWkg, densityKgM3, halfM, k, h float64) float64 {
	return qWkg * densityKgM3 * (halfM*halfM/(2*k) + halfM/h)
}

// GrowthByFermentation is the factor, 1 or more, by which heat of fermentation
// stretches a cooling time: 1 + excess/(start - ambient), excess from
// DTSteadyState. Good to about a tenth of the stretch up to 0.25, and too low
// beyond (computed); worth having above 0.05, some 25 mm of dough. +Inf when
// start is not above ambient.
func GrowthByFermentation(excessK, startC, ambientC float64) float64 {
	if !(startC > ambientC) {
		return math.Inf(1)
	}
	return 1 + math.Max(excessK, 0)/(startC-ambientC)
}

// FermentationHeat is the heat of fermentation at tC, W/kg, of a dough that gives
// q W/kg at 28 C: 2.5 times as much for each 10 K (activity rises about 10 % a
// kelvin, read), and none from 45 C.
func FermentationHeat(qWkg, tC float64) float64 {
	if tC >= 45 {
		return 0
	}
	return qWkg * math.Pow(2.5, (tC-28)/10)
}
