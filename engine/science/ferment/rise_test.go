package ferment

import (
	"math"
	"testing"

	"forebake/engine/figure"
)

// The one error of a rise, fitted: twice the standard deviation of the
// cards' logarithms for a new card; each card lies inside it.
func TestRiseErrorIsTheCardsScatter(t *testing.T) {
	var logs []float64
	held := 0
	for _, r := range rows(t, "card") {
		hold(t, r, figure.WithinFactor(DoublingE, RiseError(false, false)), &held)
		logs = append(logs, math.Log(number(t, r["value"])))
	}
	if held != 4 {
		t.Errorf("%d of %d cards inside", held, len(logs))
	}
	mean, square := 0.0, 0.0
	for _, x := range logs {
		mean += x / float64(len(logs))
	}
	for _, x := range logs {
		square += (x - mean) * (x - mean)
	}
	n := float64(len(logs))
	sd := math.Sqrt(square / (n - 1))
	near(t, "mean of the cards", math.Exp(mean), DoublingE, 0.01)
	near(t, "same day", RiseError(false, false), math.Exp(2*sd*math.Sqrt(1+1/n)), 0.03)
	near(t, "after a measured rise", RiseError(false, true), math.Exp(sd), 0.01)
	near(
		t,
		"overnight",
		RiseError(true, false),
		math.Exp(math.Hypot(math.Log(sameDayError), math.Log(coldError))),
		0.03,
	)
	near(t, "a measured rise settles a retard too", RiseError(true, true), measuredError, 0)
	// F-50 in no fit: 1.54 of D-055 times the model's ratio over the
	// observed one.
	ratio := OsmoticFactor(4.03) / OsmoticFactor(2.65)
	near(t, "F-50", 1.54*ratio/0.54, 1.25, 0.01)
}

// At 1 % instant in lean dough at 26 C, with 0.9 to 1.9 usual: 30 and
// 40 min are short and 3 to 6 h long for certain; 1.5 h is neither.
func TestBulkIsAnswered(t *testing.T) {
	e := func(hours float64) figure.Estimate {
		return figure.WithinFactor(hours*OsmoticFactor(1.6), RiseError(false, false))
	}
	for _, minutes := range []float64{30, 40} {
		if x := e(minutes / 60); !(x.High < 0.9) {
			t.Errorf("%g min: %v", minutes, x)
		}
	}
	for _, hours := range []float64{3, 4, 6} {
		if x := e(hours); !(x.Low > 1.9) {
			t.Errorf("%g h: %v", hours, x)
		}
	}
	if x := e(1.4); !(x.Low > 0.9 && x.High < 1.9) {
		t.Errorf("1.4 h: %v", x)
	}
}

func TestPublishedWarmth(t *testing.T) {
	held, all := 0, 0
	for _, r := range rows(t, "warmth") {
		a, b := number(t, r["t_test"]), number(t, r["t_base"])
		hold(
			t,
			r,
			figure.WithinFactor(
				TemperatureFactor(a)/TemperatureFactor(b),
				TemperatureError(min(a, b)),
			),
			&held,
		)
		all++
	}
	if held != all || all != 5 {
		t.Errorf("%d of %d", held, all)
	}
	// Each error is no wider than its worst row needs.
	near(t, "warm", TemperatureError(17), 2.0*TemperatureFactor(26.7)/TemperatureFactor(36.1), 0.02)
	near(t, "cold", TemperatureError(5.6), TemperatureFactor(10)/TemperatureFactor(5.6)/2.25, 0.09)
	if TemperatureError(8) != warmError || TemperatureError(7.99) != coldError {
		t.Error("the error of the cold does not begin at 8 C")
	}
}

func TestDead(t *testing.T) {
	for _, c := range []struct {
		lo, hi float64
		want   figure.Truth
	}{
		{61, 61, figure.Yes}, {58.9, 70, figure.Yes}, {58.8, 58.8, figure.Open},
		{54.4, 54.4, figure.Open}, {54.3, 54.3, figure.No},
		{26, 26, figure.No}, {20, 61, figure.Open}, {math.Inf(-1), math.Inf(1), figure.Open},
	} {
		if got := Dead(figure.Interval{Lo: c.lo, Hi: c.hi}); got != c.want {
			t.Errorf("%g to %g C: %v, want %v", c.lo, c.hi, got, c.want)
		}
	}
	// 130 to 140 F (read), the textbooks' 138 F (memory).
	near(t, "dies from", diesFromC, (130.0-32)/1.8, 0.05)
	near(t, "dead", deadC, (138.0-32)/1.8, 0.05)
}
