package ferment

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func near(t *testing.T, name string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.5f, want %g within %g", name, got, want, tolerance)
	}
}

// Molalities of typical make-ups (computed): 2 % salt, lean and pan
// bread at 60 % water, the sweet doughs from 57 to 64 % with their eggs
// and milk; and the same at 60 % throughout.
func TestTypicalMolalities(t *testing.T) {
	for _, c := range []struct {
		name                     string
		sugar, hydration         float64
		molality, atSixtyPercent float64
	}{
		{"lean", 0, 60, 1.60, 1.6},
		{"pan bread 5 %", 5, 60, 2.21, 2.2},
		{"10 %", 10, 58.6, 2.90, 2.8},
		{"15 %", 15, 57.3, 3.63, 3.4},
		{"20 %", 20, 61.0, 3.95, 4.0},
		{"25 %", 25, 61.7, 4.48, 4.6},
		{"30 %", 30, 63.8, 4.87, 5.3},
	} {
		s := Solutes{SucroseG: c.sugar, SaltG: 2, WaterG: c.hydration, FlourG: 100}
		m, ok := Molality(s)
		if !ok {
			t.Fatal(c.name)
		}
		near(t, c.name, m, c.molality, 0.01)
		s.WaterG = 60
		m, _ = Molality(s)
		near(t, c.name+" at 60 %", m, c.atSixtyPercent, 0.051)
	}
	// Lean dough at 60 % by salt: 0, 1, 1.5, 2, 2.5, 3 %.
	for i, want := range []float64{0.17, 0.89, 1.24, 1.60, 1.96, 2.31} {
		m, _ := Molality(
			Solutes{SaltG: []float64{0, 1, 1.5, 2, 2.5, 3}[i], WaterG: 60, FlourG: 100},
		)
		near(t, "salt series", m, want, 0.0055)
	}
	// 24.5 atm per osmol/kg puts lean dough at 39 atm.
	m, _ := Molality(Solutes{SaltG: 2, WaterG: 60, FlourG: 100})
	near(t, "lean atm", 24.5*m, 39, 0.5)
}

func TestMolalityByHand(t *testing.T) {
	// 1 kg of free water and one term at a time, in whole moles.
	for _, c := range []struct {
		name string
		s    Solutes
		want float64
	}{
		{"sucrose counts twice", Solutes{SucroseG: 342.3}, 2},
		{"monosaccharide", Solutes{MonosaccharideG: 180.2}, 1},
		{"lactose", Solutes{LactoseG: 342.3}, 1},
		{"maltose", Solutes{MaltoseG: 342.3}, 1},
		{"salt counts twice", Solutes{SaltG: 58.44}, 2},
		{"other", Solutes{OtherG: 250, OtherMolar: 500}, 0.5},
		{"flour sugars", Solutes{FlourG: 1000}, 15 / 180.2},
		{"plain water", Solutes{}, 0},
	} {
		c.s.WaterG = 1000 + 0.12*c.s.FlourG
		got, ok := Molality(c.s)
		if !ok {
			t.Errorf("%s: refused", c.name)
		}
		near(t, c.name, got, c.want, 1e-9)
	}
}

func TestMolalityRefusals(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	for name, s := range map[string]Solutes{
		"no water":              {FlourG: 100},
		"all bound":             {WaterG: 12, FlourG: 100},
		"nothing":               {},
		"negative salt":         {WaterG: 60, FlourG: 100, SaltG: -1},
		"negative flour":        {WaterG: 60, FlourG: -1},
		"water not a number":    {WaterG: nan},
		"sugar not a number":    {WaterG: 60, SucroseG: nan},
		"endless water":         {WaterG: inf},
		"endless sugar":         {WaterG: 60, SucroseG: inf},
		"other without a molar": {WaterG: 60, OtherG: 1},
		"other negative":        {WaterG: 60, OtherG: -1, OtherMolar: 300},
	} {
		if m, ok := Molality(s); ok || m != 0 {
			t.Errorf("%s: answered %g", name, m)
		}
	}
	if _, ok := Molality(Solutes{WaterG: 12.01, FlourG: 100}); !ok {
		t.Error("a little free water refused")
	}
}

func TestOsmoticFactorExpected(t *testing.T) {
	lean := 1.60
	for _, c := range []struct {
		name             string
		m                float64
		standard         float64 // absolute
		relativeStandard float64 // against lean dough
	}{
		{name: "lean", m: lean, standard: 0.948, relativeStandard: 1},
		{name: "5 %", m: 2.21, standard: 0.833, relativeStandard: 0.88},
		{name: "10 %", m: 2.90, standard: 0.626, relativeStandard: 0.66},
		{name: "15 %", m: 3.63, standard: 0.405, relativeStandard: 0.43},
		{name: "20 %", m: 3.95, standard: 0.327, relativeStandard: 0.35},
		{name: "25 %", m: 4.48, standard: 0.227, relativeStandard: 0.24},
		{name: "30 %", m: 4.87, standard: 0.174, relativeStandard: 0.18},
	} {
		s := OsmoticFactor(c.m)
		near(t, c.name+" standard", s, c.standard, 0.0025) // m is printed to two places
		base := OsmoticFactor(lean)
		near(t, c.name+" standard, relative", s/base, c.relativeStandard, 0.006)
	}
	// Salt in lean dough against none: 2 % 0.95, 3 % 0.81.
	near(t, "2 % salt", OsmoticFactor(1.60)/OsmoticFactor(0.17), 0.95, 0.005)
	near(t, "3 % salt", OsmoticFactor(2.31)/OsmoticFactor(0.17), 0.81, 0.005)
	for _, bad := range []float64{OsmoticFactor(-1), OsmoticFactor(math.NaN())} {
		if !math.IsNaN(bad) {
			t.Errorf("bad input gave %g", bad)
		}
	}
}

func TestOsmoticFactorProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m := rapid.Float64Range(0, 20).Draw(t, "m")
		more := m + rapid.Float64Range(0.01, 5).Draw(t, "more")
		a, b := OsmoticFactor(m), OsmoticFactor(more)
		if !(a <= 1 && b > 0 && b <= a) {
			t.Fatalf("f(%g) %g, f(%g) %g", m, a, more, b)
		}
	})
}

func TestTemperatureFactorExpected(t *testing.T) {
	for tC, want := range map[float64]float64{
		2: 0.004, 4: 0.021, 5: 0.034, 6: 0.051, 8: 0.095, 10: 0.151, 12: 0.220, 15: 0.346,
		18: 0.498, 20: 0.611, 22: 0.734,
		24: 0.864, 26: 1, 28: 1.139, 30: 1.277, 32: 1.409, 35: 1.575, 38: 1.653, 40: 1.595,
		42: 1.351, 44: 0.686,
	} {
		near(t, "g", TemperatureFactor(tC), want, 0.00051)
	}
	for tC, want := range map[float64]float64{10: 10.07, 15: 4.04, 20: 2.69, 25: 2.09, 30: 1.69} {
		near(t, "Q10", TemperatureFactor(tC+5)/TemperatureFactor(tC-5), want, 0.0051)
	}
	for _, tC := range []float64{-273, -5, 0, 0.5, 45, 49.17, 60, 1e9, math.Inf(1), math.Inf(-1)} {
		if g := TemperatureFactor(tC); g != 0 {
			t.Errorf("g(%g) = %g, want 0", tC, g)
		}
	}
	if g := TemperatureFactor(math.NaN()); !math.IsNaN(g) {
		t.Errorf("g(NaN) = %g", g)
	}
	for _, inside := range []float64{0.51, 44.99} {
		if !(TemperatureFactor(inside) > 0) {
			t.Errorf("g(%g) is not positive", inside)
		}
	}
}

func TestTemperatureFactorProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := rapid.Float64Range(-50, 100).Draw(t, "a")
		b := a + rapid.Float64Range(0, 20).Draw(t, "rise")
		ga, gb := TemperatureFactor(a), TemperatureFactor(b)
		if ga < 0 || ga > TemperatureFactor(GasOptimumC) {
			t.Fatalf("g(%g) = %g", a, ga)
		}
		if b <= GasOptimumC && gb < ga || a >= GasOptimumC && gb > ga {
			t.Fatalf("g(%g) = %g, g(%g) = %g", a, ga, b, gb)
		}
	})
}

// Published cards (read), converted to E, percent-hours at 26
// C (computed).
func TestCalibrationCards(t *testing.T) {
	for _, c := range []struct {
		name                    string
		tC, hours, m, yeast, eE float64
	}{
		{"AFRS D-055, bulk", 26.7, 2, 2.58, 1.01, 1.54},
		{"AFRS D-055, proof low", 32.2, 1, 2.58, 1.01, 1.04},
		{"AFRS D-055, proof high", 37.8, 1, 2.58, 1.01, 1.21},
		{"quantity rolls", 32.2, 0.75, 3.00, 1.67, 1.06},
		{"challah, bulk", 26.7, 1.5, 3.02, 1.31, 1.21},
	} {
		got := TemperatureFactor(c.tC) * OsmoticFactor(c.m) * c.yeast * c.hours
		near(t, c.name, got, c.eE, 0.011)
	}
	// Hours for one doubling at 26 C with 1.75 % instant.
	near(t, "15 %", DoublingE/(1.75*OsmoticFactor(3.63)), 1.8, 0.05)
	near(t, "20 %", DoublingE/(1.75*OsmoticFactor(3.95)), 2.2, 0.05)
	near(t, "D-055", DoublingE/OsmoticFactor(2.58), 1.7, 0.05)
}

func BenchmarkOsmoticFactor(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		OsmoticFactor(3.63)
	}
}

func BenchmarkTemperatureFactor(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		TemperatureFactor(24.3)
	}
}

func BenchmarkMolality(b *testing.B) {
	s := Solutes{SucroseG: 15, SaltG: 2, WaterG: 57, FlourG: 100}
	b.ReportAllocs()
	for b.Loop() {
		Molality(s)
	}
}
