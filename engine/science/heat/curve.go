package heat

// Curve is a quantity tabulated evenly over temperature, linear between its points and level
// outside them. Its integral gives exact heat contents by a look-up.
type Curve struct {
	low, step float64
	points    []point
}

// point is one point of a Curve, and its slope to the next.
type point struct {
	value, slope float64
	from         float64 // distance from low
	integral     float64 // from low
}

// NewCurve tabulates f at n points, 2 or more, from lowC to highC. It
// is empty for other figures or where f is not finite.
func NewCurve(lowC, highC float64, n int, f func(tC float64) float64) Curve {
	if n < 2 || n > 1<<16 || !finite(lowC) || !finite(highC) || highC <= lowC {
		return Curve{}
	}
	c := Curve{lowC, (highC - lowC) / float64(n-1), make([]point, n)}
	for i := range c.points {
		p := point{from: float64(i) * c.step}
		p.value = f(lowC + p.from)
		if !finite(p.value) {
			return Curve{}
		}
		if i > 0 {
			before := &c.points[i-1]
			before.slope = (p.value - before.value) / c.step
			p.integral = before.integral + c.step*(p.value+before.value)/2
		}
		c.points[i] = p
	}
	return c
}

// empty reports whether there is no curve.
func (c *Curve) empty() bool { return len(c.points) == 0 }

// At is value, slope and integral from the curve's start at tC.
func (c *Curve) At(tC float64) (value, slope, integral float64) {
	last := len(c.points) - 1
	x := (tC - c.low) / c.step
	switch {
	case !(x > 0):
		p := &c.points[0]
		return p.value, 0, p.value * (tC - c.low)
	case x >= float64(last):
		p := &c.points[last]
		return p.value, 0, p.integral + p.value*(tC-c.low-p.from)
	}
	p := &c.points[int(x)]
	dx := tC - c.low - p.from
	value = p.value + p.slope*dx
	return value, p.slope, p.integral + dx*(p.value+value)/2
}

// slopes is At over a field, without the integrals.
func (c *Curve) slopes(t, value, slope []float64) {
	points, low, step, last := c.points, c.low, c.step, float64(len(c.points)-1)
	value, slope = value[:len(t)], slope[:len(t)]
	for i, tC := range t {
		if x := (tC - low) / step; x > 0 && x < last {
			p := &points[int(x)]
			value[i], slope[i] = p.value+p.slope*(tC-low-p.from), p.slope
			continue
		}
		value[i], slope[i], _ = c.At(tC)
	}
}

// integrals is At over a field, without the slopes.
func (c *Curve) integrals(t, value, integral []float64) {
	points, low, step, last := c.points, c.low, c.step, float64(len(c.points)-1)
	value, integral = value[:len(t)], integral[:len(t)]
	for i, tC := range t {
		if x := (tC - low) / step; x > 0 && x < last {
			p := &points[int(x)]
			dx := tC - low - p.from
			v := p.value + p.slope*dx
			value[i], integral[i] = v, p.integral+dx*(p.value+v)/2
			continue
		}
		value[i], _, integral[i] = c.At(tC)
	}
}
