// Package wateractivity estimates the water activity of sugar and salt
// solutions at 25 C: syrups, jams, fillings, ganaches, and the water of
// a dough or a crumb.
//
// Package facts calls it. It reads no ingredient table and never rounds
// towards safety. A food-safety answer takes Estimate's high end, which
// counts no water as bound.
//
// All sugars go into one equation for the mixture (Norrish R.S., J.
// Food Technol. 1:25, 1966; memory):
//
//	ln(aw/xw) = -(sum of sqrt(K) x)^2      x mole fractions, K one constant a solute
//
// Salt follows Pitzer and is multiplied in (Ross K.D., Food Technol.
// 29(3):26, 1975; memory). A product of single sugars, which Ross has
// too, reads high where sugars are mixed: 0.83 for a syrup published
// at 0.75.
package wateractivity

import (
	"math"

	"forebake/engine/figure"
)

// Class is a kind of food, by its published points' distance from
// the equation.
type Class uint8

// The classes.
const (
	Syrup   Class = iota // sugars in water: syrups, glazes, honey
	Custard              // milk, cream and egg with sugar; buttercream
	Jam                  // fruit and sugar: acid and pectin are left out
	Ganache              // chocolate and cream: cocoa solids hold water
	Crumb                // dough, cake and baked crumb: starch and protein hold water
	classCount
)

// Working errors in aw, either way: each holds its class's published
// points in testdata/tables/water-activity-mixtures.csv, and for Syrup
// those of water-activity.csv.
const (
	WorkingErrorSyrup   = 0.01
	WorkingErrorCustard = 0.02
	WorkingErrorJam     = 0.04
	WorkingErrorGanache = 0.03
	WorkingErrorCrumb   = 0.03

	// workingErrorStrong holds the points under aw 0.70 and those past
	// saturation. It comes in evenly from 0.75 down, so that a stronger
	// solution never has the higher high end.
	workingErrorStrong = 0.05
	strongBelow        = 0.70
	strongFrom         = 0.75
	// fructoseError times 1-aw holds the points of fructose alone; it
	// fades to zero where fructose is half of the sugars, where invert
	// sugar fits.
	fructoseError = 0.37
)

var workingErrors = [classCount]float64{
	Syrup: WorkingErrorSyrup, Custard: WorkingErrorCustard, Jam: WorkingErrorJam,
	Ganache: WorkingErrorGanache, Crumb: WorkingErrorCrumb,
}

// WorkingError is the working error of a class, either way, of
// solutions that are not strong.
func (c Class) WorkingError() float64 {
	if c >= classCount {
		return workingErrorStrong
	}
	return workingErrors[c]
}

// Water held by solids, g a gram, which dissolves nothing (judgement).
// It is fitted to no measurement: Estimate counts it in its middle and
// low end, not in its high end.
const (
	boundByCocoa       = 0.25 // fat-free cocoa solids
	boundByMilkProtein = 0.3
	boundByFlour       = 0.2 // dry flour
)

// Solubilities at 25 C in g per g of water, each alone in the
// water (memory). Maltose, galactose and oligosaccharides have no
// figure here.
const (
	SaturatedSucrose  = 2.07                // 67.4 % w/w: Scott 1957; Robinson & Stokes 1959
	SaturatedGlucose  = 0.51 / (1 - 0.51)   // 51 % w/w: Stokes & Robinson 1966; monohydrate
	SaturatedFructose = 0.80 / (1 - 0.80)   // 80 % w/w: Ruegg & Blanc 1981
	SaturatedLactose  = 0.187 / (1 - 0.187) // 18.7 % w/w: handbook solubility
	SaturatedSalt     = 0.264 / (1 - 0.264) // 26.4 % w/w: Greenspan 1977
)

// MolarWater is the molar mass of water in g/mol.
const MolarWater = 18.0153

// Norrish constants, natural logarithm (Norrish's own paper prints
// log10: times 2.303). Chirife, Ferro Fontan & Benmergui, J. Food
// Technol. 15:59 (1980), memory, good to about 60 % w/w; lactose as far
// as it dissolves. Galactose and invert sugar have that of glucose.
// Ethanol is Raoult's law: water beside more than a few per cent of it
// is a little more active.
const (
	kSucrose = 6.47
	kHexose  = 2.25
	kMaltose = 4.54
	kLactose = 10.2
	kEthanol = 0
)

// Glucose syrup: kSyrup is fitted to three published points of one of
// DE 42, taken as one solute of 429 g/mol. Longer sugars have more by
// the power syrupPower of their molar mass, so that a syrup given by
// its sugars and dextrins agrees.
const (
	kSyrup     = 5.9
	syrupMolar = 429
	syrupPower = 1.46
	// deMolar over the DE of a syrup is its mean molar mass, g/mol: DE
	// is reducing sugar as glucose.
	deMolar = 18016
)

// Molar masses in g/mol.
const (
	molarDisaccharide = 342.3
	molarHexose       = 180.16
	molarEthanol      = 46.07
	molarSalt         = 58.44
)

// Solution is what is dissolved in how much water, in grams. OtherG is
// an oligosaccharide or a mixture of them with mean molar mass
// OtherMolar in g/mol. The last row's solids hold water.
type Solution struct {
	WaterG, SucroseG, GlucoseG, FructoseG, MaltoseG, LactoseG, GalactoseG, SaltG, EthanolG float64
	OtherG, OtherMolar                                                                     float64
	CocoaG, MilkProteinG, DryFlourG                                                        float64
}

// syrupRange is the span of DE of the glucose syrup constant.
var syrupRange = figure.Limit{Quantity: "the syrup's DE", Low: 36, High: 48,
	Why: "the water activity of glucose syrup is known"}

// GlucoseSyrup gives solidsG of a glucose syrup of a DE as OtherG and
// OtherMolar of a Solution.
func GlucoseSyrup(solidsG, de float64) (otherG, otherMolar float64, silent string) {
	if silent = syrupRange.Refuses(de); silent != "" {
		return 0, 0, silent
	}
	return solidsG, deMolar / de, ""
}

// Model states what Estimate stands on.
var Model = figure.Model{
	Name: "water activity", Unit: "",
	Limits: []figure.Limit{activityRange, syrupRange},
	Error: "syrup 0.01, custard 0.02, ganache, dough and crumb 0.03, jam 0.04; 0.05 under 0.70, " +
		"past saturation, and where fructose is most of the sugars",
	Source: "Norrish (1966), one equation for the mixture (memory), with a glucose syrup of DE " +
		"42 fitted to published points (read); Pitzer for salt; water bound by cocoa, protein " +
		"and flour (judgement)",
}

var activityRange = figure.Limit{Quantity: "the water activity", Low: lowestActivity, High: 1,
	Why: "solutions are published"}

const lowestActivity = 0.55

// Reasons for silence.
const (
	noWater    = "there is no free water"
	unreadable = "a weight is not known"
)

// Estimate is the water activity at 25 C with all of s dissolved: call
// Dissolved first where crystals may remain. The middle counts water
// bound by cocoa, milk protein and flour; the high end does not. Under
// 0.55 the model is silent, and only a high end of 0.60 is certain.
func Estimate(s Solution, c Class) (aw figure.Estimate, silent string) {
	all, ok := Of(s)
	if !ok || c >= classCount || !(s.CocoaG >= 0 && s.MilkProteinG >= 0 && s.DryFlourG >= 0) {
		if s.WaterG <= 0 {
			return figure.Bounded(0, 1), noWater
		}
		return figure.Bounded(0, 1), unreadable
	}
	free := s
	free.WaterG -= boundByCocoa*s.CocoaG + boundByMilkProtein*s.MilkProteinG +
		boundByFlour*s.DryFlourG
	mid, ok := Of(free)
	if !ok {
		return figure.Bounded(0, min(1, all+workingErrors[c])), noWater
	}
	e := free.workingError(c, mid)
	high := min(1, max(s.highest(free, c, mid), all+WorkingErrorSyrup))
	if mid < lowestActivity {
		return figure.Bounded(
				0,
				max(high, lowestActivity+workingErrorStrong),
			), activityRange.Refuses(
				mid,
			)
	}
	return figure.Estimate{Low: max(0, mid-e), Mid: mid, High: high}, ""
}

// highest is the high end of s with the water free that nothing binds.
// Where all the water would dissolve the sugar and salt but the free
// water does not, the rest is crystal at this end. The free water is
// then a saturated solution, published at 0.843 to 0.86 for sucrose
// (memory; agency page 0.85, read), with its class's error.
func (s *Solution) highest(free Solution, c Class, mid float64) float64 {
	if !s.isPastSaturation() && free.isPastSaturation() {
		free.SucroseG = min(free.SucroseG, SaturatedSucrose*free.WaterG)
		free.SaltG = min(free.SaltG, SaturatedSalt*free.WaterG)
		mid, _ = Of(free)
	}
	return mid + free.workingError(c, mid)
}

// isPastSaturation reports whether there is more sucrose or salt than
// the water holds.
func (s *Solution) isPastSaturation() bool {
	return s.SucroseG > SaturatedSucrose*s.WaterG*(1+1e-9) ||
		s.SaltG > SaturatedSalt*s.WaterG*(1+1e-9)
}

// workingError is a class's error at an activity, or that of a
// strong solution.
func (s *Solution) workingError(c Class, aw float64) float64 {
	e := workingErrors[c]
	if s.isPastSaturation() {
		return workingErrorStrong
	}
	sugars := s.SucroseG + s.GlucoseG + s.FructoseG + s.MaltoseG + s.LactoseG +
		s.GalactoseG + s.OtherG
	if sugars > 0 {
		over := max(0, 2*s.FructoseG/sugars-1)
		e = max(e, min(workingErrorStrong, fructoseError*(1-aw)*over))
	}
	strong := min(1, max(0, (strongFrom-aw)/(strongFrom-strongBelow)))
	return max(e, workingErrors[c]+strong*(workingErrorStrong-workingErrors[c]))
}

// Of is the water activity at 25 C with all of s dissolved in all its
// water. The result lies in (0, 1]. ok is false without water, where a
// mass is negative or not a number, OtherG has no molar mass, or the
// result vanishes.
func Of(s Solution) (aw float64, ok bool) {
	if !(s.WaterG > 0) || math.IsInf(s.WaterG, 1) {
		return 0, false
	}
	if s.OtherG != 0 && !(s.OtherMolar > 0) {
		return 0, false
	}
	moles, pull := s.WaterG/MolarWater, 0.0
	for _, part := range [...]struct{ grams, molar, k float64 }{
		{s.SucroseG, molarDisaccharide, kSucrose},
		{s.GlucoseG + s.FructoseG + s.GalactoseG, molarHexose, kHexose},
		{s.MaltoseG, molarDisaccharide, kMaltose},
		{s.LactoseG, molarDisaccharide, kLactose},
		{s.EthanolG, molarEthanol, kEthanol},
		{s.OtherG, s.OtherMolar, kOther(s.OtherMolar)},
	} {
		if part.grams == 0 {
			continue
		}
		if !(part.grams > 0) || math.IsInf(part.grams, 1) {
			return 0, false
		}
		n := part.grams / part.molar
		moles += n
		pull += math.Sqrt(part.k) * n
	}
	if !(s.GlucoseG >= 0 && s.FructoseG >= 0 && s.GalactoseG >= 0 && s.SaltG >= 0) ||
		math.IsInf(s.SaltG, 1) {
		return 0, false
	}
	x := pull / moles
	aw = s.WaterG / MolarWater / moles * math.Exp(-x*x)
	if s.SaltG > 0 {
		aw *= pitzerSalt(1000 * s.SaltG / (molarSalt * s.WaterG))
	}
	return aw, aw > 0
}

// kOther is the Norrish constant of a syrup or its longer sugars by
// molar mass, g/mol.
func kOther(molar float64) float64 {
	if !(molar > 0) {
		return 0
	}
	return kSyrup * math.Pow(molar/syrupMolar, syrupPower)
}

// pitzerSalt is the water activity of salt alone at 25 C, m in mol/kg:
// within 0.0005 to 6 mol/kg, past 6.1 an extrapolation. Parameters b0,
// b1 and C: Geochemical Transactions 6 (2005) table 1, after Greenberg
// & Moller 1989 (read); 0.3915, 1.2 and 2: Pitzer 1973 (memory).
func pitzerSalt(m float64) float64 {
	s := math.Sqrt(m)
	phi := 1 - 0.3915*s/(1+1.2*s) + m*(0.0746+0.275*math.Exp(-2*s)) + m*m*0.00154
	return math.Exp(-2 * phi * m * MolarWater / 1000)
}

// InvertedPerSucrose is the mass of glucose and fructose from 1 g of
// sucrose, g, with one molecule of water taken up.
const InvertedPerSucrose = 1 + MolarWater/molarDisaccharide

// Inverted gives s with all its sucrose split into equal masses of
// glucose and fructose, and WaterG less the water taken up. Yeast does
// this within tens of minutes of mixing; acid and heat do part of it in
// a jam. With too little water WaterG is at or below zero.
func Inverted(s Solution) Solution {
	s.GlucoseG += s.SucroseG * InvertedPerSucrose / 2
	s.FructoseG += s.SucroseG * InvertedPerSucrose / 2
	s.WaterG -= s.SucroseG * (InvertedPerSucrose - 1)
	s.SucroseG = 0
	return s
}

// Dissolved gives s with sucrose, glucose, fructose, lactose and
// salt each cut to what 25 C water holds of it alone. The rest is
// crystal and lowers nothing. That sugars push one another out of
// solution is left out. Honey and starch syrups hold more glucose
// than this for months.
func Dissolved(s Solution) Solution {
	s.SucroseG = math.Min(s.SucroseG, SaturatedSucrose*s.WaterG)
	s.GlucoseG = math.Min(s.GlucoseG, SaturatedGlucose*s.WaterG)
	s.FructoseG = math.Min(s.FructoseG, SaturatedFructose*s.WaterG)
	s.LactoseG = math.Min(s.LactoseG, SaturatedLactose*s.WaterG)
	s.SaltG = math.Min(s.SaltG, SaturatedSalt*s.WaterG)
	return s
}
