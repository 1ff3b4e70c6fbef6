package facts

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/microbe"
)

// newton is a decay towards the surroundings with time constant tau, h,
// sampled like a history.
func newton(fromC, ambientC, tau, hours float64) []history.Sample {
	var out []history.Sample
	for _, share := range []float64{0, 0.01, 0.03, 0.07, 0.13, 0.22, 0.39, 0.57, 0.88, 1} {
		h := share * hours
		out = append(
			out,
			history.Sample{Hours: h, Core: ambientC + (fromC-ambientC)*math.Exp(-h/tau)},
		)
	}
	return out
}

// Newton's cooling into 4 C: 57 to 21 C takes 1.137 tau and 57 to 5 C
// 3.970 tau, so that tau 1.5 h passes both stages with 1.71 and 5.96 h
// and 1.6 h fails the second with 6.35 h (closed form; NewtonHours is
// the same law in package microbe).
func TestCoolingTimesByTheClosedForm(t *testing.T) {
	for _, tau := range []float64{0.3, 1.5, 1.6, 1.759} {
		trace := newton(85, 4, tau, 9*tau)
		at := func(c float64) float64 {
			h, met := history.DownTo(trace, 4, c)
			if !met {
				t.Fatalf("tau %v h: never at %v C", tau, c)
			}
			return h
		}
		near(t, fmt.Sprintf("tau %v h, 57 to 21 C", tau), at(21)-at(57), 1.137*tau, 0.001*tau)
		near(t, fmt.Sprintf("tau %v h, 57 to 5 C", tau), at(5)-at(57), 3.970*tau, 0.001*tau)
		near(t, "the law", microbe.NewtonHours(tau, 4, 57, 5), at(5)-at(57), 1e-6)
	}
	if h, met := history.DownTo(newton(20, 4, 1, 9), 4, 57); h != 0 || !met {
		t.Errorf("what comes cooler than the target: %v h, %v", h, met)
	}
	if _, met := history.DownTo(newton(85, 4, 1, 9), 4, 3); met {
		t.Error("colder than its surroundings")
	}
}

const custard = `ph = 6.5
    ingredients = {
      "whole milk" = "2000 g", "egg yolk" = "480 g", "sugar" = "400 g", "corn starch" = "160 g"
    }`

// In the cold the last wait lasts as long as needed, at the rate of its
// end. A longer written wait must agree.
func TestCoolingGoesOnPastItsEnd(t *testing.T) {
	time := func(hours string) Value {
		s := sheetIn(t, fmt.Sprintf(`filling "f" {
%s
			steps = [{ cook = "8 min", to = "85 C" },
			  { chill = "%s", at = "4 C", as = "tray 30 mm", covered = true }
]
}`, custard, hours), kitchenOf(nil))
		return stepValue(t, s, "f", 1, "h_57_to_5")
	}
	whole := time("40 h")
	for _, hours := range []string{"4 h", "1 h", "5 min"} {
		v := time(hours)
		near(t, hours+": quick", v.Lo, whole.Lo, 0.03*whole.Lo)
		near(t, hours+": slow", v.Hi, whole.Hi, 0.03*whole.Hi)
	}
}

// A cooling on the bench ends as it is written.
func TestCoolingOnTheBenchEndsAsWritten(t *testing.T) {
	s := sheetIn(t, `filling "f" {
`+custard+`
		steps = [{ cook = "8 min", to = "57 C" }, { cool = "50 min", at = "room", as = "bowl" }
]
}`, kitchenOf(nil))
	v := stepValue(t, s, "f", 1, "h_57_to_21")
	near(t, "57 to 21 C", v.Hi, 50.0/60, 0.01)
}

// A cooling begins at the first wait after the heat, if the part comes
// to it hot.
func TestStartsHot(t *testing.T) {
	s := sheetIn(t, `filling "f" {
`+custard+`
		steps = [{ cook = "8 min", to = "85 C" }, { rest = "5 min", at = "room", as = "bowl" },
		  { mix = "1 min", measured = "80 C" }, { chill = "4 h", at = "fridge", as = "tray 10 mm" }
]
}
		filling "g" {
`+custard+`
		steps = [{ cook = "8 min", to = "50 C" }, { cool = "4 h", at = "fridge" }
]
}
		filling "h" {
`+custard+`
		steps = [{ cook = "8 min" }, { cool = "4 h", at = "fridge" }
]
}`, kitchenOf(nil))
	for _, c := range []struct {
		part  string
		index int
		lo    float64
		hi    float64
	}{{"f", 1, 1, 1}, {"f", 3, 0, 0}, {"g", 1, 0, 0}, {"h", 1, 0, 1}} {
		if v := stepValue(t, s, c.part, c.index, "starts_hot"); v.Lo != c.lo || v.Hi != c.hi {
			t.Errorf("step %d of %s: %v to %v", c.index, c.part, v.Lo, v.Hi)
		}
	}
}

// The table's cells decide, at the high end of the water activity;
// without a pH every pH counts.
func TestNeedsControl(t *testing.T) {
	for _, c := range []struct {
		body   string
		lo, hi float64
		cell   string
	}{
		{`water_activity = 0.87  ingredients = { "whole milk" = "100 g" }`, 0, 0,
			"under 0.88, pH any"},
		{`water_activity = 0.89  ingredients = { "whole milk" = "100 g" }`, 0, 1,
			"0.88 to 0.90, pH not known"},
		{`water_activity = 0.89  ph = 5.0  ingredients = { "whole milk" = "100 g" }`, 0, 0,
			"0.88 to 0.90, pH over 4.6 to 5.0"},
		{`water_activity = 0.89  ph = 5.1  ingredients = { "whole milk" = "100 g" }`, 1, 1,
			"0.88 to 0.90, pH over 5.0"},
		{`water_activity = 0.99  ph = 4.1  ingredients = { "whole milk" = "100 g" }`, 0, 0,
			"over 0.92, pH under 4.2"},
		{`water_activity = 0.99  ph = 4.2  ingredients = { "whole milk" = "100 g" }`, 1, 1,
			"over 0.92, pH 4.2 to 4.6"},
		{`ingredients = { "whole milk" = "100 g" }`, 0, 1, "over 0.92, pH not known"},
		{`ingredients = { "ground hazelnuts" = "500 g", "sugar" = "300 g", "water" = "100 g", ` +
			`"honey" = "100 g" }`, 0, 0, "nothing in it"},
		// too dry for the model, and sugared
		{`ingredients = { "sugar" = "300 g", "cinnamon" = "20 g", "unsalted butter" = "40 g" }`, 0,
			0, "nothing in it"},
	} {
		s := sheetIn(t, `filling "f" {
`+strings.ReplaceAll(c.body, "  ", "\n")+"\n}", kitchenOf(nil))
		v, cell := value0(t, s, "f", "needs_control"), value0(t, s, "f", "control_cell")
		if v.Lo != c.lo || v.Hi != c.hi || !strings.Contains(cell.Words[0], c.cell) {
			t.Errorf("%s: %v to %v by %q", c.body, v.Lo, v.Hi, cell.Words[0])
		}
	}
	for body, want := range map[string]float64{
		`"bread flour" = "100 g", "water" = "60 g"`:      0,
		`"bread flour" = "100 g", "whole milk" = "60 g"`: 1,
		`"bread flour" = "100 g", "egg" = "60 g"`:        1,
	} {
		s := sheetIn(t, "dough \"d\" {\ningredients = { "+body+" }\n}", kitchenOf(nil))
		if v := value0(t, s, "d", "needs_control"); v.Lo != want || v.Hi != want {
			t.Errorf("%s: %v to %v", body, v.Lo, v.Hi)
		}
	}
}

// Three hours at 28 C and three at 30 C, by the table: 2 for S. aureus
// and B. cereus, 3 for Salmonella.
func TestBudgetsByHand(t *testing.T) {
	s := sheetIn(t, `dough "d" {
		ingredients = { "bread flour" = "1000 g",
		  "whole milk" = { amount = "450 g", temp = "28 C" },
		  "egg" = { amount = "150 g", temp = "28 C" }, "sugar" = "80 g", "instant yeast" = "5 g" }
		steps = [{ mix = "?", to = "28 C", measured = "28 C" },
		  { rest = "3 h", at = "28 C", as = "slab 2 mm" }, { shape = "buns", pieces = 20 },
		  { proof = "3 h", at = "28 C", as = "slab 2 mm" }
]
}`, kitchenOf(nil))
	for name, want := range map[string]float64{
		"budget_s_aureus":        2,
		"budget_b_cereus":        2,
		"budget_salmonella":      3,
		"budget_l_monocytogenes": 2,
		"warm_h":                 6,
	} {
		v := value0(t, s, "d", name)
		near(t, name, v.Lo, want, 0.02)
		near(t, name, v.Mid, want, 0.02)
	}
}

// The time of a part that needs control goes on in the part that takes
// it, and a filling's in the dough.
func TestTimeGoesAlong(t *testing.T) {
	s := sheetIn(t, `
		preferment "milk sponge" {
			ingredients = { "bread flour" = "200 g",
			  "whole milk" = { amount = "200 g", temp = "25 C" } }
			steps = [{ mix = "?", measured = "25 C" }, { rest = "1 h", at = "25 C", as = "bowl" }
]
}
		preferment "water sponge" {
			ingredients = { "bread flour" = "200 g", "water" = { amount = "200 g", temp = "25 C" } }
			steps = [{ mix = "?", measured = "25 C" }, { rest = "8 h", at = "25 C", as = "bowl" }
]
}
		filling "cheese" {
			ph = 6
			ingredients = { "cream cheese" = { amount = "300 g", temp = "25 C" } }
			steps = [{ hold = "1 h", at = "25 C", as = "bowl" }
]
}
		dough "d" {
			ingredients = { "bread flour" = "600 g",
			  "whole milk" = { amount = "300 g", temp = "25 C" },
			  "the milk sponge" = "all", "the water sponge" = "all" }
			steps = [{ mix = "?", measured = "25 C" }, { fill = "cheese" },
			  { rest = "1 h", at = "25 C", as = "bowl" },
			  { bake = "20 min", at = "200 C", measured = "95 C" }, { store = "5 h", at = "25 C" }
]
}`,
		kitchenOf(nil))
	near(t, "the sponge alone", value0(t, s, "milk sponge", "budget_salmonella").Mid, 0.5, 0.02)
	near(
		t,
		"the dough with its sponge, the oven's first minutes too",
		value0(t, s, "d", "budget_salmonella").Mid,
		1.05,
		0.06,
	)
	near(t, "the filling in the dough", value0(t, s, "cheese", "budget_salmonella").Mid, 1.05, 0.06)
	if v := value0(t, s, "cheese", "budget_b_cereus"); !(v.Mid > 2) {
		t.Errorf("after the bake the time of B. cereus in the filling runs on: %v", v.Mid)
	}
	if v := value0(t, s, "d", "budget_b_cereus"); !(v.Mid < 1) {
		t.Errorf("a baked crumb is not judged: %v", v.Mid)
	}
}

// The cooling straight after a cook counts for spores alone, within the
// code's time. Stirring in butter while hot, and a hot hold, do not end
// that; handling it cold does.
func TestCoolingAfterACook(t *testing.T) {
	budget := func(steps string) float64 {
		s := sheetIn(
			t,
			"filling \"f\" {\n"+custard+"\nsteps = [{ cook = \"8 min\", to = \"85 C\" }, "+
				steps+"]\n}",
			kitchenOf(nil),
		)
		return value0(t, s, "f", "budget_salmonella").Hi
	}
	const chill = `{ chill = "5 h", at = "3 C", as = "tray 20 mm" }`
	for _, steps := range []string{chill, `{ mix = "2 min", measured = "75 C" }, ` + chill,
		`{ hold = "3 h", at = "85 C" }, ` + chill} {
		if got := budget(steps); got > 0.02 {
			t.Errorf("%s: %v", steps, got)
		}
	}
	for _, steps := range []string{`{ cool = "1 h", at = "3 C", as = "tray 10 mm" }, ` +
		`{ mix = "2 min", measured = "20 C" }, { rest = "2 h", at = "25 C" }`,
		`{ rest = "9 h", at = "25 C", as = "bowl" }`} {
		if got := budget(steps); got < 0.5 {
			t.Errorf("%s: %v", steps, got)
		}
	}
}

// How hot it gets: its own cook, or the bake of what it goes into.
func TestHeatedTo(t *testing.T) {
	s := sheetIn(t, `
		wash "w" {
ingredients = { "egg" = "50 g" }
}
		wash "late" {
ingredients = { "egg" = "50 g" }
}
		filling "f" {
ingredients = { "egg" = "50 g" }
}
		filling "cooked" {
			ingredients = { "egg" = "50 g" }
			steps = [{ cook = "5 min", to = "66 C to 80 C" }
]
}
		filling "in it" {
ingredients = { "egg" = "50 g" }
}
		filling "taker" {
			ingredients = { "the in it" = "all", "sugar" = "10 g" }
			steps = [{ cook = "5 min", to = "90 C" }
]
}
		dough "d" {
			ingredients = { "bread flour" = "600 g", "water" = "300 g" }
			steps = [{ mix = "5 min", to = "25 C" }, { fill = "f" }, { wash = "w" },
			  { bake = "20 min", at = "200 C", core = "93 C" }, { brush = "late" }
]
}`, kitchenOf(nil))
	for part, want := range map[string]figure.Interval{
		"w":      figure.Point(100),
		"late":   figure.Point(22),
		"f":      figure.Point(93),
		"cooked": figure.Between(66, 80),
		"in it":  figure.Point(90),
	} {
		if v := value0(t, s, part, "heated_to_c"); v.Lo != want.Lo || v.Hi != want.Hi {
			t.Errorf("%s: %v to %v, not %v", part, v.Lo, v.Hi, want)
		}
	}
}

// Sweeter dies slower, longer dies more, and what was never cooked in
// chocolate does not count as killed.
func TestKillSteps(t *testing.T) {
	log := func(filling, bake string) Value {
		s := sheetIn(t, `filling "f" {
ingredients = { `+filling+` }
}
			dough "d" {
				ingredients = { "bread flour" = "1000 g", "instant yeast" = "10 g",
					"water" = { amount = "600 g", temp = "20 C" } }
				steps = [{ mix = "10 min", to = "25 C" }, { fill = "f" },
					{ shape = "buns", pieces = 20 },
					{ proof = "1 h", at = "28 C", as = "pieces 110 g" }, `+bake+`
]
}`, kitchenOf(nil))
		return stepValue(t, s, "d", 4, "lethality_log_salmonella")
	}
	const bake = `{ bake = "16 min", at = "200 C", measured = "91 C core" }`
	wet := log(`"cream cheese" = "200 g", "egg" = "100 g"`, bake)
	sweet := log(
		`"ground almonds" = "200 g", "egg" = "100 g", "sugar" = "200 g", `+
			`"unsalted butter" = "150 g"`,
		bake,
	)
	longer := log(
		`"ground almonds" = "200 g", "egg" = "100 g", "sugar" = "200 g", `+
			`"unsalted butter" = "150 g"`,
		strings.Replace(bake, "16", "20", 1),
	)
	after := log(
		`"ground almonds" = "200 g", "egg" = "100 g", "sugar" = "200 g", `+
			`"unsalted butter" = "150 g"`,
		bake+`, { cool = "30 min", at = "room" }`,
	)
	chocolate := log(`"dark chocolate" = "300 g", "egg" = "100 g"`, bake)
	if !(wet.Lo > sweet.Lo && sweet.Lo > 0 && longer.Lo > sweet.Lo && after.Lo > sweet.Lo &&
		chocolate.Hi == 0) {
		t.Errorf(
			"wet %v, sweet %v, longer %v, with its cooling %v, chocolate %v",
			wet.Lo,
			sweet.Lo,
			longer.Lo,
			after.Lo,
			chocolate.Hi,
		)
	}
	needs(
		t,
		"no time",
		log(`"egg" = "100 g"`, `{ bake = "?", at = "200 C" }`),
		"the time of this bake",
	)
}

// Days in too warm a fridge count for more, frozen days for none.
func TestKeptDays(t *testing.T) {
	s := sheetIn(t, `filling "f" {
`+custard+`
		steps = [{ cook = "5 min", to = "85 C" }, { store = "2 day", at = "5 C" },
		  { store = "1 day", at = "7 C" }, { store = "9 day", at = "-18 C" },
		  { store = "1 day", at = "8 C" }
]
}`, kitchenOf(nil))
	for i, want := range map[int]float64{1: 3, 2: 4.75, 3: 4.75, 4: 11.75} {
		if v := stepValue(t, s, "f", i, "kept_days"); v.Lo != want || v.Hi != want {
			t.Errorf("after step %d: %v to %v, not %v", i, v.Lo, v.Hi, want)
		}
	}
}

// Whatever the steps, figures keep their order and stay numbers; one
// more wait never takes time away.
func TestSafetyOfAnyHistory(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var steps []string
		for range rapid.IntRange(1, 5).Draw(t, "steps") {
			verb := rapid.SampledFrom([]string{"rest", "chill", "cool", "hold", "store", "thaw"}).
				Draw(t, "verb")
			at := rapid.SampledFrom([]string{`at = "room"`, `at = "fridge"`, `at = "30 C"`,
				`at = "60 C"`, `at = "5 C"`}).
				Draw(t, "at")
			as := rapid.SampledFrom([]string{"bowl", "tray 10 mm", "tray 40 mm"}).Draw(t, "as")
			time := rapid.SampledFrom([]string{"5 min", "1 h", "3 h to 5 h", "14 h"}).
				Draw(t, "time")
			steps = append(steps, fmt.Sprintf(`{ %s = %q, %s, as = %q }`, verb, time, at, as))
		}
		sheetOf := func(n int) *Sheet {
			return sheetIn(t, `filling "f" {
`+custard+`
				steps = [{ cook = "8 min", to = "85 C" }, `+strings.Join(steps[:n], ", ")+`
]
}`, kitchenOf(nil))
		}
		last := map[string]float64{}
		for n := range steps {
			s := sheetOf(n + 1)
			for _, name := range []string{"warm_h", "budget_salmonella", "budget_s_aureus",
				"budget_b_cereus", "budget_l_monocytogenes"} {
				f, _ := Find(OnPart, name)
				v := *s.Value(f, Subject{On: OnPart, Part: s.Formula.PartNamed("f")})
				if !(v.Lo <= v.Mid && v.Mid <= v.Hi) || v.Lo < 0 || v.Hi < last[name]-1e-9 {
					t.Fatalf(
						"%s after %d steps: %v to %v, about %v; before %v",
						name,
						n+1,
						v.Lo,
						v.Hi,
						v.Mid,
						last[name],
					)
				}
				last[name] = v.Hi
			}
		}
		s := sheetOf(len(steps))
		p := s.Formula.PartNamed("f")
		for _, name := range []string{"h_57_to_21", "h_57_to_5"} {
			f, _ := Find(OnStep, name)
			for _, step := range p.Steps {
				if v := *s.Value(f, Subject{On: OnStep, Part: p, Step: step}); !v.Absent &&
					!(v.Lo <= v.Hi && v.Lo >= 0) {
					t.Fatalf("%s of step %d: %v to %v", name, step.Index, v.Lo, v.Hi)
				}
			}
		}
	})
}
