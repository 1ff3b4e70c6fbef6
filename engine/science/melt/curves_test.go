package melt

import (
	"testing"

	"forebake/engine/science/heat"
)

// What is kept is what is made, and curves of unlike materials do not mix.
func TestCurves(t *testing.T) {
	var c Curves
	same := func(what string, a, b heat.Curve) {
		t.Helper()
		for tC := -35.0; tC < 45; tC += 2.5 {
			x, _, h := a.At(tC)
			y, _, i := b.At(tC)
			if x != y || h != i {
				t.Fatalf("%s at %g C: %g, kept %g", what, tC, y, x)
			}
		}
	}
	ice := Ice{Made: enriched, Gas: 0.1, OnsetC: -5}
	for range 2 {
		for i := range 2 * mostCurves {
			cp, w := 2500+float64(i), 0.1
			same("butter", c.Butter(cp, w), MilkFatCurve(cp, w))
			same("chocolate", c.Chocolate(cp, w), ChocolateHeats(cp, w))
			frozen := c.Freezing(ice, cp, w)
			heats, share, why := ice.Heats(cp, w)
			if why != "" {
				t.Fatal(why)
			}
			same("freezing", frozen.SpecificHeat, heats)
			same("frozen", frozen.Conductivity, share)
		}
	}
}
