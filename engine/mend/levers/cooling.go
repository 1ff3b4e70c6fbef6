package levers

import (
	"fmt"

	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(coolingStep{}) }

// coolingStep is a cooling on a tray at room temperature that a filling
// lacks, min. A step more is for the baker to decide.
type coolingStep struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	taste
	listsEdits
}

func (coolingStep) Names() []string { return []string{formula.Cool.Name + ".time"} }

func (coolingStep) Means() string { return "a cooling of the part put on that is missing" }

func (coolingStep) Traits() Traits {
	return Traits{SeveralValues, Absolute, Searched, Practice, Added, First}
}

// Find takes the part that a step puts on, where nothing cools it. The
// new step comes last.
func (coolingStep) Find(q *Query) []*Lever {
	x := q.Subject
	if x.Part == nil || x.Step == nil || x.Step.Uses == nil || len(meantSteps(q)) > 0 {
		return nil
	}
	put := x.Step.Uses
	if len(put.Steps) == 0 {
		return nil
	}
	return []*Lever{onStep(put.Steps[len(put.Steps)-1])}
}

func (coolingStep) Grid(*Lever, *Query) Grid {
	return Grid{"min", roundMin, roundMin, roundMin, longestMin, Coarse{}}
}

// Value is the time of a cooling behind the lever's step; 0 while there
// is none.
func (coolingStep) Value(l *Lever, f *formula.Formula) Setting {
	steps := f.Parts[l.Part].Steps
	if next := l.Index + 1; next < len(steps) && cools(steps[next].Verb) {
		return At(steps[next].Time.Hi)
	}
	return At(0)
}

// trayMM is the depth of the tray, mm.
const trayMM = 15

func (coolingStep) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.AddStep(s,
		fmt.Sprintf("{ %s = \"%s min\", at = \"room\", as = \"tray %d mm\" }",
			formula.Cool.Name, plain(to.Number), trayMM)))
}

func (coolingStep) Writes(l *Lever) []Field { return []Field{{NewStep, l.Part, anywhere}} }

func (coolingStep) Cost(*Lever, Setting) float64 { return costOfEntry }

func (coolingStep) Noun(l *Lever, f *formula.Formula) string {
	return "a cooling of " + partName(l, f)
}
