package mend

import (
	"math"
	"slices"

	"forebake/engine/finding"
	"forebake/engine/mend/levers"
	"forebake/engine/source"
)

// change is an accepted candidate, measured from what the baker wrote.
type change struct {
	*candidate
	edits     []source.Edit // of the text in which the changes before it are made
	questions []question    // that asked for it
}

// copied copies a list of changes, so that merging into it leaves the originals
// as they are.
func copied(list []*change) []*change {
	out := make([]*change, len(list))
	for i, c := range list {
		one := *c
		out[i] = &one
	}
	return out
}

// merged adds a candidate to a list of changes. An earlier change of the same
// lever is moved on instead, unless a later one depends on it.
func merged(list []*change, c *candidate, q question) []*change {
	for i, old := range list {
		dependent := func(later *change) bool { return later.lever.DependsOn(c.lever) }
		if !old.lever.Same(c.lever) || slices.ContainsFunc(list[i:], dependent) {
			continue
		}
		moved := *c
		moved.lever = old.lever
		moved.cost = old.lever.Kind.Cost(old.lever, c.to)
		moved.trust = weakerTrust(old.trust, c.trust)
		old.candidate = &moved
		old.questions = append(old.questions, q)
		return list
	}
	return append(list, &change{candidate: c, edits: c.edits, questions: []question{q}})
}

// weakerTrust gives the one of two trusts that promises less.
func weakerTrust(a, b string) string {
	if slices.Index(finding.Trusts, a) > slices.Index(finding.Trusts, b) {
		return a
	}
	return b
}

// replay makes the changes one after the other on the original text, and notes
// their edits.
func (m *Mender) replay(base *version, list []*change) (*version, error) {
	v := base
	for _, c := range list {
		next, edits, err := m.change(v, c.lever, c.to)
		if err != nil {
			return nil, err
		}
		v, c.edits = next, edits
	}
	return v, nil
}

// replayed makes the changes on the original text and judges every rule. It
// gives nil where a change needs one that is missing.
func (m *Mender) replayed(base *version, list []*change) *version {
	v, err := m.replay(base, list)
	if err != nil {
		return nil
	}
	m.judgeAll(v)
	return v
}

// without gives a list of changes that lacks one.
func without(list []*change, i int) []*change {
	return append(slices.Clone(list[:i]), list[i+1:]...)
}

// needed reports whether a version without one change is worse: a finding that
// another change cleared is back, or something is worse than written.
func needed(base, v, with *version) bool {
	for q, a := range v.answers {
		mended := a == finding.Flagged || base.answers[q] == finding.Flagged
		if mended && rank(a) > rank(with.answers[q]) {
			return true
		}
	}
	for _, q := range worsened(base, v, finding.Note) {
		if !slices.Contains(worsened(base, with, finding.Note), q) {
			return true
		}
	}
	return false
}

// isAsGood reports whether a version answers no rule worse than another does.
func isAsGood(v, other *version) bool {
	for q, a := range v.answers {
		if rank(a) > rank(other.answers[q]) {
			return false
		}
		if q.Rule.Safety && v.excess[q] > other.excess[q]+excessMargin {
			return false
		}
	}
	return true
}

// isAsNear reports whether a version is as near to clear as another, for the
// unsure findings of an exact change.
func isAsNear(v, other *version, c *change) bool {
	if c.trust != finding.Exact {
		return true
	}
	for _, q := range c.questions {
		if v.answers[q] == finding.Unsure && v.excess[q] > other.excess[q]+excessMargin {
			return false
		}
	}
	return true
}

// minimal withdraws each change that the others made needless, until each that
// is left is needed. It moves the searched ones back towards the written value
// while every answer stays as good.
func (m *Mender) minimal(base, now *version, list []*change) (*version, []*change) {
	now, list = m.withoutNeedless(base, now, list)
	for i := range list {
		now, list = m.moveBack(base, now, list, i)
	}
	now, list = m.withoutNeedless(base, now, list)
	if v := m.replayed(base, list); v != nil { // for the edits of the list as it is now
		now = v
	}
	return now, list
}

// withoutNeedless withdraws the changes of which none is missed.
func (m *Mender) withoutNeedless(base, now *version, list []*change) (*version, []*change) {
	for i := 0; i < len(list); {
		fewer := without(list, i)
		v := m.replayed(base, fewer)
		if v == nil || needed(base, v, now) || !isAsNear(v, now, list[i]) {
			i++
			continue
		}
		now, list, i = v, fewer, 0
	}
	return now, list
}

// moveBack moves one searched change as near to the written value as every
// answer allows. From there it moves inside, to a value that a baker would
// choose.
func (m *Mender) moveBack(base, now *version, list []*change, i int) (*version, []*change) {
	c := list[i]
	l := c.lever
	if c.trust != finding.Searched || l.Step == 0 || math.IsNaN(l.Start) || m.budgetSpent() {
		return now, list
	}
	steps := func(x float64) int { return int(math.Round(x / l.Step)) }
	direction := 1
	if c.to.Number < l.Start {
		direction = -1
	}
	was, aim := now, now
	s := m.newSearch(base, c.questions[0], l)
	s.bound()
	serves := func(n int) bool {
		if n < s.low || n > s.high {
			return false
		}
		trial := m.movedTo(base, list, i, n)
		v := m.replayed(base, trial)
		if v == nil || !isAsGood(v, was) || m.leavesRange(base, v) && !m.leavesRange(base, was) {
			return false
		}
		aim, list = v, trial
		return true
	}
	edge := bisect(steps(l.Start), steps(c.to.Number), serves)
	at := s.inside(edge, direction, serves)
	if serves(at) && at != edge {
		list[i].edge = l.EdgeText(edge, direction)
	}
	return aim, list
}

// movedTo gives a list of changes with one of them set to n steps.
func (m *Mender) movedTo(base *version, list []*change, i, n int) []*change {
	c := list[i]
	moved := *c.candidate
	moved.to, moved.edge = levers.At(c.lever.Number(n)), ""
	moved.cost = c.lever.Kind.Cost(c.lever, moved.to)
	out := slices.Clone(list)
	out[i] = &change{candidate: &moved, questions: c.questions}
	return out
}

// withoutDisputed withdraws changes for findings that dispute a lever: two that
// move it in opposite directions. The house decides between them. A change for
// food safety stays.
func (m *Mender) withoutDisputed(base, now *version, list []*change) (*version, []*change) {
	for _, q := range m.flagged(now) {
		if base.answers[q] != finding.Flagged {
			continue
		}
		for _, c := range m.harmful(now, q) {
			for i, made := range list {
				if !disputes(c, made) {
					continue
				}
				fewer := without(list, i)
				v := m.replayed(base, fewer)
				if v == nil || len(worsened(base, v, finding.Note)) > 0 {
					continue
				}
				m.noteDispute(base, q, c, made)
				return m.withoutDisputed(base, v, fewer)
			}
		}
	}
	return now, list
}

// disputes reports whether a candidate would undo a change that another finding
// asked for. A change for food safety is not disputed.
func disputes(c *candidate, made *change) bool {
	undone := func(q question) bool { return slices.Contains(made.questions, q) }
	return made.lever.Same(c.lever) && slices.ContainsFunc(c.worsens, undone) &&
		!slices.ContainsFunc(made.questions, func(q question) bool { return q.Rule.Safety })
}

// noteDispute notes which findings of the original formula a candidate and a
// change dispute.
func (m *Mender) noteDispute(base *version, q question, c *candidate, made *change) {
	for _, other := range c.worsens {
		if slices.Contains(made.questions, other) && base.answers[other] == finding.Flagged {
			m.disputes[q] = append(m.disputes[q], other)
			m.disputes[other] = append(m.disputes[other], q)
		}
	}
}

// describe words a change for the version in which the changes before it are
// made.
func (c *change) describe(from *version) string {
	return withEdge(describe(from, c.lever, c.to, c.edits), c.edge)
}
