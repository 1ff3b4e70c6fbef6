package expr

import (
	"testing"

	"forebake/engine/expr/subject"
	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// What follows is for the tests in package expr_test, which know the
// second judge too.

// bench is a formula with a dough of ranges and a filling of holes, and
// what is read of it.
const bench = `formula "t" {
  family = "sweet dough"
  dough "d" {
    ingredients = {
      "bread flour" = "450 g to 550 g", "sugar" = "22 %", "salt" = "1.8 %"
      "instant yeast" = "1 %", "egg" = "100 g", "unsalted butter" = "80 g"
    }
    steps = [{ mix = "9 min", to = "25 C" }, { bake = "16 min", at = "200 C" }]
  }
  filling "f" { ingredients = { "sugar" = "?", "unsalted butter" = "90 g" } }
}
`

// Sheet is the sheet of bench.
func Sheet(t testing.TB) *facts.Sheet {
	t.Helper()
	f := source.New("f.hcl", []byte(bench))
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: f}
	out := read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
	if len(r.Problems) > 0 {
		t.Fatal(r.Problems)
	}
	return facts.NewSheet(out, kitchen.Default())
}

// DeclareFigures reads figure blocks.
func DeclareFigures(t testing.TB, text string) (*Figures, source.Problems) {
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

// ParseOn reads an expression on a subject.
func ParseOn(t testing.TB, s *Figures, on, text string, limits ...Limit) (*Expr, *Names) {
	t.Helper()
	subject, _, fault := subject.New([]string{on}, "rule")
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

// First is the first subject that the names look at.
func First(n *Names, s *facts.Sheet) (out facts.Subject) {
	found := false
	n.Subject.Each(s.Formula, func(x facts.Subject) {
		if !found {
			out, found = x, true
		}
	})
	return out
}

// Damages are faults that the interval judge could have. Each must be
// seen by the second judge.
func Damages(x *Expr) map[string]func() {
	out := map[string]func(){}
	swap := func(name string, from, to op) {
		for _, n := range nodes(x.root) {
			if n.op == from {
				out[name] = func() { n.op = to }
			}
		}
	}
	swap("less for less or equal", opLessEq, opLess)
	swap("less or equal for less", opLess, opLessEq)
	swap("or for and", opAnd, opOr)
	swap("and for or", opOr, opAnd)
	swap("plus for minus", opSub, opAdd)
	swap("minus for plus", opAdd, opSub)
	swap("times for a quotient", opDiv, opMul)
	swap("greatest for least", opMin, opMax)
	swap("a sign lost", opNeg, opAbs)
	swap("equal for unequal", opNotEqual, opEqual)
	for _, n := range nodes(x.root) {
		switch n.op {
		case opNumber:
			out["another number"] = func() { n.number += 7 }
		case opText:
			out["another text"] = func() { n.words = []string{n.words[0] + "?"} }
		case opChoose:
			out["the other side"] = func() { n.kids[1], n.kids[2] = n.kids[2], n.kids[1] }
		}
	}
	return out
}

func nodes(n *node) []*node {
	out := []*node{n}
	for _, k := range n.kids {
		out = append(out, nodes(k)...)
	}
	return out
}
