package read

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/formula/ingredients"
	"forebake/engine/formula/refusal"
	"forebake/engine/formula/steps"
	"forebake/engine/formula/values"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/unread"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// joinParts looks up the parts that ingredients and steps name.
func (rd *reader) joinParts() {
	f := rd.Formula
	for _, p := range f.Parts {
		for _, in := range p.Ingredients {
			name, isPart := ingredients.PartName(in.Name)
			// an ingredient of the larder: no part is spooned
			spooned := in.Amount.Set && in.Amount.Kind != quantity.Mass
			if !isPart && in.Item != nil && (spooned || !rd.isIdle(f.PartNamed(in.Name), p)) {
				continue
			}
			if !isPart && in.Item != nil {
				in.Item = nil
				rd.Assumed(in.Place, fmt.Sprintf(
					"%q is the part of that name, and not what the larder knows by it", in.Name))
			}
			if !isPart {
				name = in.Name
			}
			in.Of = f.PartNamed(name)
			switch {
			case !isPart && (in.Of == nil || in.Of == p):
				in.Of = nil
				rd.noIngredient(in)
				continue
			case in.Of == nil:
				// "the" may also stand before a plain larder name: say so rather than guess.
				if _, known := rd.Opts.Larder.Find(name); known {
					rd.Fault(in.Place,
						"no part is named %q; for the ingredient write %q without \"the\"", name,
						name)
				} else {
					rd.Fault(in.Place, "%s",
						reading.UnknownText("part", name, "this formula", f.PartNames()))
				}
				continue
			}
			in.Of.Taken = append(in.Of.Taken, in.Place)
			if in.Amount.Set && in.Amount.Kind != quantity.Mass {
				rd.Fault(in.Amount.Place,
					"%q is another part: write \"all\" or a weight, such as \"200 g\"", in.Name)
			}
			rd.checkPartOptions(in)
		}
	}
	for _, u := range rd.Uses {
		name := u.Name
		if cut, is := ingredients.PartName(name); is {
			name = cut
		}
		p := f.PartNamed(name)
		switch bare := u.Step.Verb.Own.Bare; {
		case bare && (p == nil || p == u.Step.Part):
			rd.noPart(u)
			continue
		case bare && u.Step.IsAfterHeat():
			u.Step.Verb = formula.StepNamed("top").Afterwards
		case bare:
			u.Step.Verb = formula.StepNamed("top").Verb
		case p == nil:
			rd.unknownUse(u, name)
			continue
		case p == u.Step.Part:
			rd.Fault(u.Place, "%s %q cannot %s itself", p.Kind, p.Name, u.Step.Verb.Name)
			continue
		}
		u.Step.Uses = p
		if u.Step.Verb == formula.BrushVerb && !u.Step.IsAfterHeat() && u.Step.IsBeforeHeat() {
			u.Step.Verb = formula.StepNamed("top").Verb // brushed on before the bake, it is a wash
		}
		rd.pipedOn(u)
		p.Taken = append(p.Taken, u.Place)
	}
	rd.joinWiths()
}

// isIdle reports whether no step and no "the" names a part, so that another part's
// ingredient of the same name means it.
func (rd *reader) isIdle(p, in *formula.Part) bool {
	if p == nil || p == in || p.Kind == formula.Dough {
		return false
	}
	named := func(u steps.Use) bool {
		return formula.SameName(strings.TrimPrefix(u.Name, "the "), p.Name)
	}
	the := func(i *formula.Ingredient) bool { return formula.SameName(i.Name, "the "+p.Name) }
	return !slices.ContainsFunc(rd.Uses, named) &&
		!slices.ContainsFunc(rd.Formula.Parts, func(q *formula.Part) bool {
			return slices.ContainsFunc(q.Ingredients, the)
		})
}

// joinWiths finds the ingredients that steps take, those that take the rest at last.
func (rd *reader) joinWiths() {
	type choice struct {
		step  *formula.Step
		names []string
	}
	var rests []choice
	for _, u := range rd.Withs {
		c, why := said.Which(u.Name, rd.Names(u.Step))
		if why != "" && rd.saysNothing(u) {
			rd.NotRead(u.Place, "with "+u.Name)
			continue
		}
		if why != "" {
			rd.Fault(u.Place, "%s: with: %s", u.Step.Verb.Name, why)
		}
		if c.Rest {
			rests = append(rests, choice{u.Step, c.Names})
			continue
		}
		for _, name := range c.Names {
			u.Step.With = append(u.Step.With, ingredients.Named(u.Step.Part, name))
		}
		rd.holdBack(u, c)
	}
	for _, p := range rd.Formula.Parts {
		defer rd.leaveForLater(p)
	}
	for _, rest := range rests {
		taken := map[*formula.Ingredient]bool{}
		for _, s := range rest.step.Part.Steps {
			for _, in := range s.With {
				taken[in] = true
			}
		}
		for _, name := range rest.names {
			if in := ingredients.Named(rest.step.Part, name); !taken[in] {
				rest.step.With = append(rest.step.With, in)
			}
		}
	}
}

// saysNothing reports whether words for what a step takes name no food and nothing raw, and are no
// slip of an ingredient of its part: nothing that is reckoned hangs on them. One word is asked.
func (rd *reader) saysNothing(u steps.Use) bool {
	l := rd.Opts.Larder
	if unread.Food(l, u.Name) != "" || larder.Grave(u.Name) != "" || !said.NoFigure(u.Name) ||
		!strings.Contains(strings.TrimSpace(u.Name), " ") {
		return false
	}
	return !slices.ContainsFunc(rd.Names(u.Step), func(name string) bool {
		return len(spelling.Nearest(u.Name, []string{name}, 1)) > 0
	})
}

// holdBack keeps what a mix leaves of an ingredient, "all but a quarter of the water", as its
// reserve, and tells it; a share that is no number goes in.
func (rd *reader) holdBack(u steps.Use, c said.Chosen) {
	if c.Of == "" {
		return
	}
	in := ingredients.Named(u.Step.Part, c.Of)
	if c.Share == 0 || in.Reserve != nil {
		rd.Assumed(u.Place, fmt.Sprintf("%q says no share of %s: all of it is read as going in "+
			"here", u.Name, c.Of))
		return
	}
	in.Reserve, in.HeldAll, in.HeldPart = &formula.Given{Place: u.Place, Set: true}, true, c.Share
	in.Reserve.Text, in.Reserve.Kind = fmt.Sprintf("%.3g %% of it", 100*c.Share), quantity.Percent
	rd.Assumed(u.Place, fmt.Sprintf("%q is read as reserve of %s, %s: it counts in the whole, "+
		"and what goes in later has no step of its own", u.Name, c.Of, in.Reserve.Text))
}

// takeParts takes in the parts that mixes name by themselves, once all parts are read.
func (rd *reader) takeParts() {
	rd.Withs = slices.DeleteFunc(rd.Withs, func(u steps.Use) bool {
		before := len(rd.Problems)
		return rd.takesPart(u) && len(rd.Problems) > before
	})
}

// takesPart reads a part that a mix names and that nothing else uses, { mix = "2 min", with =
// "soaked fruit" }, as all of it among the ingredients. It reports whether words name a part.
func (rd *reader) takesPart(u steps.Use) bool {
	p, own := rd.Formula.PartNamed(strings.TrimPrefix(u.Name, "the ")), u.Step.Part
	if _, why := said.Which(u.Name, rd.Names(u.Step)); why == "" || p == nil || p == own ||
		p.Name == "" || !u.Step.Verb.Joins() {
		return false
	}
	line := fmt.Sprintf("%q = \"all\"", "the "+p.Name)
	if !rd.isIdle(p, own) {
		rd.Problems = append(rd.Problems, source.Problem{Place: u.Place,
			Text: fmt.Sprintf("%s: with: %q is a part that another step uses too; write how much "+
				"of it goes in here among the ingredients of %q", u.Step.Verb.Name, p.Name,
				own.Name),
			Paste: line})
		return true
	}
	in := &formula.Ingredient{Part: own, Name: "the " + p.Name, Place: u.Place, Of: p}
	in.Amount.All, in.Amount.Place = true, u.Place
	own.Ingredients = append(own.Ingredients, in)
	rd.Assumed(u.Place, fmt.Sprintf("%q is a part: it is read as %s among the ingredients of %q",
		u.Name, line, own.Name))
	return true
}

// noPart reports words that name an allergen and no part.
func (rd *reader) noPart(u steps.Use) {
	words := u.Name
	if first, rest, more := strings.Cut(words, " "); more && formula.StepNamed(first).Verb != nil {
		words = rest // "sprinkle with sesame seeds": the sprinkles are no ingredient
	}
	if name := rd.Opts.Larder.AllergenIn(words); name != "" {
		rd.Fault(u.Place, "%s: the allergens of %q are not told from here; write it in a part, "+
			"topping \"seeds\" { ingredients = { %q = \"?\" } }, and put that on: "+
			"{ wash = \"seeds\" }",
			u.Step.Verb.Name, name, name)
	}
}

// noIngredient reports a name that is neither an ingredient nor another part.
func (rd *reader) noIngredient(in *formula.Ingredient) {
	own := in.Amount.All && in.Part.Formula.PartNamed(in.Name) == in.Part
	if _, _, known := rd.Find(in); known || own {
		rd.Fault(in.Amount.Place, "\"%s\": \"all\" is for another part; write an amount: \"100 g\"",
			in.Name)
		return
	}
	if it, ok := rd.unlisted(in); ok && !in.Amount.All { // which is of a part
		in.Item = it
		rd.Assumed(in.Place, refusal.Unlisted(rd.Opts.Larder, it))
		return
	}
	rd.Problems = append(rd.Problems, refusal.Unknown(rd.Opts.Larder, in.Name, in.Place,
		in.Amount.Given))
}

// unlisted is the item of a name that nothing here is like: no part has nearly that name, and
// another line of it is the same.
func (rd *reader) unlisted(in *formula.Ingredient) (*larder.Item, bool) {
	for _, p := range rd.Formula.Parts {
		if spelling.IsSlip(in.Name, p.Name) {
			return nil, false
		}
		for _, other := range p.Ingredients {
			if other != in && other.Item != nil && formula.SameName(other.Name, in.Name) {
				return other.Item, true
			}
		}
	}
	return rd.Opts.Larder.Unlisted(in.Name)
}

// checkPartOptions refuses ingredient options without meaning for a part.
func (rd *reader) checkPartOptions(in *formula.Ingredient) {
	for _, o := range formula.IngredientOptions {
		if o.Item && o.Text(in) != "" {
			names := ingredients.OptionNames(func(o *formula.IngredientOption) bool {
				return o.Item
			})
			last := len(names) - 1
			rd.Fault(in.Place, "%q is another part: %s and %s belong to its own ingredients",
				in.Name, strings.Join(names[:last], ", "), names[last])
			return
		}
	}
}

// order sorts the parts so that each comes after those it takes in. It is false,
// with a problem that names them, where parts form a circle.
func (rd *reader) order() bool {
	var closes source.Place // of what closes a circle
	f := rd.Formula
	order, circle := values.Sorted(f.Parts, func(p *formula.Part, visit func(*formula.Part) bool) {
		for _, in := range p.Ingredients {
			if in.Of != nil && !visit(in.Of) {
				closes = cmp.Or(closes, in.Place)
				return
			}
		}
		for _, s := range p.Steps {
			if s.Uses != nil && !visit(s.Uses) {
				closes = cmp.Or(closes, s.Place)
				return
			}
		}
	})
	if f.Order = order; circle == nil {
		return true
	}
	names := make([]string, len(circle))
	for i, p := range circle {
		names[i] = fmt.Sprintf("%q", p.Name)
	}
	rd.Fault(closes, "parts go round in a circle: %s takes %s; take one of them out",
		strings.Join(names, " takes "), names[0])
	return false
}

// weigh turns a part's amounts into grams and sums its flour, after the parts it takes.
func (rd *reader) weigh(p *formula.Part) {
	flour := formula.Mass{}
	for _, in := range p.Ingredients {
		if in.Item == nil && in.Of == nil {
			return // an unknown ingredient, already reported
		}
		if a := in.Amount; !a.Set && !a.Open && !a.All || in.Of != nil && in.Of.MassG.Hi == 0 {
			return // reported already: an amount that could not be read, here or in a part it takes
		}
		in.Grams = rd.grams(in, in.Amount)
		if in.HeldAll {
			in.Held = in.HeldBack()
		} else if in.Reserve != nil {
			in.Held = rd.grams(in, formula.Amount{Given: *in.Reserve})
		}
		if share := in.FlourIn(); share != (formula.Interval{}) {
			flour = flour.Add(in.Grams.Times(share))
		}
	}
	if flour.PerFlour.Hi >= 1 && rd.flourOfMakes(p) {
		flour = formula.Mass{FixedG: p.FlourG}
	}
	if flour.PerFlour.Hi >= 1 {
		at := p.Place
		for _, in := range p.Ingredients {
			if in.Amount.Set && in.Amount.Kind == quantity.Percent &&
				in.FlourIn() != (formula.Interval{}) {
				at = in.Amount.Place
			}
		}
		rd.Fault(at,
			"the flours of %q are all in percent of themselves; write one of them in grams", p.Name)
		return
	}
	// Flours in percent are of the total flour F too: F = fixed + perFlour F.
	p.FlourG = flour.FixedG.Div(figure.Point(1).Sub(flour.PerFlour))
	if p.FlourG.Hi == 0 {
		for _, in := range p.Ingredients {
			if in.Grams.PerFlour != (formula.Interval{}) {
				rd.Fault(in.Amount.Place,
					"%q is in percent of the flour, and %s %q holds none; write grams", in.Name,
					p.Kind, p.Name)
			}
		}
	}
	mass := formula.Mass{}
	for _, in := range p.Ingredients {
		rd.checkReserve(in)
		mass = mass.Add(in.Grams)
	}
	p.MassG = mass.Grams(p.FlourG)
	for _, in := range p.Ingredients {
		if in.Of != nil && in.Amount.Set && in.Amount.Lo > in.Of.MassG.Hi*1.000001 {
			rd.Fault(in.Amount.Place,
				"%s of %q is asked for, and only %s is made; write \"all\" or make more",
				quantity.FormatInterval(in.Amount.Interval, "g"), in.Of.Name,
				quantity.FormatInterval(in.Of.MassG, "g"))
		}
	}
}

// grams turns an amount into a mass by the larder's density or weight of one piece.
func (rd *reader) grams(in *formula.Ingredient, a formula.Amount) formula.Mass {
	switch {
	case in.Apart:
		return formula.Mass{}
	case a.Open && in.Usual != (formula.Interval{}):
		return formula.Mass{FixedG: in.Usual}
	case a.Open:
		return formula.Mass{FixedG: figure.Positive()}
	case a.All && in.Of != nil:
		return formula.Mass{FixedG: in.Of.MassG}
	case !a.Set:
		return formula.Mass{}
	}
	switch a.Kind {
	case quantity.Mass:
		return formula.Mass{FixedG: a.Interval}
	case quantity.Percent:
		rd.Within(a.Given, 0, 1000,
			fmt.Sprintf("%q: more than 1000 %% of the flour cannot be meant", in.Name))
		return formula.Mass{PerFlour: a.Interval.Scale(0.01)}
	}
	if in.Item == nil {
		return formula.Mass{}
	}
	per, unit, key := in.Item.Density, "volume", "density = \"1.0 g/ml\""
	span := in.Item.PerMl
	if a.Kind == quantity.Count {
		per, unit, key = in.Item.Piece, "piece", "piece = \"50 g\""
		span = in.Item.PerPiece
	}
	if span != (formula.Interval{}) {
		return formula.Mass{FixedG: a.Interval.Mul(span)}
	}
	if per == 0 {
		rd.Fault(a.Place,
			"%q: the larder does not know what a %s of it weighs; "+
				"write grams, or give %s in an ingredient block of house.hcl",
			in.Name, unit, key)
		return formula.Mass{}
	}
	return formula.Mass{FixedG: a.Interval.Scale(per)}
}

// checkReserve refuses a reserve larger than the amount itself.
func (rd *reader) checkReserve(in *formula.Ingredient) {
	if in.Reserve == nil || in.HeldAll {
		return
	}
	held, amount, unit := in.Held.Grams(in.Part.FlourG), in.Grams.Grams(in.Part.FlourG), "g"
	if in.Amount.Set && in.Amount.Kind == in.Reserve.Kind {
		held, amount, unit = in.Reserve.Interval, in.Amount.Interval, in.Amount.Kind.Base()
	}
	if held.Lo > amount.Hi*1.000001 {
		rd.Fault(in.Reserve.Place,
			"%q: the reserve, %s, is more than the amount, %s; hold back less",
			in.Name, quantity.FormatInterval(held, unit), quantity.FormatInterval(amount, unit))
	}
}
