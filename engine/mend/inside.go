package mend

import (
	"fmt"
	"math"

	"forebake/engine/finding"
	"forebake/engine/mend/levers"
)

// A value on the edge of a rule clears it by nothing. A baker takes the usual
// value, or a round one inside.

// mostMoved is the factor by which a value moves towards the usual one,
// from the written value where the edge is nearer, else from the edge.
// A written value farther from the edge than slip says little.
const (
	mostMoved = 1.25
	slip      = 2
)

// aims lists a baker's choices behind the edge, the best first: the
// usual value, half the way to it, the next round value inside, the
// round one on the edge. Direction leads away from the written value.
func (s *search) aims(edge, direction int) []int {
	l := s.lever
	if !(l.Round > 0) || l.Unit == "pieces" {
		return nil
	}
	var out []int
	add := func(x float64) {
		n := int(math.Round(levers.Rounded(x, l.RoundAt(x)) / l.Step))
		if n >= s.low && n <= s.high && direction*(n-edge) >= 0 {
			out = append(out, n)
		}
	}
	at := l.Number(edge)
	if usual, known := s.usual(); known && float64(direction)*(usual-at) > 0 {
		from := l.Start
		if at <= from/mostMoved || at >= from*mostMoved {
			from = at
		}
		if at > l.Start/slip && at < l.Start*slip {
			usual = max(from/mostMoved, min(usual, from*mostMoved))
		}
		add(usual)
		add((at + usual) / 2)
	}
	by := l.RoundAt(at)
	round := levers.Rounded(at, by)
	for float64(direction)*(round-at) < by/2 {
		round += float64(direction) * by
	}
	add(round)
	add(round - float64(direction)*by)
	return out
}

// usual gives the usual value of the lever's figure, in the lever's unit.
func (s *search) usual() (float64, bool) {
	usual, known := s.lever.Kind.Usual(s.lever, s.from.formula)
	if !known {
		return 0, false
	}
	return s.solve(usual.Mid)
}

// inside gives the first aim that serves, else the edge.
func (s *search) inside(edge, direction int, serves func(n int) bool) int {
	for _, n := range s.aims(edge, direction) {
		if serves(n) {
			return n
		}
	}
	return edge
}

// madeRound moves a harmless candidate from the edge to a value that a baker
// would choose.
func (s *search) madeRound(c *candidate, goal finding.Answer) *candidate {
	edge, _ := s.lever.Steps(c.to.Number)
	direction := 1
	if c.to.Number < s.lever.Start {
		direction = -1
	}
	n := s.inside(edge, direction, func(n int) bool {
		other := s.candidateAt(n, c.trust)
		return s.meets(n, goal) && other != nil && other.harmless()
	})
	if n == edge {
		return c
	}
	moved := s.candidateAt(n, c.trust)
	moved.edge = s.lever.EdgeText(edge, direction)
	return moved
}

// withEdge adds the edge to the words for a change.
func withEdge(text, edge string) string {
	if edge == "" {
		return text
	}
	return fmt.Sprintf("%s; %s", text, edge)
}

// rangeMargin is how far outside its published range a figure still
// counts as inside, in its unit: the rounding of the source.
const rangeMargin = 0.05

// leavesRange reports whether a figure lies inside its published range in one
// version and outside in the other, or on the other side of it.
func (m *Mender) leavesRange(before, after *version) bool {
	was, is := m.outside(before), m.outside(after)
	for i := range is {
		if i < len(was) && (was[i] <= rangeMargin && is[i] > rangeMargin ||
			was[i] >= -rangeMargin && is[i] < -rangeMargin) {
			return true
		}
	}
	return false
}

// outside says how far each figure lies outside its published range, below 0 under it.
func (m *Mender) outside(v *version) []float64 {
	if v.outside == nil {
		m.open(v)
		v.outside = levers.Outside(&m.sheet, v.formula)
	}
	return v.outside
}
