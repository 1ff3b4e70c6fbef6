package makeup

import (
	"iter"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/science/wateractivity"
)

// Component is one thing in a part that adds up over its ingredients.
type Component uint8

// The components, in grams unless said.
const (
	Mass Component = iota
	Flour
	Water    // of everything but flour: the trade's meaning of hydration
	AllWater // of everything
	Protein
	Fat // of everything but flour
	AllFat
	Butterfat // milk fat, which sets and melts between 4 and 35 C
	Carbohydrate
	Fibre
	Ash
	Sugar // of everything but flour, without lactose, which bread yeast cannot use
	Sucrose
	Glucose
	Fructose
	Maltose
	Lactose
	Galactose
	OtherSolute // other dissolving carbohydrate: syrups' dextrins
	OtherMoles  // the same in mol
	Salt
	Alcohol
	Egg
	MilkSolids
	MilkProtein
	Cocoa // solids of cocoa without their fat
	Yeast // as instant dry
	Liquid
	CurdWater // water held in curd, boiled potato or a thick purée
	FirmWater // water held in pieces of cheese, meat and fish, and in thick sweet pastes
	AddedSalt // as salt; not that of cheese, ham or butter
	Cinnamon
	StrongSpice
	FlourProtein
	Prefermented // flour that came in through preferments
	Pregel       // flour and starch that came in through cooked parts
	Fruit
	Thickener  // flour and starch that thicken
	WholeSugar // sugar that stays in grains, part of Sugar
	Price      // money
	Unpriced   // g without a price
	componentCount
)

// Part is the working sheet of one part: its components and what they
// are made of.
type Part struct {
	*formula.Part
	sheet    *Sheet
	contents []*Part // see Contents
	added    bool
	amounts  [componentCount]formula.Mass
	// loose is what a dough that takes the part in gets: all but what
	// sits inside pieces. A dough's own amounts are that already.
	loose  [componentCount]formula.Mass
	soaks  []soaked
	flourG Interval
	traits larder.Trait // of everything in it, taken parts included
}

// Contents is the part and all that it takes in, at any depth and
// without repeats, the part first. Where each of many parts takes all
// earlier ones, the paths are too many to walk. A figure of taken parts
// uses this list, or caches its answer by part.
func (p *Part) Contents() []*Part {
	if p.contents != nil {
		return p.contents
	}
	out := []*Part{p}
	for _, in := range p.Ingredients {
		if in.Of == nil {
			continue
		}
		for _, q := range p.sheet.Part(in.Of).Contents() {
			if !slices.Contains(out, q) {
				out = append(out, q)
			}
		}
	}
	p.contents = out
	return out
}

// Foods are the larder's ingredients in the part and all that it
// takes in.
func (p *Part) Foods() iter.Seq[*formula.Ingredient] {
	return func(yield func(*formula.Ingredient) bool) {
		for _, q := range p.Contents() {
			for _, in := range q.Ingredients {
				if in.Item != nil && !yield(in) {
					return
				}
			}
		}
	}
}

// add adds up the components of the part, once.
func (p *Part) add() {
	if p.added {
		return
	}
	p.added = true
	p.addSoaks()
	for _, in := range p.Ingredients {
		if in.Of != nil {
			p.addPart(in)
		} else {
			p.addItem(in)
		}
	}
	f := p.amounts[Flour]
	if p.sheet.Pinned == nil {
		p.flourG = p.FlourG
	} else {
		p.flourG = f.FixedG.Div(figure.Point(1).Sub(f.PerFlour))
	}
}

// plus adds the part's amount of a component, wherever it sits.
func (p *Part) plus(c Component, m formula.Mass, share float64) {
	if share == 0 {
		return
	}
	add(&p.amounts[c], m, share)
	if !p.IsDough() {
		add(&p.loose[c], m, share)
	}
}

// plusLoose adds the part's amount of a component; a dough gets only
// the share outside of pieces.
func (p *Part) plusLoose(c Component, m formula.Mass, outside Interval, share float64) {
	if share == 0 {
		return
	}
	loose := m
	if outside != figure.Point(1) {
		loose = m.Times(outside)
	}
	if p.IsDough() {
		add(&p.amounts[c], loose, share)
		return
	}
	add(&p.amounts[c], m, share)
	add(&p.loose[c], loose, share)
}

func add(t *formula.Mass, m formula.Mass, share float64) {
	t.FixedG = t.FixedG.Add(m.FixedG.Scale(share))
	if m.PerFlour != (Interval{}) {
		t.PerFlour = t.PerFlour.Add(m.PerFlour.Scale(share))
	}
}

// looseGrams is what a dough that takes all of the part gets of a
// component, g.
func (p *Part) looseGrams(c Component) Interval {
	if p.IsDough() {
		return p.Grams(c)
	}
	p.add()
	return p.loose[c].Grams(p.flourG)
}

// ownFlour reports whether an item's water, fat and sugars are those of
// flour itself, which the trade does not count. A house's own mix is
// flour in part.
func ownFlour(item *larder.Item) bool {
	return item.Class == larder.ClassFlour && item.Flour == 1
}

// addItem adds what an ingredient is made of.
func (p *Part) addItem(in *formula.Ingredient) {
	m, item := p.sheet.Mass(in), in.Item
	p.traits |= item.Traits
	p.plus(Mass, m, 1)
	if item.Is(larder.Starch) {
		p.plus(Thickener, m, 1)
	}
	starter, isStarter := in.StarterWater()
	if isStarter {
		flour := m.Times(in.FlourShare())
		p.plus(Flour, flour, 1)
		p.plus(AllWater, flour, flourMoisture)
		p.plus(AllWater, m.Times(starter), 1)
	} else {
		p.plus(Flour, m, item.Flour)
		p.plus(AllWater, m, item.Water/100)
	}
	outside := p.outside(in)
	p.plus(Protein, m, item.Protein/100)
	p.plus(AllFat, m, item.Fat/100)
	if item.Traits&(larder.MilkFat|larder.Dairy) != 0 {
		p.plus(Butterfat, m, item.Fat/100)
	}
	p.plus(Carbohydrate, m, item.Carbohydrate/100)
	p.plus(Fibre, m, item.Fibre/100)
	p.plus(Ash, m, item.Ash/100)
	p.plusLoose(Alcohol, m, outside, item.Alcohol/100)
	if item.Price.Known {
		p.plus(Price, m, item.Price.PerKg/1000)
	} else {
		p.plus(Unpriced, m, 1)
	}
	p.plusLoose(Salt, m, outside, item.Salt/100)
	if ownFlour(item) {
		if in.Protein != nil {
			p.plus(FlourProtein, m.Times(in.Protein.Interval.Scale(0.01)), 1)
		} else {
			p.plus(FlourProtein, m, item.Protein/100)
		}
		return
	}
	if isStarter {
		p.plus(FlourProtein, m.Times(in.FlourShare()), item.Protein/100/item.Flour)
		p.plus(Water, m.Times(starter), 1) // its flour's own moisture does not count
		return
	}
	if item.Flour > 0 {
		p.plus(FlourProtein, m, min(item.Protein/100, item.Flour*mostFlourProtein))
		rest := *item
		rest.Water = max(0, item.Water-100*item.Flour*flourMoisture)
		rest.Fat = max(0, item.Fat-item.Flour*flourFat)
		p.addWithoutFlour(in, &rest, m, outside)
		return
	}
	p.addWithoutFlour(in, item, m, outside)
}

// Of a mix that holds flour, the share that is the flour's own: its
// protein at most, of its mass, and its fat, % (bread flour and strong
// wholemeal in the larder's sources).
const (
	mostFlourProtein = 0.15
	flourFat         = 1.2
)

// addWithoutFlour adds what an ingredient dissolves, and all else that it
// counts as, its flour left out.
func (p *Part) addWithoutFlour(in *formula.Ingredient, item *larder.Item, m formula.Mass,
	outside Interval) {
	if item.Class == larder.ClassFruit {
		p.plus(Fruit, m, 1)
	}
	plus := func(c Component, share float64) { p.plusLoose(c, m, outside, share) }
	plus(Water, item.Water/100)
	plus(Fat, item.Fat/100)
	plus(Sugar, (item.Sugars-item.Lactose)/100)
	if item.Is(larder.Undissolved) {
		plus(WholeSugar, item.Sugars/100)
	}
	if solids, molar, ok := syrupByDE(in); ok {
		plus(OtherSolute, solids)
		plus(OtherMoles, solids/molar)
	} else {
		plus(Sucrose, item.Sucrose/100)
		plus(Glucose, item.Glucose/100)
		plus(Fructose, item.Fructose/100)
		plus(Maltose, item.Maltose/100)
		plus(Lactose, item.Lactose/100)
		plus(Galactose, item.Galactose/100)
		if item.OtherSolute > 0 {
			plus(OtherSolute, item.OtherSolute/100)
			plus(OtherMoles, item.OtherSolute/100/item.OtherMolar)
		}
	}
	plus(MilkSolids, item.MilkSolids/100)
	if item.Is(larder.Dairy) {
		plus(MilkProtein, item.Protein/100)
	}
	if item.Class == larder.ClassChocolate {
		rest := 100 - item.Water - item.Fat - item.Sugars - max(0, item.MilkSolids-item.Lactose)
		plus(Cocoa, max(0, rest)/100)
	}
	plus(Yeast, item.Yeast)
	switch {
	case item.Class == larder.ClassEgg && item.Water < 10:
		plus(Egg, driedEggAsEgg)
	case item.Class == larder.ClassEgg:
		plus(Egg, 1)
	}
	if item.Traits&larder.Pourable != 0 {
		plus(Liquid, 1)
	}
	if holdsItsWater(item) {
		plus(CurdWater, item.Water/100)
	}
	if isFirm(item) {
		plus(FirmWater, item.Water/100)
	}
	if item.Class == larder.ClassSalt {
		plus(AddedSalt, item.Salt/100)
	}
	cinnamon, strong := item.Traits&larder.Cinnamon != 0, item.Traits&larder.StrongSpice != 0
	switch {
	case cinnamon && isSpiceBlend(item):
		plus(Cinnamon, blendCinnamon)
		plus(StrongSpice, blendStrong)
	case cinnamon:
		plus(Cinnamon, 1)
	case strong:
		plus(StrongSpice, 1)
	}
}

// Shares of a blend of sweet spices: cinnamon first, the rest ginger,
// nutmeg, coriander (common practice, no source; 0.15 to 0.2: notes of
// the larder).
const blendCinnamon, blendStrong = 0.5, 0.2

// isSpiceBlend reports whether a row is mixed from the spices of the larder.
func isSpiceBlend(item *larder.Item) bool {
	return item.Class == larder.ClassSpice && item.Basis == "derived" &&
		!strings.Contains(item.Name, "cinnamon")
}

// holdsItsWater reports whether an item is wet but no liquid: curd,
// boiled potato, purée.
func holdsItsWater(item *larder.Item) bool {
	if !item.Is(larder.Solid) || item.Is(larder.Pourable) || item.Water <= curdWaterPct {
		return false
	}
	switch item.Class {
	case larder.ClassDairy, larder.ClassFruit, larder.ClassOther:
		return true
	}
	return false
}

// pasteSugarPct is the least sugar of a cooked paste, such as bean
// paste and plum butter, % (judgement).
const pasteSugarPct = 30

// isFirm reports whether an item holds its water in a filling: pieces
// of cheese, meat and fish, and pastes cooked down with sugar.
func isFirm(item *larder.Item) bool {
	if item.Is(larder.KeptOut) {
		return item.Class != larder.ClassFruit
	}
	return item.Is(larder.Cooked) && item.Sugars >= pasteSugarPct
}

// curdWaterPct is the least water of curd, potato and purée,
// % (judgement).
const curdWaterPct = 50

const (
	// flourMoisture is white flour's moisture, g/g, taken out of a
	// culture's water (USDA SR 28, all-purpose flour).
	flourMoisture = 0.119
	// driedEggAsEgg is the shell egg in a gram of dried egg: one part
	// and three of water (common practice, no source).
	driedEggAsEgg = 4
)

// syrupByDE gives the solutes in a gram of glucose syrup of a written
// DE: all its carbohydrate, at that DE's mean molar mass.
func syrupByDE(in *formula.Ingredient) (solids, molar float64, ok bool) {
	if in.DE == nil {
		return 0, 0, false
	}
	de := (in.DE.Lo + in.DE.Hi) / 2 // a range is followed at its ends
	solids, molar, silent := wateractivity.GlucoseSyrup(in.Item.Carbohydrate/100, de)
	return solids, molar, silent == ""
}

// addPart takes in the share of another part on an ingredient line.
func (p *Part) addPart(in *formula.Ingredient) {
	from := p.sheet.Part(in.Of)
	from.add()
	p.traits |= from.traits
	m := p.sheet.Mass(in)
	portion := figure.Point(1)
	if !in.Amount.All {
		portion = m.FixedG.Div(from.Grams(Mass))
		portion = figure.Between(max(0, min(1, portion.Lo)), max(0, min(1, portion.Hi)))
	}
	for c := Component(0); c < componentCount; c++ {
		if c == Prefermented || c == Pregel {
			continue
		}
		if p.IsDough() {
			p.amounts[c].FixedG = p.amounts[c].FixedG.Add(from.looseGrams(c).Mul(portion))
			continue
		}
		p.amounts[c].FixedG = p.amounts[c].FixedG.Add(from.Grams(c).Mul(portion))
		p.loose[c].FixedG = p.loose[c].FixedG.Add(from.looseGrams(c).Mul(portion))
	}
	flourIn := from.Grams(Flour).Mul(portion)
	add := func(c Component, iv Interval) { p.amounts[c].FixedG = p.amounts[c].FixedG.Add(iv) }
	asScald, asFerment := flourIn, from.Grams(Prefermented).Mul(portion)
	if scalded := from.isScalded(); scalded != figure.Yes {
		asScald = from.Grams(Pregel).Mul(portion)
		if in.Of.Kind == formula.Preferment {
			asFerment = flourIn
		}
		if scalded == figure.Open { // one or the other
			asScald, asFerment = asScald.Hull(
				flourIn,
			), asFerment.Hull(
				from.Grams(Prefermented).Mul(portion),
			)
		}
	}
	add(Pregel, asScald)
	add(Prefermented, asFerment)
}

// IsCooked reports whether the part's own steps cook some of it.
func (p *Part) IsCooked() bool { return p.HasStep((*formula.Verb).Cooks) }

// CooksUnsaid reports whether a step cooks the part to an
// unwritten heat.
func (p *Part) CooksUnsaid() bool {
	return slices.ContainsFunc(p.Steps, (*formula.Step).HeatUnsaid)
}

// CooksAll reports whether one of the part's own steps cooks all of it: no
// raw meat or milk goes in after it.
func (p *Part) CooksAll() bool {
	cooks := func(s *formula.Step) bool { return s.Verb.Cooks() && s.HeatsAll() }
	raw := func(in *formula.Ingredient) bool {
		return isRawAnimal(in) || in.Of != nil &&
			slices.ContainsFunc(p.sheet.Part(in.Of).Contents(), func(q *Part) bool {
				return slices.ContainsFunc(q.Ingredients, isRawAnimal) &&
					!slices.ContainsFunc(q.Steps, cooks)
			})
	}
	return slices.ContainsFunc(p.Steps, func(s *formula.Step) bool {
		return cooks(s) && HeatsEach(s, raw)
	})
}

// isRawAnimal reports whether an ingredient is raw meat, fish or milk.
func isRawAnimal(in *formula.Ingredient) bool {
	return IsRawMeat(in) || in.Item != nil && in.Item.ControlOf() == larder.ControlRawMilk
}

// scaldC is the temperature from which wet flour gelatinises, C: wheat
// starch swells from about 58 to 64 C (memory).
const scaldC = 60

// isScalded reports whether the part's own steps gelatinise its flour:
// a cook, or a soak in liquid that hot.
func (p *Part) isScalded() figure.Truth {
	if p.IsCooked() {
		return figure.Yes
	}
	out := figure.No
	for _, s := range p.Steps {
		if !s.Verb.Soaks() {
			continue
		}
		switch v := p.sheet.LiquidTemp(s); {
		case v.Absent:
		case v.Lo >= scaldC:
			return figure.Yes
		case v.Hi >= scaldC:
			out = figure.Open
		}
	}
	return out
}

// Grams gives a Component in grams.
func (p *Part) Grams(c Component) Interval {
	p.add()
	return p.amounts[c].Grams(p.flourG)
}

// OfFlour gives a Component as a fraction of the total flour. It
// divides before it adds, so that an amount in percent stays exact; ok
// is false without flour.
func (p *Part) OfFlour(c Component) (Interval, bool) {
	p.add()
	if p.flourG.Hi == 0 {
		return Interval{}, false
	}
	return p.amounts[c].OverFlour(p.flourG), true
}

// Pct gives a Component in percent of the total flour, as a value.
func (p *Part) Pct(c Component) Value {
	x, ok := p.OfFlour(c)
	if !ok {
		return p.NoFlour()
	}
	return figure.ValueOf(x.Scale(100))
}

// NoFlour is the answer where a figure needs flour.
func (p *Part) NoFlour() Value {
	return figure.Absent("flour in "+p.Kind.String()+" \""+p.Name+"\"", p.Place)
}

// Over gives one Component over another, as a fraction. Amounts in
// percent give two paths, by the flour and by the grams. Both hold the
// truth, and each is narrower where the other counts one range twice,
// so the result is their intersection. Else a percentage turned into
// "?" could narrow the figure.
func (p *Part) Over(c, of Component) Interval {
	p.add()
	byMass := p.Grams(c).Div(p.Grams(of))
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

// IsDough reports whether the part is a dough or a preferment.
func (p *Part) IsDough() bool { return p.Kind == formula.Dough || p.Kind == formula.Preferment }

// HasStep reports whether a step's verb has a trait:
// p.HasStep((*formula.Verb).Bakes).
func (p *Part) HasStep(has func(*formula.Verb) bool) bool {
	for _, s := range p.Steps {
		if has(s.Verb) {
			return true
		}
	}
	return false
}

// TakenBy lists the parts with this one as an ingredient.
func (p *Part) TakenBy() []*formula.Part {
	var out []*formula.Part
	if len(p.Taken) == 0 {
		return nil
	}
	for _, q := range p.Formula.Parts {
		for _, in := range q.Ingredients {
			if in.Of == p.Part {
				out = append(out, q)
			}
		}
	}
	return out
}

// TotalFlour is all flour in the part, g, preferments included.
func (p *Part) TotalFlour() Interval {
	p.add()
	return p.flourG
}

// Traits are those of everything in the part, parts taken in included.
func (p *Part) Traits() larder.Trait {
	p.add()
	return p.traits
}

// RatioPct gives one Component in percent of another.
func (p *Part) RatioPct(c, of Component, what string) Value {
	if p.Grams(of).Hi == 0 {
		return figure.Absent(what+" in "+p.Kind.String()+" \""+p.Name+"\"", p.Place)
	}
	return figure.ValueOf(p.Over(c, of).Scale(100))
}

// wasSoaked reports whether a soak before a step names an ingredient.
func wasSoaked(s *formula.Step, in *formula.Ingredient) bool {
	for _, other := range s.Part.Steps[:s.Index] {
		if other.Verb.Soaks() && slices.Contains(other.With, in) {
			return true
		}
	}
	return false
}

// LiquidTemp is the warmest written temperature among the pourable
// ingredients and parts that the step takes; a soak's at or to is its
// liquid's temperature.
func (*Sheet) LiquidTemp(s *formula.Step) Value {
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
		warmest = figure.Between(max(warmest.Lo, g.Lo), max(warmest.Hi, g.Hi))
	}
	if s.Verb.Soaks() {
		see(s.At)
		see(s.To)
	}
	list := s.With
	if len(list) == 0 {
		list = s.Part.Ingredients
	}
	for _, in := range list {
		if wasSoaked(s, in) {
			continue // it went in there, as warm as it is written
		}
		if in.Of != nil || in.Item.Is(larder.Pourable) {
			see(in.Temp)
		}
	}
	if !found {
		return figure.Absent("the temperature of the liquid in this "+s.Verb.Name, s.Place)
	}
	v := figure.ValueOf(warmest)
	v.Origin = figure.AsGiven
	return v
}
