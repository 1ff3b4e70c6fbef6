package levers

import (
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

func init() { register(addition{}) }

// addition is an ingredient that a part lacks, in percent or grams as
// the part is written.
type addition struct {
	classFigure
	nothingInstead
	scalesNothing
	listsEdits
}

// Names are the classes of which something can be added.
func (addition) Names() []string {
	return classNames(func(c *class) bool { return c.missing.add != "" })
}

func (addition) Means() string {
	return "an ingredient that is missing: the one of its class that a baker would add"
}

func (addition) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Practice, Added, First}
}

func (addition) Find(q *Query) []*Lever {
	p, c := q.Subject.Part, classNamed(q.Name)
	if p == nil || len(c.ingredients(q)) > 0 {
		return nil
	}
	return []*Lever{{Part: p.Serial, Class: c.name, Item: c.missing.add}}
}

// Grid bounds an addition by 30 % of the flour, or of the part's mass
// but at least 10 g.
func (addition) Grid(l *Lever, q *Query) Grid {
	p := q.Formula.Parts[l.Part]
	unit, high := "g", max(10, p.MassG.Mid()*0.3)
	for _, in := range p.Ingredients {
		if in.Amount.Set && in.Amount.Kind == quantity.Percent {
			unit, high = "%", 30
		}
	}
	step := fineStep(unit, 10, q.Kitchen.Scale.Mid())
	return Grid{unit, step, roundStep(unit, 10, step), step, high, Coarse{}}
}

// Value is the amount of the added ingredient; 0 while it is missing.
func (addition) Value(l *Lever, f *formula.Formula) Setting {
	for _, in := range f.Parts[l.Part].Ingredients {
		if in.Name == l.Item {
			return At(inUnit(in.Amount.Hi, l.Unit))
		}
	}
	return At(0)
}

func (addition) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	return singleEdit(t.Add(t.Formula.Parts[l.Part], l.Item, plain(to.Number)+" "+l.Unit))
}

func (addition) Writes(l *Lever) []Field { return []Field{{Amount, l.Part, anywhere}} }

func (addition) Cost(*Lever, Setting) float64 { return costOfEntry }

// ForBaker follows the class: a thickener is a matter of taste, salt
// is not.
func (addition) ForBaker(l *Lever) bool { return classNamed(l.Class).missing.taste }

func (addition) Noun(l *Lever, f *formula.Formula) string {
	return l.Item + " in " + partName(l, f)
}
