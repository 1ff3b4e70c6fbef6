package tins

import (
	"math"
	"slices"
	"strconv"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/spelling"
)

// Usual pans of the US and the UK whose depth, or whose whole size, goes without saying. Common
// practice, no source: no other figure here has one.
const (
	cupML      = 236.588
	inchMM     = 25.4
	nearMM     = 6 // makers' sizes differ by so much, mm
	ringDeepMM = 87.5
)

// usualPans are floors with their usual depth, mm: long and short side.
var usualPans = []struct{ long, short, lo, hi float64 }{
	{13 * inchMM, 9 * inchMM, 2 * inchMM, 2.5 * inchMM},
	{9 * inchMM, 5 * inchMM, 2.5 * inchMM, 3 * inchMM},
	{8.5 * inchMM, 4.5 * inchMM, 2.5 * inchMM, 3 * inchMM},
	{8 * inchMM, 4 * inchMM, 2.5 * inchMM, 3 * inchMM},
	{8 * inchMM, 8 * inchMM, 1.5 * inchMM, 2 * inchMM},
	{9 * inchMM, 9 * inchMM, 1.5 * inchMM, 2 * inchMM},
}

var (
	metric = spelling.Pattern(`(?i)\d ?(?:cm|mm)\b`)
	// deeper are tins of the same floor that are no cake pans.
	deeper = spelling.Pattern(`(?i)\b(?:spring ?form|spring form|bundt|tube|ring|kugelhopf|` +
		`gugelhupf|savarin|angel|skillet|deep|high|panettone|kulich|tart|flan|pie)\b`)
	// Tins in cm are as often deep ones: 35 to 80 mm.
	metricCake = figure.Interval{Lo: 35, Hi: 80}
)

// usualDepth narrows the height of a tin that only has its floor written to the usual depth of
// such a pan.
func (t *Tin) usualDepth(name string) {
	if t.Sides[2] != anyHeight || deeper.MatchString(name) {
		return
	}
	long, short := t.Sides[0].Hi, t.Sides[1].Hi
	for _, pan := range usualPans {
		if math.Abs(long-pan.long) > nearMM || math.Abs(short-pan.short) > nearMM {
			continue
		}
		t.Sides[2] = figure.Interval{Lo: pan.lo, Hi: pan.hi}
		if metric.MatchString(name) && pan.long == pan.short {
			t.Sides[2] = metricCake
		}
		return
	}
}

var (
	muffin = spelling.Pattern(`(?i)\b(?:muffin|cupcake)[- ](?:tins?|pans?|trays?|moulds?|` +
		`molds?|cups?|holes?)\b`)
	otherMuffin = spelling.Pattern(`(?i)\b(?:mini|jumbo|texas|giant|large)\b`)
	ringed      = spelling.Pattern(`(?i)\b(?:bundt|tube pan|ring (?:tin|pan|mould|mold)|` +
		`kugelhopf|gugelhupf)\b`)
	cupsOf  = spelling.Pattern(`(?i)\b(\d+(?:\.\d+)?)(?: ?(?:to|-|–) ?(\d+))?[- ]cups?\b`)
	figures = spelling.Pattern(`\d`)
)

// byRoom gives a tin whose name tells its room and no length: a muffin tin, as one of its cups, and
// a ring of so many cups, as a round tin of the same room.
func byRoom(name string) (Tin, bool) {
	if muffin.MatchString(name) && !otherMuffin.MatchString(name) {
		// A cup of 30 to 38 mm, 80 to 130 ml, in which pieces stand as far over the rim again.
		deep := figure.Interval{Lo: 30, Hi: 90}
		side := figure.Interval{Lo: 58, Hi: 66}
		return Tin{Sides: [3]figure.Interval{side, side, deep}, Round: true}, true
	}
	if !ringed.MatchString(name) {
		return Tin{}, false
	}
	lo, hi := 10.0, 12.0
	m := cupsOf.FindStringSubmatch(name)
	switch {
	case m != nil:
		lo, _ = strconv.ParseFloat(m[1], 64)
		if hi = lo; m[2] != "" {
			hi, _ = strconv.ParseFloat(m[2], 64)
		}
	case figures.MatchString(name) || !strings.Contains(strings.ToLower(name), "bundt"):
		return Tin{}, false // a length, or a ring of any size
	}
	across := func(cups float64) float64 {
		return math.Sqrt(4 * cups * cupML * 1000 / (math.Pi * ringDeepMM))
	}
	side := figure.Interval{Lo: across(lo), Hi: across(hi)}
	t := Tin{Sides: [3]figure.Interval{side, side, {Lo: 80, Hi: 95}}, Round: true}
	return t, lo > 0 && lo <= hi && t.fits()
}

const readied = `(?:(?:well|lightly|generously|heavily|nicely)[- ]?)?(?:greased|buttered|oiled|` +
	`lined|floured|sugared|crumbed|sprayed|prepared|(?:parchment|paper)[- ]lined|non-?stick)`

var (
	readiedFirst = spelling.Pattern(`(?i)^(?:an? |the |your )?(?:` + readied + `(?:,| and)? )+`)
	readiedLast  = spelling.Pattern(`(?i)[,;( ]+(?:and )?` + readied + `\b[^\d]*$`)
	// ofTin is a food that only tells what a tin is for.
	ofTin = spelling.Pattern(`(?i)\b(?:brioche|muffin|bread|cake|loaf|pullman|panettone|baba|` +
		`savarin|pie|tart|pizza|bun|madeleine|cupcake|sandwich|pudding)[- ](tins?|pans?|moulds?|` +
		`molds?|dish(?:es)?|trays?|cases?|rings?)\b`)
)

// Bare is a tin's name without the words by which it is greased or lined; own are the names of the
// house's tins, which stay.
func Bare(name string, own []string) string {
	if slices.ContainsFunc(own, func(tin string) bool { return strings.EqualFold(tin, name) }) {
		return name
	}
	bare := readiedFirst.ReplaceAllString(strings.TrimSpace(name), "")
	if bare = readiedLast.ReplaceAllString(bare, ""); bare == "" {
		return name
	}
	return bare
}

// Foodless drops the food from the names of tins among words: "brioche moulds" hold what the
// formula says, and name none.
func Foodless(words string) string { return ofTin.ReplaceAllString(words, "$1") }
