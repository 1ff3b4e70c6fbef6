package facts

import (
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/quantity"
)

// WithoutError is the span of a subject's figure without the model's
// own error: its middle where each input is one figure, else what the
// formula leaves open. So it holds the middle of each sharper text, and
// knowing less never narrows it.
func (s *Sheet) WithoutError(f *Fact, x Subject) Interval {
	v := s.Value(f, x)
	middle := figure.Point(v.Mid)
	if v.Origin == figure.ByModel && !v.Absent && middle.IsFinite() &&
		v.Lo <= v.Mid && v.Mid <= v.Hi && s.isSharp(x) {
		if moved, ok := s.overKitchen(f, x, middle); ok {
			return moved
		}
	}
	return v.WithoutFactor()
}

// overKitchen widens a figure's middle by how far each range of the
// kitchen moves it; not ok where an end has no middle.
func (s *Sheet) overKitchen(f *Fact, x Subject, middle Interval) (out Interval, ok bool) {
	out, sp := middle, &s.spanning
	for i := range sp.kitchen {
		below, above := 0.0, 0.0
		for _, r := range sp.readings {
			if r.of != len(sp.spans)+i {
				continue
			}
			r.turn(s)
			at := r.sheet.Value(f, r.in(x)).Mid - middle.Lo
			if !figure.Point(at).IsFinite() {
				return out, false
			}
			below, above = min(below, at), max(above, at)
		}
		out = Interval{Lo: out.Lo + below, Hi: out.Hi + above}
	}
	return out, true
}

// isSharp reports whether the formula leaves none of a subject's
// inputs open.
func (s *Sheet) isSharp(x Subject) bool {
	s.spread()
	for i := range s.spanning.kitchen { // the other figures of a kitchen are asked for step by step
		if one := &s.spanning.kitchen[i]; one.IsTin || one.Open {
			return false
		}
	}
	switch x.On {
	case OnPart:
		return s.isPartSharp(x.Part)
	case OnStep:
		return s.isPartSharp(x.Step.Part)
	case OnFormula:
		for _, p := range s.Formula.Parts {
			if !s.isPartSharp(p) {
				return false
			}
		}
		return true
	}
	return false
}

// mostEnds is how many ranges AtEachEnd takes apart: of more, a subject
// does not pass.
const mostEnds = 3

// AtEachEnd reports whether a subject passes where the steps that its
// part goes through each give one setting, else at every end of their
// ranges together. Open settings do not pass. See isWritten.
func (s *Sheet) AtEachEnd(x Subject, untilHeat bool, passes func(*Sheet, Subject) bool) bool {
	var spans []formula.Span
	if s.Pinned == nil && x.On == OnPart {
		spans = slices.DeleteFunc(s.Formula.Spans(), func(span formula.Span) bool {
			return !s.goesThrough(x.Part, span, untilHeat)
		})
	}
	if len(spans) == 0 {
		return s.isWritten(x, untilHeat) && passes(s, x)
	}
	if len(spans) > mostEnds ||
		slices.ContainsFunc(spans, func(span formula.Span) bool { return span.Open }) {
		return false
	}
	total := 1
	for _, span := range spans {
		total *= len(span.Readings)
	}
	for n := range total {
		r := version{sheet: s.beside(), formula: s.Formula.Copy()}
		for _, span := range spans {
			size := len(span.Readings)
			span.Readings[n%size](r.formula)
			n /= size
		}
		r.sheet.Reset(r.formula, s.Kitchen)
		if y := r.in(x); !r.sheet.isWritten(y, untilHeat) || !passes(r.sheet, y) {
			return false
		}
	}
	return true
}

// goesThrough reports whether a span is that of a step which a part
// goes through in others, or that makes the other as warm as it is then.
func (s *Sheet) goesThrough(p *formula.Part, span formula.Span, untilHeat bool) bool {
	for _, q := range s.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses != p {
				continue
			}
			for _, other := range q.Steps[:max(i+1, lastStep(q, untilHeat))] {
				if other.Place == span.Place {
					return true
				}
			}
			if s.goesThrough(q, span, untilHeat) {
				return true
			}
		}
	}
	return false
}

// lastStep is the number of a part's steps, or of those up to its last heat.
func lastStep(p *formula.Part, untilHeat bool) int {
	end := len(p.Steps)
	for untilHeat && end > 0 && !p.Steps[end-1].Verb.HeatsThrough() {
		end--
	}
	return end
}

// isWritten reports whether the steps that a subject's part goes
// through in other parts each give one time and one place, and none
// of its own is an ice bath: no trial of these is published, so their
// careful end counts for what grows in a part. untilHeat leaves out
// what follows the last heat. Other subjects need nothing: the hours
// of a cooling in ice have a middle as those of any cooling.
func (s *Sheet) isWritten(x Subject, untilHeat bool) bool {
	if x.On != OnPart {
		return true
	}
	for _, q := range s.Part(x.Part).Contents() {
		if slices.ContainsFunc(q.Steps, (*formula.Step).Iced) {
			return false
		}
	}
	for _, q := range s.Formula.Parts {
		for i, step := range q.Steps {
			if step.Uses == x.Part && !(s.areStepsWritten(q, i+1, untilHeat) &&
				s.isWritten(Subject{On: OnPart, Part: q}, untilHeat)) {
				return false
			}
		}
	}
	return true
}

func (s *Sheet) isPartSharp(p *formula.Part) bool {
	for _, q := range s.Part(p).Contents() {
		for _, in := range q.Ingredients {
			if !sharp(in) || in.Temp.Set && !in.Temp.IsPoint() || len(in.Open) > 0 ||
				in.DE != nil && !in.DE.IsPoint() || in.Item != nil && len(in.Item.Readings) > 0 {
				return false
			}
			if h, ok := in.Starter(); ok && h.Low != h.High {
				return false
			}
		}
		if !s.areStepsSharp(q.Part) {
			return false
		}
	}
	return true
}

// areStepsSharp reports whether each step of a part has one time, place
// and shape, and each mix one end temperature.
func (s *Sheet) areStepsSharp(p *formula.Part) bool {
	for _, step := range p.Steps {
		if step.Uses != nil && step.Verb.Fills() && !s.isPartSharp(step.Uses) {
			return false
		}
		if step.Verb.Mixes() && step.Reading == nil && !step.To.Set && !cooksLater(step) {
			return false
		}
	}
	return s.areStepsWritten(p, 0, false)
}

// areStepsWritten is areStepsSharp of the steps from one on, whatever
// the end temperature of a mix, to the last heat where that is asked.
func (s *Sheet) areStepsWritten(p *formula.Part, from int, untilHeat bool) bool {
	record := s.Part(p).Record()
	for i := from; i < lastStep(p, untilHeat); i++ {
		step := p.Steps[i]
		if !step.IsSettled() {
			return false
		}
		if step.Time.Set && !step.Time.IsPoint() || !step.Time.Set && step.Verb.Waits() {
			return false
		}
		for _, g := range []formula.Given{step.To, step.Core, step.At} {
			if g.Set && !g.IsPoint() && !step.HeatIsOfWay() {
				return false
			}
		}
		if step.Verb.Divides() && step.Measure.Set && step.Measure.Kind == quantity.Mass &&
			!step.Measure.IsPoint() {
			return false
		}
		if i >= len(record.Stages) {
			return false
		}
		if st := &record.Stages[i]; !st.Known || st.AssumedBowl || !s.isPlaceSharp(step, st) {
			return false
		}
	}
	return true
}

// isPlaceSharp reports whether formula and kitchen give one temperature
// around a step. The span of an ice bath or a blast chiller is its own.
func (s *Sheet) isPlaceSharp(step *formula.Step, st *history.Stage) bool {
	if given, ok := s.Kitchen.At(step.Where.String()); ok {
		return given.IsPoint()
	}
	_, own := step.OwnAir()
	return step.Where != nil || own || !st.HasAmbient || st.Ambient.IsPoint()
}

// cooksLater reports whether a later step brings all of the part to one
// temperature, so that the mixed one no longer counts.
func cooksLater(step *formula.Step) bool {
	for _, later := range step.Part.Steps[step.Index+1:] {
		if later.Verb.Cooks() && later.To.Set && later.HeatsAll() {
			return true
		}
	}
	return false
}
