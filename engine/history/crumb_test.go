package history_test

import (
	"fmt"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/science/geometry"
)

// A loaf of a kilogram from a tin is cut after two to three hours (trade advice), at 35 to 40 C.
func TestTinLoafCools(t *testing.T) {
	core := func(hours int) float64 {
		stages := follow(t, setup(t, fmt.Sprintf(`{ divide = 2 }, { pan = "x", tin = "long tin", count = 2 }, `+
			`{ bake = "40 min", at = "200 C", measured = "96 C core" }, `+
			`{ cool = "%d h", at = "room", covered = false }`, hours))).Stages
		return stages[len(stages)-1].Core.Mid
	}
	if two, three := core(2), core(3); !(two > 40 && three < 35) {
		t.Errorf("%.1f C after two hours, %.1f C after three", two, three)
	}
}

// A piece of 222 g is a bun, as long as wide, and one of 286 g a loaf.
func TestBunsAndLoaves(t *testing.T) {
	for pieces, long := range map[int]float64{9: 1, 7: geometry.LoafLength} {
		st := follow(t, setup(t, fmt.Sprintf(`{ divide = %d }, { shape = "x" }, { bake = "20 min", at = "190 C" }`, pieces))).Stages[2]
		near(t, "length to width", st.Body.Half[0]/st.Body.Half[1], long, 1e-9)
	}
}

// Where no step says how it stands, a part cools no quicker than in a slab of two centimetres.
func TestThinnestSlab(t *testing.T) {
	const chill = `{ chill = "30 min", covered = false`
	unsaid := follow(t, setup(t, chill+` }`)).Stages[0].Core.Low
	slab := follow(t, setup(t, chill+`, as = "slab 20 mm" }`)).Stages[0].Core.Low
	near(t, "the coldest run", unsaid, slab, 0.01)
}

// A reading without a range is good to 1 K.
func TestProbeError(t *testing.T) {
	later := func(reading string) figure.Estimate {
		return follow(t, setup(t, `{ chill = "12 h", as = "slab 40 mm", measured = "`+reading+`" }, `+
			`{ mix = "2 min", to = "26 C" }, { chill = "2 h", as = "slab 40 mm" }`)).Stages[2].Core
	}
	near(t, "what follows", later("8 C after 3 h").Mid, later("7 C to 9 C after 3 h").Mid, 0.02)
}
