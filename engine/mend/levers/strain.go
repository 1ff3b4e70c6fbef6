package levers

import (
	"fmt"

	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(strain{}) }

// strain is the strain of a yeast: a word.
type strain struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	taste
}

func (strain) Names() []string { return []string{"yeast.strain"} }

func (strain) Means() string { return "the strain of the yeast" }

func (strain) Traits() Traits {
	return Traits{OneValue, Absolute, ByRule, Practice, Written, First}
}

func (strain) Find(q *Query) []*Lever { return onIngredients(yeasts(q)) }

// yeasts lists the yeasts of the subject's part.
func yeasts(q *Query) []*formula.Ingredient {
	if q.Subject.Part == nil {
		return nil
	}
	return (&class{member: isYeast}).inPart(q.Subject.Part)
}

// Grid is empty: a strain is a word.
func (strain) Grid(*Lever, *Query) Grid { return Grid{} }

func (strain) Value(l *Lever, f *formula.Formula) Setting {
	return Setting{Word: f.Parts[l.Part].Ingredients[l.Index].Strain}
}

func (strain) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	in, err := l.ingredient(t.Formula)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Option(in, "strain", to.Word))
}

func (strain) Writes(l *Lever) []Field { return []Field{{Strain, l.Part, l.Index}} }

func (strain) Cost(*Lever, Setting) float64 { return costOfPurchase }

func (strain) Noun(l *Lever, f *formula.Formula) string { return ofIngredient(l, f) }

// Describe gives the option that is added, with the line of the yeast.
func (strain) Describe(c *Change) string {
	l := c.Lever
	line := c.From.Parts[l.Part].Ingredients[l.Index].Place.Line()
	return fmt.Sprintf("%s: strain = %q (line %d)", l.Kind.Noun(l, c.From), c.To.Word, line)
}
