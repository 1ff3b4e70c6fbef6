package expr

import (
	"math"

	"forebake/engine/facts"
	"forebake/engine/figure"
)

// Pinned judges the condition with one read held at an interval.
func (j *Judge) Pinned(i int, at Interval) figure.Truth {
	j.pins = make([]*Interval, len(j.expr.reads))
	j.pins[i] = &at
	t := j.eval(j.expr.root).Truth()
	j.pins = nil
	return t
}

// Blame lists the reads that leave the condition open, even with every
// other open read held at an end. Where none does so alone, it lists all.
func (j *Judge) Blame() []int {
	x := j.expr
	var open []int
	for i := range x.reads {
		if x.reads[i].Fact == nil {
			continue
		}
		v := j.Value(i)
		isText := x.reads[i].Fact.Type == facts.Text || x.reads[i].Fact.Type == facts.List
		if v.Absent || !isText && v.Lo != v.Hi {
			open = append(open, i)
		}
	}
	if len(open) < 2 {
		return open
	}
	var out []int
	for _, i := range open {
		for _, high := range [...]bool{false, true} {
			j.pins = make([]*Interval, len(x.reads))
			for _, k := range open {
				if k != i {
					j.pins[k] = j.end(k, high)
				}
			}
			t := j.eval(x.root).Truth()
			j.pins = nil
			if t == figure.Open {
				out = append(out, i)
				break
			}
		}
	}
	if len(out) == 0 {
		return open
	}
	return out
}

// far stands for an end without limit.
const far = 1e12

// end gives one end of a read; an open end is taken far out.
func (j *Judge) end(i int, high bool) *Interval {
	v := j.Value(i)
	at := v.Lo
	if high {
		at = v.Hi
	}
	if j.expr.reads[i].Fact.Type == facts.YesNo && v.Absent {
		at = 0
		if high {
			at = 1
		}
	}
	at = max(-far, min(far, at))
	return &Interval{Lo: at, Hi: at}
}

// Middle judges the expression with every modelled figure at its middle.
// ok is false when one of those middles is unknown.
func (j *Judge) Middle() (out Result, ok bool) {
	pins := make([]*Interval, len(j.expr.reads))
	for i := range j.expr.reads {
		if f := j.expr.reads[i].Fact; f == nil || f.Type != facts.Number {
			continue
		}
		mid := j.Value(i).Mid
		if math.IsNaN(mid) || math.IsInf(mid, 0) {
			return Result{}, false
		}
		pins[i] = &Interval{Lo: mid, Hi: mid}
	}
	j.pins = pins
	out = j.eval(j.expr.root)
	j.pins = nil
	return out, true
}

// certain is the excess of a condition that holds without
// comparing figures.
const certain = 10

// Excess tells how far the condition can hold, as a share of the figures
// compared: above zero it is not clear, and more is worse.
func (j *Judge) Excess() float64 { return j.excess(j.expr.root) }

func (j *Judge) excess(n *node) float64 {
	switch n.op {
	case opNot:
		return -j.excess(n.kids[0])
	case opAnd: // both hold: the sum, so that bringing down either counts
		a, b := j.excess(n.kids[0]), j.excess(n.kids[1])
		if a > 0 && b > 0 {
			return a + b
		}
		return min(a, b)
	case opOr:
		a, b := j.excess(n.kids[0]), j.excess(n.kids[1])
		if a > 0 && b > 0 {
			return a + b
		}
		return max(a, b)
	case opLess, opLessEq:
		a, b := j.eval(n.kids[0]), j.eval(n.kids[1])
		gap := b.hi - a.lo
		size := max(math.Abs(a.lo), math.Abs(b.hi), 1e-9)
		if math.IsNaN(gap) || math.IsInf(gap, 0) || math.IsInf(size, 0) {
			return math.Copysign(certain, gap)
		}
		return max(-certain, min(certain, gap/size))
	}
	if inner, ok := j.figureOf(n); ok {
		return inner.excess(inner.expr.root)
	}
	switch j.eval(n).Truth() {
	case figure.Yes:
		return certain
	case figure.No:
		return -certain
	}
	return 0
}

// maxNested bounds how many figures within figures Excess looks into.
const maxNested = 2

// figureOf gives a judge of the declared yes or no that the node reads.
func (j *Judge) figureOf(n *node) (inner *Judge, ok bool) {
	if n.op != opRead || n.typ != facts.YesNo || j.expr.reads[n.read].Fact == nil ||
		j.nested == maxNested {
		return nil, false
	}
	r := &j.expr.reads[n.read]
	f, ok := r.Fact.Declared().(*Figure)
	if !ok {
		return nil, false
	}
	inner = &Judge{sheet: j.sheet, nested: j.nested + 1}
	inner.Set(f.Is, r.Subject(j.subject), nil)
	return inner, true
}
