package rule

import (
	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/rule/show"
)

// Package mend asks a judge for single answers and their distance
// from clear.

// Each gives the rule's answer on each of its subjects in the open
// formula, clear ones too.
func (j *Judge) Each(r *Rule, visit func(facts.Subject, finding.Answer)) {
	r.names.Subject.Each(j.formula(), func(x facts.Subject) { visit(x, j.Answer(r, x)) })
}

// Answer judges a rule on one subject, with open seasonings as usual
// where a check takes them so.
func (j *Judge) Answer(r *Rule, x facts.Subject) finding.Answer {
	a, _ := j.answerOn(r, x, r.Limits)
	if a == finding.Unsure {
		switch j.asUsual(r, x) {
		case figure.Yes:
			return finding.Flagged
		case figure.No:
			return finding.Clear
		}
	}
	return a
}

// Finding words a rule's answer on one subject, figures included;
// with the answer clear, only the figures mean something.
func (j *Judge) Finding(r *Rule, x facts.Subject) *finding.Finding {
	a, doubt := j.answerOn(r, x, r.Limits)
	switch {
	case a == finding.Clear:
		f := &finding.Finding{Rule: r.ID, Pack: r.Pack, Level: r.Level}
		f.Subject, f.Place = show.Subject(x), j.place(x)
		f.Figures, _ = j.figures(r, x)
		return f
	case a == finding.Unsure && j.asUsual(r, x) == figure.Yes:
		return j.flaggedAsUsual(r, x)
	}
	return j.finding(r, x, a, doubt)
}

// To works out what an adjust block sets its lever to: a number, or a
// word such as a strain. A model's middle is used. ok is false when a
// figure it reads is unknown.
func (j *Judge) To(r *Rule, a *Adjust, x facts.Subject) (number float64, word string, ok bool) {
	if a.To == nil {
		return 0, "", false
	}
	j.judge.Set(a.To.Expr(), x, r.Limits)
	v, ok := j.judge.Middle()
	if !ok {
		return 0, "", false
	}
	if words := v.Words(); len(words) == 1 {
		return 0, words[0], true
	}
	return v.Interval().Mid(), "", v.Interval().IsFinite()
}

// Excess tells how far the rule's condition can hold on a subject, as a
// share of the figures compared. Above zero it is not clear, and more
// is worse. It shows whether a remaining finding was made worse, and
// which of two misses is nearer.
func (j *Judge) Excess(r *Rule, x facts.Subject) float64 {
	j.judge.Set(r.When.Expr(), x, r.Limits)
	return j.judge.Excess()
}
