package heat

import (
	"strings"
	"testing"

	"forebake/engine/figure"
)

// Every model says what it gives, in which unit, from where, how far
// off, and where it holds.
func TestModels(t *testing.T) {
	names := map[string]bool{}
	for _, m := range Models {
		if m.Name == "" || m.Gives == "" || m.Unit == "" || m.Source == "" || m.Error == "" ||
			len(m.Limits) == 0 ||
			names[m.Name] {
			t.Errorf("%+v lacks something", m)
		}
		names[m.Name] = true
		for _, l := range m.Limits {
			step := (l.High - l.Low) / 100
			if !(step > 0) || l.Quantity == "" || l.Unit == "" || l.Why == "" {
				t.Errorf("%s: %+v", m.Name, l)
			}
			for i := -50; i <= 150; i++ {
				x := l.Low + step*float64(i)
				said := l.Refuses(x)
				if inside := i >= 0 && i < 100; inside && said != "" ||
					(i < 0 || i > 100) && !strings.Contains(said, l.Quantity) {
					t.Errorf("%s at %g: %q", m.Name, x, said)
				}
			}
			if l.Refuses(l.Low) != "" || l.Refuses(l.High) != "" {
				t.Errorf("%s is silent at its own ends", m.Name)
			}
		}
	}
	got, want := (figure.Limit{
		Quantity: "the oven",
		Unit:     "C",
		Low:      110,
		High:     350,
		Why:      "bakes are reckoned",
	}).Refuses(380), "the oven is 380 C; bakes are reckoned from 110 to 350 C"
	if got != want {
		t.Errorf("%q, want %q", got, want)
	}
}
