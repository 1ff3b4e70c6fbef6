package levers

import (
	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(amount{}) }

// amount is the amount of one ingredient, in the unit that it is written in.
type amount struct {
	classFigure
	nothingInstead
	scalesNothing
	costOfRatio
	decided
	listsEdits
}

// ownName asks for the amount of the ingredient that a rule looks at.
const ownName = "amount"

// Names are "amount" and every class.
func (amount) Names() []string { return append([]string{ownName}, classNames(everyClass)...) }

func (amount) Means() string {
	return "the amount of one ingredient, in the unit in which it is written"
}

func (amount) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Written, First}
}

// mostOfClass is how many ingredients of a class are tried, the heaviest first.
const mostOfClass = 2

func (amount) Find(q *Query) []*Lever {
	if q.Name == ownName {
		if in := q.Subject.Ingredient; in != nil && in.Amount.Set && !restates(q) {
			return []*Lever{onIngredient(in)}
		}
		return nil
	}
	list := classNamed(q.Name).meant(q)
	var out []*Lever
	for _, in := range list[:min(len(list), mostOfClass)] {
		if in.Amount.Set {
			out = append(out, onIngredient(in))
		}
	}
	return out
}

// Grid bounds an amount by four times what is written.
func (amount) Grid(l *Lever, q *Query) Grid {
	a := q.Formula.Parts[l.Part].Ingredients[l.Index].Amount
	x := inUnit(a.Hi, a.Unit)
	step := fineStep(a.Unit, x, q.Kitchen.Scale.Mid())
	return Grid{a.Unit, step, roundStep(a.Unit, x, step), step, max(4*x, 20*step), Coarse{}}
}

func (amount) Value(l *Lever, f *formula.Formula) Setting {
	return At(inUnit(f.Parts[l.Part].Ingredients[l.Index].Amount.Hi, l.Unit))
}

func (amount) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	in, err := l.ingredient(t.Formula)
	if err != nil {
		return nil, err
	}
	return one(t.Amount(in, amountText(in.Amount, l.Grid, to.Number)))
}

func (amount) Writes(l *Lever) []Field { return []Field{{Amount, l.Part, l.Index}} }

func (amount) Noun(l *Lever, f *formula.Formula) string { return ofIngredient(l, f) }
