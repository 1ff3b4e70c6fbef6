package history_test

import (
	"fmt"
	"math"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/history"
	"forebake/engine/science/heat"
)

// A tray in ice water is cooled from below alone: each run is the bath
// of package heat.
func TestTrayInIceWaterIsABath(t *testing.T) {
	s := setup(
		t,
		`{ cook = "8 min", to = "85 C" }, { cool = "1 h", by = "ice bath", as = "tray 30 mm" }, `+
			`{ chill = "2 h", at = "4 C", as = "tray 30 mm" }`,
	)
	stages := follow(t, s).Stages
	var core, later [figure.Runs]float64
	for r := range figure.Runs {
		c, why := heat.Bath{
			Body: heat.SlabOf(
				0.030,
			), StartC: 85, WaterC: []float64{0, 1, 2}[r], RoomC: s.Kitchen.Room.Mid(),
			Food: heat.Properties{
				SpecificHeat:    s.Material.SpecificHeat,
				DensityKgM3:     s.Material.Density,
				ConductivityWmK: s.Material.Conductivity,
			},
		}.Run(r)
		if why != "" {
			t.Fatal(why)
		}
		end := c.Advance(3600)
		core[r], later[r] = end.CoreC, end.MeanC
		if r == figure.High {
			later[r] = end.CoreC
		}
	}
	// The stage is gone through in pieces, whose steps are not those of
	// one whole.
	nearBand(t, "core", stages[1].Core, figure.Ordered(core), 0.3)
	nearBand(t, "what follows starts even", stages[2].StartCore, figure.Ordered(later), 0.3)
	slab := follow(t, setup(t, `{ cook = "8 min", to = "85 C" }, `+
		`{ cool = "1 h", by = "ice bath", as = "pieces 250 g" }`)).Stages[1]
	if !(slab.Core.High < stages[1].Core.Low) {
		t.Errorf("pieces in the water %v, a tray in it %v", slab.Core, stages[1].Core)
	}
}

// Both faces in the water would be three times as quick, and would
// clear a tray of 80 mm.
func TestDeepTrayInIceWaterIsSlow(t *testing.T) {
	for mm, least := range map[float64]float64{80: 5, 40: 1.5} {
		s := setup(
			t,
			fmt.Sprintf(
				`{ cook = "8 min", to = "85 C" }, { cool = "1 h", by = "ice bath", `+
					`as = "tray %g mm" }`,
				mm,
			),
		)
		var f history.Simulator
		hours, ok := f.TimeTo(s, s.Part.Steps[1], 21)
		if !ok || !(hours.Low > least) || !(hours.High < 5*least) {
			t.Errorf("%g mm to 21 C: %v", mm, hours)
		}
	}
}

func TestReadingInABath(t *testing.T) {
	for _, test := range []struct {
		measured string
		want     figure.Estimate
	}{{"30 C", even(30)}, {"28 C to 32 C", figure.Estimate{Low: 28, Mid: 30, High: 32}}} {
		st := follow(t, setup(t, `{ cook = "8 min", to = "85 C" }, `+
			`{ cool = "1 h", by = "ice bath", as = "tray 30 mm", measured = "`+test.measured+
			`" }`)).Stages[1]
		if !st.Known || !st.Measured {
			t.Errorf("%s: known %v, measured %v", test.measured, st.Known, st.Measured)
		}
		nearBand(t, test.measured, st.Core, test.want, 0.3)
	}
}

// A syrup above boiling is outside the model: it is silent and
// says why.
func TestBathIsSilentOutsideItsRange(t *testing.T) {
	st := follow(t, setup(t, `{ cook = "8 min", to = "118 C" }, `+
		`{ cool = "1 h", by = "ice bath", as = "tray 30 mm" }`)).Stages[1]
	unknown(
		t,
		st,
		"a temperature that was read at the end of this cool: the food in the bath is 118 C; ice "+
			"baths are reckoned from 0 to 100 C",
	)
	if !math.IsNaN(st.Core.Mid) && st.Core.Mid != 0 {
		t.Errorf("core %v", st.Core)
	}
}
