package heat

import (
	"math"
	"strings"
	"testing"

	"forebake/engine/figure"

	"pgregory.net/rapid"
)

func bathRun(t interface {
	Helper()
	Fatal(...any)
}, b Bath, run figure.Run) *Chilling {
	t.Helper()
	c, why := b.Run(run)
	if why != "" {
		t.Fatal(why)
	}
	return &c
}

var (
	bathDough = Properties{
		SpecificHeat:    0.38 / 1.2e-7 / 1100,
		DensityKgM3:     1100,
		ConductivityWmK: 0.38,
		DiffusivityM2s:  1.2e-7,
	}
	bathCustard = Properties{SpecificHeat: 3600, DensityKgM3: 1080, ConductivityWmK: 0.5}
)

// A tray on ice is cooled from one face. What two faces would do is in
// the table, for the difference.
func TestTrayOnIce(t *testing.T) {
	used, width, finite := 0, 0.0, 0.0
	defer func() {
		t.Logf("points: cooling on ice (computed rows): %d of %d inside, high end over low end "+
			"%.2f where it comes there",
			used, used, math.Exp(width/finite))
	}()
	for _, row := range readTable(t, "ice-bath.csv") {
		used++
		thickness, target := number(t, row["thickness_mm"])/1000, number(t, row["target_c"])
		b := Bath{
			Body:   SlabOf(thickness),
			Food:   bathDough,
			StartC: number(t, row["start_c"]),
			WaterC: number(t, row["bath_c"]),
			RoomC:  number(t, row["room_c"]),
		}
		minutes := number(t, row["minutes"])
		var at [figure.Runs]float64
		for run := range figure.Runs {
			at[run] = bathRun(t, b, run).TimeTo(target, 24*3600) / 60
		}
		near(t, row["id"], at[figure.Middle], minutes, 0.04*minutes)
		if !math.IsInf(at[figure.High], 1) { // a deep tray may never be cold on top
			width, finite = width+math.Log(at[figure.High]/at[figure.Low]), finite+1
		}
		near(
			t,
			row["id"]+" top",
			bathRun(t, b, figure.Middle).Advance(24*3600).SurfaceC,
			number(t, row["top_end_c"]),
			0.3,
		)
		if !(at[figure.Low] < 0.8*minutes && at[figure.High] > 1.5*minutes) {
			t.Errorf(
				"%s: %.0f min [%.0f to %.0f]",
				row["id"],
				minutes,
				at[figure.Low],
				at[figure.High],
			)
		}
		w := mustWalk(
			t,
			SlabOf(thickness),
			bathDough.ConductivityWmK,
			bathDough.DiffusivityM2s,
			b.StartC,
			b.WaterC,
			300,
		)
		near(
			t,
			row["id"]+" from both faces",
			w.TimeTo(Core, target, math.Inf(1))/60,
			number(t, row["both_faces_min"]),
			1,
		)
		t.Logf(
			"%s %g mm: %.0f min [%.0f to %.0f], from both faces %s",
			row["id"],
			thickness*1000,
			at[figure.Middle],
			at[figure.Low],
			at[figure.High],
			row["both_faces_min"],
		)
	}
}

// Custard at 85 C on ice: from 60 C it has 2 h to 21 C and 4 more to 5
// C. At 80 mm not even the quick run does the first; at 20 mm every
// run does.
func TestCustardOnIce(t *testing.T) {
	stretch := func(depth, room float64, run figure.Run) float64 {
		b := Bath{Body: SlabOf(depth), Food: bathCustard, StartC: 85, WaterC: 1, RoomC: room}
		c := bathRun(t, b, run)
		return (c.TimeTo(21, 72*3600) - c.TimeTo(60, 72*3600)) / 3600
	}
	for run := range figure.Runs {
		if h := stretch(0.08, 22, run); h < 2 {
			t.Errorf("run %d brings 80 mm from 60 to 21 C in %g h", run, h)
		}
		if h := stretch(0.02, 22, run); h > 2 {
			t.Errorf("run %d takes %g h for 20 mm", run, h)
		}
	}
	near(t, "50 mm", stretch(0.05, 22, figure.Middle), 2.29, 0.05)
	// In a room it never gets cold on top; below cold air it does.
	deep := Bath{Body: SlabOf(0.05), Food: bathCustard, StartC: 85, WaterC: 1, RoomC: 22}
	never(t, "5 C in a room", bathRun(t, deep, figure.Middle).TimeTo(5, 1e6))
	deep.RoomC = 4
	near(
		t,
		"5 C below cold air, hours",
		bathRun(t, deep, figure.Middle).TimeTo(5, 1e6)/3600,
		5.5,
		0.1,
	)
}

// A pot in the bath against an explicit reckoning on a grid of radius
// and height.
func TestPotOnAGrid(t *testing.T) {
	const nr, nz = 24, 24
	pot := Bath{Body: BowlOf(0.003, 0.11), Food: bathCustard, StartC: 70, WaterC: 1, RoomC: 25}
	c, why := pot.Run(figure.Middle)
	if why != "" {
		t.Fatal(why)
	}
	radius, depth := pot.Body.Half[0], 2*pot.Body.Half[1]
	dr, dz := radius/nr, depth/nz
	alpha := pot.Food.ConductivityWmK / pot.Food.DensityKgM3 / pot.Food.SpecificHeat
	wet, top := InSeries(300, 0.00006), 7.0
	side := 1 / (1/wet + dr/2/pot.Food.ConductivityWmK) / pot.Food.ConductivityWmK
	below := 1 / (1/wet + dz/2/pot.Food.ConductivityWmK) / pot.Food.ConductivityWmK
	above := 1 / (1/top + dz/2/pot.Food.ConductivityWmK) / pot.Food.ConductivityWmK
	var grid, next [nr][nz]float64
	for i := range grid {
		for j := range grid[i] {
			grid[i][j] = 70
		}
	}
	const hours = 6
	dt := 0.2 * min(dr, dz) * min(dr, dz) / alpha
	steps := int(hours*3600/dt) + 1
	dt = hours * 3600.0 / float64(steps)
	for s := range steps {
		for i := range nr {
			for j := range nz {
				here := grid[i][j]
				in, out := float64(i)*dr, float64(i+1)*dr
				flow := 0.0 // per radian, over k
				if i > 0 {
					flow += in * dz * (grid[i-1][j] - here) / dr
				}
				if i < nr-1 {
					flow += out * dz * (grid[i+1][j] - here) / dr
				} else {
					flow += out * dz * side * (1 - here)
				}
				face := (out*out - in*in) / 2
				if j > 0 {
					flow += face * (grid[i][j-1] - here) / dz
				} else {
					flow += face * below * (1 - here)
				}
				if j < nz-1 {
					flow += face * (grid[i][j+1] - here) / dz
				} else {
					flow += face * above * (25 - here)
				}
				next[i][j] = here + alpha*dt*flow/(face*dz)
			}
		}
		grid = next
		if (s+1)%(steps/hours) != 0 {
			continue
		}
		warmest, mean := 0.0, 0.0
		for i := range grid {
			for j := range grid[i] {
				warmest = max(warmest, grid[i][j])
				if j == nz-1 { // the top itself
					skin := 2 * pot.Food.ConductivityWmK / dz
					warmest = max(warmest, (top*25+skin*grid[i][j])/(top+skin))
				}
				mean += grid[i][j] * (2*float64(i) + 1) / (nr * nr * nz)
			}
		}
		got := c.Advance(float64(steps/hours) * dt)
		near(t, "warmest", got.CoreC, warmest, 0.2)
		near(t, "mean", got.MeanC, mean, 0.1)
		t.Logf(
			"warmest %.2f, on the grid %.2f; mean %.2f, %.2f",
			got.CoreC,
			warmest,
			got.MeanC,
			mean,
		)
	}
}

func TestBathProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(what string, lo, hi float64) float64 {
			return rapid.Float64Range(lo, hi).Draw(t, what)
		}
		depth := draw("depth", 0.01, 0.2)
		b := Bath{
			Body:    SlabOf(depth),
			Food:    bathCustard,
			StartC:  draw("start", 20, 95),
			WaterC:  draw("water", 0, 2),
			RoomC:   draw("room", 2, 30),
			Stirred: rapid.Bool().Draw(t, "stirred"),
		}
		if rapid.Bool().Draw(t, "pot") {
			b.Body = BowlOf(draw("litres", 0.5, 20)/1000, depth)
		}
		seconds := draw("hours", 0.05, 10) * 3600
		var end [figure.Runs]State
		for run := range figure.Runs {
			c := bathRun(t, b, run)
			end[run] = c.Advance(seconds)
			s := end[run]
			if !(s.MeanC <= s.CoreC+1e-9 && s.SurfaceC <= s.CoreC+1e-9 &&
				s.CoreC <= max(b.StartC, b.RoomC)+0.01 && s.MeanC >= b.WaterC-0.01) {
				t.Fatalf("run %d: %+v from %g in %g under %g", run, s, b.StartC, b.WaterC, b.RoomC)
			}
			// Advance in two parts, and TimeTo, go the same way.
			two := bathRun(t, b, run)
			two.Advance(seconds / 3)
			if again := two.Advance(seconds * 2 / 3); math.Abs(again.CoreC-end[run].CoreC) > 0.3 {
				t.Fatalf("in two parts %+v, in one %+v", again, end[run])
			}
			at := bathRun(t, b, run).TimeTo(end[run].CoreC+0.5, 100*3600)
			if end[run].CoreC+0.5 < b.StartC &&
				!(at < seconds) {
				t.Fatalf(
					"run %d was half a kelvin warmer at %g s, not before %g s",
					run,
					at,
					seconds,
				)
			}
		}
		const slack = 0.3
		if !(end[figure.Low].CoreC <= end[figure.Middle].CoreC+slack &&
			end[figure.Middle].CoreC <= end[figure.High].CoreC+slack) {
			t.Fatalf("runs out of order: %+v", end)
		}
		// Deeper food is warmer, in every run.
		deeper := b
		deeper.Body = SlabOf(depth * 1.3)
		if b.Body.Shape == Slab {
			for run := range figure.Runs {
				if d := bathRun(t, deeper, run).Advance(seconds); d.CoreC < end[run].CoreC-slack {
					t.Fatalf("run %d: %g deeper, %g", run, d.CoreC, end[run].CoreC)
				}
			}
		}
	})
}

func TestBathIsSilent(t *testing.T) {
	good := Bath{Body: SlabOf(0.03), Food: bathCustard, StartC: 60, WaterC: 1, RoomC: 22}
	for reason, spoil := range map[string][]func(b *Bath){
		"mm deep": {func(b *Bath) { b.Body = SlabOf(0.0049) }, func(b *Bath) {
			b.Body = SlabOf(0.301)
		}, func(b *Bath) { b.Body = BowlOf(0.01, 0.31) }, func(b *Bath) { b.Body = Body{} }},
		"the food in the bath is": {func(b *Bath) { b.StartC = -1 }, func(b *Bath) {
			b.StartC = 101
		}, func(b *Bath) { b.StartC = math.NaN() }},
		"the bath is": {func(b *Bath) { b.WaterC = -3 }, func(b *Bath) { b.WaterC = 16 }},
		"air above":   {func(b *Bath) { b.RoomC = -26 }, func(b *Bath) { b.RoomC = 46 }},
		"such a shape": {func(b *Bath) { b.Body = BallOf(0.5, 1100) }, func(b *Bath) {
			b.Body = BrickOf(0.1, 0.1, 0.1)
		}, func(b *Bath) { b.Food = Properties{} }},
	} {
		for i, s := range spoil {
			b := good
			s(&b)
			if c, why := b.Run(figure.Middle); !strings.Contains(why, reason) || c.n != 0 {
				t.Errorf("%s %d: %q", reason, i, why)
			}
		}
	}
	c := bathRun(t, good, figure.Middle)
	if s := c.Advance(0); s.CoreC != 60 || s.MeanC != 60 {
		t.Errorf("before it began: %+v", s)
	}
	near(t, "there already", c.TimeTo(60, 1000), 0, 0)
	never(t, "no time", c.TimeTo(20, 0))
	never(t, "no target", c.TimeTo(math.NaN(), 1000))
}

// The food's own figures speed and slow a bath like anything with a
// held surface, and the quick run has the room's strongest air
// above it.
func TestBathRuns(t *testing.T) {
	b := Bath{Body: SlabOf(0.04), Food: bathDough, StartC: 26, WaterC: 0.5, RoomC: 22}
	held := 1 + TimeError(math.Inf(1), AirError)
	near(t, "quick", bathRun(t, b, figure.Low).pace, held, 1e-12)
	near(t, "slow", bathRun(t, b, figure.High).pace, 1/held, 1e-12)
	// Long after, the top stands between water and air, by the dough
	// below and the air above.
	quick := bathRun(t, b, figure.Low)
	quick.Advance(48 * 3600)
	biot := func(h float64) float64 { return h * 0.04 / bathDough.ConductivityWmK }
	lidded := biot(InSeries(RoomNearly, 0.25))
	near(t, "top, quick", quick.Advance(3600).SurfaceC, 0.5+21.5*lidded/(1+lidded), 0.2)
	warm := b
	warm.RoomC = 4 // a fridge's air cools the dough, so the open top is the quick one
	early := bathRun(t, warm, figure.Low)
	lid := early.courses[1]
	early.Advance(1800)
	open, closed := early.courses[0].state().SurfaceC, lid.advance(1800*early.pace).SurfaceC
	if !(open < closed-1) {
		t.Errorf("the top is at %g C in the open and at %g C under a lid", open, closed)
	}
}

// Moving water takes heat faster.
func TestStirredBath(t *testing.T) {
	still := Bath{Body: SlabOf(0.02), Food: bathCustard, StartC: 60, WaterC: 1, RoomC: 22}
	moved := still
	moved.Stirred = true
	a, b := bathRun(
		t,
		still,
		figure.Middle,
	).TimeTo(21, 1e5),
		bathRun(
			t,
			moved,
			figure.Middle,
		).TimeTo(21, 1e5)
	if !(b < 0.95*a) {
		t.Errorf("still %g s, stirred %g s", a, b)
	}
}

// Natural convection by the sizes of Incropera (memory) and radiation,
// by hand: a dough 4 K over its room as the typical coefficient of a
// room, a loaf at 60 C 6.50 and 6.34.
func TestStillAir(t *testing.T) {
	near(t, "a dough", StillAir(26, 22), coefficients[Room].Typical, 0.1)
	near(t, "a loaf", StillAir(60, 22), 12.83, 0.15)
	near(t, "from below", StillAir(4, 26), 10.66, 0.3)
}

// Water in saturated air by a steam table (memory), and what settles on
// a dough at 14 C in a proofer of 30 C and 80 %, by hand: 24.3 - 12.1
// g/m3, 5.23/(1200 0.88) m/s, 2.45 MJ/kg, over 16 K. In a dry room
// nothing does.
func TestDew(t *testing.T) {
	for c, grams := range map[float64]float64{4: 6.36, 20: 17.3, 26: 24.4, 30: 30.4, 40: 51.2} {
		near(t, "saturated air", 1000*Saturated(c), grams, 0.01*grams)
	}
	near(t, "a proofer", Dew(14, 30, 0.80), 9.26, 0.1)
	near(t, "a dry room", Dew(14, 22, 0.40), 0, 0)
	near(t, "what is warmer", Dew(30, 22, 1), 0, 0)
}
