package mend

import (
	"cmp"
	"math"
	"slices"

	"forebake/engine/finding"
)

// mostRounds bounds the rounds. Each round takes up every finding that is left.
const mostRounds = 6

// pass mends a version in rounds, the stops first, then the risks, then the
// notes, and gives the result with its changes.
func (m *Mender) pass(base *version) (*version, []*change) {
	now := base
	var changes []*change
	for level := finding.Stop; level <= finding.Note; level++ {
		now, changes = m.rounds(base, now, changes, level)
	}
	now, changes = m.withoutDisputed(base, now, changes)
	if len(changes) == 0 {
		now = base
	}
	return now, changes
}

// rounds mends what stands at a level or above it, until a round changes
// nothing.
func (m *Mender) rounds(base, now *version, changes []*change, level finding.Level) (
	*version, []*change,
) {
	for range mostRounds {
		progress := false
		for _, q := range m.pending(base, now, level) {
			if now.answers[q] == finding.Clear {
				continue // cleared by an earlier change of this round
			}
			next, made := m.accept(now, q)
			if next == nil || m.unsettles(base, made, changes, q) {
				continue
			}
			now, progress = next, true
			for _, c := range made {
				changes = merged(changes, c, q)
			}
		}
		if !progress {
			break
		}
		now, changes = m.minimal(base, now, changes)
	}
	return now, changes
}

// unsettles reports whether candidates for a note would move a value that a
// finding of a higher level asked for.
func (m *Mender) unsettles(base *version, made []*candidate, changes []*change, q question) bool {
	if m.level(base, q) < finding.Note {
		return false
	}
	serious := func(q question) bool { return m.level(base, q) < finding.Note }
	for _, c := range made {
		for _, old := range changes {
			if old.lever.Same(c.lever) && slices.ContainsFunc(old.questions, serious) {
				return true
			}
		}
	}
	return false
}

// pending lists the findings of a level or above it that are to be mended: those
// that are flagged, or were and are unsure now.
func (m *Mender) pending(base, now *version, level finding.Level) []question {
	var out []question
	for q, a := range now.answers {
		if (a == finding.Flagged || base.answers[q] == finding.Flagged) &&
			m.level(now, q) <= level {
			out = append(out, q)
		}
	}
	m.sortQuestions(out, now)
	return out
}

// accept finds the change for one finding, or the few that go together; nil
// when there is none.
func (m *Mender) accept(now *version, q question) (*version, []*candidate) {
	next, made := m.accepted(now, q)
	asks := 0.0
	for _, c := range made {
		if c.trust != finding.Exact {
			asks += c.lever.Kind.Cost(c.lever, c.to)
		}
	}
	if asks > mostAsked && !q.Rule.Safety && !m.Taste {
		return nil, nil
	}
	return next, made
}

// mostAsked bounds what the searched changes for one finding may ask of the
// baker together, e^2 times an amount. What asks for more is another formula.
const mostAsked = 2

func (m *Mender) accepted(now *version, q question) (*version, []*candidate) {
	best := m.best(now, q, m.Taste)
	if m.level(now, q) == finding.Note && !m.Taste {
		if best == nil || best.isLarge() {
			return nil, nil
		}
		return best.next, best.chain()
	}
	if best != nil && (best.answer == finding.Clear || best.trust == finding.Exact) {
		return best.next, best.chain()
	}
	for _, c := range m.harmful(now, q) {
		next, made := m.repair(now, q, c)
		if next != nil && (best == nil || next.answers[q] == finding.Clear) {
			return next, made
		}
	}
	if best != nil {
		return best.next, best.chain()
	}
	return nil, nil
}

// priceOfUnsure sets candidates that leave a finding unsure behind all that
// clear it.
const priceOfUnsure = 100

// best gives the candidate to take for a finding: the cheapest, counted for
// each finding that it clears. Levers that the rule names later cost more.
// Where no lever clears the finding alone, several are moved. It gives nil
// where nothing helps without harm.
func (m *Mender) best(v *version, q question, withTaste bool) *candidate {
	var best *candidate
	least := math.Inf(1)
	weigh := func(c *candidate, order int) {
		if c == nil || c.next == nil || !c.harmless() || c.forBaker() && !withTaste {
			return
		}
		if v.answers[q] == finding.Unsure && c.answer != finding.Clear && c.trust != finding.Exact {
			return // the finding stays as unsure as before
		}
		price := c.cost * float64(1+order) / float64(max(1, countCleared(v, c.next)))
		if c.answer != finding.Clear {
			price += priceOfUnsure
		}
		if price < least {
			best, least = c, price
		}
	}
	for i := range q.Rule.Adjust {
		for _, c := range m.candidates(v, q, &q.Rule.Adjust[i]) {
			weigh(c, i)
		}
	}
	if best != nil && (best.answer == finding.Clear || best.trust == finding.Exact) {
		return best
	}
	if c := m.pair(v, q); c != nil {
		weigh(c, 0)
	} else {
		weigh(m.toBounds(v, q), 0)
	}
	return best
}

// countCleared counts the findings of a version that are no longer flagged in the
// next.
func countCleared(v, next *version) int {
	n := 0
	for q, a := range v.answers {
		if a == finding.Flagged && next.answers[q] != finding.Flagged {
			n++
		}
	}
	return n
}

// harmful lists the candidates for a finding that would make something worse,
// the cheapest first.
func (m *Mender) harmful(v *version, q question) []*candidate {
	var out []*candidate
	for i := range q.Rule.Adjust {
		for _, c := range m.candidates(v, q, &q.Rule.Adjust[i]) {
			if !c.harmless() {
				out = append(out, c)
			}
		}
	}
	if c := m.pair(v, q); c != nil && !c.harmless() {
		out = append(out, c)
	}
	slices.SortStableFunc(out, func(a, b *candidate) int { return cmp.Compare(a.cost, b.cost) })
	return out
}

// mostRepairs is how many further levers one change may need.
const mostRepairs = 3

// repair mends what a harmful change makes worse: with less yeast, the proof
// must be longer. It gives nil unless nothing is worse in the end. Harm to food
// safety is never repaired.
func (m *Mender) repair(now *version, q question, c *candidate) (*version, []*candidate) {
	if c.next == nil || c.forBaker() && !m.Taste {
		return nil, nil
	}
	v, made := c.next, c.chain()
	for range mostRepairs {
		worse := m.harm(now, v, q)
		if len(worse) == 0 {
			break
		}
		if worse[0].Rule.Safety {
			return nil, nil
		}
		next := m.best(v, worse[0], m.Taste)
		if next == nil || rank(next.answer) > rank(now.answers[worse[0]]) {
			return nil, nil
		}
		v, made = next.next, append(made, next.chain()...)
	}
	if len(m.harm(now, v, q)) > 0 || rank(v.answers[q]) >= rank(now.answers[q]) {
		return nil, nil
	}
	return v, made
}
