package microbe

import (
	"math"

	"forebake/engine/figure"
)

// Growth is a square-root curve of growth in one medium: log10 a hour =
// (B (T - MinC))^2. The lag is inside B. Low, Mid and High of B are the
// slowest, the middle and the careful reading of its rows. A figure
// without its own low end repeats the careful one.
type Growth struct {
	Organism   Organism
	Medium     string
	B          figure.Estimate // sqrt(log10/h)/C
	MinC       float64         // no growth at or below
	LevelC     float64         // the rate of LevelC holds above it
	StopC      float64         // no growth above: the organism's growth limit
	MostPerH   float64         // log10/h, the fastest rate measured; 0 sets none
	MostLog    float64         // log10, the rise where growth ends; 0 sets none
	TestedLoC  float64         // the coldest and warmest measured temperature
	TestedHiC  float64
	Source     string
	How, Basis string // How: how B follows from the rows
}

const (
	noKneadSource = "J. Food Prot. 74(2):285-288 (2011) doi 10.4315/0362-028X.JFP-10-319, " +
		"abstract: lean yeast dough"
	riceSource = "J. Food Prot. 72(11) (2009), abstract: B. cereus in cooked rice"
	milkSource = "J. Food Prot. 54:372 (1991), abstract: B. cereus in rehydrated milk"
)

// The growth curves. They hold for a part as it stands; the caller
// knows what the part is. High lies on or over every measured row of
// its medium, so the B of Salmonella and of milk is rounded up (0.0258
// and 0.0345 pass just under one row each).
var (
	// LiveStaph needs live yeast or a lactic culture mixed into the
	// part. It gives no credit to a dough without yeast, nor to a
	// filling inside a dough.
	LiveStaph = Growth{SAureus, "live lean yeast dough",
		figure.Estimate{Low: 0.01065, Mid: 0.01165, High: 0.0124}, 7, 38, 50, 0, 0, 21, 38,
		noKneadSource, "the four rows need 0.01065, 0.01236, 0.01229 and 0.01128; " +
			"Mid is their mean, High lies over all", "computed"}
	// LiveSalmonella has the same medium. A bake answers it: the core
	// that core-unproven-risk asks for brings down more than 5 log and
	// all that can grow.
	LiveSalmonella = Growth{Salmonella, "live yeast dough",
		figure.Estimate{Low: 0.0200, Mid: 0.0224, High: 0.0259}, 5.2, 38, 46.2, 0, 4, 21, 21,
		noKneadSource, "the means over 24 h and 12 h at 21 C and the fastest 6 h; other " +
			"temperatures extrapolated; 4 log is a judgement", "computed"}
	// StarchCereus is for cooked starch paste, scald, rice and potato.
	StarchCereus = Growth{BCereus, "cooked starch",
		figure.Estimate{Low: 0.0139, Mid: 0.0263, High: 0.0263}, 3.3, 45, 55, 0.58, 0, 17, 20,
		riceSource, "through 6.64 log in 22 h at 20 C and 6.81 log in 34 h at 17 C from 250/g; " +
			"Low is 20 times in 24 h at 20 C, spores added before the cook", "computed"}
	// CustardCereus is for custard, pastry cream and starch cooked
	// in milk.
	CustardCereus = Growth{BCereus, "custard, pastry cream, milk starch",
		figure.Estimate{Low: 0.0298, Mid: 0.0323, High: 0.0347}, 3.3, 45, 55, 0.75, 0, 26, 26,
		milkSource, "9 h at 26 C from 0.29 to 1.5/g to 20 000 to 110 000/g: 0.46 to 0.62 log/h",
		"computed"}
)

func (g *Growth) rate(b, tC float64) float64 {
	if tC <= g.MinC || tC > g.StopC {
		return 0
	}
	x := b * (min(tC, g.LevelC) - g.MinC)
	if g.MostPerH > 0 {
		return min(x*x, g.MostPerH)
	}
	return x * x
}

// LogAt is the growth, log10, by one reading of B, while the
// temperature moves linearly from t0C to t1C in the given hours. It is
// the exact integral. It is not cut at MostLog, since the parts of a
// history add up. Anything unreadable is infinite.
func (g *Growth) LogAt(run figure.Run, t0C, t1C, hours float64) float64 {
	lo, hi := min(t0C, t1C), max(t0C, t1C)
	if !readable(lo) || !readable(hi) || !(hours >= 0 && hours <= math.MaxFloat64) {
		return math.Inf(1)
	}
	if hi <= g.MinC {
		return 0
	}
	b := g.B.At(run)
	if lo == hi {
		return g.rate(b, lo) * hours
	}
	return g.area(b, lo, hi) / (hi - lo) * hours
}

// area is the integral of rate over temperature: a parabola up to where
// the rate levels, then flat.
func (g *Growth) area(b, lo, hi float64) float64 {
	level := g.LevelC
	if g.MostPerH > 0 {
		level = min(level, g.MinC+math.Sqrt(g.MostPerH)/b)
	}
	return g.upTo(b, level, hi) - g.upTo(b, level, lo)
}

func (g *Growth) upTo(b, level, tC float64) float64 {
	x := max(min(tC, level)-g.MinC, 0)
	sum := b * b * x * x * x / 3
	if tC > level {
		sum += max(min(tC, g.StopC)-level, 0) * g.rate(b, level)
	}
	return sum
}

// Capped is a sum of growth, log10, cut where this growth ends.
func (g *Growth) Capped(sum figure.Estimate) figure.Estimate {
	if g.MostLog == 0 {
		return sum
	}
	return sum.Min(figure.Exactly(g.MostLog))
}

// Enriched is the factor on LiveStaph where the dough holds egg, milk,
// cheese or much butter. No study measured growth in such a dough: the
// doubling is the program's own margin (judgement).
var Enriched = figure.Estimate{Low: 1, Mid: 2, High: 2}

// AwCredit is the factor on LiveStaph for the water activity of a
// dough, against the lean dough that was measured: ((aw -
// 0.808)/(0.98 - 0.808))^2, at most 1. The shape and 0.808 are read
// (Medvedova A. et al., Ital. J. Food Saf. 8:8287, 2019); the exponent
// is a judgement. The high end of the water activity decides High. An
// unreadable figure gives no credit.
func AwCredit(aw Interval) figure.Estimate {
	if !(aw.Lo <= aw.Hi && aw.Hi >= 0 && aw.Lo <= 1) {
		return figure.Exactly(1)
	}
	at := func(a float64) float64 {
		x := math.Max(0, math.Min(1, (a-0.808)/(0.98-0.808)))
		return x * x
	}
	return figure.Estimate{Low: at(aw.Lo), Mid: (at(aw.Lo) + at(aw.Hi)) / 2, High: at(aw.Hi)}
}

// AcidStops reports whether a measured pH ends the growth of S. aureus
// in a live dough: at or below 4.3 at any water activity, or at or
// below 4.9 where the water activity is 0.96 or less (Notermans S. &
// Heuvelman C.J., J. Food Sci. 48, 1983, abstract read; 4.3 is a
// judgement under it). At or below 4.6 the middle of a water activity
// suffices, since the acid offsets its error (judgement). The pH must
// have been reached: until then the rate counts. High ends decide.
func AcidStops(aw, ph Interval) bool {
	if !(ph.Lo >= 0 && ph.Lo <= ph.Hi && ph.Hi <= 14) {
		return false
	}
	known := aw.Lo <= aw.Hi && aw.Hi >= 0
	dry := known && aw.Hi <= 0.96
	about := known && (aw.Lo+aw.Hi)/2 <= 0.96
	return ph.Hi <= 4.3 || ph.Hi <= 4.6 && about || ph.Hi <= 4.9 && dry
}

// Level is how far a budget is used.
type Level uint8

// The levels.
const (
	Clear Level = iota // no limit here is passed; that is not the same as safe
	Note
	Risk
	Stop
)

// String is the word for a level.
func (l Level) String() string {
	return [...]string{"clear", "note", "risk", "stop"}[min(l, Stop)]
}
