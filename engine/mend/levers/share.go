package levers

import (
	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(share{}) }

// share is all ingredients of a class in a part, in percent of what
// is written.
type share struct {
	classFigure
	nothingInstead
	decided
	listsShare
}

// Names are the classes.
func (share) Names() []string { return classNames(everyClass) }

func (share) Means() string { return "all ingredients of a class in the part, by one factor" }

func (share) Traits() Traits {
	return Traits{SeveralValues, OfWritten, Searched, Practice, Written, Last}
}

// Find gives one lever where at least two ingredients of the class have
// an amount.
func (share) Find(q *Query) []*Lever {
	list := classNamed(q.Name).ingredients(q)
	set := 0
	for _, in := range list {
		if in.Amount.Set {
			set++
		}
	}
	if set < 2 {
		return nil
	}
	return []*Lever{{Part: list[0].Part.Serial, Class: q.Name}}
}

func (share) Grid(*Lever, *Query) Grid { return Grid{"%", 1, 5, 10, 300, Coarse{}} }

func (share) Value(*Lever, *formula.Formula) Setting { return At(asWritten) }

func (share) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	return scaled(t, classNamed(l.Class).inPart(t.Formula.Parts[l.Part]), to.Number/asWritten)
}

func (share) Writes(l *Lever) []Field { return []Field{{Amount, l.Part, anywhere}} }

func (share) Scales(l *Lever) []Field { return []Field{{Amount, l.Part, anywhere}} }

func (share) Cost(l *Lever, to Setting) float64 { return everyLine * costOfRatio{}.Cost(l, to) }

func (share) Noun(l *Lever, f *formula.Formula) string {
	return "all " + l.Class + " in " + partName(l, f)
}
