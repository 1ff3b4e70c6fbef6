package engine_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/page"
	"forebake/engine/report"
	"forebake/engine/source"
)

// A night's work on one page: the clock passes midnight, each part has
// its own table, and readings and guesses are marked.
const overnight = `formula "Night buns" {
  start = "18:00"
  preferment "sponge" {
    ingredients = { "bread flour" = "200 g", "water" = "200 g", "instant yeast" = "1 g" }
    steps = [ { mix = "3 min", to = "24 C" }, { rest = "4 h", at = "room" } ]
  }
  dough "d" {
    ingredients = {
      "the sponge" = "all", "bread flour" = "800 g", "water" = "350 g", "instant yeast" = "4 g"
    }
    steps = [
      { mix = "12 min", to = "25 C" }, { rest = "2 h", at = "room" },
      { chill = "14 h", as = "slab 40 mm", measured = "5 C" },
      { divide = "75 g", time = "20 min" }, { fill = "f" }, { proof = "2 h", at = "27 C" },
      { bake = "16 min", at = "200 C", core = "92 C" }, { cool = "1 day", at = "room" },
    ]
  }
  filling "f" {
    ingredients = { "sugar" = "200 g", "unsalted butter" = "100 g" }
    steps = [ { cook = "5 min" }, { cool = "1 h", at = "room" } ]
  }
}
`

func historyOf(t *testing.T, text string) ([]finding.HistoryRow, source.Problems) {
	t.Helper()
	rows, res := engine.New().
		History([]engine.Input{{Name: "f.hcl", Text: []byte(text), Dir: t.TempDir()}})
	return rows, res.Problems
}

// narrow leaves one space where a table has several.
func narrow(text string) string {
	for strings.Contains(text, "  ") {
		text = strings.ReplaceAll(text, "  ", " ")
	}
	return text
}

func TestHistoryOnTheClock(t *testing.T) {
	rows, problems := historyOf(t, overnight)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	var b strings.Builder
	if err := page.History(&b, &finding.Run{}, rows, report.Options{Width: 120}); err != nil {
		t.Fatal(err)
	}
	text := narrow(b.String())
	for _, want := range []string{
		"Night buns\n",
		" 18:00 mix 3 min", " 18:03 rest 4 h",
		" 22:03 mix 12 min", " 22:15 rest 2 h", " 00:15 +1d chill 14 h",
		" 14:15 +1d divide 75 g 20 min", " 14:35 +1d fill f", " 14:35 +1d proof 2 h",
		" 16:35 +1d bake 16 min", " 16:51 +1d cool 1 day",
		" 13:30 +1d cook 5 min", " 13:35 +1d cool 1 h",
		"measured", "taken as left in its bowl", `anything up to the boil: write to = "... C"`,
	} {
		if !strings.Contains(text, want) {
			t.Errorf("no %q in\n%s", want, text)
		}
	}
	for _, never := range []string{"NaN", "Inf", "%!"} {
		if strings.Contains(text, never) {
			t.Errorf("%q in\n%s", never, text)
		}
	}
	// Without a start the clock counts from the first step.
	rows, problems = historyOf(t, strings.Replace(overnight, "  start = \"18:00\"\n", "", 1))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	b.Reset()
	if err := page.History(&b, &finding.Run{}, rows, report.Options{Width: 120}); err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{" 0:00 mix 3 min", " 6:15 chill 14 h", " 22:51 cool 1 day"} {
		if !strings.Contains(narrow(b.String()), want) {
			t.Errorf("no %q in\n%s", want, b.String())
		}
	}
}

// The impossible is an error at its place, a finding, or a missing
// figure; never a figure that is no number.
func TestHistoriesThatCannotBe(t *testing.T) {
	const dough = `formula "t" {
  dough "d" {
    ingredients = {
      "bread flour" = "1000 g", "water" = { amount = "600 g", temp = "%s" }
      "instant yeast" = "10 g", "salt" = "20 g"
    }
    steps = [ %s ]
  }
}
`
	for _, test := range []struct {
		name, water, steps string
		refused            string // in the located error; "" where the file is read
		finding            string // a rule that is not clear
	}{
		{"baked before it is mixed", "20 C", `{ bake = "20 min", at = "200 C" }, { mix = "9 min" }`,
			"mix stands after the bake", ""},
		{"a filling that is never made", "20 C",
			`{ mix = "9 min" }, { fill = "nuts" }, { bake = "20 min", at = "200 C" }`,
			`"nuts"`, ""},
		{"an oven at 20 C", "20 C", `{ mix = "9 min" }, { bake = "20 min", at = "20 C", ` +
			`core = "92 C" }`, "bakes nothing", ""},
		{"a proof of 400 h", "20 C", `{ mix = "9 min", to = "25 C" }, { shape = "loaf" }, ` +
			`{ proof = "400 h", at = "28 C" }, { bake = "30 min", at = "190 C", core = "92 C" }`,
			"", "proof-long"},
		{"a proof of 400 days", "20 C", `{ mix = "9 min", to = "25 C" }, ` +
			`{ proof = "400 day", at = "28 C" }`, "366 days", ""},
		{"surroundings as warm as the dough", "20 C",
			`{ mix = "9 min", measured = "22 C" }, { rest = "1 h", at = "22 C" }`, "", ""},
		{"a sheet of nothing", "20 C", `{ mix = "9 min" }, { sheet = "0.001 mm" }, ` +
			`{ fill = "?" }, { roll = "coil", slice = "0.001 mm" }`, "", ""},
		{"a slab of nothing", "20 C", `{ mix = "9 min" }, { chill = "1 h", ` +
			`as = "slab 0.0001 mm" }`, "", ""},
		{"water at absolute zero", "-273.15 C", `{ mix = "9 min", to = "25 C" }`, "", ""},
		{"colder than that", "-300 C", `{ mix = "9 min", to = "25 C" }`, "absolute zero", ""},
		{"a dough of steam", "20 C", `{ mix = "9 min", measured = "130 C" }, ` +
			`{ proof = "1 h", at = "140 C" }, { bake = "20 min", at = "200 C", core = "92 C" }`, "",
			""},
	} {
		t.Run(test.name, func(t *testing.T) {
			in := engine.Input{
				Name: "f.hcl",
				Text: fmt.Appendf(nil, dough, test.water, test.steps),
				Dir:  t.TempDir(),
			}
			rows, result := engine.New().History([]engine.Input{in})
			problems := result.Problems
			said := ""
			for _, p := range problems {
				if p.Place.IsZero() {
					t.Errorf("no place: %s", p.Text)
				}
				said += p.Text + "\n"
			}
			if (test.refused == "") != (said == "") &&
				!(test.refused == "" && test.finding == "") ||
				!strings.Contains(said, test.refused) {
				t.Errorf("said %q, and should say %q", said, test.refused)
			}
			for _, r := range rows {
				for _, cell := range []string{r.Ambient, r.Core, r.Mean, r.Rise} {
					if strings.Contains(cell, "NaN") || strings.Contains(cell, "Inf") ||
						cell == "" {
						t.Errorf("%s shows %q", r.Step, cell)
					}
				}
			}
			found := test.finding == ""
			for _, f := range result.Findings {
				found = found || f.Rule == test.finding
				if strings.Contains(f.Text, "NaN") || strings.Contains(f.Text, "Inf") {
					t.Errorf("%s says %q", f.Rule, f.Text)
				}
			}
			if !found {
				t.Errorf("%s says nothing", test.finding)
			}
		})
	}
}

// sixStages is a dough as a baker writes it, with six stages that
// change its temperature.
const sixStages = `formula "Six stages" {
  family = "sweet dough"
  makes  = "24 pieces"

  dough "knot dough" {
    ingredients = {
      "bread flour"     = { amount = "1000 g", temp = "20 C" }
      "whole milk"      = { amount = "480 g", temp = "6 C" }
      "instant yeast"   = { amount = "1.1 %%", strain = "osmotolerant" }
      "sugar"           = "160 g"
      "salt"            = "1.6 %%"          # percent is on this dough's total flour
      "egg"             = { amount = "100 g", temp = "8 C" }
      "unsalted butter" = { amount = "180 g", temp = "18 C" }
      "ground cardamom" = "8 g"
    }
    steps = [
      { mix    = "12 min", by = "spiral", to = "25 C" },
      { rest   = "1 h", at = "room", covered = true },
      { chill  = "14 h", at = "fridge", as = "slab 40 mm", covered = true },
      { temper = "20 min", at = "room" },
      { sheet  = "5 mm" },
      { rest   = "10 min", at = "room", as = "slab 5 mm" },
      { divide = 24 },
      { shape  = "knots", pieces = 24 },
      { proof  = "90 min to 2 h", at = "27 C", as = "%s" },
      { bake   = "16 min", at = "200 C", core = "92 C" },
      { cool   = "45 min", at = "room" },
    ]
  }
}
`

// BenchmarkHistory follows a dough through six stages, and prints the
// ratio to the bare parse of the formula's text. Every stage has three
// runs; a brick has three directions and a slab one, and a tub of dough
// in the cold is followed by the solver with its own heat.
func BenchmarkHistory(b *testing.B) {
	for _, bench := range []struct{ name, text string }{
		{"slabs and pieces", fmt.Sprintf(sixStages, "pieces 80 g")},
		{"bricks", strings.Replace(fmt.Sprintf(sixStages, "brick 60x90x30 mm"), "slab 40 mm",
			"brick 300x400x40 mm", 1)},
		{"a tub in the cold", strings.Replace(fmt.Sprintf(sixStages, "pieces 80 g"), "slab 40 mm",
			"bowl", 1)},
	} {
		b.Run(bench.name, func(b *testing.B) {
			list, problems := readFormulas(source.New("f.hcl", []byte(bench.text)), house.Default())
			if len(problems) > 0 {
				b.Fatal(problems)
			}
			setup := setupOf(list[0])
			var f history.Simulator
			if life := f.Follow(setup); !life.Stages[len(life.Stages)-1].Known {
				b.Fatal("the cool misses " + life.Stages[len(life.Stages)-1].Missing)
			}
			const parses = 200
			begun := time.Now()
			for range parses {
				_, diags := hclsyntax.ParseConfig([]byte(bench.text), "f.hcl", hcl.InitialPos)
				if diags.HasErrors() {
					b.Fatal(diags)
				}
			}
			parse := time.Since(begun) / parses
			b.ReportAllocs()
			for b.Loop() {
				f.Follow(setup)
			}
			each := b.Elapsed() / time.Duration(b.N)
			b.ReportMetric(float64(each)/float64(parse), "parses/op")
		})
	}
}

// setupOf is the benchmark's dough as package facts hands it in.
func setupOf(f *formula.Formula) history.Setup {
	return history.Setup{
		Part:    f.Parts[0],
		Kitchen: kitchen.Default(),
		MassG:   f.Parts[0].MassG.Max(figure.Point(1)),
		Material: history.Material{
			Known:        true,
			Conductivity: 0.33,
			Density:      1080,
			SpecificHeat: 2600,
			Diffusivity:  0.33 / 1080 / 2600,
			Butterfat:    0.08,
		},
		Start:   figure.Estimate{Low: 23, Mid: 25, High: 27},
		Started: true,
		Gas:     0.8,
	}
}

// BenchmarkHistoryFacts is all that rules may ask of one dough's
// history, with the searches for times and thicknesses.
func BenchmarkHistoryFacts(b *testing.B) {
	list, problems := readFormulas(
		source.New("f.hcl", fmt.Appendf(nil, sixStages, "pieces 80 g")),
		house.Default(),
	)
	if len(problems) > 0 {
		b.Fatal(problems)
	}
	var s facts.Sheet
	k := kitchen.Default()
	b.ReportAllocs()
	for b.Loop() {
		s.Reset(list[0], k)
		for _, step := range list[0].Parts[0].Steps {
			for _, f := range facts.All(facts.OnStep) {
				if f.HasVerb(step.Verb.Name) {
					s.Value(f, facts.Subject{On: facts.OnStep, Part: step.Part, Step: step})
				}
			}
		}
	}
}
