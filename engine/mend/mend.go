// Package mend searches for the smallest change of a formula that
// clears its findings.
//
// The adjust blocks of a rule name its levers, which package levers
// declares. A block may compute the value of its lever (trust
// exact). Otherwise values are searched outward from the written
// one (trust searched). Every candidate is an edit of the file's
// text, read again and judged. No second model of a formula could
// disagree with the first.
//
// A search judges only the rule at hand. Before a change is
// accepted, every rule is judged. A change is refused if it adds a
// finding of the same or a higher level, or worsens food safety.
// After each round the changes are made minimal: needless ones are
// withdrawn, others moved back.
//
// Package engine calls it and reads and writes the files. This
// package prints and writes nothing. It decides no matter of taste
// unless asked to.
package mend

import (
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/rule"
)

// Mender mends formulas of one house, one at a time. It belongs to
// one goroutine.
type Mender struct {
	Kitchen *kitchen.Kitchen
	Rules   []*rule.Rule
	Options formula.Options
	Taste   bool // decide matters of taste too

	// Waived reports whether the house sets a rule aside for a
	// formula. Such a finding is not mended. No mend may worsen it
	// where it is about food safety.
	Waived func(rule, formula string) bool

	// Believe gives each reading of the formula what the log of its
	// batches read; nil where there is none.
	Believe func(*formula.Formula)

	// Judgements counts the answers, and Reads the texts read,
	// since the mender was made.
	Judgements, Reads int

	// Budget bounds the work on one formula: the answers, the entries
	// read, and the waits followed; 0 is no bound. It is no time, so
	// that every machine finds the same.
	Budget int

	// Ended is asked throughout a search; once it reports true the
	// search stops as at its budget. nil never does.
	Ended func() bool

	work  int    // done on the formula
	waits int    // that the sheet had followed before it
	name  string // of the file
	index int    // of the formula block in the file
	sheet facts.Sheet
	judge *rule.Judge
	on    *version // whose figures the sheet holds

	written *version // the formula as the baker wrote it

	kept      map[string]*version // by text
	keptBytes int                 // of their texts
	found     map[searched][]*candidate
	disputes  map[question][]question // findings that move one lever in opposite directions
}

// searched identifies a search whose result is kept: that of an
// adjust block for a finding of one version. Without a block it is
// the search for two levers together.
type searched struct {
	version  *version
	question question
	adjust   *rule.Adjust
}

// begin reads and judges the formula as the baker wrote it.
func (m *Mender) begin(name string, text []byte, index int) (*version, error) {
	m.name, m.index, m.on, m.work = name, index, nil, 0
	m.waits = m.sheet.Simulator.Waits
	m.kept, m.keptBytes = map[string]*version{}, 0
	m.found, m.disputes = map[searched][]*candidate{}, map[question][]question{}
	v, err := m.read(text)
	if err != nil {
		return nil, err
	}
	m.written = v
	m.judgeAll(v)
	return v, nil
}

// budgetSpent reports whether the budget for the formula is used up, or
// the search is wanted no more.
func (m *Mender) budgetSpent() bool {
	if m.Ended != nil && m.Ended() {
		return true
	}
	followed := m.sheet.Simulator.Waits - m.waits
	return m.Budget > 0 && m.work+waitWork*followed >= m.Budget
}

// waitWork is the work of following a part through one wait, in
// answers: measured on the drafts of the demo.
const waitWork = 50

// Outcome is what was found for one formula.
type Outcome struct {
	Text    []byte // the mended text; the same bytes where nothing was changed
	Mending finding.Mending
	After   []*finding.Finding // what is still flagged
}

// mostPasses bounds the passes over a formula.
const mostPasses = 4

// Mend finds small changes that clear as much of a formula as can
// be cleared. index says which formula of the file it is.
func (m *Mender) Mend(name string, text []byte, index int) (*Outcome, error) {
	base, err := m.begin(name, text, index)
	if err != nil {
		return nil, err
	}
	now, changes := m.passes(base)
	return m.outcome(base, now, changes), nil
}

// passes mends a version until a pass finds nothing more.
func (m *Mender) passes(base *version) (*version, []*change) {
	now, changes := m.pass(base)
	// A change may make another possible. Passes go on until one
	// finds nothing: mending a mended formula must change nothing.
	for range mostPasses {
		next, more := m.pass(now)
		if len(more) == 0 {
			break
		}
		all := copied(changes)
		for _, c := range more {
			for _, q := range c.questions {
				all = merged(all, c.candidate, q)
			}
		}
		whole, err := m.replay(base, all)
		if err != nil || string(whole.text) != string(next.text) {
			break // a percentage of a percentage is no single change of what the baker wrote
		}
		m.judgeAll(whole)
		now, changes = m.minimal(base, whole, all)
	}
	now, changes = m.toSoleSettings(base, now, changes)
	return now, changes
}
