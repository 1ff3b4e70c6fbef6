package bake

import (
	"math"
	"os"
	"strings"
	"testing"

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

// An oven's coefficient is convection, and radiation between a skin at
// 90 C and 200 C: inside the table's row, and near its middle.
func TestOvensOfTheSurfaceTable(t *testing.T) {
	ovens := map[string]OvenKind{
		"dough surface 80-100":       StaticOven,
		"cakes, 186-225":             TunnelOven,
		"combined coefficient rises": FanOven,
	}
	used := 0
	for _, row := range readTable(t, "surface-coefficients.csv") {
		for start, kind := range ovens {
			if !strings.HasPrefix(row["condition"], start) {
				continue
			}
			h := ovenConvection[kind] + heat.Radiation(skinC, 200)
			if low, high := number(t, row["h_low"]), number(t, row["h_high"]); h < low || h > high {
				t.Errorf("%s: %g W/(m2 K), table %g to %g", start, h, low, high)
			}
			near(t, start, h, number(t, row["h_typical"]), 0.2*h)
			used++
		}
	}
	if used != len(ovens) {
		t.Errorf("%d rows used", used)
	}
}

func TestBoilingPoint(t *testing.T) {
	for m, want := range map[float64]float64{
		0:    100,
		500:  98.3,
		1000: 96.7,
		1500: 95.0,
		2000: 93.4,
	} {
		near(t, "boiling", BoilingPointC(m), want, 0.06)
	}
}
