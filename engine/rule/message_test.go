package rule

import (
	"testing"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/rule/show"
)

// A model's figure is printed no finer than its error lets it be, and
// long times in hours.
func TestModelledFiguresAreRounded(t *testing.T) {
	for _, test := range []struct {
		unit        string
		lo, mid, hi float64
		shown, ends string
	}{
		{"C", 51.1, 53.3, 55.6, "about 53 C", "51 to 56 C"},
		{"C", 100, 160.4, 190, "about 160 C", "100 to 190 C"},
		{"C", 8.9, 9.04, 9.2, "about 9 C", "8.9 to 9.2 C"},
		{"min", 300, 440, 640, "about 7 h", "5 to 11 h"},
		{"min", 38, 47.3, 61, "about 47 min", "38 to 61 min"},
		{"h", 2.4, 3.14, 4.2, "about 3.1 h", "2.4 to 4.2 h"},
		{"%-hours", 0.9, 1.459, 2.294, "about 2.2 times", "1.6 to 3.6 times"},
		{"%-hours", 1.3, 9, 14, "over 6 times", "2.1 times or more"},
		{"log", 0.2, 1.071, 2.36, "about 1.1 log", "0.2 to 2.4 log"},
		{"log", 3, 180, 400, "over 12 log", "3 log or more"},
		{"mm", 112.8, 112.8, 112.8, "about 113 mm", "113 mm"},
		{"ratio", 0.961, 0.9712, 0.981, "about 0.971", "0.961 to 0.981"},
	} {
		f := &facts.Fact{Type: facts.Number, Unit: test.unit}
		v := &facts.Value{Lo: test.lo, Mid: test.mid, Hi: test.hi, Origin: figure.ByModel}
		if got := show.Fact(f, v); got != test.shown {
			t.Errorf("%v %s shows as %q, not %q", test.mid, test.unit, got, test.shown)
		}
		if got := show.Range(f, v); got != test.ends {
			t.Errorf("%v to %v %s shows as %q, not %q", test.lo, test.hi, test.unit, got, test.ends)
		}
	}
}

// A figure that has no lower end begins with "up to": no sentence says "to up to".
func TestUpToStandsOnce(t *testing.T) {
	for before, want := range map[string]string{
		"The middle gets to ": "The middle gets to no more than 65 C",
		"Bake it ":            "Bake it up to 65 C",
	} {
		var s sentences
		s.text(before)
		s.figure("up to 65 C", "C")
		if got := s.String(); got != want {
			t.Errorf("%q, not %q", got, want)
		}
	}
}
