package makeup

import (
	"slices"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/larder"
)

// Controls reports whether anything in the part, parts taken in
// included, needs control for one of the reasons.
func (p *Part) Controls(reasons ...larder.Control) bool {
	return p.NeedsFor(func(c larder.Control) bool { return slices.Contains(reasons, c) })
}

// AnyControl reports whether anything in the part needs control.
func (p *Part) AnyControl() bool { return p.NeedsFor(func(larder.Control) bool { return true }) }

// NeedsFor reports whether anything in the part needs control for a
// reason asked for.
func (p *Part) NeedsFor(asked func(larder.Control) bool) bool {
	return p.Holds(func(in *formula.Ingredient) bool {
		c := in.Item.ControlOf()
		return c != "" && asked(c)
	})
}

// Holds reports whether a kind of ingredient is in the part or in what
// it takes in.
func (p *Part) Holds(is func(*formula.Ingredient) bool) bool {
	for in := range p.Foods() {
		if is(in) {
			return true
		}
	}
	return false
}

// HasFruit reports whether the part holds fruit. Zest is a spice.
func (p *Part) HasFruit() bool {
	return p.Holds(func(in *formula.Ingredient) bool {
		return in.Item.Is(larder.Fruit) && !strings.HasSuffix(in.Item.Name, " zest")
	})
}

// mostBeside is the share, on its fruit, of what may buffer a fruit
// filling's acid (judgement).
const mostBeside = 0.15

// IsAcidFruit reports whether the part is a filling of acid fruit. It
// may hold any sugar, fat, zest, spice, spirit and acid juice, water up
// to the fruit's weight, and little else. Egg, milk, leaven and
// whatever needs control by itself exclude it.
func (p *Part) IsAcidFruit() bool {
	if p.IsDough() || p.AnyControl() || p.Traits()&(larder.Egg|larder.Dairy|larder.Leavens) != 0 {
		return false
	}
	fruit, water, beside := 0.0, 0.0, 0.0
	for in := range p.Foods() {
		g := p.sheet.Amount(in)
		switch class := in.Item.Class; {
		case in.Item.Is(larder.AcidFruit):
			fruit += g.Lo
		case in.Item.Is(larder.Acid), class == larder.ClassSugar, class == larder.ClassFat,
			class == larder.ClassSpice, class == larder.ClassSalt, in.Item.Alcohol > 0:
		case class == larder.ClassLeaven:
			return false
		case class == larder.ClassLiquid:
			water += g.Hi
		default:
			beside += g.Hi
		}
	}
	return fruit > 0 && water <= fruit && beside <= mostBeside*fruit
}

// Bounds of a filling no wetter than the crumb around it, shares of its
// weight. Bread has 35 to 40 % of water (common practice, no source).
const (
	dryFillingWater = 0.30
	garlicMost      = 0.20 // of raw vegetables, where half of it is butter
)

// IsDryFilling reports whether a filling is of nuts, seeds, sugar or
// fat, with little water, and without meat, fish, cheese or cooked
// plant food.
//
// Baked in, it needs no fridge: California holds baked goods without
// cream, custard or meat fillings not to be potentially hazardous
// (Health and Safety Code 114365.5(b)(1), read). The crumb of plain
// bread needs none (NSW Food Authority, quoted). No study of its water
// activity was found: its rule stays a note.
func (p *Part) IsDryFilling() bool {
	if p.IsDough() || p.NeedsFor(func(c larder.Control) bool {
		return c != larder.ControlProtein && c != larder.ControlRawVegetable
	}) {
		return false
	}
	mass := p.Grams(Mass)
	if !(p.Grams(AllWater).Hi <= dryFillingWater*mass.Lo) {
		return false
	}
	return !p.Controls(larder.ControlRawVegetable) || p.IsSeasonedButter()
}

// IsCrustPaste reports whether a topping is a paste of raw flour in
// water, milk or fat, such as the cross of a bun. Baked on, it is
// bread crust.
//
// Plain and enriched bread needs no fridge (HK and NSW guidance, read).
// Crust is drier than crumb: 0.918 where crumb has 0.944 and more
// (Singh, Hunt & Channaiah 2024; Daifas 1999, read). Egg, cheese, fruit
// and more liquid than 1.2 to the flour make another thing of it.
func (p *Part) IsCrustPaste() bool {
	flour, water := p.FlourG, p.Grams(AllWater)
	return p.Kind == formula.Topping && !p.IsCooked() &&
		p.Traits()&larder.RawFlour != 0 && p.Traits()&larder.Egg == 0 &&
		!p.NeedsFor(func(c larder.Control) bool { return c != larder.ControlProtein }) &&
		!p.HasFruit() && flour.Lo > 0 && water.Hi <= 1.2*flour.Lo
}

// IsMilkSyrup reports whether the part is sugar in about as much milk or
// water, and needs control for the milk alone.
func (p *Part) IsMilkSyrup() bool {
	water, sugar := p.Grams(AllWater), p.Grams(Sugar)
	return !p.IsDough() && p.Traits()&(larder.Egg|larder.RawFlour|larder.Starch) == 0 &&
		!p.NeedsFor(func(c larder.Control) bool { return c != larder.ControlProtein }) &&
		sugar.Lo >= 0.8*water.Hi && p.Grams(Fat).Hi <= 0.1*p.Grams(Mass).Lo
}

// IsBoiledNut reports whether the part is nuts in sugar and fat
// boiled over 100 C, as on a bee-sting cake. It is spread warm: cold
// it is caramel.
func (p *Part) IsBoiledNut() bool {
	mass, nuts := p.Grams(Mass), false
	for in := range p.Foods() {
		nuts = nuts || in.Item.Class == larder.ClassNut
	}
	boiled := slices.ContainsFunc(p.Steps, func(s *formula.Step) bool {
		return s.Verb.Cooks() && s.To.Set && s.To.Lo >= 100
	})
	return boiled && !p.IsDough() && nuts &&
		p.Traits()&(larder.Egg|larder.RawFlour|larder.Starch) == 0 &&
		p.Grams(Sugar).Lo >= 0.2*mass.Hi && p.Grams(AllWater).Hi <= 0.2*mass.Lo
}

// IsSeasonedButter reports whether the part is butter with some garlic,
// onion or herbs.
func (p *Part) IsSeasonedButter() bool {
	green, butter := 0.0, 0.0
	for in := range p.Foods() {
		switch control := in.Item.ControlOf(); {
		case control == larder.ControlRawVegetable:
			green += p.sheet.Amount(in).Hi
		case control != "":
			return false
		case in.Item.Is(larder.MilkFat):
			butter += p.sheet.Amount(in).Lo
		}
	}
	mass := p.Grams(Mass)
	return green > 0 && green <= garlicMost*mass.Lo && 2*butter >= mass.Hi
}
