package history_test

import (
	"math"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/science/bake"
	"forebake/engine/science/geometry"
	"forebake/engine/science/heat"
)

// filled is a setup whose filling weighs half a kilo and takes 3200
// J/(kg K), against 2 kg at 2600.
func filled(t tester, steps string, tC float64) history.Setup {
	t.Helper()
	s := setup(t, steps)
	fill := history.Filling{
		Temp:  even(tC),
		MassG: figure.Point(500),
		Material: history.Material{
			Known:        true,
			Conductivity: 0.4,
			Density:      1250,
			SpecificHeat: 3200,
			Diffusivity:  1e-7,
		},
	}
	s.Filling = func(*formula.Part) *history.Filling { return &fill }
	return s
}

func TestFillingSharesItsHeat(t *testing.T) {
	mixed := (2*2600*26 + 0.5*3200*45) / (2*2600 + 0.5*3200)
	st := follow(
		t,
		filled(
			t,
			`{ sheet = "5 mm" }, { fill = "f" }, { shape = "loaf" }, `+
				`{ rest = "10 min", at = "room" }`,
			45,
		),
	).Stages
	nearBand(t, "after the fill", st[1].Core, even(mixed), 1e-9)
	near(t, "next step", st[3].StartCore.Mid, mixed, 1e-9)

	// One filling in two steps: each spreads half of it, and both warm.
	twice := follow(
		t,
		filled(
			t,
			`{ fill = "f" }, { fill = "f" }, { bake = "30 min", at = "180 C", core = "92 C" }`,
			45,
		),
	).Stages
	second := mixed // halves of one filling end where the whole of it does
	near(
		t,
		"after the second fill",
		twice[1].Core.Mid,
		second,
		0.5,
	) // the filled dough is taken to have the dough's specific heat
	one := follow(t, filled(t, `{ fill = "f" }, { bake = "30 min", at = "180 C", core = "92 C" }`,
		45)).Stages[1]
	if r := twice[2].MinutesToCore.Mid / one.MinutesToCore.Mid; r < 0.99 || r > 1.01 {
		t.Errorf(
			"minutes to 92 C: in one step %v, in two %v",
			one.MinutesToCore,
			twice[2].MinutesToCore,
		)
	}
	plain := follow(t, setup(t, `{ bake = "30 min", at = "180 C", core = "92 C" }`)).Stages[0]
	if !(one.MinutesToCore.Mid > 1.2*plain.MinutesToCore.Mid) {
		t.Errorf("minutes to 92 C: plain %v, filled %v", plain.MinutesToCore, one.MinutesToCore)
	}
}

// Nothing is known after something that is not written, and the reason
// stays with it.
func TestNotWritten(t *testing.T) {
	for _, test := range []struct {
		name, steps, missing string
		known                int // stages that are
		change               func(*history.Setup)
	}{
		{"no start", `{ rest = "1 h", at = "room" }, { bake = "30 min", at = "190 C" }`,
			"the temperatures of all", 0, func(s *history.Setup) {
				s.Started, s.Missing = false, "the temperatures of all"
			}},
		{"no start and no reason", `{ rest = "1 h", at = "room" }`,
			"the temperature that the part begins with", 0, func(s *history.Setup) {
				s.Started = false
			}},
		{"no material", `{ rest = "1 h", at = "room" }`, "all amounts", 0, func(s *history.Setup) {
			s.Material, s.Missing = history.Material{}, "all amounts"
		}},
		{"a hold without a place", `{ mix = "9 min" }, { hold = "1 h" }, ` +
			`{ proof = "1 h", at = "30 C" }`, `at = "room" or a temperature in this hold`, 1, nil},
		{"a chill without a time", `{ mix = "9 min" }, { chill = "?", as = "slab 40 mm" }, ` +
			`{ sheet = "5 mm" }, { proof = "1 h", at = "30 C" }`, "the time of this chill", 1, nil},
		{"a cook to nothing", `{ cook = "9 min", at = "180 C" }, { bake = "1 h", at = "180 C" }`,
			`core = "... C" in this cook`, 0, nil},
		{"a filling that nobody knows", `{ mix = "9 min" }, { fill = "f" }, ` +
			`{ proof = "1 h", at = "30 C" }`, `the amounts and the temperature of "f"`, 1, nil},
		{"a filling that is open", `{ mix = "9 min" }, { fill = "?" }, ` +
			`{ proof = "1 h", at = "30 C" }`, "the filling", 1, nil},
		{"a bake without a time", `{ bake = "?", at = "190 C", core = "92 C" }, ` +
			`{ cool = "1 h", at = "room" }`, "the time of this bake", 0, nil},
		{"a cool oven", `{ bake = "30 min", at = "95 C", core = "92 C" }, ` +
			`{ cool = "1 h", at = "room" }`, "an oven that is hot enough to bake in", 0, nil},
	} {
		s := setup(t, test.steps)
		if test.change != nil {
			test.change(&s)
		}
		for i, st := range follow(t, s).Stages {
			if i < test.known {
				if !st.Known {
					t.Errorf("%s: stage %d misses %q", test.name, i, st.Missing)
				}
				continue
			}
			unknown(t, st, test.missing)
			var f history.Simulator
			if b, ok := f.TimeTo(s, st.Step, 10); ok && i > test.known {
				t.Errorf("%s: a time to 10 C, %v, in stage %d", test.name, b, i)
			}
		}
	}
	// A shape or a divide that takes time, and says nothing of where,
	// changes nothing.
	st := follow(
		t,
		setup(
			t,
			`{ mix = "9 min" }, { divide = "100 g", time = "10 min" }, `+
				`{ shape = "knots", time = "20 min" }, { proof = "1 h", at = "30 C" }`,
		),
	).Stages
	for i := range st {
		if !st[i].Known || st[i].Missing != "" {
			t.Errorf("stage %d: known %v, misses %q", i, st[i].Known, st[i].Missing)
		}
	}
	near(t, "the proof's beginning", st[3].StartCore.Mid, 26, 1e-9)
	near(t, "hours before it", st[3].StartH.Mid(), 0.15+0.5, 1e-12)
	// The time to the core needs no time of its own.
	if st := follow(t,
		setup(t, `{ bake = "?", at = "190 C", core = "92 C" }`)).Stages[0]; !st.HasCoreMinutes ||
		!(st.MinutesToCore.Mid > 5) {
		t.Errorf("minutes to core %v", st.MinutesToCore)
	}
}

// The part begins with its mix: what is soaked or melted for it before
// stands apart.
func TestBeforeTheMix(t *testing.T) {
	st := follow(
		t,
		setup(
			t,
			`{ soak = "10 min", at = "40 C", with = "bread flour" }, `+
				`{ melt = "5 min", to = "45 C", with = "bread flour" }, `+
				`{ mix = "9 min", to = "24 C" }, { rest = "1 h", at = "26 C" }`,
		),
	).Stages
	for i := range st {
		if !st[i].Known {
			t.Errorf("stage %d misses %q", i, st[i].Missing)
		}
	}
	near(t, "the rest's beginning", st[3].StartCore.Mid, 26, 1e-9)
	// A soak that says nothing of its time or place takes nothing away.
	st = follow(
		t,
		setup(t, `{ soak = "?" }, { mix = "9 min" }, { rest = "1 h", at = "26 C" }`),
	).Stages
	if !st[2].Known {
		t.Errorf("the rest misses %q", st[2].Missing)
	}
	// What is cooked whole is hot until it is mixed to something else.
	st = follow(
		t,
		setup(
			t,
			`{ cook = "5 min", to = "85 C" }, { mix = "1 min" }, { cool = "1 min", at = "room" }`,
		),
	).Stages
	near(t, "after a mix without an aim", st[1].Core.Mid, 85, 1e-9)
	st = follow(
		t,
		setup(
			t,
			`{ cook = "5 min", to = "85 C" }, { mix = "1 min", to = "30 C" }, `+
				`{ cool = "1 min", at = "room" }`,
		),
	).Stages
	near(t, "after a mix to 30 C", st[1].Core.Mid, 30, 1e-9)
}

// Yeast that was fried makes no gas and no heat.
func TestFriedDoughIsDead(t *testing.T) {
	s := setup(
		t,
		`{ rest = "1 h", at = "26 C" }, { cook = "2 min", core = "92 C" }, `+
			`{ cool = "6 h", at = "28 C" }`,
	)
	ferments(&s, 2)
	st := follow(t, s).Stages
	if !(st[0].Hours.Mid > 0) || st[2].Hours != (figure.Estimate{}) || st[2].Core.High > 80 {
		t.Errorf("rest %v, cool %v and %v", st[0].Hours, st[2].Hours, st[2].Core)
	}
}

// The tin may be named at the pan, at the proof or at the bake.
func TestTinWhereverItIsNamed(t *testing.T) {
	want := follow(t, setup(t, `{ pan = "x", tin = "long tin", count = 4 },
		{ proof = "1 h", at = "30 C" },
		{ bake = "30 min", at = "190 C", core = "92 C" }`)).Stages[2]
	h, ok := geometry.TinLoafHalfMM(500, geometry.ProofedDensity, 300, 100)
	if !ok {
		t.Fatal("no loaf")
	}
	near(t, "half height of the loaf", want.Body.Half[2], h.HeightMM/1000, 1e-9)
	for _, steps := range []string{
		`{ proof = "1 h", at = "30 C", tin = "long tin", count = 4 }, ` +
			`{ bake = "30 min", at = "190 C", core = "92 C" }`,
		`{ proof = "1 h", at = "30 C" }, { bake = "30 min", at = "190 C", core = "92 C", ` +
			`tin = "Long Tin", count = 4 }`,
		`{ pan = "x", tin = "long tin", count = 4 }, { proof = "1 h", at = "30 C" }, ` +
			`{ bake = "30 min", at = "190 C", core = "92 C", tin = "long tin", count = 4 }`,
		`{ divide = "500 g" }, { pan = "x", tin = "long tin" }, { proof = "1 h", at = "30 C" }, ` +
			`{ bake = "30 min", at = "190 C", core = "92 C" }`,
		`{ divide = 4 }, { pan = "x", tin = "long tin" }, { proof = "1 h", at = "30 C" }, ` +
			`{ bake = "30 min", at = "190 C", core = "92 C" }`,
	} {
		st := follow(t, setup(t, steps)).Stages
		last := st[len(st)-1]
		if last.Body != want.Body || math.Abs(last.MinutesToCore.Mid-want.MinutesToCore.Mid) > 1 {
			t.Errorf(
				"%s: %v and %v, not %v and %v",
				steps,
				last.Body,
				last.MinutesToCore,
				want.Body,
				want.MinutesToCore,
			)
		}
	}
	// How many a formula makes stands in for a divide that
	// nobody wrote.
	s := setup(t, `{ bake = "30 min", at = "190 C", core = "92 C" }`)
	whole := follow(t, s).Stages[0].MinutesToCore.Mid
	s.Part.Formula.Makes.Pieces = 20
	pieces := follow(t, s).Stages[0]
	s.Part.Formula.Makes.Pieces = 0
	s.Part = part(t, `{ divide = 20 }, { bake = "30 min", at = "190 C", core = "92 C" }`)
	divided := follow(t, s).Stages[1]
	if pieces.Body != divided.Body || !(pieces.MinutesToCore.Mid < 0.5*whole) {
		t.Errorf(
			"20 pieces %v and %v, divided %v and %v",
			pieces.Body,
			pieces.MinutesToCore,
			divided.Body,
			divided.MinutesToCore,
		)
	}
}

// No crumb passes boiling, whatever the oven and the altitude, and the
// core is the bake's own figure.
func TestBakeIsCapped(t *testing.T) {
	for _, altitude := range []float64{0, 500, 1500, 2000} {
		boils := bake.BoilingPointC(altitude)
		for _, minutes := range []string{"5 min", "20 min", "3 h", "1 h to 90 min", "400 h"} {
			s := setup(
				t,
				`{ divide = "60 g" }, { bake = "`+minutes+`", at = "260 C", core = "95 C" }`,
			)
			s.Kitchen.Altitude.Interval = figure.Point(altitude)
			st := follow(t, s).Stages[1]
			if !st.Known || st.Core.High > boils+1e-9 ||
				st.CoreMax.High > boils+1e-9 {
				t.Errorf(
					"%s at %v m: core %v, water boils at %v",
					minutes,
					altitude,
					st.Core,
					boils,
				)
			}
			if st.HasCoreMinutes != (95 <= boils-bake.CoreMargin) {
				t.Errorf("95 C at %v m: %v", altitude, st.MinutesToCore)
			}
		}
	}
	st := follow(t, setup(t, `{ divide = "60 g" }, { bake = "15 min", at = "190 C", `+
		`core = "92 C" }`)).Stages[1]
	h, _ := geometry.BunHalfMM(2000.0/33, geometry.ProofedDensity, geometry.BunHeight)
	bun := bake.Piece{
		Body:        heat.EllipsoidOf(2*h.LengthMM/1000, 2*h.WidthMM/1000, 2*h.HeightMM/1000),
		DensityKgM3: 1000 * geometry.ProofedDensity, StartC: 26,
	}
	bake, why := bake.Oven{TempC: 190}.Bake(bun)
	if why != "" {
		t.Fatal(why)
	}
	minutes, _ := bake.MinutesTo(92)
	nearBand(t, "minutes to 92 C", st.MinutesToCore, minutes, 1e-9)
	nearBand(t, "core", st.Core, bake.CoreAfter(15), 1e-9)
}

// The oven counts: at 110 C the same piece is long in coming, and its
// kind and a tin count too.
func TestTheOvenCounts(t *testing.T) {
	minutes := func(steps string) figure.Estimate {
		t.Helper()
		stages := follow(t, setup(t, steps)).Stages
		st := stages[len(stages)-1]
		if !st.HasCoreMinutes {
			t.Fatalf("%s: %q", steps, st.OvenSilent)
		}
		return st.MinutesToCore
	}
	at := func(c string) figure.Estimate {
		return minutes(`{ divide = "500 g" }, { bake = "30 min", at = "` + c + `", core = "92 C" }`)
	}
	cool, usual, hot := at("110 C"), at("180 C"), at("250 C")
	if !(cool.Mid > 1.5*usual.Mid && usual.Mid > 1.1*hot.Mid) {
		t.Errorf("at 110, 180 and 250 C: %v, %v, %v", cool, usual, hot)
	}
	if any := at("170 C to 190 C"); !(any.Low < usual.Low && any.High > usual.High) {
		t.Errorf("a range of ovens %v, one %v", any, usual)
	}
	fan := minutes(
		`{ divide = "500 g" }, { bake = "30 min", at = "180 C", core = "92 C", by = "fan oven" }`,
	)
	static := minutes(
		`{ divide = "500 g" }, { bake = "30 min", at = "180 C", core = "92 C", ` +
			`by = "static oven" }`,
	)
	steam := minutes(
		`{ divide = "500 g" }, { bake = "30 min", at = "180 C", core = "92 C", by = "steam oven" }`,
	)
	if !(fan.Mid < 0.95*static.Mid) || !(steam.Low < fan.Low) {
		t.Errorf("fan %v, static %v, steam %v", fan, static, steam)
	}
	open := minutes(`{ divide = "500 g" }, { bake = "30 min", core = "92 C" }`)
	if !(open.Low <= hot.Low && open.High >= cool.High) {
		t.Errorf("an oven that is not written: %v", open)
	}
	st := follow(t, setup(t, `{ divide = "500 g" }, { bake = "30 min", at = "360 C", `+
		`core = "92 C" }`)).Stages[1]
	unknown(
		t,
		st,
		"a core that was read at the end of this bake: the oven is 360 C; bakes are reckoned "+
			"from 110 to 350 C",
	)
}

// Surroundings as warm as the part change nothing; thin, huge, frozen
// and boiling parts end in figures.
func TestOddCorners(t *testing.T) {
	nearBand(
		t,
		"surroundings alike",
		follow(t, setup(t, `{ rest = "2 h", at = "26 C" }`)).Stages[0].Core,
		even(26),
		1e-9,
	)
	for _, steps := range []string{
		`{ proof = "400 h", at = "30 C" }`, `{ proof = "400 h", at = "45 C", as = "slab 300 mm" }`,
		`{ chill = "60 day" }`, `{ rest = "1 s", at = "room" }`,
		`{ chill = "6 h", as = "slab 0.01 mm" }`, `{ chill = "6 h", as = "log 0.01 mm" }`,
		`{ chill = "6 h", as = "log 3 m" }`, `{ chill = "6 h", as = "pieces 1 mg" }`,
		`{ chill = "6 h", as = "slab 3 m" }`,
		`{ freeze = "9 h", at = "-80 C" }, { thaw = "9 h", at = "fridge" }, ` +
			`{ proof = "9 h", at = "40 C" }`,
		`{ sheet = "0.01 mm" }, { rest = "1 h", at = "room" }`,
		`{ divide = "0.1 g" }, { proof = "1 h", at = "30 C" }, { bake = "1 h", at = "250 C" }`,
		`{ divide = "1000 kg" }, { proof = "1 h", at = "30 C" }`,
		`{ rest = "1 h", at = "room" }, { rest = "1 h", at = "22.0000001 C" }, ` +
			`{ rest = "1 h", at = "21.9999999 C" }`,
	} {
		for _, gas := range []float64{0, 1e-9, 1, 50} {
			for _, start := range []float64{-273.15, -18, 0, 26, 99} {
				s := setup(t, steps)
				ferments(&s, gas)
				s.Start = even(start)
				for _, st := range follow(t, s).Stages {
					if !st.Known {
						if st.Missing == "" {
							t.Errorf(
								"%s from %v C: nothing is missing, and nothing is known",
								steps,
								start,
							)
						}
						continue
					}
					for _, b := range []figure.Estimate{st.StartCore, st.Core, st.Mean, st.Surface,
						st.CoreMax, st.Hours} {
						held(t, "a figure", b, steps)
					}
				}
				var f history.Simulator
				for _, step := range s.Part.Steps {
					if b, ok := f.TimeTo(s, step, 10); ok &&
						(math.IsNaN(b.Low) || math.IsNaN(b.Mid) || math.IsNaN(b.High) ||
							b.Low < 0) {
						t.Errorf("%s from %v C: time to 10 C is %v", steps, start, b)
					}
				}
			}
		}
	}
}

// A fried dough whose core nobody wrote is no hotter than water boils, and no colder than it went
// in: that bounds what is cooled after it. Its own end stays unknown.
func TestFriedToNothingIsNoHotterThanWater(t *testing.T) {
	st := follow(t, setup(t, `{ mix = "9 min" }, { cook = "4 min", at = "175 C", by = "frying" }, `+
		`{ cool = "2 h", at = "room", as = "pieces 60 g" }`)).Stages
	unknown(t, st[1], `core = "... C" in this cook`)
	if b := st[2].StartCore; !st[2].Known || b.Low != st[0].Core.Low || b.High != history.BoilingC {
		t.Errorf("it cools from %v, known %v; want from as it went in to %v", b, st[2].Known,
			float64(history.BoilingC))
	}
	if b := st[2].Core; !(b.High < 30) {
		t.Errorf("after 2 h in the room it is at %v", b)
	}
}

// A cooling ends at what it aims at; without an aim cold air goes on. A reading says more.
func TestCoolingStopsAtItsAim(t *testing.T) {
	cooled := func(options string) history.Stage {
		return follow(t, setup(t, `{ cook = "8 min", to = "85 C" }, `+
			`{ cool = "3 h", as = "tray 20 mm", `+options+` }, `+
			`{ chill = "1 h", at = "fridge" }`)).Stages[1]
	}
	for _, around := range []string{`by = "blast chiller"`, `by = "ice bath"`, `at = "-20 C"`} {
		on, stopped := cooled(around).Core, cooled(around+`, to = "21 C"`)
		if !(on.High < 21) {
			t.Fatalf("%s: without an aim it ends at %v", around, on)
		}
		nearBand(t, around, stopped.Core, even(21), 0.01)
		nearBand(t, around+", core", cooled(around+`, core = "21 C"`).Core, even(21), 0.01)
		if last := stopped.Trace[figure.High]; last != nil && last[len(last)-1].Hours != 3 {
			t.Errorf("%s: its course ends after %v h", around, last[len(last)-1].Hours)
		}
	}
	far := cooled(`at = "room", to = "4 C"`).Core
	nearBand(t, "an aim out of reach", far, cooled(`at = "room"`).Core, 0)
	read := cooled(`by = "ice bath", to = "21 C", measured = "9 C"`).Core
	if !(read.Mid < 12) {
		t.Errorf("a reading of 9 C, and it ends at %v", read)
	}
}

// A blast chiller blows cold air of its own where nothing else is written.
func TestBlastChillerBlowsCold(t *testing.T) {
	for options, want := range map[string]figure.Interval{
		`by = "blast chiller"`:                 {Lo: -20, Hi: 3},
		`by = "blast chiller", at = "-8 C"`:    figure.Point(-8),
		`by = "blast chiller", at = "freezer"`: figure.Point(-18),
		`by = "ice bath"`:                      {Lo: 0, Hi: 2},
		`by = "fan"`:                           {Lo: 18, Hi: 26},
	} {
		st := follow(t, setup(t, `{ cook = "8 min", to = "85 C" }, `+
			`{ cool = "1 h", as = "tray 20 mm", `+options+` }`)).Stages[1]
		if st.Ambient != want {
			t.Errorf("%s: air of %v, want %v", options, st.Ambient, want)
		}
	}
}
