package facts

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/science/mould"
)

var ingredientFacts = []Fact{
	{
		Name:       "name",
		Type:       Text,
		Means:      "its name as written",
		Source:     srcGiven,
		ingredient: func(_ *parts, in *formula.Ingredient) Value { return figure.Text(in.Name) },
	},
	{
		Name: "class",
		Type: Text,
		Means: "flour, sugar, fat, egg, dairy, liquid, salt, yeast, nut, fruit, spice ...; " +
			"\"part\" for another part",
		Source: "larder",
		ingredient: func(_ *parts, in *formula.Ingredient) Value {
			if in.Item == nil {
				return figure.Text("part")
			}
			return figure.Text(string(in.Item.Class))
		},
	},
	{
		Name:   "amount_g",
		Unit:   "g",
		Means:  "its weight; spoons and cups by the larder's density",
		Source: srcAdd,
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			return figure.ValueOf(s.Amount(in))
		},
	},
	{
		Name:   "pct",
		Unit:   "%",
		Means:  "its weight on the part's flour",
		Source: srcPct,
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			p := s.Part(in.Part)
			if p.TotalFlour().Hi == 0 {
				return p.NoFlour()
			}
			m := s.Mass(in)
			return figure.ValueOf(m.OverFlour(p.TotalFlour()).Scale(100))
		},
	},
	{
		Name: "is_tenfold_slip",
		Type: YesNo,
		Means: "ten times too much or too little for its class, where a tenth or ten times " +
			"would be usual",
		Source:     srcUsualShare,
		ingredient: tenfoldSlip,
	},
	{
		Name:       "meant_g",
		Unit:       "g",
		Means:      "its amount with the point moved one place, where that would be usual",
		Source:     srcUsualShare,
		ingredient: meant,
	},
	{
		Name:   "is_open",
		Type:   YesNo,
		Means:  "its amount is still \"?\"",
		Source: srcGiven,
		ingredient: func(_ *parts, in *formula.Ingredient) Value {
			return figure.YesNo(in.IsOpen())
		},
	},
	{
		Name: "is_seasoning",
		Type: YesNo,
		Means: "of a class whose usual share of such a part is bounded: salt, spice, zest, " +
			"extract, a wash",
		Source: larder.BoundBasis,
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			return figure.YesNo(s.Part(in.Part).Seasons(in))
		},
	},
	{
		Name:   "is_weighed",
		Type:   YesNo,
		Means:  "its amount is a weight or a percentage, so it goes on the scale",
		Source: srcGiven,
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			if in.IsOpen() && !s.TakenAsUsual(in) {
				return figure.Maybe("the amount of \""+in.Name+"\"", in.Place)
			}
			return figure.YesNo(
				in.Amount.Set && !in.Apart &&
					(in.Amount.Kind == quantity.Mass || in.Amount.Kind == quantity.Percent),
			)
		},
	},
	{
		Name:   "weighing_error_pct",
		Unit:   "%",
		Means:  "half the step of the scale, on the amount",
		Source: "worst case of one reading, half the resolution",
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			return figure.ValueOf(s.Kitchen.Scale.Interval.Scale(50).Div(s.Amount(in)))
		},
	},
	{
		Name:   "by_volume",
		Type:   YesNo,
		Means:  "given by spoon, cup or jug",
		Source: srcGiven,
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			if in.IsOpen() && !s.TakenAsUsual(in) {
				return figure.Maybe("the amount of \""+in.Name+"\"", in.Place)
			}
			return figure.YesNo(in.Amount.ByVolume() && !in.Apart)
		},
	},
	{
		Name:       "is_solid",
		Type:       YesNo,
		Means:      "a solid or a powder, which a spoon measures badly",
		Source:     "larder",
		ingredient: func(_ *parts, in *formula.Ingredient) Value { return isA(in, larder.Solid) },
	},
	{
		Name:   "fat_in_pct",
		Unit:   "%",
		Means:  "fat in 100 g of it; 0 of what is no single food",
		Source: "larder",
		ingredient: func(_ *parts, in *formula.Ingredient) Value {
			if in.Item == nil {
				return figure.ValueOf(figure.Interval{})
			}
			return figure.ValueOf(figure.Point(in.Item.Fat))
		},
	},
	{
		Name:   "spoon_spread_pct",
		Unit:   "%",
		Means:  "how far a spoon or cup of it moves with packing",
		Source: "common practice",
		ingredient: func(_ *parts, in *formula.Ingredient) Value {
			if in.Item == nil {
				return figure.ValueOf(Interval{})
			}
			return figure.ValueOf(figure.Point(in.Item.SpoonSpread))
		},
	},
	{
		Name:   "reserve_g",
		Unit:   "g",
		Means:  "held back for later",
		Source: srcGiven,
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			return figure.ValueOf(in.Held.Grams(s.Part(in.Part).TotalFlour()))
		},
	},
	{
		Name:   "reserve_used_g",
		Unit:   "g",
		Means:  "of what was held back, used by a step that names it (with = ...)",
		Source: srcGiven,
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			for _, step := range in.Part.Steps {
				for _, with := range step.With {
					if with == in {
						return figure.ValueOf(in.Held.Grams(s.Part(in.Part).TotalFlour()))
					}
				}
			}
			return figure.ValueOf(Interval{})
		},
	},
	{
		Name:   "is_raw",
		Type:   YesNo,
		Means:  "goes in raw: not named as cooked, baked, canned or dried, and no step cooks it",
		Source: srcGiven,
		ingredient: func(s *parts, in *formula.Ingredient) Value {
			switch in.Form {
			case "cooked", "baked", "canned", "tinned", "dried", "pasteurised", "boiled", "scalded":
				return figure.YesNo(false)
			}
			for _, step := range in.Part.Steps {
				if step.Verb.Cooks() && makeup.Heats(step, in) {
					return figure.YesNo(false)
				}
			}
			return figure.YesNo(true)
		},
	},
	{
		Name:   "is_enzyme_fruit",
		Type:   YesNo,
		Means:  "pineapple, papaya, kiwi or fig: raw, its enzyme cuts protein",
		Source: "larder",
		ingredient: func(_ *parts, in *formula.Ingredient) Value {
			return isA(in, larder.EnzymeFruit)
		},
	},
	{
		Name:   "temp_c",
		Unit:   "C",
		Means:  "its temperature as written",
		Source: srcGiven,
		ingredient: func(_ *parts, in *formula.Ingredient) Value {
			return makeup.Given(in.Temp, "temp of \""+in.Name+"\"", in.Place)
		},
	},
}

func isA(in *formula.Ingredient, t larder.Trait) Value {
	return figure.YesNo(in.Item != nil && in.Item.Is(t))
}

var formulaFacts = []Fact{
	{
		Name:    "name",
		Type:    Text,
		Means:   "its name as written",
		Source:  srcGiven,
		formula: func(s *parts) Value { return figure.Text(s.Formula.Name) },
	},
	{
		Name:    "has_steps",
		Type:    YesNo,
		Means:   "a step is written in any of its parts",
		Source:  srcGiven,
		formula: hasSteps,
	},
	{
		Name:    "dough_g",
		main:    true,
		Unit:    "g",
		Means:   "all doughs, preferments included",
		Source:  srcAdd,
		formula: func(s *parts) Value { return figure.ValueOf(s.KindMass(formula.Dough)) },
	},
	{
		Name:    "filling_g",
		main:    true,
		Unit:    "g",
		Means:   "all fillings that a step spreads",
		Source:  srcAdd,
		formula: func(s *parts) Value { return figure.ValueOf(s.Spread()) },
	},
	{
		Name: "finished_g",
		main: true,
		Unit: "g",
		Means: "what comes out: dough less 2 to 5 % in the bowl and on the bench, filling, and " +
			"8 to 13 % less in the oven",
		Source: "losses: an ingredient maker's baking compendium 13.5; Gisslen, Professional " +
			"Cooking; 6 to 10 % for filled rolls is common practice",
		Error:   "the losses' own range",
		formula: (*parts).Finished,
	},
	{
		Name:    "pieces",
		main:    true,
		Unit:    "pieces",
		Means:   "how many are made",
		Source:  srcGiven,
		formula: (*parts).Pieces,
	},
	{
		Name: "piece_g",
		main: true,
		Unit: "g",
		Means: "shaped and unbaked weight of one: as given, else dough and " +
			"filling over the number",
		Source:  srcAdd,
		formula: (*parts).PieceGrams,
	},
	{
		Name: "piece_asked_g",
		Unit: "g",
		Means: "weight of one as the formula asks for it (makes = \"24 pieces of 75 g\", " +
			"or divide = \"75 g\")",
		Source:  srcGiven,
		formula: (*parts).PieceAsked,
	},
	{
		Name: "makes_gap_pct",
		main: true,
		Unit: "%",
		Means: "dough (and filling) beyond pieces times their weight, after 0 to 5 % lost in " +
			"the bowl and on the bench; below zero it is lacking",
		Source:  "mixing and scaling loss up to 5 %: an ingredient maker's baking compendium 13.5",
		formula: (*parts).MakesGap,
	},
	{
		Name: "makes_counted",
		Type: Text,
		Means: "what is held against pieces times their weight: the dough, or with what goes " +
			"in or on it before the bake, whichever is nearer",
		Source:  srcAdd,
		formula: makesCounted,
	},
	{
		Name:   "filling_ratio_pct",
		Unit:   "%",
		Means:  "filling on dough, by weight",
		Source: srcAdd,
		formula: func(s *parts) Value {
			if d := s.KindMass(formula.Dough); d.Hi > 0 {
				return figure.ValueOf(s.Spread().Div(d).Scale(100))
			}
			return figure.Absent("a dough", s.Formula.Place)
		},
	},
	{
		Name: "closed_in_pct",
		Unit: "%",
		Means: "filling that is closed in before the heat, on the dough with its roll-in fat; " +
			"not what lies on top or goes in when it is baked",
		Source:  srcAdd,
		formula: (*parts).ClosedInRatio,
	},
	{
		Name: "closes_in_nuts",
		Type: YesNo,
		Means: "nuts and seeds are a third or more of the filling that is closed in: such a " +
			"paste is spread as heavy as the dough",
		Source:  srcAdd + "; a third is a judgement",
		formula: closesInNuts,
	},
	{
		Name:    "unspread_fillings",
		Type:    List,
		Means:   "fillings that a step spreads and that have no amount at all",
		Source:  srcGiven,
		formula: (*parts).Unspread,
	},
	{
		Name:   "unspread_filling_count",
		Means:  "how many fillings a step spreads that have no amount at all",
		Source: srcGiven,
		formula: func(s *parts) Value {
			return figure.ValueOf(figure.Point(float64(len(s.Unspread().Words))))
		},
	},
	{
		Name:    "hours",
		main:    true,
		Unit:    "h",
		Means:   "from the first step to the last, parts made side by side",
		Source:  srcGiven,
		formula: (*parts).Hours,
	},
	{
		Name:    "hands_on_h",
		main:    true,
		Unit:    "h",
		Means:   "time with hands in it, as far as steps give a time",
		Source:  srcGiven,
		formula: (*parts).HandsOn,
	},
	{
		Name:   "keep_days_asked",
		Unit:   "days",
		Means:  "how long it shall keep",
		Source: srcGiven,
		formula: func(s *parts) Value {
			v := makeup.Given(s.Formula.Keep, "keep = \"3 day\"", s.Formula.Place)
			if !v.Absent {
				v.Lo, v.Hi, v.Mid = v.Lo/1440, v.Hi/1440, v.Mid/1440
			}
			return v
		},
	},
	{
		Name: "mould_free_days",
		main: true,
		Unit: "days",
		Means: "days without mould in a clean wrap: labels and keeping advice, " +
			"not a safety figure",
		Source:  mould.Model.Source,
		Error:   mould.Model.Error,
		Misses:  mould.Model.Misses,
		Settle:  "keep a loaf wrapped and look each day",
		formula: (*parts).MouldFree,
	},
	{
		Name:  "warm_after_bake_h",
		Label: "warm hours after the bake",
		Unit:  "h",
		Means: "longest that a filling or topping which needs control stands after the bake in " +
			"surroundings neither cold nor hot",
		Source:  srcGiven + "; " + srcControl,
		formula: (*parts).WarmAfterBake,
	},
	{
		Name:  "warm_dry_filling_h",
		Label: "warm hours after the bake",
		Unit:  "h",
		Means: "the same, of what that leaves out: fillings of nuts, seeds, sugar or fat with " +
			"little water that were baked in",
		Source:  srcGiven + "; " + srcControl,
		formula: (*parts).WarmDryFilling,
	},
	{
		Name:  "warm_custard_after_bake_h",
		Label: "warm hours after the bake",
		Unit:  "h",
		Means: "the same, of what is cooked with egg or milk and goes on after the bake, and " +
			"of meat and fish wherever they are",
		Source:  srcGiven + "; " + srcControl,
		formula: (*parts).WarmCustardAfterBake,
	},
	{
		Name:    "needs_cold",
		main:    true,
		Type:    YesNo,
		Means:   "some part of it needs time and temperature control",
		Source:  srcControl,
		formula: (*parts).NeedsCold,
	},
	{
		Name:    "alcohol_after_bake",
		Type:    YesNo,
		Means:   "a spirit goes on after the bake",
		Source:  srcGiven,
		formula: (*parts).AlcoholLast,
	},
	{
		Name:    "allergens",
		Type:    List,
		Means:   "allergens in any part, by the names of both jurisdictions",
		Source:  srcLaws,
		formula: func(s *parts) Value { return s.Allergens(makeup.BothLaws) },
	},
	{
		Name:    "allergens_us",
		Type:    List,
		Means:   "allergens in any part, of the nine named in the US",
		Source:  srcLaws,
		formula: func(s *parts) Value { return s.Allergens(makeup.USLaw) },
	},
	{
		Name:    "allergens_eu",
		Type:    List,
		Means:   "allergens in any part, of the fourteen named in the EU and UK",
		Source:  srcLaws,
		formula: func(s *parts) Value { return s.Allergens(makeup.EULaw) },
	},
	{
		Name: "allergens_brief",
		main: true,
		Type: List,
		Means: "allergens in any part of both jurisdictions, each in a short word; with a " +
			"question mark where the label decides",
		Source:  srcLaws,
		formula: (*parts).AllergensBrief,
	},
	{
		Name:    "allergens_to_check",
		main:    true,
		Type:    List,
		Means:   "allergens that the ingredients often hold: the labels decide",
		Source:  srcLaws,
		formula: func(s *parts) Value { return s.Allergens(makeup.OnLabel) },
	},
	{
		Name:    "cost",
		main:    true,
		Unit:    "money",
		Means:   "cost of all ingredients, where all have a price",
		Source:  "prices of the house file",
		formula: (*parts).Cost,
	},
}

var kitchenFacts = []Fact{
	{
		Name:    "room_c",
		Unit:    "C",
		Means:   "temperature of the room",
		Source:  "house file, or the default 22 C",
		kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Room) },
	},
	{
		Name:    "fridge_c",
		Unit:    "C",
		Means:   "temperature inside the fridge",
		Source:  "house file, or the default 4 C",
		kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Fridge) },
	},
	{
		Name:    "freezer_c",
		Unit:    "C",
		Means:   "temperature inside the freezer",
		Source:  "house file, or the default -18 C",
		kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Freezer) },
	},
	{
		Name:    "scale_g",
		Unit:    "g",
		Means:   "smallest step of the scale",
		Source:  "house file, or the default 1 g",
		kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Scale) },
	},
	{
		Name:    "bowl_g",
		Unit:    "g",
		Means:   "most dough that the mixer takes",
		Source:  "house file, or the default 9 kg",
		kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Bowl) },
	},
	{
		Name:    "bench_length_cm",
		Unit:    "cm",
		Means:   "length of the bench",
		Source:  "house file, or the default 120 cm",
		kitchen: func(k *kitchen.Kitchen) Value { return centimetres(k.BenchLength) },
	},
	{
		Name:    "bench_width_cm",
		Unit:    "cm",
		Means:   "width of the bench",
		Source:  "house file, or the default 60 cm",
		kitchen: func(k *kitchen.Kitchen) Value { return centimetres(k.BenchWidth) },
	},
	{
		Name:    "altitude_m",
		Unit:    "m",
		Means:   "height above the sea",
		Source:  "house file, or the default 0 m",
		kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Altitude) },
	},
	lawFact("cold_hold_c", "C", "warmest that cold food is held at"),
	lawFact("hot_hold_c", "C", "coldest that hot food is held at"),
	lawFact("cool_from_c", "C", "the clock of cooling starts as the core falls through this"),
	lawFact(
		"cool_first_c",
		"C",
		"what the core must have come down to in the first stage of cooling",
	),
	lawFact("cool_end_c", "C", "what the core must have come down to at the end of cooling"),
	lawFact("cool_first_h", "h", "most time for the first stage of cooling"),
	lawFact("cool_total_h", "h", "most time for all of cooling, the first stage included"),
	lawFact(
		"ambient_made_h",
		"h",
		"most time to get cold for what is made of ingredients at room warmth",
	),
	lawFact(
		"cold_out_h",
		"h",
		"most time that cold food stands out of the cold before it is eaten or thrown away",
	),
	lawFact(
		"hot_out_h",
		"h",
		"most time that hot food stands out of the heat before it is eaten or thrown away",
	),
	lawFact(
		"keep_cold_days",
		"days",
		"most days that ready food is kept cold, the day it was made being the first",
	),
	lawFact("thaw_water_c", "C", "warmest running water to thaw in"),
	{
		Name:    "code_note",
		Type:    Text,
		Means:   "whose limits for cold, heat and time the kitchen works by",
		Source:  srcLaw,
		kitchen: func(k *kitchen.Kitchen) Value { return figure.Text(k.CodeNote()) },
	},
}

// lawFact declares a figure of the kitchen's law, under its name in
// package kitchen.
func lawFact(name, unit, means string) Fact {
	return Fact{
		Name:   name,
		Unit:   unit,
		Means:  means,
		Source: srcLaw + ": " + kitchen.LawSources(name),
		kitchen: func(k *kitchen.Kitchen) Value {
			l, ok := k.Figure(name)
			if !ok {
				return figure.Absent("a figure in the code", k.CodeAt)
			}
			v := figure.ValueOf(figure.Point(l.Value))
			v.Origin = figure.AsGiven
			return v
		},
	}
}

func fixed(g reading.Given) Value {
	v := figure.ValueOf(g.Interval)
	v.Origin = figure.AsGiven
	return v
}

func centimetres(g reading.Given) Value {
	v := figure.ValueOf(g.Interval.Scale(0.1))
	v.Origin = figure.AsGiven
	return v
}
