package figure

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

var inf = math.Inf(1)

func TestIntervalTable(t *testing.T) {
	iv := func(lo, hi float64) Interval { return Interval{lo, hi} }
	tests := []struct {
		name      string
		got, want Interval
	}{
		{"between turns round", Between(3, 1), iv(1, 3)},
		{"point of NaN", Point(math.NaN()), Unknown()},
		{"between NaN", Between(1, math.NaN()), Unknown()},
		{"add", iv(1, 2).Add(iv(10, 20)), iv(11, 22)},
		{"add opposite infinities", iv(inf, inf).Add(iv(-inf, -inf)), Unknown()},
		{"sub", iv(1, 2).Sub(iv(10, 20)), iv(-19, -8)},
		{"sub unknown", Point(1).Sub(Unknown()), Unknown()},
		{"mul signs", iv(-1, 2).Mul(iv(-3, 5)), iv(-6, 10)},
		{"zero times unknown", Point(0).Mul(Unknown()), Point(0)},
		{"mul positive", iv(2, 3).Mul(Positive()), Positive()},
		{"div", iv(10, 20).Div(iv(2, 5)), iv(2, 10)},
		{"div negative", iv(10, 20).Div(iv(-5, -2)), iv(-10, -2)},
		{"div by up to h", iv(10, 20).Div(iv(0, 5)), iv(2, inf)},
		{"div zero by up to h", Point(0).Div(iv(0, 5)), Positive()},
		{"div negative by up to h", iv(-20, -10).Div(iv(0, 5)), iv(-inf, -2)},
		{"div by down to -h", iv(10, 20).Div(iv(-5, 0)), iv(-inf, -2)},
		{"div by zero", iv(10, 20).Div(Point(0)), Unknown()},
		{"div across zero", iv(10, 20).Div(iv(-1, 1)), Unknown()},
		{"div both signs by up to h", iv(-1, 1).Div(iv(0, 5)), Unknown()},
		{"div by positive", iv(10, 20).Div(Positive()), iv(0, inf)},
		{"div by one or more", iv(10, 20).Div(iv(1, inf)), iv(0, 20)},
		{"div open by open", iv(1, inf).Div(iv(1, inf)), iv(0, inf)},
		{"scale", iv(1, 2).Scale(-3), iv(-6, -3)},
		{"scale unknown by zero", Unknown().Scale(0), Point(0)},
		{"neg", iv(-1, 2).Neg(), iv(-2, 1)},
		{"abs across", iv(-3, 2).Abs(), iv(0, 3)},
		{"abs below", iv(-3, -2).Abs(), iv(2, 3)},
		{"min", iv(1, 5).Min(iv(2, 3)), iv(1, 3)},
		{"max", iv(1, 5).Max(iv(2, 3)), iv(2, 5)},
		{"hull", iv(1, 2).Hull(iv(5, 6)), iv(1, 6)},
	}
	for _, test := range tests {
		if test.got != test.want {
			t.Errorf("%s: %v, want %v", test.name, test.got, test.want)
		}
	}
	for name, got := range map[string]bool{
		"point is point":         Point(2).IsPoint(),
		"infinite is no point":   !iv(inf, inf).IsPoint(),
		"range is no point":      !iv(1, 2).IsPoint(),
		"contains its end":       iv(1, 2).Contains(2),
		"contains not beyond":    !iv(1, 2).Contains(2.1),
		"unknown contains":       Unknown().Contains(-1e300),
		"unknown":                Unknown().IsUnknown(),
		"positive is not all":    !Positive().IsUnknown(),
		"positive is not finite": !Positive().IsFinite(),
		"width":                  iv(1, 3).Width() == 2,
		"width of infinity":      iv(inf, inf).Width() == 0,
		"open width":             math.IsInf(Positive().Width(), 1),
		"no minus zero":          !math.Signbit(Point(0).Neg().Lo),
	} {
		if !got {
			t.Error(name)
		}
	}
	for _, test := range []struct {
		iv   Interval
		want float64
	}{{iv(1, 3), 2}, {Positive(), 0}, {iv(-inf, 4), 4}, {Unknown(), 0},
		{iv(-math.MaxFloat64, math.MaxFloat64), 0}} {
		if got := test.iv.Mid(); got != test.want {
			t.Errorf("middle of %v is %v, want %v", test.iv, got, test.want)
		}
	}
}

// drawInterval draws intervals of all shapes, with zeros and
// infinite ends.
func drawInterval(t *rapid.T, label string) Interval {
	end := rapid.OneOf(
		rapid.Float64Range(-1e6, 1e6),
		rapid.SampledFrom([]float64{0, 1, -1, inf, -inf, 1e-9, 1e9}),
	)
	return Between(end.Draw(t, label+" lo"), end.Draw(t, label+" hi"))
}

// drawInside draws a finite number of an interval.
func drawInside(t *rapid.T, iv Interval, label string) float64 {
	lo, hi := max(iv.Lo, -1e12), min(iv.Hi, 1e12)
	if lo > hi { // both ends are the same infinity
		return math.Copysign(1e12, iv.Lo)
	}
	return rapid.OneOf(rapid.Just(lo), rapid.Just(hi), rapid.Float64Range(lo, hi)).Draw(t, label)
}

// near reports whether an interval holds x, but for rounding.
func near(iv Interval, x float64) bool {
	slack := 1e-9 * max(1, math.Abs(x))
	return iv.Lo-slack <= x && x <= iv.Hi+slack
}

func sound(iv Interval) bool { return !math.IsNaN(iv.Lo) && !math.IsNaN(iv.Hi) && iv.Lo <= iv.Hi }

// An operation's interval holds the operation on any two numbers of
// its intervals.
func TestOperationsContain(t *testing.T) {
	operations := map[string]struct {
		intervals func(a, b Interval) Interval
		numbers   func(x, y float64) float64
	}{
		"add": {Interval.Add, func(x, y float64) float64 { return x + y }},
		"sub": {Interval.Sub, func(x, y float64) float64 { return x - y }},
		"mul": {Interval.Mul, func(x, y float64) float64 { return x * y }},
		"div": {Interval.Div, func(x, y float64) float64 { return x / y }},
		"min": {Interval.Min, func(x, y float64) float64 { return min(x, y) }},
		"max": {Interval.Max, func(x, y float64) float64 { return max(x, y) }},
		"neg": {
			func(a, _ Interval) Interval { return a.Neg() },
			func(x, _ float64) float64 { return -x },
		},
		"abs": {
			func(a, _ Interval) Interval { return a.Abs() },
			func(x, _ float64) float64 { return math.Abs(x) },
		},
		"hull":  {Interval.Hull, func(x, _ float64) float64 { return x }},
		"hull2": {Interval.Hull, func(_, y float64) float64 { return y }},
		"scale": {
			func(a, b Interval) Interval { return a.Scale(7) },
			func(x, _ float64) float64 { return 7 * x },
		},
		"scal2": {
			func(a, b Interval) Interval { return a.Scale(-0.5) },
			func(x, _ float64) float64 { return -0.5 * x },
		},
	}
	for name, op := range operations {
		t.Run(name, func(t *testing.T) {
			rapid.Check(t, func(t *rapid.T) {
				a, b := drawInterval(t, "a"), drawInterval(t, "b")
				got := op.intervals(a, b)
				if !sound(got) {
					t.Fatalf("%v %v give %v", a, b, got)
				}
				if a.Lo == a.Hi && math.IsInf(a.Lo, 0) || b.Lo == b.Hi && math.IsInf(b.Lo, 0) {
					return // holds no number
				}
				x, y := drawInside(t, a, "x"), drawInside(t, b, "y")
				z := op.numbers(x, y)
				if math.IsNaN(z) || math.IsInf(z, 0) {
					return
				}
				if !near(got, z) {
					t.Fatalf("%v and %v give %v, without %v of %v and %v", a, b, got, z, x, y)
				}
			})
		})
	}
}

// On points the operations are the plain ones.
func TestPointsStayPoints(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-1e6, 1e6).Draw(t, "x")
		y := rapid.Float64Range(1e-3, 1e6).Draw(t, "y")
		for name, pair := range map[string][2]float64{
			"add": {Point(x).Add(Point(y)).Lo, x + y},
			"mul": {Point(x).Mul(Point(y)).Lo, x * y},
			"div": {Point(x).Div(Point(y)).Lo, x / y},
			"sub": {Point(x).Sub(Point(y)).Hi, x - y},
		} {
			if pair[0] != pair[1] {
				t.Fatalf("%s: %v, want %v", name, pair[0], pair[1])
			}
		}
		if !Point(x).Div(Point(y)).IsPoint() {
			t.Fatal("a quotient of points is a range")
		}
	})
}
