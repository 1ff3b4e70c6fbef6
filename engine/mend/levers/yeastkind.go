package levers

import (
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

func init() { register(yeastKind{}) }

// yeastKind is the kind of a yeast, a word. It replaces active dry
// yeast by another kind, for as much gas as before.
type yeastKind struct {
	ownFigure
	usualUnknown
	nothingInstead
	taste
	listsEdits
}

func (yeastKind) Names() []string { return []string{"yeast.kind"} }

func (yeastKind) Means() string { return "the kind of yeast, for as much gas" }

func (yeastKind) Traits() Traits {
	return Traits{SeveralValues, Absolute, ByRule, Practice, Written, First}
}

// Find takes active dry yeast that is weighed: a spoon of another kind
// weighs something else.
func (yeastKind) Find(q *Query) []*Lever {
	var out []*formula.Ingredient
	for _, in := range yeasts(q) {
		if in.Item.YeastKind == "active dry" && in.Amount.Set && in.Amount.Kind != quantity.Volume {
			out = append(out, in)
		}
	}
	return onIngredients(out)
}

// Grid is that of the yeast's amount, which changes with the kind.
func (yeastKind) Grid(l *Lever, q *Query) Grid { return amount{}.Grid(l, q) }

func (yeastKind) Value(l *Lever, f *formula.Formula) Setting {
	return Setting{Word: f.Parts[l.Part].Ingredients[l.Index].Item.YeastKind}
}

// Edit renames the yeast and writes the amount that counts the same:
// active dry yeast counts three quarters of instant.
func (yeastKind) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	in, err := l.ingredient(t.Formula)
	if err != nil {
		return nil, err
	}
	renamed, err := t.Rename(in, to.Word+" yeast")
	if err != nil {
		return nil, err
	}
	unit := in.Amount.Unit
	as := inBase(max(l.Step, l.onGrid(inUnit(in.Amount.Hi*in.Item.Yeast, unit))), unit)
	weighed, err := t.Amount(in, in.Amount.Written(as, as))
	return []source.Edit{renamed, weighed}, err
}

func (yeastKind) Writes(l *Lever) []Field {
	return []Field{{Name, l.Part, l.Index}, {Amount, l.Part, l.Index}}
}

func (yeastKind) Scales(l *Lever) []Field { return []Field{{Amount, l.Part, l.Index}} }

func (yeastKind) Cost(*Lever, Setting) float64 { return costOfPurchase }

func (yeastKind) Noun(l *Lever, f *formula.Formula) string { return ofIngredient(l, f) }
