package history

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
)

// hardExcess is how far its own heat must warm a body's core for the solver with a
// source, K. Below that the closed form is within 0.5 K of it (computed).
const hardExcess = 4

func (f *Simulator) ownHeat(which figure.Run, tC float64) float64 {
	if f.setup.Gas == 0 {
		return 0
	}
	return f.setup.OwnHeat.At(which) * ferment.TemperatureFactor(tC)
}

func (f *Simulator) works() bool { return f.setup.Gas > 0 && f.setup.OwnHeat.High > 0 }

// excess is the excess temperature of a run from its own heat.
func (f *Simulator) excess(l *run, e environment) heat.Excess {
	cooling := f.now(l).MeanC > l.ambient(e)
	return heat.OwnExcess(l.body, f.setup.Material.properties(), f.coefficient(l, e, cooling))
}

// worksHard reports whether its own heat warms a run so far that it ferments faster.
func (f *Simulator) worksHard(l *run, e environment) bool {
	if !f.works() {
		return false
	}
	t := min(max(f.now(l).MeanC, l.ambient(e)), ferment.GasOptimumC)
	return f.excess(l, e).InTheEnd(f.ownHeat(l.which, t)) >= hardExcess
}

// warmth is the excess of a run by its own heat, K. Temperatures use the run's heat, hours the
// middle run's: the error of the rises, fitted to real doughs, already has that of the heat.
type warmth struct{ run, middle heat.State }

// course follows one run through a stage: the walk in its surroundings, and the
// excess from its own heat. It is plain data and may be copied.
type course struct {
	f      *Simulator
	l      *run
	excess heat.Excess
	speed  float64
	at     float64 // s
	own    warmth
	meanC  float64 // by the middle run's heat
}

// course starts one; speed is how much faster than the model it goes.
func (f *Simulator) course(l *run, e environment, speed float64) course {
	c := course{f: f, l: l, speed: speed, own: l.own}
	if f.works() {
		c.excess = f.excess(l, e)
	}
	return c
}

// to advances the course to the given seconds and gives the state there.
func (c *course) to(seconds float64) heat.State {
	s := c.l.walk.At(seconds * c.speed)
	if !c.f.works() {
		c.meanC = s.MeanC
		return s
	}
	if dt := seconds - c.at; dt > 0 {
		halfway := c.l.walk.At((c.at + dt/2) * c.speed).MeanC
		c.own = warmth{
			c.after(c.own.run, c.l.which, halfway, dt),
			c.after(c.own.middle, figure.Middle, halfway, dt),
		}
		c.at = seconds
	}
	c.meanC = s.MeanC + c.own.middle.MeanC
	return s.Plus(c.own.run)
}

// after is the excess dt seconds on, by one run's heat halfway: a warmer dough ferments faster.
func (c *course) after(own heat.State, which figure.Run, halfwayC, dt float64) heat.State {
	step := func(meanK, dt float64) heat.State {
		q := c.f.ownHeat(which, halfwayC+meanK)
		return c.excess.After(own, q/c.speed, dt*c.speed)
	}
	return step(step(own.MeanC, dt/2).MeanC, dt)
}

// reaches gives the seconds until the core is at a target, +Inf beyond longestWatch.
func (c course) reaches(targetC float64) float64 {
	if !c.f.works() {
		return c.l.walk.TimeTo(heat.Core, targetC, math.Inf(1)) / c.speed
	}
	const first = 60
	return heat.Passes(c, func(c *course, dt float64) float64 {
		return c.to(c.at + dt).CoreC
	}, first, targetC, longestWatch)
}

// even sets a run to one temperature, after a turn or if only its mean is known.
func (l *run) even(tC float64) { l.lastT, l.live, l.own = tC, false, warmth{} }

// evenApart sets a run to one temperature, with another for the middle run's heat.
func (l *run) evenApart(tC, middleC float64) {
	l.even(middleC)
	l.own.run = heat.State{CoreC: tC - middleC, MeanC: tC - middleC, SurfaceC: tC - middleC}
}

func (m Material) properties() heat.Properties {
	return heat.Properties{
		SpecificHeat:    m.SpecificHeat,
		DensityKgM3:     m.Density,
		ConductivityWmK: m.Conductivity,
		DiffusivityM2s:  m.Diffusivity,
	}
}
