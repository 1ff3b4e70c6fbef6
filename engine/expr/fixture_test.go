package expr

import (
	"testing"

	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// bench is a formula with a dough of ranges and a filling of holes, and what is read of it.
const bench = `formula "t" {
  family = "sweet dough"
  dough "d" {
    ingredients = {
      "bread flour" = "450 g to 550 g", "sugar" = "22 %", "salt" = "1.8 %", "instant yeast" = "1 %", "egg" = "100 g", "unsalted butter" = "80 g"
    }
    steps = [{ mix = "9 min", to = "25 C" }, { bake = "16 min", at = "200 C" }]
  }
  filling "f" { ingredients = { "sugar" = "?", "unsalted butter" = "90 g" } }
}
`

func sheet(t testing.TB) *facts.Sheet {
	t.Helper()
	f := source.New("f.hcl", []byte(bench))
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: f}
	out := formula.Read(r, body.Blocks[0], formula.Options{Larder: larder.New()})
	if len(r.Problems) > 0 {
		t.Fatal(r.Problems)
	}
	return facts.NewSheet(out, kitchen.Default())
}

// figures reads figure blocks.
func figures(t testing.TB, text string) (*Figures, source.Problems) {
	t.Helper()
	f := source.New("figures.hcl", []byte(text))
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: f}
	s := &Figures{}
	for _, b := range body.Blocks {
		s.Read(r, b, "p")
	}
	s.Check()
	return s, r.Problems.Sort()
}

// parse reads an expression on a subject.
func parse(t testing.TB, s *Figures, on, text string, limits ...Limit) (*Expr, *Names) {
	t.Helper()
	subject, _, fault := NewSubject([]string{on}, "rule")
	if fault != "" {
		t.Fatal(fault)
	}
	r := &reading.Reader{File: source.New("when", []byte(text))}
	n := &Names{Subject: subject, Figures: s, Limits: limits}
	offsets := make([]int, 0, len(text)+1)
	for i := range text {
		offsets = append(offsets, i)
	}
	x := ParseText(r, text, append(offsets, len(text)), n, "when")
	if x == nil {
		t.Fatalf("%s: %v", text, r.Problems)
	}
	return x, n
}

// first is the first subject that the names look at.
func first(n *Names, s *facts.Sheet) (out facts.Subject) {
	found := false
	n.Subject.Each(s.Formula, func(x facts.Subject) {
		if !found {
			out, found = x, true
		}
	})
	return out
}
