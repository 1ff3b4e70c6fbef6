package levers

import (
	"fmt"
	"strings"

	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

func init() { register(yield{}) }

// yield is what the formula makes: the weight of a piece, else of all,
// else the number of pieces.
type yield struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	costOfRatio
	decided
	listsEdits
}

func (yield) Names() []string { return []string{"makes"} }

func (yield) Means() string { return "what the formula makes" }

func (yield) Traits() Traits {
	return Traits{OneValue, Absolute, Searched, Wish, Written, First}
}

func (yield) Find(q *Query) []*Lever {
	if makes := q.Formula.Makes; makes.Each.Set || makes.Total.Set || makes.Pieces > 0 {
		return []*Lever{{}}
	}
	return nil
}

// Grid bounds a yield by five times what is written.
func (yield) Grid(_ *Lever, q *Query) Grid { return yieldGrid(q.Formula) }

func yieldGrid(f *formula.Formula) Grid {
	unit := yieldUnit(f)
	x := yieldValue(f)
	step := fineStep(unit, x, 1)
	return Grid{unit, step, roundStep(unit, x, step), step, 5 * x, Coarse{}}
}

// yieldUnit is the unit in which a yield is written.
func yieldUnit(f *formula.Formula) string {
	switch {
	case f.Makes.Each.Set:
		return f.Makes.Each.Unit
	case f.Makes.Total.Set:
		return f.Makes.Total.Unit
	}
	return "pieces"
}

// yieldValue is the number of a yield in its unit.
func yieldValue(f *formula.Formula) float64 {
	switch {
	case f.Makes.Each.Set:
		return inUnit(f.Makes.Each.Hi, f.Makes.Each.Unit)
	case f.Makes.Total.Set:
		return inUnit(f.Makes.Total.Hi, f.Makes.Total.Unit)
	}
	return f.Makes.Pieces
}

func (yield) Value(_ *Lever, f *formula.Formula) Setting { return At(yieldValue(f)) }

func (yield) Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error) {
	text, err := yieldText(t.Formula, to.Number, l.Unit)
	if err != nil {
		return nil, err
	}
	return singleEdit(t.Makes(t.Formula, text))
}

// yieldText writes what a formula makes with another weight, or another
// number of pieces.
func yieldText(f *formula.Formula, x float64, unit string) (string, error) {
	switch makes := f.Makes; {
	case makes.Each.Set:
		pieces, _, ok := strings.Cut(writtenYield(f), " of ")
		if !ok {
			return "", fmt.Errorf("makes = %q has no weight of a piece", writtenYield(f))
		}
		return pieces + " of " + makes.Each.Written(inBase(x, unit), inBase(x, unit)), nil
	case makes.Total.Set:
		return makes.Total.Written(inBase(x, unit), inBase(x, unit)), nil
	}
	return piecesText(f, x), nil
}

// plurals turns the word for one piece into the word for several.
var plurals = [][2]string{
	{" loaf", " loaves"}, {" piece", " pieces"}, {" tin", " tins"}, {" bun", " buns"},
	{" ring", " rings"},
}

// PiecesText writes what a formula makes with another number of pieces,
// in the baker's words.
func PiecesText(f *formula.Formula, n float64) string { return piecesText(f, n) }

// piecesText writes what a formula makes with another number of pieces.
func piecesText(f *formula.Formula, n float64) string {
	rest := strings.TrimLeft(strings.TrimSpace(writtenYield(f)), "0123456789")
	if n > 1 && f.Makes.Pieces == 1 {
		for _, word := range plurals {
			if rest == word[0] || strings.HasPrefix(rest, word[0]+" ") {
				rest = word[1] + rest[len(word[0]):]
				break
			}
		}
	}
	if n == 1 && f.Makes.Pieces > 1 {
		for _, word := range plurals {
			if rest == word[1] || strings.HasPrefix(rest, word[1]+" ") {
				rest = word[0] + rest[len(word[1]):]
				break
			}
		}
	}
	return quantity.Plain(n) + rest
}

// writtenYield is the text of makes = "..." as the baker wrote it.
func writtenYield(f *formula.Formula) string {
	if f.Makes.Text != "" {
		return f.Makes.Text // "24 pieces" of "2 dozen"
	}
	at := f.Makes.Place
	return string(at.File.Text[at.Start:at.End])
}

func (yield) Writes(*Lever) []Field { return []Field{{Yield, anywhere, anywhere}} }

func (yield) Noun(*Lever, *formula.Formula) string { return "makes" }
