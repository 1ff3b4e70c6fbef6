package heat

import "math"

// Place is a kind of surroundings.
type Place uint8

// The places. A crowded tray or shelf is one slab, not separate pieces.
const (
	Room         Place = iota // still air, bench or shelf; below 3 K difference use RoomNearly
	Fridge                    // no fan; 5 on a full shelf, 4-5 in a lidded box
	FanFridge                 // retarder, reach-in, walk-in
	Blast                     // blast chiller
	Freezer                   // still air
	BlastFreezer              // moving air
	IceBath                   // ice and water, still; outside of a thin vessel
	StirredBath               // ice and water, stirred or running
	placeCount
)

// Places is how many kinds of surroundings there are, numbered from 0.
const Places = int(placeCount)

// RoomNearly is the typical coefficient in a room less than 3 K away from the body, W/(m2 K), where
// natural convection fades (computed, memory).
const RoomNearly = 7.0

// Coefficient is a surface coefficient, W/(m2 K), radiation included. For food safety take Low.
// Error of Typical: 30 % either way in air, 50 % in ice water.
type Coefficient struct {
	Low, Typical, High float64
	Source, Basis      string
}

const (
	natural = "computed from Nu = 0.54 Ra^0.25 (top), 0.27 Ra^0.25 (bottom), 0.59 Ra^0.25 " +
		"(sides), emissivity 0.9; Incropera eqs 9.26-9.32"
	forced = "computed from Nu = 0.664 Re^0.5 Pr^(1/3), 0.1-0.2 m; Incropera eq. 7.30"
)

var coefficients = [placeCount]Coefficient{
	Room:      {6, 9, 11, natural, "memory"},
	Fridge:    {5, 8, 11, natural, "memory"},
	FanFridge: {9, 13, 18, forced, "memory"},
	Blast:     {17, 25, 35, forced, "memory"},
	Freezer:   {5, 9, 12, natural, "memory"},
	BlastFreezer: {
		15,
		25,
		50,
		"Heldman & Singh, Food Process Engineering / IIR freezing guides",
		"memory",
	},
	// The computed middle is 400 with a wall at 30 C; it falls as the
	// wall nears 4 C, where water hardly expands: use 300.
	IceBath: {
		200,
		300,
		800,
		"computed from Nu = 0.59 Ra^0.25, 80 mm high; Incropera eq. 9.26",
		"memory",
	},
	StirredBath: {
		500,
		1000,
		2000,
		"Singh & Heldman, Introduction to Food Engineering, Table 4.2 (water, forced 50-10000)",
		"memory",
	},
}

// SurfaceCoefficient is a place's coefficient, open and dry.
// Evaporation is left out, which is the slow and safe side for cooling.
func SurfaceCoefficient(p Place) (Coefficient, bool) {
	if p >= placeCount {
		return Coefficient{}, false
	}
	return coefficients[p], true
}

// StillAir is the coefficient between a surface and still air, radiation included, W/(m2 K). It is
// 9 for a dough at 26 C in a room of 22, 12.8 for a loaf at 60 C.
func StillAir(surfaceC, airC float64) float64 {
	return convection(math.Abs(surfaceC-airC)) + Radiation(surfaceC, airC)
}

// convection is StillAir's convective part by the difference, K: natural convection by its fourth
// root (Incropera eqs 9.26-9.32, memory).
func convection(difference float64) float64 {
	return stillConvection * math.Pow(difference/stillDifference, 0.25)
}

// stillConvection is convection, W/(m2 K), at a difference of stillDifference, K, for a piece of
// 0.1 m: top 4.2, bottom 2.1, sides 4.4 (computed).
const stillConvection, stillDifference = 3.7, 4.0

// Dew is what condensation adds to StillAir on a surface colder than moist air, W/(m2 K). The water
// settles from air of a relative humidity, 0 to 1, by the Chilton-Colburn analogy with Le^(2/3) =
// 0.88 (Incropera eq. 6.60, memory). It is 0 above the dew point.
func Dew(surfaceC, airC, humidity float64) float64 {
	const lewis, airHeat, latent = 0.88, 1200, 2.45e6 // -, J/(m3 K), J/kg
	difference := airC - surfaceC
	settles := humidity*Saturated(airC) - Saturated(surfaceC)
	if !(difference > 0) || !(settles > 0) {
		return 0
	}
	return convection(difference) / (airHeat * lewis) * latent * settles / difference
}

// Saturated is the water in saturated air, kg/m3, at -20 to 60 C, by
// Magnus' formula within 0.3 % (memory).
func Saturated(tC float64) float64 {
	const gas = 461.5 // J/(kg K), of water vapour
	return 611.2 * math.Exp(17.62*tC/(243.12+tC)) / (gas * (tC + 273.15))
}

// SurfaceLag is a surface's mean difference from the air over a cooling or warming, as a share of
// the body's first difference. There its coefficient is the mean one (judgement).
const SurfaceLag = 1. / 3

// Layer is something between a surface and its surroundings.
type Layer uint8

// The layers.
const (
	LiddedBox  Layer = iota // lid over an air space above 15 mm
	Plastic2mm              // vessel wall
	Steel1mm                // vessel wall
	layerCount
)

// Resistance is thickness over conductivity of a layer, m2 K/W.
type Resistance struct {
	Low, Typical, High float64
	Source, Basis      string
}

const overK = "thickness / conductivity"

var resistances = [layerCount]Resistance{
	LiddedBox: {0.17, 0.18, 0.25, "gap coefficient estimate", "memory"},
	// An eighth of an inch slows like as much more food; foam far more.
	Plastic2mm: {0.01, 0.01, 0.01, "Dickerson & Read (1973), Cooling rates of foods", "read"},
	Steel1mm:   {0.00006, 0.00006, 0.00006, overK, "memory"},
}

// LayerResistance is the resistance of a layer.
func LayerResistance(l Layer) (Resistance, bool) {
	if l >= layerCount {
		return Resistance{}, false
	}
	return resistances[l], true
}

// InSeries is the coefficient, W/(m2 K), of a surface with coefficient h behind layers of the given
// resistances, m2 K/W: 1/(1/h + sum). It is 0 for h 0.
func InSeries(h float64, resistances ...float64) float64 {
	if h == 0 {
		return 0
	}
	sum := 1 / h
	for _, r := range resistances {
		sum += r
	}
	return 1 / sum
}

// Radiation is the radiant part of a surface coefficient, W/(m2 K), between a surface and
// surroundings at the given temperatures, C. Emissivity is 0.9; it is exact for grey bodies: 4.9 in
// a fridge, 5.3 on a bench, 15 in an oven at 200 C.
func Radiation(surfaceC, surroundingsC float64) float64 {
	const emissivity, stefan, zero = 0.9, 5.67e-8, 273.15
	s, a := surfaceC+zero, surroundingsC+zero
	return emissivity * stefan * (s*s + a*a) * (s + a)
}
