package levers

import (
	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(restated{}) }

// restated is an amount measured by spoon or cup, written in grams instead.
type restated struct {
	ownFigure
	usualUnknown
	scalesNothing
	decided
	listsEdits
}

// restates reports whether a query asks to write a volume as the mass that the
// rule computes.
func restates(q *Query) bool {
	in := q.Subject.Ingredient
	return q.Computed && in != nil && in.Amount.ByVolume()
}

func (restated) Names() []string { return []string{ownName} }

func (restated) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Written, First}
}

func (restated) Find(q *Query) []*Lever {
	if !restates(q) {
		return nil
	}
	return []*Lever{onIngredient(q.Subject.Ingredient)}
}

// heaviestG bounds a restated amount; no formula holds as much.
const heaviestG = 1e6

// Grid takes the step of the kitchen's scale for choosing too: a restatement
// moves no figure.
func (restated) Grid(l *Lever, q *Query) Grid {
	scale := q.Kitchen.Scale.Mid()
	x := q.Formula.Parts[l.Part].Ingredients[l.Index].Grams.FixedG.Mid()
	step := fineStep("g", x, scale)
	return Grid{"g", step, step, fineStep("g", 0, scale), heaviestG, Coarse{}}
}

// Value is what the amount weighs.
func (restated) Value(l *Lever, f *formula.Formula) Setting {
	return At(f.Parts[l.Part].Ingredients[l.Index].Grams.FixedG.Mid())
}

func (restated) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	in, err := l.ingredient(t.Formula)
	if err != nil {
		return nil, err
	}
	return one(t.Amount(in, plain(to.Number)+" g"))
}

func (restated) Writes(l *Lever) []Field { return []Field{{Amount, l.Part, l.Index}} }

func (restated) Cost(*Lever, Setting) float64 { return 0.05 }

func (restated) Noun(l *Lever, f *formula.Formula) string { return ofIngredient(l, f) }
