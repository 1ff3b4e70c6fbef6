package heat

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// volumesTime is when the core reaches targetC, by small advances.
func volumesTime(v *Volumes, p Point, targetC, step float64) float64 {
	was := v.Advance(0).Of(p)
	side := was > targetC
	for i := range 4000 {
		now := v.Advance(step).Of(p)
		if (now > targetC) != side {
			return step * (float64(i) + (was-targetC)/(was-now))
		}
		was = now
	}
	return math.Inf(1)
}

// fermenting is the heat of a dough with q W/kg at 28 C: 2.5 times as
// much for each 10 K, and none from 45 C, as on the other grid.
func fermenting(q float64) Curve {
	return NewCurve(-30, 45, 301, func(tC float64) float64 {
		if tC >= 45 {
			return 0
		}
		return q * math.Pow(2.5, (tC-28)/10)
	})
}

// The heat of fermentation on another grid (computed): dough at 26 C
// into a fridge at 4 C, h 6, 0.8 W/kg at 28 C, to 8 C in the core.
func TestFermentationHeat(t *testing.T) {
	p := Properties{SpecificHeat: 2650, DensityKgM3: 1100, ConductivityWmK: 0.35}
	p.DiffusivityM2s = p.ConductivityWmK / p.DensityKgM3 / p.SpecificHeat
	for _, c := range []struct{ thickness, plain, growth float64 }{{0.02, 0, 0.05},
		{0.04, 5.5, 0.12}, {0.06, 8.8, 0.20}, {0.10, 16.5, 0.44}} {
		var cold, warm Volumes
		cold.Start(1, c.thickness/2, p, 26)
		warm.Start(1, c.thickness/2, p, 26)
		warm.SetSource(fermenting(0.8))
		cold.Stage(4, 6)
		warm.Stage(4, 6)
		without, with := volumesTime(&cold, Core, 8, 120), volumesTime(&warm, Core, 8, 120)
		near(t, "growth", with/without-1, c.growth, 0.1*c.growth+0.01)
		if c.plain > 0 {
			near(t, "hours without", without/3600, c.plain, 0.05*c.plain)
		}
		near(
			t,
			"modes",
			mustWalk(
				t,
				SlabOf(c.thickness),
				p.ConductivityWmK,
				p.DiffusivityM2s,
				26,
				4,
				6,
			).TimeTo(Core, 8, math.Inf(1)),
			without,
			0.01*without,
		)
		t.Logf(
			"%g mm: %.1f h, growth %.3f, expected %.2f",
			c.thickness*1000,
			without/3600,
			with/without-1,
			c.growth,
		)
	}
	// Unopposed 0.8 W/kg warms dough 1.1 K/h.
	var v Volumes
	v.Start(3, 0.05, p, 28)
	v.SetSource(NewCurve(0, 100, 2, func(float64) float64 { return 0.8 }))
	v.Stage(28, 0)
	near(t, "K/h", v.Advance(3600).MeanC-28, 0.8*3600/2650, 1e-6)
	// The steady excess of an even source is q rho (L^2/(2k) + L/h).
	v.Start(1, 0.02, p, 20)
	v.SetSource(NewCurve(0, 100, 2, func(float64) float64 { return 0.8 }))
	v.Stage(20, 6)
	near(
		t,
		"steady excess",
		v.Advance(1e6).CoreC-20,
		0.8*p.DensityKgM3*(0.02*0.02/(2*p.ConductivityWmK)+0.02/6),
		0.002,
	)
	// It stops at 45 C.
	v.Start(1, 0.02, p, 44)
	v.SetSource(fermenting(1.5))
	v.Stage(44, 0)
	if s := v.Advance(1e5); s.MeanC < 44.8 || s.MeanC > 45.3 {
		t.Errorf("ran on to %g C", s.MeanC)
	}
}

// melting is the specific heat of a food of which a share gives off 81
// kJ/kg from 24 to 4 C.
func melting(share float64) Curve {
	return NewCurve(-10, 50, 121, func(tC float64) float64 {
		return 2650 + 8100*share*math.Max(0, 1-math.Abs(tC-14)/10)
	})
}

// Heat is conserved through a melting: insulated on one face, the other
// gives off what is lost.
func TestMeltingKeepsHeat(t *testing.T) {
	var v Volumes
	v.Start(1, 0.02, doughProperties, 30)
	v.SetSpecificHeat(melting(0.8))
	v.Stage(2, 20)
	content := func() (sum float64) {
		var l looked
		v.look(&v.t, &l)
		for i := range v.n {
			sum += l.h[i] / v.perVolume[i]
		}
		return sum
	}
	begin, lost := content(), 0.0
	last := v.Advance(0).SurfaceC
	for range 3000 {
		now := v.Advance(10).SurfaceC
		lost += 20 * 10 * ((last+now)/2 - 2)
		last = now
	}
	near(t, "heat lost", lost, begin-content(), 0.003*lost)
	was := v
	v.SetSpecificHeat(NewCurve(0, 10, 3, func(float64) float64 { return 0 }))
	if v.heat.points[0] != was.heat.points[0] {
		t.Error("took a specific heat of 0")
	}
	v.SetConductivity(NewCurve(0, 10, 3, func(float64) float64 { return 0 }))
	if !v.conduct.empty() {
		t.Error("took a conductivity of 0")
	}
}

func TestTwoFaces(t *testing.T) {
	// Insulated below is exactly a slab of twice the depth.
	var v Volumes
	v.StartTwoFaces(0.04, doughProperties, 60)
	v.StageTwoFaces(4, 0, 4, 13)
	w := mustWalk(t, TrayOf(0.04, true), doughK, doughAlpha, 60, 4, 13)
	for range 6 {
		a, b := v.Advance(3600), w.Advance(3600)
		near(t, "bottom", a.CoreC, b.CoreC, 0.05)
		near(t, "mean", a.MeanC, b.MeanC, 0.05)
		near(t, "surface", a.SurfaceC, b.SurfaceC, 0.05)
	}
	// Alike, it is the slab.
	v.StartTwoFaces(0.04, doughProperties, 60)
	v.Stage(4, 13)
	w = mustWalk(t, SlabOf(0.04), doughK, doughAlpha, 60, 4, 13)
	for range 6 {
		a, b := v.Advance(3600), w.Advance(3600)
		near(t, "alike, core", a.CoreC, b.CoreC, 0.05)
		near(t, "alike, mean", a.MeanC, b.MeanC, 0.05)
	}
	// Mean h (expected, computed): within 4 % below 2:1, 8-21 % too
	// fast at 5:1, 17-41 % with one face insulated.
	for _, c := range []struct{ low, high, least, most float64 }{{4, 8, 0, 0.045},
		{2, 10, 0.06, 0.21}, {0, 12, 0.15, 0.42}} {
		for _, thickness := range []float64{0.02, 0.04, 0.08} {
			v.StartTwoFaces(thickness, doughProperties, 26)
			v.StageTwoFaces(4, c.low, 4, c.high)
			slow := volumesTime(&v, Core, 8, 120)
			fast := mustWalk(
				t,
				SlabOf(thickness),
				doughK,
				doughAlpha,
				26,
				4,
				(c.low+c.high)/2,
			).TimeTo(Core, 8, math.Inf(1))
			if share := 1 - fast/slow; share < c.least || share > c.most {
				t.Errorf("faces %g and %g, %g m: %.3f too fast", c.low, c.high, thickness, share)
			}
		}
	}
	// Between two temperatures it settles on the straight line between
	// the surfaces.
	v.StartTwoFaces(0.02, doughProperties, 20)
	v.StageTwoFaces(0, math.Inf(1), 40, math.Inf(1))
	near(t, "settled", v.Advance(1e6).MeanC, 20, 1e-3)
}

func TestEquivalentDimension(t *testing.T) {
	for shape := Slab; shape <= Sphere; shape++ {
		near(
			t,
			"itself",
			Body{shape, [3]float64{0.05}}.EquivalentDimension(0.35, 8),
			float64(shape)+1,
			1e-9,
		)
	}
	brick := BrickOf(0.1, 0.1, 0.23)
	near(t, "slow brick", brick.EquivalentDimension(0.35, 1e-4), 2.4348, 0.001)
	if d := (Body{}).EquivalentDimension(1, 1); !math.IsNaN(d) {
		t.Error("bad body")
	}
	for _, h := range []float64{4, 8, 20, 140} {
		d := brick.EquivalentDimension(doughK, h)
		var v Volumes
		v.Start(d, 0.05, doughProperties, 26)
		v.Stage(4, h)
		fast := volumesTime(&v, Core, 4+2.2, 300)
		slow := mustWalk(t, brick, doughK, doughAlpha, 26, 4, h).TimeTo(Core, 4+2.2, math.Inf(1))
		// Quick, within the bounds computed for EquivalentDimension.
		if share := 1 - fast/slow; share < -0.01 || share > 0.13 {
			t.Errorf("h %g: d %.3f is %.3f too fast", h, d, share)
		}
	}
}

func TestVolumesExtremes(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		power := func(name string, lo, hi float64) float64 {
			return math.Pow(10, rapid.Float64Range(lo, hi).Draw(t, name))
		}
		d := rapid.Float64Range(1, 3).Draw(t, "d")
		var v Volumes
		if !v.Start(d, power("half", -6, 2), doughProperties, 100) {
			t.Fatal("refused")
		}
		for range 3 {
			h := power("h", -12, 8)
			switch rapid.IntRange(0, 5).Draw(t, "kind") {
			case 0:
				h = 0
			case 1:
				h = math.Inf(1)
			}
			v.Stage(rapid.Float64Range(0, 100).Draw(t, "ambient"), h)
			for range 3 {
				s := v.Advance(power("seconds", -6, 7))
				for p := Core; p <= Surface; p++ {
					if !finite(s.Of(p)) || s.Of(p) < -0.5 || s.Of(p) > 100.5 {
						t.Fatalf("%+v", s)
					}
				}
			}
		}
	})
	var v Volumes
	if v.Stage(4, 8) || v.Advance(10) != (State{}) {
		t.Error("one that was never started goes")
	}
	p := doughProperties
	if v.Start(0.5, 0.1, p, 20) || v.Start(4, 0.1, p, 20) || v.Start(1, 0, p, 20) ||
		v.Start(1, 0.1, Properties{}, 20) ||
		v.Start(1, 0.1, p, math.NaN()) ||
		v.StartTwoFaces(-1, p, 20) {
		t.Error("took bad figures")
	}
	v.Start(1, 0.1, p, 20)
	if v.Stage(math.NaN(), 8) || v.Stage(4, -1) || v.StageTwoFaces(4, 8, 4, math.NaN()) {
		t.Error("took a bad stage")
	}
	for _, s := range []float64{0, -1, math.NaN(), math.Inf(1)} {
		near(t, "no time", v.Advance(s).CoreC, 20, 1e-9)
	}
}

func TestCurve(t *testing.T) {
	c := NewCurve(0, 10, 11, func(tC float64) float64 { return 3 + 2*tC })
	for _, tC := range []float64{-5, 0, 0.3, 7, 9.99, 10, 14} {
		inside := math.Min(math.Max(tC, 0), 10)
		value, _, integral := c.At(tC)
		near(t, "value", value, 3+2*inside, 1e-9)
		want := 3*inside + inside*inside
		if tC < 0 {
			want = 3 * tC
		}
		if tC > 10 {
			want += 23 * (tC - 10)
		}
		near(t, "integral", integral, want, 1e-9)
	}
	for _, c := range []Curve{NewCurve(0, 0, 5, math.Sin), NewCurve(0, 1, 1, math.Sin),
		NewCurve(0, math.Inf(1), 5, math.Sin), NewCurve(0, 1, 3, func(float64) float64 {
			return math.NaN()
		})} {
		if !c.empty() {
			t.Error("made a curve of nothing")
		}
	}
}

func TestErrors(t *testing.T) {
	near(t, "fridge dough", TimeError(0.5, AirError), 0.27, 0.005)
	near(t, "ice bath", TimeError(20, WaterError), 0.16, 0.005)
	// The slow end of ice water, 200, is what the error leaves of the
	// 300 to use.
	bath, _ := SurfaceCoefficient(IceBath)
	near(t, "ice water, slow", bath.Typical/(1+WaterError), bath.Low, 5)
	near(t, "lumped", TimeError(0, AirError), math.Hypot(0.07, 0.30), 1e-12)
	near(t, "held", TimeError(math.Inf(1), AirError), math.Hypot(0.07, 0.15), 1e-12)
}

func TestGeometry(t *testing.T) {
	ball := BallOf(0.075, 1100)
	near(t, "ball", 4.0/3*math.Pi*math.Pow(ball.Half[0], 3)*1100, 0.075, 1e-12)
	near(t, "ball area", ball.AreaPerVolume(), 3/ball.Half[0], 1e-9)
	bowl := BowlOf(0.002, 0.09)
	near(t, "bowl", math.Pi*bowl.Half[0]*bowl.Half[0]*2*bowl.Half[1], 0.002, 1e-12)
	near(t, "bowl depth", bowl.Half[1], 0.045, 1e-12)
	if LogOf(0.07, 0.28).Shape != Cylinder || LogOf(0.07, 0.27).Shape != FiniteCylinder {
		t.Error("four diameters")
	}
	near(t, "tray", TrayOf(0.02, false).Half[0], 0.01, 1e-12)
	near(t, "tray on wood", TrayOf(0.02, true).Half[0], 0.02, 1e-12)
	near(t, "brick", BrickOf(0.1, 0.2, 0.4).AreaPerVolume(), 20+10+5, 1e-9)
	near(t, "nearest", BrickOf(0.3, 0.2, 0.4).Nearest(), 0.1, 1e-12)
	near(t, "disc", Body{FiniteCylinder, [3]float64{0.1, 0.02}}.AreaPerVolume(), 20+50, 1e-9)
	// An ellipsoid: exact as a ball, within 1.2 % as a disc of 2:2:1 (a
	// flat one's closed form).
	near(t, "round ellipsoid", EllipsoidOf(0.2, 0.2, 0.2).AreaPerVolume(), 30, 1e-9)
	e := math.Sqrt(1 - 0.25)
	flat := 2*math.Pi*0.01 + math.Pi*0.0025/e*math.Log((1+e)/(1-e))
	near(
		t,
		"flat ellipsoid",
		EllipsoidOf(0.2, 0.2, 0.1).AreaPerVolume(),
		flat/(4.0/3*math.Pi*0.1*0.1*0.05),
		0.012*60,
	)
}

// Setting butter and working yeast, in steps of any length: the field
// stays between what it met, and below the warmth in which yeast stops.
func TestVolumesStayBetween(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(what string, lo, hi float64) float64 {
			return rapid.Float64Range(lo, hi).Draw(t, what)
		}
		var v Volumes
		t0 := draw("t0", 0, 45)
		if !v.Start(
			draw("d", 1, 3),
			math.Exp(draw("log half", math.Log(0.005), math.Log(0.2))),
			Properties{
				SpecificHeat:    2600,
				DensityKgM3:     1080,
				ConductivityWmK: 0.33,
				DiffusivityM2s:  0.33 / 1080 / 2600,
			},
			t0,
		) {
			t.Fatal("not started")
		}
		v.SetSource(fermenting(draw("W/kg", 0, 6)))
		v.SetSpecificHeat(melting(draw("fat", 0, 0.4)))
		lo, hi := t0, math.Max(
			t0,
			45,
		)+7 // a long step carries what is made below 45 C beyond it: 5 K in some thousand draws
		for range rapid.IntRange(1, 4).Draw(t, "stages") {
			ambient := draw("ambient", -20, 40)
			lo = math.Min(lo, ambient)
			v.Stage(ambient, draw("h", 2, 60))
			for range rapid.IntRange(1, 3).Draw(t, "readings") {
				s := v.Advance(math.Exp(draw("log seconds", 0, math.Log(400000))))
				if !(min(s.CoreC, s.MeanC, s.SurfaceC) > lo-0.5 &&
					max(s.CoreC, s.MeanC, s.SurfaceC) < hi+0.5) {
					t.Fatalf("%+v after %v to %v", s, lo, hi)
				}
			}
		}
	})
}
