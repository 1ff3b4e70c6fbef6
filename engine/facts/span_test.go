package facts

import (
	"math"
	"testing"
)

// An open setting spans all that may stand there: the default of an
// unwritten one holds nowhere.
func TestOpenSettingSpans(t *testing.T) {
	ends := func(steps, fact string, step int) (lo, hi float64) {
		v := stepValue(
			t,
			lean(t, 22, 24, `{ mix = "9 min", measured = "25 C" }, `+steps),
			"d",
			step,
			fact,
		)
		return v.Lo, v.Hi
	}
	for _, c := range []struct{ open, one, fact string }{
		{`{ chill = "4 h", at = "?", as = "slab 30 mm" }`,
			`{ chill = "4 h", at = "15 C", as = "slab 30 mm" }`, "core_end_c"},
		{`{ chill = "4 h", at = "fridge", as = "?" }`,
			`{ chill = "4 h", at = "fridge", as = "slab 45 mm" }`, "core_end_c"},
		{`{ chill = "4 h", at = "fridge", as = "slab 5 to 45 mm" }`,
			`{ chill = "4 h", at = "fridge", as = "slab 45 mm" }`, "core_end_c"},
		{`{ chill = "4 h", at = "fridge", as = "slab 5 to 45 mm" }`,
			`{ chill = "4 h", at = "fridge", as = "slab 5 mm" }`, "core_end_c"},
		{`{ chill = "?", at = "fridge", as = "slab 30 mm" }`,
			`{ chill = "4 h", at = "fridge", as = "slab 30 mm" }`, "core_end_c"},
	} {
		lo, hi := ends(c.open, c.fact, 1)
		a, b := ends(c.one, c.fact, 1)
		if math.IsNaN(lo) || lo > a || hi < b {
			t.Errorf("%s of %s is %v to %v; %s is %v to %v", c.fact, c.open, lo, hi, c.one, a, b)
		}
	}
}
