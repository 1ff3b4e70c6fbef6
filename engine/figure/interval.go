package figure

import "math"

// Interval is a closed range of numbers, lo to hi. Either end may be
// infinite; neither is ever NaN, and Lo <= Hi. The zero Interval is the
// point 0.
//
// Results are plain floating-point ones, not rounded outward: an
// end may be off by the last place or two, far inside any figure's
// own error.
type Interval struct{ Lo, Hi float64 }

// Point is the interval that holds x alone; Unknown when x is NaN.
func Point(x float64) Interval { return Between(x, x) }

// Between is the interval from a to b, in either order; Unknown when
// one is NaN.
func Between(a, b float64) Interval {
	if math.IsNaN(a) || math.IsNaN(b) {
		return Unknown()
	}
	return Interval{min(a, b), max(a, b)}
}

// Unknown is the whole line: nothing is known.
func Unknown() Interval { return Interval{math.Inf(-1), math.Inf(1)} }

// Positive is zero and everything above it: an otherwise
// unknown amount.
func Positive() Interval { return Interval{0, math.Inf(1)} }

// IsPoint reports whether the interval is one finite number.
func (a Interval) IsPoint() bool { return a.Lo == a.Hi && a.IsFinite() }

// IsFinite reports whether both ends are finite.
func (a Interval) IsFinite() bool { return !math.IsInf(a.Lo, 0) && !math.IsInf(a.Hi, 0) }

// IsUnknown reports whether the interval is the whole line.
func (a Interval) IsUnknown() bool { return math.IsInf(a.Lo, -1) && math.IsInf(a.Hi, 1) }

// Contains reports whether x lies in the interval, ends included.
func (a Interval) Contains(x float64) bool { return a.Lo <= x && x <= a.Hi }

// Width is Hi - Lo: 0 for a point, +Inf when an end is infinite.
func (a Interval) Width() float64 {
	if a.Lo == a.Hi {
		return 0
	}
	return a.Hi - a.Lo
}

// Mid is the middle; the finite end when the other is infinite, 0
// for Unknown.
func (a Interval) Mid() float64 {
	switch {
	case a.IsFinite():
		return a.Lo/2 + a.Hi/2
	case !math.IsInf(a.Lo, 0):
		return a.Lo
	case !math.IsInf(a.Hi, 0):
		return a.Hi
	}
	return 0
}

// Hull is the smallest interval that holds both.
func (a Interval) Hull(b Interval) Interval {
	return Interval{min(a.Lo, b.Lo), max(a.Hi, b.Hi)}
}

// Add is every sum of one number of each.
func (a Interval) Add(b Interval) Interval {
	return ends(a.Lo+b.Lo, a.Hi+b.Hi)
}

// Sub is every difference of one number of each.
func (a Interval) Sub(b Interval) Interval { return a.Add(b.Neg()) }

// ends makes an interval of two ends in order. NaN, of two opposite
// infinities, is an unknown end.
func ends(lo, hi float64) Interval {
	if math.IsNaN(lo) {
		lo = math.Inf(-1)
	}
	if math.IsNaN(hi) {
		hi = math.Inf(1)
	}
	return Interval{lo, hi}
}

// Mul is every product of one number of each. An infinite end stands
// for numbers without limit, not infinity itself, so zero times it
// is zero.
func (a Interval) Mul(b Interval) Interval {
	p, q, r, s := times(a.Lo, b.Lo), times(a.Lo, b.Hi), times(a.Hi, b.Lo), times(a.Hi, b.Hi)
	return Interval{min(p, q, r, s), max(p, q, r, s)}
}

func times(x, y float64) float64 {
	if x == 0 || y == 0 {
		return 0
	}
	return x * y
}

// Div is every quotient of a number of a by a nonzero one of b. Where
// zero is an end of b, a of one sign has an open end. Where b is zero
// or spans it, nothing is known.
func (a Interval) Div(b Interval) Interval {
	switch {
	case b.Lo > 0 || b.Hi < 0:
		p, q, r, s := over(a.Lo, b.Lo), over(a.Lo, b.Hi), over(a.Hi, b.Lo), over(a.Hi, b.Hi)
		return Interval{min(p, q, r, s), max(p, q, r, s)}
	case b.Hi <= 0 && b.Lo < 0:
		return a.Neg().Div(b.Neg())
	case b.Lo == 0 && b.Hi > 0 && a.Lo >= 0:
		return Interval{over(a.Lo, b.Hi), math.Inf(1)}
	case b.Lo == 0 && b.Hi > 0 && a.Hi <= 0:
		return Interval{math.Inf(-1), over(a.Hi, b.Hi)}
	}
	return Unknown()
}

// over divides by a nonzero y. Unlimited over unlimited may be
// anything from zero up; only that zero is an end which the other
// corners cannot give.
func over(x, y float64) float64 {
	if math.IsInf(y, 0) {
		return 0
	}
	return x / y
}

// Scale multiplies by k; a NaN is an unknown number.
func (a Interval) Scale(k float64) Interval { return a.Mul(Point(k)) }

// Neg is the interval with its sign turned.
func (a Interval) Neg() Interval { return Interval{0 - a.Hi, 0 - a.Lo} }

// Abs is the interval of the numbers without their signs.
func (a Interval) Abs() Interval {
	switch {
	case a.Lo >= 0:
		return a
	case a.Hi <= 0:
		return a.Neg()
	}
	return Interval{0, max(-a.Lo, a.Hi)}
}

// Min is the smaller of one number of each.
func (a Interval) Min(b Interval) Interval {
	return Interval{min(a.Lo, b.Lo), min(a.Hi, b.Hi)}
}

// Max is the larger of one number of each.
func (a Interval) Max(b Interval) Interval {
	return Interval{max(a.Lo, b.Lo), max(a.Hi, b.Hi)}
}

// Corners are the boxes with each side at an end of its range,
// without repeats.
func Corners(sides [3]Interval) [][3]float64 {
	out := [][3]float64{{}}
	for i, side := range sides {
		var next [][3]float64
		for _, box := range out {
			box[i] = side.Lo
			next = append(next, box)
			if !side.IsPoint() {
				box[i] = side.Hi
				next = append(next, box)
			}
		}
		out = next
	}
	return out
}

// NearestToZero spans the possible figures nearest to zero, each within
// its own interval.
func NearestToZero(list []Interval) Interval {
	most := math.Inf(1)
	for _, x := range list {
		most = min(most, max(math.Abs(x.Lo), math.Abs(x.Hi)))
	}
	out := Interval{Lo: math.Inf(1), Hi: math.Inf(-1)}
	for _, x := range list {
		if x.Lo > most || x.Hi < -most {
			continue
		}
		out.Lo, out.Hi = min(out.Lo, max(x.Lo, -most)), max(out.Hi, min(x.Hi, most))
	}
	return out
}
