package rule

// direction tells how a value, or how readily a condition holds, goes as a limit is raised.
type direction uint8

const (
	untouched direction = iota // it does not depend on the limit
	up
	down
	untold // it may go either way
)

func (d direction) flip() direction {
	switch d {
	case up:
		return down
	case down:
		return up
	}
	return d
}

// with joins the directions of two parts that both push one way.
func (d direction) with(other direction) direction {
	switch {
	case d == untouched || d == other:
		return other
	case other == untouched:
		return d
	}
	return untold
}

// goes tells which way a node goes as a limit is raised, whatever the facts are. It is a sign analysis: it says untold wherever a sign
// is not plain from the tree, and never says up or down where that could be wrong. A condition that goes up holds more readily for a
// higher limit, so lowering the limit makes its rule less strict.
func (x *Expr) goes(n *node, limit int) direction {
	kid := func(i int) direction { return x.goes(n.kids[i], limit) }
	all := untouched
	for i := range n.kids {
		all = all.with(kid(i))
	}
	switch n.op {
	case opRead:
		if r := &x.reads[n.read]; r.fact == nil && r.limit == limit {
			return up
		}
		return untouched
	case opNumber, opText, opYesNo, opList, opKnown:
		return untouched
	case opNot, opNeg:
		return kid(0).flip()
	case opAnd, opOr, opMin, opMax, opAdd, opRound:
		return all
	case opLess, opLessEq: // the first below the second
		return kid(0).flip().with(kid(1))
	case opSub:
		return kid(0).with(kid(1).flip())
	case opMul:
		return x.scaled(n.kids[0], n.kids[1], limit).with(x.scaled(n.kids[1], n.kids[0], limit))
	case opDiv:
		if kid(1) == untouched {
			return x.scaled(n.kids[0], n.kids[1], limit)
		}
	case opChoose:
		if kid(0) == untouched {
			return kid(1).with(kid(2))
		}
	}
	if all == untouched {
		return untouched
	}
	return untold // equality, membership, an absolute value, a divisor, a question that the limit decides
}

// scaled tells which way a node goes that is multiplied or divided by another.
func (x *Expr) scaled(n, by *node, limit int) direction {
	d := x.goes(n, limit)
	switch sign := x.sign(by); {
	case d == untouched:
		return untouched
	case sign > 0:
		return d
	case sign < 0:
		return d.flip()
	}
	return untold
}

// sign tells whether a node is never below zero (1) or never above it (-1); 0 where that is not plain.
func (x *Expr) sign(n *node) int {
	switch n.op {
	case opNumber:
		if n.number < 0 {
			return -1
		}
		return 1
	case opAbs:
		return 1
	case opNeg:
		return -x.sign(n.kids[0])
	case opMul, opDiv:
		return x.sign(n.kids[0]) * x.sign(n.kids[1])
	case opAdd, opMin, opMax:
		first := x.sign(n.kids[0])
		for _, k := range n.kids[1:] {
			if x.sign(k) != first {
				return 0
			}
		}
		return first
	}
	return 0
}

// looser tells whether a change of a limit may make the rule less strict, and whether that is certain. A limit that the condition
// does not read only stands in its message; a false figure there misleads, so it counts as untold.
func (rule *Rule) looser(limit int, from Interval, to float64) (loose, sure bool) {
	if from.Lo == to && from.Hi == to {
		return false, true
	}
	switch rule.When.goes(rule.When.root, limit) {
	case up:
		return to < from.Hi, true
	case down:
		return to > from.Lo, true
	}
	return true, false
}
