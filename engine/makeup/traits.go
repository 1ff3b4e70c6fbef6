package makeup

import (
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
)

// icingSugar is the least share of dry sugar in an icing (judgement).
const icingSugar = 0.2

// IsIcing reports whether the part is a topping of powdered sugar stirred
// with something wet, without flour, which no step of its own cooks.
// Open amounts leave it open.
func (p *Part) IsIcing() Value {
	flour, water, mass := p.Grams(Flour), p.Grams(Water), p.Grams(Mass)
	if p.Kind != formula.Topping || p.IsCooked() || flour.Lo > 0 || water.Hi == 0 {
		return figure.YesNo(false)
	}
	dry, powder := Interval{}, false
	for _, in := range p.Ingredients {
		if in.Item != nil && in.Item.Class == larder.ClassSugar && in.Item.Water < 5 {
			dry = dry.Add(p.sheet.Mass(in).Grams(p.flourG))
			powder = powder || isPowder(in.Item)
		}
	}
	switch {
	case !powder, dry.Hi == 0, dry.Hi < icingSugar*mass.Lo:
		return figure.YesNo(false)
	case flour.Hi == 0 && water.Lo > 0 && dry.Lo > 0 && dry.Lo >= icingSugar*mass.Hi:
		return figure.YesNo(true)
	}
	return figure.Maybe("all amounts of \""+p.Name+"\"", p.Place)
}

// isPowder reports whether a sugar is ground: starch keeps it from caking, which no sugar in
// grains holds. Grains in hot water are a syrup.
func isPowder(it *larder.Item) bool { return it.Carbohydrate-it.Sugars-it.Fibre > leastStarch }

// leastStarch is the starch of powdered sugar, % (the larder's row has 2, and sugar none).
const leastStarch = 1

// ActiveDry is the first active dry yeast among the ingredients, nil
// for none.
func (p *Part) ActiveDry() *formula.Ingredient {
	for _, in := range p.Ingredients {
		if in.Item != nil && in.Item.YeastKind == "active dry" {
			return in
		}
	}
	return nil
}

// ActiveDrySoaked reports whether a step soaks it.
func (p *Part) ActiveDrySoaked() bool {
	in := p.ActiveDry()
	for _, s := range p.Steps {
		if in != nil && s.Verb.Soaks() && TakesIn(s, in) {
			return true
		}
	}
	return false
}

// TakesIn reports whether a step applies to that ingredient: it names
// it, or names nothing.
func TakesIn(s *formula.Step, in *formula.Ingredient) bool {
	if len(s.With) == 0 {
		return true
	}
	for _, with := range s.With {
		if with == in {
			return true
		}
	}
	return false
}

// Heats reports whether a step's heat reaches all of an ingredient: what a
// later step brings in by name, or holds back until then, is not in yet.
func Heats(s *formula.Step, in *formula.Ingredient) bool {
	named := func(other *formula.Step) bool { return slices.Contains(other.With, in) }
	steps := s.Part.Steps
	later := slices.ContainsFunc(steps[s.Index+1:], named)
	if in.Reserve != nil && !slices.ContainsFunc(steps, named) { // no step says when it goes in
		later = slices.ContainsFunc(steps[s.Index+1:], func(other *formula.Step) bool {
			return other.Verb.Mixes()
		})
	}
	before := in.Reserve == nil && slices.ContainsFunc(steps[:s.Index+1], named)
	return TakesIn(s, in) && (!later || before)
}

// HeatsEach reports whether a step's heat reaches all of its part's
// ingredients of a kind.
func HeatsEach(s *formula.Step, is func(*formula.Ingredient) bool) bool {
	return !slices.ContainsFunc(s.Part.Ingredients, func(in *formula.Ingredient) bool {
		return !Heats(s, in) && is(in)
	})
}

// IsRawMeat reports whether an ingredient is meat or fish, neither
// bought cooked nor cured to be eaten raw.
func IsRawMeat(in *formula.Ingredient) bool { return in.Item != nil && in.Item.CookC() > 0 }

// Has reports whether anything in the part has the trait.
func (p *Part) Has(t larder.Trait) Value {
	p.add()
	return figure.YesNo(p.traits&t != 0)
}

// fineForms are words of an ingredient's as that leave no piece of nut
// to choke on. Others, such as chopped alone, do not: a caution errs to
// the safe side.
var fineForms = []string{"ground", "finely ground", "ground fine", "finely chopped", "chopped fine"}

// WholeNuts looks at each ingredient, since only its entry says that it
// is ground; parts taken in count.
func (p *Part) WholeNuts() Value {
	if p.Has(larder.WholeNut).Lo == 0 {
		return figure.YesNo(false)
	}
	return figure.YesNo(p.Holds(func(in *formula.Ingredient) bool {
		return in.Item.Is(larder.WholeNut) &&
			!slices.Contains(fineForms, strings.ToLower(strings.TrimSpace(in.Form)))
	}))
}

// isSomeSalt reports whether an ingredient is salt of some amount. An
// open one is above zero. So is a share of a part, however large the
// rest of the part may be.
func isSomeSalt(in *formula.Ingredient) bool {
	return in.Item != nil && in.Item.Class == larder.ClassSalt &&
		(in.Amount.Open || in.Amount.Lo > 0)
}

// HasSalt is open when what may bring the only salt, such as a cheese,
// has an open amount, since "?" may become nothing.
func (p *Part) HasSalt() Value {
	g := p.Grams(Salt)
	switch {
	case g.Lo > 0, p.Holds(isSomeSalt):
		return figure.YesNo(true)
	case g.Hi == 0:
		return figure.YesNo(false)
	}
	return figure.Maybe("the amount of the salt", p.Place)
}

// IsCulture reports whether an ingredient is a sourdough culture.
func IsCulture(in *formula.Ingredient) bool {
	return in.Item != nil && in.Item.Yeast == 0 && in.Item.Is(larder.Leavens)
}

// HasCulture reports whether the part holds a sourdough culture.
func (p *Part) HasCulture() Value { return figure.YesNo(p.Holds(IsCulture)) }

// Cost is the price of the ingredients, where all have one.
func (p *Part) Cost() Value {
	if p.Grams(Unpriced).Hi > 0 {
		return figure.Absent("the price of "+p.firstUnpriced(), p.Place)
	}
	return figure.ValueOf(p.Grams(Price))
}

// Cost is that of all ingredients of the formula, where all have
// a price.
func (s *Sheet) Cost() Value {
	sum := Interval{}
	for i := range s.parts {
		if p := &s.parts[i]; len(p.TakenBy()) == 0 {
			v := p.Cost()
			if v.Absent {
				return v
			}
			sum = sum.Add(v.Interval())
		}
	}
	return figure.ValueOf(sum)
}

func (p *Part) firstUnpriced() string {
	for _, in := range p.Ingredients {
		switch {
		case in.Of != nil && p.sheet.Part(in.Of).Grams(Unpriced).Hi > 0:
			return p.sheet.Part(in.Of).firstUnpriced()
		case in.Item != nil && !in.Item.Price.Known:
			return "\"" + in.Name + "\""
		}
	}
	return "an ingredient"
}

// yeasts visits every yeast in the part and in the parts it takes in.
func (p *Part) yeasts(visit func(*formula.Ingredient)) {
	for in := range p.Foods() {
		if in.Item.Yeast > 0 {
			visit(in)
		}
	}
}

// YeastKind is instant, active dry, fresh, mixed or none.
func (p *Part) YeastKind() string {
	kind := "none"
	p.yeasts(func(in *formula.Ingredient) { kind = joinWords(kind, in.Item.YeastKind) })
	return kind
}

// Strain is standard, osmotolerant, mixed or none; standard where none
// is written.
func (p *Part) Strain() string {
	strain := "none"
	p.yeasts(func(in *formula.Ingredient) {
		one := in.Strain
		if one == "" {
			one = "standard"
		}
		strain = joinWords(strain, one)
	})
	return strain
}

func joinWords(a, b string) string {
	if a == "none" || a == b {
		return b
	}
	return "mixed"
}

// NoYeast is the answer where a figure needs yeast.
func (p *Part) NoYeast() Value {
	return figure.Absent("yeast in "+p.Kind.String()+" \""+p.Name+"\"", p.Place)
}

// Meets reports whether a step takes a kind of ingredient: one that it
// names, or any of its part when it names none.
func Meets(s *formula.Step, is func(*formula.Ingredient) bool) bool {
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

// MeetsYeast reports whether a step takes yeast.
func MeetsYeast(s *formula.Step) bool {
	return Meets(
		s,
		func(in *formula.Ingredient) bool { return in.Item != nil && in.Item.Yeast > 0 },
	)
}

// richSugarPct is the sugar on flour from which a dough counts as rich, %.
// Sweet batter shields bacteria from heat: 5 log in muffin batter takes 9 min
// at 71 C.
const richSugarPct = 10

// IsRich reports whether the part holds egg, or sugar that shields bacteria.
func (p *Part) IsRich() Value {
	if p.Traits()&larder.Egg != 0 {
		return figure.YesNo(true)
	}
	sugar := p.Pct(Sugar)
	return figure.YesNo(!sugar.Absent && sugar.Hi >= richSugarPct)
}
