package heat

import (
	"fmt"
	"testing"
)

func TestZZ(t *testing.T) {
	for _, c := range []struct {
		d           int
		L, h, hours float64
	}{{3, .115, 300, .3679}, {1, .115, 300, .3679}, {2, .115, 300, .3679}, {3, .05, 300, 1}, {3, .05, 8, 1}, {1, .02, 8, 1}, {3, 0.1, 20, 1}} {
		w := mustWalk(t, Body{Shape(c.d - 1), [3]float64{c.L}}, doughK, doughAlpha, 26, 1, c.h)
		var v Volumes
		v.Start(float64(c.d), c.L, doughProperties, 26)
		v.Stage(1, c.h)
		a := w.At(c.hours * 3600)
		b := v.Advance(c.hours * 3600)
		v.Start(float64(c.d), c.L, doughProperties, 26)
		v.Stage(1, c.h)
		var e State
		for range 50 {
			e = v.Advance(c.hours * 72)
		}
		fmt.Printf("d%d L%g h%g: core %.4f %.4f  mean %.4f %.4f surf %.4f %.4f\n", c.d, c.L, c.h, b.CoreC-a.CoreC, e.CoreC-a.CoreC, b.MeanC-a.MeanC, e.MeanC-a.MeanC, b.SurfaceC-a.SurfaceC, e.SurfaceC-a.SurfaceC)
	}
}
