package rule

import (
	"sync"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/expr"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// Condition is a condition of a rule or a caution, or what a lever is
// set to. Of a shipped pack it is read when it is first asked for: a
// formula meets the subjects of two thirds of the rules.
type Condition struct {
	written hclsyntax.Expression
	once    sync.Once
	read    func() *expr.Expr
	expr    *expr.Expr
}

// Expr is the checked expression. Once a pack reads without a problem
// it is never nil.
func (c *Condition) Expr() *expr.Expr {
	c.once.Do(func() { c.expr, c.read = c.read(), nil })
	return c.expr
}

// Text is the condition as written; "" for none.
func (c *Condition) Text() string {
	if c == nil {
		return ""
	}
	text, _, _ := source.StringLiteral(c.written)
	return text
}

// newCondition gives nil for a faulty one.
func newCondition(e hclsyntax.Expression, o Options, read func() *expr.Expr) *Condition {
	c := &Condition{written: e, read: read}
	if !o.later() && c.Expr() == nil {
		return nil
	}
	return c
}

// condition reads a condition; none for a key that is not there.
func condition(r *reading.Reader, attr hclsyntax.Attributes, n *expr.Names, key string,
	o Options) *Condition {
	a := attr[key]
	if a == nil {
		return nil
	}
	return newCondition(a.Expr, o, func() *expr.Expr {
		return expr.Condition(r, a.Expr, n, key)
	})
}
