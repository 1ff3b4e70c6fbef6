package facts

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/science/bakersmath"
)

// What follows from a part's own steps, without following its temperature.

const (
	eggCookC    = 71 // USDA advice for egg dishes, 160 F
	floursCookC = 74 // 165 F, the careful end of consumer advice; no code names a figure for flour
)

// hasStep reports whether a step's verb has a trait: p.hasStep((*formula.Verb).Bakes).
func (p *part) hasStep(has func(*formula.Verb) bool) bool {
	for _, s := range p.Steps {
		if has(s.Verb) {
			return true
		}
	}
	return false
}

func (p *part) handMixed() bool {
	found := false
	for _, s := range p.Steps {
		if !s.Verb.Mixes() {
			continue
		}
		if s.Way.Mixer() != bakersmath.ByHand {
			return false
		}
		found = true
	}
	return found
}

// baked tells whether the part, or a part that takes it in, be it within others, is baked or fried.
func (p *part) baked() bool {
	heated := func(q *part) bool { return q.hasStep((*formula.Verb).Bakes) || q.fried() }
	if heated(p) {
		return true
	}
	if len(p.Taken) == 0 {
		return false
	}
	for i := range p.sheet.parts {
		if q := &p.sheet.parts[i]; heated(q) && slices.Contains(q.everything(), p) {
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

// fried reports whether a step cooks it in hot fat, by what is written.
func (p *part) fried() bool {
	for _, s := range p.Steps {
		if s.InHotFat() {
			return true
		}
	}
	return false
}

// isFried is open for a dough that is cooked, and nobody says how: it may be hot fat.
func isFried(p *part) Value {
	if p.fried() {
		return yes(true)
	}
	for _, s := range p.Steps {
		if p.isDough() && s.Verb.Cooks() && s.HeatsAll() && s.Way == nil {
			return maybe("by = \"...\" in this "+s.Verb.Name, s.Place)
		}
	}
	return yes(false)
}

// raw tells whether something that must be cooked is still raw after the part's own steps and those of the parts it
// takes in. A cook without a temperature leaves it open; nothing here softens that.
func (p *part) raw(trait larder.Trait, cookC float64) Value {
	p.add()
	if p.ingredientTraits&trait == 0 {
		return yes(false)
	}
	if v, known := p.uncooked[trait]; known {
		return v
	}
	v := p.stillRaw(trait, cookC)
	if len(p.everything()) > 1 {
		if p.uncooked == nil {
			p.uncooked = map[larder.Trait]Value{}
		}
		p.uncooked[trait] = v
	}
	return v
}

func (p *part) stillRaw(trait larder.Trait, cookC float64) Value {
	open := false
	for _, in := range p.Ingredients {
		raw := yes(in.Of == nil && in.Item.Traits&trait != 0)
		if in.Of != nil {
			raw = p.sheet.part(in.Of).raw(trait, cookC)
		}
		if raw.Hi == 0 {
			continue
		}
		switch state := p.cooked(in, cookC); {
		case state == isNo && raw.Lo == 1:
			return yes(true)
		case state != isYes:
			open = true
		}
	}
	if open {
		return maybe("the temperature that \""+p.Name+"\" is cooked to", p.Place)
	}
	return yes(false)
}

// cooked says whether a bake, or a cook to the temperature, is among the steps that an ingredient
// goes through. A cook that names others leaves it raw. A cook without a temperature, or to a range
// that the temperature lies in, leaves it open.
func (p *part) cooked(in *formula.Ingredient, cookC float64) certainty {
	state := isNo
	for _, s := range p.Steps {
		switch v := s.Verb; {
		case v.Bakes():
			return isYes
		case v.Cooks() && takesIn(s, in):
			reached := s.To
			if s.Core.Set {
				reached = s.Core
			}
			if s.Reading != nil && s.Reading.Temp.Set {
				reached = s.Reading.Temp
			}
			switch {
			case reached.Set && reached.Lo >= cookC:
				return isYes
			case !reached.Set || reached.Hi >= cookC:
				state = isOpen
			}
		}
	}
	return state
}

// sugarCooked tells whether a syrup, or a filling, topping or wash with sugar, honey or jam in it, is heated. A dough that
// is fried is another matter.
func (p *part) sugarCooked() Value {
	if p.isDough() || !p.hasStep((*formula.Verb).Cooks) && !p.hasStep((*formula.Verb).Melts) {
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
		if in != nil && s.Verb.Soaks() && takesIn(s, in) {
			return true
		}
	}
	return false
}

// takesIn reports whether a step is done to that ingredient: it names it, or it names nothing.
func takesIn(s *formula.Step, in *formula.Ingredient) bool {
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

// retardHours adds up the steps that retard the part. One without a time leaves the sum open above.
func (p *part) retardHours() Value {
	sum := Interval{}
	for _, s := range p.Steps {
		if !s.Verb.Retards() {
			continue
		}
		if !s.Time.Set {
			v := num(sum.Add(figure.Positive()))
			v.Need = &Need{"the time of this " + s.Verb.Name, s.Place}
			return v
		}
		sum = sum.Add(s.Time.Interval)
	}
	return num(sum.Scale(1.0 / 60))
}
