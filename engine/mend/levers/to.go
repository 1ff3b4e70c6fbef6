package levers

import (
	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(ofPart) }

// ofPart is the temperature that a step brings a part to.
var ofPart = stepTarget{option: "to", means: "the temperature that a step is to reach"}

// stepTarget is a temperature that a step aims at, of the part or of its core.
type stepTarget struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	costOfDegrees
	decided
	listsEdits

	option, means string
	core          bool // of the core, and not of the part
}

func (k stepTarget) given(s *formula.Step) formula.Given {
	if k.core {
		return s.Core
	}
	return s.To
}

func (k stepTarget) Names() []string { return stepNames(k.option, takes(k.option)) }

func (k stepTarget) Means() string { return k.means }

func (stepTarget) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Wish, Written, First}
}

// Find takes a step without a written target only where the rule computes it.
func (k stepTarget) Find(q *Query) []*Lever {
	return onSteps(q, func(s *formula.Step) bool {
		return k.given(s).Set || q.Computed && takes(k.option)(s.Verb)
	})
}

func (k stepTarget) Grid(l *Lever, q *Query) Grid {
	return degreeGrid(k.given(l.written(q.Formula)))
}

func (k stepTarget) Value(l *Lever, f *formula.Formula) Setting {
	return givenDegrees(k.given(l.written(f)), l.Unit)
}

func (k stepTarget) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Step(s, k.option, degreesText(k.given(s), inBase(to.Number, l.Unit))))
}

func (k stepTarget) Writes(l *Lever) []Field {
	if k.core {
		return []Field{{Core, l.Part, l.Index}}
	}
	return []Field{{Target, l.Part, l.Index}}
}

func (k stepTarget) Noun(l *Lever, f *formula.Formula) string {
	return ofStep(l, f) + ", " + k.option
}
