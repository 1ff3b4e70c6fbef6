package formula

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula/refusal"
	"forebake/engine/formula/values"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/source"
)

// joinParts looks up the parts that ingredients and steps name.
func (rd *reader) joinParts() {
	f := rd.formula
	for _, p := range f.Parts {
		for _, in := range p.Ingredients {
			name, isPart := partName(in.Name)
			spooned := in.Amount.Set && in.Amount.Kind != quantity.Mass // of the larder's: no part is spooned
			if !isPart && in.Item != nil && (spooned || !rd.isIdle(f.PartNamed(in.Name), p)) {
				continue
			}
			if !isPart && in.Item != nil {
				in.Item = nil
				rd.assumed(in.Place, fmt.Sprintf(
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
				if _, known := rd.opts.Larder.Find(name); known {
					rd.Fault(in.Place,
						"no part is named %q; for the ingredient write %q without \"the\"", name,
						name)
				} else {
					rd.Fault(in.Place, "%s",
						reading.UnknownText("part", name, "this formula", f.partNames()))
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
	for _, u := range rd.uses {
		name := u.name
		if cut, is := partName(name); is {
			name = cut
		}
		p := f.PartNamed(name)
		switch bare := u.step.Verb.own.bare; {
		case bare && (p == nil || p == u.step.Part):
			rd.noPart(u)
			continue
		case bare && u.step.IsAfterHeat():
			u.step.Verb = stepNamed("top").afterwards
		case bare:
			u.step.Verb = stepNamed("top").verb
		case p == nil:
			rd.unknownUse(u, name)
			continue
		case p == u.step.Part:
			rd.Fault(u.place, "%s %q cannot %s itself", p.Kind, p.Name, u.step.Verb.Name)
			continue
		}
		u.step.Uses = p
		rd.pipedOn(u)
		p.Taken = append(p.Taken, u.place)
	}
	rd.joinWiths()
}

// isIdle reports whether no step and no "the" names a part, so that another part's
// ingredient of the same name means it.
func (rd *reader) isIdle(p, in *Part) bool {
	if p == nil || p == in || p.Kind == Dough {
		return false
	}
	named := func(u use) bool { return sameName(strings.TrimPrefix(u.name, "the "), p.Name) }
	the := func(i *Ingredient) bool { return sameName(i.Name, "the "+p.Name) }
	return !slices.ContainsFunc(rd.uses, named) &&
		!slices.ContainsFunc(rd.formula.Parts, func(q *Part) bool {
			return slices.ContainsFunc(q.Ingredients, the)
		})
}

// names are the names of the ingredients of a step's part.
func (rd *reader) names(s *Step) []string {
	var out []string
	for _, in := range s.Part.Ingredients {
		if !in.Apart {
			out = append(out, in.Name)
		}
	}
	return out
}

// joinWiths finds the ingredients that steps take, those that take the rest at last.
func (rd *reader) joinWiths() {
	type choice struct {
		step  *Step
		names []string
	}
	var rests []choice
	for _, u := range rd.withs {
		c, why := said.Which(u.name, rd.names(u.step))
		if why != "" {
			rd.Fault(u.place, "%s: with: %s", u.step.Verb.Name, why)
		}
		if c.Rest {
			rests = append(rests, choice{u.step, c.Names})
			continue
		}
		for _, name := range c.Names {
			u.step.With = append(u.step.With, ingredientNamed(u.step.Part, name))
		}
		rd.holdBack(u, c)
	}
	for _, p := range rd.formula.Parts {
		defer rd.leaveForLater(p)
	}
	for _, rest := range rests {
		taken := map[*Ingredient]bool{}
		for _, s := range rest.step.Part.Steps {
			for _, in := range s.With {
				taken[in] = true
			}
		}
		for _, name := range rest.names {
			if in := ingredientNamed(rest.step.Part, name); !taken[in] {
				rest.step.With = append(rest.step.With, in)
			}
		}
	}
}

// holdBack keeps what a mix leaves of an ingredient, "all but a quarter of the water", as its reserve,
// and tells it; a share that is no number goes in.
func (rd *reader) holdBack(u use, c said.Chosen) {
	if c.Of == "" {
		return
	}
	in := ingredientNamed(u.step.Part, c.Of)
	if c.Share == 0 || in.Reserve != nil {
		rd.assumed(u.place, fmt.Sprintf("%q says no share of %s: all of it is read as going in here",
			u.name, c.Of))
		return
	}
	in.Reserve, in.heldAll, in.heldPart = &Given{Place: u.place, Set: true}, true, c.Share
	in.Reserve.Text, in.Reserve.Kind = fmt.Sprintf("%.3g %% of it", 100*c.Share), quantity.Percent
	rd.assumed(u.place, fmt.Sprintf("%q is read as reserve of %s, %s: it counts in the whole, and what "+
		"goes in later has no step of its own", u.name, c.Of, in.Reserve.Text))
}

// heldShare is how much of an ingredient is held back, where the reserve is a share of it.
func (in *Ingredient) heldShare() float64 {
	if in.heldPart > 0 {
		return in.heldPart
	}
	return 1
}

// unknownUse reports a step that puts on what is no part, and nothing that the larder knows.
func (rd *reader) unknownUse(u use, name string) {
	rd.Fault(u.place, "%s: %s; write a block for it beside the dough: topping %q { ingredients = { ... } }",
		u.step.Verb.Name, reading.UnknownText("part", name, "this formula", rd.formula.partNames()), name)
}

// noPart reports words that name an allergen and no part.
func (rd *reader) noPart(u use) {
	words := u.name
	if first, rest, more := strings.Cut(words, " "); more && stepNamed(first).verb != nil {
		words = rest // "sprinkle with sesame seeds": the sprinkles are no ingredient
	}
	if name := rd.opts.Larder.AllergenIn(words); name != "" {
		rd.Fault(u.place, "%s: the allergens of %q are not told from here; write it in a part, "+
			"topping \"seeds\" { ingredients = { %q = \"?\" } }, and put that on: "+
			"{ wash = \"seeds\" }",
			u.step.Verb.Name, name, name)
	}
}

// noIngredient reports a name that is neither an ingredient nor another part.
func (rd *reader) noIngredient(in *Ingredient) {
	if _, _, known := rd.find(in); known || in.Part.Formula.PartNamed(in.Name) == in.Part {
		rd.Fault(in.Amount.Place, "\"%s\": \"all\" is for another part; write an amount: \"100 g\"",
			in.Name)
		return
	}
	rd.Problems = append(rd.Problems, refusal.Unknown(rd.opts.Larder, in.Name, in.Place,
		in.Amount.Given))
}

// checkPartOptions refuses ingredient options without meaning for a part.
func (rd *reader) checkPartOptions(in *Ingredient) {
	for _, o := range IngredientOptions {
		if o.item && o.text(in) != "" {
			names := ingredientOptionNames(func(o *IngredientOption) bool { return o.item })
			last := len(names) - 1
			rd.Fault(in.Place, "%q is another part: %s and %s belong to its own ingredients",
				in.Name, strings.Join(names[:last], ", "), names[last])
			return
		}
	}
}

func (f *Formula) partNames() []string {
	var names []string
	for _, p := range f.Parts {
		names = append(names, p.Name)
	}
	return names
}

// order sorts the parts so that each comes after those it takes in. It is false,
// with a problem that names them, where parts form a circle.
func (rd *reader) order() bool {
	var closes source.Place // of what closes a circle
	f := rd.formula
	order, circle := values.Sorted(f.Parts, func(p *Part, visit func(*Part) bool) {
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
func (rd *reader) weigh(p *Part) {
	flour := Mass{}
	for _, in := range p.Ingredients {
		if in.Item == nil && in.Of == nil {
			return // an unknown ingredient, already reported
		}
		if a := in.Amount; !a.Set && !a.Open && !a.All || in.Of != nil && in.Of.MassG.Hi == 0 {
			return // reported already: an amount that could not be read, here or in a part it takes
		}
		in.Grams = rd.grams(in, in.Amount)
		if in.heldAll {
			in.Held = in.Grams.Times(figure.Point(in.heldShare()))
		} else if in.Reserve != nil {
			in.Held = rd.grams(in, Amount{Given: *in.Reserve})
		}
		if share := in.flourShare(); share != (Interval{}) {
			flour = flour.Add(in.Grams.Times(share))
		}
	}
	if flour.PerFlour.Hi >= 1 && rd.flourOfMakes(p) {
		flour = Mass{FixedG: p.FlourG}
	}
	if flour.PerFlour.Hi >= 1 {
		at := p.Place
		for _, in := range p.Ingredients {
			if in.Amount.Set && in.Amount.Kind == quantity.Percent &&
				in.flourShare() != (Interval{}) {
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
			if in.Grams.PerFlour != (Interval{}) {
				rd.Fault(in.Amount.Place,
					"%q is in percent of the flour, and %s %q holds none; write grams", in.Name,
					p.Kind, p.Name)
			}
		}
	}
	mass := Mass{}
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

// sum adds the parts of a formula up anew after an amount was narrowed; it was weighed before.
func (f *Formula) sum() {
	for _, p := range f.Order {
		flour, mass := Mass{}, Mass{}
		for _, in := range p.Ingredients {
			if in.Amount.All && in.Of != nil {
				in.Grams = Mass{FixedG: in.Of.MassG}
			}
			if in.heldAll {
				in.Held = in.Grams.Times(figure.Point(in.heldShare()))
			}
			if share := in.flourShare(); share != (Interval{}) {
				flour = flour.Add(in.Grams.Times(share))
			}
			mass = mass.Add(in.Grams)
		}
		p.FlourG = flour.FixedG.Div(figure.Point(1).Sub(flour.PerFlour))
		p.MassG = mass.Grams(p.FlourG)
	}
}

// flourShare gives the grams of flour in a gram of the ingredient.
func (in *Ingredient) flourShare() Interval {
	if in.Of == nil {
		return in.FlourShare()
	}
	if in.Of.FlourG.Hi == 0 {
		return Interval{}
	}
	return share(in.Of.FlourG, in.Of.MassG)
}

// share divides a part of a mass by the whole, within 0 and 1: plain division of
// ranges does not know that bound.
func share(part, whole Interval) Interval {
	s := part.Div(whole)
	return figure.Between(max(0, min(1, s.Lo)), max(0, min(1, s.Hi)))
}

// grams turns an amount into a mass by the larder's density or weight of one piece.
func (rd *reader) grams(in *Ingredient, a Amount) Mass {
	switch {
	case in.Apart:
		return Mass{}
	case a.Open && in.Usual != (Interval{}):
		return Mass{FixedG: in.Usual}
	case a.Open:
		return Mass{FixedG: figure.Positive()}
	case a.All && in.Of != nil:
		return Mass{FixedG: in.Of.MassG}
	case !a.Set:
		return Mass{}
	}
	switch a.Kind {
	case quantity.Mass:
		return Mass{FixedG: a.Interval}
	case quantity.Percent:
		rd.within(a.Given, 0, 1000,
			fmt.Sprintf("%q: more than 1000 %% of the flour cannot be meant", in.Name))
		return Mass{PerFlour: a.Interval.Scale(0.01)}
	}
	if in.Item == nil {
		return Mass{}
	}
	per, unit, key := in.Item.Density, "volume", "density = \"1.0 g/ml\""
	span := in.Item.PerMl
	if a.Kind == quantity.Count {
		per, unit, key = in.Item.Piece, "piece", "piece = \"50 g\""
		span = in.Item.PerPiece
	}
	if span != (Interval{}) {
		return Mass{FixedG: a.Interval.Mul(span)}
	}
	if per == 0 {
		rd.Fault(a.Place,
			"%q: the larder does not know what a %s of it weighs; "+
				"write grams, or give %s in an ingredient block of house.hcl",
			in.Name, unit, key)
		return Mass{}
	}
	return Mass{FixedG: a.Interval.Scale(per)}
}

// checkReserve refuses a reserve larger than the amount itself.
func (rd *reader) checkReserve(in *Ingredient) {
	if in.Reserve == nil || in.heldAll {
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
