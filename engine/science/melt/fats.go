package melt

import (
	"math"

	"forebake/engine/science/heat"
)

// Fat is a fat whose melting is tabulated.
type Fat uint8

// The fats.
const (
	MilkFat     Fat = iota // butter, cream; low summer, high winter
	CocoaButter            // tempered; low Brazil, high Malaysia
)

// MilkFatLatent is the heat of setting all the milk fat, J/kg of
// fat (Abd El-Rahman, Shalabi & Kilara 1998, read; 75-110 kJ/kg in
// the literature).
const MilkFatLatent = 81e3

type solids struct{ tC, low, typical, high float64 } // per cent of the fat

// fats are pulsed NMR figures of stabilised fat (basis memory): milk
// fat as collected in Kaylegian & Lindsay (1995) and Mulder & Walstra
// (1974), cocoa butter West African, Lipp & Anklam (1998) and Beckett.
// Two read points bear on milk fat: 59-65 % at 10 C by calorimeter, 5-6
// % at 34 C by DSC.
var fats = [...][]solids{
	MilkFat: {
		{0, 60, 68, 76},
		{5, 55, 62, 70},
		{10, 45, 53, 62},
		{12, 40, 48, 56},
		{15, 30, 37, 45},
		{18, 20, 26, 33},
		{20, 14, 19, 25},
		{
			22,
			11,
			15,
			20,
		},
		{25, 7, 11, 15},
		{28, 4, 7, 10},
		{30, 3, 5, 8},
		{33, 1, 2, 4},
		{35, 0, 0.7, 2},
		{38, 0, 0, 0.5},
	},
	CocoaButter: {
		{10, 82, 88, 93},
		{15, 78, 84, 90},
		{20, 68, 76, 83},
		{25, 58, 68, 77},
		{27, 50, 61, 72},
		{30, 32, 45, 57},
		{32, 12, 25, 38},
		{33, 5, 13, 25},
		{35, 0, 1, 4},
		{37, 0, 0, 0.5},
	},
}

// SolidFat is the solid part of a fat at tC, 0 to 1: linear between the
// table's points, level below them, and zero from 2 K above them. Error
// of typical: 0.08 between seasons, feeds and methods; index methods
// and fast cooling read far lower. Untempered cocoa butter melts at
// 27.5 C. An unknown fat gives NaN.
func SolidFat(f Fat, tC float64) (low, typical, high float64) {
	if int(f) >= len(fats) || math.IsNaN(tC) {
		return math.NaN(), math.NaN(), math.NaN()
	}
	rows := fats[f]
	a, b := rows[0], rows[0]
	last := rows[len(rows)-1]
	switch {
	case tC >= last.tC:
		a, b = last, solids{tC: last.tC + 2}
	case tC > a.tC:
		i := 1
		for rows[i].tC < tC {
			i++
		}
		a, b = rows[i-1], rows[i]
	}
	x := 0.0
	if b.tC > a.tC {
		x = math.Min((tC-a.tC)/(b.tC-a.tC), 1)
	}
	mix := func(p, q float64) float64 { return (p + x*(q-p)) / 100 }
	return mix(a.low, b.low), mix(a.typical, b.typical), mix(a.high, b.high)
}

// MilkFatCurve is the specific heat, J/(kg K), of a food with sensible
// specific heat cp and the milk fat fraction w: cp + 81e3 w dS/dT,
// typical solids, the slope taken over 2 K. Real fat supercools and
// sets over hours: the core drops a little early, then stalls.
func MilkFatCurve(cp, w float64) heat.Curve {
	return heat.NewCurve(-10, 50, 121, func(tC float64) float64 { return cp + milkFatHeat(w, tC) })
}

// milkFatHeat is the specific heat that setting milk fat adds at tC,
// J/(kg K).
func milkFatHeat(w, tC float64) float64 {
	_, warm, _ := SolidFat(MilkFat, tC+1)
	_, cold, _ := SolidFat(MilkFat, tC-1)
	return MilkFatLatent * w * math.Max(cold-warm, 0) / 2
}
