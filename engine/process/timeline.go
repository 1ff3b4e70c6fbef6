package process

import (
	"iter"
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
)

// Line is one step of the timeline: its time, and the part as it ends.
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

// Timeline gives every step of every part, in file order, on one clock. Parts
// used in or on another are scheduled back from the step that needs them.
func (s *Sheet) Timeline() []Line {
	begins := s.schedule()
	var out []Line
	for _, fp := range s.Formula.Parts {
		p := s.Part(fp)
		record := p.Record()
		ferments := p.Strain() != "none" && p.TotalFlour().Hi > 0
		for i := range record.Stages {
			st := &record.Stages[i]
			l := Line{
				Part:     fp,
				Step:     st.Step,
				StartH:   begins[fp.Serial] + st.StartH.Mid(),
				EndH:     begins[fp.Serial] + st.EndH.Mid(),
				Timed:    st.Step.Time.Set,
				Measured: st.Measured || st.RiseMeasured,
				Bowl:     st.AssumedBowl,
			}
			l.Ambient = figure.Absent("", st.Step.Place)
			if st.HasAmbient {
				l.Ambient = figure.ValueOf(st.Ambient)
			} else if st.Step.At.Set {
				l.Ambient = figure.ValueOf(st.Step.At.Interval)
			}
			l.Core = Lacking(st)
			l.Mean, l.Hours = l.Core, l.Core
			if st.Known {
				l.Core, l.Mean = measuredValue(
					st.Core,
					st.Measured,
				), measuredValue(
					st.Mean,
					st.Measured,
				)
				if ferments && st.Hours != (figure.Estimate{}) {
					l.Hours = st.Hours.Value()
				}
			}
			out = append(out, l)
		}
	}
	return out
}

// schedule gives the hour at which each part begins: a part ends when another
// needs it. The earliest begins at 0.
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

// Hours is the longest path through the parts. A part starts when its
// ingredients are ready, and waits at a fill, wash or brush for the
// part used.
func (s *Sheet) Hours() Value {
	ready := make([]Interval, len(s.parts))
	var untimed *formula.Step
	later := func(a, b Interval) Interval {
		return figure.Between(max(a.Lo, b.Lo), max(a.Hi, b.Hi))
	}
	end := Interval{}
	for _, p := range s.Formula.Order {
		t := Interval{}
		for _, in := range p.Ingredients {
			if in.Of != nil {
				t = later(t, ready[in.Of.Serial])
			}
		}
		for _, step := range p.Steps {
			if step.Uses != nil {
				t = later(t, ready[step.Uses.Serial])
			}
			switch {
			case step.Time.Set:
				t = t.Add(step.Time.Interval)
			case step.Verb.NeedsTime():
				untimed = step
				t.Hi = math.Inf(1)
			}
		}
		ready[p.Serial] = t
		end = later(end, t)
	}
	v := figure.ValueOf(end.Scale(1.0 / 60))
	if untimed != nil {
		v.Need = &figure.Need{What: "the time of this " + untimed.Verb.Name, Place: untimed.Place}
	}
	return v
}

// HandsOn sums the steps that need hands, h.
func (s *Sheet) HandsOn() Value {
	sum := Interval{}
	for _, p := range s.Formula.Parts {
		for _, step := range p.Steps {
			if !step.Verb.Attended() {
				continue
			}
			if step.Time.Set {
				sum = sum.Add(step.Time.Interval)
			} else {
				sum.Hi = math.Inf(1)
			}
		}
	}
	return figure.ValueOf(sum.Scale(1.0 / 60))
}

// HoursToHeat is the time from a step of a part until it is baked or
// cooked, in every part that takes it, h. ok is false where it is not.
func (s *Sheet) HoursToHeat(p *formula.Part, from int) (h Interval, ok bool) {
	own := Interval{}
	for _, step := range p.Steps[from:] {
		switch {
		case step.HeatsAll():
			return own, true
		case step.Time.Set:
			own = own.Add(step.Time.Interval.Scale(1.0 / 60))
		case step.Verb.Waits():
			own.Hi = math.Inf(1)
		}
	}
	for _, q := range s.Formula.Parts {
		for at := range usesOf(p, q) {
			later, heated := s.HoursToHeat(q, at)
			if !heated {
				return Interval{}, false
			}
			h, ok = figure.Between(max(h.Lo, later.Lo), max(h.Hi, later.Hi)), true
		}
	}
	return own.Add(h), ok
}

// usesOf gives the steps from which a part is in or on another: the first for
// an ingredient, wherever it goes in.
func usesOf(p, q *formula.Part) iter.Seq[int] {
	return func(yield func(int) bool) {
		taken := func(in *formula.Ingredient) bool { return in.Of == p }
		if slices.ContainsFunc(q.Ingredients, taken) && !yield(0) {
			return
		}
		for i, step := range q.Steps {
			if step.Uses == p && !yield(i) {
				return
			}
		}
	}
}
