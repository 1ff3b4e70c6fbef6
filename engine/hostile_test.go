package engine_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// vast is a formula about as large as a file can hold: many parts, each
// with many ingredients of an open amount.
func vast(parts, ingredients int, amount string) []byte {
	names := larder.New().Names()
	var b strings.Builder
	b.WriteString("formula \"vast\" {\n")
	for p := range parts {
		fmt.Fprintf(&b, "dough \"d%d\" {\ningredients = {\n", p)
		for i := range ingredients {
			fmt.Fprintf(&b, "%q=%q\n", names[i%len(names)], amount)
		}
		b.WriteString(
			"}\nsteps=[{mix=\"3 min\",to=\"24 C\"},{rest=\"6 h\",at=\"room\"},{proof=\"1 " +
				"h\",at=\"28 C\"}]\n}\n",
		)
	}
	b.WriteString("}\n")
	return []byte(b.String())
}

// worst is a pack of rules, each with the longest condition that reads
// the most figures.
func worst(rules int, on, join string) string {
	var clauses []string
	nodes := 0
	for _, owner := range []struct {
		on   facts.On
		name string
	}{{facts.OnIngredient, "ingredient"}, {facts.OnPart, "part"}, {facts.OnFormula, "formula"}} {
		if on != "ingredient" && owner.name == "ingredient" ||
			on == "formula" && owner.name == "part" {
			continue
		}
		for _, f := range facts.All(owner.on) {
			if f.Type != facts.Number || nodes+8 > expr.MaxNodes {
				continue
			}
			clauses = append(clauses, fmt.Sprintf("%s.%s > 7.5", owner.name, f.Name))
			nodes += 6
		}
	}
	when := strings.Join(clauses, " "+join+" ")
	var b strings.Builder
	for i := range rules {
		fmt.Fprintf(
			&b,
			"rule \"r%d\" {\n  on = %q\n  level = \"stop\"\n  when = %q\n  say = \"s\"\n"+
				"  why = \"w\"\n  source = \"s\"\n}\n",
			i,
			on,
			when,
		)
	}
	return b.String()
}

// never is a pack of rules with the longest conditions, which
// never hold.
func never(rules int) string {
	when := "ingredient.amount_g < -1"
	for nodes := 7; nodes+12 < expr.MaxNodes; nodes += 12 {
		when += " or ingredient.pct + part.mass_g < -1"
	}
	var b strings.Builder
	for i := range rules {
		fmt.Fprintf(
			&b,
			"rule \"n%d\" {\n  on = \"ingredient\"\n  level = \"stop\"\n  when = %q\n"+
				"  say = \"s\"\n  why = \"w\"\n  source = \"s\"\n}\n",
			i,
			when,
		)
	}
	return b.String()
}

// always is one rule that finds something in every ingredient, with the
// longest messages.
func always() string {
	say := strings.Repeat("{part.name} {formula.allergens} ", 16)
	long := strings.Repeat("x", rule.MaxTextBytes)
	return fmt.Sprintf(
		"rule \"a\" {\n  on = \"ingredient\"\n  level = \"stop\"\n"+
			"  when = \"ingredient.amount_g > -1 or ingredient.amount_g <= -1\"\n  say = %q\n"+
			"  why = %q\n  source = %q\n}\n",
		say+long[:rule.MaxTextBytes-len(say)],
		long,
		long,
	)
}

// hostile gives a check of a text in a house with one pack.
func hostile(t testing.TB, pack string, text []byte) func() *engine.Result {
	t.Helper()
	dir := t.TempDir()
	for name, text := range map[string]string{
		"worst.hcl": pack,
		"house.hcl": "house \"h\" {\n  packs = [\"./worst.hcl\"]\n}\n",
	} {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	return func() *engine.Result {
		e := engine.New()
		e.Workers = 1
		return e.Check([]engine.Input{{Name: "vast.hcl", Text: text, Dir: dir}})
	}
}

// vastest gives a formula that fills a file, with the most ingredients.
func vastest(amount string) []byte {
	n := formula.MaxIngredients
	for len(vast(formula.MaxParts, n, amount)) > source.MaxFileBytes {
		n--
	}
	return vast(formula.MaxParts, n, amount)
}

// BenchmarkHostile is what the worst packs cost on the largest
// formulas: the bounds in DEVELOPERS.md. No run may take much more than
// a second a rule, nor more than some hundred megabytes.
func BenchmarkHostile(b *testing.B) {
	for _, test := range []struct {
		name, pack, amount string
	}{
		{"one rule, open amounts", worst(1, "ingredient", "or"), "?"},
		{"one rule, ranges", worst(1, "ingredient", "or"), "1 g to 9 g"},
		{"one rule that never holds", never(1), "1 g"},
		{"500 rules that never hold", never(rule.MaxRules), "1 g"},
		{"500 rules on parts, open amounts", worst(rule.MaxRules, "part", "or"), "?"},
		{"500 rules on the formula, open amounts", worst(rule.MaxRules, "formula", "or"), "?"},
		{"longest messages", always(), "1 g"},
	} {
		b.Run(test.name, func(b *testing.B) {
			run := hostile(b, test.pack, vastest(test.amount))
			b.ReportAllocs()
			for b.Loop() {
				for _, p := range run().Problems {
					if !strings.Contains(p.Text, "more than 5000 findings") {
						b.Fatal(p)
					}
				}
			}
		})
	}
}

// A file with the most findings is checked; with one more it is
// refused, at its formula, and not taken for clear.
func TestMaxFindings(t *testing.T) {
	const inPart = 200
	parts := rule.MaxFindings / inPart
	text := vast(parts, inPart, "1 g")
	res := hostile(t, always(), text)()
	if len(res.Findings) != rule.MaxFindings || len(res.Problems) > 0 {
		t.Errorf("at the limit: %d findings and %v", len(res.Findings), res.Problems)
	}
	more := strings.Replace(
		string(text),
		"formula \"vast\" {\n",
		"formula \"vast\" {\ndough \"one more\" { ingredients = { \"water\" = \"1 g\" } }\n",
		1,
	)
	res = hostile(t, always(), []byte(more))()
	if len(res.Findings) > 0 || len(res.Formulas) > 0 || len(res.Problems) != 1 ||
		res.Problems[0].Place.Line() != 1 ||
		!strings.Contains(res.Problems[0].Text, "more than 5000 findings") {
		t.Errorf(
			"over it: %d findings, %d formulas and %v",
			len(res.Findings),
			len(res.Formulas),
			res.Problems,
		)
	}
}

// TestPartsWithinParts checks a formula in which each part takes in all
// earlier ones: there are 2^62 paths through it, so each part must be
// visited once. It ends at once or not at all.
func TestPartsWithinParts(t *testing.T) {
	for _, milk := range []string{"100 g", "?"} {
		var b strings.Builder
		b.WriteString("formula \"deep\" {\n")
		for k := range formula.MaxParts - 1 {
			fmt.Fprintf(
				&b,
				"  filling \"p%d\" {\n    ingredients = {\n      \"whole milk\" = %q\n"+
					"      \"egg\" = \"10 g\"\n      \"walnuts\" = \"1 g\"\n",
				k,
				milk,
			)
			for j := range k {
				fmt.Fprintf(&b, "      \"the p%d\" = \"1 g\"\n", j)
			}
			b.WriteString("    }\n    steps = [{ hold = \"5 min\", at = \"20 C\" }]\n  }\n")
		}
		fmt.Fprintf(
			&b,
			"  dough \"d\" {\n    ingredients = {\n      \"bread flour\" = \"500 g\"\n"+
				"      \"water\" = \"300 g\"\n      \"the p%d\" = \"1 g\"\n    }\n"+
				"    steps = [{ mix = \"5 min\", to = \"24 C\" }]\n  }\n}\n",
			formula.MaxParts-2,
		)
		in := engine.Input{Name: "deep.hcl", Text: []byte(b.String()), Dir: "."}
		res := engine.New().Check([]engine.Input{in})
		if len(res.Problems) > 0 || len(res.Formulas) != 1 || len(res.Findings) == 0 {
			t.Fatalf("milk %s: %v, %d findings", milk, res.Problems, len(res.Findings))
		}
		if rows, res := engine.New().Facts([]engine.Input{in}, nil, true); len(res.Problems) > 0 ||
			len(rows) == 0 {
			t.Fatalf("milk %s: %v, %d figures", milk, res.Problems, len(rows))
		}
	}
}
