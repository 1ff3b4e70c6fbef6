package read_test

import (
	"fmt"
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// readText reads the first formula of a text.
func readText(t *testing.T, text string) (*formula.Formula, source.Problems) {
	t.Helper()
	file := source.New("f.hcl", []byte(text))
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		t.Fatal(text, problems)
	}
	r := &reading.Reader{File: file}
	return read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()}), r.Problems
}

// What a home baker writes of an ingredient is read as the grams, the temperature and the
// item that it plainly means, and what was taken is told.
func TestIngredientsOfAHomeBaker(t *testing.T) {
	for _, c := range []struct{ line, item, grams, temp string }{
		{`"warm milk (110 F)" = "200 g"`, "whole milk", "200 to 200", "43.3 to 43.3"},
		{`"lauwarme Milch" = "200 g"`, "whole milk", "200 to 200", "35 to 40"},
		{`"melted butter" = "50 g"`, "unsalted butter", "50 to 50", "32 to 45"},
		{`"butter" = "50 g, softened"`, "unsalted butter", "50 to 50", "18 to 24"},
		{`"cold butter, cubed" = "50 g"`, "unsalted butter", "50 to 50", "2 to 8"},
		{`"soft brown sugar" = "50 g"`, "brown sugar", "50 to 50", ""},
		{`"yeast" = "21 g fresh"`, "fresh yeast", "21 to 21", ""},
		{`"flour T45" = "500 g, plus extra for dusting"`, "French type 45 flour", "500 to 500", ""},
		{`"salt" = "to taste"`, "salt", "0 to +Inf", ""},
		{`"eggs" = "2 pieces (L)"`, "egg", "100 to 100", ""},
		{`"raisins, soaked" = "80 g"`, "raisins", "80 to 80", ""},
		{`"water" = "260 g @ 30 C"`, "water", "260 to 260", "30 to 30"},
	} {
		f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n  ingredients = {\n"+
			" \"bread flour\" = \"1 g\"\n"+c.line+"\n}\n }\n}\n")
		if len(problems) > 0 {
			t.Errorf("%s: %v", c.line, problems)
			continue
		}
		in := f.Parts[0].Ingredients[1]
		temp := ""
		if in.Temp.Set {
			temp = fmt.Sprintf("%.3g to %.3g", in.Temp.Lo, in.Temp.Hi)
		}
		grams := fmt.Sprintf("%.4g to %.4g", in.Grams.FixedG.Lo, in.Grams.FixedG.Hi)
		if in.Item.Name != c.item && in.Item.Name != "large egg" || grams != c.grams ||
			temp != c.temp {
			t.Errorf("%s: %s, %s g, %s C", c.line, in.Item.Name, grams, temp)
		}
		if (temp != "" || grams == "0 to +Inf") && len(f.Said) == 0 {
			t.Errorf("%s: nothing is told", c.line)
		}
	}
}

// Two ingredients in one amount are read as a line each, unless the second has its own.
func TestTwoIngredientsInOneAmount(t *testing.T) {
	of := func(more string) *formula.Formula {
		f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n  ingredients = {\n"+
			"\"raisins\" = \"100 g, soaked in 20 g rum\"\n"+more+"}\n }\n}\n")
		if len(problems) > 0 || len(f.Said) == 0 {
			t.Fatal(problems, f.Said)
		}
		return f
	}
	for _, f := range []*formula.Formula{of(""), of("\"rum\" = \"20 g\"\n")} {
		p := f.Parts[0]
		if len(p.Ingredients) != 2 || p.Ingredients[1].Item.Name != "rum" || p.MassG.Hi != 120 {
			t.Errorf("%v, %v g", p.Ingredients, p.MassG)
		}
	}
}

// Steps of a home baker are read as what they plainly mean: the lines that the reader makes
// of them.
func TestStepsOfAHomeBaker(t *testing.T) {
	for line, want := range map[string]string{
		`{ roll = "into a 30 x 40 cm rectangle" }`: "sheet into a 30 x 40 cm rectangle",
		`{ roll = "4 mm" }`:                        "sheet 4 mm",
		`{ roll = "up tightly" }`:                  "roll up tightly",
		`{ cut = "9 rolls", tin = "9 inch square pan" }`: "divide 9 rolls; pan 9 inch " +
			"square pan, tin 9 inch square pan",
		`{ proof = "1 h", in = "9x5 inch loaf pan" }`:       "proof 1 h, tin 9x5 inch loaf pan",
		`{ cool = "1 h", on = "rack" }`:                     "cool 1 h, at room",
		`{ cool = "1 h", under = "tea towel" }`:             "cool 1 h, covered true",
		`{ bake = "30 min at 350F" }`:                       "bake 30 min, at 350F",
		`{ bake = "25 min bei 180 C Ober-/Unterhitze" }`:    "bake 25 min, at 180 C",
		`{ bake = "20-25 min at 190C / 170C fan / gas 5" }`: "bake 20-25 min, at 190C",
		`{ bake = "25 min, 180 C" }`:                        "bake 25 min, at 180 C",
		`{ bake = "180 C for 25 min" }`:                     "bake 25 min, at 180 C",
		`{ bake = "30 min", at = "375" }`:                   "bake 30 min, at 375",
		`{ rest = "1 h in the fridge" }`: "rest 1 h in the " +
			"fridge, at fridge",
		`{ chill = "overnight (12 hours)" }`:                    "chill 12 hours",
		`{ knock_back = true }`:                                 "fold 1",
		`{ divide = "12 squares of 10 cm" }`:                    "divide 12 squares of 10 cm",
		`{ mix = "5 min", rest = "10 min" }`:                    "mix 5 min; rest 10 min",
		`{ wash = "beaten egg" }`:                               "wash beaten egg",
		`{ brush = "with melted butter" }`:                      "brush with melted butter",
		`{ fry = "2 min", at = "170 C", in = "vegetable oil" }`: "cook 2 min, at 170 C, by frying",
	} {
		f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n"+
			"  ingredients = { \"bread flour\" = \"1000 g\" }\n  steps = [ "+line+" ]\n }\n}\n")
		var got []string
		for _, s := range f.Parts[0].Steps {
			shown, _, _ := strings.Cut(s.Line(), ", note ")
			got = append(got, shown)
		}
		if text := strings.Join(got, "; "); len(problems) > 0 || text != want {
			t.Errorf("%s: %s, want %s; %v", line, text, want, problems)
		}
	}
}

// What a step puts on without a part is a part, so that its allergens are told; a slip of a
// part's name is refused.
func TestImpliedPart(t *testing.T) {
	text := "formula \"f\" {\n dough \"d\" {\n  ingredients = { \"bread flour\" = \"1000 g\" }\n" +
		"  steps = [ { wash = %q } ]\n }\n wash \"egg wash\" { ingredients = { " +
		"\"egg\" = \"1\" } }\n}\n"
	f, problems := readText(t, fmt.Sprintf(text, "egg yolk and milk"))
	if len(problems) > 0 || len(f.Parts) != 3 || !f.Parts[2].Implied ||
		f.Parts[2].Kind != formula.Wash ||
		len(f.Parts[2].Ingredients) != 2 || !f.Parts[2].Ingredients[0].Amount.Open ||
		len(f.Said) != 1 {
		t.Errorf("%v: %v", problems, f.Parts)
	}
	if _, problems := readText(t, fmt.Sprintf(text, "egg wsh")); len(problems) != 1 {
		t.Errorf("a slip is read: %v", problems)
	}
	if f, problems := readText(t, fmt.Sprintf(text, "egg wash, twice")); len(problems) > 0 ||
		len(f.Parts) != 2 {
		t.Errorf("%v", problems)
	}
}

// A wait within the words of a step that takes no time is refused: its hours would be lost.
func TestNoWaitIsLost(t *testing.T) {
	for _, line := range []string{`{ place = "in the fridge overnight" }`,
		`{ shape = "balls, rest 20 min" }`} {
		_, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n"+
			"  ingredients = { \"bread flour\" = \"1000 g\" }\n  steps = [ "+line+" ]\n }\n}\n")
		if len(problems) != 1 || !strings.Contains(problems[0].Text, "is a step of its own") {
			t.Errorf("%s: %v", line, problems)
		}
	}
}

// Other words for keys, a part within a dough, one without a name, and a formula without a
// part are read and told.
func TestOtherShapesOfAFormula(t *testing.T) {
	for _, text := range []string{
		"formula \"f\" {\n title = \"x\"\n yield = \"12 rolls\"\n dough \"d\" {\n" +
			"  ingredients = { \"flour\" = \"1 kg\" }\n  method = [ { rest = \"1 h\" } ]\n }\n}\n",
		"formula \"f\" {\n makes = \"12 rolls\"\n dough \"d\" {\n" +
			"  ingredients = { \"bread flour\" = \"1 kg\" }\n  steps = [ { rest = \"1 h\" } ]\n" +
			"  glaze \"g\" { ingredients = { \"honey\" = \"10 g\" } }\n }\n}\n",
		"formula \"f\" {\n makes = \"12 rolls\"\n dough {\n" +
			"  ingredients = { \"bread flour\" = \"1 kg\" }\n" +
			"  steps = [ { rest = \"1 h\" } ]\n }\n}\n",
		"formula \"f\" {\n makes = \"12 rolls\"\n ingredients = { \"bread flour\" = \"1 kg\" }\n" +
			" steps = [ { rest = \"1 h\" } ]\n}\n",
	} {
		f, problems := readText(t, text)
		if len(problems) > 0 || f.Makes.Pieces != 12 || len(f.Parts[0].Steps) != 1 ||
			len(f.Said) == 0 {
			t.Errorf("%s: %v, %v", text, problems, f.Said)
		}
	}
}

// The size in a tin's name is the tin's, its height any.
func TestTinByItsName(t *testing.T) {
	f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n"+
		"  ingredients = { \"bread flour\" = \"1 kg\" }\n"+
		"  steps = [ { proof = \"1 h\", tin = \"9x5 inch loaf tin\" } ]\n }\n}\n")
	if len(problems) > 0 || len(f.OpenTins) != 1 || f.OpenTins[0].Size == nil ||
		f.OpenTins[0].Size.Sides[0].Lo != 9*25.4 {
		t.Errorf("%v %v", problems, f.OpenTins)
	}
	text := f.Said[0].Text
	if !strings.Contains(text, `house "our kitchen" { tin "9x5 inch loaf tin" {`) {
		t.Error(text)
	}
}

// A spoon of what a part and the larder both name is the larder's: a part is weighed.
func TestSpoonOfAName(t *testing.T) {
	f, problems := readText(t, "formula \"f\" {\n dough \"d\" {\n"+
		"  ingredients = { \"bread flour\" = \"1 kg\", \"sugar\" = \"3 tbsp\" }\n }\n"+
		" topping \"sugar\" { ingredients = { \"sugar\" = \"for rolling\" } }\n}\n")
	if len(problems) > 0 || f.Parts[0].Ingredients[1].Item == nil {
		t.Error(problems)
	}
}
