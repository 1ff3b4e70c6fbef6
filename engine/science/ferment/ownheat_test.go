package ferment_test

import (
	"math"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
)

// The doughs of two cards that set DoublingE (read), with a kilogram of
// flour in surroundings as warm as they are: what their own heat adds
// to their equivalent hours (computed).
func TestCardsOwnHeat(t *testing.T) {
	dough := heat.Properties{SpecificHeat: 2700, DensityKgM3: 1100, ConductivityWmK: 0.37}
	const kg = 1.8 // of dough on a kilogram of flour
	sum, n := 0.0, 0.0
	for _, card := range []struct {
		name                      string
		tC, hours, molality, dose float64
	}{
		{"AFRS D-055, bulk", 26.7, 2, 2.58, 1.01},
		{"challah, bulk", 26.7, 1.5, 3.02, 1.31},
	} {
		q, why := heat.OwnHeat(card.dose, ferment.OsmoticFactor(card.molality))
		if why != "" {
			t.Fatal(why)
		}
		bowl := heat.BowlOf(kg/dough.DensityKgM3, math.Cbrt(kg/dough.DensityKgM3/math.Pi))
		var v heat.Volumes
		v.Start(bowl.EquivalentDimension(dough.ConductivityWmK, heat.RoomNearly), bowl.Nearest(),
			dough, card.tC)
		v.SetOwnHeat(q.At(figure.Middle), heat.NewCurve(-30, 45, 301, ferment.TemperatureFactor))
		v.Stage(card.tC, heat.RoomNearly)
		const steps = 60
		hours := 0.0
		for range steps {
			hours += ferment.TemperatureFactor(v.Advance(card.hours*3600/steps).MeanC) *
				card.hours / steps
		}
		more := hours / (card.hours * ferment.TemperatureFactor(card.tC))
		t.Logf("%s: %.3f", card.name, more)
		sum, n = sum+more, n+1
	}
	if mean := sum / n; math.Abs(mean-ferment.CardsOwnHeat) > 0.02 {
		t.Errorf("%.3f times the hours, CardsOwnHeat is %g", mean, ferment.CardsOwnHeat)
	}
}
