package clock

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/microbe"
)

// started is a new clock, begun.
func started(coldC, hotC, chillH float64) *Clock {
	c := new(Clock)
	c.Start(coldC, hotC, chillH)
	return c
}

func even(tC float64) figure.Estimate { return figure.Estimate{Low: tC, Mid: tC, High: tC} }

func hours(h float64) figure.Interval { return figure.Point(h) }

// course makes a stage whose three runs go alike through the given core
// temperatures, C, at the given hours.
func course(points ...[2]float64) *history.Stage {
	st := &history.Stage{Known: true}
	for r := range st.Trace {
		for _, p := range points {
			st.Trace[r] = append(
				st.Trace[r],
				history.Sample{Hours: p[0], Core: p[1], Surface: p[1]},
			)
		}
	}
	return st
}

func near(t *testing.T, what string, got, want float64) {
	t.Helper()
	if math.Abs(got-want) > 1e-4*(1+math.Abs(want)) && got != want {
		t.Errorf("%s: %v, want %v", what, got, want)
	}
}

// Cooling that just keeps the Food Code's stages, straight: the figures
// are those of this program, by the continuous pace (computed).
func TestCoolingThatKeepsTheCode(t *testing.T) {
	st := course([2]float64{0, 57}, [2]float64{2, 21}, [2]float64{4, 10}, [2]float64{6, 5})
	c := started(5, 57, 0)
	c.Wait(st, 0)
	for o, want := range map[microbe.Organism]float64{
		microbe.BCereus:    0.9575,
		microbe.Salmonella: 1.2076,
		microbe.SAureus:    0.7504,
	} {
		near(t, o.String(), c.Spent(o).Mid, want)
	}
	near(t, "warm", c.WarmHours().Mid, 6)
	// Straight after a cook the same hours count for what came through
	// as spores, and for nothing else.
	c = started(5, 57, 0)
	c.Kill()
	c.Wait(st, 6)
	near(t, "B. cereus after a cook", c.Spent(microbe.BCereus).Mid, 0.9575)
	near(t, "Salmonella after a cook", c.Spent(microbe.Salmonella).Mid, 0)
	near(t, "warm after a cook", c.WarmHours().Mid, 0)
	// And from then on for all.
	c.Wait(course([2]float64{0, 25}, [2]float64{1, 25}), 0)
	near(t, "Salmonella an hour later", c.Spent(microbe.Salmonella).Mid, 0.5)
	near(t, "warm an hour later", c.WarmHours().Mid, 1)
}

func TestKill(t *testing.T) {
	c := started(5, 57, 0)
	c.Straight(even(25), even(25), hours(1.5), 0)
	c.Kill()
	near(t, "Salmonella", c.Spent(microbe.Salmonella).Mid, 0)
	near(t, "S. aureus leaves its toxin", c.Spent(microbe.SAureus).Mid, 0.5)
	near(t, "B. cereus", c.Spent(microbe.BCereus).Mid, 0.5)
	near(t, "warm", c.WarmHours().Mid, 1.5)
	c.Straight(even(25), even(25), hours(0.6), 0)
	near(t, "Salmonella anew", c.Spent(microbe.Salmonella).Mid, 0.3)
	near(t, "S. aureus: the worse stretch", c.Spent(microbe.SAureus).Mid, 0.5)
	near(t, "B. cereus runs on", c.Spent(microbe.BCereus).Mid, 0.7)
	near(t, "warm: the longer stretch", c.WarmHours().Mid, 1.5)
}

func TestInheritTakesTheWorst(t *testing.T) {
	a, b, c := started(5, 57, 0), started(5, 57, 0), started(5, 57, 0)
	a.Straight(even(25), even(25), hours(1), 0)
	b.Straight(even(12), even(12), hours(4), 0)
	c.Inherit(a)
	c.Inherit(b)
	near(t, "Salmonella", c.Spent(microbe.Salmonella).Mid, 0.8)
	near(t, "S. aureus", c.Spent(microbe.SAureus).Mid, 1.0/3)
	near(t, "warm", c.WarmHours().Mid, 4)
	c.Straight(even(25), even(25), hours(1), 0)
	near(t, "and adds its own", c.Spent(microbe.Salmonella).Mid, 1.3)
}

func TestUnknownIsBounded(t *testing.T) {
	c := started(5, 57, 0)
	c.Unknown(hours(1))
	s := c.Spent(microbe.Salmonella)
	if s.Low != 0 || s.High != 0.5 {
		t.Errorf("an hour of nobody knows what: %+v", s)
	}
	c.Unknown(figure.Positive())
	if s := c.Spent(microbe.Salmonella); s.Low != 0 || !math.IsInf(s.High, 1) {
		t.Errorf("hours that nobody counted: %+v", s)
	}
}

// The core and the surface are two places: what the surface went
// through is not added to what the core did.
func TestTwoPlaces(t *testing.T) {
	st := course([2]float64{0, 25}, [2]float64{1, 25})
	for r := range st.Trace {
		for i := range st.Trace[r] {
			st.Trace[r][i].Surface = 3
		}
	}
	c := started(5, 57, 0)
	c.Wait(st, 0)
	for r := range st.Trace {
		for i := range st.Trace[r] {
			st.Trace[r][i].Core, st.Trace[r][i].Surface = 3, 25
		}
	}
	c.Wait(st, 0)
	near(t, "Salmonella", c.Spent(microbe.Salmonella).Mid, 0.5)
	near(t, "warm", c.WarmHours().Mid, 1)
}

func TestProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		temp := rapid.Float64Range(-20, 100)
		a, b, h := temp.Draw(t, "a"), temp.Draw(t, "b"), rapid.Float64Range(0, 30).Draw(t, "hours")
		cut := rapid.Float64Range(0, 30).Draw(t, "spores only")
		o := rapid.SampledFrom(microbe.Organisms()).Draw(t, "organism")
		c := started(5, 57, 0)
		c.Wait(course([2]float64{0, a}, [2]float64{h, b}), cut)
		spent, warm := c.Spent(o).Mid, c.WarmHours().Mid
		if spent < 0 || warm < 0 || warm > h+1e-9 {
			t.Fatalf("%v of %v, warm %v of %v h", spent, o, warm, h)
		}
		all := started(5, 57, 0)
		all.Wait(course([2]float64{0, a}, [2]float64{h, b}), 0)
		// The kill parts a step of the course. Where a band's edge
		// lies in that step, the two halves are spread over the bands
		// a little otherwise than the whole: some hundredths of what
		// is spent.
		if full := all.Spent(o).Mid; spent > full+0.01*(1+full) ||
			o.SporeFormer() && math.Abs(spent-full) > 0.01*(1+full) {
			t.Fatalf("%v: %v with a kill before, %v without", o, spent, full)
		}
		c.Straight(even(a), even(b), hours(h), 0)
		if c.Spent(o).Mid < spent || c.WarmHours().Mid < warm {
			t.Fatal("more time took some away")
		}
		unknown := started(5, 57, 0)
		unknown.Unknown(hours(h))
		if full := all.Spent(o); full.High > unknown.Spent(o).High+1e-9 {
			t.Fatalf(
				"%v: what is known (%v) is worse than the worst (%v)",
				o,
				full,
				unknown.Spent(o),
			)
		}
	})
}

// TestUnknownOnTopOfTheColdest holds that hours of which nothing is
// known count where they hurt most: a food that may still be hot has
// stood longest between the limits in its coldest run, and what comes
// then may be warm in that run too.
func TestUnknownOnTopOfTheColdest(t *testing.T) {
	c := started(5, 57, 0)
	c.Straight(
		figure.Estimate{Low: 40, Mid: 50, High: 70},
		figure.Estimate{Low: 40, Mid: 50, High: 70},
		hours(2),
		0,
	)
	if got := c.WarmHours(); got != (figure.Estimate{Low: 0, Mid: 2, High: 2}) {
		t.Fatalf("before: %v", got)
	}
	cold := *c
	c.Unknown(hours(3))
	if got := c.WarmHours(); got != (figure.Estimate{Low: 0, Mid: 3.5, High: 5}) {
		t.Errorf("after 3 h of nobody knows what: %v", got)
	}
	known := cold // the same 3 h, known to be warm in the coldest run and hot in the warmest
	known.Straight(
		figure.Estimate{Low: 40, Mid: 50, High: 70},
		figure.Estimate{Low: 40, Mid: 50, High: 70},
		hours(3),
		0,
	)
	for _, g := range microbe.Organisms() {
		if a, b := known.Spent(g).High, c.Spent(g).High; b < a-1e-12 {
			t.Errorf("%v: %v of its time where the 3 h are known, %v where they are not", g, a, b)
		}
	}
	c.Kill()
	if got := c.WarmHours(); got != (figure.Estimate{Low: 0, Mid: 3.5, High: 5}) {
		t.Errorf("after a kill the longest stretch is still %v", got)
	}
}
