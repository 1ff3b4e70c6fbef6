package levers

import (
	"slices"

	"forebake/engine/formula"
	"forebake/engine/source"
)

// onIngredient gives the lever of an ingredient.
func onIngredient(in *formula.Ingredient) *Lever {
	return &Lever{Part: in.Part.Serial, Index: slices.Index(in.Part.Ingredients, in)}
}

// onIngredients gives the levers of some ingredients.
func onIngredients(list []*formula.Ingredient) []*Lever {
	var out []*Lever
	for _, in := range list {
		out = append(out, onIngredient(in))
	}
	return out
}

// ingredient finds the lever's ingredient; ErrGone where another change
// would add it.
func (l *Lever) ingredient(f *formula.Formula) (*formula.Ingredient, error) {
	if list := f.Parts[l.Part].Ingredients; l.Index < len(list) {
		return list[l.Index], nil
	}
	return nil, ErrGone
}

// ofIngredient names an ingredient with its part: "salt in
// dough \"d\"".
func ofIngredient(l *Lever, f *formula.Formula) string {
	return f.Parts[l.Part].Ingredients[l.Index].Name + " in " + partName(l, f)
}

// singleEdit gives a single edit as a list.
func singleEdit(e source.Edit, err error) ([]source.Edit, error) {
	if err != nil {
		return nil, err
	}
	return []source.Edit{e}, nil
}

// amountText writes an amount in the unit of a grid. Both ends of a
// range move by the same share.
func amountText(a formula.Amount, g Grid, x float64) string {
	high := inBase(x, g.Unit)
	low := high
	if a.Lo < a.Hi {
		moved := max(g.Step, g.onGrid(inUnit(a.Lo*high/a.Hi, g.Unit)))
		low = min(high, inBase(moved, g.Unit))
	}
	return a.Written(low, high)
}

// scaled changes several amounts by one factor, each rounded to the
// step of its own unit.
func scaled(t *Text, list []*formula.Ingredient, factor float64) ([]source.Edit, error) {
	var out []source.Edit
	for _, in := range list {
		a := in.Amount
		if !a.Set {
			continue
		}
		was := inUnit(a.Hi, a.Unit)
		g := Grid{Unit: a.Unit, Step: fineStep(a.Unit, was, 1)}
		e, err := t.Amount(in, amountText(a, g, max(g.Step, g.onGrid(was*factor))))
		if err != nil {
			return nil, err
		}
		if e.Old != e.New {
			out = append(out, e)
		}
	}
	return out, nil
}
