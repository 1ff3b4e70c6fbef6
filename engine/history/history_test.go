package history_test

import (
	"math"
	"strconv"
	"testing"
	"time"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
)

// A rest in a bowl, a night as a slab, the sheet and the proof of pieces: the middle run is one
// heat.Walk driven by hand.
func TestMiddleRunIsAWalk(t *testing.T) {
	s := setup(
		t,
		`{ mix = "12 min" }, { rest = "1 h", at = "room" }, { chill = "14 h", as = "slab 40 mm" }, { temper = "20 min", at = "15 C" },
		{ sheet = "5 mm" }, { rest = "10 min", at = "room" }, { proof = "2 h", at = "27 C", as = "pieces 75 g" }, { chill = "9 min", by = "ice bath" }`,
	)
	life := follow(t, s)
	h := &hand{t: t, m: s.Material, mean: 26}
	check := func(i int, start float64, want heat.State) {
		t.Helper()
		st := life.Stages[i]
		if !st.Known {
			t.Fatalf("stage %d misses %q", i, st.Missing)
		}
		near(t, st.Step.Verb.Name+" start", st.StartCore.Mid, start, 1e-9)
		near(t, st.Step.Verb.Name+" core", st.Core.Mid, want.CoreC, 1e-9)
		near(t, st.Step.Verb.Name+" mean", st.Mean.Mid, want.MeanC, 1e-9)
		near(t, st.Step.Verb.Name+" surface", st.Surface.Mid, want.SurfaceC, 1e-9)
		for _, b := range []figure.Estimate{st.Core, st.Mean, st.Surface} {
			if !(b.Low < b.Mid && b.Mid < b.High) {
				t.Errorf("%s: %v is not held by its outer runs", st.Step.Verb.Name, b)
			}
		}
	}
	nearBand(t, "mix", life.Stages[0].Core, even(26), 0)
	h.stand(bowlOf(2, 1080))
	check(1, 26, h.stay(22, 9, 3600))
	h.stand(heat.SlabOf(0.040))
	start := h.mean
	night := h.stay(4, 8, 14*3600)
	check(2, start, night)
	warmed := h.stay(15, 9, 20*60) // the slab stays as it is: no new shape turns it over
	check(3, night.CoreC, warmed)
	near(t, "sheet core", life.Stages[4].Core.Mid, h.mean, 1e-9)
	h.stand(heat.SlabOf(0.005))
	start = h.mean
	check(5, start, h.stay(22, 9, 600))
	h.stand(heat.BallOf(0.075, 1080))
	start = h.mean
	proofed := h.stay(27, 9, 2*3600)
	check(6, start, proofed)
	check(7, proofed.CoreC, h.stay(1, 300, 9*60))
	near(
		t,
		"hours since the beginning",
		life.Stages[7].EndH.Mid(),
		0.2+1+14+1.0/3+1.0/6+2+0.15,
		1e-9,
	)
	if st := life.Stages[1]; !st.AssumedBowl || life.Stages[2].AssumedBowl {
		t.Error("the rest says nothing of its shape, and the chill does")
	}
	near(t, "Biot number of the slab", life.Stages[2].Bi, 8*0.020/0.33, 1e-12)
}

// The outer runs of a plain slab, by hand: no lid and faster by the model's error, and a lid with
// the time to match.
func TestOuterRunsByHand(t *testing.T) {
	for _, test := range []struct {
		name, step     string
		ambient, h     [3]float64
		hours          [3]float64
		warming, plain bool
	}{
		{"open", `{ chill = "6 h", as = "slab 40 mm", covered = false }`, [3]float64{4, 4, 4}, [3]float64{8, 8, 8}, [3]float64{6, 6, 6}, false, true},
		{"may be covered", `{ chill = "6 h", as = "slab 40 mm" }`, [3]float64{4, 4, 4}, [3]float64{8, 8, lidded(8)}, [3]float64{6, 6, 6}, false, false},
		{"covered, maybe by film only", `{ chill = "6 h", as = "slab 40 mm", covered = true }`, [3]float64{4, 4, 4}, [3]float64{8, 8, lidded(8)}, [3]float64{6, 6, 6}, false, false},
		{"ranges", `{ chill = "5 h to 7 h", at = "3 C to 7 C", as = "slab 40 mm", covered = false }`, [3]float64{3, 5, 7}, [3]float64{8, 8, 8}, [3]float64{7, 6, 5}, false, false},
		{"warming", `{ proof = "1 h to 2 h", at = "30 C to 34 C", as = "slab 40 mm" }`, [3]float64{30, 32, 34}, [3]float64{lidded(9), 9, 9}, [3]float64{1, 1.5, 2}, true, false},
		{"the coldest cools and the warmest warms", `{ rest = "2 h", at = "20 C to 34 C", as = "slab 40 mm", covered = false }`, [3]float64{20, 27, 34}, [3]float64{9, 9, 9}, [3]float64{2, 2, 2}, false, false},
	} {
		st := follow(t, setup(t, test.step)).Stages[0]
		err := heat.TimeError([]float64{8, 9}[b2i(test.h[1] == 9)]*0.02/0.33, heat.AirError)
		var want [3]heat.State
		for i := range want {
			speed := 1.0
			cooling := test.ambient[i] < 26
			switch {
			case i == 1:
			case (i == 0) == cooling:
				speed = 1 + err
			default:
				speed = 1 / (1 + err)
			}
			h := &hand{t: t, m: plainDough(), mean: 26}
			h.stand(heat.SlabOf(0.040))
			want[i] = h.stay(test.ambient[i], test.h[i], test.hours[i]*3600*speed)
		}
		nearBand(
			t,
			test.name+", core",
			st.Core,
			figure.Estimate{Low: want[0].CoreC, Mid: want[1].CoreC, High: want[2].CoreC},
			1e-9,
		)
		nearBand(
			t,
			test.name+", mean",
			st.Mean,
			figure.Estimate{Low: want[0].MeanC, Mid: want[1].MeanC, High: want[2].MeanC},
			1e-9,
		)
	}
}

func number(x float64) string { return strconv.FormatFloat(x, 'f', 4, 64) }

func b2i(b bool) int {
	if b {
		return 1
	}
	return 0
}

// lidded is a coefficient with a lid over the top face only, half of the surface.
func lidded(h float64) float64 { return (h + heat.InSeries(h, 0.18)) / 2 }

// Nobody says how it stands: the quick run is a thin slab, the others are a bowl. It is the coldest
// in the cold and the warmest in the warm.
func TestNoGeometry(t *testing.T) {
	life := follow(t, setup(t, `{ rest = "2 h", at = "34 C" }, { chill = "3 h" }`))
	warm, cold := life.Stages[0], life.Stages[1]
	if warm.Mean.High < 33.3 || warm.Mean.Low > warm.Mean.Mid || warm.Mean.Mid > 31 {
		t.Errorf("2 h at 34 C: %v; a slab of 20 mm is through, a bowl is not", warm.Mean)
	}
	if cold.Mean.Low > 6 || cold.Mean.Mid < 12 || cold.Mean.High < cold.Mean.Mid {
		t.Errorf("then 3 h at 4 C: %v; a slab of 20 mm is through, a bowl is not", cold.Mean)
	}
	if !warm.AssumedBowl || !cold.AssumedBowl {
		t.Error("both say that a bowl is assumed")
	}
}

// A dough's own heat to first order: the middle run is slower by the growth, and no more.
func TestOwnHeatByHand(t *testing.T) {
	s := setup(t, `{ chill = "6 h", as = "slab 30 mm", covered = false }`)
	s.Gas = 1
	st := follow(t, s).Stages[0]
	m := s.Material
	q := 0.77 * math.Pow(2.5, (26.0-28)/10)
	growth := 1 + q*m.Density*(0.015*0.015/(2*m.Conductivity)+0.015/8)/(26-4)
	if growth >= 1.25 {
		t.Fatalf("growth %v is not first order", growth)
	}
	h := &hand{t: t, m: m, mean: 26}
	h.stand(heat.SlabOf(0.030))
	hours := 0.0
	const steps = 20000
	if !h.w.Stage(4, 8) {
		t.Fatal("refused")
	}
	for i := range steps {
		hours += ferment.TemperatureFactor(
			h.w.At((float64(i)+0.5)/steps*6*3600/growth).MeanC,
		) * 6 / steps
	}
	near(t, "equivalent hours", st.Hours.Mid, hours, 2e-3*hours)
	near(t, "core", st.Core.Mid, h.stay(4, 8, 6*3600/growth).CoreC, 1e-9)
	plain := follow(t, setup(t, `{ chill = "6 h", as = "slab 30 mm", covered = false }`)).Stages[0]
	if !(st.Core.Mid > plain.Core.Mid && st.Core.High > plain.Core.High) {
		t.Errorf("a working dough ends at %v, one without yeast at %v", st.Core, plain.Core)
	}
	if plain.Hours != (figure.Estimate{}) {
		t.Errorf("no yeast gained %v", plain.Hours)
	}
}

// The published comparison: a 4 C fridge, h 6, 0.8 W/kg at 28 C, dough at 26 C; with its own heat a
// slab of 40 mm needs 6.2 h to 8 C in place of 5.5, one of 60 mm 10.6 in place of 8.8, one of 100
// mm 24 in place of 16.5. The kitchen's h is 8, so the figures are held against walks and volumes
// at 8, and those at 6 against the page.
func TestOwnHeatPublished(t *testing.T) {
	m := plainDough()
	m.Conductivity, m.Density, m.SpecificHeat = 0.35, 1100, 2650
	m.Diffusivity = m.Conductivity / m.Density / m.SpecificHeat
	props := heat.Properties{
		SpecificHeat:    m.SpecificHeat,
		DensityKgM3:     m.Density,
		ConductivityWmK: m.Conductivity,
		DiffusivityM2s:  m.Diffusivity,
	}
	byHand := func(mm, h, q float64) float64 {
		var v heat.Volumes
		if !v.Start(1, mm/2000, props, 26) || !v.Stage(4, h) {
			t.Fatal("refused")
		}
		v.SetSource(heat.FermentationCurve(q))
		last := 26.0
		for at := 0.0; at < 60*3600; at += 300 {
			core := v.Advance(300).CoreC
			if core <= 8 {
				return (at + 300*(last-8)/(last-core)) / 3600
			}
			last = core
		}
		return math.Inf(1)
	}
	for _, test := range []struct{ mm, without, with float64 }{{40, 5.5, 6.2}, {60, 8.8, 10.6}, {100, 16.5, 24}} {
		near(
			t,
			"by hand without its own heat, h 6",
			byHand(test.mm, 6, 1e-9),
			test.without,
			0.1*test.without,
		)
		near(t, "by hand with it, h 6", byHand(test.mm, 6, 0.8), test.with, 0.1*test.with)
		text := `{ chill = "30 h", as = "slab ` + number(test.mm) + ` mm", covered = false }`
		for _, q := range []float64{0, 0.8} {
			s := setup(t, text)
			s.Material, s.Gas = m, q/0.77
			var f history.Simulator
			b, ok := f.TimeTo(s, s.Part.Steps[0], 8)
			want := byHand(test.mm, 8, q+1e-9)
			if !ok || math.Abs(b.Mid-want) > 0.1*want {
				t.Errorf("%v mm at %v W/kg, h 8: %v h to 8 C, by hand %v", test.mm, q, b, want)
			}
			if !(b.Low < b.Mid && b.Mid < b.High) {
				t.Errorf("%v mm: %v is not in order", test.mm, b)
			}
			// Following it for that long ends at 8 C.
			s.Part = part(
				t,
				`{ chill = "`+number(
					b.Mid,
				)+` h", as = "slab `+number(
					test.mm,
				)+` mm", covered = false }`,
			)
			near(t, "core when it should be 8 C", follow(t, s).Stages[0].Core.Mid, 8, 0.25)
		}
	}
}

// Far from the fridge's reach a large bowl at 1.5 W/kg never comes down: the time is infinite, and
// following it stays finite.
func TestRunaway(t *testing.T) {
	s := setup(t, `{ chill = "20 h", as = "slab 150 mm" }`)
	s.Gas = 2
	begun := time.Now()
	var f history.Simulator
	b, ok := f.TimeTo(s, s.Part.Steps[0], 8)
	if !ok || !math.IsInf(b.High, 1) || math.IsNaN(b.Low) || math.IsNaN(b.Mid) {
		t.Errorf("time to 8 C: %v", b)
	}
	st := follow(t, s).Stages[0]
	if !st.Known || st.Core.High > 46 || st.Core.High < 26 || st.CoreMax.High < st.Core.High {
		t.Errorf("after 20 h: %v, at most %v; fermentation ends at 45 C", st.Core, st.CoreMax)
	}
	if time.Since(begun) > 2*time.Second {
		t.Error("it took over 2 s")
	}
}

// A thick dough warms before it cools: the highest core is not that of either end.
func TestWarmsBeforeItCools(t *testing.T) {
	s := setup(t, `{ chill = "40 h", as = "slab 120 mm" }`)
	s.Gas = 1
	st := follow(t, s).Stages[0]
	if !(st.CoreMax.Mid > 26.3 && st.Core.Mid < 20) {
		t.Errorf("highest core %v, end %v", st.CoreMax, st.Core)
	}
}

// Both ends of a range of times are met, whatever stretches the solver takes.
func TestOwnHeatMeetsBothEnds(t *testing.T) {
	at := func(time string) history.Stage {
		s := setup(t, `{ chill = "`+time+`", as = "slab 80 mm", covered = false }`)
		s.Gas = 1.2
		return follow(t, s).Stages[0]
	}
	for _, pair := range [][2]string{{"13 h", "14 h"}, {"4 h", "20 h"}, {"1 h", "10 h"}, {"9.9 h", "10 h"}} {
		both, short, long := at(pair[0]+" to "+pair[1]), at(pair[0]), at(pair[1])
		near(t, "coldest core of "+pair[0]+" to "+pair[1], both.Core.Low, long.Core.Low, 0.05)
		near(t, "warmest core", both.Core.High, short.Core.High, 0.05)
		near(t, "fewest hours", both.Hours.Low, short.Hours.Low, 0.02*short.Hours.Low)
		near(t, "most hours", both.Hours.High, long.Hours.High, 0.02*long.Hours.High)
	}
}

// A tub ferments more than a slab: the cold comes later to its middle.
func TestTubFermentsMore(t *testing.T) {
	at := func(as string) history.Stage {
		s := setup(t, `{ chill = "14 h", as = "`+as+`" }`)
		s.Gas, s.MassG = 1, figure.Point(5000)
		return follow(t, s).Stages[0]
	}
	tub, thick, thin := at("bowl"), at("slab 40 mm"), at("slab 20 mm")
	if !(tub.Hours.Mid > 1.5*thick.Hours.Mid && thick.Hours.Mid > 1.2*thin.Hours.Mid) {
		t.Errorf(
			"hours at 26 C: tub %v, slab of 40 mm %v, of 20 mm %v",
			tub.Hours,
			thick.Hours,
			thin.Hours,
		)
	}
	if !(tub.Hours.Low > thick.Hours.Low && tub.Hours.High > thick.Hours.High) {
		t.Errorf("hours at 26 C: tub %v, slab %v", tub.Hours, thick.Hours)
	}
}

// Where Bi is small a body is even, and the hours are those of an exponential approach.
func TestHoursOfAThinSlab(t *testing.T) {
	for _, test := range []struct {
		step     string
		ambient  float64
		h, hours float64
	}{
		{`{ chill = "14 h", as = "slab 4 mm", covered = false }`, 4, 8, 14},
		{`{ chill = "10 min", as = "slab 4 mm", covered = false }`, 4, 8, 1.0 / 6},
		{`{ proof = "2 h", at = "34 C", as = "slab 4 mm", covered = false }`, 34, 9, 2},
		{`{ rest = "3 h", at = "room", as = "slab 6 mm", covered = false }`, 22, 9, 3},
	} {
		s := setup(t, test.step)
		s.Gas = 0.01 // hours without heat of its own
		st := follow(t, s).Stages[0]
		half := st.Body.Half[0]
		if bi := test.h * half / s.Material.Conductivity; bi > heat.LumpedBiot {
			t.Fatalf("Bi %v", bi)
		}
		tau := s.Material.Density * s.Material.SpecificHeat * half / test.h / 3600
		want := hoursApproaching(26, test.ambient, tau, test.hours)
		near(t, test.step, st.Hours.Mid, want, 0.02*want)
		if !(st.Hours.Low < want && want < st.Hours.High) {
			t.Errorf("%s: %v does not hold %v", test.step, st.Hours, want)
		}
	}
}

// Butter sets on the way down: it is taken as so much more heat to give off, where a stage crosses
// 4 to 26 C.
func TestButterSlows(t *testing.T) {
	for _, test := range []struct {
		step    string
		ambient float64
		share   float64
	}{{`{ chill = "3 h", as = "slab 40 mm", covered = false }`, 4, 0.75}, {`{ rest = "3 h", at = "31 C", as = "slab 40 mm", covered = false }`, 31, 0}} {
		s := setup(t, test.step)
		s.Start, s.Material.Butterfat = even(27), 0.2
		m := s.Material
		m.Diffusivity /= 1 + test.share*0.2
		h := &hand{t: t, m: m, mean: 27}
		h.stand(heat.SlabOf(0.040))
		c := 8.0
		if test.ambient > 20 {
			c = 9
		}
		near(
			t,
			test.step,
			follow(t, s).Stages[0].Core.Mid,
			h.stay(test.ambient, c, 3*3600).CoreC,
			1e-9,
		)
	}
}
