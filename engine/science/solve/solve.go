// Package solve chooses the solver of a body that makes heat of its
// own, melts, freezes or has been baked. Walk of package heat has
// constant properties and cannot follow it.
package solve

import (
	"forebake/engine/science/bake"
	"forebake/engine/science/collocation"
	"forebake/engine/science/ferment"
	"forebake/engine/science/heat"
	"forebake/engine/science/melt"
)

// Stage is all that a course hangs on: a body of even temperature,
// and what is around it.
type Stage struct {
	Dimension, HalfM     float64 // see heat.Body.EquivalentDimension; m
	Properties           heat.Properties
	TC, AmbientC, H      float64  // C, C and W/(m2 K)
	OwnHeat              float64  // W/kg at 26 C; 0 for what does not ferment
	Freezes              bool     // some of its water is ice, at one end of the stage at least
	Ice                  melt.Ice // of what freezes
	Sets                 bool     // its chocolate sets or melts
	Crumb                bool     // baked: its conductivity falls as it cools
	Butterfat, Chocolate float64  // shares of the mass
}

// Solver follows a body from the beginning of a stage on.
type Solver interface {
	// Advance moves now on by the given seconds and gives the
	// state there.
	Advance(seconds float64) heat.State
	// TimeTo is the time from now, s and at most within, at which
	// the temperature at p is targetC; +Inf when that does not
	// happen. Nothing changes.
	TimeTo(p heat.Point, targetC, within float64) float64
}

// Solvers holds the memory of the solvers: one course is
// followed at a time. The zero Solvers is ready; it belongs to
// one goroutine.
type Solvers struct {
	volumes heat.Volumes
	nodes   collocation.Body
	curves  melt.Curves
	times   map[reached]float64 // see TimeTo
}

// reached is what a time to a temperature hangs on.
type reached struct {
	begin           Stage
	targetC, within float64
}

// mostTimes is how many times are remembered: those of one formula in all its readings.
const mostTimes = 2048

// TimeTo is Solver.TimeTo of the core from the beginning of a stage. The last ones are remembered:
// most readings of a formula, and most amounts that are tried, leave most stages as they are.
func (s *Solvers) TimeTo(b Stage, targetC, within float64) float64 {
	k := reached{b, targetC, within}
	t, known := s.times[k]
	if !known {
		t = s.Start(b).TimeTo(heat.Core, targetC, within)
		if s.times == nil || len(s.times) >= mostTimes {
			s.times = make(map[reached]float64)
		}
		s.times[k] = t
	}
	return t
}

// pace is how hard yeast works by temperature, as a share of 26 C.
var pace = heat.NewCurve(-30, 45, 301, ferment.TemperatureFactor)

// Start begins a stage: by finite volumes where water freezes or
// chocolate sets, since a front moves into the body, else by
// collocation. The solver is good until the next Start.
func (s *Solvers) Start(b Stage) Solver {
	cp := b.Properties.SpecificHeat
	if b.Freezes || b.Sets {
		v := &s.volumes
		v.Start(b.Dimension, b.HalfM, b.Properties, b.TC)
		if b.OwnHeat > 0 {
			v.SetOwnHeat(b.OwnHeat, pace)
		}
		if b.Freezes {
			t := s.curves.Freezing(b.Ice, cp, b.Butterfat)
			v.SetSpecificHeat(t.SpecificHeat)
			v.SetConductivity(t.Conductivity)
		} else {
			v.SetSpecificHeat(s.curves.Chocolate(cp, b.Chocolate))
		}
		v.Stage(b.AmbientC, b.H)
		return v
	}
	n := &s.nodes
	n.Start(b.Dimension, b.HalfM, b.Properties, b.TC)
	n.SetOwnHeat(b.OwnHeat, pace)
	if b.Crumb {
		n.SetConductivity(bake.CrumbShare)
	} else if b.Butterfat > 0 {
		n.SetSpecificHeat(s.curves.Butter(cp, b.Butterfat))
	}
	n.Stage(b.AmbientC, b.H)
	return n
}
