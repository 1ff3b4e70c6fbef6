package levers

import (
	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(stepCore{}) }

// stepCore is the core temperature that a step ends at.
type stepCore struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	costOfDegrees
	decided
	listsEdits
}

func (stepCore) Names() []string { return stepNames("core", takes("core")) }

func (stepCore) Means() string { return "the core that a step is to reach" }

func (stepCore) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Wish, Written, First}
}

// Find takes a step without a core only where the rule computes it.
func (stepCore) Find(q *Query) []*Lever {
	return onSteps(q, func(s *formula.Step) bool {
		return s.Core.Set || q.Computed && takes("core")(s.Verb)
	})
}

func (stepCore) Grid(l *Lever, q *Query) Grid { return degreeGrid(l.written(q.Formula).Core) }

func (stepCore) Value(l *Lever, f *formula.Formula) Setting {
	return givenDegrees(l.written(f).Core, l.Unit)
}

func (stepCore) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Step(s, "core", degreesText(s.Core, inBase(to.Number, l.Unit))))
}

func (stepCore) Writes(l *Lever) []Field { return []Field{{Core, l.Part, l.Index}} }

func (stepCore) Noun(l *Lever, f *formula.Formula) string { return ofStep(l, f) + ", core" }
