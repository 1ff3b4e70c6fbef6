package facts

import (
	"testing"
)

// lineOf finds a step of the timeline.
func lineOf(t *testing.T, lines []Line, part string, index int) Line {
	t.Helper()
	for _, l := range lines {
		if l.Part.Name == part && l.Step.Index == index {
			return l
		}
	}
	t.Fatalf("no step %d of %q", index, part)
	return Line{}
}

const timed = `preferment "sponge" {
  ingredients = { "bread flour" = "200 g", "water" = "200 g", "instant yeast" = "1 g" }
  steps = [ { mix = "3 min", to = "24 C" }, { rest = "8 h to 10 h", at = "room" } ]
}
dough "d" {
  ingredients = { "the sponge" = "all", "bread flour" = "800 g", "water" = "350 g",
    "instant yeast" = "8 g" }
  steps = [ { mix = "12 min", to = "25 C" }, { rest = "1 h", at = "26 C" },
    { sheet = "5 mm", time = "10 min" }, { fill = "f", time = "5 min" }, { shape = "knots" },
    { proof = "90 min to 2 h", at = "27 C", measured = "2 x" }, { wash = "w" },
      { bake = "16 min", at = "200 C", core = "92 C" }, { brush = "s" },
      { cool = "45 min", at = "room" } ]
}
filling "f" {
  ingredients = { "sugar" = "200 g", "unsalted butter" = "100 g" }
  steps = [ { cook = "5 min", to = "70 C" }, { cool = "3 h", at = "room", as = "tray 15 mm" } ]
}
syrup "s" {
  ingredients = { "sugar" = "100 g", "water" = "100 g" }
  steps = [ { cook = "4 min", to = "100 C" } ]
}
wash "w" { ingredients = { "egg" = "50 g" } }
topping "alone" {
  ingredients = { "sugar" = "50 g" }
  steps = [ { mix = "2 min" } ]
}`

// A preferment ends when the dough begins, a filling when it is spread,
// a syrup when it is brushed on; the earliest is hour 0.
func TestTimeline(t *testing.T) {
	s := sheetIn(t, timed, kitchenOf(nil))
	lines := s.Timeline()
	if want := s.Formula.Steps; len(lines) != want {
		t.Fatalf("%d lines for %d steps", len(lines), want)
	}
	const dough = 9.05
	for _, test := range []struct {
		part       string
		step       int
		start, end float64
	}{
		{"sponge", 0, 0, 0.05}, {"sponge", 1, 0.05, dough},
		{"d", 0, dough, dough + 0.2}, {"d", 1, dough + 0.2, dough + 1.2},
		{"d", 2, dough + 1.2, dough + 1.2 + 1.0/6}, {"d", 3, dough + 1.2 + 1.0/6, dough + 1.45},
		{"d", 4, dough + 1.45, dough + 1.45}, {"d", 5, dough + 1.45, dough + 3.2},
		{"d", 7, dough + 3.2, dough + 3.2 + 16.0/60},
		{"d", 9, dough + 3.2 + 16.0/60, dough + 3.95 + 16.0/60},
		{"f", 0, dough + 1.2 + 1.0/6 - 3 - 1.0/12, dough + 1.2 + 1.0/6 - 3},
		{"f", 1, dough + 1.2 + 1.0/6 - 3, dough + 1.2 + 1.0/6},
		{"s", 0, dough + 3.2 + 12.0/60, dough + 3.2 + 16.0/60},
	} {
		l := lineOf(t, lines, test.part, test.step)
		near(t, test.part+" "+l.Step.Verb.Name+" begins", l.StartH, test.start, 1e-9)
		near(t, test.part+" "+l.Step.Verb.Name+" ends", l.EndH, test.end, 1e-9)
		if l.Timed != l.Step.Time.Set {
			t.Errorf("%s: timed %v", l.Step.Verb.Name, l.Timed)
		}
	}
	for i, l := range lines {
		if l.StartH < 0 || l.EndH < l.StartH || i > 0 && lines[i-1].Part.Serial > l.Part.Serial {
			t.Errorf("line %d: %v to %v", i, l.StartH, l.EndH)
		}
	}
	proof := lineOf(t, lines, "d", 5)
	if !proof.Measured || proof.Hours.Absent || proof.Ambient.Mid != 27 ||
		lineOf(t, lines, "d", 1).Measured ||
		!lineOf(t, lines, "d", 1).Bowl {
		t.Errorf("%+v", proof)
	}
	if bake := lineOf(t, lines, "d", 7); bake.Ambient.Mid != 200 || bake.Core.Absent ||
		!bake.Hours.Absent {
		t.Errorf("%+v", bake)
	}
	if l := lineOf(t, lines, "f", 1); !l.Hours.Absent || l.Core.Absent {
		t.Errorf("a filling does not ferment: %+v", l)
	}
}

// A filling slower than all before its fill begins first; a part that
// two others take is ready for the earlier one.
func TestTimelineBeginsWithTheSlowest(t *testing.T) {
	s := sheetIn(t, `dough "d" {
  ingredients = { "bread flour" = "800 g", "water" = "350 g" }
  steps = [ { mix = "12 min" }, { fill = "f" }, { brush = "base" } ]
}
filling "f" {
  ingredients = { "the base" = "50 g", "sugar" = "200 g" }
  steps = [ { mix = "6 min" }, { chill = "1 day", as = "tray 15 mm" } ]
}
syrup "base" {
  ingredients = { "sugar" = "200 g", "water" = "100 g" }
  steps = [ { cook = "6 min", to = "90 C" }, { cool = "1 h", at = "room" } ]
}`, kitchenOf(nil))
	lines := s.Timeline()
	near(t, "the base is first", lineOf(t, lines, "base", 0).StartH, 0, 1e-9)
	near(t, "the filling follows it", lineOf(t, lines, "f", 0).StartH, 1.1, 1e-9)
	near(
		t,
		"the dough is mixed in time for the fill",
		lineOf(t, lines, "d", 0).StartH,
		1.1+24.1-0.2,
		1e-9,
	)
	near(t, "the fill", lineOf(t, lines, "d", 1).StartH, lineOf(t, lines, "f", 1).EndH, 1e-9)
}

func TestTimelineOfNothing(t *testing.T) {
	lines := sheetIn(t, `dough "d" { ingredients = { "bread flour" = "?" } }`, kitchenOf(nil)).
		Timeline()
	if len(lines) != 0 {
		t.Errorf("%v", lines)
	}
}
