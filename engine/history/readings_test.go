package history_test

import (
	"math"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
)

// A probe read 11 C after 6 h of 14: all three runs were there at 6 h,
// as a chill of 6 h with that reading shows.
func TestReadingPassesThrough(t *testing.T) {
	for _, test := range []struct {
		step string
		want [3]float64
	}{
		{`{ chill = "6 h", as = "slab 40 mm", measured = "11 C after 6 h" }`,
			[3]float64{11, 11, 11}},
		{`{ chill = "6 h", as = "slab 40 mm", measured = "11 C core after 6 h" }`,
			[3]float64{11, 11, 11}},
		// at its end
		{`{ chill = "6 h", as = "slab 40 mm", measured = "11 C" }`, [3]float64{11, 11, 11}},
		{`{ chill = "6 h", as = "slab 40 mm", measured = "51.8 F core" }`, [3]float64{11, 11, 11}},
		// in a shape that nobody says
		{`{ chill = "6 h", measured = "11 C" }`, [3]float64{11, 11, 11}},
		{`{ chill = "6 h", as = "slab 40 mm", measured = "10 C to 12 C" }`, [3]float64{10, 11, 12}},
		// at the end, whenever that was
		{`{ chill = "5 h to 7 h", as = "slab 40 mm", measured = "11 C" }`, [3]float64{11, 11, 11}},
		{`{ chill = "5 h to 7 h", as = "slab 40 mm", measured = "10 C to 12 C" }`,
			[3]float64{10, 11, 12}},
	} {
		for _, gas := range []float64{0, 1.5} {
			s := setup(t, test.step)
			ferments(&s, gas)
			st := follow(t, s).Stages[0]
			if !st.Known || !st.Measured {
				t.Errorf("%s: known %v, measured %v", test.step, st.Known, st.Measured)
			}
			nearBand(
				t,
				test.step,
				st.Core,
				figure.Estimate{Low: test.want[0], Mid: test.want[1], High: test.want[2]},
				1e-3,
			)
			nearBand(t, test.step+", start", st.StartCore, even(26), 1e-9)
			if gas > 0 &&
				!(st.Hours.Low > 0 && st.Hours.Low <= st.Hours.Mid &&
					st.Hours.Mid <= st.Hours.High && st.Hours.High <= 7) {
				t.Errorf("%s: hours %v", test.step, st.Hours)
			}
		}
	}
}

// What a reading says of a fridge holds for that fridge from there on,
// and for no other place.
func TestReadingIsKeptForThePlace(t *testing.T) {
	const before = `{ chill = "14 h", as = "slab 40 mm", measured = "11 C after 6 h" }, ` +
		`{ rest = "30 min", at = "room", as = "slab 40 mm" }, `
	const modelled = `{ chill = "14 h", as = "slab 40 mm" }, ` +
		`{ rest = "30 min", at = "room", as = "slab 40 mm" }, `
	with := follow(t, setup(t, before+`{ chill = "2 h", as = "slab 30 mm" }`)).Stages
	without := follow(t, setup(t, modelled+`{ chill = "2 h", as = "slab 30 mm" }`)).Stages
	width := func(b figure.Estimate) float64 { return b.High - b.Low }
	if !(width(with[0].Core) < 0.2*width(without[0].Core)) {
		t.Errorf("the chill that was read is %v, the other %v", with[0].Core, without[0].Core)
	}
	if !(width(with[2].Core) < width(without[2].Core)) {
		t.Errorf("after a reading %v, without %v", with[2].Core, without[2].Core)
	}

	// By hand: the reading asks for a factor, of which the later chill
	// takes over a part, and the rest nothing.
	h := &hand{t: t, m: plainDough(), mean: 26}
	h.stand(heat.SlabOf(0.040))
	h.w.Stage(4, 8)
	factor, ok := h.w.ScaleFor(heat.Core, 11, 6*3600)
	if !ok || math.Abs(factor-1) < 0.05 {
		t.Fatalf("factor %v", factor)
	}
	near(t, "end of the chill", with[0].Core.Mid, h.stay(4, 8*factor, 14*3600).CoreC, 1e-4)
	h.stand(heat.SlabOf(0.040))
	near(t, "end of the rest", with[1].Core.Mid, h.stay(22, draught(h.mean, 22), 1800).CoreC, 1e-4)
	mean := h.mean
	second := func(share float64) float64 {
		h.mean = mean
		h.stand(heat.SlabOf(0.030))
		return h.stay(4, 8*math.Pow(factor, share), 2*3600).CoreC
	}
	c, none, all := with[2].Core.Mid, second(0.3), second(1)
	if !(c > min(none, all) && c < max(none, all)) {
		t.Errorf(
			"second chill ends at %v: a third of the factor gives %v, all of it %v",
			c,
			none,
			all,
		)
	}
}

// A reading near the surroundings tells nothing of the coefficient, one
// on the steep part much. It narrows what follows, and the three runs
// go together.
func TestReadingTellsAsFarAsItCan(t *testing.T) {
	later := func(reading string) figure.Estimate {
		steps := `{ chill = "12 h", as = "slab 40 mm"` + reading + ` },
			{ mix = "2 min", to = "26 C" }, { chill = "2 h", as = "slab 40 mm" }`
		return follow(t, setup(t, steps)).Stages[2].Core
	}
	plain := later("")
	for _, reading := range []string{"4.2 C", "5 C", "6 C"} {
		b := later(`, measured = "` + reading + `"`)
		if math.Abs(b.Mid-plain.Mid) > 0.5 {
			t.Errorf(
				"%s after 12 h: the next chill ends at %v, without it at %v",
				reading,
				b,
				plain,
			)
		}
	}
	// A probe that is good to 0.1 K tells more.
	sharp := later(`, measured = "4.9 C to 5.1 C"`)
	if !(sharp.Mid > later(`, measured = "5 C"`).Mid+0.1) {
		t.Errorf("within 0.1 K: %v", sharp)
	}
	steep := later(`, measured = "12 C after 2 h"`)
	if !(steep.Mid < plain.Mid-1) || !(steep.High < plain.High) || !(steep.Low < plain.Low) {
		t.Errorf("12 C after 2 h: %v, without it %v", steep, plain)
	}
	if !(steep.High-steep.Low < plain.High-plain.Low) {
		t.Errorf("after a reading %v, without %v", steep, plain)
	}
}

// No surface coefficient explains these: they are taken as they stand,
// and the part goes on from there.
func TestReadingWithoutExplanation(t *testing.T) {
	for _, test := range []struct {
		reading string
		c       float64
	}{{"2 C", 2}, {"30 C", 30}, {"25.99 C", 25.99}, {"26 C", 26}, {"0.5 C", 0.5}, {"4 C", 4}} {
		s := setup(
			t,
			`{ chill = "6 h", as = "slab 40 mm", measured = "`+test.reading+
				`" }, { rest = "1 h", at = "room", as = "slab 40 mm" }`,
		)
		ferments(&s, 1)
		life := follow(t, s)
		st := life.Stages[0]
		if !st.Known || !st.Measured {
			t.Errorf("%s: known %v, measured %v", test.reading, st.Known, st.Measured)
		}
		nearBand(t, test.reading, st.Core, even(test.c), 1e-3)
		nearBand(
			t,
			test.reading+", as the next begins",
			life.Stages[1].StartCore,
			even(test.c),
			0.05,
		)
		if !(st.Hours.Low >= 0 && st.Hours.Mid >= st.Hours.Low && st.Hours.High >= st.Hours.Mid &&
			st.Hours.High < 8) {
			t.Errorf("%s: hours %v", test.reading, st.Hours)
		}
	}
}

// A reading beyond the start and the surroundings is a slip of the pen:
// it clears nothing, and what follows is open.
func TestReadingThatCannotBe(t *testing.T) {
	for _, reading := range []string{"-3 C", "31 C", "-10 C to 2 C", "20 C to 40 C"} {
		life := follow(
			t,
			setup(
				t,
				`{ chill = "6 h", as = "slab 40 mm", measured = "`+reading+
					`" }, { rest = "1 h", at = "room", as = "slab 40 mm" }`,
			),
		)
		for _, st := range life.Stages {
			unknown(t, st, "a reading that can be in this chill, between 4 C and 26 C")
		}
	}
}

// The time to a temperature asks the reading too, also for
// another thickness.
func TestTimeToBelievesTheReading(t *testing.T) {
	for _, gas := range []float64{0, 1} {
		s := setup(t, `{ chill = "14 h", as = "slab 40 mm", measured = "11 C after 6 h" }`)
		ferments(&s, gas)
		var f history.Simulator
		b, ok := f.TimeTo(s, s.Part.Steps[0], 11)
		if !ok {
			t.Fatal("not known")
		}
		nearBand(t, "hours to 11 C", b, even(6), 0.01)
		thin, ok := f.TimeToAs(s, s.Part.Steps[0], 11, 0.020)
		if !ok || !(thin.Low < 3.5 && thin.Mid < 3.5 && thin.High < 4 && thin.Low > 1) {
			t.Errorf("half as thick: %v", thin)
		}
		if again, _ := f.TimeTo(s, s.Part.Steps[0], 11); again != b {
			t.Errorf("asked again: %v, then %v", b, again)
		}
	}
}

func TestReadingOfMixAndBake(t *testing.T) {
	s := setup(
		t,
		`{ mix = "12 min", measured = "24 C" }, { rest = "1 h", at = "24 C", `+
			`as = "slab 40 mm" }, { mix = "2 min", measured = "27 C" }, { shape = "loaf" }, `+
			`{ bake = "30 min", at = "190 C", measured = "94 C core" }`,
	)
	s.Start = even(24)
	st := follow(t, s).Stages
	nearBand(t, "first mix", st[0].Core, even(24), 0)
	nearBand(t, "second mix", st[2].Core, even(27), 0)
	nearBand(t, "bake", st[4].Core, even(94), 0)
	nearBand(t, "bake, start", st[4].StartCore, even(27), 0)
	for _, i := range []int{0, 2, 4} {
		if !st[i].Measured {
			t.Errorf("stage %d is measured", i)
		}
	}
}

// A measured rise: hours times gas are 1.25 for each doubling, before
// and after alike.
func TestMeasuredRise(t *testing.T) {
	const gas = 0.8
	run := func(steps string) *history.Record {
		t.Helper()
		s := setup(t, steps)
		s.Gas = gas // an even temperature: hours without heat of its own
		return follow(t, s)
	}
	const rests = `{ mix = "9 min" }, { rest = "30 min", at = "26 C", as = "slab 40 mm" }, ` +
		`{ fold = 1 }, `
	plain := run(
		rests + `{ rest = "1 h", at = "26 C", as = "slab 40 mm" }, { shape = "loaf" }, ` +
			`{ proof = "1 h", at = "30 C", as = "slab 40 mm" }`,
	)
	for _, rise := range []float64{1.5, 2, 3, 4} {
		life := run(
			rests + `{ rest = "1 h", at = "26 C", as = "slab 40 mm", measured = "` + number(
				rise,
			) + ` x" }, { shape = "loaf" }, { proof = "1 h", at = "30 C", as = "slab 40 mm" }`,
		)
		if !life.Rise || !life.Stages[3].RiseMeasured || life.Stages[3].Measured {
			t.Fatalf(
				"rise %v, in its stage %v; a temperature read there: %v",
				life.Rise,
				life.Stages[3].RiseMeasured,
				life.Stages[3].Measured,
			)
		}
		sum := life.Stages[1].Hours.Mid + life.Stages[3].Hours.Mid
		near(t, "hours times gas", sum*gas, ferment.DoublingE*math.Log2(rise), 1e-9)
		for _, i := range []int{1, 3} {
			nearBand(
				t,
				"a reading leaves one figure",
				life.Stages[i].Hours,
				even(life.Stages[i].Hours.Mid),
				0,
			)
		}
		scale := sum / (plain.Stages[1].Hours.Mid + plain.Stages[3].Hours.Mid)
		near(t, "scale", life.RiseScale, scale, 1e-9)
		proof := plain.Stages[5].Hours
		nearBand(
			t,
			"the proof after it",
			life.Stages[5].Hours,
			figure.Estimate{
				Low:  proof.Low * scale,
				Mid:  proof.Mid * scale,
				High: proof.High * scale,
			},
			1e-9,
		)
		nearBand(t, "no temperature changes", life.Stages[5].Core, plain.Stages[5].Core, 0)
	}

	// Read half way: the doubling was done by then, and the dough
	// went on.
	half := run(
		`{ mix = "9 min" }, { rest = "2 h", at = "26 C", as = "slab 40 mm", ` +
			`measured = "2 x after 1 h" }`,
	)
	near(
		t,
		"hours times gas of twice the time of a doubling",
		half.Stages[1].Hours.Mid*gas,
		2*ferment.DoublingE,
		1e-3,
	)
	b := half.Stages[1].Hours
	if !(b.Low*gas >= ferment.DoublingE && b.Low <= b.Mid && b.Mid <= b.High) {
		t.Errorf("hours of the rest %v: at least those that were seen", b)
	}

	// The rise of a proof is counted from the shaping, and says as much
	// of the yeast as one in the bulk.
	proof := run(
		rests + `{ rest = "1 h", at = "26 C", as = "slab 40 mm" }, { shape = "loaf" }, ` +
			`{ proof = "1 h", at = "30 C", as = "slab 40 mm", measured = "2 x" }`,
	)
	near(t, "hours times gas of the proof", proof.Stages[5].Hours.Mid*gas, ferment.DoublingE, 1e-9)
	scale := proof.Stages[5].Hours.Mid / plain.Stages[5].Hours.Mid
	near(t, "the rest before it", proof.Stages[3].Hours.Mid, plain.Stages[3].Hours.Mid*scale, 1e-9)

	// Two readings: each rules its own rise.
	two := run(
		rests + `{ rest = "1 h", at = "26 C", as = "slab 40 mm", measured = "2 x" }, ` +
			`{ shape = "loaf" }, { proof = "1 h", at = "30 C", as = "slab 40 mm", ` +
			`measured = "3 x" }, { rest = "10 min", at = "30 C" }`,
	)
	near(t, "bulk", (two.Stages[1].Hours.Mid+two.Stages[3].Hours.Mid)*gas, ferment.DoublingE, 1e-9)
	near(t, "proof", two.Stages[5].Hours.Mid*gas, ferment.DoublingE*math.Log2(3), 1e-9)

	// A temperature read later does not undo what the rise said of
	// the yeast.
	later := run(
		rests + `{ rest = "1 h", at = "26 C", as = "slab 40 mm", measured = "2 x" }, ` +
			`{ chill = "6 h", as = "slab 40 mm", measured = "11 C" }`,
	)
	bare := run(
		rests + `{ rest = "1 h", at = "26 C", as = "slab 40 mm" }, ` +
			`{ chill = "6 h", as = "slab 40 mm", measured = "11 C" }`,
	)
	near(
		t,
		"a chill that was read",
		later.Stages[4].Hours.Mid,
		bare.Stages[4].Hours.Mid*later.RiseScale,
		1e-9,
	)
}

// A rise that says nothing leaves the model alone.
func TestRiseWithoutYeast(t *testing.T) {
	for _, gas := range []float64{0, 1} {
		for _, rise := range []string{"1 x", "2 x"} {
			if gas > 0 && rise == "2 x" {
				continue
			}
			s := setup(t, `{ rest = "1 h", at = "26 C", measured = "`+rise+`" }`)
			ferments(&s, gas)
			life := follow(t, s)
			if life.Rise || life.RiseScale != 1 || math.IsNaN(life.Stages[0].Hours.Mid) {
				t.Errorf(
					"gas %v, %s: rise %v, scale %v, hours %v",
					gas,
					rise,
					life.Rise,
					life.RiseScale,
					life.Stages[0].Hours,
				)
			}
		}
	}
}
