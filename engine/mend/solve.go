package mend

import (
	"math"

	"forebake/engine/mend/levers"
)

// mostSecants bounds the steps of the secant method. Figures of classes
// are linear in the amounts, or nearly so where the flour itself moves:
// three steps solve both.
const mostSecants = 3

// solve finds the number at which the lever's figure has a value. It
// need not lie on the grid.
func (s *search) solve(figure float64) (float64, bool) {
	l := s.lever
	read := l.Kind.Figure(l)
	if read == nil {
		return l.InUnit(figure), true
	}
	x0 := l.Start
	x1 := max(2*x0, x0+10*l.Step)
	f0, ok0 := s.figureAt(read, x0)
	f1, ok1 := s.figureAt(read, x1)
	for range mostSecants {
		if !ok0 || !ok1 || f1 == f0 {
			return 0, false
		}
		x := x0 + (figure-f0)*(x1-x0)/(f1-f0)
		switch {
		case math.Abs(x-x1) < l.Step/1000:
			return x, true
		case x <= 0:
			return 0, true
		}
		x0, f0 = x1, f1
		x1 = x
		f1, ok1 = s.figureAt(read, x)
		if math.Abs(f1-figure) < 1e-6 {
			return x1, ok1
		}
	}
	return x1, ok1
}

// figureAt reads the lever's figure with the lever at x.
func (s *search) figureAt(read levers.Figure, x float64) (float64, bool) {
	v := s.from
	if x != s.lever.Start {
		next, _, err := s.m.change(s.from, s.lever, levers.At(x))
		if err != nil {
			return 0, false
		}
		v = next
	}
	s.m.open(v)
	return read(&s.m.sheet, v.formula)
}
