package history_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/history"
)

// A wait's course begins and ends with the stage, goes forward in time,
// and lies on the body's line: following the wait for part of its time
// ends on it.
func TestTraceLiesOnTheCourse(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		minutes := rapid.IntRange(4, 600).Draw(t, "minutes")
		at := rapid.SampledFrom([]string{"3 C", "21 C", "30 C", "-18 C", "60 C"}).Draw(t, "at")
		as := rapid.SampledFrom([]string{"slab 20 mm", "slab 60 mm", "bowl", "ball", "tray 10 mm"}).
			Draw(t, "as")
		gas := rapid.SampledFrom([]float64{0, 0.4}).Draw(t, "gas")
		run := func(minutes float64, trace bool) history.Stage {
			s := setup(t, fmt.Sprintf(`{ chill = "%g min", at = %q, as = %q }`, minutes, at, as))
			ferments(&s, gas)
			s.Trace = trace
			return follow(t, s).Stages[0]
		}
		whole := run(float64(minutes), true)
		plain := run(float64(minutes), false)
		if plain.Core != whole.Core || plain.Hours != whole.Hours || plain.Trace[0] != nil {
			t.Fatalf("tracing changes the answer: %+v, %+v", plain.Core, whole.Core)
		}
		for r, trace := range whole.Trace {
			last := trace[len(trace)-1]
			if trace[0].Hours != 0 || math.Abs(last.Hours-float64(minutes)/60) > 1e-9 {
				t.Fatalf(
					"run %d goes from %v to %v h of %d min",
					r,
					trace[0].Hours,
					last.Hours,
					minutes,
				)
			}
			for i := 1; i < len(trace); i++ {
				if !(trace[i].Hours > trace[i-1].Hours) {
					t.Fatalf("run %d goes back at %v h", r, trace[i].Hours)
				}
			}
		}
		if last := whole.Trace[1][len(whole.Trace[1])-1]; math.Abs(last.Core-
			whole.Core.Mid) > 1e-6 {
			t.Fatalf("the middle run ends at %v, its course at %v", whole.Core.Mid, last.Core)
		}
		k := rapid.IntRange(1, len(whole.Trace[1])-2).Draw(t, "point")
		point := whole.Trace[1][k]
		by := 1e-6
		if gas > 0 {
			by = 0.3 // a dough with a source is stepped, and other ends make other steps
		}
		if part := run(point.Hours*60, true); math.Abs(part.Core.Mid-point.Core) > by {
			t.Fatalf(
				"%v h on the middle run is at %v, its course at %v",
				point.Hours,
				part.Core.Mid,
				point.Core,
			)
		}
	})
}

// Straight lines between the points of a cooling lie above it, which is
// the careful side, and not by much.
func TestTraceIsFineEnough(t *testing.T) {
	for _, as := range []string{"tray 10 mm", "tray 40 mm", "bowl"} {
		s := setup(t, fmt.Sprintf(`{ chill = "8 h", at = "3 C", as = %q }`, as))
		s.Start, s.Trace = even(85), true
		trace := follow(t, s).Stages[0].Trace[1]
		sum, fine := 0.0, 0.0
		for i := 1; i < len(trace); i++ {
			sum += (trace[i].Core + trace[i-1].Core) / 2 * (trace[i].Hours - trace[i-1].Hours)
		}
		const n = 400
		for i := range n {
			one := setup(
				t,
				fmt.Sprintf(
					`{ chill = "%g min", at = "3 C", as = %q }`,
					(float64(i)+0.5)/n*480,
					as,
				),
			)
			one.Start = even(85)
			fine += follow(t, one).Stages[0].Core.Mid * 8 / n
		}
		if sum < fine*0.995 || sum > fine*1.12 {
			t.Errorf("%s: %.2f degree-hours by the points, %.2f in fine steps", as, sum, fine)
		}
	}
}

// A longer wait in the same cold is above 5 C as long as one of a day: its
// points are as fine as the cooling, however long it goes on.
func TestTraceOfDays(t *testing.T) {
	above := func(wait, as string) (hours float64) {
		s := setup(t, fmt.Sprintf(`{ chill = %q, at = "4 C", as = %q }`, wait, as))
		s.Start, s.Trace = even(60), true
		trace := follow(t, s).Stages[0].Trace[1]
		for i := 1; i < len(trace); i++ {
			a, b := trace[i-1], trace[i]
			if a.Core > 5 {
				hours += (b.Hours - a.Hours) * min(1, (a.Core-5)/(a.Core-b.Core))
			}
		}
		return hours
	}
	for _, as := range []string{"tray 40 mm", "bowl"} {
		day := above("24 h", as)
		for _, wait := range []string{"25 h", "3 day", "8 day", "20 day", "34 day", "60 day"} {
			if h := above(wait, as); math.Abs(h-day) > 0.01*day {
				t.Errorf("%s for %s is above 5 C for %.2f h, in a day for %.2f h", as, wait, h, day)
			}
		}
	}
}
