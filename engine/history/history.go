// Package history follows a part through its steps: what each does to its temperature and how far it ferments.
//
// Package facts calls it, once a part, when a rule or an output asks for a figure that needs it; it hands in what the part is
// made of, and gets plain figures back. It knows formulas and science, never rules.
//
// Three runs are made of every part: the middle one, and the coldest and the warmest that the ranges in the formula and the
// error of the model allow. A probe reading in the formula makes all three pass through it and is believed from there on.
package history

import (
	"math"

	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/quantity"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
)

// Interval is short for the interval of package quantity.
type Interval = quantity.Interval

// Band is a figure with its ends: the coldest run, the middle one and the warmest. Cold <= Mid <= Warm for temperatures and
// for fermentation below 38 C.
type Band struct{ Cold, Mid, Warm float64 }

// Interval gives the ends in order.
func (b Band) Interval() Interval { return quantity.Between(b.Cold, b.Warm) }

// Material is what heat meets in a part.
type Material struct {
	Known        bool
	Conductivity float64 // W/(m K)
	Diffusivity  float64 // m2/s
	Density      float64 // kg/m3, gas included
	SpecificHeat float64 // J/(kg K)
	Butterfat    float64 // share of the mass that is milk fat: it takes heat to melt
}

// Setup is what a part is followed with.
type Setup struct {
	Part     *formula.Part
	Kitchen  *kitchen.Kitchen
	MassG    Interval
	Material Material
	Start    Band // C, at the end of the first mix, or of whatever begins the part
	Started  bool // the start is known
	// Gas is yeast in percent times its osmotic factor: how hard the dough works, for its own heat. 0 for what does not ferment.
	Gas float64
	// Filling gives the life and material of a part that a step spreads on this one, nil when it is not known.
	Filling func(*formula.Part) *Filling
}

// Filling is what a spread filling brings with it.
type Filling struct {
	Temp     Band // C
	MassG    Interval
	Material Material
}

// Stage is what one step did.
type Stage struct {
	Step           *formula.Step
	Known          bool     // the temperatures are known
	Missing        string   // what would have to be written, when they are not
	StartH, EndH   Interval // hours since the part's first step
	Ambient        Interval // C
	HasAmbient     bool
	StartCore      Band // C, as the step begins
	Core, Mean     Band // C, as it ends
	Surface        Band
	CoreMax        Band
	Hours          Band // equivalent hours at 26 C gained in it
	Measured       bool // a reading was believed here
	AssumedBowl    bool // no geometry was given, and it matters
	MinutesToCore  Band // bake: until the target core
	HasCoreMinutes bool
	Body           heat.Body
	Bi             float64
}

// Life is what a part went through.
type Life struct {
	Stages []Stage
	// RiseScale is what a measured rise made of the fermentation model; Rise is true when there was one.
	RiseScale float64
	Rise      bool
}

// lane is one of the three runs.
type lane struct {
	walk  heat.Walk
	warm  int     // -1 coldest, 0 middle, 1 warmest
	lastT float64 // C, before a body is known: even temperature
	live  bool    // the walk is started
}

// Follower follows parts, keeping its memory from one to the next. It belongs to one goroutine.
type Follower struct {
	lanes   [3]lane
	setup   Setup
	scales  [placeKinds][3]float64 // what readings made of the surface coefficients, by place
	body    heat.Body
	shape   shape
	filled  *Filling
	mixed   bool
	volumes heat.Volumes
	slab    float64 // TimeToAs: the thickness to try, m; 0 for the part as it stands
	stages  []Stage
}

// shape is how the part stands now, for the steps that do not say.
type shape struct {
	known    bool
	assumed  bool
	pieces   float64 // how many; 0 for one mass
	pieceKg  float64
	tin      *kitchen.Tin
	filling  float64 // kg spread on
	fillRho  float64
	mixedRho float64
}

// Follow runs a part through its steps. The life belongs to the caller.
func (f *Follower) Follow(s Setup) *Life {
	f.begin(s)
	life := &Life{RiseScale: 1}
	f.stages = make([]Stage, 0, len(s.Part.Steps))
	clock := Interval{}
	for _, step := range s.Part.Steps {
		st := Stage{Step: step, StartH: clock}
		f.step(step, &st)
		if step.Time.Set {
			clock = clock.Add(step.Time.Interval.Scale(1.0 / 60))
		}
		st.EndH = clock
		if r := step.Measured; r != nil && r.Rise.Set && st.Known {
			f.believeRise(&st, life)
		}
		scaleHours(&st, life)
		f.stages = append(f.stages, st)
	}
	life.Stages = f.stages
	f.stages = nil
	return life
}

func scaleHours(st *Stage, life *Life) {
	if life.Rise && !st.Measured {
		st.Hours = Band{st.Hours.Cold * life.RiseScale, st.Hours.Mid * life.RiseScale, st.Hours.Warm * life.RiseScale}
	}
}

// believeRise sets the fermentation so far by a measured rise: a doubling is 1.25 %-hours (ferment.DoublingE). All hours
// before it are scaled, and those after it too.
func (f *Follower) believeRise(st *Stage, life *Life) {
	if !(f.setup.Gas > 0) {
		return
	}
	before := 0.0
	for _, other := range f.stages {
		before += other.Hours.Mid
	}
	modelled := (before + st.Hours.Mid) * f.setup.Gas
	seen := ferment.DoublingE * math.Log2(st.Step.Measured.Rise.Interval.Mid())
	if !(modelled > 0) || !(seen > 0) {
		return
	}
	scale := seen / modelled
	sharpen := func(b Band) Band { m := b.Mid * scale; return Band{m, m, m} }
	for i := range f.stages {
		f.stages[i].Hours = sharpen(f.stages[i].Hours)
	}
	st.Hours = sharpen(st.Hours)
	life.RiseScale, life.Rise, st.Measured = scale, true, true
}

// TimeTo gives the hours from the beginning of a step until the core is at a temperature, as if the step lasted as long as it
// takes: Cold is the fastest run and Warm the slowest; +Inf where it never comes there. ok is false when the temperatures are
// not known, or the step has no surroundings.
func (f *Follower) TimeTo(s Setup, step *formula.Step, targetC float64) (Band, bool) {
	f.begin(s)
	f.stages = f.stages[:0]
	for _, other := range s.Part.Steps {
		st := Stage{Step: other}
		if other == step {
			if !f.setup.Started || !f.setup.Material.Known {
				return Band{}, false
			}
			f.reshape(other)
			if f.slab > 0 {
				f.body, f.shape.known = heat.SlabOf(f.slab), true
				f.turnOver()
			}
			e, ok := f.environment(other, &st)
			if !ok {
				return Band{}, false
			}
			var out [3]float64
			for i := range f.lanes {
				out[i] = f.reach(&f.lanes[i], e, targetC)
			}
			return Band{out[0], out[1], out[2]}, true
		}
		f.step(other, &st)
	}
	return Band{}, false
}

// reach gives the hours until one run's core is at the target: 0 when it is there already on the way down.
func (f *Follower) reach(l *lane, e environment, targetC float64) float64 {
	f.enter(l, e)
	core := l.walk.At(0).CoreC
	cooling := l.walk.At(0).MeanC > e.ambient.Mid()
	if cooling && core <= targetC || !cooling && core >= targetC {
		return 0
	}
	if cooling && f.worksHard(l, e) {
		return f.workingTime(l, e, targetC)
	}
	speed := f.speed(l, e, cooling)
	return l.walk.TimeTo(heat.Core, targetC, math.Inf(1)) / speed / 3600
}

// TimeToAs is TimeTo with the part standing as a slab of another thickness, m.
func (f *Follower) TimeToAs(s Setup, step *formula.Step, targetC, slabM float64) (Band, bool) {
	f.slab = slabM
	defer func() { f.slab = 0 }()
	return f.TimeTo(s, step, targetC)
}
