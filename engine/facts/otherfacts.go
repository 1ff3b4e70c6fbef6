package facts

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/science/mould"
	"forebake/engine/science/wateractivity"
)

var ingredientFacts = []Fact{
	{Name: "name", Type: Text, Means: "its name as written", Source: srcGiven, ingredient: func(_ *Sheet, in *formula.Ingredient) Value { return text(in.Name) }},
	{Name: "class", Type: Text, Means: "flour, sugar, fat, egg, dairy, liquid, salt, yeast, nut, fruit, spice ...; \"part\" for another part", Source: "larder", ingredient: func(_ *Sheet, in *formula.Ingredient) Value {
		if in.Item == nil {
			return text("part")
		}
		return text(string(in.Item.Class))
	}},
	{Name: "amount_g", Unit: "g", Means: "its weight; spoons and cups by the larder's density", Source: srcAdd, ingredient: func(s *Sheet, in *formula.Ingredient) Value { return num(s.amount(in)) }},
	{Name: "pct", Unit: "%", Means: "its weight on the part's flour", Source: srcPct, ingredient: func(s *Sheet, in *formula.Ingredient) Value {
		p := s.part(in.Part)
		if p.flour().Hi == 0 {
			return p.noFlour()
		}
		m := s.mass(in)
		return num(m.OverFlour(p.flour()).Scale(100))
	}},
	{Name: "is_open", Type: YesNo, Means: "its amount is still \"?\"", Source: srcGiven, ingredient: func(_ *Sheet, in *formula.Ingredient) Value { return yes(in.Amount.Open) }},
	{Name: "is_weighed", Type: YesNo, Means: "its amount is a weight or a percentage, so it goes on the scale", Source: srcGiven, ingredient: func(_ *Sheet, in *formula.Ingredient) Value {
		if in.Amount.Open {
			return maybe("the amount of \""+in.Name+"\"", in.Place)
		}
		return yes(in.Amount.Set && (in.Amount.Kind == quantity.Mass || in.Amount.Kind == quantity.Percent))
	}},
	{Name: "weighing_error_pct", Unit: "%", Means: "half the step of the scale, on the amount", Source: "worst case of one reading, half the resolution", ingredient: func(s *Sheet, in *formula.Ingredient) Value {
		return num(s.Kitchen.Scale.Interval.Scale(50).Div(s.amount(in)))
	}},
	{Name: "by_volume", Type: YesNo, Means: "given by spoon, cup or jug", Source: srcGiven, ingredient: func(_ *Sheet, in *formula.Ingredient) Value {
		if in.Amount.Open {
			return maybe("the amount of \""+in.Name+"\"", in.Place)
		}
		return yes(in.Amount.ByVolume())
	}},
	{Name: "is_solid", Type: YesNo, Means: "a solid or a powder, which a spoon measures badly", Source: "larder", ingredient: func(_ *Sheet, in *formula.Ingredient) Value { return isA(in, larder.Solid) }},
	{Name: "spoon_spread_pct", Unit: "%", Means: "how far a spoon or cup of it moves with packing", Source: "common practice", ingredient: func(_ *Sheet, in *formula.Ingredient) Value {
		if in.Item == nil {
			return num(Interval{})
		}
		return num(figure.Point(in.Item.SpoonSpread))
	}},
	{Name: "reserve_g", Unit: "g", Means: "held back for later", Source: srcGiven, ingredient: func(s *Sheet, in *formula.Ingredient) Value {
		return num(in.Held.Grams(s.part(in.Part).flour()))
	}},
	{Name: "reserve_used_g", Unit: "g", Means: "of what was held back, used by a step that names it (with = ...)", Source: srcGiven, ingredient: func(s *Sheet, in *formula.Ingredient) Value {
		for _, step := range in.Part.Steps {
			for _, with := range step.With {
				if with == in {
					return num(in.Held.Grams(s.part(in.Part).flour()))
				}
			}
		}
		return num(Interval{})
	}},
	{Name: "is_raw", Type: YesNo, Means: "goes in raw: not named as cooked, baked, canned or dried, and no step cooks it", Source: srcGiven, ingredient: func(s *Sheet, in *formula.Ingredient) Value {
		switch in.Form {
		case "cooked", "baked", "canned", "tinned", "dried", "pasteurised", "boiled", "scalded":
			return yes(false)
		}
		for _, step := range in.Part.Steps {
			if step.Verb.Cooks() && takesIn(step, in) {
				return yes(false)
			}
		}
		return yes(true)
	}},
	{Name: "is_enzyme_fruit", Type: YesNo, Means: "pineapple, papaya, kiwi or fig: raw, its enzyme cuts protein", Source: "larder", ingredient: func(_ *Sheet, in *formula.Ingredient) Value { return isA(in, larder.EnzymeFruit) }},
	{Name: "temp_c", Unit: "C", Means: "its temperature as written", Source: srcGiven, ingredient: func(_ *Sheet, in *formula.Ingredient) Value {
		return given(in.Temp, "temp of \""+in.Name+"\"", in.Place)
	}},
}

func isA(in *formula.Ingredient, t larder.Trait) Value {
	return yes(in.Item != nil && in.Item.Is(t))
}

// amount is an ingredient's mass in grams.
func (s *Sheet) amount(in *formula.Ingredient) Interval {
	return s.mass(in).Grams(s.part(in.Part).flour())
}

var formulaFacts = []Fact{
	{Name: "name", Type: Text, Means: "its name as written", Source: srcGiven, formula: func(s *Sheet) Value { return text(s.Formula.Name) }},
	{Name: "dough_g", Unit: "g", Means: "all doughs, preferments included", Source: srcAdd, formula: func(s *Sheet) Value { return num(s.kindMass(formula.Dough)) }},
	{Name: "filling_g", Unit: "g", Means: "all fillings that a step spreads", Source: srcAdd, formula: func(s *Sheet) Value { return num(s.spread()) }},
	{Name: "finished_g", Unit: "g", Means: "what comes out: dough less 2 to 5 % in the bowl and on the bench, filling, and 8 to 13 % less in the oven", Source: "losses: an ingredient maker's baking compendium 13.5; Gisslen, Professional Cooking; 6 to 10 % for filled rolls is common practice", Error: "the losses' own range", formula: finished},
	{Name: "pieces", Unit: "pieces", Means: "how many are made", Source: srcGiven, formula: func(s *Sheet) Value { return s.pieces() }},
	{Name: "piece_g", Unit: "g", Means: "shaped and unbaked weight of one: as given, else dough and filling over the number", Source: srcAdd, formula: pieceGrams},
	{Name: "piece_asked_g", Unit: "g", Means: "weight of one as the formula asks for it (makes = \"24 pieces of 75 g\", or divide = \"75 g\")", Source: srcGiven, formula: func(s *Sheet) Value { return s.pieceAsked() }},
	{Name: "makes_gap_pct", Unit: "%", Means: "dough (and filling) beyond pieces times their weight, after 0 to 5 % lost in the bowl and on the bench; below zero it is lacking", Source: "mixing and scaling loss up to 5 %: an ingredient maker's baking compendium 13.5", formula: makesGap},
	{Name: "filling_ratio_pct", Unit: "%", Means: "filling on dough, by weight", Source: srcAdd, formula: func(s *Sheet) Value {
		if d := s.kindMass(formula.Dough); d.Hi > 0 {
			return num(s.spread().Div(d).Scale(100))
		}
		return absent("a dough", s.Formula.Place)
	}},
	{Name: "unspread_fillings", Type: List, Means: "fillings that a step spreads and that have no amount at all", Source: srcGiven, formula: unspread},
	{Name: "unspread_filling_count", Means: "how many fillings a step spreads that have no amount at all", Source: srcGiven, formula: func(s *Sheet) Value {
		return num(figure.Point(float64(len(unspread(s).Words))))
	}},
	{Name: "hours", Unit: "h", Means: "from the first step to the last, parts made side by side", Source: srcGiven, formula: func(s *Sheet) Value { return s.timeline() }},
	{Name: "hands_on_h", Unit: "h", Means: "time with hands in it, as far as steps give a time", Source: srcGiven, formula: handsOn},
	{Name: "keep_days_asked", Unit: "days", Means: "how long it shall keep", Source: srcGiven, formula: func(s *Sheet) Value {
		v := given(s.Formula.Keep, "keep = \"3 day\"", s.Formula.Place)
		if !v.Absent {
			v.Lo, v.Hi, v.Mid = v.Lo/1440, v.Hi/1440, v.Mid/1440
		}
		return v
	}},
	{Name: "mould_free_days", Unit: "days", Means: "days without mould in a clean wrap at room warmth; crumb is moister than the relation answers for, so it gets the handbook's range", Source: "Cauvain & Seiler, FMBRA Report 150 (1992), 74 to 90 % humidity; plain bread 3 to 6 days (memory)", Error: "the range itself", Settle: "keep a loaf wrapped and look each day", formula: mouldFree},
	{Name: "warm_after_bake_h", Label: "warm hours after the bake", Unit: "h", Means: "longest that a filling or topping which needs control stands after the bake in surroundings neither cold nor hot", Source: srcGiven + "; " + srcControl, formula: warmAfterBake},
	{Name: "alcohol_after_bake", Type: YesNo, Means: "a spirit goes on after the bake", Source: srcGiven, formula: alcoholLast},
	{Name: "allergens", Type: List, Means: "allergens in any part, by the names of both jurisdictions", Source: srcLaws, formula: func(s *Sheet) Value { return s.allergens(bothLaws) }},
	{Name: "allergens_us", Type: List, Means: "allergens in any part, of the nine named in the US", Source: srcLaws, formula: func(s *Sheet) Value { return s.allergens(usLaw) }},
	{Name: "allergens_eu", Type: List, Means: "allergens in any part, of the fourteen named in the EU and UK", Source: srcLaws, formula: func(s *Sheet) Value { return s.allergens(euLaw) }},
	{Name: "allergens_brief", Type: List, Means: "allergens in any part of both jurisdictions, each in a short word; with a question mark where the label decides", Source: srcLaws, formula: (*Sheet).allergensBrief},
	{Name: "allergens_to_check", Type: List, Means: "allergens that the ingredients often hold: the labels decide", Source: srcLaws, formula: func(s *Sheet) Value { return s.allergens(onLabel) }},
	{Name: "cost", Unit: "money", Means: "cost of all ingredients, where all have a price", Source: "prices of the house file", formula: func(s *Sheet) Value {
		sum := Interval{}
		for i := range s.parts {
			if p := &s.parts[i]; len(p.takers()) == 0 {
				v := p.cost()
				if v.Absent {
					return v
				}
				sum = sum.Add(v.Interval())
			}
		}
		return num(sum)
	}},
}

// kindMass adds up the parts of a kind that no other part takes in.
func (s *Sheet) kindMass(k formula.Kind) Interval {
	sum := Interval{}
	for i := range s.parts {
		if p := &s.parts[i]; p.Kind == k && len(p.takers()) == 0 {
			sum = sum.Add(p.grams(mass))
		}
	}
	return sum
}

// spread adds up the parts that fill steps use, each once.
func (s *Sheet) spread() Interval {
	sum := Interval{}
	for i := range s.parts {
		if p := &s.parts[i]; s.fillsWith(p.Part) {
			sum = sum.Add(p.grams(mass))
		}
	}
	return sum
}

func (s *Sheet) fillsWith(filling *formula.Part) bool {
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			if step.Uses == filling && step.Verb.Fills() {
				return true
			}
		}
	}
	return false
}

// Losses on the way, as shares (sources at finished_g).
var (
	benchLoss  = figure.Between(0.02, 0.05)
	bakeLoss   = figure.Between(0.08, 0.13)
	filledLoss = figure.Between(0.06, 0.10)
)

func left(loss Interval) Interval { return figure.Point(1).Sub(loss) }

func finished(s *Sheet) Value {
	dough, filling := s.kindMass(formula.Dough), s.spread()
	if dough.Hi == 0 {
		return absent("a dough", s.Formula.Place)
	}
	oven := bakeLoss
	if filling.Hi > 0 {
		oven = filledLoss.Hull(bakeLoss)
	}
	v := num(dough.Mul(left(benchLoss)).Add(filling).Mul(left(oven)))
	v.Origin = Model
	return v
}

func (s *Sheet) pieces() Value {
	if m := s.Formula.Makes; m.Pieces > 0 {
		v := num(figure.Point(m.Pieces))
		v.Origin = AsGiven
		return v
	}
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			switch {
			case step.Pieces != nil:
				return given(*step.Pieces, "", step.Place)
			case step.Verb.Divides() && step.Measure.Kind == quantity.Count:
				return given(step.Measure, "", step.Place)
			}
		}
	}
	return absent("makes = \"24 pieces\"", s.Formula.Place)
}

func (s *Sheet) pieceAsked() Value {
	if m := s.Formula.Makes; m.Each.Set {
		return given(m.Each, "", m.Place)
	}
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			if step.Verb.Divides() && step.Measure.Set && step.Measure.Kind == quantity.Mass {
				return given(step.Measure, "", step.Place)
			}
		}
	}
	return absent("the weight of a piece (makes = \"24 pieces of 75 g\")", s.Formula.Place)
}

func pieceGrams(s *Sheet) Value {
	if v := s.pieceAsked(); !v.Absent {
		return v
	}
	n := s.pieces()
	if n.Absent {
		return n
	}
	return num(s.kindMass(formula.Dough).Add(s.spread()).Div(n.Interval()))
}

// makesGap is 0 where some usual loss makes the pieces come out; beyond that, how far the dough is off. Both ends rise with
// the dough and fall with what is asked.
func makesGap(s *Sheet) Value {
	n, each := s.pieces(), s.pieceAsked()
	asked := Interval{}
	switch {
	case s.Formula.Makes.Total.Set:
		asked = s.Formula.Makes.Total.Interval
	case n.Absent:
		return n
	case each.Absent:
		return each
	default:
		asked = n.Interval().Mul(each.Interval())
	}
	dough, filling := s.kindMass(formula.Dough), Interval{}
	if s.Formula.Makes.Each.Set || s.Formula.Makes.Total.Set {
		filling = s.spread() // the weight asked for is that of the filled piece
	}
	gap := func(dough, filling, asked float64) float64 {
		most := (dough + filling) / asked
		least := (dough*(1-benchLoss.Hi) + filling) / asked
		switch {
		case least > 1:
			return 100 * (least - 1)
		case most < 1:
			return 100 * (most - 1)
		}
		return 0
	}
	return num(figure.Between(gap(dough.Lo, filling.Lo, asked.Hi), gap(dough.Hi, filling.Hi, asked.Lo)))
}

func unspread(s *Sheet) Value {
	var names []string
	for _, p := range s.Formula.Parts {
		if !s.fillsWith(p) {
			continue
		}
		open := true
		for _, in := range p.Ingredients {
			open = open && in.Amount.Open
		}
		if open {
			names = append(names, p.Name)
		}
	}
	return list(names)
}

// timeline is the longest way through the parts: a part starts when all that goes into it is ready, and waits at a fill,
// wash or brush for the part it uses.
func (s *Sheet) timeline() Value {
	ready := make([]Interval, len(s.parts))
	var untimed *formula.Step
	later := func(a, b Interval) Interval { return figure.Between(max(a.Lo, b.Lo), max(a.Hi, b.Hi)) }
	end := Interval{}
	for _, p := range s.Formula.Order {
		t := Interval{}
		for _, in := range p.Ingredients {
			if in.Of != nil {
				t = later(t, ready[in.Of.Serial])
			}
		}
		for _, step := range p.Steps {
			if step.Uses != nil {
				t = later(t, ready[step.Uses.Serial])
			}
			switch {
			case step.Time.Set:
				t = t.Add(step.Time.Interval)
			case step.Verb.NeedsTime():
				untimed = step
				t.Hi = math.Inf(1)
			}
		}
		ready[p.Serial] = t
		end = later(end, t)
	}
	v := num(end.Scale(1.0 / 60))
	if untimed != nil {
		v.Need = &Need{"the time of this " + untimed.Verb.Name, untimed.Place}
	}
	return v
}

// crumbDrop is what starch and protein take off the water activity of crumb (wateractivity.CrumbPolymerDrop).
const crumbDrop = wateractivity.CrumbPolymerDrop

// mouldFree answers by the relation only where the crumb is dry enough for it at both ends of its water activity; what is kept
// cold or frozen is another matter.
func mouldFree(s *Sheet) Value {
	for i := range s.parts {
		p := &s.parts[i]
		if p.Kind != formula.Dough || len(p.takers()) > 0 {
			continue
		}
		for _, step := range p.Steps {
			if step.Verb.Stores() && (step.Where.Cold() || step.At.Set && step.At.Hi < 15) {
				return absent("a storage at room warmth (no relation for the cold)", step.Place)
			}
		}
		aw := waterActivity(p)
		if aw.Absent {
			return aw
		}
		t := max(21, min(27, s.Kitchen.Room.Mid()))
		least, ok1 := mould.FreeDays(100*(aw.Hi-crumbDrop), t)
		most, ok2 := mould.FreeDays(100*(aw.Lo-crumbDrop), t)
		if ok1 && ok2 {
			return Value{Lo: least, Hi: most, Mid: (least + most) / 2, Origin: Model}
		}
		return Value{Lo: mould.CrumbLowDays, Hi: mould.CrumbHighDays, Mid: (mould.CrumbLowDays + mould.CrumbHighDays) / 2, Origin: Model}
	}
	return absent("a dough", s.Formula.Place)
}

func handsOn(s *Sheet) Value {
	sum := Interval{}
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			if !step.Verb.Attended() {
				continue
			}
			if step.Time.Set {
				sum = sum.Add(step.Time.Interval)
			} else {
				sum.Hi = math.Inf(1)
			}
		}
	}
	return num(sum.Scale(1.0 / 60))
}

var kitchenFacts = []Fact{
	{Name: "room_c", Unit: "C", Means: "temperature of the room", Source: "house file, or the default 22 C", kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Room) }},
	{Name: "fridge_c", Unit: "C", Means: "temperature inside the fridge", Source: "house file, or the default 4 C", kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Fridge) }},
	{Name: "freezer_c", Unit: "C", Means: "temperature inside the freezer", Source: "house file, or the default -18 C", kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Freezer) }},
	{Name: "scale_g", Unit: "g", Means: "smallest step of the scale", Source: "house file, or the default 1 g", kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Scale) }},
	{Name: "bowl_g", Unit: "g", Means: "most dough that the mixer takes", Source: "house file, or the default 9 kg", kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Bowl) }},
	{Name: "bench_length_cm", Unit: "cm", Means: "length of the bench", Source: "house file, or the default 120 cm", kitchen: func(k *kitchen.Kitchen) Value { return centimetres(k.BenchLength) }},
	{Name: "bench_width_cm", Unit: "cm", Means: "width of the bench", Source: "house file, or the default 60 cm", kitchen: func(k *kitchen.Kitchen) Value { return centimetres(k.BenchWidth) }},
	{Name: "altitude_m", Unit: "m", Means: "height above the sea", Source: "house file, or the default 0 m", kitchen: func(k *kitchen.Kitchen) Value { return fixed(k.Altitude) }},
	lawFact("cold_hold_c", "C", "warmest that cold food is held at"),
	lawFact("hot_hold_c", "C", "coldest that hot food is held at"),
	lawFact("cool_from_c", "C", "the clock of cooling starts as the core falls through this"),
	lawFact("cool_first_c", "C", "what the core must have come down to in the first stage of cooling"),
	lawFact("cool_end_c", "C", "what the core must have come down to at the end of cooling"),
	lawFact("cool_first_h", "h", "most time for the first stage of cooling"),
	lawFact("cool_total_h", "h", "most time for all of cooling, the first stage included"),
	lawFact("ambient_made_h", "h", "most time to get cold for what is made of ingredients at room warmth"),
	lawFact("cold_out_h", "h", "most time that cold food stands out of the cold before it is eaten or thrown away"),
	lawFact("hot_out_h", "h", "most time that hot food stands out of the heat before it is eaten or thrown away"),
	lawFact("keep_cold_days", "days", "most days that ready food is kept cold, the day it was made being the first"),
	lawFact("thaw_water_c", "C", "warmest running water to thaw in"),
	{Name: "code_note", Type: Text, Means: "whose limits for cold, heat and time the kitchen works by", Source: srcLaw, kitchen: func(k *kitchen.Kitchen) Value { return text(k.CodeNote()) }},
}

const srcLaw = "the code that the house file names, or the strictest of those known"

// lawFact declares a figure of the law that the kitchen works by; package kitchen knows it by the same name.
func lawFact(name, unit, means string) Fact {
	return Fact{Name: name, Unit: unit, Means: means, Source: srcLaw + ": " + kitchen.LawSources(name), kitchen: func(k *kitchen.Kitchen) Value {
		l, ok := k.Figure(name)
		if !ok {
			return absent("a figure in the code", k.CodeAt)
		}
		v := num(figure.Point(l.Value))
		v.Origin = AsGiven
		return v
	}}
}

func fixed(g reading.Given) Value {
	v := num(g.Interval)
	v.Origin = AsGiven
	return v
}

func centimetres(g reading.Given) Value {
	v := num(g.Interval.Scale(0.1))
	v.Origin = AsGiven
	return v
}
