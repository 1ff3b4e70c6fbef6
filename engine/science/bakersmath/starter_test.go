package bakersmath

import (
	"math"
	"strings"
	"testing"

	"forebake/engine/figure"
)

// Published hydrations of starters (read), and the shares of flour and
// water expected of them (computed).
func TestStarterShares(t *testing.T) {
	for _, c := range []struct{ h, flour, water float64 }{
		{0.30, 0.769, 0.231}, {0.46, 0.685, 0.315}, {0.50, 0.667, 0.333}, {1, 0.5, 0.5},
	} {
		flour, water, silent := StarterShares(figure.Exactly(c.h))
		if silent != "" {
			t.Fatal(silent)
		}
		near(t, "flour", flour.Mid, c.flour, 0.0005)
		near(t, "water", water.Mid, c.water, 0.0005)
		near(t, "all of it", flour.Mid+water.Mid, 1, 1e-12)
	}
	// 1000 g flour, 400 g water and 250 g stiff starter: 40.9 %; taken
	// as half and half, 46.7 %.
	for _, c := range []struct {
		h    figure.Estimate
		want float64
	}{{StiffStarter, 40.9}, {LiquidStarter, 46.7}} {
		flour, water, _ := StarterShares(c.h)
		near(t, "hydration", 100*(400+250*water.Mid)/(1000+250*flour.Mid), c.want, 0.05)
	}
}

// Every stiff starter of the table lies in a stiff one's estimate; the
// one of that name at 100 % only in that of a starter by name alone.
func TestPublishedStarters(t *testing.T) {
	tried := 0
	for _, r := range rows(t, "starters.csv") {
		tried++
		h := number(t, r["water_on_flour_pct"]) / 100
		if StiffStarter.Contains(h) != (r["stiff"] == "yes") || !UnsaidStarter.Contains(h) {
			t.Errorf("%s: %g", r["item"], h)
		}
	}
	if tried != 6 {
		t.Errorf("%d rows", tried)
	}
	near(t, "before use", StiffStarter.Mid, 0.46, 1e-9)
	near(t, "the driest", StiffStarter.Low, 0.30, 1e-9)
	near(t, "the wettest", StiffStarter.High, 0.50, 1e-9)
}

func TestStarterIsSilentOutside(t *testing.T) {
	for _, h := range []float64{0.29, 2.01, math.NaN(), -1} {
		flour, water, silent := StarterShares(figure.Exactly(h))
		if !strings.Contains(silent, "from 0.3 to 2 g/g") || !math.IsNaN(flour.Mid) ||
			!math.IsNaN(water.Mid) {
			t.Errorf("%g: %v %v %q", h, flour, water, silent)
		}
	}
	for _, h := range []float64{0.3, 2} {
		if _, _, silent := StarterShares(figure.Exactly(h)); silent != "" {
			t.Errorf("%g: %s", h, silent)
		}
	}
	flour, water, _ := StarterShares(UnsaidStarter)
	inOrder(t, "flour", flour)
	inOrder(t, "water", water)
	near(t, "the least flour", flour.Low, 0.5, 1e-9)
}

// A stollen: 300 g fruit and 40 g rum on 500 g flour. The rum goes into
// the fruit; a drowned soak leaves some over.
func TestSoakedOutside(t *testing.T) {
	for _, c := range []struct {
		liquid, pieces float64
		want           figure.Estimate
	}{
		{40, 300, figure.Estimate{Low: 0, Mid: 0, High: 4}}, {30, 300, figure.Exactly(0)},
		{120, 300, figure.Estimate{Low: 0, Mid: 45, High: 84}},
		{300, 300, figure.Estimate{Low: 150, Mid: 225, High: 264}}, {50, 0, figure.Exactly(50)},
		{0, 300, figure.Exactly(0)},
	} {
		got, silent := SoakedOutside(c.liquid, c.pieces)
		if silent != "" || math.Abs(got.Low-c.want.Low) > 1e-9 ||
			math.Abs(got.Mid-c.want.Mid) > 1e-9 ||
			math.Abs(got.High-c.want.High) > 1e-9 {
			t.Errorf("%g on %g: %v, want %v %s", c.liquid, c.pieces, got, c.want, silent)
		}
	}
	// The guide's charge, 12 to 15 % of the raisins (read), is taken up
	// but for 3 %.
	for _, share := range []float64{0.12, 0.15} {
		if e, _ := SoakedOutside(share*1000, 1000); e.High > 30+1e-9 {
			t.Errorf("%g: %v", share, e)
		}
	}
	for _, c := range [][2]float64{{-1, 300}, {10, -1}, {math.NaN(), 1}, {1, math.NaN()},
		{math.Inf(1), 1}} {
		if e, silent := SoakedOutside(c[0], c[1]); silent == "" || !math.IsNaN(e.Mid) {
			t.Errorf("%v: %v", c, e)
		}
	}
	if e, silent := SoakedOutside(301, 100); !strings.Contains(silent, "from 0 to 3 g/g") ||
		e.High != 301 {
		t.Errorf("a drowned soak: %v %q", e, silent)
	}
}
