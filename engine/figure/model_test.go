package figure

import (
	"math"
	"testing"
)

func TestLimitRefusesOutsideItsEnds(t *testing.T) {
	l := Limit{"the mix", "min", 0, 30, "rises are published"}
	for _, inside := range []float64{0, 12, 30} {
		if why := l.Refuses(inside); why != "" {
			t.Errorf("%g: %s", inside, why)
		}
	}
	for x, want := range map[float64]string{
		-1:         "the mix is -1 min; rises are published from 0 to 30 min",
		30.5:       "the mix is 30.5 min; rises are published from 0 to 30 min",
		math.NaN(): "the mix is NaN min; rises are published from 0 to 30 min",
	} {
		if why := l.Refuses(x); why != want {
			t.Errorf("%g: %q", x, why)
		}
	}
	bare := Limit{Quantity: "the ratio", High: 1, Why: "it lies"}
	if why := bare.Refuses(2); why != "the ratio is 2; it lies from 0 to 1" {
		t.Errorf("without a unit: %q", why)
	}
}

func TestASilentModelHasNoMiddle(t *testing.T) {
	for _, e := range []Estimate{Bounded(0, 0.6), Unanswered()} {
		if !math.IsNaN(e.Mid) || !(e.Low < e.High) {
			t.Errorf("%v", e)
		}
	}
	if !Unanswered().Interval().IsUnknown() {
		t.Error("something is known")
	}
}
