package geometry

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"regexp"
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
	"sheet area cm2":    func(g given) (float64, bool) { return SheetAreaCM2(g["mass"], g["density"], g["thickness"]) },
	"filling thickness": func(g given) (float64, bool) { return FillingThicknessMM(g["mass"], g["density"], g["area"]) },
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
	"proofed coil": func(g given) (float64, bool) {
		c, ok := CoilInTin(g["diameter"], g["width"], g["gain"])
		return c.ProofedMM, ok && math.Abs(c.RoomMM-30) < 1e-9 && math.Abs(c.ProofedRoomMM-(130-c.ProofedMM)) < 1e-9
	},
	"fat layers": func(g given) (float64, bool) {
		n, ok := Layers(int(g["start"]), int(g["fold1"]), int(g["fold2"]), int(g["fold3"]))
		return float64(n), ok
	},
	"fat layer": func(g given) (float64, bool) {
		return FatLayerMM(g["sheet"], g["fat"], g["fat_density"], g["dough"], g["dough_density"], int(g["layers"]))
	},
	"ball radius": func(g given) (float64, bool) { return BallRadiusMM(g["mass"], g["density"]) },
	"strand diameter": func(g given) (float64, bool) {
		b, ok := BraidStrand(g["mass"], g["density"], int(g["strands"]), g["length"])
		return b.StrandMM, ok
	},
	"bun width": func(g given) (float64, bool) {
		h, ok := BunHalfMM(g["mass"], g["density"], g["height_to_width"])
		return 2 * h.WidthMM, ok
	},
	"tin loaf height": func(g given) (float64, bool) {
		h, ok := TinLoafHalfMM(g["mass"], g["density"], g["length"], g["width"])
		return 2 * h.HeightMM, ok
	},
	"tin volume": func(g given) (float64, bool) { return TinVolumeML(g["length"], g["width"], g["height"]) },
	"fill per dough": func(g given) (float64, bool) {
		dough, _, ok := FillMLPerG(g["volume"], g["dough"], g["filling"])
		return dough, ok
	},
	"fill in all": func(g given) (float64, bool) {
		_, total, ok := FillMLPerG(g["volume"], g["dough"], g["filling"])
		return total, ok
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

// The published tins of the dough examples: mL and mL per g to grams.
func TestPublishedTins(t *testing.T) {
	number := regexp.MustCompile(`(?:^|[ (;])([0-9]+(?:\.[0-9]+)?)`)
	tried := 0
	for _, line := range lines(t, "dough-worked-examples.csv") {
		if !strings.HasPrefix(line[0], "T0") {
			continue
		}
		tried++
		var in, want []float64
		for _, m := range number.FindAllStringSubmatch(line[2], -1) {
			in = append(in, figure(t, m[1]))
		}
		for _, m := range number.FindAllStringSubmatch(line[4], -1) {
			want = append(want, figure(t, m[1]))
		}
		switch line[0] {
		case "T01":
			if got, ok := DoughForTinG(in[0], in[1], 0); !ok || math.Abs(got-want[0]) > 1e-9 {
				t.Errorf("T01: %g", got)
			}
		case "T02": // 250(238) x 113(105) x 120, tapered: the box is 5-15 % too much
			if got, ok := DoughForTinG(want[0], in[5], 0); !ok || math.Abs(got-want[1]) > 0.5 {
				t.Errorf("T02: %g", got)
			}
			box, ok := TinVolumeML(in[0], in[2], in[4])
			if over := box/want[0] - 1; !ok || over < 0.05 || over > 0.15 {
				t.Errorf("T02: the box %g mL is %g over", box, over)
			}
		case "T03": // the fill of the old tin, kept in the new: its flour as "dough", 2 of 3 parts, the rest as filling
			_, perTotal, ok := FillMLPerG(in[0], in[2], in[1]-in[2])
			got, ok2 := DoughForTinG(in[3], perTotal, (in[1]-in[2])/in[2])
			if !ok || !ok2 || math.Abs(got-want[1]) > 0.003*want[1] {
				t.Errorf("T03: flour %g, published %g", got, want[1])
			}
			perDough, _, _ := FillMLPerG(in[0], in[1], 0)
			if got, ok = DoughForTinG(in[3], perDough, 0); !ok || math.Abs(got-want[0]) > 0.003*want[0] {
				t.Errorf("T03: dough %g, published %g", got, want[0])
			}
		}
	}
	if tried != 3 {
		t.Errorf("%d tins", tried)
	}
}

func TestSheetForBench(t *testing.T) {
	// 1200 x 600 mm leaves 1160 x 560: 6496 cm2, at 5 mm and 1.15 g/mL 3735.2 g.
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
	for _, c := range [][2]float64{{40, 600}, {600, 40}, {0, 0}, {-600, 1200}, {math.NaN(), 600}, {600, math.Inf(1)}} {
		if got, ok := SheetForBench(1000, MixedDensity, 5, c[0], c[1]); ok || got != (BenchSheet{}) {
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

func TestLayers(t *testing.T) {
	for _, c := range []struct {
		start int
		folds []int
		want  int
		ok    bool
	}{
		{1, nil, 1, true}, {1, []int{3}, 3, true}, {1, []int{3, 4}, 12, true}, {2, []int{3, 3, 3}, 54, true},
		{0, []int{3}, 0, false}, {1, []int{3, 1}, 0, false}, {-1, nil, 0, false}, {1, []int{-3, -3}, 0, false},
		{1, []int{1000, 1000}, 1e6, true}, {1, []int{1000, 1001}, 0, false}, {1, []int{1 << 62, 1 << 62}, 0, false},
	} {
		if got, ok := Layers(c.start, c.folds...); got != c.want || ok != c.ok {
			t.Errorf("%d %v: %d, %v", c.start, c.folds, got, ok)
		}
	}
	if _, ok := FatLayerMM(4, 250, 0.95, 1000, 1.15, 0); ok {
		t.Error("no layers answered")
	}
}

func TestBraid(t *testing.T) {
	for _, n := range []int{-1, 0, 1, 13} {
		if b, ok := BraidStrand(500, MixedDensity, n, 400); ok || b != (Braid{}) {
			t.Errorf("%d strands answered", n)
		}
	}
	// A flat plait of three is two to two and a half strands wide.
	b, ok := BraidStrand(600, MixedDensity, 3, 400)
	if ratio := b.WidthMM / b.StrandMM; !ok || ratio < 2 || ratio > 2.51 || b.LengthMM >= 400 {
		t.Errorf("%+v", b)
	}
}

// No input is answered with a figure that is not a size.
func TestRefusals(t *testing.T) {
	functions := map[string]func(a, b, c float64) ([]float64, bool){
		"SheetAreaCM2":       func(a, b, c float64) ([]float64, bool) { x, ok := SheetAreaCM2(a, b, c); return []float64{x}, ok },
		"SheetMassG":         func(a, b, c float64) ([]float64, bool) { x, ok := SheetMassG(a, b, c); return []float64{x}, ok },
		"FillingThicknessMM": func(a, b, c float64) ([]float64, bool) { x, ok := FillingThicknessMM(a, b, c); return []float64{x}, ok },
		"SheetForBench": func(a, b, c float64) ([]float64, bool) {
			s, ok := SheetForBench(a, b, c, 1200, 600)
			return []float64{s.WidthMM, s.LengthMM, s.LargestG}, ok
		},
		"CoilFromSheet": func(a, b, c float64) ([]float64, bool) {
			s, ok := CoilFromSheet(a, b, c)
			return []float64{s.DiameterMM, s.Turns}, ok
		},
		"LogDiameterMM": func(a, b, c float64) ([]float64, bool) { x, ok := LogDiameterMM(a, b, c); return []float64{x}, ok },
		"LogLengthMM":   func(a, b, c float64) ([]float64, bool) { x, ok := LogLengthMM(a, b, c); return []float64{x}, ok },
		"CoilInTin": func(a, b, c float64) ([]float64, bool) {
			x, ok := CoilInTin(a, b, c)
			return []float64{x.ProofedMM}, ok
		},
		"BunHalfMM": func(a, b, c float64) ([]float64, bool) {
			h, ok := BunHalfMM(a, b, c)
			return []float64{h.LengthMM, h.WidthMM, h.HeightMM}, ok
		},
		"TinLoafHalfMM": func(a, b, c float64) ([]float64, bool) {
			h, ok := TinLoafHalfMM(a, b, c, 100)
			return []float64{h.LengthMM, h.WidthMM, h.HeightMM}, ok
		},
		"BraidStrand": func(a, b, c float64) ([]float64, bool) {
			x, ok := BraidStrand(a, b, 3, c)
			return []float64{x.StrandMM, x.LengthMM, x.WidthMM, x.HeightMM}, ok
		},
		"TinVolumeML": func(a, b, c float64) ([]float64, bool) { x, ok := TinVolumeML(a, b, c); return []float64{x}, ok },
		"FillMLPerG": func(a, b, c float64) ([]float64, bool) {
			x, y, ok := FillMLPerG(a, b, c)
			return []float64{x, y}, ok
		},
		"DoughForTinG": func(a, b, c float64) ([]float64, bool) { x, ok := DoughForTinG(a, b, c); return []float64{x}, ok },
		"MeanDensity":  func(a, b, c float64) ([]float64, bool) { x, ok := MeanDensity(a, b, c, 1.15); return []float64{x}, ok },
		"FatLayerMM": func(a, b, c float64) ([]float64, bool) {
			x, ok := FatLayerMM(a, b, c, 1000, 1.15, 27)
			return []float64{x}, ok
		},
	}
	good := [3]float64{1.5, 1.2, 1} // also a height ratio and a gain of 1
	mayBeZero := map[string][]int{"CoilFromSheet": {2}, "FillMLPerG": {2}, "DoughForTinG": {2}, "MeanDensity": {0, 2}}
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
	if _, ok := CoilInTin(60, 100, 0.9); ok {
		t.Error("a coil that shrinks answered")
	}
}

// spiralMM is the length of a true spiral, its middle line from the core's
// radius out: the second road to CoilFromSheet.
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
		rhoDough, rhoFilling := draw(t, 1.1, 1.2, "dough density"), draw(t, 0.5, 1.4, "filling density")
		thickness, roll := draw(t, 2, 15, "thickness"), draw(t, 100, 1200, "roll")
		area, ok := SheetAreaCM2(dough, rhoDough, thickness)
		layer := thickness
		if filling > 0 {
			spread, ok := FillingThicknessMM(filling, rhoFilling, area)
			if !ok {
				t.Fatal("refused")
			}
			layer += spread
		}
		coil, ok2 := CoilFromSheet(100*area/roll, layer, 0)
		rho, ok3 := MeanDensity(dough, rhoDough, filling, rhoFilling)
		fromMass, ok4 := LogDiameterMM(dough+filling, rho, roll)
		if !ok || !ok2 || !ok3 || !ok4 || math.Abs(coil.DiameterMM-fromMass) > 1e-9*fromMass {
			t.Fatalf("from the sheet %g, from the mass %g", coil.DiameterMM, fromMass)
		}
		if length, ok := LogLengthMM(dough+filling, rho, fromMass); !ok || math.Abs(length-roll) > 1e-9*roll {
			t.Fatalf("roll %g came back as %g", roll, length)
		}
		if mass, ok := SheetMassG(area, rhoDough, thickness); !ok || math.Abs(mass-dough) > 1e-9*dough {
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
		if math.Abs(h.LengthMM/h.WidthMM-long) > 1e-9 || math.Abs(h.HeightMM/h.WidthMM-flat) > 1e-9 {
			t.Fatalf("ratios %+v for %g and %g", h, long, flat)
		}
		bun, ok := BunHalfMM(mass, rho, 1) // not flattened at all
		if !ok || math.Abs(bun.HeightMM-r) > 1e-9*r || math.Abs(bun.WidthMM-r) > 1e-9*r {
			t.Fatalf("bun %+v, ball %g", bun, r)
		}
		tin, ok := TinLoafHalfMM(mass, rho, draw(t, 50, 400, "length"), draw(t, 50, 200, "width"))
		same("tin loaf", 8*tin.LengthMM*tin.WidthMM*tin.HeightMM, ok)
		n := rapid.IntRange(2, 12).Draw(t, "strands")
		strand := draw(t, 100, 800, "strand")
		b, ok := BraidStrand(mass, rho, n, strand)
		same("strands", float64(n)*math.Pi/4*b.StrandMM*b.StrandMM*strand, ok)
		same("braid", math.Pi/4*b.WidthMM*b.HeightMM*b.LengthMM, ok)
	})
}

// Twice the mass: areas and rooms double, diameters of logs grow by the square
// root, balls by the cube root; a thicker sheet is smaller, a wider tin takes more.
func TestScalingProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		mass, rho, thickness := draw(t, 20, 5000, "mass"), draw(t, 0.3, 1.2, "density"), draw(t, 2, 15, "thickness")
		k := draw(t, 1.01, 20, "times")
		ratio := func(name string, f func(m float64) (float64, bool), want float64) {
			one, ok := f(mass)
			more, ok2 := f(k * mass)
			if !ok || !ok2 || math.Abs(more/one-want) > 1e-9*want {
				t.Fatalf("%s: %g times the mass gives %g, want %g", name, k, more/one, want)
			}
		}
		ratio("area", func(m float64) (float64, bool) { return SheetAreaCM2(m, rho, thickness) }, k)
		ratio("thicker", func(m float64) (float64, bool) { return SheetAreaCM2(mass, rho, m/mass*thickness) }, 1/k)
		ratio("log", func(m float64) (float64, bool) { return LogDiameterMM(m, rho, 300) }, math.Sqrt(k))
		ratio("ball", func(m float64) (float64, bool) { return BallRadiusMM(m, rho) }, math.Cbrt(k))
		ratio("loaf", func(m float64) (float64, bool) { h, ok := LoafHalfMM(m, rho, 2, 0.6); return h.HeightMM, ok }, math.Cbrt(k))
		ratio("braid", func(m float64) (float64, bool) { b, ok := BraidStrand(m, rho, 3, 400); return b.WidthMM, ok }, math.Sqrt(k))
		ratio("coil", func(m float64) (float64, bool) { c, ok := CoilFromSheet(m, 8, 0); return c.DiameterMM, ok }, math.Sqrt(k))
		ratio("tin", func(m float64) (float64, bool) { return TinVolumeML(m, 100, 80) }, k)
		ratio("rise", func(m float64) (float64, bool) { c, ok := CoilInTin(60, 100, m/mass); return c.ProofedMM, ok }, math.Cbrt(k))
		// All lengths k times as large: the mass is k^3, the coil has as many turns.
		small, _ := CoilFromSheet(450, 8, 5)
		large, ok := CoilFromSheet(450*k, 8*k, 5*k)
		if !ok || math.Abs(large.DiameterMM-k*small.DiameterMM) > 1e-9*large.DiameterMM || math.Abs(large.Turns-small.Turns) > 1e-9*small.Turns {
			t.Fatalf("%g times the coil: %+v, %+v", k, small, large)
		}
	})
}

// A sheet lies on its bench, holds its dough, and one lot fewer would not do.
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
		if got.WidthMM > got.LengthMM*(1+1e-9) || got.WidthMM+40 > math.Min(long, wide)+1e-6 || got.LengthMM+40 > math.Max(long, wide)*(1+1e-6) {
			t.Fatalf("%+v on %g x %g", got, long, wide)
		}
		held := got.WidthMM * got.LengthMM * thickness / 1000 * MixedDensity * float64(got.Lots)
		if math.Abs(held-mass) > 1e-6*mass {
			t.Fatalf("%+v holds %g of %g", got, held, mass)
		}
		if got.Fits != (got.Lots == 1) || float64(got.Lots-1)*got.LargestG > mass || float64(got.Lots)*got.LargestG < mass*(1-1e-6) {
			t.Fatalf("%+v for %g", got, mass)
		}
	})
}

// What a filling does to a tin's fill, and back.
func TestFillProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		volume, dough, filling := draw(t, 200, 5000, "volume"), draw(t, 50, 2000, "dough"), draw(t, 0, 1500, "filling")
		perDough, perTotal, ok := FillMLPerG(volume, dough, filling)
		if !ok || math.Abs(perTotal-perDough*dough/(dough+filling)) > 1e-9*perTotal {
			t.Fatalf("%g a g of dough, %g in all", perDough, perTotal)
		}
		if back, ok := DoughForTinG(volume, perTotal, filling/dough); !ok || math.Abs(back-dough) > 1e-9*dough {
			t.Fatalf("dough %g came back as %g", dough, back)
		}
		if back, ok := DoughForTinG(volume, perDough, 0); !ok || math.Abs(back-dough) > 1e-9*dough {
			t.Fatalf("dough %g came back as %g", dough, back)
		}
	})
}

// Fat and dough layers together are the sheet; one more three-fold thirds each.
func TestFatLayerProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sheet, fat, dough := draw(t, 2, 10, "sheet"), draw(t, 50, 2000, "fat"), draw(t, 100, 5000, "dough")
		n := rapid.IntRange(1, 200).Draw(t, "layers")
		one, ok := FatLayerMM(sheet, fat, 0.95, dough, 1.15, n)
		other, ok2 := FatLayerMM(sheet, dough, 1.15, fat, 0.95, n)
		if !ok || !ok2 || math.Abs(float64(n)*(one+other)-sheet) > 1e-9*sheet {
			t.Fatalf("%d layers of %g and %g in %g", n, one, other, sheet)
		}
		more, ok := Layers(n, 3)
		thin, ok2 := FatLayerMM(sheet, fat, 0.95, dough, 1.15, more)
		if !ok || !ok2 || math.Abs(3*thin-one) > 1e-9*one {
			t.Fatalf("%g after a three-fold %g", one, thin)
		}
	})
}
