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
	Source: "gas of one baker's yeast in plain dough at two doses (Rincon et al. 2001, read) at 2 kJ a " +
		"litre; bakers say 1 to 2 K an hour (read)",
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

// OwnHeatFactor is how far the heat of a working dough may be off, either way.
const OwnHeatFactor = 1.6

const (
	ownHeatAtOne = 0.94 // W/kg at 26 C with 1 % instant yeast on flour
	ownHeatPower = 0.7  // of the dose: twice the yeast makes 1.6 times the gas
)

// OwnHeat is the heat that a dough makes at 26 C, W/kg, by its yeast in per cent of the flour, as
// instant, and the factor that sugar and salt slow it by. why is the reason for silence. At other
// temperatures it goes as the yeast's gas does.
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

// Excess is how far its own heat keeps a body above the temperature that it would have without,
// when it makes the same heat all the time: for bodies so small that the excess is a kelvin or two.
// Above that the heat itself grows with it, and Volumes follows it.
type Excess struct {
	coreK, meanK float64 // in the end
	tau          float64 // s
}

// OwnExcess is the excess of a body of wkg W/kg under a coefficient h, W/(m2 K), with d = half
// thickness L times surface over volume: in the middle q rho (L^2/(2 d k) + L/(d h)), on average
// q rho (L^2/(d (d+2) k) + L/(d h)), exact for slab, cylinder and ball (derived); and
// on the way there as one exponential. +Inf for an insulated body.
func OwnExcess(wkg float64, b Body, p Properties, h float64) Excess {
	l := b.Nearest()
	d := l * b.AreaPerVolume()
	perHeat := p.DensityKgM3 * l / d
	mean := perHeat * (l/((d+2)*p.ConductivityWmK) + 1/h)
	return Excess{
		wkg * perHeat * (l/(2*p.ConductivityWmK) + 1/h),
		wkg * mean,
		p.SpecificHeat * mean,
	}
}

// After is the excess of core and mean, K, the given seconds after its beginning.
func (e Excess) After(seconds float64) (coreK, meanK float64) {
	if math.IsInf(e.tau, 1) {
		return math.NaN(), math.NaN()
	}
	share := -math.Expm1(-math.Max(seconds, 0) / e.tau)
	return e.coreK * share, e.meanK * share
}

// InTheEnd is the excess of the core that the body comes to, K.
func (e Excess) InTheEnd() float64 { return e.coreK }
