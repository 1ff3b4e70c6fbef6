package expr_test

import (
	"strings"
	"testing"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/machine"
)

// The second judge sees a fault of the interval judge on one of these:
// all answers are certain and turn on the damaged place. Without a
// fault the two agree.
func TestSecondJudgeSeesFaults(t *testing.T) {
	seen := map[string]int{}
	s := expr.Sheet(t)
	for _, text := range []string{
		"limit.at <= 22", "limit.at < 22", "22 <= limit.at or dough.has_nuts",
		"dough.has_egg and dough.has_nuts", "dough.has_egg or dough.has_nuts",
		"dough.sugar_pct - dough.salt_pct < 21", "dough.sugar_pct + dough.salt_pct > 23",
		"dough.sugar_pct / 2 < 12",
		"min(dough.sugar_pct, dough.salt_pct) < 2", "-dough.sugar_pct < 5",
		"dough.family != 'challah'", "dough.family == 'sweet dough'",
		"(dough.has_egg ? dough.sugar_pct : dough.salt_pct) > 20",
		"dough.family in ['sweet dough', 'challah']", "dough.flour_g > 449 and dough.flour_g < 551",
		"known(dough.ph) or dough.ph > 4 or dough.has_egg", "dough.sugar_pct in [22, 3]",
	} {
		for name := range expr.Damages(mustParse(t, text)) {
			x, n := expr.ParseOn(t, nil, "dough", text, expr.Limit{Name: "at", Value: 22})
			j := &expr.Judge{}
			j.Open(s)
			if err := (&machine.Judge{}).Check(j, x, n, expr.First(n, s), n.Limits); err != nil {
				t.Errorf("%s: %v", text, err)
			}
			was := j.Holds(x, expr.First(n, s), n.Limits)
			expr.Damages(x)[name]()
			if j.Holds(x, expr.First(n, s), n.Limits) == was {
				continue // the answer does not turn on it
			}
			err := (&machine.Judge{}).Check(j, x, n, expr.First(n, s), n.Limits)
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

func mustParse(t testing.TB, text string) *expr.Expr {
	x, _ := expr.ParseOn(t, nil, "dough", text, expr.Limit{Name: "at", Value: 22})
	return x
}

// A figure is judged twice too, with what it is; a fault in it is told
// with its name.
func TestSecondJudgeLooksIntoFigures(t *testing.T) {
	declared, problems := expr.DeclareFigures(t, `figure "richness_pct" {
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
	s := expr.Sheet(t)
	x, n := expr.ParseOn(t, declared, "dough", "dough.twice_pct > 1")
	check := func() error {
		j := &expr.Judge{}
		s.Reset(s.Formula, s.Kitchen)
		j.Open(s)
		return (&machine.Judge{}).Check(j, x, n, expr.First(n, s), nil)
	}
	if err := check(); err != nil {
		t.Fatal(err)
	}
	expr.Damages(declared.List()[0].Is)["minus for plus"]()
	if err := check(); err == nil ||
		!strings.HasPrefix(
			err.Error(),
			`figure "twice_pct": figure "richness_pct": the two judges differ`,
		) {
		t.Errorf("a fault in a figure is told as %v", err)
	}
}

func BenchmarkSecondJudge(b *testing.B) {
	s := expr.Sheet(b)
	x, n := expr.ParseOn(
		b,
		nil,
		"dough",
		"dough.sugar_pct >= limit.at && dough.has_leaven && dough.yeast_pct < 0.6 * dough.salt_pct",
		expr.Limit{Name: "at", Value: 20},
	)
	j := &expr.Judge{}
	j.Open(s)
	second := &machine.Judge{}
	subject := expr.First(n, s)
	if subject.On != facts.OnPart {
		b.Fatal("no dough")
	}
	for b.Loop() {
		if err := second.Check(j, x, n, subject, n.Limits); err != nil {
			b.Fatal(err)
		}
	}
}
