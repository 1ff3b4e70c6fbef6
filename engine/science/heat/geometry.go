package heat

import "math"

// Shape is the kind of body heat flows in.
type Shape uint8

// The shapes. Slab and Cylinder have no ends.
const (
	Slab           Shape = iota // Half[0] half thickness; wet or cooled on both faces alike
	Cylinder                    // Half[0] radius
	Sphere                      // Half[0] radius
	FiniteCylinder              // Half[0] radius, Half[1] half height
	Brick                       // Half[0..2] half edges
	Ellipsoid                   // Half[0..2] half axes; Walk takes it for the brick around it
)

// Body is a shape with its half dimensions in metres, gas included: the
// thickness as it stands. Functions refuse bodies whose dimensions are not
// finite and positive.
type Body struct {
	Shape Shape
	Half  [3]float64 // m; those the shape does not use are ignored
}

// direction is one factor of the product solution: d 1, 2 or 3, a half
// dimension, and the number of like directions of the body.
type direction struct {
	d     int
	half  float64
	count int
}

// directions gives a body's unlike directions and which one meets the nearest
// face. A square section has one direction counted twice.
func (b Body) directions() (dirs [3]direction, n, nearest int, ok bool) {
	switch b.Shape {
	case Slab, Cylinder, Sphere:
		dirs[0], n = direction{int(b.Shape) + 1, b.Half[0], 1}, 1
	case FiniteCylinder:
		dirs[0], dirs[1], n = direction{2, b.Half[0], 1}, direction{1, b.Half[1], 1}, 2
	case Brick, Ellipsoid:
		for _, half := range b.Half {
			like := 0
			for like < n && dirs[like].half != half {
				like++
			}
			if like == n {
				dirs[n] = direction{1, half, 0}
				n++
			}
			dirs[like].count++
		}
	default:
		return dirs, 0, 0, false
	}
	for i := range n {
		if !(dirs[i].half > 0) || math.IsInf(dirs[i].half, 1) {
			return dirs, 0, 0, false
		}
		if dirs[i].half < dirs[nearest].half {
			nearest = i
		}
	}
	return dirs, n, nearest, true
}

// AreaPerVolume is surface over volume in 1/m, 0 for a bad body. Times h/(rho
// cp) it is the rate of a body with an even inside.
func (b Body) AreaPerVolume() float64 {
	dirs, n, _, ok := b.directions()
	if !ok {
		return 0
	}
	if b.Shape == Ellipsoid {
		// Thomsen's approximation of the surface, 1 % off at most (memory).
		const p = 1.6
		x := math.Pow(1/b.Half[0], p) + math.Pow(1/b.Half[1], p) + math.Pow(1/b.Half[2], p)
		return 3 * math.Pow(x/3, 1/p)
	}
	sum := 0.0
	for i := range n {
		sum += float64(dirs[i].d*dirs[i].count) / dirs[i].half
	}
	return sum
}

// Nearest is the smallest half dimension in m, the L of h L/k; 0 for a
// bad body.
func (b Body) Nearest() float64 {
	dirs, _, nearest, ok := b.directions()
	if !ok {
		return 0
	}
	return dirs[nearest].half
}

// SlabOf is a slab of the given full thickness, m, with two like faces.
func SlabOf(thicknessM float64) Body { return Body{Slab, [3]float64{thicknessM / 2}} }

// TrayOf is a filled tray or pan of the given depth, m. An insulated
// underside (wood, a still stack) is exactly a slab of twice the depth.
// Otherwise the two faces share their mean h: good to 4 % in time within 2:1,
// and 8-21 % too fast at 5:1 (computed). Volumes takes two unlike faces.
func TrayOf(depthM float64, insulatedBelow bool) Body {
	if insulatedBelow {
		depthM *= 2
	}
	return SlabOf(depthM)
}

// BallOf is a ball of the given mass, kg, and density, kg/m3, gas included.
func BallOf(massKg, densityKgM3 float64) Body {
	return Body{Sphere, [3]float64{math.Cbrt(3 * massKg / (4 * math.Pi * densityKgM3))}}
}

// LogOf is a log of the given diameter and length, m. From four diameters on
// its ends do not show in the middle and it is a Cylinder.
func LogOf(diameterM, lengthM float64) Body {
	if lengthM >= 4*diameterM {
		return Body{Cylinder, [3]float64{diameterM / 2}}
	}
	return Body{FiniteCylinder, [3]float64{diameterM / 2, lengthM / 2}}
}

// BowlOf is a filled bowl, as an upright cylinder of its volume, m3, and
// depth, m.
func BowlOf(volumeM3, depthM float64) Body {
	return Body{FiniteCylinder, [3]float64{math.Sqrt(volumeM3 / (math.Pi * depthM)), depthM / 2}}
}

// BrickOf is a block of the given full edges, m.
func BrickOf(a, b, c float64) Body { return Body{Brick, [3]float64{a / 2, b / 2, c / 2}} }

// EllipsoidOf is a free-standing piece of the given full axes, m.
func EllipsoidOf(a, b, c float64) Body { return Body{Ellipsoid, [3]float64{a / 2, b / 2, c / 2}} }

// EquivalentDimension is the d between 1 and 3 for which a body of half
// dimension Nearest ends its cooling at b's rate, with conductivity k and
// coefficient h. Volumes takes it for a brick. Alone it cools up to 11 % too
// fast below Bi 1, 13 % at worst (computed). So use it for a source's
// difference, and add that to Walk's answer. NaN for a bad body, k or h.
func (b Body) EquivalentDimension(k, h float64) float64 {
	dirs, n, nearest, ok := b.directions()
	if !ok || !positive(k) || !(h >= 0) {
		return math.NaN()
	}
	first := func(d int, half float64) float64 {
		z := root(d, 0, clampBiot(h*half/k))
		return z * z
	}
	l := dirs[nearest].half
	want := 0.0
	for _, dir := range dirs[:n] {
		want += float64(dir.count) * first(dir.d, dir.half) * l * l / (dir.half * dir.half)
	}
	// The square of the first root is nearly linear in d: a parabola through
	// 1, 2, 3.
	y1, y2, y3 := first(1, l), first(2, l), first(3, l)
	lo, hi := 1.0, 3.0
	for range 50 {
		d := (lo + hi) / 2
		if y1+(d-1)*(y2-y1)+(d-1)*(d-2)/2*(y3-2*y2+y1) < want {
			lo = d
		} else {
			hi = d
		}
	}
	return (lo + hi) / 2
}
