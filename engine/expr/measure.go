package expr

import (
	"fmt"

	"github.com/expr-lang/expr/ast"
)

// measure is the unit of a number inside a figure's expression.
type measure struct {
	sort    measureSort
	unit    string // of inUnit; "" for a ratio
	divided bool   // by a written number, which may be in the same unit: then it is a ratio
}

type measureSort uint8

const (
	bare   measureSort = iota // a written number takes the unit of whatever stands beside it
	inUnit                    // a fact, or what comes of facts of one unit
	mixed                     // a product of several units, which is not followed further
)

// measureOf is the measure of a fact by its printed unit.
func measureOf(unit string) measure {
	if unit == "ratio" || unit == "x" {
		unit = ""
	}
	return measure{sort: inUnit, unit: unit}
}

// isRatio reports whether the number has no unit.
func (m measure) isRatio() bool { return m.sort == inUnit && m.unit == "" }

// like reports whether two numbers are in one unit.
func (m measure) like(o measure) bool { return m.sort == o.sort && m.unit == o.unit }

func (m measure) String() string {
	switch {
	case m.sort == mixed:
		return "several units"
	case m.unit == "":
		return "no unit"
	}
	return m.unit
}

// measured records the measure of a node that reads a fact.
func (c *check) measured(n *node, unit string) {
	if c.names.inFigure {
		c.setMeasure(n, measureOf(unit))
	}
}

func (c *check) setMeasure(n *node, m measure) {
	if c.units == nil {
		c.units = map[*node]measure{}
	}
	c.units[n] = m
}

// sameMeasure checks that the numbers below a node share a unit. A node
// that is a number gets that unit.
func (c *check) sameMeasure(at ast.Node, n *node) *node {
	if !c.names.inFigure {
		return n
	}
	kids := n.kids
	if n.op == opChoose {
		kids = kids[1:]
	}
	out := measure{}
	for _, k := range kids {
		m := c.units[k]
		switch {
		case m.sort == bare || out.sort == mixed:
		case out.sort == bare || m.sort == mixed:
			out = m
		case !m.like(out):
			return c.fail(at, "this figure puts %s and %s together; bring both to one unit", out, m)
		}
	}
	c.setMeasure(n, out)
	return n
}

// productMeasure gives a product or quotient its unit, if it has one.
func (c *check) productMeasure(n *node) {
	if !c.names.inFigure {
		return
	}
	a, b := c.units[n.kids[0]], c.units[n.kids[1]]
	out := measure{sort: mixed}
	switch {
	case a.sort == bare && b.sort == bare:
		out = a
	case b.sort == bare && n.op == opDiv:
		out = a
		out.divided = true
	case b.sort == bare || b.isRatio() && a.sort == inUnit:
		out = a
	case n.op == opMul && (a.sort == bare || a.isRatio()):
		out = b
	case b.isRatio() || n.op == opDiv && a.sort == inUnit && a.like(b):
		out = measureOf("")
	}
	c.setMeasure(n, out)
}

// fits reports whether a figure of the measure may be printed with
// the unit.
func (m measure) fits(unit string) bool {
	o := measureOf(unit)
	switch {
	case m.sort != inUnit:
		return true
	case m.isRatio():
		return o.isRatio() || unit == "%"
	}
	return m.like(o) || m.divided && o.isRatio()
}

// unitOf settles a figure's unit: by its name's ending, by what is
// written, else by its expression. fault says why they conflict; ""
// for nothing.
func (m measure) unitOf(name, ending, written string) (unit, fault string) {
	unit = ending
	switch {
	case ending != "" && written != "" && ending != written:
		return "", fmt.Sprintf("figure %q is in %s by its name, and unit says %s; change one of "+
			"them",
			name, ending, written)
	case unit == "":
		unit = written
	}
	switch {
	case unit != "" && !m.fits(unit):
		return "", fmt.Sprintf("figure %q is said to be in %s, and its expression comes to %s;"+
			" change the unit, or the name's ending", name, unit, m)
	case unit == "" && m.sort == mixed:
		return "", fmt.Sprintf("the unit of figure %q does not follow from its expression;"+
			" end its name in one, such as %s_g, or add unit = \"g\"", name, name)
	case unit == "" && m.sort == inUnit:
		unit = m.unit
	}
	return unit, ""
}
