package process

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/quantity"
	"forebake/engine/science/bakersmath"
)

// Stage gives what the history says of a step.
func (s *Sheet) Stage(step *formula.Step) (*history.Stage, Value) {
	record := s.Part(step.Part).Record()
	if step.Index >= len(record.Stages) {
		return nil, figure.Absent("the history of \""+step.Part.Name+"\"", step.Place)
	}
	st := &record.Stages[step.Index]
	if !st.Known {
		return nil, Lacking(st)
	}
	return st, Value{}
}

// Lacking is the value of what a stage without temperatures cannot give: it says what would have to
// be written, and where.
func Lacking(st *history.Stage) Value {
	missing, at := st.Missing, st.Step
	if missing == "" {
		missing = "the temperatures before this " + at.Verb.Name
	}
	if st.MissingAt != nil {
		at = st.MissingAt
	}
	return figure.Absent(missing, at.Place)
}

// CoreEnd is the core as a step ends. That of a bake, when it was probed, needs nothing of what
// came before.
func (s *Sheet) CoreEnd(step *formula.Step) Value {
	if r := step.Reading; step.Verb.Bakes() && r != nil && r.Temp.Set {
		return Value{Lo: r.Temp.Lo, Mid: r.Temp.Mid(), Hi: r.Temp.Hi, Origin: figure.Measured}
	}
	return s.OfStage(step, func(st *history.Stage) figure.Estimate { return st.Core })
}

// OfStage is an estimate of the step's stage, as a value.
func (s *Sheet) OfStage(step *formula.Step, pick func(*history.Stage) figure.Estimate) Value {
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	return measuredValue(pick(st), st.Measured)
}

// StartCore is the core as a step begins, of bakes in one oven as the first begins; a reading in
// the step is of later.
func (s *Sheet) StartCore(step *formula.Step) Value {
	step = step.InOven()[0]
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	return st.StartCore.Value()
}

// HoursTo is the time until the core is at a temperature, as if the step lasted as long as it
// takes; a step whose surroundings are not cold enough never comes there.
func (s *Sheet) HoursTo(step *formula.Step, targetC float64) Value {
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	p := s.Part(step.Part)
	if v, ok := fallen(st, targetC); ok {
		return v
	}
	b, ok := s.Simulator.TimeTo(p.Setup(), step, targetC)
	if !ok {
		return figure.Absent("the surroundings of this "+step.Verb.Name, step.Place)
	}
	v := b.Value()
	if math.IsInf(v.Mid, 1) {
		v.Mid = math.NaN() // the quickest run alone comes there
	}
	if math.IsInf(v.Lo, 1) {
		return figure.Absent(
			"surroundings cold enough to come to "+quantity.Format(
				targetC,
				"C",
			)+" in this "+step.Verb.Name,
			step.Place,
		)
	}
	return v
}

// fallen reads the time to a temperature off the courses of a cooling, where they were drawn and
// every run comes there within the step.
func fallen(st *history.Stage, targetC float64) (Value, bool) {
	var out [figure.Runs]float64
	ambient := [figure.Runs]float64{st.Ambient.Lo, st.Ambient.Mid(), st.Ambient.Hi}
	for r, trace := range st.Trace {
		if trace == nil || trace[0].Core <= ambient[r] {
			return Value{}, false
		}
		h, met := history.DownTo(trace, ambient[r], targetC)
		if !met {
			return Value{}, false
		}
		out[r] = h
	}
	return figure.Ordered(out).Value(), true
}

// AfterBake reports whether an earlier step of the part heats all of it through.
func AfterBake(step *formula.Step) bool { return step.IsAfterHeat() }

// LastCool reports whether no later step of the part cools it.
func LastCool(step *formula.Step) bool {
	for _, other := range step.Part.Steps[step.Index+1:] {
		if other.Verb.Cools() && !other.Verb.Freezes() {
			return false
		}
	}
	return true
}

// StoredNext reports whether a later step of the part stores it.
func StoredNext(step *formula.Step) bool {
	for _, other := range step.Part.Steps[step.Index+1:] {
		if other.Verb.Stores() {
			return true
		}
	}
	return false
}

// HandMixed reports whether every mix of the part is by hand.
func (p *Part) HandMixed() bool {
	found := false
	for _, s := range p.Steps {
		if !s.Verb.Mixes() {
			continue
		}
		if s.Way.Mixer() != bakersmath.ByHand {
			return false
		}
		found = true
	}
	return found
}

// Baked reports whether the part is baked or fried, by itself or inside another part.
func (p *Part) Baked() bool {
	heated := func(q *Part) bool { return q.HasStep((*formula.Verb).Bakes) || q.Fried() }
	if heated(p) {
		return true
	}
	if len(p.Taken) == 0 {
		return false
	}
	for i := range p.sheet.parts {
		if q := &p.sheet.parts[i]; heated(q) && slices.Contains(q.Contents(), p.madePart) {
			return true
		}
	}
	return false
}

// Fried reports whether a step cooks it in hot fat, by what is written.
func (p *Part) Fried() bool {
	for _, s := range p.Steps {
		if s.InHotFat() {
			return true
		}
	}
	return false
}

// IsFried is open for a dough whose cook does not say how (by = ...): it may be in hot fat.
func (p *Part) IsFried() Value {
	if p.Fried() {
		return figure.YesNo(true)
	}
	for _, s := range p.Steps {
		if p.IsDough() && s.Verb.Cooks() && s.HeatsAll() && s.Way == nil {
			return figure.Maybe("by = \"...\" in this "+s.Verb.Name, s.Place)
		}
	}
	return figure.YesNo(false)
}

// BakesDough reports whether a step does to the part what an oven does: it bakes it, or it fries
// a dough.
func (p *Part) BakesDough(step *formula.Step) bool {
	return step.Verb.Bakes() || p.IsDough() && step.InHotFat()
}

// Reached is the temperature that a cook or bake brings all of its part to: as read, else as aimed
// at, else as modelled.
func (s *Sheet) Reached(step *formula.Step) Value {
	switch r := step.Reading; {
	case r != nil && r.Temp.Set:
		return figure.ValueOf(r.Temp.Interval)
	case step.Core.Set:
		return figure.ValueOf(step.Core.Interval)
	case step.To.Set:
		return figure.ValueOf(step.To.Interval)
	case step.Verb.Bakes():
		return s.CoreEnd(step)
	}
	return figure.Absent("to = \"... C\" in this "+step.Verb.Name, step.Place)
}

// AroundStep gives the ambient temperature of a step. Only what needs no guess is filled in: a
// chill is in the fridge.
func (sh *Sheet) AroundStep(s *formula.Step) Value {
	around, ok := history.Around(sh.Kitchen, s)
	if !ok {
		return figure.Absent("at = \"room\" or a temperature in this "+s.Verb.Name, s.Place)
	}
	v := figure.ValueOf(around)
	v.Origin = figure.AsGiven
	return v
}

// Thickness is that of the sheet, slab or tray of a step, as written.
func (*Sheet) Thickness(s *formula.Step) Value {
	mm := Interval{}
	if s.Form != nil {
		mm = s.Form.MM
	}
	if s.Verb.Sheets() && s.Measure.Set {
		mm = s.Measure.Interval
	}
	if mm == (Interval{}) {
		return figure.Absent("a thickness in this "+s.Verb.Name, s.Place)
	}
	v := figure.ValueOf(mm)
	v.Origin = figure.AsGiven
	return v
}

// HottestAt is the hottest that the part may come into its stage i, C, back from the last
// temperature that is known.
func (p *Part) HottestAt(i int) float64 {
	hottest := math.Inf(-1)
	stages := p.Record().Stages[:i]
	for j := range slices.Backward(stages) {
		st := &stages[j]
		step := st.Step
		switch r := step.Reading; {
		case st.InOwnBowl:
			continue
		case st.Known:
			return max(hottest, st.Core.High, st.Mean.High, st.Surface.High)
		case r != nil && r.Temp.Set:
			return max(hottest, r.Temp.Hi)
		case step.Verb.Heats():
			return boilingC
		case step.Verb.PutsOn() && step.Uses != nil:
			hottest = max(hottest, p.sheet.Part(step.Uses).anyTemp().Hi)
		}
		if at := p.sheet.AroundStep(step); !at.Absent {
			hottest = max(hottest, at.Hi)
		}
		if step.Verb.Mixes() {
			if t := p.MixTemp(step); !t.Absent {
				return max(hottest, t.Hi)
			}
		}
	}
	return max(hottest, p.anyTemp().Hi)
}
