package expr

import (
	"errors"
	"fmt"
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
)

// Bounds of one expression. The library's parser and compiler recurse, so
// length and nesting are bounded before either sees the text.
const (
	MaxBytes     = 4096
	MaxDepth     = 64  // nested round and square brackets
	MaxNodes     = 256 // of the parsed tree
	MaxListItems = 64  // of a list written in the expression
)

// grammar parses without built-ins: functions lists what may be called.
var grammar = func() *conf.Config {
	c := conf.CreateNew()
	c.MaxNodes = MaxNodes
	c.Builtins = conf.FunctionsTable{}
	return c
}()

// Condition reads and checks a yes-or-no attribute.
func Condition(r *reading.Reader, e hclsyntax.Expression, n *Names, what string) *Expr {
	x := Parse(r, e, n, what)
	if x == nil {
		return nil
	}
	if x.root.typ != facts.YesNo {
		r.Fault(r.Place(e.Range()),
			"%s must be a comparison that is true or false, such as %s.mass_g > 0; this is a %s",
			what, n.self(), typeName(x.root.typ))
		return nil
	}
	return x
}

// Parse reads and checks an attribute that holds an expression of any
// type. what names it in a message: "when".
func Parse(r *reading.Reader, e hclsyntax.Expression, n *Names, what string) *Expr {
	if text, start, ok := source.PlainText(r.File, e); ok {
		return (&check{r: r, names: n, start: start, runes: len(text)}).parse(text, what)
	}
	text, offsets, ok := source.DecodeString(r.File, e)
	if !ok {
		if _, _, isText := r.Text(e, what); isText {
			r.Fault(r.Place(e.Range()), "%s must be a plain text", what)
		}
		return nil
	}
	return ParseText(r, text, offsets, n, what)
}

// ParseText checks an expression's text, whose runes stand at offsets in
// the file.
func ParseText(r *reading.Reader, text string, offsets []int, n *Names, what string) *Expr {
	return (&check{r: r, names: n, offsets: offsets, runes: len(offsets) - 1}).parse(text, what)
}

func (c *check) parse(text, what string) *Expr {
	c.expr = &Expr{text: text}
	if !c.bounded(text, what) {
		return nil
	}
	tree, err := parser.ParseWithConfig(text, grammar)
	if err != nil {
		c.parseFault(err, text, what)
		return nil
	}
	root := c.walk(tree.Node)
	if c.failed {
		return nil
	}
	c.expr.root, c.expr.first, c.expr.measure = root, firstOf(root), c.units[root]
	return c.expr
}

// bounded reports whether a text may go to the parser, and records
// why not.
func (c *check) bounded(text, what string) bool {
	whole := c.span(0, c.runes)
	if strings.TrimSpace(text) == "" {
		c.r.Fault(whole, "%s is empty; write an expression, such as %s.mass_g > 0", what,
			c.names.self())
		return false
	}
	if len(text) > MaxBytes {
		c.r.Fault(whole, "%s is longer than %d characters", what, MaxBytes)
		return false
	}
	depth, i := 0, -1 // i counts runes
	for _, x := range text {
		i++
		switch x {
		case '(', '[':
			depth++
		case ')', ']':
			depth--
		}
		if depth > MaxDepth {
			c.r.Fault(c.span(i, i+1), "%s nests brackets more than %d deep", what, MaxDepth)
			return false
		}
	}
	if at, has := findPipe(text); has {
		c.r.Fault(c.span(at.From, at.To), "%s: no \"|\" in a rule; or joins two yes-or-no answers",
			what)
		return false
	}
	return true
}

// findPipe finds the first pipe sign. The parser turns a pipe into a plain
// call, so the tree no longer shows it.
func findPipe(text string) (file.Location, bool) {
	if !strings.Contains(strings.ReplaceAll(text, "||", ""), "|") {
		return file.Location{}, false
	}
	tokens, err := lexer.Lex(file.NewSource(text))
	if err != nil {
		return file.Location{}, false // the parser reports it
	}
	for _, t := range tokens {
		if t.Is(lexer.Operator, "|") {
			return t.Location, true
		}
	}
	return file.Location{}, false
}

func (c *check) span(from, to int) source.Place {
	return source.Place{File: c.r.File, Start: c.offset(from), End: c.offset(to)}
}

// offset is where a rune of the text stands in the file.
func (c *check) offset(i int) int {
	if c.offsets == nil {
		return c.start + max(0, min(i, c.runes))
	}
	return source.Offset(c.offsets, i)
}

func (c *check) at(n ast.Node) source.Place {
	loc := n.Location()
	return c.span(loc.From, max(loc.To, loc.From+1))
}

func (c *check) fail(n ast.Node, format string, args ...any) *node {
	return c.failAt(c.at(n), format, args...)
}

func (c *check) failAt(at source.Place, format string, args ...any) *node {
	c.r.Fault(at, format, args...)
	c.failed = true
	return c.add(node{op: opNumber})
}

// parseFault places an error of the grammar at its own character.
func (c *check) parseFault(err error, text, what string) {
	at, message := c.span(0, c.runes), err.Error()
	var fe *file.Error
	if errors.As(err, &fe) {
		at, message = c.span(fe.From, max(fe.To, fe.From+1)), fe.Message
	}
	if strings.Contains(message, "node limit") ||
		strings.Contains(message, "maximum allowed nodes") {
		c.r.Fault(at, "%s has more than %d parts; split the %s", what, MaxNodes, c.names.block())
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

// plainWords puts an error of the grammar into a baker's words.
func plainWords(message string) string {
	token, found := strings.CutPrefix(message, "unexpected token ")
	switch {
	case found && strings.HasPrefix(token, "EOF"):
		return "it ends too soon"
	case found && strings.Contains(token, `Operator(",")`):
		return "a comma does not belong here; a decimal has a point: 1.5"
	case found:
		if _, word, ok := strings.Cut(token, "(\""); ok {
			return fmt.Sprintf("%q does not belong here",
				source.Safe(strings.TrimSuffix(word, "\")")))
		}
	case strings.Contains(message, "literal"):
		return "this is not a number that a rule can hold"
	case strings.Contains(message, "unclosed") || strings.Contains(message, "not terminated"):
		return "a bracket or quote is never closed"
	}
	return "this is not understood here"
}
