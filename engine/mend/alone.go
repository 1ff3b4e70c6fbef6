package mend

import (
	"slices"

	"forebake/engine/finding"
)

// toSoleSettings sets each change to the value that clears its finding by itself, which is the
// one that a check names, where every answer stays as good with it.
func (m *Mender) toSoleSettings(base, now *version, list []*change) (*version, []*change) {
	for i := range list {
		for _, alone := range m.soleSettings(base, list[i]) {
			if alone.to.Equals(list[i].to) {
				break
			}
			trial := slices.Clone(list)
			trial[i] = &change{candidate: alone, questions: list[i].questions}
			v := m.replayed(base, trial)
			if v != nil && isAsGood(v, now) && isAsNear(v, now, list[i]) {
				now, list = v, trial
				break
			}
		}
	}
	return now, list
}

// soleSettings lists the settings of a change's lever that clear one of its findings by
// themselves, in the formula as the baker wrote it.
func (m *Mender) soleSettings(base *version, c *change) []*candidate {
	var out []*candidate
	for _, q := range c.questions {
		if base.answers[q] != finding.Flagged {
			continue
		}
		for i := range q.Rule.Adjust {
			for _, one := range m.candidates(base, q, &q.Rule.Adjust[i]) {
				if one.lever.Same(c.lever) && one.harmless() && one.next != nil &&
					one.answer == finding.Clear {
					out = append(out, one)
				}
			}
		}
	}
	return out
}

// differs words the setting that would clear a finding of the change by itself;
// "" where the change makes that setting.
func (m *Mender) differs(base *version, c *change) string {
	list := m.soleSettings(base, c)
	for _, one := range list {
		if one.to.Equals(c.to) {
			return ""
		}
	}
	if len(list) == 0 {
		return ""
	}
	return list[0].describe(base)
}
