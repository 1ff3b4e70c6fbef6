package figure

// Run names one of the three runs that a figure is computed in.
type Run uint8

// The three runs of an estimate. A loop over all of them counts
// to Runs.
const (
	Low Run = iota
	Middle
	High
	Runs
)

// Estimate is a modelled figure with the ends of its error. Low <= Mid
// <= High where all three are numbers; an end may be infinite. The unit
// is that of the estimated quantity.
type Estimate struct{ Low, Mid, High float64 }

// Exactly is the estimate without error.
func Exactly(x float64) Estimate { return Estimate{x, x, x} }

// WithinFactor is mid with a relative error: mid/factor to mid*factor.
// factor >= 1.
func WithinFactor(mid, factor float64) Estimate { return Estimate{mid / factor, mid, mid * factor} }

// Ordered makes an estimate of three runs whose ends may have crossed:
// the middle run stays Mid.
func Ordered(x [Runs]float64) Estimate {
	return Estimate{min(x[0], x[1], x[2]), x[1], max(x[0], x[1], x[2])}
}

// At is the figure of one run.
func (e Estimate) At(r Run) float64 { return [Runs]float64{e.Low, e.Mid, e.High}[r] }

// Interval is the span from low end to high end, in order.
func (e Estimate) Interval() Interval { return Between(e.Low, e.High) }

// Plus adds run by run: the errors are taken to go the same way.
func (e Estimate) Plus(o Estimate) Estimate {
	return Estimate{e.Low + o.Low, e.Mid + o.Mid, e.High + o.High}
}

// Times multiplies by k >= 0.
func (e Estimate) Times(k float64) Estimate { return Estimate{e.Low * k, e.Mid * k, e.High * k} }

// Max is the higher of two figures, run by run.
func (e Estimate) Max(o Estimate) Estimate {
	return Estimate{max(e.Low, o.Low), max(e.Mid, o.Mid), max(e.High, o.High)}
}

// Min is the lower of two figures, run by run.
func (e Estimate) Min(o Estimate) Estimate {
	return Estimate{min(e.Low, o.Low), min(e.Mid, o.Mid), min(e.High, o.High)}
}

// Contains reports whether x lies between the ends, inclusive.
func (e Estimate) Contains(x float64) bool { return e.Low <= x && x <= e.High }
