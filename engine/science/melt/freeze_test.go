package melt

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/science/heat"
)

// plank is Plank's formula: s from the onset of freezing until the
// middle of a slab, log or ball (dimension 1, 2, 3) of the full
// thickness is frozen, without sensible heat.
func plank(dimension, full, density, latent, onsetC, ambientC, h, k float64) float64 {
	return density * latent / (onsetC - ambientC) *
		(full/(2*dimension*h) + full*full/(8*dimension*k))
}

func TestFreezingTable(t *testing.T) {
	dough := Ice{
		Made: heat.Composition{
			Water:        0.40,
			Protein:      0.08,
			Fat:          0.10,
			Carbohydrate: 0.39,
			Fibre:        0.015,
			Ash:          0.015,
		},
		OnsetC: -3,
	}
	used := 0
	for _, row := range readTable(t, "freezing.csv") {
		value, tolerance, given := number(
			t,
			row["value"],
		), number(
			t,
			row["tolerance"],
		), number(
			t,
			row["given"],
		)
		used++
		switch row["what"] {
		case "latent":
			near(t, row["id"], dough.Share(given)*meltingHeat/1000, value, tolerance)
		case "onset":
			onset, why := OnsetC(given)
			if why != "" {
				t.Error(why)
			}
			near(t, row["id"], onset.Mid, value, tolerance)
		case "lean onset inside":
			onset, _ := OnsetC(given)
			near(t, row["id"], onset.Low, value, 0.05)
		case "conductivity over unfrozen":
			_, k, why := dough.Heats(2700, 0)
			if why != "" {
				t.Error(why)
			}
			share, _, _ := k.At(given)
			near(t, row["id"], share, value, tolerance)
		case "Plank slab":
			near(
				t,
				row["id"],
				plank(1, given, 1057, 0.75*335e3, -2.8, -28.9, 17, 1.038),
				value,
				tolerance,
			)
		case "minutes for a piece":
			p, _ := heat.PropertiesAt(lean, 10, 0.1)
			c, k, _ := Ice{Made: lean, Gas: 0.1, OnsetC: -3}.Heats(p.SpecificHeat, 0)
			piece := heat.EllipsoidOf(0.04, 0.06, 0.06)
			var v heat.Volumes
			v.Start(piece.EquivalentDimension(p.ConductivityWmK, 25), piece.Nearest(), p, 24)
			v.SetSpecificHeat(c)
			v.SetConductivity(k)
			v.Stage(given, 25)
			near(t, row["id"], v.TimeTo(heat.Core, -7, 1e6)/60, value, tolerance)
		default:
			t.Errorf("%s: no test", row["id"])
		}
	}
	// Plank's formula is good to 30 %: what takes longest takes 1/0.7
	// of it.
	near(t, "error", FreezeFactor, 1/0.7, 0.05)
	t.Logf("points: freezing: %d of %d inside, high end over low end %.2f",
		used, used, FreezeFactor*FreezeFactor)
	if used != 11 {
		t.Errorf("%d rows used", used)
	}
}

// Where nearly all heat is freezing, the solver agrees with Plank's
// formula: a latent heat released within a kelvin, and little
// sensible heat.
func TestFreezingIsPlank(t *testing.T) {
	const latent, k, density = 200e3, 1.0, 1000.0
	specificHeat := heat.NewCurve(-40, 10, 5001, func(tC float64) float64 {
		if tC < -1 && tC > -2 {
			return latent
		}
		return 200
	})
	for d := 1.0; d <= 3; d++ {
		for _, h := range []float64{10, 50, math.Inf(1)} {
			var v heat.Volumes
			v.Start(
				d,
				0.02,
				heat.Properties{SpecificHeat: 200, DensityKgM3: density, ConductivityWmK: k},
				-0.99,
			)
			v.SetSpecificHeat(specificHeat)
			v.Stage(-20, h)
			want := plank(d, 0.04, density, latent, -1.5, -20, h, k)
			near(t, "frozen, s", v.TimeTo(heat.Core, -2.05, 1e6), want, 0.05*want)
		}
	}
}

// A freezing slab against an explicit scheme on a fine grid with the
// same curves.
func TestFreezingOnAGrid(t *testing.T) {
	const n, half = 100, 0.02
	p, _ := heat.PropertiesAt(enriched, 10, 0.1)
	food := Ice{Made: enriched, Gas: 0.1, OnsetC: -5}
	c, k, why := food.Heats(p.SpecificHeat, 0.1)
	if why != "" {
		t.Fatal(why)
	}
	var v heat.Volumes
	v.Start(1, half, p, 24)
	v.SetSpecificHeat(c)
	v.SetConductivity(k)
	v.Stage(-18, 9)
	var grid [n]float64
	for i := range grid {
		grid[i] = 24
	}
	const dx, dt = half / n, 0.04
	for s := range int(10 * 3600 / dt) {
		var flow [n + 1]float64
		for i := 1; i < n; i++ {
			share, _, _ := k.At((grid[i] + grid[i-1]) / 2)
			flow[i] = p.ConductivityWmK * share * (grid[i-1] - grid[i]) / dx
		}
		share, _, _ := k.At(grid[n-1])
		flow[n] = (grid[n-1] + 18) / (1.0/9 + dx/2/(p.ConductivityWmK*share))
		for i := range grid {
			heat, _, _ := c.At(grid[i])
			grid[i] += dt * (flow[i] - flow[i+1]) / (p.DensityKgM3 * heat * dx)
		}
		if hour := int(3600 / dt); (s+1)%hour == 0 {
			got := v.Advance(3600)
			near(t, "core", got.CoreC, grid[0], 0.25)
			near(t, "surface", got.SurfaceC, grid[n-1], 0.35)
			t.Logf("%d h: core %.2f, on the grid %.2f", (s+1)/hour, got.CoreC, grid[0])
		}
	}
}

// Latent heat in all: custard at -16 C takes twice as long as without
// it, and thaws as slowly.
func TestFreezingTakesItsTime(t *testing.T) {
	custard := heat.Composition{
		Water:        0.68,
		Protein:      0.05,
		Fat:          0.08,
		Carbohydrate: 0.18,
		Ash:          0.01,
	}
	p, _ := heat.PropertiesAt(custard, 10, 0)
	c, k, _ := Ice{Made: custard, OnsetC: -2.5}.Heats(p.SpecificHeat, 0)
	time := func(from, ambient, to float64, ice bool) float64 {
		var v heat.Volumes
		v.Start(1, 0.01, p, from)
		if ice {
			v.SetSpecificHeat(c)
			v.SetConductivity(k)
		}
		v.Stage(ambient, 9)
		return v.TimeTo(heat.Core, to, 1e7) / 3600
	}
	near(t, "20 mm, hours", time(26, -18, -16, true), 8.3, 0.2)
	near(t, "without latent heat", time(26, -18, -16, false), 3.8, 0.1)
	near(t, "thawing in a fridge", time(-18, 4, 0, true), 8.7, 0.2)
}

// The middle only cools in a freezer and only warms out of it, whatever
// the steps.
func TestFreezingProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(what string, lo, hi float64) float64 {
			return rapid.Float64Range(lo, hi).Draw(t, what)
		}
		food := drawFood(t)
		p, ok := heat.PropertiesAt(food, 10, 0)
		onset := draw("onset", -12, -0.2)
		c, k, why := Ice{Made: food, OnsetC: onset}.Heats(p.SpecificHeat, draw("butterfat", 0, 0.2))
		if !ok || why != "" {
			t.Fatal(why)
		}
		var v heat.Volumes
		from, ambient := draw("from", 0, 40), draw("freezer", -40, -1)
		v.Start(draw("d", 1, 3), draw("half", 0.005, 0.1), p, from)
		v.SetSpecificHeat(c)
		v.SetConductivity(k)
		v.Stage(ambient, draw("h", 4, 50))
		last := from
		for range 8 {
			s := v.Advance(math.Exp(draw("log seconds", 3, 11)))
			if s.CoreC > last+0.15 || s.CoreC < ambient-0.05 || s.MeanC > s.CoreC+0.1 {
				t.Fatalf("%+v after a core of %g, freezer %g", s, last, ambient)
			}
			last = s.CoreC
		}
		v.Stage(20, 9)
		for range 4 {
			s := v.Advance(math.Exp(draw("log seconds", 3, 11)))
			if warmest := max(20, last) + 0.05; s.CoreC > warmest || s.SurfaceC > warmest {
				t.Fatalf("%+v in a room of 20 after %g", s, last)
			}
		}
	})
}

func TestThinWaterFreezesAsTheThinnest(t *testing.T) {
	want, _ := OnsetC(0.1)
	for _, m := range []float64{0, 0.05} {
		if e, why := OnsetC(m); why != "" || e != want {
			t.Errorf("%g osmol/kg: %v %q, not %v", m, e, why, want)
		}
	}
	if e, _ := OnsetC(0.2); !(e.Mid < want.Mid) {
		t.Errorf("0.2 osmol/kg: %v, not under %v", e, want)
	}
}

func TestFreezingIsSilent(t *testing.T) {
	for _, m := range []float64{-0.01, 8.1, math.NaN(), -1} {
		if e, why := OnsetC(m); why == "" || e.Mid != 0 {
			t.Errorf("%g osmol/kg: %v", m, e)
		}
	}
	for _, onset := range []float64{0, -0.09, -16.6, math.NaN()} {
		_, _, why := (Ice{Made: lean, OnsetC: onset}).Heats(2700, 0)
		if !strings.Contains(why, "onset") {
			t.Errorf("onset %g: %q", onset, why)
		}
	}
	for _, made := range []heat.Composition{{}, {Water: 2}} {
		_, _, why := (Ice{Made: made, OnsetC: -3}).Heats(2700, 0)
		if !strings.Contains(why, "make-up") {
			t.Errorf("%+v: %q", made, why)
		}
	}
	if _, _, why := (Ice{Made: lean, OnsetC: -3}).Heats(0, 0); why == "" {
		t.Error("a specific heat of nothing")
	}
	dry := Ice{Made: heat.Composition{Water: 0.05, Carbohydrate: 0.95}, OnsetC: -3}
	near(t, "too dry for ice", dry.Share(-40), 0, 0)
	if dry.Freezes() || !(Ice{Made: lean, OnsetC: -3}).Freezes() || (Ice{Made: lean}).Freezes() {
		t.Error("water freezes where there is some and its onset is known")
	}
}
