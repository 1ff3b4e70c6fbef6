package heat

import (
	"encoding/csv"
	"math"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"pgregory.net/rapid"
)

// Every figure of the published table is in components or is named here
// with the reason it is not.
func TestComponentsMatchTheTable(t *testing.T) {
	index := map[string]int{
		"water":        water,
		"protein":      protein,
		"fat":          fat,
		"carbohydrate": carbohydrate,
		"fibre":        fibre,
		"ash":          ash,
		"ice":          ice,
		"air (pores)":  air,
	}
	leftOut := map[string]string{
		"water, supercooled":      "water that stays liquid keeps its figures of 0 C",
		"water (ASHRAE constant)": "1.1 % below measured water",
	}
	f, err := os.Open(filepath.Join("..", "..", "..", "testdata", "tables", "choi-okos.csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	lines, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	used := 0
	for _, line := range lines[1:] {
		if leftOut[line[0]] != "" {
			continue
		}
		i, ok := index[line[0]]
		if !ok {
			t.Errorf("unknown component %q", line[0])
			continue
		}
		var want [3]float64
		for j := range want {
			if want[j], err = strconv.ParseFloat(line[3+j], 64); err != nil {
				t.Fatal(err)
			}
		}
		got, unit := quadratic{}, ""
		switch line[1] {
		case "specific heat":
			got, unit = components[i].specificHeat, "J/(kg K)"
		case "density":
			got, unit = components[i].density, "kg/m3"
		case "conductivity":
			got, unit = components[i].conductivity, "W/(m K)"
		}
		if unit != line[2] {
			t.Errorf("%s %s is in %q", line[0], line[1], line[2])
		}
		if (got != quadratic{want[0], want[1], want[2]}) {
			t.Errorf("%s %s: %v, table %v", line[0], line[1], got, want)
		}
		used++
	}
	if used != 7*3+1 {
		t.Errorf("%d rows used", used)
	}
}

func near(t *testing.T, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %g, want %g within %g", name, got, want, tolerance)
	}
}

// Two usual doughs. Their expected figures were computed from the
// component table by hand, with air at a flat 0.025 W/(m K); at 20 C
// the table's air is 0.0257, which shows as 0.0003 in k.
var (
	// 100 bread flour (USDA 20083), 54 water, 1.5 salt, 1 fresh yeast.
	lean = Composition{
		Water:        0.435,
		Protein:      0.0774,
		Fat:          0.0106,
		Carbohydrate: 0.449,
		Fibre:        0.0153,
		Ash:          0.0127,
	}
	// 35 % water, 14 % fat, the rest as flour, sugar, egg and salt.
	enriched = Composition{
		Water:        0.35,
		Protein:      0.078,
		Fat:          0.14,
		Carbohydrate: 0.412,
		Fibre:        0.01,
		Ash:          0.01,
	}
	butter = Composition{Water: 0.16, Protein: 0.01, Fat: 0.82, Ash: 0.01}
)

func TestComputedDoughs(t *testing.T) {
	for _, c := range []struct {
		name               string
		food               Composition
		cp, rho, k         float64
		rhoGas, kGas, aGas float64
	}{
		{"lean", lean, 2750, 1241, 0.429, 1117, 0.373, 1.21e-7},
		{"enriched", enriched, 2585, 1199, 0.375, 0.9 * 1199, 0.326, 1.17e-7},
	} {
		dense, ok := PropertiesAt(c.food, 20, 0)
		gassy, ok2 := PropertiesAt(c.food, 20, 0.10)
		if !ok || !ok2 {
			t.Fatal(c.name)
		}
		near(t, c.name+" cp", dense.SpecificHeat, c.cp, 1)
		near(t, c.name+" rho", dense.DensityKgM3, c.rho, 1)
		near(t, c.name+" k", dense.ConductivityWmK, c.k, 0.0006)
		near(t, c.name+" cp, gas", gassy.SpecificHeat, c.cp, 1)
		near(t, c.name+" rho, gas", gassy.DensityKgM3, c.rhoGas, 1)
		near(t, c.name+" k, gas", gassy.ConductivityWmK, c.kGas, 0.0009)
		near(t, c.name+" alpha, gas", gassy.DiffusivityM2s, c.aGas, 0.006e-7)
	}
}

func TestButterIsFatContinuous(t *testing.T) {
	p, ok := PropertiesAt(butter, 20, 0)
	if !ok {
		t.Fatal("butter refused")
	}
	near(t, "butter k", p.ConductivityWmK, 0.215, 0.0006)
	near(t, "butter density", p.DensityKgM3, 940, 6)
	near(t, "butter alpha", p.DiffusivityM2s, 1.0e-7, 0.1e-7)
	parallel, series := bounds(butter, 20)
	near(t, "butter, parallel", parallel, 0.240, 0.001)
	near(t, "butter, series", series, 0.200, 0.004) // 0.199 at 10 C
}

func TestMeasuredFoods(t *testing.T) {
	for _, c := range []struct {
		name      string
		food      Composition
		cp, share float64 // J/(kg K), allowed relative error
	}{
		{"water, measured 4176 +/- 8", Composition{Water: 1}, 4176, 0.002},
		{"whole milk, measured 3908-3976",
			Composition{Water: 0.875, Protein: 0.033, Fat: 0.035, Carbohydrate: 0.049, Ash: 0.008},
			3942, 0.02},
		{"flour, handbook 1800-1880: the estimate is 5-10 % high",
			Composition{
				Water:        0.13,
				Protein:      0.12,
				Fat:          0.015,
				Carbohydrate: 0.705,
				Fibre:        0.025,
				Ash:          0.005,
			}, 1840, 0.10},
		{"butter, handbook 2300", butter, 2300, 0.05},
	} {
		p, ok := PropertiesAt(c.food, 20, 0)
		if !ok {
			t.Fatal(c.name)
		}
		near(t, c.name, p.SpecificHeat, c.cp, c.share*c.cp)
	}
	// Units: a litre of water near 20 C is a kilogram, and 10 K warmer
	// takes 41.8 kJ. Its diffusivity is 1.43e-7 m2/s.
	p, _ := PropertiesAt(Composition{Water: 1}, 20, 0)
	near(t, "litre of water, kg", p.DensityKgM3/1000, 1, 0.006)
	near(t, "10 K, kJ", p.SpecificHeat*10/1000, 41.8, 0.1)
	near(t, "water alpha", p.DiffusivityM2s, 1.43e-7, 0.03e-7)
	// Fat's conductivity stays possible when hot: the tenfold misprint
	// gives 0.015.
	hot, _ := PropertiesAt(Composition{Fat: 1}, 60, 0)
	near(t, "hot fat", hot.ConductivityWmK, 0.1635, 0.001)
}

func TestRefusals(t *testing.T) {
	nan := math.NaN()
	for name, c := range map[string]struct {
		food   Composition
		tC, g  float64
		answer bool
	}{
		"empty":             {Composition{}, 20, 0, false},
		"half a food":       {Composition{Water: 0.5}, 20, 0, false},
		"percentages":       {Composition{Water: 43.5, Carbohydrate: 56.5}, 20, 0, false},
		"negative":          {Composition{Water: 1.2, Fat: -0.2}, 20, 0, false},
		"not a number":      {Composition{Water: nan}, 20, 0, false},
		"frozen":            {lean, -0.1, 0, false},
		"at the lowest":     {lean, 0, 0, true},
		"at the highest":    {lean, 150, 0, true},
		"too hot":           {lean, 150.1, 0, false},
		"temperature NaN":   {lean, nan, 0, false},
		"all gas":           {lean, 20, 1, false},
		"gas in per cent":   {lean, 20, 10, false},
		"negative gas":      {lean, 20, -0.1, false},
		"gas NaN":           {lean, 20, nan, false},
		"nearly all gas":    {lean, 20, 0.99, true},
		"sum inside limits": {Composition{Water: 1.029}, 20, 0, true},
		"sum outside":       {Composition{Water: 1.031}, 20, 0, false},
		"pure fat":          {Composition{Fat: 1}, 20, 0, true},
	} {
		p, ok := PropertiesAt(c.food, c.tC, c.g)
		if ok != c.answer || !ok && p != (Properties{}) {
			t.Errorf("%s: ok %v, %+v", name, ok, p)
		}
	}
}

// A measured composition that adds up to 102 % is the same food.
func TestSumIsScaled(t *testing.T) {
	over := Composition{
		lean.Water * 1.02,
		lean.Protein * 1.02,
		lean.Fat * 1.02,
		lean.Carbohydrate * 1.02,
		lean.Fibre * 1.02,
		lean.Ash * 1.02,
	}
	want, _ := PropertiesAt(lean, 20, 0.1)
	got, ok := PropertiesAt(over, 20, 0.1)
	if !ok {
		t.Fatal("refused")
	}
	near(t, "cp", got.SpecificHeat, want.SpecificHeat, 1e-6)
	near(t, "rho", got.DensityKgM3, want.DensityKgM3, 1e-6)
	near(t, "k", got.ConductivityWmK, want.ConductivityWmK, 1e-9)
}

// bounds is a plain second reckoning: parallel above, series below.
func bounds(c Composition, tC float64) (parallel, series float64) {
	w := []float64{c.Water, c.Protein, c.Fat, c.Carbohydrate, c.Fibre, c.Ash}
	volume, resistance := 0.0, 0.0
	for i := range w {
		v := w[i] / components[i].density.at(tC)
		volume += v
		parallel += v * components[i].conductivity.at(tC)
		resistance += v / components[i].conductivity.at(tC)
	}
	return parallel / volume, volume / resistance
}

func drawFood(t *rapid.T) Composition {
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
	return Composition{w[0], w[1], w[2], w[3], w[4], w[5]}
}

func TestPropertiesProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		food := drawFood(t)
		tC := rapid.Float64Range(0, 150).Draw(t, "tC")
		gas := rapid.Float64Range(0, 0.9).Draw(t, "gas")
		dense, ok := PropertiesAt(food, tC, 0)
		light, ok2 := PropertiesAt(food, tC, gas)
		if !ok || !ok2 {
			t.Fatalf("refused %+v", food)
		}
		// Between the bounds, and between the poorest and the
		// richest component.
		parallel, series := bounds(food, tC)
		if k := dense.ConductivityWmK; k > parallel*(1+1e-9) || k < series*(1-1e-9) {
			t.Fatalf("k %g outside %g..%g", k, series, parallel)
		}
		lowest, highest := math.Inf(1), 0.0
		for i := range solidsAndWater {
			cp := components[i].specificHeat.at(tC)
			lowest, highest = math.Min(lowest, cp), math.Max(highest, cp)
		}
		if cp := dense.SpecificHeat; cp < lowest-1e-6 || cp > highest+1e-6 {
			t.Fatalf("cp %g outside %g..%g", cp, lowest, highest)
		}
		// Gas takes away mass and conductivity and leaves the heat
		// per kilogram.
		if light.SpecificHeat != dense.SpecificHeat ||
			math.Abs(light.DensityKgM3-(1-gas)*dense.DensityKgM3) > 1e-6 {
			t.Fatalf("gas %g: %+v from %+v", gas, light, dense)
		}
		airK := components[air].conductivity.at(tC)
		if k := light.ConductivityWmK; k > dense.ConductivityWmK*(1+1e-12) || k < airK {
			t.Fatalf("k %g with gas %g, %g without", k, gas, dense.ConductivityWmK)
		}
		for _, p := range []Properties{dense, light} {
			back := p.DiffusivityM2s * p.DensityKgM3 * p.SpecificHeat
			if math.Abs(back-p.ConductivityWmK) > 1e-12 {
				t.Fatalf("alpha*rho*cp %g, k %g", back, p.ConductivityWmK)
			}
		}
	})
}

func BenchmarkPropertiesAt(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		PropertiesAt(enriched, 20, 0.1)
	}
}
