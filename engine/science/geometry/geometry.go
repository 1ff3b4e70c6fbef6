// Package geometry gives the sizes of dough: sheets, coils, balls,
// loaves and tins, from mass, density and lengths.
//
// Packages that compute a step's figures, or follow a piece's heat,
// call it. It reads no formula and holds no limit of good practice. How
// far a dough has risen is in the density.
//
// Lengths are in mm, areas in cm2, masses in g, volumes in mL,
// densities in g/mL. A function without an answer (a size of nothing,
// a figure that is negative, infinite or not a number) gives ok false
// and zeros.
//
// The geometry is exact; dough is not. Where a shape stands for a real
// piece, the doc comment gives its error.
package geometry

import "math"

// Densities of dough, g/mL. Mixed: 1.10 to 1.20 (Cauvain and food
// property tables, memory); another table has 1.18 (read). Proofed,
// into the oven: 0.30 to 0.45 (common practice); published bakes fit
// best with 0.30 to 0.33 (computed).
const (
	MixedDensity   = 1.15
	ProofedDensity = 0.33
)

// SheetError is the relative error of a rolled sheet's area, either
// way: shrink-back and uneven thickness. Common practice.
const SheetError = 0.15

// positive says whether every figure is a size: above zero and finite.
func positive(figures ...float64) bool {
	for _, x := range figures {
		if !(x > 0 && x <= math.MaxFloat64) {
			return false
		}
	}
	return true
}

// size gives an answer that is a size, and refuses a float64 overflow.
func size(x float64) (float64, bool) {
	if !positive(x) {
		return 0, false
	}
	return x, true
}

// mostCount is where a count is taken for a slip of units and refused.
const mostCount = 1e6

// A count within this share of a whole number is whole: 304.8 mm holds
// twelve slices of 25.4, not eleven.
const countSlack = 1e-9

// MeanDensity gives the density in g/mL of two things together, such
// as dough and filling: volumes add, densities do not. Either mass may
// be 0.
func MeanDensity(massAG, densityA, massBG, densityB float64) (densityGPerML float64, ok bool) {
	if !(massAG >= 0 && massBG >= 0) || !positive(massAG+massBG, densityA, densityB) {
		return 0, false
	}
	return size((massAG + massBG) / (massAG/densityA + massBG/densityB))
}
