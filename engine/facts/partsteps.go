package facts

import (
	"math"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/science/ferment"
)

// What follows from a part's own steps, without following its temperature.

const (
	eggCookC    = 71 // USDA advice for egg dishes, 160 F
	floursCookC = 74 // 165 F, the careful end of consumer advice; no code names a figure for flour
)

func (p *part) stepOf(verb string) *formula.Step {
	for _, s := range p.Steps {
		if s.Verb.Name == verb {
			return s
		}
	}
	return nil
}

func (p *part) handMixed() bool {
	found := false
	for _, s := range p.Steps {
		if s.Verb.Name != "mix" {
			continue
		}
		if !strings.Contains(strings.ToLower(s.By), "hand") {
			return false
		}
		found = true
	}
	return found
}

// baked tells whether the part, or a part that takes it in, is baked or fried. depth guards nothing but haste: parts
// cannot go round in a circle, but they can be deep.
func (p *part) baked(depth int) bool {
	if p.stepOf("bake") != nil || p.fried() {
		return true
	}
	for _, taker := range p.takers() {
		if depth < formula.MaxParts && p.sheet.part(taker).baked(depth+1) {
			return true
		}
	}
	return false
}

// takers lists the parts that take this one in as an ingredient.
func (p *part) takers() []*formula.Part {
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

// fried tells whether a cook step is by deep fat, in whatever words the baker says it.
func (p *part) fried() bool {
	for _, s := range p.Steps {
		if s.Verb.Name == "cook" && strings.Contains(strings.ToLower(s.By), "fry") {
			return true
		}
	}
	return false
}

// raw tells whether something that must be cooked is still raw after the part's own steps and those of the parts it
// takes in. A cook without a temperature leaves it open; nothing here softens that.
func (p *part) raw(trait larder.Trait, cookC float64) Value {
	p.add()
	if p.ingredientTraits&trait == 0 {
		return yes(false)
	}
	state := p.cooked(cookC)
	if state == 1 {
		return yes(false)
	}
	own, open := false, state == 0
	for _, in := range p.Ingredients {
		if in.Of == nil {
			own = own || in.Item.Traits&trait != 0
			continue
		}
		switch v := p.sheet.part(in.Of).raw(trait, cookC); {
		case v.Lo == 1:
			own = true
		case v.Hi == 1:
			open = true
		}
	}
	switch {
	case own && state < 0:
		return yes(true)
	case own || open:
		return maybe("the temperature that \""+p.Name+"\" is cooked to", p.Place)
	}
	return yes(false)
}

// cooked is 1 when a bake, or a cook to the temperature, is among the part's steps; 0 when there is a cook without a
// temperature; -1 when there is neither.
func (p *part) cooked(cookC float64) int {
	state := -1
	for _, s := range p.Steps {
		switch s.Verb.Name {
		case "bake":
			return 1
		case "cook":
			reached := s.To
			if s.Core.Set {
				reached = s.Core
			}
			if s.Measured != nil && s.Measured.Temp.Set {
				reached = s.Measured.Temp
			}
			switch {
			case !reached.Set:
				state = max(state, 0)
			case reached.Lo >= cookC:
				return 1
			}
		}
	}
	return state
}

// sugarCooked tells whether a syrup, or a filling, topping or wash with sugar, honey or jam in it, is heated. A dough that
// is fried is another matter.
func (p *part) sugarCooked() Value {
	if p.Kind == formula.Dough || p.Kind == formula.Preferment || p.stepOf("cook") == nil && p.stepOf("melt") == nil {
		return yes(false)
	}
	for _, in := range p.Ingredients {
		if in.Item != nil && (in.Item.Class == larder.ClassSugar || in.Item.Is(larder.Pectin)) {
			return yes(true)
		}
	}
	return yes(p.Kind == formula.Syrup)
}

func (p *part) activeDry() *formula.Ingredient {
	for _, in := range p.Ingredients {
		if in.Item != nil && in.Item.YeastKind == "active dry" {
			return in
		}
	}
	return nil
}

func (p *part) activeDrySoaked() bool {
	in := p.activeDry()
	for _, s := range p.Steps {
		if in != nil && s.Verb.Name == "soak" && wets(s, in) {
			return true
		}
	}
	return false
}

// wets tells whether a soak is of that ingredient: it names it, or it names nothing.
func wets(s *formula.Step, in *formula.Ingredient) bool {
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

// retardHours adds up the chill steps of the part. A chill without a time leaves the sum open above.
func (p *part) retardHours() Value {
	sum := Interval{}
	for _, s := range p.Steps {
		if s.Verb.Name != "chill" {
			continue
		}
		if !s.Time.Set {
			v := num(sum.Add(quantity.Positive()))
			v.Need = &Need{"the time of this chill", s.Place}
			return v
		}
		sum = sum.Add(s.Time.Interval)
	}
	return num(sum.Scale(1.0 / 60))
}

// Bounds of the time constant with which a dough follows its surroundings, h: a flat slab in moving air, and a full tub.
const tauFastH, tauSlowH = 0.5, 3

// fermentE follows the part from the end of the mix to its shaping with two time constants, since without a geometry and
// a thermal model only bounds can be given.
func fermentE(p *part) Value {
	y, ok := p.ofFlour(yeast)
	if !ok {
		return p.noFlour()
	}
	if y.Hi == 0 {
		return modelled(Interval{}, 1) // whatever the water, the times and the temperatures
	}
	f, ok := p.factor()
	if !ok {
		f = Interval{} // without free water the yeast stands still
	}
	fast, slow := follower{tau: tauFastH}, follower{tau: tauSlowH}
	started, long := false, false
	for _, s := range p.Steps {
		switch s.Verb.Name {
		case "mix":
			started = true
			start := s.To
			if s.Measured != nil && s.Measured.Temp.Set {
				start = s.Measured.Temp
			}
			if !start.Set {
				return absent("the dough's temperature after the mix (to = \"25 C\")", s.Place)
			}
			fast.t, slow.t = start.Interval, start.Interval
			continue
		case "shape", "pan", "proof", "bake", "cook":
			if started {
				return endFerment(fast, slow, y, f, long)
			}
			continue
		case "rest", "chill", "temper", "fold", "hold", "store":
		default:
			continue
		}
		if !started {
			continue
		}
		if !s.Time.Set {
			if s.Verb.Name == "fold" {
				continue
			}
			return absent("the time of this "+s.Verb.Name, s.Place)
		}
		at := stepAt(p.sheet, s)
		if at.Absent {
			return at
		}
		hours := s.Time.Interval.Scale(1.0 / 60)
		long = long || s.Verb.Name == "chill" && hours.Hi >= overnightH
		fast.step(at.Interval(), hours)
		slow.step(at.Interval(), hours)
	}
	if !started {
		return absent("a mix step with the dough's temperature (mix = \"10 min\", to = \"25 C\")", p.Place)
	}
	return endFerment(fast, slow, y, f, long)
}

func endFerment(fast, slow follower, y, f Interval, long bool) Value {
	e := fast.hours.Hull(slow.hours).Mul(y.Scale(100)).Mul(f)
	factor := float64(ferment.FermentErrorFactor)
	if long {
		factor = ferment.RetardErrorFactor
	}
	return modelled(e, factor)
}

// follower is a body that approaches its surroundings with one time constant, from an interval of temperatures.
type follower struct {
	tau   float64
	t     Interval // C
	hours Interval // equivalent hours at 26 C so far
}

// step is monotone in both temperatures below the optimum of 38 C; above it the hull of the ends and the optimum holds.
func (w *follower) step(ambient, hours Interval) {
	lo := ferment.EquivalentHoursExponential(w.t.Lo, ambient.Lo, w.tau, hours.Lo)
	hi := lo
	if w.t.Lo != w.t.Hi || ambient.Lo != ambient.Hi || hours.Lo != hours.Hi {
		hi = ferment.EquivalentHoursExponential(w.t.Hi, ambient.Hi, w.tau, hours.Hi)
	}
	if max(w.t.Hi, ambient.Hi) > ferment.GasOptimumC {
		lo = min(lo, hi, ferment.EquivalentHoursExponential(w.t.Hi, ambient.Hi, w.tau, hours.Lo))
		hi = ferment.TemperatureFactor(ferment.GasOptimumC) * hours.Hi
	}
	w.hours = w.hours.Add(quantity.Between(lo, hi))
	toward := func(t, a, h float64) float64 { return a + (t-a)*math.Exp(-h/w.tau) }
	a, b := toward(w.t.Lo, ambient.Lo, hours.Lo), toward(w.t.Hi, ambient.Hi, hours.Hi)
	c, d := toward(w.t.Lo, ambient.Lo, hours.Hi), toward(w.t.Hi, ambient.Hi, hours.Lo)
	w.t = quantity.Between(min(a, b, c, d), max(a, b, c, d))
}
