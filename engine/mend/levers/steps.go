package levers

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/formula"
)

// ownStep stands in a lever's name for the step that the rule looks at:
// "step.time".
const ownStep = "step"

// stepNames lists the names of an option: of the rule's own step, and of each
// verb that has it.
func stepNames(option string, has func(*formula.Verb) bool) []string {
	out := []string{ownStep + "." + option}
	for _, v := range formula.Verbs {
		if has(v) {
			out = append(out, v.Name+"."+option)
		}
	}
	return out
}

// takes gives the condition that a verb has an option.
func takes(option string) func(*formula.Verb) bool {
	return func(v *formula.Verb) bool { return slices.Contains(v.Options(), option) }
}

// cools reports whether a verb is the one that a missing cooling is written with.
func cools(v *formula.Verb) bool { return v == formula.Cool }

// slabMM is the depth at which a dough is through in the cold soon, mm.
const slabMM = 30

// chillText writes a step that cools a dough.
func chillText() string {
	return fmt.Sprintf("{ %s = \"2 h\", at = \"fridge\", as = \"slab %d mm\", covered = true }",
		inTheCold().Name, slabMM)
}

// hasName gives the condition that a verb has a name.
func hasName(name string) func(*formula.Verb) bool {
	return func(v *formula.Verb) bool { return v.Name == name }
}

// meantSteps lists the steps that a query means: for "step.time" the rule's own
// step, for "chill.time" the chills before it, the last first. Where the step
// puts another part on, the last chill of that part is meant. Cooling the dough
// does not cool what is put on it.
func meantSteps(q *Query) []*formula.Step {
	verb, _, _ := strings.Cut(q.Name, ".")
	x := q.Subject
	switch {
	case x.Part == nil:
		return nil
	case verb == ownStep && x.Step != nil:
		return []*formula.Step{x.Step}
	case verb == ownStep:
		return nil
	case x.Step == nil:
		return stepsBefore(x.Part, hasName(verb), len(x.Part.Steps))
	}
	if put := x.Step.Uses; put != nil {
		if list := stepsBefore(put, hasName(verb), len(put.Steps)); len(list) > 0 {
			return list[:1]
		}
		if verb == formula.Cool.Name {
			return nil
		}
	}
	return stepsBefore(x.Part, hasName(verb), x.Step.Index)
}

// stepsBefore lists the steps before an index whose verb meets a condition, the
// last first.
func stepsBefore(p *formula.Part, is func(*formula.Verb) bool, index int) []*formula.Step {
	var out []*formula.Step
	for i := index - 1; i >= 0; i-- {
		if is(p.Steps[i].Verb) {
			out = append(out, p.Steps[i])
		}
	}
	return out
}

// onStep gives the lever of a step.
func onStep(s *formula.Step) *Lever { return &Lever{Part: s.Part.Serial, Index: s.Index} }

// isDoubled reports whether a step stands twice in a row: one of the two goes,
// and no value of either is set.
func isDoubled(s *formula.Step) bool {
	next := s.Index + 1
	return facts.Repeats(s) || next < len(s.Part.Steps) && facts.Repeats(s.Part.Steps[next])
}

// onSteps gives the levers of those steps of a query that meet a condition.
func onSteps(q *Query, meets func(*formula.Step) bool) []*Lever {
	var out []*Lever
	for _, s := range meantSteps(q) {
		if meets(s) && !isDoubled(s) {
			out = append(out, onStep(s))
		}
	}
	return out
}

// step finds the lever's step; ErrGone where another change would add it.
func (l *Lever) step(f *formula.Formula) (*formula.Step, error) {
	if list := f.Parts[l.Part].Steps; l.Index < len(list) {
		return list[l.Index], nil
	}
	return nil, ErrGone
}

// written finds the lever's step in the formula in which the lever was found.
func (l *Lever) written(f *formula.Formula) *formula.Step { return f.Parts[l.Part].Steps[l.Index] }

// ofStep names a step with its part: "proof in dough \"d\"".
func ofStep(l *Lever, f *formula.Formula) string {
	return l.written(f).Verb.Name + " in " + partName(l, f)
}
