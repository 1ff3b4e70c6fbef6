package makeup

import (
	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
)

// UsualFloorC is the coldest usual dough out of the bowl without a
// family, C.
const UsualFloorC = 20

// Family is the formula's; without one, the ranges of any
// enriched dough.
func (p *Part) Family() *family.Family {
	if p.Formula.Family != nil {
		return p.Formula.Family
	}
	return family.Any()
}

// FamilyName is its name.
func (p *Part) FamilyName() string {
	if p.Formula.Family != nil {
		return p.Formula.Family.Name
	}
	return "any enriched dough"
}

// FamilyEgg limits nothing where the family's range is of yolk, which
// egg_pct does not tell from whole egg.
func (p *Part) FamilyEgg() Value {
	if p.Family().EggIsYolk {
		return HighEnd(family.Range{})
	}
	return HighEnd(p.Usual().Egg)
}

// Usual is Family by the ranges that a dough is judged by.
func (p *Part) Usual() *family.Family { return p.Family().Usual() }

// Margin is the softness of the ends of a family's range, 0 without
// counted published formulas.
func Margin(r family.Range) Value {
	return Value{Lo: r.Margin, Hi: r.Margin, Mid: r.Margin, Origin: figure.AsGiven}
}

// LowEnd is the low end of a family's range, 0 for none.
func LowEnd(r family.Range) Value {
	if !r.Known {
		return figure.ValueOf(figure.Point(0))
	}
	return Value{Lo: r.Lo, Hi: r.Lo, Mid: r.Lo, Origin: figure.AsGiven}
}

// NoHighEnd is the high end of a range without one: it limits nothing.
const NoHighEnd = 1000

// HighEnd is the high end of a family's range, NoHighEnd for none.
func HighEnd(r family.Range) Value {
	x := float64(NoHighEnd)
	if r.Known {
		x = r.Hi
	}
	return Value{Lo: x, Hi: x, Mid: x, Origin: figure.AsGiven}
}

// RollIn is the fat of parts of fat alone on the part's flour, %. It
// counts even if no step folds it in: a list of weights has no steps.
func (p *Part) RollIn() Value {
	if p.TotalFlour().Hi == 0 {
		return p.NoFlour()
	}
	sum := Interval{}
	for i := range p.sheet.parts {
		q := &p.sheet.parts[i]
		if q.Kind == formula.Filling && len(q.Ingredients) > 0 && OnlyFat(q.Part) {
			sum = sum.Add(q.Grams(Mass))
		}
	}
	return figure.ValueOf(sum.Div(p.TotalFlour()).Scale(100))
}

// OnlyFat reports whether a part is only butter or another fat.
func OnlyFat(p *formula.Part) bool {
	for _, in := range p.Ingredients {
		if in.Item == nil || in.Item.Class != larder.ClassFat {
			return false
		}
	}
	return true
}
