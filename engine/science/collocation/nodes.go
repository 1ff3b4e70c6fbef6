package collocation

import "math"

// A field is a polynomial in u, the square of the way from the
// middle over that to the surface: it is level in the middle by
// itself. What the Laplacian makes of it is 4u d2/du2 + 2d d/du, in
// d dimensions.

// places are the nodes over u: those of Gauss and Legendre within,
// then the surface.
var places = func() (u [nodes]float64) {
	for i := range inner {
		x := math.Cos(math.Pi * (float64(i) + 0.75) / (inner + 0.5))
		for range 20 {
			p, slope := legendre(x)
			x -= p / slope
		}
		u[i] = (1 - x) / 2
	}
	u[inner] = 1
	return u
}()

// legendre is the Legendre polynomial of degree inner at x, and
// its slope.
func legendre(x float64) (p, slope float64) {
	before, p := 1.0, x
	for n := 2.0; n <= inner; n++ {
		before, p = p, ((2*n-1)*x*p-(n-1)*before)/n
	}
	return p, inner * (x*p - before) / (x*x - 1)
}

// first and second are the derivatives over u at each node, of the
// field of all nodes.
var first, second = func() (one, two [nodes][nodes]float64) {
	product := func(i int) float64 {
		p := 1.0
		for k := range places {
			if k != i {
				p *= places[i] - places[k]
			}
		}
		return p
	}
	for i := range nodes {
		for j := range nodes {
			if i != j {
				one[i][j] = product(i) / product(j) / (places[i] - places[j])
				one[i][i] -= one[i][j]
			}
		}
	}
	for i := range nodes {
		for j := range nodes {
			for k := range nodes {
				two[i][j] += one[i][k] * one[k][j]
			}
		}
	}
	return one, two
}()

// lagrange are the polynomials that are 1 at one node within and 0
// at the others, by the powers of u.
var lagrange = func() (p [inner][inner]float64) {
	for i := range inner {
		p[i][0] = 1
		degree := 0
		for k := range inner {
			if k == i {
				continue
			}
			by := 1 / (places[i] - places[k])
			degree++
			for n := degree; n >= 0; n-- {
				p[i][n] *= -places[k] * by
				if n > 0 {
					p[i][n] += p[i][n-1] * by
				}
			}
		}
	}
	return p
}()
