package heat

import "math"

// Composition is a food's mass fractions, which sum to 1. Carbohydrate is without
// fibre; sugar belongs in Carbohydrate and salt in Ash.
type Composition struct {
	Water, Protein, Fat, Carbohydrate, Fibre, Ash float64
}

// Properties are a food's thermal properties at one temperature.
//
// Errors, either way: SpecificHeat 5 % (10 % for dry powders and chocolate, always
// too high there); DensityKgM3 5 % once the gas is known; ConductivityWmK 12 % (20
// % above 30 % fat or 30 % gas); DiffusivityM2s 15 %.
type Properties struct {
	SpecificHeat    float64 // J/(kg K), sensible heat only
	DensityKgM3     float64 // kg/m3, gas included
	ConductivityWmK float64 // W/(m K), gas included
	DiffusivityM2s  float64 // m2/s: conductivity / (density * specific heat)
}

// Range of PropertiesAt. Below 0 C water freezes and the table has other rows; sums
// of measured compositions vary by SumTolerance.
const (
	LowestC, HighestC = 0, 150
	SumTolerance      = 0.03
)

// The components, in the order of Composition's fields, with air last.
const (
	water = iota
	protein
	fat
	carbohydrate
	fibre
	ash
	solidsAndWater // how many a Composition has
	ice            = solidsAndWater
	air            = ice + 1
)

// quadratic is c0 + c1*T + c2*T^2 with T in C.
type quadratic struct{ c0, c1, c2 float64 }

func (q quadratic) at(tC float64) float64 { return q.c0 + tC*(q.c1+tC*q.c2) }

// components is from Choi & Okos (1986), Effects of temperature and composition on
// the thermal properties of foods, as in ASHRAE Handbook - Refrigeration (2006) ch.
// 9 Tables 1-2; basis read. Air is a linear fit to Incropera & DeWitt, Fundamentals
// of Heat and Mass Transfer, Table A.4; basis memory; its mass and heat are zero.
//
// Published traps. The slope of fat's conductivity is -2.7604e-4: a reprint with
// -2.7604e-3 circulates and is copied; fat would fall to 0.015 W/(m K) at 60 C.
// Carbohydrate's is 1.3874e-3, not the 1.3874e-2 of the same reprint. Water's
// specific heat starts at 4176.2: ASHRAE from 2002 on prints 4128.9 for the same
// formula, 1.1 % below the measured 4176 +/- 8.
var components = [...]struct {
	specificHeat, density, conductivity quadratic // J/(kg K), kg/m3, W/(m K)
}{
	water: {
		quadratic{4176.2, -9.0864e-2, 5.4731e-3},
		quadratic{997.18, 3.1439e-3, -3.7574e-3},
		quadratic{0.57109, 1.7625e-3, -6.7036e-6},
	},
	protein: {
		quadratic{2008.2, 1.2089, -1.3129e-3},
		quadratic{1329.9, -0.51840, 0},
		quadratic{0.17881, 1.1958e-3, -2.7178e-6},
	},
	fat: {
		quadratic{1984.2, 1.4733, -4.8008e-3},
		quadratic{925.59, -0.41757, 0},
		quadratic{0.18071, -2.7604e-4, -1.7749e-7},
	},
	carbohydrate: {
		quadratic{1548.8, 1.9625, -5.9399e-3},
		quadratic{1599.1, -0.31046, 0},
		quadratic{0.20141, 1.3874e-3, -4.3312e-6},
	},
	fibre: {
		quadratic{1845.9, 1.8306, -4.6509e-3},
		quadratic{1311.5, -0.36589, 0},
		quadratic{0.18331, 1.2497e-3, -3.1683e-6},
	},
	ash: {
		quadratic{1092.6, 1.8896, -3.6817e-3},
		quadratic{2423.8, -0.28063, 0},
		quadratic{0.32962, 1.4011e-3, -2.9069e-6},
	},
	ice: {
		quadratic{2062.3, 6.0769, 0},
		quadratic{916.89, -0.13071, 0},
		quadratic{2.2196, -6.2489e-3, 1.0154e-4},
	},
	air: {quadratic{}, quadratic{}, quadratic{0.0243, 7.0e-5, 0}},
}

// PropertiesAt gives the properties of a food of composition c at tC in C, with
// gasFraction of its volume gas (mixed dough 0.05-0.15, proofed 0.60-0.70, memory;
// the largest unknown of all).
//
// Specific heats add by mass and volumes add. Conductivity is the parallel model,
// right for watery mixes; where fat is over half the volume (butter, chocolate,
// ganache) it is Maxwell-Eucken with fat continuous and the rest dispersed, which
// takes butter from 0.240 to 0.215 W/(m K) (one printed value is 0.197, read) and
// makes a step at one half. Gas is then dispersed in the whole, Maxwell-Eucken
// again. In hot, well-proofed crumb vapour carries more heat than this: published
// diffusivities are three to four times higher.
//
// Evaluate at the mean of start and ambient. Holding the properties over a stage
// costs under 3 % for dough at 4-30 C (computed).
//
// ok is false for a temperature outside LowestC..HighestC, a gas fraction outside
// [0, 1), a fraction that is negative or not a number, and a sum off 1 by more than
// SumTolerance; within it the fractions are scaled to 1.
func PropertiesAt(c Composition, tC, gasFraction float64) (p Properties, ok bool) {
	if !(tC >= LowestC && tC <= HighestC) {
		return Properties{}, false
	}
	return PropertiesWithIce(c, 0, tC, gasFraction)
}

// PropertiesWithIce is PropertiesAt with some water as ice, kg in a kg of food, and
// from -40 C on.
func PropertiesWithIce(c Composition, frozen, tC, gasFraction float64) (p Properties, ok bool) {
	fractions := [solidsAndWater + 1]float64{
		c.Water - frozen,
		c.Protein,
		c.Fat,
		c.Carbohydrate,
		c.Fibre,
		c.Ash,
		frozen,
	}
	sum := 0.0
	for _, w := range fractions {
		if !(w >= 0) {
			return Properties{}, false
		}
		sum += w
	}
	if !(math.Abs(sum-1) <= SumTolerance) || !(gasFraction >= 0 && gasFraction < 1) {
		return Properties{}, false
	}
	tC = math.Max(tC, -40)

	// Volumes and k*volume are per kg of food until divided by the whole volume.
	var volume, fatVolume, conductance float64
	for i, w := range fractions {
		w /= sum
		c, tC := &components[i], tC
		if i == water {
			tC = math.Max(tC, 0) // what stays liquid below 0 C keeps its figures of 0 C
		}
		v := w / c.density.at(tC)
		p.SpecificHeat += w * c.specificHeat.at(tC)
		volume += v
		conductance += v * c.conductivity.at(tC)
		if i == fat {
			fatVolume = v
		}
	}
	k := conductance / volume
	if rest := volume - fatVolume; fatVolume > volume/2 && rest > 0 {
		kFat := components[fat].conductivity.at(tC)
		kRest := (conductance - fatVolume*kFat) / rest
		k = maxwellEucken(kFat, kRest, rest/volume)
	}
	p.DensityKgM3 = (1 - gasFraction) / volume
	p.ConductivityWmK = maxwellEucken(k, components[air].conductivity.at(tC), gasFraction)
	p.DiffusivityM2s = p.ConductivityWmK / (p.DensityKgM3 * p.SpecificHeat)
	return p, true
}

// maxwellEucken gives the conductivity of a continuous phase with another dispersed
// at the volume fraction e.
func maxwellEucken(continuous, dispersed, e float64) float64 {
	gap := continuous - dispersed
	return continuous * (2*continuous + dispersed - 2*e*gap) / (2*continuous + dispersed + e*gap)
}
