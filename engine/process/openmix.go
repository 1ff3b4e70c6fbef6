package process

import (
	"cmp"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/science/bakersmath"
)

// crystalWater is the most water in 100 g of a dry sugar, g.
const crystalWater = 3

// isCrystals reports whether an ingredient is a sugar that takes up heat as
// it dissolves.
func isCrystals(item *larder.Item) bool {
	return item.Class == larder.ClassSugar && item.Water < crystalWater && item.Sucrose > 50
}

// doughHeatSpan is the error factor of a taken part's specific heat in the
// balance (doughs and fillings 1.7 to 4.2 kJ/(kg K); computed).
const doughHeatSpan = 1.6

// openBalance spans a mix's heat balance over all weights and minutes
// that the formula leaves open. The aim is believed where the balance
// is silent. ok is false where everything is one figure, or the balance
// is always silent.
func (p *Part) openBalance(s *formula.Step) (v Value, ok bool) {
	goods := slices.Clone(p.goesIn(s))
	open := s.Time.Set && !s.Time.IsPoint()
	for _, in := range goods {
		open = open || !p.sheet.Amount(in).IsPoint()
	}
	mixings := p.openMixings(s)
	if !open || len(mixings) == 0 {
		return v, false
	}
	ends := s.To.Interval
	for _, run := range [...]figure.Run{figure.Low, figure.High} {
		slices.SortStableFunc(goods, func(a, b *formula.Ingredient) int {
			switch x, y := p.ingredientTemp(a), p.ingredientTemp(b); {
			case run == figure.Low:
				return cmp.Compare(x.Lo, y.Lo)
			default:
				return cmp.Compare(y.Hi, x.Hi)
			}
		})
		// The mean is furthest out where some of the furthest weigh most, the
		// rest least.
		for heavy := range len(goods) + 1 {
			meetC, ok := p.mixedTemp(goods, heavy, run)
			if !ok {
				continue
			}
			for _, m := range mixings {
				endC := m.EndC(meetC, run)
				ends.Lo = min(ends.Lo, endC-bakersmath.BalanceErrorC)
				ends.Hi = max(ends.Hi, endC+bakersmath.BalanceErrorC)
			}
		}
	}
	v = figure.ValueOf(ends)
	v.Origin = figure.ByModel
	return v, true
}

// mixedTemp is the common temperature of goods: the first of them at their most
// weight, the others at their least.
func (p *Part) mixedTemp(goods []*formula.Ingredient, heavy int, run figure.Run) (float64, bool) {
	var list []bakersmath.Ingredient
	for i, in := range goods {
		g := p.sheet.Amount(in)
		grams := g.Lo
		if i < heavy {
			grams = min(g.Hi, 1000*bakersmath.LargestDoughKg)
		}
		one, ok := p.heatOfGrams(in, grams, run)
		if !ok {
			continue // it may weigh nothing
		}
		switch {
		case in.Of != nil && i < heavy:
			one.SpecificHeatKJ *= doughHeatSpan
		case in.Of != nil:
			one.SpecificHeatKJ /= doughHeatSpan
		default:
			one.Dissolves = run == figure.Low && isCrystals(in.Item)
		}
		list = append(list, one)
	}
	return bakersmath.HeatBalanceDoughC(list, 0)
}

// openMixings are the shortest mix of the least dough and the longest of the
// most: a step's warming lies between theirs. None for minutes that the
// balance does not know.
func (p *Part) openMixings(s *formula.Step) []bakersmath.Mixing {
	mixer := s.Way.Mixer()
	if house := p.sheet.Kitchen.Friction; house.Set && mixer != bakersmath.ByHand {
		return []bakersmath.Mixing{
			{HouseK: house.Lo, Measured: true}, {HouseK: house.Hi, Measured: true},
		}
	}
	if !s.Time.Set {
		return nil
	}
	var out []bakersmath.Mixing
	for _, minutes := range [...]float64{s.Time.Lo, s.Time.Hi} {
		minutes = min(minutes, bakersmath.LongestMix(mixer))
		for _, kg := range [...]float64{bakersmath.SmallestDoughKg, bakersmath.LargestDoughKg} {
			for _, roomC := range [...]float64{p.sheet.Kitchen.Room.Lo, p.sheet.Kitchen.Room.Hi} {
				if m := inMixer(mixer, minutes, kg, roomC); m.Refuses() == "" {
					out = append(out, m)
				}
			}
		}
	}
	return out
}
