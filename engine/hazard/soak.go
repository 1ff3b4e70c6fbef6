package hazard

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
)

// What a wet food without yeast may stand, h, and from where, C: S.
// aureus makes toxin after 3 h above 21 C and after 12 h above 10 C
// (FDA Hazards Guide, ch. 15, read).
const (
	warmC, warmH = 21, 3
	coolC, coolH = 10, 12
)

// SoakShare is the share of the published time of S. aureus that a soak
// uses up before the mix, in food that needs control such as milk or
// egg. It is 0 where it names yeast, which makes it a dough; a soak that
// names nothing may soak them without.
func SoakShare(s *Sheet, step *formula.Step) Value {
	none := figure.ValueOf(Interval{})
	if namesYeast(step) || !beforeTheMix(step) || !makeup.Meets(step, needsControl(s)) {
		return none
	}
	if !step.Time.Set {
		return figure.Absent("the time of this "+step.Verb.Name, step.Place)
	}
	at := s.AroundStep(step)
	if at.Absent {
		return at
	}
	share := func(minutes, c float64) float64 {
		switch {
		case c > warmC:
			return minutes / 60 / warmH
		case c > coolC:
			return minutes / 60 / coolH
		}
		return 0
	}
	v := figure.ValueOf(Interval{Lo: share(step.Time.Lo, at.Lo), Hi: share(step.Time.Hi, at.Hi)})
	if makeup.MeetsYeast(step) { // of those that may soak, it may be none
		v.Lo, v.Mid, v.Need = 0, math.NaN(), whatSoaks(step)
	}
	return v
}

// namesYeast reports whether a step is said to take yeast.
func namesYeast(step *formula.Step) bool { return len(step.With) > 0 && makeup.MeetsYeast(step) }

// whatSoaks is what a soak lacks that names nothing.
func whatSoaks(step *formula.Step) *figure.Need {
	return &figure.Need{What: "with = [\"...\"] for what soaks in this " + step.Verb.Name,
		Place: step.Place}
}

// needsControl tells of ingredients that need control once they are
// wet: milk, egg, meat, cut fruit.
func needsControl(s *Sheet) func(*formula.Ingredient) bool {
	return func(in *formula.Ingredient) bool {
		if in.Of != nil {
			q := s.Part(in.Of)
			return !q.IsLiveDough() && q.NeedsControl().Hi == 1
		}
		return in.Item.Traits&(larder.Egg|larder.Dairy) != 0 || in.Item.ControlOf() != ""
	}
}

// beforeTheMix reports whether a step is done in a bowl of its own,
// before the part is mixed.
func beforeTheMix(step *formula.Step) bool {
	mixes := func(other *formula.Step) bool { return other.Verb.Mixes() }
	return slices.IndexFunc(step.Part.Steps, mixes) >= step.Index // -1 without a mix
}

// wetPct is the water from which seeds or nuts count as soaked, % of
// all (judgement).
const wetPct = 25

// SoakedHours is how long raw nuts, seeds, grain or pulses stand wet
// out of the cold before any heat, with no yeast in them, h. A measured
// pH at which the vegetative germs stop ends it.
func SoakedHours(s *Sheet, p *Part) Value {
	sum, live, need := Interval{}, p.Traits()&larder.Leavens != 0, (*figure.Need)(nil)
	if p.PH.Set && p.PH.Hi <= acidPH {
		return figure.ValueOf(sum)
	}
	mass := p.Grams(makeup.Mass)
	wet := mass.Hi > 0 && !(100*p.Grams(makeup.AllWater).Hi < wetPct*mass.Lo)
	for _, step := range p.Steps {
		if step.HeatsAll() {
			break
		}
		own := step.Verb.Soaks() && beforeTheMix(step)
		at := s.AroundStep(step)
		if !step.Verb.Waits() || live && (!own || namesYeast(step)) || !wet ||
			!makeup.Meets(step, driedSeed) || !at.Absent && at.Hi <= coolC {
			continue
		}
		hours := step.Time.Interval.Scale(1.0 / 60)
		switch {
		case !step.Time.Set:
			hours = figure.Positive()
		case own && makeup.MeetsYeast(step):
			hours.Lo, need = 0, whatSoaks(step)
		case at.Absent || at.Lo <= coolC:
			hours.Lo = 0
		}
		sum = sum.Add(hours)
	}
	v := figure.ValueOf(sum)
	v.Need = need
	return v
}

// acidPH is where Salmonella and the toxins of S. aureus and C.
// botulinum stop (FDA Food Code 2022, table B: 4.2, read).
const acidPH = 4.2

// driedSeed tells of raw nuts, seeds, grain and pulses, bought dry.
// Flour is judged as dough is.
func driedSeed(in *formula.Ingredient) bool {
	const dry = 15 // g of water in 100 g
	if in.Item == nil || in.Item.Water > dry || in.Item.Is(larder.Cooked) ||
		in.Item.Is(larder.RawFlour) {
		return false
	}
	const protein, fibre = 7, 3 // g in 100 g, from which it is a seed and no starch, sugar or spice
	switch in.Item.Class {
	case larder.ClassNut:
		return true
	case larder.ClassOther:
		return in.Item.Protein >= protein && in.Item.Fibre >= fibre
	}
	return false
}
