package facts

import (
	"slices"

	"forebake/engine/exposure"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/larder"
	"forebake/engine/science/microbe"
)

// component is one thing that a part is made of and that can be added up over its ingredients.
type component uint8

// The components, in grams unless said.
const (
	mass component = iota
	flour
	water    // of everything but flour: the trade's meaning of hydration
	allWater // of everything
	protein
	fat // of everything but flour
	allFat
	butterfat // milk fat, which sets and melts between 4 and 35 C
	carbohydrate
	fibre
	ash
	sugar // of everything but flour, without lactose, which bread yeast cannot use
	sucrose
	glucose
	fructose
	maltose
	lactose
	galactose
	otherSolute // other dissolving carbohydrate: syrups' dextrins
	otherMoles  // the same in mol
	salt
	alcohol
	egg
	milkSolids
	yeast // as instant dry
	liquid
	cinnamon
	strongSpice
	flourProtein
	prefermented // flour that came in through preferments
	pregel       // flour and starch that came in through cooked parts
	fruit
	price    // money
	unpriced // g without a price
	componentCount
)

// part is the working sheet of one part: its components and what they are made of.
type part struct {
	*formula.Part
	sheet            *Sheet
	life             *history.Record
	prepared         *history.Setup
	following        bool
	ownExposed       *exposure.Clock // see safety.go
	exposed          *exposure.Clock
	controlled       *microbe.Control
	named            *Interval              // see anyTemp
	killed           *Value                 // see isKilled
	heated           *Value                 // see eggHeat
	inside           []*part                // see everything
	uncooked         map[larder.Trait]Value // see raw; kept where other parts are taken in
	activity         *microbe.Interval
	added            bool
	amounts          [componentCount]formula.Mass
	flourG           Interval
	ingredientTraits larder.Trait // of everything in it, taken parts included
}

func (s *Sheet) part(p *formula.Part) *part { return &s.parts[p.Serial] }

// once keeps what was worked out for the part: for figures that ask the parts which take it in.
func (p *part) once(kept **Value, work func(*part) Value) Value {
	if *kept == nil {
		v := work(p)
		*kept = &v
	}
	return **kept
}

// everything is the part and all that it takes in, parts within parts too, each once, in the order that they are come upon. Where each of
// many parts takes all earlier ones, there are more ways through than can be walked: whatever looks into taken parts goes by this
// list, or keeps what it has found of a part.
func (p *part) everything() []*part {
	if p.inside != nil {
		return p.inside
	}
	out := []*part{p}
	for _, in := range p.Ingredients {
		if in.Of == nil {
			continue
		}
		for _, q := range p.sheet.part(in.Of).everything() {
			if !slices.Contains(out, q) {
				out = append(out, q)
			}
		}
	}
	p.inside = out
	return out
}

// mass gives an ingredient's mass, as pinned while looking for what settles a fact.
func (s *Sheet) mass(in *formula.Ingredient) formula.Mass {
	if g, ok := s.pinned[in]; ok {
		return formula.Mass{FixedG: g}
	}
	if s.pinned != nil && in.Amount.All && in.Of != nil {
		return formula.Mass{FixedG: s.part(in.Of).grams(mass)}
	}
	return in.Grams
}

// add adds up the components of the part, once.
func (p *part) add() {
	if p.added {
		return
	}
	p.added = true
	for _, in := range p.Ingredients {
		if in.Of != nil {
			p.addPart(in)
		} else {
			p.addItem(in)
		}
	}
	f := p.amounts[flour]
	if p.sheet.pinned == nil {
		p.flourG = p.FlourG
	} else {
		p.flourG = f.FixedG.Div(figure.Point(1).Sub(f.PerFlour))
	}
}

func (p *part) plus(c component, m formula.Mass, share float64) {
	if share == 0 {
		return
	}
	t := &p.amounts[c]
	t.FixedG = t.FixedG.Add(m.FixedG.Scale(share))
	if m.PerFlour != (Interval{}) {
		t.PerFlour = t.PerFlour.Add(m.PerFlour.Scale(share))
	}
}

// ownFlour tells whether an item's water, fat and sugars are those of flour itself, which the trade does not count.
func ownFlour(item *larder.Item) bool { return item.Class == larder.ClassFlour }

func (p *part) addItem(in *formula.Ingredient) {
	m, item := p.sheet.mass(in), in.Item
	p.ingredientTraits |= item.Traits
	p.plus(mass, m, 1)
	p.plus(flour, m, item.Flour)
	p.plus(allWater, m, item.Water/100)
	p.plus(protein, m, item.Protein/100)
	p.plus(allFat, m, item.Fat/100)
	if item.Traits&(larder.MilkFat|larder.Dairy) != 0 {
		p.plus(butterfat, m, item.Fat/100)
	}
	p.plus(carbohydrate, m, item.Carbohydrate/100)
	p.plus(fibre, m, item.Fibre/100)
	p.plus(ash, m, item.Ash/100)
	p.plus(alcohol, m, item.Alcohol/100)
	if item.Price.Known {
		p.plus(price, m, item.Price.PerKg/1000)
	} else {
		p.plus(unpriced, m, 1)
	}
	if !p.isPieces(in) {
		p.plus(salt, m, item.Salt/100)
	}
	if ownFlour(item) {
		if in.Protein != nil {
			p.plus(flourProtein, m.Times(in.Protein.Interval.Scale(0.01)), 1)
		} else {
			p.plus(flourProtein, m, item.Protein/100)
		}
		return
	}
	if item.Flour > 0 {
		p.plus(flourProtein, m, item.Protein/100)
		// A culture is flour and water: its water counts, its flour's own moisture does not.
		p.plus(water, m, max(0, item.Water/100-item.Flour*flourMoisture))
		return
	}
	if p.isPieces(in) {
		// What pieces hold stays in them; only what they weigh counts.
		if item.Class == larder.ClassFruit {
			p.plus(fruit, m, 1)
		}
		return
	}
	p.plus(water, m, item.Water/100)
	p.plus(fat, m, item.Fat/100)
	p.plus(sugar, m, (item.Sugars-item.Lactose)/100)
	p.plus(sucrose, m, item.Sucrose/100)
	p.plus(glucose, m, item.Glucose/100)
	p.plus(fructose, m, item.Fructose/100)
	p.plus(maltose, m, item.Maltose/100)
	p.plus(lactose, m, item.Lactose/100)
	p.plus(galactose, m, item.Galactose/100)
	if item.OtherSolute > 0 {
		p.plus(otherSolute, m, item.OtherSolute/100)
		p.plus(otherMoles, m, item.OtherSolute/100/item.OtherMolar)
	}
	p.plus(milkSolids, m, item.MilkSolids/100)
	p.plus(yeast, m, item.Yeast)
	switch {
	case item.Class == larder.ClassEgg && item.Water < 10:
		p.plus(egg, m, driedEggAsEgg)
	case item.Class == larder.ClassEgg:
		p.plus(egg, m, 1)
	}
	if item.Traits&larder.Pourable != 0 {
		p.plus(liquid, m, 1)
	}
	if item.Traits&larder.Cinnamon != 0 {
		p.plus(cinnamon, m, 1)
	}
	if item.Traits&larder.StrongSpice != 0 {
		p.plus(strongSpice, m, 1)
	}
	if item.Class == larder.ClassFruit {
		p.plus(fruit, m, 1)
	}
}

// isPieces tells whether an ingredient lies in a dough as pieces: dried and candied fruit, nuts, chocolate that is not
// melted. Published hydrations, sugars and fats of such doughs do not count them, and the yeast does not feel them.
func (p *part) isPieces(in *formula.Ingredient) bool {
	if p.Kind != formula.Dough && p.Kind != formula.Preferment {
		return false
	}
	switch item := in.Item; item.Class {
	case larder.ClassFruit:
		return !item.Is(larder.Pectin) && item.Water < driedFruitWater
	case larder.ClassNut:
		return true
	case larder.ClassChocolate:
		return item.Sugars > cocoaSugars && in.Form != "melted"
	}
	return false
}

const (
	driedFruitWater = 40 // g per 100 g: dried and candied fruit hold less, fresh fruit and purees more
	cocoaSugars     = 10 // g per 100 g: chocolate holds more, cocoa less

	// flourMoisture is the moisture of white flour, g/g, taken out of a culture's water (USDA SR 28, all-purpose flour).
	flourMoisture = 0.119
	// driedEggAsEgg is how much shell egg a gram of dried egg stands for: one part and three of water (common practice, no source).
	driedEggAsEgg = 4
)

// addPart takes in the share of another part that an ingredient line names.
func (p *part) addPart(in *formula.Ingredient) {
	from := p.sheet.part(in.Of)
	from.add()
	p.ingredientTraits |= from.ingredientTraits
	m := p.sheet.mass(in)
	portion := figure.Point(1)
	if !in.Amount.All {
		portion = m.FixedG.Div(from.grams(mass))
		portion = figure.Between(max(0, min(1, portion.Lo)), max(0, min(1, portion.Hi)))
	}
	for c := component(0); c < componentCount; c++ {
		if c == prefermented || c == pregel {
			continue
		}
		g := from.grams(c).Mul(portion)
		p.amounts[c].FixedG = p.amounts[c].FixedG.Add(g)
	}
	flourIn := from.grams(flour).Mul(portion)
	add := func(c component, iv Interval) { p.amounts[c].FixedG = p.amounts[c].FixedG.Add(iv) }
	asScald, asFerment := flourIn, from.grams(prefermented).Mul(portion)
	if scalded := from.isScalded(); scalded != isYes {
		asScald = from.grams(pregel).Mul(portion)
		if in.Of.Kind == formula.Preferment {
			asFerment = flourIn
		}
		if scalded == isOpen { // one or the other
			asScald, asFerment = asScald.Hull(flourIn), asFerment.Hull(from.grams(prefermented).Mul(portion))
		}
	}
	add(pregel, asScald)
	add(prefermented, asFerment)
}

// isCooked reports whether the part's own steps cook something of it.
func (p *part) isCooked() bool { return p.hasStep((*formula.Verb).Cooks) }

// cooksAll reports whether a step of the part's own cooks all of it.
func (p *part) cooksAll() bool {
	for _, s := range p.Steps {
		if s.Verb.Cooks() && s.HeatsAll() {
			return true
		}
	}
	return false
}

// scaldC is the temperature from which wet flour gelatinises: wheat starch swells from about 58 to 64 C (memory).
const scaldC = 60

// isScalded tells whether the part's own steps gelatinise its flour: a cook, or a soak in liquid that hot.
func (p *part) isScalded() certainty {
	if p.isCooked() {
		return isYes
	}
	out := isNo
	for _, s := range p.Steps {
		if !s.Verb.Soaks() {
			continue
		}
		switch v := liquidTemp(p.sheet, s); {
		case v.Absent:
		case v.Lo >= scaldC:
			return isYes
		case v.Hi >= scaldC:
			out = isOpen
		}
	}
	return out
}

// certainty is a yes or no that a range may leave open.
type certainty int8

const (
	isNo certainty = iota - 1
	isOpen
	isYes
)

// grams gives a component in grams.
func (p *part) grams(c component) Interval {
	p.add()
	return p.amounts[c].Grams(p.flourG)
}

// ofFlour gives a component as a fraction of the total flour. It divides before it adds, so that an amount in percent
// stays exact whatever the flour; ok is false when there is no flour.
func (p *part) ofFlour(c component) (Interval, bool) {
	p.add()
	if p.flourG.Hi == 0 {
		return Interval{}, false
	}
	return p.amounts[c].OverFlour(p.flourG), true
}

// pct gives a component in percent of the total flour, as a value.
func (p *part) pct(c component) Value {
	x, ok := p.ofFlour(c)
	if !ok {
		return p.noFlour()
	}
	return num(x.Scale(100))
}

func (p *part) noFlour() Value {
	return absent("flour in "+p.Kind.String()+" \""+p.Name+"\"", p.Place)
}

// over gives one component over another, as a fraction. With amounts in percent there are two ways to it, through the flour
// and through the grams. Both hold the truth and each is the narrower where the other counts one range twice, so what they
// share is taken; else a percentage turned into "?" could give the narrower figure.
func (p *part) over(c, of component) Interval {
	p.add()
	byMass := p.grams(c).Div(p.grams(of))
	a, b := p.amounts[c], p.amounts[of]
	if p.flourG.Hi == 0 || a.PerFlour == (Interval{}) && b.PerFlour == (Interval{}) {
		return byMass
	}
	byFlour := a.OverFlour(p.flourG).Div(b.OverFlour(p.flourG))
	if byFlour.IsPoint() {
		return byFlour
	}
	return figure.Between(max(byMass.Lo, byFlour.Lo), min(byMass.Hi, byFlour.Hi))
}
