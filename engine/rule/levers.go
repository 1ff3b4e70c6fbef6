package rule

import (
	"math"

	"forebake/engine/facts"
	"forebake/engine/finding"
)

// What package mend asks of a judge while it looks for a change: one answer at a time, and how far it is from clear.

// Each gives the rule's answer on every subject of the open formula that it looks at, the clear ones too.
func (j *Judge) Each(r *Rule, visit func(facts.Subject, finding.Answer)) {
	each(j.sheet.Formula, &r.names, r.kinds, r.any, func(x facts.Subject) { visit(x, j.Answer(r, x)) })
}

// Answer judges a rule on one subject.
func (j *Judge) Answer(r *Rule, x facts.Subject) finding.Answer {
	switch t := j.holds(r.When, x, r.Limits); {
	case t == isFalse:
		return finding.Clear
	case t == isTrue || r.Doubt:
		return finding.Flagged
	}
	return finding.Unsure
}

// Finding words a rule's answer on one subject, figures included; with the answer clear, only the figures mean something.
func (j *Judge) Finding(r *Rule, x facts.Subject) *finding.Finding {
	a := j.Answer(r, x)
	if a == finding.Clear {
		return &finding.Finding{Rule: r.ID, Pack: r.Pack, Level: r.Level, Subject: SubjectName(x), Place: j.place(x), Figures: j.figures(r, x)}
	}
	return j.finding(r, x, a, a == finding.Flagged && j.holds(r.When, x, r.Limits) == isOpen)
}

// To works out what an adjust block sets its lever to: a number, or a word such as a strain. A model's figure stands for
// its middle. ok is false when a figure it reads is not known.
func (j *Judge) To(r *Rule, a *Adjust, x facts.Subject) (number float64, word string, ok bool) {
	if a.To == nil {
		return 0, "", false
	}
	j.expr, j.subject, j.limits = a.To, x, r.Limits
	pins := make([]*Interval, len(a.To.reads))
	for i := range a.To.reads {
		if f := a.To.reads[i].fact; f == nil || f.Type != facts.Number {
			continue
		}
		mid := j.value(i).Mid
		if math.IsNaN(mid) || math.IsInf(mid, 0) {
			return 0, "", false
		}
		pins[i] = &Interval{Lo: mid, Hi: mid}
	}
	j.pins = pins
	v := j.eval(a.To.root)
	j.pins = nil
	if len(v.words) == 1 {
		return 0, v.words[0], true
	}
	at := v.interval().Mid()
	return at, "", v.interval().IsFinite()
}

// Excess tells by how much the rule's condition can hold on a subject, as a share of the figures compared: above zero it is
// not clear, and the more the worse. It says whether a finding that stays was made worse, and which of two misses is nearer.
func (j *Judge) Excess(r *Rule, x facts.Subject) float64 {
	j.expr, j.subject, j.limits = r.When, x, r.Limits
	return j.excess(r.When.root)
}

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
			return math.Copysign(10, gap)
		}
		return max(-10, min(10, gap/size))
	}
	switch j.eval(n).truth() {
	case isTrue:
		return 10
	case isFalse:
		return -10
	}
	return 0
}
