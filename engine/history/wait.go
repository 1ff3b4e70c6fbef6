package history

import (
	"fmt"
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history/ambient"
	"forebake/engine/science/bake"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
	"forebake/engine/science/solve"
)

// environment is the surroundings of a step.
type environment struct {
	air     airKind
	ambient Interval
	h       float64         // W/(m2 K), as it is in the middle run
	covered float64         // h under a lid with air below it; film on the dough keeps h
	error   float64         // relative error of h
	above   figure.Estimate // C, of the air above an ice bath
	minutes Interval
	body    heat.Body
}

// airKind is a kind of surroundings that readings are evidence of: those of package
// heat, and warm still air beside the air of the room.
type airKind uint8

const (
	warmAir  = airKind(heat.Places)
	airKinds = warmAir + 1
)

// Still air of a written temperature is a freezer's up to freezerC, a fridge's up
// to fridgeC, a proofer's from prooferC, and a room's between.
const (
	freezerC = -5
	fridgeC  = 10
	prooferC = 26
)

func airAt(c float64) (heat.Place, airKind) {
	at := heat.Room
	switch {
	case c <= freezerC:
		at = heat.Freezer
	case c <= fridgeC:
		at = heat.Fridge
	case c >= prooferC:
		return at, warmAir
	}
	return at, airKind(at)
}

// environment reads the surroundings of a step; missing is what they lack, "" when
// they are given.
func (f *Simulator) environment(step *formula.Step, st *Stage) (e environment, missing string) {
	e = environment{minutes: step.Time.Interval, error: heat.AirError}
	around, ok := ambient.Around(f.setup.Kitchen, step)
	if !ok {
		return e, "at = \"room\" or a temperature in this " + step.Verb.Name
	}
	read := step.Reading != nil && step.Reading.Temp.Set
	if f.setup.Gas > 0 && f.setup.HeatSilent != "" && !read {
		return e, readAtEnd(step, f.setup.HeatSilent)
	}
	e.ambient = around
	if why := f.setup.Material.FreezeSilent; why != "" && f.mayFreeze(e) && !read {
		return e, readAtEnd(step, why)
	}
	middle := around.Mid()
	at, kind := airAt(middle)
	if place := step.Stands(); place != nil {
		at, kind = place.Air(), airKind(place.Air())
	}
	if air, moved := step.Way.Air(); moved {
		at, kind = air, airKind(air)
	}
	e.air = kind
	if at == heat.IceBath || at == heat.StirredBath {
		e.error = heat.WaterError
	}
	e.above = f.aboveBath(step)
	c, _ := heat.SurfaceCoefficient(at)
	lid, _ := heat.LayerResistance(heat.LiddedBox)
	dry := c.Typical
	e.h = dry
	start := f.now(&f.runs[figure.Middle]).MeanC
	switch cold := middle - start; {
	case e.error != heat.AirError: // a bath
	case f.setup.Material.Crumb:
		e.error = bake.CoolingError
		dry, e.h = bake.OpenCrumb(dry, start, middle, at == heat.Room)
		if step.Covered != nil && *step.Covered {
			e.h = dry
		}
	case at == heat.Room && cold > 0: // a warm place draws at what is cold, and may settle on it
		surface := middle - heat.SurfaceLag*cold
		dry = max(dry, heat.StillAir(surface, middle))
		e.h = dry
		if air := formula.OptHumidity.Of(step); air.Set {
			e.h += heat.Dew(surface, middle, air.Mid()/100)
		}
	}
	e.covered = (dry + heat.InSeries(dry, lid.Typical)) / 2 // a lid is over the top face only
	if step.Covered != nil && !*step.Covered {
		e.covered = dry
	}
	e.body = f.body
	if !f.shape.known {
		e.body = bowl(f.massKg(), f.shape.mixedRho)
		st.AssumedBowl = true
	}
	st.Ambient, st.HasAmbient, st.Body = e.ambient, true, e.body
	st.Bi = e.h * e.body.Nearest() / f.setup.Material.Conductivity
	return e, ""
}

// readAtEnd is what a step lacks whose model is silent.
func readAtEnd(step *formula.Step, why string) string {
	return "a temperature that was read at the end of this " + step.Verb.Name + ": " + why
}

func (l *run) ambient(e environment) float64 {
	return estimateOf(e.ambient).At(l.which)
}

// isFaster reports whether a run is faster than the middle: the coldest when it cools,
// the warmest when it warms.
func (l *run) isFaster(cooling bool) bool {
	return l.which != figure.Middle && (l.which == figure.Low) == cooling
}

// coefficient is the surface coefficient of one run, W/(m2 K), before the
// model's error.
func (f *Simulator) coefficient(l *run, e environment, cooling bool) float64 {
	h := e.h
	if l.which != figure.Middle && !l.isFaster(cooling) {
		h = e.covered // covered, or not written: a lid is the slower way
	}
	t := f.evidence[e.air]
	return e.h * math.Exp(t.shift) * math.Pow(h/e.h, t.left)
}

// enter puts a run into surroundings; false where the model cannot take the body.
func (f *Simulator) enter(l *run, e environment) bool {
	m := f.setup.Material
	alpha, ambient := m.Diffusivity, l.ambient(e)
	t := f.now(l).MeanC
	middle := t - l.own.run.MeanC + l.own.middle.MeanC
	cooling := t > ambient
	body := e.body
	if !f.shape.known && l.isFaster(cooling) {
		body = heat.SlabOf(thinnest)
	}
	if l.live &&
		body != l.body { // no step says how it stands, and another guess is the outer one now
		l.evenApart(t, middle)
	}
	alpha /= f.settingHeat(t, ambient)
	if l.live {
		l.walk.SetScale(1) // what a reading made of it is in the coefficient from here on
		l.walk.SetMaterial(m.Conductivity, alpha)
	} else {
		l.live, l.body = l.walk.Start(body, m.Conductivity, alpha, l.lastT), body
	}
	return l.live && l.walk.Stage(ambient, f.coefficient(l, e, cooling))
}

// speed is how much faster or slower than the middle a run goes, by the
// model's error.
func (f *Simulator) speed(l *run, e environment, cooling bool) float64 {
	return f.speedOf(l, f.timeError(l, e), cooling)
}

// speedOf is speed for a relative error in time.
func (f *Simulator) speedOf(l *run, err float64, cooling bool) float64 {
	switch {
	case l.isFaster(cooling):
		return 1 + err
	case l.which != figure.Middle:
		return 1 / (1 + err)
	}
	return 1
}

func (f *Simulator) timeError(l *run, e environment) float64 {
	err := heat.TimeError(e.h*l.body.Nearest()/f.setup.Material.Conductivity, e.error)
	return (err + f.setup.Material.Open) * f.evidence[e.air].left
}

// solvedFor reports whether a solver follows a stage, in place of its walk.
func (f *Simulator) solvedFor(l *run, e environment) bool {
	return f.worksHard(l, e) || f.freezes(l, e) || f.melts(l, e) || f.setup.Material.Crumb
}

// solveStage follows a stage by a solver. It starts even, at the mean, as a dough
// just mixed or rested is, and leaves the run even. It gives the state after
// seconds, the hottest core until then, and the equivalent hours gained in
// fermenting seconds.
func (f *Simulator) solveStage(l *run, e environment, seconds,
	fermenting float64) (end heat.State, most, hours float64) {
	most = f.now(l).CoreC
	end, warmest, hours := f.solve(l, e, l.which, seconds, fermenting)
	middle := end.MeanC
	if l.which != figure.Middle && f.works() {
		tracing := f.tracing
		f.tracing = false
		var state heat.State
		state, _, hours = f.solve(l, e, figure.Middle, seconds, fermenting)
		f.tracing, middle = tracing, state.MeanC
	}
	l.evenApart(end.MeanC, middle)
	return end, max(most, warmest), hours
}

// solve is one course by a solver, with one run's heat. Equal courses come from
// the memo.
func (f *Simulator) solve(l *run, e environment, heats figure.Run,
	seconds, fermenting float64) (end heat.State, most, hours float64) {
	k := stretch{
		begin: f.beginning(l, e, heats), pace: f.freezePace(l, e),
		seconds: seconds, fermenting: fermenting, works: f.setup.Gas > 0, tracing: f.tracing,
	}
	if was, ok := f.followed.kept[k]; ok {
		f.samples = append(f.samples, was.samples...)
		return was.end, was.most, was.hours
	}
	v := f.followed.solvers.Start(k.begin)
	from := len(f.samples)
	end = v.Advance(0)
	most = end.CoreC
	last, at, longest := f.activity(end.MeanC), 0.0, max(k.seconds, k.fermenting)
	for i := 1; at < longest; {
		to := solvedUntil(i, longest)
		if stop := min(k.seconds, k.fermenting); at < stop && to > stop {
			to = stop
		} else {
			i++
		}
		state := v.Advance((to - at) * k.pace)
		g := f.activity(state.MeanC)
		if to <= k.fermenting {
			f.sample(to, state)
			hours += (last + g) / 2 * (to - at) / 3600
		}
		if to <= k.seconds {
			end, most = state, max(most, state.CoreC)
		}
		last, at = g, to
	}
	f.followed.keep(k, followed{end, most, hours, slices.Clone(f.samples[from:])})
	return end, most, hours
}

// solvedUntil ends part i of a solved wait, s: twelve of its first day, twelve of the rest.
func solvedUntil(i int, longest float64) float64 {
	const parts = 12
	first, share := min(longest, longWait), float64(i%parts)/parts
	switch {
	case i <= parts:
		return first * max(share*share, float64(i/parts))
	case i < 2*parts:
		return first + (longest-first)*share*share
	}
	return longest
}

// beginning is a run's start, with the heat of one of the runs.
func (f *Simulator) beginning(l *run, e environment, heats figure.Run) solve.Stage {
	m := f.setup.Material
	b := solve.Stage{
		Properties: m.properties(), Butterfat: m.Butterfat, Chocolate: m.Chocolate,
		TC: f.now(l).MeanC, AmbientC: l.ambient(e), Freezes: f.freezes(l, e),
	}
	if heats != l.which {
		b.TC += l.own.middle.MeanC - l.own.run.MeanC
	}
	cooling := b.TC > b.AmbientC
	b.H = f.coefficient(l, e, cooling)
	if b.Freezes {
		b.Ice = f.ice(l)
		if m.Crumb {
			b.Properties.ConductivityWmK = bake.CrumbConducts(0)
		}
	} else { // the model's error goes into the surface, where most of it comes from
		b.H *= f.speed(l, e, cooling)
		b.Sets, b.Crumb = f.melts(l, e), m.Crumb
	}
	b.Dimension, b.HalfM = l.body.EquivalentDimension(m.Conductivity, b.H), l.body.Nearest()
	if f.works() {
		b.OwnHeat = f.setup.OwnHeat.At(heats)
	}
	return b
}

// waiting is one wait: the start and the result of its three runs.
type waiting struct {
	step   *formula.Step
	st     *Stage
	e      environment
	read   bool                        // a temperature was read in it
	baths  *[figure.Runs]heat.Chilling // nil where no run is in one: they are large
	bathed [figure.Runs]bool

	start, core, mean, surface, most, hours [figure.Runs]float64
}

// wait leaves the part in its surroundings for the time of the step.
func (f *Simulator) wait(step *formula.Step, st *Stage, e environment) {
	f.Waits++
	w := waiting{step: step, st: st, e: e, read: step.Reading != nil && step.Reading.Temp.Set}
	if missing := f.intoSurroundings(&w); missing != "" {
		f.loseTrack(st, missing)
		return
	}
	st.Known, st.read, f.moved = true, 1, true
	said := noEvidence
	switch {
	case w.read && w.bathed[figure.Middle]:
		said = f.learnInBath(step, e, w.baths)
	case w.read:
		said = f.learn(step, e)
	}
	var fresh *[figure.Runs]heat.Chilling // as they begin, for passesAs
	if w.read && w.baths != nil {
		baths := *w.baths
		fresh = &baths
	}
	for i := range f.runs {
		l := &f.runs[i]
		cooling := f.now(l).MeanC > l.ambient(e)
		speed := 1.0
		switch {
		case !w.read && w.bathed[i]: // the error is in the bath's own runs
		case !w.read:
			speed = f.speed(l, e, cooling)
		case w.bathed[i] && !f.passesAs(&w.baths[i], fresh, l, step, e),
			!w.bathed[i] && !f.believe(l, step, e):
			f.endAsRead(&w)
			return
		default:
			st.Measured = true
		}
		f.runThrough(&w, i, speed, e.minutesIn(l, cooling)*60)
	}
	f.addEvidence(e, said)
	st.StartCore, st.Core = figure.Ordered(w.start), figure.Ordered(w.core)
	st.Mean, st.Surface = figure.Ordered(w.mean), figure.Ordered(w.surface)
	st.CoreMax, st.Hours = figure.Ordered(w.most), figure.Ordered(w.hours)
}

// intoSurroundings brings the runs into the surroundings of a wait. It gives what
// is missing for that; "" for nothing.
func (f *Simulator) intoSurroundings(w *waiting) (missing string) {
	for i := range f.runs {
		l := &f.runs[i]
		if vessel, in := f.vessel(l, w.e); in {
			c, why := f.chilling(l, w.e, vessel)
			if why != "" {
				return readAtEnd(w.step, why)
			}
			if w.baths == nil {
				w.baths = new([figure.Runs]heat.Chilling)
			}
			w.baths[i], w.bathed[i] = c, true
		} else if !f.enter(l, w.e) {
			return "a shape of \"" + f.setup.Part.Name + "\" that can be"
		}
		w.start[i] = f.now(l).CoreC
	}
	return ""
}

// endAsRead ends a wait at a reading that no run passes through. A reading beyond
// the start and the surroundings ends the known history: a typing slip must not
// clear what it was written beside.
func (f *Simulator) endAsRead(w *waiting) {
	t := w.step.Reading.Temp.Interval
	lo, hi := readingBounds(w.start, w.e)
	if t.Lo < lo-readingSlack || t.Hi > hi+readingSlack {
		f.loseTrack(w.st, fmt.Sprintf("a reading that can be in this %s, between %.0f C and %.0f C",
			w.step.Verb.Name, lo, hi))
		return
	}
	f.asRead(w)
}

// runThrough follows one run through a wait of so many seconds, at a speed that
// includes the model's error.
func (f *Simulator) runThrough(w *waiting, i int, speed, seconds float64) {
	l := &f.runs[i]
	fermenting := estimateOf(w.e.minutes).At(l.which) * 60
	solved := !w.read && !w.bathed[i] && f.solvedFor(l, w.e)
	r := w.step.Reading
	riseAfter := r != nil && r.Rise.Set && r.After.Set && l.which == figure.Middle
	early, held := 0.0, 0.0
	if stop := f.stops(w, i); stop < seconds {
		held = max(0, fermenting-stop)
		seconds, fermenting = stop, min(fermenting, stop)
	}
	if riseAfter {
		seen := min(r.After.Mid()*60, fermenting)
		if w.bathed[i] {
			c := w.baths[i]
			_, _, early = f.bathe(&c, f.now(l), 0, seen)
		} else {
			early = f.gained(l, w.e, solved, speed, seen)
		}
	}
	var end heat.State
	from := len(f.samples)
	f.tracing = f.setup.Trace
	f.sample(0, f.now(l))
	switch {
	case w.bathed[i]:
		end, w.most[i], w.hours[i] = f.bathe(&w.baths[i], f.now(l), seconds, fermenting)
		l.even(end.MeanC)
		if l.which == figure.High {
			l.even(end.CoreC) // what follows starts even: no colder than it is anywhere
		}
	case solved:
		end, w.most[i], w.hours[i] = f.solveStage(l, w.e, seconds, fermenting)
	default:
		end, w.most[i], w.hours[i] = f.walkStage(l, w.e, speed, seconds, fermenting)
		w.most[i] = max(w.most[i], w.start[i])
	}
	if held > 0 {
		end.CoreC = min(end.CoreC, estimateOf(w.step.CoolsTo().Interval).At(l.which))
		w.hours[i] += f.activity(end.MeanC) * held / 3600
		f.sample(fermenting+held, end)
	}
	f.tracing = false
	if f.setup.Trace {
		w.st.Trace[i] = f.samples[from:len(f.samples):len(f.samples)]
	}
	w.core[i], w.mean[i], w.surface[i] = end.CoreC, end.MeanC, end.SurfaceC
	if riseAfter && w.hours[i] > 0 {
		w.st.read = early / w.hours[i]
	}
}

// stops is when a run that cools comes to what the step aims at, s: from there on it is kept so
// warm. It is infinite without an aim, or where a probe says more.
func (f *Simulator) stops(w *waiting, i int) float64 {
	l, aim := &f.runs[i], w.step.CoolsTo()
	now, to := f.now(l), estimateOf(aim.Interval).At(l.which)
	switch {
	case !aim.Set || w.read || !w.step.Verb.Cools() || !(now.MeanC > l.ambient(w.e)):
		return math.Inf(1)
	case now.CoreC <= to:
		return 1 // and not 0, for a course goes forward
	case w.bathed[i]:
		return w.baths[i].TimeTo(to, longestWatch)
	}
	return f.reach(l, w.e, to, false) * 3600
}

// believe makes a run pass through a probe reading (learn keeps its evidence for
// later stages). The coldest run takes the lower end of a range, the warmest the
// upper. Near cold surroundings a reading tells little, so the warmest run allows
// for the probe's error. ok is false where the reading must stand as it is: no
// coefficient explains it, or a ranged length hides its time.
func (f *Simulator) believe(l *run, step *formula.Step, e environment) (ok bool) {
	seconds, ok := readAt(step, e)
	if !ok {
		return false
	}
	want := estimateOf(step.Reading.Temp.Interval).At(l.which)
	if l.isCautious(want, f.now(l), e) && f.passThrough(l, l.ambient(e)+probeError, seconds, e) {
		return true
	}
	return f.passThrough(l, want, seconds, e)
}

// isCautious reports whether a run is the warmest, cooling, and read so near its
// surroundings that the probe's error says more.
func (l *run) isCautious(want float64, now heat.State, e environment) bool {
	return l.which == figure.High && now.MeanC > l.ambient(e) && want < l.ambient(e)+probeError
}

// passThrough finds the scale that brings a run to a temperature in the
// given seconds.
func (f *Simulator) passThrough(l *run, want, seconds float64, e environment) (ok bool) {
	own := f.ownAt(l, e, seconds)
	for range scaleRounds {
		factor, ok := l.walk.ScaleFor(heat.Core, want-own, seconds)
		if !ok || !l.walk.SetScale(factor) {
			l.walk.SetScale(1)
			return false
		}
		before := own
		if own = f.ownAt(l, e, seconds); math.Abs(own-before) < scaleSettled {
			return true
		}
	}
	l.walk.SetScale(1)
	return false
}

// nearlyThere gives a cooling run its fastest coefficient where a colder reading is
// beyond that. The run is never colder than the reading, and a colder reading never
// makes it worse.
func (f *Simulator) nearlyThere(l *run, step *formula.Step, e environment) bool {
	seconds, ok := readAt(step, e)
	want := estimateOf(step.Reading.Temp.Interval).At(l.which)
	if !ok || f.now(l).MeanC <= l.ambient(e) {
		return false
	}
	if l.isCautious(want, f.now(l), e) && f.passThrough(l, l.ambient(e)+probeError, seconds, e) {
		return true
	}
	return l.walk.SetScale(heat.HighestScale) && l.walk.At(seconds).CoreC >= want
}

// A scale for the walk changes the own heat too. Some rounds settle both, to a
// share of a kelvin that no probe shows.
const (
	scaleRounds  = 30
	scaleSettled = 1e-4
)

// ownAt is the core's excess from its own heat after the given seconds, K.
func (f *Simulator) ownAt(l *run, e environment, seconds float64) float64 {
	if !f.works() {
		return 0
	}
	c := f.course(l, e, 1)
	c.points(seconds, func(float64, float64, heat.State) {})
	c.to(seconds)
	return c.own.run.CoreC
}

// readAt is the time of a reading, s from the step's beginning; ok is false where
// it is not known.
func readAt(step *formula.Step, e environment) (seconds float64, ok bool) {
	switch r := step.Reading; {
	case r.After.Set && r.After.IsPoint():
		return r.After.Mid() * 60, true
	case r.After.Set || !e.minutes.IsPoint():
		return 0, false
	}
	return e.minutes.Mid() * 60, true
}

// readingSlack is how far beyond its surroundings and its start a reading may lie,
// K: probes differ, a dough warms itself, and steaming cools.
const readingSlack = 4

// readingBounds bounds the temperatures of a part with such a start and
// surroundings, C.
func readingBounds(start [figure.Runs]float64, e environment) (lo, hi float64) {
	return min(start[0], start[1], start[2], e.ambient.Lo),
		max(start[0], start[1], start[2], e.ambient.Hi)
}

// worstC is the temperature at which spoilage grows fastest, as far as limits are
// published (package microbe), C.
const worstC = 40

// asRead ends a stage at a reading that no run was made to pass through. The
// yeast's work lies between the slowest and the fastest at the temperatures seen.
func (f *Simulator) asRead(w *waiting) {
	st, e, start, reading := w.st, w.e, w.start, w.step.Reading.Temp.Interval
	if f.setup.Trace {
		f.traceAsRead(w)
	}
	f.setEven(estimateOf(reading))
	seen := [...]float64{start[0], start[2], reading.Lo, reading.Hi, e.ambient.Lo, e.ambient.Hi}
	lo, hi := seen[0], seen[0]
	for _, t := range seen {
		lo, hi = min(lo, t), max(hi, t)
	}
	if f.setup.Gas > 0 {
		slow, fast := ferment.TemperatureFactor(lo), ferment.TemperatureFactor(hi)
		if lo < ferment.GasOptimumC && hi > ferment.GasOptimumC {
			fast = ferment.TemperatureFactor(ferment.GasOptimumC)
		}
		slow, fast = min(slow, fast), max(slow, fast)
		st.Hours = figure.Estimate{
			Low:  slow * e.minutes.Lo / 60,
			Mid:  (slow + fast) / 2 * e.minutes.Mid() / 60,
			High: fast * e.minutes.Hi / 60,
		}
	}
	st.StartCore, st.Measured = figure.Ordered(start), true
	st.Core = estimateOf(reading)
	st.Mean, st.Surface = st.Core, st.Core
	st.CoreMax = st.StartCore.Max(st.Core)
}

// traceAsRead draws the courses of a stage that ends at a reading. A run that nears
// it while cooling takes the fastest coefficient. Of the others the course is
// unknown: the warmest stays at the worst temperature seen, the others go straight.
func (f *Simulator) traceAsRead(w *waiting) {
	st, e, start := w.st, w.e, w.start
	reading, minutes := w.step.Reading.Temp.Interval, estimateOf(e.minutes)
	read := estimateOf(reading)
	hottest := max(start[0], start[1], start[2], reading.Hi, e.ambient.Hi)
	worst := max(min(start[0], start[2], reading.Lo, e.ambient.Lo), min(hottest, worstC))
	for i := range f.runs {
		l := &f.runs[i]
		from, seconds := len(f.samples), minutes.At(l.which)*60
		f.tracing = true
		f.sample(0, f.now(l))
		switch {
		case w.bathed[i] && f.nearlyThereInBath(&w.baths[i], l, w.step, e):
			f.bathe(&w.baths[i], f.now(l), seconds, seconds)
		case !w.bathed[i] && f.nearlyThere(l, w.step, e):
			c := f.course(l, e, 1)
			f.equivalent(&c, seconds)
		case l.which == figure.High:
			f.samples = append(f.samples[:from],
				Sample{0, worst, worst}, Sample{seconds / 3600, worst, worst})
		default:
			at := read.At(l.which)
			f.samples = append(f.samples[:from],
				Sample{0, start[i], start[i]}, Sample{seconds / 3600, at, at})
		}
		f.tracing = false
		st.Trace[i] = f.samples[from:len(f.samples):len(f.samples)]
	}
}

// gained is the equivalent hours of a run in the given time from now.
func (f *Simulator) gained(l *run, e environment, solved bool, speed, seconds float64) float64 {
	var hours float64
	if solved {
		_, _, hours = f.solve(l, e, figure.Middle, 0, seconds)
		return hours
	}
	c := f.course(l, e, speed)
	hours, _ = f.equivalent(&c, seconds)
	return hours
}

// walkStage follows a run through a stage by its walk and advances it by seconds. It
// gives the state there, the hottest core until then, and the equivalent hours
// gained in fermenting seconds.
func (f *Simulator) walkStage(l *run, e environment, speed, seconds,
	fermenting float64) (end heat.State, most, hours float64) {
	c := f.course(l, e, speed)
	hours, most = f.equivalent(&c, fermenting)
	if f.tracing {
		f.sample(fermenting, c.to(fermenting))
	}
	if seconds != fermenting && f.works() {
		tracing, ended := f.tracing, f.course(l, e, speed)
		f.tracing = false
		_, most = f.equivalent(&ended, seconds)
		f.tracing, c = tracing, ended
	}
	c.to(seconds)
	l.own = c.own
	end = l.walk.Advance(seconds * speed).Plus(l.own.run)
	return end, max(most, end.CoreC), hours
}

const longWait = 24 * 3600 // s: a longer wait is drawn as a day and the rest of it

// equivalent integrates the yeast's temperature factor over the part's mean
// temperature, in hours at 26 C; most is the hottest core on the way.
func (f *Simulator) equivalent(c *course, seconds float64) (hours, most float64) {
	most = math.Inf(-1)
	if !(f.setup.Gas > 0 || f.tracing) || !(seconds > 0) {
		return 0, most
	}
	sum, drawn := 0.0, 0.0
	if f.tracing && seconds > longWait { // on a copy, for to steps the own heat
		day := *c
		day.points(longWait, func(at, _ float64, state heat.State) { f.sample(at, state) })
		f.sample(longWait, day.to(longWait))
		drawn = longWait
	}
	c.points(seconds, func(at, width float64, state heat.State) {
		if at > drawn {
			f.sample(at, state)
		}
		most = max(most, state.CoreC)
		if f.setup.Gas > 0 {
			sum += width * ferment.TemperatureFactor(c.meanC)
		}
	})
	return sum / 3600, most
}

// points visits the given time, s, in two Gauss points in each of four lengthening
// intervals: temperatures change fastest at first. width is the time of a point.
func (c *course) points(seconds float64, visit func(at, width float64, s heat.State)) {
	const offset = 0.2113248654051871 // (1 - 1/sqrt 3)/2
	from := 0.0
	for _, to := range stretches {
		a, width := from*seconds, (to-from)*seconds
		for _, x := range [...]float64{offset, 1 - offset} {
			visit(a+x*width, width/2, c.to(a+x*width))
		}
		from = to
	}
}

// stretches are the shares of a wait at which its four intervals end.
var stretches = [...]float64{0.04, 0.16, 0.45, 1}

// activity is the yeast's pace at a temperature, as a share of 26 C; 0 where it
// does not work.
func (f *Simulator) activity(tC float64) float64 {
	if f.setup.Gas == 0 {
		return 0
	}
	return ferment.TemperatureFactor(tC)
}

// sample keeps a run's state for its trace, while one is drawn.
func (f *Simulator) sample(seconds float64, s heat.State) {
	if f.tracing {
		f.samples = append(f.samples, Sample{seconds / 3600, s.CoreC, s.SurfaceC})
	}
}

// DownTo gives the time at which a course falls to a temperature, h. Between two
// samples the excess over the surroundings decays exponentially.
func DownTo(trace []Sample, ambientC, targetC float64) (hours float64, met bool) {
	for i, b := range trace {
		switch {
		case b.Core > targetC:
		case i == 0:
			return 0, true
		default:
			a := trace[i-1]
			share := (a.Core - targetC) / (a.Core - b.Core)
			if above := b.Core - ambientC; above > 0 {
				from := a.Core - ambientC
				share = math.Log(from/(targetC-ambientC)) / math.Log(from/above)
			}
			return a.Hours + share*(b.Hours-a.Hours), true
		}
	}
	return 0, false
}
