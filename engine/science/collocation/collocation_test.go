package collocation_test

import (
	"math"
	"testing"

	"forebake/engine/science/collocation"
	"forebake/engine/science/heat"
)

var (
	dough = heat.Properties{ConductivityWmK: 0.35, DensityKgM3: 1050, SpecificHeat: 2700,
		DiffusivityM2s: 0.35 / 1050 / 2700}
	crumb = heat.Properties{ConductivityWmK: 0.33, DensityKgM3: 400, SpecificHeat: 2600,
		DiffusivityM2s: 0.33 / 400 / 2600}
)

// The heat of a dough whose butter melts, the conductivity of a
// crumb and the work of yeast.
func butter(tC float64) float64   { x := (tC - 22) / 6; return 2700 + 900*math.Exp(-x*x/2) }
func conducts(tC float64) float64 { return (0.2 + 0.9/(1+math.Exp((80-tC)/10))) / 0.33 }
func activity(tC float64) float64 { return math.Exp(-(tC - 36) * (tC - 36) / 150) }

var (
	butterCurve   = heat.NewCurve(-30, 60, 361, butter)
	conductsCurve = heat.NewCurve(-20, 105, 126, conducts)
	activityCurve = heat.NewCurve(-30, 45, 301, activity)
)

// reference follows a body by many cells of one width and many
// small steps, explicitly: as plain as can be.
type reference struct {
	d, half      float64
	p            heat.Properties
	h, ambient   float64
	q, cp, share func(tC float64) float64
	t            []float64
}

func newReference(cells int, d, half float64, p heat.Properties, t0 float64) *reference {
	r := &reference{d: d, half: half, p: p, t: make([]float64, cells)}
	for i := range r.t {
		r.t[i] = t0
	}
	r.q = func(float64) float64 { return 0 }
	r.cp = func(float64) float64 { return p.SpecificHeat }
	r.share = func(float64) float64 { return 1 }
	return r
}

func (r *reference) advance(seconds float64) heat.State {
	n := len(r.t)
	dx := r.half / float64(n)
	most := 0.0
	for c := -20.0; c < 105; c++ {
		most = math.Max(most, r.share(c)*r.p.ConductivityWmK/r.cp(c)/r.p.DensityKgM3)
	}
	steps := math.Ceil(seconds / (dx * dx / most / 2.5))
	dt := seconds / steps
	surface := 0.0
	area := make([]float64, n+1)
	mass := make([]float64, n)
	for i := range n + 1 {
		area[i] = math.Pow(float64(i)/float64(n), r.d-1)
	}
	for i := range n {
		inside, outside := float64(i)/float64(n), float64(i+1)/float64(n)
		volume := (math.Pow(outside, r.d) - math.Pow(inside, r.d)) / r.d
		mass[i] = r.p.DensityKgM3 * r.half * volume
	}
	flow := make([]float64, n+1)
	for range int(steps) {
		for i := 1; i < n; i++ {
			k := r.p.ConductivityWmK * r.share((r.t[i]+r.t[i-1])/2)
			flow[i] = -area[i] * k * (r.t[i] - r.t[i-1]) / dx
		}
		skin := r.p.ConductivityWmK * r.share(r.t[n-1]) / (dx / 2)
		surface = (r.h*r.ambient + skin*r.t[n-1]) / (r.h + skin)
		flow[n] = r.h * (surface - r.ambient)
		for i := range n {
			r.t[i] += dt / r.cp(r.t[i]) * ((flow[i]-flow[i+1])/mass[i] + r.q(r.t[i]))
		}
	}
	s := heat.State{SurfaceC: surface}
	total := 0.0
	for i := range n {
		total += mass[i]
		s.MeanC += mass[i] * r.t[i]
	}
	s.MeanC /= total
	s.CoreC = r.t[0] + (r.t[0]-r.t[1])/8
	return s
}

// Against many small cells the nodes come nearer than the finite
// volumes do, from the first minutes to the end of a night.
func TestNearerThanVolumes(t *testing.T) {
	const cells, pieces = 50, 12
	var nodes, volumes heat.State // the largest errors
	widen := func(worst *heat.State, got, want heat.State) {
		worst.CoreC = math.Max(worst.CoreC, math.Abs(got.CoreC-want.CoreC))
		worst.MeanC = math.Max(worst.MeanC, math.Abs(got.MeanC-want.MeanC))
		worst.SurfaceC = math.Max(worst.SurfaceC, math.Abs(got.SurfaceC-want.SurfaceC))
	}
	for _, c := range []struct {
		p          heat.Properties
		start, end float64
		h, wkg     float64
	}{
		{dough, 30, 4, 8, 0}, {dough, 26, 21, 9, 1}, {dough, 26, 2, 35, 1}, {dough, 9, 29, 12, 0.7},
		{crumb, 95, 22, 11.6, 0}, {crumb, 95, 22, 8, 0},
	} {
		for _, d := range []float64{1, 1.6, 3} {
			for _, half := range []float64{0.02, 0.05, 0.1} {
				for _, seconds := range []float64{1200, 4 * 3600} {
					r := newReference(cells, d, half, c.p, c.start)
					r.ambient, r.h = c.end, c.h
					var b collocation.Body
					var v heat.Volumes
					if !b.Start(d, half, c.p, c.start) || !v.Start(d, half, c.p, c.start) {
						t.Fatal("not started")
					}
					switch {
					case c.p == crumb:
						r.share = conducts
						b.SetConductivity(conductsCurve)
						v.SetConductivity(conductsCurve)
					case c.wkg > 0:
						r.q = func(tC float64) float64 { return c.wkg * activity(tC) }
						r.cp = butter
						b.SetOwnHeat(c.wkg, activityCurve)
						v.SetOwnHeat(c.wkg, activityCurve)
						b.SetSpecificHeat(butterCurve)
						v.SetSpecificHeat(butterCurve)
					}
					b.Stage(c.end, c.h)
					v.Stage(c.end, c.h)
					at := 0.0
					for i := range pieces {
						share := float64(i+1) / pieces
						dt := seconds*share*share - at
						at += dt
						want := r.advance(dt)
						widen(&nodes, b.Advance(dt), want)
						widen(&volumes, v.Advance(dt), want)
					}
				}
			}
		}
	}
	t.Logf("nodes %.3f, volumes %.3f", nodes, volumes)
	if !(nodes.CoreC < 0.03 && nodes.MeanC < 0.015) {
		t.Errorf("core and mean are off by %.3f and %.3f K", nodes.CoreC, nodes.MeanC)
	}
	if !(nodes.CoreC < volumes.CoreC && nodes.MeanC < volumes.MeanC &&
		nodes.SurfaceC < volumes.SurfaceC) {
		t.Errorf("nodes are off by %.3f, volumes by %.3f", nodes, volumes)
	}
}

// What is as warm as its surroundings stays so; what is insulated
// keeps its heat, to the last bit of what it makes.
func TestKeepsHeat(t *testing.T) {
	one := heat.NewCurve(-50, 150, 2, func(float64) float64 { return 1 })
	for _, d := range []float64{1, 1.7, 2, 3} {
		var b collocation.Body
		b.Start(d, 0.05, dough, 21)
		b.Stage(21, 9)
		s := b.Advance(40 * 24 * 3600)
		if math.Abs(s.CoreC-21)+math.Abs(s.MeanC-21)+math.Abs(s.SurfaceC-21) > 1e-9 {
			t.Errorf("d %g: %v in 21 C", d, s)
		}
		b.Start(d, 0.05, dough, 21)
		b.SetOwnHeat(0.9, one)
		b.Stage(21, 0)
		s = b.Advance(7200)
		want := 21 + 0.9*7200/dough.SpecificHeat
		if math.Abs(s.MeanC-want) > 1e-9 || math.Abs(s.CoreC-want) > 1e-6 {
			t.Errorf("d %g: %v, insulated, for %g", d, s, want)
		}
	}
}

// What is left of an excess over the surroundings is right in its
// logarithm, however small it is.
func TestDiesAway(t *testing.T) {
	var b collocation.Body
	var w heat.Walk
	b.Start(1, 0.02, dough, 60)
	b.Stage(20, 20)
	w.Start(heat.SlabOf(0.04), dough.ConductivityWmK, dough.DiffusivityM2s, 60)
	w.Stage(20, 20)
	for at := 0.0; at < 8*3600; at += 1800 {
		got, want := b.Advance(1800).CoreC-20, w.At(at+1800).CoreC-20
		if off := math.Log(got / want); want > 1e-4 && !(math.Abs(off) < 0.01) {
			t.Errorf("%g h: %.3g K are left, of %.3g", (at+1800)/3600, got, want)
		}
	}
}

// The time to a temperature is when the body is at it, and +Inf
// where it never is.
func TestTimeTo(t *testing.T) {
	for _, p := range []heat.Point{heat.Core, heat.Mean, heat.Surface} {
		for _, target := range []float64{80, 40, 23} {
			var b collocation.Body
			b.Start(1.6, 0.05, crumb, 95)
			b.SetConductivity(conductsCurve)
			b.Stage(22, 10)
			seconds := b.TimeTo(p, target, 1e6)
			if got := b.Advance(seconds).Of(p); math.Abs(got-target) > 0.02 {
				t.Errorf("point %d is at %.3f C when it should be at %g", p, got, target)
			}
			if again := b.TimeTo(p, 21, 1e6); !math.IsInf(again, 1) {
				t.Errorf("point %d is at 21 C in 22 after %g s", p, again)
			}
		}
	}
}

func TestBadFigures(t *testing.T) {
	var b collocation.Body
	for _, bad := range []struct {
		d, half, t0 float64
		p           heat.Properties
	}{
		{0.9, 0.05, 20, dough}, {3.1, 0.05, 20, dough}, {math.NaN(), 0.05, 20, dough},
		{1, 0, 20, dough},
		{1, math.Inf(1), 20, dough}, {1, 0.05, math.NaN(), dough}, {1, 0.05, math.Inf(-1), dough},
		{1, 0.05, 20, heat.Properties{}},
	} {
		if b.Start(bad.d, bad.half, bad.p, bad.t0) {
			t.Errorf("%v is taken", bad)
		}
	}
	b.Start(1, 0.05, dough, 20)
	b.Stage(4, 9)
	for _, seconds := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if s := b.Advance(seconds); s.MeanC < 20-1e-9 {
			t.Errorf("after %g s: %v", seconds, s)
		}
	}
}
