package microbe

import (
	"math"

	"forebake/engine/figure"
)

// PerHour is the growth, log10/h, at tC. Temperatures that cannot be
// read give infinity.
func (g *Growth) PerHour(tC float64) figure.Estimate {
	if !readable(tC) {
		return figure.Exactly(math.Inf(1))
	}
	return figure.Estimate{Low: g.rate(g.B.Low, tC), Mid: g.rate(g.B.Mid, tC),
		High: g.rate(g.B.High, tC)}
}

// Log is the growth, log10, while the temperature moves linearly from
// t0C to t1C in the given hours: the exact integral. It is not cut at
// MostLog, since the parts of a history add up. Anything unreadable
// is infinite.
func (g *Growth) Log(t0C, t1C, hours float64) figure.Estimate {
	return figure.Estimate{
		Low:  g.LogAt(figure.Low, t0C, t1C, hours),
		Mid:  g.LogAt(figure.Middle, t0C, t1C, hours),
		High: g.LogAt(figure.High, t0C, t1C, hours),
	}
}
