package history

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/geometry"
	"forebake/engine/science/heat"
)

// Proofed density of a dough at the oven, kg/m3: 0.30 to 0.45 (geometry), the heavy end for rich doughs.
const proofedDensity = 400

// bake takes the part through the oven: capped at boiling, and even afterwards.
func (f *Simulator) bake(step *formula.Step, st *Stage) {
	f.keepState(st)
	f.intoTin(step)
	kg := f.massKg()
	switch made := f.setup.Part.Formula; {
	case f.shape.pieces > 1:
		kg /= f.shape.pieces
	case made != nil && made.Makes.Pieces > 1: // no step says how it is divided
		kg /= made.Makes.Pieces
	}
	if boils := heat.BoilingPointC(f.setup.Kitchen.Altitude.Mid()); step.At.Set && step.At.Lo <= boils {
		f.loseTrack(st, "an oven that is hot enough to bake in")
		return
	}
	rho := proofedDensity * f.shape.mixedRho / f.setup.Material.Density
	var body heat.Body
	if f.shape.tin != nil {
		if h, ok := geometry.TinLoafHalfMM(kg*1000, rho/1000, f.shape.tin.Inside[0], f.shape.tin.Inside[1]); ok {
			body = brick(h)
		}
	} else if h, ok := f.freeStanding(kg, rho/1000); ok {
		body = brick(h)
	}
	alpha := heat.CrumbDiffusivity
	if f.shape.filling > 0 {
		share := f.shape.filling / f.shape.fillRho / (f.massKg() / rho)
		alpha = 1 / ((1-share)/heat.CrumbDiffusivity + share/heat.FillingDiffusivity) // layers in series
	}
	oven := func(startC float64) heat.Bake {
		return heat.Bake{Body: body, StartC: startC, AltitudeM: f.setup.Kitchen.Altitude.Mid(), InTin: f.shape.tin != nil, Diffusivity: alpha}
	}
	target := step.Core
	if !target.Set && step.To.Set {
		target = step.To
	}
	if target.Set {
		quick, ok1 := oven(st.StartCore.High).MinutesToCore(target.Lo)
		mid, ok2 := oven(st.StartCore.Mid).MinutesToCore(target.Mid())
		slow, ok3 := oven(st.StartCore.Low).MinutesToCore(target.Hi)
		if ok1 && ok2 && ok3 {
			st.MinutesToCore, st.HasCoreMinutes = figure.Estimate{Low: quick.Low, Mid: mid.Mid, High: slow.High}, true
		}
	}
	var after figure.Estimate
	switch r := step.Reading; {
	case r != nil && r.Temp.Set:
		after, st.Measured = estimateOf(r.Temp.Interval), true
	case step.Time.Set:
		lo, ok1 := oven(st.StartCore.Low).CoreAfter(step.Time.Lo)
		g, ok2 := oven(st.StartCore.Mid).CoreAfter(step.Time.Mid())
		hi, ok3 := oven(st.StartCore.High).CoreAfter(step.Time.Hi)
		if !ok1 || !ok2 || !ok3 {
			f.loseTrack(st, "a shape for this bake")
			return
		}
		after = figure.Estimate{Low: lo.Low, Mid: g.Mid, High: hi.High}
	default:
		f.loseTrack(st, "the time of this bake")
		return
	}
	st.Oven = oven(st.StartCore.Low)
	f.setEven(after)
	st.Core, st.Mean, st.Surface, st.Body = after, after, after, body
	st.CoreMax = st.StartCore.Max(after)
	// Crumb from here on: light, and a poor conductor. It keeps its baked size.
	f.body, f.shape.known = body, true
	f.setup.Gas = 0
	f.setup.Trace = f.setup.Trace && f.setup.TraceBaked
	f.setup.Material = Material{Known: true, Conductivity: crumbConductivity, Diffusivity: crumbCooling, Density: rho * (1 - bakeLoss), SpecificHeat: 2600}
	f.shape.mixedRho = f.setup.Material.Density
}

// Cooling bread: conductivity of crumb 0.12 to 0.2 W/(m K), and a diffusivity that gives the two hours of a large tin loaf
// with its evaporation (memory; half as much again either way).
const (
	crumbConductivity = 0.15
	crumbCooling      = 2.0e-7
	bakeLoss          = 0.10
)
