package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

const doughK, doughAlpha = 0.35, 1.2e-7

var doughProperties = Properties{
	SpecificHeat:    doughK / doughAlpha / 1100,
	DensityKgM3:     1100,
	ConductivityWmK: doughK,
	DiffusivityM2s:  doughAlpha,
}

func never(t *testing.T, name string, seconds float64) {
	t.Helper()
	if !math.IsInf(seconds, 1) {
		t.Errorf("%s: %g s, want never", name, seconds)
	}
}

func TestBesselZeros(t *testing.T) {
	for n := range modes {
		near(t, "J1", math.J1(zerosJ1[n]), 0, 1e-14)
		near(t, "J0", math.J0(zerosJ0[n]), 0, 1e-14)
		if n > 0 && !(zerosJ1[n] > zerosJ0[n-1] && zerosJ0[n] > zerosJ1[n]) {
			t.Errorf("zeros out of order at %d", n)
		}
	}
}

// Every root solves its equation inside its bracket; the closed norm,
// constants and means are their integrals.
func TestRootsProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := rapid.IntRange(1, 3).Draw(t, "d")
		bi := math.Pow(10, rapid.Float64Range(-9, 6).Draw(t, "logBi"))
		if rapid.IntRange(0, 9).Draw(t, "held") == 0 {
			bi = math.Inf(1)
		}
		var b basis
		b.fill(d, bi)
		sum := 0.0
		for n := range modes {
			z := math.Sqrt(b.z2[n])
			if n > 0 && !(b.z2[n] > b.z2[n-1]) {
				t.Fatalf("root %d is not above the last", n)
			}
			lo, hi := float64(n)*math.Pi, float64(n)*math.Pi+math.Pi/2
			if d == 2 {
				lo, hi = zerosJ1[n], zerosJ0[n]
			}
			if d == 3 {
				hi = lo + math.Pi
			}
			if z < lo*(1-1e-12) || z > hi*(1+1e-12) {
				t.Fatalf("root %d = %g outside %g..%g", n, z, lo, hi)
			}
			if finite(bi) {
				f, slope, _ := boundary(d, z, bi)
				if math.Abs(f/slope) > 1e-10*z && bi > 1e-5 {
					t.Fatalf("root %d = %g is off by %g", n, z, f/slope)
				}
			}
			norm, mean := 0.0, 0.0
			const steps = 600
			for i := range steps + 1 {
				x := float64(i) / steps
				w := 2.0 + 2*float64(i%2)
				if i == 0 || i == steps {
					w = 1
				}
				f := shapeAt(d, z*x)
				norm += w * f * f * math.Pow(x, float64(d-1))
				mean += w * f * math.Pow(x, float64(d-1))
			}
			norm, mean = norm/(3*steps), float64(d)*mean/(3*steps)
			if math.Abs(norm-b.nn[n]) > 1e-5*(norm+1e-3) || math.Abs(mean-b.m[n]) > 1e-5 {
				t.Fatalf("mode %d: norm %g %g, mean %g %g", n, norm, b.nn[n], mean, b.m[n])
			}
			if a := mean / float64(d) / norm; math.Abs(a-b.a[n]) > 1e-4*(1+math.Abs(a)) {
				t.Fatalf("mode %d: a %g %g", n, a, b.a[n])
			}
			sum += b.a[n] * b.m[n]
		}
		if sum > 1+1e-9 || sum < 0.9 {
			t.Fatalf("unit field has a mean of %g", sum)
		}
	})
}

var drawnShapes = []Shape{Slab, Cylinder, Sphere, FiniteCylinder, Brick}

func drawBody(t *rapid.T, shapes []Shape) Body {
	length := rapid.Float64Range(0.005, 0.115)
	b := Body{Shape: rapid.SampledFrom(shapes).Draw(t, "shape")}
	for i := range b.Half {
		b.Half[i] = length.Draw(t, "half")
	}
	if rapid.Bool().Draw(t, "square") {
		b.Half[1] = b.Half[0]
	}
	return b
}

type stage struct{ ambient, h, hours float64 }

func drawStages(t *rapid.T, most int) []stage {
	stages := make([]stage, rapid.IntRange(1, most).Draw(t, "stages"))
	for i := range stages {
		stages[i] = stage{
			rapid.Float64Range(-2, 40).Draw(t, "ambient"),
			math.Exp(rapid.Float64Range(math.Log(3), math.Log(300)).Draw(t, "log h")),
			math.Exp(rapid.Float64Range(math.Log(0.1), math.Log(14)).Draw(t, "log hours")),
		}
	}
	return stages
}

// The two solvers have nothing in common but the body.
func TestSolversAgree(t *testing.T) {
	worst := 0.0
	rapid.Check(t, func(t *rapid.T) {
		b := drawBody(t, drawnShapes[:3])
		var w Walk
		var v Volumes
		if !w.Start(b, doughK, doughAlpha, 26) ||
			!v.Start(float64(b.Shape)+1, b.Half[0], doughProperties, 26) {
			t.Fatal("refused")
		}
		for _, s := range drawStages(t, 4) {
			w.Stage(s.ambient, s.h)
			v.Stage(s.ambient, s.h)
			seconds := s.hours * 3600
			a := w.Advance(seconds)
			c := v.Advance(seconds)
			if doughAlpha*seconds/(b.Half[0]*b.Half[0]) <= 0.01 {
				continue
			}
			off := math.Max(math.Abs(a.CoreC-c.CoreC), math.Abs(a.MeanC-c.MeanC))
			worst = math.Max(worst, off)
			if off > 0.08 { // 0.05 K once in a thousand draws
				t.Fatalf("%+v: modes %+v, volumes %+v", b, a, c)
			}
		}
	})
	t.Logf("furthest apart: %.4f K", worst)
}

// Moving a field to the modes of the same Biot number changes nothing,
// to a neighbouring one next to nothing.
func TestRebaseToItself(t *testing.T) {
	for d := 1; d <= 3; d++ {
		for _, bi := range []float64{1e-4, 0.3, 5, 200} {
			var b, near1, b2 basis
			b.fill(d, bi)
			near1.fill(d, bi*(1+1e-6))
			b2.fill(d, bi*1.5)
			var v vector
			v.even(&b)
			for n := range modes {
				v.c[n] *= math.Exp(-b.z2[n] * 0.05)
			}
			v.born = 0.05
			v.tail(&b, 0.9, 0.7)
			was := v
			v.rebase(&b, &near1)
			for n := range modes {
				near(t, "neighbour", v.c[n], was.c[n], 1e-4)
			}
			v = was
			v.rebase(&b, &b2)
			core, mean, surf := v.value(&b2, &unfaded, 0)
			core0, mean0, surf0 := was.value(&b, &unfaded, 0)
			near(t, "core", core, core0, 1e-9)
			near(t, "mean", mean, mean0, 1e-9)
			near(t, "surface", surf, surf0, 1e-9)
		}
	}
	// Two half stages are one stage.
	one := mustWalk(t, BrickOf(0.1, 0.1, 0.23), doughK, doughAlpha, 26, 4, 8)
	two := mustWalk(t, BrickOf(0.1, 0.1, 0.23), doughK, doughAlpha, 26, 4, 8)
	two.Advance(5000)
	two.Stage(4, 8)
	two.SetScale(1)
	two.Advance(7000)
	a, b := one.At(20000), two.At(8000)
	near(t, "core", b.CoreC, a.CoreC, 1e-9)
	near(t, "mean", b.MeanC, a.MeanC, 1e-9)
	near(t, "surface", b.SurfaceC, a.SurfaceC, 1e-9)
	// A stage of no length leaves no trace, whatever it was.
	two = mustWalk(t, BrickOf(0.1, 0.1, 0.23), doughK, doughAlpha, 26, 4, 8)
	two.Advance(5000)
	two.Stage(200, 30)
	two.Stage(4, 8)
	near(t, "core", two.At(15000).CoreC, a.CoreC, 1e-9)
}

// What the surface gives off is what the body loses: rho cp V/A dT =
// integral of h (Ts - Ta).
func TestEnergyBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := drawBody(t, drawnShapes[:3])
		var w Walk
		var v Volumes
		w.Start(b, doughK, doughAlpha, 26)
		v.Start(float64(b.Shape)+1, b.Half[0], doughProperties, 26)
		rhoCp := doughK / doughAlpha
		perArea := rhoCp / b.AreaPerVolume()
		for _, s := range drawStages(t, 3) {
			w.Stage(s.ambient, s.h)
			v.Stage(s.ambient, s.h)
			fo := s.hours * 3600 * doughAlpha / (b.Half[0] * b.Half[0])
			begin := w.At(0).MeanC
			beginV := v.Advance(0)
			lost, lostV := 0.0, 0.0
			// Time runs as the fourth power, so that the jump of the
			// surface is resolved.
			const steps = 150
			at := func(i int) float64 { return s.hours * 3600 * math.Pow(float64(i)/steps, 4) }
			last := beginV.SurfaceC
			for i := range steps {
				t0, t1 := at(i), at(i+1)
				lost += s.h * (t1 - t0) * ((w.At(t0).SurfaceC+w.At(t1).SurfaceC)/2 - s.ambient)
				now := v.Advance(t1 - t0)
				lostV += s.h * (t1 - t0) * ((last+now.SurfaceC)/2 - s.ambient)
				last = now.SurfaceC
			}
			end := w.Advance(s.hours * 3600).MeanC
			kept := perArea * (begin - end)
			keptV := perArea * (beginV.MeanC - v.Advance(0).MeanC)
			// 0.05 K of the whole body, or 1 % of what went.
			if math.Abs(lost-kept) > perArea*0.05+0.01*math.Abs(kept) {
				t.Fatalf("modes, Fo %g: lost %g, given off %g J/m2", fo, kept, lost)
			}
			if math.Abs(lostV-keptV) > perArea*0.05+0.01*math.Abs(keptV) {
				t.Fatalf("volumes, Fo %g: lost %g, given off %g J/m2", fo, keptV, lostV)
			}
		}
	})
}

// Hotter surroundings, hotter body; everything stays between the
// coldest and the hottest thing met.
func TestWalkProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := drawBody(t, drawnShapes)
		var cool, warm Walk
		cool.Start(b, doughK, doughAlpha, 26)
		warm.Start(b, doughK, doughAlpha, 26)
		lowest, highest := 26.0, 26.0
		for _, s := range drawStages(t, 5) {
			extra := rapid.Float64Range(0, 10).Draw(t, "extra")
			cool.Stage(s.ambient, s.h)
			warm.Stage(s.ambient+extra, s.h)
			lowest, highest = math.Min(lowest, s.ambient), math.Max(highest, s.ambient+extra)
			before := cool.At(0)
			for _, part := range []float64{0, 1e-4, 0.01, 0.1, 0.5, 1} {
				x, y := cool.At(part*s.hours*3600), warm.At(part*s.hours*3600)
				for p := Core; p <= Surface; p++ {
					if x.Of(p) > y.Of(p)+0.02 {
						t.Fatalf(
							"place %d: %g C with cool, %g with warm surroundings",
							p,
							x.Of(p),
							y.Of(p),
						)
					}
					if x.Of(p) < lowest-0.02 || y.Of(p) > highest+0.02 {
						t.Fatalf(
							"place %d: %g..%g outside %g..%g",
							p,
							x.Of(p),
							y.Of(p),
							lowest,
							highest,
						)
					}
				}
			}
			if now := cool.At(0); now != before {
				t.Fatalf("At changed the walk: %+v, %+v", before, now)
			}
			// TimeTo is the first time the target is met.
			p := Point(rapid.IntRange(0, 1).Draw(t, "point"))
			target := rapid.Float64Range(-2, 40).Draw(t, "target")
			within := s.hours * 3600
			when := cool.TimeTo(p, target, within)
			side := before.Of(p) > target
			for i := range 200 {
				at := within * math.Pow(float64(i)/200, 3)
				if at >= math.Min(when, within) {
					break
				}
				if now := cool.At(at).Of(p); (now > target) != side && math.Abs(now-target) > 0.02 {
					t.Fatalf("crossed %g by %g s, TimeTo says %g", target, at, when)
				}
			}
			if !math.IsInf(when, 1) &&
				(when > within || math.Abs(cool.At(when).Of(p)-target) > 0.02) {
				t.Fatalf("TimeTo %g: %g C, target %g", when, cool.At(when).Of(p), target)
			}
			// Now moves: the state is the same on either side of it.
			x := cool.At(s.hours * 3600)
			y := cool.Advance(s.hours * 3600)
			z := cool.At(0)
			warm.Advance(s.hours * 3600)
			for p := Core; p <= Surface; p++ {
				if x.Of(p) != y.Of(p) || math.Abs(y.Of(p)-z.Of(p)) > 1e-5 {
					t.Fatalf("place %d: %g before, %g after Advance", p, x.Of(p), z.Of(p))
				}
			}
		}
	})
}

// A brick with one short edge is a slab, a long finite cylinder a
// cylinder, a flat one a slab; a brick's core is its slabs' product.
func TestProducts(t *testing.T) {
	core := func(b Body) float64 {
		return mustWalk(t, b, doughK, doughAlpha, 1, 0, 8).At(9000).CoreC
	}
	slab := func(half float64) float64 { return core(Body{Slab, [3]float64{half}}) }
	near(t, "brick", core(BrickOf(0.06, 0.1, 0.23)), slab(0.03)*slab(0.05)*slab(0.115), 1e-12)
	near(t, "cube", core(BrickOf(0.1, 0.1, 0.1)), math.Pow(slab(0.05), 3), 1e-12)
	near(
		t,
		"log",
		core(Body{FiniteCylinder, [3]float64{0.03, 0.1}}),
		core(Body{Cylinder, [3]float64{0.03}})*slab(0.1),
		1e-12,
	)
	near(t, "ellipsoid", core(EllipsoidOf(0.06, 0.1, 0.23)), core(BrickOf(0.06, 0.1, 0.23)), 0)
	near(t, "wide brick", core(BrickOf(0.06, 50, 50)), slab(0.03), 1e-9)
	near(t, "flat disc", core(Body{FiniteCylinder, [3]float64{40, 0.03}}), slab(0.03), 1e-9)
	near(
		t,
		"long log",
		core(Body{FiniteCylinder, [3]float64{0.03, 40}}),
		core(Body{Cylinder, [3]float64{0.03}}),
		1e-9,
	)
}

func TestRestart(t *testing.T) {
	w := mustWalk(t, BrickOf(0.1, 0.2, 0.3), doughK, doughAlpha, 26, 4, 8)
	w.Advance(3600)
	mean := w.At(0).MeanC
	if !w.Restart(SlabOf(0.006)) {
		t.Fatal("refused")
	}
	s := w.At(0)
	near(t, "core", s.CoreC, mean, 1e-6)
	near(t, "mean", s.MeanC, mean, 1e-6)
	// It goes on as a fresh slab in the same fridge.
	fresh := mustWalk(t, SlabOf(0.006), doughK, doughAlpha, mean, 4, 8)
	near(t, "later", w.At(600).CoreC, fresh.At(600).CoreC, 1e-6)
	if w.Restart(SlabOf(0)) || w.Restart(Body{Shape: 99}) {
		t.Error("took a bad body")
	}
	near(t, "unchanged", w.At(600).CoreC, fresh.At(600).CoreC, 1e-6)
	var blank Walk
	if blank.Restart(SlabOf(0.1)) || blank.Stage(4, 8) {
		t.Error("a walk that was never started goes")
	}
	// Sheeted before it went anywhere.
	w = new(Walk)
	w.Start(SlabOf(0.1), doughK, doughAlpha, 24)
	w.Restart(SlabOf(0.01))
	near(t, "no stage yet", w.At(1000).CoreC, 24, 0)
	never(t, "never", w.TimeTo(Core, 20, math.Inf(1)))
}

func TestScale(t *testing.T) {
	w := mustWalk(t, SlabOf(0.06), doughK, doughAlpha, 26, 4, 8)
	w.Advance(1800)
	want := mustWalk(t, SlabOf(0.06), doughK, doughAlpha, 26, 4, 8)
	want.Advance(1800)
	want.SetScale(0.7)
	reading := want.At(6 * 3600).CoreC
	before := w.At(5000)
	f, ok := w.ScaleFor(Core, reading, 6*3600)
	if !ok {
		t.Fatal("no factor")
	}
	near(t, "factor", f, 0.7, 1e-4)
	near(t, "left alone", w.At(5000).CoreC, before.CoreC, 0)
	w.SetScale(f)
	near(t, "passes through the reading", w.At(6*3600).CoreC, reading, 1e-4)
	w.Advance(6 * 3600)
	w.Stage(4, 8)
	near(t, "kept", w.scale, f, 0)
	for _, bad := range []float64{3, 27, math.NaN()} {
		if f, ok := w.ScaleFor(Core, bad, 3600); ok {
			t.Errorf("reading %g gave %g", bad, f)
		}
	}
	for _, bad := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		if w.SetScale(bad) {
			t.Errorf("took factor %g", bad)
		}
	}
}

// Twice the conductivity and diffusivity is half the Biot number and
// twice the speed.
func TestSetMaterial(t *testing.T) {
	w := mustWalk(t, SlabOf(0.06), doughK, doughAlpha, 26, 4, 8)
	w.Advance(3600)
	w.SetMaterial(2*doughK, 2*doughAlpha)
	var v Volumes
	v.Start(1, 0.03, doughProperties, 26)
	v.Stage(4, 8)
	v.Advance(3600)
	field := v.t
	double := doughProperties
	double.ConductivityWmK *= 2
	v.Start(1, 0.03, double, 26)
	v.t = field
	v.Stage(4, 8)
	a, b := w.At(3600), v.Advance(3600)
	near(t, "core", a.CoreC, b.CoreC, 0.05)
	near(t, "mean", a.MeanC, b.MeanC, 0.05)
	if w.SetMaterial(0, 1) || w.SetMaterial(1, math.NaN()) {
		t.Error("took a bad material")
	}
}

// A core goes on warming after the body has come out of the oven: down,
// up and down again are all found.
func TestTimeToTurns(t *testing.T) {
	w := mustWalk(t, Body{Sphere, [3]float64{0.05}}, doughK, doughAlpha, 20, 90, 100)
	w.Advance(1500)
	w.Stage(10, 10)
	start := w.At(0).CoreC
	top, when := start, 0.0
	for s := 0.0; s < 30000; s += 10 {
		if c := w.At(s).CoreC; c > top {
			top, when = c, s
		}
	}
	if top < start+5 {
		t.Fatalf("no turn: %g to %g", start, top)
	}
	up := w.TimeTo(Core, top-0.01, math.Inf(1))
	if !(up < when && when-up < 600) {
		t.Errorf("just under the top at %g, top at %g", up, when)
	}
	never(t, "above the top", w.TimeTo(Core, top+0.01, math.Inf(1)))
	down := w.TimeTo(Core, start-0.5, math.Inf(1))
	near(t, "on the way down", w.At(down).CoreC, start-0.5, 1e-4)
	never(t, "not in time", w.TimeTo(Core, start-0.5, down-1))
	near(t, "at once", w.TimeTo(Core, start, math.Inf(1)), 0, 0)
	never(t, "ambient", w.TimeTo(Core, 10, math.Inf(1)))
}

func TestExtremes(t *testing.T) {
	sound := func(name string, s State) {
		t.Helper()
		for p := Core; p <= Surface; p++ {
			if !finite(s.Of(p)) || s.Of(p) < -0.001 || s.Of(p) > 100.001 {
				t.Errorf("%s: %+v", name, s)
			}
		}
	}
	inf := math.Inf(1)
	for _, shape := range drawnShapes {
		for _, half := range []float64{1e-6, 1e-3, 0.1, 1e3} {
			for _, h := range []float64{0, 1e-12, 1e-3, 10, 1e5, 1e12, inf} {
				b := Body{shape, [3]float64{half, half * 1.5, half}}
				w := mustWalk(t, b, doughK, doughAlpha, 100, 0, h)
				for _, s := range []float64{0, -5, math.NaN(), 1e-9, 1, 3600, 1e6} {
					sound("start", w.At(s))
				}
				w.Advance(3600)
				for _, h2 := range []float64{0, 10, inf} {
					w.Stage(50, h2)
					sound("second", w.At(0))
					sound("second", w.At(60))
					sound("second", w.Advance(1e4))
				}
				w.TimeTo(Core, 50, inf)
				w.TimeTo(Surface, 20, 1e5)
			}
		}
	}
	w := mustWalk(t, SlabOf(0.01), doughK, doughAlpha, 26, 4, 0)
	near(t, "insulated for a day", w.At(86400).MeanC, 26, 1e-3)
	never(t, "insulated, never", w.TimeTo(Core, 20, 1e6))
	w = mustWalk(t, SlabOf(0.1), doughK, doughAlpha, 20, 20, 8)
	near(t, "nothing to do", w.At(3600).CoreC, 20, 0)
	near(t, "nothing to do", w.TimeTo(Mean, 20, inf), 0, 0)
	for _, c := range []struct{ k, alpha, t0 float64 }{{0, 1, 1}, {1, 0, 1}, {1, 1, math.NaN()},
		{inf, 1, 1}, {1, math.NaN(), 1}, {-1, 1, 1}} {
		if w.Start(SlabOf(0.1), c.k, c.alpha, c.t0) {
			t.Errorf("%+v started", c)
		}
	}
	for _, b := range []Body{{}, SlabOf(-1), SlabOf(inf), SlabOf(math.NaN()), {Shape: 9},
		BrickOf(1, 1, 0), BallOf(0, 1000), BallOf(-1, 1000), BowlOf(0.001, 0),
		LogOf(0.1, math.NaN())} {
		if w.Start(b, 1, 1, 1) || b.AreaPerVolume() != 0 || b.Nearest() != 0 {
			t.Errorf("%+v started", b)
		}
	}
	if w.Stage(math.NaN(), 8) || w.Stage(4, -1) || w.Stage(4, math.NaN()) {
		t.Error("took a bad stage")
	}
	near(t, "still where it was", w.At(3600).CoreC, 20, 0)
}

// A fridge that is opened every few minutes for a day: terms must not
// pile up for ever.
func TestManyStages(t *testing.T) {
	w := mustWalk(t, SlabOf(0.04), doughK, doughAlpha, 26, 4, 8)
	for i := range 2000 {
		w.Advance(60)
		w.Stage(4+math.Sin(float64(i)/10), 8)
	}
	var v Volumes
	v.Start(1, 0.02, doughProperties, 26)
	v.Stage(4, 8)
	for i := range 2000 {
		v.Advance(60)
		v.low.ambient, v.high.ambient = 4, 4+math.Sin(float64(i)/10)
	}
	near(t, "core", w.At(0).CoreC, v.Advance(0).CoreC, 0.02)
	near(t, "mean", w.At(0).MeanC, v.Advance(0).MeanC, 0.02)
	if len(w.terms) > 4 {
		t.Errorf("%d terms", len(w.terms))
	}
}

func TestAtAllocatesNothing(t *testing.T) {
	w := mustWalk(t, BrickOf(0.1, 0.1, 0.23), doughK, doughAlpha, 26, 4, 8)
	w.Advance(1000)
	w.Stage(22, 9)
	n := testing.AllocsPerRun(100, func() { w.At(1234); w.TimeTo(Core, 10, math.Inf(1)) })
	if n != 0 {
		t.Errorf("%g allocations", n)
	}
	// A second history in the same memory allocates nothing either.
	run := func() { sixStages(w, BrickOf(0.1, 0.1, 0.23)) }
	run()
	if n := testing.AllocsPerRun(20, run); n != 0 {
		t.Errorf("%g allocations a history", n)
	}
}

// sixStages is the yardstick for speed: 6 stages, 20 outputs each, h
// different in each.
func sixStages(w *Walk, b Body) (sum float64) {
	w.Start(b, doughK, doughAlpha, 26)
	for _, s := range []stage{{22, 9, 1}, {4, 8, 6}, {22, 10, 0.5}, {1, 300, 1}, {4, 13, 8},
		{28, 7, 3}} {
		w.Stage(s.ambient, s.h)
		for i := range 19 {
			sum += w.At(s.hours * 3600 * float64(i+1) / 20).CoreC
		}
		sum += w.Advance(s.hours * 3600).CoreC
	}
	return sum
}

func BenchmarkWalk(b *testing.B) {
	for _, c := range []struct {
		name string
		body Body
	}{
		{"slab", SlabOf(0.05)}, {"sphere", Body{Sphere, [3]float64{0.05}}},
		{"brick", BrickOf(0.11, 0.10, 0.23)},
		{"squarebrick", BrickOf(0.11, 0.11, 0.23)},
		{"finitecylinder", Body{FiniteCylinder, [3]float64{0.035, 0.1}}},
	} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			var w Walk
			for b.Loop() {
				sixStages(&w, c.body)
			}
		})
	}
}

func BenchmarkVolumes(b *testing.B) {
	for _, c := range []struct {
		name   string
		source Curve
	}{{"plain", Curve{}}, {"fermenting", fermenting(0.8)}} {
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			var v Volumes
			for b.Loop() {
				v.Start(1, 0.025, doughProperties, 26)
				v.SetSource(c.source)
				for _, s := range []stage{{22, 9, 1}, {4, 8, 6}, {22, 10, 0.5}, {1, 300, 1},
					{4, 13, 8}, {28, 7, 3}} {
					v.Stage(s.ambient, s.h)
					v.Advance(s.hours * 3600)
				}
			}
		})
	}
}

func BenchmarkTimeTo(b *testing.B) {
	b.ReportAllocs()
	w := mustWalk(b, SlabOf(0.05), doughK, doughAlpha, 26, 4, 8)
	w.Advance(3600)
	w.Stage(2, 13)
	for b.Loop() {
		w.TimeTo(Core, 8, math.Inf(1))
	}
}

func BenchmarkScaleFor(b *testing.B) {
	b.ReportAllocs()
	w := mustWalk(b, SlabOf(0.05), doughK, doughAlpha, 26, 4, 8)
	for b.Loop() {
		w.ScaleFor(Core, 11, 6*3600)
	}
}

// A square bar through three stages, against an explicit scheme on a
// plain grid of a quarter of it: the only check here of products across
// a change of h.
func TestSquareBarOnAGrid(t *testing.T) {
	const n, half = 40, 0.04
	stages := []stage{{4, 8, 2}, {1, 300, 0.5}, {28, 7, 1.5}}
	w := new(Walk)
	w.Start(BrickOf(2*half, 2*half, 1e3), doughK, doughAlpha, 26)
	var grid, next [n][n]float64
	for i := range grid {
		for j := range grid[i] {
			grid[i][j] = 26
		}
	}
	for _, s := range stages {
		w.Stage(s.ambient, s.h)
		got := w.Advance(s.hours * 3600)
		fo := doughAlpha * s.hours * 3600 / (half * half)
		steps := int(fo*n*n/0.2) + 1
		r := fo * n * n / float64(steps)
		bi := s.h * half / doughK
		skin := 1 / (n/bi + 0.5) // in units of the conductance between cells
		for range steps {
			at := func(i, j int) (t, g float64) {
				if i == n || j == n {
					return s.ambient, skin
				}
				return grid[i][j], 1
			}
			for i := range n {
				for j := range n {
					sum := 0.0
					t1, g1 := at(i+1, j)
					t2, g2 := at(i, j+1)
					sum += g1*(t1-grid[i][j]) + g2*(t2-grid[i][j])
					if i > 0 {
						sum += grid[i-1][j] - grid[i][j]
					}
					if j > 0 {
						sum += grid[i][j-1] - grid[i][j]
					}
					next[i][j] = grid[i][j] + r*sum
				}
			}
			grid = next
		}
		mean := 0.0
		for i := range grid {
			for j := range grid[i] {
				mean += grid[i][j] / (n * n)
			}
		}
		near(t, "core", got.CoreC, grid[0][0], 0.03)
		near(t, "mean", got.MeanC, mean, 0.03)
		near(t, "surface", got.SurfaceC, grid[0][n-1]+(s.ambient-grid[0][n-1])*skin/2, 0.05)
	}
}
