package rule

import (
	"math"

	"forebake/engine/facts"
	"forebake/engine/figure"
)

// Interval is short for the interval of package figure.
type Interval = figure.Interval

// truth is an answer in three values.
type truth uint8

const (
	isFalse truth = iota
	isTrue
	isOpen
)

// result is the value of a node on intervals: a number's ends, or 0 to 1 for a yes or no; words for a text or a list.
type result struct {
	lo, hi float64
	words  []string
	open   bool // a text that is not known
}

func (x result) interval() Interval { return Interval{Lo: x.lo, Hi: x.hi} }

func number(iv Interval) result { return result{lo: iv.Lo, hi: iv.Hi} }

func answer(t truth) result {
	switch t {
	case isTrue:
		return result{lo: 1, hi: 1}
	case isFalse:
		return result{}
	}
	return result{hi: 1}
}

func (x result) truth() truth {
	switch {
	case x.lo == 1:
		return isTrue
	case x.hi == 0:
		return isFalse
	}
	return isOpen
}

// Judge judges rules on the subjects of one formula at a time. It belongs to one goroutine.
type Judge struct {
	sheet *facts.Sheet

	// What is left of MaxWeighing for the formula, and what one more look costs; -1 while that is not known.
	weighing, weighingCost int

	// What the expression at hand is judged on.
	expr    *Expr
	subject facts.Subject
	limits  []Limit

	// pins replaces figures while an unsure answer is explained; nil otherwise.
	pins []*Interval

	limitFigures map[*Rule][]limitOf // made when a finding first shows them
}

// NewJudge makes a judge for the formulas that will be given to Open.
func NewJudge() *Judge { return &Judge{} }

// Open turns the judge to a formula's sheet.
func (j *Judge) Open(s *facts.Sheet) { j.sheet, j.weighing, j.weighingCost = s, MaxWeighing, -1 }

// value gives what a read of the expression at hand stands for.
func (j *Judge) value(i int) *facts.Value {
	r := &j.expr.reads[i]
	return j.sheet.Value(r.fact, r.subject(j.subject))
}

// subject gives the subject that a read looks at.
func (r *read) subject(x facts.Subject) facts.Subject {
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

// holds judges a condition on a subject. Later parts of an "and" are not looked at once one is false, so a figure that
// nothing comes to is never computed.
func (j *Judge) holds(x *Expr, subject facts.Subject, limits []Limit) truth {
	j.expr, j.subject, j.limits = x, subject, limits
	return j.eval(x.root).truth()
}

// eval judges a node on intervals, in three values. A simple comparison takes a few tens of nanoseconds and allocates
// nothing, less than a compiled program of the expression library needs to be handed its figures; that program is the second
// judge in the tests.
func (j *Judge) eval(n *node) result {
	switch n.op {
	case opNumber:
		return result{lo: n.number, hi: n.number}
	case opText:
		return result{words: []string{n.text}}
	case opYesNo:
		return result{lo: n.number, hi: n.number}
	case opRead:
		return j.read(n.read)
	case opKnown:
		return answer(j.known(n.read))
	case opNot:
		x := j.eval(n.kids[0])
		return result{lo: 1 - x.hi, hi: 1 - x.lo}
	case opAnd:
		a := j.eval(n.kids[0])
		if a.hi == 0 {
			return a
		}
		b := j.eval(n.kids[1])
		return result{lo: min(a.lo, b.lo), hi: min(a.hi, b.hi)}
	case opOr:
		a := j.eval(n.kids[0])
		if a.lo == 1 {
			return a
		}
		b := j.eval(n.kids[1])
		return result{lo: max(a.lo, b.lo), hi: max(a.hi, b.hi)}
	case opChoose:
		return j.choose(n)
	case opIn:
		return j.in(n)
	case opEqual, opNotEqual:
		t := equal(n.kids[0].typ, j.eval(n.kids[0]), j.eval(n.kids[1]))
		if n.op == opNotEqual && t != isOpen {
			t = isTrue - t
		}
		return answer(t)
	}
	a := j.eval(n.kids[0])
	switch n.op {
	case opNeg:
		return finite(a.interval().Neg())
	case opAbs:
		return finite(a.interval().Abs())
	case opRound:
		return result{lo: math.Round(a.lo), hi: math.Round(a.hi)}
	case opMin, opMax:
		iv := a.interval()
		for _, k := range n.kids[1:] {
			if b := j.eval(k).interval(); n.op == opMin {
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
		return finite(a.interval().Add(b.interval()))
	case opSub:
		return finite(a.interval().Sub(b.interval()))
	case opMul:
		return finite(a.interval().Mul(b.interval()))
	case opDiv:
		return finite(a.interval().Div(b.interval()))
	}
	return number(figure.Unknown())
}

// known tells whether a figure is given. One that only open amounts keep from being reckoned is neither known nor done without.
func (j *Judge) known(i int) truth {
	r := &j.expr.reads[i]
	switch {
	case j.pins != nil && j.pins[i] != nil || !j.value(i).Absent:
		return isTrue
	case j.sheet.Withheld(r.fact, r.subject(j.subject)):
		return isOpen
	}
	return isFalse
}

// finite turns a result with no finite point in it into an unknown one: a division by zero answers nothing.
func finite(iv Interval) result {
	if math.IsInf(iv.Lo, 1) || math.IsInf(iv.Hi, -1) || math.IsNaN(iv.Lo) || math.IsNaN(iv.Hi) {
		return number(figure.Unknown())
	}
	return number(iv)
}

func (j *Judge) read(i int) result {
	r := &j.expr.reads[i]
	if j.pins != nil && j.pins[i] != nil && (r.fact == nil || r.fact.Type == facts.Number || r.fact.Type == facts.YesNo) {
		return number(*j.pins[i]) // a text has no ends to be held at
	}
	if r.fact == nil {
		l := &j.limits[r.limit]
		return result{lo: l.Value - l.Half, hi: l.Value + l.Half}
	}
	v := j.value(i)
	if v.Absent && (r.fact.Type == facts.Text || r.fact.Type == facts.List) {
		return result{open: true}
	}
	if v.Absent && r.fact.Type == facts.YesNo {
		return answer(isOpen)
	}
	return result{lo: v.Lo, hi: v.Hi, words: v.Words}
}

// less compares ends; orEqual lets equal numbers count.
func less(a, b result, orEqual bool) truth {
	if orEqual {
		switch {
		case a.hi <= b.lo:
			return isTrue
		case a.lo > b.hi:
			return isFalse
		}
		return isOpen
	}
	switch {
	case a.hi < b.lo:
		return isTrue
	case a.lo >= b.hi:
		return isFalse
	}
	return isOpen
}

func equal(t facts.Type, a, b result) truth {
	if t == facts.Text {
		switch {
		case a.open || b.open:
			return isOpen
		case a.words[0] == b.words[0]:
			return isTrue
		}
		return isFalse
	}
	switch {
	case a.lo == a.hi && b.lo == b.hi && a.lo == b.lo:
		return isTrue
	case a.hi < b.lo || b.hi < a.lo:
		return isFalse
	}
	return isOpen
}

func (j *Judge) in(n *node) result {
	x := j.eval(n.kids[0])
	if list := n.kids[1]; list.op == opList {
		out := isFalse
		for _, k := range list.kids {
			switch equal(k.typ, x, j.eval(k)) {
			case isTrue:
				return answer(isTrue)
			case isOpen:
				out = isOpen
			}
		}
		return answer(out)
	}
	list := j.eval(n.kids[1])
	if x.open || list.open {
		return answer(isOpen)
	}
	for _, w := range list.words {
		if w == x.words[0] {
			return answer(isTrue)
		}
	}
	return answer(isFalse)
}

// choose gives the hull of both sides while the question is open.
func (j *Judge) choose(n *node) result {
	switch j.eval(n.kids[0]).truth() {
	case isTrue:
		return j.eval(n.kids[1])
	case isFalse:
		return j.eval(n.kids[2])
	}
	a, b := j.eval(n.kids[1]), j.eval(n.kids[2])
	if n.typ == facts.Text {
		if equal(facts.Text, a, b) == isTrue {
			return a
		}
		return result{open: true}
	}
	return number(a.interval().Hull(b.interval()))
}
