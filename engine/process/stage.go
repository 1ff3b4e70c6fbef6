package process

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/history/ambient"
	"forebake/engine/larder"
	"forebake/engine/makeup"
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

// Lacking is the value of a figure that a stage without temperatures cannot
// give: what must be written, and where.
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

// CoreEnd is the core as a step ends. A probed bake needs nothing of what
// came before.
func (s *Sheet) CoreEnd(step *formula.Step) Value {
	if r := step.Reading; step.Verb.Bakes() && r != nil && r.Temp.Set {
		return Value{Lo: r.Temp.Lo, Mid: r.Temp.Mid(), Hi: r.Temp.Hi, Origin: figure.Measured}
	}
	return s.OfStage(step, func(st *history.Stage) figure.Estimate { return st.Core })
}

// DoughEnd is the coldest dough as a bake ends: the core, or the dough that
// touches a lump of filling.
func (s *Sheet) DoughEnd(step *formula.Step) Value {
	if r := step.Reading; r != nil && r.Temp.Set {
		return s.CoreEnd(step)
	}
	return s.OfStage(step, func(st *history.Stage) figure.Estimate { return st.DoughCore })
}

// OfStage is an estimate of the step's stage, as a value.
func (s *Sheet) OfStage(step *formula.Step, pick func(*history.Stage) figure.Estimate) Value {
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	return measuredValue(pick(st), st.Measured)
}

// StartCore is the core as a step begins; of bakes in one oven, as the first
// begins. A reading in the step is of later.
func (s *Sheet) StartCore(step *formula.Step) Value {
	step = step.InOven()[0]
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	return st.StartCore.Value()
}

// HoursTo is the time until the core is at a temperature, in a step without
// an end. It never comes in surroundings that are not cold enough.
func (s *Sheet) HoursTo(step *formula.Step, targetC float64) Value {
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	p := s.Part(step.Part)
	if v, ok := hoursFromTrace(st, targetC); ok {
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

// hoursFromTrace reads the time to a temperature off a cooling's courses, where they
// were drawn and every run gets there within the step.
func hoursFromTrace(st *history.Stage, targetC float64) (Value, bool) {
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

// LastCool reports whether no later step of the part cools it.
func LastCool(step *formula.Step) bool {
	return !slices.ContainsFunc(step.Part.Steps[step.Index+1:], func(s *formula.Step) bool {
		return s.Verb.Cools() && !s.Verb.Freezes()
	})
}

// StoredNext reports whether a later step of the part stores it.
func StoredNext(step *formula.Step) bool {
	return slices.ContainsFunc(step.Part.Steps[step.Index+1:], func(s *formula.Step) bool {
		return s.Verb.Stores()
	})
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

// Baked reports whether the part is baked or fried, by itself or inside
// another part.
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

// steamC is the highest temperature of steam and water in a kitchen, C: hot
// fat is above it.
const steamC = 120

// IsFried is open for a dough whose cook states no way (by = ...): it may be
// in hot fat. A paste of flour and milk is not.
func (p *Part) IsFried() Value {
	if p.Fried() {
		return figure.YesNo(true)
	}
	for _, s := range p.Steps {
		cool := s.At.Set && s.At.Hi <= steamC
		if p.Kind == formula.Dough && s.Verb.Cooks() && s.HeatsAll() && s.Way == nil && !cool {
			return figure.Maybe("by = \"...\" in this "+s.Verb.Name, s.Place)
		}
	}
	return figure.YesNo(false)
}

// BakesDough reports whether a step bakes the part, or fries a dough.
func (p *Part) BakesDough(step *formula.Step) bool {
	return step.Verb.Bakes() || p.IsDough() && step.InHotFat()
}

// HoldsRawMeat reports whether meat or fish goes into the bake, in dough or
// filling, without a cook of its own.
func (s *Sheet) HoldsRawMeat(step *formula.Step) Value {
	return s.holdsUncooked(step, func(p *Part) bool {
		return p.Controls(larder.ControlMeat, larder.ControlFish)
	})
}

// HoldsUncookedMeat is HoldsRawMeat without what was bought cooked, or is
// eaten raw: ham, smoked fish.
func (s *Sheet) HoldsUncookedMeat(step *formula.Step) Value {
	return s.holdsUncooked(step, func(p *Part) bool { return p.Holds(makeup.IsRawMeat) })
}

// holdsUncooked reports whether dough or filling bring something of a kind
// into a bake or hot fat that their own steps have not cooked.
func (s *Sheet) holdsUncooked(step *formula.Step, is func(*Part) bool) Value {
	raw := func(p *formula.Part) bool { return !s.Part(p).CooksAll() && is(s.Part(p)) }
	found := raw(step.Part)
	for _, other := range step.Part.Steps[:step.Index] {
		found = found || other.Uses != nil && raw(other.Uses)
	}
	return figure.YesNo(found)
}

// The fat's temperature and the time from which a fried dough counts as
// cooked through. Doughnuts were tested at 190.6 C, over 7 log at 2 min
// (Channaiah et al. 2018, abstract read); the span and the minute are
// common practice.
const (
	fatColdC, fatHotC = 150, 210
	friedLeastMin     = 1
)

// friedMin is the least frying time, min for heatsBy of a piece's
// weight: 1 for the published doughnut of 55 g, 10 for 1.8 kg.
const friedMin = friedLeastMin / 14.5

// heatsBy scales the time to heat a piece through with its weight, g, to
// two thirds.
func heatsBy(grams float64) float64 { return math.Cbrt(grams * grams) }

// FriedWell reports whether fat and time cook a dough through, not only brown
// it. An aimed core is no proof; a read core answers.
func (s *Sheet) FriedWell(step *formula.Step) Value {
	switch {
	case step.IsProbed():
		return figure.YesNo(true)
	case !step.At.Set:
		return figure.Maybe(
			"at = \"180 C\", the temperature of the fat in this "+step.Verb.Name,
			step.Place,
		)
	case !step.Time.Set:
		return figure.Maybe("the time of this "+step.Verb.Name, step.Place)
	}
	need := float64(friedLeastMin)
	var open *formula.Ingredient
	if g := s.PieceMass(step); !s.Pieces().Absent {
		if !g.IsFinite() { // a seasoning weighs next to nothing
			g.Hi, open = g.Lo, s.unbounded(step)
		}
		need = max(need, friedMin*heatsBy(g.Hi))
	}
	hot := step.At.Lo >= fatColdC && step.At.Hi <= fatHotC && step.Time.Lo >= need
	if hot && open != nil {
		return figure.Maybe("the amount of \""+open.Name+"\"", open.Place)
	}
	return figure.YesNo(hot)
}

// unbounded is the first ingredient without an amount in a part and its
// fillings up to a step; nil without one. A seasoning bounded by its
// class does not count.
func (s *Sheet) unbounded(step *formula.Step) *formula.Ingredient {
	parts := s.Part(step.Part).Contents()
	for _, other := range step.Part.Steps[:step.Index] {
		if other.Uses != nil {
			parts = append(parts[:len(parts):len(parts)], s.Part(other.Uses).Contents()...)
		}
	}
	for _, p := range parts {
		for _, in := range p.Ingredients {
			if _, ok := p.MostUsual(in); in.IsOpen() && !ok {
				return in
			}
		}
	}
	return nil
}

// cookedMin is the least that a piece of dough cooks in steam, in water or
// on a plate, min for heatsBy of its weight: 7 min for 70 g, 10 for 120 g,
// 57 for a loaf of 1.7 kg (judgement, by common practice of 10 to 15 min
// for buns).
const cookedMin = 0.4

// CookedLong reports whether a dough's cook outside an oven is long enough
// for its middle. Only then is an aimed core believed.
func (s *Sheet) CookedLong(step *formula.Step) bool {
	if step.InHotFat() {
		return s.FriedWell(step).Lo == 1
	}
	g := s.PieceMass(step)
	return step.Time.Set && g.Hi > 0 && step.Time.Lo >= cookedMin*heatsBy(g.Hi)
}

// Reached is the temperature of all of the part after a cook or bake: as
// read, else as aimed at, else as modelled. A dough's aim is not reached in
// its middle when it cooks too briefly.
func (s *Sheet) Reached(step *formula.Step) Value {
	switch r := step.Reading; {
	case r != nil && r.Temp.Set:
		return figure.ValueOf(r.Temp.Interval)
	case step.Verb.Cooks() && step.Part.Kind == formula.Dough && !s.CookedLong(step):
		return figure.Absent("measured = \"92 C core\" in this "+step.Verb.Name, step.Place)
	case step.Core.Set:
		return figure.ValueOf(step.Core.Interval)
	case step.To.Set:
		return figure.ValueOf(step.To.Interval)
	case step.Verb.Bakes():
		return s.CoreEnd(step)
	}
	word := "to"
	if step.Part.Kind == formula.Dough {
		word = "core"
	}
	return figure.Absent(word+" = \"... C\" in this "+step.Verb.Name, step.Place)
}

// AroundStep gives the ambient temperature of a step. It fills in only what
// needs no guess: a chill is in the fridge.
func (sh *Sheet) AroundStep(s *formula.Step) Value {
	around, ok := ambient.Around(sh.Kitchen, s)
	if !ok {
		return figure.Absent("at = \"room\" or a temperature in this "+s.Verb.Name, s.Place)
	}
	v := figure.ValueOf(around)
	v.Origin = figure.AsGiven
	return v
}

// Thickness is that of the sheet, slab or tray of a step, mm: as written, or by a sheet's sides.
func (sh *Sheet) Thickness(s *formula.Step) Value {
	mm, origin := Interval{}, figure.AsGiven
	if s.Form != nil {
		mm = s.Form.MM
	}
	if s.Verb.Sheets() && s.TellsThickness() {
		mm, _ = sh.thickness(s)
		if !s.Measure.Set {
			origin = figure.ByModel
		}
	}
	if mm == (Interval{}) {
		return figure.Absent("a thickness in this "+s.Verb.Name, s.Place)
	}
	v := figure.ValueOf(mm)
	v.Origin = origin
	return v
}

// HottestAt is the hottest that the part may enter its stage i, C, back from
// the last known temperature.
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
			return history.BoilingC
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

// DriesHot reports whether a step brushes milk and sugar on a bun straight
// from the bake, so little that the bun's heat dries it to two of sugar on
// one of water, about 0.85 (1-201.10, table B; sugar 65 Brix and over: MN
// Extension, read). From 95 to 60 C a bun gives off 4 % of its weight as
// steam (computed); half of that is counted (judgement).
func (s *Sheet) DriesHot(step *formula.Step) bool {
	q, p := s.Part(step.Uses), s.Part(step.Part)
	if step.Index == 0 || !p.BakesDough(step.Part.Steps[step.Index-1]) || !q.IsMilkSyrup() {
		return false
	}
	lost := q.Grams(makeup.AllWater).Hi - q.Grams(makeup.Sugar).Lo/2
	return lost <= 0.02*p.Grams(makeup.Mass).Lo
}
