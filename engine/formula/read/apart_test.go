package read_test

import (
	"fmt"
	"strings"
	"testing"

	"forebake/engine/formula"
)

// What a line of a dough is for, where that is not the dough, keeps it out of the dough's weight.
func TestStandsApart(t *testing.T) {
	for line, want := range map[string]string{
		`"egg, to glaze" = "1"`:                               "apart",
		`"egg" = "1, to glaze"`:                               "apart",
		`"egg" = { amount = "1", note = "beaten, to glaze" }`: "apart",
		`"milk, for brushing" = "1 tbsp"`:                     "apart",
		`"flour, for dusting" = "a little"`:                   "apart",
		`"butter, for the tin" = "10 g"`:                      "apart",
		`"butter for greasing" = "?"`:                         "apart",
		`"sugar, for rolling" = "50 g"`:                       "apart",
		`"icing sugar, to serve" = "20 g"`:                    "apart",
		`"pearl sugar, for decoration" = "20 g"`:              "apart",
		`"icing sugar" = "for dusting"`:                       "apart",
		`"olive oil" = "2 tbsp + extra for brushing"`:         "in",
		`"sugar" = "50 g + some for rolling"`:                 "in",
		`"wheat flour" = "500 g, extra for dusting"`:          "in",
		`"extra flour, for dusting" = "20 g"`:                 "apart",
		`"eggs" = "2"`:                                        "in",
		`"butter" = "50 g, plus extra for the tin"`:           "in",
		`"rye flour, plus extra for dusting" = "500 g"`:       "in",
		`"butter" = "250 g, for rolling in"`:                  "in",
		`"nutmeg, for dusting" = "20 g"`:                      "in", // their dose is reckoned
	} {
		f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n  ingredients = {\n"+
			" \"bread flour\" = \"1000 g\"\n"+line+"\n}\n }\n}\n")
		if len(problems) > 0 {
			t.Errorf("%s: %v", line, problems)
			continue
		}
		in, got := f.Parts[0].Ingredients[1], "in"
		if in.Apart && in.Item != nil && in.Grams == (formula.Mass{}) &&
			!in.IsOpen() && len(f.Said) > 0 {
			got = "apart"
		}
		if got != want {
			t.Errorf("%s is %s, wanted %s", line, got, want)
		}
	}
}

// A brush takes what stands apart for it, else the usual amount of a thin coat.
func TestBrushTakesWhatStandsApart(t *testing.T) {
	for _, c := range []struct{ line, step, want string }{
		{`"egg, to glaze" = "1"`, "egg wash", "egg, to glaze 50 to 50 g"},
		{`"milk, to glaze" = "100 g"`, "milk", "milk, to glaze 100 to 100 g"},
		{`"salt" = "20 g"`, "beaten egg", "egg 10.2 to 61.2 g"},
		{`"salt" = "20 g"`, "25 g melted butter", "melted butter 25 to 25 g"},
		{`"salt" = "20 g"`, "apricot jam", "apricot jam 0 to +Inf g"},
	} {
		f, problems := readText(t, fmt.Sprintf("formula \"f\" {\n dough \"milk dough\" {\n"+
			"  ingredients = {\n \"bread flour\" = \"1000 g\"\n%s\n}\n"+
			" steps = [{ brush = %q }]\n }\n}\n", c.line, c.step))
		if len(problems) > 0 || len(f.Parts) != 2 {
			t.Errorf("%s: %v", c.step, problems)
			continue
		}
		in := f.Parts[1].Ingredients[0]
		g := in.Grams.FixedG
		if got := fmt.Sprintf("%s %g to %g g", in.Name, g.Lo, g.Hi); got != c.want {
			t.Errorf("%s: %s, wanted %s", c.step, got, c.want)
		}
	}
}

// A medium egg is the US one in US measures only, and which one is told.
func TestWhoseEggs(t *testing.T) {
	for text, want := range map[string]string{
		`"plain flour" = "500 g", "eggs" = "2 medium"`:             "102",
		`"bread flour" = "500 g", "medium eggs" = "2"`:             "102",
		`"all-purpose flour" = "4 cups", "eggs" = "2 medium"`:      "88",
		`"bread flour" = "500 g", "large eggs" = "2"`:              "100",
		`"strong white bread flour" = "500 g", "eggs" = "2 large"`: "120",
		`"bread flour" = "500 g", "size L eggs" = "2"`:             "120",
	} {
		f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n  ingredients = { "+text+
			" }\n }\n}\n")
		if len(problems) > 0 {
			t.Errorf("%s: %v", text, problems)
			continue
		}
		in := f.Parts[0].Ingredients[1]
		told := false
		for _, s := range f.Said {
			told = told || strings.Contains(s.Text, " egg is taken as ")
		}
		got := fmt.Sprint(in.Grams.FixedG.Mid())
		if got != want || told == strings.Contains(text, "size") {
			t.Errorf("%s: %s g, wanted %s; told %v", text, got, want, told)
		}
	}
}

// The words of pan name a tin as tin = does, and how many.
func TestTinInWords(t *testing.T) {
	for words, want := range map[string]string{
		"13 x 9 in tin":          "13 x 9 in tin 0",
		"2 x 2lb loaf tins":      "2lb loaf tin 2",
		"two 9x5 inch loaf pans": "9x5 inch loaf pan 2",
		"a lined tray":           " 0",
		"buttered tins":          " 0",
	} {
		f, problems := readText(t, fmt.Sprintf("formula \"f\" {\n dough \"d\" {\n"+
			"  ingredients = { \"bread flour\" = \"500 g\" }\n steps = [{ pan = %q }]\n }\n}\n",
			words))
		if len(problems) > 0 {
			t.Errorf("%s: %v", words, problems)
			continue
		}
		s, n := f.Parts[0].Steps[0], 0.0
		if s.Count != nil {
			n = s.Count.Lo
		}
		if got := fmt.Sprintf("%s %g", s.Tin, n); got != want {
			t.Errorf("%s: %s, wanted %s", words, got, want)
		}
	}
}

// British words of steps are read as what they mean, and told.
func TestBritishSteps(t *testing.T) {
	for line, want := range map[string]string{
		`{ fold_in = "fruit" }`: "mix fruit, with " +
			"currants and mixed peel",
		`{ rest = "1 h", at = "airing cupboard" }`:             "rest 1 h, at airing cupboard",
		`{ rest = "1 h", at = "room", until = "doubled" }`:     "rest 1 h, at room",
		`{ divide = "12 pieces of 70 g" }`:                     "divide 70 g, pieces 12",
		`{ bake = "9 min", at = "200 C" }, { roll = "sugar" }`: "brush sugar",
		`{ fry = "4 min" }, { roll = "sugar, for tossing" }`:   "brush sugar, for tossing",
	} {
		f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n  ingredients = {\n"+
			" \"flour\" = \"1000 g\"\n\"currants\" = \"100 g\"\n"+
			"\"mixed peel\" = \"50 g\"\n}\n steps = [ "+line+" ]\n }\n}\n")
		steps := f.Parts[0].Steps
		got, _, _ := strings.Cut(steps[len(steps)-1].Line(), ", note ")
		if len(problems) > 0 || got != want || len(f.Said) < 2 {
			t.Errorf("%s: %s, wanted %s; %v %v", line, got, want, problems, f.Said)
		}
	}
	f, problems := readText(t, "formula \"f\" {\n filling \"c\" {\n"+
		"  ingredients = { \"milk\" = \"1 kg\" }\n"+
		"  steps = [ { cook = \"5 min\", to = \"boiling\" }, "+
		"{ cook = \"5 min\", by = \"boiling\" } ]\n }\n}\n")
	s := f.Parts[0].Steps
	if len(problems) > 0 || s[0].Way == nil || s[0].Way != s[1].Way || s[0].To.Lo != s[1].To.Lo {
		t.Errorf("%v", problems)
	}
}
