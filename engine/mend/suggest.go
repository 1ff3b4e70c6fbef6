package mend

import (
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/source"
)

// mostMends bounds the mends that are listed for one finding.
const mostMends = 2

// Suggestion is what would clear one finding by itself.
type Suggestion struct {
	Rule  string
	Place source.Place
	On    facts.On
	Mends []finding.Mend
}

// fewestTexts is how many texts a search must be able to read within its budget to be begun.
const fewestTexts = 3

// Suggest gives the changes that would clear each flagged finding by itself, at
// most one for each adjust block. index says which formula of the file it is.
// complete is false where the budget ended the search.
func (m *Mender) Suggest(name string, text []byte, index int) (
	_ []Suggestion, complete bool, _ error,
) {
	v, err := m.begin(name, text, index)
	if err != nil {
		return nil, false, err
	}
	if m.Budget > 0 && fewestTexts*m.textWork(v.formula) > m.Budget {
		return nil, false, nil // each text would cost too much for a search to get anywhere
	}
	// The budget goes to the stops first, then to single levers for
	// every other finding, then to several. Levers without a search and
	// serious findings come first.
	found := map[question][]finding.Mend{}
	for _, q := range m.flagged(v) {
		if q.Rule.Level == finding.Stop {
			found[q] = m.mends(v, q)
		}
	}
	for _, exact := range []bool{true, false} {
		for _, level := range []finding.Level{finding.Stop, finding.Risk, finding.Note} {
			for _, q := range m.flagged(v) {
				if m.finding(v, q).Level != level {
					continue
				}
				for i := range q.Rule.Adjust {
					if a := &q.Rule.Adjust[i]; (a.To != nil) == exact {
						m.candidates(v, q, a)
					}
				}
			}
		}
	}
	var out []Suggestion
	for _, q := range m.flagged(v) {
		place := m.finding(v, q).Place
		list, known := found[q]
		if !known {
			list = m.mends(v, q)
		}
		out = append(out, Suggestion{Rule: q.Rule.ID, Place: place, On: q.On, Mends: list})
	}
	return out, !m.budgetSpent(), nil
}

// mends lists the mends of one finding. Where at most a matter of taste clears
// it, several changes together come last, else one that leaves it unsure.
func (m *Mender) mends(v *version, q question) []finding.Mend {
	var out, leaveUnsure []finding.Mend
	cleared := false
	for i := range q.Rule.Adjust {
		list := slices.Clone(m.candidates(v, q, &q.Rule.Adjust[i]))
		slices.SortStableFunc(list, compare)
		if len(list) == 0 || !list[0].harmless() || len(out) == mostMends {
			continue
		}
		one := finding.Mend{Text: list[0].describe(v), Trust: list[0].trust, Edits: list[0].edits}
		if list[0].answer == finding.Clear {
			out = append(out, one)
			cleared = cleared || one.Trust != finding.Taste
			continue
		}
		one.Text += ", and then the model cannot tell"
		leaveUnsure = append(leaveUnsure, one)
	}
	if cleared {
		return out
	}
	if next, made := m.accept(v, q); next != nil && next.answers[q] == finding.Clear {
		return append(out, jointMend(v, made))
	}
	if len(leaveUnsure) > 0 {
		out = append(out, leaveUnsure[0])
	}
	return out
}

// jointMend words changes that clear a finding only when all are made.
func jointMend(v *version, made []*candidate) finding.Mend {
	var texts []string
	one := finding.Mend{Trust: finding.Exact}
	before := v.text
	for _, c := range made {
		texts = append(texts, c.describe(v))
		one.Trust = weakerTrust(one.Trust, c.trust)
		v = c.next
	}
	one.Text = strings.Join(texts, "; with it ")
	one.Edits = source.Edits(before, v.text)
	return one
}
