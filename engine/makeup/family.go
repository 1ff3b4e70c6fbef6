package makeup

import (
	"forebake/engine/family"
	"forebake/engine/figure"
)

// UsualFloorC is the coldest usual dough out of the bowl where no family is named, C.
const UsualFloorC = 20

// Family is that of the formula; where none is named, the ranges of any enriched dough.
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

// FamilyEgg limits nothing where the family's range is of yolk, which egg_pct does not tell from whole egg.
func (p *Part) FamilyEgg() Value {
	if p.Family().EggIsYolk {
		return HighEnd(family.Range{})
	}
	return HighEnd(p.Family().Egg)
}

// LowEnd is the low end of a range of the family, 0 where it has no figure.
func LowEnd(r family.Range) Value {
	if !r.Known {
		return figure.ValueOf(figure.Point(0))
	}
	return Value{Lo: r.Lo, Hi: r.Lo, Mid: r.Lo, Origin: figure.AsGiven}
}

// HighEnd of a range that the family has no figure for is a thousand percent: it limits nothing.
func HighEnd(r family.Range) Value {
	x := 1000.0
	if r.Known {
		x = r.Hi
	}
	return Value{Lo: x, Hi: x, Mid: x, Origin: figure.AsGiven}
}
