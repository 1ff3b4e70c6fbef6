package history

import (
	"testing"

	"forebake/engine/science/geometry"
)

// What evaporates takes heat from a crumb, so that it cools faster than it conducts: 1 to 2 % of its
// weight on the way from 97 to 22 C (common practice) are a tenth to a quarter of the heat.
func TestCrumbCoolsByEvaporation(t *testing.T) {
	const conducts = crumbConductivity / (1000 * geometry.ProofedDensity * crumbHeat)
	if more := crumbCooling/conducts - 1; !(more > 0.10 && more < 0.25) {
		t.Errorf("a crumb cools by %.0f %% faster than it conducts", 100*more)
	}
}
