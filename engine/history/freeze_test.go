package history_test

import (
	"math"
	"strings"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/heat"
	"forebake/engine/science/melt"
)

// custardSetup is a tray of custard of 68 % water at 26 C.
func custardSetup(t *testing.T, steps string) history.Setup {
	t.Helper()
	made := heat.Composition{Water: 0.68, Protein: 0.05, Fat: 0.08, Carbohydrate: 0.18, Ash: 0.01}
	p, ok := heat.PropertiesAt(made, 10, 0)
	if !ok {
		t.Fatal("no custard")
	}
	s := setup(t, steps)
	s.Material = history.Material{
		Known: true, Conductivity: p.ConductivityWmK, Density: p.DensityKgM3,
		SpecificHeat: p.SpecificHeat, Diffusivity: p.DiffusivityM2s,
		Ice:    melt.Ice{Made: made},
		OnsetC: figure.Estimate{Low: -3.8, Mid: -2.5, High: -2.5},
	}
	return s
}

// A tray of custard freezes in Plank's hours for its latent heat and
// those down to freezing; it thaws as slowly. The walk alone would have
// -16 C in half the time.
func TestFreezingTakesItsTime(t *testing.T) {
	s := custardSetup(t, `{ freeze = "12 h", at = "-18 C", as = "slab 20 mm", covered = false }, `+
		`{ thaw = "12 h", at = "4 C", as = "slab 20 mm", covered = false }`)
	m := s.Material
	// Plank: rho dH/(Tf - Ta) (P D/h + R D^2/k), P 1/2 and R 1/8 of a
	// slab; k of ice-cold custard.
	const h, d, frozenK = 9, 0.020, 1.5
	solids := m.Ice.Made.Protein + m.Ice.Made.Carbohydrate + m.Ice.Made.Ash
	latent := 334e3 * (m.Ice.Made.Water - 0.3*solids)
	plank := m.Density * latent / (-2.5 + 18) * (d/(2*h) + d*d/(8*frozenK)) / 3600
	var f history.Simulator
	to := func(step int, target float64) figure.Estimate {
		b, ok := f.TimeTo(s, s.Part.Steps[step], target)
		if !ok {
			t.Fatal("no time")
		}
		return b
	}
	cold, onset := to(0, -16), to(0, -2.5)
	t.Logf("20 mm at -18 C: to -2.5 C %.1f h, to -16 C %.1f h [%.1f to %.1f]; Plank alone %.1f h",
		onset.Mid, cold.Mid, cold.Low, cold.High, plank)
	near(t, "hours to -16 C", cold.Mid, 8.3, 0.3)
	near(t, "latent heat alone", to(0, -8).Mid-onset.Mid, plank, 0.3*plank)
	near(t, "fast end", cold.Mid/cold.Low, melt.FreezeFactor, 0.08)
	near(t, "slow end", cold.High/cold.Mid, melt.FreezeFactor, 0.02)
	plain := s
	plain.Material.OnsetC = figure.Estimate{}
	if b, _ := f.TimeTo(plain, s.Part.Steps[0], -16); math.Abs(b.Mid-3.8) > 0.2 {
		t.Errorf("without latent heat %v", b)
	}
	near(t, "thawing to 0 C", to(1, 0).Mid, 9.6, 0.3)

	st := follow(t, custardSetup(t, `{ freeze = "2.5 h", at = "-18 C", as = "slab 20 mm", `+
		`covered = false }`)).Stages[0]
	if !(st.Core.Mid > -4 && st.Core.Low > -9) {
		t.Errorf("after 2.5 h: %v; it has only begun to freeze", st.Core)
	}
}

// Water that freezing cannot be reckoned for: a freezer tells nothing,
// a fridge as before.
func TestFreezingIsSilent(t *testing.T) {
	for ambient, known := range map[string]bool{"-18 C": false, "-0.1 C": false, "1 C": true} {
		s := setup(t, `{ freeze = "2 h", at = "`+ambient+`", as = "slab 20 mm" }`)
		s.Material.FreezeSilent = "the water is too strong"
		st := follow(t, s).Stages[0]
		if st.Known != known || !known && !strings.Contains(st.Missing, "too strong") {
			t.Errorf("%s: known %v, missing %q", ambient, st.Known, st.Missing)
		}
	}
}

// A slab of chocolate sets on its way: its cocoa butter's heat
// slows it, 46 kJ/kg over 17 to 36 C against 1.59 kJ/(kg K) of the
// way itself.
func TestChocolateSets(t *testing.T) {
	hours := func(share float64, text string, target float64) float64 {
		s := setup(t, text)
		m := melt.Chocolate
		s.Material = history.Material{Known: true, Conductivity: m.ConductivityWmK,
			Density: m.DensityKgM3, SpecificHeat: m.SpecificHeat, Diffusivity: m.DiffusivityM2s,
			Chocolate: share}
		s.Start = even(40)
		var f history.Simulator
		b, ok := f.TimeTo(s, s.Part.Steps[0], target)
		if !ok {
			t.Fatal("no time")
		}
		return b.Mid
	}
	const thin = `{ cool = "9 h", at = "10 C", as = "slab 4 mm", covered = false }`
	plain, sets := hours(0, thin, 16), hours(1, thin, 16)
	// By one lump: the heat in each kelvin over the excess at it.
	want := 0.0
	for c := 16.0; c < 40; c += 0.1 {
		extra := 0.0
		if c > 17 && c < 36 {
			extra = 46e3 / 19
		}
		want += 0.1 * (1590 + extra) / (c - 10)
	}
	want /= 1590 * math.Log(30.0/6)
	near(t, "slower by", sets/plain, want, 0.25)
	near(t, "above where it melts",
		hours(1, `{ cool = "9 h", at = "36.5 C", as = "slab 4 mm", covered = false }`, 38),
		hours(0, `{ cool = "9 h", at = "36.5 C", as = "slab 4 mm", covered = false }`, 38), 1e-6)
}
