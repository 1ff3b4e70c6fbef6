package safety

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/process"
	"forebake/engine/science/mould"
	"forebake/engine/science/wateractivity"
)

// Times as long as at 5 C that a day at up to 7.2 C (45 F) counts: older editions of the code gave 4 days there in place of 7. Warmer
// than that one day is all.
const (
	warmFridgeC    = 7.2
	daysAtWarm     = 4
	daysAtWarmer   = 1
	frozenStopsAtC = 0
)

// KeptDays counts the days that a part is kept cold, as days at 5 C, the day it is made being the first; frozen days do not count.
func (s *Sheet) KeptDays(step *formula.Step) Value {
	l := s.limits()
	sum := figure.Point(1)
	for _, other := range step.Part.Steps[:step.Index+1] {
		if !other.Verb.Stores() {
			continue
		}
		if !other.Time.Set {
			return figure.Absent("the time of this "+other.Verb.Name, other.Place)
		}
		at := s.AroundStep(other)
		if at.Absent {
			return at
		}
		weigh := func(c float64) float64 {
			switch {
			case c <= frozenStopsAtC:
				return 0
			case c <= l.KeepAtC.Value:
				return 1
			case c <= warmFridgeC:
				return l.KeepDays.Value / daysAtWarm
			}
			return l.KeepDays.Value / daysAtWarmer
		}
		days := other.Time.Interval.Scale(1.0 / 1440)
		sum = sum.Add(Interval{Lo: days.Lo * weigh(at.Lo), Hi: days.Hi * weigh(at.Hi)})
	}
	return figure.ValueOf(sum)
}

// WarmAfterBake is the longest that something which needs control stands after a bake in surroundings that are neither cold nor hot,
// h. Where the formula shall keep and no step says in the cold, that time may be warm as well.
func (s *Sheet) WarmAfterBake() Value {
	l := s.limits()
	out := figure.ValueOf(Interval{})
	for _, p := range s.Formula.Parts {
		if p.Kind != formula.Dough {
			continue
		}
		sum, cold := Interval{}, false
		var need *figure.Need
		held := figure.YesNo(false)
		for _, step := range p.Steps {
			if !process.AfterBake(step) || !step.Verb.Waits() {
				continue
			}
			if held = s.StandsHere(step); held.Hi == 0 {
				continue
			}
			time := step.Time.Interval.Scale(1.0 / 60)
			if !step.Time.Set {
				time = figure.Positive()
				need = &figure.Need{What: "the time of this " + step.Verb.Name, Place: step.Place}
			}
			switch at := s.AroundStep(step); {
			case at.Absent:
				sum.Hi += time.Hi
				need = at.Need
			case at.Hi <= l.ColdC.Value:
				cold = true
			case at.Lo >= l.HotHoldC.Value:
			default:
				sum = sum.Add(time)
			}
		}
		if held.Hi > 0 && !cold && s.Formula.Keep.Set {
			sum.Hi += s.Formula.Keep.Interval.Hi / 60
			need = &figure.Need{What: "a step that keeps it in the cold: { store = \"1 day\", at = \"fridge\" }", Place: p.Place}
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

// crumbDrop is what starch and protein take off the water activity of crumb (wateractivity.CrumbPolymerDrop).
const crumbDrop = wateractivity.CrumbPolymerDrop

// MouldFree answers by the relation only where the crumb is dry enough for it at both ends of its water activity; what is kept
// cold or frozen is another matter.
func (s *Sheet) MouldFree() Value {
	for i := range s.parts {
		p := &s.parts[i]
		if p.Kind != formula.Dough || len(p.TakenBy()) > 0 {
			continue
		}
		for _, step := range p.Steps {
			if step.Verb.Stores() && (step.Where.Cold() || step.At.Set && step.At.Hi < 15) {
				return figure.Absent("a storage at room warmth (no relation for the cold)", step.Place)
			}
		}
		aw := p.Activity()
		if aw.Absent {
			return aw
		}
		t := max(21, min(27, s.Kitchen.Room.Mid()))
		least, ok1 := mould.FreeDays(100*(aw.Hi-crumbDrop), t)
		most, ok2 := mould.FreeDays(100*(aw.Lo-crumbDrop), t)
		if ok1 && ok2 {
			return Value{Lo: least, Hi: most, Mid: (least + most) / 2, Origin: figure.ByModel}
		}
		return Value{Lo: mould.CrumbLowDays, Hi: mould.CrumbHighDays, Mid: (mould.CrumbLowDays + mould.CrumbHighDays) / 2, Origin: figure.ByModel}
	}
	return figure.Absent("a dough", s.Formula.Place)
}
