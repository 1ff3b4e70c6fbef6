package formula

import "slices"

// Assumption is what is taken for a setting that is not written; every report tells it.
type Assumption struct {
	What string // "in the fridge", alike for all of one kind
	Of   string // the ingredient, the verb of the step, or the setting
	Line int
}

// Assumed lists what is taken for settings that are not written, in file order.
func (f *Formula) Assumed() []Assumption {
	var out []Assumption
	if !f.Keep.Set && !f.isOpen("keep") {
		out = append(out, Assumption{"eaten in good time", "keep", f.Place.Line()})
	}
	if f.Family == nil && !f.isOpen("family") {
		out = append(out, Assumption{"the ranges of any enriched dough", "family", f.Place.Line()})
	}
	if f.Makes.Pieces == 0 && !f.isOpen("makes") && f.divides() { // a braid's strands are joined again
		out = append(out, Assumption{"each divided piece bakes by itself", "makes", f.Place.Line()})
	}
	for _, p := range f.Parts {
		for _, in := range p.Ingredients {
			for _, o := range IngredientOptions {
				if in.Item == nil && (o.item || in.Of == nil) || o.text(in) != "" ||
					slices.Contains(in.Open, o) {
				} else if what := o.assumes(in); what != "" {
					out = append(out, Assumption{what, in.Name, in.Place.Line()})
				}
			}
		}
		for _, s := range p.Steps {
			whats := []string{p.standsAs(s)}
			if s.isShapeOpen() {
				whats = append(whats, "a round, the thickest")
			}
			for _, o := range s.Verb.options {
				if o.assumes != nil && o.text(s) == "" && !slices.Contains(s.Open, o) {
					whats = append(whats, o.assumes(s))
				}
			}
			for _, what := range whats {
				if what != "" {
					out = append(out, Assumption{what, s.Verb.Name, s.Place.Line()})
				}
			}
		}
	}
	return out
}

// divides reports whether a part is in pieces before it is baked or cooked.
func (f *Formula) divides() bool {
	for _, p := range f.Parts {
		at := slices.IndexFunc(p.Steps, func(s *Step) bool { return s.Verb.Divides() || s.Pieces != nil })
		heats := func(s *Step) bool { return s.Verb.HeatsThrough() }
		if at >= 0 && slices.ContainsFunc(p.Steps[at:], heats) {
			return true
		}
	}
	return false
}

// isOpen reports whether a setting of the formula is "?".
func (f *Formula) isOpen(key string) bool {
	return slices.ContainsFunc(f.open, func(s Span) bool { return s.What == key })
}
