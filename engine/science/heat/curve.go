package heat

import "math"

// Curve is a quantity tabulated evenly over temperature, straight between its
// points and level outside them, with its integral: exact heat contents at the
// price of a table look-up.
type Curve struct {
	low, step float64
	values    []float64
	slopes    []float64 // from each point to the next
	integral  []float64 // from low
}

// NewCurve tabulates f at n points, 2 or more, from lowC to highC. It is empty
// for other figures or where f is not finite.
func NewCurve(lowC, highC float64, n int, f func(tC float64) float64) Curve {
	if n < 2 || n > 1<<16 || !finite(lowC) || !finite(highC) || highC <= lowC {
		return Curve{}
	}
	room := make([]float64, 3*n)
	c := Curve{lowC, (highC - lowC) / float64(n-1), room[:n], room[n : 2*n], room[2*n:]}
	for i := range c.values {
		v := f(lowC + float64(i)*c.step)
		if !finite(v) {
			return Curve{}
		}
		c.values[i] = v
		if i > 0 {
			c.slopes[i-1] = (v - c.values[i-1]) / c.step
			c.integral[i] = c.integral[i-1] + c.step*(v+c.values[i-1])/2
		}
	}
	return c
}

// empty reports whether there is no curve.
func (c *Curve) empty() bool { return len(c.values) == 0 }

// at is value, slope and integral from the curve's start at tC.
func (c *Curve) at(tC float64) (value, slope, integral float64) {
	last := len(c.values) - 1
	x := (tC - c.low) / c.step
	switch {
	case !(x > 0):
		return c.values[0], 0, c.values[0] * (tC - c.low)
	case x >= float64(last):
		return c.values[last], 0, c.integral[last] + c.values[last]*(tC-c.low-float64(last)*c.step)
	}
	i := int(x)
	slope = c.slopes[i]
	dx := tC - c.low - float64(i)*c.step
	value = c.values[i] + slope*dx
	return value, slope, c.integral[i] + dx*(c.values[i]+value)/2
}

// sloped is at without the integral.
func (c *Curve) sloped(tC float64) (value, slope float64) {
	last := len(c.values) - 1
	x := (tC - c.low) / c.step
	if !(x > 0) {
		return c.values[0], 0
	}
	if x >= float64(last) {
		return c.values[last], 0
	}
	i := int(x)
	slope = c.slopes[i]
	return c.values[i] + slope*(tC-c.low-float64(i)*c.step), slope
}

// MilkFatCurve is the specific heat, J/(kg K), of a food with sensible specific heat cp and the
// milk fat fraction w: cp + 81e3 w dS/dT, typical solids, the slope taken over 2 K. Real fat
// supercools and sets over hours: the core drops a little early, then stalls.
func MilkFatCurve(cp, w float64) Curve {
	return NewCurve(-10, 50, 121, func(tC float64) float64 { return cp + milkFatHeat(w, tC) })
}

// milkFatHeat is the specific heat that setting milk fat adds at tC, J/(kg K).
func milkFatHeat(w, tC float64) float64 {
	_, warm, _ := SolidFat(MilkFat, tC+1)
	_, cold, _ := SolidFat(MilkFat, tC-1)
	return MilkFatLatent * w * math.Max(cold-warm, 0) / 2
}
