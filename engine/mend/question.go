package mend

import (
	"slices"

	"forebake/engine/finding"
	"forebake/engine/mend/asked"
)

// question is one rule asked of one subject.
type question = asked.Question

// rank orders answers from good to bad.
func rank(a finding.Answer) int {
	switch a {
	case finding.Clear:
		return 0
	case finding.Unsure:
		return 1
	}
	return 2
}

// excessMargin is the difference of excess below which two are taken to be
// equal.
const excessMargin = 1e-6

// worsened lists the findings that a change would make worse, from a
// level up. Those of food safety and of a dough that stands count at
// any level. An answer that becomes unsure counts too. In a draft that
// holds for food safety alone, since a new figure there opens questions
// that open amounts leave unsure.
func worsened(before, after *version, level finding.Level) []question {
	var out []question
	for q, a := range after.answers {
		was := before.answers[q]
		opened := a == finding.Unsure && q.Stands(after.formula)
		if q.Rule.Level > level && !q.Rule.Safety && !opened {
			continue
		}
		exempt := a == finding.Unsure && before.draft && !q.Rule.Safety
		worse := rank(a) > rank(was) && !exempt
		if worse || q.Rule.Safety && after.excess[q] > before.excess[q]+excessMargin {
			out = append(out, q)
		}
	}
	return out
}

// flagged lists the findings of a version in the order in which they are
// mended.
func (m *Mender) flagged(v *version) []question {
	var out []question
	for q, a := range v.answers {
		if a == finding.Flagged {
			out = append(out, q)
		}
	}
	m.sortQuestions(out, v)
	return out
}

// level is the level of a version's finding. An answer that is not
// flagged has its level as written, else the rule's.
func (m *Mender) level(v *version, q question) finding.Level {
	if level, known := v.levels[q]; known {
		return level
	}
	if level, known := m.written.levels[q]; known {
		return level
	}
	return q.Rule.Level
}

// harm lists what a change for a finding would make worse. What is only a note is no reason to take
// another finding further from clear.
func (m *Mender) harm(v, next *version, q question) []question {
	level := m.level(v, q)
	out := worsened(v, next, level)
	if level == finding.Note {
		out = append(out, m.takenFurther(v, next)...)
	}
	m.sortQuestions(out, next)
	return out
}

// takenFurther lists the findings that stay and that a change takes further from clear.
func (m *Mender) takenFurther(before, after *version) []question {
	var out []question
	for q, a := range after.answers {
		if a == finding.Flagged && before.answers[q] == finding.Flagged && !q.Rule.Safety &&
			(after.excess[q] > before.excess[q]+excessMargin ||
				m.level(after, q) < m.level(before, q)) {
			out = append(out, q)
		}
	}
	return out
}

// sortQuestions puts questions in the order in which they are mended.
func (m *Mender) sortQuestions(list []question, v *version) {
	level := func(q question) finding.Level { return m.level(v, q) }
	slices.SortFunc(list, func(a, b question) int { return asked.Compare(a, b, level) })
}
