package safety

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/science/microbe"
)

// foodFor is the kind of food that chooses the published D and z values.
func (p *Part) foodFor() microbe.Food {
	chocolate := Interval{}
	for _, in := range p.Ingredients {
		if in.Item != nil && in.Item.Class == larder.ClassChocolate {
			chocolate = chocolate.Add(p.sheet.Amount(in))
		}
	}
	switch {
	case chocolate.Hi > p.Grams(makeup.Mass).Lo/2:
		return microbe.Chocolate
	case p.IsDough():
		return microbe.Dough
	case p.Traits()&(larder.Egg|larder.Dairy) != 0:
		return microbe.Custard
	}
	return microbe.Dough
}

// wantsKill reports whether the bake matters for a filling's safety: it holds
// raw egg or flour, or needs control and was never cooked, bought or made.
func (p *Part) wantsKill() bool {
	return p.Raw(larder.RawEgg, EggCookC).Hi == 1 || p.Raw(larder.RawFlour, FloursCookC).Hi == 1 ||
		!p.CooksAll() && !p.cameCooked() && p.NeedsControl().Hi == 1
}

// cameCooked reports whether all of a part is plant food that was cooked
// before, such as bean paste, with sugar and salt: "heat-treated plant
// food" of FDA Food Code 2022, 1-201.10(B) (read). Nothing of it is raw;
// its hours in the warm are judged elsewhere.
func (p *Part) cameCooked() bool {
	return !slices.ContainsFunc(p.Ingredients, func(in *formula.Ingredient) bool {
		switch {
		case in.Item == nil:
			return true
		case in.Item.Class == larder.ClassSugar, in.Item.Class == larder.ClassSalt:
			return false
		}
		return !in.Item.Is(larder.Cooked) || in.Item.Control != larder.ControlCookedStarch &&
			in.Item.Control != larder.ControlCookedVegetable
	})
}

// WantKill lists the fillings on a step's part for which the step must be a
// kill. What is crust after it is left out, and what a bake before it was
// asked about.
func (s *Sheet) WantKill(step *formula.Step) []*Part {
	var out []*Part
	from := 0
	if before := bakedBefore(step); step.Verb.Bakes() && before != nil {
		from = before.Index
	}
	for _, other := range step.Part.Steps[from:step.Index] {
		if other.Verb.Fills() && other.Uses != nil && s.Part(other.Uses).wantsKill() &&
			!s.crusts(other, step) {
			out = append(out, s.Part(other.Uses))
		}
	}
	return out
}

// Lethality is the Salmonella log reduction of a bake or cook, where it is
// least sure: in the fillings that want a kill, else in the part.
func (s *Sheet) Lethality(step *formula.Step) Value {
	of := s.WantKill(step)
	if len(of) == 0 {
		of = append(of, s.Part(step.Part))
	}
	return s.killedBy(step, of, whole)
}

// extent is how much of a kill's estimate is computed.
type extent uint8

const (
	whole  extent = iota
	lowEnd        // the middle is left alone where the low end is a kill step already
)

// killedBy integrates over the core in the step, and over the cooling
// straight after a bake: the oven's slow end with the quick end of the
// cooling, and the middle of both. Only the low end is needed, so the high
// one mirrors it.
func (s *Sheet) killedBy(step *formula.Step, of []*Part, asked extent) Value {
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	if !step.Time.Set {
		return figure.Absent("the time of this "+step.Verb.Name, step.Place)
	}
	low, mid := math.Inf(1), math.Inf(1)
	for _, p := range of {
		kill := microbe.KillFor(p.foodFor(), p.awEnds().Lo)
		var slow, usual float64
		if step.Verb.Bakes() {
			slow = s.ovenLog(&kill, st, st.OvenMinutes.Lo, figure.Low) +
				s.coolingLog(&kill, step, figure.Low)
			if asked == lowEnd && slow >= microbe.BakeLogTarget {
				usual = slow
			} else {
				usual = s.ovenLog(&kill, st, st.OvenMinutes.Mid(), figure.Middle) +
					s.coolingLog(&kill, step, figure.Middle)
			}
		} else {
			slow = kill.Log(st.StartCore.Low, st.Core.Low, step.Time.Lo)
			usual = kill.Log(st.StartCore.Mid, st.Core.Mid, step.Time.Mid())
		}
		low, mid = min(low, slow), min(mid, usual)
	}
	mid = max(low, mid)
	return Value{Lo: low, Mid: mid, Hi: 2*mid - low, Origin: figure.ByModel}
}

// Without a model, a bake this long and hot may reach its target core. The
// last tenth of its time brings the last kelvins (judgement: loaves take
// longer for them).
const aimLeastMin, aimLeastC, lastTenth, lastKelvins = 30, 160, 0.1, 5

// aimedCore is the target core of a bake without a reading. CoreReached says
// when it is believed; of raw meat none is.
func (s *Sheet) aimedCore(step *formula.Step) (c float64, ok bool) {
	if !step.Verb.Bakes() || !step.Core.Set || step.IsProbed() ||
		s.HoldsUncookedMeat(step).Hi == 1 {
		return 0, false
	}
	v := s.CoreReached(step)
	if v.Absent {
		return step.Core.Lo, step.At.Set && step.At.Lo >= aimLeastC && step.Time.Lo >= aimLeastMin
	}
	return step.Core.Lo, v.Origin != figure.ByModel
}

// ovenLog follows the core through an oven, by the model's slow end (Low)
// or its middle. It goes through a reading at the end, or a target that
// is believed.
func (s *Sheet) ovenLog(
	kill *microbe.Kill, st *history.Stage, minutes float64, run figure.Run,
) float64 {
	const steps = 24
	oven := st.Oven
	end, known := s.aimedCore(st.Step)
	if r := st.Step.Reading; r != nil && r.Temp.Set && minutes > 0 {
		known, end = true, r.Temp.Mid()
		if run == figure.Low {
			end = r.Temp.Lo
		}
	}
	switch {
	case !st.HasOven && known && st.Step.Time.Set:
		return kill.Log(end-lastKelvins, end, lastTenth*st.Step.Time.Lo)
	case !st.HasOven:
		return 0
	case known:
		through, ok := oven.Through(end, minutes)
		if !ok {
			return 0
		}
		oven = through
	}
	sum, last := 0.0, st.OvenStart.Low
	for i := range steps {
		core := oven.Core(run, minutes*float64(i+1)/steps)
		sum += kill.Log(last, core, minutes/steps)
		last = core
	}
	return sum
}

// coolingLog goes on over the waits straight after a bake: the middle stays
// hot for a while. The low run cools quickest.
func (s *Sheet) coolingLog(kill *microbe.Kill, bake *formula.Step, run figure.Run) float64 {
	sum := 0.0
	record := s.Part(bake.Part).Record()
	for i := bake.Index + 1; i < len(record.Stages); i++ {
		st := &record.Stages[i]
		trace := st.Trace[run]
		switch {
		case !st.Known || st.Step.Verb.Bakes():
			return sum
		// no course, since nothing in it needs control: the oven alone counts
		case trace == nil && st.Step.Time.Set:
			return sum
		}
		for k := 1; k < len(trace); k++ {
			sum += kill.Log(trace[k-1].Core, trace[k].Core, 60*(trace[k].Hours-trace[k-1].Hours))
		}
	}
	return sum
}

// IsKilled reports whether the part goes through a bake that is a proven kill
// step at its slow end.
func (p *Part) IsKilled() Value {
	return p.once(&p.killed, isKilled)
}

// isKilled works IsKilled out.
func isKilled(p *Part) Value {
	out, found := figure.YesNo(true), false
	ask := func(q *Part, from int) {
		for _, step := range q.Steps[from:] {
			if q.BakesDough(step) && !step.BakesOn() {
				found = true
				if from > 0 && p.sheet.crusts(q.Steps[from-1], step) {
					return
				}
				v := p.sheet.killedBy(step, []*Part{p}, lowEnd)
				switch {
				case v.Absent && out.Hi == 1:
					out = figure.Maybe(v.Need.What, v.Need.Place)
				case !v.Absent && v.Lo < microbe.BakeLogTarget &&
					(v.Hi < microbe.BakeLogTarget || out.Hi == 0):
					out = figure.YesNo(false)
				case !v.Absent && v.Lo < microbe.BakeLogTarget:
					out = figure.Maybe(
						"a core reading in this "+step.Verb.Name+": measured = \"93 C core\"",
						step.Place,
					)
				}
				return
			}
		}
		out, found = figure.YesNo(false), true
	}
	if p.HasStep((*formula.Verb).Bakes) || p.Fried() {
		ask(p, 0)
		return out
	}
	for _, q := range p.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses == p.Part {
				ask(p.sheet.Part(q), i+1)
			}
		}
		for _, in := range q.Ingredients {
			if in.Of == p.Part {
				if v := p.sheet.Part(q).IsKilled(); v.Hi == 0 || out.Lo == 1 {
					out = v
				}
				found = true
			}
		}
	}
	if !found {
		return figure.YesNo(false)
	}
	return out
}
