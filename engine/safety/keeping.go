package safety

import (
	"math"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/science/mould"
)

// How many days at 5 C one day at up to 7.2 C (45 F) counts for: older
// editions of the code gave 4 days there in place of 7. Warmer than that, the
// one day is all.
const (
	warmFridgeC    = 7.2
	daysAtWarm     = 4
	daysAtWarmer   = 1
	frozenStopsAtC = 0
)

// KeptDays counts the days that a part is kept cold, as days at 5 C. The day
// it is made is the first; frozen days do not count.
func (s *Sheet) KeptDays(step *formula.Step) Value {
	l := s.Limits()
	sum := figure.Point(1)
	weigh := func(c float64) float64 {
		switch {
		case c <= frozenStopsAtC:
			return 0
		case c <= l.KeepAtC.Value:
			return 1
		case c <= max(warmFridgeC, l.ColdC.Value): // 8 C is the law in the UK, which counts no days
			return l.KeepDays.Value / daysAtWarm
		}
		return l.KeepDays.Value / daysAtWarmer
	}
	missing, ok := s.kept(step, func(days Interval, at Value) {
		sum = sum.Add(Interval{Lo: days.Lo * weigh(at.Lo), Hi: days.Hi * weigh(at.Hi)})
	})
	if !ok {
		return missing
	}
	return figure.ValueOf(sum)
}

// DaysStored counts the days of KeptDays by the calendar.
func (s *Sheet) DaysStored(step *formula.Step) Value {
	sum := figure.Point(1)
	missing, ok := s.kept(step, func(days Interval, at Value) {
		switch {
		case at.Hi <= frozenStopsAtC:
		case at.Lo <= frozenStopsAtC:
			sum.Hi += days.Hi
		default:
			sum = sum.Add(days)
		}
	})
	if !ok {
		return missing
	}
	return figure.ValueOf(sum)
}

// StoredAt is the warmest surroundings in which a part is kept, C.
func (s *Sheet) StoredAt(step *formula.Step) Value {
	warmest := figure.Absent("the surroundings of this "+step.Verb.Name, step.Place)
	missing, ok := s.kept(step, func(_ Interval, at Value) {
		if warmest.Absent || at.Hi > warmest.Hi {
			warmest = at
		}
	})
	if !ok {
		return missing
	}
	return warmest
}

// kept visits the waits up to a step, inclusive, in which a part is kept,
// with the days and surroundings of each. It stops where either is unknown.
func (s *Sheet) kept(
	step *formula.Step,
	visit func(days Interval, at Value),
) (missing Value, ok bool) {
	for _, other := range step.Part.Steps[:step.Index+1] {
		if !other.Verb.Stores() && !(other.Verb.Chills() && other.Time.Set &&
			other.Time.Interval.Hi > s.Limits().KeepAfterHours.Value*60) {
			continue
		}
		if !other.Time.Set {
			return figure.Absent("the time of this "+other.Verb.Name, other.Place), false
		}
		at := s.AroundStep(other)
		if at.Absent && !other.Verb.Stores() {
			continue
		}
		if at.Absent {
			return at, false
		}
		visit(other.Time.Interval.Scale(1.0/1440), at)
	}
	return Value{}, true
}

// WarmAfterBake is the longest that food which needs control stands neither
// cold nor hot after a bake, h. Where the last step does not leave it in the
// cold, it stays in the room for as long as the formula shall keep.
func (s *Sheet) WarmAfterBake() Value {
	return s.warmAfterBake(func(q *Part, baked bool) Value {
		if baked && (q.IsDryFilling() || q.IsCrustPaste()) {
			return figure.YesNo(false)
		}
		return q.NeedsControl()
	})
}

// WarmDryFilling is WarmAfterBake of the dry, baked-in fillings that
// WarmAfterBake leaves out. What lay on top is crust.
func (s *Sheet) WarmDryFilling() Value {
	v := s.warmAfterBake(func(q *Part, baked bool) Value {
		if baked && q.Kind != formula.Topping && q.IsDryFilling() {
			return q.NeedsControl()
		}
		return figure.YesNo(false)
	})
	if math.IsInf(v.Hi, 1) {
		return v
	}
	// a reading would take the question away, not the hours
	return figure.ValueOf(figure.Point(v.Hi))
}

// WarmCustardAfterBake is WarmAfterBake of food cooked with egg or milk that
// goes on after the bake, and of meat and fish anywhere: no reading will show
// that they need no control.
func (s *Sheet) WarmCustardAfterBake() Value {
	return s.warmAfterBake(func(q *Part, baked bool) Value {
		custard := !baked && q.IsCooked() && q.Traits()&(larder.Egg|larder.Dairy) != 0
		switch meat := q.Controls(larder.ControlMeat, larder.ControlFish); {
		case meat && !q.PH.Set && !q.WaterActivity.Set: // lemon on it makes no meat keep
			return figure.YesNo(q.NeedsControl().Hi == 1)
		case meat || custard:
			return q.SurelyNeedsControl()
		}
		return figure.YesNo(false)
	})
}

// warmAfterBake asks of each part on or in a dough, and of the dough's own
// pieces, whether its hours count; baked is whether it went through the bake.
func (s *Sheet) warmAfterBake(counts func(q *Part, baked bool) Value) Value {
	l := s.Limits()
	out := figure.ValueOf(Interval{})
	for _, p := range s.Formula.Parts {
		if p.Kind != formula.Dough {
			continue
		}
		sum, elapsed, cold := Interval{}, Interval{}, false
		var need *figure.Need
		held := figure.YesNo(false)
		if s.Part(p).Controls(larder.ControlMeat, larder.ControlFish) {
			held = figure.YesNo(true)
		}
		baked := false
		for _, step := range p.Steps {
			if step.Uses != nil && !makeup.OnlyFat(step.Uses) && (baked || !step.Verb.Washes()) &&
				!(baked && s.DriesHot(step)) {
				if v := counts(s.Part(step.Uses), !baked); v.Hi > held.Hi || v.Lo > held.Lo {
					held = v
				}
				// what goes on now may be warm, and nothing keeps it cold
				// from here
				if baked {
					cold = false
				}
			}
			if s.Part(p).BakesDough(step) {
				baked = true
				continue
			}
			if !baked || !step.Verb.Waits() {
				continue
			}
			time := step.Time.Interval.Scale(1.0 / 60)
			if !step.Time.Set {
				time = figure.Positive()
			}
			elapsed = elapsed.Add(time)
			at := s.AroundStep(step)
			cold = !at.Absent && at.Hi <= l.ColdC.Value
			if held.Hi == 0 {
				continue
			}
			if !step.Time.Set {
				need = &figure.Need{What: "the time of this " + step.Verb.Name, Place: step.Place}
			}
			switch {
			case at.Absent:
				sum.Hi += time.Hi
				need = at.Need
			case cold || at.Lo >= l.HotHoldC.Value:
			default:
				sum = sum.Add(time)
			}
		}
		if baked && held.Hi > 0 && !cold && s.Formula.Keep.Set {
			sum.Hi += max(0, s.Formula.Keep.Interval.Hi/60-elapsed.Lo)
			need = &figure.Need{
				What:  "a step that keeps it in the cold: { store = \"1 day\", at = \"fridge\" }",
				Place: p.Place,
			}
		}
		if held.Lo == 0 && sum.Lo > 0 {
			sum.Lo, need = 0, held.Need
		}
		if sum.Hi > out.Hi {
			out = figure.ValueOf(sum)
			out.Need = need
		}
	}
	return out
}

// Room temperatures that the mould line covers, C. A kitchen's room is
// clamped to them: a loaf is kept in a larder or a shop, not beside the oven.
const (
	coolRoomC = 21
	warmRoomC = 27
	coldC     = 15 // a store under it is cold
)

// MouldFree is the days without mould of the first dough that goes into no
// other: by its family's labels and keeping advice, by the line of plain
// cakes, or as bread.
func (s *Sheet) MouldFree() Value {
	for i := range s.parts {
		p := &s.parts[i]
		if p.Kind != formula.Dough || len(p.TakenBy()) > 0 {
			continue
		}
		goods, tC := s.goods(p, false), max(coolRoomC, min(warmRoomC, s.Kitchen.Room.Mid()))
		for _, step := range p.Steps {
			if !step.Verb.Stores() || !(step.Where.Cold() || step.At.Set && step.At.Hi < coldC) {
				continue
			}
			at := s.AroundStep(step)
			if at.Absent || at.Hi <= frozenStopsAtC {
				return figure.Absent("a storage that is not frozen", step.Place)
			}
			goods.Cold, tC = true, at.Hi
		}
		aw := p.CrumbActivity(p.WaterKept())
		if aw.Absent {
			return aw
		}
		days, silent := mould.Days(goods, Interval{Lo: 100 * aw.Lo, Hi: 100 * aw.Hi}, tC)
		if silent != "" && math.IsInf(days.High, 1) && days.Low == 0 {
			return figure.Absent("a storage at room warmth ("+silent+")", p.Place)
		}
		out := Value{Lo: days.Low, Hi: days.High, Mid: days.Mid, Origin: figure.ByModel}
		if moist := s.goods(p, true); moist.Filled != goods.Filled {
			goods.Filled = true
			days, _ = mould.Days(goods, Interval{Lo: 100 * aw.Lo, Hi: 100 * aw.Hi}, tC)
			out.Lo, out.Hi = min(out.Lo, days.Low), max(out.Hi, days.High)
		}
		return out
	}
	return figure.Absent("a dough", s.Formula.Place)
}

// moistFrom is the water activity from which a filling counts as moist:
// almond paste and thick jam are below it.
const moistFrom = 0.85

// goods gives what the family table of keeping asks about a dough. With
// most, a filling that its open amounts may make moist is moist.
func (s *Sheet) goods(p *Part, most bool) mould.Goods {
	g := mould.Goods{
		Culture: p.HasCulture().Lo == 1,
		Nuts:    p.Has(larder.Nut).Lo == 1,
		Moist: p.Holds(func(in *formula.Ingredient) bool {
			return in.Item.Control == larder.ControlSoftCheese ||
				strings.Contains(in.Item.Name, poppy)
		}),
	}
	if f := s.Formula.Family; f != nil {
		g.Family = f.Name
	}
	for _, step := range p.Steps {
		if step.Uses == nil || !step.Verb.Fills() {
			continue
		}
		filling := s.Part(step.Uses)
		aw := filling.Activity()
		wettest := (aw.Lo + aw.Hi) / 2
		if g := filling.Grams(makeup.Mass); most && (!g.IsPoint() || filling.WaterActivity.Set) {
			wettest = aw.Hi
		}
		g.Filled = g.Filled || !aw.Absent && wettest > moistFrom
	}
	return g
}

// poppy is in the names of the larder's poppy seeds, baked in moist.
const poppy = "poppy"
