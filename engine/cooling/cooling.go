// Package cooling says whether what was cooked is cold in the hours of the
// kitchen's code (kitchen.Law): which wait begins a cooling, how long each
// stage takes, and how shallow the part must stand.
//
//	cooling.go   the clock of the code      FDA Food Code 2022, 3-501.14 (read)
//	advice.go    how shallow it must stand  the slow end of the model
//
// The unfavourable end of every error is in the figures; the rules take it.
package cooling

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/history/ambient"
	"forebake/engine/quantity"
	"forebake/engine/safety"
)

// Short names of what is asked.
type (
	Interval = figure.Interval
	Value    = figure.Value
	Sheet    = safety.Sheet
	Part     = safety.Part
)

// StartsHot reports whether a wait begins a cooling: the part comes to it hot
// from a cook or bake, not from an earlier wait of the cooling. None begins
// in hot surroundings, before another heat, or where the part is eaten,
// thrown away or baked in time: see HotOut, IsHeatedInTime.
func StartsHot(s *Sheet, step *formula.Step) Value {
	if endsHot(s, step) || HotOut(s, step).Lo > 0 || IsHeatedInTime(s, step) {
		return figure.YesNo(false)
	}
	return startsHot(s, step)
}

// endsHot reports whether a wait is the last and ends, as written, above
// where a cooling counts.
func endsHot(s *Sheet, step *formula.Step) bool {
	if !step.To.Set || step.To.Lo < s.Limits().CoolFromC.Value {
		return false
	}
	for _, later := range step.Part.Steps[step.Index+1:] {
		if later.Verb.Waits() {
			return false
		}
	}
	return true
}

// HotOut is how long a dough stands out after its heat, h, where time is its
// control and not a cooling: its last waits, none cold, take no more than the
// code's hours, and it is kept no longer. FDA Food Code 2022, 3-501.19(B)
// (read): 4 h from hot holding. A code with less has its own figure, which a
// rule holds against this one. Elsewhere it is 0.
func HotOut(s *Sheet, step *formula.Step) Value {
	p, l := step.Part, s.Limits()
	none := figure.ValueOf(Interval{})
	if !s.Part(p).IsDough() {
		return none
	}
	from := len(p.Steps)
	for from > 0 && !p.Steps[from-1].Verb.HeatsThrough() {
		from--
	}
	first := func(wait *formula.Step) bool { return wait.Verb.Waits() }
	if from == 0 || step.Index < from ||
		slices.IndexFunc(p.Steps[from:], first) != step.Index-from {
		return none
	}
	sum := Interval{}
	for _, wait := range p.Steps[from:] {
		switch at := s.AroundStep(wait); {
		case !wait.Verb.Waits() || !at.Absent && at.Lo >= l.HotHoldC.Value:
		case !wait.Time.Set || at.Absent || at.Hi <= l.ColdC.Value:
			return none
		default:
			sum = sum.Add(wait.Time.Interval.Scale(1.0 / 60))
		}
	}
	keep := s.Formula.Keep
	if sum.Lo == 0 || sum.Hi > l.ColdOutHours.Value || keep.Set && keep.Interval.Hi/60 > sum.Hi {
		return none
	}
	return figure.ValueOf(sum)
}

// startsHot is StartsHot without asking where the part goes next.
func startsHot(s *Sheet, step *formula.Step) Value {
	hot := s.Limits().CoolFromC.Value
	keptHot := func(step *formula.Step) bool {
		around, ok := ambient.Around(s.Kitchen, step)
		return ok && around.Lo >= hot
	}
	before := false
	for k := step.Index - 1; k >= 0 && !before; k-- {
		switch other := step.Part.Steps[k]; {
		case other.Verb.Heats():
			before = true
		case other.Verb.Waits() && !keptHot(other):
			return figure.YesNo(false)
		}
	}
	if !before || keptHot(step) {
		return figure.YesNo(false)
	}
	st, missing := s.Stage(step)
	if st == nil {
		return figure.Maybe(missing.Need.What, missing.Need.Place)
	}
	switch {
	case st.StartCore.Low >= hot:
		return figure.YesNo(true)
	case st.StartCore.High < hot:
		return figure.YesNo(false)
	}
	return figure.Maybe("measured = \"... C\" in the step before", step.Place)
}

// Stages are the stages of a cooling that the code's clock covers.
type Stages uint8

// FirstStage ends at the code's first limit (21 C), BothStages at its second
// (5 C).
const (
	FirstStage Stages = iota
	BothStages
)

// Hours gives the hours from the start of the code's clock until the part
// is at a temperature, over all waits of a cooling. Where it is cold enough
// to keep the part, or should be, the last wait lasts as long as needed;
// elsewhere the clock ends with the steps as written. Over BothStages a bake
// that follows in time ends the clock, once the first stage is done.
func Hours(s *Sheet, step *formula.Step, stages Stages) Value {
	p, l := s.Part(step.Part), s.Limits()
	if st, missing := s.Stage(step); st == nil {
		return missing
	}
	target, most := l.FirstToC.Value, l.FirstHours.Value
	if stages == BothStages {
		target, most = l.SecondToC.Value, l.TotalHours.Value
	}
	from := fallsTo(p, step, l.CoolFromC.Value)
	fall := fallsTo(p, step, target)
	from.hours = from.hours.Min(from.since).Min(fall.since) // a reading tells no start of a clock
	to, over := fall.hours, fall.over
	if !from.ok || !fall.ok {
		return figure.Absent(
			"the surroundings of every wait from this "+step.Verb.Name+" on",
			step.Place,
		)
	}
	if stages == BothStages {
		if first := fallsTo(p, step, l.FirstToC.Value); first.ok && first.done {
			if baked, ok := p.Sheet().HoursToHeat(step.Part, step.Index); ok {
				to = to.Min(figure.Estimate{Low: baked.Lo, Mid: baked.Mid(), High: baked.Hi})
				over = true
			}
		}
	}
	between := func(from, to float64) float64 {
		if math.IsInf(from, 1) {
			return 0 // kept hot: the clock never starts
		}
		return max(0, to-from)
	}
	v := Value{
		Lo:     between(from.hours.Low, to.Low),
		Mid:    between(from.hours.Mid, to.Mid),
		Hi:     between(from.hours.High, to.High),
		Origin: figure.ByModel,
	}
	falls, until, warm := surfaceFalls(p, step, l.CoolFromC.Value)
	outside := to.Mid - falls
	switch { // where the middle is no answer to the code
	case !over: // the steps end before it is there
		v.Need = &figure.Need{
			What:  "a wait until it is at " + quantity.Format(target, "C"),
			Place: step.Place,
		}
	case v.Mid <= most && outside > most:
		// only its middle stays hot for long; what lies around it does not
		v.Need = &figure.Need{What: "measured = \"... C\" in this step", Place: step.Place}
		if warm && to.Mid > until { // where it stood first its outside could not come to 21 C
			v.Hi = max(v.Hi, outside)
		}
	}
	v.Lo, v.Hi = min(v.Lo, v.Mid), max(v.Hi, v.Mid)
	if math.IsInf(v.Mid, 1) {
		v.Mid = math.NaN()
	}
	if math.IsInf(v.Lo, 1) {
		// No run gets there: it takes at least the hours written.
		v.Lo = 0
		for _, st := range coolingFrom(p, step) {
			v.Lo += st.Step.Time.Lo / 60
		}
	}
	return v
}

// fall is when each run of a cooling reaches a temperature, h from its start.
type fall struct {
	hours figure.Estimate
	since figure.Estimate // the start of the wait in which a reading ends it; infinite without
	done  bool            // every run is there by the end of the steps as written
	over  bool            // the middle run is there by then, or goes on to it in the cold
	ok    bool            // the surroundings of every wait are known
}

// fallsTo follows the waits of a cooling for the time at which each run
// reaches a temperature. The coldest run is quickest: it is the low end.
func fallsTo(p *Part, step *formula.Step, targetC float64) fall {
	waits := coolingFrom(p, step)
	keeps := false
	for _, st := range waits {
		at, l := p.Sheet().AroundStep(st.Step), p.Sheet().Limits()
		// Nor does a chill last less long in a fridge that is too warm.
		keeps = keeps || !at.Absent && (at.Hi <= l.ColdC.Value ||
			st.Step.Verb.Retards() && at.Hi < l.FirstToC.Value)
	}
	out := [figure.Runs]float64{math.NaN(), math.NaN(), math.NaN()}
	since := [figure.Runs]float64{math.Inf(1), math.Inf(1), math.Inf(1)}
	done, over := true, true
	var at [figure.Runs]float64
	for i, st := range waits {
		if !st.Known {
			if slices.ContainsFunc(out[:], math.IsNaN) {
				return fall{}
			}
			break // every run was there before
		}
		ambient := [figure.Runs]float64{st.Ambient.Lo, st.Ambient.Mid(), st.Ambient.Hi}
		last := i == len(waits)-1
		for r := range out {
			if !math.IsNaN(out[r]) {
				continue
			}
			trace := st.Trace[r]
			end := trace[len(trace)-1].Hours
			h, met := history.DownTo(trace, ambient[r], targetC)
			if read, ok := readBy(st.Step, targetC); ok && (!met || read < h) {
				h, met, since[r] = read, true, at[r]
			}
			switch {
			case met:
				out[r] = at[r] + h
			case !last:
				at[r] += end
			case keeps:
				h, ok := onTo(p, st, figure.Run(r), ambient[r], targetC)
				if !ok {
					return fall{}
				}
				out[r], done = at[r]+h, false
			default:
				out[r], done = at[r]+end, false
				over = over && figure.Run(r) != figure.Middle
			}
		}
	}
	est := figure.Estimate{Low: out[figure.Low], Mid: out[figure.Middle], High: out[figure.High]}
	read := figure.Estimate{Low: since[0], Mid: since[1], High: since[2]}
	return fall{est, read, done, over, len(waits) > 0}
}

// readBy is when a probe showed the part no warmer than a temperature, h from
// the start of the step; ok is false where none did.
func readBy(step *formula.Step, targetC float64) (h float64, ok bool) {
	if !step.IsProbed() || step.Reading.Temp.Hi > targetC {
		return 0, false
	}
	after := step.Time
	if r := step.Reading; r.After.Set {
		after = r.After
	}
	return after.Hi / 60, after.Set
}

// surfaceFalls is when the surface of the middle run is no warmer than a
// temperature, h from the start of a cooling, by the sample before; until is
// the end of that wait, and warm is whether its surroundings keep the first
// stage from ever ending.
func surfaceFalls(p *Part, step *formula.Step, c float64) (at, until float64, warm bool) {
	for _, st := range coolingFrom(p, step) {
		trace := st.Trace[figure.Middle]
		if len(trace) == 0 {
			break
		}
		until = at + trace[len(trace)-1].Hours
		for i, b := range trace {
			if b.Surface <= c {
				return at + trace[max(0, i-1)].Hours, until,
					st.Ambient.Mid() >= p.Sheet().Limits().FirstToC.Value
			}
		}
		at = until
	}
	return at, until, false
}

// coolingFrom lists a cooling's waits from a step to the next cook or bake.
func coolingFrom(p *Part, step *formula.Step) []*history.Stage {
	var out []*history.Stage
	record := p.Record()
	for i := step.Index; i < len(record.Stages); i++ {
		st := &record.Stages[i]
		switch verb := st.Step.Verb; {
		case verb.HeatsThrough():
			return out
		case st.Trace[figure.Low] != nil || !st.Known && verb.Waits():
			out = append(out, st)
		}
	}
	return out
}

// onTo follows a run past its course's end: by its rate of decay, once well
// under way; else by following it again.
func onTo(
	p *Part,
	st *history.Stage,
	run figure.Run,
	ambientC, targetC float64,
) (hours float64, ok bool) {
	trace := st.Trace[run]
	first, before, last := trace[0].Core-ambientC, trace[len(trace)-2], trace[len(trace)-1]
	if targetC <= ambientC {
		return math.Inf(1), true
	}
	if a, b := before.Core-ambientC, last.Core-ambientC; b > 0 && b < a && a < 0.6*first {
		pace := math.Log(a/b) / (last.Hours - before.Hours)
		return last.Hours + math.Log(b/(targetC-ambientC))/pace, true
	}
	b, ok := p.Sheet().Simulator.TimeTo(p.Setup(), st.Step, targetC)
	return b.At(run), ok
}

// IsHeatedInTime reports whether a part that stands hot is baked or cooked
// again, in all that it goes into, within the code's hours for a working
// supply: time is its control, and it needs no cooling. FDA Food Code 2022,
// 3-501.19(B) (read): from 57 C, cooked within 4 h. The hours count from the
// start of the wait.
func IsHeatedInTime(s *Sheet, step *formula.Step) bool {
	h, ok := s.HoursToHeat(step.Part, step.Index)
	return ok && h.Hi <= s.Limits().ColdOutHours.Value && !s.Part(step.Part).IsDough()
}

// KeepsHours reports whether every cooling of the part, its own and
// those inside what takes it, keeps the code's hours by readings or the
// middle of the model, and its waits in neither cold nor heat keep what the
// code gives cold food. What is not written counts as over.
func KeepsHours(p *Part) Value {
	if p.UnknownStage() != nil {
		return figure.YesNo(false)
	}
	l := p.Sheet().Limits()
	warm := Interval{}
	inTime := func(q *Part, from int) bool {
		for _, step := range q.Steps[from:] {
			if !step.Verb.Waits() {
				continue
			}
			at := p.Sheet().AroundStep(step)
			if at.Absent || !step.Time.Set {
				return false
			}
			if at.Hi > l.ColdC.Value && at.Lo < l.HotHoldC.Value {
				warm = warm.Add(step.Time.Interval.Scale(1.0 / 60))
			}
			if startsHot(p.Sheet(), step).Hi == 0 {
				continue
			}
			first := Hours(p.Sheet(), step, FirstStage)
			both := Hours(p.Sheet(), step, BothStages)
			if first.Absent || both.Absent || first.Need != nil || both.Need != nil ||
				!(first.Mid <= l.FirstHours.Value && both.Mid <= l.TotalHours.Value) {
				return false
			}
		}
		return true
	}
	if !inTime(p, 0) {
		return figure.YesNo(false)
	}
	for _, q := range p.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses == p.Part && !inTime(p.Sheet().Part(q), i+1) {
				return figure.YesNo(false)
			}
		}
	}
	return figure.YesNo(warm.Hi <= l.ColdOutHours.Value)
}

// dryPct is the water up to which an ingredient cannot spoil, % (judgement).
const dryPct = 15

// madeCold reports whether all that is wet in the part goes in as cold as it
// has to be kept. What is made of ingredients at room warmth alone has the
// four hours of 3-501.14(B) (read).
func madeCold(p *Part, coldC float64) bool {
	return !slices.ContainsFunc(p.Ingredients, func(in *formula.Ingredient) bool {
		wet := in.Item == nil || in.Item.Water > dryPct
		return wet && !(in.Temp.Set && in.Temp.Hi <= coldC)
	})
}

// MadeToCold is the time from the end of a part's mix until its core is cold,
// h, or until it goes into the oven in all that takes it: a crust baked in
// time need not be cold first. It is 0 for a part made of cold ingredients.
func MadeToCold(s *Sheet, step *formula.Step) Value {
	p := s.Part(step.Part)
	if madeCold(p, s.Limits().ColdC.Value) {
		return figure.ValueOf(Interval{})
	}
	before := Interval{}
	mixed := !p.HasStep((*formula.Verb).Mixes)
	for _, other := range p.Steps[:step.Index] {
		if mixed && other.Time.Set {
			before = before.Add(other.Time.Interval.Scale(1.0 / 60))
		}
		mixed = mixed || other.Verb.Mixes()
	}
	cold := s.Limits().SecondToC.Value
	v := s.HoursTo(step, cold)
	if v.Absent {
		return v
	}
	// A run that is cold as this step begins was judged in an earlier one.
	st, _ := s.Stage(step)
	for _, x := range [...]struct {
		start, before float64
		h             *float64
	}{{st.StartCore.Low, before.Lo, &v.Lo}, {st.StartCore.Mid, before.Mid(), &v.Mid},
		{st.StartCore.High, before.Hi, &v.Hi}} {
		if x.start > cold {
			*x.h += x.before
		}
	}
	if h, ok := readBy(step, cold); ok {
		h += before.Hi
		if math.IsNaN(v.Mid) {
			v.Mid = h
		}
		v.Lo, v.Mid, v.Hi = min(v.Lo, h), min(v.Mid, h), min(v.Hi, h)
	}
	if baked, ok := p.Sheet().HoursToHeat(step.Part, step.Index); ok {
		baked = baked.Add(before)
		v.Lo, v.Mid, v.Hi = min(v.Lo, baked.Hi), min(v.Mid, baked.Hi), min(v.Hi, baked.Hi)
	}
	return v
}
