package engine_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"forebake/engine"
)

// heavy is a legal formula of some 20 KB: a chain of doughs, each with
// many chills to search for mends.
func heavy(name string) []byte {
	var b strings.Builder
	fmt.Fprintf(&b, "formula %q {\n", name)
	for d := range 8 {
		fmt.Fprintf(&b, "  dough \"d%d\" {\n    ingredients = {\n", d)
		for _, in := range []string{"bread flour = 500", "water = 300", "egg = 100",
			"instant yeast = 9",
			"sugar = 80", "butter = 100", "salt = 2"} {
			what, grams, _ := strings.Cut(in, " = ")
			fmt.Fprintf(&b, "      %q = \"%s g\"\n", what, grams)
		}
		if d > 0 {
			fmt.Fprintf(&b, "      \"the d%d\" = \"300 g\"\n", d-1)
		}
		b.WriteString("    }\n    steps = [\n      { mix = \"8 min\", to = \"26 C\" },\n")
		for i := range 40 {
			fmt.Fprintf(
				&b,
				"      { chill = \"%d h\", at = \"fridge\", as = \"bowl\", covered = true },\n",
				1+i%3,
			)
		}
		b.WriteString("    ]\n  }\n")
	}
	b.WriteString("}\n")
	return []byte(b.String())
}

// Formulas in which every step may be mended are checked within
// seconds, and say what was not searched; an easy one beside them has
// its mend. Any number of workers gives the same mends. Without a
// budget one of them takes minutes.
func TestMendsEndAtTheirBudget(t *testing.T) {
	if testing.Short() {
		t.Skip("takes seconds")
	}
	var inputs []engine.Input
	inputs = append(
		inputs,
		engine.Input{Name: "easy.hcl", Dir: ".", Text: []byte("formula \"easy\" {\n" +
			"  dough \"d\" {\n    ingredients = {\n      \"bread flour\" = \"500 g\"\n" +
			"      \"water\" = \"300 g\"\n      \"instant yeast\" = \"5 g\"\n    }\n  }\n}\n")},
	)
	for i := range 11 {
		inputs = append(
			inputs,
			engine.Input{Name: fmt.Sprintf("h%d.hcl", i), Text: heavy(fmt.Sprint("heavy ", i)),
				Dir: "."},
		)
	}
	var told []string
	for _, workers := range []int{1, 2} {
		e := engine.New()
		e.Workers = workers
		res := e.Check(inputs)
		e.Suggest(res, res.Places())
		var b strings.Builder
		mends := 0
		for _, f := range res.Findings {
			fmt.Fprintln(&b, f.Rule, f.Place, f.Mends)
			mends += len(f.Mends)
		}
		about := func(n string) bool { return strings.Contains(n, "ended at its budget") }
		notices := slices.DeleteFunc(slices.Clone(res.Notices), func(n string) bool {
			return !about(n)
		})
		if len(notices) != len(inputs)-1 {
			t.Errorf(
				"%d workers: %d notices of a budget for %d heavy files",
				workers,
				len(notices),
				len(inputs)-1,
			)
		}
		if mends == 0 {
			t.Errorf("%d workers: no mend at all", workers)
		}
		told = append(told, b.String())
	}
	if told[0] != told[1] {
		t.Error("two workers tell other mends than one")
	}
}
