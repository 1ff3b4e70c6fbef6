package history

import (
	"math"

	"forebake/engine/science/heat"
	"forebake/engine/science/melt"
)

// frozen are the curves of a material that freezes, kept from stage to stage.
type frozen struct {
	ice                 melt.Ice
	cp, butterfat       float64
	specificHeat, share heat.Curve
	why                 string
}

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

// heats gives the curves of a run that freezes.
func (f *Simulator) heats(l *run) *frozen {
	m, c, i := f.setup.Material, &f.frozen[l.which], f.ice(l)
	if c.ice != i || c.cp != m.SpecificHeat || c.butterfat != m.Butterfat {
		*c = frozen{ice: i, cp: m.SpecificHeat, butterfat: m.Butterfat}
		c.specificHeat, c.share, c.why = i.Heats(m.SpecificHeat, m.Butterfat)
	}
	return c
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

// butterHeats is the curve of a material with butterfat in it, kept from stage to stage.
func (f *Simulator) butterHeats() heat.Curve {
	m, b := f.setup.Material, &f.butter
	if b.cp != m.SpecificHeat || b.share != m.Butterfat {
		*b = fatty{m.SpecificHeat, m.Butterfat, melt.MilkFatCurve(m.SpecificHeat, m.Butterfat)}
	}
	return b.heats
}

// chocolateHeats is the curve of a material with chocolate in it, kept from stage to stage.
func (f *Simulator) chocolateHeats() heat.Curve {
	m, c := f.setup.Material, &f.chocolate
	if c.cp != m.SpecificHeat || c.share != m.Chocolate {
		*c = fatty{m.SpecificHeat, m.Chocolate, melt.ChocolateHeats(m.SpecificHeat, m.Chocolate)}
	}
	return c.heats
}

// fatty is the curve of a material by its specific heat and the share of a fat in it.
type fatty struct {
	cp, share float64
	heats     heat.Curve
}
