package levers

import (
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

func init() { register(batchSize{}) }

// batchSize is the size of a dough with what is spread on it, in
// percent of what is written. What the formula makes goes with it, so
// the baker decides.
type batchSize struct {
	ownFigure
	usualUnknown
	nothingInstead
	taste
	listsShare
}

func (batchSize) Names() []string { return []string{"batch"} }

func (batchSize) Means() string {
	return "every amount of the formula and what it makes, by one factor"
}

func (batchSize) Traits() Traits {
	return Traits{SeveralValues, OfWritten, Searched, Practice, Written, First}
}

func (batchSize) Find(q *Query) []*Lever {
	if p := q.Subject.Part; p != nil && p.Kind == formula.Dough {
		return []*Lever{{Part: p.Serial}}
	}
	return nil
}

func (batchSize) Grid(*Lever, *Query) Grid { return Grid{"%", 1, 5, 20, 300, Coarse{}} }

func (batchSize) Value(*Lever, *formula.Formula) Setting { return At(asWritten) }

// Edit changes the amounts of all parts of the batch, and what the
// formula makes. Percentages of the flour follow without an edit.
func (batchSize) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	factor := to.Number / asWritten
	var out []source.Edit
	for _, p := range batchParts(t.Formula.Parts[l.Part]) {
		var list []*formula.Ingredient
		for _, in := range p.Ingredients {
			if in.Amount.Kind != quantity.Percent {
				list = append(list, in)
			}
		}
		edits, err := scaled(t, list, factor)
		if err != nil {
			return nil, err
		}
		out = append(out, edits...)
	}
	if makes := t.Formula.Makes; !makes.Each.Set && !makes.Total.Set {
		return out, nil
	}
	g := yieldGrid(t.Formula)
	yields, err := yield{}.Edit(
		&Lever{Grid: g},
		t,
		At(toStep(yieldValue(t.Formula)*factor, g.Round)),
	)
	return append(out, yields...), err
}

// batchParts lists a dough, what is spread on it, and the parts that it
// takes in whole.
func batchParts(dough *formula.Part) []*formula.Part {
	parts := []*formula.Part{dough}
	for _, s := range dough.Steps {
		if s.Uses != nil && s.Verb.Fills() {
			parts = append(parts, s.Uses)
		}
	}
	for _, in := range dough.Ingredients {
		if in.Of != nil && in.Amount.All {
			parts = append(parts, in.Of)
		}
	}
	return parts
}

func (batchSize) Writes(*Lever) []Field {
	return []Field{{Amount, anywhere, anywhere}, {Yield, anywhere, anywhere}}
}

func (b batchSize) Scales(l *Lever) []Field { return b.Writes(l) }

func (batchSize) Cost(l *Lever, to Setting) float64 { return everyLine * costOfRatio{}.Cost(l, to) }

func (batchSize) Noun(l *Lever, f *formula.Formula) string {
	return "size of the batch of " + partName(l, f)
}
