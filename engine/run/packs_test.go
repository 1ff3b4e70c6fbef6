package run

import (
	"io/fs"
	"os"
	"path/filepath"
	"testing"
	"testing/fstest"

	"forebake/engine/files"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/larder"
	"forebake/engine/rule"
	"forebake/engine/source"
	"forebake/rules"
)

// What is seen of a left-out pack is what its reader would say.
func TestSafetyIsSeenWithoutReading(t *testing.T) {
	figures, err := fs.ReadFile(rules.Files, figureFile+".hcl")
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range PackNames(rules.Files) {
		text, err := fs.ReadFile(rules.Files, name+".hcl")
		if err != nil {
			t.Fatal(err)
		}
		o := rule.Options{
			Formula: formula.Options{Larder: larder.New()},
			Version: "0.1.0",
			Shipped: true,
		}
		drafts := []*rule.Draft{
			rule.Open(figureFile, []*source.File{source.New(figureFile, figures)}, o),
			rule.Open(name, []*source.File{source.New(name, text)}, o),
		}
		p, problems := drafts[1].Read(rule.Figures(drafts))
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		if p.Safety != isSafety(text) {
			t.Errorf(
				"pack %s is of food safety: %v, and is seen as %v",
				name,
				p.Safety,
				isSafety(text),
			)
		}
	}
	for text, want := range map[string]bool{
		"food_safety = true\n": true, "about = \"a\"\nfood_safety\t=  true # all of it\n": true,
		"food_safety = false\n": false, "# food_safety = true\n": false,
		"about = \"food_safety = true\"\n": false, "food_safety = trueish": false, "": false,
	} {
		if isSafety([]byte(text)) != want {
			t.Errorf("%q is not seen as %v", text, want)
		}
	}
}

const coldRule = `rule "dairy-warm" {
  on     = "ingredient"
  level  = "stop"
  limits = { cold_c = "kitchen.cold_hold_c" }
  when   = "ingredient.class == 'dairy' && ingredient.temp_c > limit.cold_c"
  say    = "{ingredient.temp_c} is over {limit.cold_c}."
  why    = "It may grow something."
  source = "common practice"
}
`

// A house that leaves out a shipped food-safety pack is told so with
// the place; one that names it, or no packs, is not. A waiver of a rule
// in it waits with a notice, and a set block for it stays an error.
func TestFoodSafetyLeftOut(t *testing.T) {
	cautions, err := fs.ReadFile(rules.Files, "cautions.hcl")
	if err != nil {
		t.Fatal(err)
	}
	shipped := fstest.MapFS{
		"cautions.hcl": {Data: cautions},
		"figures.hcl":  {},
		"cold.hcl":     {Data: []byte("about = \"cold\"\nfood_safety = true\n\n" + coldRule)},
		"dry.hcl":      {Data: []byte("about = \"dry\"\n")},
	}
	const formulaText = "formula \"f\" {\n  dough \"d\" {\n" +
		"    ingredients = { \"bread flour\" = \"100 g\", \"whole milk\" = { amount = \"60 g\", " +
		"temp = \"8 C\" } }\n  }\n}\n"
	for _, c := range []struct {
		name, house         string
		unchecked, notices  int
		problems, stop, set int
	}{
		{"none", "", 0, 0, 0, 1, 0},
		{"no packs named", "house \"h\" {\n}\n", 0, 0, 0, 1, 0},
		{"named", "house \"h\" {\n  packs = [\"cold\"]\n}\n", 0, 0, 0, 1, 0},
		{"left out", "house \"h\" {\n  packs = [\"dry\"]\n}\n", 1, 0, 0, 0, 0},
		{"left out, and waived", "house \"h\" {\n  packs = [\"dry\"]\n" +
			"  waive \"dairy-warm\" { because = \"we have no milk\" }\n}\n", 1, 1, 0, 0, 0},
		{"left out, and set", "house \"h\" {\n  packs = [\"dry\"]\n" +
			"  set \"dairy-warm\" { level = \"note\" }\n}\n", 0, 0, 1, 0, 0},
		{"waived", "house \"h\" {\n  waive \"dairy-warm\" { because = \"we have no milk\" }\n}\n",
			0, 0, 0, 0, 1},
		{"a code of the place", "house \"h\" {\n  kitchen { code = \"uk\" }\n}\n", 0, 0, 0, 0, 0},
	} {
		dir := t.TempDir()
		if c.house != "" {
			err := os.WriteFile(filepath.Join(dir, house.FileName), []byte(c.house), 0o666)
			if err != nil {
				t.Fatal(err)
			}
		}
		houses := &Houses{Shipped: shipped, Version: "0.1.0", Texts: files.Disk{}}
		res := Do(houses, []Input{{Name: "f.hcl", Text: []byte(formulaText), Dir: dir}}, Options{})
		if len(res.Unchecked) != c.unchecked || len(res.Notices) != c.notices ||
			len(res.Problems) != c.problems ||
			res.Totals.Stop != c.stop ||
			res.Totals.Waived != c.set {
			t.Errorf(
				"%s: unchecked %v, notices %q, problems %v, totals %+v",
				c.name,
				res.Unchecked,
				res.Notices,
				res.Problems,
				res.Totals,
			)
		}
		for _, u := range res.Unchecked {
			if u.Pack != "cold" || u.Place.Line() != 2 {
				t.Errorf("%s: %+v", c.name, u)
			}
		}
	}
}
