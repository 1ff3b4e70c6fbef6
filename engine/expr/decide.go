package expr

import (
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
)

// Deciding is a set of the reads of a condition, by index.
type Deciding [2]uint64

// Has reports whether the read at an index is in the set. Reads beyond
// its size always are.
func (d *Deciding) Has(i int) bool {
	return i >= 64*len(d) || d[i/64]&(1<<(i%64)) != 0
}

func (d *Deciding) add(i int) {
	if i < 64*len(d) {
		d[i/64] |= 1 << (i % 64)
	}
}

// Deciding gives the reads that decide the condition's answer: figures
// compared in branches that hold or may hold, and the limits they pass.
// Margins, model factors and limits that another outdoes are left out.
func (j *Judge) Deciding() Deciding {
	var d Deciding
	j.decide(j.expr.root, figure.Yes, &d)
	return d
}

// decide walks a yes or no to the comparisons that come out as wanted,
// or may.
func (j *Judge) decide(n *node, want figure.Truth, d *Deciding) {
	switch n.op {
	case opNot:
		j.decide(n.kids[0], want.Not(), d)
	case opAnd, opOr:
		for _, k := range n.kids {
			if (n.op == opAnd) == (want == figure.Yes) || j.eval(k).Truth() != want.Not() {
				j.decide(k, want, d)
			}
		}
	case opChoose:
		for _, k := range j.chosen(n) {
			j.decide(k, want, d)
		}
	case opKnown: // that it is known decides nothing by itself
	default:
		j.compared(n, d)
	}
}

// chosen lists the sides of a choice that it may come to.
func (j *Judge) chosen(n *node) []*node {
	switch j.eval(n.kids[0]).Truth() {
	case figure.Yes:
		return n.kids[1:2]
	case figure.No:
		return n.kids[2:3]
	}
	return n.kids[1:3]
}

// compared adds the reads of a compared figure.
func (j *Judge) compared(n *node, d *Deciding) {
	switch n.op {
	case opRead:
		r := &j.expr.reads[n.read]
		if !isAllowance(r.Name, r.Fact == nil) {
			d.add(n.read)
		}
		return
	case opKnown:
		return
	case opChoose:
		for _, k := range j.chosen(n) {
			j.compared(k, d)
		}
		return
	case opMin, opMax:
		whole := j.eval(n)
		for _, k := range n.kids {
			x := j.eval(k)
			if n.op == opMin && x.lo > whole.hi || n.op == opMax && x.hi < whole.lo {
				continue // another one is what counts
			}
			j.compared(k, d)
		}
		return
	}
	for _, k := range n.kids {
		if !j.isCoefficient(n, k) && !isText(n, k) {
			j.compared(k, d)
		}
	}
}

// isCoefficient reports whether a side of a product or quotient is a
// limit beside a figure: it converts the figure, and is not passed.
func (j *Judge) isCoefficient(n, kid *node) bool {
	if n.op != opMul && n.op != opDiv || !j.isLimit(kid) {
		return false
	}
	for _, k := range n.kids {
		if k != kid && j.readsFact(k) {
			return true
		}
	}
	return false
}

func (j *Judge) isLimit(n *node) bool {
	return n.op == opRead && j.expr.reads[n.read].Fact == nil
}

func (j *Judge) readsFact(n *node) bool {
	if n.op == opRead {
		return !j.isLimit(n)
	}
	return slices.ContainsFunc(n.kids, j.readsFact)
}

// isText reports whether a side is a word compared with a word: a kind,
// which the message names if it matters.
func isText(n, kid *node) bool {
	return kid.op == opRead && kid.typ == facts.Text &&
		slices.ContainsFunc(n.kids, func(k *node) bool { return k.op == opText || k.op == opList })
}

// isAllowance reports whether a read only says how soft a limit is.
func isAllowance(name string, isLimit bool) bool {
	if strings.Contains(name, "margin") {
		return true
	}
	return isLimit && (strings.Contains(name, "factor") || strings.Contains(name, "leeway") ||
		strings.Contains(name, "friction"))
}
