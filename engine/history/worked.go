package history

import "forebake/engine/science/heat"

// working and workingTime are functions of a few figures, and cost more than the rest of a history.
// A search for mends asks them again and again, of doughs that differ in later steps only.

// workBody is a dough that works, as a stage begins.
type workBody struct {
	dimension, half float64
	properties      heat.Properties
	butterfat       float64
	watts           float64
	ambient, h      float64
	now             heat.State
}

// workCourse asks for a course over a time, or for the time to a temperature.
type workCourse struct {
	body                workBody
	seconds, fermenting float64
	targetC             float64 // of workingTime
	toTarget            bool
}

// workDone is the answer to a workCourse.
type workDone struct {
	end         heat.State
	most, hours float64
	times       []float64 // of the samples, s
	states      []heat.State
}

// mostWorked bounds the answers that are kept: a formula asks for some dozens.
const mostWorked = 1 << 10

// keep notes an answer.
func (f *Follower) keep(c workCourse, d workDone) {
	if f.worked == nil || len(f.worked) >= mostWorked {
		f.worked = map[workCourse]workDone{}
	}
	f.worked[c] = d
}

// workBodyOf gives the figures of a dough in its surroundings.
func (f *Follower) workBodyOf(l *lane, e environment, now heat.State) workBody {
	m := f.setup.Material
	// The model's error goes into the surface, where most of it comes from.
	err := f.timeError(l, e)
	h := f.coefficient(l, e, true) * [3]float64{1 + err, 1, 1 / (1 + err)}[l.warm+1]
	return workBody{
		dimension: l.body.EquivalentDimension(m.Conductivity, h), half: l.body.Nearest(),
		properties: heat.Properties{
			SpecificHeat: m.SpecificHeat, DensityKgM3: m.Density, ConductivityWmK: m.Conductivity,
			DiffusivityM2s: m.Diffusivity,
		},
		butterfat: m.Butterfat, watts: f.watts(l), ambient: l.ambient(e), h: h, now: now,
	}
}

// start puts the dough into its surroundings, even at its mean.
func (b *workBody) start(v *heat.Volumes) {
	v.Start(b.dimension, b.half, b.properties, b.now.MeanC)
	v.SetSource(heat.FermentationCurve(b.watts))
	if b.butterfat > 0 {
		v.SetSpecificHeat(heat.MilkFatCurve(b.properties.SpecificHeat, b.butterfat))
	}
	v.Stage(b.ambient, b.h)
}
