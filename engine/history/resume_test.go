package history_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
)

// apart reports whether two estimates differ by more than the walk's
// cache of modes explains: it merges Biot numbers that differ by 1e-7.
func apart(x, y figure.Estimate) bool {
	const by = 1e-5
	return math.Abs(x.Low-y.Low) > by || math.Abs(x.Mid-y.Mid) > by || math.Abs(x.High-y.High) > by
}

// both takes each reading of a span together with the last one of the
// span before: the steps that two readings change alike count as one.
func both(spans []formula.Span, i int) (list []formula.Narrowing) {
	if i == 0 {
		return nil
	}
	before := spans[i-1].Readings
	for _, narrow := range spans[i].Readings {
		list = append(list, func(f *formula.Formula) {
			before[len(before)-1](f)
			narrow(f)
		})
	}
	return list
}

// A ranged reading followed on from a known state gives the same as
// from the beginning, with as many waits.
func TestReadingsFollowOn(t *testing.T) {
	readings := 0
	rapid.Check(t, func(t *rapid.T) {
		k := drawSketch(t, only{})
		s := k.setup(t)
		s.Trace, s.TraceBaked = rapid.Bool().Draw(t, "trace"), rapid.Bool().Draw(t, "baked")
		var f history.Simulator
		f.Follow(s)
		spans := s.Part.Formula.Spans()
		for i, span := range spans {
			for _, narrow := range append(span.Readings, both(spans, i)...) {
				readings++
				one := s
				made := s.Part.Formula.Copy()
				narrow(made)
				one.Part = made.Parts[0]
				var fresh history.Simulator
				before := f.Waits
				again, want := f.Follow(one), fresh.Follow(one)
				if f.Waits-before != fresh.Waits {
					t.Fatalf("%d waits, then %d", fresh.Waits, f.Waits-before)
				}
				for i := range want.Stages {
					a, b := &again.Stages[i], &want.Stages[i]
					if a.Step != b.Step || a.Known != b.Known || a.Missing != b.Missing ||
						a.MissingAt != b.MissingAt || a.StartH != b.StartH || a.EndH != b.EndH ||
						apart(a.Core, b.Core) || apart(a.Mean, b.Mean) ||
						apart(a.CoreMax, b.CoreMax) || apart(a.Hours, b.Hours) ||
						apart(a.MinutesToCore, b.MinutesToCore) ||
						len(a.Trace[0]) != len(b.Trace[0]) || again.Rise != want.Rise {
						t.Fatalf("%s, stage %d: %+v, then %+v", k.text(), i, *b, *a)
					}
					at := a.Step
					if !at.Verb.Waits() || !at.Time.Set {
						continue
					}
					x, ok1 := f.TimeTo(one, at, 20)
					y, ok2 := fresh.TimeTo(one, at, 20)
					if ok1 != ok2 || ok1 && apart(x, y) && !math.IsInf(x.High, 1) {
						t.Fatalf("%s, stage %d: 20 C after %v h, then %v h", k.text(), i, y, x)
					}
				}
			}
		}
	})
	if readings < 100 {
		t.Errorf("only %d readings of ranges", readings)
	}
}
