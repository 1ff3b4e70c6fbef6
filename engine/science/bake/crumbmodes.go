package bake

import "math"

// crumbModes is the number of series terms that a bake keeps. Eight
// hold the core to 0.01 K from Fo = alpha t/L^2 of crumbUntouched on
// (computed). Before that it has moved by at most 0.1 K.
const crumbModes, crumbUntouched = 8, 0.02

// powers holds the factors between the power series' terms of f in
// dimension d.
type powers struct {
	d       float64
	factors [48]float64 // -1/(k (k - 1 + d/2))
}

func powersOf(d float64) (p powers) {
	p.d = d
	for i := range p.factors {
		k := float64(i + 1)
		p.factors[i] = -1 / (k * (k - 1 + d/2))
	}
	return p
}

// at gives f and its slope f' at the surface for a root z. The terms
// alternate: at the highest root kept, 25, they lose 1e-5.
func (p *powers) at(z float64) (f, slope float64) {
	term, quarter := 1.0, z*z/4
	f = 1
	for i, factor := range p.factors {
		term *= quarter * factor
		f += term
		slope += 2 * float64(i+1) * term
		if term < 1e-13 && term > -1e-13 {
			break
		}
	}
	return f, slope
}

// held are the roots of f(z) = 0, by McMahon's expansion and
// Newton's steps.
func (p *powers) held() (roots [crumbModes]float64) {
	nu := p.d/2 - 1
	for n := range roots {
		z := (float64(n) + 0.75 + nu/2) * math.Pi
		z -= (4*nu*nu - 1) / (8 * z)
		for range 2 {
			f, g := p.at(z)
			z -= f * z / g
		}
		roots[n] = z
	}
	return roots
}

// root is the n-th root of f' + bi f = 0, between two roots of f, by
// Newton inside its bracket.
func (p *powers) root(n int, bi float64, held *[crumbModes]float64) float64 {
	lo, hi := 0.0, held[n]
	z := math.Sqrt(p.d * bi / (1 + bi/(p.d+2)))
	if n > 0 {
		lo = held[n-1]
		z = hi - math.Pi/2 + math.Atan(bi/hi)
	}
	if !(z > lo && z < hi) {
		z = (lo + hi) / 2
	}
	rising := n%2 == 1 // f' + bi f runs from plus to minus on even brackets
	for range 50 {
		f, g := p.at(z)
		y := g + bi*f
		if (y > 0) == rising {
			hi = z
		} else {
			lo = z
		}
		next := z - y/(((2-p.d+bi)*g/z)-z*f)
		if math.Abs(next-z) < 1e-5*z { // what is left is its square
			return next
		}
		if !(next > lo && next < hi) {
			next = (lo + hi) / 2
		}
		z = next
	}
	return z
}

// between holds the modes of a body of any dimension d from 1 to 3:
// f(zx) that solve x^(1-d) (x^(d-1) f')' = -z^2 f with f(0) = 1. Walk
// has the whole dimensions and their products. A baked piece is neither
// slab nor ball; its d comes from its surface and volume.
type between struct {
	z2 [crumbModes]float64
	s  [crumbModes]float64 // f at the surface
	g  [crumbModes]float64 // f' at the surface, -Bi f
	nn [crumbModes]float64 // norm: integral of f^2 x^(d-1)
	a  [crumbModes]float64 // coefficients of a uniform field of 1
}

// fill solves the modes for the Biot number bi, +Inf for a
// held surface.
func (b *between) fill(p *powers, bi float64, held *[crumbModes]float64) {
	for n := range crumbModes {
		z := held[n]
		if finite(bi) {
			z = p.root(n, bi, held)
		}
		f, g := p.at(z)
		if !finite(bi) {
			f = 0
		}
		b.z2[n], b.s[n], b.g[n] = z*z, f, g
		b.nn[n] = (f*f*z*z + g*g - (2-p.d)*g*f) / (2 * z * z)
		b.a[n] = -g / (z * z * b.nn[n])
	}
}

func finite(x float64) bool   { return !math.IsNaN(x) && !math.IsInf(x, 0) }
func positive(x float64) bool { return x > 0 && finite(x) }
