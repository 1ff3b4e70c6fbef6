package mend_test

import (
	"bytes"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/mend"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// answersOf gives the answer to each rule that is not clear, by a check
// of its own.
func answersOf(t testing.TB, text []byte) map[string]finding.Answer {
	t.Helper()
	res := engine.New().Check([]engine.Input{{Name: "t.hcl", Text: text, Dir: "../../formulas"}})
	if len(res.Problems) > 0 {
		t.Fatalf("%v\n%s", res.Problems, text)
	}
	out := map[string]finding.Answer{}
	for _, f := range res.Findings {
		out[oneName(f.Rule, f.Subject)] = f.Answer
	}
	return out
}

// badness orders answers from good to bad.
func badness(a finding.Answer) int {
	return map[finding.Answer]int{finding.Unsure: 1, finding.Waived: 2, finding.Flagged: 2}[a]
}

// worseThan lists what one text answers worse than another.
func worseThan(a, b map[string]finding.Answer) []string {
	var out []string
	for name, answer := range a {
		if badness(answer) > badness(b[name]) {
			out = append(out, name)
		}
	}
	return out
}

// formulasOfDemo lists the demo formulas, and one trial in some of
// the packs.
func formulasOfDemo(t testing.TB, everyTrial int) map[string][]byte {
	t.Helper()
	out := map[string][]byte{}
	paths, _ := filepath.Glob("../../formulas/*.hcl")
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if bytes.Contains(text, []byte("\nformula ")) || bytes.HasPrefix(text, []byte("formula ")) {
			out[filepath.Base(path)] = text
		}
	}
	paths, _ = filepath.Glob("../../rules/*.hcl")
	n := 0
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		body, _ := source.Parse(source.New(path, text))
		for _, b := range body.Blocks {
			for _, inner := range b.Body.Blocks {
				if b.Type != "trial" || inner.Type != "formula" {
					continue
				}
				if n++; n%everyTrial == 0 {
					at, end := inner.Range().Start.Byte, inner.CloseBraceRange.End.Byte
					out[b.Labels[0]] = append(bytes.Clone(text[at:end]), '\n')
				}
			}
		}
	}
	return out
}

// TestEachChangeIsNeeded undoes each change of a mend alone, and holds
// that a separate check answers something worse without it. It holds
// that every answer that a mend makes worse is told, and that none of
// them is about food safety.
func TestEachChangeIsNeeded(t *testing.T) {
	m := shipped(t)
	m.Budget = 60_000
	undone, told := 0, 0
	for name, text := range formulasOfDemo(t, 4) {
		now, each, err := m.Undone("t.hcl", text, 0)
		if err != nil {
			continue // a trial whose tins the demo house lacks
		}
		o, err := m.Mend("t.hcl", text, 0)
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(o.Text, now) {
			t.Fatalf("%s: two searches, two texts", name)
		}
		base, with := answersOf(t, text), answersOf(t, now)
		worse := map[string]bool{}
		for _, w := range o.Mending.Worse {
			worse[oneName(w.Rule, w.Subject)] = true
		}
		for _, w := range worseThan(with, base) {
			if told++; !worse[w] {
				t.Errorf("%s: %s is worse, and not told", name, w)
			}
		}
		for _, w := range o.Mending.Worse {
			for _, r := range m.Rules {
				if r.ID == w.Rule && r.Safety {
					t.Errorf("%s: a mend opens %s", name, w.Rule)
				}
			}
		}
		for i, left := range each {
			if left == nil {
				continue
			}
			undone++
			without := answersOf(t, left)
			returns := len(worseThan(without, with)) > 0
			if !returns {
				t.Errorf("%s: change %d is not needed:\n%+v", name, i, o.Mending.Changes[i])
			}
		}
	}
	if undone < 20 {
		t.Errorf("only %d changes were undone", undone)
	}
	t.Logf("%d changes undone, %d answers worse or open", undone, told)
}

// TestBudget holds that a search within a budget ends near it, says so,
// and finds the same each time.
func TestBudget(t *testing.T) {
	text, err := os.ReadFile("../../formulas/second-draft.hcl")
	if err != nil {
		t.Fatal(err)
	}
	for budget := 50; budget < 20_000; budget = budget*3/2 + 7 {
		var first string
		for range 2 {
			m := shipped(t)
			m.Budget = budget
			o, err := m.Mend("t.hcl", text, 0)
			if err != nil {
				t.Fatal(err)
			}
			if !o.Mending.Spent {
				t.Errorf("%d is no bound", budget)
			}
			list, complete, err := m.Suggest("t.hcl", text, 0)
			if err != nil || complete && budget < 5_000 {
				t.Errorf("%d: %v, complete %v", budget, err, complete)
			}
			if got := fmt.Sprintf("%s%+v%+v", o.Text, o.Mending, list); first == "" {
				first = got
			} else if got != first {
				t.Errorf("%d: two searches, two answers", budget)
			}
		}
	}
}

// TestEnded holds that a search that is wanted no more stops, and says
// that it is not complete.
func TestEnded(t *testing.T) {
	text, err := os.ReadFile("../../formulas/second-draft.hcl")
	if err != nil {
		t.Fatal(err)
	}
	whole := shipped(t)
	if _, complete, err := whole.Suggest("t.hcl", text, 0); err != nil || !complete {
		t.Fatal(err, complete)
	}
	asked := 0
	m := shipped(t)
	m.Ended = func() bool { asked++; return asked > 5 }
	_, complete, err := m.Suggest("t.hcl", text, 0)
	if err != nil || complete || m.Reads*2 > whole.Reads {
		t.Errorf("%v, complete %v, %d texts read of %d", err, complete, m.Reads, whole.Reads)
	}
}

// TestRestatingIsNotChanging writes every solid of the larder by spoon
// and cup, and has it restated on every scale that is sold. The mass
// stays up to half a step, or nothing is restated. No other figure
// leaves what that step explains.
func TestRestatingIsNotChanging(t *testing.T) {
	rule := ruleOn("ingredient", "ingredient.by_volume && ingredient.is_solid",
		`adjust "amount" { to = "ingredient.amount_g" }`)
	restated := 0
	store := larder.New()
	for _, name := range store.Names() {
		item, known := store.Find(name)
		if !known || item.Name != name || item.Density == 0 || item.SpoonSpread == 0 {
			continue
		}
		for _, amount := range []string{"0.25 tsp", "1 tsp", "2.5 tsp", "2 tbsp", "0.75 cup"} {
			for _, scale := range []float64{0.01, 0.1, 1, 5} {
				text := fmt.Sprintf("formula \"t\" {\n  dough \"d\" {\n    ingredients = {\n"+
					"      \"bread flour\" = \"1000 g\"\n      \"water\" = \"600 g\"\n"+
					"      %q = %q\n    }\n  }\n}\n", item.Name, amount)
				if strings.Count(text, `"`+item.Name+`"`) > 1 {
					continue
				}
				m := mender(t, rule)
				m.Kitchen.Scale = reading.Given{Set: true}
				m.Kitchen.Scale.Lo, m.Kitchen.Scale.Hi = scale, scale
				before := readText(t, m, []byte(text))
				o, after := mended(t, m, text)
				was, is := grams(t, before, item.Name), grams(t, after, item.Name)
				step := scale
				if was >= 100 {
					step = max(scale, 1)
				}
				if math.Abs(is-was) > step/2+1e-9 {
					t.Errorf(
						"%s of %s is %v g, and became %v g on a scale of %v g",
						amount,
						item.Name,
						was,
						is,
						scale,
					)
				}
				if len(o.Mending.Changes) == 0 {
					continue
				}
				restated++
				share := math.Abs(is-was) / was
				if spread := max(0.05, item.SpoonSpread/100); share > spread {
					t.Errorf(
						"%s of %s moves by %.3g, and the spoon by %.3g",
						amount,
						item.Name,
						share,
						spread,
					)
				}
				sameFigures(t, m.Kitchen, text, string(o.Text), share)
			}
		}
	}
	if restated < 100 {
		t.Errorf("only %d were restated", restated)
	}
}

// sameFigures holds that the figures of a dough move by no larger share
// than an ingredient did.
func sameFigures(t *testing.T, k *kitchen.Kitchen, was, is string, share float64) {
	t.Helper()
	m := &mend.Mender{Options: plainOptions()}
	before, after := readText(t, m, []byte(was)), readText(t, m, []byte(is))
	a, b := facts.NewSheet(before, k), facts.NewSheet(after, k)
	for _, name := range []string{"hydration_pct", "sugar_pct", "salt_pct", "fat_pct", "egg_pct",
		"yeast_pct"} {
		fact, known := facts.Find(facts.OnPart, name)
		if !known {
			t.Fatal(name)
		}
		x := a.Value(fact, facts.Subject{On: facts.OnPart, Part: before.Parts[0]})
		y := b.Value(fact, facts.Subject{On: facts.OnPart, Part: after.Parts[0]})
		if math.Abs(x.Mid-y.Mid) > share*math.Abs(x.Mid)*1.1+1e-9 {
			t.Errorf(
				"%s was %v and is %v, and the ingredient moved by %v\n%s",
				name,
				x.Mid,
				y.Mid,
				share,
				is,
			)
		}
	}
}

// TestWishesStay holds that no mend of the demo changes what the baker
// wants to reach.
func TestWishesStay(t *testing.T) {
	m := shipped(t)
	wish := regexp.MustCompile(`\b(makes|keep|to|core|measured)\s*=\s*"[^"]*"`)
	for _, name := range []string{"first-draft.hcl", "second-draft.hcl"} {
		text, err := os.ReadFile("../../formulas/" + name)
		if err != nil {
			t.Fatal(err)
		}
		o, err := m.Mend("t.hcl", text, 0)
		if err != nil {
			t.Fatal(err)
		}
		is := wish.FindAllString(string(o.Text), -1)
		for _, was := range wish.FindAllString(string(text), -1) {
			if !strings.Contains(strings.Join(is, "\n"), was) {
				t.Errorf("%s: %s is gone", name, was)
			}
		}
	}
}

// TestDoubtedComments holds that a comment on a changed line is named.
func TestDoubtedComments(t *testing.T) {
	text := strings.Replace(fmt.Sprintf(plainDough, "5 g"), `"5 g"`, `"5 g" # half a packet`, 1)
	text = "# the yeast is fine\n" + text
	o, _ := mended(t, mender(t, ruleOn("dough", "dough.yeast_pct < 1", `adjust "yeast" {}`)), text)
	if d := o.Mending.Doubted; len(d) != 1 || d[0].Text != "# half a packet" || d[0].Line != 8 {
		t.Errorf("%+v", d)
	}
}

// TestWithinReason holds that no mend makes a bake half as long again,
// or takes a figure out of its published range.
func TestWithinReason(t *testing.T) {
	baked := strings.Replace(fmt.Sprintf(plainDough, "10 g"), "\n  }\n}\n",
		"\n    steps = [{ bake = \"20 min\", at = \"200 C\" }]\n  }\n}\n", 1)
	for limit, want := range map[string]string{"24": "25 min", "30": "20 min", "60": "20 min"} {
		m := mender(
			t,
			ruleOn("bake", "bake.minutes < "+limit, `adjust "step.time" { within = [5, 90] }`),
		)
		o, _ := mended(t, m, baked)
		if !strings.Contains(string(o.Text), `bake = "`+want+`"`) {
			t.Errorf("a bake of 20 min under %s min became\n%s", limit, o.Text)
		}
		if left := o.Mending.Left; want == "20 min" && (len(left) != 1 || left[0].Instead == "") {
			t.Errorf("what a baker would do is not told: %+v", left)
		}
	}
	for limit, changes := range map[string]int{"1.9": 1, "3.5": 0} {
		m := mender(t, ruleOn("dough", "dough.salt_pct < "+limit, `adjust "salt" {}`))
		o, _ := mended(t, m, fmt.Sprintf(plainDough, "10 g"))
		if len(o.Mending.Changes) != changes {
			t.Errorf("salt under %s %%: %+v", limit, o.Mending)
		}
	}
}
