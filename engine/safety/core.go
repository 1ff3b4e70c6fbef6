package safety

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/quantity"
)

// targetTrustedC is the model's middle from which a written target core is
// believed, C: a target alone is no bake, and clears nothing that the time
// leaves raw.
const targetTrustedC = 71

// CoreReached is the core that a bake has brought a dough to: in it, or in a
// bake before that all but raw meat and fish went through. What was baked is not raw again
// (FDA Food Code 2022, 3-401.11, asks for one cook; memory): its warm hours
// and its reheating for hot holding have rules of their own.
func (s *Sheet) CoreReached(step *formula.Step) Value {
	v := s.coreReachedIn(step)
	before := bakedBefore(step)
	if before == nil || s.addsMeat(before, step) {
		return v
	}
	switch was := s.CoreReached(before); {
	case was.Absent:
		return v
	case v.Absent || was.Lo >= v.Lo:
		return was
	}
	return v
}

// addsMeat reports whether meat or fish that its own steps do not cook comes
// onto a dough between two bakes.
func (s *Sheet) addsMeat(before, step *formula.Step) bool {
	between := step.Part.Steps[before.Index:step.Index]
	return slices.ContainsFunc(between, func(on *formula.Step) bool {
		return on.Uses != nil && !s.Part(on.Uses).CooksAll() &&
			s.Part(on.Uses).Controls(larder.ControlMeat, larder.ControlFish)
	})
}

// bakedBefore gives the bake in which the dough of a bake went through the
// oven already, and stood since; nil for none.
func bakedBefore(step *formula.Step) *formula.Step {
	stood := false
	for i := step.Index - 1; i >= 0; i-- {
		switch before := step.Part.Steps[i]; {
		case before.Verb.Bakes():
			if stood {
				return before
			}
			return nil // they count as one: see BakesOn
		case before.Verb.Mixes():
			return nil
		case before.Verb.Waits():
			stood = true
		}
	}
	return nil
}

// coreReachedIn is CoreReached of one bake: as read, else the target where
// the time may well be enough, else as modelled.
func (s *Sheet) coreReachedIn(step *formula.Step) Value {
	if r := step.Reading; r != nil && r.Temp.Set {
		v := figure.ValueOf(r.Temp.Interval)
		v.Origin = figure.Measured
		return v
	}
	model := s.DoughEnd(step) // a filling has rules of its own, but for raw meat
	if s.HoldsRawMeat(step).Hi > 0 {
		model = s.CoreEnd(step)
	}
	if step.Core.Set && s.HoldsUncookedMeat(step).Hi == 0 && !model.Absent &&
		model.Mid >= targetTrustedC && model.Hi >= step.Core.Lo {
		return figure.ValueOf(step.Core.Interval)
	}
	if !model.Absent && (math.IsNaN(model.Mid) || math.IsInf(model.Lo, 0)) {
		need := model.Need
		if need == nil {
			return figure.Absent("all amounts of \""+step.Part.Name+"\"", step.Part.Place)
		}
		return figure.Absent(need.What, need.Place)
	}
	if model.Absent {
		return model
	}
	if n := s.Pieces(); n.Absent && !s.shaped(step) {
		return figure.Absent(
			"how many pieces it makes: makes = \"12 pieces\"",
			step.Part.Formula.Place,
		)
	}
	return model
}

// shaped reports whether a step before the bake gives the pieces' size
// or tin. What is divided by weight is a piece where it is shaped as one:
// strands are plaited, and loaves and rings may be of more.
func (s *Sheet) shaped(bake *formula.Step) bool {
	stand := bake.Part.StandAt(bake.Index)
	alone := stand != nil && stand.Name != formula.UsualStand.Name && !stand.Ring
	for _, other := range bake.Part.Steps[:bake.Index+1] {
		weighed := other.Verb.Divides() && other.Measure.Set &&
			other.Measure.Kind == quantity.Mass
		if weighed && alone || other.Tin != "" || other.Pieces != nil ||
			other.Form != nil && !other.Verb.Waits() {
			return true
		}
	}
	return false
}

// Shares of the way from the model's middle to its slow end, two standard
// deviations off: one such bake in three, or in six, stays cooler.
const oneInThree, oneInSix = 0.2, 0.5

// CoreUsual is CoreReached at what two such bakes in three reach, or at the
// low end of what is written. A stop goes by it.
func (s *Sheet) CoreUsual(step *formula.Step) Value { return s.coreAt(step, oneInThree) }

// CoreLow is CoreReached of five such bakes in six. A risk goes by it.
func (s *Sheet) CoreLow(step *formula.Step) Value { return s.coreAt(step, oneInSix) }

// coreAt is CoreReached as one figure, a share of the way from the model's
// middle to its slow end.
func (s *Sheet) coreAt(step *formula.Step, share float64) Value {
	v := s.CoreReached(step)
	if v.Absent {
		return v
	}
	all := v
	if v.Origin == figure.ByModel {
		v.Lo = v.Mid - share*(v.Mid-v.Lo)
	}
	v.Mid, v.Hi = v.Lo, v.Lo
	if s.ShapeOpen(step).Hi > 0 && v.Origin == figure.ByModel {
		v.Hi = max(v.Lo, all.Hi) // as thin as a ring, it may be done
		v.Need = &figure.Need{
			What: "shape = \"ring\", \"loaf\", \"log\", \"round\" before this bake, " +
				"or measured = \"92 C core\"",
			Place: step.Place,
		}
	}
	return v
}

// ShapeOpen reports whether a large piece goes into a bake on no tin, and nothing says how it
// stands: the bake is reckoned from a round one to a ring.
func (s *Sheet) ShapeOpen(step *formula.Step) Value {
	if step.Part.StandAt(step.Index) != nil {
		return figure.YesNo(false)
	}
	st, missing := s.Stage(step)
	if st == nil {
		return missing
	}
	return figure.YesNo(st.ShapeOpen)
}

// CoreAsRound is CoreUsual of a piece that is round, where nothing says how it stands: the coldest.
func (s *Sheet) CoreAsRound(step *formula.Step) Value {
	v := s.CoreUsual(step)
	if !v.Absent {
		v.Mid, v.Hi, v.Need = v.Lo, v.Lo, nil
	}
	return v
}

// IsReheat reports whether a cook heats food again that was cooked and
// cooled, in the part or one it takes in, and that is held warm afterwards,
// there or where it goes.
func (s *Sheet) IsReheat(step *formula.Step) Value {
	if !step.HeatsAll() {
		return figure.YesNo(false)
	}
	again := s.cooledAgain(step.Part, step.Index)
	return ifPlaced(again.And(s.heldWarm(step.Part, step.Index+1)), step)
}

// ifPlaced is the value of a truth that is open where a wait names no place.
func ifPlaced(t figure.Truth, step *formula.Step) Value {
	if t == figure.Open {
		return figure.Maybe("at = \"fridge\", \"room\" or a temperature in each hold and store",
			step.Place)
	}
	return figure.YesNo(t == figure.Yes)
}

// IsRewarmed is IsReheat, and counts a part mostly bought cooked.
func (s *Sheet) IsRewarmed(step *formula.Step) Value {
	p, bought := s.Part(step.Part), Interval{}
	for _, in := range p.Ingredients {
		if in.Item != nil && in.Item.Is(larder.Cooked) && in.Item.ControlOf() != "" {
			bought = bought.Add(s.Amount(in))
		}
	}
	if step.HeatsAll() && 2*bought.Hi > p.Grams(makeup.Mass).Lo && bought.Hi > 0 {
		return ifPlaced(s.heldWarm(step.Part, step.Index+1), step)
	}
	return s.IsReheat(step)
}

// cooledAgain reports whether a part was cooked and then cooled before one of
// its steps, or came in so. A wait without a place leaves it open.
func (s *Sheet) cooledAgain(p *formula.Part, before int) figure.Truth {
	cooled := figure.No
	for _, in := range p.Ingredients {
		if in.Of != nil {
			cooled = cooled.Or(s.Part(in.Of).cooledInAll())
		}
	}
	cooked := cooled.Possible()
	for _, step := range p.Steps[:before] {
		switch {
		case step.HeatsAll():
			cooked, cooled = true, figure.No
		case cooked && step.Verb.Waits():
			at := s.AroundStep(step)
			is := figure.TruthOf(step.Verb.Cools() || at.Hi < s.Limits().FirstToC.Value)
			if at.Absent && is == figure.No {
				is = figure.Open
			}
			cooled = cooled.Or(is)
		}
	}
	return cooled
}

// cooledInAll is cooledAgain after all steps of a part; computed once.
func (p *Part) cooledInAll() figure.Truth {
	if p.cooled == nil {
		is := p.sheet.cooledAgain(p.Part, len(p.Steps))
		p.cooled = &is
	}
	return *p.cooled
}

// heldWarm reports whether a wait from a step on is meant to keep the part
// hot, or a wait of a part that takes it in or is spread with it after the
// heat; open where a wait has no place. It is computed once a step.
func (s *Sheet) heldWarm(p *formula.Part, from int) figure.Truth {
	known := s.Part(p)
	if known.held == nil {
		known.held = map[int]figure.Truth{}
	}
	if _, has := known.held[from]; !has {
		known.held[from] = s.isHeldWarm(p, from)
	}
	return known.held[from]
}

func (s *Sheet) isHeldWarm(p *formula.Part, from int) figure.Truth {
	held := figure.No
	for _, step := range p.Steps[from:] {
		if step.Verb.HeatsThrough() {
			return held
		}
		if !step.Verb.Waits() {
			continue
		}
		if at := s.AroundStep(step); at.Absent {
			held = figure.Open
		} else if at.Hi > meantHotC {
			return figure.Yes
		}
	}
	for _, q := range s.Formula.Parts {
		for _, in := range q.Ingredients {
			if in.Of == p {
				held = held.Or(s.heldWarm(q, 0))
			}
		}
		for i, step := range q.Steps {
			if step.Uses == p {
				held = held.Or(s.heldWarm(q, i+1))
			}
		}
	}
	return held
}

// meantHotC is from where a hold is to keep food hot, C (common practice).
const meantHotC = 30
