package microbe

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// limitHours is the time of the band at tC, h: +Inf outside the bands.
// An edge belongs to the band that it tops, as printed: 41, 50 and 70 F
// each end a band. 0 for the unreadable.
func limitHours(o Organism, tC float64) float64 {
	if o >= organismCount || !readable(tC) {
		return 0
	}
	for _, b := range o.Bands() {
		if tC >= b.FromC && tC <= b.ToC {
			return b.Hours
		}
	}
	return math.Inf(1)
}

// byName finds an organism whose name opens the text.
func byName(text string) (Organism, bool) {
	for _, o := range Organisms() {
		if strings.HasPrefix(text, o.String()) {
			return o, true
		}
	}
	return 0, false
}

func TestLimitHoursByTheTable(t *testing.T) {
	rows, served := 0, map[Organism]int{}
	for _, r := range table(t, "time-temperature-limits") {
		o, ok := byName(r["organism"])
		if r["row_type"] != "limit" || !ok {
			continue
		}
		rows++
		lo, hi, hours := num(t, r["calc_low_c"]), num(t, r["calc_high_c"]), num(t, r["max_hours"])
		b := o.Bands()[served[o]]
		if b != (Band{lo, hi, hours, r["basis"]}) {
			t.Errorf("%v: band %+v, table %v to %v C: %v h, %s", o, b, lo, hi, hours, r["basis"])
		}
		const step = 1e-9
		coldest := lo + step
		if served[o] == 0 {
			coldest = lo // elsewhere the edge belongs to the band below
		}
		for _, c := range []float64{coldest, lo + step, (lo + hi) / 2, hi - step, hi} {
			if got := limitHours(o, c); got != hours {
				t.Errorf("%v at %v C: %v h, table %v", o, c, got, hours)
			}
		}
		if printed := num(t, r["printed_low_c"]); printed > lo && limitHours(o, printed) != hours {
			t.Errorf(
				"%v at the printed %v C: %v h, table %v",
				o,
				printed,
				limitHours(o, printed),
				hours,
			)
		}
		if served[o] > 0 && o.Bands()[served[o]-1].ToC != lo {
			t.Errorf("%v: a gap below %v C", o, lo)
		}
		served[o]++
	}
	for _, o := range Organisms() {
		bands := o.Bands()
		last := bands[len(bands)-1]
		if served[o] != len(bands) {
			t.Errorf("%v: %d bands, %d rows", o, len(bands), served[o])
		}
		if limitHours(o, last.ToC) != last.Hours || !math.IsInf(limitHours(o, last.ToC+1e-9), 1) ||
			!math.IsInf(limitHours(o, bands[0].FromC-1e-9), 1) {
			t.Errorf("%v: the ends", o)
		}
	}
	if rows != 19 {
		t.Errorf("%d rows, want 19", rows)
	}
}

// The growth limits are the widest of all printed rows; rows on where
// nothing grew, or on toxin alone, are narrower.
func TestGrowsByTheWidestRow(t *testing.T) {
	type ends struct{ aw, low, high float64 }
	widest := map[Organism]ends{}
	for _, r := range table(t, "time-temperature-limits") {
		o, ok := byName(r["organism"])
		if r["row_type"] != "growth_range" || !ok || strings.Contains(r["organism"], "no growth") ||
			strings.Contains(r["organism"], "enterotoxin") {
			continue
		}
		w, seen := widest[o]
		if !seen {
			w = ends{1, 14, 0}
		}
		aw, low, high := num(t, r["min_aw"]), num(t, r["min_ph"]), num(t, r["max_ph"])
		if aw < w.aw {
			w.aw = aw
		}
		if low < w.low {
			w.low = low
		}
		if high > w.high {
			w.high = high
		}
		widest[o] = w
	}
	for _, o := range Organisms() {
		w := widest[o]
		any := Interval{}
		for _, c := range []struct {
			aw, ph Interval
			known  bool
			want   bool
		}{
			{point(w.aw), any, false, true}, {point(w.aw - 1e-9), any, false, false},
			{Interval{0.2, w.aw}, any, false, true},
			{point(0.99), point(w.low), true, true},
			{point(0.99), point(w.low - 1e-9), true, false},
			{point(0.99), Interval{2, w.low}, true, true},
			{point(0.99), point(w.high), true, true},
			{point(0.99), point(w.high + 1e-9), true, false},
			{point(0.99), Interval{w.high, 13}, true, true},
			{point(math.NaN()), point(math.NaN()), true, true},
			{Interval{0.5, 0.1}, Interval{3, 1}, true, true}, {point(-1), point(-1), true, true},
		} {
			if got := Grows(o, c.aw, c.ph, c.known); got != c.want {
				t.Errorf("%v, aw %v, pH %v (%v): %v", o, c.aw, c.ph, c.known, got)
			}
		}
	}
}

// A pot that just keeps the Food Code's two stages: 57 to 21 C in 2 h,
// to 10 C in 2 h, to 5 C in 2 h, linearly. By hand from the table's
// bands: B. cereus is 33.9/18/3 + 0.1/18/6 + 6/5.5/6 + 5/5.5/24 +
// 3.9/2.5/24 + 1.1/2.5/120 = 0.9171; the triangles below 21.1, 15 and
// 6.1 C and above 55 C add 0.0132, 0.0114, 0.0067 and 0.0093: 0.9576.
func TestCoolingThatKeepsTheCode(t *testing.T) {
	e := Exposure{}
	e.Add(57, 21, 2)
	e.Add(21, 10, 2)
	e.Add(10, 5, 2)
	for o, want := range map[Organism]float64{
		BCereus:        0.9575,
		Salmonella:     1.2076,
		SAureus:        0.7504,
		CPerfringens:   1.1431,
		LMonocytogenes: 1.4496,
	} {
		if got := e.Spent(o); !near(got, want, 0.00005) {
			t.Errorf("%v: %.4f, want %.4f", o, got, want)
		}
	}
}

func TestUnreadableHistoryIsOverItsLimit(t *testing.T) {
	for _, c := range [][3]float64{{math.NaN(), 4, 1}, {4, math.Inf(1), 1}, {4, -300, 1},
		{20, 30, math.NaN()}, {20, 30, -1}, {2, 2, math.Inf(1)}} {
		e := Exposure{}
		e.Add(c[0], c[1], c[2])
		e.Add(4, 4, 1)
		if !math.IsInf(e.Spent(BCereus), 1) {
			t.Errorf("%v: %v", c, e.Spent(BCereus))
		}
	}
	unknown := Organism(200)
	if !math.IsInf((&Exposure{}).Spent(unknown), 1) || limitHours(unknown, 20) != 0 ||
		limitHours(SAureus, math.NaN()) != 0 ||
		!Grows(unknown, point(0.1), point(1), true) ||
		unknown.Bands() != nil ||
		unknown.String() != "unknown organism" {
		t.Error("an unknown organism is taken lightly")
	}
	for _, o := range Organisms() {
		if o.LeavesToxin() != (o == SAureus || o == BCereus) ||
			o.SporeFormer() != (o == BCereus || o == CPerfringens) {
			t.Error(o)
		}
	}
}

func organismOf(t *rapid.T) Organism { return rapid.SampledFrom(Organisms()).Draw(t, "organism") }

func TestBudgetProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := organismOf(t)
		temp := rapid.OneOf(
			rapid.Float64Range(-20, 100),
			rapid.SampledFrom([]float64{4, 5, 5.2, 6.1, 10, 15, 21, 21.1, 30, 46.2, 57}),
		)
		t0, t1, hours := temp.Draw(
			t,
			"t0",
		), temp.Draw(
			t,
			"t1",
		), rapid.Float64Range(0, 100).
			Draw(t, "hours")
		spent := func(t0, t1, hours float64) float64 {
			e := Exposure{}
			e.Add(t0, t1, hours)
			return e.Spent(o)
		}
		whole := spent(t0, t1, hours)
		if whole < 0 || math.IsNaN(whole) {
			t.Fatal(whole)
		}
		if back := spent(t1, t0, hours); !near(back, whole, 1e-12*(1+whole)) {
			t.Fatalf("%v one way, %v back", whole, back)
		}
		share := rapid.Float64Range(0.01, 0.99).Draw(t, "split")
		middle := t0 + (t1-t0)*share
		if t0 != t1 && math.Abs(t1-t0) > 1e-3 {
			parts := spent(t0, middle, hours*share) + spent(middle, t1, hours*(1-share))
			if !near(parts, whole, 1e-6*(1+whole)) {
				t.Fatalf("%v whole, %v in parts", whole, parts)
			}
		}
		// Midpoints of many short steps, the plain second way.
		const n = 4000
		sum := 0.0
		for i := range n {
			sum += hours / n * Pace(o, t0+(t1-t0)*(float64(i)+0.5)/n)
		}
		if !near(sum, whole, 1e-3*hours+1e-9) {
			t.Fatalf("%v, step by step %v", whole, sum)
		}
	})
}

// Up to its growth limit, hotter never allows more hours; above it the
// table counts nothing, so the rule must end there.
func TestHotterNeverAllowsMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		o := organismOf(t)
		bands := o.Bands()
		one := rapid.Float64Range(-30, bands[len(bands)-1].ToC)
		a, b := one.Draw(t, "a"), one.Draw(t, "b")
		if limitHours(o, math.Max(a, b)) > limitHours(o, math.Min(a, b)) {
			t.Fatalf("%v: %v and %v C", o, a, b)
		}
	})
}

// What is known of the temperature never adds up to more than the worst
// that could be.
func TestWorstIsWorst(t *testing.T) {
	worst := Exposure{}
	worst.AddWorst(1)
	for _, o := range Organisms() {
		for c := -20.0; c < 100; c += 0.1 {
			if Pace(o, c) > worst.Spent(o)*(1+1e-12) {
				t.Fatalf("%v at %v C", o, c)
			}
		}
	}
	if len(edges)+1 > maxSpans {
		t.Errorf("%d spans, room for %d", len(edges)+1, maxSpans)
	}
}

func BenchmarkExposureAdd(b *testing.B) {
	e := Exposure{}
	for b.Loop() {
		e.Add(30, 20, 0.1)
	}
}

// The pace is continuous, at least the band's from RampC above the
// coldest growth on, and rises with temperature up to the growth limit.
func TestPaceFollowsTheBandsWithoutAJump(t *testing.T) {
	for _, o := range Organisms() {
		bands := o.Bands()
		coldest, warmest := bands[0].FromC, bands[len(bands)-1].ToC
		before := 0.0
		for i := range 8000 {
			c := -10 + float64(i)*0.01
			pace := Pace(o, c)
			if jump := math.Abs(pace - before); jump > 0.011 {
				t.Fatalf("%v: %v to %v at %v C", o, before, pace, c)
			}
			if c >= coldest+RampC && pace < 1/limitHours(o, c)*(1-1e-12) {
				t.Fatalf("%v at %v C: %v an hour, the band asks %v h", o, c, pace, limitHours(o, c))
			}
			if c < warmest && pace < before-1e-12 {
				t.Fatalf("%v: warmer is slower at %v C", o, c)
			}
			if (c < coldest || c > warmest+RampC+0.01) && pace != 0 {
				t.Fatalf("%v grows at %v C", o, c)
			}
			before = pace
		}
		for i, b := range bands {
			if i > 0 && Pace(o, b.FromC) != 1/b.Hours {
				t.Errorf("%v at %v C: %v", o, b.FromC, Pace(o, b.FromC))
			}
		}
	}
	// Where the pace climbs from 0, the measured curves are slower
	// still: two and three logs.
	for c := 4.0; c <= 5; c += 0.05 {
		curve := CustardCereus.PerHour(c).High / CereusBudget.Stop
		if curve > Pace(BCereus, c)+0.0009 {
			t.Errorf("B. cereus at %v C: curve %v, pace %v", c, curve, Pace(BCereus, c))
		}
	}
	for c := 7.0; c <= 8; c += 0.05 {
		if curve := LiveStaph.PerHour(c).High / StaphBudget.Stop; curve > Pace(SAureus, c)+1e-12 {
			t.Errorf("S. aureus at %v C: curve %v, pace %v", c, curve, Pace(SAureus, c))
		}
	}
	six := func(tC float64) float64 {
		e := Exposure{}
		e.Add(tC, tC, 144)
		return e.Spent(BCereus)
	}
	if a, b := six(3.9), six(4.0); math.Abs(a-b) > 1e-9 || six(5) < 1 {
		t.Errorf("six days at 3.9 C %v, at 4.0 C %v, at 5 C %v", a, b, six(5))
	}
	if !math.IsInf(Pace(Organism(200), 20), 1) || !math.IsInf(Pace(SAureus, math.NaN()), 1) {
		t.Error("a pace for figures that cannot be read")
	}
}
