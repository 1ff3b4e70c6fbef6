// Package asked identifies the questions of a search for mends. Each is
// one rule on one subject, the same for every version of a formula's
// text. It judges nothing.
package asked

import (
	"cmp"
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/mend/levers"
	"forebake/engine/rule"
)

// Question is one rule asked of one subject. It outlives an edit: serials and
// indexes stay, since entries are added at the end of a list only.
type Question struct {
	Rule        *rule.Rule
	On          facts.On
	Part, Index int // serial of the part; index of the step or the ingredient
}

// Of gives the question of a rule about a subject.
func Of(r *rule.Rule, x facts.Subject) Question {
	q := Question{Rule: r, On: x.On}
	if x.Part != nil {
		q.Part = x.Part.Serial
	}
	switch x.On {
	case facts.OnStep:
		q.Index = x.Step.Index
	case facts.OnIngredient:
		q.Index = slices.Index(x.Ingredient.Part.Ingredients, x.Ingredient)
	}
	return q
}

// Subject finds the question's subject in a formula.
func (q Question) Subject(f *formula.Formula) facts.Subject {
	x := facts.Subject{On: q.On}
	if q.On == facts.OnFormula || q.On == facts.OnKitchen {
		return x
	}
	x.Part = f.Parts[q.Part]
	switch q.On {
	case facts.OnStep:
		x.Step = x.Part.Steps[q.Index]
	case facts.OnIngredient:
		x.Ingredient = x.Part.Ingredients[q.Index]
	}
	return x
}

// IsIn reports whether a formula has the question's subject.
func (q Question) IsIn(f *formula.Formula) bool {
	switch {
	case q.On == facts.OnFormula || q.On == facts.OnKitchen:
		return true
	case q.Part >= len(f.Parts):
		return false
	case q.On == facts.OnStep:
		return q.Index < len(f.Parts[q.Part].Steps)
	case q.On == facts.OnIngredient:
		return q.Index < len(f.Parts[q.Part].Ingredients)
	}
	return true
}

// Stands reports whether a question is about a step in which a dough rises.
func (q Question) Stands(f *formula.Formula) bool {
	if q.On != facts.OnStep {
		return false
	}
	v := q.Subject(f).Step.Verb
	return v.Waits() && !v.Chills()
}

// Compare orders questions for a search, where level gives the level of each: the
// higher level first, then food safety. The whole formula comes last of a level,
// since it depends on the rest. What is weighed comes first, then how warm it
// stands, then how long. Rules that compute their lever come before those that
// search, and amounts before steps.
func Compare(a, b Question, level func(Question) finding.Level) int {
	return cmp.Or(
		cmp.Compare(level(a), level(b)),
		FirstIf(a.Rule.Safety, b.Rule.Safety),
		FirstIf(a.On != facts.OnFormula, b.On != facts.OnFormula),
		FirstIf(weighs(a.Rule), weighs(b.Rule)),
		FirstIf(warms(a.Rule), warms(b.Rule)),
		FirstIf(computes(a.Rule), computes(b.Rule)),
		cmp.Compare(a.On, b.On),
		cmp.Compare(a.Part, b.Part),
		cmp.Compare(a.Index, b.Index),
		cmp.Compare(a.Rule.ID, b.Rule.ID),
	)
}

// FirstIf orders two of which one meets a condition: that one first.
func FirstIf(a, b bool) int {
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

// warms reports whether a rule's first lever is a temperature around a step: how
// long the step lasts follows from it.
func warms(r *rule.Rule) bool {
	return len(r.Adjust) > 0 && strings.HasSuffix(r.Adjust[0].Lever, ".at")
}

// computes reports whether the first adjust block of a rule computes what its
// lever is set to.
func computes(r *rule.Rule) bool { return len(r.Adjust) > 0 && r.Adjust[0].To != nil }
