package levers

import (
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

func init() { register(stepTime{}) }

// stepTime is how long a step takes, min.
type stepTime struct {
	ownFigure
	usualUnknown
	scalesNothing
	costOfRatio
	decided
	listsEdits
}

func (stepTime) Names() []string { return stepNames("time", takesTime) }

// takesTime reports whether a verb has a time, as its own value or as an
// option.
func takesTime(v *formula.Verb) bool {
	return takes("time")(v) || v.MeasuredIn(quantity.Time)
}

func (stepTime) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Written, First}
}

func (stepTime) Find(q *Query) []*Lever {
	return onSteps(q, func(s *formula.Step) bool { return s.Time.Set })
}

// Steps and bounds of times, min.
const (
	roundMin   = 5
	shortMin   = 10      // below it a time is set by the minute
	shortEnds  = 15      // above it also a time that was short is set by 5 min
	longestMin = 24 * 60 // of a step that is made longer
)

func (stepTime) Grid(l *Lever, q *Query) Grid {
	x := l.written(q.Formula).Time.Hi
	longest := max(longestMin, 2*x)
	if x < shortMin {
		return Grid{"min", 1, 1, 1, longest, Coarse{shortEnds, roundMin}}
	}
	return Grid{"min", roundMin, roundMin, roundMin, longest, Coarse{}}
}

func (stepTime) Value(l *Lever, f *formula.Formula) Setting { return At(l.written(f).Time.Hi) }

// Edit moves both ends of a range by the same share.
func (stepTime) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	high := to.Number
	low := high
	if s.Time.Lo < s.Time.Hi {
		low = min(high, max(1, l.onGrid(s.Time.Lo*high/s.Time.Hi)))
	}
	return one(t.Time(s, s.Time.Written(low, high)))
}

func (stepTime) Writes(l *Lever) []Field { return []Field{{Time, l.Part, l.Index}} }

func (stepTime) Noun(l *Lever, f *formula.Formula) string { return ofStep(l, f) + ", time" }
