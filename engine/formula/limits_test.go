package formula_test

import (
	"fmt"
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Every limit of a formula is tried at, under and over.
func TestLimits(t *testing.T) {
	names := larder.New().Names()
	part := func(name string, ingredients, steps int) string {
		var b strings.Builder
		fmt.Fprintf(&b, "  dough %q {\n    ingredients = {\n", name)
		for i := range ingredients {
			fmt.Fprintf(&b, "      %q = \"1 g\"\n", names[i])
		}
		fmt.Fprintf(
			&b,
			"    }\n    steps = [%s]\n  }\n",
			strings.Repeat("{ rest = \"1 min\", at = \"room\" }, ", steps),
		)
		return b.String()
	}
	parts := func(n int) string {
		var b strings.Builder
		for i := range n {
			b.WriteString(part(fmt.Sprintf("d%d", i), 1, 0))
		}
		return b.String()
	}
	if len(names) <= formula.MaxIngredients {
		t.Fatalf("the larder has %d names only", len(names))
	}
	for _, test := range []struct {
		what string
		most int
		body func(n int) string
		says string
	}{
		{"parts", formula.MaxParts, parts, "65 parts in one formula; 64 is the most"},
		{"ingredients", formula.MaxIngredients, func(n int) string {
			return part("d", n, 0)
		}, "257 ingredients in one part; 256 is the most"},
		{"steps", formula.MaxSteps, func(n int) string {
			return part("d", 1, n)
		}, "129 steps in one part; 128 is the most"},
		{"name", reading.MaxNameBytes, func(n int) string {
			return part(strings.Repeat("d", n), 1, 0)
		}, "the name of this dough is 257 bytes long; 256 is the most"},
	} {
		for _, n := range []int{test.most - 1, test.most, test.most + 1} {
			f := source.New("f.hcl", []byte("formula \"f\" {\n"+test.body(n)+"}\n"))
			body, problems := source.Parse(f)
			if len(problems) > 0 {
				t.Fatal(problems)
			}
			r := &reading.Reader{File: f}
			read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
			over := false
			for _, p := range r.Problems {
				over = over || strings.Contains(p.Text, test.says)
			}
			if over != (n > test.most) || n <= test.most && len(r.Problems) > 0 {
				t.Errorf("%d %s: %.300v", n, test.what, r.Problems)
			}
		}
	}
	long := source.New(
		"f.hcl",
		[]byte(
			fmt.Sprintf(
				"formula \"f\" {\n  dough \"d\" {\n    ingredients = { %q = \"1 g\" }\n  }\n}\n",
				"water"+strings.Repeat(" ", 300)+"x",
			),
		),
	)
	body, _ := source.Parse(long)
	r := &reading.Reader{File: long}
	read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
	if len(r.Problems) == 0 ||
		!strings.Contains(r.Problems[0].Text, "the name of this ingredient is 306 bytes long") {
		t.Errorf("a long name of an ingredient: %v", r.Problems)
	}
}
