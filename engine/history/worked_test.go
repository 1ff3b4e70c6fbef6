package history_test

import (
	"fmt"
	"reflect"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/history"
)

// TestWorkedCoursesAreTheSame holds that a course that is kept is the one that would be followed anew,
// with its samples, in whatever order parts are asked for.
func TestWorkedCoursesAreTheSame(t *testing.T) {
	var kept history.Follower
	rapid.Check(t, func(t *rapid.T) {
		minutes := rapid.SampledFrom([]int{60, 300, 780}).Draw(t, "minutes")
		as := rapid.SampledFrom([]string{"bowl", "slab 90 mm", "ball"}).Draw(t, "as")
		gas := rapid.SampledFrom([]float64{0.4, 2.4}).Draw(t, "gas")
		trace := rapid.Bool().Draw(t, "trace")
		one := func(f *history.Follower) (*history.Life, history.Band) {
			s := setup(t, fmt.Sprintf(`{ chill = "%d min", at = "fridge", as = %q }`, minutes, as))
			s.Gas, s.Trace = gas, trace
			life := f.Follow(s)
			b, _ := f.TimeTo(s, life.Stages[0].Step, 10)
			return life, b
		}
		var fresh history.Follower
		life, to := one(&fresh)
		again, toAgain := one(&kept)
		for i := range life.Stages {
			life.Stages[i].Step, again.Stages[i].Step = nil, nil
		}
		if !reflect.DeepEqual(life, again) || to != toAgain {
			t.Fatalf("%+v, %v\nand kept %+v, %v", life, to, again, toAgain)
		}
	})
}
