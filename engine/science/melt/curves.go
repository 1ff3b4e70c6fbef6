package melt

import "forebake/engine/science/heat"

// Curves keeps curves that were made, for bodies of the same material. The zero Curves is ready; it
// belongs to one goroutine.
type Curves struct {
	kept map[material]Thermal
}

// Thermal are the curves of a material by temperature: its specific heat, J/(kg K), and, of one
// that freezes, its conductivity over that above freezing.
type Thermal struct{ SpecificHeat, Conductivity heat.Curve }

// material is all that curves turn on.
type material struct {
	kind  kind
	ice   Ice
	cp, w float64
}

type kind uint8

const (
	freezing kind = iota
	butter
	chocolate
)

// mostCurves is how many are kept: those of the parts of one formula, and some.
const mostCurves = 64

func (c *Curves) of(m material, make func() Thermal) Thermal {
	t, ok := c.kept[m]
	if !ok {
		t = make()
		if c.kept == nil || len(c.kept) >= mostCurves {
			c.kept = map[material]Thermal{}
		}
		c.kept[m] = t
	}
	return t
}

// Freezing are those of Ice.Heats.
func (c *Curves) Freezing(i Ice, cp, butterfat float64) Thermal {
	return c.of(material{freezing, i, cp, butterfat}, func() (t Thermal) {
		t.SpecificHeat, t.Conductivity, _ = i.Heats(cp, butterfat)
		return t
	})
}

// Butter is MilkFatCurve.
func (c *Curves) Butter(cp, w float64) heat.Curve {
	return c.of(material{kind: butter, cp: cp, w: w}, func() Thermal {
		return Thermal{SpecificHeat: MilkFatCurve(cp, w)}
	}).SpecificHeat
}

// Chocolate is ChocolateHeats.
func (c *Curves) Chocolate(cp, w float64) heat.Curve {
	return c.of(material{kind: chocolate, cp: cp, w: w}, func() Thermal {
		return Thermal{SpecificHeat: ChocolateHeats(cp, w)}
	}).SpecificHeat
}
