package ferment

import "math"

// EquivalentHoursExponential gives the hours at 26 C that make as much gas as
// hours spent while the dough goes from fromC towards ambientC with time
// constant tauH (all its temperature differences fall to 1/e in tauH hours):
// the integral of TemperatureFactor over the time. Multiply by the osmotic
// factor and the yeast to get E.
//
// Temperatures in C, tauH and hours in h. tauH of zero or less is an instant
// change. Hours of zero or less give zero. The integral itself is right to
// 1e-4; the answer carries RetardErrorFactor when the ambient is cold. A dough
// has a core and a surface: use the temperature this one number stands for.
// NaN if any input is NaN.
func EquivalentHoursExponential(fromC, ambientC, tauH, hours float64) float64 {
	switch {
	case math.IsNaN(fromC + ambientC + tauH + hours): // also infinities that cancel
		return math.NaN()
	case hours <= 0:
		return 0
	case tauH <= 0 || fromC == ambientC:
		return steady(ambientC, hours)
	case math.IsInf(tauH, 1):
		return steady(fromC, hours)
	}
	// Beyond the horizon the dough is at ambient to 1e-13 C.
	gap := fromC - ambientC
	horizon := tauH * math.Log(1+math.Abs(gap)*1e13)
	at := func(t float64) float64 { return ambientC + gap*math.Exp(-t/tauH) }

	// The factor has a corner at each end of its range, where a smooth rule
	// would lose its digits: cut the time at the two crossings.
	moving := math.Min(hours, horizon)
	cuts := [...]float64{0, crossing(fromC, ambientC, GasMaximumC, tauH, moving), crossing(fromC, ambientC, GasMinimumC, tauH, moving), moving}
	if cuts[1] > cuts[2] {
		cuts[1], cuts[2] = cuts[2], cuts[1]
	}
	total := 0.0
	for i := 1; i < len(cuts); i++ {
		start, end := cuts[i-1], cuts[i]
		if !(end > start) || TemperatureFactor(at((start+end)/2)) == 0 {
			continue
		}
		pieces := math.Ceil((end - start) / (tauH / 2))
		step := (end - start) / pieces
		for p := 0.0; p < pieces; p++ {
			total += gauss(at, start+p*step, step)
		}
	}
	if hours > horizon {
		total += steady(ambientC, hours-horizon)
	}
	return total
}

// steady keeps zero times an endless stay at zero.
func steady(tC, hours float64) float64 {
	if g := TemperatureFactor(tC); g > 0 {
		return g * hours
	}
	return 0
}

// crossing gives the hour, inside 0..limit, at which the approach passes
// level, or 0 if it never does.
func crossing(fromC, ambientC, level, tauH, limit float64) float64 {
	ratio := (fromC - ambientC) / (level - ambientC)
	if !(ratio > 1) {
		return 0
	}
	return math.Min(tauH*math.Log(ratio), limit)
}

// Eight-point Gauss-Legendre on -1..1, one node of each pair. The curve's own
// pole lies 4 C past its maximum: five points on the same pieces lost the
// fourth digit there, eight keep 1e-5 over any ambient a bakery has.
var gaussNodes = [...]struct{ x, w float64 }{
	{0.1834346424956498, 0.3626837833783620},
	{0.5255324099163290, 0.3137066458778873},
	{0.7966664774136267, 0.2223810344533745},
	{0.9602898564975363, 0.1012285362903763},
}

func gauss(at func(float64) float64, start, step float64) float64 {
	sum := 0.0
	for _, n := range gaussNodes {
		sum += n.w * (TemperatureFactor(at(start+step*(1-n.x)/2)) + TemperatureFactor(at(start+step*(1+n.x)/2)))
	}
	return sum * step / 2
}
