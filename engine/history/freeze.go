package history

import (
	"math"

	"forebake/engine/science/melt"
)

func (f *Simulator) ice(l *run) melt.Ice {
	i := f.setup.Material.Ice
	i.OnsetC = f.setup.Material.OnsetC.At(l.which)
	return i
}

// freezes reports whether some water of a run is ice at a stage's start or end.
func (f *Simulator) freezes(l *run, e environment) bool {
	i := f.ice(l)
	return i.Freezes() && min(f.now(l).CoreC, f.now(l).MeanC, l.ambient(e)) < i.OnsetC
}

// freezePace is how much faster than the middle a run freezes or thaws, by the
// model's error; 1 for one that does neither.
func (f *Simulator) freezePace(l *run, e environment) float64 {
	if !f.freezes(l, e) {
		return 1
	}
	cooling := f.now(l).MeanC > l.ambient(e)
	return f.speedOf(l, melt.FreezeFactor-1, cooling)
}

// mayFreeze reports whether a stage is cold enough to freeze pure water.
func (f *Simulator) mayFreeze(e environment) bool {
	coldest := e.ambient.Lo
	for i := range f.runs {
		coldest = math.Min(coldest, f.now(&f.runs[i]).MeanC)
	}
	return coldest < 0
}

// melts reports whether a run's chocolate sets or melts in a stage, which adds half
// the heat again.
func (f *Simulator) melts(l *run, e environment) bool {
	t := f.now(l).MeanC
	return f.setup.Material.Chocolate > 0 && min(t, l.ambient(e)) < melt.ChocolateRuns &&
		max(t, l.ambient(e)) > melt.ChocolateSets
}
