// Package assumed lists what a formula is taken to be where it does not
// say. What an option is taken to be is declared with the option.
package assumed

import (
	"slices"

	"forebake/engine/formula"
)

// Assumption is what is taken for a setting that is not written; every
// report tells it.
type Assumption struct {
	What string // "in the fridge", alike for all of one kind
	Of   string // the ingredient, the verb of the step, or the setting
	Line int
}

// Of lists what is taken for settings that are not written, in file order.
func Of(f *formula.Formula) []Assumption {
	var out []Assumption
	whole := func(what, of string) {
		out = append(out, Assumption{what, of, f.Place.Line()})
	}
	if !f.Keep.Set && !isOpen(f, "keep") {
		whole("eaten in good time", "keep")
	}
	if f.Family == nil && !isOpen(f, "family") {
		whole("the ranges of any enriched dough", "family")
	}
	if f.Makes.Pieces == 0 && !isOpen(f, "makes") && divides(f) { // strands are joined again
		whole("each divided piece bakes by itself", "makes")
	}
	for _, p := range f.Parts {
		if p.Kind == formula.Dough && len(p.Steps) == 0 {
			out = append(out, Assumption{"only the weights are judged, for no step is written",
				p.Name, p.Place.Line()})
		}
		for _, in := range p.Ingredients {
			for _, what := range in.Assumes() {
				out = append(out, Assumption{what, in.Name, in.Place.Line()})
			}
		}
		for _, s := range p.Steps {
			for _, what := range s.Assumes() {
				out = append(out, Assumption{what, s.Verb.Name, s.Place.Line()})
			}
		}
	}
	return out
}

// divides reports whether a part is in pieces before it is baked or
// cooked.
func divides(f *formula.Formula) bool {
	for _, p := range f.Parts {
		at := slices.IndexFunc(p.Steps, func(s *formula.Step) bool {
			return s.Verb.Divides() || s.Pieces != nil
		})
		heats := func(s *formula.Step) bool { return s.Verb.HeatsThrough() }
		if at >= 0 && slices.ContainsFunc(p.Steps[at:], heats) {
			return true
		}
	}
	return false
}

// isOpen reports whether a setting of the formula is "?".
func isOpen(f *formula.Formula, key string) bool {
	return slices.ContainsFunc(f.OpenKeys(), func(s formula.Span) bool { return s.What == key })
}
