package levers

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
)

// The types here are parts of a declaration that several kinds have in
// common, to be embedded.

// ownFigure is for kinds whose to and within are in the lever's
// own value.
type ownFigure struct{}

// Figure gives nil.
func (ownFigure) Figure(*Lever) Figure { return nil }

// usualUnknown is for kinds without a published range of their own.
type usualUnknown struct{}

// Usual gives false.
func (usualUnknown) Usual(*Lever, *formula.Formula) (figure.Estimate, bool) {
	return figure.Estimate{}, false
}

// nothingInstead is for kinds without advice of their own.
type nothingInstead struct{}

// Instead gives "".
func (nothingInstead) Instead(*Query) string { return "" }

// scalesNothing is for kinds whose edit does not depend on
// other values.
type scalesNothing struct{}

// Scales gives nil.
func (scalesNothing) Scales(*Lever) []Field { return nil }

// decided is for kinds that a mend may set without asking the baker.
type decided struct{}

// ForBaker gives false.
func (decided) ForBaker(*Lever) bool { return false }

// taste is for kinds that the baker decides.
type taste struct{}

// ForBaker gives true.
func (taste) ForBaker(*Lever) bool { return true }

// costOfRatio is for values that are judged by ratio: half costs as
// much as twice.
type costOfRatio struct{}

// Cost is the logarithm of the ratio of new to old; 1 where one of them
// is not above 0.
func (costOfRatio) Cost(l *Lever, to Setting) float64 {
	if l.Start <= 0 || to.Number <= 0 {
		return 1
	}
	return math.Abs(math.Log(to.Number / l.Start))
}

// costOfDegrees is for temperatures: 20 K cost 1.
type costOfDegrees struct{}

// Cost is a twentieth of the difference in K; 0.1 where no temperature
// is written yet.
func (costOfDegrees) Cost(l *Lever, to Setting) float64 {
	if math.IsNaN(l.Start) {
		return 0.1
	}
	return math.Abs(inBase(to.Number, l.Unit)-inBase(l.Start, l.Unit)) / 20
}

// everyLine is the factor of cost for a change after which every line
// is weighed anew.
const everyLine = 4

// listsEdits is for kinds that describe a change by their noun and the
// texts before and after.
type listsEdits struct{}

// mostTexts is how many edits one description lists.
const mostTexts = 4

// Describe lists the edits, each text once, with the line of the first.
func (listsEdits) Describe(c *Change) string {
	var texts []string
	for _, e := range c.Edits {
		text := strings.Trim(strings.TrimSpace(e.New), `"`)
		switch {
		case e.Old == "":
			text = strings.Trim(strings.TrimSpace(e.New), ", ")
		case strings.HasPrefix(e.New, "{"):
			text = e.New
		default:
			text = strings.Trim(strings.TrimSpace(e.Old), `"`) + " to " + text
		}
		if !slices.Contains(texts, text) {
			texts = append(texts, text)
		}
	}
	if len(texts) > mostTexts {
		texts = append(texts[:mostTexts], fmt.Sprintf("and %d more", len(texts)-mostTexts))
	}
	noun := c.Lever.Kind.Noun(c.Lever, c.From)
	return fmt.Sprintf("%s: %s (line %d)", noun, strings.Join(texts, ", "), c.line())
}

// line is where the first edit stands: the line below where it begins with a
// line end.
func (c *Change) line() int {
	if len(c.Edits) == 0 {
		return 0
	}
	first := c.Edits[0]
	line := c.From.Place.File.Position(first.Start).Line
	if strings.HasPrefix(first.New, "\n") || strings.HasPrefix(first.New, "\r") {
		line++
	}
	return line
}

// listsShare is for kinds that are set in percent of what is written.
type listsShare struct{}

// Describe gives the percentage.
func (listsShare) Describe(c *Change) string {
	noun := c.Lever.Kind.Noun(c.Lever, c.From)
	return fmt.Sprintf("%s: %s %% of what is written", noun, plain(c.To.Number))
}

// partName names a part: "dough \"d\"".
func partName(l *Lever, f *formula.Formula) string {
	p := f.Parts[l.Part]
	return fmt.Sprintf("%s %q", p.Kind, p.Name)
}

// costOfEntry is the cost of a new ingredient or step.
const costOfEntry = 0.3

// asWritten is the start of kinds that are set in percent of what is written.
const asWritten = 100

// costOfPurchase is the cost of an ingredient that has to be bought.
const costOfPurchase = 0.5
