// Package expr is the language of conditions. It parses a rule
// file's expression, checks its types against the facts and judges
// it on intervals.
//
// The expression library knows the grammar. The checker lets through
// only what the judge can answer on every formula, so a checked
// expression cannot fail. A declared figure is such an expression under
// a name. Package machine judges a second time.
package expr

import (
	"forebake/engine/facts"
	"forebake/engine/figure"
)

// Interval is short for the interval of package figure.
type Interval = figure.Interval

// Expr is a type-checked expression. It cannot fail.
type Expr struct {
	root  *node
	first *node // what a chain of "and" asks first: most subjects answer no; nil for others
	reads []Read
	text  string // as written

	measure measure // of a figure that is a number
}

// Type is the type of the expression's value.
func (x *Expr) Type() facts.Type { return x.root.typ }

// Text is the expression as written.
func (x *Expr) Text() string { return x.text }

// Reads lists the facts and limits that the expression reads, without
// repeats. The caller must not change it.
func (x *Expr) Reads() []Read { return x.reads }

// Texts lists the texts that the expression writes: 'challah'.
func (x *Expr) Texts() []string { return x.root.texts() }

// Single gives the one read that is the whole expression; ok is false for
// a computed one.
func (x *Expr) Single() (read int, ok bool) { return x.root.read, x.root.op == opRead }

// Choices gives the reads that the value may be, for one read or a choice
// between some; nil for a computed one.
func (x *Expr) Choices() []int { return x.root.choices() }

func (n *node) choices() []int {
	switch n.op {
	case opRead:
		return []int{n.read}
	case opChoose:
		a, b := n.kids[1].choices(), n.kids[2].choices()
		if a != nil && b != nil {
			return append(a, b...)
		}
	}
	return nil
}

// Read is a fact or a limit that an expression reads.
type Read struct {
	Fact  *facts.Fact // nil for a limit
	Limit int         // index into the rule's limits
	scope scope
	Name  string // as written: "dough.sugar_pct"
}

// scope says where a name of an expression looks.
type scope uint8

const (
	inSelf scope = iota // the subject itself
	inPart
	inFormula
	inKitchen
	inLimit
)

func (r *Read) typ() facts.Type {
	if r.Fact == nil {
		return facts.Number
	}
	return r.Fact.Type
}

// Subject gives the subject that the read looks at, for an expression
// judged on x.
func (r *Read) Subject(x facts.Subject) facts.Subject {
	switch r.scope {
	case inPart:
		return facts.Subject{On: facts.OnPart, Part: x.Part}
	case inFormula:
		return facts.Subject{On: facts.OnFormula}
	case inKitchen:
		return facts.Subject{On: facts.OnKitchen}
	}
	return x
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

// node is one node of a checked expression. The tree is our own, so that
// the judge meets only what the checker let through.
type node struct {
	op     op
	typ    facts.Type
	kids   []*node
	number float64
	read   int      // index into the expression's reads
	words  []string // a text, as a result gives it
	size   int      // power of ten that bounds the result's magnitude
}

// firstOf is what a chain of "and" asks first; nil for no chain.
func firstOf(n *node) *node {
	if n.op != opAnd {
		return nil
	}
	for n.op == opAnd {
		n = n.kids[0]
	}
	return n
}

func (n *node) texts() []string {
	if n.op == opText {
		return n.words
	}
	var out []string
	for _, k := range n.kids {
		out = append(out, k.texts()...)
	}
	return out
}

// typeName names a type in a message.
func typeName(t facts.Type) string { return facts.TypeNames[t] }
