// Package history follows a part through its steps: its temperature, and how far
// it ferments.
//
// Package facts calls it, once a part, when a rule or an output needs its figures.
// It hands in the part's composition, and gets plain figures back. This package
// knows formulas and science, never rules.
//
// Each part has three runs: the middle one, and the coldest (Low) and warmest
// (High) that the formula's ranges and the model's error allow. Low <= Mid <= High
// for temperatures, and for fermentation below 38 C. A probe reading makes all
// three pass through it and is believed from there on.
package history

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/science/bake"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
	"forebake/engine/science/melt"
)

// Interval is short for the interval of package figure.
type Interval = figure.Interval

// Material is a part's thermal properties.
type Material struct {
	Known        bool
	Conductivity float64         // W/(m K)
	Diffusivity  float64         // m2/s
	Density      float64         // kg/m3, gas included
	SpecificHeat float64         // J/(kg K)
	Butterfat    float64         // share of the mass that is milk fat: it takes heat to melt
	Chocolate    float64         // share of the mass that is chocolate, which melts and sets
	Ice          melt.Ice        // of the water that can freeze, each run with its own onset
	OnsetC       figure.Estimate // C, where it begins to; zero for a material without any
	FreezeSilent string          // why freezing is not reckoned, "" where it is
	Open         float64         // share of the mass that is open: more or less of it may go in
	Crumb        bool            // baked: its conductivity falls as it cools
}

// Setup is the input of a part's simulation.
type Setup struct {
	Part     *formula.Part
	Kitchen  *kitchen.Kitchen
	MassG    Interval
	Material Material
	Start    figure.Estimate // C, at the end of the first mix, or of whatever begins the part
	Started  bool            // the start is known
	// Missing is what start and material need written; "" where they are known.
	Missing string
	// Gas is yeast in percent times its osmotic factor; 0 for what does not ferment.
	Gas float64
	// OwnHeat is the heat from fermentation at 26 C, W/kg; zero for what does
	// not ferment.
	OwnHeat figure.Estimate
	// HeatSilent is why OwnHeat is not reckoned, "" where it is.
	HeatSilent string
	// Trace asks for the course of every wait, for the growth of organisms.
	// TraceBaked asks for those after a bake too.
	Trace, TraceBaked bool
	// Filling gives the record and material of a part that a step spreads on this
	// one, nil where it is not known.
	Filling func(*formula.Part) *Filling
}

// Filling is what a spread filling brings with it.
type Filling struct {
	Temp     figure.Estimate // C
	MassG    Interval
	Material Material
}

// Stage is the result of one step.
type Stage struct {
	Step           *formula.Step
	Known          bool          // the temperatures are known
	Missing        string        // what would have to be written, when they are not
	MissingAt      *formula.Step // and in which step; nil when it is not a step's
	StartH, EndH   Interval      // hours since the part's first step
	Ambient        Interval      // C
	HasAmbient     bool
	StartCore      figure.Estimate // C, as the step begins
	Core, Mean     figure.Estimate // C, as it ends
	Surface        figure.Estimate
	DoughCore      figure.Estimate // of a bake: the coldest dough, around a lump of filling too
	CoreMax        figure.Estimate
	Hours          figure.Estimate // equivalent hours at 26 C gained in it
	InOwnBowl      bool            // of some ingredients alone, before the part is mixed
	Measured       bool            // a temperature reading was believed here
	RiseMeasured   bool            // a measured rise was believed here
	AssumedBowl    bool            // no geometry was given, and it matters
	MinutesToCore  figure.Estimate // bake: until the target core
	HasCoreMinutes bool
	Body           heat.Body
	Bi             float64
	Oven           bake.Baking // a bake as the coldest run goes through it, where HasOven
	HasOven        bool
	OvenStart      figure.Estimate // bake: midpoint of core and mean as the first in it begins, C
	OvenMinutes    Interval        // bake: in the oven since then
	OvenC          figure.Estimate // bake: of the oven, its mean since then
	ShapeOpen      bool            // bake: a free-standing piece of unknown shape
	OvenSilent     string          // why a bake's core, or the time to it, is not reckoned
	// Trace is the course of each run through a wait, the coldest first, by Hours
	// of the step: its start, its end and points between. A ranged time counts to
	// its longest end in the warmest run, to its shortest in the coldest. nil where
	// no trace was asked for.
	Trace [figure.Runs][]Sample

	// read is the share of Hours gained before a rise was read, without the hours
	// of an earlier rise.
	read float64
}

// Sample is one run at one time of a step.
type Sample struct {
	Hours         float64 // since the step began
	Core, Surface float64 // C
}

// Record is a part's history.
type Record struct {
	Stages []Stage
	// RiseScale is the factor of a measured rise on the fermentation model; Rise is
	// true where there was one.
	RiseScale float64
	Rise      bool
}

// run is one of the three runs.
type run struct {
	walk  heat.Walk
	which figure.Run
	lastT float64 // C, before a body is known: even temperature
	live  bool    // the walk is started
	own   warmth
	body  heat.Body
}

// Simulator follows parts, keeping its memory from one to the next. It belongs to
// one goroutine.
type Simulator struct {
	Waits int // steps in some surroundings or in the oven that were followed: what its work costs
	*bench
}

// bench is what a part is followed with, one at a time; see Share.
type bench struct {
	runs [figure.Runs]run
	standing
	began    int // Waits when the part at hand began
	stages   []Stage
	samples  []Sample
	tracing  bool
	followed memory
}

// standing is a part's state between two steps, without its temperatures.
type standing struct {
	setup    Setup
	evidence [airKinds]evidence
	body     heat.Body
	shape    shape
	missing  string        // what the steps from here on need written; "" where they are known
	lostAt   *formula.Step // the step that misses it; nil when none does
	mixed    bool
	moved    bool    // a step has changed the temperature that the part began with
	oven     falling // the bakes just before the step at hand
}

// shape is the part's geometry for steps that do not state one.
type shape struct {
	known    bool
	pieces   float64 // how many; 0 for one mass
	pieceKg  float64
	tin      *kitchen.Tin
	tins     float64 // how many, of which each holds one lump or touching pieces; 0 for unwritten
	filling  float64 // kg spread on
	lump     bool    // the filling is closed in as one: no coil, sheet or turn has spread it
	layered  bool
	fillRho  float64
	mixedRho float64
}

// Follow runs a part through its steps. The record belongs to the caller.
func (f *Simulator) Follow(s Setup) *Record {
	f.begin(s)
	record := &Record{RiseScale: 1}
	f.stages = make([]Stage, 0, len(s.Part.Steps))
	if s.Trace {
		waits := 0
		for _, step := range s.Part.Steps {
			if step.Time.Set && step.Verb.Waits() {
				waits++
			}
		}
		f.samples = make([]Sample, 0, waits*3*(len(stretches)*2+2))
	}
	clock, t := Interval{}, f.followed.newTrail(s)
	for i := f.resume(s, t, record, len(s.Part.Steps)); i < len(s.Part.Steps); i++ {
		step := s.Part.Steps[i]
		if i > 0 {
			clock = f.stages[i-1].EndH
		}
		st := Stage{Step: step, StartH: clock}
		f.step(step, &st)
		if step.Time.Set {
			clock = clock.Add(step.Time.Interval.Scale(1.0 / 60))
		}
		st.EndH = clock
		if record.Rise {
			st.Hours = st.Hours.Times(record.RiseScale)
		}
		if r := step.Reading; r != nil && r.Rise.Set && st.Known {
			f.believeRise(&st, record)
			t.checkpoints = t.checkpoints[:0] // the stages before them have other hours now
		}
		f.stages = append(f.stages, st)
		f.checkpoint(t, i+1, record)
	}
	record.Stages, t.stages = f.stages, f.stages
	f.stages, f.samples = nil, nil // they are the record's own
	return record
}

func estimateOf(iv Interval) figure.Estimate {
	return figure.Estimate{Low: iv.Lo, Mid: iv.Mid(), High: iv.Hi}
}

// believeRise scales the fermentation of a rise to its measurement: a doubling is
// 1.25 %-hours (ferment.DoublingE). The measured hours replace the modelled ones,
// and later steps are scaled alike. So are those of an earlier rise, unless it was
// measured itself.
func (f *Simulator) believeRise(st *Stage, record *Record) {
	first := len(f.stages)
	before := 0.0
	for first > 0 && !f.stages[first-1].Step.Verb.Degasses() {
		first--
		before += f.stages[first].Hours.Mid
	}
	modelled := (before + st.Hours.Mid*st.read) * f.setup.Gas
	seen := ferment.WorkOf(st.Step.Reading.Rise.Interval.Mid())
	if !(modelled > 0) || !(seen > 0) {
		return
	}
	scale := seen / modelled
	sharpen := func(b figure.Estimate) figure.Estimate {
		m := b.Mid * scale
		return figure.Estimate{Low: m, Mid: m, High: m}
	}
	for i := range f.stages {
		switch {
		case i >= first:
			f.stages[i].Hours = sharpen(f.stages[i].Hours)
		case !record.Rise:
			f.stages[i].Hours = f.stages[i].Hours.Times(scale)
		}
	}
	if st.read == 1 {
		st.Hours = sharpen(st.Hours)
	} else { // known when it was read, and modelled from there on
		m := st.Hours.Mid * st.read
		rest := figure.Estimate{Low: max(0, st.Hours.Low-m), Mid: st.Hours.Mid - m,
			High: max(0, st.Hours.High-m)}.Times(scale)
		st.Hours = figure.Estimate{Low: min(rest.Low, rest.Mid) + m*scale,
			Mid: rest.Mid + m*scale, High: max(rest.High, rest.Mid) + m*scale}
	}
	record.RiseScale *= scale
	record.Rise, st.RiseMeasured = true, true
}

// TimeTo gives the hours from a step's start until the core is at a temperature, in
// a step without an end. Low is the fastest run, High the slowest, +Inf where it
// never gets there. ok is false where the temperatures are not known, or the step
// has no surroundings.
func (f *Simulator) TimeTo(s Setup, step *formula.Step, targetC float64) (figure.Estimate, bool) {
	return f.timeTo(s, step, step, targetC, 0)
}

// TimeToIf is TimeTo with another step in that one's place.
func (f *Simulator) TimeToIf(s Setup, step, instead *formula.Step,
	targetC float64) (figure.Estimate, bool) {
	return f.timeTo(s, step, instead, targetC, 0)
}

// TimeToAs is TimeTo with the part as a slab of another thickness, m.
func (f *Simulator) TimeToAs(s Setup, step *formula.Step,
	targetC, slabM float64) (figure.Estimate, bool) {
	return f.timeTo(s, step, step, targetC, slabM)
}

// timeTo keeps the part's shape for a slab of 0.
func (f *Simulator) timeTo(s Setup, step, instead *formula.Step,
	targetC, slabM float64) (figure.Estimate, bool) {
	s.Trace = false
	f.begin(s)
	f.stages = f.stages[:0]
	for _, other := range s.Part.Steps[f.resume(s, nil, nil, step.Index):] {
		st := Stage{Step: other}
		if other == step {
			if f.missing != "" {
				return figure.Estimate{}, false
			}
			f.reshape(instead)
			e, missing := f.environment(instead, &st)
			if missing != "" {
				return figure.Estimate{}, false
			}
			if _, in := f.vessel(&f.runs[figure.Middle], e); in {
				return f.hoursInBath(instead, e, targetC, slabM)
			}
			for i := range f.runs {
				if !f.enter(&f.runs[i], e) {
					return figure.Estimate{}, false
				}
			}
			read := instead.Reading != nil && instead.Reading.Temp.Set
			if slabM > 0 {
				if read {
					f.addEvidence(e, f.learn(instead, e))
				}
				e.body, f.shape.known = heat.SlabOf(slabM), true
			}
			var out [figure.Runs]float64
			for i := range f.runs {
				if slabM > 0 && !f.enter(&f.runs[i], e) {
					return figure.Estimate{}, false
				}
				through := read && slabM == 0 && f.believe(&f.runs[i], instead, e)
				warm := read && instead.Reading.Temp.Hi > targetC
				if !warm && instead.Verb.Chills() && f.now(&f.runs[i]).CoreC <= targetC {
					continue // colder than the cold that it comes to: it is there
				}
				out[i] = f.reach(&f.runs[i], e, targetC, through)
			}
			return figure.Estimate{Low: min(out[0], out[1], out[2]), Mid: out[1],
				High: max(out[0], out[1], out[2])}, true
		}
		f.step(other, &st)
	}
	return figure.Estimate{}, false
}

// reach gives the hours until the core of a run in its surroundings is at the
// target: 0 where it is already past it. After a believed reading the model's error
// is no longer added.
func (f *Simulator) reach(l *run, e environment, targetC float64, read bool) float64 {
	now := f.now(l)
	cooling := now.MeanC > l.ambient(e)
	if cooling && now.CoreC <= targetC || !cooling && now.CoreC >= targetC {
		return 0
	}
	if !read && f.solvedFor(l, e) {
		begin, pace := f.beginning(l, e, l.which), f.freezePace(l, e)
		return f.followed.solvers.TimeTo(begin, targetC, longestWatch*pace) / pace / 3600
	}
	speed := 1.0
	if !read {
		speed = f.speed(l, e, cooling)
	}
	return f.course(l, e, speed).reaches(targetC) / 3600
}
