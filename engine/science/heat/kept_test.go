package heat_test

import (
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/science/heat"
)

// A walk that goes on from where another was kept is the same to the
// last bit, whatever it followed before.
func TestKeptWalkGoesOn(t *testing.T) {
	bodies := []heat.Body{heat.SlabOf(0.03), heat.BrickOf(0.2, 0.1, 0.08),
		heat.BrickOf(0.1, 0.1, 0.1), heat.BallOf(0.07, 1100), heat.LogOf(0.06, 0.3),
		heat.BowlOf(0.001, 0.05)}
	stages := 0
	rapid.Check(t, func(t *rapid.T) {
		var solved heat.Solved
		a, b := heat.Walk{Solved: &solved}, heat.Walk{Solved: &solved}
		follow := func(w *heat.Walk, ambient, h, seconds float64) heat.State {
			w.Stage(ambient, h)
			return w.Advance(seconds)
		}
		body := rapid.SampledFrom(bodies)
		one := rapid.Float64Range(0, 200)
		b.Start(body.Draw(t, "other body"), 0.5, 1.2e-7, 20)
		for range rapid.IntRange(0, 14).Draw(t, "before") {
			follow(&b, one.Draw(t, "C"), 1+one.Draw(t, "h"), 100)
		}
		if !a.Start(body.Draw(t, "body"), 0.4, 1.4e-7, 26) {
			t.Fatal("the body is refused")
		}
		var kept *heat.Kept
		for i, n := 0, rapid.IntRange(1, 6).Draw(t, "stages"); i < n; i++ {
			if kept = a.Keep(); rapid.Bool().Draw(t, "on") {
				b.GoOn(kept)
			}
			ambient, seconds := one.Draw(t, "ambient"), 20*one.Draw(t, "seconds")
			h := rapid.SampledFrom([]float64{4, 8, 8, 25, 600, 1e9}).Draw(t, "coefficient")
			b.GoOn(kept)
			stages++
			if x, y := follow(&a, ambient, h, seconds), follow(&b, ambient, h, seconds); x != y {
				t.Fatalf("%+v, then %+v", x, y)
			}
			if rapid.Bool().Draw(t, "scaled") && a.SetScale(1.3) {
				b.SetScale(1.3)
			}
			if x, y := a.At(50), b.At(50); x != y {
				t.Fatalf("after 50 s more: %+v, then %+v", x, y)
			}
		}
	})
	if stages < 100 {
		t.Errorf("only %d stages", stages)
	}
}
