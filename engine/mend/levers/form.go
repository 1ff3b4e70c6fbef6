package levers

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(stepForm{}) }

// stepForm is the thickness of a part at a step, mm.
type stepForm struct {
	ownFigure
	usualUnknown
	scalesNothing
	decided
	listsEdits
}

func (stepForm) Names() []string { return stepNames("as", takes("as")) }

func (stepForm) Means() string { return "how thick the part stands in a step" }

func (stepForm) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Written, First}
}

// Shapes of a part, as written in a formula.
var (
	flatShapes  = []string{"slab", "tray", "log"} // have a thickness
	fixedShapes = []string{"pieces", "brick"}     // no thickness changes them
)

// hasThickness reports whether a step says how thick the part is.
func hasThickness(s *formula.Step) bool {
	return s.Form != nil && slices.Contains(flatShapes, s.Form.Shape)
}

func (stepForm) Find(q *Query) []*Lever {
	return onSteps(q, func(s *formula.Step) bool {
		if s.Form == nil {
			return takes("as")(s.Verb)
		}
		return !slices.Contains(fixedShapes, s.Form.Shape)
	})
}

// Bounds of a thickness where the rule gives none, mm.
const (
	thinnestMM  = 5
	thickestMM  = 200
	roundFormMM = 150 // a tub or a ball, compared with a slab
)

func (stepForm) Grid(*Lever, *Query) Grid {
	return Grid{"mm", 1, 5, thinnestMM, thickestMM, Coarse{}}
}

func (stepForm) Value(l *Lever, f *formula.Formula) Setting {
	if s := l.written(f); hasThickness(s) {
		return At(s.Form.MM.Hi)
	}
	return At(roundFormMM)
}

// Edit turns a tub or a ball into a slab of dough, or a tray of anything else.
func (stepForm) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	if hasThickness(s) {
		return singleEdit(t.Step(s, "as", s.Form.Written(to.Number)))
	}
	shape := "slab"
	if kind := s.Part.Kind; kind != formula.Dough && kind != formula.Preferment {
		shape = "tray"
	}
	return singleEdit(t.Step(s, "as", fmt.Sprintf("%s %s mm", shape, plain(to.Number))))
}

// Cost is half that of a ratio: a flatter tray asks for room and no time.
func (stepForm) Cost(l *Lever, to Setting) float64 { return costOfRatio{}.Cost(l, to) / 2 }

func (stepForm) Writes(l *Lever) []Field { return []Field{{Form, l.Part, l.Index}} }

// Instead gives the step that lies flat in the cold.
func (stepForm) Instead(q *Query) string {
	asked, _, _ := strings.Cut(q.Name, ".")
	verb, known := formula.FindVerb(asked)
	if p := q.Subject.Part; known && verb.Retards() && len(meantSteps(q)) == 0 &&
		p != nil && len(p.Steps) > 0 {
		return "put it in the cold flat: " + chillText()
	}
	return ""
}

func (stepForm) Noun(l *Lever, f *formula.Formula) string { return ofStep(l, f) + ", as" }
