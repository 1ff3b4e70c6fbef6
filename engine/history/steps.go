package history

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/ferment"
	"forebake/engine/science/geometry"
	"forebake/engine/science/heat"
)

func (f *Simulator) begin(s Setup) {
	f.Share(f)
	f.setup, f.mixed, f.moved, f.missing, f.lostAt = s, false, false, "", nil
	if !s.Started || !s.Material.Known {
		f.missing = s.Missing
		if f.missing == "" {
			f.missing = "the temperature that the part begins with"
		}
	}
	f.body, f.shape = heat.Body{}, shape{mixedRho: s.Material.Density}
	f.oven = falling{}
	for i := range f.evidence {
		f.evidence[i] = noEvidence
	}
	for i := range f.runs {
		l := &f.runs[i]
		l.which, l.walk.Solved = figure.Run(i), &f.followed.modes
		l.even(s.Start.At(l.which))
	}
}

func (f *Simulator) step(step *formula.Step, st *Stage) {
	if step.LeavesOven() {
		f.oven = falling{}
	}
	if f.missing != "" {
		st.Missing, st.MissingAt = f.missing, f.lostAt
		f.reshape(step)
		return
	}
	if f.inOwnBowl(step) {
		f.keepState(st)
		st.InOwnBowl = true
		return
	}
	switch v := step.Verb; {
	case v.HeatUnknown():
		f.keepState(st)
		f.loseTrack(st, "what this "+v.Name+" does to the temperature")
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
	case v.Fills() && !step.LiesOutside() && !f.fill(step, st):
		return
	}
	f.reshape(step)
	if !step.Time.Set {
		if r := step.Reading; r != nil && r.Temp.Set {
			f.setEven(estimateOf(r.Temp.Interval))
			st.Measured = true
		}
		f.keepState(st)
		if step.Verb.Waits() {
			f.loseTrack(st, "the time of this "+step.Verb.Name)
		}
		return
	}
	e, missing := f.environment(step, st)
	if missing != "" {
		f.keepState(st)
		if step.Verb.Waits() {
			f.loseTrack(st, missing)
		}
		return
	}
	f.wait(step, st, e)
}

// loseTrack ends a stage without a temperature: it and the steps after it need
// something that is not written.
func (f *Simulator) loseTrack(st *Stage, missing string) {
	st.Known, st.Missing, f.missing = false, missing, missing
	st.MissingAt, f.lostAt = st.Step, st.Step
}

// inOwnBowl reports whether a step treats some ingredients in a bowl or pan of
// their own before the part's first mix: soaked yeast, melted butter.
func (f *Simulator) inOwnBowl(step *formula.Step) bool {
	if f.mixed || f.moved {
		return false
	}
	part := f.setup.Part
	switch {
	case step.Verb.Soaks():
	case step.Verb.Cooks() || step.Verb.Melts():
		// A filling is cooked as it goes: taking it for cold until its mix would be
		// the unsafe side.
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

// mix makes the part even. The first mix has the setup's start, unless an earlier
// step changed the part. Any other mix has its reading or its aim, if any.
func (f *Simulator) mix(step *formula.Step, st *Stage) {
	f.turnOver()
	aim := step.To
	read := step.Reading != nil && step.Reading.Temp.Set
	if read {
		aim, st.Measured = step.Reading.Temp, true
	}
	if (f.mixed || f.moved || read) && aim.Set {
		f.setEven(estimateOf(aim.Interval))
	}
	f.mixed = true
	f.keepState(st)
	f.killYeast(st.Mean)
}

// killYeast ends the yeast of a part that has been so hot.
func (f *Simulator) killYeast(t figure.Estimate) {
	if ferment.Dead(t.Interval()) == figure.Yes {
		f.setup.Gas = 0
	}
}

func (f *Simulator) setEven(temps figure.Estimate) {
	for i := range f.runs {
		l := &f.runs[i]
		l.even(temps.At(l.which))
	}
	f.moved = true
}

// keepState copies the state into a stage that changes nothing.
func (f *Simulator) keepState(st *Stage) {
	st.Known = true
	var core, mean, surface [figure.Runs]float64
	for i := range f.runs {
		s := f.now(&f.runs[i])
		core[i], mean[i], surface[i] = s.CoreC, s.MeanC, s.SurfaceC
	}
	st.StartCore = figure.Ordered(core)
	st.Core, st.CoreMax = st.StartCore, st.StartCore
	st.Mean, st.Surface = figure.Ordered(mean), figure.Ordered(surface)
}

func (f *Simulator) now(l *run) heat.State {
	if !l.live {
		return heat.State{CoreC: l.lastT, MeanC: l.lastT, SurfaceC: l.lastT}.Plus(l.own.run)
	}
	return l.walk.At(0).Plus(l.own.run)
}

// turnOver makes the part even: it was mixed, sheeted or shaped.
func (f *Simulator) turnOver() {
	for i := range f.runs {
		l := &f.runs[i]
		now := f.now(l).MeanC
		l.evenApart(now, now-l.own.run.MeanC+l.own.middle.MeanC)
	}
}

// BoilingC is the highest temperature of wet food, C.
const BoilingC = 100

// usualCookC is the middle run's end of a filling's cook where none is
// written (judgement).
const usualCookC = 85

// heated is a cook or a melt: the part ends at its target, stirred.
func (f *Simulator) heated(step *formula.Step, st *Stage) {
	f.keepState(st)
	target := step.To
	if step.Core.Set {
		target = step.Core
	}
	if r := step.Reading; r != nil && r.Temp.Set {
		target = r.Temp
		st.Measured = true
	}
	after, dough := estimateOf(target.Interval), f.setup.Part.Kind == formula.Dough
	if !target.Set { // anything between as it came in and boiling
		after = figure.Estimate{Low: st.Core.Low, Mid: max(st.Core.Mid, usualCookC),
			High: max(st.Core.High, BoilingC)}
	}
	sets := dough && f.mixed && after.Low >= crumbC && !step.MixesLater()
	if dough && !target.Set {
		f.loseTrack(st, "core = \"... C\" in this "+step.Verb.Name)
		if !f.mixed || step.HeatsLater() {
			return
		}
		f.missing, sets = "", true // what cools after it is no hotter than water boils
	} else {
		st.Core, st.Mean, st.Surface = after, after, after
		st.CoreMax = st.StartCore.Max(after)
	}
	f.setEven(after)
	f.killYeast(after)
	if sets { // fried, steamed or boiled through: it has risen as in an oven
		_, body, rho := f.inOven(step)
		f.becomeCrumb(body, rho)
	}
}

// crumbC is the temperature at which a dough's starch has set to crumb, C (memory:
// 60 to 85 C).
const crumbC = 80

// fill spreads a filling on. The two are thin and share their heat at once. false
// where the filling, and so what comes after, is not known.
func (f *Simulator) fill(step *formula.Step, st *Stage) bool {
	var fill *Filling
	if step.Uses != nil && f.setup.Filling != nil {
		fill = f.setup.Filling(step.Uses)
	}
	if fill == nil || !fill.Material.Known || !fill.MassG.IsFinite() {
		f.keepState(st)
		what := "the filling"
		if step.Uses != nil {
			what = "the amounts and the temperature of \"" + step.Uses.Name + "\""
		}
		f.loseTrack(st, what)
		return false
	}
	m, kg := f.setup.Material, fill.MassG.Mul(step.Share()).Mid()/1000
	own := f.massKg()
	a, b := own*m.SpecificHeat, kg*fill.Material.SpecificHeat
	for i := range f.runs {
		l := &f.runs[i]
		l.even((a*f.now(l).MeanC + b*fill.Temp.At(l.which)) / (a + b))
	}
	f.moved = true
	rho, ok := geometry.MeanDensity(own*1000, f.shape.mixedRho/1000, kg*1000,
		fill.Material.Density/1000)
	if ok {
		f.shape.mixedRho = rho * 1000
	}
	rho, ok = geometry.MeanDensity(f.shape.filling*1000, f.shape.fillRho/1000, kg*1000,
		fill.Material.Density/1000)
	if ok && f.shape.filling > 0 {
		f.shape.fillRho = rho * 1000
	} else {
		f.shape.fillRho = fill.Material.Density
	}
	f.shape.filling += kg
	f.shape.layered = false
	return true
}
