package mould

import (
	"math"
	"os"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/figure"
	"forebake/engine/science/internal/published"
)

var rows, number = published.In(os.DirFS(published.Folder)), published.Number

// The line's published points: those calculated from it to the printed
// day, the two measured cakes within a tenth.
func TestPublishedPoints(t *testing.T) {
	tried := 0
	for _, r := range rows(t, "mould.csv") {
		days := number(t, r["days"])
		tried++
		tolerance := 0.5
		if r["kind"] == "product" {
			tolerance = days / 10
		}
		estimate, silent := Days(
			Goods{},
			figure.Point(number(t, r["erh_percent"])),
			number(t, r["temp_c"]),
		)
		got, ok := estimate.Mid, silent == ""
		if !ok || math.Abs(got-days) > tolerance {
			t.Errorf("%v: %.2f days, published %v", r, got, days)
		}
	}
	if tried != 8 {
		t.Errorf("%d points", tried)
	}
}

func goodsOf(words string) Goods {
	has := func(word string) bool { return strings.Contains(words, word) }
	g := Goods{
		Culture: has("culture"),
		Filled:  has("filled"),
		Nuts:    has("nuts"),
		Moist:   has("moist"),
		Cold:    has("cold"),
	}
	for _, family := range []string{"panettone", "stollen"} {
		if has(family) {
			g.Family = family
		}
	}
	return g
}

// Every published keeping lies in the estimate, except the one that the
// model names, and no estimate is wider than a factor of 6.
func TestPublishedKeeping(t *testing.T) {
	held, all := 0, 0
	for _, r := range rows(t, "shelf-life.csv") {
		erh, tC := figure.Interval{}, 25.0
		if r["erh"] != "" {
			erh, tC = figure.Point(number(t, r["erh"])), number(t, r["temp_c"])
		}
		e, silent := Days(goodsOf(r["goods"]), erh, tC)
		if silent != "" {
			t.Fatalf("%s: %s", r["item"], silent)
		}
		days := number(t, r["days"])
		all++
		if e.Contains(days) {
			held++
		}
		t.Logf("%-40s %5g in %.1f (%.1f to %.1f)", r["item"], days, e.Mid, e.Low, e.High)
		if e.Contains(days) != (r["inside"] == "yes") {
			t.Errorf("%s: %g days, model %v", r["item"], days, e)
		}
		if !(e.Low <= e.Mid && e.Mid <= e.High && e.High <= 6.01*e.Low) {
			t.Errorf("%s: %v", r["item"], e)
		}
	}
	t.Logf("points: mould-free days: %d of %d inside, high end over low end up to 6", held, all)
	if held != 15 || all != 16 {
		t.Errorf("%d of %d rows inside", held, all)
	}
	if !strings.Contains(Model.Misses, "270") {
		t.Errorf("the miss is not named: %s", Model.Misses)
	}
}

// The family table's rows, as labels and advice have them; without
// sourdough a quarter.
func TestFamilyTable(t *testing.T) {
	for words, want := range map[string][2]float64{
		"panettone culture": {30, 180}, "panettone": {7.5, 45}, "panettone filled": {3, 4},
		"stollen cold": {28, 120}, "stollen": {14, 56},
		"stollen nuts cold": {14, 42}, "stollen moist nuts cold": {7, 14},
		"stollen filled": {7, 14},
	} {
		e, silent := Days(goodsOf(words), figure.Unknown(), math.NaN())
		if silent != "" || e.Low != want[0] || e.High != want[1] ||
			!(e.Low < e.Mid && e.Mid < e.High) {
			t.Errorf("%s: %v %s, want %v", words, e, silent, want)
		}
	}
	// 18 days against 4.5 in one study (read).
	if got := 18 / 4.5; got != acidFactor {
		t.Errorf("acid: %g", got)
	}
}

// The line with its error, bread above it, and silence past both ends
// of each range.
func TestDaysByHumidity(t *testing.T) {
	for name, c := range map[string]struct {
		erh      figure.Interval
		tC       float64
		culture  bool
		low, mid float64
		high     float64
		reason   string
	}{
		"a cake": {figure.Point(81), 21, false, 22.336 / 1.25, 22.336,
			22.336 * 1.25, ""},
		"its end, dry": {figure.Point(74), 21, false, 82.414 / 1.25, 82.414,
			82.414 * 1.25, ""},
		"its end, moist": {figure.Point(90), 27, false, 3.954 / 1.25, 3.954, 3.954 * 1.25, ""},
		"bread":          {figure.Interval{Lo: 93, Hi: 97}, 25, false, 2, 4.5, 6, ""},
		"sourdough":      {figure.Interval{Lo: 93, Hi: 97}, 25, true, 8, 18, 24, ""},
		"over the edge": {figure.Interval{Lo: 88, Hi: 93}, 21, false, 2, 5.0234,
			6.0534 * 1.25, ""},
		"drier in part": {figure.Interval{Lo: 70, Hi: 80}, 21, false, 26.915 / 1.25, 47.098,
			math.Inf(1), ""},
		"too dry": {figure.Point(73.9), 21, false, 82.414 / 1.25, math.NaN(),
			math.Inf(1), "from 74 to 90 %"},
		"too cold": {figure.Point(80), 20.9, false, 0, math.NaN(), math.Inf(1),
			"from 21 to 27 C"},
		"too warm": {figure.Point(80), 27.1, false, 0, math.NaN(), math.Inf(1),
			"from 21 to 27 C"},
		"no storage at all": {figure.Point(80), math.NaN(), false, 0, math.NaN(), math.Inf(1),
			"from 21 to 27 C"},
		"the coolest, fine": {figure.Point(80), 21, false, 26.915 / 1.25, 26.915,
			26.915 * 1.25, ""},
		"the warmest, fine": {figure.Point(80), 27, false, 17.539 / 1.25, 17.539,
			17.539 * 1.25, ""},
		"half way, 24 C": {figure.Point(80), 24, false, 21.727 / 1.25, 21.727,
			21.727 * 1.25, ""},
		"another's humidity": {figure.Point(91), 21, false, 2, 4.5, 6, ""},
	} {
		e, silent := Days(Goods{Family: "challah", Culture: c.culture}, c.erh, c.tC)
		off := func(got, want float64) bool {
			return got != want && !(math.IsNaN(got) && math.IsNaN(want)) &&
				!(math.Abs(got-want) <= 1e-3*want)
		}
		if off(e.Low, c.low) || off(e.Mid, c.mid) || off(e.High, c.high) ||
			(silent == "") != (c.reason == "") ||
			!strings.Contains(silent, c.reason) {
			t.Errorf("%s: %v %q, want %g %g %g", name, e, silent, c.low, c.mid, c.high)
		}
	}
}

func TestTheLineNeverExtrapolates(t *testing.T) {
	for _, c := range [][2]float64{{73.9, 21}, {80, 20.9}, {80, 27.1}, {80, math.NaN()}} {
		if days, silent := Days(Goods{}, figure.Point(c[0]), c[1]); silent == "" ||
			!math.IsNaN(days.Mid) {
			t.Errorf("%v answers %v", c, days)
		}
	}
}

func TestMoisterAndWarmerKeepsShorter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		erh, temp := rapid.Float64Range(lowestERH, highestERH-0.1).
			Draw(t, "erh"),
			rapid.Float64Range(coolC, warmC-0.1).
				Draw(t, "temp")
		here := line(erh, temp)
		moist := line(erh+0.1, temp)
		warm := line(erh, temp+0.1)
		if !(moist < here) || !(warm < here) {
			t.Fatalf("%v at %v %% and %v C; %v moister, %v warmer", here, erh, temp, moist, warm)
		}
		// Knowing less of the humidity never narrows the days.
		span := figure.Interval{
			Lo: erh - rapid.Float64Range(0, 20).Draw(t, "below"),
			Hi: erh + rapid.Float64Range(0, 10).Draw(t, "above"),
		}
		e, _ := Days(Goods{}, figure.Point(erh), temp)
		wide, silent := Days(Goods{}, span, temp)
		if silent != "" || wide.Low > e.Low+1e-9 || wide.High < e.High-1e-9 {
			t.Fatalf("%v at %v, %v over %v %s", e, erh, wide, span, silent)
		}
	})
}
