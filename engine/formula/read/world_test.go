package read_test

import (
	"strings"
	"testing"

	"forebake/engine/formula"
)

// steps reads a dough with some steps, and gives their verbs.
func stepsOf(t *testing.T, more, steps string) (verbs string, f *formula.Formula, problems int) {
	t.Helper()
	f, found := readText(t, "formula \"f\" {\n"+more+" dough \"d\" {\n  ingredients = { "+
		"\"bread flour\" = \"1 kg\", \"butter\" = \"100 g\" }\n  steps = ["+steps+"]\n }\n}\n")
	var names []string
	for _, s := range f.Parts[0].Steps {
		names = append(names, s.Verb.Name)
	}
	return strings.Join(names, " "), f, len(found)
}

// A proof with work on the bench and a wait after it is the first rise; others stay the last.
func TestFirstRise(t *testing.T) {
	for _, c := range []struct{ steps, want string }{
		{`{ prove = "1 h" }, { knock_back = 1 }, { divide = 4 }, { shape = "balls" },
			{ prove = "45 min" }, { bake = "20 min" }`, "rest fold divide shape proof bake"},
		{`{ prove = "1 h" }, { sheet = "5 mm" }, { cut = 9 }, { proof = "30 min" },
			{ fry = "3 min" }`, "rest sheet divide proof cook"},
		{`{ proof = "1 h" }, { knock_back = true }, { proof = "1 h" }, { bake = "20 min" }`,
			"rest fold proof bake"},
		{`{ gare = "1 h" }, { mix = "2 min" }, { proof = "1 h" }`, "rest mix proof"},
		{`{ proof = "1 h" }, { score = "cross" }, { proof = "10 min" }, { bake = "20 min" }`,
			"proof score proof bake"}, // two waits of one last rise
		{`{ shape = "balls" }, { proof = "1 h" }, { bake = "20 min" }`, "shape proof bake"},
		{`{ proof = "1 h" }, { shape = "balls" }, { bake = "20 min" }`, "proof shape bake"},
		{`{ proof = "1 h" }, { bake = "20 min" }, { cut = 9 }, { cool = "1 h" }`,
			"proof bake divide cool"},
	} {
		got, f, problems := stepsOf(t, "", c.steps)
		if got != c.want || problems > 0 {
			t.Errorf("%s: %s, want %s", c.steps, got, c.want)
		}
		told := 0
		for _, s := range f.Said {
			told += strings.Count(s.Text, "first rise")
		}
		if (told == 1) != strings.HasPrefix(c.want, "rest") {
			t.Errorf("%s: told %d times: %v", c.steps, told, f.Said)
		}
	}
}

// What covers or turns is work of the hands, a wait, a fold or a filling, by what is said of it.
func TestCovering(t *testing.T) {
	for steps, want := range map[string]string{
		`{ wrap = "in baking paper" }`:           "handle",
		`{ cover = "towel, 10 min" }`:            "rest",
		`{ turn = "90 degrees" }`:                "handle",
		`{ turn = "single" }`:                    "fold",
		`{ wrap = "butter" }`:                    "fill",
		`{ bake = "1 h" }, { cover = "butter" }`: "bake brush",
	} {
		if got, _, problems := stepsOf(t, "", steps); got != want || problems > 0 {
			t.Errorf("%s: %s, want %s", steps, got, want)
		}
	}
}

// Turns by their kinds are counted once the butter is in; before it the word is the butter's.
func TestLaminateAfterTheButter(t *testing.T) {
	got, f, problems := stepsOf(t, "",
		`{ lock_in = "butter" }, { laminate = "1 double, 1 simple" }`)
	if got != "fill fold" || problems > 0 || f.Parts[0].Steps[1].Measure.Hi != 2 {
		t.Errorf("%s: %v", got, f.Parts[0].Steps[1].Measure)
	}
}

// A tin beside the steps is that of the last step that can take one before the bake; two are asked.
func TestTinOfAPart(t *testing.T) {
	for _, c := range []struct {
		steps string
		into  int
		ok    bool
	}{
		{`{ shape = "loaf" }, { proof = "1 h" }, { bake = "1 h" }`, 1, true},
		{`{ shape = "loaf" }, { bake = "1 h" }`, 0, true},
		{`{ bake = "1 h" }`, 0, true},
		{`{ mix = "1 min" }`, 0, false},
		{`{ shape = "loaf", tin = "9x5 inch loaf tin" }, { bake = "1 h" }`, 0, false},
	} {
		f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n  ingredients = { "+
			"\"bread flour\" = \"1 kg\" }\n  steps = ["+c.steps+
			"]\n  pan = \"9x5 inch loaf tin\"\n }\n}\n")
		if (len(problems) == 0) != c.ok || f.Parts[0].Steps[c.into].Tin == "" && c.ok ||
			c.ok && len(f.Said) < 2 {
			t.Errorf("%s: %v", c.steps, problems)
		}
	}
}

// Percent of flours that add up to 100 are the grams that makes comes to, told; others are asked.
func TestPercentOfMakes(t *testing.T) {
	for _, c := range []struct {
		makes, flours string
		grams         float64 // of the bread flour, g; 0 where it is asked
	}{
		{`"2 loaves of 500 g"`, `"bread flour" = "100 %", "water" = "100 %"`, 500},
		{`"1 kg"`, `"bread flour" = "80 %", "rye flour" = "20 %", "water" = "100 %"`, 400},
		{`"1 kg"`, `"bread flour" = "100 %", "water" = "50 %", "butter" = "100 g"`, 600},
		{`"1 kg"`, `"bread flour" = "80 %", "rye flour" = "30 %", "water" = "60 %"`, 0},
		{`"12 pieces"`, `"bread flour" = "100 %", "water" = "60 %"`, 0},
		{`"1 kg"`, `"bread flour" = "100 %", "water" = "60 %", "butter" = "2 kg"`, 0},
	} {
		f, problems := readText(t, "formula \"f\" {\n makes = "+c.makes+"\n dough \"d\" {\n  "+
			"ingredients = { "+c.flours+" }\n }\n}\n")
		if c.grams == 0 {
			if len(problems) != 1 {
				t.Errorf("%s %s: %v", c.makes, c.flours, problems)
			}
			continue
		}
		if g := f.Parts[0].Ingredients[0].Grams.FixedG; len(problems) > 0 || !g.IsPoint() ||
			g.Lo < c.grams-0.01 || g.Lo > c.grams+0.01 || len(f.Said) == 0 {
			t.Errorf("%s %s: %v, %v", c.makes, c.flours, g, problems)
		}
	}
}
