package engine_test

import (
	"math"
	"strings"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/science/bake"
	"forebake/engine/science/bakersmath"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
	"forebake/engine/science/melt"
	"forebake/engine/science/mould"
	"forebake/engine/science/wateractivity"
)

// TestModelsStateTheirRange passes both ends of every range that a
// model states: inside it answers, outside it gives the reason. Each
// names its error and its source.
func TestModelsStateTheirRange(t *testing.T) {
	models := append([]*figure.Model{
		&bakersmath.DoughModel, &bakersmath.WaterModel, &bakersmath.RiseModel,
		&bakersmath.StarterModel, &bakersmath.SoakModel, &ferment.RiseModel, &ferment.PaceModel,
		&mould.Model, &wateractivity.Model, &bake.Model,
	}, append(heat.Models, melt.Models...)...)
	for _, m := range models {
		// A ratio has no unit. The rise is zero where yeast does not
		// work, and so has no end.
		if m.Name == "" || m.Error == "" || m.Source == "" ||
			len(m.Limits) == 0 && m != &ferment.RiseModel {
			t.Errorf("%q lacks an error, a source or a range: %+v", m.Name, *m)
		}
		for _, l := range m.Limits {
			beyond := (l.High - l.Low) / 1000
			for _, x := range []float64{l.Low, (l.Low + l.High) / 2, l.High} {
				if why := l.Refuses(x); why != "" {
					t.Errorf("%s refuses %g: %s", m.Name, x, why)
				}
			}
			for _, x := range []float64{l.Low - beyond, l.High + beyond, math.Inf(1), math.Inf(-1),
				math.NaN()} {
				why := l.Refuses(x)
				if !strings.Contains(why, l.Quantity) || !strings.Contains(why, l.Why) {
					t.Errorf("%s at %g: %q", m.Name, x, why)
				}
			}
		}
	}
}
