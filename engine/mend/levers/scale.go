package levers

import (
	"fmt"
	"math"

	"forebake/engine/formula"
	"forebake/engine/source"
)

func init() { register(houseScale{}) }

// houseScale is the step of the kitchen's scale, g. It is advice:
// nothing in the formula changes.
type houseScale struct {
	ownFigure
	usualUnknown
	nothingInstead
	scalesNothing
	decided
}

func (houseScale) Names() []string { return []string{"kitchen.scale"} }

func (houseScale) Means() string { return "the scale of the kitchen" }

func (houseScale) Traits() Traits {
	return Traits{NoValue, Absolute, ByRule, Equipment, Written, First}
}

func (houseScale) Find(*Query) []*Lever { return []*Lever{{}} }

// soldSteps are the steps of the scales that are sold, g.
var soldSteps = []float64{1, 0.5, 0.2, 0.1, 0.05, 0.02, 0.01}

// Grid takes the finest and the coarsest step that is sold.
func (houseScale) Grid(*Lever, *Query) Grid {
	finest, coarsest := soldSteps[len(soldSteps)-1], soldSteps[0]
	return Grid{"g", finest, finest, finest, coarsest, Coarse{}}
}

// Value is not known: the scale is not part of a formula.
func (houseScale) Value(*Lever, *formula.Formula) Setting { return At(math.NaN()) }

func (houseScale) Edit(*Lever, *Text, Setting) ([]source.Edit, error) { return nil, nil }

func (houseScale) Writes(*Lever) []Field { return nil }

func (houseScale) Cost(*Lever, Setting) float64 { return 0 }

func (houseScale) Noun(*Lever, *formula.Formula) string { return "scale of the house" }

// Describe rounds the step down to one that is sold.
func (houseScale) Describe(c *Change) string {
	sold := soldSteps[len(soldSteps)-1]
	for _, step := range soldSteps {
		if c.To.Number >= step-1e-9 {
			sold = step
			break
		}
	}
	return fmt.Sprintf("weigh it on a scale that steps by %g g or finer "+
		"(kitchen { scale = ... } of house.hcl)", sold)
}
