package levers

import (
	"fmt"
	"slices"

	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(chillingStep{}) }

// chillingStep is a time in the fridge on a tray that a filling lacks,
// min. A step more is for the baker to decide.
type chillingStep struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	taste
	listsEdits
}

func (chillingStep) Names() []string { return []string{formula.Cool.Name + ".time"} }

func (chillingStep) Means() string { return "a chill that is missing before the step" }

func (chillingStep) Traits() Traits {
	return Traits{SeveralValues, Absolute, Searched, Practice, Added, Last}
}

// Find takes the part that a step puts on, where its last step is not
// in the cold yet. The new step comes last.
func (chillingStep) Find(q *Query) []*Lever {
	x := q.Subject
	if x.Part == nil || x.Step == nil || x.Step.Uses == nil || len(x.Step.Uses.Steps) == 0 {
		return nil
	}
	last := x.Step.Uses.Steps[len(x.Step.Uses.Steps)-1]
	if last.Verb.Retards() {
		return nil
	}
	return []*Lever{onStep(last)}
}

// longestChillMin bounds the time on a tray in the fridge, min.
const longestChillMin = 4 * 60

func (chillingStep) Grid(*Lever, *Query) Grid {
	return Grid{"min", roundMin, roundMin, roundMin, longestChillMin, Coarse{}}
}

// Value is the time of a chill behind the lever's step; 0 while there
// is none.
func (chillingStep) Value(l *Lever, f *formula.Formula) Setting {
	steps := f.Parts[l.Part].Steps
	if next := l.Index + 1; next < len(steps) && steps[next].Verb.Retards() {
		return At(steps[next].Time.Hi)
	}
	return At(0)
}

func (chillingStep) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	s, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.AddStep(s, fmt.Sprintf(
		"{ %s = \"%s min\", at = \"fridge\", as = \"tray %d mm\", covered = true }",
		inTheCold().Name, plain(to.Number), trayMM)))
}

// inTheCold is the verb that puts a part in the fridge.
func inTheCold() *formula.Verb {
	return formula.Verbs[slices.IndexFunc(formula.Verbs, (*formula.Verb).Retards)]
}

func (chillingStep) Writes(l *Lever) []Field { return []Field{{NewStep, l.Part, anywhere}} }

func (chillingStep) Cost(*Lever, Setting) float64 { return costOfEntry }

func (chillingStep) Noun(l *Lever, f *formula.Formula) string {
	return "a tray in the fridge for " + partName(l, f)
}
