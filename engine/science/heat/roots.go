package heat

import "math"

// modes is how many terms of a series are kept. Twelve hold the core to 0.003 K from Fo 0.005 on
// (computed); decayed terms cost nothing, so fewer would save nothing.
const modes = 12

// Below insulatedBiot a body counts as insulated: it would move by 1e-5 K in a day. Above heldBiot
// the surface is held at the ambient temperature.
const (
	insulatedBiot = 1e-9
	heldBiot      = 1e6
)

// Zeros of the Bessel functions J1 (from the origin) and J0 bracket the roots of a cylinder.
var (
	zerosJ1 = [modes]float64{
		0,
		3.8317059702075125,
		7.015586669815619,
		10.173468135062722,
		13.323691936314223,
		16.470630050877634,
		19.615858510468243,
		22.760084380592772,
		25.903672087618382,
		29.046828534916855,
		32.189679910974405,
		35.33230755008387,
	}
	zerosJ0 = [modes]float64{
		2.404825557695773,
		5.520078110286311,
		8.653727912911013,
		11.791534439014281,
		14.930917708487785,
		18.071063967910924,
		21.21163662987926,
		24.352471530749302,
		27.493479132040253,
		30.634606468431976,
		33.77582021357357,
		36.917098353664045,
	}
)

// basis holds the modes f_n(x) of one direction at one Biot number, x from the middle (0) to the
// surface (1): cos zx, J0(zx) or sin zx / zx.
type basis struct {
	d  int     // 1 slab, 2 cylinder, 3 sphere; 0 marks an empty place
	bi float64 // between insulatedBiot and +Inf
	z2 [modes]float64
	s  [modes]float64 // f(1)
	g  [modes]float64 // f'(1) = -Bi s; finite where Bi is not
	nn [modes]float64 // norm: integral of f^2 x^(d-1)
	a  [modes]float64 // coefficients of a uniform field of 1, the tabulated C_n
	m  [modes]float64 // volume mean of f

	// The modes that are not kept, in groups whose edges double: z^2 of each, and its share of what
	// the kept ones miss. The miss is that of mean and surface just after a change of ambient.
	late2, lateMean, lateSurf [lateGroups]float64
}

// lateGroups doublings reach a surface that changes within Fo 1e-6.
const lateGroups = 6

// clampBiot limits a Biot number to the range of the roots.
func clampBiot(bi float64) float64 {
	switch {
	case bi < insulatedBiot:
		return insulatedBiot
	case bi > heldBiot:
		return math.Inf(1)
	}
	return bi
}

// mode is one mode's figures, as a basis holds them.
type mode struct{ z2, s, g, nn, a float64 }

func solveMode(d, n int, bi float64) (m mode) {
	z := root(d, n, bi)
	m.z2 = z * z
	switch {
	case math.IsInf(bi, 1) && d == 1:
		m.g = -z * math.Sin(z)
	case math.IsInf(bi, 1) && d == 2:
		m.g = -z * math.J1(z)
	case math.IsInf(bi, 1):
		m.g = math.Cos(z)
	default:
		m.s = shapeAt(d, z)
		m.g = -bi * m.s
	}
	m.nn = (m.s*m.s*m.z2 + m.g*m.g - float64(2-d)*m.g*m.s) / (2 * m.z2)
	m.a = -m.g / (m.z2 * m.nn)
	return m
}

// evenCore is the share of an even start left in the middle of one
// direction, as in At: 1 until untouched.
func evenCore(d int, bi, fo float64) float64 {
	if fo < untouched {
		return 1
	}
	sum := 0.0
	for n := range modes {
		m := solveMode(d, n, bi)
		x := m.z2 * fo
		if !(x < 30) {
			break
		}
		sum += m.a * math.Exp(-x)
	}
	return sum
}

// fill solves the basis for bi, which clampBiot has limited. Norm, constants and means are one
// formula for the three shapes. In s and g, a held surface needs no case of its own.
func (b *basis) fill(d int, bi float64) {
	b.d, b.bi = d, bi
	for n := range modes {
		m := solveMode(d, n, bi)
		b.z2[n], b.s[n], b.g[n], b.nn[n], b.a[n] = m.z2, m.s, m.g, m.nn, m.a
		b.m[n] = -float64(d) * m.g / m.z2
	}
	// Far out the roots are pi apart, surface terms go as Bi/(z^2 + Bi^2) and mean terms as
	// Bi^2/(z^2 (z^2 + Bi^2)): the shares are their integrals.
	edge := math.Sqrt(b.z2[modes-1]) + math.Pi/2
	surf := func(z float64) float64 { return math.Atan(bi / z) }
	mean := func(z float64) float64 { return 1/z - math.Atan(bi/z)/bi }
	switch {
	case math.IsInf(bi, 1):
		surf = func(float64) float64 { return 1 }
		mean = func(z float64) float64 { return 1 / z }
	case bi < 1e-2: // the same, without the cancellation
		mean = func(z float64) float64 { return bi * bi / (3 * z * z * z) }
	}
	mean0, surf0 := mean(edge), surf(edge)
	m0, s0 := mean0, surf0
	for j := range lateGroups {
		b.late2[j] = 2 * edge * edge
		edge *= 2
		m1, s1 := 0.0, 0.0
		if j < lateGroups-1 {
			m1, s1 = mean(edge), surf(edge)
		}
		b.lateMean[j] = (m0 - m1) / mean0
		b.lateSurf[j] = (s0 - s1) / surf0
		m0, s0 = m1, s1
	}
}

// shapeAt is cos z, J0(z) or sin z / z.
func shapeAt(d int, z float64) float64 {
	switch {
	case d == 1:
		return math.Cos(z)
	case d == 2:
		return math.J0(z)
	case z < 1e-4:
		return 1 - z*z/6
	}
	return math.Sin(z) / z
}

// root is the n-th root, from 0, of the boundary equation: slab z tan z = Bi, cylinder z J1(z) = Bi
// J0(z), sphere 1 - z cot z = Bi, by Halley inside its bracket. Error below 1e-12 of the root.
func root(d, n int, bi float64) float64 {
	lo, hi := float64(n)*math.Pi, float64(n)*math.Pi+math.Pi/2
	switch d {
	case 2:
		lo, hi = zerosJ1[n], zerosJ0[n]
	case 3:
		hi = lo + math.Pi
	}
	if math.IsInf(bi, 1) {
		return hi
	}
	// The starts come from each equation's asymptotic form, except the first root of a slow body,
	// where z^2 = d Bi/(1 + Bi/(d+2)) is good to Bi^2.
	z := (lo + hi) / 2
	switch {
	case n == 0 && bi < 1:
		z = math.Sqrt(float64(d) * bi / (1 + bi/float64(d+2)))
		if bi < 1e-5 {
			return z
		}
	case d == 3:
		z = lo + math.Pi/2 - math.Atan((1-bi)/z)
	default:
		z = lo + math.Atan(bi/z)
	}
	for range 60 {
		f, slope, bend := boundary(d, z, bi)
		// Each equation is written to rise through its root on even
		// brackets and to fall on odd ones.
		if (f > 0) == (n%2 == 0) {
			hi = z
		} else {
			lo = z
		}
		next := z - f/(slope-bend*f/(2*slope)) // Halley's step
		if math.Abs(next-z) <= 1e-5*z {        // what is left is its cube
			return next
		}
		if !(next > lo && next < hi) {
			next = (lo + hi) / 2
		}
		z = next
	}
	return z
}

// boundary is the boundary equation cleared of its poles, its slope and the change of that.
func boundary(d int, z, bi float64) (f, slope, bend float64) {
	switch d {
	case 1:
		sin, cos := math.Sincos(z)
		return z*sin - bi*cos, sin + z*cos + bi*sin, (2+bi)*cos - z*sin
	case 2:
		j0, j1 := math.J0(z), math.J1(z)
		return z*j1 - bi*j0, z*j0 + bi*j1, (1+bi)*j0 - z*j1 - bi*j1/z
	}
	sin, cos := math.Sincos(z)
	return (1-bi)*sin - z*cos, z*sin - bi*cos, (1+bi)*sin + z*cos
}
