package mend

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// mostRounds bounds the rounds over all findings of a formula; each takes up every finding that is left.
const mostRounds = 6

// Outcome is what was found for one formula.
type Outcome struct {
	Text    []byte // the mended text; the same bytes where nothing was changed
	Mending finding.Mending
	After   []*finding.Finding // what is flagged still
}

// change is a lever turned, as it goes into the text.
type change struct {
	*candidate
	rules []key // that asked for it
}

// Mend finds the changes that clear as much of a formula as can be cleared, with the smallest moves found.
func (m *Mender) Mend(name string, text []byte, index int) (*Outcome, error) {
	base, err := m.begin(name, text, index)
	if err != nil {
		return nil, err
	}
	cur, changes := m.pass(base)
	// What was done may open a way that was shut: pass over the result until a pass finds nothing, so that mending what is
	// mended changes nothing.
	for range mostPasses {
		next, more := m.pass(cur)
		if len(more) == 0 {
			break
		}
		all := make([]*change, len(changes))
		for i, c := range changes {
			one := *c
			all[i] = &one
		}
		for _, c := range more {
			for _, k := range c.rules {
				all = record(all, c.candidate, k)
			}
		}
		whole, err := m.replay(base, all)
		if err != nil || string(whole.text) != string(next.text) {
			break // a share of a share, which cannot be told as one change of what the baker wrote
		}
		m.judgeAll(whole)
		cur, changes = whole, all
	}
	return m.outcome(base, cur, changes), nil
}

// mostPasses bounds the passes over a formula.
const mostPasses = 4

// pass mends a version in rounds.
func (m *Mender) pass(base *state) (*state, []*change) {
	cur := base
	var changes []*change
	for range mostRounds {
		progress := false
		for _, k := range pending(base, cur) {
			if cur.answers[k] == finding.Clear {
				continue // cleared on the way
			}
			if next, made := m.step(cur, k); next != nil {
				cur, progress = next, true
				for _, c := range made {
					changes = record(changes, c, k)
				}
			}
		}
		if !progress {
			break
		}
		cur, changes = m.shrink(base, cur, changes)
	}
	cur, changes = m.undisputed(base, cur, changes)
	if len(changes) == 0 {
		cur = base
	}
	return cur, changes
}

// step finds the change, or the few that go together, for one finding: nil when there is none.
func (m *Mender) step(cur *state, k key) (*state, []*candidate) {
	best := m.best(cur, k, m.Taste)
	if best != nil && (best.answer == finding.Clear || best.trust == "exact") {
		return best.next, best.all()
	}
	for _, c := range m.blocked(cur, k) {
		if next, made := m.repaired(cur, k, c); next != nil && (best == nil || next.answers[k] == finding.Clear) {
			return next, made
		}
	}
	if best != nil {
		return best.next, best.all()
	}
	return nil, nil
}

// all gives a candidate with those that are turned before it.
func (c *candidate) all() []*candidate {
	if c.first != nil {
		return append(c.first.all(), c)
	}
	return []*candidate{c}
}

// mostRepairs is how many further levers one change may call for.
const mostRepairs = 3

// repaired takes a change that makes something worse, and mends that in turn: less yeast wants a longer proof. It counts
// only if in the end nothing is worse than before.
func (m *Mender) repaired(cur *state, k key, c *candidate) (*state, []*candidate) {
	if c.lever.taste && !m.Taste || c.next == nil {
		return nil, nil
	}
	s, made := c.next, c.all()
	for range mostRepairs {
		bad := worse(cur, s, k.rule.Level)
		if len(bad) == 0 {
			break
		}
		if isSafety(bad[0].rule) {
			return nil, nil
		}
		next := m.best(s, bad[0], m.Taste)
		if next == nil || rank(next.answer) > rank(cur.answers[bad[0]]) {
			return nil, nil
		}
		s, made = next.next, append(made, next.all()...)
	}
	if len(worse(cur, s, k.rule.Level)) > 0 || rank(s.answers[k]) >= rank(cur.answers[k]) {
		return nil, nil
	}
	return s, made
}

// pending lists what there is still to do: what is flagged, and what was flagged and is now left unsure.
func pending(base, cur *state) []key {
	var out []key
	for k, a := range cur.answers {
		if a == finding.Flagged || base.answers[k] == finding.Flagged {
			out = append(out, k)
		}
	}
	sortKeys(out)
	return out
}

// best is the change to take for a finding: the cheapest for each finding that it clears, the rule's own order of levers
// counting. Where no single lever answers, two are moved at once. Nil when nothing helps that makes nothing worse.
func (m *Mender) best(s *state, k key, taste bool) *candidate {
	var best *candidate
	least := math.Inf(1)
	see := func(c *candidate, order int) {
		if c.next == nil || len(c.blocks) > 0 || c.lever.taste && !taste {
			return
		}
		if s.answers[k] == finding.Unsure && c.answer != finding.Clear && c.trust != "exact" {
			return // no nearer than before
		}
		helped := 0
		for other, a := range s.answers {
			if a == finding.Flagged && c.next.answers[other] != finding.Flagged {
				helped++
			}
		}
		price := c.cost * float64(1+order) / float64(max(1, helped))
		if c.answer != finding.Clear {
			price += 100 // only where nothing clears it
		}
		if price < least {
			best, least = c, price
		}
	}
	for i := range k.rule.Adjust {
		for _, c := range m.candidates(s, k, &k.rule.Adjust[i]) {
			see(c, i)
		}
	}
	if best == nil || best.answer != finding.Clear && best.trust != "exact" {
		if c := m.pair(s, k); c != nil {
			see(c, 0)
		} else if c := m.every(s, k); c != nil {
			see(c, 0)
		}
	}
	return best
}

// record adds a change, or moves on the one that already turns the same lever, unless one that takes a share of it
// stands behind.
func record(list []*change, c *candidate, k key) []*change {
	for i, old := range list {
		if old.lever.same(c.lever) && !slices.ContainsFunc(list[i:], func(later *change) bool { return later.lever.shares(c.lever) }) {
			moved := *c
			l := *old.lever // measured from what the baker wrote
			moved.lever = &l
			moved.cost = l.cost(c.x)
			if slices.Index(finding.Trusts, old.trust) > slices.Index(finding.Trusts, moved.trust) {
				moved.trust = old.trust
			}
			old.candidate = &moved
			old.rules = append(old.rules, k)
			return list
		}
	}
	return append(list, &change{candidate: c, rules: []key{k}})
}

// replay makes the changes one after the other on the original text.
func (m *Mender) replay(base *state, list []*change) (*state, error) {
	s := base
	for _, c := range list {
		next, edits, err := m.turned(s, c.lever, c.x, c.word)
		if err != nil {
			return nil, err
		}
		c.edits = edits
		s = next
	}
	return s, nil
}

// holds tells whether a version answers no rule worse than another does.
func holds(s, than *state) bool {
	for k, a := range s.answers {
		if rank(a) > rank(than.answers[k]) || isSafety(k.rule) && s.excess[k] > than.excess[k]+1e-6 {
			return false
		}
	}
	return true
}

// nearest tells whether what a rule computes for a finding that no value clears is met as well without the change.
func nearest(s, than *state, c *change) bool {
	for _, k := range c.rules {
		if c.trust == "exact" && s.answers[k] == finding.Unsure && s.excess[k] > than.excess[k]+1e-6 {
			return false
		}
	}
	return true
}

// shrink takes back each change that the others made needless, and moves the searched ones back towards what the baker
// wrote as far as every answer stays as good.
func (m *Mender) shrink(base, cur *state, list []*change) (*state, []*change) {
	for i := 0; i < len(list); i++ {
		without := append(slices.Clone(list[:i]), list[i+1:]...)
		if s, err := m.replay(base, without); err == nil {
			if m.judgeAll(s); holds(s, cur) && nearest(s, cur, list[i]) {
				cur, list = s, without
				i--
				continue
			}
		}
		c := list[i]
		if c.trust != "searched" || c.lever.step == 0 || math.IsNaN(c.lever.x0) {
			continue
		}
		good, bad := int(math.Round(c.x/c.lever.step)), int(math.Round(c.lever.x0/c.lever.step))
		for good-bad > 1 || bad-good > 1 {
			mid := bad + (good-bad)/2
			moved := *c.candidate
			moved.x = c.lever.value(mid)
			trial := slices.Clone(list)
			trial[i] = &change{candidate: &moved, rules: c.rules}
			s, err := m.replay(base, trial)
			if err == nil {
				m.judgeAll(s)
			}
			if err == nil && holds(s, cur) {
				good, cur = mid, s
				moved.cost = moved.lever.cost(moved.x)
				list = trial
			} else {
				bad = mid
			}
		}
	}
	if s, err := m.replay(base, list); err == nil { // the edits of the list as it now is
		m.judgeAll(s)
		cur = s
	}
	return cur, list
}

// undisputed takes back a change that cleared one of two rules which pull one lever opposite ways: which of them shall have
// its way is for the house to say. Food safety has its way.
func (m *Mender) undisputed(base, cur *state, list []*change) (*state, []*change) {
	for _, k := range flagged(cur) {
		if base.answers[k] != finding.Flagged {
			continue
		}
		for _, c := range m.blocked(cur, k) {
			for i, made := range list {
				if !made.lever.same(c.lever) || !slices.ContainsFunc(c.blocks, func(b key) bool { return slices.Contains(made.rules, b) }) || slices.ContainsFunc(made.rules, func(b key) bool { return isSafety(b.rule) }) {
					continue
				}
				without := append(slices.Clone(list[:i]), list[i+1:]...)
				s, err := m.replay(base, without)
				if err != nil {
					continue
				}
				m.judgeAll(s)
				if len(worse(base, s, finding.Note)) > 0 {
					continue
				}
				for _, b := range c.blocks {
					if slices.Contains(made.rules, b) && base.answers[b] == finding.Flagged {
						m.disputes[k] = append(m.disputes[k], b)
						m.disputes[b] = append(m.disputes[b], k)
					}
				}
				return m.undisputed(base, s, without)
			}
		}
	}
	return cur, list
}

// blocked lists the candidates for a finding that would make something worse.
func (m *Mender) blocked(s *state, k key) []*candidate {
	var out []*candidate
	for i := range k.rule.Adjust {
		for _, c := range m.candidates(s, k, &k.rule.Adjust[i]) {
			if len(c.blocks) > 0 {
				out = append(out, c)
			}
		}
	}
	if c := m.pair(s, k); c != nil && len(c.blocks) > 0 {
		out = append(out, c)
	}
	slices.SortStableFunc(out, func(a, b *candidate) int { return cmp.Compare(a.cost, b.cost) })
	return out
}

// outcome words what was found.
func (m *Mender) outcome(base, cur *state, list []*change) *Outcome {
	o := &Outcome{Text: cur.text}
	o.Mending = finding.Mending{Formula: base.formula.Name, File: base.file.Name, Line: base.formula.Place.Line()}
	for _, d := range source.Compare(base.text, cur.text) {
		o.Mending.Lines = append(o.Mending.Lines, finding.ChangedLines(d))
	}
	// Each finding is told at the change that turned it last: a lever serves several, and two may serve one.
	at := base
	steps := make([]*state, len(list))
	for i, c := range list {
		next, edits, err := m.turned(at, c.lever, c.x, c.word)
		if err != nil {
			break // it was replayed before, so this cannot be
		}
		m.judgeAll(next)
		c.edits = edits
		at, steps[i] = next, next
	}
	turnedAt := map[key]int{}
	for _, k := range flagged(base) {
		if cur.answers[k] == finding.Flagged {
			continue
		}
		for i, before := 0, base; i < len(list) && steps[i] != nil; i++ {
			if rank(steps[i].answers[k]) < rank(before.answers[k]) {
				turnedAt[k] = i
			}
			before = steps[i]
		}
	}
	at = base
	for i, c := range list {
		one := finding.Change{Mend: finding.Mend{Text: c.text(m, at), Trust: c.trust}}
		for _, k := range flagged(base) {
			if j, ok := turnedAt[k]; ok && j == i {
				f := m.finding(base, k)
				one.Rules = append(one.Rules, finding.Turned{Rule: k.rule.ID, Subject: f.Subject, Level: k.rule.Level, Line: f.Place.Line(), Unsure: cur.answers[k] == finding.Unsure})
				one.Figures = appendNew(one.Figures, m.figures(k, base, cur))
			}
		}
		if len(one.Rules) == 0 {
			for _, k := range c.rules {
				if !slices.Contains(one.With, k.rule.ID) {
					one.With = append(one.With, k.rule.ID)
				}
			}
		}
		o.Mending.Changes = append(o.Mending.Changes, one)
		if at = steps[i]; at == nil {
			break
		}
	}
	for _, k := range flagged(cur) {
		f := m.finding(cur, k)
		o.After = append(o.After, f)
		left := finding.Left{Rule: k.rule.ID, Subject: f.Subject, Level: k.rule.Level, Line: f.Place.Line()}
		if choice := m.choice(cur, k); choice != nil {
			o.Mending.Choices = append(o.Mending.Choices, *choice)
			left.Why = "it is a matter of taste: see below"
		} else {
			m.explain(cur, k, &left)
		}
		o.Mending.Left = append(o.Mending.Left, left)
	}
	return o
}

func appendNew(list, more []finding.BeforeAfter) []finding.BeforeAfter {
	for _, x := range more {
		if !slices.Contains(list, x) {
			list = append(list, x)
		}
	}
	return list
}

// choice is a change that the baker may choose for a finding that is left.
func (m *Mender) choice(s *state, k key) *finding.Change {
	if m.Taste {
		return nil
	}
	c := m.best(s, k, true)
	if c == nil || !c.lever.taste {
		return nil
	}
	return &finding.Change{Mend: finding.Mend{Text: c.text(m, s), Trust: c.trust}, Rules: []finding.Turned{{
		Rule: k.rule.ID, Subject: m.finding(s, k).Subject, Level: k.rule.Level, Unsure: c.answer == finding.Unsure}}}
}

// explain says why a finding is left.
func (m *Mender) explain(s *state, k key, left *finding.Left) {
	if len(k.rule.Adjust) == 0 {
		left.Why = "no lever for it: it is yours to decide; see check"
		return
	}
	for i := range k.rule.Adjust {
		for _, c := range m.candidates(s, k, &k.rule.Adjust[i]) {
			switch {
			case len(m.disputes[k]) > 0 && c.next != nil:
				left.Why = c.text(m, s) + " would clear it, and take it further from the other"
				for _, b := range m.disputes[k] {
					if !slices.Contains(left.Against, b.rule.ID) {
						left.Against = append(left.Against, b.rule.ID)
					}
				}
				return
			case c.lever.turn == turnScale:
				left.Why = c.text(m, s)
				return
			case len(c.blocks) > 0:
				m.disagree(s, c, left)
				return
			}
		}
	}
	var names []string
	for i := range k.rule.Adjust {
		for _, l := range m.levers(s.formula, &k.rule.Adjust[i], k.subject(s.formula)) {
			names = append(names, l.what(s.formula, m.Kitchen))
		}
	}
	if len(names) == 0 {
		left.Why = "nothing that would mend it is written in the formula; see check"
		return
	}
	left.Why = "no value clears it: tried " + strings.Join(names, "; ")
}

// disagree names the rules that pull a lever the other way, and the nearest miss.
func (m *Mender) disagree(s *state, c *candidate, left *finding.Left) {
	var unsure []string
	for _, b := range c.blocks {
		list := &left.Against
		if c.next.answers[b] == finding.Unsure {
			list = &unsure
		}
		if !slices.Contains(*list, b.rule.ID) {
			*list = append(*list, b.rule.ID)
		}
	}
	left.Why = c.text(m, s) + " would clear it"
	if len(left.Against) > 0 {
		left.Why += ", and bring " + strings.Join(left.Against, ", ")
	}
	if len(unsure) > 0 {
		left.Why += ", and leave " + strings.Join(unsure, ", ") + " unsure"
	}
	if c.near != nil {
		left.Nearest = c.near.text(m, s)
	}
}
