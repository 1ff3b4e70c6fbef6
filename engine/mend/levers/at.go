package levers

import (
	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(stepAt{}) }

// stepAt is the temperature around a step.
type stepAt struct {
	ownFigure
	usualUnknown
	scalesNothing
	decided
	listsEdits
}

func (stepAt) Names() []string { return stepNames("at", takes("at")) }

func (stepAt) Means() string { return "the temperature around a step" }

func (stepAt) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Written, First}
}

// Find leaves out steps at a named place, whose temperature is the kitchen's.
func (stepAt) Find(q *Query) []*Lever {
	return onSteps(q, func(s *formula.Step) bool { return s.At.Set && s.Where == nil })
}

func (stepAt) Grid(l *Lever, q *Query) Grid { return degreeGrid(l.written(q.Formula).At) }

func (stepAt) Value(l *Lever, f *formula.Formula) Setting {
	return givenDegrees(l.written(f).At, l.Unit)
}

func (stepAt) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Step(s, "at", degreesText(s.At, inBase(to.Number, l.Unit))))
}

// Cost is an eighth of the difference in K around a dough, which works
// half as fast again 5 K warmer. Bakers would rather give it time. An
// oven or hot fat is set without a thought, 60 K for the cost of 8.
func (stepAt) Cost(l *Lever, to Setting) float64 {
	const perTwenty, ofOven, hot = 20.0 / 8, 20.0 / 60, 100
	if inBase(l.Start, l.Unit) > hot {
		return ofOven * costOfDegrees{}.Cost(l, to)
	}
	return perTwenty * costOfDegrees{}.Cost(l, to)
}

func (stepAt) Writes(l *Lever) []Field { return []Field{{Ambient, l.Part, l.Index}} }

// Instead says how to leave a named place.
func (stepAt) Instead(q *Query) string {
	if s := q.Subject.Step; s != nil && s.Where != nil {
		return "find it another place: at = \"26 C\", or a place that house.hcl names"
	}
	return ""
}

func (stepAt) Noun(l *Lever, f *formula.Formula) string { return ofStep(l, f) + ", at" }
