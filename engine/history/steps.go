package history

import (
	"forebake/engine/formula"
	"forebake/engine/science/geometry"
	"forebake/engine/science/heat"
)

func (f *Follower) begin(s Setup) {
	f.setup, f.mixed, f.moved, f.missing, f.lostAt = s, false, false, "", nil
	if !s.Started || !s.Material.Known {
		f.missing = s.Missing
		if f.missing == "" {
			f.missing = "the temperature that the part begins with"
		}
	}
	f.body, f.shape = heat.Body{}, shape{mixedRho: s.Material.Density}
	for i := range f.scales {
		f.scales[i] = [3]float64{1, 1, 1}
	}
	for i := range f.lanes {
		l := &f.lanes[i]
		l.warm, l.live, l.walk.Solved = i-1, false, &f.solved
		l.lastT = s.Start.of(l)
	}
}

// step does what one step does to the part.
func (f *Follower) step(step *formula.Step, st *Stage) {
	if f.missing != "" {
		st.Missing, st.MissingAt = f.missing, f.lostAt
		f.reshape(step)
		return
	}
	if f.apart(step) {
		f.mark(st)
		st.Apart = true
		return
	}
	switch v := step.Verb; {
	case v.HeatUnknown():
		f.mark(st)
		f.lose(st, "what this "+v.Name+" does to the temperature")
		return
	case v.Cooks() || v.Melts():
		f.heated(step, st)
		return
	case v.Mixes():
		f.mix(step, st)
		return
	case v.Bakes():
		f.bake(step, st)
		return
	case v.Fills() && !f.fill(step, st):
		return
	}
	f.reshape(step)
	if !step.Time.Set {
		if r := step.Reading; r != nil && r.Temp.Set {
			f.setEven(bandOf(r.Temp.Interval))
			st.Measured = true
		}
		f.mark(st)
		if step.Verb.Waits() {
			f.lose(st, "the time of this "+step.Verb.Name)
		}
		return
	}
	e, missing := f.environment(step, st)
	if missing != "" {
		f.mark(st)
		if step.Verb.Waits() {
			f.lose(st, missing)
		}
		return
	}
	f.stay(step, st, e)
}

// lose ends a stage without a temperature: it, and what comes after, stands on something that is not written.
func (f *Follower) lose(st *Stage, missing string) {
	st.Known, st.Missing, f.missing = false, missing, missing
	st.MissingAt, f.lostAt = st.Step, st.Step
}

// apart reports whether a step is done to some of the ingredients in a bowl or pan of their own, before the mix at which the
// part begins: yeast that is soaked, butter that is melted for a dough.
func (f *Follower) apart(step *formula.Step) bool {
	if f.mixed || f.moved {
		return false
	}
	part := f.setup.Part
	switch {
	case step.Verb.Soaks():
	case step.Verb.Cooks() || step.Verb.Melts():
		// A filling is cooked as it goes: taking it for cold until its mix would be the unsafe side.
		if len(step.With) == 0 || part.Kind != formula.Dough && part.Kind != formula.Preferment {
			return false
		}
	default:
		return false
	}
	for _, other := range part.Steps {
		if other.Verb.Mixes() {
			return true
		}
	}
	return false
}

// mix makes the part even. The first mix is where the setup's start holds, unless something was done to the part before; any
// other mix is at what was read or aimed at, if anything.
func (f *Follower) mix(step *formula.Step, st *Stage) {
	f.turnOver()
	aim := step.To
	read := step.Reading != nil && step.Reading.Temp.Set
	if read {
		aim, st.Measured = step.Reading.Temp, true
	}
	if (f.mixed || f.moved || read) && aim.Set {
		f.setEven(bandOf(aim.Interval))
	}
	f.mixed = true
	f.mark(st)
}

// setEven puts the three runs at one even temperature each.
func (f *Follower) setEven(temps Band) {
	for i := range f.lanes {
		l := &f.lanes[i]
		l.lastT, l.live = temps.of(l), false
	}
	f.moved = true
}

// mark writes the state as it stands into a stage that changes nothing.
func (f *Follower) mark(st *Stage) {
	st.Known = true
	var core, mean, surface [3]float64
	for i := range f.lanes {
		s := f.now(&f.lanes[i])
		core[i], mean[i], surface[i] = s.CoreC, s.MeanC, s.SurfaceC
	}
	st.StartCore, st.Core, st.CoreMax = band(core), band(core), band(core)
	st.Mean, st.Surface = band(mean), band(surface)
}

// band gives the three runs in order. They can cross: an uneven body goes on warming in its middle while it cools.
func band(x [3]float64) Band { return Band{min(x[0], x[1], x[2]), x[1], max(x[0], x[1], x[2])} }

func (f *Follower) now(l *lane) heat.State {
	if !l.live {
		return heat.State{CoreC: l.lastT, MeanC: l.lastT, SurfaceC: l.lastT}
	}
	return l.walk.At(0)
}

// turnOver makes the part even: it was mixed, sheeted or shaped.
func (f *Follower) turnOver() {
	for i := range f.lanes {
		l := &f.lanes[i]
		l.lastT, l.live = f.now(l).MeanC, false
	}
}

// heated is a cook or a melt: the part is at its target when it ends, and stirred.
func (f *Follower) heated(step *formula.Step, st *Stage) {
	f.mark(st)
	target := step.To
	if step.Core.Set {
		target = step.Core
	}
	if r := step.Reading; r != nil && r.Temp.Set {
		target = r.Temp
		st.Measured = true
	}
	if !target.Set {
		f.lose(st, "to = \"... C\" in this "+step.Verb.Name)
		return
	}
	after := bandOf(target.Interval)
	f.setEven(after)
	if after.Mid >= yeastDiesC {
		f.setup.Gas = 0
	}
	st.Core, st.Mean, st.Surface = after, after, after
	st.CoreMax = st.StartCore.hotter(after)
}

// yeastDiesC is where yeast in dough is dead (138 F, package ferment).
const yeastDiesC = 59

// fill spreads a filling on: the two share their heat at once, being thin. false when nothing is known of the filling, and so
// nothing of what comes after.
func (f *Follower) fill(step *formula.Step, st *Stage) bool {
	var fill *Filling
	if step.Uses != nil && f.setup.Filling != nil {
		fill = f.setup.Filling(step.Uses)
	}
	if fill == nil || !fill.Material.Known || !fill.MassG.IsFinite() {
		f.mark(st)
		what := "the filling"
		if step.Uses != nil {
			what = "the amounts and the temperature of \"" + step.Uses.Name + "\""
		}
		f.lose(st, what)
		return false
	}
	m, kg := f.setup.Material, fill.MassG.Mid()/1000
	own := f.massKg()
	a, b := own*m.SpecificHeat, kg*fill.Material.SpecificHeat
	for i := range f.lanes {
		l := &f.lanes[i]
		l.lastT, l.live = (a*f.now(l).MeanC+b*fill.Temp.of(l))/(a+b), false
	}
	f.moved = true
	if rho, ok := geometry.MeanDensity(own*1000, f.shape.mixedRho/1000, kg*1000, fill.Material.Density/1000); ok {
		f.shape.mixedRho = rho * 1000
	}
	if rho, ok := geometry.MeanDensity(f.shape.filling*1000, f.shape.fillRho/1000, kg*1000, fill.Material.Density/1000); ok && f.shape.filling > 0 {
		f.shape.fillRho = rho * 1000
	} else {
		f.shape.fillRho = fill.Material.Density
	}
	f.shape.filling += kg
	return true
}
