package history_test

import (
	"fmt"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/science/geometry"
)

// A loaf takes up to two hours to 35 to 40 C in a bakery's moved air of
// 24 C (a baking institute, read), a kilogram from a tin two to three
// in a kitchen (trade advice).
func TestTinLoafCools(t *testing.T) {
	core := func(grams, tin, minutes string, covered bool) figure.Estimate {
		var n float64
		fmt.Sscanf(grams, "%g", &n)
		stages := follow(t, setup(t, fmt.Sprintf(`{ divide = %q }, { pan = "x", `+
			`tin = %q, count = %d }, { bake = "40 min", at = "200 C", measured = "96 C core" }, `+
			`{ cool = %q, at = "room", covered = %t }`, grams, tin, int(2000/n), minutes,
			covered))).Stages
		return stages[len(stages)-1].Core
	}
	for _, c := range []struct {
		grams, minutes string
		covered        bool
		lo, hi         float64 // of the middle run
	}{
		{"1000 g", "60 min", false, 47, 55},
		{"1000 g", "120 min", false, 30, 36},
		{"1000 g", "120 min", true, 35, 42},
		{"500 g", "60 min", false, 31, 37},
	} {
		got := core(c.grams, "long tin", c.minutes, c.covered)
		if got.Mid < c.lo || got.Mid > c.hi {
			t.Errorf("%v: %v", c, got)
		}
	}
	if e := core("1000 g", "long tin", "2 h", false); !(e.Low < 31 && e.High > 37) {
		t.Errorf("a kilogram after two hours: %v", e)
	}
}

// A piece of 222 g is a bun, as long as wide, and one of 286 g a loaf.
func TestBunsAndLoaves(t *testing.T) {
	for pieces, long := range map[int]float64{9: 1, 7: geometry.LoafLength} {
		st := follow(t, setup(t, fmt.Sprintf(`{ divide = %d }, { shape = "x" }, `+
			`{ bake = "20 min", at = "190 C" }`, pieces))).Stages[2]
		near(t, "length to width", st.Body.Half[0]/st.Body.Half[1], long, 1e-9)
	}
}

// Where no step says how it stands, a part cools no quicker than in a
// slab of two centimetres.
func TestThinnestSlab(t *testing.T) {
	const chill = `{ chill = "30 min", covered = false`
	unsaid := follow(t, setup(t, chill+` }`)).Stages[0].Core.Low
	slab := follow(t, setup(t, chill+`, as = "slab 20 mm" }`)).Stages[0].Core.Low
	near(t, "the coldest run", unsaid, slab, 0.01)
}

// A reading without a range is good to 1 K.
func TestProbeError(t *testing.T) {
	later := func(reading string) figure.Estimate {
		return follow(t, setup(t, `{ chill = "12 h", as = "slab 40 mm", measured = "`+
			reading+`" }, `+
			`{ mix = "2 min", to = "26 C" }, { chill = "2 h", as = "slab 40 mm" }`)).Stages[2].Core
	}
	near(t, "what follows", later("8 C after 3 h").Mid, later("7 C to 9 C after 3 h").Mid, 0.02)
}

// Pieces from the fridge warm sooner in a moist proofer, by what
// settles on them.
func TestDewWarms(t *testing.T) {
	core := func(more string) float64 {
		return follow(t, setup(t, `{ chill = "12 h" }, { divide = "60 g" }, `+
			`{ proof = "1 h", at = "30 C"`+more+` }`)).Stages[2].Core.Mid
	}
	if dry, moist := core(""), core(`, humidity = "80 %"`); !(moist > dry+2 && moist < dry+6) {
		t.Errorf("after an hour %.1f C in a proofer that says nothing, %.1f C in a moist one",
			dry, moist)
	}
}

// A rolled-up filling lies in layers, an enclosed one in a lump, which
// the heat crosses last.
func TestLumpsAndLayers(t *testing.T) {
	core := func(closing string) float64 {
		s := filled(t, `{ fill = "f" }, `+closing+`, { bake = "14 min", at = "190 C" }`, 20)
		stages := follow(t, s).Stages
		return stages[len(stages)-1].Core.Mid
	}
	lump := core(`{ shape = "x", pieces = 25 }`)
	layers := core(`{ roll = "coil" }, { shape = "x", pieces = 25 }`)
	if !(lump < layers-5) {
		t.Errorf("closed in %.1f C, rolled up %.1f C", lump, layers)
	}
}
