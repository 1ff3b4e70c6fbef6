package mend

import (
	"math"

	"forebake/engine/finding"
	"forebake/engine/mend/levers"
	"forebake/engine/rule"
)

// Searches that move several levers of one rule, for findings that no lever
// clears alone.

// pairPoints is how many values of a pair's first lever are tried in each
// direction.
const pairPoints = 4

// minimalGain is the least drop of excess that counts as nearer to clear.
const minimalGain = 1e-9

// choice is a lever with the adjust block that names it.
type choice struct {
	adjust *rule.Adjust
	lever  *levers.Lever
	best   int // the step of its better bound
}

// pair finds two levers of a rule that clear a finding together: a thinner tray
// and a longer cooling. The result is kept.
func (m *Mender) pair(v *version, q question) *candidate {
	key := searched{v, q, nil}
	if list, known := m.found[key]; known {
		return list[0]
	}
	var best *candidate
	all := m.helping(v, q, m.pairable(v, q))
	for i := range all {
		for j := i + 1; j < len(all); j++ {
			if best != nil && best.harmless() || !m.reach(v, q, all[i], all[j]) {
				continue
			}
			if best = betterOf(best, m.pairOf(v, q, all[i], all[j])); best == nil ||
				!best.harmless() {
				best = betterOf(best, m.pairOf(v, q, all[j], all[i]))
			}
		}
	}
	m.found[key] = []*candidate{best}
	return best
}

// helping keeps the levers that bring a finding nearer to clear at one of their
// bounds, and notes which.
func (m *Mender) helping(v *version, q question, all []choice) []choice {
	var out []choice
	for _, c := range all {
		s := m.newSearch(v, q, c.lever)
		s.bound()
		least := m.ask(v, q).excess - minimalGain
		helps := false
		for _, n := range []int{s.low, s.high} {
			if a := s.at(n); !a.failed && a.excess < least {
				c.best, least, helps = n, a.excess, true
			}
		}
		if helps {
			out = append(out, c)
		}
	}
	return out
}

// reach reports whether two levers at their better bounds clear a finding.
// Where they do not, no values between do.
func (m *Mender) reach(v *version, q question, first, second choice) bool {
	one := m.newSearch(v, q, first.lever).at(first.best)
	if one.failed {
		return false
	}
	l := m.leverIn(one.next, q, second.adjust, second.lever)
	return l != nil && m.newSearch(one.next, q, l).meets(second.best, finding.Clear)
}

// pairable lists the first lever of each adjust block that a search can move
// freely.
func (m *Mender) pairable(v *version, q question) []choice {
	var out []choice
	for i := range q.Rule.Adjust {
		a := &q.Rule.Adjust[i]
		if a.To != nil {
			continue
		}
		for _, l := range m.levers(v, q, a) {
			if movable(l) {
				out = append(out, choice{adjust: a, lever: l})
				break
			}
		}
	}
	return out
}

// movable reports whether a search may move a lever together with others.
func movable(l *levers.Lever) bool {
	return l.Searchable() && !l.Kind.ForBaker(l) && l.Kind.Traits().Resort != levers.Last
}

// pairOf sets the first lever to a few values up to its bounds, and searches
// the second from each.
func (m *Mender) pairOf(v *version, q question, first, second choice) *candidate {
	s := m.newSearch(v, q, first.lever)
	s.bound()
	var best *candidate
	for _, direction := range []int{-1, 1} {
		start, last := s.ends(direction)
		if direction*(last-start) < 0 {
			continue
		}
		for point := 1; point <= pairPoints; point++ {
			n := max(s.low, min(s.high, spread(start, last, point)))
			at := s.at(n)
			if at.failed || at.answer == finding.Clear {
				continue
			}
			if at.excess >= v.excess[q]-minimalGain {
				break // this direction leads away from clear
			}
			one := s.candidateAt(n, finding.Searched)
			if one == nil {
				continue
			}
			c := m.secondOf(one, q, second)
			if c == nil {
				continue
			}
			c.worsens = m.harm(v, c.next, q)
			c.before, c.cost = one, c.cost+one.cost
			best = betterOf(best, c)
		}
	}
	return best
}

// spread gives one of pairPoints steps from first to last, evenly by ratio: the
// second doubling of a time matters as much as the first.
func spread(first, last, point int) int {
	from, to := float64(max(1, first)), float64(max(1, last))
	return int(math.Round(from * math.Pow(to/from, float64(point)/pairPoints)))
}

// secondOf searches the second lever of a pair behind the first.
func (m *Mender) secondOf(first *candidate, q question, second choice) *candidate {
	l := m.leverIn(first.next, q, second.adjust, second.lever)
	if l == nil {
		return nil
	}
	s := m.newSearch(first.next, q, l)
	s.bound()
	return s.nearest(finding.Clear)
}

// leverIn finds a lever in another version of the formula; nil where it is
// missing there.
func (m *Mender) leverIn(v *version, q question, a *rule.Adjust, l *levers.Lever) *levers.Lever {
	for _, other := range m.levers(v, q, a) {
		if other.Same(l) {
			return other
		}
	}
	return nil
}

// toBounds moves one lever of a rule after the other to its bound until the
// finding is clear. An overnight dough may need a shorter rest, chill and proof
// together. Making the changes minimal moves each back afterwards.
func (m *Mender) toBounds(v *version, q question) *candidate {
	now := v
	var last *candidate
	for i := range q.Rule.Adjust {
		a := &q.Rule.Adjust[i]
		if a.To != nil {
			continue
		}
		for _, asWritten := range m.levers(v, q, a) {
			l := m.leverIn(now, q, a, asWritten)
			if l == nil || !movable(l) || len(l.Within) != 2 {
				continue
			}
			c := m.betterBound(now, q, l)
			if c == nil {
				continue
			}
			if c.before = last; last != nil {
				c.cost += last.cost
			}
			now, last = c.next, c
			if c.answer != finding.Clear {
				continue
			}
			if c.worsens = m.harm(v, c.next, q); c.harmless() {
				return c
			}
			if other := m.movedTowardsWritten(v, q, c); other != nil {
				return other
			}
			return c
		}
	}
	return nil
}

// pointsBack is how many values between the written one and the bound are tried
// for each of several levers.
const pointsBack = 8

// movedTowardsWritten moves one of several levers back, so that nothing is worse and the
// finding stays clear. A shorter chill may leave less of the proof to be cut.
func (m *Mender) movedTowardsWritten(v *version, q question, c *candidate) *candidate {
	var list []*change
	for _, one := range c.chain() {
		list = append(list, &change{candidate: one, questions: []question{q}})
	}
	for i := len(list) - 1; i >= 0; i-- {
		l := list[i].lever
		set, _ := l.Steps(list[i].to.Number)
		written, _ := l.Steps(l.Start)
		for point := 1; point < pointsBack && !m.budgetSpent(); point++ {
			trial := m.movedTo(v, list, i, set+(written-set)*point/pointsBack)
			next := m.replayed(v, trial)
			if next != nil && next.answers[q] == finding.Clear &&
				len(m.harm(v, next, q)) == 0 {
				return m.asCandidates(v, q, trial)
			}
		}
	}
	return nil
}

// asCandidates gives changes of a version as candidates that are set together.
func (m *Mender) asCandidates(v *version, q question, list []*change) *candidate {
	var last *candidate
	now := v
	for _, c := range list {
		next, edits, err := m.change(now, c.lever, c.to)
		if err != nil {
			return nil // cannot happen: the same changes were replayed before
		}
		one := *c.candidate
		one.next, one.edits, one.before = next, edits, last
		if one.cost = one.lever.Kind.Cost(one.lever, one.to); last != nil {
			one.cost += last.cost
		}
		now, last = next, &one
	}
	m.judgeAll(now)
	last.answer = now.answers[q]
	last.worsens = m.harm(v, now, q)
	return last
}

// betterBound sets a lever to the bound that brings a finding nearer to clear,
// if one does.
func (m *Mender) betterBound(v *version, q question, l *levers.Lever) *candidate {
	s := m.newSearch(v, q, l)
	s.bound()
	var best *candidate
	least := v.excess[q] - minimalGain
	for _, n := range []int{s.low, s.high} {
		if c := s.candidateAt(n, finding.Searched); c != nil && c.next.excess[q] < least {
			best, least = c, c.next.excess[q]
		}
	}
	return best
}
