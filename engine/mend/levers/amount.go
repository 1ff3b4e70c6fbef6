package levers

import (
	"forebake/engine/facts"
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
	list := classNamed(q.Name).ingredients(q)
	var out []*Lever
	for _, in := range list[:min(len(list), mostOfClass)] {
		if in.Amount.Set {
			out = append(out, onIngredient(in))
		}
	}
	return out
}

// How far a mend moves an amount, times what is written. What goes beyond is
// another formula, unless the rule computes it.
const (
	least     = 1.0 / 4
	mostMain  = 2.5 // of an ingredient that makes up mainShare of its part
	mostOther = 4   // of any other
	mostSlip  = 12  // of an amount that the rule computes: a point that slipped
	mainShare = 0.1 // of the mass of the part
	freeSteps = 20  // that any amount can be raised by
)

// Grid bounds an amount by a share of what is written.
func (amount) Grid(l *Lever, q *Query) Grid {
	in := q.Formula.Parts[l.Part].Ingredients[l.Index]
	a := in.Amount
	x := inUnit(a.Hi, a.Unit)
	step := fineStep(a.Unit, x, q.Kitchen.Scale.Mid())
	low, most := least, float64(mostOther)
	switch mass := in.Part.MassG.Mid(); {
	case q.Computed:
		low, most = 1.0/mostSlip, mostSlip
	case mass > 0 && in.Grams.Grams(in.Part.FlourG).Mid() > mainShare*mass:
		most = mostMain
	}
	high := max(most*x, freeSteps*step)
	return Grid{a.Unit, step, roundStep(a.Unit, x, step), max(step, low*x), high, Coarse{}}
}

// Figure is in grams where a rule asks for the ingredient that it looks at.
func (amount) Figure(l *Lever) Figure {
	if l.Asked != ownName {
		return classFigure{}.Figure(l)
	}
	return func(_ *facts.Sheet, f *formula.Formula) (float64, bool) {
		in := f.Parts[l.Part].Ingredients[l.Index]
		x := in.Grams.Grams(in.Part.FlourG)
		return x.Mid(), x.IsFinite()
	}
}

func (amount) Value(l *Lever, f *formula.Formula) Setting {
	return At(inUnit(f.Parts[l.Part].Ingredients[l.Index].Amount.Hi, l.Unit))
}

func (amount) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	in, err := l.ingredient(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Amount(in, amountText(in.Amount, l.Grid, to.Number)))
}

func (amount) Writes(l *Lever) []Field { return []Field{{Amount, l.Part, l.Index}} }

func (amount) Noun(l *Lever, f *formula.Formula) string { return ofIngredient(l, f) }
