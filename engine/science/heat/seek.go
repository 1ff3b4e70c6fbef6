package heat

import "math"

// TimeTo is the first time from now, in seconds and at most within (+Inf for no limit), at which
// the temperature at p is targetC; +Inf when that does not happen in the stage. The path may turn:
// a core can go on warming from heat that the last stage left outside. Error 1e-5 K.
func (w *Walk) TimeTo(p Point, targetC, within float64) float64 {
	never := math.Inf(1)
	if !finite(targetC) || !(within >= 0) || len(w.terms) == 0 {
		if len(w.terms) == 0 && w.ambient == targetC && within >= 0 {
			return 0
		}
		return never
	}
	f := func(t float64) float64 { return w.At(t).Of(p) - targetC }
	f0 := f(0)
	if math.Abs(f0) < 1e-9 {
		return 0
	}
	rate, guess := w.lastMode(p, targetC)
	end := math.Min(within, 60/rate) // by then the body is at the ambient
	if len(w.terms) == 1 && !w.terms[0].rebased {
		// An even start moves one way only.
		fe := f(end)
		if sameSide(f0, fe) {
			return never
		}
		return crossing(f, 0, end, f0, fe, guess)
	}
	half := w.dirs[w.nearest].half
	t1, f1 := 0.0, f0
	tOld, fOld := 0.0, f0
	for t := untouched * half * half / w.alpha; t1 < end; t *= 1.25 {
		t2 := math.Min(t, end)
		f2 := f(t2)
		if !sameSide(f0, f2) {
			return crossing(f, t1, t2, f1, f2, guess)
		}
		// A turn towards the target between two points may cross and come back.
		if t1 > 0 && math.Abs(f1) <= math.Abs(fOld) && math.Abs(f1) <= math.Abs(f2) {
			if turn := nearestApproach(f, tOld, t2); !sameSide(f0, f(turn)) {
				return crossing(f, tOld, turn, fOld, f(turn), guess)
			}
		}
		tOld, fOld, t1, f1 = t1, f1, t2, f2
	}
	return never
}

// sameSide reports whether b is on a's side of zero; the last 1e-9 K of
// an approach are noise and count as that side.
func sameSide(a, b float64) bool { return (a > 0) == (b > 0) || math.Abs(b) < 1e-9 }

// lastMode gives the final rate of approach to the ambient, 1/s, and
// the time at which that mode alone would pass targetC, NaN for never.
func (w *Walk) lastMode(p Point, targetC float64) (rate, guess float64) {
	for i := range w.n {
		rate += float64(
			w.dirs[i].count,
		) * w.basis(i).z2[0] * w.alpha / (w.dirs[i].half * w.dirs[i].half)
	}
	sum := 0.0
	for j := range w.terms {
		x := w.terms[j].amplitude
		for i := range w.n {
			c := w.terms[j].v[i].c[0]
			if p == Mean {
				c *= w.basis(i).m[0]
			}
			x *= math.Pow(c, float64(w.dirs[i].count))
			if p == Surface && i == w.nearest {
				x *= w.basis(i).s[0]
			}
		}
		sum += x
	}
	return rate, math.Log(sum/(targetC-w.ambient)) / rate
}

// crossing narrows a bracket of f by false position, safeguarded by halving.
func crossing(f func(float64) float64, lo, hi, flo, fhi, guess float64) float64 {
	for range 80 {
		x := guess
		if !(x > lo && x < hi) {
			x = (lo*fhi - hi*flo) / (fhi - flo)
		}
		if !(x > lo && x < hi) {
			x = (lo + hi) / 2
		}
		fx := f(x)
		if math.Abs(fx) < 1e-6 || hi-lo < 1e-9*hi {
			return x
		}
		width := hi - lo
		if sameSide(flo, fx) {
			lo, flo = x, fx
			fhi /= 2 // Illinois: keeps the far end from sticking
		} else {
			hi, fhi = x, fx
			flo /= 2
		}
		guess = math.NaN()
		if hi-lo > width*0.9 {
			guess = (lo + hi) / 2
		}
	}
	return (lo + hi) / 2
}

// nearestApproach is the time in (lo, hi) at which |f| is least, by golden section.
func nearestApproach(f func(float64) float64, lo, hi float64) float64 {
	const g = 0.3819660112501051
	for range 24 {
		a, b := lo+g*(hi-lo), hi-g*(hi-lo)
		fa, fb := f(a), f(b)
		// Past the target the sign has changed, which is what is sought.
		if !sameSide(fa, fb) {
			if sameSide(f(lo), fa) {
				return b
			}
			return a
		}
		if math.Abs(fa) < math.Abs(fb) {
			hi = b
		} else {
			lo = a
		}
	}
	return (lo + hi) / 2
}

// Range of ScaleFor: a reading outside it was taken elsewhere or of something else.
const LowestScale, HighestScale = 0.2, 5.0

// ScaleFor is the factor on h with which the stage passes through readC at p, to 1e-4 K, the given
// seconds from now. SetScale takes it, now and for later stages in the same place. ok is false when
// no factor from LowestScale to HighestScale does. The Walk is unchanged.
func (w *Walk) ScaleFor(p Point, readC, seconds float64) (factor float64, ok bool) {
	if !w.staged || !finite(readC) || !positive(seconds) {
		return 0, false
	}
	var f func(logFactor float64) float64
	if len(w.before) == 0 && p == Core {
		// An even start, as nearly always: the few modes still alive then suffice.
		f = func(logFactor float64) float64 {
			share := 1.0
			for i := range w.n {
				dir := &w.dirs[i]
				c := evenCore(
					dir.d,
					clampBiot(w.h*math.Exp(logFactor)*dir.half/w.k),
					w.alpha*seconds/(dir.half*dir.half),
				)
				for range dir.count {
					share *= c
				}
			}
			return w.ambient + (w.beforeAmbient-w.ambient)*share - readC
		}
	} else {
		old := w.scale
		defer w.SetScale(old)
		f = func(logFactor float64) float64 {
			w.SetScale(math.Exp(logFactor))
			return w.At(seconds).Of(p) - readC
		}
	}
	// From the factor 1 towards the reading's end.
	f0 := f(0)
	if math.Abs(f0) < scaleNear {
		return 1, true
	}
	end := math.Log(HighestScale)
	if (f0 > 0) != (readC > w.ambient) { // it was read further on its way than h gives
		end = math.Log(LowestScale)
	}
	fe := f(end)
	if sameSide(f0, fe) {
		end = -end
		if fe = f(end); sameSide(f0, fe) {
			return 0, false
		}
	}
	return math.Exp(Settle(f, 0, end, f0, fe, scaleNear)), true
}

// scaleNear is a scaled course's distance to its reading, K.
const scaleNear = 1e-4

// Settle narrows a bracket of a smooth f by inverse quadratic steps
// where they are safe, else by halving (Chandrupatla, Advances in
// Engineering Software 28:145, 1997), until f is within near of zero.
func Settle(f func(float64) float64, a, b, fa, fb, near float64) float64 {
	t := 0.5
	x := fa / (fa - fb)
	if x > 0.02 && x < 0.98 {
		t = x // the first step is the straight one
	}
	for range 60 {
		at := a + t*(b-a)
		ft := f(at)
		if math.Abs(ft) < near {
			return at
		}
		c, fc := a, fa
		if (ft > 0) == (fa > 0) {
			a, fa = at, ft
		} else {
			c, b = b, a
			fc, fb = fb, fa
			a, fa = at, ft
		}
		if math.Abs(b-a) < 1e-12*(1+math.Abs(a)) {
			break
		}
		xi, phi := (a-b)/(c-b), (fa-fb)/(fc-fb)
		if phi*phi < xi && (1-phi)*(1-phi) < 1-xi {
			t = fa/(fb-fa)*fc/(fb-fc) + (c-a)/(b-a)*fa/(fc-fa)*fb/(fc-fb)
		} else {
			t = 0.5
		}
		t = max(1e-3, min(1-1e-3, t))
	}
	return a
}
