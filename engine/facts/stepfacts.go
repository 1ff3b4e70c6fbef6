package facts

import (
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/quantity"
)

// Step facts that are read off the step itself; what the dough goes through in it is another matter.
var stepFacts = []Fact{
	{Name: "verb", Type: Text, Means: "what the step does", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value { return text(s.Verb.Name) }},
	{Name: "minutes", Unit: "min", Means: "how long it takes", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value {
		return given(s.Time, "the time of this "+s.Verb.Name, s.Place)
	}},
	{Name: "at_c", Unit: "C", Means: "temperature around it; a chill without one is in the fridge, a freeze in the freezer", Source: srcGiven, step: stepAt},
	{Name: "to_c", Unit: "C", Means: "target temperature", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value {
		return given(s.To, "to = \"... C\" in this "+s.Verb.Name, s.Place)
	}},
	{Name: "core_target_c", Unit: "C", Means: "target core temperature", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value {
		return given(s.Core, "core = \"... C\" in this "+s.Verb.Name, s.Place)
	}},
	{Name: "thickness_mm", Unit: "mm", Means: "thickness of the sheet, slab or tray", Source: srcGiven, step: thickness},
	{Name: "method", Type: Text, Means: "how: by hand, spiral, frying; empty where not given", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value { return text(s.By) }},
	{Name: "is_covered", Type: YesNo, Means: "covered", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value {
		if s.Covered == nil {
			return maybe("covered = true or false in this "+s.Verb.Name, s.Place)
		}
		return yes(*s.Covered)
	}},
	{Name: "is_measured", Type: YesNo, Means: "the baker's own reading is written down", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value { return yes(s.Measured != nil) }},
	{Name: "has_yeast", Type: YesNo, Means: "yeast goes in here: it is mixed, or soaked, with what the step names", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value {
		return yes(meetsYeast(s))
	}},
	{Name: "has_active_dry", Type: YesNo, Verbs: []string{"soak"}, Means: "active dry yeast is soaked here", Source: srcGiven, step: func(_ *Sheet, s *formula.Step) Value {
		return yes(meets(s, func(in *formula.Ingredient) bool { return in.Item != nil && in.Item.YeastKind == "active dry" }))
	}},
	{Name: "liquid_c", Unit: "C", Verbs: []string{"mix", "soak"}, Means: "warmest liquid that goes in here, by the temperatures that are written", Source: srcGiven, step: liquidTemp},
}

// stepAt gives the ambient temperature of a step. Only what needs no guess is filled in: a chill is in the fridge.
func stepAt(sh *Sheet, s *formula.Step) Value {
	where := s.Where
	if where == "" && !s.At.Set {
		switch s.Verb.Name {
		case "chill":
			where = "fridge"
		case "freeze":
			where = "freezer"
		}
	}
	var v Value
	switch where {
	case "room":
		v = num(sh.Kitchen.Room.Interval)
	case "fridge":
		v = num(sh.Kitchen.Fridge.Interval)
	case "freezer":
		v = num(sh.Kitchen.Freezer.Interval)
	default:
		return given(s.At, "at = \"room\" or a temperature in this "+s.Verb.Name, s.Place)
	}
	v.Origin = AsGiven
	return v
}

func thickness(_ *Sheet, s *formula.Step) Value {
	mm := Interval{}
	if s.Form != nil {
		mm = s.Form.MM
	}
	if s.Verb.Name == "sheet" && s.Measure.Set {
		mm = s.Measure.Interval
	}
	if mm == (Interval{}) {
		return absent("a thickness in this "+s.Verb.Name, s.Place)
	}
	v := num(mm)
	v.Origin = AsGiven
	return v
}

// meets tells whether a step takes an ingredient of a kind: one that it names, or any of its part when it names none.
func meets(s *formula.Step, is func(*formula.Ingredient) bool) bool {
	list := s.With
	if len(list) == 0 {
		list = s.Part.Ingredients
	}
	for _, in := range list {
		if is(in) {
			return true
		}
	}
	return false
}

func meetsYeast(s *formula.Step) bool {
	return meets(s, func(in *formula.Ingredient) bool { return in.Item != nil && in.Item.Yeast > 0 })
}

// liquidTemp is the warmest written temperature among the pourable ingredients and taken parts that the step takes; a
// soak's own at or to is the temperature of its liquid.
func liquidTemp(_ *Sheet, s *formula.Step) Value {
	warmest := Interval{}
	found := false
	see := func(g formula.Given) {
		if !g.Set {
			return
		}
		if !found {
			warmest, found = g.Interval, true
			return
		}
		warmest = quantity.Between(max(warmest.Lo, g.Lo), max(warmest.Hi, g.Hi))
	}
	if s.Verb.Name == "soak" {
		see(s.At)
		see(s.To)
	}
	list := s.With
	if len(list) == 0 {
		list = s.Part.Ingredients
	}
	for _, in := range list {
		if in.Of != nil || in.Item.Is(larder.Pourable) {
			see(in.Temp)
		}
	}
	if !found {
		return absent("the temperature of the liquid in this "+s.Verb.Name, s.Place)
	}
	v := num(warmest)
	v.Origin = AsGiven
	return v
}
