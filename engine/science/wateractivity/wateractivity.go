// Package wateractivity estimates the water activity of sugar and salt
// solutions at 25 C: syrups, fillings, and the water of a dough.
//
// It is called by whoever works out the figures of a part from its
// ingredients. It never reads an ingredient table, never corrects for starch
// or protein (they are outside the model: see CrumbPolymerDrop), never estimates
// cookies, crusts or dry pastes (use a measured value), and never rounds towards safety:
// a caller answering a food-safety question adds the working error and takes
// the higher activity.
//
// Each solute is taken alone in all of the water and the activities are
// multiplied (Ross K.D., Food Technol. 29(3):26, 1975; basis memory). Sugars
// and glycerol follow Norrish, aw = xw*exp(-K*xs^2) on mole fractions (Norrish
// R.S., J. Food Technol. 1:25, 1966; basis memory). Salt follows Pitzer.
//
// Ross is good to about 0.01 above aw 0.80 and worse below, and worse again
// for salt and sugar together below 0.85. It also depends on how sugars are
// named: glucose and fructose entered apart give a higher activity than the
// same mass entered as one sugar (about 0.015 at the strength of honey).
package wateractivity

import "math"

// Working errors in aw, either way, at 25 C. All are judgements; only the
// plain syrups were tested against published tables.
const (
	WorkingErrorSyrup   = 0.01 // plain sugar syrups up to about 60 % w/w
	WorkingErrorJam     = 0.04 // jams and fruit fillings
	WorkingErrorCustard = 0.01 // pastry cream and other milk custards
	WorkingErrorCrumb   = 0.02 // baked crumb, after CrumbPolymerDrop
)

// CrumbPolymerDrop is what starch and protein take off the solutes' aw in
// crumb at 35-42 % moisture, give or take CrumbPolymerDropError. Derived: the
// solutes alone give about 0.973 for lean crumb against a published
// 0.95-0.96. Of does not apply it.
const (
	CrumbPolymerDrop      = 0.015
	CrumbPolymerDropError = 0.01
)

// Solubilities at 25 C in g per g of water, each alone in the water. Basis
// memory throughout. Maltose, galactose and oligosaccharides have no figure here.
const (
	SaturatedSucrose  = 2.07                // 67.4 % w/w: Scott 1957; Robinson & Stokes 1959
	SaturatedGlucose  = 0.51 / (1 - 0.51)   // 51 % w/w: Stokes & Robinson 1966; the monohydrate is the stable solid
	SaturatedFructose = 0.80 / (1 - 0.80)   // 80 % w/w: Ruegg & Blanc 1981
	SaturatedLactose  = 0.187 / (1 - 0.187) // 18.7 % w/w: handbook solubility
	SaturatedSalt     = 0.264 / (1 - 0.264) // 26.4 % w/w: Greenspan 1977
)

// MolarWater is the molar mass of water in g/mol.
const MolarWater = 18.0153

// Solute names what Alone can answer for.
type Solute int

// The solutes. Galactose has no constant of its own here and is taken as
// glucose. Oligosaccharide stands for starch-syrup sugars above maltose and
// borrows maltose's constant: K rises and falls with the molecule without a rule to
// go by, so this is a stand-in, not a measurement. Ethanol is Raoult's law, without
// a Norrish constant: water beside alcohol is a little more active than that,
// so at more than a few per cent the true aw is higher.
const (
	Sucrose Solute = iota
	Glucose
	Fructose
	Invert
	Maltose
	Lactose
	Galactose
	Glycerol
	Oligosaccharide
	Ethanol
	Salt
	soluteCount
)

// norrish holds K (natural logarithm) and the molar mass in g/mol. The K of
// sucrose, glucose, fructose, invert, maltose, lactose and glycerol are from
// Chirife, Ferro Fontan & Benmergui, J. Food Technol. 15:59 (1980), basis
// memory, good to about 60 % w/w (lactose only as far as it dissolves).
// Norrish's own paper prints log10 constants: multiply those by 2.303.
var norrish = [soluteCount]struct{ k, molar float64 }{
	Sucrose:         {6.47, 342.3},
	Glucose:         {2.25, 180.16},
	Fructose:        {2.25, 180.16},
	Invert:          {2.25, 180.16}, // as the two sugars it is made of
	Maltose:         {4.54, 342.3},
	Lactose:         {10.2, 342.3},
	Galactose:       {2.25, 180.16}, // glucose's constant
	Glycerol:        {1.16, 92.09},
	Oligosaccharide: {4.54, 0}, // maltose's constant; the molar mass comes with the solution
	Ethanol:         {0, 46.07},
	Salt:            {0, 58.44}, // two ions: Pitzer, not Norrish
}

// Alone gives the water activity of one solute in water at 25 C, at a
// molality in mol per kg of water. For sucrose it is within 0.001 of Robinson
// & Stokes to 6 mol/kg; for glucose and glycerol it agrees with another model
// only. Fructose near saturation reads 0.04 too low. Salt is within 0.0005 to
// 6 mol/kg; past 6.1 it is an extrapolation. ok is false for an unknown
// solute, a molality that is negative or not finite, and an activity too small
// to write.
func Alone(s Solute, molality float64) (aw float64, ok bool) {
	if s < 0 || s >= soluteCount || !(molality >= 0) || math.IsInf(molality, 1) {
		return 0, false
	}
	if s == Salt {
		aw = pitzerSalt(molality)
	} else {
		xs := molality / (molality + 1000/MolarWater)
		aw = (1 - xs) * math.Exp(-norrish[s].k*xs*xs)
	}
	if !(aw > 0) {
		return 0, false
	}
	return aw, true
}

// pitzerSalt is the Pitzer equation for NaCl at 25 C, m in mol/kg. Parameters
// b0, b1 and C: Geochemical Transactions 6 (2005) Table 1, after Greenberg &
// Moller 1989 (read); 0.3915, 1.2 and 2: Pitzer 1973 (memory).
func pitzerSalt(m float64) float64 {
	s := math.Sqrt(m)
	phi := 1 - 0.3915*s/(1+1.2*s) + m*(0.0746+0.275*math.Exp(-2*s)) + m*m*0.00154
	return math.Exp(-2 * phi * m * MolarWater / 1000)
}

// Solution is what is dissolved in how much water, in grams. Only water that
// can act as solvent belongs in WaterG. OtherG is an oligosaccharide or a
// mixture of them with mean molar mass OtherMolar in g/mol.
type Solution struct {
	WaterG, SucroseG, GlucoseG, FructoseG, MaltoseG, LactoseG, GalactoseG, SaltG, EthanolG float64
	OtherG, OtherMolar                                                                     float64
}

// Of gives the water activity at 25 C of everything in s taken as dissolved
// (call Dissolved first where crystals may remain). The result lies in
// (0, 1]. ok is false when there is no water, when a mass is negative or not
// a number, when OtherG has no molar mass, or when the result is not finite
// or vanishes. Error: the WorkingError constants; do not use below about 0.75.
func Of(s Solution) (aw float64, ok bool) {
	if !(s.WaterG > 0) || math.IsInf(s.WaterG, 1) {
		return 0, false
	}
	aw = 1
	for _, part := range [...]struct {
		solute       Solute
		grams, molar float64
	}{
		{Sucrose, s.SucroseG, norrish[Sucrose].molar},
		{Glucose, s.GlucoseG, norrish[Glucose].molar},
		{Fructose, s.FructoseG, norrish[Fructose].molar},
		{Maltose, s.MaltoseG, norrish[Maltose].molar},
		{Lactose, s.LactoseG, norrish[Lactose].molar},
		{Galactose, s.GalactoseG, norrish[Galactose].molar},
		{Salt, s.SaltG, norrish[Salt].molar},
		{Ethanol, s.EthanolG, norrish[Ethanol].molar},
		{Oligosaccharide, s.OtherG, s.OtherMolar},
	} {
		if part.grams == 0 {
			continue
		}
		if !(part.molar > 0) {
			return 0, false
		}
		alone, ok := Alone(part.solute, 1000*part.grams/(part.molar*s.WaterG))
		if !ok {
			return 0, false
		}
		aw *= alone
	}
	return aw, aw > 0
}

// InvertedPerSucrose is the mass of glucose and fructose together, in g, that
// 1 g of sucrose gives when it takes up one molecule of water: 1.0526.
const InvertedPerSucrose = 1 + MolarWater/342.3

// Inverted gives s with all its sucrose split into equal masses of glucose and
// fructose, the water it takes up gone from WaterG. Yeast does this within
// tens of minutes of mixing; acid and heat do part of it in a jam. Where there
// is too little water WaterG comes out at or below zero and Of refuses it.
func Inverted(s Solution) Solution {
	s.GlucoseG += s.SucroseG * InvertedPerSucrose / 2
	s.FructoseG += s.SucroseG * InvertedPerSucrose / 2
	s.WaterG -= s.SucroseG * (InvertedPerSucrose - 1)
	s.SucroseG = 0
	return s
}

// Dissolved gives s with sucrose, glucose, fructose, lactose and salt each cut
// to what 25 C water holds of it alone. The rest of each is crystal and lowers
// nothing. Sugars push one another out of solution, which is left out (a 1:1
// invert syrup is full at 62-63 % w/w, low confidence). Honey and starch
// syrups hold more glucose than this for months: do not call it on them
// unless they have set.
func Dissolved(s Solution) Solution {
	s.SucroseG = math.Min(s.SucroseG, SaturatedSucrose*s.WaterG)
	s.GlucoseG = math.Min(s.GlucoseG, SaturatedGlucose*s.WaterG)
	s.FructoseG = math.Min(s.FructoseG, SaturatedFructose*s.WaterG)
	s.LactoseG = math.Min(s.LactoseG, SaturatedLactose*s.WaterG)
	s.SaltG = math.Min(s.SaltG, SaturatedSalt*s.WaterG)
	return s
}
