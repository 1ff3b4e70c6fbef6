package recipe

import (
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/recipe/draft"
	"forebake/engine/source"
)

var update = flag.Bool("update", false, "write the formulas of the plain-text lists")

// TestLists converts lists written as cook books write them, of an
// invented scenario.
func TestLists(t *testing.T) {
	paths, err := filepath.Glob("testdata/*.txt")
	if err != nil || len(paths) < 20 {
		t.Fatalf("%d lists, %v", len(paths), err)
	}
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		d, err := Convert(text, options())
		if err != nil {
			t.Errorf("%s: %v", path, err)
			continue
		}
		if fault := holds(d); fault != "" {
			t.Errorf("%s: %s", path, fault)
		}
		golden := strings.TrimSuffix(path, ".txt") + ".hcl"
		if *update {
			if err := os.WriteFile(golden, []byte(d.Text), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(golden)
		if err != nil || d.Text != string(want) {
			t.Errorf("%s: %v\n%s\nwant\n%s", path, err, d.Text, want)
		}
	}
}

// TestNothingIsLost holds that every word and figure of the lists
// stands in what was made of them, in a value or in a comment.
func TestNothingIsLost(t *testing.T) {
	words := regexp.MustCompile(`\pL{3,}|\d+|[½¼¾⅓⅔]`)
	// Words of headings and of ways to say an amount, and figures that
	// became others: dozens, fractions of a pound.
	idle := strings.Fields(`for the and ingredients method instructions directions you need will
		makes
		make yield about around dozen one two three four half from with plus all taste step
		large approx warmed preparation tbs very batch pcs procedure
		den die teig pck prise fuellung guss tsk msk fyllning garnering`) // these are translated
	paths, _ := filepath.Glob("testdata/*.txt")
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		d, err := Convert(text, options())
		if err != nil {
			t.Fatal(path, err)
		}
		made := map[string]bool{}
		for _, w := range words.FindAllString(strings.ToLower(d.Text), -1) {
			made[w], made[strings.TrimSuffix(w, "s")] = true, true
		}
		for n, line := range strings.Split(string(text), "\n") {
			number := regexp.MustCompile(`^\W*(?:step *)?\d*[.):]`)
			line = number.ReplaceAllString(strings.ToLower(line), "")
			for _, w := range words.FindAllString(line, -1) {
				if !made[w] && !made[strings.TrimSuffix(w, "s")] && !slices.Contains(idle, w) {
					t.Errorf("%s:%d: %q is lost of %q", path, n+1, w, line)
				}
			}
		}
	}
}

func options() formula.Options { return formula.Options{Larder: larder.New()} }

// holds checks what is promised of every draft: its file parses,
// a check refuses nothing in it, and what is doubtful stands in
// a comment.
func holds(d Draft) string {
	file := source.New("f.hcl", []byte(d.Text))
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		return problems[0].String() + "\n" + d.Text
	}
	r := &reading.Reader{File: file}
	read.Formula(r, body.Blocks[0], options())
	lines := strings.Split(d.Text, "\n")
	for _, p := range r.Problems {
		return p.String() + "\n" + lines[p.Place.Line()-1]
	}
	for _, doubt := range d.Doubts {
		if doubt.Text == "" || !strings.Contains(d.Text, draft.Plain(doubt.Text)) {
			return "a doubt that is in no comment: " + doubt.Text
		}
	}
	return ""
}

func TestRefused(t *testing.T) {
	for text, want := range map[string]string{
		"":                              "no line of this gives an ingredient",
		"Enjoy your meal":               "no line of this gives an ingredient",
		"500 g \x00":                    "no plain text",
		"\xff500 g flour":               "no plain text",
		strings.Repeat("a", MaxBytes+1): "bytes long",
	} {
		_, err := Convert([]byte(text), options())
		if err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%.20q: %v", text, err)
		}
	}
}

// TestIngredientLines holds how single lines of a list are read.
func TestIngredientLines(t *testing.T) {
	for text, want := range map[string]string{
		"500 g bread flour":       `"bread flour" = "500 g"`,
		"500g bread flour":        `"bread flour" = "500 g"`,
		"2 1/4 tsp instant yeast": `"instant yeast" = "2 1/4 tsp"`,
		"½ cup sugar":             `"sugar" = "½ cup"`,
		"1 cup 2 tbsp sugar":      `"sugar" = "1 cup 2 tbsp"`,
		"1 1/2 cups whole milk, warm": `"whole milk" = { amount = "1 1/2 cups", ` +
			`note = "warm" }`,
		"2 cups (250 g) bread flour":   `"bread flour" = "250 g"`,
		"200-220 g whole milk":         `"whole milk" = "200 to 220 g"`,
		"1 stick unsalted butter":      `"unsalted butter" = "4 oz"`,
		"2 sticks unsalted butter":     `"unsalted butter" = "8 oz"`,
		"1 sachet instant yeast":       `"instant yeast" = "7 g"`,
		"2 x 7g sachets instant yeast": `"instant yeast" = "14 g"`,
		"a pinch of salt":              `"salt" = "0.1 to 1 g"`,
		"pinch of salt (about 5g)":     `"salt" = "5g"`,
		"a good pinch of salt":         `"salt" = "0.1 to 1 g"`,
		"a handful of pecans, chopped": `"pecans" = { amount = "20 to 60 g", ` +
			`as = "chopped" }`,
		"handful of pecans (about 50 g)": `"pecans" = "50 g"`,
		"a few drops of vanilla extract": `"vanilla extract" = "0.06 to 0.5 ml"`,
		"salt, to taste":                 `"salt" = "?"`,
		"2 egg yolks":                    `"egg yolks" = "2 pieces"`,
		"3 eggs":                         `"eggs" = "3 pieces"`,
		"1 1/2 T sugar":                  `"sugar" = "1 1/2 tbsp"`,
		"2 t salt":                       `"salt" = "2 tsp"`,
		"Juice of 2 lemons":              `"lemon juice" = "96 g"`,
		"1 lb 2 oz bread flour":          `"bread flour" = "1 lb 2 oz"`,
		"450g/1lb bread flour":           `"bread flour" = "450 g"`,
		"1 pint whole milk":              `"whole milk" = "?"`,
		"3 medium bananas":               `"medium bananas" = "3 pieces"`,
		"150 ml lukewarm milk": `"lukewarm milk" = { amount = "150 ml", ` +
			`temp = "35 to 40 C" }`,
		"1 cup whole milk (110°F)": `"whole milk" = { amount = "1 cup", temp = "110 F" }`,
		"60 g walnuts, finely chopped": `"walnuts" = { amount = "60 g", ` +
			`as = "finely chopped" }`,
		"30 g yeast":                         `"fresh yeast" = "30 g"`,
		"7 g yeast":                          `"instant yeast" = "7 g"`,
		"2 tbsp butter or margarine":         `"butter" = "2 tbsp"`,
		"100 g \"odd\" ${flour}":             `"\"odd\" $${flour}" = "100 g"`,
		"20 g butter, plus more for the tin": `"butter" = "20 g"`,
		"1,5 kg bread flour":                 `"bread flour" = "1,5 kg"`,
		"heaped tsp cinnamon":                ``,
		"1 heaped tsp cinnamon":              `"cinnamon" = "1 tsp"`,
		"Flour for dusting":                  ``,
		"four eggs":                          `"eggs" = "4 pieces"`,
	} {
		d, err := Convert([]byte("Title\n\n9 g salted butter\n"+text+"\n"), options())
		if err != nil {
			t.Errorf("%s: %v", text, err)
			continue
		}
		squeezed := strings.Join(strings.Fields(d.Text), " ")
		if want == "" {
			if !strings.Contains(squeezed, "# ") {
				t.Errorf("%s: left out silently", text)
			}
			continue
		}
		if !strings.Contains(squeezed, want) {
			t.Errorf("%s: no %s in\n%s", text, want, d.Text)
		}
	}
}

// FuzzConvert holds the promise of Convert for any text.
func FuzzConvert(f *testing.F) {
	paths, _ := filepath.Glob("testdata/*.txt")
	for _, path := range paths {
		if text, err := os.ReadFile(path); err == nil {
			f.Add(text)
		}
	}
	opts := options()
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > 4<<10 {
			return
		}
		d, err := Convert(text, opts)
		if err != nil {
			if err.Error() == "" || d.Text != "" {
				t.Fatalf("an error that says nothing, or a file beside it: %v", err)
			}
			return
		}
		if fault := holds(d); fault != "" {
			t.Fatal(fault)
		}
	})
}
