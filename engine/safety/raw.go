package safety

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
)

// What a cook must reach so that an ingredient is no longer raw, C.
const (
	EggCookC    = 70 // FDA Food Code 2022, 3-401.11(A)(2) (read): 70 C, at once
	FloursCookC = 74 // 165 F, the careful end of consumer advice; no code names a figure for flour
	milkCookC   = 75 // 21 CFR 1240.61(b) (read): 72 C for 15 s, 3 C more with sugar or much fat
)

// Raw reports whether something that must be cooked is still raw after the
// part's own steps and those of the parts it takes in. A cook without a
// temperature leaves it open; nothing here softens that.
func (p *Part) Raw(trait larder.Trait, cookC float64) Value {
	if p.Traits()&trait == 0 {
		return figure.YesNo(false)
	}
	if v, known := p.uncooked[trait]; known {
		return v
	}
	v := p.stillRaw(trait, cookC)
	if len(p.Contents()) > 1 {
		if p.uncooked == nil {
			p.uncooked = map[larder.Trait]Value{}
		}
		p.uncooked[trait] = v
	}
	return v
}

func (p *Part) stillRaw(trait larder.Trait, cookC float64) Value {
	open := false
	for _, in := range p.Ingredients {
		raw := figure.YesNo(in.Of == nil && in.Item.Traits&trait != 0)
		if in.Of != nil {
			raw = p.sheet.Part(in.Of).Raw(trait, cookC)
		}
		if raw.Hi == 0 {
			continue
		}
		switch state := p.cooked(in, cookC); {
		case state == figure.No && raw.Lo == 1:
			return figure.YesNo(true)
		case state != figure.Yes:
			open = true
		}
	}
	if open {
		return figure.Maybe("the temperature that \""+p.Name+"\" is cooked to", p.Place)
	}
	return figure.YesNo(false)
}

// cooked reports whether a bake, or a cook to the temperature, is among an
// ingredient's steps. A cook that names others leaves it raw. A cook without
// a temperature, or to a range around it, leaves it open.
func (p *Part) cooked(in *formula.Ingredient, cookC float64) figure.Truth {
	for _, s := range p.Steps {
		if s.Verb.Bakes() && makeup.Heats(s, in) {
			return figure.Yes
		}
	}
	return p.boiled(in, cookC)
}

// boiled is cooked by a cook alone.
func (p *Part) boiled(in *formula.Ingredient, cookC float64) figure.Truth {
	state := figure.No
	for _, s := range p.Steps {
		if !s.Verb.Cooks() || !makeup.Heats(s, in) {
			continue
		}
		switch reached := p.sheet.Reached(s); {
		case !reached.Absent && reached.Lo >= cookC:
			return figure.Yes
		case reached.Absent || reached.Hi >= cookC:
			state = figure.Open
		}
	}
	return state
}

// HeatedTo is the temperature that the part is sure to reach, C: by its own
// cooks and bakes and those of what takes it. What is brushed on before a
// bake is crust. A heat before a hazard goes in does not count.
func (p *Part) HeatedTo() Value {
	return p.once(&p.heated, func(p *Part) Value {
		return heatedTo(p, p.heatsEach(isHazardous), (*Part).HeatedTo)
	})
}

// isHazardous reports whether an ingredient hurts until it is heated.
func isHazardous(it *larder.Item) bool {
	switch it.Hazard {
	case larder.HazardElderberry, larder.HazardCassava, larder.HazardBerries,
		larder.HazardJuice, larder.HazardSprouts, larder.HazardFormula:
		return true
	}
	return false
}

// flourHeatedTo is HeatedTo of its raw flour.
func (p *Part) flourHeatedTo() Value {
	return p.once(&p.flourHeated, func(p *Part) Value {
		return heatedTo(p, p.heatsEach(isRawFlour), (*Part).flourHeatedTo)
	})
}

func isRawFlour(it *larder.Item) bool { return it.Is(larder.RawFlour) }

func isRawEgg(it *larder.Item) bool { return it.Is(larder.RawEgg) }

// EggHeatedTo is HeatedTo of its shell egg: a cook of some ingredients counts
// where all the egg is among them.
func (p *Part) EggHeatedTo() Value {
	return p.once(&p.eggHeated, func(p *Part) Value {
		return heatedTo(p, func(s *formula.Step) bool {
			return s.Verb.Bakes() || s.Verb.Cooks() && makeup.HeatsEach(s, p.holding(isRawEgg))
		}, (*Part).eggHeatedOn)
	})
}

// eggHeatedOn is HeatedTo of the shell egg in what takes other parts in.
func (p *Part) eggHeatedOn() Value {
	return p.once(&p.eggHeatedAll, func(p *Part) Value {
		return heatedTo(p, p.heatsEach(isRawEgg), (*Part).eggHeatedOn)
	})
}

// heatsEach tells of the steps that heat the whole part when all of a kind
// is in it.
func (p *Part) heatsEach(is func(*larder.Item) bool) func(*formula.Step) bool {
	return func(s *formula.Step) bool {
		return s.HeatsAll() && makeup.HeatsEach(s, p.holding(is))
	}
}

// holding tells of the ingredients of a kind, and the parts that hold one.
func (p *Part) holding(is func(*larder.Item) bool) func(*formula.Ingredient) bool {
	return func(in *formula.Ingredient) bool {
		if in.Of != nil {
			return p.sheet.Part(in.Of).Holds(func(o *formula.Ingredient) bool { return is(o.Item) })
		}
		return in.Item != nil && is(in.Item)
	}
}

// friedCoreC is the least core of a well fried dough, C: that of the
// doughnuts whose kill was measured went on to boiling (Channaiah et al.
// 2018, abstract read).
const friedCoreC = FloursCookC

// heatedTo works out HeatedTo from the steps that heat what is asked for.
// after answers for what takes the part in.
func heatedTo(p *Part, heats func(*formula.Step) bool, after func(*Part) Value) Value {
	best := Value{Lo: math.Inf(-1), Hi: math.Inf(-1), Origin: figure.AsGiven}
	hotter := func(v Value) {
		if v.Absent {
			best.Hi, best.Need = math.Inf(1), v.Need
			return
		}
		best.Lo, best.Hi = max(best.Lo, v.Lo), max(best.Hi, v.Hi)
	}
	for _, step := range p.Steps {
		switch {
		case p.IsDough() && step.InHotFat() && p.sheet.FriedWell(step).Lo == 1 &&
			!step.Core.Set && !step.IsProbed():
			hotter(figure.ValueOf(figure.Point(friedCoreC)))
		case heats(step):
			hotter(p.sheet.Reached(step))
		}
	}
	// The coolest of the places where it ends.
	users, later := 0, Value{Lo: math.Inf(1), Hi: math.Inf(1), Mid: math.Inf(1)}
	cooler := func(v Value) {
		users++
		later.Lo, later.Hi, later.Mid = min(later.Lo, v.Lo), min(later.Hi,
			v.Hi), min(later.Mid, v.Mid)
		if v.Origin == figure.ByModel {
			later.Origin = v.Origin
		}
		if v.Need != nil {
			later.Need = v.Need
		}
	}
	for _, q := range p.Formula.Parts {
		for _, step := range q.Steps {
			if step.Uses == p.Part {
				cooler(p.sheet.heatAfter(step))
			}
		}
		for _, in := range q.Ingredients {
			if in.Of == p.Part {
				cooler(after(p.sheet.Part(q)))
			}
		}
	}
	ownSure := !math.IsInf(best.Lo, -1)
	if users > 0 {
		if later.Need != nil && best.Need == nil {
			best.Need = later.Need
		}
		best.Lo, best.Hi = max(best.Lo, later.Lo), max(best.Hi, later.Hi)
	}
	if math.IsInf(best.Hi, -1) { // it is never heated: as warm as its own ingredients
		room := p.sheet.Kitchen.Room.Interval
		return figure.ValueOf(room)
	}
	if math.IsInf(best.Lo, -1) { // heated, and no step says how far
		best.Lo = min(best.Hi, 0)
	}
	best.Mid = figure.ValueOf(best.Interval()).Mid
	if !ownSure && later.Need == nil && later.Origin == figure.ByModel && later.Lo <= later.Mid {
		best.Mid, best.Origin, best.Need = later.Mid, figure.ByModel, nil // the bake alone answers
	}
	return best
}

// heatAfter is the heat that a step's addition gets; none without a bake.
func (s *Sheet) heatAfter(on *formula.Step) Value {
	for _, step := range on.Part.Steps[on.Index+1:] {
		switch {
		case !step.Verb.Bakes():
		case s.glazes(on, step), s.crusts(on, step):
			return figure.ValueOf(figure.Point(100))
		case on.IsAfterHeat() && (!step.IsProbed() || on.Verb.Washes()):
			// The hot crumb says nothing of what was just put on it.
			return figure.Absent(
				"a bake of 10 min at 160 C or more after this, or what is put on, cooked before",
				on.Place,
			)
		default:
			return s.Reached(step)
		}
	}
	return figure.ValueOf(s.Kitchen.Room.Interval)
}

// What is brushed on thinly is as hot as the skin within glazeMinutes
// at crustOvenC; up to glazeShare of the dough's weight counts as
// thin (judgement).
const glazeMinutes, glazeShare = 4, 0.25

// glazes reports whether a step brushes on a thin coat that the bake cooks.
func (s *Sheet) glazes(on, bake *formula.Step) bool {
	if !on.Verb.Washes() || on.Uses == nil {
		return on.Verb.Washes()
	}
	if s.Part(on.Uses).Controls(larder.ControlMeat, larder.ControlFish) {
		return false
	}
	if !on.IsAfterHeat() {
		return true
	}
	return bake.Time.Set && bake.Time.Lo >= glazeMinutes && bake.At.Set &&
		bake.At.Lo >= crustOvenC &&
		s.Part(on.Uses).Grams(makeup.Mass).Hi <= glazeShare*s.Part(on.Part).Grams(makeup.Mass).Lo
}

// From this oven and time a topping on the outside is crust: the outside of a
// loaf is then at 100 C, which published courses of bread reach in 5 to 8 min
// at 180 C and more (judgement).
const crustOvenC, crustMinutes = 160, 10

// crusts reports whether what a step puts on is on the outside in a bake, and
// crust after it: a topping that no later step closes in. Meat, fish and what
// outweighs its dough count as inside, since their own middle lags.
func (s *Sheet) crusts(on, bake *formula.Step) bool {
	if !on.LiesOutside() || !bake.Time.Set || bake.Time.Lo < crustMinutes ||
		!bake.At.Set || bake.At.Lo < crustOvenC ||
		s.Part(on.Uses).Controls(larder.ControlMeat, larder.ControlFish) {
		return false
	}
	return s.Part(on.Uses).Grams(makeup.Mass).Hi <= s.Part(on.Part).Grams(makeup.Mass).Lo
}

// FlourEatenRaw reports whether the part holds raw flour that no bake
// reaches. A part without a step says nothing yet.
func (p *Part) FlourEatenRaw() Value {
	raw := p.Raw(larder.RawFlour, FloursCookC)
	if raw.Hi == 0 || len(p.TakenBy()) > 0 {
		return figure.YesNo(false)
	}
	heat := p.flourHeatedTo()
	switch {
	case heat.Lo >= FloursCookC:
		return figure.YesNo(false)
	case heat.Hi >= FloursCookC:
		return figure.Maybe("the core that this is baked to", p.Place)
	case len(p.Steps) == 0 && len(p.Taken) == 0:
		return figure.Maybe("the step that bakes \""+p.Name+"\"", p.Place)
	}
	return raw
}

// FlourUsuallyBaked reports whether a bake cooks the part's flour by the
// model's middle, and only its slow end leaves that open.
func (p *Part) FlourUsuallyBaked() Value {
	heat := p.flourHeatedTo()
	return figure.YesNo(heat.Origin == figure.ByModel && heat.Mid >= FloursCookC &&
		!math.IsInf(heat.Mid, 1))
}

// ShellEggLeftRaw reports whether the part holds unpasteurised shell egg that
// neither its own cooks nor those of parts taken in have cooked.
func (p *Part) ShellEggLeftRaw() Value { return p.Raw(larder.RawEgg, EggCookC) }

// steams reports whether a step cooks a part through in steam, however hot its middle gets.
func steams(step *formula.Step) bool { return step.Way == formula.Steaming }

// AlcoholLast reports whether something with a spirit goes on after the bake,
// or into what is never baked.
func (s *Sheet) AlcoholLast() Value {
	for i := range s.parts {
		p := &s.parts[i]
		if p.Has(larder.Spirit).Lo == 0 || p.Baked() || p.IsDough() && len(p.Steps) == 0 {
			continue // of a list of weights the bake is not told
		}
		before := false
		for _, q := range s.Formula.Parts {
			for i, step := range q.Steps {
				before = before || step.Uses == p.Part && (s.heatAfter(step).Hi > 60 ||
					slices.ContainsFunc(q.Steps[i+1:], steams))
			}
		}
		if !before && len(p.TakenBy()) == 0 {
			return figure.YesNo(true)
		}
	}
	return figure.YesNo(false)
}
