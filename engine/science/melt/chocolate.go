package melt

import "forebake/engine/science/heat"

// Chocolate is dark chocolate as measured, without its latent heat: see
// ChocolateHeats. The rule by composition takes its sugar for
// dissolved, and has it 13 % too warm and 20 % too slow.
//
// Specific heat 1590 J/(kg K), solid and 1670 liquid; conductivity 0.22
// at 15 C to 0.28 at 27 C (Chevalley et al. 1970 and Clegg 2001, in
// Beckett 2009, read); density 1300 (Beckett 1999, memory).
var Chocolate = heat.Properties{
	SpecificHeat:    1590,
	DensityKgM3:     1300,
	ConductivityWmK: 0.26,
	DiffusivityM2s:  0.26 / 1300 / 1590,
}

// What melts in dark chocolate, and where (Chevalley et al. 1970, in
// Beckett 2009, read): 157 kJ/kg of the cocoa butter, which is 0.29
// of it.
const (
	chocolateLatent = 46e3 // J per kg of chocolate
	// The span in which it sets and melts, C.
	ChocolateSets, ChocolateRuns = 17.0, 36.0
)

// ChocolateHeats is the specific heat by temperature, J/(kg K), of a
// food with the share w of chocolate and the sensible specific heat cp.
// The heat of melting is spread from 17 to 36 C as the cocoa butter's
// solids fall. Error 10 %; untempered, it melts some 5 K lower.
func ChocolateHeats(cp, w float64) heat.Curve {
	_, most, _ := SolidFat(CocoaButter, ChocolateSets)
	_, least, _ := SolidFat(CocoaButter, ChocolateRuns)
	solid := func(tC float64) float64 {
		_, s, _ := SolidFat(CocoaButter, min(max(tC, ChocolateSets), ChocolateRuns))
		return s
	}
	return heat.NewCurve(-10, 60, 281, func(tC float64) float64 {
		const half = 0.5
		return cp + chocolateLatent*w*(solid(tC-half)-solid(tC+half))/(2*half)/(most-least)
	})
}
