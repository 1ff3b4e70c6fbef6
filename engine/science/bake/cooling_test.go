package bake

import (
	"math"
	"testing"

	"forebake/engine/science/heat"
)

// What vapour diffusing through saturated pores carries, by its
// saturation curve and Maxwell's mixing rule with 72 % of pores in a
// dough of 0.40 W/(m K) (computed by hand), and what is published: 0.23
// to 0.25 cold (Rask 1989, quoted), exp(0.01 e - 15.25) m2/s in a hot
// one of porosity e, 70 % (Zanoni, Peri & Gianotti 1995, read), as a
// mean from 60 to 100 C.
func TestCrumbConducts(t *testing.T) {
	for c, want := range map[float64]float64{0: 0.2, 25: 0.204, 60: 0.307, 80: 0.65, 100: 0.993} {
		near(t, "crumb conducts", CrumbConducts(c), want, 0.02)
	}
	for c, computed := range map[float64]float64{25: 0.17, 40: 0.257, 60: 0.49} {
		if x := CrumbConducts(c) / computed; x < 1/1.6 || x > 1.25 {
			t.Errorf("at %g C: %.2f times what vapour carries", c, x)
		}
	}
	mean, n := 0.0, 0.0
	for c := 60.0; c <= 100; c++ {
		mean += CrumbConducts(c)
		n++
	}
	density := 979 - 9.90*70
	zanoni := math.Exp(0.01*70-15.25) * density * crumbCp
	near(t, "hot crumb", mean/n/zanoni, 1.7, 0.1)
	near(t, "half way", CrumbConductivity, CrumbConducts((95+30)/2.0), 0.01)
	share, _, _ := CrumbShare.At(62.5)
	near(t, "its share", share, 1, 0.03)
}

// A loaf of 560 g at 95 C in a room of 22, by hand. Its surface is at
// 46 C: convection 3.7 (24.3/4)^0.25 = 5.81, radiation 5.93 W/(m2 K),
// through a crust of 0.03 m2 K/W 8.68; with steam a third more, 11.6.
func TestOpenCrumb(t *testing.T) {
	dry, open := OpenCrumb(9, 95, 22, true)
	near(t, "dry", dry, 8.68, 0.05)
	near(t, "open", open, 11.57, 0.07)
	near(t, "cold", func() float64 {
		d, _ := OpenCrumb(9, 20, 22, true)
		return d
	}(), 1/(1/9.0+0.03), 1e-9)
	dry, _ = OpenCrumb(13, 95, 4, false)
	near(t, "in moved air", dry, 1/(1/13.0+0.03), 1e-9)
	lost, latent, held := 0.02, 2400.0, float64(CrumbHeat)/1000*(95-25)
	near(t, "heat that goes with the steam", steamShare, lost*latent/held, 0.02)
	near(t, "crust", crust, 0.0015/0.0475, 0.003)
	near(t, "surface", heat.SurfaceLag, 1/3.0, 0.01)
	near(t, "error", CoolingError, math.Hypot(heat.AirError, 0.30), 0.03)
}
