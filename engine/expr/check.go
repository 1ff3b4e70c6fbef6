package expr

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"forebake/engine/expr/subject"

	"github.com/expr-lang/expr/ast"

	"forebake/engine/facts"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Names gives the names of an expression their meaning.
type Names struct {
	Subject *subject.Subject
	Limits  []Limit  // of a rule
	Figures *Figures // that rule files declare; nil for none

	inFigure bool // the expression is a figure's: it has no limits, and its units are checked
}

// block names what the expression belongs to, in a message.
func (n *Names) block() string {
	if n.inFigure {
		return "figure"
	}
	return "rule"
}

// self is the first name of the subject.
func (n *Names) self() string { return n.Subject.Names[0] }

// Words lists the names that may start a reference: "dough",
// "kitchen", "limit".
func (n *Names) Words() []string {
	list := slices.Clone(n.Subject.Names)
	if n.hasPart() {
		list = append(list, "part")
	}
	if n.Subject.On != facts.OnFormula {
		list = append(list, "formula")
	}
	list = append(list, "kitchen")
	if !n.inFigure {
		list = append(list, "limit")
	}
	return list
}

// hasPart reports whether "part" stands for the subject's part.
func (n *Names) hasPart() bool {
	return n.Subject.On == facts.OnStep || n.Subject.On == facts.OnIngredient
}

// scopeOf tells where a name looks, and at which kind of subject.
func (n *Names) scopeOf(word string) (s scope, on facts.On, ok bool) {
	switch {
	case word == "limit" && !n.inFigure:
		return inLimit, 0, true
	case slices.Contains(n.Subject.Names, word):
		return inSelf, n.Subject.On, true
	case word == "part" && n.hasPart():
		return inPart, facts.OnPart, true
	case word == "formula":
		return inFormula, facts.OnFormula, true
	case word == "kitchen":
		return inKitchen, facts.OnKitchen, true
	}
	return 0, 0, false
}

// On tells a name's kind of subject; isLimit for the name of the limits.
func (n *Names) On(word string) (on facts.On, isLimit bool) {
	s, on, _ := n.scopeOf(word)
	return on, s == inLimit
}

// WordsOf lists the names for a read's subject: "dough" and "part".
func (n *Names) WordsOf(r *Read) []string {
	return slices.DeleteFunc(n.Words(), func(word string) bool {
		s, _, _ := n.scopeOf(word)
		return s != r.scope
	})
}

// check type-checks one expression.
type check struct {
	r       *reading.Reader
	names   *Names
	offsets []int // byte offset in the file of each rune of the expression; nil: from start on
	start   int   // where the expression begins, without offsets
	runes   int   // how many it has
	expr    *Expr
	failed  bool
	units   map[*node]measure // of the nodes; used for figures only
	nodes   []node            // room for the next ones
}

// add makes a node of the expression. The nodes of one lie side by side, for
// a run judges it some thousand times between the rest of a file.
func (c *check) add(n node) *node {
	if len(c.nodes) == cap(c.nodes) {
		c.nodes = make([]node, 0, 12)
	}
	c.nodes = append(c.nodes, n)
	return &c.nodes[len(c.nodes)-1]
}

// functions that an expression may call, with their numbers of arguments.
var functions = map[string]struct {
	op       op
	min, max int
}{"abs": {opAbs, 1, 1}, "min": {opMin, 2, 8}, "max": {opMax, 2, 8}, "round": {opRound, 1,
	1}, "known": {opKnown, 1, 1}}

var functionNames = []string{"abs", "known", "max", "min", "round"}

// Functions lists the functions that an expression may call.
func Functions() []string { return slices.Clone(functionNames) }

// walk copies what the language has from the parsed tree, and refuses the
// rest with its place.
func (c *check) walk(n ast.Node) *node {
	switch x := n.(type) {
	case *ast.IntegerNode:
		return c.literal(n, float64(x.Value))
	case *ast.FloatNode:
		return c.literal(n, x.Value)
	case *ast.BoolNode:
		v := 0.0
		if x.Value {
			v = 1
		}
		return c.add(node{op: opYesNo, typ: facts.YesNo, number: v})
	case *ast.StringNode:
		return c.add(node{op: opText, typ: facts.Text, words: []string{x.Value}})
	case *ast.MemberNode:
		return c.reference(x)
	case *ast.IdentifierNode:
		return c.bareName(x)
	case *ast.UnaryNode:
		return c.unary(x)
	case *ast.BinaryNode:
		return c.binary(x)
	case *ast.ConditionalNode:
		return c.choose(x)
	case *ast.ArrayNode:
		return c.list(x)
	case *ast.CallNode:
		callee, ok := x.Callee.(*ast.IdentifierNode)
		if !ok {
			return c.fail(x, "only %s are called in a %s", strings.Join(functionNames, ", "),
				c.names.block())
		}
		return c.call(callee, callee.Value, x.Arguments)
	case *ast.BuiltinNode: // what the parser knows by name, such as abs, comes as this
		return c.call(x, x.Name, x.Arguments)
	case *ast.SequenceNode:
		return c.fail(x.Nodes[1], "one expression, without \";\"")
	}
	return c.fail(n, "%s", refused(n, c.names.block()))
}

func refused(n ast.Node, in string) string {
	switch n.(type) {
	case *ast.NilNode:
		return "no nil in a " + in + ": known(x) asks whether a figure is given"
	case *ast.VariableDeclaratorNode:
		return "no let in a " + in
	case *ast.MapNode, *ast.PairNode:
		return "no { } in a " + in
	case *ast.SliceNode:
		return "no slices in a " + in
	case *ast.ChainNode:
		return "no \"?.\" in a " + in
	}
	return "this cannot stand in a " + in +
		"; it may hold facts, limits, numbers, texts, + - * /," +
		" comparisons, and, or, not, in, ? :, " + strings.Join(functionNames, ", ")
}

// Magnitudes as powers of ten. Facts and limits stay under 10^12, so a
// checked expression stays within a float64.
const (
	factSize = 12
	maxSize  = 250
)

const numberRange = "a number in a rule must be 0 or between 0.000000001 and 1000000000"

func (c *check) literal(n ast.Node, x float64) *node {
	if math.IsNaN(x) || math.Abs(x) > 1e9 || x != 0 && math.Abs(x) < 1e-9 {
		return c.fail(n, numberRange)
	}
	return c.add(node{op: opNumber, number: x, size: 9})
}

// reference checks subject.fact and limit.name.
func (c *check) reference(m *ast.MemberNode) *node {
	owner, ok := m.Node.(*ast.IdentifierNode)
	name, isName := m.Property.(*ast.StringNode)
	if !ok || !isName || m.Optional || m.Method || c.isBracket(m) {
		return c.fail(m, "only subject.fact and limit.name are read, such as %s.mass_g",
			c.names.self())
	}
	r := Read{Name: owner.Value + "." + name.Value}
	scope, on, ok := c.names.scopeOf(owner.Value)
	if !ok {
		if owner.Value == "limit" {
			return c.fail(owner, "a figure has no limits: limits belong to the rules that read it")
		}
		return c.fail(owner, "%s", c.unknownSubject(owner.Value))
	}
	r.scope = scope
	at := c.at(m.Property)
	if scope != inLimit {
		return c.factNode(at, r, on, name.Value)
	}
	known := LimitNames(c.names.Limits)
	if r.Limit = slices.Index(known, name.Value); r.Limit < 0 {
		return c.failAt(at, "%s", reading.UnknownText("limit", name.Value, "this rule", known))
	}
	return c.node(r)
}

func (c *check) unknownSubject(word string) string {
	return reading.UnknownText("subject", word, "this "+c.names.block(), c.names.Words())
}

// isBracket reports whether a member is owner['name'], not owner.name:
// only the former is quoted, and the tree does not tell.
func (c *check) isBracket(m *ast.MemberNode) bool {
	at := c.at(m.Property).Start
	return strings.ContainsRune("'\"`\\", rune(c.r.File.Text[at]))
}

// factNode checks that the subject has the fact, whatever its verb
// or kind.
func (c *check) factNode(at source.Place, r Read, on facts.On, name string) *node {
	f, err := c.names.Figures.find(on, name)
	switch {
	case err == errFaulty: // the figure's own faults are recorded where it stands
		c.failed = true
		return c.add(node{op: opNumber})
	case err != nil:
		return c.failAt(at, "%s", err)
	case f == nil:
		return c.failAt(at, "%s", c.unknownFact(r, on, name))
	}
	if text := c.notOf(f, r, name); text != "" {
		return c.failAt(at, "%s", text)
	}
	r.Fact = f
	return c.node(r)
}

func (c *check) unknownFact(r Read, on facts.On, name string) string {
	text := fmt.Sprintf("no fact %q", source.Safe(r.Name))
	near := spelling.Nearest(name, c.names.Figures.names(on), 3)
	if len(near) == 0 {
		article := "a"
		if on == facts.OnIngredient {
			article = "an"
		}
		return fmt.Sprintf("%s; forebake facts --list shows those of %s %s", text, article,
			facts.OnNames[on])
	}
	prefix := strings.TrimSuffix(r.Name, name)
	for i := range near {
		near[i] = prefix + near[i]
	}
	return text + "; nearest is " + strings.Join(near, ", ")
}

// notOf names the expression's subjects that lack a fact; "" for none.
func (c *check) notOf(f *facts.Fact, r Read, name string) string {
	s := c.names.Subject
	switch {
	case f.On == facts.OnStep:
		for _, v := range s.Verbs {
			if !f.HasVerb(v) {
				return fmt.Sprintf("a %s step has no %q; %s has it", v, name,
					strings.Join(f.Verbs, ", "))
			}
		}
		if len(s.Verbs) == 0 && len(f.Verbs) > 0 {
			return fmt.Sprintf("%q is known for %s only; write on = %q", name,
				strings.Join(f.Verbs, ", "), f.Verbs[0])
		}
	case f.On == facts.OnPart && len(f.Kinds) > 0:
		kinds := make([]string, len(f.Kinds))
		for i, k := range f.Kinds {
			kinds[i] = k.String()
		}
		only := strings.Join(kinds, ", ")
		if r.scope == inPart {
			return fmt.Sprintf("%q is declared for %s only, and this part may be any; declare it "+
				"with on = \"part\"", name, only)
		}
		for _, k := range s.Kinds {
			if !slices.Contains(f.Kinds, k) {
				return fmt.Sprintf("a %s has no %q; %s has it", k, name, only)
			}
		}
		if len(s.Kinds) == 0 {
			return fmt.Sprintf("%q is declared for %s only; write on = %q", name, only, kinds[0])
		}
	}
	return ""
}

// node gives the node of a read. Each fact or limit is listed once.
func (c *check) node(r Read) *node {
	i := slices.IndexFunc(c.expr.reads, func(o Read) bool {
		return o.scope == r.scope && o.Fact == r.Fact && o.Limit == r.Limit
	})
	if i < 0 {
		i = len(c.expr.reads)
		c.expr.reads = append(c.expr.reads, r)
	}
	n := c.add(node{op: opRead, typ: r.typ(), read: i, size: factSize})
	if r.Fact != nil {
		n.size = sizeOf(r.Fact)
		c.measured(n, r.Fact.Unit)
	}
	return n
}

func (c *check) bareName(x *ast.IdentifierNode) *node {
	if slices.Contains(c.names.Words(), x.Value) {
		return c.fail(x, "%q alone is not a figure: write %s.mass_g or another of its facts",
			x.Value, x.Value)
	}
	if strings.HasPrefix(x.Value, "$") {
		return c.fail(x, "no $ names in a %s", c.names.block())
	}
	return c.fail(x, "%s; a text stands in single quotes: '%s'", c.unknownSubject(x.Value),
		source.Safe(x.Value))
}

func (c *check) unary(x *ast.UnaryNode) *node {
	kid := c.walk(x.Node)
	if c.failed {
		return kid
	}
	switch x.Operator {
	case "!", "not":
		if kid.typ != facts.YesNo {
			return c.fail(x, "not needs a yes or no, and this is a %s", typeName(kid.typ))
		}
		return c.add(node{op: opNot, typ: facts.YesNo, kids: []*node{kid}})
	case "-", "+":
		if kid.typ != facts.Number {
			return c.fail(x, "a sign needs a number, and this is a %s", typeName(kid.typ))
		}
		if x.Operator == "+" {
			return kid
		}
		n := c.add(node{op: opNeg, kids: []*node{kid}, size: kid.size})
		c.sameMeasure(x, n)
		return n
	}
	return c.fail(x, "no %q in a %s", x.Operator, c.names.block())
}

func (c *check) binary(x *ast.BinaryNode) *node {
	a, b := c.walk(x.Left), c.walk(x.Right)
	if c.failed {
		return a
	}
	both := func(t facts.Type) bool { return a.typ == t && b.typ == t }
	yesNo := func(o op) *node { return c.add(node{op: o, typ: facts.YesNo, kids: []*node{a, b}}) }
	switch x.Operator {
	case "&&", "and", "||", "or":
		if !both(facts.YesNo) {
			return c.fail(x, "%s joins two yes-or-no answers; here a %s and a %s", x.Operator,
				typeName(a.typ), typeName(b.typ))
		}
		if x.Operator == "&&" || x.Operator == "and" {
			return yesNo(opAnd)
		}
		return yesNo(opOr)
	case "<", "<=", ">", ">=":
		if !both(facts.Number) {
			return c.fail(x, "%s compares two numbers; here a %s and a %s", x.Operator,
				typeName(a.typ), typeName(b.typ))
		}
		o := opLess
		if x.Operator == "<=" || x.Operator == ">=" {
			o = opLessEq
		}
		if x.Operator[0] == '>' {
			a, b = b, a
		}
		return c.compared(x, yesNo(o))
	case "==", "!=":
		if a.typ != b.typ || a.typ == facts.List {
			return c.fail(x, "%s compares two of a kind; here a %s and a %s", x.Operator,
				typeName(a.typ), typeName(b.typ))
		}
		if x.Operator == "==" {
			return c.compared(x, yesNo(opEqual))
		}
		return c.compared(x, yesNo(opNotEqual))
	case "in":
		if b.typ != facts.List || a.typ == facts.List ||
			b.op == opList && len(b.kids) > 0 && b.kids[0].typ != a.typ || b.op != opList &&
			a.typ != facts.Text {
			return c.fail(x, "in asks whether a text or number is in a list; here a %s and a %s",
				typeName(a.typ), typeName(b.typ))
		}
		return yesNo(opIn)
	case "+", "-", "*", "/":
		return c.arithmetic(x, a, b)
	}
	hint := ""
	if slices.Contains([]string{"matches", "contains", "startsWith", "endsWith"}, x.Operator) {
		hint = "; compare texts with == or in"
	}
	return c.fail(x, "no %q in a %s%s", x.Operator, c.names.block(), hint)
}

// compared checks that two compared numbers have like units.
func (c *check) compared(x ast.Node, n *node) *node {
	if n.kids[0].typ == facts.Number {
		return c.sameMeasure(x, n)
	}
	return n
}

func (c *check) arithmetic(x *ast.BinaryNode, a, b *node) *node {
	if a.typ != facts.Number || b.typ != facts.Number {
		return c.fail(x, "%q reckons with two numbers; here a %s and a %s", x.Operator,
			typeName(a.typ), typeName(b.typ))
	}
	n := c.add(node{kids: []*node{a, b}})
	switch x.Operator {
	case "+":
		n.op, n.size = opAdd, max(a.size, b.size)+1
	case "-":
		n.op, n.size = opSub, max(a.size, b.size)+1
	case "*":
		n.op, n.size = opMul, a.size+b.size
	case "/":
		if b.op == opNumber && b.number == 0 {
			return c.fail(x, "a division by zero")
		}
		// A written divisor is at least 10^-9. A computed one may be
		// anything: the judge opens a result that is not finite.
		n.op, n.size = opDiv, a.size+factSize
	}
	if n.size > maxSize {
		return c.fail(x, "too many figures are multiplied here")
	}
	if n.op == opMul || n.op == opDiv {
		c.productMeasure(n)
		return n
	}
	return c.sameMeasure(x, n)
}

func (c *check) choose(x *ast.ConditionalNode) *node {
	if !x.Ternary {
		from := x.Location().From
		return c.failAt(c.span(from, from+len("if")),
			"no if in a %s: write condition ? this : that", c.names.block())
	}
	cond, a, b := c.walk(x.Cond), c.walk(x.Exp1), c.walk(x.Exp2)
	switch {
	case c.failed:
		return cond
	case cond.typ != facts.YesNo:
		return c.fail(x, "before the ? stands a yes or no, and this is a %s", typeName(cond.typ))
	case a.typ != b.typ || a.typ == facts.List:
		return c.fail(x, "both sides of the : must be of one kind; here a %s and a %s",
			typeName(a.typ), typeName(b.typ))
	}
	n := c.add(node{op: opChoose, typ: a.typ, kids: []*node{cond, a, b}, size: max(a.size, b.size)})
	if a.typ == facts.Number {
		return c.sameMeasure(x, n)
	}
	return n
}

func (c *check) list(x *ast.ArrayNode) *node {
	n := c.add(node{op: opList, typ: facts.List})
	if len(x.Nodes) == 0 || len(x.Nodes) > MaxListItems {
		return c.fail(x, "a list in a %s holds 1 to %d items", c.names.block(), MaxListItems)
	}
	for _, item := range x.Nodes {
		kid := c.walk(item)
		if c.failed {
			return kid
		}
		if kid.op != opNumber && kid.op != opText || len(n.kids) > 0 && kid.typ != n.kids[0].typ {
			return c.fail(item, "a list in a %s holds written numbers, or written texts",
				c.names.block())
		}
		n.kids = append(n.kids, kid)
	}
	return n
}

func (c *check) call(at ast.Node, name string, arguments []ast.Node) *node {
	f, ok := functions[name]
	if !ok {
		return c.fail(at, "%s", reading.UnknownText("function", name, "the rules", functionNames))
	}
	if len(arguments) < f.min || len(arguments) > f.max {
		return c.fail(at, "%s takes %s", name, count(f.min, f.max))
	}
	n := c.add(node{op: f.op})
	for _, a := range arguments {
		kid := c.walk(a)
		if c.failed {
			return kid
		}
		n.kids = append(n.kids, kid)
	}
	if f.op == opKnown {
		if n.kids[0].op != opRead || c.expr.reads[n.kids[0].read].Fact == nil {
			return c.fail(arguments[0], "known asks about one fact: known(%s.mass_g)",
				c.names.self())
		}
		return c.add(node{op: opKnown, typ: facts.YesNo, read: n.kids[0].read})
	}
	for i, kid := range n.kids {
		if kid.typ != facts.Number {
			return c.fail(arguments[i], "%s needs numbers, and this is a %s", name,
				typeName(kid.typ))
		}
		n.size = max(n.size, kid.size)
	}
	return c.sameMeasure(at, n)
}

func count(lo, hi int) string {
	if lo == hi {
		return fmt.Sprintf("%d figure", lo)
	}
	return fmt.Sprintf("%d to %d figures", lo, hi)
}
