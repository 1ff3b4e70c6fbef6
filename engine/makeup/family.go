package makeup

import (
	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
)

// UsualFloorC is the coldest usual dough out of the bowl where no
// family is named, C.
const UsualFloorC = 20

// Family is that of the formula; where none is named, the ranges of any
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

// Margin is how soft the ends of a range of the family are, 0 where no
// published formulas were counted.
func Margin(r family.Range) Value {
	return Value{Lo: r.Margin, Hi: r.Margin, Mid: r.Margin, Origin: figure.AsGiven}
}

// LowEnd is the low end of a range of the family, 0 where it has
// no figure.
func LowEnd(r family.Range) Value {
	if !r.Known {
		return figure.ValueOf(figure.Point(0))
	}
	return Value{Lo: r.Lo, Hi: r.Lo, Mid: r.Lo, Origin: figure.AsGiven}
}

// NoHighEnd is the high end of a range that the family has no figure
// for: it limits nothing.
const NoHighEnd = 1000

// HighEnd is the high end of a range of the family, NoHighEnd where it
// has no figure.
func HighEnd(r family.Range) Value {
	x := float64(NoHighEnd)
	if r.Known {
		x = r.Hi
	}
	return Value{Lo: x, Hi: x, Mid: x, Origin: figure.AsGiven}
}

// RollIn is the fat of parts of fat alone on the part's flour, %. It
// counts whether or not a step folds the fat in: a list of weights has
// no steps.
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

// OnlyFat reports whether a part is nothing but butter or another fat.
func OnlyFat(p *formula.Part) bool {
	for _, in := range p.Ingredients {
		if in.Item == nil || in.Item.Class != larder.ClassFat {
			return false
		}
	}
	return true
}
