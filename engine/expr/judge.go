package expr

import (
	"math"
	"slices"

	"forebake/engine/facts"
	"forebake/engine/figure"
)

// Result is the value of an expression on intervals: a number's ends, 0
// to 1 for a yes or no, or a text's words.
type Result struct {
	lo, hi float64
	words  []string
	open   bool // a text that is not known
}

// Interval is the result as an interval.
func (x Result) Interval() Interval { return Interval{Lo: x.lo, Hi: x.hi} }

// Words are those of a text or a list.
func (x Result) Words() []string { return x.words }

// Open reports whether a text or list is not known.
func (x Result) Open() bool { return x.open }

// Truth is the result of a yes-or-no expression.
func (x Result) Truth() figure.Truth { return truthOf(x.Interval()) }

// truthOf is a yes or no between 0 and 1.
func truthOf(iv Interval) figure.Truth {
	switch {
	case iv.Lo == 1:
		return figure.Yes
	case iv.Hi == 0:
		return figure.No
	}
	return figure.Open
}

func answer(t figure.Truth) Result {
	switch t {
	case figure.Yes:
		return Result{lo: 1, hi: 1}
	case figure.No:
		return Result{}
	}
	return Result{hi: 1}
}

// Judge judges expressions on one formula at a time. It belongs to
// one goroutine.
type Judge struct {
	sheet *facts.Sheet

	// What is judged: see Set.
	expr    *Expr
	subject facts.Subject
	limits  []Limit

	pins []*Interval // replaces figures while an answer is explained; nil otherwise
	seen []bool      // marks the reads that were looked at, for a declared figure; nil otherwise

	likely bool // takes the model's own error off the figures: see Likely

	nested int // how many declared figures lie around the expression at hand; see Excess
}

// Open turns the judge to a formula's sheet.
func (j *Judge) Open(s *facts.Sheet) { j.sheet = s }

// Sheet is the sheet of the formula at hand.
func (j *Judge) Sheet() *facts.Sheet { return j.sheet }

// Set turns the judge to an expression on a subject. limits are
// its rule's.
func (j *Judge) Set(x *Expr, subject facts.Subject, limits []Limit) {
	j.expr, j.subject, j.limits = x, subject, limits
}

// Holds judges a condition on a subject. The second part of an "and" is
// skipped once the first is false, so that no figure is computed in vain.
func (j *Judge) Holds(x *Expr, subject facts.Subject, limits []Limit) figure.Truth {
	j.Set(x, subject, limits)
	if x.first != nil && j.truth(x.first) == figure.No {
		return figure.No
	}
	return j.truth(x.root)
}

// Likely judges like Holds, with each modelled figure free of its model's
// error. What the formula leaves open stays open, so knowing less never
// turns Yes to No.
func (j *Judge) Likely(x *Expr, subject facts.Subject, limits []Limit) figure.Truth {
	j.likely = true
	t := j.Holds(x, subject, limits)
	j.likely = false
	return t
}

// Numbers reports whether each number that the expression reads passes.
func (x *Expr) Numbers(passes func(read int, f *facts.Fact) bool) bool {
	for i, r := range x.reads {
		if r.Fact != nil && r.Fact.Type == facts.Number && !passes(i, r.Fact) {
			return false
		}
	}
	return true
}

// Result judges an expression of any type on a subject.
func (j *Judge) Result(x *Expr, subject facts.Subject, limits []Limit) Result {
	j.Set(x, subject, limits)
	return j.eval(x.root)
}

// Value is the fact of a read that is no limit.
func (j *Judge) Value(i int) *facts.Value {
	r := &j.expr.reads[i]
	if v := j.sheet.Kept(r.Fact, &j.subject); v != nil { // most are read again and again
		return v
	}
	return j.sheet.Value(r.Fact, r.Subject(j.subject))
}

// eval judges a node on intervals, in three values. A simple comparison
// takes tens of nanoseconds and allocates nothing. A compiled program of
// the expression library takes longer to receive its figures, and answers
// on points only.
func (j *Judge) eval(n *node) Result {
	switch {
	case n.typ == facts.YesNo:
		return answer(j.truth(n))
	case n.typ == facts.Number && n.op != opList:
		iv := j.number(n)
		return Result{lo: iv.Lo, hi: iv.Hi}
	}
	switch n.op {
	case opText:
		return Result{words: n.words}
	case opRead:
		return j.text(n.read)
	case opChoose:
		return j.choose(n)
	}
	return Result{open: true}
}

// truth judges a yes or no.
func (j *Judge) truth(n *node) figure.Truth {
	switch n.op {
	case opYesNo:
		return figure.TruthOf(n.number == 1)
	case opRead:
		return truthOf(j.interval(n.read))
	case opKnown:
		return j.Known(n.read)
	case opNot:
		return j.truth(n.kids[0]).Not()
	case opAnd:
		a := j.truth(n.kids[0])
		if a == figure.No {
			return a
		}
		return a.And(j.truth(n.kids[1]))
	case opOr:
		a := j.truth(n.kids[0])
		if a == figure.Yes {
			return a
		}
		return a.Or(j.truth(n.kids[1]))
	case opLess:
		return less(j.number(n.kids[0]), j.number(n.kids[1]))
	case opLessEq:
		return less(j.number(n.kids[1]), j.number(n.kids[0])).Not()
	case opEqual:
		return equal(n.kids[0].typ, j.eval(n.kids[0]), j.eval(n.kids[1]))
	case opNotEqual:
		return equal(n.kids[0].typ, j.eval(n.kids[0]), j.eval(n.kids[1])).Not()
	case opIn:
		return j.in(n)
	case opChoose: // what both sides say while the question is open
		switch j.truth(n.kids[0]) {
		case figure.Yes:
			return j.truth(n.kids[1])
		case figure.No:
			return j.truth(n.kids[2])
		}
		if a := j.truth(n.kids[1]); a == j.truth(n.kids[2]) {
			return a
		}
	}
	return figure.Open
}

// number computes a number's ends.
func (j *Judge) number(n *node) Interval {
	switch n.op {
	case opNumber:
		return figure.Point(n.number)
	case opRead:
		return j.interval(n.read)
	case opChoose: // the hull of both sides while the question is open
		switch j.truth(n.kids[0]) {
		case figure.Yes:
			return j.number(n.kids[1])
		case figure.No:
			return j.number(n.kids[2])
		}
		return j.number(n.kids[1]).Hull(j.number(n.kids[2]))
	}
	a := j.number(n.kids[0])
	switch n.op {
	case opNeg:
		return finite(a.Neg())
	case opAbs:
		return finite(a.Abs())
	case opRound:
		return Interval{Lo: math.Round(a.Lo), Hi: math.Round(a.Hi)}
	case opMin, opMax:
		for _, k := range n.kids[1:] {
			if b := j.number(k); n.op == opMin {
				a = a.Min(b)
			} else {
				a = a.Max(b)
			}
		}
		return a
	}
	b := j.number(n.kids[1])
	switch n.op {
	case opAdd:
		return finite(a.Add(b))
	case opSub:
		return finite(a.Sub(b))
	case opMul:
		return finite(a.Mul(b))
	case opDiv:
		return finite(a.Div(b))
	}
	return figure.Unknown()
}

// Known tells whether the fact of a read is given. One withheld only by
// open amounts is neither given nor absent.
func (j *Judge) Known(i int) figure.Truth {
	r := &j.expr.reads[i]
	switch {
	case j.pins != nil && j.pins[i] != nil,
		!j.Value(i).Absent && !j.sheet.IsSplit(r.Fact, r.Subject(j.subject)):
		return figure.Yes
	case j.sheet.Withheld(r.Fact, r.Subject(j.subject)):
		return figure.Open
	}
	return figure.No
}

// finite opens a result without a finite point: a division by zero
// answers nothing.
func finite(iv Interval) Interval {
	if math.IsInf(iv.Lo, 1) || math.IsInf(iv.Hi, -1) || math.IsNaN(iv.Lo) || math.IsNaN(iv.Hi) {
		return figure.Unknown()
	}
	return iv
}

// interval gives the ends of a limit, or of a fact that is a number or
// a yes or no.
func (j *Judge) interval(i int) Interval {
	if j.pins != nil && j.pins[i] != nil {
		return *j.pins[i]
	}
	r := &j.expr.reads[i]
	if r.Fact == nil {
		l := &j.limits[r.Limit]
		return Interval{Lo: l.Value - l.Half, Hi: l.Value + l.Half}
	}
	if j.seen != nil {
		j.seen[i] = true
	}
	v := j.Value(i)
	if r.Fact.Type == facts.YesNo && v.Absent {
		return figure.Between(0, 1)
	}
	if j.likely && r.Fact.Type == facts.Number {
		return j.sheet.WithoutError(r.Fact, r.Subject(j.subject))
	}
	return Interval{Lo: v.Lo, Hi: v.Hi}
}

// text gives the words of a fact. They have no ends to be pinned at.
func (j *Judge) text(i int) Result {
	if j.seen != nil {
		j.seen[i] = true
	}
	v := j.Value(i)
	if v.Absent {
		return Result{open: true}
	}
	return Result{words: v.Words}
}

// less compares ends.
func less(a, b Interval) figure.Truth {
	switch {
	case a.Hi < b.Lo:
		return figure.Yes
	case a.Lo >= b.Hi:
		return figure.No
	}
	return figure.Open
}

func equal(t facts.Type, a, b Result) figure.Truth {
	if t == facts.Text {
		if a.open || b.open {
			return figure.Open
		}
		return figure.TruthOf(a.words[0] == b.words[0])
	}
	switch {
	case a.lo == a.hi && b.lo == b.hi && a.lo == b.lo:
		return figure.Yes
	case a.hi < b.lo || b.hi < a.lo:
		return figure.No
	}
	return figure.Open
}

func (j *Judge) in(n *node) figure.Truth {
	x := j.eval(n.kids[0])
	if list := n.kids[1]; list.op == opList {
		out := figure.No
		for _, k := range list.kids {
			out = out.Or(equal(k.typ, x, j.eval(k)))
			if out == figure.Yes {
				break
			}
		}
		return out
	}
	list := j.eval(n.kids[1])
	if x.open || list.open {
		return figure.Open
	}
	return figure.TruthOf(slices.Contains(list.words, x.words[0]))
}

// choose gives the text of the side that is chosen.
func (j *Judge) choose(n *node) Result {
	switch j.truth(n.kids[0]) {
	case figure.Yes:
		return j.eval(n.kids[1])
	case figure.No:
		return j.eval(n.kids[2])
	}
	a, b := j.eval(n.kids[1]), j.eval(n.kids[2])
	if equal(facts.Text, a, b) == figure.Yes {
		return a
	}
	return Result{open: true}
}
