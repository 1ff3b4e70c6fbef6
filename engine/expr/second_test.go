package expr

import (
	"strings"
	"testing"

	"forebake/engine/facts"
)

// damages are faults that the interval judge could have. Each must be seen by the second judge.
func damages(x *Expr) map[string]func() {
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
			out["another text"] = func() { n.text += "?" }
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

// A fault of the interval judge is seen by the second judge on one of these, whose answers all are
// certain and turn on the damaged place; without a fault the two agree.
func TestSecondJudgeSeesFaults(t *testing.T) {
	seen := map[string]int{}
	s := sheet(t)
	for _, text := range []string{
		"limit.at <= 22", "limit.at < 22", "22 <= limit.at or dough.has_nuts", "dough.has_egg and dough.has_nuts", "dough.has_egg or dough.has_nuts",
		"dough.sugar_pct - dough.salt_pct < 21", "dough.sugar_pct + dough.salt_pct > 23", "dough.sugar_pct / 2 < 12",
		"min(dough.sugar_pct, dough.salt_pct) < 2", "-dough.sugar_pct < 5", "dough.family != 'challah'", "dough.family == 'sweet dough'",
		"(dough.has_egg ? dough.sugar_pct : dough.salt_pct) > 20", "dough.family in ['sweet dough', 'challah']", "dough.flour_g > 449 and dough.flour_g < 551",
		"known(dough.ph) or dough.ph > 4 or dough.has_egg", "dough.sugar_pct in [22, 3]",
	} {
		for name := range damages(mustParse(t, text)) {
			x, n := parse(t, nil, "dough", text, Limit{Name: "at", Value: 22})
			j := &Judge{}
			j.Open(s)
			if err := (&Second{}).Check(j, x, n, first(n, s), n.Limits); err != nil {
				t.Errorf("%s: %v", text, err)
			}
			was := j.Holds(x, first(n, s), n.Limits)
			damages(x)[name]()
			if j.Holds(x, first(n, s), n.Limits) == was {
				continue // the answer does not turn on it
			}
			err := (&Second{}).Check(j, x, n, first(n, s), n.Limits)
			if err == nil || !strings.Contains(err.Error(), "the two judges differ") {
				t.Errorf("%s, with %s: %v", text, name, err)
			}
			seen[name]++
		}
	}
	if len(seen) < 12 {
		t.Errorf("only %d faults were tried: %v", len(seen), seen)
	}
}

func mustParse(t testing.TB, text string) *Expr {
	x, _ := parse(t, nil, "dough", text, Limit{Name: "at", Value: 22})
	return x
}

// A figure is judged twice too, with what it is; a fault in it is told with its name.
func TestSecondJudgeLooksIntoFigures(t *testing.T) {
	declared, problems := figures(t, `figure "richness_pct" {
  on    = "dough"
  is    = "dough.fat_pct + dough.egg_pct"
  means = "m"
}
figure "twice_pct" {
  on    = "dough"
  is    = "2 * dough.richness_pct"
  means = "m"
}
`)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	s := sheet(t)
	x, n := parse(t, declared, "dough", "dough.twice_pct > 1")
	check := func() error {
		j := &Judge{}
		s.Reset(s.Formula, s.Kitchen)
		j.Open(s)
		return (&Second{}).Check(j, x, n, first(n, s), nil)
	}
	if err := check(); err != nil {
		t.Fatal(err)
	}
	declared.List()[0].Is.root.op = opSub
	if err := check(); err == nil || !strings.HasPrefix(err.Error(), `figure "twice_pct": figure "richness_pct": the two judges differ`) {
		t.Errorf("a fault in a figure is told as %v", err)
	}
}

// Names that the library's checker must refuse where the type-checker of this package has a hole.
func TestSecondJudgeChecksNamesAndTypes(t *testing.T) {
	x, n := parse(t, nil, "dough", "dough.sugar_pct > 1")
	for text, says := range map[string]string{
		"dough.sugr_pct > 1": "unknown field sugr_pct", "dough.family > 1": "invalid operation", "dough.sugar_pct": "expected bool", "bun.sugar_pct > 1": "unknown name bun",
	} {
		other := *x
		other.text = text
		if _, err := compile(&other, n); err == nil || !strings.Contains(err.Error(), says) {
			t.Errorf("%s: %v", text, err)
		}
	}
}

func BenchmarkSecondJudge(b *testing.B) {
	s := sheet(b)
	x, n := parse(b, nil, "dough", "dough.sugar_pct >= limit.at && dough.has_leaven && dough.yeast_pct < 0.6 * dough.salt_pct", Limit{Name: "at", Value: 20})
	j := &Judge{}
	j.Open(s)
	second := &Second{}
	subject := first(n, s)
	if subject.On != facts.OnPart {
		b.Fatal("no dough")
	}
	for b.Loop() {
		if err := second.Check(j, x, n, subject, n.Limits); err != nil {
			b.Fatal(err)
		}
	}
}
