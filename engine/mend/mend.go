// Package mend searches for the smallest change of a formula that clears its
// findings.
//
// The adjust blocks of a rule name its levers, which package levers declares. A
// block may compute the value of its lever (trust exact). Otherwise values are
// searched outward from the written one (trust searched). Every candidate is an
// edit of the file's text, read again and judged. No second model of a formula
// could disagree with the first.
//
// A search judges only the rule at hand. Before a change is accepted, every
// rule is judged. A change is refused if it adds a finding of the same or a
// higher level, or worsens food safety. After each round the changes are made
// minimal: needless ones are withdrawn, others moved back.
//
// Package engine calls it and reads and writes the files. This package prints
// and writes nothing. It decides no matter of taste unless asked to.
package mend

import (
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/rule"
)

// Mender mends formulas of one house, one at a time. It belongs to one
// goroutine.
type Mender struct {
	Kitchen *kitchen.Kitchen
	Rules   []*rule.Rule
	Options formula.Options
	Taste   bool // decide matters of taste too

	// Waived reports whether the house sets a rule aside for a formula. Such a
	// finding is not mended. No mend may worsen it where it is about food
	// safety.
	Waived func(rule, formula string) bool

	// Judgements counts the answers, and Reads the texts read, since the mender
	// was made.
	Judgements, Reads int

	// Budget is the most work that the search for one formula may do; 0 is no bound. It counts the
	// bytes of the texts that are read and judged, never time: the same input gives the same mends.
	Budget int

	name  string // of the file
	index int    // of the formula block in the file
	sheet facts.Sheet
	judge *rule.Judge
	on    *version // whose figures the sheet holds

	work  int  // done for this formula, as Budget counts it
	limit int  // of the work when the search for the finding at hand ends
	spent bool // a search was ended

	kept      map[string]*version // by text
	keptBytes int                 // of their texts
	found     map[searched][]*candidate
	disputes  map[question][]question // findings that move one lever in opposite directions
}

// searched identifies a search whose result is kept: that of an adjust block
// for a finding of one version. Without a block it is the search for two levers
// together.
type searched struct {
	version  *version
	question question
	adjust   *rule.Adjust
}

// begin reads and judges the formula as the baker wrote it.
func (m *Mender) begin(name string, text []byte, index int) (*version, error) {
	m.name, m.index, m.on, m.work = name, index, nil, 0
	m.limit, m.spent = 0, false
	m.kept, m.keptBytes = map[string]*version{}, 0
	m.found, m.disputes = map[searched][]*candidate{}, map[question][]question{}
	v, err := m.read(text)
	if err != nil {
		return nil, err
	}
	m.judgeAll(v)
	return v, nil
}

// shareOfBudget is the part of what is left of a budget that one finding may take: a heavy one
// leaves something to those after it.
const shareOfBudget = 2

// share gives the next finding its share of the budget.
func (m *Mender) share() { m.limit = m.work + max(0, m.Budget-m.work)/shareOfBudget }

// within reports whether a search may go on.
func (m *Mender) within() bool {
	if m.Budget > 0 && m.work >= m.limit {
		m.spent = true
		return false
	}
	return true
}

// Spent reports whether the search for a finding of the last formula came to the end of its
// budget: there may be mends that it did not find.
func (m *Mender) Spent() bool { return m.spent }

// Outcome is what was found for one formula.
type Outcome struct {
	Text    []byte // the mended text; the same bytes where nothing was changed
	Mending finding.Mending
	After   []*finding.Finding // what is still flagged
}

// mostPasses bounds the passes over a formula.
const mostPasses = 4

// Mend finds small changes that clear as much of a formula as can be cleared.
// index says which formula of the file it is.
func (m *Mender) Mend(name string, text []byte, index int) (*Outcome, error) {
	base, err := m.begin(name, text, index)
	if err != nil {
		return nil, err
	}
	now, changes := m.pass(base)
	// A change may make another possible. Passes go on until one finds nothing:
	// mending a mended formula must change nothing.
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
		now, changes = whole, all
	}
	return m.outcome(base, now, changes), nil
}
