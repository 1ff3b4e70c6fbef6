package mend

import (
	"math"
	"slices"

	"forebake/engine/finding"
	"forebake/engine/mend/levers"
	"forebake/engine/source"
)

// Bounds of one search, so that no rule can make it run away.
const (
	mostDoublings = 14
	mostRising    = 2  // attempts in a row, each further from clear, before a direction is given up
	scanPoints    = 12 // of an even scan between the bounds
	mostBeyond    = 5  // values beyond a harmful one that are tried
)

// search looks for a value of one lever that serves a finding. Values are steps
// of the lever's grid. Each attempt is kept.
type search struct {
	m        *Mender
	from     *version
	question question
	lever    *levers.Lever
	low      int // bounds, in steps
	high     int
	attempts map[int]*attempt
}

// attempt is the lever at one value with the rule's answer.
type attempt struct {
	reply
	next   *version
	edits  []source.Edit
	failed bool // the edit or the reading of its result
}

func (m *Mender) newSearch(v *version, q question, l *levers.Lever) *search {
	return &search{m: m, from: v, question: q, lever: l, attempts: map[int]*attempt{}}
}

// at sets the lever to n steps and asks the rule.
func (s *search) at(n int) *attempt {
	if a := s.attempts[n]; a != nil {
		return a
	}
	a := &attempt{}
	s.attempts[n] = a
	if s.m.budgetSpent() {
		a.failed = true
		return a
	}
	next, edits, err := s.m.change(s.from, s.lever, levers.At(s.lever.Number(n)))
	if err != nil {
		a.failed = true
		return a
	}
	a.next, a.edits, a.reply = next, edits, s.m.ask(next, s.question)
	return a
}

// meets reports whether the answer at n steps is as good as a goal.
func (s *search) meets(n int, goal finding.Answer) bool {
	a := s.at(n)
	return !a.failed && rank(a.answer) <= rank(goal)
}

// candidateAt judges every rule with the lever at n steps.
func (s *search) candidateAt(n int, trust string) *candidate {
	a := s.at(n)
	to := levers.At(s.lever.Number(n))
	if a.failed || prove(s.lever, s.from.formula, a.next.formula, to) != nil ||
		s.m.leavesRange(s.from, a.next) {
		return nil
	}
	return s.judged(&candidate{to: to, trust: trust, next: a.next, edits: a.edits})
}

// word judges every rule with the lever set to a word. It gives nil where the
// finding stays.
func (s *search) word(word string) *candidate {
	to := levers.Setting{Number: s.lever.Start, Word: word}
	next, edits, err := s.m.change(s.from, s.lever, to)
	if err != nil || prove(s.lever, s.from.formula, next.formula, to) != nil ||
		s.m.leavesRange(s.from, next) {
		return nil
	}
	c := s.judged(&candidate{to: to, trust: finding.Exact, next: next, edits: edits})
	if c == nil || c.answer == finding.Flagged {
		return nil
	}
	return c
}

// judged judges every rule on a candidate and fills in what follows; nil for one
// that no mend may make.
func (s *search) judged(c *candidate) *candidate {
	s.m.judgeAll(c.next)
	c.lever = s.lever
	c.answer = c.next.answers[s.question]
	c.cost = s.lever.Kind.Cost(s.lever, c.to)
	if s.lever.Kind.ForBaker(s.lever) {
		c.trust = finding.Taste
	}
	c.worsens = s.m.harm(s.from, c.next, s.question)
	if c.trust == finding.Exact && s.m.level(s.from, s.question) < finding.Note {
		// What the rule computes may leave a note or a question, to be settled after it.
		c.worsens = slices.DeleteFunc(c.worsens, func(q question) bool {
			return !q.Rule.Safety && (c.next.answers[q] == finding.Unsure ||
				s.m.level(c.next, q) == finding.Note)
		})
	}
	// More of what hurts leaves the band of a rule for that of a stop: no mend.
	stricter := func(q question) bool {
		return q.Rule.Safety && q.Rule.Level < s.question.Rule.Level
	}
	if s.question.Rule.Safety && slices.ContainsFunc(c.worsens, stricter) {
		return nil
	}
	return c
}

// computed sets the lever so that its figure is the one that the rule computes.
// It rounds to the side that clears the finding. It gives nil where the finding
// stays flagged.
func (s *search) computed(figure float64) *candidate {
	if w := s.lever.Within; len(w) == 2 && (figure < w[0] || figure > w[1]) || s.lever.Step == 0 {
		return nil
	}
	x, ok := s.solve(figure)
	if !ok {
		return nil
	}
	near, far := s.lever.Steps(x)
	var best *candidate
	for _, n := range []int{near, far} {
		if x := s.lever.Number(n); x < s.lever.Low-1e-9 || x > s.lever.High+1e-9 {
			continue
		}
		c := s.candidateAt(n, finding.Exact)
		switch {
		case c == nil || c.answer == finding.Flagged:
		case c.answer == finding.Clear && c.harmless():
			return c
		case best == nil || len(best.worsens) > len(c.worsens):
			best = c
		}
	}
	return best
}

// best looks for the nearest value that clears the finding. Where none does,
// the nearest that leaves it unsure will do, unless an amount is open.
func (s *search) best() *candidate {
	if !s.lever.Searchable() {
		return nil
	}
	s.bound()
	c, goal := s.nearest(finding.Clear), finding.Clear
	if c == nil && !s.from.draft {
		c, goal = s.nearest(finding.Unsure), finding.Unsure
	}
	if c == nil || !c.harmless() {
		return c
	}
	return s.madeRound(c, goal)
}

// bound converts the lever's bounds, and those that the rule gives for its figure,
// into steps.
func (s *search) bound() {
	l := s.lever
	low, high := l.Low, l.High
	if len(l.Within) == 2 {
		a, okA := s.solve(l.Within[0])
		b, okB := s.solve(l.Within[1])
		if okA && okB {
			low, high = max(low, min(a, b)), min(high, max(a, b))
		}
	}
	s.low, s.high = int(math.Ceil(low/l.Step-1e-6)), int(math.Floor(high/l.Step+1e-6))
}

// nearest looks in both directions for the nearest value that meets the goal
// without harm. Where both directions do harm it gives the cheaper.
func (s *search) nearest(goal finding.Answer) *candidate {
	var best *candidate
	for _, direction := range []int{-1, 1} {
		n, ok := s.nearestIn(direction, goal)
		if !ok {
			continue
		}
		c := s.harmlessFrom(n, direction, goal)
		if c == nil {
			continue
		}
		if best == nil || c.harmless() && !best.harmless() ||
			c.harmless() == best.harmless() && c.cost < best.cost {
			best = c
		}
	}
	return best
}

// ends gives the first step in a direction from the written value, and the
// bound there.
func (s *search) ends(direction int) (first, last int) {
	written := s.lever.Start / s.lever.Step
	if direction > 0 {
		return max(s.low, int(math.Floor(written+1e-6))+1), s.high
	}
	return min(s.high, int(math.Ceil(written-1e-6))-1), s.low
}

// nearestIn finds the nearest step in a direction that meets the goal.
func (s *search) nearestIn(direction int, goal finding.Answer) (int, bool) {
	first, last := s.ends(direction)
	if direction*(last-first) < 0 {
		return 0, false
	}
	if s.hopeless(first, last, goal) {
		return 0, false
	}
	n, found, passedBest := s.tryDoubling(first, last, direction, goal)
	if found || !passedBest { // where it never came nearer and went away, a scan would find nothing
		return n, found
	}
	return s.tryEvenly(first, last, goal)
}

// hopeless reports whether the first step, the middle and the bound
// miss the goal and do not trend far enough towards it.
func (s *search) hopeless(first, last int, goal finding.Answer) bool {
	was := s.m.ask(s.from, s.question).excess
	nearer, farther := true, true
	for _, n := range []int{first, first + (last-first)/2, last} {
		a := s.at(n)
		if a.failed || s.meets(n, goal) {
			return false
		}
		nearer = nearer && a.excess < was-minimalGain
		farther = farther && a.excess > was+minimalGain
		was = a.excess
	}
	return nearer || farther
}

// tryDoubling tries steps at doubling distances until one meets the goal. passedBest
// reports whether the answer came nearer to clear and then went away from it.
func (s *search) tryDoubling(first, last, direction int, goal finding.Answer) (
	_ int, found, passedBest bool,
) {
	missed := first - direction
	excess, rising, nearer := s.from.excess[s.question], 0, false
	for i, distance := 0, 0; i < mostDoublings; i++ {
		n := first + direction*distance
		if direction*(last-n) <= 0 {
			n = last
		}
		if s.meets(n, goal) {
			return s.between(missed, n, goal), true, passedBest
		}
		missed = n
		if a := s.attempts[n]; !a.failed {
			if a.excess > excess {
				rising++
				passedBest = passedBest || nearer
			} else {
				nearer = nearer || a.excess < excess
				rising = 0
			}
			excess = a.excess
		}
		if n == last || rising == mostRising {
			break
		}
		distance = 2*distance + 1
	}
	return 0, false, passedBest
}

// tryEvenly tries evenly spread steps, for a range of good values that doubling
// stepped over.
func (s *search) tryEvenly(first, last int, goal finding.Answer) (int, bool) {
	span := last - first
	if max(span, -span) <= scanPoints {
		return 0, false
	}
	missed := first
	for i := 1; i <= scanPoints; i++ {
		n := first + span*i/(scanPoints+1)
		if s.meets(n, goal) {
			return s.between(missed, n, goal), true
		}
		missed = n
	}
	return 0, false
}

// between halves the distance between two steps, of which one misses the goal
// and one meets it.
func (s *search) between(missing, meeting int, goal finding.Answer) int {
	return bisect(missing, meeting, func(n int) bool { return s.meets(n, goal) })
}

// bisect gives the number nearest to bad at which a condition holds. It holds
// at good.
func bisect(bad, good int, holds func(int) bool) int {
	for good-bad > 1 || bad-good > 1 {
		if mid := bad + (good-bad)/2; holds(mid) {
			good = mid
		} else {
			bad = mid
		}
	}
	return good
}

// harmlessFrom looks for a harmless candidate at a step that meets the goal,
// and beyond it. Where every value does harm it gives the first, with the
// farthest harmless one before it.
func (s *search) harmlessFrom(n, direction int, goal finding.Answer) *candidate {
	first := s.candidateAt(n, finding.Searched)
	if first == nil || first.harmless() {
		return first
	}
	if c := s.harmlessBeyond(n, direction, goal); c != nil {
		return c
	}
	start, _ := s.ends(direction)
	bisect(start-direction, n, func(mid int) (harmful bool) {
		c := s.candidateAt(mid, finding.Searched)
		if c == nil || !c.harmless() {
			return true
		}
		first.farthest = c
		return false
	})
	return first
}

// harmlessBeyond looks for a harmless candidate beyond a step, at growing
// distances. It gives nil where the goal is missed before one is found.
func (s *search) harmlessBeyond(n, direction int, goal finding.Answer) *candidate {
	for i, distance := 0, 1; i < mostBeyond; i++ {
		at := max(s.low, min(s.high, n+direction*distance))
		if at == n || !s.meets(at, goal) {
			return nil
		}
		if c := s.candidateAt(at, finding.Searched); c != nil && c.harmless() {
			bisect(n+direction*(distance/3), at, func(mid int) bool {
				nearer := s.candidateAt(mid, finding.Searched)
				if !s.meets(mid, goal) || nearer == nil || !nearer.harmless() {
					return false
				}
				c = nearer
				return true
			})
			return c
		}
		distance *= 3
	}
	return nil
}
