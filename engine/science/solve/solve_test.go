package solve_test

import (
	"testing"

	"forebake/engine/science/heat"
	"forebake/engine/science/solve"
)

// A time that is remembered is that of a solver which has followed nothing else, to the last bit.
func TestTimesAreRemembered(t *testing.T) {
	begin := solve.Stage{Dimension: 1, HalfM: 0.02, TC: 90, AmbientC: 4, H: 12,
		Properties: heat.Properties{SpecificHeat: 3000, DensityKgM3: 900, ConductivityWmK: 0.4,
			DiffusivityM2s: 0.4 / 3000 / 900}}
	var one solve.Solvers
	last := 0.0
	for range 2 {
		for _, half := range []float64{0.01, 0.02, 0.03} {
			for _, crumb := range []bool{false, true} {
				for _, targetC := range []float64{60, 20} {
					begin.HalfM, begin.Crumb = half, crumb
					var fresh solve.Solvers
					want := fresh.Start(begin).TimeTo(heat.Core, targetC, 1e6)
					got := one.TimeTo(begin, targetC, 1e6)
					if got != want || got == last || !(got > 0) {
						t.Errorf("%v m, crumb %v, to %v C: %v s, then %v s", half, crumb, targetC,
							want, got)
					}
					last = got
				}
			}
		}
	}
	if short := one.TimeTo(begin, 20, last/2); short == last {
		t.Errorf("a shorter watch gives %v s too", short)
	}
}
