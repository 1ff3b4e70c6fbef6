package geometry

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func lines(t *testing.T, table string) [][]string {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "..", "testdata", "tables", table))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	all, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	return all[1:]
}

func figure(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(strings.TrimSpace(text), 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// given are the figures of one line, by name.
type given map[string]float64

var work = map[string]func(g given) (float64, bool){
	"sheet area cm2": func(g given) (float64, bool) {
		return SheetAreaCM2(g["mass"], g["density"], g["thickness"])
	},
	"filling thickness": func(g given) (float64, bool) {
		return LayerThicknessMM(g["mass"], g["density"], g["area"])
	},
	"coil diameter": func(g given) (float64, bool) {
		c, ok := CoilFromSheet(g["length"], g["layer"], g["core"])
		return c.DiameterMM, ok
	},
	"coil turns": func(g given) (float64, bool) {
		c, ok := CoilFromSheet(g["length"], g["layer"], g["core"])
		return c.Turns, ok
	},
	"slices": func(g given) (float64, bool) {
		n, rest, ok := Slices(g["roll"], g["slice"])
		return float64(n), ok && math.Abs(rest) < 1e-9
	},
	"ball radius": func(g given) (float64, bool) { return BallRadiusMM(g["mass"], g["density"]) },
	"bun width": func(g given) (float64, bool) {
		h, ok := BunHalfMM(g["mass"], g["density"], g["height_to_width"])
		return 2 * h.WidthMM, ok
	},
	"tin loaf height": func(g given) (float64, bool) {
		h, ok := TinLoafHalfMM(g["mass"], g["density"], g["length"], g["width"])
		return 2 * h.HeightMM, ok
	},
	"tin volume": func(g given) (float64, bool) {
		return TinVolumeML(g["length"], g["width"], g["height"])
	},
}

func TestTable(t *testing.T) {
	used := map[string]bool{}
	for _, line := range lines(t, "geometry.csv") {
		t.Run(line[0], func(t *testing.T) {
			f, ok := work[line[1]]
			if !ok {
				t.Fatalf("not worked: %q", line[1])
			}
			used[line[1]] = true
			g := given{}
			for _, pair := range strings.Split(line[2], ";") {
				name, text, _ := strings.Cut(strings.TrimSpace(pair), "=")
				g[name] = figure(t, text)
			}
			got, ok := f(g)
			want, tolerance := figure(t, line[3]), figure(t, line[4])
			if !ok || math.Abs(got-want) > tolerance/100*want+1e-9 {
				t.Errorf("%s: %g, table %g within %g %%", line[1], got, want, tolerance)
			}
		})
	}
	for what := range work {
		if !used[what] {
			t.Errorf("%s has no line", what)
		}
	}
}

func TestSheetForBench(t *testing.T) {
	// 1200 x 600 mm leaves 1160 x 560: 6496 cm2, at 5 mm and 1.15 g/mL
	// 3735.2 g.
	for _, c := range []struct {
		mass, width, length float64
		fits                bool
		lots                int
	}{
		{1000, 417.03, 417.03, true, 1}, // a square of 1739 cm2
		{3000, 560, 931.68, true, 1},
		{3735.2, 560, 1160, true, 1},
		{3736, 560, 580.12, false, 2},
		{10000, 560, 1035.20, false, 3},
	} {
		got, ok := SheetForBench(c.mass, MixedDensity, 5, 600, 1200)
		if !ok || math.Abs(got.WidthMM-c.width) > 0.01 || math.Abs(got.LengthMM-c.length) > 0.01 ||
			got.Fits != c.fits || got.Lots != c.lots || math.Abs(got.LargestG-3735.2) > 1e-6 {
			t.Errorf("%g g: %+v, %v", c.mass, got, ok)
		}
	}
	for _, c := range [][2]float64{{40, 600}, {600, 40}, {0, 0}, {-600, 1200}, {math.NaN(), 600},
		{600, math.Inf(1)}} {
		if got, ok := SheetForBench(1000, MixedDensity, 5, c[0], c[1]); ok ||
			got != (BenchSheet{}) {
			t.Errorf("bench %v answered", c)
		}
	}
	if _, ok := SheetForBench(1e12, MixedDensity, 5, 1200, 600); ok {
		t.Error("a million tonnes answered")
	}
}

func TestSlicesLeaveARest(t *testing.T) {
	// 9 in roll, 2 in slices: four and an inch over.
	if n, rest, ok := Slices(228.6, 50.8); !ok || n != 4 || math.Abs(rest-25.4) > 1e-9 {
		t.Errorf("%d, %g, %v", n, rest, ok)
	}
	if n, rest, ok := Slices(20, 25); !ok || n != 0 || rest != 20 {
		t.Errorf("%d, %g, %v", n, rest, ok)
	}
	if _, _, ok := Slices(1e9, 1e-9); ok {
		t.Error("a quintillion slices answered")
	}
}

// Whole numbers stay whole when the last digit is off, either way.
func TestCountsStayWhole(t *testing.T) {
	whole, _ := SheetForBench(1000, MixedDensity, 5, 1200, 600)
	roll, mass := 0.0, 0.0
	for n := 1; n <= 1000; n++ {
		roll += 25.4 / 3
		mass += whole.LargestG
		if got, rest, ok := Slices(roll, 25.4/3); !ok || got != n || rest > 1e-6 {
			t.Fatalf("%d slices are %d and %g mm", n, got, rest)
		}
		if got, ok := SheetForBench(mass, MixedDensity, 5, 1200, 600); !ok || got.Lots != n {
			t.Fatalf("%d lots are %d", n, got.Lots)
		}
	}
}

// No input is answered with a figure that is not a size.
func TestRefusals(t *testing.T) {
	functions := map[string]func(a, b, c float64) ([]float64, bool){
		"SheetAreaCM2": func(a, b, c float64) ([]float64, bool) {
			x, ok := SheetAreaCM2(a, b, c)
			return []float64{x}, ok
		},
		"SheetMassG": func(a, b, c float64) ([]float64, bool) {
			x, ok := SheetMassG(a, b, c)
			return []float64{x}, ok
		},
		"LayerThicknessMM": func(a, b, c float64) ([]float64, bool) {
			x, ok := LayerThicknessMM(a, b, c)
			return []float64{x}, ok
		},
		"SheetForBench": func(a, b, c float64) ([]float64, bool) {
			s, ok := SheetForBench(a, b, c, 1200, 600)
			return []float64{s.WidthMM, s.LengthMM, s.LargestG}, ok
		},
		"CoilFromSheet": func(a, b, c float64) ([]float64, bool) {
			s, ok := CoilFromSheet(a, b, c)
			return []float64{s.DiameterMM, s.Turns}, ok
		},
		"BunHalfMM": func(a, b, c float64) ([]float64, bool) {
			h, ok := BunHalfMM(a, b, c)
			return []float64{h.LengthMM, h.WidthMM, h.HeightMM}, ok
		},
		"TinLoafHalfMM": func(a, b, c float64) ([]float64, bool) {
			h, ok := TinLoafHalfMM(a, b, c, 100)
			return []float64{h.LengthMM, h.WidthMM, h.HeightMM}, ok
		},
		"TinVolumeML": func(a, b, c float64) ([]float64, bool) {
			x, ok := TinVolumeML(a, b, c)
			return []float64{x}, ok
		},
		"MeanDensity": func(a, b, c float64) ([]float64, bool) {
			x, ok := MeanDensity(a, b, c, 1.15)
			return []float64{x}, ok
		},
	}
	good := [3]float64{1.5, 1.2, 1} // also a height ratio and a gain of 1
	mayBeZero := map[string][]int{"CoilFromSheet": {2}, "MeanDensity": {0, 2}}
	for name, f := range functions {
		if _, ok := f(good[0], good[1], good[2]); !ok {
			t.Errorf("%s refuses %v", name, good)
		}
		for i := range good {
			for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1), math.Inf(-1)} {
				in := good
				in[i] = bad
				got, ok := f(in[0], in[1], in[2])
				if bad == 0 && slices.Contains(mayBeZero[name], i) {
					if !ok {
						t.Errorf("%s refuses %v", name, in)
					}
					continue
				}
				if ok {
					t.Errorf("%s answers %v with %v", name, in, got)
				}
				for _, x := range got {
					if x != 0 {
						t.Errorf("%s refuses %v with %v", name, in, got)
					}
				}
			}
		}
		extremes := []float64{5e-324, 1e-300, 1, 1e300, math.MaxFloat64}
		for _, a := range extremes {
			for _, b := range extremes {
				for _, c := range extremes {
					got, ok := f(a, b, c)
					for _, x := range got {
						if ok != positive(x) {
							t.Errorf("%s(%g, %g, %g) = %v, %v", name, a, b, c, got, ok)
						}
					}
				}
			}
		}
	}
	for _, ratios := range [][2]float64{{0.9, 0.5}, {2, 1.1}, {math.NaN(), 0.5}} {
		if _, ok := LoafHalfMM(500, 0.4, ratios[0], ratios[1]); ok {
			t.Errorf("loaf %v answered", ratios)
		}
	}
}

// spiralMM is a true spiral's length, its middle line from the core's
// radius out: a second way to CoilFromSheet.
func spiralMM(turns, layerMM, coreMM float64) float64 {
	pitch := layerMM / (2 * math.Pi) // mm of radius a radian
	arc := func(x float64) float64 { return pitch / 2 * (x*math.Sqrt(1+x*x) + math.Asinh(x)) }
	start := coreMM / 2 / pitch
	return arc(start+2*math.Pi*turns) - arc(start)
}

func draw(t *rapid.T, low, high float64, name string) float64 {
	return rapid.Float64Range(low, high).Draw(t, name)
}

func TestCoilAgainstSpiralProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		layer, core := draw(t, 2, 20, "layer"), draw(t, 0, 60, "core")
		turns := draw(t, 1, 12, "turns")
		length := spiralMM(turns, layer, core)
		spiralD := core + 2*turns*layer
		coil, ok := CoilFromSheet(length, layer, core)
		if !ok {
			t.Fatal("refused")
		}
		limit := 0.04
		if turns >= 3 {
			limit = 0.01
		}
		if off := coil.DiameterMM/spiralD - 1; off < -1e-9 || off > limit {
			t.Fatalf("area law %g, spiral %g: off by %g", coil.DiameterMM, spiralD, off)
		}
		// The turns add up to the radius.
		if d := core + 2*coil.Turns*layer; math.Abs(d-coil.DiameterMM) > 1e-9*d {
			t.Fatalf("%g turns make %g of %g", coil.Turns, d, coil.DiameterMM)
		}
	})
}

// The coil from the sheet's length and from its mass are one coil.
func TestCoilFromMassProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		dough, filling := draw(t, 100, 5000, "dough"), draw(t, 0, 3000, "filling")
		rhoDough, rhoFilling := draw(
			t,
			1.1,
			1.2,
			"dough density",
		), draw(
			t,
			0.5,
			1.4,
			"filling density",
		)
		thickness, roll := draw(t, 2, 15, "thickness"), draw(t, 100, 1200, "roll")
		area, ok := SheetAreaCM2(dough, rhoDough, thickness)
		layer := thickness
		if filling > 0 {
			spread, ok := LayerThicknessMM(filling, rhoFilling, area)
			if !ok {
				t.Fatal("refused")
			}
			layer += spread
		}
		coil, ok2 := CoilFromSheet(100*area/roll, layer, 0)
		rho, ok3 := MeanDensity(dough, rhoDough, filling, rhoFilling)
		fromMass := math.Sqrt(4 * 1000 * (dough + filling) / (math.Pi * rho * roll))
		if !ok || !ok2 || !ok3 || math.Abs(coil.DiameterMM-fromMass) > 1e-9*fromMass {
			t.Fatalf("from the sheet %g, from the mass %g", coil.DiameterMM, fromMass)
		}
		if mass, ok := SheetMassG(area, rhoDough, thickness); !ok ||
			math.Abs(mass-dough) > 1e-9*dough {
			t.Fatalf("dough %g came back as %g", dough, mass)
		}
	})
}

// Every piece holds its volume, whatever its shape.
func TestVolumeIsKeptProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass, rho := draw(t, 20, 2000, "mass"), draw(t, 0.25, 1.2, "density")
		cubicMM := 1000 * mass / rho
		same := func(name string, v float64, ok bool) {
			if !ok || math.Abs(v-cubicMM) > 1e-9*cubicMM {
				t.Fatalf("%s holds %g of %g", name, v, cubicMM)
			}
		}
		r, ok := BallRadiusMM(mass, rho)
		same("ball", 4.0/3*math.Pi*r*r*r, ok)
		flat, long := draw(t, 0.2, 1, "height ratio"), draw(t, 1, 4, "length ratio")
		h, ok := LoafHalfMM(mass, rho, long, flat)
		same("loaf", 4.0/3*math.Pi*h.LengthMM*h.WidthMM*h.HeightMM, ok)
		if math.Abs(h.LengthMM/h.WidthMM-long) > 1e-9 ||
			math.Abs(h.HeightMM/h.WidthMM-flat) > 1e-9 {
			t.Fatalf("ratios %+v for %g and %g", h, long, flat)
		}
		bun, ok := BunHalfMM(mass, rho, 1) // not flattened at all
		if !ok || math.Abs(bun.HeightMM-r) > 1e-9*r || math.Abs(bun.WidthMM-r) > 1e-9*r {
			t.Fatalf("bun %+v, ball %g", bun, r)
		}
		tin, ok := TinLoafHalfMM(mass, rho, draw(t, 50, 400, "length"), draw(t, 50, 200, "width"))
		same("tin loaf", 8*tin.LengthMM*tin.WidthMM*tin.HeightMM, ok)
	})
}

// Twice the mass: areas and rooms double, diameters of logs grow by the
// square root, balls by the cube root; a thicker sheet is smaller, a
// wider tin holds more.
func TestScalingProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass, rho, thickness := draw(
			t,
			20,
			5000,
			"mass",
		), draw(
			t,
			0.3,
			1.2,
			"density",
		), draw(
			t,
			2,
			15,
			"thickness",
		)
		k := draw(t, 1.01, 20, "times")
		ratio := func(name string, f func(m float64) (float64, bool), want float64) {
			one, ok := f(mass)
			more, ok2 := f(k * mass)
			if !ok || !ok2 || math.Abs(more/one-want) > 1e-9*want {
				t.Fatalf("%s: %g times the mass gives %g, want %g", name, k, more/one, want)
			}
		}
		ratio("area", func(m float64) (float64, bool) { return SheetAreaCM2(m, rho, thickness) }, k)
		ratio(
			"thicker",
			func(m float64) (float64, bool) { return SheetAreaCM2(mass, rho, m/mass*thickness) },
			1/k,
		)
		ratio("ball", func(m float64) (float64, bool) { return BallRadiusMM(m, rho) }, math.Cbrt(k))
		ratio(
			"loaf",
			func(m float64) (float64, bool) {
				h, ok := LoafHalfMM(m, rho, 2, 0.6)
				return h.HeightMM, ok
			},
			math.Cbrt(k),
		)
		ratio(
			"coil",
			func(m float64) (float64, bool) {
				c, ok := CoilFromSheet(m, 8, 0)
				return c.DiameterMM, ok
			},
			math.Sqrt(k),
		)
		ratio("tin", func(m float64) (float64, bool) { return TinVolumeML(m, 100, 80) }, k)
		// All lengths k times as large: the mass is k^3, the coil has
		// as many turns.
		small, _ := CoilFromSheet(450, 8, 5)
		large, ok := CoilFromSheet(450*k, 8*k, 5*k)
		if !ok || math.Abs(large.DiameterMM-k*small.DiameterMM) > 1e-9*large.DiameterMM ||
			math.Abs(large.Turns-small.Turns) > 1e-9*small.Turns {
			t.Fatalf("%g times the coil: %+v, %+v", k, small, large)
		}
	})
}

// A sheet lies on its bench, holds its dough, and one lot fewer would
// not do.
func TestBenchProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass, thickness := draw(t, 50, 100000, "mass"), draw(t, 1, 20, "thickness")
		long, wide := draw(t, 100, 3000, "bench"), draw(t, 100, 3000, "bench")
		got, ok := SheetForBench(mass, MixedDensity, thickness, long, wide)
		if !ok {
			t.Fatal("refused")
		}
		if swapped, _ := SheetForBench(mass, MixedDensity, thickness, wide, long); swapped != got {
			t.Fatalf("%+v turned is %+v", got, swapped)
		}
		if got.WidthMM > got.LengthMM*(1+1e-9) || got.WidthMM+40 > math.Min(long, wide)+1e-6 ||
			got.LengthMM+40 > math.Max(long, wide)*(1+1e-6) {
			t.Fatalf("%+v on %g x %g", got, long, wide)
		}
		held := got.WidthMM * got.LengthMM * thickness / 1000 * MixedDensity * float64(got.Lots)
		if math.Abs(held-mass) > 1e-6*mass {
			t.Fatalf("%+v holds %g of %g", got, held, mass)
		}
		if got.Fits != (got.Lots == 1) || float64(got.Lots-1)*got.LargestG > mass ||
			float64(got.Lots)*got.LargestG < mass*(1-1e-6) {
			t.Fatalf("%+v for %g", got, mass)
		}
	})
}

// A round tin by hand: 170 mm wide and 110 high 2497 mL, a ring of 220
// mm around a tube of 50 and 100 high 3605 mL. What lies in a tin takes
// its volume.
func TestRoundTin(t *testing.T) {
	for _, c := range []struct {
		tin                RoundTin
		high, ml           float64
		long, wide, height float64 // half, of 1 kg at 0.5 g/mL
	}{
		{RoundTin{170, 170, 0}, 110, 2496.8, 85, 85, 44.06},
		{RoundTin{220, 220, 50}, 100, 3605.0, 212.06, 42.5, 27.74},
	} {
		ml, ok := c.tin.VolumeML(c.high)
		if !ok || math.Abs(ml-c.ml) > 0.1 {
			t.Errorf("%v: %g mL, want %g", c.tin, ml, c.ml)
		}
		h, ok := c.tin.HalfMM(1000, 0.5)
		want := HalfSize{c.long, c.wide, c.height}
		if !ok || math.Abs(h.LengthMM-want.LengthMM)+math.Abs(h.WidthMM-want.WidthMM)+
			math.Abs(h.HeightMM-want.HeightMM) > 0.03 {
			t.Errorf("%v: %v, want %v", c.tin, h, want)
		}
		if c.tin.ChimneyMM > 0 {
			volume := 8 * h.LengthMM * h.WidthMM * h.HeightMM / 1000
			if math.Abs(volume-2000) > 0.01 {
				t.Errorf("the ring holds %g mL", volume)
			}
		}
	}
	for _, bad := range []RoundTin{{0, 170, 0}, {170, 170, -1}, {170, 170, 170},
		{170, math.NaN(), 0}} {
		if _, ok := bad.VolumeML(100); ok {
			t.Errorf("%v has a volume", bad)
		}
		if _, ok := bad.HalfMM(1000, 0.3); ok {
			t.Errorf("%v holds a piece", bad)
		}
	}
}

// A ring holds the dough that it is made of, and is thinner than a loaf of it.
func TestRing(t *testing.T) {
	h, ok := RingHalfMM(1000, 0.33, 6, 0.6)
	volume := math.Pi / 4 * 2 * h.LengthMM * 2 * h.WidthMM * 2 * h.HeightMM
	if want := 1000 * 1000 / 0.33; !ok || math.Abs(volume-want) > 1e-6*want {
		t.Errorf("%g mm3, of a dough of %g", volume, want)
	}
	if loaf, _ := LoafHalfMM(1000, 0.33, LoafLength, LoafHeight); h.HeightMM >= 0.8*loaf.HeightMM {
		t.Errorf("half a ring is %g mm high, half a loaf %g", h.HeightMM, loaf.HeightMM)
	}
	for _, bad := range [][4]float64{
		{0, 0.33, 6, 0.6}, {1000, 0.33, 0.5, 0.6}, {1000, 0.33, 6, 2},
	} {
		if got, ok := RingHalfMM(bad[0], bad[1], bad[2], bad[3]); ok || got != (HalfSize{}) {
			t.Errorf("%v answered", bad)
		}
	}
}
