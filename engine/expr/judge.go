package expr

import (
	"math"

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
func (x Result) Truth() figure.Truth {
	switch {
	case x.lo == 1:
		return figure.Yes
	case x.hi == 0:
		return figure.No
	}
	return figure.Open
}

func number(iv Interval) Result { return Result{lo: iv.Lo, hi: iv.Hi} }

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
	return j.eval(x.root).Truth()
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
	return j.sheet.Value(r.Fact, r.Subject(j.subject))
}

// eval judges a node on intervals, in three values. A simple comparison
// takes tens of nanoseconds and allocates nothing. A compiled program of
// the expression library takes longer to receive its figures, and answers
// on points only.
func (j *Judge) eval(n *node) Result {
	switch n.op {
	case opNumber:
		return Result{lo: n.number, hi: n.number}
	case opText:
		return Result{words: n.words}
	case opYesNo:
		return Result{lo: n.number, hi: n.number}
	case opRead:
		return j.read(n.read)
	case opKnown:
		return answer(j.Known(n.read))
	case opNot:
		x := j.eval(n.kids[0])
		return Result{lo: 1 - x.hi, hi: 1 - x.lo}
	case opAnd:
		a := j.eval(n.kids[0])
		if a.hi == 0 {
			return a
		}
		b := j.eval(n.kids[1])
		return Result{lo: min(a.lo, b.lo), hi: min(a.hi, b.hi)}
	case opOr:
		a := j.eval(n.kids[0])
		if a.lo == 1 {
			return a
		}
		b := j.eval(n.kids[1])
		return Result{lo: max(a.lo, b.lo), hi: max(a.hi, b.hi)}
	case opChoose:
		return j.choose(n)
	case opIn:
		return j.in(n)
	case opEqual, opNotEqual:
		t := equal(n.kids[0].typ, j.eval(n.kids[0]), j.eval(n.kids[1]))
		if n.op == opNotEqual {
			t = t.Not()
		}
		return answer(t)
	}
	a := j.eval(n.kids[0])
	switch n.op {
	case opNeg:
		return finite(a.Interval().Neg())
	case opAbs:
		return finite(a.Interval().Abs())
	case opRound:
		return Result{lo: math.Round(a.lo), hi: math.Round(a.hi)}
	case opMin, opMax:
		iv := a.Interval()
		for _, k := range n.kids[1:] {
			if b := j.eval(k).Interval(); n.op == opMin {
				iv = iv.Min(b)
			} else {
				iv = iv.Max(b)
			}
		}
		return number(iv)
	}
	b := j.eval(n.kids[1])
	switch n.op {
	case opLess:
		return answer(less(a, b, false))
	case opLessEq:
		return answer(less(a, b, true))
	case opAdd:
		return finite(a.Interval().Add(b.Interval()))
	case opSub:
		return finite(a.Interval().Sub(b.Interval()))
	case opMul:
		return finite(a.Interval().Mul(b.Interval()))
	case opDiv:
		return finite(a.Interval().Div(b.Interval()))
	}
	return number(figure.Unknown())
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
func finite(iv Interval) Result {
	if math.IsInf(iv.Lo, 1) || math.IsInf(iv.Hi, -1) || math.IsNaN(iv.Lo) || math.IsNaN(iv.Hi) {
		return number(figure.Unknown())
	}
	return number(iv)
}

func (j *Judge) read(i int) Result {
	r := &j.expr.reads[i]
	if j.pins != nil && j.pins[i] != nil &&
		(r.Fact == nil || r.Fact.Type == facts.Number || r.Fact.Type == facts.YesNo) {
		return number(*j.pins[i]) // a text has no ends to be held at
	}
	if r.Fact == nil {
		l := &j.limits[r.Limit]
		return Result{lo: l.Value - l.Half, hi: l.Value + l.Half}
	}
	if j.seen != nil {
		j.seen[i] = true
	}
	v := j.Value(i)
	if v.Absent && (r.Fact.Type == facts.Text || r.Fact.Type == facts.List) {
		return Result{open: true}
	}
	if v.Absent && r.Fact.Type == facts.YesNo {
		return answer(figure.Open)
	}
	if j.likely && r.Fact.Type == facts.Number {
		iv := j.sheet.WithoutError(r.Fact, r.Subject(j.subject))
		return Result{lo: iv.Lo, hi: iv.Hi}
	}
	return Result{lo: v.Lo, hi: v.Hi, words: v.Words}
}

// less compares ends; orEqual lets equal numbers count.
func less(a, b Result, orEqual bool) figure.Truth {
	if orEqual {
		switch {
		case a.hi <= b.lo:
			return figure.Yes
		case a.lo > b.hi:
			return figure.No
		}
		return figure.Open
	}
	switch {
	case a.hi < b.lo:
		return figure.Yes
	case a.lo >= b.hi:
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

func (j *Judge) in(n *node) Result {
	x := j.eval(n.kids[0])
	if list := n.kids[1]; list.op == opList {
		out := figure.No
		for _, k := range list.kids {
			out = out.Or(equal(k.typ, x, j.eval(k)))
			if out == figure.Yes {
				break
			}
		}
		return answer(out)
	}
	list := j.eval(n.kids[1])
	if x.open || list.open {
		return answer(figure.Open)
	}
	for _, w := range list.words {
		if w == x.words[0] {
			return answer(figure.Yes)
		}
	}
	return answer(figure.No)
}

// choose gives the hull of both sides while the question is open.
func (j *Judge) choose(n *node) Result {
	switch j.eval(n.kids[0]).Truth() {
	case figure.Yes:
		return j.eval(n.kids[1])
	case figure.No:
		return j.eval(n.kids[2])
	}
	a, b := j.eval(n.kids[1]), j.eval(n.kids[2])
	if n.typ == facts.Text {
		if equal(facts.Text, a, b) == figure.Yes {
			return a
		}
		return Result{open: true}
	}
	return number(a.Interval().Hull(b.Interval()))
}
