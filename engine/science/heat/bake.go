package heat

import (
	"math"

	"forebake/engine/figure"
)

// Diffusivity of baking crumb, m2/s, on proofed dimensions. Vapour crossing the
// pores carries heat: it is not the dense dough's value. Fitted to published
// bake times with assumed dimensions, not measured (basis computed);
// Zanoni, Peri & Gianotti (1995) read 4.8e-7 at 70 % porosity, which would double every time.
const CrumbDiffusivity = 1.0e-6

// FillingDiffusivity, m2/s: a filling has no vapour path and sets the time of
// a filled piece. 1.0e-7 to 1.4e-7 (basis computed).
const FillingDiffusivity = 1.2e-7

// BakeFactor is how far a core time can be trusted: it is between mid/BakeFactor and
// mid*BakeFactor.
const BakeFactor = 1.5

// Bake is a piece in an oven hot enough to boil its surface. Crumb is capped at
// boiling: after a warm-up the surface is held there and the oven drops out,
// save for the crust. A model without the cap has crumb at 140-200 C.
type Bake struct {
	Body      Body // proofed dimensions
	StartC    float64
	AltitudeM float64
	InTin     bool
	// Diffusivity, m2/s; 0 is CrumbDiffusivity.
	Diffusivity float64
}

// warmUp is the time until the surface boils, s: 1-3 min bare, 4-7 min in a tin (estimate).
func (b Bake) warmUp() float64 {
	if b.InTin {
		return 5.5 * 60
	}
	return 2 * 60
}

// held starts a walk with the surface at boiling.
func (b Bake) held(w *Walk) (boilC float64, ok bool) {
	alpha := b.Diffusivity
	if alpha == 0 {
		alpha = CrumbDiffusivity
	}
	boilC = BoilingPointC(b.AltitudeM)
	ok = b.StartC < boilC && w.Start(b.Body, 1, alpha, b.StartC) && w.Stage(boilC, math.Inf(1))
	return boilC, ok
}

// MinutesToCore is when the middle reaches targetC, in minutes, a first guess to
// be probed: trust it within BakeFactor, no better. Prefer targets of 88-95 C; the
// core creeps near the top. ok is false when the target is above boiling less
// BoilingMargin, so cannot be met, and for bad dimensions or temperatures.
func (b Bake) MinutesToCore(targetC float64) (g figure.Estimate, ok bool) {
	var w Walk
	boilC, ok := b.held(&w)
	if !ok || !(targetC <= boilC-BoilingMargin) {
		return figure.Estimate{}, false
	}
	if targetC <= b.StartC {
		return figure.Estimate{}, true
	}
	mid := (b.warmUp() + w.TimeTo(Core, targetC, math.Inf(1))) / 60
	return figure.WithinFactor(mid, BakeFactor), true
}

// CoreAfter is the core in C after a bake of the given minutes, the inverse of
// MinutesToCore: never above boiling less BoilingMargin. ok is false for bad
// dimensions, temperatures or times.
func (b Bake) CoreAfter(minutes float64) (g figure.Estimate, ok bool) {
	var w Walk
	boilC, ok := b.held(&w)
	if !ok || !(minutes >= 0) {
		return figure.Estimate{}, false
	}
	ceiling := math.Max(boilC-BoilingMargin, b.StartC)
	core := func(minutes float64) float64 {
		return math.Min(ceiling, w.At(minutes*60-b.warmUp()).CoreC)
	}
	return figure.Estimate{Low: core(minutes / BakeFactor), Mid: core(minutes), High: core(minutes * BakeFactor)}, true
}

// Cores fills cores with the middle figures of CoreAfter at the given minutes, for far less than
// asking one by one.
func (b Bake) Cores(minutes, cores []float64) (ok bool) {
	var w Walk
	boilC, ok := b.held(&w)
	if !ok || len(cores) < len(minutes) {
		return false
	}
	ceiling := math.Max(boilC-BoilingMargin, b.StartC)
	for i, m := range minutes {
		if !(m >= 0) {
			return false
		}
		cores[i] = math.Min(ceiling, w.At(m*60-b.warmUp()).CoreC)
	}
	return true
}
