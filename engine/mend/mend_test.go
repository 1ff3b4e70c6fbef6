package mend_test

import (
	"bytes"
	"flag"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
	"pgregory.net/rapid"

	"forebake/engine"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/mend"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/source"
	"forebake/engine/trial"
)

// mender makes a mender with rules of its own, in a kitchen without
// a house.
func mender(t testing.TB, rules ...string) *mend.Mender {
	t.Helper()
	var text strings.Builder
	for i, r := range rules {
		fmt.Fprintf(&text, "rule \"r%d\" {\n  level = \"risk\"\n  say = \"s\"\n", i)
		fmt.Fprintf(&text, "  why = \"w\"\n  source = \"s\"\n%s\n}\n", r)
	}
	file := source.New("t.hcl", []byte(text.String()))
	d := rule.Open("t", []*source.File{file}, rule.Options{})
	p, problems := d.Read(rule.Figures([]*rule.Draft{d}))
	if len(problems) > 0 {
		t.Fatalf("%v\n%s", problems, text.String())
	}
	return &mend.Mender{Kitchen: kitchen.Default(), Rules: p.Rules, Options: plainOptions()}
}

// plainOptions read a formula without a house.
func plainOptions() formula.Options { return formula.Options{Larder: larder.New()} }

// ruleOn writes the part of a rule that tells it from others.
func ruleOn(on, when string, more ...string) string {
	return fmt.Sprintf("on = %q\nwhen = %q\n%s", on, when, strings.Join(more, "\n"))
}

// shipped makes a mender with all shipped rules, in the house of
// the demo formulas.
func shipped(t testing.TB) *mend.Mender {
	t.Helper()
	l, problems := engine.New().Load("../../formulas")
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return &mend.Mender{
		Kitchen: l.House.Kitchen, Rules: l.Rules.Rules, Options: l.House.FormulaOptions(),
	}
}

func mended(t testing.TB, m *mend.Mender, text string) (*mend.Outcome, *formula.Formula) {
	t.Helper()
	o, err := m.Mend("t.hcl", []byte(text), 0)
	if err != nil {
		t.Fatalf("%v\n%s", err, text)
	}
	return o, readText(t, m, o.Text)
}

func readText(t testing.TB, m *mend.Mender, text []byte) *formula.Formula {
	t.Helper()
	f := source.New("t.hcl", text)
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: f}
	one := read.Formula(r, body.Blocks[0], m.Options)
	if len(r.Problems) > 0 {
		t.Fatalf("%v\n%s", r.Problems, text)
	}
	return one
}

// grams gives the weight of an ingredient of the first part.
func grams(t testing.TB, f *formula.Formula, name string) float64 {
	t.Helper()
	for _, in := range f.Parts[0].Ingredients {
		if in.Name == name {
			return in.Grams.Grams(f.Parts[0].FlourG).Mid()
		}
	}
	t.Fatalf("no %s", name)
	return 0
}

const plainDough = `formula "t" {
  dough "d" {
    ingredients = {
      "bread flour"     = "1000 g"
      "water"           = "500 g"
      "whole milk"      = "100 g"
      "instant yeast"   = "%s"
      "salt"            = "10 g"
      "salted butter"   = "200 g"
    }
  }
}
`

func share(t testing.TB, name string, of func(*larder.Item) float64) float64 {
	t.Helper()
	item, ok := larder.New().Find(name)
	if !ok {
		t.Fatalf("no %s in the larder", name)
	}
	return of(item) / 100
}

// edges reads the edges that the changes of a mending name, in
// order. A change that names none stands on its edge.
func edges(o *mend.Outcome) []float64 {
	var out []float64
	named := regexp.MustCompile(`(?:: |to )([0-9.]+) \S+(?: is the edge| \(line \d+\)$)`)
	for _, c := range o.Mending.Changes {
		x := math.NaN()
		if found := named.FindStringSubmatch(c.Text); found != nil {
			x, _ = strconv.ParseFloat(found[1], 64)
		}
		out = append(out, x)
	}
	return out
}

// TestClosedAnswers holds the edges of searched answers to
// closed ones, rounded to the side that clears. The value itself
// lies inside.
func TestClosedAnswers(t *testing.T) {
	up := func(x, step float64) float64 { return math.Ceil(x/step-1e-9) * step }
	at := func(what, rule, text, name string, want, perUnit, most float64) {
		t.Helper()
		o, f := mended(t, mender(t, rule), text)
		if edge := edges(o)[0] * perUnit; math.Abs(edge-want) > 1e-6 {
			t.Errorf("the edge of %s is %v, and the closed answer is %v", what, edge, want)
		}
		if got := grams(t, f, name); got < want-1e-6 || got > want+most {
			t.Errorf(
				"%s is set to %v; the edge is %v, and inside ends %v further",
				what,
				got,
				want,
				most,
			)
		}
	}
	text := fmt.Sprintf(plainDough, "5 g")

	// Yeast for a wanted dose, as instant.
	lowYeast := ruleOn("dough", "dough.yeast_pct < 1.37", `adjust "yeast" {}`)
	at("yeast", lowYeast, text, "instant yeast", up(1.37/100*1000, 1), 1, 1)
	inPercent := fmt.Sprintf(plainDough, "0.5 %")
	at("yeast in percent", lowYeast, inPercent, "instant yeast", 14, 10, 1)

	// Water for a wanted hydration: that of milk and butter counts.
	water := func(name string) float64 {
		return share(t, name, func(i *larder.Item) float64 { return i.Water })
	}
	brings := 100*water("whole milk") + 200*water("salted butter") +
		5*water("instant yeast") + 10*water("salt")
	dry := ruleOn("dough", "dough.hydration_pct < 70", `adjust "water" {}`)
	at("water", dry, text, "water", up((700-brings)/water("water"), 1), 1, 5)

	// Salt for a wanted percentage, computed by the rule: the
	// butter's counts.
	salt := func(name string) float64 {
		return share(t, name, func(i *larder.Item) float64 { return i.Salt })
	}
	bland := ruleOn("dough", "dough.salt_pct < 1.8", `adjust "salt" { to = "1.8" }`)
	at("salt", bland, text, "salt", up((18-200*salt("salted butter"))/salt("salt"), 1), 1, 0)
}

// TestLiquidTemperature holds the liquid's temperature to the heat
// balance of the bowl.
func TestLiquidTemperature(t *testing.T) {
	text := `formula "t" {
  dough "d" {
    ingredients = {
      "bread flour"   = { amount = "1000 g", temp = "22 C" }
      "water"         = { amount = "600 g", temp = "45 C" }
      "instant yeast" = { amount = "10 g", temp = "22 C" }
      "salt"          = { amount = "18 g", temp = "22 C" }
    }
    steps = [{ mix = "8 min", by = "spiral", to = "25 C" }]
  }
}
`
	m := mender(t, ruleOn("mix", "mix.dough_c > 25", `adjust "liquid.temp" {}`))
	m.Kitchen.Friction = reading.Given{Set: true}
	m.Kitchen.Friction.Lo, m.Kitchen.Friction.Hi = 6, 6
	o, f := mended(t, m, text)
	s := facts.NewSheet(f, m.Kitchen)
	fact, _ := facts.Find(facts.OnStep, "liquid_needed_c")
	v := s.Value(fact, facts.Subject{On: facts.OnStep, Part: f.Parts[0], Step: f.Parts[0].Steps[0]})
	got := edges(o)[0]
	if inside := f.Parts[0].Ingredients[1].Temp.Hi; inside != got-1 {
		t.Errorf(
			"the liquid is set to %v C, and one degree inside the edge of %v C is wanted",
			inside,
			got,
		)
	}
	if want := math.Floor(v.Lo + 1e-9); got != want {
		t.Errorf("the liquid is set to %v C; the heat balance gives %v C (%v to %v)",
			got, want, v.Lo, v.Hi)
	}
}

// TestSlabForTime holds the thickness of a slab that is cold in
// time to the catalogue's inversion of the cooling.
func TestSlabForTime(t *testing.T) {
	text := `formula "t" {
  dough "d" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "600 g"
      "instant yeast" = "4 g"
      "salt"          = "18 g"
    }
    steps = [
      { mix = "8 min", by = "spiral", to = "25 C", measured = "25 C" },
      { chill = "12 h", at = "fridge", as = "slab 90 mm", covered = true },
    ]
  }
}
`
	m := mender(t, ruleOn("chill", "chill.h_to_10c > 4", `adjust "step.as" {}`))
	before := readText(t, m, []byte(text))
	s := facts.NewSheet(before, m.Kitchen)
	fact, _ := facts.Find(facts.OnStep, "slab_for_10c_mm")
	dough := before.Parts[0]
	v := s.Value(fact, facts.Subject{On: facts.OnStep, Part: dough, Step: dough.Steps[1]})
	o, f := mended(t, m, text)
	got := edges(o)[0]
	if inside := f.Parts[0].Steps[1].Form.MM.Hi; inside > got || inside < got-10 ||
		math.Mod(inside, 5) != 0 {
		t.Errorf(
			"the slab is set to %v mm, and a round value inside the edge of %v mm is wanted",
			inside,
			got,
		)
	}
	if math.Abs(got-v.Lo) > 1 {
		t.Errorf("the slab is set to %v mm; the thickest that is cold in time is %v mm", got, v.Lo)
	}
}

// TestAgainstSimplex holds a small linear case to the simplex
// method: less milk for its solids, and water in its place for the
// hydration. The method finds the least total change, as shares of
// the written amounts.
func TestAgainstSimplex(t *testing.T) {
	text := `formula "t" {
  dough "d" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = "150 g"
      "whole milk"    = "600 g"
      "sunflower oil" = "80 g"
      "instant yeast" = "10 g"
    }
  }
}
`
	o, f := mended(t, mender(t,
		ruleOn("dough", "dough.milk_solids_pct > 4", `adjust "milk" {}`),
		ruleOn("dough", "dough.hydration_pct < 70", `adjust "water" {}`)), text)

	water := func(name string) float64 {
		return share(t, name, func(i *larder.Item) float64 { return i.Water })
	}
	solids := share(t, "whole milk", func(i *larder.Item) float64 { return i.MilkSolids })
	// Variables: water up, water down, milk up, milk down, and two
	// slacks. Solids: solids*(600 + up - down) + slack = 40.
	// Hydration: water of all - slack = 700.
	a := mat.NewDense(2, 6, []float64{
		0, 0, solids, -solids, 1, 0,
		water("water"), -water("water"), water("whole milk"), -water("whole milk"), 0, -1,
	})
	there := 150*water("water") + 600*water("whole milk") + 10*water("instant yeast")
	b := []float64{40 - solids*600, 700 - there}
	shares := []float64{1.0 / 150, 1.0 / 150, 1.0 / 600, 1.0 / 600, 0, 0}
	_, x, err := lp.Simplex(shares, a, b, 1e-10, nil)
	if err != nil {
		t.Fatal(err)
	}
	wantWater, wantMilk := 150+x[0]-x[1], 600+x[2]-x[3]
	edge := edges(o)
	if len(edge) != 2 || edge[0] != math.Floor(wantMilk) {
		t.Fatalf(
			"the edges are %v, and the simplex method gives %.2f g of milk\n%+v",
			edge,
			wantMilk,
			o.Mending.Changes,
		)
	}
	// A gram for its own rounding, and what the milk lies inside
	// its edge.
	inside := wantMilk - grams(t, f, "whole milk")
	if got := edge[1]; got < wantWater-2 || got > wantWater+inside+1 {
		t.Errorf("the edge of water is %v g, and the simplex method gives %.2f g", got, wantWater)
	}
}

// TestOtherEditors mends the drafts as other editors save them. The
// mended copy is the copy of the mended draft, byte for byte.
func TestOtherEditors(t *testing.T) {
	styles := map[string]func([]byte) []byte{
		"CRLF": func(b []byte) []byte { return bytes.ReplaceAll(b, []byte("\n"), []byte("\r\n")) },
		"BOM":  func(b []byte) []byte { return append([]byte("\xef\xbb\xbf"), b...) },
		"tabs": func(b []byte) []byte {
			lines := strings.Split(string(b), "\n")
			for i, line := range lines {
				rest := strings.TrimLeft(line, " ")
				lines[i] = strings.Repeat("\t", (len(line)-len(rest))/2) + rest
			}
			return []byte(strings.Join(lines, "\n"))
		},
	}
	for _, path := range []string{"first-draft.hcl", "second-draft.hcl"} {
		text, err := os.ReadFile("../../formulas/" + path)
		if err != nil {
			t.Fatal(err)
		}
		plain, err := shipped(t).Mend("t.hcl", text, 0)
		if err != nil {
			t.Fatal(err)
		}
		if bytes.Equal(plain.Text, text) {
			t.Fatalf("%s: nothing was mended", path)
		}
		for name, style := range styles {
			got, err := shipped(t).Mend("t.hcl", style(text), 0)
			if err != nil {
				t.Fatal(err)
			}
			if want := style(plain.Text); !bytes.Equal(got.Text, want) {
				differ := source.Compare(got.Text, want)
				t.Errorf("%s with %s: the mended copy is another text:\n%+v", path, name, differ)
			}
		}
	}
}

// generated draws a dough that a baker in a hurry might write, with
// most faults in reach.
func generated(t *rapid.T) string {
	n := func(name string, lo, hi int) int { return rapid.IntRange(lo, hi).Draw(t, name) }
	pick := func(name string, list ...string) string {
		return rapid.SampledFrom(list).Draw(t, name)
	}
	return fmt.Sprintf(`formula "t" {
  family = "sweet dough"
  makes  = "%d pieces of %d g"
  dough "d" {
    ingredients = {
      "bread flour"     = "1000 g"
      "whole milk"      = { amount = "%d g", temp = "%d C" }
      "%s"   = "%s"
      "sugar"           = "%d g"
      "salt"            = "%d g"
      "unsalted butter" = { amount = "%d g", temp = "%d C" }
      "cinnamon"        = "%s"
    }
    steps = [
      { mix = "10 min", by = "spiral", to = "%d C" },
      { rest = "%d min", at = "room", as = "bowl", covered = true },
      { chill = "%d h", at = "fridge", as = "%s", covered = true },
      { sheet = "%d mm" },
      { fill = "f" },
      { roll = "coil" },
      { proof = "%d min", at = "%d C", as = "pieces 80 g", covered = true },
      { bake = "%d min", at = "%d C", core = "%d C" },
    ]
  }
  filling "f" {
    ingredients = {
      "dates"           = "200 g"
      "unsalted butter" = "80 g"
    }
    steps = [
      { cook = "5 min", to = "70 C" },
      { cool = "%d min", at = "room", as = "tray %d mm" },
    ]
  }
}
`, n("pieces", 10, 30), n("each", 50, 120), n("milk", 300, 800), n("milk temp", 2, 60),
		pick("yeast", "instant yeast", "fresh yeast", "active dry yeast"),
		pick("dose", "2 g", "10 g", "30 g", "0.2 %", "1.2 %", "5 %"),
		n("sugar", 20, 350), n("salt", 2, 35), n("butter", 50, 500), n("butter temp", 2, 30),
		pick("cinnamon", "1 tsp", "5 g", "3 %", "2 tbsp"),
		n("mix to", 12, 34), n("rest", 10, 240), n("chill", 1, 20),
		pick("form", "bowl", "slab 30 mm", "slab 90 mm"), n("sheet", 1, 20),
		n("proof", 20, 300), n("proof at", 18, 38),
		n("bake", 8, 40), n("oven", 160, 240), n("core", 80, 101),
		n("cool", 10, 180), n("tray", 8, 60))
}

// oneName names a finding; yeast of another kind stays the
// same line.
func oneName(rule, subject string) string {
	return rule + " on " + strings.Replace(subject, "active dry yeast", "instant yeast", 1)
}

// flaggedOf gives the level of each finding that is flagged.
func flaggedOf(t testing.TB, text []byte) map[string]finding.Level {
	t.Helper()
	res := engine.New().Check([]engine.Input{{Name: "t.hcl", Text: text, Dir: "../../formulas"}})
	if len(res.Problems) > 0 {
		t.Fatalf("%v\n%s", res.Problems, text)
	}
	out := map[string]finding.Level{}
	for _, f := range res.Findings {
		if f.Answer == finding.Flagged {
			out[oneName(f.Rule, f.Subject)] = f.Level
		}
	}
	return out
}

// TestMendAddsNothing holds that a mend adds no finding of the
// level of a cleared one, or of a higher level. A finding that it
// says it cleared is gone. Mending the result again and again comes
// to an end.
func TestMendAddsNothing(t *testing.T) {
	m := shipped(t)
	checked, settled := 0, 0
	// A mend takes up to half a second, so a dozen are tried. With
	// -rapid.checks it tries more.
	for name, few := range map[string]string{"rapid.checks": "12", "rapid.shrinktime": "10s"} {
		f := flag.Lookup(name)
		if f.Value.String() != f.DefValue {
			continue
		}
		if err := f.Value.Set(few); err != nil {
			t.Fatal(err)
		}
		defer func() { _ = f.Value.Set(f.DefValue) }()
	}
	rapid.Check(t, func(rt *rapid.T) {
		text := []byte(generated(rt))
		m.Taste = rapid.Bool().Draw(rt, "taste")
		original := bytes.Clone(text)
		o, err := m.Mend("t.hcl", text, 0)
		if err != nil {
			rt.Fatalf("%v\n%s", err, text)
		}
		if !bytes.Equal(text, original) {
			rt.Fatal("the text itself was changed")
		}
		if len(o.Mending.Changes) == 0 && !bytes.Equal(o.Text, text) {
			rt.Fatal("no change, and other bytes")
		}
		before, after := flaggedOf(t, text), flaggedOf(t, o.Text)
		highest := finding.Level(finding.Note + 1)
		for _, c := range o.Mending.Changes {
			for _, r := range c.Rules {
				checked++
				highest = min(highest, r.Level)
				if _, still := after[oneName(r.Rule, r.Subject)]; still {
					rt.Fatalf("%s on %s was said to be cleared\n%s", r.Rule, r.Subject, o.Text)
				}
			}
		}
		for name, level := range after {
			if _, had := before[name]; !had && level <= highest {
				rt.Fatalf("%s (%s) was added\n%s\nbecame\n%s", name, level, text, o.Text)
			}
		}
		// What a run could not clear in one step with the others, a
		// further one may; it comes to an end.
		text = o.Text
		for range 4 {
			again, err := m.Mend("t.hcl", text, 0)
			if err != nil {
				rt.Fatal(err)
			}
			if again.Mending.Spent {
				return // it says itself that a further run may find more
			}
			if bytes.Equal(again.Text, text) {
				settled++
				return
			}
			text = again.Text
		}
		rt.Fatalf("mending again goes on changing\n%s\nbecame\n%s", original, text)
	})
	if checked == 0 || settled == 0 {
		t.Errorf("%d findings were cleared, %d searches came to their end", checked, settled)
	}
}

// elsewhere lists the rules whose trials no lever of a formula can
// clear, and why.
var elsewhere = map[string]string{
	"scale-too-coarse":    "the lever is the house's scale",
	"core-low":            "the core is the baker's wish",
	"core-high":           "the same",
	"makes-mismatch":      "what it makes is the baker's wish",
	"egg-undercooked":     "what it is cooked to is the baker's wish",
	"liquid-out-of-reach": "what the dough comes to is the baker's wish",
	"cut-too-soon":        "the trials are measured, and a reading is believed over any time",
	"wrap-too-warm":       "the same",
	"not-cold-yet":        "the trials have no chill",
	"starch-underset":     "what it is cooked to is the baker's wish",
	"starch-uncooked":     "the trials have no cook",
	"slices-off":          "what it makes is the baker's wish",
	"pieces-uneven":       "the same",
	"core-unproven-risk":  "the same",
	"core-unproven-note":  "the same",
	"reheat-low":          "what it is heated to is the baker's wish",
	"reheat-slow":         "the time of a heating is not shortened by a guess",
	"leaven-missing":      "which yeast is the baker's choice",
}

// formulaText is the formula block of a trial as it was tried: in
// the rule file, or in the text of one of its cases.
func formulaText(t *testing.T, trial *trial.Trial) []byte {
	t.Helper()
	at := trial.Formula.Place
	body, problems := source.Parse(at.File)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, b := range body.Blocks {
		for _, inner := range append(b.Body.Blocks, b) {
			from, to := inner.Range().Start.Byte, inner.CloseBraceRange.End.Byte
			if inner.Type == "formula" &&
				from <= at.Start &&
				at.End <= to {
				return at.File.Text[from:to]
			}
		}
	}
	t.Fatalf("%s: no formula block around %s", trial.Title(), at)
	return nil
}

// TestLeversClearTheirRule holds that the levers of every shipped
// rule clear at least one of the trials that show it flagged.
func TestLeversClearTheirRule(t *testing.T) {
	paths, err := filepath.Glob("../../rules/*.hcl")
	if err != nil {
		t.Fatal(err)
	}
	declared, err := os.ReadFile("../../rules/figures.hcl")
	if err != nil {
		t.Fatal(err)
	}
	figures := source.New("figures.hcl", declared)
	for _, path := range paths {
		if filepath.Base(path) == "figures.hcl" {
			continue
		}
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		file := source.New(path, text)
		o := rule.Options{Trials: true, Formula: plainOptions(), Version: engine.Version}
		drafts := []*rule.Draft{
			rule.Open("figures", []*source.File{figures}, o),
			rule.Open("p", []*source.File{file}, o),
		}
		p, problems := drafts[1].Read(rule.Figures(drafts))
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		cleared, tried := map[string]int{}, map[string]int{}
		for _, trial := range p.Trials {
			if trial.Expect != "flagged" {
				continue
			}
			var r *rule.Rule
			for _, one := range p.Rules {
				if one.ID == trial.Rule {
					r = one
				}
			}
			if r == nil || len(r.Adjust) == 0 {
				continue
			}
			m := &mend.Mender{
				Kitchen: trial.Kitchen,
				Rules:   []*rule.Rule{r},
				Options: formula.Options{Larder: larder.New(), Tins: trial.Kitchen.TinNames()},
				Taste:   true,
			}
			o, err := m.Mend("t.hcl", formulaText(t, trial), 0)
			if err != nil {
				t.Fatal(err)
			}
			tried[r.ID]++
			if len(o.After) == 0 {
				cleared[r.ID]++
			}
			if testing.Verbose() {
				for _, c := range o.Mending.Changes {
					t.Logf("%s: %s (%s)", r.ID, c.Text, c.Trust)
				}
				for _, l := range o.Mending.Left {
					t.Logf("%s LEFT: %s", r.ID, l.Why)
				}
			}
		}
		for id, n := range tried {
			if cleared[id] == 0 && elsewhere[id] == "" {
				t.Errorf("%s: none of its %d flagged trials is cleared by its levers", id, n)
			}
			if cleared[id] > 0 && elsewhere[id] != "" {
				t.Errorf("%s: %d of its %d flagged trials are cleared: take its row out (%s)", id,
					cleared[id], n, elsewhere[id])
			}
		}
	}
}

// TestSecondFormula mends the second formula of a file and leaves
// the first.
func TestSecondFormula(t *testing.T) {
	one := fmt.Sprintf(plainDough, "5 g")
	two := strings.Replace(one, `formula "t"`, `formula "u"`, 1)
	m := mender(t, ruleOn("dough", "dough.yeast_pct < 1", `adjust "yeast" {}`))
	o, err := m.Mend("t.hcl", []byte(one+two), 1)
	if err != nil {
		t.Fatal(err)
	}
	if want := one + strings.Replace(two, `"5 g"`, `"12 g"`, 1); string(o.Text) != want {
		t.Errorf("got\n%s", o.Text)
	}
}

// TestTrust holds that a mend of taste is told as one, and made
// only when asked for.
func TestTrust(t *testing.T) {
	text := fmt.Sprintf(plainDough, "5 g")
	m := mender(t, ruleOn("dough", "dough.yeast_strain == 'standard'",
		`adjust "yeast.strain" { to = "'osmotolerant'" }`))
	o, _ := mended(t, m, text)
	choices := o.Mending.Choices
	if string(o.Text) != text || len(choices) != 1 || choices[0].Trust != "taste" {
		t.Errorf("%+v", o.Mending)
	}
	m.Taste = true
	o, _ = mended(t, m, text)
	want := strings.Replace(text, `"5 g"`, `{ amount = "5 g", strain = "osmotolerant" }`, 1)
	if string(o.Text) != want || o.Mending.Changes[0].Trust != "taste" {
		t.Errorf("%s\n%+v", o.Text, o.Mending)
	}
	if !slices.Equal(finding.Trusts, []string{"exact", "searched", "taste"}) {
		t.Error(finding.Trusts)
	}
}

// TestSafety holds that no mend worsens a finding of food safety,
// whatever its level, flagged already or not. Food safety is
// mended first.
func TestSafety(t *testing.T) {
	text := fmt.Sprintf(plainDough, "5 g")
	hungry := ruleOn("dough", "dough.yeast_pct < 1", `adjust "yeast" {}`)
	safe := func(limit string, more ...string) string {
		more = append(more, `doubt = "flag"`)
		return ruleOn("dough", "dough.yeast_pct > "+limit, more...)
	}
	for _, limit := range []string{"0.8", "0.4"} { // clear before; flagged before
		m := mender(t, hungry, safe(limit))
		m.Rules[1].Level, m.Rules[1].Safety = finding.Note, true
		o, _ := mended(t, m, text)
		if string(o.Text) != text {
			t.Errorf("with a limit of %s %% the yeast was raised:\n%+v", limit, o.Mending.Lines)
		}
		against := func(l finding.Left) bool { return slices.Contains(l.Against, "r1") }
		if left := o.Mending.Left; !slices.ContainsFunc(left, against) {
			t.Errorf("the rule of food safety is not named: %+v", left)
		}
	}
	m := mender(t, hungry, safe("0.4", `adjust "yeast" {}`))
	m.Rules[1].Safety = true
	o, f := mended(t, m, text)
	if got := grams(t, f, "instant yeast"); got != 3 || edges(o)[0] != 4 {
		t.Errorf(
			"the yeast is %v g and not 3 g, inside 4 g: food safety first\n%+v",
			got,
			o.Mending,
		)
	}
}

// BenchmarkMend mends the drafts of the demo kitchen. It reports
// the judgements and the texts read.
func BenchmarkMend(b *testing.B) {
	for _, name := range []string{"first-draft", "second-draft"} {
		text, err := os.ReadFile("../../formulas/" + name + ".hcl")
		if err != nil {
			b.Fatal(err)
		}
		for _, run := range []string{"mend", "suggest"} {
			b.Run(name+"/"+run, func(b *testing.B) {
				m := shipped(b)
				for b.Loop() {
					if run == "mend" {
						_, err = m.Mend("t.hcl", text, 0)
					} else {
						_, _, err = m.Suggest("t.hcl", text, 0)
					}
					if err != nil {
						b.Fatal(err)
					}
				}
				b.ReportMetric(float64(m.Judgements)/float64(b.N), "judgements/op")
				b.ReportMetric(float64(m.Reads)/float64(b.N), "reads/op")
			})
		}
	}
}
