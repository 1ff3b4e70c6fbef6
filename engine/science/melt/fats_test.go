package melt

import (
	"math"
	"testing"

	"forebake/engine/science/heat"
)

func TestSolidsTable(t *testing.T) {
	used := 0
	for _, row := range readTable(t, "butter-melt.csv") {
		fat, ok := map[string]Fat{
			"milk fat (butter)": MilkFat,
			"cocoa butter":      CocoaButter,
		}[row["fat"]]
		if !ok || row["sfc_low_pct"] == "" {
			continue
		}
		low, typical, high := SolidFat(fat, number(t, row["temperature_c"]))
		near(t, row["fat"]+" low", low*100, number(t, row["sfc_low_pct"]), 1e-9)
		near(t, row["fat"]+" typical", typical*100, number(t, row["sfc_typical_pct"]), 1e-9)
		near(t, row["fat"]+" high", high*100, number(t, row["sfc_high_pct"]), 1e-9)
		used++
	}
	if used != 24 {
		t.Errorf("%d rows used", used)
	}
	// The read points, within the stated 8 points.
	_, at10, _ := SolidFat(MilkFat, 10)
	near(t, "10 C, summer", at10, 0.59, 0.08)
	_, at34, _ := SolidFat(MilkFat, 34)
	near(t, "34 C", at34, 0.05, 0.08)
	// From 26 to 4 C: 0.10 to 0.63, 43 kJ/kg fat.
	_, a, _ := SolidFat(MilkFat, 4)
	_, b, _ := SolidFat(MilkFat, 26)
	near(t, "at 4 C", a, 0.63, 0.01)
	near(t, "at 26 C", b, 0.10, 0.01)
	near(t, "kJ/kg fat", (a-b)*MilkFatLatent/1000, 43, 1)
	// The curve gives up the same heat.
	c := MilkFatCurve(2585, 0.14)
	_, _, high := c.At(26)
	_, _, low := c.At(4)
	near(t, "curve, J/kg", high-low-2585*22, 0.14*43e3, 0.14*1500)
	// Solids never rise with temperature and stay in 0..1.
	for _, f := range []Fat{MilkFat, CocoaButter} {
		was := 1.0
		for tC := -20.0; tC < 60; tC += 0.25 {
			low, s, high := SolidFat(f, tC)
			if s > was || low > s || s > high || low < 0 || high > 1 {
				t.Errorf("fat %d at %g: %g %g %g", f, tC, low, s, high)
			}
			was = s
		}
		if was != 0 {
			t.Errorf("fat %d is solid at 60 C", f)
		}
	}
	if _, s, _ := SolidFat(Fat(9), 20); !math.IsNaN(s) {
		t.Error("unknown fat")
	}
}

// Setting fat: 14 % butterfat adds about 10 % to the way from 26 to 4
// C, 25 % about 19 %.
func TestButterHeat(t *testing.T) {
	for _, c := range []struct{ w, share float64 }{{0.14, 0.10}, {0.25, 0.19}} {
		curve := MilkFatCurve(doughProperties.SpecificHeat, c.w)
		var v heat.Volumes
		v.Start(1, 0.02, doughProperties, 26)
		v.SetSpecificHeat(curve)
		v.Stage(4, 8)
		var plain heat.Volumes
		plain.Start(1, 0.02, doughProperties, 26)
		plain.Stage(4, 8)
		growth := v.TimeTo(heat.Mean, 5, 1e6)/plain.TimeTo(heat.Mean, 5, 1e6) - 1
		near(t, "growth of the time", growth, c.share, 0.35*c.share)
		// The first-order treatment: cp times 1 + 0.75 w over the whole
		// span, 43 kJ/kg of fat.
		f := 1 + 0.75*c.w
		var simple heat.Walk
		if !simple.Start(heat.SlabOf(0.04), doughProperties.ConductivityWmK,
			doughProperties.DiffusivityM2s/f, 26) || !simple.Stage(4, 8) {
			t.Fatal("refused")
		}
		v.Start(1, 0.02, doughProperties, 26)
		v.SetSpecificHeat(curve)
		v.Stage(4, 8)
		for hour := 1; hour <= 10; hour++ {
			near(
				t,
				"core, first order",
				simple.At(float64(hour)*3600).CoreC,
				v.Advance(3600).CoreC,
				1.2,
			)
		}
	}
}
