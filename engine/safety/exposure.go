package safety

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/makeup"
	"forebake/engine/process"
	"forebake/engine/safety/clock"
	"forebake/engine/science/microbe"
)

// clock runs along the part's steps up to its bake; for spores, beyond it.
func (p *Part) clock() *clock.Clock {
	if p.exposed != nil {
		return p.exposed
	}
	c := p.ownClock()
	p.exposed = c // before the places are looked at, so that nothing can go round
	var worst *clock.Clock
	for _, q := range p.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses != p.Part {
				continue
			}
			stops := pastBake
			if p.IsDryFilling() {
				stops = untilBake
			}
			there := p.sheet.clocks.Next()
			*there = *c
			p.sheet.Part(q).expose(there, i+1, stops)
			if worst == nil {
				worst = there
			} else {
				worst.Worse(there)
			}
		}
	}
	if worst != nil {
		p.exposed = worst
	}
	return p.exposed
}

// ownClock runs along the part's own steps, without those taken in.
func (p *Part) ownClock() *clock.Clock {
	if p.ownExposed != nil {
		return p.ownExposed
	}
	l := p.sheet.Limits()
	c := p.sheet.clocks.Next()
	c.Start(l.ColdC.Value, l.HotHoldC.Value, l.AmbientHours.Value)
	c.Live = p.liveFactor()
	p.ownExposed = c
	for _, in := range p.Ingredients {
		if in.Of == nil {
			continue
		}
		if q := p.sheet.Part(in.Of); q.NeedsControl().Hi == 1 || q.IsLiveDough() {
			c.Inherit(p.sheet.Part(in.Of).ownClock())
		}
	}
	if p.IsDough() {
		p.expose(c, 0, untilBake)
	} else {
		p.expose(c, 0, pastBake)
	}
	return c
}

// coolsInTimeG is the most that cools in the code's hours whatever it stands in, g: a tub of more
// takes longer (judgement).
const coolsInTimeG = 2500

// span tells where a clock stops.
type span uint8

const (
	untilBake span = iota // a dough's own clock
	pastBake              // that of what is in a dough or on it
)

// expose adds the part's steps, from one on, to a clock.
func (p *Part) expose(c *clock.Clock, from int, stops span) {
	record := p.Record()
	// h; straight after a kill, cooling in the code's time counts for
	// spores alone
	sinceKill := math.Inf(1)
	allowed := p.sheet.Limits().TotalHours.Value
	raw := p.needsOnceCooked() && p.IsCooked()
	for i := from; i < len(record.Stages); i++ {
		st := &record.Stages[i]
		step := st.Step
		hours := Interval{}
		if step.Time.Set {
			hours = step.Time.Interval.Scale(1.0 / 60)
		}
		verb := step.Verb
		hot := st.Known && st.Core.Low >= p.sheet.Limits().CoolFromC.Value
		if verb.Touched() && !hot { // what gets in now is alive
			sinceKill = math.Inf(1)
		}
		sporesOnly := allowed - sinceKill
		raw = raw && !verb.Cooks()
		switch {
		case raw, st.InOwnBowl:
		case !st.Known && !step.Time.Set && verb.Waits():
			c.Unknown(figure.Positive())
		case !st.Known && verb.Bakes():
			c.Unknown(Interval{Hi: ovenH})
		case !st.Known && verb.HeatUnknown(): // it may be an oven
			c.Unknown(Interval{Lo: hours.Lo, Hi: max(hours.Hi, ovenH)})
		case !st.Known && verb.Waits() && p.sheet.inCold(step) && !p.sheet.readWarm(step) &&
			p.HottestAt(i) <= evenlyC && p.Grams(makeup.Mass).Hi <= coolsInTimeG:
			around := p.sheet.AroundStep(step)
			c.UnknownInCold(hours, around.Interval())
		case !st.Known:
			c.Unknown(hours)
		case verb.Waits() && st.HasAmbient && st.Ambient.Hi > growthEndsC &&
			st.StartCore.Low < p.sheet.Limits().HotHoldC.Value:
			// warmed by no cook: a faster warming would count less
			c.Unknown(hours)
		case st.Trace[figure.High] != nil:
			c.Wait(st, sporesOnly)
		// nothing here needs control, or it is crumb: no course was drawn
		case verb.Waits() && hours.Hi > 0:
			c.Straight(st.StartCore, st.CoreMax, hours, sporesOnly)
		case verb.Bakes():
			c.Straight(st.StartCore, heatedThrough, intoHeat(st, hours), sporesOnly)
		case hours.Hi > 0:
			c.Straight(st.StartCore, st.Core, hours, sporesOnly)
		}
		if sinceKill += hours.Hi; hot && sinceKill > 0 && !math.IsInf(sinceKill, 1) {
			sinceKill = 0 // kept hot: its cooling has not begun
		}
		switch {
		case p.BakesDough(step) && !st.InOwnBowl:
			if stops == untilBake || from > 0 && p.Steps[from-1].Verb.Washes() {
				return // what was brushed on before the bake is dry crust after it
			}
			c.Bake()
			sinceKill = math.Inf(-1) // what gets in later is for the rules on keeping it
		case verb.Cooks() && st.Known && !st.InOwnBowl && microbe.EggCooked(st.Core.Low, 1):
			c.Kill()
			sinceKill = 0
			if p.IsDough() && !step.MixesLater() {
				c.Live = figure.Estimate{} // steamed or boiled: nothing lives in it any more
			}
		}
	}
}

// inCold reports whether a step's surroundings, as written, cool in time.
func (s *Sheet) inCold(step *formula.Step) bool {
	at := s.AroundStep(step)
	return !at.Absent && at.Hi <= s.Limits().FirstToC.Value
}

// readWarm reports whether the reading at a step's end is not cold: then
// nothing shows that it cooled in time.
func (s *Sheet) readWarm(step *formula.Step) bool {
	return step.IsProbed() && step.Reading.Temp.Hi > s.Limits().ColdC.Value
}

// evenlyC is the warmest that a part of unknown weight may enter the cold and
// still count as cooling evenly within the code's hours, C. From 40 C up to 8
// kg in one ball grow no more than that, from 26 C up to 60 kg (computed).
const evenlyC = 40

// growthEndsC is where the organisms' fastest growth ends, C: above it a
// hotter run is not the worse one.
const growthEndsC = 45

// heatedThrough is where nothing grows any more, C.
var heatedThrough = figure.Estimate{Low: 60, Mid: 60, High: 60}

// ovenH is the longest that a middle is taken to warm in an oven, h, whatever
// the bake's time: too short a bake leaves it warm as long. A large tin loaf
// is at 60 C by then at the model's slow end (judgement).
const ovenH = 0.75

// intoHeat is an oven's time to bring the middle to where nothing grows,
// however long the bake goes on.
func intoHeat(st *history.Stage, hours Interval) Interval {
	if !st.HasOven {
		return Interval{Lo: min(hours.Lo, ovenH), Hi: ovenH}
	}
	if r := st.Step.Reading; r != nil && r.Temp.Set { // the reading says how fast this oven is
		if through, ok := st.Oven.Through(r.Temp.Mid(), hours.Hi*60); ok {
			if g, why := through.MinutesTo(heatedThrough.Mid); why == "" {
				h := hours.Scale(min(1, g.Mid/(hours.Hi*60)))
				return Interval{Lo: min(h.Lo, ovenH), Hi: min(h.Hi, ovenH)}
			}
		}
	}
	g, why := st.Oven.MinutesTo(heatedThrough.Mid)
	if why != "" {
		return Interval{Lo: min(hours.Lo, ovenH), Hi: ovenH}
	}
	return Interval{Lo: min(hours.Lo, ovenH, g.Low/60), Hi: min(ovenH, g.High/60)}
}

// Budget is the share used of an organism's published time; none without growth.
func (p *Part) Budget(o microbe.Organism) Value {
	if !p.grows(o) {
		return figure.ValueOf(Interval{})
	}
	return p.spentValue(p.clock().Spent(o))
}

// WarmHours is the longest time between cold and hot holding without a kill.
func (p *Part) WarmHours() Value { return p.spentValue(p.clock().WarmHours()) }

// spentValue names the missing reading where a run cannot be followed.
func (p *Part) spentValue(b figure.Estimate) Value {
	v := b.Value()
	if math.IsInf(v.Hi, 1) || v.Hi > v.Lo {
		v.Need = p.UnknownStage()
	}
	if math.IsInf(v.Mid, 1) {
		v.Mid = math.NaN()
	}
	return v
}

// UnknownStage is what must be written to follow the part, through its own steps and from where it
// is put on in others; nil for nothing.
func (p *Part) UnknownStage() *figure.Need {
	look := func(q *Part, from int) *figure.Need {
		for i := from; i < len(q.Record().Stages); i++ {
			if st := &q.Record().Stages[i]; !st.Known {
				return process.Lacking(st).Need
			}
		}
		return nil
	}
	if need := look(p, 0); need != nil {
		return need
	}
	for _, q := range p.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses == p.Part {
				if need := look(p.sheet.Part(q), i); need != nil {
					return need
				}
			}
		}
	}
	return nil
}

// counted are the organisms that rules judge, with each budget's function.
var counted = [...]microbe.Organism{
	microbe.Salmonella, microbe.SAureus, microbe.BCereus, microbe.LMonocytogenes,
}

// FastestOrganism has used most of its time at the careful end.
func (p *Part) FastestOrganism() Value {
	return p.fastest(func(microbe.Organism) bool { return true })
}

// FastestToxin is FastestOrganism of those that leave a toxin.
func (p *Part) FastestToxin() Value { return p.fastest(microbe.Organism.LeavesToxin) }

func (p *Part) fastest(asked func(microbe.Organism) bool) Value {
	name, most := "none", 0.0
	for _, o := range counted {
		if !asked(o) || !p.grows(o) {
			continue
		}
		if spent := p.clock().Spent(o).High; spent > most {
			name, most = o.String(), spent
		}
	}
	return figure.Text(name)
}
