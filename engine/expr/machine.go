package expr

import (
	"fmt"
	"math"
	"strings"

	"github.com/expr-lang/expr"
	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/types"
	"github.com/expr-lang/expr/vm"

	"forebake/engine/facts"
	"forebake/engine/figure"
)

// program is an expression compiled by the expression library. It answers on points.
type program struct {
	x        *Expr
	words    [][]string // for each read, the names that its fact goes by: "dough", "part"
	code     *vm.Program
	quotient *division
}

// compile hands the text of a checked expression to the library: its own parser, its own checker
// against an environment in which every fact has its type, and its own compiler. Nothing but the
// text is shared with the judge on intervals, so the two can be held against each other.
func compile(x *Expr, n *Names) (*program, error) {
	p := &program{x: x, quotient: &division{}, words: make([][]string, len(x.reads))}
	for i := range x.reads {
		for _, word := range n.words() {
			if s, _, _ := n.scopeOf(word); s == x.reads[i].scope {
				p.words[i] = append(p.words[i], word)
			}
		}
	}
	options := []expr.Option{
		expr.Env(n.environment()), expr.DisableAllBuiltins(),
		expr.Function(divided, p.quotient.divide,
			new(func(float64, float64) float64)), expr.Patch(dialect{}),
	}
	for _, name := range functionNames {
		options = append(options, expr.EnableBuiltin(name))
	}
	if x.Type() == facts.YesNo {
		options = append(options, expr.AsBool())
	}
	var err error
	p.code, err = expr.Compile(x.text, options...)
	return p, err
}

// Names in the environment that no fact and no verb can have.
const (
	divided = "divided by"
	given   = "figures given"
)

// typeOf is the type that a fact has in a compiled program.
var typeOf = [...]types.Type{facts.Number: types.Float64, facts.YesNo: types.Bool,
	facts.Text: types.String, facts.List: types.TypeOf([]string{})}

// environment types every name that an expression may read, such as part.fat_pct.
func (n *Names) environment() types.Map {
	known := types.Map{}
	env := types.Map{given: known}
	for _, word := range n.words() {
		s, on, _ := n.scopeOf(word)
		fields := types.Map{}
		env[word] = fields
		if s == inLimit {
			for _, l := range n.Limits {
				fields[l.Name] = types.Float64
			}
			continue
		}
		for _, f := range n.Figures.All(on) {
			fields[f.Name] = typeOf[f.Type]
			known[word+"."+f.Name] = types.Bool
		}
	}
	return env
}

// dialect turns what the rules write otherwise into the library's language. All numbers are
// decimal ones, a division says whether its divisor was zero, and known() reads the environment.
type dialect struct{}

func (dialect) Visit(n *ast.Node) {
	switch x := (*n).(type) {
	case *ast.IntegerNode:
		ast.Patch(n, &ast.FloatNode{Value: float64(x.Value)})
	case *ast.BinaryNode:
		if x.Operator == "/" {
			ast.Patch(n, &ast.CallNode{Callee: &ast.IdentifierNode{Value: divided},
				Arguments: []ast.Node{x.Left, x.Right}})
		}
	case *ast.CallNode:
		callee, ok := x.Callee.(*ast.IdentifierNode)
		if !ok || callee.Value != "known" || len(x.Arguments) != 1 {
			return
		}
		if m, ok := x.Arguments[0].(*ast.MemberNode); ok {
			name := m.Node.(*ast.IdentifierNode).Value + "." + m.Property.(*ast.StringNode).Value
			ast.Patch(n, &ast.MemberNode{Node: &ast.IdentifierNode{Value: given},
				Property: &ast.StringNode{Value: name}})
		}
	}
}

// division stands for "/" where it matters what becomes of a division by zero.
type division struct {
	standIn float64 // the quotient where there is none
	none    bool    // a divisor was zero
	huge    bool    // a quotient is so large that the rest of the arithmetic may overflow
}

const hugeQuotient = 1e20

func (d *division) divide(params ...any) (any, error) {
	q := params[0].(float64) / params[1].(float64)
	if math.IsInf(q, 0) || math.IsNaN(q) {
		d.none = true
		return d.standIn, nil
	}
	d.huge = d.huge || math.Abs(q) > hugeQuotient
	return q, nil
}

// standIns are tried in turn as the quotient of a division by zero: an answer that is certain
// must hold whatever it were.
var standIns = []float64{0, 1, -1e6, 12345.678}

// choice is one value of a read at a point.
type choice struct {
	value any
	known bool
}

// Points that stand for a figure of which nothing is known.
var anywhere = []float64{-1e6, 0, 1, 12345.678}

// choices lists the values at which a read is sampled: the ends of its interval and its middle,
// and points far apart where it is open.
func (j *Judge) choices(i int) []choice {
	r := &j.expr.reads[i]
	if r.Fact == nil {
		return numbers(j.limits[r.Limit].Interval(), math.NaN(), true)
	}
	v := *j.Value(i)
	var out []choice
	for _, known := range possible(j.known(i)) {
		switch r.Fact.Type {
		case facts.Number:
			out = append(out, numbers(v.Interval(), v.Mid, known)...)
		case facts.YesNo:
			for _, yes := range possible(yesNo(&v)) {
				out = append(out, choice{yes, known})
			}
		case facts.Text:
			for _, word := range j.wordsOf(&v, 1) {
				out = append(out, choice{word[0], known})
			}
		case facts.List:
			for _, list := range j.wordsOf(&v, 0) {
				out = append(out, choice{list, known})
			}
		}
	}
	return out
}

// possible lists what an answer can be.
func possible(t figure.Truth) []bool {
	switch t {
	case figure.Yes:
		return []bool{true}
	case figure.No:
		return []bool{false}
	}
	return []bool{false, true}
}

// yesNo is the truth of a yes-or-no fact.
func yesNo(v *facts.Value) figure.Truth {
	if v.Absent {
		return figure.Open
	}
	return Result{lo: v.Lo, hi: v.Hi}.Truth()
}

// numbers samples an interval: its ends, its middle, and points far apart within an open one.
func numbers(iv Interval, mid float64, known bool) []choice {
	at := []float64{iv.Lo, mid, iv.Hi}
	if !iv.IsFinite() {
		at = append(at, anywhere...)
	}
	var out []choice
	for i, x := range at {
		seen := false
		for _, before := range at[:i] {
			seen = seen || before == x
		}
		if !seen && !math.IsInf(x, 0) && iv.Contains(x) {
			out = append(out, choice{x, known})
		}
	}
	return out
}

// wordsOf samples a text or a list: its own words, or those that the expression names and others,
// where it is absent. least is 0 where no word at all is one of the samples.
func (j *Judge) wordsOf(v *facts.Value, least int) [][]string {
	if !v.Absent {
		return [][]string{v.Words}
	}
	out := [][]string{{"some word"}, {"another word"}}
	if least == 0 {
		out = append(out, []string{})
	}
	for _, word := range literals(j.expr.root) {
		out = append(out, []string{word})
	}
	return out
}

// literals lists the texts that an expression writes.
func literals(n *node) []string {
	if n.op == opText {
		return []string{n.text}
	}
	var out []string
	for _, k := range n.kids {
		out = append(out, literals(k)...)
	}
	return out
}

// fill makes the environment of a point.
func (p *program) fill(point []choice) map[string]any {
	known := map[string]any{}
	env := map[string]any{given: known}
	for i, c := range point {
		_, name, _ := strings.Cut(p.x.reads[i].Name, ".")
		for _, word := range p.words[i] {
			if env[word] == nil {
				env[word] = map[string]any{}
			}
			env[word].(map[string]any)[name] = c.value
			known[word+"."+name] = c.known
		}
	}
	return env
}

// answers runs the program on a point: once, or with each stand-in where a divisor is zero. exact
// tells that no division went out of bounds. Where ranges meet (alone is false) a point with a
// divisor of zero is passed over: the quotients of a range leave it out.
func (p *program) answers(machine *vm.VM, point []choice, alone bool,
	visit func(got any, exact bool) error) error {
	env := p.fill(point)
	for _, x := range standIns {
		*p.quotient = division{standIn: x}
		got, err := machine.Run(p.code, env)
		if err != nil {
			return fmt.Errorf("the compiled program fails: %w", err)
		}
		if p.quotient.none && !alone {
			return nil
		}
		if err := visit(got, !p.quotient.none && !p.quotient.huge); err != nil || !p.quotient.none {
			return err
		}
	}
	return nil
}
