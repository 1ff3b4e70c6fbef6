package facts

import (
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
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

// baked tells whether the part, or a part that takes it in, be it within others, is baked or fried.
func (p *part) baked() bool {
	heated := func(q *part) bool { return q.stepOf("bake") != nil || q.fried() }
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
	state := p.cooked(cookC)
	if state == isYes {
		return yes(false)
	}
	own, open := false, state == isOpen
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
	case own && state == isNo:
		return yes(true)
	case own || open:
		return maybe("the temperature that \""+p.Name+"\" is cooked to", p.Place)
	}
	return yes(false)
}

// cooked tells whether a bake, or a cook to the temperature, is among the part's steps. A cook without a temperature, or to
// a range that the temperature lies in, leaves it open.
func (p *part) cooked(cookC float64) certainty {
	state := isNo
	for _, s := range p.Steps {
		switch s.Verb.Name {
		case "bake":
			return isYes
		case "cook":
			reached := s.To
			if s.Core.Set {
				reached = s.Core
			}
			if s.Measured != nil && s.Measured.Temp.Set {
				reached = s.Measured.Temp
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
			v := num(sum.Add(figure.Positive()))
			v.Need = &Need{"the time of this chill", s.Place}
			return v
		}
		sum = sum.Add(s.Time.Interval)
	}
	return num(sum.Scale(1.0 / 60))
}
