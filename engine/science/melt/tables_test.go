package melt

import (
	"math"
	"os"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/science/heat"
	"forebake/engine/science/internal/published"
)

var readTable, number = published.In(os.DirFS(published.Folder)), published.Number

func near(t *testing.T, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %g, want %g within %g", name, got, want, tolerance)
	}
}

// Two usual doughs.
var (
	// 100 bread flour (USDA 20083), 54 water, 1.5 salt, 1 fresh yeast.
	lean = heat.Composition{
		Water:        0.435,
		Protein:      0.0774,
		Fat:          0.0106,
		Carbohydrate: 0.449,
		Fibre:        0.0153,
		Ash:          0.0127,
	}
	// 35 % water, 14 % fat, the rest as flour, sugar, egg and salt.
	enriched = heat.Composition{
		Water:        0.35,
		Protein:      0.078,
		Fat:          0.14,
		Carbohydrate: 0.412,
		Fibre:        0.01,
		Ash:          0.01,
	}
)

var doughProperties = heat.Properties{
	SpecificHeat:    0.35 / 1.2e-7 / 1100,
	DensityKgM3:     1100,
	ConductivityWmK: 0.35,
	DiffusivityM2s:  1.2e-7,
}

func drawFood(t *rapid.T) heat.Composition {
	var w [6]float64
	sum := 1e-6
	w[0] = 1e-6
	for i := range w {
		share := rapid.Float64Range(0, 1).Draw(t, "share")
		w[i] += share
		sum += share
	}
	for i := range w {
		w[i] /= sum
	}
	return heat.Composition{
		Water: w[0], Protein: w[1], Fat: w[2], Carbohydrate: w[3], Fibre: w[4], Ash: w[5],
	}
}
