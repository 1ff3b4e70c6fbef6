package microbe

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

// plain is D and z alone, without tested ends in reach.
func plain(d, ref, z float64) Kill {
	return NewKill(Line{DMin: d, RefC: ref, ZC: z, LowC: 0, HighC: 200})
}

// Figures expected of 60 to 70 C at 2 C a minute (computed). The
// trapezoid on the rate overstates a rising core; the integral is
// independent of the steps.
func TestLethalityWorked(t *testing.T) {
	bun, batter := plain(3.14, 61, 6.58), plain(16.5, 61, 10.4)
	for _, steps := range []int{1, 5, 20, 333} {
		sum := 0.0
		for i := range steps {
			at := func(i int) float64 { return 60 + 10*float64(i)/float64(steps) }
			sum += bun.Log(at(i), at(i+1), 5/float64(steps))
		}
		if !near(sum, 10.29, 0.005) {
			t.Errorf("%d steps: %.4f", steps, sum)
		}
	}
	for steps, want := range map[int]float64{5: 10.71, 20: 10.32} {
		sum := 0.0
		for i := range steps {
			a, b := 60+10*float64(i)/float64(steps), 60+10*float64(i+1)/float64(steps)
			sum += (bun.Log(a, a, 1) + bun.Log(b, b, 1)) / 2 * 5 / float64(steps)
		}
		if !near(sum, want, 0.005) {
			t.Errorf("trapezoid in %d steps: %.4f, expected %v", steps, sum, want)
		}
	}
	if got := batter.Log(60, 70, 5); !near(got, 0.89, 0.005) {
		t.Errorf("sweeter batter: %.4f", got)
	}
	if got := batter.Log(61, 61, 16.5); !near(got, 1, 1e-12) {
		t.Errorf("one D at its own temperature: %v log", got)
	}
}

// No line is faster than a printed D of its food, and the dough lines
// are within a third of it; water activity and tested ends are the
// table's, z at least its printed figure.
func TestLinesByTheTable(t *testing.T) {
	for _, c := range []struct {
		line     Line
		medium   string
		exactAw  bool
		points   int
		slowest  float64 // most that the line's D may be over a printed one
		zPrinted float64
	}{
		{bunLine, "yeast bread dough (bun)", false, 3, 1.35, 6.58},
		{muffinDoughLine, "English muffin dough, pH 5.0", true, 2, 1.43, 6.2},
		{batterLine, "muffin batter (sweet)", true, 3, 1.3, 10.4},
		{nutPasteLine, "peanut butter cookie dough", true, 3, 1.1, 16.45},
		{custardLine, "egg yolk + 10 % sucrose", false, 1, 1.001, 4.6},
		{plainEggLine, "liquid whole egg", false, 2, 12, 0},
		{plainEggLine, "egg yolk", false, 1, 12, 0},
		{plainEggLine, "centre of intact shell egg", false, 1, 12, 0},
		{plainEggLine, "liquid egg and yolk, all published values lie below", false, 1, 1.15, 5.3},
	} {
		points, low, high := 0, math.Inf(1), math.Inf(-1)
		for _, r := range table(t, "lethality") {
			if r["medium"] != c.medium || !strings.HasPrefix(r["organism"], "Salmonella") ||
				r["row_type"] != "D" && r["row_type"] != "envelope" {
				continue
			}
			points++
			at, d := num(t, r["temp_c"]), num(t, r["d_min"])
			if hi := num(t, r["d_min_hi"]); hi > d {
				d = hi
			}
			low, high = math.Min(low, at), math.Max(high, at)
			got := 1 / NewKill(c.line).Log(at, at, 1)
			if !(got >= d*0.9999) || !(got <= d*c.slowest) {
				t.Errorf("%s at %v C: D %.3f min, printed %v", c.medium, at, got, d)
			}
			if c.exactAw && num(t, r["aw"]) != c.line.Aw {
				t.Errorf("%s: aw %v, printed %s", c.medium, c.line.Aw, r["aw"])
			}
			if c.zPrinted != 0 && (num(t, r["z_c"]) != c.zPrinted || c.line.ZC < c.zPrinted) {
				t.Errorf("%s: z %v, printed %s", c.medium, c.line.ZC, r["z_c"])
			}
		}
		if points != c.points {
			t.Errorf("%s: %d points", c.medium, points)
		}
		if c.line.Medium != plainEggLine.Medium && (low != c.line.LowC || high != c.line.HighC) {
			t.Errorf(
				"%s: tested %v to %v C, line %v to %v",
				c.medium,
				low,
				high,
				c.line.LowC,
				c.line.HighC,
			)
		}
	}
}

// Held for a printed time, no line exceeds the printed fall: FSIS's
// table for lean meat and the heat-resistant strains in egg.
func TestHoldsByTheTable(t *testing.T) {
	meat, egg := 0, 0
	for _, r := range table(t, "lethality") {
		at, minutes, log := num(t, r["temp_c"]), num(t, r["time_min"]), num(t, r["log_reduction"])
		switch {
		case r["row_type"] != "time-temperature":
		case r["medium"] == "lean meat, moist heat":
			meat++
			// 70 C is printed as reached at once, which no line
			// can give.
			if got := KillFor(LeanMeat, 0.98).Log(at, at, minutes); got > log*1.0001 ||
				minutes > 0 && got < log*0.83 {
				t.Errorf("lean meat, %v C for %v min: %.2f log, printed %v", at, minutes, got, log)
			}
		case strings.HasPrefix(r["organism"], "Salmonella, heat-resistant"):
			egg++
			if got := KillFor(PlainEgg, 0.99).Log(at, at, minutes); got > log*1.0001 {
				t.Errorf("whole egg, %v C for %v min: %.2f log, printed %v", at, minutes, got, log)
			}
		}
	}
	if meat != 54 || egg != 9 {
		t.Errorf("%d meat rows, %d egg rows", meat, egg)
	}
}

func TestKillForTakesTheDrierRow(t *testing.T) {
	for _, c := range []struct {
		food  Food
		aw    float64
		first string
		lines int
	}{
		{Dough, 0.947, muffinDoughLine.Medium, 3}, {Dough, 0.9469, batterLine.Medium, 2},
		{Dough, 0.928, batterLine.Medium, 2}, {Dough, 0.9279, nutPasteLine.Medium, 1},
		{Dough, 0.421, nutPasteLine.Medium, 1}, {Dough, 0.4209, "", 0}, {Dough, math.NaN(), "", 0},
		{BunDough, 0.96, bunLine.Medium, 4}, {BunDough, 0.94, batterLine.Medium, 2},
		{Custard, 0.97, custardLine.Medium, 1}, {Custard, 0.93, batterLine.Medium, 2},
		{PlainEgg, 0.99, plainEggLine.Medium, 1}, {LeanMeat, 0.98, meatLine.Medium, 1},
		{LeanMeat, 0.9, nutPasteLine.Medium, 1}, {Chocolate, 0.99, "", 0}, {Food(77), 0.99, "", 0},
	} {
		k := KillFor(c.food, c.aw)
		if len(k.Lines) != c.lines || c.lines > 0 && k.Lines[0].Medium != c.first {
			t.Errorf("food %d, aw %v: %+v", c.food, c.aw, k.Lines)
		}
		if c.lines == 0 && k.Log(90, 90, 60) != 0 {
			t.Errorf("food %d, aw %v kills", c.food, c.aw)
		}
	}
	if (Kill{}).Log(90, 90, 60) != 0 ||
		NewKill(
			Line{DMin: -1, ZC: 5, HighC: 90},
			Line{DMin: 1, ZC: math.NaN(), HighC: 90},
		).Log(80, 80, 9) !=
			0 {
		t.Error("a line that cannot be read kills")
	}
}

func TestNothingBelowTheTestedAndLevelAbove(t *testing.T) {
	// Ten degrees Fahrenheit, as published.
	if !near(BeyondTested, 10/1.8, 0.01) {
		t.Errorf("lines go on for %g C", BeyondTested)
	}
	for _, l := range []Line{plainEggLine, custardLine, bunLine, muffinDoughLine, batterLine,
		nutPasteLine, meatLine} {
		k, top := NewKill(l), l.HighC+BeyondTested
		if k.Log(l.LowC-1e-9, l.LowC-1e-9, 1e6) != 0 || k.Log(4, l.LowC, 600) != 0 ||
			!(k.Log(l.LowC, l.LowC, 1) > 0) {
			t.Errorf("%s: the low end", l.Medium)
		}
		if level := k.Log(top, top, 1); !near(k.Log(100, 100, 1), level, 1e-12*level) ||
			!(k.Log(top-0.1, top-0.1, 1) < level) {
			t.Errorf("%s: the high end", l.Medium)
		}
		if l.Source == "" || l.How == "" || l.Basis == "" {
			t.Errorf("%s has no source", l.Medium)
		}
		for _, c := range [][3]float64{{math.NaN(), 80, 5}, {80, math.Inf(1), 5},
			{80, 80, math.NaN()}, {80, 80, -5}, {80, 80, math.Inf(1)}, {80, 2000, 5}} {
			if got := k.Log(c[0], c[1], c[2]); got != 0 {
				t.Errorf("%v kills %v", c, got)
			}
		}
	}
}

// Where two lines cross, the faster leads: the bun's line turns level
// at 66.56 C and the muffin dough's rises on to 67.56 C; two invented
// lines cross while both rise.
func TestFasterLineTakesOverAtTheCrossing(t *testing.T) {
	steep, gentle := Line{
		DMin:  1,
		RefC:  60,
		ZC:    5,
		LowC:  50,
		HighC: 90,
	}, Line{
		DMin:  0.5,
		RefC:  60,
		ZC:    20,
		LowC:  50,
		HighC: 90,
	}
	for _, c := range []struct {
		k      Kill
		lo, hi float64
	}{{KillFor(BunDough, 0.96), bunLine.HighC + BeyondTested, muffinDoughLine.HighC + BeyondTested},
		{NewKill(steep, gentle), 60, 64}} {
		const n = 1_000_000
		sum := 0.0
		for i := range n {
			at := c.lo + (c.hi-c.lo)*(float64(i)+0.5)/n
			sum += math.Pow(10, math.Max(c.k.Lines[0].logRate(at), c.k.Lines[1].logRate(at))) / n
		}
		if got := c.k.Log(c.lo, c.hi, 1); !near(got, sum, 1e-7) {
			t.Errorf("%v to %v C: %.8f, step by step %.8f", c.lo, c.hi, got, sum)
		}
	}
}

// kills draws what a caller may hold.
func kills(t *rapid.T) Kill {
	return KillFor(
		Food(rapid.IntRange(0, 5).Draw(t, "food")),
		rapid.Float64Range(0.3, 1).Draw(t, "aw"),
	)
}

func TestLethalityProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := kills(t)
		temp := rapid.OneOf(
			rapid.Float64Range(40, 100),
			rapid.SampledFrom([]float64{55, 60, 61, 65.56, 66.56, 67.56, 70, 75, 90.56}),
		)
		t0, t1, minutes := temp.Draw(
			t,
			"t0",
		), temp.Draw(
			t,
			"t1",
		), rapid.Float64Range(0, 60).
			Draw(t, "minutes")
		whole := k.Log(t0, t1, minutes)
		if !(whole >= 0) || math.IsInf(whole, 0) {
			t.Fatal(whole)
		}
		if share := rapid.Float64Range(0.01, 0.99).Draw(t, "split"); math.Abs(t1-t0) > 1e-3 ||
			t0 == t1 {
			middle := t0 + (t1-t0)*share
			parts := k.Log(t0, middle, minutes*share) + k.Log(middle, t1, minutes*(1-share))
			if !near(parts, whole, 1e-8*(1+whole)) {
				t.Fatalf("%v whole, %v in parts", whole, parts)
			}
		}
		up := rapid.Float64Range(0, 5).Draw(t, "up")
		if k.Log(t0+up, t1+up, minutes) < whole*(1-1e-9) ||
			k.Log(t0, t1, minutes+up) < whole*(1-1e-9) {
			t.Fatal("hotter or longer kills less")
		}
		// Midpoints of short steps over the fastest line, the plain
		// second way.
		const n = 2000
		sum := 0.0
		for i := range n {
			best := math.Inf(-1)
			for _, l := range k.Lines {
				best = math.Max(best, l.logRate(t0+(t1-t0)*(float64(i)+0.5)/n))
			}
			sum += math.Pow(10, best) * minutes / n
		}
		if !near(sum, whole, 2e-3*(1+whole)+1e-3*minutes*math.Abs(t1-t0)) {
			t.Fatalf("%v, step by step %v", whole, sum)
		}
	})
}

// Sugar and drying protect: a drier dough never dies faster.
func TestDrierNeverDiesFaster(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		aw, drop := rapid.Float64Range(0.3, 1).
			Draw(t, "aw"),
			rapid.Float64Range(0, 0.5).
				Draw(t, "drop")
		at := rapid.Float64Range(50, 100).Draw(t, "at")
		food := Food(rapid.IntRange(0, 1).Draw(t, "food"))
		wet, dry := KillFor(food, aw).Log(at, at, 1), KillFor(food, aw-drop).Log(at, at, 1)
		if dry > wet*(1+1e-9) {
			t.Fatalf("%v at aw %v, %v at %v", wet, aw, dry, aw-drop)
		}
	})
}

func BenchmarkLog(b *testing.B) {
	k := KillFor(Dough, 0.95)
	for b.Loop() {
		k.Log(50, 92, 12)
	}
}

func BenchmarkKillFor(b *testing.B) {
	for b.Loop() {
		KillFor(Dough, 0.95)
	}
}
