package history

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/heat"
)

// told is what readings said of a kind of air: how much quicker or slower all three runs are there,
// as a logarithm, and the share of the model's error that is left.
type told struct{ shift, left float64 }

// probeError is a probe's error where the reading is no range, K.
const probeError = 1

// heard adds what one reading said.
func (f *Simulator) heard(e environment, l told) {
	t := &f.told[e.air]
	t.shift, t.left = t.shift+l.shift, t.left*l.left
}

// weigh gives what a reading says that asks for a pace factor times the model's. core is the core
// at the reading with a pace, spread the model's error of the pace as a logarithm. Where the pace
// hardly changes the core, the reading tells nothing of it: the probe's error is larger.
func weigh(r *formula.Reading, factor, spread float64, core func(pace float64) float64) told {
	const by = 1.05
	slope := func(at float64) float64 {
		return math.Abs(core(at*by)-core(at/by)) / (2 * math.Log(by))
	}
	probe := float64(probeError)
	if !r.Temp.IsPoint() {
		probe = r.Temp.Width() / 2
	}
	tells := min(slope(1), slope(factor)) * spread
	weight := tells * tells / (tells*tells + probe*probe)
	return told{weight * math.Log(factor), math.Sqrt(1 - weight)}
}

// nothing is what an uninformative reading says.
var nothing = told{left: 1}

// learn gives what a reading says to all three runs, by the middle one,
// which has entered its surroundings.
func (f *Simulator) learn(step *formula.Step, e environment) told {
	seconds, ok := readAt(step, e)
	if !ok {
		return nothing
	}
	l := &f.runs[figure.Middle]
	w := &l.walk
	own := f.ownAt(l, e, seconds)
	factor, ok := w.ScaleFor(heat.Core, step.Reading.Temp.Mid()-own, seconds)
	if !ok {
		return nothing
	}
	defer w.SetScale(1)
	spread := math.Log1p(f.timeError(l, e)) + f.told[e.air].left*math.Log(e.h/e.covered)/2
	return weigh(step.Reading, factor, spread, func(pace float64) float64 {
		w.SetScale(pace)
		return w.At(seconds).CoreC
	})
}

// learnInBath is learn for a bath's runs.
func (f *Simulator) learnInBath(
	step *formula.Step,
	e environment,
	baths *[figure.Runs]heat.Chilling,
) told {
	seconds, ok := readAt(step, e)
	if !ok {
		return nothing
	}
	read := step.Reading.Temp.Mid()
	var hours [figure.Runs]float64
	for i := range hours {
		hours[i] = baths[i].TimeTo(read, longestWatch)
	}
	factor := hours[figure.Middle] / seconds
	if !(factor >= heat.LowestScale && factor <= heat.HighestScale) || !(hours[figure.Low] > 0) {
		return nothing
	}
	spread := math.Log(min(hours[figure.High]/hours[figure.Low], heat.HighestScale)) / 2
	return weigh(step.Reading, factor, spread, func(pace float64) float64 {
		c := baths[figure.Middle]
		c.Hasten(pace)
		return c.Advance(seconds).CoreC
	})
}
