// Package ferment models the gas rate of baker's yeast in a dough. It
// gives the molality of the dough's water, a strain's pace by molality
// and temperature, the heat that kills it, and the error of a rise.
//
// Packages facts and history call it. It reads no ingredient table and
// follows no step. Yeast mass is constant for 2 h (+26 % from 2 to 4 h,
// read); growth overnight is left out. It does not apply to panettone
// or sourdough, which have other yeasts.
//
// A rise is counted in percent-hours at 26 C:
//
//	E = integral of TemperatureFactor(T) * OsmoticFactor(m) * Y dt
//
// with Y the yeast in % on flour as instant and t in hours. The
// evidence is weak: each figure carries its error.
package ferment

import "math"

// osmoticError is the error factor of OsmoticFactor, either way: rms in
// the fit 1.3, rounded up (judgement).
const osmoticError = 1.5

// ColdBelowC is the start of the cold that TemperatureFactor knows
// least, C.
const ColdBelowC = 8

// DoublingE is one doubling, percent-hours at 26 C: the mean of three
// published cards, 1.06, 1.21 and 1.54 by this model (computed).
const DoublingE = 1.25

// CardsOwnHeat is the factor of equivalent hours that those cards gain
// with their doughs' own heat, which DoublingE left out: 1.045 and
// 1.073 (computed). Hours that include it are divided by this.
const CardsOwnHeat = 1.06

// Molar masses in kg per mol, and the two working figures of Molality.
const (
	molarDisaccharide   = 0.3423
	molarMonosaccharide = 0.1802
	molarSalt           = 0.05844

	// FlourSugar is the sugar in flour, as a fraction of its mass,
	// counted as monosaccharide.
	FlourSugar = 0.015
	// BoundWater is flour's water that dissolves nothing, per mass of
	// flour: a working assumption (a fit on total water does as well).
	BoundWater = 0.12
)

// Solutes is what a dough's water holds, in grams. FlourG is all the
// flour, preferments included; WaterG is all the ingredients' water but
// the flour's own 14 %. MonosaccharideG is glucose, fructose, galactose
// and invert sugar. OtherG is anything else that dissolves, with its
// mean molar mass OtherMolar in g/mol, one osmole a mole.
type Solutes struct {
	SucroseG, MonosaccharideG, LactoseG, MaltoseG, SaltG float64
	OtherG, OtherMolar                                   float64
	WaterG, FlourG                                       float64
}

// Molality gives osmoles per kg of free water.
//
// Sucrose counts twice: invertase splits it within tens of minutes of
// mixing (Voica & Codina, read). Salt counts twice for its two ions.
// Maltose counts once, since yeast splits it inside the cell
// (judgement), and lactose once, since yeast leaves it. Alcohol is left
// out: no figure for its effect in dough was found.
//
// At 24.5 atm per osmol/kg a lean dough has 39 atm and one of 20 %
// sugar 97; a fermentation handbook has 35 to 100 atm over the range of
// formulas (read).
//
// ok is false where the flour binds all the water (WaterG <=
// 0.12*FlourG), where a mass is negative or not finite, and where
// OtherG has no molar mass.
func Molality(s Solutes) (osmolPerKg float64, ok bool) {
	other := 0.0
	if s.OtherG != 0 {
		if !(s.OtherMolar > 0) {
			return 0, false
		}
		other = s.OtherG / s.OtherMolar
	}
	for _, grams := range [...]float64{
		s.SucroseG, s.MonosaccharideG, s.LactoseG, s.MaltoseG, s.SaltG, s.OtherG,
		s.WaterG, s.FlourG,
	} {
		if !(grams >= 0) {
			return 0, false
		}
	}
	freeWaterG := s.WaterG - BoundWater*s.FlourG
	if !(freeWaterG > 0) || math.IsInf(freeWaterG, 1) {
		return 0, false
	}
	mmol := (2*s.SucroseG+s.LactoseG+s.MaltoseG)/molarDisaccharide +
		(s.MonosaccharideG+FlourSugar*s.FlourG)/molarMonosaccharide + 2*s.SaltG/molarSalt +
		1000*other
	m := mmol / freeWaterG
	if math.IsInf(m, 0) || math.IsNaN(m) {
		return 0, false
	}
	return m, true
}

// Strain is a kind of baker's yeast.
type Strain int

// The strains. Unsaid is yeast of an unwritten strain: the standard
// curve, with the wider error.
const (
	Standard Strain = iota
	Osmotolerant
	Unsaid
)

// halfPaceMolality is where standard yeast works at half its pace,
// osmol/kg: fitted to six points with the exponent of the Hill curve.
// The fit gives 3.31 +/- 0.38 and 4.1 +/- 1.5; the exponent is rounded
// to 4.
const halfPaceMolality = 3.3

// OsmoticFactor gives standard yeast's gas rate at a molality in osmol
// per kg of free water, against the same without stress (1): 1 / (1 +
// (m/3.3)^4), a fit to six points (computed). Pace has the other
// strains, the error and the range. NaN for a molality that is negative
// or NaN.
func OsmoticFactor(molality float64) float64 {
	if !(molality >= 0) {
		return math.NaN()
	}
	x := molality / halfPaceMolality
	x *= x
	return 1 / (1 + x*x)
}

// Cardinal temperatures of gas production in dough, C, fitted to four
// relative rates (three practitioner statements, one trade magazine's)
// with priors set by hand (computed). Growth runs cooler (34.5 and
// 41.8): its constants do not serve for proofing.
const (
	GasMinimumC = 0.5
	GasOptimumC = 38
	GasMaximumC = 45
	ReferenceC  = 26 // inside the published dough temperatures, where the curve is best known
)

// cardinal is the cardinal temperature model with inflection (Rosso
// 1993), 1 at the optimum.
func cardinal(tC float64) float64 {
	if tC <= GasMinimumC || tC >= GasMaximumC {
		return 0
	}
	above := tC - GasMinimumC
	const span = GasOptimumC - GasMinimumC
	return (tC - GasMaximumC) * above * above /
		(span * (span*(tC-GasOptimumC) - (GasOptimumC-GasMaximumC)*(GasOptimumC+GasMinimumC-2*tC)))
}

var cardinalAtReference = cardinal(ReferenceC)

// TemperatureFactor gives the gas rate at a dough temperature in C
// against 26 C (1). It is 0.021 at 4 C, 1.653 at the optimum of 38 C,
// and 0 at or outside 0.5 and 45 C. 0 above 45 C is not death: see
// Dead. TemperatureError has its error. NaN for NaN.
func TemperatureFactor(tC float64) float64 {
	return cardinal(tC) / cardinalAtReference
}
