package mend

import (
	"cmp"
	"slices"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/mend/levers"
	"forebake/engine/rule"
)

// question is one rule asked of one subject. It outlives an edit: serials and
// indexes stay, since entries are added at the end of a list only.
type question struct {
	rule        *rule.Rule
	on          facts.On
	part, index int
}

// questionOf gives the question of a rule about a subject.
func questionOf(r *rule.Rule, x facts.Subject) question {
	q := question{rule: r, on: x.On}
	if x.Part != nil {
		q.part = x.Part.Serial
	}
	switch x.On {
	case facts.OnStep:
		q.index = x.Step.Index
	case facts.OnIngredient:
		q.index = slices.Index(x.Ingredient.Part.Ingredients, x.Ingredient)
	}
	return q
}

// subject finds the question's subject in a formula.
func (q question) subject(f *formula.Formula) facts.Subject {
	x := facts.Subject{On: q.on}
	if q.on == facts.OnFormula || q.on == facts.OnKitchen {
		return x
	}
	x.Part = f.Parts[q.part]
	switch q.on {
	case facts.OnStep:
		x.Step = x.Part.Steps[q.index]
	case facts.OnIngredient:
		x.Ingredient = x.Part.Ingredients[q.index]
	}
	return x
}

// isIn reports whether a formula has the question's subject.
func (q question) isIn(f *formula.Formula) bool {
	switch {
	case q.on == facts.OnFormula || q.on == facts.OnKitchen:
		return true
	case q.part >= len(f.Parts):
		return false
	case q.on == facts.OnStep:
		return q.index < len(f.Parts[q.part].Steps)
	case q.on == facts.OnIngredient:
		return q.index < len(f.Parts[q.part].Ingredients)
	}
	return true
}

// stands reports whether a question is about a step in which a dough rises.
func (q question) stands(f *formula.Formula) bool {
	if q.on != facts.OnStep {
		return false
	}
	v := q.subject(f).Step.Verb
	return v.Waits() && !v.Chills()
}

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

// worsened lists the findings that a change would make worse: of a level or a
// higher one, of food safety and about a dough that stands at any level. An
// answer that becomes unsure counts too. In a draft it does so for food safety
// alone: open amounts leave unsure what a new figure makes it possible to ask.
func worsened(before, after *version, level finding.Level) []question {
	var out []question
	for q, a := range after.answers {
		was := before.answers[q]
		opened := a == finding.Unsure && q.stands(after.formula)
		if q.rule.Level > level && !q.rule.Safety && !opened {
			continue
		}
		exempt := a == finding.Unsure && before.draft && !q.rule.Safety
		worse := rank(a) > rank(was) && !exempt
		if worse || q.rule.Safety && after.excess[q] > before.excess[q]+excessMargin {
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

// level is the level of a finding of a version; of an answer that is not flagged there the level
// that it had as written, else the rule's.
func (m *Mender) level(v *version, q question) finding.Level {
	if level, known := v.levels[q]; known {
		return level
	}
	if level, known := m.written.levels[q]; known {
		return level
	}
	return q.rule.Level
}

// harm lists what a change for a finding would make worse. What is only a note is no reason to take
// another finding further from clear.
func (m *Mender) harm(v, next *version, q question) []question {
	level := m.level(v, q)
	out := worsened(v, next, level)
	if level == finding.Note {
		out = append(out, m.burdened(v, next)...)
	}
	m.sortQuestions(out, next)
	return out
}

// burdened lists the findings that stay and that a change takes further from clear.
func (m *Mender) burdened(before, after *version) []question {
	var out []question
	for q, a := range after.answers {
		if a == finding.Flagged && before.answers[q] == finding.Flagged && !q.rule.Safety &&
			(after.excess[q] > before.excess[q]+excessMargin || m.level(after, q) < m.level(before, q)) {
			out = append(out, q)
		}
	}
	return out
}

// sortQuestions puts the higher level of a version first, then food safety. The
// whole formula comes last of a level, since it depends on the rest. What is
// weighed comes before how the dough rises, rules that compute their lever
// before those that search, and amounts before steps.
func (m *Mender) sortQuestions(list []question, v *version) {
	slices.SortFunc(list, func(a, b question) int {
		return cmp.Or(
			cmp.Compare(m.level(v, a), m.level(v, b)),
			firstIf(a.rule.Safety, b.rule.Safety),
			firstIf(a.on != facts.OnFormula, b.on != facts.OnFormula),
			firstIf(weighs(a.rule), weighs(b.rule)),
			firstIf(computes(a.rule), computes(b.rule)),
			cmp.Compare(a.on, b.on),
			cmp.Compare(a.part, b.part),
			cmp.Compare(a.index, b.index),
			cmp.Compare(a.rule.ID, b.rule.ID),
		)
	})
}

// firstIf orders two of which one meets a condition: that one first.
func firstIf(a, b bool) int {
	switch {
	case a == b:
		return 0
	case a:
		return -1
	}
	return 1
}

// weighs reports whether a rule is about what a part is made of: its first lever
// is an amount other than the yeast's. How fast a dough rises follows from it.
func weighs(r *rule.Rule) bool {
	return len(r.Adjust) > 0 && levers.Weighs(r.Adjust[0].Lever)
}

// computes reports whether the first adjust block of a rule computes what its
// lever is set to.
func computes(r *rule.Rule) bool { return len(r.Adjust) > 0 && r.Adjust[0].To != nil }
