// Package collocation follows a body in one direction without a moving
// front. The body may make heat of its own, hold butter that melts, or
// change its conductivity.
//
// Temperatures are known at a few nodes, and a polynomial through them
// meets the heat equation at each (orthogonal collocation, Villadsen &
// Stewart 1967, memory). Time goes in steps of RODAS3, an L-stable
// Rosenbrock method of third order (Sandu et al. 1997, memory), as long
// as their error allows. What freezes or sets is for the finite volumes
// of package heat.
//
// Core and mean are within 0.03 and 0.015 K of many small cells over
// steps of 5 to 75 K; the finite volumes come within 0.08 and 0.06 K,
// at four to seven times the cost (computed).
package collocation

import (
	"math"

	"forebake/engine/science/heat"
)

// inner is how many nodes lie within the body; its surface is
// one more. With 5 the core of a large body is 0.3 K off in its
// first minutes.
const inner, nodes = 7, 8

// The error of one step, K: at most tolerance, and share of the
// excess over the surroundings with floor beside it. What is read
// off a decaying excess is its logarithm.
const tolerance, share, floor = 0.03, 2e-3, 1e-6

// untouched is the Fourier number below which no heat from outside has
// reached the middle, where the polynomial would swing. A hot crumb
// conducts three times its middle figure.
const untouched = 0.01

// vector is a figure at each node within the body.
type vector [inner]float64

// Body is a body in one direction and the stage that it is in. The
// zero Body must be started; it is plain data and may be copied.
type Body struct {
	laplace  [inner][nodes]float64 // of a field, at each node within, to W/kg
	weights  vector                // of the nodes in the mean
	slope    float64               // of a field over u at the surface, to W/m2
	slowest  float64               // R2/alpha, s
	cp       float64
	t        vector  // C
	surfaceC float64 // as last read
	age      float64 // s since the start
	coreC    float64 // as long as the core is untouched

	ambientC, h               float64
	strength                  float64 // of source, W/kg; 0 for none
	source, heats, conduct    heat.Curve
	heatVaries, conductVaries bool
	next                      float64 // step that the error allows, s; 0 as a stage begins
}

// Start puts a body of dimension d (1 slab, 2 cylinder, 3 sphere;
// between them heat.Body.EquivalentDimension) and half thickness or
// radius halfM, m, at an even temperature t0C. It reports false,
// and changes nothing, for other figures.
func (b *Body) Start(d, halfM float64, p heat.Properties, t0C float64) bool {
	if !(d >= 1 && d <= 3) || !positive(halfM) || math.IsNaN(t0C) || math.IsInf(t0C, 0) ||
		!positive(p.ConductivityWmK) || !positive(p.DensityKgM3) || !positive(p.SpecificHeat) {
		return false
	}
	*b = Body{cp: p.SpecificHeat, surfaceC: t0C, coreC: t0C, slope: 2 * p.ConductivityWmK / halfM}
	b.slowest = halfM * halfM * p.DensityKgM3 * p.SpecificHeat / p.ConductivityWmK
	scale := p.SpecificHeat / b.slowest
	for i := range inner {
		b.t[i] = t0C
		for j := range nodes {
			b.laplace[i][j] = scale * (4*places[i]*second[i][j] + 2*d*first[i][j])
		}
		for k, c := range lagrange[i] {
			b.weights[i] += c * d / (2*float64(k) + d)
		}
	}
	return true
}

// Stage begins a stage now: surroundings at ambientC, C, and a
// surface coefficient h, W/(m2 K), from 0 (insulated) on.
func (b *Body) Stage(ambientC, h float64) { b.ambientC, b.h, b.next = ambientC, h, 0 }

// SetOwnHeat makes a dough work from now on: wkg W/kg at the
// temperature where activity is 1.
func (b *Body) SetOwnHeat(wkg float64, activity heat.Curve) { b.source, b.strength = activity, wkg }

// SetSpecificHeat makes the specific heat, J/(kg K), a curve
// above 0.
func (b *Body) SetSpecificHeat(jkgK heat.Curve) { b.heats, b.heatVaries = jkgK, true }

// SetConductivity makes the conductivity, as a share of the one of
// Start, a curve above 0.
func (b *Body) SetConductivity(share heat.Curve) { b.conduct, b.conductVaries = share, true }

func positive(x float64) bool { return x > 0 && !math.IsInf(x, 1) }

// Advance moves now on by the given seconds and gives the state
// there. Times below 0 and times that are not finite count as 0.
func (b *Body) Advance(seconds float64) heat.State {
	if !positive(seconds) {
		return b.state()
	}
	const least, most, safety = 0.1, 5, 0.8 // of the growth of a step
	var now reading
	b.read(&b.t, &now)
	if b.next == 0 { // the fastest node moves by ten tolerances
		fastest := tolerance / seconds
		for _, rate := range now.rate {
			fastest = math.Max(fastest, math.Abs(rate))
		}
		b.next = 10 * tolerance / fastest
	}
	for left := seconds; left > 0; {
		excess := math.Max(math.Abs(b.t[0]-b.ambientC), math.Abs(b.t[inner-1]-b.ambientC))
		allowed := math.Min(tolerance, share*excess+floor)
		dt, whole := b.next, true
		if dt >= left {
			dt, whole = left, dt == left
		} else if left < 2*dt { // two alike, and no small one at the end
			dt, whole = left/2, false
		}
		t, err := b.step(dt, &now)
		growth := math.Min(safety*math.Cbrt(allowed/err), most)
		if !(err <= allowed) && dt > seconds*1e-9 { // what is not a number too
			b.next = dt * least
			if growth > least {
				b.next = dt * growth
			}
			continue
		}
		b.t = t
		b.age += dt
		left -= dt
		if b.isUntouched() {
			b.coreC += b.alone(b.coreC+b.alone(b.coreC)*dt/2) * dt
		}
		if next := dt * growth; whole || next > b.next {
			b.next = next
		}
		b.read(&b.t, &now)
	}
	return b.state()
}

// reading are the rates of a field, and what they turn on.
type reading struct {
	rate                       vector // K/s
	cp, cpSlope, qSlope, share vector
	surfaceShare               float64 // of conductivity
	surfaceBy                  float64 // what the surface's field moves by that of the nodes
}

// whole is the share of a conductivity that does not change.
var whole = vector{1, 1, 1, 1, 1, 1, 1}

// read finds the surface and the rates of a field of temperatures.
// Heat flows by phi, the integral of the share of conductivity from
// the surroundings on, so that what is as warm as they are stays.
func (b *Body) read(t *vector, r *reading) {
	var phi vector
	r.share, r.surfaceShare = whole, 1
	around := 0.0
	if b.conductVaries {
		_, _, around = b.conduct.At(b.ambientC)
		for i := range phi {
			r.share[i], _, phi[i] = b.conduct.At(t[i])
			phi[i] -= around
		}
	} else {
		for i := range phi {
			phi[i] = t[i] - b.ambientC
		}
	}
	inside := 0.0 // flow to the surface but for what its own temperature does, W/m2
	for j := range phi {
		inside += first[inner][j] * phi[j]
	}
	inside *= b.slope
	own := b.slope * first[inner][inner]
	above := b.surfaceC - b.ambientC // of the surface over the surroundings
	atSurface := above
	if b.conductVaries {
		for range 20 {
			r.surfaceShare, _, atSurface = b.conduct.At(b.ambientC + above)
			atSurface -= around
			move := (inside + own*atSurface + b.h*above) / (own*r.surfaceShare + b.h)
			above -= move
			if math.Abs(move) < 1e-6 {
				atSurface -= r.surfaceShare * move
				break
			}
		}
	} else {
		above = -inside / (own + b.h)
		atSurface = above
	}
	r.surfaceBy = -b.slope / (own*r.surfaceShare + b.h) * r.surfaceShare
	b.surfaceC = b.ambientC + above
	for i := range t {
		row := &b.laplace[i]
		sum := row[inner] * atSurface
		for j := range phi {
			sum += row[j] * phi[j]
		}
		r.cp[i] = b.cp
		if b.heatVaries {
			r.cp[i], r.cpSlope[i], _ = b.heats.At(t[i])
		}
		if b.strength != 0 {
			q, slope, _ := b.source.At(t[i])
			sum += b.strength * q
			r.qSlope[i] = b.strength * slope
		}
		r.rate[i] = sum / r.cp[i]
	}
}

// step gives the field after one step from now, and the error in
// it, K.
func (b *Body) step(dt float64, now *reading) (t vector, err float64) {
	var m matrix
	m.factor(b, now, dt)
	k1 := now.rate
	m.solve(&k1)
	k2 := now.rate
	for i := range k2 {
		k2[i] += 4 / dt * k1[i]
	}
	m.solve(&k2)
	var then reading
	t = b.t
	for i := range t {
		t[i] += 2 * k1[i]
	}
	b.read(&t, &then)
	k3 := then.rate
	for i := range k3 {
		k3[i] += (k1[i] - k2[i]) / dt
	}
	m.solve(&k3)
	for i := range t {
		t[i] += k3[i]
	}
	b.read(&t, &then)
	k4 := then.rate
	for i := range k4 {
		k4[i] += (k1[i] - k2[i] - 8.0/3*k3[i]) / dt
	}
	m.solve(&k4)
	for i := range t {
		t[i] += k4[i]
		if e := math.Abs(k4[i]); !(e <= err) { // what is not a number too
			err = e
		}
	}
	return t, err
}

// matrix is that of a step, 2/dt less the slopes of the rates, in
// its two triangles.
type matrix [inner]vector

// factor makes the matrix and its triangles; the diagonal holds the
// inverses of its own.
func (m *matrix) factor(b *Body, r *reading, dt float64) {
	for i := range inner {
		row, out := &b.laplace[i], &m[i]
		inverse := 1 / r.cp[i]
		bySurface := row[inner] * r.surfaceBy
		for j := range inner {
			out[j] = -(row[j] + bySurface*first[inner][j]) * r.share[j] * inverse
		}
		out[i] += 2/dt - (r.qSlope[i]-r.rate[i]*r.cpSlope[i])*inverse
	}
	for k := range inner {
		m[k][k] = 1 / m[k][k]
		for i := k + 1; i < inner; i++ {
			m[i][k] *= m[k][k]
			for j := k + 1; j < inner; j++ {
				m[i][j] -= m[i][k] * m[k][j]
			}
		}
	}
}

// solve solves the matrix for x, in place.
func (m *matrix) solve(x *vector) {
	for i := 1; i < inner; i++ {
		for j := range i {
			x[i] -= m[i][j] * x[j]
		}
	}
	for i := inner - 1; i >= 0; i-- {
		for j := i + 1; j < inner; j++ {
			x[i] -= m[i][j] * x[j]
		}
		x[i] *= m[i][i]
	}
}

// isUntouched reports whether nothing from outside has come to
// the middle.
func (b *Body) isUntouched() bool { return b.age < untouched*b.slowest }

// alone is how fast what lies at tC warms by its own heat
// alone, K/s.
func (b *Body) alone(tC float64) float64 {
	if b.strength == 0 {
		return 0
	}
	q, _, _ := b.source.At(tC)
	cp := b.cp
	if b.heatVaries {
		cp, _, _ = b.heats.At(tC)
	}
	return b.strength * q / cp
}

// state reads the field. The core is extrapolated from the nodes
// within, which feel a new stage last.
func (b *Body) state() heat.State {
	s := heat.State{SurfaceC: b.surfaceC}
	for i, t := range b.t {
		s.MeanC += b.weights[i] * t
		s.CoreC += lagrange[i][0] * t
	}
	if b.isUntouched() {
		s.CoreC = b.coreC
	}
	return s
}

// TimeTo is the first time from now, s and at most within, at which
// the temperature at p is targetC; +Inf when that does not happen
// in the stage. Nothing changes.
func (b *Body) TimeTo(p heat.Point, targetC, within float64) float64 {
	return heat.Passes(*b, func(c *Body, dt float64) float64 {
		return c.Advance(dt).Of(p)
	}, b.slowest/500, targetC, within)
}
