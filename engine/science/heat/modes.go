package heat

import "math"

// untouched is the Fourier number below which the core has not moved.
// The series is least exact there and is not used.
const untouched = 0.005

// vector is a field along one direction: coefficients of the modes now,
// and the remainder beyond the cut series.
type vector struct {
	c          [modes]float64
	mean, surf float64 // added to mean and surface by the modes left out
	core, rate float64 // core when the vector was made and its change per Fo then
	born       float64 // Fo since then
}

// term is amplitude times the product of its vectors.
type term struct {
	amplitude float64 // K
	rebased   bool    // it has seen more than one surface coefficient, so it may turn round
	v         [3]vector
}

// fade is the share of each mode, and of the remainder, left after a time.
type fade struct {
	mode       [modes]float64
	mean, surf float64
	alive      int // modes that still count
}

// set fills f for fo, from 0 to +Inf.
func (f *fade) set(b *basis, fo float64) {
	f.alive, f.mean, f.surf = modes, 0, 0
	if fo == 0 {
		f.mode = unfaded.mode
		for j := range lateGroups {
			f.mean += b.lateMean[j]
			f.surf += b.lateSurf[j]
		}
		return
	}
	for n := range modes {
		x := b.z2[n] * fo
		if !(x < 30) {
			f.alive = n
			return
		}
		f.mode[n] = math.Exp(-x)
	}
	for j := range lateGroups {
		x := b.late2[j] * fo
		if !(x < 30) {
			return
		}
		e := math.Exp(-x)
		f.mean += b.lateMean[j] * e
		f.surf += b.lateSurf[j] * e
	}
}

// value gives core, mean and surface of the vector after fo.
func (v *vector) value(b *basis, f *fade, fo float64) (core, mean, surf float64) {
	mean, surf = v.mean*f.mean, v.surf*f.surf
	for n := range f.alive {
		x := v.c[n] * f.mode[n]
		core += x
		mean += x * b.m[n]
		surf += x * b.s[n]
	}
	if age := v.born + fo; age < untouched {
		core = v.core + v.rate*age
	}
	return core, mean, surf
}

// even makes v the uniform field of 1.
func (v *vector) even(b *basis) {
	*v = vector{c: b.a, core: 1}
	v.tail(b, 1, 1)
}

// tail sets the remainder of the cut series from a known mean and surface.
func (v *vector) tail(b *basis, mean, surf float64) {
	for n := range modes {
		mean -= v.c[n] * b.m[n]
		surf -= v.c[n] * b.s[n]
	}
	if math.IsInf(b.bi, 1) {
		surf = 0
	}
	v.mean, v.surf = mean, surf
}

// unfaded is no time at all.
var unfaded = fade{
	mode:  [modes]float64{1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1},
	mean:  1,
	surf:  1,
	alive: modes,
}

// rebase expresses v in the modes of another Biot number, by Green's
// identity: P_mn = (s'_m g_n - g'_m s_n) / ((z'_m^2 - z_n^2) N'_m).
func (v *vector) rebase(from, to *basis) {
	core, mean, surf := v.value(from, &unfaded, 0)
	rate := 0.0
	if v.born < 2*untouched {
		rate = v.rate // the sum below would be mostly noise
	}
	var c [modes]float64
	for n := range modes {
		if v.born >= 2*untouched {
			rate -= v.c[n] * from.z2[n]
		}
		if math.Abs(v.c[n]) < 1e-12 {
			continue
		}
		sn, gn, z2 := v.c[n]*from.s[n], v.c[n]*from.g[n], from.z2[n]
		for m := range modes {
			c[m] += (to.s[m]*gn - to.g[m]*sn) / ((to.z2[m] - z2) * to.nn[m])
		}
	}
	*v = vector{c: c, core: core, rate: rate}
	v.tail(to, mean, surf)
}
