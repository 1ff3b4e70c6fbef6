package melt

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/science/heat"
)

// FreezeModel is how freezing and thawing are known.
var FreezeModel = figure.Model{
	Name:  "freezing and thawing",
	Gives: "temperatures through the freezing range, by heat.Volumes with the curves of an Ice",
	Unit:  "C, s",
	Source: "freezing onset -1.86 K for each osmol/kg; ice grows as 1 - onset/T; water bound by " +
		"solids does not freeze; heat and conductivity by composition (Choi & Okos 1986, read; " +
		"bound water memory)",
	Error: "factor 1.4 in time (Plank's formula is good to 30 %); " +
		"onset 1.3 K too high in lean dough",
	Limits: []figure.Limit{onsetMolality, iceOnset, freezerRange},
}

var (
	onsetMolality = figure.Limit{
		Quantity: "the water of the food",
		Unit:     "osmol/kg",
		Low:      0,
		High:     8,
		Why:      "freezing is reckoned",
	}
	iceOnset = figure.Limit{
		Quantity: "the onset of freezing",
		Unit:     "C",
		Low:      -16.5, // of the strongest water, with the error
		High:     -0.1,
		Why:      "freezing is reckoned",
	}
	freezerRange = figure.Limit{
		Quantity: "the freezer",
		Unit:     "C",
		Low:      -45,
		High:     0,
		Why:      "freezing is reckoned",
	}
)

// Models are all that give figures with an error of their own.
var Models = []*figure.Model{&FreezeModel}

// FreezeFactor is the error factor of a time to freeze or thaw.
const FreezeFactor = 1.4

const (
	meltingHeat   = 334e3 // J per kg of ice (read)
	onsetPerOsmol = 1.86  // K kg/osmol
	boundWater    = 0.3   // kg of water that each kg of fat-free solids binds (memory)
)

// onsetError is how far below OnsetC freezing may begin, K: 1.3 K lower
// in lean dough, from the change of its freezing point with osmotic
// pressure (Loveday & Winger 2007, read).
const onsetError = 1.3

// thinnestMolality stands for thinner water, osmol/kg, up to none dissolved:
// pure water freezes 0.2 K above it (computed), well under onsetError.
const thinnestMolality = 0.1

// OnsetC is where a food begins to freeze, C, by the osmoles in each kg
// of free water. why is the reason for silence.
func OnsetC(molality float64) (onset figure.Estimate, why string) {
	if why := onsetMolality.Refuses(molality); why != "" {
		return onset, why
	}
	mid := -onsetPerOsmol * math.Max(molality, thinnestMolality)
	return figure.Estimate{Low: mid - onsetError, Mid: mid, High: mid}, ""
}

// Ice is the water of a food that can freeze.
type Ice struct {
	Made   heat.Composition
	Gas    float64 // share of the volume
	OnsetC float64
}

// freezable is the water that freezes in the end, kg/kg; never below 0.
func (i Ice) freezable() float64 {
	solids := i.Made.Protein + i.Made.Carbohydrate + i.Made.Fibre + i.Made.Ash
	return math.Max(i.Made.Water-boundWater*solids, 0)
}

// Freezes reports whether some of the water can freeze.
func (i Ice) Freezes() bool { return i.OnsetC < 0 && i.freezable() > 0 }

// Share is the ice in a kg of food at tC, kg.
func (i Ice) Share(tC float64) float64 {
	if !(tC < i.OnsetC) {
		return 0
	}
	return i.freezable() * (1 - i.OnsetC/tC)
}

// latent is the specific heat that ice adds at tC, J/(kg K): the change
// of Share.
func (i Ice) latent(tC float64) float64 {
	if !(tC < i.OnsetC) {
		return 0
	}
	return meltingHeat * i.freezable() * -i.OnsetC / (tC * tC)
}

// The ends of a food's curves and the step between points, C; beyond
// they are level.
const curveLow, curveHigh, curveStep = -45.0, 45.0, 0.2

// Heats are a food's specific heat by temperature, J/(kg K), and its
// conductivity as a share of the one above freezing: for
// heat.Volumes.SetSpecificHeat and SetConductivity. cp is its specific
// heat unfrozen, butterfat its mass share that sets and melts. why is
// the reason for silence.
//
// Supercooling is left out: the core drops a little early, then waits.
// Thawing is the reverse.
func (i Ice) Heats(cp, butterfat float64) (specificHeat, conductivity heat.Curve, why string) {
	if why := iceOnset.Refuses(i.OnsetC); why != "" {
		return heat.Curve{}, heat.Curve{}, why
	}
	plain, ok := i.at(0)
	if !ok || !(cp > 0) || math.IsInf(cp, 1) {
		return heat.Curve{}, heat.Curve{},
			"the make-up of the food is none that freezing can be reckoned for"
	}
	n := int(math.Round((curveHigh-curveLow)/curveStep)) + 1
	shares := make([]float64, 0, n)
	specificHeat = heat.NewCurve(curveLow, curveHigh, n, func(tC float64) float64 {
		c, share := cp, 1.0
		if tC < i.OnsetC {
			p, _ := i.at(tC)
			c = cp*p.SpecificHeat/plain.SpecificHeat + i.latent(tC)
			share = p.ConductivityWmK / plain.ConductivityWmK
		}
		if butterfat > 0 {
			c += milkFatHeat(butterfat, tC)
		}
		shares = append(shares, share)
		return c
	})
	conductivity = heat.NewCurve(curveLow, curveHigh, n, func(tC float64) float64 {
		return shares[int(math.Round((tC-curveLow)/curveStep))]
	})
	return specificHeat, conductivity, ""
}

// at gives the food's properties without latent heat, with some water
// as ice.
func (i Ice) at(tC float64) (heat.Properties, bool) {
	return heat.PropertiesWithIce(i.Made, i.Share(tC), tC, i.Gas)
}
