package levers

import (
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

func init() { register(stepMeasure{}) }

// stepMeasure is a verb's own length or mass: the thickness of a sheet,
// the weight of a piece.
type stepMeasure struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	costOfRatio
	decided
	listsEdits
}

func (stepMeasure) Names() []string { return stepNames("measure", takesMeasure) }

// takesMeasure reports whether a verb's own value can be a length or
// a mass.
func takesMeasure(v *formula.Verb) bool {
	return v.MeasuredIn(quantity.Length) || v.MeasuredIn(quantity.Mass)
}

func (stepMeasure) Means() string { return "the thickness of a sheet, the weight of a piece" }

func (stepMeasure) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Written, First}
}

func (stepMeasure) Find(q *Query) []*Lever {
	return onSteps(q, func(s *formula.Step) bool {
		kind := s.Measure.Kind
		return s.Measure.Set && (kind == quantity.Length || kind == quantity.Mass)
	})
}

// Grid bounds a measure by four times what is written. Pieces are
// weighed to the gram.
func (stepMeasure) Grid(l *Lever, q *Query) Grid {
	g := l.written(q.Formula).Measure
	x := inUnit(g.Hi, g.Unit)
	step := fineStep(g.Unit, x, 1)
	return Grid{g.Unit, step, roundStep(g.Unit, x, step), step, 4 * x, Coarse{}}
}

func (stepMeasure) Value(l *Lever, f *formula.Formula) Setting {
	return At(inUnit(l.written(f).Measure.Hi, l.Unit))
}

func (stepMeasure) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	x := inBase(to.Number, l.Unit)
	return singleEdit(t.Main(s, s.Measure.Written(x, x)))
}

func (stepMeasure) Writes(l *Lever) []Field { return []Field{{Measure, l.Part, l.Index}} }

func (stepMeasure) Noun(l *Lever, f *formula.Formula) string { return ofStep(l, f) }
