package engine_test

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine"
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/house"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// readFormula reads the first formula of a text in the default house.
func readFormula(t interface{ Fatalf(string, ...any) }, text []byte) *formula.Formula {
	file := source.New("f.hcl", text)
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		t.Fatalf("%v\n%s", problems, text)
	}
	r := &reading.Reader{File: file}
	f := read.Formula(r, body.Blocks[0], house.Default().FormulaOptions())
	if len(r.Problems) > 0 {
		t.Fatalf("%v\n%s", r.Problems, text)
	}
	return f
}

// scaleText scales a text in the default house.
func scaleText(e *engine.Engine, t interface{ Fatalf(string, ...any) }, text []byte,
	want engine.Size) []byte {
	res := e.Scale(engine.Input{Name: "f.hcl", Text: text, Dir: os.TempDir()}, "", want)
	if len(res.Problems) > 0 {
		t.Fatalf("%v\n%s", res.Problems, text)
	}
	return res.Text
}

// TestScalePublished holds scaling to published worked examples.
func TestScalePublished(t *testing.T) {
	e := engine.New()
	raw, err := os.ReadFile("../testdata/tables/scaling.csv")
	if err != nil {
		t.Fatal(err)
	}
	r := csv.NewReader(bytes.NewReader(raw))
	r.Comment = '#'
	rows, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	grams := func(text string) (name string, g float64) {
		at := strings.IndexAny(text, "0123456789")
		q, fault := quantity.Read(text[at:], quantity.Of(quantity.Mass))
		if fault != nil {
			t.Fatal(text, fault.Text)
		}
		return strings.TrimSpace(text[:at]), q.Lo
	}
	if len(rows) < 6 {
		t.Fatal("rows are missing")
	}
	for _, row := range rows[1:] {
		var list strings.Builder
		for _, one := range strings.Split(row[1], "; ") {
			at := strings.IndexAny(one, "0123456789")
			fmt.Fprintf(&list, "      %q = %q\n", strings.TrimSpace(one[:at]), one[at:])
		}
		text := fmt.Sprintf(
			"formula \"f\" {\n  dough \"d\" {\n    ingredients = {\n%s    }\n  }\n}\n",
			list.String())
		var want engine.Size
		for _, ask := range strings.Split(row[2], "; ") {
			word, amount, _ := strings.Cut(ask, " ")
			switch word {
			case "flour":
				want.FlourG, err = engine.ReadMass("--flour", amount)
			case "total":
				want.TotalG, err = engine.ReadMass("--total", amount)
			case "loss":
				want.HasLoss = true
				want.Loss, err = engine.ReadLoss("--loss", amount)
			}
			if err != nil {
				t.Fatal(err)
			}
		}
		got := readFormula(t, scaleText(e, t, []byte(text), want))
		var tolerance float64
		if _, err := fmt.Sscan(row[4], &tolerance); err != nil {
			t.Fatal(err)
		}
		for _, one := range strings.Split(row[3], "; ") {
			name, g := grams(one)
			found := false
			for _, in := range got.Parts[0].Ingredients {
				if in.Name != name {
					continue
				}
				found = true
				if is := in.Grams.Grams(in.Part.FlourG).Mid(); math.Abs(is-g) > tolerance {
					t.Errorf("%s: %s comes to %.2f g, and %.2f g is published", row[0], name, is, g)
				}
			}
			if !found {
				t.Errorf("%s: no %s", row[0], name)
			}
		}
	}
}

// TestScaleRoundTrip holds that a formula scaled to 400 pieces and back
// keeps its percentages, to the step of the kitchen's scale.
func TestScaleRoundTrip(t *testing.T) {
	e := engine.New()
	rapid.Check(t, func(t *rapid.T) {
		pieces := rapid.IntRange(1, 100).Draw(t, "pieces")
		grams := func(name string, least, most int) int {
			return rapid.IntRange(least, most).Draw(t, name)
		}
		flour := grams("flour", 200, 5000)
		eggs := grams("eggs", 1, 12)
		held := grams("held", 1, 40)
		yeast := rapid.SampledFrom([]string{"1.1 %", "12 g", "0.4 oz"}).Draw(t, "yeast")
		text := fmt.Sprintf(`formula "f" {
  makes = "%d pieces" # a comment
  dough "d" {
    ingredients = {
      "bread flour" = "%d g"   # strong
      "milk"  = { amount = "%d g", temp = "6 C" }
      "egg" = "%d pieces"
      "instant yeast" = "%s"
      "unsalted butter" = { amount = "%d g", reserve = "%d g" }
    }
    steps = [
      { mix = "9 min", to = "25 C" },
      { rest = "1 h", at = "room", as = "slab 30 mm" },
      { shape = "balls", pieces = %d },
    ]
  }
}
`, pieces, flour, grams("milk", 20, 2000), eggs, yeast, grams("butter", 40, 2000), held, pieces)
		large := scaleText(e, t, []byte(text), engine.Size{Pieces: 400})
		back := scaleText(e, t, large, engine.Size{Pieces: float64(pieces)})
		a, b := readFormula(t, []byte(text)), readFormula(t, back)
		if b.Makes.Pieces != float64(pieces) {
			t.Fatalf("%v pieces\n%s", b.Makes.Pieces, back)
		}
		for i, in := range a.Parts[0].Ingredients {
			x, y := in.Grams.Grams(in.Part.FlourG).Mid(), b.Parts[0].Ingredients[i].Grams.Grams(
				b.Parts[0].FlourG).Mid()
			step := 1.0 // g, that of the kitchen's scale
			if in.Amount.Unit == "oz" {
				step = 0.05 * 28.35
			}
			if math.Abs(x-y) > step {
				t.Fatalf("%s: %v g, then %v g\n%s", in.Name, x, y, back)
			}
			share, again := 100*x/float64(flour), 100*y/b.Parts[0].FlourG.Mid()
			if math.Abs(share-again) > 100*2*step/float64(flour) {
				t.Fatalf("%s: %v %%, then %v %%\n%s", in.Name, share, again, back)
			}
		}
		if !bytes.Contains(large, []byte("# a comment")) ||
			!bytes.Contains(back, []byte("# strong")) {
			t.Fatalf("a comment is lost\n%s", back)
		}
	})
}

// TestScaleKeepsBytes holds that amounts on the scale's step come back
// as the same bytes.
func TestScaleKeepsBytes(t *testing.T) {
	text, err := os.ReadFile("../formulas/plain-milk-loaf.hcl")
	if err != nil {
		t.Fatal(err)
	}
	f := readFormulaIn(t, text)
	n := f.Makes.Pieces
	large := scaleFile(t, text, engine.Size{Pieces: 40 * n})
	if bytes.Equal(large, text) {
		t.Fatal("nothing is scaled")
	}
	back := scaleFile(t, large, engine.Size{Pieces: n})
	a, b := strings.Split(string(text), "\n"), strings.Split(string(back), "\n")
	if len(a) != len(b) {
		t.Fatalf("%d lines, then %d", len(a), len(b))
	}
	for i := range a {
		if a[i] != b[i] && !strings.Contains(b[i], "note") {
			t.Errorf("line %d: %q, then %q", i+1, a[i], b[i])
		}
	}
}

func scaleFile(t *testing.T, text []byte, want engine.Size) []byte {
	t.Helper()
	res := engine.New().Scale(engine.Input{Name: "f.hcl", Text: text, Dir: "../formulas"}, "", want)
	if len(res.Problems) > 0 {
		t.Fatal(res.Problems)
	}
	return res.Text
}

// readFormulaIn reads the first formula of a text in the demo
// house's words.
func readFormulaIn(t *testing.T, text []byte) *formula.Formula {
	t.Helper()
	l, problems := engine.New().Load("../formulas")
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	file := source.New("f.hcl", text)
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: file}
	f := read.Formula(r, body.Blocks[0], l.House.FormulaOptions())
	if len(r.Problems) > 0 {
		t.Fatal(r.Problems)
	}
	return f
}

// TestScaleKeepsReadingsAsNotes holds that a reading of the whole batch
// is kept in words, beside a note there, and that one of a piece stays
// a reading.
func TestScaleKeepsReadingsAsNotes(t *testing.T) {
	text := `formula "f" {
  makes = "10 pieces"
  dough "d" {
    ingredients = { "bread flour" = "1000 g", "milk" = "600 g", "instant yeast" = "12 g" }
    steps = [
      { mix = "9 min", measured = "25 C", note = "slack" },
      { note = "slow", rest = "1 h", at = "room", measured = "2 x after 60 min", covered = true },
      { chill = "6 h", as = "slab 30 mm", measured = "5 C after 6 h" },
      {
        rest = "10 min"
        measured = "6 C"   # in its tub
        at = "room"
      },
      { divide = "160 g" },
      { proof = "1 h", at = "27 C", measured = "1.9 x after 1 h" },
    ]
  }
}
`
	got := string(scaleText(engine.New(), t, []byte(text), engine.Size{Pieces: 20}))
	for _, want := range []string{
		`{ mix = "9 min", note = "slack; 25 C measured at 10 pieces" }`,
		`{ note = "slow; 2 x after 60 min measured at 10 pieces", rest = "1 h", at = "room", ` +
			`covered = true }`,
		`as = "slab 30 mm", measured = "5 C after 6 h" }`,
		`note = "6 C measured at 10 pieces"   # in its tub`,
		`at = "27 C", measured = "1.9 x after 1 h" }`,
	} {
		if !strings.Contains(got, want) {
			t.Errorf("%q is not there\n%s", want, got)
		}
	}
	// The check believes no reading of another batch.
	f := readFormula(t, []byte(got))
	for i, has := range []bool{false, false, true, false, false, true} {
		if (f.Parts[0].Steps[i].Reading != nil) != has {
			t.Errorf("step %d: a reading is %v", i+1, !has)
		}
	}
}
