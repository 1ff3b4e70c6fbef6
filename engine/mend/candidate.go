package mend

import (
	"cmp"

	"forebake/engine/finding"
	"forebake/engine/mend/asked"
	"forebake/engine/mend/levers"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// candidate is one lever set to one value, with every rule judged.
type candidate struct {
	lever   *levers.Lever
	to      levers.Setting
	trust   string
	next    *version // nil for advice, which changes nothing in the formula
	edits   []source.Edit
	answer  finding.Answer // to the question that it is for
	cost    float64
	worsens []question // what it would make worse
	edge    string     // names the last value that serves; "" where it is the value

	farthest *candidate // of a harmful one: the nearest value that is harmless
	before   *candidate // of several levers set together: the one before this
}

// harmless reports whether a candidate makes nothing worse.
func (c *candidate) harmless() bool { return len(c.worsens) == 0 }

// forBaker reports whether a candidate is a matter of taste.
func (c *candidate) forBaker() bool { return c.lever.Kind.ForBaker(c.lever) }

// mostForNote is the most that a change may cost to mend a note without
// asking: a sixth of an amount or a time.
const mostForNote = 0.16

// isLarge reports whether a change is more than a note is worth. One that the
// rule computes is what its message says.
func (c *candidate) isLarge() bool {
	return c.before != nil || c.trust != finding.Exact && c.cost > mostForNote ||
		c.answer != finding.Clear && c.trust != finding.Exact
}

// chain gives the candidates that are set together, in order.
func (c *candidate) chain() []*candidate {
	if c.before == nil {
		return []*candidate{c}
	}
	return append(c.before.chain(), c)
}

// describe words a candidate for the version that it changes.
func (c *candidate) describe(from *version) string {
	return withEdge(describe(from, c.lever, c.to, c.edits), c.edge)
}

// describe words a lever set to a value by edits of a version.
func describe(from *version, l *levers.Lever, to levers.Setting, edits []source.Edit) string {
	return l.Kind.Describe(&levers.Change{Lever: l, From: from.formula, To: to, Edits: edits})
}

// compare orders candidates: the harmless first, then by their answer, then by
// cost.
func compare(a, b *candidate) int {
	return cmp.Or(
		asked.FirstIf(a.harmless(), b.harmless()),
		cmp.Compare(rank(a.answer), rank(b.answer)),
		cmp.Compare(a.cost, b.cost),
	)
}

// betterOf gives the better of two candidates, a where they are equal. Either
// may be nil.
func betterOf(a, b *candidate) *candidate {
	if a == nil || b != nil && compare(b, a) < 0 {
		return b
	}
	return a
}

// candidates lists the candidates of an adjust block for a finding, at most one
// a lever. A lever of last resort is tried only while no other is harmless.
func (m *Mender) candidates(v *version, q question, a *rule.Adjust) []*candidate {
	key := searched{v, q, a}
	if list, known := m.found[key]; known {
		return list
	}
	var out []*candidate
	for _, l := range m.levers(v, q, a) {
		if l.Kind.Traits().Resort == levers.Last && len(out) > 0 && out[len(out)-1].harmless() {
			continue
		}
		if c := m.candidate(v, q, a, l); c != nil {
			out = append(out, c)
		}
	}
	m.found[key] = out
	return out
}

// candidate finds the best value of one lever for a finding. The
// rule's own value comes first, then the nearest that clears it or
// leaves it unsure.
func (m *Mender) candidate(v *version, q question, a *rule.Adjust, l *levers.Lever) *candidate {
	s := m.newSearch(v, q, l)
	if a.To == nil {
		return s.best()
	}
	m.open(v)
	number, word, known := m.judge.To(q.Rule, a, q.Subject(v.formula))
	switch {
	case !known:
		return nil
	case l.IsAdvice():
		return &candidate{lever: l, to: levers.At(number), trust: finding.Exact,
			answer: finding.Clear}
	case word != "":
		return s.word(word)
	}
	c := s.computed(number)
	if c != nil && c.harmless() {
		return c
	}
	if other := s.best(); other != nil && (c == nil || other.harmless()) {
		return other
	}
	return c
}
