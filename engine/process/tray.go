package process

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
)

// UsedTemp is the temperature of the part that a step puts on, after its
// own steps.
func (s *Sheet) UsedTemp(step *formula.Step) Value {
	if step.Uses == nil {
		return figure.Absent("what goes on", step.Place)
	}
	return s.Part(step.Uses).EndTemp()
}

// CoolStep is the last step in which a part stands and cools.
func CoolStep(p *formula.Part) *formula.Step {
	if p == nil {
		return nil
	}
	for i := len(p.Steps) - 1; i >= 0; i-- {
		if p.Steps[i].Verb.Alone() {
			return p.Steps[i]
		}
	}
	return nil
}

// spreadC is the target of filling_ready_min and tray_ready_min, C: the
// shipped limit of spread-too-warm.
const spreadC = 24

// FillingReady is the time from the start of a filling's last cooling until
// it is at spreadC, min.
func (s *Sheet) FillingReady(step *formula.Step) Value {
	cool := CoolStep(step.Uses)
	if cool == nil {
		return figure.Absent("a cool step of the filling", step.Place)
	}
	v := s.HoursTo(cool, spreadC)
	return inMinutes(v)
}

func inMinutes(v Value) Value {
	v.Lo, v.Mid, v.Hi = 60*v.Lo, 60*v.Mid, 60*v.Hi
	return v
}

// TrayReady is the same filling's time on a tray of 15 mm.
func (s *Sheet) TrayReady(step *formula.Step) Value {
	cool := CoolStep(step.Uses)
	if cool == nil {
		return figure.Absent("a cool step of the filling", step.Place)
	}
	setup := s.Part(step.Uses).Setup()
	b, ok := s.Simulator.TimeToAs(setup, cool, spreadC, 0.015)
	if !ok || math.IsInf(b.Mid, 1) {
		return figure.Absent("surroundings that cool the filling", step.Place)
	}
	return inMinutes(b.Value())
}

// slabHours is the time in which slab_for_10c_mm brings a slab to 10 C: the
// shipped limit of chill-too-slow.
const slabHours = 4

// SlabFor searches the thickness by halving, since cooling time grows with
// it. It is the careful end, as advice: even the slowest cooling within the
// error is in time.
func (s *Sheet) SlabFor(step *formula.Step) Value {
	if st, missing := s.Stage(step); st == nil {
		return missing
	}
	setup := s.Part(step.Part).Setup()
	thickest := func(pick func([]float64) float64) (float64, bool) {
		time := func(mm float64) float64 {
			b, ok := s.Simulator.TimeToAs(setup, step, 10, mm/1000)
			if !ok {
				return math.Inf(1)
			}
			return pick([]float64{b.Low, b.Mid, b.High})
		}
		lo, hi := 2.0, 200.0
		if time(lo) > slabHours {
			return 0, false
		}
		for range 9 {
			if mid := (lo + hi) / 2; time(mid) <= slabHours {
				lo = mid
			} else {
				hi = mid
			}
		}
		return lo, true
	}
	careful, ok := thickest(slices.Max[[]float64])
	if !ok {
		return figure.Absent("surroundings cold enough to come to 10 C within 4 h", step.Place)
	}
	hopeful, _ := thickest(slices.Min[[]float64])
	return Value{Lo: careful, Mid: careful, Hi: hopeful, Origin: figure.ByModel}
}
