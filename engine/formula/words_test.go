package formula_test

import (
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/source"
)

// Another word for a verb reads as that verb.
func TestAnotherWordForAVerb(t *testing.T) {
	rest, _ := formula.FindVerb("rest")
	again := *rest
	again.Also = []string{"linger", "stand"}
	for _, word := range again.Also {
		formula.VerbWords[word] = formula.StepWord{Verb: &again}
		defer delete(formula.VerbWords, word)
	}
	text := `formula "f" {
  dough "d" {
    ingredients = { "bread flour" = "1000 g" }
    steps       = [{ at = "room", linger = "1 h" }, { "stand" = "2 h", at = "27 C" }]
  }
}
`
	file := source.New("f.hcl", []byte(text))
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: file}
	f := read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
	if len(r.Problems) > 0 {
		t.Fatal(r.Problems)
	}
	for i, s := range f.Parts[0].Steps {
		if s.Verb.Name != rest.Name || s.Time.Mid() != float64(60*(i+1)) {
			t.Errorf("step %d is %s", i, s.Line())
		}
	}
}

// A word of the craft is read as the verb that it means, or answered
// with a line that reads.
func TestWordsOfTheCraft(t *testing.T) {
	for word, want := range map[string]string{"knead": "mix", "beat": "mix",
		"bulk": "rest", "ferment": "rest", "retard": "chill", "prove": "proof", "scale": "divide",
		"portion": "divide"} {
		if v, ok := formula.FindVerb(word); !ok || v.Name != want {
			t.Errorf("%s is not %s", word, want)
		}
	}
	faults := func(steps string) []source.Problem {
		file := source.New("f.hcl", []byte("formula \"f\" {\n  dough \"d\" {\n"+
			"    ingredients = { \"bread flour\" = \"1000 g\" }\n    steps = [ "+steps+
			" ]\n  }\n}\n"))
		body, problems := source.Parse(file)
		if len(problems) > 0 {
			t.Fatal(steps, problems)
		}
		r := &reading.Reader{File: file}
		read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
		return r.Problems
	}
	for _, word := range said.OtherSteps() {
		line := said.OtherStep(word)
		if _, ok := formula.VerbWords[word]; ok {
			t.Errorf("%s is a verb too", word)
		}
		got := faults("{ \"" + word + "\" = \"x\" }")
		if len(got) != 1 || !strings.Contains(got[0].Text, line) {
			t.Errorf("%s: %v", word, got)
		}
		// Lines of one whole step read as they stand, but for parts
		// that the test has not.
		if !strings.HasPrefix(line, "{ ") || strings.Contains(line, "wash =") ||
			strings.Contains(line, "fill =") {
			continue
		}
		step, _, _ := strings.Cut(line, " }")
		if got := faults("{ mix = \"5 min\" }, " + step + " }"); len(got) > 0 {
			t.Errorf("%s: told to write %s }, but %v", word, step, got)
		}
	}
}

// Values that are words, and shapes of a value that the reader does not
// take, are answered with the line to write.
func TestWordsForValues(t *testing.T) {
	for _, c := range []struct{ ingredient, step, want string }{
		{"", `{ rest = "until doubled" }`, ""},
		{"", `{ bake = "until golden", at = "180 C" }`, ""},
		{"", `{ rest = "overnight" }`, ""},
		{"", `{ bake = "20 min", at = "220 C to 180 C" }`,
			""},
		{"", `{ bake = "20 min", at = "180 C to 190 C" }`, ""},
		{"", `{ sheet = "30 x 45 cm" }`, ""},
		{"", `{ sheet = "5 mm", wide = "12 x 18 in" }`, `write "18 in", or "12 in"`},
		{"", `{ proof = "1 h", at = "a warm place" }`, ""},
		{"", `{ bake = "1 h", at = "gas mark 4" }`, ""},
		{"", `{ bake = "1 h", at = "hot oven" }`, ""},
		{"", `{ boil = "2 min" }`, ""},
		{"", `{ fry = "2 min", by = "pan" }`, "says how it is done, by frying"},
		{"", `{ bake = "20 min", at = "180 C fan" }`, ""},
		{"", `{ bake = "20 min", at = "375 degrees" }`, ""},
		{"", `{ fold = "4 times" }`, ""},
		{"", `{ divide = "in half" }`, ""},
		{"", `{ rest = "1 h", covered = "cling film" }`, ""},
		{"", `{ bake = "20 min", temp = "180 C" }`, ""},
		{"", `{ tin = "loaf tin" }`, ""},
		{"", `{ slice = "40 mm" }`, "for a number of pieces write { divide = 12 }"},
		{"", `{ turn = "letter" }`, ""},
		{`"nutmeg" = "a pinch"`, "", ""},
		{`"vanilla sugar" = "1 sachet"`, "", ""},
		{`"baking powder" = "1 sachet"`, "", ""}, // bounded and told
		{`"instant yeast" = "1 packet"`, "", ""},
		{`"fresh yeast" = "1 packet"`, "", "read the label"},
		{`"butter" = "1/2 stick"`, "", ""},
		{`"sugar" = "1 stick"`, "", `a stick is a measure of butter; weigh this one, or write "?"`},
		{`"eggs" = "2 large"`, "", ""},
		{`"whole milk" = { amount = "1 cup (240 g)", temp = "lukewarm" }`, "", ""},
		{"", `{ divide = "4" }`, ""},
		{"", `{ twist = "knots" }`, ""},
		{"", `{ slice = "12" }`, ""},
		{"", `{ "knock back" = "1 min" }`, ""},
		{`"whole milk" = "1/2 pint"`, "", `write "0.5 US pint", or "0.5 UK pint"`},
		{`"whole milk" = "1/2 pint"`, `{ bake = "1 h", at = "gas mark 4" }`, ""},
		{`"corn flour" = "100 g"`, "", "can mean several things"},
		{"", `{ proof = "1 h", at = "28 C", humidity = "80 %" }`, ""},
		{"", `{ bake = "20 min", at = "200 C", steam = true }`, ""},
		{"", `{ dust = "flour" }`, ""},
		{"", `{ dust = "sesame seeds" }`, ""},
		{`"egg" = 2`, "", ""},
		{`"egg" = "2"`, "", ""},
		{`"salt" = "to taste"`, "", ""},
		{`"yeast" = "7 g"`, "", `"yeast" can mean several things`},
		{`"dry yeast" = "7 g"`, "", ""},
	} {
		text := "formula \"f\" {\n  dough \"d\" {\n" +
			"    ingredients = { \"bread flour\" = \"1000 g\"\n" +
			c.ingredient + " }\n    steps = [ { mix = \"5 min\" }, " + c.step + " ]\n  }\n}\n"
		file := source.New("f.hcl", []byte(text))
		body, problems := source.Parse(file)
		if len(problems) > 0 {
			t.Fatal(text, problems)
		}
		r := &reading.Reader{File: file}
		f := read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
		if strings.Contains(c.step, "until ") || strings.Contains(c.step, "30 x 45") ||
			strings.Contains(c.ingredient+c.step, "a warm") ||
			strings.Contains(c.ingredient, "a pinch") {
			if len(f.Said) != 1 {
				t.Errorf("%s%s: assumed %v", c.ingredient, c.step, f.Said)
			}
		}
		switch {
		case c.want == "" && len(r.Problems) > 0:
			t.Errorf("%s%s: %v", c.ingredient, c.step, r.Problems)
		case c.want != "" && (len(r.Problems) != 1 ||
			!strings.Contains(r.Problems[0].Text, c.want)):
			t.Errorf("%s%s: %v, want %s", c.ingredient, c.step, r.Problems, c.want)
		}
	}
}

// A word that says the way loses none of it, and one of two rows means
// the second after heat.
func TestWordsThatSayTheWay(t *testing.T) {
	file := source.New("f.hcl", []byte(`formula "f" {
  dough "d" {
    ingredients = { "bread flour" = "1000 g", "butter" = { amount = "100 g", reserve = "all" } }
    steps       = [{ mix = "5 min" }, { glaze = "w" }, { deep-fry = "2 min" }, { glaze = "w" },
      { proofing = "1 h" }, { pan = "x", tin = "lof tin" }]
  }
  wash "w" { ingredients = { "egg" = "1" } }
}
`))
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: file}
	opts := formula.Options{Larder: larder.New(), Tins: []string{"cake ring"}}
	f := read.Formula(r, body.Blocks[0], opts)
	if len(r.Problems) > 0 {
		t.Fatal(r.Problems)
	}
	s := f.Parts[0].Steps
	if s[1].Verb.Name != "wash" || !s[2].InHotFat() || s[3].Verb.Name != "brush" ||
		s[4].Verb.Name != "proof" {
		t.Errorf("%v, %v, %v, %v", s[1].Line(), s[2].Line(), s[3].Line(), s[4].Line())
	}
	if in := f.Parts[0].Ingredients[1]; in.Held != in.Grams || in.Held.FixedG.Lo != 100 {
		t.Errorf("held back %v of %v", in.Held, in.Grams)
	}
	if len(f.OpenTins) != 1 || len(f.Said) != 2 {
		t.Errorf("tins %v, said %v", f.OpenTins, f.Said)
	}
	r = &reading.Reader{File: file}
	opts.Tins = []string{"loaf tin"}
	read.Formula(r, body.Blocks[0], opts)
	if len(r.Problems) != 1 ||
		r.Problems[0].Text != `no tin "lof tin" in the house; nearest is loaf tin` {
		t.Errorf("%v", r.Problems)
	}
}

// A filling beside another verb is a step of its own: before what
// closes it in, after what rolls the dough flat for it. Three verbs at
// once are refused.
func TestFillingBesideAVerb(t *testing.T) {
	steps := func(line string) (names []string, faults int) {
		file := source.New("f.hcl", []byte("formula \"f\" {\n  dough \"d\" {\n"+
			"    ingredients = { \"bread flour\" = \"500 g\" }\n    steps = ["+line+"]\n  }\n  "+
			"filling \"jam\" { ingredients = { \"apricot jam\" = \"100 g\" } }\n}\n"))
		body, _ := source.Parse(file)
		r := &reading.Reader{File: file}
		f := read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
		for i, s := range f.Parts[0].Steps {
			if s.Index != i {
				t.Errorf("%s: step %d has index %d", line, i, s.Index)
			}
			names = append(names, s.Verb.Name)
		}
		return names, len(r.Problems)
	}
	for line, want := range map[string]string{
		`{ shape = "balls", fill = "jam" }`:                  "fill shape",
		`{ shape = "balls", fill = "jam", amount = "60 g" }`: "fill shape",
		`{ fill = "jam", shape = "balls", pieces = 12 }`:     "fill shape",
		`{ sheet = "5 mm", fill = "jam" }`:                   "sheet fill",
		`{ rest = "10 min", at = "20 C" }, { fill = "jam" }`: "rest fill",
	} {
		if got, faults := steps(line); strings.Join(got, " ") != want || faults > 0 {
			t.Errorf("%s: %v with %d faults, want %s", line, got, faults, want)
		}
	}
	if _, faults := steps(`{ shape = "balls", fill = "jam", rest = "1 h" }`); faults == 0 {
		t.Error("three verbs at once are read")
	}
	if _, faults := steps(`{ rest = "until relaxed", time = "a while or so" }`); faults != 0 {
		t.Error("words for a time are refused")
	}
	if _, faults := steps(`{ rest = "until relaxed", time = "7 or so" }`); faults == 0 {
		t.Error("a time that is none is swallowed behind a sign")
	}
}

// Steps that do not read leave no gap before one that may name a part.
func TestStepsThatDoNotRead(t *testing.T) {
	file := source.New("f.hcl", []byte(`formula "f" {
  dough "d" {
    ingredients = { "bread flour" = "500 g" }
    steps = [{ frob = "1" }, { frob = "2" }, { rest = "1 h" }, { dust = "jam" }]
  }
  filling "jam" { ingredients = { "apricot jam" = "100 g" } }
}
`))
	body, _ := source.Parse(file)
	r := &reading.Reader{File: file}
	f := read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
	for i, s := range f.Parts[0].Steps {
		if s.Index != i {
			t.Errorf("step %d has index %d", i, s.Index)
		}
	}
	if len(r.Problems) != 2 {
		t.Errorf("%v", r.Problems)
	}
}

// Each word of another language stands for a word that the verbs have.
func TestStepWordsMeanVerbs(t *testing.T) {
	said.StepWords(func(word, english string) {
		if formula.VerbWords[english].Verb == nil || formula.StepNamed(word).Verb == nil {
			t.Errorf("%q of %q is no step", english, word)
		}
	})
}
