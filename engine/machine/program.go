package machine

import (
	"fmt"
	"math"
	"strings"

	library "github.com/expr-lang/expr"
	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/types"
	"github.com/expr-lang/expr/vm"

	"forebake/engine/expr"
	"forebake/engine/facts"
)

// program is an expression compiled by the expression library. It
// answers on points.
type program struct {
	reads    []expr.Read
	words    [][]string // for each read, the names that its fact goes by: "dough", "part"
	code     *vm.Program
	quotient *division
}

// compile hands the text of a checked expression to the library's own
// parser, checker and compiler. In the environment every fact has its
// type. The judge on intervals shares only the text, so that each
// checks the other.
func compile(x *expr.Expr, n *expr.Names) (*program, error) {
	return compileText(x.Text(), x, n)
}

// compileText compiles a text instead of the expression's own.
func compileText(text string, x *expr.Expr, n *expr.Names) (*program, error) {
	p := &program{reads: x.Reads(), quotient: &division{}}
	for i := range p.reads {
		p.words = append(p.words, n.WordsOf(&p.reads[i]))
	}
	options := []library.Option{
		library.Env(environment(n)), library.Patch(dialect{}), library.DisableAllBuiltins(),
		library.Function(divided, p.quotient.divide, new(func(float64, float64) float64)),
	}
	for _, name := range expr.Functions() {
		options = append(options, library.EnableBuiltin(name))
	}
	if x.Type() == facts.YesNo {
		options = append(options, library.AsBool())
	}
	var err error
	p.code, err = library.Compile(text, options...)
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

// environment types every name that an expression may read, such
// as part.fat_pct.
func environment(n *expr.Names) types.Map {
	known := types.Map{}
	env := types.Map{given: known}
	for _, word := range n.Words() {
		on, isLimit := n.On(word)
		fields := types.Map{}
		env[word] = fields
		if isLimit {
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

// dialect turns what the rules write otherwise into the library's
// language. All numbers are decimal ones, a division says whether its
// divisor was zero, and known() reads the environment.
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

// division stands for "/" where it matters what becomes of a division
// by zero.
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

// standIns are tried in turn as the quotient of a division by zero: an
// answer that is certain must hold whatever it were.
var standIns = []float64{0, 1, -1e6, 12345.678}

// fill makes the environment of a point.
func (p *program) fill(point []choice) map[string]any {
	known := map[string]any{}
	env := map[string]any{given: known}
	for i, c := range point {
		_, name, _ := strings.Cut(p.reads[i].Name, ".")
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

// answers runs the program on a point: once, or with each stand-in
// where a divisor is zero. exact tells that no division went out of
// bounds. Where ranges meet (alone is false) a point with a divisor of
// zero is passed over: the quotients of a range leave it out.
func (p *program) answers(
	machine *vm.VM, point []choice, alone bool, visit func(got any, exact bool) error,
) error {
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
