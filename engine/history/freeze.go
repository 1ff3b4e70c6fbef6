package history

import (
	"math"

	"forebake/engine/science/melt"
)

// ice is the water of the part that can freeze, with the onset of one run.
func (f *Simulator) ice(l *run) melt.Ice {
	i := f.setup.Material.Ice
	i.OnsetC = f.setup.Material.OnsetC.At(l.which)
	return i
}

// freezes reports whether some of the water of a run is ice in a stage, at its start or its end.
func (f *Simulator) freezes(l *run, e environment) bool {
	i := f.ice(l)
	return i.Freezes() && min(f.now(l).CoreC, f.now(l).MeanC, l.ambient(e)) < i.OnsetC
}

// freezePace is how much faster than the middle a run freezes or thaws, by the model's error; 1 for
// one that does neither.
func (f *Simulator) freezePace(l *run, e environment) float64 {
	if !f.freezes(l, e) {
		return 1
	}
	cooling := f.now(l).MeanC > l.ambient(e)
	return f.speedOf(l, melt.FreezeFactor-1, cooling)
}

// mayFreeze reports whether a stage is so cold that water without anything in it would freeze.
func (f *Simulator) mayFreeze(e environment) bool {
	coldest := e.ambient.Lo
	for i := range f.runs {
		coldest = math.Min(coldest, f.now(&f.runs[i]).MeanC)
	}
	return coldest < 0
}

// melts reports whether the chocolate of a run sets or melts in a stage: it takes half as much heat
// again as the way itself.
func (f *Simulator) melts(l *run, e environment) bool {
	t := f.now(l).MeanC
	return f.setup.Material.Chocolate > 0 && min(t, l.ambient(e)) < melt.ChocolateRuns &&
		max(t, l.ambient(e)) > melt.ChocolateSets
}
