package history_test

import (
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
)

// sketch is a list of steps that can be written down again after
// a change.
type sketch struct {
	steps    []line
	material history.Material
	massG    float64
	gas      float64
	start    float64
	fill     history.Filling
}

// line is one step: everything that a history looks at.
type line struct {
	verb           string
	main           string // the verb's own value where it is no time: a thickness, a weight
	lo, hi         float64
	timed          bool
	ambient, upper float64 // C
	place          bool    // the room or the fridge by name
	form           string
	covered        string
	reading        string
}

func (l line) text() string {
	var b strings.Builder
	switch {
	case !l.timed:
		fmt.Fprintf(&b, "{ %s = %q", l.verb, l.main)
	case l.lo == l.hi:
		fmt.Fprintf(&b, "{ %s = \"%.6f min\"", l.verb, l.lo)
	default:
		fmt.Fprintf(&b, "{ %s = \"%.6f min to %.6f min\"", l.verb, l.lo, l.hi)
	}
	switch {
	case !l.timed:
	case l.place:
		b.WriteString(`, at = "room"`)
	case l.ambient == l.upper:
		fmt.Fprintf(&b, `, at = "%.6f C"`, l.ambient)
	default:
		fmt.Fprintf(&b, `, at = "%.6f C to %.6f C"`, l.ambient, l.upper)
	}
	if l.form != "" {
		fmt.Fprintf(&b, `, as = %q`, l.form)
	}
	b.WriteString(l.covered)
	if l.reading != "" {
		fmt.Fprintf(&b, `, measured = %q`, l.reading)
	}
	b.WriteString(" }")
	return b.String()
}

func (k *sketch) text() string {
	var out []string
	for _, l := range k.steps {
		out = append(out, l.text())
	}
	return strings.Join(out, ", ")
}

func (k *sketch) setup(t tester) history.Setup {
	t.Helper()
	p := part(t, k.text())
	fill := k.fill
	s := history.Setup{
		Part:     p,
		Kitchen:  testKitchen(),
		MassG:    figure.Point(k.massG),
		Material: k.material,
		Start: even(
			k.start,
		),
		Started: true,
		Filling: func(q *formula.Part) *history.Filling { return &fill },
	}
	ferments(&s, k.gas)
	return s
}

// only says what a sketch may not hold.
type only struct {
	points, noReadings, noGas, noHand bool
}

func pick(t *rapid.T, what string, words ...string) string {
	return rapid.SampledFrom(words).Draw(t, what)
}

func between(t *rapid.T, what string, lo, hi float64) float64 {
	return rapid.Float64Range(lo, hi).Draw(t, what)
}

func drawSketch(t *rapid.T, o only) *sketch {
	k := &sketch{
		massG: math.Exp(between(t, "log mass", math.Log(50), math.Log(20000))),
		start: between(t, "start", -5, 60),
	}
	k.material = history.Material{
		Known:        true,
		Conductivity: between(t, "conductivity", 0.15, 0.6),
		Density:      between(t, "density", 600, 1400),
		SpecificHeat: between(t, "specific heat", 1500, 4000),
	}
	k.material.Diffusivity = k.material.Conductivity / k.material.Density / k.material.SpecificHeat
	if !o.noGas && rapid.Bool().Draw(t, "works") {
		k.gas = between(t, "gas", 0.05, 4)
		k.material.Butterfat = between(t, "butterfat", 0, 0.3)
	}
	k.fill = history.Filling{
		Temp:  even(between(t, "filling", 0, 90)),
		MassG: figure.Point(k.massG * between(t, "filling share", 0.02, 1.5)),
		Material: history.Material{
			Known:        true,
			Conductivity: 0.4,
			Density:      1250,
			SpecificHeat: 3200,
			Diffusivity:  1e-7,
		},
	}
	baked := false
	for range rapid.IntRange(1, 8).Draw(t, "steps") {
		o := o
		o.noHand = o.noHand || baked // the reader refuses hand work after the bake
		l := drawLine(t, o)
		if baked {
			l.verb = pick(t, "verb after the bake", "cool", "store", "hold")
		}
		baked = baked || l.verb == "bake"
		k.steps = append(k.steps, l)
	}
	return k
}

func drawLine(t *rapid.T, o only) line {
	if !o.noHand && rapid.IntRange(0, 2).Draw(t, "by hand") == 0 {
		switch verb := pick(t, "hand verb", "mix", "sheet", "divide", "shape", "pan", "fill",
			"fold", "roll", "bake", "cook"); verb {
		case "sheet":
			return line{verb: verb, main: fmt.Sprintf("%.3f mm", between(t, "thickness", 0.5, 40))}
		case "divide":
			return line{verb: verb, main: fmt.Sprintf("%.4f g", between(t, "piece", 10, 2000))}
		case "fill":
			return line{verb: verb, main: "f"}
		case "fold":
			return line{verb: verb, main: "3 pieces"}
		case "pan":
			return line{
				verb:    verb,
				main:    "x",
				form:    "",
				covered: pick(t, "tin", "", `, tin = "long tin"`, `, tin = "long tin", count = 4`),
			}
		case "mix":
			return line{
				verb:    verb,
				main:    "9 min",
				covered: pick(t, "aim", "", `, to = "25 C"`, `, to = "22 C to 26 C"`),
			}
		case "bake":
			return line{
				verb:    verb,
				main:    pick(t, "baked", "20 min", "15 min to 40 min"),
				covered: `, at = "190 C", core = "92 C"`,
			}
		case "cook":
			return line{
				verb:    verb,
				main:    "5 min",
				covered: pick(t, "cooked", `, to = "85 C"`, `, core = "60 C to 90 C"`),
			}
		default:
			return line{verb: verb, main: "x"}
		}
	}
	l := line{
		verb: pick(
			t,
			"verb",
			"rest",
			"chill",
			"proof",
			"temper",
			"cool",
			"hold",
			"store",
			"freeze",
			"thaw",
		),
		timed: true,
	}
	l.lo = math.Exp(between(t, "log minutes", 0, math.Log(3000)))
	l.hi = l.lo
	l.ambient = between(t, "ambient", -25, 60)
	l.upper = l.ambient
	if !o.points && rapid.Bool().Draw(t, "ranges") {
		l.hi *= between(t, "time range", 1, 2)
		l.upper += between(t, "ambient range", 0, 10)
	}
	l.place = !o.points && rapid.IntRange(0, 4).Draw(t, "named") == 0
	mm := func(lo, hi float64) float64 { return between(t, "mm", lo, hi) }
	switch rapid.IntRange(0, 7).Draw(t, "form") {
	case 0:
		l.form = fmt.Sprintf("slab %.2f mm", mm(1, 150))
	case 1:
		l.form = fmt.Sprintf("log %.2f mm", mm(5, 150))
	case 2:
		l.form = fmt.Sprintf("tray %.2f mm", mm(5, 80))
	case 3:
		l.form = "ball"
	case 4:
		l.form = "bowl"
	case 5:
		l.form = fmt.Sprintf("brick %.2fx%.2fx%.2f mm", mm(10, 200), mm(10, 200), mm(10, 300))
	case 6:
		l.form = fmt.Sprintf("pieces %.2f g", between(t, "each", 5, 1500))
	}
	l.covered = pick(t, "covered", "", ", covered = true", ", covered = false")
	if !o.noReadings && rapid.IntRange(0, 4).Draw(t, "read") == 0 {
		l.reading = fmt.Sprintf("%.3f C", between(t, "reading", -25, 60))
		switch rapid.IntRange(0, 3).Draw(t, "kind of reading") {
		case 0:
			l.reading += fmt.Sprintf(" after %.3f min", l.lo*between(t, "share", 0.01, 1))
		case 1:
			l.reading = fmt.Sprintf("%.3f x", between(t, "rise", 1.01, 5))
		case 2:
			l.reading = fmt.Sprintf(
				"%.3f x after %.3f min",
				between(t, "rise", 1.01, 5),
				l.lo*between(t, "share", 0.01, 1),
			)
		}
	}
	return l
}

// held fails unless a band is finite and in order.
func held(t tester, what string, b figure.Estimate, text string) {
	t.Helper()
	for _, x := range []float64{b.Low, b.Mid, b.High} {
		if math.IsNaN(x) || math.IsInf(x, 0) {
			t.Fatalf("%s is %v in %s", what, b, text)
		}
	}
	if b.Low > b.Mid || b.Mid > b.High {
		t.Fatalf("%s is %v, out of order, in %s", what, b, text)
	}
}

// For any steps the figures of known stages are numbers in order, no
// colder than the coldest thing met and no hotter than the hottest but
// for own heat.
func TestAnyHistoryHolds(t *testing.T) {
	known, working := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		k := drawSketch(t, only{})
		s := k.setup(t)
		text := k.text()
		life := follow(t, s)
		lo, hi := min(k.start, k.fill.Temp.Low, 0), max(k.start, k.fill.Temp.High, 100)
		for i := range life.Stages {
			st := &life.Stages[i]
			if !st.Known {
				if st.Missing == "" {
					t.Fatalf("stage %d says nothing of what it misses in %s", i, text)
				}
				continue
			}
			known++
			if st.HasAmbient {
				lo, hi = min(lo, st.Ambient.Lo), max(hi, st.Ambient.Hi)
				if !(st.Bi > 0) {
					t.Fatalf("Bi %v in %s", st.Bi, text)
				}
			}
			if st.Measured {
				lo, hi = min(lo, st.Core.Low), max(hi, st.Core.High)
			}
			for what, b := range map[string]figure.Estimate{
				"start":        st.StartCore,
				"core":         st.Core,
				"mean":         st.Mean,
				"surface":      st.Surface,
				"highest core": st.CoreMax,
				"hours":        st.Hours,
			} {
				held(t, what, b, text)
			}
			if !(st.Core.Low > lo-0.5 && st.Core.High < hi+0.5) ||
				!(st.Mean.Low > lo-0.5 && st.Mean.High < hi+0.5) {
				t.Fatalf(
					"stage %d: core %v, mean %v; all it met is %v to %v in %s",
					i,
					st.Core,
					st.Mean,
					lo,
					hi,
					text,
				)
			}
			if st.CoreMax.High < st.Core.High-1e-9 || st.CoreMax.High < st.StartCore.High-1e-9 {
				t.Fatalf(
					"stage %d: highest core %v, start %v, end %v in %s",
					i,
					st.CoreMax,
					st.StartCore,
					st.Core,
					text,
				)
			}
			if st.Hours.Low < 0 ||
				!life.Rise && st.Hours.High > 1.66*(st.EndH.Hi-st.StartH.Lo)+1e-9 {
				t.Fatalf("stage %d gained %v in %s", i, st.Hours, text)
			}
			if st.Hours.Mid > 0 {
				working++
			}
			if st.HasCoreMinutes {
				held(t, "minutes to core", st.MinutesToCore, text)
			}
		}
		for _, step := range s.Part.Steps {
			var f history.Simulator
			b, ok := f.TimeTo(s, step, 10)
			for _, x := range []float64{b.Low, b.Mid, b.High} {
				if ok && (math.IsNaN(x) || x < 0) {
					t.Fatalf("time to 10 C is %v in %s", b, text)
				}
			}
			if ok && (b.Low > b.Mid || b.Mid > b.High) {
				t.Fatalf("time to 10 C is %v, out of order, in %s", b, text)
			}
		}
	})
	if known < 100 || working < 30 {
		t.Errorf("only %d known stages, %d that ferment", known, working)
	}
}

// One follower gives what a fresh one gives, whatever it
// followed before.
func TestSimulatorForgets(t *testing.T) {
	var f history.Simulator
	rapid.Check(t, func(t *rapid.T) {
		k := drawSketch(t, only{})
		s := k.setup(t)
		again, fresh := f.Follow(s), follow(t, s)
		for i := range fresh.Stages {
			a, b := again.Stages[i], fresh.Stages[i]
			if a.Known != b.Known || apart(a.Core, b.Core) || apart(a.Hours, b.Hours) ||
				apart(a.CoreMax, b.CoreMax) ||
				apart(a.MinutesToCore, b.MinutesToCore) {
				t.Fatalf("stage %d: %v %v, then %v %v", i, a.Core, a.Hours, b.Core, b.Hours)
			}
		}
	})
}

// A hotter start or hotter surroundings end hotter, in every run.
func TestHotterEndsHotter(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawSketch(
			t,
			only{
				points:     true,
				noReadings: true,
				noGas:      true,
				noHand:     rapid.Bool().Draw(t, "no hands"),
			},
		)
		before := follow(t, k.setup(t))
		by := between(t, "by", 0.01, 10)
		what := rapid.IntRange(0, len(k.steps)).Draw(t, "what")
		if what == len(k.steps) {
			k.start += by
		} else {
			before := k.steps[what].ambient
			if at := []float64{-5, 10, 26}; crosses(before, before+by, at) {
				return // another place, with another coefficient
			}
			k.steps[what].ambient += by
			k.steps[what].upper += by
		}
		after := follow(t, k.setup(t))
		for i := range after.Stages {
			a, b := before.Stages[i], after.Stages[i]
			if !a.Known || !b.Known {
				continue
			}
			// The outer runs turn from the quick side to the slow one
			// where they meet their surroundings; an uneven body makes
			// that a small step.
			const slack, turn = 1e-6, 0.3
			if b.Mean.Mid < a.Mean.Mid-slack || b.Core.Mid < a.Core.Mid-0.02 ||
				b.Mean.Low < a.Mean.Low-turn || b.Mean.High < a.Mean.High-turn {
				t.Fatalf(
					"stage %d ends at %v, %v K hotter at %v: %s",
					i,
					a.Mean,
					by,
					b.Mean,
					k.text(),
				)
			}
		}
	})
}

func crosses(a, b float64, at []float64) bool {
	for _, x := range at {
		if (a <= x) != (b <= x) || (a < x) != (b < x) {
			return true
		}
	}
	return false
}

// Knowing less never narrows: wider times and surroundings, and a cover
// that nobody mentions, hold what was before.
func TestWiderHolds(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawSketch(t, only{noReadings: true, noGas: true})
		before := follow(t, k.setup(t))
		for i := range k.steps {
			l := &k.steps[i]
			if !l.timed || !rapid.Bool().Draw(t, "widen") {
				continue
			}
			wide := between(t, "time by", 0, 0.4) * l.lo
			l.lo, l.hi = l.lo-wide, l.hi+wide
			wider := between(t, "ambient by", 0, 3)
			mid := (l.ambient + l.upper) / 2
			if !crosses(mid-1e-3, mid+1e-3, []float64{-5, 10, 26}) {
				l.ambient, l.upper = l.ambient-wider, l.upper+wider
			}
			if l.covered != "" {
				l.covered = ""
			}
		}
		after := follow(t, k.setup(t))
		for i := range after.Stages {
			a, b := before.Stages[i], after.Stages[i]
			if !a.Known || !b.Known {
				continue
			}
			for what, pair := range map[string][2]figure.Estimate{
				"mean": {a.Mean, b.Mean},
				"core": {a.Core, b.Core},
			} {
				slack := 0.5 // K, where an uneven body turns; 0.31 was met
				if what == "core" {
					slack = 1.5
				}
				if pair[1].Low > pair[0].Low+slack || pair[1].High < pair[0].High-slack {
					t.Fatalf(
						"stage %d: %s %v, and %v when less is known: %s",
						i,
						what,
						pair[0],
						pair[1],
						k.text(),
					)
				}
			}
		}
	})
}

// A reading of a later step changes nothing before it.
func TestReadingsLookForwardOnly(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		k := drawSketch(t, only{noReadings: true})
		last := drawLine(t, only{noHand: true, noReadings: true})
		last.verb = "store" // it may stand after a bake
		last.reading = fmt.Sprintf("%.2f C", between(t, "seen", -20, 50))
		k.steps = append(k.steps, last)
		with := follow(t, k.setup(t))
		k.steps[len(k.steps)-1].reading = ""
		without := follow(t, k.setup(t))
		for i := range k.steps[:len(k.steps)-1] {
			if with.Stages[i].Core != without.Stages[i].Core ||
				with.Stages[i].Hours != without.Stages[i].Hours {
				t.Fatalf(
					"stage %d: %v, without the reading %v",
					i,
					with.Stages[i].Core,
					without.Stages[i].Core,
				)
			}
		}
		// A point that is read at the end is the end, whatever the
		// model says; near cold surroundings the warmest run may be a
		// probe's error above them.
		if st := with.Stages[len(k.steps)-1]; st.Known {
			read := st.Step.Reading.Temp.Mid()
			const probe, slack = 1, 0.01 // K
			c, warmest := st.Core, max(read, min(st.StartCore.High, st.Ambient.Hi+probe))
			if math.Abs(c.Low-read) > slack || math.Abs(c.Mid-read) > slack ||
				c.High < read-slack || c.High > warmest+slack {
				t.Fatalf("read %v, core %v in %s", read, st.Core, k.text())
			}
		}
	})
}
