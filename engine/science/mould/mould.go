// Package mould estimates how many days baked goods stay free of mould.
// It uses a table of families with published labels and keeping advice,
// a line on the equilibrium humidity for plain cakes, and a handbook
// range for bread crumb.
//
// Package facts calls it. The days are labels and keeping advice, not a
// safety figure. Packing after a clean, full cooling matters more than
// water activity.
package mould

import (
	"math"

	"forebake/engine/figure"
)

// Range of the line, % equilibrium relative humidity (100 x water
// activity): as quoted by a pastry forum writer (read).
const (
	lowestERH  = 74.0
	highestERH = 90.0
)

// Bread crumb, days: two trials of yeast bread 4 to 5 days at 25 C
// (read), plain bread 3 to 6 in practice (memory), and the line about 2
// at 94 to 96 %. Clean wrap, no preservative.
const (
	crumbLowDays  = 2.0
	crumbHighDays = 6.0
)

// crumbDays is the middle for bread, and acidFactor sourdough's factor
// on it: 18 days and more against 4 to 5 in the same study (read).
const (
	crumbDays  = 4.5
	acidFactor = 4
)

// The lines: log10(days) = base - slope*ERH. Cool by a pastry forum
// writer (quoted); warm by Adams & Moss eq. 3.34 (read), after Cauvain
// & Seiler, FMBRA Report 150 (1992, not seen).
const (
	coolBase  = 7.91
	coolSlope = 0.081
	warmBase  = 6.42
	warmSlope = 0.0647
	coolC     = 21.0
	warmC     = 27.0
)

// lineError is the line's error factor, either way: the two
// measured cakes lie within 1.1, and plain cakes differ more than
// two show (judgement).
const lineError = 1.25

var (
	erhRange = figure.Limit{
		Quantity: "the crumb's humidity",
		Unit:     "%",
		Low:      lowestERH,
		High:     highestERH,
		Why:      "the mould line holds",
	}
	storeRange = figure.Limit{Quantity: "the storage", Unit: "C", Low: coolC, High: warmC,
		Why: "the mould line holds"}
)

// Model states what Days stands on.
var Model = figure.Model{
	Name: "mould-free days", Unit: "days",
	Limits: []figure.Limit{erhRange, storeRange},
	Error: "the range of the family's labels and advice; the line a factor of 1.25; " +
		"bread 2 to 6 days",
	Source: "labels and keeping advice for panettone and stollen (read); Cauvain & Seiler (1992) " +
		"for cakes of 74 to 90 % humidity (read); plain bread (read, memory)",
	Misses: "industrial panettone is labelled 270 days: preservatives are allowed in it",
}

// Goods is what is kept, wrapped and without preservative.
type Goods struct {
	Family  string // a name of package family, "" for none
	Culture bool   // raised by a sourdough culture
	Filled  bool   // holds a moist filling or cream
	Nuts    bool   // almonds or nuts in the dough
	Moist   bool   // poppy or curd in the dough
	Cold    bool   // kept at 3 to 12 C
}

// kept is one row of the family table.
type kept struct {
	family string
	fits   func(Goods) bool
	days   figure.Estimate
}

// families holds the first row that fits for each family.
var families = [...]kept{
	{
		"panettone",
		func(g Goods) bool { return g.Filled },
		figure.Estimate{Low: 3, Mid: 3.5, High: 4},
	}, // read
	// Labels 30 to 60 days, none of 99 packed samples mouldy at
	// 180 (read).
	{
		"panettone",
		func(g Goods) bool { return g.Culture },
		figure.Estimate{Low: 30, Mid: 60, High: 180},
	},
	// No label without sourdough was found: those with it, less the
	// acid's factor (computed).
	{
		"panettone",
		func(Goods) bool { return true },
		figure.Estimate{Low: 30.0 / acidFactor, Mid: 60.0 / acidFactor, High: 180.0 / acidFactor},
	},
	{
		"stollen",
		func(g Goods) bool { return g.Moist || g.Filled },
		figure.Estimate{Low: 7, Mid: 10, High: 14},
	}, // poppy, curd (read)
	{
		"stollen",
		func(g Goods) bool { return g.Nuts },
		figure.Estimate{Low: 14, Mid: 21, High: 42},
	}, // read
	{
		"stollen",
		func(g Goods) bool { return g.Cold },
		figure.Estimate{Low: 28, Mid: 56, High: 120},
	}, // read
	// All advice found is for the cold: at room warmth from the
	// shortest kind's to a month (judgement).
	{"stollen", func(Goods) bool { return true }, figure.Estimate{Low: 14, Mid: 28, High: 56}},
}

// Days is the number of days without mould, from the crumb's humidity
// over its span, %, and the storage in C. The family's row comes first,
// then the line in its range; moister goods count as bread. silent is
// the reason where nothing answers.
func Days(g Goods, erh figure.Interval, tC float64) (days figure.Estimate, silent string) {
	for i := range families {
		if k := &families[i]; k.family == g.Family && k.fits(g) {
			return k.days, ""
		}
	}
	if silent = storeRange.Refuses(tC); silent != "" {
		return figure.Bounded(0, math.Inf(1)), silent
	}
	if erh.Hi < lowestERH {
		return figure.Bounded(line(lowestERH, tC)/lineError, math.Inf(1)), erhRange.Refuses(erh.Hi)
	}
	bread := figure.Estimate{Low: crumbLowDays, Mid: crumbDays, High: crumbHighDays}
	if g.Culture {
		bread = bread.Times(acidFactor)
	}
	if erh.Lo > highestERH {
		return bread, ""
	}
	wet, dry := min(erh.Hi, highestERH), max(erh.Lo, lowestERH)
	days = figure.Estimate{
		Low:  line(wet, tC) / lineError,
		Mid:  line((wet+dry)/2, tC),
		High: line(dry, tC) * lineError,
	}
	if erh.Hi > highestERH {
		days.Low = min(days.Low, bread.Low)
		days.High = max(days.High, bread.High)
	}
	if erh.Lo < lowestERH {
		days.High = math.Inf(1)
	}
	return days, ""
}

// line is the line's middle inside its range: the logarithm is
// interpolated between its two temperatures.
func line(erhPercent, tC float64) float64 {
	cool := coolBase - coolSlope*erhPercent
	warm := warmBase - warmSlope*erhPercent
	share := (tC - coolC) / (warmC - coolC)
	return math.Pow(10, cool*(1-share)+warm*share)
}
