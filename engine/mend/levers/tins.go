package levers

import (
	"strings"

	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

func init() { register(tinCount{}) }

// tinCount is the number of tins that a dough goes into, and every
// count that goes with it. What the formula makes goes with it too, so
// the baker decides.
type tinCount struct {
	ownFigure
	usualUnknown
	costOfRatio
	taste
	listsEdits
}

func (tinCount) Names() []string { return []string{"tins"} }

func (tinCount) Means() string { return "the number of tins and of pieces" }

func (tinCount) Traits() Traits {
	return Traits{SeveralValues, Absolute, Searched, Practice, Written, First}
}

func (tinCount) Find(q *Query) []*Lever {
	if s := q.Subject.Step; s != nil && tinsOf(s) > 0 {
		return []*Lever{onStep(s)}
	}
	return nil
}

// dividesByCount reports whether a step cuts a dough into a number
// of pieces.
func dividesByCount(s *formula.Step) bool {
	return s.Verb.Divides() && s.Measure.Set && s.Measure.Kind == quantity.Count
}

// tinsOf is how many tins a pan step fills: as it says, or as many as
// the dough was divided into. It is 0 where neither is known.
func tinsOf(s *formula.Step) float64 {
	if s.Count != nil && s.Count.IsPoint() {
		return s.Count.Lo
	}
	if s.Pieces != nil {
		return 0
	}
	for _, d := range stepsBefore(s.Part, (*formula.Verb).Divides, s.Index) {
		if dividesByCount(d) && d.Measure.IsPoint() {
			return d.Measure.Lo
		}
	}
	return 0
}

func (tinCount) Grid(l *Lever, q *Query) Grid {
	return Grid{"pieces", 1, 1, 1, 4 * tinsOf(l.written(q.Formula)), Coarse{}}
}

func (tinCount) Value(l *Lever, f *formula.Formula) Setting { return At(tinsOf(l.written(f))) }

// Edit changes every count of the dough that is the number of tins.
// What the formula makes follows: more pieces, each lighter.
func (tinCount) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	pan, err := l.step(t.Formula)
	if err != nil {
		return nil, err
	}
	out, err := countEdits(t, pan.Part, l.Start, to.Number)
	if err != nil || t.Formula.Makes.Pieces != l.Start {
		return out, err
	}
	e, err := t.Makes(t.Formula, tinsYield(t.Formula, l.Start, to.Number))
	return append(out, e), err
}

// countEdits changes each count of a part's steps from one number
// to another.
func countEdits(t *Text, p *formula.Part, from, to float64) ([]source.Edit, error) {
	is := func(g *formula.Given) bool { return g != nil && g.IsPoint() && g.Lo == from }
	var out []source.Edit
	add := func(e source.Edit, err error) error {
		out = append(out, e)
		return err
	}
	for _, s := range p.Steps {
		if is(s.Count) {
			if err := add(t.Step(s, "count", s.Count.Written(to, to))); err != nil {
				return nil, err
			}
		}
		if dividesByCount(s) && is(&s.Measure) {
			if err := add(t.Main(s, s.Measure.Written(to, to))); err != nil {
				return nil, err
			}
		}
		if is(s.Pieces) {
			if err := add(t.Step(s, "pieces", s.Pieces.Written(to, to))); err != nil {
				return nil, err
			}
		}
	}
	return out, nil
}

// tinsYield writes what a formula makes with another number of pieces,
// of the same weight in all.
func tinsYield(f *formula.Formula, from, to float64) string {
	text := piecesText(f, to)
	if !f.Makes.Each.Set {
		return text
	}
	g := yieldGrid(f)
	each := inBase(toStep(yieldValue(f)*from/to, g.Round), g.Unit)
	_, weight, _ := strings.Cut(text, " of ")
	return strings.TrimSuffix(text, weight) + f.Makes.Each.Written(each, each)
}

func (tinCount) Writes(l *Lever) []Field {
	return []Field{
		{Count, l.Part, anywhere}, {Measure, l.Part, anywhere}, {Yield, anywhere, anywhere},
	}
}

func (tinCount) Scales(*Lever) []Field {
	return []Field{{Measure, anywhere, anywhere}, {Yield, anywhere, anywhere}}
}

// Instead leaves the size of the tin to the baker.
func (tinCount) Instead(*Query) string { return "use another tin, or other pieces" }

func (tinCount) Noun(l *Lever, f *formula.Formula) string { return ofStep(l, f) + ", tins" }
