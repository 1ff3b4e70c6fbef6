package history

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/science/heat"
)

// evidence sums up the readings in a kind of air: the pace of all three runs against the model, as
// a logarithm, and the share of the model's error that is left.
type evidence struct{ shift, left float64 }

// probeError is a probe's error where the reading is no range, K.
const probeError = 1

func (f *Simulator) addEvidence(e environment, l evidence) {
	t := &f.evidence[e.air]
	t.shift, t.left = t.shift+l.shift, t.left*l.left
}

// weigh turns a reading, which asks for a pace factor times the model's, into evidence. core is the
// core at the reading for a pace; spread is the model's error of the pace, as a logarithm. Where
// the pace hardly changes the core, the probe's error is larger and the reading tells nothing.
func weigh(r *formula.Reading, factor, spread float64, core func(pace float64) float64) evidence {
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
	return evidence{weight * math.Log(factor), math.Sqrt(1 - weight)}
}

// noEvidence is the evidence of an uninformative reading.
var noEvidence = evidence{left: 1}

// learn gives a reading's evidence to all three runs, by the middle one, which has
// entered its surroundings.
func (f *Simulator) learn(step *formula.Step, e environment) evidence {
	seconds, ok := readAt(step, e)
	if !ok {
		return noEvidence
	}
	l := &f.runs[figure.Middle]
	w := &l.walk
	own := f.ownAt(l, e, seconds)
	factor, ok := w.ScaleFor(heat.Core, step.Reading.Temp.Mid()-own, seconds)
	if !ok {
		return noEvidence
	}
	defer w.SetScale(1)
	spread := math.Log1p(f.timeError(l, e)) + f.evidence[e.air].left*math.Log(e.h/e.covered)/2
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
) evidence {
	seconds, ok := readAt(step, e)
	if !ok {
		return noEvidence
	}
	read := step.Reading.Temp.Mid()
	var hours [figure.Runs]float64
	for i := range hours {
		hours[i] = baths[i].TimeTo(read, longestWatch)
	}
	factor := hours[figure.Middle] / seconds
	if !(factor >= heat.LowestScale && factor <= heat.HighestScale) || !(hours[figure.Low] > 0) {
		return noEvidence
	}
	spread := math.Log(min(hours[figure.High]/hours[figure.Low], heat.HighestScale)) / 2
	return weigh(step.Reading, factor, spread, func(pace float64) float64 {
		c := baths[figure.Middle]
		c.Hasten(pace)
		return c.Advance(seconds).CoreC
	})
}
