package ferment

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func TestRetardPublished(t *testing.T) {
	for tau, want := range map[float64]float64{0.5: 0.57, 1: 0.85, 2: 1.4, 3: 1.9} {
		tolerance := 0.005
		if tau >= 2 {
			tolerance = 0.05 // printed to one place
		}
		near(t, "24 to 4 C, 14 h", EquivalentHoursExponential(24, 4, tau, 14), want, tolerance)
	}
	near(t, "14 h at 4 C", EquivalentHoursExponential(4, 4, 1, 14), 0.29, 0.005)
	near(t, "48 h at 4 C", EquivalentHoursExponential(4, 4, 1, 48), 1.0, 0.05)
}

func TestEquivalentHoursEdges(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	for _, c := range []struct {
		name                      string
		from, ambient, tau, hours float64
		want                      float64
	}{
		{"no time", 24, 4, 1, 0, 0},
		{"negative time", 24, 4, 1, -2, 0},
		{"instant", 24, 26, 0, 3, 3},
		{"negative tau", 24, 26, -1, 3, 3},
		{"almost instant", 24, 26, 1e-9, 3, 3},
		{"no change", 26, 26, 2, 3, 3},
		{"endless tau", 26, 4, inf, 3, 3},
		{"very long tau", 26, 4, 1e9, 3, 3},
		{"frozen for ever", -18, -18, 1, inf, 0},
		{"frozen in the end", -10, -18, 1, 1e9, 0},
		{"endless, warm", 24, 26, 1, inf, inf},
		{"oven", 60, 200, 1, 5, 0},
		{"NaN", nan, 4, 1, 1, nan},
		{"NaN hours", 24, 4, 1, nan, nan},
		{"from a furnace that never cools into range", 1e300, 100, 1, 5, 0},
	} {
		got := EquivalentHoursExponential(c.from, c.ambient, c.tau, c.hours)
		if math.IsNaN(c.want) != math.IsNaN(got) || !math.IsNaN(got) && got != c.want && !(math.Abs(got-c.want) < 1e-6) {
			t.Errorf("%s: %g, want %g", c.name, got, c.want)
		}
	}
	endless := EquivalentHoursExponential(24, 0, 1, inf)
	if !(endless > 0 && endless < 5) {
		t.Errorf("cooling below the minimum for ever: %g", endless)
	}
}

// judge adds up the same integral the slow way: midpoints, many of them.
func judge(from, ambient, tau, hours float64) float64 {
	const n = 20000
	sum := 0.0
	for i := range n {
		sum += TemperatureFactor(ambient + (from-ambient)*math.Exp(-(float64(i)+0.5)*hours/n/tau))
	}
	return sum * hours / n
}

func TestEquivalentHoursAgainstJudge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.Float64Range(-20, 70).Draw(t, "from")
		ambient := rapid.Float64Range(-20, 70).Draw(t, "ambient")
		tau := rapid.Float64Range(0.05, 20).Draw(t, "tau")
		hours := tau * rapid.Float64Range(0.01, 60).Draw(t, "hours in tau")
		got, want := EquivalentHoursExponential(from, ambient, tau, hours), judge(from, ambient, tau, hours)
		// The second term is the judge's own error at the corner above 45 C.
		if !(math.Abs(got-want) <= 1e-4*want+3e-6*hours) {
			t.Fatalf("%g, judge %g", got, want)
		}
	})
}

// Two stays in a row are one stay.
func TestEquivalentHoursAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from := rapid.Float64Range(-20, 70).Draw(t, "from")
		ambient := rapid.Float64Range(-20, 70).Draw(t, "ambient")
		tau := rapid.Float64Range(0.05, 20).Draw(t, "tau")
		first := rapid.Float64Range(0, 30).Draw(t, "first")
		second := rapid.Float64Range(0, 30).Draw(t, "second")
		middle := ambient + (from-ambient)*math.Exp(-first/tau)
		whole := EquivalentHoursExponential(from, ambient, tau, first+second)
		parts := EquivalentHoursExponential(from, ambient, tau, first) + EquivalentHoursExponential(middle, ambient, tau, second)
		if !(math.Abs(whole-parts) <= 1e-4*whole+1e-9) {
			t.Fatalf("whole %.9g, parts %.9g", whole, parts)
		}
		if most := TemperatureFactor(GasOptimumC) * (first + second); whole < 0 || whole > most*(1+1e-9) {
			t.Fatalf("%g outside 0..%g", whole, most)
		}
	})
}

func BenchmarkEquivalentHoursExponential(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		EquivalentHoursExponential(24, 4, 1.5, 14)
	}
}
