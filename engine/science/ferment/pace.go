package ferment

import (
	"math"

	"forebake/engine/figure"
)

// The effect of sugar and salt on yeast's pace. Standard yeast follows
// OsmoticFactor. Osmotolerant yeast is that times gain, fitted to
// published comparisons of strains. It is a little slower in lean
// dough, as fast at 5 to 8 % sugar, nearly twice as fast from 11 % on.
const (
	// mutants for sweet dough: 0.76 to 0.96 of their parent in lean
	// dough (read)
	leanGain      = 0.85
	sweetGain     = 2.0 // 1.8 to 2 at 11 % sugar (quoted), 1.58 and 1.84 at 26 % (read)
	gainMolality  = 2.6 // osmol/kg; standard yeast ahead at 0.58, osmotolerant at 2.34 (read)
	gainExponent  = 14
	gainError     = 1.3 // holds each comparison above
	tolerantError = 1.6 // gainError and osmoticError in quadrature, computed
	unsaidError   = 2   // 7 to 15 % sugar, strain unknown: dose rules and timings part by it
	unsaidFrom    = 2.45
	unsaidTo      = 3.63
)

// HighestMolality is the end of the model, osmol/kg: 30 % sugar
// on flour.
const HighestMolality = 4.9

// PaceModel states the basis of PaceSpan and PaceError.
var PaceModel = figure.Model{
	Name: "pace of yeast under sugar and salt", Unit: "",
	Limits: []figure.Limit{molalityRange},
	Error: "factor 1.5; 2 between 2.45 and 3.63 osmol/kg (7 to 15 % sugar) while no strain is " +
		"written; osmotolerant 1.6",
	Source: "fit to six points (trade dose rules, two informal timings, one threshold; read and " +
		"quoted), weighed again with two more; osmotolerant from comparisons of strains " +
		"(read, quoted)",
	Misses: "one published series, a lean strain in a rheofermentometer (Rincon et al. 2001, " +
		"Appl. Environ. Microbiol. 67, table 3, read), makes 580 mL of gas at 10 % sugar where " +
		"1950 would be its lean pace: 0.30, and this curve has 0.69, a factor of 2.3. Its table " +
		"mixes two dough methods. If your yeast is as slow as that, a timed small batch shows it",
}

var molalityRange = figure.Limit{
	Quantity: "the dough's water",
	Unit:     "osmol/kg",
	High:     HighestMolality,
	Why:      "the pace of yeast is known",
}

// gain is osmotolerant yeast's pace over standard yeast's at a
// molality, osmol/kg.
func gain(molality float64) float64 {
	x := math.Pow(molality/gainMolality, gainExponent)
	if math.IsInf(x, 1) {
		return sweetGain
	}
	return leanGain + (sweetGain-leanGain)*x/(1+x)
}

// paceAt is the pace at one molality, without its error.
func paceAt(molality float64, s Strain) float64 {
	f := OsmoticFactor(molality)
	if s == Osmotolerant {
		return f * gain(molality)
	}
	return f
}

// Turns of the osmotolerant curve, osmol/kg: it falls to the first,
// rises to the second and falls.
var tolerantDip, tolerantPeak = turn(1, gainMolality, -1), turn(gainMolality, 4, 1)

// turn is the osmotolerant curve's highest (sign 1) or lowest (sign -1)
// point between two molalities: a golden-section search.
func turn(from, to, sign float64) float64 {
	const ratio = 0.6180339887498949
	for to-from > 1e-9 {
		a, b := to-ratio*(to-from), from+ratio*(to-from)
		if sign*paceAt(a, Osmotolerant) > sign*paceAt(b, Osmotolerant) {
			to = b
		} else {
			from = a
		}
	}
	return (from + to) / 2
}

// PaceSpan is every pace of a strain over a span of molalities in
// osmol/kg, without the error. The osmotolerant curve rises about 11 %
// sugar, so its ends are not those of the span. Above 30 % sugar the
// pace may be anything from zero to that at 30 %.
func PaceSpan(m figure.Interval, s Strain) figure.Interval {
	lo, hi := max(m.Lo, 0), min(m.Hi, HighestMolality)
	span := figure.Between(paceAt(min(lo, hi), s), paceAt(hi, s))
	if m.Hi > HighestMolality {
		span.Lo = 0
	}
	if s == Osmotolerant {
		for _, at := range [...]float64{tolerantDip, tolerantPeak} {
			if m.Contains(at) {
				span = span.Hull(figure.Point(paceAt(at, s)))
			}
		}
	}
	return span
}

// PaceError is the error factor of a pace over a span of molalities
// in osmol/kg.
func PaceError(m figure.Interval, s Strain) float64 {
	switch {
	case s == Osmotolerant:
		return tolerantError
	case s == Unsaid && m.Hi >= unsaidFrom && m.Lo <= unsaidTo:
		return unsaidError
	}
	return osmoticError
}
