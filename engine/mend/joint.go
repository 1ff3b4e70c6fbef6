package mend

import (
	"fmt"
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
	cur := base
	var changes []*change
	for range mostRounds {
		progress := false
		for _, k := range flagged(cur) {
			if cur.answers[k] != finding.Flagged {
				continue // cleared on the way
			}
			if c := m.best(cur, k, m.Taste); c != nil {
				cur, progress = c.next, true
				changes = record(changes, c, k)
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
	return m.outcome(base, cur, changes), nil
}

// best is the change to take for a finding: the cheapest for each finding that it clears, the rule's own order of levers
// counting. Nil when there is none that makes nothing worse.
func (m *Mender) best(s *state, k key, taste bool) *candidate {
	var best *candidate
	least := math.Inf(1)
	for i := range k.rule.Adjust {
		for _, c := range m.candidates(s, k, &k.rule.Adjust[i]) {
			if c.next == nil || len(c.blocks) > 0 || c.lever.taste && !taste {
				continue
			}
			helped := 0
			for other, a := range s.answers {
				if a == finding.Flagged && c.next.answers[other] != finding.Flagged {
					helped++
				}
			}
			price := c.cost * float64(1+i) / float64(max(1, helped))
			if c.answer != finding.Clear {
				price += 100 // only where nothing clears it
			}
			if price < least {
				best, least = c, price
			}
		}
	}
	return best
}

// record adds a change, or moves on the one that already turns the same lever.
func record(list []*change, c *candidate, k key) []*change {
	for _, old := range list {
		if old.lever.same(c.lever) {
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

// shrink takes back each change that the others made needless, and moves the searched ones back towards what the baker
// wrote as far as every answer stays as good.
func (m *Mender) shrink(base, cur *state, list []*change) (*state, []*change) {
	for i := 0; i < len(list); i++ {
		without := append(slices.Clone(list[:i]), list[i+1:]...)
		if s, err := m.replay(base, without); err == nil {
			if m.judgeAll(s); holds(s, cur) {
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
			moved.x = math.Round(float64(mid)*c.lever.step*1e9) / 1e9
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
// its way is for the house to say.
func (m *Mender) undisputed(base, cur *state, list []*change) (*state, []*change) {
	for _, k := range flagged(cur) {
		if base.answers[k] != finding.Flagged {
			continue
		}
		for _, c := range m.blocked(cur, k) {
			for i, made := range list {
				if !made.lever.same(c.lever) || !slices.ContainsFunc(c.blocks, func(b key) bool { return slices.Contains(made.rules, b) }) {
					continue
				}
				without := append(slices.Clone(list[:i]), list[i+1:]...)
				s, err := m.replay(base, without)
				if err != nil {
					continue
				}
				m.judgeAll(s)
				if len(worse(base, s, finding.Note)) == 0 {
					return m.undisputed(base, s, without)
				}
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
	return out
}

// outcome words what was found.
func (m *Mender) outcome(base, cur *state, list []*change) *Outcome {
	o := &Outcome{Text: cur.text}
	o.Mending = finding.Mending{Formula: base.formula.Name, File: base.file.Name, Line: base.formula.Place.Line()}
	for _, d := range source.Compare(base.text, cur.text) {
		o.Mending.Lines = append(o.Mending.Lines, finding.ChangedLines(d))
	}
	told := map[key]bool{}
	at := base
	for _, c := range list {
		one := finding.Change{Mend: finding.Mend{Text: c.text(m, at), Trust: c.trust}}
		for _, k := range c.rules {
			one.Rules = append(one.Rules, m.told(base, cur, k, told)...)
			one.Figures = appendNew(one.Figures, m.figures(k, base, cur))
		}
		o.Mending.Changes = append(o.Mending.Changes, one)
		if next, _, err := m.turned(at, c.lever, c.x, c.word); err == nil {
			at = next
		}
	}
	// What else got better: a lever serves several findings.
	if n := len(o.Mending.Changes); n > 0 {
		last := &o.Mending.Changes[n-1]
		for _, k := range flagged(base) {
			last.Rules = append(last.Rules, m.told(base, cur, k, told)...)
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

// told tells of a finding once that it was cleared, or that it is no longer sure.
func (m *Mender) told(base, cur *state, k key, told map[key]bool) []finding.Turned {
	if told[k] || base.answers[k] != finding.Flagged || cur.answers[k] == finding.Flagged {
		return nil
	}
	told[k] = true
	f := m.finding(base, k)
	return []finding.Turned{{Rule: k.rule.ID, Subject: f.Subject, Level: k.rule.Level, Line: f.Place.Line(), Unsure: cur.answers[k] == finding.Unsure}}
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
	for _, b := range c.blocks {
		if !slices.Contains(left.Against, b.rule.ID) {
			left.Against = append(left.Against, b.rule.ID)
		}
	}
	left.Why = fmt.Sprintf("%s would clear it, and bring %s", c.text(m, s), strings.Join(left.Against, ", "))
	if c.near != nil {
		left.Nearest = c.near.text(m, s)
	}
}
