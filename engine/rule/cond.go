package rule

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"github.com/expr-lang/expr/ast"
	"github.com/expr-lang/expr/conf"
	"github.com/expr-lang/expr/file"
	"github.com/expr-lang/expr/parser"
	"github.com/expr-lang/expr/parser/lexer"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/facts"
	"forebake/engine/reading"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Limits of one expression, so that no rule can make the checker work without end. The parser and compiler of the
// expression library recurse, so length and nesting are bounded before either sees the text.
const (
	MaxExprBytes = 4096
	MaxExprDepth = 64  // nested round and square brackets
	MaxExprNodes = 256 // of the parsed tree
	MaxListItems = 64  // of a list written in the expression
)

// scope says where a name of an expression looks.
type scope uint8

const (
	inSelf scope = iota // the subject itself
	inPart
	inFormula
	inKitchen
	inLimit
)

// read is a fact or limit that an expression reads.
type read struct {
	scope scope
	fact  *facts.Fact // nil for a limit
	limit int         // index into the rule's limits
	name  string      // as written: "dough.sugar_pct"
}

func (r *read) typ() facts.Type {
	if r.fact == nil {
		return facts.Number
	}
	return r.fact.Type
}

// op is an operation of a checked expression.
type op uint8

const (
	opNumber op = iota
	opText
	opYesNo
	opList // written list of numbers or of texts
	opRead
	opKnown
	opNot
	opNeg
	opAnd
	opOr
	opLess
	opLessEq
	opEqual
	opNotEqual
	opIn
	opAdd
	opSub
	opMul
	opDiv
	opAbs
	opMin
	opMax
	opRound
	opChoose // cond ? a : b
)

// node is one node of a checked expression: a small tree of our own, so that the judge meets nothing that was not allowed.
type node struct {
	op     op
	typ    facts.Type
	kids   []*node
	number float64
	text   string
	read   int // index into the expression's reads
	size   int // power of ten that bounds the result's magnitude
}

// Expr is an expression that was type-checked when its pack was read. It cannot fail while judging.
type Expr struct {
	root  *node
	reads []read
}

// names says what the names of an expression mean: which subject each stands for.
type names struct {
	self   []string // "dough", "part", or "mix", "step"
	on     facts.On
	verbs  []string // for a step rule: the verbs
	limits []Limit
}

func (n *names) isSelf(word string) bool {
	for _, s := range n.self {
		if s == word {
			return true
		}
	}
	return false
}

// words lists the names that may start a reference.
func (n *names) words() []string {
	list := append([]string{}, n.self...)
	if n.on == facts.OnStep || n.on == facts.OnIngredient {
		list = append(list, "part")
	}
	if n.on != facts.OnFormula {
		list = append(list, "formula")
	}
	return append(list, "kitchen", "limit")
}

// check checks one expression.
type check struct {
	r       *reading.Reader
	names   *names
	offsets []int // byte offset in the file of each rune of the expression
	expr    *Expr
	failed  bool
}

// functions that an expression may call, with how many arguments they take.
var functions = map[string]struct {
	op       op
	min, max int
}{"abs": {opAbs, 1, 1}, "min": {opMin, 2, 8}, "max": {opMax, 2, 8}, "round": {opRound, 1, 1}, "known": {opKnown, 1, 1}}

var functionNames = []string{"abs", "known", "max", "min", "round"}

// exprConfig parses without built-ins: what may be called is in functions.
var exprConfig = func() *conf.Config {
	c := conf.CreateNew()
	c.MaxNodes = MaxExprNodes
	c.Builtins = conf.FunctionsTable{}
	return c
}()

// condition reads and checks an attribute that must be a yes-or-no expression.
func condition(r *reading.Reader, e hclsyntax.Expression, n *names, what string) *Expr {
	x := expression(r, e, n, what)
	if x == nil {
		return nil
	}
	if x.root.typ != facts.YesNo {
		r.Fault(r.Place(e.Range()), "%s must be a comparison that is true or false, such as %s.mass_g > 0; this is a %s", what, n.self[0], typeName(x.root.typ))
		return nil
	}
	return x
}

// expression reads and checks an attribute that holds an expression.
func expression(r *reading.Reader, e hclsyntax.Expression, n *names, what string) *Expr {
	text, offsets, ok := source.DecodeString(r.File, e)
	if !ok {
		if _, _, isText := r.Text(e, what); isText {
			r.Fault(r.Place(e.Range()), "%s must be a plain text", what)
		}
		return nil
	}
	return parseExpr(r, text, offsets, n, what)
}

// parseExpr checks the text of an expression whose runes stand at offsets in the file.
func parseExpr(r *reading.Reader, text string, offsets []int, n *names, what string) *Expr {
	c := &check{r: r, names: n, offsets: offsets, expr: &Expr{}}
	whole := c.span(0, len(offsets)-1)
	if strings.TrimSpace(text) == "" {
		r.Fault(whole, "%s is empty", what)
		return nil
	}
	if len(text) > MaxExprBytes {
		r.Fault(whole, "%s is longer than %d characters", what, MaxExprBytes)
		return nil
	}
	depth := 0
	for i, x := range []rune(text) {
		switch x {
		case '(', '[':
			depth++
		case ')', ']':
			depth--
		}
		if depth > MaxExprDepth {
			r.Fault(c.span(i, i+1), "%s nests brackets more than %d deep", what, MaxExprDepth)
			return nil
		}
	}
	if at, has := pipe(text); has {
		r.Fault(c.span(at.From, at.To), "%s: no \"|\" in a rule; or joins two yes-or-no answers", what)
		return nil
	}
	tree, err := parser.ParseWithConfig(text, exprConfig)
	if err != nil {
		c.parseFault(err, text, what)
		return nil
	}
	root := c.walk(tree.Node)
	if c.failed {
		return nil
	}
	c.expr.root = root
	return c.expr
}

// pipe finds the first pipe sign. The parser writes a pipe as a plain call, so the tree no longer shows it.
func pipe(text string) (file.Location, bool) {
	if !strings.Contains(text, "|") {
		return file.Location{}, false
	}
	tokens, err := lexer.Lex(file.NewSource(text))
	if err != nil {
		return file.Location{}, false // the parser will say so
	}
	for _, t := range tokens {
		if t.Is(lexer.Operator, "|") {
			return t.Location, true
		}
	}
	return file.Location{}, false
}

func (c *check) span(from, to int) source.Place {
	return source.Place{File: c.r.File, Start: source.Offset(c.offsets, from), End: source.Offset(c.offsets, to)}
}

func (c *check) at(n ast.Node) source.Place {
	loc := n.Location()
	return c.span(loc.From, max(loc.To, loc.From+1))
}

func (c *check) fail(n ast.Node, format string, args ...any) *node {
	c.r.Fault(c.at(n), format, args...)
	c.failed = true
	return &node{op: opNumber}
}

// parseFault places an error of the expression's grammar at its own character.
func (c *check) parseFault(err error, text, what string) {
	at, message := c.span(0, len(c.offsets)-1), err.Error()
	var fe *file.Error
	if errors.As(err, &fe) {
		at, message = c.span(fe.From, max(fe.To, fe.From+1)), fe.Message
	}
	if strings.Contains(message, "node limit") || strings.Contains(message, "maximum allowed nodes") {
		c.r.Fault(at, "%s has more than %d parts; split the rule", what, MaxExprNodes)
		return
	}
	if strings.Contains(message, "literal: strconv") {
		c.r.Fault(at, "%s: %s", what, numberRange)
		return
	}
	message = strings.TrimSpace(strings.SplitN(message, "\n", 2)[0])
	if strings.Contains(message, `Operator("=")`) || strings.Contains(text, " = ") {
		c.r.Fault(at, "%s: two equals signs compare: write ==", what)
		return
	}
	c.r.Fault(at, "%s cannot be read: %s", what, plainWords(message))
}

// plainWords turns the grammar's words into a baker's; what it does not know it only calls not understood here.
func plainWords(message string) string {
	token, found := strings.CutPrefix(message, "unexpected token ")
	switch {
	case found && strings.HasPrefix(token, "EOF"):
		return "it ends too soon"
	case found && strings.Contains(token, `Operator(",")`):
		return "a comma does not belong here; a decimal has a point: 1.5"
	case found:
		if _, word, ok := strings.Cut(token, "(\""); ok {
			return fmt.Sprintf("%q does not belong here", source.Safe(strings.TrimSuffix(word, "\")")))
		}
	case strings.Contains(message, "literal"):
		return "this is not a number that a rule can hold"
	case strings.Contains(message, "unclosed") || strings.Contains(message, "not terminated"):
		return "a bracket or quote is never closed"
	}
	return "this is not understood here"
}

func typeName(t facts.Type) string { return [...]string{"number", "yes or no", "text", "list"}[t] }

// walk goes over the parsed tree and lets through only what the language has; everything else is refused with its place.
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
		return &node{op: opYesNo, typ: facts.YesNo, number: v}
	case *ast.StringNode:
		return &node{op: opText, typ: facts.Text, text: x.Value}
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
			return c.fail(x, "only %s are called in a rule", strings.Join(functionNames, ", "))
		}
		return c.call(callee, callee.Value, x.Arguments)
	case *ast.BuiltinNode: // what the parser knows by name, such as abs, comes as this
		return c.call(x, x.Name, x.Arguments)
	case *ast.SequenceNode:
		return c.fail(x.Nodes[1], "one expression, without \";\"")
	}
	return c.fail(n, "%s", refused(n))
}

func refused(n ast.Node) string {
	switch n.(type) {
	case *ast.NilNode:
		return "no nil in a rule: known(x) asks whether a figure is given"
	case *ast.VariableDeclaratorNode:
		return "no let in a rule"
	case *ast.MapNode, *ast.PairNode:
		return "no { } in a rule"
	case *ast.SliceNode:
		return "no slices in a rule"
	case *ast.ChainNode:
		return "no \"?.\" in a rule"
	}
	return "this cannot stand in a rule; it may hold facts, limits, numbers, texts, + - * /, comparisons, and, or, not, in, ? :, " + strings.Join(functionNames, ", ")
}

// maxLiteralSize bounds numbers in rules and computed magnitudes, as powers of ten. Facts and limits stay under 10^12, so a
// checked expression can never leave the range of a float64.
const (
	factSize = 12
	maxSize  = 250
)

const numberRange = "a number in a rule must be 0 or between 0.000000001 and 1000000000"

func (c *check) literal(n ast.Node, x float64) *node {
	if math.IsNaN(x) || math.Abs(x) > 1e9 || x != 0 && math.Abs(x) < 1e-9 {
		return c.fail(n, numberRange)
	}
	return &node{op: opNumber, number: x, size: 9}
}

// reference checks subject.fact and limit.name.
func (c *check) reference(m *ast.MemberNode) *node {
	owner, ok := m.Node.(*ast.IdentifierNode)
	name, isName := m.Property.(*ast.StringNode)
	if !ok || !isName || m.Optional || m.Method || c.isBracket(m) {
		return c.fail(m, "only subject.fact and limit.name are read, such as %s.mass_g", c.names.self[0])
	}
	// The place of the whole reference, for the message.
	at := c.at(m.Property)
	fault := func(format string, args ...any) *node {
		c.r.Fault(at, format, args...)
		c.failed = true
		return &node{op: opNumber}
	}
	r := read{name: owner.Value + "." + name.Value}
	switch word := owner.Value; {
	case word == "limit":
		r.scope = inLimit
		for i, l := range c.names.limits {
			if l.Name == name.Value {
				r.limit = i
				return c.node(r)
			}
		}
		return fault("%s", reading.UnknownText("limit", name.Value, "this rule", limitNames(c.names.limits)))
	case c.names.isSelf(word):
		r.scope = inSelf
		return c.factNode(r, c.names.on, name.Value, fault)
	case word == "part" && (c.names.on == facts.OnStep || c.names.on == facts.OnIngredient):
		r.scope = inPart
		return c.factNode(r, facts.OnPart, name.Value, fault)
	case word == "formula":
		r.scope = inFormula
		return c.factNode(r, facts.OnFormula, name.Value, fault)
	case word == "kitchen":
		r.scope = inKitchen
		return c.factNode(r, facts.OnKitchen, name.Value, fault)
	}
	at = c.at(owner)
	return fault("%s", reading.UnknownText("subject", owner.Value, "this rule", c.names.words()))
}

// isBracket tells owner['name'] from owner.name, which the tree does not: the first stands in quotes.
func (c *check) isBracket(m *ast.MemberNode) bool {
	at := c.at(m.Property).Start
	return strings.ContainsRune("'\"`\\", rune(c.r.File.Text[at]))
}

func (c *check) factNode(r read, on facts.On, name string, fault func(string, ...any) *node) *node {
	f, ok := facts.Find(on, name)
	if !ok {
		var known []string
		for _, f := range facts.All(on) {
			known = append(known, f.Name)
		}
		prefix := strings.TrimSuffix(r.name, name)
		near := spelling.Nearest(name, known, 3)
		for i := range near {
			near[i] = prefix + near[i]
		}
		text := fmt.Sprintf("no fact %q", source.Safe(r.name))
		if len(near) > 0 {
			return fault("%s; nearest is %s", text, strings.Join(near, ", "))
		}
		article := "a"
		if on == facts.OnIngredient {
			article = "an"
		}
		return fault("%s; forebake facts --list shows those of %s %s", text, article, facts.OnNames[on])
	}
	if on == facts.OnStep {
		for _, v := range c.names.verbs {
			if !f.HasVerb(v) {
				return fault("a %s step has no %q; %s has it", v, name, strings.Join(f.Verbs, ", "))
			}
		}
		if len(c.names.verbs) == 0 && len(f.Verbs) > 0 {
			return fault("%q is known for %s only; write on = %q", name, strings.Join(f.Verbs, ", "), f.Verbs[0])
		}
	}
	r.fact = f
	return c.node(r)
}

// node gives the node of a read, each fact or limit standing once in the list of reads.
func (c *check) node(r read) *node {
	for i, other := range c.expr.reads {
		if other.scope == r.scope && other.fact == r.fact && other.limit == r.limit {
			return &node{op: opRead, typ: r.typ(), read: i, size: factSize}
		}
	}
	c.expr.reads = append(c.expr.reads, r)
	return &node{op: opRead, typ: r.typ(), read: len(c.expr.reads) - 1, size: factSize}
}

func limitNames(limits []Limit) []string {
	list := make([]string, len(limits))
	for i, l := range limits {
		list[i] = l.Name
	}
	return list
}

func (c *check) bareName(x *ast.IdentifierNode) *node {
	for _, w := range c.names.words() {
		if w == x.Value {
			return c.fail(x, "%q alone is not a figure: write %s.mass_g or another of its facts", x.Value, x.Value)
		}
	}
	if strings.HasPrefix(x.Value, "$") {
		return c.fail(x, "no $ names in a rule")
	}
	return c.fail(x, "%s; a text stands in single quotes: '%s'", reading.UnknownText("subject", x.Value, "this rule", c.names.words()), source.Safe(x.Value))
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
		return &node{op: opNot, typ: facts.YesNo, kids: []*node{kid}}
	case "-", "+":
		if kid.typ != facts.Number {
			return c.fail(x, "a sign needs a number, and this is a %s", typeName(kid.typ))
		}
		if x.Operator == "+" {
			return kid
		}
		return &node{op: opNeg, kids: []*node{kid}, size: kid.size}
	}
	return c.fail(x, "no %q in a rule", x.Operator)
}

func (c *check) binary(x *ast.BinaryNode) *node {
	a, b := c.walk(x.Left), c.walk(x.Right)
	if c.failed {
		return a
	}
	both := func(t facts.Type) bool { return a.typ == t && b.typ == t }
	yesNo := func(o op) *node { return &node{op: o, typ: facts.YesNo, kids: []*node{a, b}} }
	switch x.Operator {
	case "&&", "and", "||", "or":
		if !both(facts.YesNo) {
			return c.fail(x, "%s joins two yes-or-no answers; here a %s and a %s", x.Operator, typeName(a.typ), typeName(b.typ))
		}
		if x.Operator == "&&" || x.Operator == "and" {
			return yesNo(opAnd)
		}
		return yesNo(opOr)
	case "<", "<=", ">", ">=":
		if !both(facts.Number) {
			return c.fail(x, "%s compares two numbers; here a %s and a %s", x.Operator, typeName(a.typ), typeName(b.typ))
		}
		o := opLess
		if x.Operator == "<=" || x.Operator == ">=" {
			o = opLessEq
		}
		if x.Operator[0] == '>' {
			a, b = b, a
		}
		return yesNo(o)
	case "==", "!=":
		if a.typ != b.typ || a.typ == facts.List {
			return c.fail(x, "%s compares two of a kind; here a %s and a %s", x.Operator, typeName(a.typ), typeName(b.typ))
		}
		if x.Operator == "==" {
			return yesNo(opEqual)
		}
		return yesNo(opNotEqual)
	case "in":
		if b.typ != facts.List || a.typ == facts.List || b.op == opList && len(b.kids) > 0 && b.kids[0].typ != a.typ || b.op != opList && a.typ != facts.Text {
			return c.fail(x, "in asks whether a text or number is in a list; here a %s and a %s", typeName(a.typ), typeName(b.typ))
		}
		return yesNo(opIn)
	case "+", "-", "*", "/":
		return c.arithmetic(x, a, b)
	}
	hint := ""
	if x.Operator == "matches" || x.Operator == "contains" || x.Operator == "startsWith" || x.Operator == "endsWith" {
		hint = "; compare texts with == or in"
	}
	return c.fail(x, "no %q in a rule%s", x.Operator, hint)
}

func (c *check) arithmetic(x *ast.BinaryNode, a, b *node) *node {
	if a.typ != facts.Number || b.typ != facts.Number {
		return c.fail(x, "%q reckons with two numbers; here a %s and a %s", x.Operator, typeName(a.typ), typeName(b.typ))
	}
	n := &node{kids: []*node{a, b}}
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
		// A written divisor is at least 10^-9. A computed one may be anything: the judge turns what is not finite into unsure.
		n.op, n.size = opDiv, a.size+factSize
	}
	if n.size > maxSize {
		return c.fail(x, "too many figures are multiplied here")
	}
	return n
}

func (c *check) choose(x *ast.ConditionalNode) *node {
	if !x.Ternary {
		from := x.Location().From
		c.r.Fault(c.span(from, from+len("if")), "no if in a rule: write condition ? this : that")
		c.failed = true
		return &node{op: opNumber}
	}
	cond, a, b := c.walk(x.Cond), c.walk(x.Exp1), c.walk(x.Exp2)
	switch {
	case c.failed:
		return cond
	case cond.typ != facts.YesNo:
		return c.fail(x, "before the ? stands a yes or no, and this is a %s", typeName(cond.typ))
	case a.typ != b.typ || a.typ == facts.List:
		return c.fail(x, "both sides of the : must be of one kind; here a %s and a %s", typeName(a.typ), typeName(b.typ))
	}
	return &node{op: opChoose, typ: a.typ, kids: []*node{cond, a, b}, size: max(a.size, b.size)}
}

func (c *check) list(x *ast.ArrayNode) *node {
	n := &node{op: opList, typ: facts.List}
	if len(x.Nodes) == 0 || len(x.Nodes) > MaxListItems {
		return c.fail(x, "a list in a rule holds 1 to %d items", MaxListItems)
	}
	for _, item := range x.Nodes {
		kid := c.walk(item)
		if c.failed {
			return kid
		}
		if kid.op != opNumber && kid.op != opText || kid.typ != n.kidType(kid.typ) {
			return c.fail(item, "a list in a rule holds written numbers, or written texts")
		}
		n.kids = append(n.kids, kid)
	}
	return n
}

func (n *node) kidType(first facts.Type) facts.Type {
	if len(n.kids) == 0 {
		return first
	}
	return n.kids[0].typ
}

func (c *check) call(at ast.Node, name string, arguments []ast.Node) *node {
	f, ok := functions[name]
	if !ok {
		return c.fail(at, "%s", reading.UnknownText("function", name, "the rules", functionNames))
	}
	if len(arguments) < f.min || len(arguments) > f.max {
		return c.fail(at, "%s takes %s", name, count(f.min, f.max))
	}
	n := &node{op: f.op}
	for _, a := range arguments {
		kid := c.walk(a)
		if c.failed {
			return kid
		}
		n.kids = append(n.kids, kid)
	}
	if f.op == opKnown {
		if n.kids[0].op != opRead || c.expr.reads[n.kids[0].read].fact == nil {
			return c.fail(arguments[0], "known asks about one fact: known(%s.mass_g)", c.names.self[0])
		}
		return &node{op: opKnown, typ: facts.YesNo, read: n.kids[0].read}
	}
	for i, kid := range n.kids {
		if kid.typ != facts.Number {
			return c.fail(arguments[i], "%s needs numbers, and this is a %s", name, typeName(kid.typ))
		}
		n.size = max(n.size, kid.size)
	}
	return n
}

func count(lo, hi int) string {
	if lo == hi {
		return fmt.Sprintf("%d figure", lo)
	}
	return fmt.Sprintf("%d to %d figures", lo, hi)
}
