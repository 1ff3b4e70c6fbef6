package facts

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
)

// Line is one step of the timeline: when it happens, and what the part is like as it ends.
type Line struct {
	Part         *formula.Part
	Step         *formula.Step
	StartH, EndH float64 // hours since the first step of the formula, by the middle of every range
	Timed        bool    // the step has a time of its own
	Ambient      Value   // C
	Core, Mean   Value   // C
	Hours        Value   // equivalent hours at 26 C gained
	Measured     bool    // a reading was believed
	Bowl         bool    // no geometry is given: taken as left in its bowl
}

// Timeline gives every step of every part, part by part in the order of the file, on one clock. What goes into a part, or onto
// it, is scheduled back from the step that needs it.
func (s *Sheet) Timeline() []Line {
	begins := s.schedule()
	var out []Line
	for _, fp := range s.Formula.Parts {
		p := s.part(fp)
		life := p.follow()
		ferments := p.strain() != "none" && p.flour().Hi > 0
		for i := range life.Stages {
			st := &life.Stages[i]
			l := Line{Part: fp, Step: st.Step, StartH: begins[fp.Serial] + st.StartH.Mid(), EndH: begins[fp.Serial] + st.EndH.Mid(),
				Timed: st.Step.Time.Set, Measured: st.Measured || st.RiseMeasured, Bowl: st.AssumedBowl}
			l.Ambient = absent("", st.Step.Place)
			if st.HasAmbient {
				l.Ambient = num(st.Ambient)
			} else if st.Step.At.Set {
				l.Ambient = num(st.Step.At.Interval)
			}
			l.Core = lacking(st)
			l.Mean, l.Hours = l.Core, l.Core
			if st.Known {
				l.Core, l.Mean = bandValue(st.Core, st.Measured), bandValue(st.Mean, st.Measured)
				if ferments && st.Hours != (figure.Estimate{}) {
					l.Hours = bandValue(st.Hours, false)
				}
			}
			out = append(out, l)
		}
	}
	return out
}

// schedule gives the hour at which each part begins: a part that another needs ends when that one needs it. The earliest
// begins at 0.
func (s *Sheet) schedule() []float64 {
	length := func(p *formula.Part, before int) float64 {
		h := 0.0
		for _, step := range p.Steps[:before] {
			if step.Time.Set {
				h += step.Time.Mid() / 60
			}
		}
		return h
	}
	begins := make([]float64, len(s.Formula.Parts))
	needed := make([]bool, len(begins))
	for i := len(s.Formula.Order) - 1; i >= 0; i-- { // takers before what they take
		p := s.Formula.Order[i]
		need := func(q *formula.Part, at float64) {
			start := at - length(q, len(q.Steps))
			if !needed[q.Serial] || start < begins[q.Serial] {
				begins[q.Serial], needed[q.Serial] = start, true
			}
		}
		for _, in := range p.Ingredients {
			if in.Of != nil {
				need(in.Of, begins[p.Serial])
			}
		}
		for k, step := range p.Steps {
			if step.Uses != nil {
				need(step.Uses, begins[p.Serial]+length(p, k))
			}
		}
	}
	first := math.Inf(1)
	for _, b := range begins {
		first = min(first, b)
	}
	for i := range begins {
		begins[i] -= first
	}
	return begins
}
