package levers

import (
	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(stepTo{}) }

// stepTo is the temperature that a step brings a part to.
type stepTo struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	costOfDegrees
	decided
	listsEdits
}

func (stepTo) Names() []string { return stepNames("to", takes("to")) }

func (stepTo) Means() string { return "the temperature that a step is to reach" }

func (stepTo) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Wish, Written, First}
}

// Find takes a step without a to only where the rule computes it.
func (stepTo) Find(q *Query) []*Lever {
	return onSteps(q, func(s *formula.Step) bool {
		return s.To.Set || q.Computed && takes("to")(s.Verb)
	})
}

func (stepTo) Grid(l *Lever, q *Query) Grid { return degreeGrid(l.written(q.Formula).To) }

func (stepTo) Value(l *Lever, f *formula.Formula) Setting {
	return givenDegrees(l.written(f).To, l.Unit)
}

func (stepTo) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Step(s, "to", degreesText(s.To, inBase(to.Number, l.Unit))))
}

func (stepTo) Writes(l *Lever) []Field { return []Field{{Target, l.Part, l.Index}} }

func (stepTo) Noun(l *Lever, f *formula.Formula) string { return ofStep(l, f) + ", to" }
