package rule

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"github.com/expr-lang/expr"
	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/checker"
	"github.com/expr-lang/expr/compiler"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/optimizer"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/vm"
	"pgregory.net/rapid"

	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// The second judge: the expression library's own checker, compiler and machine, on points. The tree judge is the definition;
// this one shares nothing with it but the grammar, so that the two can be held against each other.

// slots is the environment of a program: its figures by number. A struct passed by value is the fastest shape that the
// machine takes.
type slots struct {
	N0, N1, N2, N3, N4, N5, N6, N7 float64
	B0, B1, B2, B3                 bool
	T0, T1                         string
	L0                             []string
}

var slotCount = [...]int{facts.Number: 8, facts.YesNo: 4, facts.Text: 2, facts.List: 1}

func (s *slots) number(i int) *float64 {
	return [...]*float64{&s.N0, &s.N1, &s.N2, &s.N3, &s.N4, &s.N5, &s.N6, &s.N7}[i]
}
func (s *slots) yesNo(i int) *bool  { return [...]*bool{&s.B0, &s.B1, &s.B2, &s.B3}[i] }
func (s *slots) text(i int) *string { return [...]*string{&s.T0, &s.T1}[i] }

// program is an expression compiled by the library.
type program struct {
	code *vm.Program
	slot []int // by read of the expression
}

// division stands for "/" where a test must know what happens to a division by zero.
type division struct {
	standIn float64 // the quotient that stands where there is none
	none    bool    // a divisor was zero
	huge    bool    // a quotient left what facts come to, and the rest of the arithmetic may overflow
}

func (d *division) divide(params ...any) (any, error) {
	q := params[0].(float64) / params[1].(float64)
	if math.IsInf(q, 0) || math.IsNaN(q) {
		d.none = true
		return d.standIn, nil
	}
	d.huge = d.huge || math.Abs(q) > 1e20
	return q, nil
}

// compileProgram compiles the text of an expression that the reader accepted as x. d is nil for the library's own division.
func compileProgram(text string, x *Expr, d *division) (*program, error) {
	tree, err := parser.ParseWithConfig(text, exprConfig)
	if err != nil {
		return nil, err
	}
	p := &program{slot: make([]int, len(x.reads))}
	var used [4]int
	names := map[string]string{}
	for i := range x.reads {
		t := x.reads[i].typ()
		if used[t] == slotCount[t] {
			return nil, fmt.Errorf("more than %d figures of one sort", used[t])
		}
		p.slot[i] = used[t]
		names[x.reads[i].resolved()] = fmt.Sprintf("%c%d", "NBTL"[t], used[t])
		used[t]++
	}
	config := conf.New(slots{})
	if d != nil {
		expr.Function("divide", d.divide, new(func(float64, float64) float64))(config)
	}
	patch := &slotNames{x: x, names: names, divide: d != nil}
	ast.Walk(&tree.Node, patch)
	if patch.missed != "" {
		return nil, fmt.Errorf("%s is not among the reads", patch.missed)
	}
	if _, err := checker.Check(tree, config); err != nil {
		return nil, err
	}
	if err := optimizer.Optimize(&tree.Node, config); err != nil {
		return nil, err
	}
	p.code, err = compiler.Compile(tree, config)
	return p, err
}

// resolved names what a read looks at: one fact can be written by several names ("dough.", "part.").
func (r *read) resolved() string {
	if r.fact == nil {
		return r.name
	}
	_, name, _ := strings.Cut(r.name, ".")
	return fmt.Sprintf("%d %s", r.scope, name)
}

// slotNames replaces references by slots, known() by true, since a program runs on known figures only, and whole numbers by
// decimal ones, since all numbers of a rule are.
type slotNames struct {
	x      *Expr
	names  map[string]string
	divide bool
	missed string
}

func (p *slotNames) Visit(n *ast.Node) {
	switch x := (*n).(type) {
	case *ast.IntegerNode:
		ast.Patch(n, &ast.FloatNode{Value: float64(x.Value)})
	case *ast.BinaryNode:
		if x.Operator == "/" && p.divide {
			ast.Patch(n, &ast.CallNode{Callee: &ast.IdentifierNode{Value: "divide"}, Arguments: []ast.Node{x.Left, x.Right}})
		}
	case *ast.CallNode:
		if callee, ok := x.Callee.(*ast.IdentifierNode); ok {
			if callee.Value == "known" {
				ast.Patch(n, &ast.BoolNode{Value: true})
			} else {
				ast.Patch(n, &ast.BuiltinNode{Name: callee.Value, Arguments: x.Arguments})
			}
		}
	case *ast.MemberNode:
		written := x.Node.(*ast.IdentifierNode).Value + "." + x.Property.(*ast.StringNode).Value
		if slot := p.slotOf(written); slot != "" {
			ast.Patch(n, &ast.IdentifierNode{Value: slot})
		} else {
			p.missed = written
		}
	}
}

func (p *slotNames) slotOf(written string) string {
	owner, name, _ := strings.Cut(written, ".")
	scope := inSelf
	switch {
	case owner == "limit":
		return p.names[written]
	case owner == "kitchen":
		scope = inKitchen
	case owner == "formula" && p.names[fmt.Sprintf("%d %s", inFormula, name)] != "":
		scope = inFormula
	case owner == "part" && p.names[fmt.Sprintf("%d %s", inPart, name)] != "":
		scope = inPart
	}
	return p.names[fmt.Sprintf("%d %s", scope, name)]
}

// fill puts the figures of a subject into slots; false when one of them is not a known point.
func (p *program) fill(j *Judge, x *Expr, s *slots) bool {
	for i := range x.reads {
		r, at := &x.reads[i], p.slot[i]
		if r.fact == nil {
			*s.number(at) = j.limits[r.limit].Value
			continue
		}
		v := j.value(i)
		if v.Absent {
			return false
		}
		switch r.fact.Type {
		case facts.Number:
			if v.Lo != v.Hi || math.IsInf(v.Lo, 0) {
				return false
			}
			*s.number(at) = v.Lo
		case facts.YesNo:
			if v.Lo != v.Hi {
				return false
			}
			*s.yesNo(at) = v.Lo == 1
		case facts.Text:
			*s.text(at) = v.Words[0]
		case facts.List:
			s.L0 = v.Words
		}
	}
	return true
}

func (p *program) run(machine *vm.VM, s slots) (bool, error) {
	out, err := machine.Run(p.code, s)
	if err != nil {
		return false, err
	}
	return out.(bool), nil
}

// pool is what a generated condition may read: few names, so that they meet each other.
type pool struct {
	numbers, yesNos, texts, lists []string
	words                         []string // that texts are compared with
}

// drawPool draws a subject for a rule and the figures that its condition may read.
func drawPool(t *rapid.T) (on string, limits []Limit, p *pool) {
	on = rapid.SampledFrom(append(append([]string{"formula", "part", "step", "ingredient"}, formula.KindNames...), formula.VerbNames(nil)...)).Draw(t, "on")
	var s subjects
	kind, _ := s.add(on)
	p = &pool{words: []string{"instant", "mixed", "none", "standard", "sweet dough", "milk", "Wheat", "egg", "dough", "flour", "dairy", "hand", "mix"}}
	add := func(owner string, fs []*facts.Fact) {
		for _, f := range fs {
			if f.On == facts.OnStep && (on == "step" && len(f.Verbs) > 0 || on != "step" && !f.HasVerb(on)) {
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
	p.numbers, p.yesNos, p.texts, p.lists = some(p.numbers, 6), some(p.yesNos, 4), some(p.texts, 2), some(p.lists, 1)
	for i := range rapid.IntRange(0, 2).Draw(t, "limits") {
		name := []string{"low_pct", "most_g"}[i]
		limits = append(limits, Limit{Name: name, Value: float64(rapid.IntRange(-50, 500).Draw(t, "limit")) / 10})
		p.numbers = append(p.numbers, "limit."+name)
	}
	return on, limits, p
}

// drawCondition draws a well-typed yes-or-no expression; wrong is there to show that the reader minds.
func drawCondition(t *rapid.T, p *pool, depth int) string {
	pick := func(list ...string) string { return rapid.SampledFrom(list).Draw(t, "pick") }
	var yesNo, number, text func(depth int) string
	number = func(depth int) string {
		leaf := depth <= 0 || rapid.IntRange(0, 3).Draw(t, "leaf") == 0
		if leaf {
			if rapid.Bool().Draw(t, "literal") {
				return pick("0", "1", "2.5", "20", "100", "0.001", "1000000000")
			}
			return pick(p.numbers...)
		}
		switch rapid.IntRange(0, 8).Draw(t, "number") {
		case 0, 1, 2:
			return number(depth-1) + " " + pick("+", "-", "*", "/") + " " + "(" + number(depth-1) + ")"
		case 3:
			return "(" + number(depth-1) + ") " + pick("+", "-", "*") + " " + number(depth-1)
		case 4:
			return "-(" + number(depth-1) + ")"
		case 5:
			return pick("abs", "round") + "(" + number(depth-1) + ")"
		case 6:
			list := number(depth - 1)
			for range rapid.IntRange(1, 3).Draw(t, "arguments") {
				list += ", " + number(depth-1)
			}
			return pick("min", "max") + "(" + list + ")"
		}
		return "(" + yesNo(depth-1) + " ? " + number(depth-1) + " : " + number(depth-1) + ")"
	}
	text = func(depth int) string {
		if depth > 0 && rapid.IntRange(0, 4).Draw(t, "choice") == 0 {
			return "(" + yesNo(depth-1) + " ? " + text(depth-1) + " : " + text(depth-1) + ")"
		}
		if len(p.texts) == 0 || rapid.Bool().Draw(t, "literal") {
			return "'" + pick(p.words...) + "'"
		}
		return pick(p.texts...)
	}
	yesNo = func(depth int) string {
		if depth <= 0 {
			switch rapid.IntRange(0, 3).Draw(t, "leaf") {
			case 0:
				return pick("true", "false")
			case 1:
				return number(0) + " " + pick("<", ">", "<=", ">=") + " " + number(0)
			case 2:
				all := append(append(append(append([]string{}, p.yesNos...), p.texts...), p.lists...), p.numbers...)
				if name := pick(all...); !strings.HasPrefix(name, "limit.") {
					return "known(" + name + ")"
				}
			}
			if len(p.yesNos) > 0 {
				return pick(p.yesNos...)
			}
			return "true"
		}
		switch rapid.IntRange(0, 10).Draw(t, "yes or no") {
		case 0, 1, 2:
			return "(" + yesNo(depth-1) + ") " + pick("and", "or", "&&", "||") + " " + yesNo(depth-1)
		case 3:
			return pick("not (", "!(") + yesNo(depth-1) + ")"
		case 4, 5, 6:
			return number(depth-1) + " " + pick("<", ">", "<=", ">=", "==", "!=") + " " + number(depth-1)
		case 7:
			return text(depth-1) + " " + pick("==", "!=") + " " + text(depth-1)
		case 8:
			if rapid.Bool().Draw(t, "numbers") {
				return "(" + number(depth-1) + ") in [1, 2.5, 20, 0]"
			}
			if len(p.lists) > 0 && rapid.Bool().Draw(t, "list") {
				return text(depth-1) + " in " + pick(p.lists...)
			}
			return text(depth-1) + " in ['instant', 'none', 'sweet dough', 'mix']"
		case 9:
			return "(" + yesNo(depth-1) + " ? " + yesNo(depth-1) + " : " + yesNo(depth-1) + ")"
		}
		return "(" + yesNo(depth-1) + ") " + pick("==", "!=") + " (" + yesNo(depth-1) + ")"
	}
	return yesNo(depth)
}

// parseCondition reads the text of a condition as the reader of a pack does.
func parseCondition(on, text string, limits []Limit) (*Expr, *names, source.Problems) {
	r := &reading.Reader{File: source.New("when", []byte(text))}
	n := namesOf(on, limits)
	offsets := make([]int, 0, len(text)+1)
	for i := range text {
		offsets = append(offsets, i)
	}
	x := parseExpr(r, text, append(offsets, len(text)), n, "when")
	if x != nil && x.root.typ != facts.YesNo {
		return nil, n, r.Problems
	}
	return x, n, r.Problems
}

func namesOf(on string, limits []Limit) *names {
	var s subjects
	s.names.on, _ = s.add(on)
	s.names.self = []string{facts.OnNames[s.names.on]}
	if on != s.names.self[0] {
		s.names.self = []string{on, s.names.self[0]}
	}
	s.names.limits = limits
	return &s.names
}

// subjectsFor lists the subjects of a formula that a rule on the word looks at.
func subjectsFor(f *formula.Formula, on string) (out []facts.Subject) {
	var s subjects
	s.names.on, _ = s.add(on)
	each(f, &s.names, s.kinds, s.any, func(x facts.Subject) { out = append(out, x) })
	return out
}

// Two judges give one answer wherever every figure is a point. Where a divisor is zero the tree may only answer what holds
// whatever the quotient were.
func TestJudgesAgree(t *testing.T) {
	compared, divided, definite := 0, 0, map[truth]int{}
	rapid.Check(t, func(t *rapid.T) {
		f := mustRead(t, drawSketch(t, shape{points: rapid.Bool().Draw(t, "points")}).text())
		j, machine := NewJudge(), &vm.VM{}
		j.Open(facts.NewSheet(f, kitchen.Default()))
		for range 10 {
			on, limits, p := drawPool(t)
			text := drawCondition(t, p, rapid.IntRange(0, 5).Draw(t, "depth"))
			x, _, problems := parseCondition(on, text, limits)
			if x == nil {
				if len(text) < 1500 && !mayRefuse(problems) {
					t.Fatalf("%s\nis refused: %v", text, problems)
				}
				continue
			}
			d := &division{}
			prog, err := compileProgram(text, x, d)
			if err != nil {
				t.Fatalf("%s\nthe second judge cannot compile it: %v", text, err)
			}
			for _, subject := range subjectsFor(f, on) {
				tree := j.holds(x, subject, limits)
				var s slots
				if !prog.fill(j, x, &s) {
					continue
				}
				for _, standIn := range []float64{0, 1, -1e6, 12345.678} {
					*d = division{standIn: standIn}
					got, err := prog.run(machine, s)
					if err != nil {
						t.Fatalf("%s\nthe second judge fails: %v", text, err)
					}
					want := isFalse
					if got {
						want = isTrue
					}
					if tree == isOpen && (d.none || d.huge) {
						divided++
						continue
					}
					if tree != want {
						t.Fatalf("%s\non %s: the tree says %d, the program %d; figures %+v, division %+v", text, SubjectName(subject), tree, want, s, *d)
					}
					compared++
					definite[tree]++
				}
			}
		}
	})
	t.Logf("%d answers compared (%d yes, %d no), %d left open by a division", compared, definite[isTrue], definite[isFalse], divided)
	if compared < 100 || definite[isTrue] == 0 || definite[isFalse] == 0 {
		t.Errorf("too few answers to compare: %d", compared)
	}
}

// mayRefuse tells whether a well-typed condition may be refused: for its size, or for what is reckoned in it.
func mayRefuse(problems source.Problems) bool {
	for _, p := range problems {
		for _, allowed := range []string{"more than 256 parts", "too many figures", "longer than", "division by zero", "nests brackets"} {
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
	for text, want := range map[string]truth{
		"1 / (dough.flour_g - dough.flour_g) > 2":                         isOpen,
		"1 / (dough.flour_g - dough.flour_g) > 2 or true":                 isTrue,
		"true or 1 / (dough.flour_g - dough.flour_g) > 2":                 isTrue,
		"1 / (dough.flour_g - dough.flour_g) > 2 and dough.flour_g < 0":   isFalse,
		"0 / (dough.flour_g - dough.flour_g) == 0":                        isOpen,
		"(dough.flour_g - dough.flour_g) / (dough.salt_g * 0) <= 1":       isOpen,
		"0 * (1 / (dough.flour_g - dough.flour_g)) == 0":                  isTrue,
		"min(1 / (dough.flour_g - dough.flour_g), 1) <= 1":                isTrue,
		"round(1 / (dough.flour_g - dough.flour_g)) in [1, 2]":            isOpen,
		"(1 / (dough.flour_g - dough.flour_g) > 1 ? 2 : 3) > 1":           isTrue,
		"(1 / (dough.flour_g - dough.flour_g) > 1 ? 'a' : 'b') == 'a'":    isOpen,
		"(1 / (dough.flour_g - dough.flour_g) > 1 ? 'a' : 'b') == 'c'":    isOpen, // a choice of texts is not followed into its sides
		"abs(1 / (dough.flour_g - dough.flour_g)) >= 0":                   isTrue,
		"-(1 / (dough.flour_g - dough.flour_g)) == dough.flour_g":         isOpen,
		"not (1 / (dough.flour_g - dough.flour_g) > 2)":                   isOpen,
		"dough.flour_g / 2 / (dough.flour_g / 2) == 1":                    isTrue,
		"known(dough.flour_g) and 1 / (kitchen.altitude_m) > 0":           isOpen,
		"dough.flour_g > 0 ? 2 > 1 : 1 / kitchen.altitude_m > 0":          isTrue,
		"max(1 / (dough.flour_g - dough.flour_g), 1, dough.flour_g) >= 1": isTrue,
		"1 / (dough.flour_g - dough.flour_g) == 1 / kitchen.altitude_m":   isOpen,
		"1 / (1 / (dough.flour_g - dough.flour_g)) > 0":                   isOpen,
		"1 / 0.000000001 > 999999999 and 0 / dough.flour_g == 0":          isTrue,
		"dough.flour_g * dough.flour_g * dough.flour_g > 999999999 + 0.1": isTrue,
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

// A condition of the length that shipped rules have, on figures that are there.
const benchCondition = "dough.sugar_pct >= limit.sugar_pct && dough.has_leaven && (dough.yeast_pct < 0.6 * dough.salt_pct || dough.family == 'challah') && dough.hydration_pct > dough.family_hydration_min_pct - 2"

func benchJudge(b *testing.B) (*Judge, *Expr, facts.Subject, []Limit) {
	s := sheetOf(b, `formula "t" {
  family = "sweet dough"
  dough "d" { ingredients = { "bread flour" = "1000 g", "whole milk" = "600 g", "sugar" = "22 %", "salt" = "1.8 %", "instant yeast" = "1 %" } }
}`)
	limits := []Limit{{Name: "sugar_pct", Value: 20}}
	x, _, problems := parseCondition("dough", benchCondition, limits)
	if x == nil {
		b.Fatal(problems)
	}
	j := NewJudge()
	j.Open(s)
	subject := subjectsFor(s.Formula, "dough")[0]
	j.holds(x, subject, limits) // the facts are computed once, and are not what is measured
	return j, x, subject, limits
}

// BenchmarkTree is the judge in use; BenchmarkProgram the compiled program with the filling of its figures, without which
// it cannot run, and BenchmarkProgramAlone without. Compare them within one run.
func BenchmarkTree(b *testing.B) {
	j, x, subject, limits := benchJudge(b)
	b.ReportAllocs()
	for b.Loop() {
		if j.holds(x, subject, limits) == isOpen {
			b.Fatal("unsure")
		}
	}
}

func BenchmarkProgram(b *testing.B)      { benchProgram(b, true) }
func BenchmarkProgramAlone(b *testing.B) { benchProgram(b, false) }

func benchProgram(b *testing.B, filling bool) {
	j, x, subject, limits := benchJudge(b)
	p, err := compileProgram(benchCondition, x, nil)
	if err != nil {
		b.Fatal(err)
	}
	machine := &vm.VM{}
	j.expr, j.subject, j.limits = x, subject, limits
	var s slots
	p.fill(j, x, &s)
	b.ReportAllocs()
	for b.Loop() {
		if filling && !p.fill(j, x, &s) {
			b.Fatal("unsure")
		}
		if _, err := p.run(machine, s); err != nil {
			b.Fatal(err)
		}
	}
}
