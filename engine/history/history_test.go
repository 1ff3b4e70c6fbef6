package history_test

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
)

// draught is the coefficient of still air around what is colder,
// by hand.
func draught(startC, airC float64) float64 {
	return math.Max(9, heat.StillAir(airC-(airC-startC)/3, airC))
}

// A rest in a bowl, a night as a slab, the sheet and the proof of
// pieces: the middle run is one heat.Walk driven by hand.
func TestMiddleRunIsAWalk(t *testing.T) {
	s := setup(
		t,
		`{ mix = "12 min" }, { rest = "1 h", at = "room" }, { chill = "14 h", as = "slab 40 mm" },
		{ temper = "20 min", at = "15 C" }, { sheet = "5 mm" }, { rest = "10 min", at = "room" },
		{ proof = "2 h", at = "27 C", as = "pieces 75 g" }, { chill = "9 min", by = "ice bath" }`,
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
	// The slab stays as it is: no new shape turns it over.
	warmed := h.stay(15, draught(h.mean, 15), 20*60)
	check(3, night.CoreC, warmed)
	near(t, "sheet core", life.Stages[4].Core.Mid, h.mean, 1e-9)
	h.stand(heat.SlabOf(0.005))
	start = h.mean
	check(5, start, h.stay(22, draught(start, 22), 600))
	h.stand(heat.BallOf(0.075, 1080))
	start = h.mean
	proofed := h.stay(27, draught(start, 27), 2*3600)
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

// The outer runs of a plain slab, by hand: no lid and faster by the
// model's error, and a lid with the time to match.
func TestOuterRunsByHand(t *testing.T) {
	for _, test := range []struct {
		name, step     string
		ambient, h     [3]float64
		hours          [3]float64
		warming, plain bool
	}{
		{"open", `{ chill = "6 h", as = "slab 40 mm", covered = false }`, [3]float64{4, 4, 4},
			[3]float64{8, 8, 8}, [3]float64{6, 6, 6}, false, true},
		{"may be covered", `{ chill = "6 h", as = "slab 40 mm" }`, [3]float64{4, 4, 4},
			[3]float64{8, 8, lidded(8)}, [3]float64{6, 6, 6}, false, false},
		{"covered, maybe by film only", `{ chill = "6 h", as = "slab 40 mm", covered = true }`,
			[3]float64{4, 4, 4}, [3]float64{8, 8, lidded(8)}, [3]float64{6, 6, 6}, false, false},
		{"ranges", `{ chill = "5 h to 7 h", at = "3 C to 7 C", as = "slab 40 mm", ` +
			`covered = false }`, [3]float64{3, 5, 7}, [3]float64{8, 8, 8}, [3]float64{7, 6, 5},
			false, false},
		{"warming", `{ proof = "1 h to 2 h", at = "30 C to 34 C", as = "slab 40 mm" }`,
			[3]float64{30, 32, 34}, [3]float64{lidded(9), 9, 9}, [3]float64{1, 1.5, 2},
			true, false},
		{"the coldest cools and the warmest warms",
			`{ rest = "2 h", at = "20 C to 34 C", as = "slab 40 mm", covered = false }`,
			[3]float64{20, 27, 34}, [3]float64{9, 9, 9}, [3]float64{2, 2, 2}, false, false},
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

// lidded is a coefficient with a lid over the top face only, half of
// the surface.
func lidded(h float64) float64 { return (h + heat.InSeries(h, 0.18)) / 2 }

// Of an unsaid shape the quick run is a thin slab, the others a bowl:
// coldest in the cold and warmest in the warm.
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

// ferments makes a dough work: yeast in percent times its osmotic
// factor, and the heat of that.
func ferments(s *history.Setup, gas float64) {
	s.Gas, s.OwnHeat = gas, figure.WithinFactor(0.94*math.Pow(gas, 0.7), heat.OwnHeatFactor)
}

// volumes is a working dough as the solver with a source follows it.
func volumes(t tester, m history.Material, b heat.Body, q, start, ambient, h float64) heat.Volumes {
	t.Helper()
	var v heat.Volumes
	if !v.Start(b.EquivalentDimension(m.Conductivity, h), b.Nearest(), heat.Properties{
		SpecificHeat: m.SpecificHeat, DensityKgM3: m.Density, ConductivityWmK: m.Conductivity,
	}, start) || !v.Stage(ambient, h) {
		t.Fatalf("refused")
	}
	v.SetOwnHeat(q, heat.NewCurve(-30, 45, 301, ferment.TemperatureFactor))
	return v
}

// A dough's own heat, in a chill, a rest and a proof: the middle run is
// the solver's within half a kelvin, in closed form or by the solver.
func TestOwnHeatByHand(t *testing.T) {
	for _, test := range []struct {
		step       string
		b          heat.Body
		ambient, h float64
		hours      float64
	}{
		{`{ chill = "6 h", as = "slab 30 mm", covered = false }`, heat.SlabOf(0.03), 4, 8, 6},
		{`{ chill = "1 h", as = "slab 40 mm", covered = false }`, heat.SlabOf(0.04), 4, 8, 1},
		{`{ rest = "3 h", at = "room", as = "slab 25 mm", covered = false }`, heat.SlabOf(0.025),
			22, 9, 3},
		{`{ rest = "1 h", at = "room", as = "pieces 1 kg", covered = false }`, heat.BallOf(1, 1080),
			22, 9, 1},
		{`{ proof = "2 h", at = "34 C", as = "pieces 80 g", covered = false }`,
			heat.BallOf(0.08, 1080), 34, 9, 2},
		{`{ rest = "3 h", at = "room", as = "slab 120 mm", covered = false }`, heat.SlabOf(0.12),
			22, 9, 3},
	} {
		s := setup(t, test.step)
		ferments(&s, 1)
		st := follow(t, s).Stages[0]
		v := volumes(t, s.Material, test.b, s.OwnHeat.Mid, 26, test.ambient, test.h)
		hours, last := 0.0, ferment.TemperatureFactor(26)
		const steps = 200
		var want heat.State
		for range steps {
			want = v.Advance(test.hours * 3600 / steps)
			now := ferment.TemperatureFactor(want.MeanC)
			hours, last = hours+(last+now)/2*test.hours/steps, now
		}
		near(t, test.step+" equivalent hours", st.Hours.Mid, hours, 0.03*hours)
		near(t, test.step+" core", st.Core.Mid, want.CoreC, 0.5)
		near(t, test.step+" mean", st.Mean.Mid, want.MeanC, 0.4)
		plain := follow(t, setup(t, test.step)).Stages[0]
		if !(st.Core.Mid > plain.Core.Mid+0.05 && st.Core.High > plain.Core.High) {
			t.Errorf("a working dough ends at %v, one without yeast at %v", st.Core, plain.Core)
		}
		if plain.Hours != (figure.Estimate{}) {
			t.Errorf("no yeast gained %v", plain.Hours)
		}
	}
}

// The excess of one stage goes into the next and decays there.
func TestOwnHeatIsCarriedOn(t *testing.T) {
	s := setup(t, `{ rest = "2 h", at = "room", as = "slab 25 mm", covered = false },
		{ rest = "1 s", at = "room", covered = false },
		{ rest = "3 h", at = "10 C", covered = false }`)
	ferments(&s, 1)
	st := follow(t, s).Stages
	near(t, "a second later", st[1].Core.Mid, st[0].Core.Mid, 0.01)
	v := volumes(t, s.Material, heat.SlabOf(0.025), s.OwnHeat.Mid, 26, 22, 9)
	v.Advance(7201)
	v.Stage(10, 9)
	near(t, "in the end", st[2].Core.Mid, v.Advance(3*3600).CoreC, 0.5)
}

// A hundred kilos at rest warm by 2 to 3 K in three hours and a
// kilogram cools to nearly the room, as doughs in bakeries do (physics
// of one lump: 28.0 C and 23.6 C for half a kilogram).
func TestOwnHeatByMass(t *testing.T) {
	for _, test := range []struct{ kg, low, high float64 }{{100, 28, 29.5}, {10, 26, 27.8},
		{1, 23, 25}} {
		s := setup(t, `{ rest = "3 h", at = "room", covered = false }`)
		ferments(&s, 1)
		s.MassG = figure.Point(1000 * test.kg)
		st := follow(t, s).Stages[0]
		t.Logf("%g kg after 3 h: mean %.1f C [%.1f to %.1f], core %.1f C", test.kg, st.Mean.Mid,
			st.Mean.Low, st.Mean.High, st.Core.Mid)
		if !(st.Mean.Mid > test.low && st.Mean.Mid < test.high) {
			t.Errorf("%g kg after 3 h: %v C, want %g to %g", test.kg, st.Mean, test.low, test.high)
		}
	}
}

// Yeast beyond the doses that own heat is known for: the temperatures
// are not known either.
func TestOwnHeatIsSilent(t *testing.T) {
	s := setup(t, `{ rest = "3 h", at = "room" }`)
	s.Gas, s.HeatSilent = 8, "the yeast is too much"
	st := follow(t, s).Stages[0]
	if st.Known || !strings.Contains(st.Missing, s.HeatSilent) {
		t.Errorf("known %v, missing %q", st.Known, st.Missing)
	}
	var f history.Simulator
	if b, ok := f.TimeTo(s, s.Part.Steps[0], 24); ok {
		t.Errorf("time to 24 C: %v", b)
	}
}

// The time to 8 C with own heat, on the way and in the search: a 4 C
// fridge, dough at 26 C with 0.8 W/kg at 28 C. Another grid at h 6
// has 6.2 h in place of 5.5 for a slab of 40 mm, 10.6 in place of 8.8
// for 60 mm, 24 in place of 16.5 for 100 mm (computed); the kitchen's
// h is 8.
func TestTimeWithOwnHeat(t *testing.T) {
	m := plainDough()
	m.Conductivity, m.Density, m.SpecificHeat = 0.35, 1100, 2650
	m.Diffusivity = m.Conductivity / m.Density / m.SpecificHeat
	q26 := 0.8 / ferment.TemperatureFactor(28)
	byHand := func(mm, h, q float64) float64 {
		v := volumes(t, m, heat.SlabOf(mm/1000), q, 26, 4, h)
		return v.TimeTo(heat.Core, 8, 90*3600) / 3600
	}
	for _, test := range []struct{ mm, without, with float64 }{{40, 5.5, 6.2}, {60, 8.8, 10.6},
		{100, 16.5, 24}} {
		near(t, "without its own heat, h 6", byHand(test.mm, 6, 0), test.without, 0.1*test.without)
		near(t, "with it, h 6", byHand(test.mm, 6, q26), test.with, 0.12*test.with)
		text := `{ chill = "30 h", as = "slab ` + number(test.mm) + ` mm", covered = false }`
		for _, q := range []float64{0, q26} {
			s := setup(t, text)
			s.Material, s.Gas = m, b2f(q > 0)
			s.OwnHeat = figure.WithinFactor(q, heat.OwnHeatFactor)
			var f history.Simulator
			b, ok := f.TimeTo(s, s.Part.Steps[0], 8)
			want := byHand(test.mm, 8, q)
			if !ok || math.Abs(b.Mid-want) > 0.05*want {
				t.Errorf("%v mm at %v W/kg, h 8: %v h to 8 C, by hand %v", test.mm, q, b, want)
			}
			if !(b.Low < b.Mid && b.Mid < b.High) {
				t.Errorf("%v mm: %v is not in order", test.mm, b)
			}
			// Following it for that long ends at 8 C.
			s.Part = part(t, `{ chill = "`+number(b.Mid)+` h", as = "slab `+number(test.mm)+
				` mm", covered = false }`)
			near(t, "core when it should be 8 C", follow(t, s).Stages[0].Core.Mid, 8, 0.25)
		}
	}
}

func b2f(b bool) float64 { return float64(b2i(b)) }

// Far from the fridge's reach a large bowl at 1.5 W/kg never comes
// down: the time is infinite, and following it stays finite.
func TestRunaway(t *testing.T) {
	s := setup(t, `{ chill = "20 h", as = "slab 150 mm" }`)
	ferments(&s, 2)
	var f history.Simulator
	b, ok := f.TimeTo(s, s.Part.Steps[0], 8)
	if !ok || !math.IsInf(b.High, 1) || math.IsNaN(b.Low) || math.IsNaN(b.Mid) {
		t.Errorf("time to 8 C: %v", b)
	}
	st := follow(t, s).Stages[0]
	if !st.Known || st.Core.High > 46 || st.Core.High < 26 || st.CoreMax.High < st.Core.High {
		t.Errorf("after 20 h: %v, at most %v; fermentation ends at 45 C", st.Core, st.CoreMax)
	}
}

// A thick dough warms before it cools: the highest core is not that of
// either end.
func TestWarmsBeforeItCools(t *testing.T) {
	s := setup(t, `{ chill = "40 h", as = "slab 120 mm" }`)
	ferments(&s, 1)
	st := follow(t, s).Stages[0]
	if !(st.CoreMax.Mid > 26.3 && st.Core.Mid < 20) {
		t.Errorf("highest core %v, end %v", st.CoreMax, st.Core)
	}
}

// Both ends of a range of times are met, whatever stretches the
// solver takes.
func TestOwnHeatMeetsBothEnds(t *testing.T) {
	at := func(time string) history.Stage {
		s := setup(t, `{ chill = "`+time+`", as = "slab 80 mm", covered = false }`)
		ferments(&s, 1.2)
		return follow(t, s).Stages[0]
	}
	for _, pair := range [][2]string{{"13 h", "14 h"}, {"4 h", "20 h"}, {"1 h", "10 h"},
		{"9.9 h", "10 h"}} {
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
		ferments(&s, 1)
		s.MassG = figure.Point(5000)
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

// Where Bi is small a body is even, and the hours are those of an
// exponential approach.
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
		// Up to 0.1 the centre is under 5 % of the step off (Incropera
		// ch. 5, memory).
		if bi := test.h * half / s.Material.Conductivity; bi > 0.1 {
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

// Butter sets on the way down: it is taken as so much more heat to give
// off, where a stage crosses 4 to 26 C.
func TestButterSlows(t *testing.T) {
	for _, test := range []struct {
		step    string
		ambient float64
		share   float64
	}{{`{ chill = "3 h", as = "slab 40 mm", covered = false }`, 4, 0.75},
		{`{ rest = "3 h", at = "31 C", as = "slab 40 mm", covered = false }`, 31, 0}} {
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
