package history

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
)

// hardExcess is how far its own heat must be able to warm the core of a body for the solver with a
// source to follow it, K. Below that the closed form does, within 0.5 K of it (computed).
const hardExcess = 4

// ownHeat is the heat that one run makes at a temperature, W/kg.
func (f *Simulator) ownHeat(which figure.Run, tC float64) float64 {
	if f.setup.Gas == 0 {
		return 0
	}
	return f.setup.OwnHeat.At(which) * ferment.TemperatureFactor(tC)
}

// works reports whether the part makes heat of its own.
func (f *Simulator) works() bool { return f.setup.Gas > 0 && f.setup.OwnHeat.High > 0 }

// excess is what the own heat of a run does to its body in some surroundings.
func (f *Simulator) excess(l *run, e environment) heat.Excess {
	cooling := f.now(l).MeanC > l.ambient(e)
	return heat.OwnExcess(l.body, f.setup.Material.properties(), f.coefficient(l, e, cooling))
}

// worksHard reports whether its own heat can warm a run that has entered its surroundings so much
// that it works the harder for it.
func (f *Simulator) worksHard(l *run, e environment) bool {
	if !f.works() {
		return false
	}
	t := min(max(f.now(l).MeanC, l.ambient(e)), ferment.GasOptimumC)
	return f.excess(l, e).InTheEnd(f.ownHeat(l.which, t)) >= hardExcess
}

// warmth is how far its own heat keeps a run above its walk, K: by the heat of the run, for its
// temperatures, and by that of the middle run, for its hours. The error of the rises was fitted to
// doughs with whatever heat they made, so that of the heat is in it.
type warmth struct{ run, middle heat.State }

// course follows one run through a stage from now: the walk in its surroundings, and the excess
// that its own heat keeps up. It is plain data and may be copied.
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

// to moves the course on to the given seconds and gives the state there.
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

// after is the excess dt seconds on, by the heat that one of the runs makes halfway: what is warmer
// works harder.
func (c *course) after(own heat.State, which figure.Run, halfwayC, dt float64) heat.State {
	step := func(meanK, dt float64) heat.State {
		q := c.f.ownHeat(which, halfwayC+meanK)
		return c.excess.After(own, q/c.speed, dt*c.speed)
	}
	return step(step(own.MeanC, dt/2).MeanC, dt)
}

// reaches gives the seconds until the core is at a target, +Inf when it is not in longestWatch.
func (c course) reaches(targetC float64) float64 {
	if !c.f.works() {
		return c.l.walk.TimeTo(heat.Core, targetC, math.Inf(1)) / c.speed
	}
	const first = 60
	return heat.Passes(c, func(c *course, dt float64) float64 {
		return c.to(c.at + dt).CoreC
	}, first, targetC, longestWatch)
}

// even makes a run even at a temperature: it was turned over, or nothing but its mean is known.
func (l *run) even(tC float64) { l.lastT, l.live, l.own = tC, false, warmth{} }

// evenApart makes a run even whose own heat has taken it away from what the middle heat would have.
func (l *run) evenApart(tC, middleC float64) {
	l.even(middleC)
	l.own.run = heat.State{CoreC: tC - middleC, MeanC: tC - middleC, SurfaceC: tC - middleC}
}

// properties are the material as package heat takes it.
func (m Material) properties() heat.Properties {
	return heat.Properties{
		SpecificHeat:    m.SpecificHeat,
		DensityKgM3:     m.Density,
		ConductivityWmK: m.Conductivity,
		DiffusivityM2s:  m.Diffusivity,
	}
}
