package expr

import (
	"math"
	"slices"

	"forebake/engine/facts"
	"forebake/engine/figure"
)

// Value computes the figure on a subject: its expression, judged on
// intervals. A figure of an absent fact is absent, unless its expression
// does without it. A text decided by an open figure is absent too: it is
// not one word.
func (f *Figure) Value(on facts.Asker, x facts.Subject) facts.Value {
	j := Judge{sheet: on.(*facts.Sheet), seen: make([]bool, len(f.Is.reads))}
	j.Set(f.Is, x, nil)
	res := j.eval(f.Is.root)
	v := facts.Value{Lo: res.lo, Hi: res.hi, Mid: math.NaN(), Words: res.words}
	missing := false
	for i, looked := range j.seen {
		if !looked {
			continue
		}
		r := j.Value(i)
		missing = missing || r.Absent
		if r.Origin == figure.ByModel {
			v.Origin = figure.ByModel
		}
		if v.Need == nil {
			v.Need = r.Need
		}
	}
	if missing && j.given(f.Is.root, false) != figure.Yes || res.open {
		v.Absent = true
		return v
	}
	if v.Lo == v.Hi {
		v.Mid, v.Need = v.Lo, nil
	} else if f.Is.Type() == facts.Number {
		v.Mid = j.middle(res)
	}
	return v
}

// middle judges a number with each figure it read at its middle,
// where known.
func (j *Judge) middle(res Result) float64 {
	j.pins = make([]*Interval, len(j.expr.reads))
	for i, looked := range j.seen {
		if !looked || j.expr.reads[i].typ() != facts.Number {
			continue
		}
		if v := j.Value(i); !v.Absent && !math.IsNaN(v.Mid) && !math.IsInf(v.Mid, 0) {
			j.pins[i] = &Interval{Lo: v.Mid, Hi: v.Mid}
		}
	}
	iv := j.eval(j.expr.root).Interval()
	j.pins = nil
	if !iv.IsFinite() {
		return math.NaN()
	}
	return max(res.lo, min(res.hi, iv.Mid()))
}

// Withheld reports whether an absent figure may be given once open
// amounts are weighed.
func (f *Figure) Withheld(on facts.Asker, x facts.Subject) bool {
	j := Judge{sheet: on.(*facts.Sheet)}
	j.Set(f.Is, x, nil)
	return j.given(f.Is.root, true) != figure.No
}

// given tells whether an expression has a value: Yes, No however its
// open figures turn out, or Open where that depends on them. A yes or no
// has a value once settled; a number has none while a fact that it needs
// is absent.
//
// Without weigh, what open amounts withhold counts as absent: then Open
// and No mean the same, and no second sheet is computed.
func (j *Judge) given(n *node, weigh bool) figure.Truth {
	switch {
	case n.op == opRead && weigh:
		return j.Known(n.read)
	case n.op == opRead:
		return figure.TruthOf(!j.Value(n.read).Absent)
	case j.settled(n):
		return figure.Yes
	}
	out := figure.Yes
	if n.op == opChoose {
		out = j.givenChoice(n, weigh)
	} else {
		for _, k := range n.kids {
			out = out.And(j.given(k, weigh))
		}
	}
	if out == figure.No && weigh && n.typ != facts.Number && j.ranged(n) {
		return figure.Open // another value of an open figure may settle it
	}
	return out
}

// settled reports whether a yes or no, or a text, has one answer.
func (j *Judge) settled(n *node) bool {
	switch n.typ {
	case facts.YesNo:
		return j.eval(n).Truth() != figure.Open
	case facts.Text:
		return !j.eval(n).open
	}
	return false
}

func (j *Judge) givenChoice(n *node, weigh bool) figure.Truth {
	switch j.eval(n.kids[0]).Truth() {
	case figure.Yes:
		return j.given(n.kids[1], weigh)
	case figure.No:
		return j.given(n.kids[2], weigh)
	}
	question := j.given(n.kids[0], weigh)
	if question == figure.No {
		return figure.No
	}
	a, b := j.given(n.kids[1], weigh), j.given(n.kids[2], weigh)
	switch {
	case question == figure.Open && a == figure.No && b == figure.No:
		return figure.No
	case question == figure.Open || a != b:
		return figure.Open
	}
	return a
}

// ranged reports whether a figure below the node is open or a range.
func (j *Judge) ranged(n *node) bool {
	if n.op == opRead || n.op == opKnown {
		v := j.Value(n.read)
		return v.Absent && j.Known(n.read) == figure.Open || !v.Absent && v.Lo != v.Hi
	}
	return slices.ContainsFunc(n.kids, j.ranged)
}
