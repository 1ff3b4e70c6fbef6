package figure

import (
	"fmt"
	"math"
)

// Limit is the span of one input that a model covers, ends included.
// Outside it the model is silent and gives the reason.
type Limit struct {
	Quantity, Unit string
	Low, High      float64
	Why            string // where the span comes from, ready to stand before "from 0 to 30 min"
}

// Refuses is the reason for silence at x, "" inside the span. NaN
// is refused.
func (l Limit) Refuses(x float64) string {
	if x >= l.Low && x <= l.High {
		return ""
	}
	unit := l.Unit
	if unit != "" {
		unit = " " + unit
	}
	digits := "%.3g" // as many as tell 95.4 C from the limit of 95 C
	if math.Abs(x) >= 1000 {
		digits = "%.0f"
	}
	return fmt.Sprintf("%s is "+digits+"%s; %s from %g to %g%s",
		l.Quantity, x, unit, l.Why, l.Low, l.High, unit)
}

// FirstReason is the first of several reasons for silence, "" for none.
func FirstReason(reasons ...string) string {
	for _, r := range reasons {
		if r != "" {
			return r
		}
	}
	return ""
}

// Model holds what an estimate alone does not say about a
// modelled figure.
type Model struct {
	Name, Unit string
	Gives      string // what it gives, where the name does not say it
	Limits     []Limit
	Error      string // the error that the estimate carries, and what it was fitted to
	Source     string // with its basis: read, quoted, memory, computed, judgement
	Misses     string // published points outside the estimate, "" where there are none
}

// Bounded is an estimate without a middle: the model is silent, and
// only these ends are certain.
func Bounded(low, high float64) Estimate { return Estimate{low, math.NaN(), high} }

// Unanswered is a silent model's estimate where nothing is certain.
func Unanswered() Estimate { return Bounded(math.Inf(-1), math.Inf(1)) }
