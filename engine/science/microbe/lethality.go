package microbe

import (
	"math"
	"sort"
)

// BeyondTested is how far above its tested temperatures a line may be
// drawn, C: Thomas, White & Longree, Appl. Microbiol. 14:815 (1966)
// (read). Above that a Line's rate stays level.
const BeyondTested = 5.56

// Line is one published D and z: log10 D(T) = log10 DMin + (RefC -
// T)/ZC, D in minutes for one log10 of the organism.
type Line struct {
	Medium             string
	DMin, RefC, ZC     float64 // min, C, C; above 0
	LowC, HighC        float64 // the tested temperatures: below LowC nothing is counted
	Aw                 float64 // water activity of the medium; 0 where none is published
	Source, How, Basis string  // How: how DMin and ZC follow from the printed figures
}

// The lines for Salmonella. None is faster than a printed D of its
// own food.
var (
	plainEggLine = Line{"liquid egg, unsweetened", 0.02255, 71, 5.319, 56, 71, 0,
		"Doyle M.E. & Mazzotta A.S., J. Food Prot. (2000), review; not S. Senftenberg",
		"log10 D = 11.7 - 0.188 T, above all published values; the abstract's 0.02 min at 71 C " +
			"is a little faster. No span is printed: 56 C is the coldest figure for whole egg " +
			"that the line was held against", "derived"}
	custardLine = Line{"egg yolk with 10 % sucrose", 4.0, 60, 5.3, 60, 60, 0,
		"Garibaldi J.A. et al., Appl. Microbiol. (1969), S. Typhimurium Tm-1",
		"z at its slow end (4.2 to 5.3, mean 4.6). S. Senftenberg 775W in custard is slower, " +
			"11.3 min and 6.7 C (memory), and not typical", "derived"}
	bunLine = Line{"yeast bread dough (hamburger bun)", 3.51, 61, 6.58, 55, 61, 0,
		"Channaiah L.H. et al., J. Food Prot. 79:544 (2016), 3 serovars",
		"printed 3.14 min at 61 C, raised so that the line lies on the 28.64 min printed at 55 C",
		"derived"}
	muffinDoughLine = Line{"English muffin dough, pH 5.0", 4.26, 62, 6.2, 55, 62, 0.947,
		"Singh A., Hunt C. & Channaiah L.H., J. Food Prot. 87(6):100280 (2024), abstract, " +
			"3 serovars",
		"printed 3.0 min at 62 C, raised so that the line lies on the 15.6 min printed at 58.5 C",
		"derived"}
	batterLine = Line{"muffin batter (sweet)", 20.65, 61, 10.4, 55, 61, 0.928,
		"Channaiah L.H. et al., Int. J. Food Microbiol. 250:1 (2017)",
		"printed 16.5 min at 61 C, raised so that the line lies on the 40.1 min printed at 58 C; " +
			"aw is that of the crumb", "derived"}
	nutPasteLine = Line{"peanut butter cookie dough, 8 % moisture", 5.22, 75, 16.45, 75, 85, 0.421,
		"cookie dough D-values (STEC, Salmonella)",
		"printed 4.97 min at 75 C, raised so that the line lies on the 2.59 min printed at 80 C",
		"derived"}
	meatLine = Line{"lean meat, moist heat", 1.97, 60, 5.56, 54.4, 70, 0,
		"USDA FSIS Appendix A, time-temperature table for cooked beef " +
			"(kept in the 2021 Cooking Guideline)",
		"slowest of the table's rows, 62.8 C; z of 10 F (memory)", "derived"}
)

// Food is a kind of food to choose lines for.
type Food uint8

// The kinds. Dough is the careful choice among doughs, and serves
// batters, crumbs, nut pastes and sugary fillings.
const (
	Dough Food = iota // chosen by water activity
	// a yeast dough no richer than a hamburger bun; its source warns
	// against carrying it further
	BunDough
	PlainEgg // egg without sugar
	// egg, milk, cream or cheese, sweet or not: no D of Salmonella
	// in dairy is to hand, and this is slower than L. monocytogenes
	// in milk
	Custard
	LeanMeat  // moist, without sugar
	Chocolate // melted chocolate, cocoa, dry flour: no kill step
)

// Kill is what heat does to Salmonella in a food. The zero Kill
// counts nothing.
type Kill struct {
	Lines  []Line // wettest food first
	pieces []piece
}

// piece is a span where one line leads. From fromC to the next piece
// its rate is rate at fromC, times 10 each z (level where z is 0).
type piece struct{ fromC, rate, z float64 }

// KillFor chooses by kind and by the low end of the water activity.
// Between two published foods the drier, sweeter one serves. At 0.947
// or more a Dough is English muffin dough, at 0.928 or more sweet
// batter, at 0.421 or more nut cookie dough. Below that, and without a
// water activity, nothing is counted. The egg, dairy, meat and bun
// lines serve only from 0.947 up; drier, those foods count as Dough.
//
// A drier food's line is a floor under the wetter one's, since drying
// protects. A rate that stays level above its own tested temperatures
// still rises where a drier food's is known to.
func KillFor(food Food, awLo float64) Kill {
	chain := []Line{muffinDoughLine, batterLine, nutPasteLine}
	for len(chain) > 0 && !(awLo >= chain[0].Aw) {
		chain = chain[1:]
	}
	wet := awLo >= muffinDoughLine.Aw
	switch {
	case food > LeanMeat:
		return Kill{}
	case food == Dough || !wet:
		return NewKill(chain...)
	case food == BunDough:
		return NewKill(append([]Line{bunLine}, chain...)...)
	case food == PlainEgg:
		return NewKill(plainEggLine)
	case food == Custard:
		return NewKill(custardLine)
	}
	return NewKill(meatLine)
}

// NewKill follows the fastest line at each temperature. A line with
// figures out of range counts nothing.
func NewKill(lines ...Line) Kill {
	k := Kill{Lines: lines}
	var sound []Line
	var at []float64
	for _, l := range lines {
		if l.DMin > 0 && l.ZC > 0 && l.LowC <= l.HighC && readable(l.RefC) && readable(l.LowC) &&
			readable(l.HighC) {
			sound = append(sound, l)
			at = append(at, l.LowC, l.HighC+BeyondTested)
		}
	}
	sort.Float64s(at)
	for i := range at {
		from, to := at[i], 2000.0
		if i+1 < len(at) {
			to = at[i+1]
		}
		if from == to {
			continue
		}
		// Between these the logarithms are linear, so two lines cross
		// once at most.
		cuts := []float64{from}
		for a, l := range sound {
			for _, m := range sound[:a] {
				gap, rise := l.logRate(from)-m.logRate(from), l.slope(from)-m.slope(from)
				if x := from - gap/rise; x > from && x < to {
					cuts = append(cuts, x)
				}
			}
		}
		sort.Float64s(cuts)
		for j, c := range cuts {
			end := to
			if j+1 < len(cuts) {
				end = cuts[j+1]
			}
			k.pieces = append(k.pieces, lead(sound, c, (c+end)/2))
		}
	}
	return k
}

// lead is the piece from fromC of the line that is fastest at middleC.
func lead(lines []Line, fromC, middleC float64) piece {
	best, p := math.Inf(-1), piece{fromC: fromC}
	for _, l := range lines {
		if r := l.logRate(middleC); r > best {
			best, p.rate, p.z = r, math.Pow(10, l.logRate(fromC)), 0
			if middleC < l.HighC+BeyondTested {
				p.z = l.ZC
			}
		}
	}
	return p
}

// logRate is the logarithm of 1/D at tC; -Inf below the
// tested temperatures.
func (l Line) logRate(tC float64) float64 {
	if tC < l.LowC {
		return math.Inf(-1)
	}
	return (math.Min(tC, l.HighC+BeyondTested)-l.RefC)/l.ZC - math.Log10(l.DMin)
}

// slope is the rise of logRate just above tC.
func (l Line) slope(tC float64) float64 {
	if tC >= l.LowC && tC < l.HighC+BeyondTested {
		return 1 / l.ZC
	}
	return 0
}

// Log is the fall in Salmonella, log10, while the temperature moves
// linearly from t0C to t1C in the given minutes: the exact integral of
// dt/D(T). Pass the core at its slow end. -273.15 to 1000 C, 0 min or
// more; anything else kills nothing. Strains and foods differ by half
// and more, and survivors tail: a figure over 5 means a kill step, not
// that many logs.
func (k Kill) Log(t0C, t1C, minutes float64) float64 {
	if !readable(t0C) || !readable(t1C) || !(minutes > 0 && minutes <= math.MaxFloat64) {
		return 0
	}
	lo, hi := math.Min(t0C, t1C), math.Max(t0C, t1C)
	sum := 0.0
	for i, p := range k.pieces {
		to := 2000.0
		if i+1 < len(k.pieces) {
			to = k.pieces[i+1].fromC
		}
		a, b := math.Max(lo, p.fromC), math.Min(hi, to)
		switch {
		case lo == hi && lo >= p.fromC && lo < to:
			return minutes * p.mean(lo, lo)
		case b > a:
			sum += p.mean(a, b) * ((b - a) / (hi - lo))
		}
	}
	return minutes * sum
}

// mean is the rate averaged from a to b, by their hotter end so that
// nothing overflows.
func (p piece) mean(a, b float64) float64 {
	if p.z == 0 {
		return p.rate
	}
	hot := p.rate * math.Pow(10, (b-p.fromC)/p.z)
	if x := (b - a) / p.z * math.Ln10; x > 0 {
		return hot * -math.Expm1(-x) / x
	}
	return hot
}
