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

// asGood reports whether a version answers no rule worse than another does.
func asGood(v, other *version) bool {
	for q, a := range v.answers {
		if rank(a) > rank(other.answers[q]) {
			return false
		}
		if q.rule.Safety && v.excess[q] > other.excess[q]+excessMargin {
			return false
		}
	}
	return true
}

// asNear reports whether a version is as near to clear as another, for the
// unsure findings of an exact change.
func asNear(v, other *version, c *change) bool {
	if c.trust != computed {
		return true
	}
	for _, q := range c.questions {
		if v.answers[q] == finding.Unsure && v.excess[q] > other.excess[q]+excessMargin {
			return false
		}
	}
	return true
}

// minimal withdraws each change that the others made needless. It moves the
// searched ones back towards the written value while every answer stays as
// good.
func (m *Mender) minimal(base, now *version, list []*change) (*version, []*change) {
	for i := 0; i < len(list); {
		fewer := without(list, i)
		if v := m.replayed(base, fewer); v != nil && asGood(v, now) && asNear(v, now, list[i]) {
			now, list = v, fewer
			continue
		}
		now, list = m.movedBack(base, now, list, i)
		i++
	}
	if v := m.replayed(base, list); v != nil { // for the edits of the list as it is now
		now = v
	}
	return now, list
}

// movedBack moves one searched change as near to the written value as every
// answer allows.
func (m *Mender) movedBack(base, now *version, list []*change, i int) (*version, []*change) {
	c := list[i]
	l := c.lever
	if c.trust != searchedFor || l.Step == 0 || math.IsNaN(l.Start) {
		return now, list
	}
	steps := func(x float64) int { return int(math.Round(x / l.Step)) }
	halved(steps(l.Start), steps(c.to.Number), func(n int) bool {
		moved := *c.candidate
		moved.to = levers.At(l.Number(n))
		trial := slices.Clone(list)
		trial[i] = &change{candidate: &moved, questions: c.questions}
		v := m.replayed(base, trial)
		if v == nil || !asGood(v, now) {
			return false
		}
		moved.cost = l.Kind.Cost(l, moved.to)
		now, list = v, trial
		return true
	})
	return now, list
}

// withoutDisputed withdraws changes for findings that dispute a lever: two that
// move it in opposite directions. The house decides between them. A change for
// food safety stays.
func (m *Mender) withoutDisputed(base, now *version, list []*change) (*version, []*change) {
	for _, q := range flagged(now) {
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
		!slices.ContainsFunc(made.questions, func(q question) bool { return q.rule.Safety })
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
	return describe(from, c.lever, c.to, c.edits)
}
