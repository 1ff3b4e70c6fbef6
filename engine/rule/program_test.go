package rule

import (
	"slices"
	"strings"
	"testing"

	"forebake/engine/expr/subject"
	"forebake/engine/rule/show"

	"pgregory.net/rapid"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/machine"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// pool is what a generated condition may read: few names, so that they
// meet each other.
type pool struct {
	numbers, yesNos, texts, lists []string
	words                         []string // that texts are compared with
}

// drawPool draws a subject for a rule and the figures that its
// condition may read.
func drawPool(t *rapid.T) (on string, limits []expr.Limit, p *pool) {
	on = rapid.SampledFrom(append(append([]string{"formula", "part", "step", "ingredient"},
		formula.KindNames...), formula.VerbNames(nil)...)).
		Draw(t, "on")
	kind := subjectNamed(on).On
	p = &pool{
		words: []string{
			"instant",
			"mixed",
			"none",
			"standard",
			"sweet dough",
			"milk",
			"Wheat",
			"egg",
			"dough",
			"flour",
			"dairy",
			"hand",
			"mix",
		},
	}
	add := func(owner string, fs []*facts.Fact) {
		for _, f := range fs {
			if f.On == facts.OnStep &&
				(on == "step" && len(f.Verbs) > 0 || on != "step" && !f.HasVerb(on)) {
				continue
			}
			name := owner + "." + f.Name
			switch f.Type {
			case facts.Number:
				p.numbers = append(p.numbers, name)
			case facts.YesNo:
				p.yesNos = append(p.yesNos, name)
			case facts.Text:
				p.texts = append(p.texts, name)
			case facts.List:
				p.lists = append(p.lists, name)
			}
		}
	}
	self := on
	if kind == facts.OnPart || kind == facts.OnStep {
		self = rapid.SampledFrom([]string{on, facts.OnNames[kind]}).Draw(t, "self")
	}
	add(self, facts.All(kind))
	if kind == facts.OnStep || kind == facts.OnIngredient {
		add("part", facts.All(facts.OnPart))
	}
	if kind != facts.OnFormula {
		add("formula", facts.All(facts.OnFormula))
	}
	add("kitchen", facts.All(facts.OnKitchen))
	some := func(list []string, most int) []string {
		if len(list) == 0 {
			return nil
		}
		return rapid.SliceOfN(rapid.SampledFrom(list), 1, most).Draw(t, "pool")
	}
	p.numbers, p.yesNos, p.texts, p.lists = some(
		p.numbers,
		6,
	), some(
		p.yesNos,
		4,
	), some(
		p.texts,
		2,
	), some(
		p.lists,
		1,
	)
	for i := range rapid.IntRange(0, 2).Draw(t, "limits") {
		name := []string{"low_pct", "most_g"}[i]
		limits = append(
			limits,
			expr.Limit{Name: name, Value: float64(rapid.IntRange(-50, 500).Draw(t, "limit")) / 10},
		)
		p.numbers = append(p.numbers, "limit."+name)
	}
	return on, limits, p
}

// grammar draws well-typed expressions over a pool.
type grammar struct {
	*rapid.T
	*pool
}

// drawCondition draws a well-typed yes-or-no expression.
func drawCondition(t *rapid.T, p *pool, depth int) string { return grammar{t, p}.yesNo(depth) }

func (g grammar) pick(list ...string) string { return rapid.SampledFrom(list).Draw(g.T, "pick") }
func (g grammar) upTo(most int) int          { return rapid.IntRange(0, most).Draw(g.T, "which") }
func (g grammar) coin() bool                 { return rapid.Bool().Draw(g.T, "coin") }

func (g grammar) number(depth int) string {
	if depth <= 0 || g.upTo(3) == 0 {
		if g.coin() || len(g.numbers) == 0 {
			return g.pick("0", "1", "2.5", "20", "100", "0.001", "1000000000")
		}
		return g.pick(g.numbers...)
	}
	switch g.upTo(8) {
	case 0, 1, 2:
		return g.number(
			depth-1,
		) + " " + g.pick(
			"+",
			"-",
			"*",
			"/",
		) + " " + "(" + g.number(
			depth-1,
		) + ")"
	case 3:
		return "(" + g.number(depth-1) + ") " + g.pick("+", "-", "*") + " " + g.number(depth-1)
	case 4:
		return "-(" + g.number(depth-1) + ")"
	case 5:
		return g.pick("abs", "round") + "(" + g.number(depth-1) + ")"
	case 6:
		list := g.number(depth - 1)
		for range 1 + g.upTo(2) {
			list += ", " + g.number(depth-1)
		}
		return g.pick("min", "max") + "(" + list + ")"
	}
	return "(" + g.yesNo(depth-1) + " ? " + g.number(depth-1) + " : " + g.number(depth-1) + ")"
}

func (g grammar) text(depth int) string {
	if depth > 0 && g.upTo(4) == 0 {
		return "(" + g.yesNo(depth-1) + " ? " + g.text(depth-1) + " : " + g.text(depth-1) + ")"
	}
	if len(g.texts) == 0 || g.coin() {
		return "'" + g.pick(g.words...) + "'"
	}
	return g.pick(g.texts...)
}

func (g grammar) yesNo(depth int) string {
	if depth <= 0 {
		switch g.upTo(3) {
		case 0:
			return g.pick("true", "false")
		case 1:
			return g.number(0) + " " + g.pick("<", ">", "<=", ">=") + " " + g.number(0)
		case 2:
			all := slices.Concat(g.yesNos, g.texts, g.lists, g.numbers, []string{"limit."})
			if name := g.pick(all...); !strings.HasPrefix(name, "limit.") {
				return "known(" + name + ")"
			}
		}
		if len(g.yesNos) > 0 {
			return g.pick(g.yesNos...)
		}
		return "true"
	}
	switch g.upTo(10) {
	case 0, 1, 2:
		return "(" + g.yesNo(
			depth-1,
		) + ") " + g.pick(
			"and",
			"or",
			"&&",
			"||",
		) + " " + g.yesNo(
			depth-1,
		)
	case 3:
		return g.pick("not (", "!(") + g.yesNo(depth-1) + ")"
	case 4, 5, 6:
		return g.number(
			depth-1,
		) + " " + g.pick(
			"<",
			">",
			"<=",
			">=",
			"==",
			"!=",
		) + " " + g.number(
			depth-1,
		)
	case 7:
		return g.text(depth-1) + " " + g.pick("==", "!=") + " " + g.text(depth-1)
	case 8:
		if g.coin() {
			return "(" + g.number(depth-1) + ") in [1, 2.5, 20, 0]"
		}
		if len(g.lists) > 0 && g.coin() {
			return g.text(depth-1) + " in " + g.pick(g.lists...)
		}
		return g.text(depth-1) + " in ['instant', 'none', 'sweet dough', 'mix']"
	case 9:
		return "(" + g.yesNo(depth-1) + " ? " + g.yesNo(depth-1) + " : " + g.yesNo(depth-1) + ")"
	}
	return "(" + g.yesNo(depth-1) + ") " + g.pick("==", "!=") + " (" + g.yesNo(depth-1) + ")"
}

// parseCondition reads the text of a condition as the reader of a
// pack does.
func parseCondition(
	on, text string,
	limits []expr.Limit,
) (*expr.Expr, *expr.Names, source.Problems) {
	r := &reading.Reader{File: source.New("when", []byte(text))}
	n := &expr.Names{Subject: subjectNamed(on), Limits: limits}
	offsets := make([]int, 0, len(text)+1)
	for i := range text {
		offsets = append(offsets, i)
	}
	x := expr.ParseText(r, text, append(offsets, len(text)), n, "when")
	if x != nil && x.Type() != facts.YesNo {
		return nil, n, r.Problems
	}
	return x, n, r.Problems
}

func subjectNamed(word string) *subject.Subject {
	s, _, fault := subject.New([]string{word}, "rule")
	if fault != "" {
		panic(fault)
	}
	return s
}

// subjectsFor lists the subjects of a formula that a rule on the word
// looks at.
func subjectsFor(f *formula.Formula, on string) (out []facts.Subject) {
	subjectNamed(on).Each(f, func(x facts.Subject) { out = append(out, x) })
	return out
}

// Two judges agree wherever every figure is a point, and at every
// sampled point within ranges. At a zero divisor the tree may only
// answer what holds for any quotient.
func TestJudgesAgree(t *testing.T) {
	definite := map[figure.Truth]int{}
	second := &machine.Judge{}
	rapid.Check(t, func(t *rapid.T) {
		f := mustRead(t, drawSketch(t, shape{points: rapid.Bool().Draw(t, "points")}).text())
		j := NewJudge()
		j.Open(facts.NewSheet(f, kitchen.Default()))
		for range 10 {
			on, limits, p := drawPool(t)
			text := drawCondition(t, p, rapid.IntRange(0, 5).Draw(t, "depth"))
			x, n, problems := parseCondition(on, text, limits)
			if x == nil {
				if len(text) < 1500 && !mayRefuse(problems) {
					t.Fatalf("%s\nis refused: %v", text, problems)
				}
				continue
			}
			for _, subject := range subjectsFor(f, on) {
				definite[j.holds(x, subject, limits)]++
				if err := second.Check(&j.judge, x, n, subject, limits); err != nil {
					t.Fatalf("%s\non %s: %v", text, show.Subject(subject), err)
				}
			}
		}
	})
	t.Logf(
		"%d points compared for %d yes, %d no and %d unsure",
		second.Points,
		definite[figure.Yes],
		definite[figure.No],
		definite[figure.Open],
	)
	if second.Points < 2_000 || definite[figure.Yes] == 0 || definite[figure.No] == 0 {
		t.Errorf("too few answers to compare: %d", second.Points)
	}
}

// mayRefuse tells whether a well-typed condition may be refused: for
// its size, or for what is reckoned in it.
func mayRefuse(problems source.Problems) bool {
	for _, p := range problems {
		for _, allowed := range []string{"more than 256 parts", "too many figures", "longer than",
			"division by zero", "nests brackets"} {
			if strings.Contains(p.Text, allowed) {
				return true
			}
		}
	}
	return false
}

func TestDivisionByZeroIsUnsure(t *testing.T) {
	j := NewJudge()
	s := fixedFormulas()[0]
	j.Open(s)
	for text, want := range map[string]figure.Truth{
		"1 / (dough.flour_g - dough.flour_g) > 2":                       figure.Open,
		"1 / (dough.flour_g - dough.flour_g) > 2 or true":               figure.Yes,
		"true or 1 / (dough.flour_g - dough.flour_g) > 2":               figure.Yes,
		"1 / (dough.flour_g - dough.flour_g) > 2 and dough.flour_g < 0": figure.No,
		"0 / (dough.flour_g - dough.flour_g) == 0":                      figure.Open,
		"(dough.flour_g - dough.flour_g) / (dough.salt_g * 0) <= 1":     figure.Open,
		"0 * (1 / (dough.flour_g - dough.flour_g)) == 0":                figure.Yes,
		"min(1 / (dough.flour_g - dough.flour_g), 1) <= 1":              figure.Yes,
		"round(1 / (dough.flour_g - dough.flour_g)) in [1, 2]":          figure.Open,
		"(1 / (dough.flour_g - dough.flour_g) > 1 ? 2 : 3) > 1":         figure.Yes,
		"(1 / (dough.flour_g - dough.flour_g) > 1 ? 'a' : 'b') == 'a'":  figure.Open,
		// a choice of texts is not followed into its sides
		"(1 / (dough.flour_g - dough.flour_g) > 1 ? 'a' : 'b') == 'c'":    figure.Open,
		"abs(1 / (dough.flour_g - dough.flour_g)) >= 0":                   figure.Yes,
		"-(1 / (dough.flour_g - dough.flour_g)) == dough.flour_g":         figure.Open,
		"not (1 / (dough.flour_g - dough.flour_g) > 2)":                   figure.Open,
		"dough.flour_g / 2 / (dough.flour_g / 2) == 1":                    figure.Yes,
		"known(dough.flour_g) and 1 / (kitchen.altitude_m) > 0":           figure.Open,
		"dough.flour_g > 0 ? 2 > 1 : 1 / kitchen.altitude_m > 0":          figure.Yes,
		"max(1 / (dough.flour_g - dough.flour_g), 1, dough.flour_g) >= 1": figure.Yes,
		"1 / (dough.flour_g - dough.flour_g) == 1 / kitchen.altitude_m":   figure.Open,
		"1 / (1 / (dough.flour_g - dough.flour_g)) > 0":                   figure.Open,
		"1 / 0.000000001 > 999999999 and 0 / dough.flour_g == 0":          figure.Yes,
		"dough.flour_g * dough.flour_g * dough.flour_g > 999999999 + 0.1": figure.Yes,
	} {
		x, _, problems := parseCondition("dough", text, nil)
		if x == nil {
			t.Errorf("%s is refused: %v", text, problems)
			continue
		}
		if got := j.holds(x, subjectsFor(s.Formula, "dough")[0], nil); got != want {
			t.Errorf("%s: %d, not %d", text, got, want)
		}
	}
}

// A condition as long as the shipped rules', on figures that are there.
const benchCondition = "dough.sugar_pct >= limit.sugar_pct && dough.has_leaven && " +
	"(dough.yeast_pct < 0.6 * dough.salt_pct || dough.family == 'challah') && " +
	"dough.hydration_pct > dough.family_hydration_min_pct - 2"

func benchJudge(b *testing.B) (*Judge, *expr.Expr, *expr.Names, facts.Subject, []expr.Limit) {
	s := sheetOf(b, `formula "t" {
  family = "sweet dough"
  dough "d" {
    ingredients = {
      "bread flour" = "1000 g", "whole milk" = "600 g", "sugar" = "22 %", "salt" = "1.8 %"
      "instant yeast" = "1 %"
    }
  }
}`)
	limits := []expr.Limit{{Name: "sugar_pct", Value: 20}}
	x, n, problems := parseCondition("dough", benchCondition, limits)
	if x == nil {
		b.Fatal(problems)
	}
	j := NewJudge()
	j.Open(s)
	subject := subjectsFor(s.Formula, "dough")[0]
	j.holds(x, subject, limits) // the facts are computed once, and are not what is measured
	return j, x, n, subject, limits
}

// BenchmarkTree is the judge in use; BenchmarkProgram the second judge
// at one point, with the filling of its figures. Compare them within
// one run.
func BenchmarkTree(b *testing.B) {
	j, x, _, subject, limits := benchJudge(b)
	b.ReportAllocs()
	for b.Loop() {
		if j.holds(x, subject, limits) == figure.Open {
			b.Fatal("unsure")
		}
	}
}

func BenchmarkProgram(b *testing.B) {
	j, x, n, subject, limits := benchJudge(b)
	second := &machine.Judge{}
	b.ReportAllocs()
	for b.Loop() {
		if err := second.Check(&j.judge, x, n, subject, limits); err != nil {
			b.Fatal(err)
		}
	}
}
