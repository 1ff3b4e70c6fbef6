package heat

import (
	"math"

	"forebake/engine/figure"
)

// OwnHeatModel is how the heat of a working dough is known.
var OwnHeatModel = figure.Model{
	Name:  "own heat",
	Gives: "heat that yeast makes in a dough",
	Unit:  "W/kg at 26 C",
	Source: "gas of one baker's yeast in plain dough at two doses (Rincon et al. 2001, read) at " +
		"2 kJ a litre; bakers say 1 to 2 K an hour (read)",
	Error:  "factor 1.6",
	Limits: []figure.Limit{ownHeatYeast},
}

var ownHeatYeast = figure.Limit{
	Quantity: "the yeast, as instant on flour,",
	Unit:     "%",
	Low:      0,
	High:     6,
	Why:      "own heat is reckoned",
}

// OwnHeatFactor is the error factor of a working dough's heat, either way.
const OwnHeatFactor = 1.6

const (
	ownHeatAtOne = 0.94 // W/kg at 26 C with 1 % instant yeast on flour
	ownHeatPower = 0.7  // of the dose: twice the yeast makes 1.6 times the gas
)

// OwnHeat is a dough's heat at 26 C, W/kg, by its yeast in % on flour, as instant, and the osmotic
// factor. why is the reason for silence. At other temperatures it follows the yeast's gas.
func OwnHeat(yeastPct, osmotic float64) (q figure.Estimate, why string) {
	if why := ownHeatYeast.Refuses(yeastPct); why != "" {
		return q, why
	}
	if !(osmotic >= 0) || math.IsInf(osmotic, 1) {
		return q, "what slows the yeast is not known"
	}
	mid := ownHeatAtOne * math.Pow(yeastPct, ownHeatPower) * osmotic
	return figure.WithinFactor(mid, OwnHeatFactor), ""
}

// Excess is a body's excess temperature from own heat: the final one for each W/kg, and its time
// constant. On the way it errs by a tenth of the excess (computed). Volumes follows bodies for
// which this is too rough.
type Excess struct {
	inTheEnd State   // K for each W/kg
	tau      float64 // s
	cp       float64 // J/(kg K)
}

// OwnExcess is a body's excess under a coefficient h, W/(m2 K), with d = half thickness L times
// surface over volume: in the middle q rho (L^2/(2 d k) + L/(d h)), on average q rho (L^2/(d (d+2)
// k) + L/(d h)), exact for slab, cylinder and ball (derived); on the way there one exponential.
// +Inf for an insulated body.
func OwnExcess(b Body, p Properties, h float64) Excess {
	l := b.Nearest()
	d := l * b.AreaPerVolume()
	perHeat := p.DensityKgM3 * l / d
	mean := perHeat * (l/((d+2)*p.ConductivityWmK) + 1/h)
	return Excess{
		State{perHeat * (l/(2*p.ConductivityWmK) + 1/h), mean, perHeat / h},
		p.SpecificHeat * mean,
		p.SpecificHeat,
	}
}

// After is the excess, K, that a body reaches from another in the given
// seconds, while it makes wkg W/kg. Nothing warms faster by its own
// heat than a body without losses; a deficit fades by what is around.
func (e Excess) After(from State, wkg, seconds float64) State {
	if math.IsInf(e.tau, 1) {
		return State{math.NaN(), math.NaN(), math.NaN()}
	}
	share := -math.Expm1(-math.Max(seconds, 0) / e.tau)
	most := wkg * math.Max(seconds, 0) / e.cp
	to := func(was, inTheEnd float64) float64 {
		deficit := math.Min(was, 0)
		was -= deficit
		return deficit*(1-share) + was + math.Min((wkg*inTheEnd-was)*share, most)
	}
	s := State{
		CoreC:    to(from.CoreC, e.inTheEnd.CoreC),
		MeanC:    to(from.MeanC, e.inTheEnd.MeanC),
		SurfaceC: to(from.SurfaceC, e.inTheEnd.SurfaceC),
	}
	s.CoreC, s.SurfaceC = math.Max(s.CoreC, s.MeanC), math.Min(s.SurfaceC, s.MeanC)
	return s
}

// InTheEnd is the core's final excess of a body that makes wkg W/kg, K.
func (e Excess) InTheEnd(wkg float64) float64 { return wkg * e.inTheEnd.CoreC }
