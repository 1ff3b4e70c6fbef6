package heat

import "math"

// Relative errors of a surface coefficient, for TimeError (basis memory).
const (
	AirError   = 0.30
	WaterError = 0.50 // ice water, where it matters little
)

// Relative errors of a food's density times specific heat, and of its conductivity (memory).
const rhoCpError, kError = 0.07, 0.15

// TimeError is the relative error of a cooling or warming time at Biot number bi = h L/k, 0 to
// +Inf, given the relative error of h. It adds rho cp (7 %), h and k (15 %) in quadrature, the last
// two by their share of the resistance. Fridge dough (Bi 0.5) 27 %, ice bath (Bi 20) 16 %. Basis
// derived.
//
// The solvers' own error is negligible beside it. Bulk meat measured against such formulas was 11 %
// off (Rollin, Matthews & Lund 1979, read).
func TimeError(bi, hError float64) float64 {
	share := 1 / (1 + math.Max(bi, 0)/3)
	a, b := share*hError, (1-share)*kError
	return math.Sqrt(rhoCpError*rhoCpError + a*a + b*b)
}
