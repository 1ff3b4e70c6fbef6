package expr

// Direction tells how a value, or how readily a condition holds, changes
// as a limit is raised.
type Direction uint8

// The directions.
const (
	Untouched Direction = iota // it does not depend on the limit
	Up
	Down
	Untold // it may go either way
)

func (d Direction) flip() Direction {
	switch d {
	case Up:
		return Down
	case Down:
		return Up
	}
	return d
}

// with joins the directions of two parts that push one way.
func (d Direction) with(other Direction) Direction {
	switch {
	case d == Untouched || d == other:
		return other
	case other == Untouched:
		return d
	}
	return Untold
}

// Direction tells which way the expression goes as a limit is raised,
// whatever the facts are. It is a sign analysis: Untold wherever the tree
// does not show the sign, never Up or Down where that could be wrong. A
// condition that goes Up holds more readily for a higher limit, so a
// lower limit makes its rule less strict.
func (x *Expr) Direction(limit int) Direction { return x.goes(x.root, limit) }

func (x *Expr) goes(n *node, limit int) Direction {
	kid := func(i int) Direction { return x.goes(n.kids[i], limit) }
	all := Untouched
	for i := range n.kids {
		all = all.with(kid(i))
	}
	switch n.op {
	case opRead:
		if r := &x.reads[n.read]; r.Fact == nil && r.Limit == limit {
			return Up
		}
		return Untouched
	case opNumber, opText, opYesNo, opList, opKnown:
		return Untouched
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
		if kid(1) == Untouched {
			return x.scaled(n.kids[0], n.kids[1], limit)
		}
	case opChoose:
		if kid(0) == Untouched {
			return kid(1).with(kid(2))
		}
	}
	if all == Untouched {
		return Untouched
	}
	return Untold // equality, membership, an absolute value, a divisor, a question of the limit
}

// scaled is the direction of a node multiplied or divided by another.
func (x *Expr) scaled(n, by *node, limit int) Direction {
	d := x.goes(n, limit)
	switch sign := x.sign(by); {
	case d == Untouched:
		return Untouched
	case sign > 0:
		return d
	case sign < 0:
		return d.flip()
	}
	return Untold
}

// sign tells whether a node is never below zero (1) or never above it
// (-1); else 0.
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
