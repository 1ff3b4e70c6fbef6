package facts

import (
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
)

// A marker finds the line of a part that makes a figure true: an
// ingredient or a step of some kind. An empty one marks the part.
type marker struct {
	ingredient func(*formula.Ingredient) bool
	step       func(*formula.Step) bool
}

func withTrait(t larder.Trait) marker {
	return marker{
		ingredient: func(in *formula.Ingredient) bool { return in.Item != nil && in.Item.Is(t) },
	}
}

func withHazard(h larder.Hazard) marker {
	return marker{
		ingredient: func(in *formula.Ingredient) bool {
			return in.Item != nil && in.Item.Hazard == h
		},
	}
}

// markers are those of the figures in cautions.
var markers = map[string]marker{
	"has_flour": {
		ingredient: func(in *formula.Ingredient) bool {
			return in.Item != nil && in.Item.Flour > 0
		},
	},
	"has_raw_flour":  withTrait(larder.RawFlour),
	"has_egg":        withTrait(larder.Egg),
	"has_milk":       withTrait(larder.Dairy),
	"has_honey":      withTrait(larder.Honey),
	"has_alcohol":    withTrait(larder.Spirit),
	"has_whole_nuts": withTrait(larder.WholeNut),
	"has_raw_meat":   {ingredient: makeup.IsRawMeat},
	"has_sprouts":    withHazard(larder.HazardSprouts),
	"has_caustic":    withHazard(larder.HazardCaustic),
	"needs_control":  {},
	"is_fried": {
		step: func(s *formula.Step) bool { return s.InHotFat() || s.Verb.Cooks() && s.Way == nil },
	},
	"has_sugar_cooked": {
		step: func(s *formula.Step) bool { return s.Verb.Cooks() || s.Verb.Melts() },
	},
}

// Mark gives the line of a part that makes a figure true: an ingredient
// or a step, nil where none does. ok is false for a figure that marks
// no line.
func Mark(figure string, p *formula.Part) (in *formula.Ingredient, s *formula.Step, ok bool) {
	m, ok := markers[figure]
	for _, in := range p.Ingredients {
		if m.ingredient != nil && m.ingredient(in) {
			return in, nil, true
		}
	}
	for _, s := range p.Steps {
		if m.step != nil && m.step(s) {
			return nil, s, true
		}
	}
	return nil, nil, ok
}
