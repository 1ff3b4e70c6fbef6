package read_test

import (
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"unicode"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// asks are the words by which a refusal says what to do.
var asks = regexp.MustCompile(`\b(write|add|nearest|known are|must ` +
	`be|leave|put|give|mend|name|make|take|needs?|start it with|the only one is|is the most|the ` +
	`units here are|the ways are|takes? no|at the most|are kept at|is read|check the number|` +
	`hold back|is missing (?:after|before)|should close|only|do not|on its own|` +
	`cannot|twice|belong)\b`)

var (
	written1 = regexp.MustCompile(`write (.*)$`)
	inQuotes = regexp.MustCompile(`"((?:[^"\\]|\\.)*)"`)
)

// refusals reads a text as a formula file.
func refusals(text []byte) (*source.File, source.Problems) {
	file := source.New("f.hcl", text)
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		return file, problems
	}
	r := &reading.Reader{File: file}
	for _, b := range body.Blocks {
		if b.Type == "formula" {
			read.Formula(r, b, formula.Options{Larder: larder.New(), Tins: []string{"long tin"}})
		}
	}
	return file, r.Problems
}

// checkRefusal holds that a refusal says what is wrong, where, and
// what to do, and that no amount that it offers differs from the one
// that is written.
func checkRefusal(file *source.File, p source.Problem) error {
	if p.Text == "" || p.Place.File == nil {
		return fmt.Errorf("%q has no place or says nothing", p.Text)
	}
	first := []rune(p.Text)[0]
	if unicode.IsUpper(first) && !strings.HasPrefix(p.Text, "HCL") ||
		strings.HasSuffix(p.Text, ".") {
		return fmt.Errorf("%q starts or ends like a sentence", p.Text)
	}
	if !asks.MatchString(p.Text) && p.Paste == "" {
		return fmt.Errorf("%q says nothing to do", p.Text)
	}
	at := string(file.Text[p.Place.Start:p.Place.End])
	was, fault := quantity.Read(strings.Trim(at, `"`),
		quantity.Amounts|formula.ForTime|formula.ForTemperature|formula.ForLength)
	said := written1.FindString(p.Text)
	if fault != nil || said == "" || strings.Contains(said, "such as") ||
		strings.Contains(said, "for example") {
		return nil
	}
	for _, m := range inQuotes.FindAllStringSubmatch(said, -1) {
		now, fault := quantity.Read(m[1],
			quantity.Amounts|formula.ForTime|formula.ForTemperature|formula.ForLength)
		if fault == nil && now.Kind == was.Kind && now.Interval != was.Interval &&
			!(now.Interval.Lo <= was.Lo && was.Hi <= now.Interval.Hi) {
			return fmt.Errorf("%q: the offer %q changes the amount %q", p.Text, m[1], at)
		}
	}
	return nil
}

func TestRefusalsOfBrokenFiles(t *testing.T) {
	paths, err := filepath.Glob("../../../testdata/broken/*.hcl")
	if err != nil || len(paths) < 50 {
		t.Fatalf("%d files, %v", len(paths), err)
	}
	n := 0
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		file, problems := refusals(text)
		for _, p := range problems {
			n++
			if err := checkRefusal(file, p); err != nil {
				t.Errorf("%s:%d: %v", filepath.Base(path), p.Place.Line(), err)
			}
		}
	}
	if n < 150 {
		t.Errorf("%d refusals", n)
	}
}

// TestRefusalsOfGeneratedLines writes what bakers write in each place
// of a formula, right and wrong.
func TestRefusalsOfGeneratedLines(t *testing.T) {
	amounts := []string{"2", "350", "1.000 g", "1,500 g", "1 stick", "25 cl", "1 pint",
		"2 T", "2 t",
		"1 c", "2 large", "a pinch", "2 dashes", "1 sachet", "1 cube", "3 leaves", "1 knob",
		"200 grm",
		"1 Tbs", "to taste", "as needed", "some", "1 handful", "2 heaped tsp", "100 g 200",
		"1/0 cup",
		"1e3 g", "12", "0 g", "-5 g", "5 kgg", "½", "1 cup 2 tbsp", "1 l 2 dl", "500 gr", "1 can",
		"2 floz", "1 gill", "3 x 7 g", "200 g or so", "200-", "g 200"}
	names := []string{"whole milk", "egg", "instant yeast", "unsalted butter", "salt",
		"yeast", "cream",
		"cheese", "hamm", "T46", "poolish"}
	values := map[string][]string{
		"at": {"350", "warm", "gas mark 4", "350 F, then 325 F", "220 C to 180 C", "oven",
			"30", "cold",
			"180 C fan", "-300 C", "20 C oven"},
		"core":     {"93", "done", "200", "93 F C"},
		"covered":  {"yes", "lightly"},
		"as":       {"loaf", "ball 20 mm", "slab", "log 70", "brick 10 x 10 mm"},
		"measured": {"doubled", "2x", "26", "11 C in 6 h"},
		"wide":     {"40", "12 x 18 in", "40 x 30 cm", "the long side"},
		"count":    {"two", "2.5", "about 4"},
		"by":       {"elbow", "my mixer", "fan"},
		"with":     {"buter", "the butter"},
	}
	steps := []string{`{ rest = "overnight" }`, `{ rest = "until doubled" }`, `{ rest = "1" }`,
		`{ rest = "an hour or so" }`, `{ bake = "20-25" }`, `{ bake = "until golden" }`,
		`{ bake = "25 minutes at 180" }`, `{ sheet = "5" }`, `{ sheet = "30 x 40 cm" }`,
		`{ sheet = "thin" }`, `{ divide = "12" }`, `{ divide = "twelve" }`, `{ fold = "twice" }`,
		`{ glaze = "x" }`, `{ plait = "3" }`, `{ fry = "2 min" }`, `{ laminate = "3" }`,
		`{ preheat = "180 C" }`, `{ kneed = "5 min" }`, `{ fill = "jam" }`, `{ fill = "d" }`,
		`{ mix = "5 min", rest = "1 h" }`, `{ time = "5 min" }`, `{ dust = "almonds" }`,
		`{ rest = 5 }`, `{ pan = 2 }`, `{ mix = "5 min", speed = "2" }`}
	try := func(ingredient, step string) {
		t.Helper()
		text := "formula \"f\" {\n  dough \"d\" {\n    ingredients = {\n" +
			"      \"bread flour\" = \"1000 g\"\n      \"butter\" = \"100 g\"\n" + ingredient +
			"\n    }\n    steps = [ { mix = \"5 min\" }, " +
			step + " ]\n  }\n}\n"
		file, problems := refusals([]byte(text))
		for _, p := range problems {
			if err := checkRefusal(file, p); err != nil {
				t.Errorf("%s%s: %v", ingredient, step, err)
			}
		}
	}
	for _, name := range names {
		for _, a := range amounts {
			try(fmt.Sprintf("      %q = %q", name, a), "")
		}
	}
	for key, list := range values {
		for _, v := range list {
			for _, verb := range []string{"rest", "bake", "chill", "cool", "cook", "proof", "mix",
				"sheet"} {
				own := "20 min"
				if verb == "sheet" {
					own = "5 mm"
				}
				try("", fmt.Sprintf("{ %s = %q, %s = %q }", verb, own, key, v))
			}
		}
	}
	for _, s := range steps {
		try("", s)
	}
}

// The five pieces of advice that changed an amount are gone.
func TestNoOfferChangesTheAmount(t *testing.T) {
	for _, c := range []struct{ name, amount, want string }{
		{"egg", "2", ""},
		{"whole milk", "25 cl", ""},
		{"unsalted butter", "1 stick", ""},
		{"salt", "1.000 g", `write "1000 g", or "1 g"`},
	} {
		_, problems := refusals([]byte(fmt.Sprintf("formula \"f\" {\n  dough \"d\" {\n"+
			"    ingredients = {\n \"bread flour\" = \"500 g\"\n%q = %q\n}\n  }\n}\n", c.name,
			c.amount)))
		said := ""
		if len(problems) > 0 {
			said = problems[0].Text
		}
		if c.want == "" && said != "" || !strings.Contains(said, c.want) {
			t.Errorf("%s = %s: %s, want %s", c.name, c.amount, said, c.want)
		}
	}
	_, problems := refusals([]byte("formula \"f\" {\n  dough \"d\" {\n" +
		"    ingredients = { \"bread flour\" = \"500 g\" }\n" +
		"    steps = [ { bake = \"20 min\", at = \"272\" } ]\n  }\n}\n"))
	if len(problems) != 1 || !strings.Contains(problems[0].Text,
		`write "272 C", or "272 F" if it is Fahrenheit`) {
		t.Errorf("at = 272: %v", problems)
	}
}
