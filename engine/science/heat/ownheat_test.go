package heat

import (
	"math"
	"strings"
	"testing"

	"forebake/engine/figure"

	"pgregory.net/rapid"
)

// activity is the pace of yeast by temperature, 1 at 26 C: cardinal
// temperatures 0.5, 38 and 45 C.
var activity = NewCurve(
	-30,
	45,
	301,
	func(tC float64) float64 { return cardinalPace(tC) / cardinalPace(26) },
)

func cardinalPace(tC float64) float64 {
	const low, best, high = 0.5, 38.0, 45.0
	if tC <= low || tC >= high {
		return 0
	}
	return (tC - high) * (tC - low) * (tC - low) /
		((best - low) * ((best-low)*(tC-best) - (best-high)*(best+low-2*tC)))
}

// Published gas, warming and gains of doughs, each inside the
// stated factor.
func TestOwnHeatTable(t *testing.T) {
	inside, all := 0, 0
	for _, row := range readTable(t, "own-heat.csv") {
		q, why := OwnHeat(number(t, row["yeast_instant_pct"]), 1)
		if why != "" {
			t.Fatal(why)
		}
		pace, _, _ := activity.At(number(t, row["dough_c"]))
		var got figure.Estimate
		switch row["what"] {
		case "heat":
			got = q.Times(pace)
			near(t, row["id"], got.Mid, number(t, row["value"]), 0.03*got.Mid)
		case "warming":
			got = q.Times(3600 * pace / 2700)
		case "gain":
			p := Properties{SpecificHeat: 2700, DensityKgM3: 1100, ConductivityWmK: 0.37}
			kg := number(t, row["dough_kg"])
			b := BowlOf(kg/1100, math.Cbrt(kg/1100/math.Pi))
			gain := func(q float64) float64 {
				var v Volumes
				v.Start(
					b.EquivalentDimension(p.ConductivityWmK, RoomNearly),
					b.Nearest(),
					p,
					number(t, row["dough_c"]),
				)
				v.SetOwnHeat(q, activity)
				v.Stage(number(t, row["room_c"]), RoomNearly)
				return v.Advance(number(t, row["hours"])*3600).MeanC - number(t, row["dough_c"])
			}
			got = figure.Estimate{Low: gain(q.Low), Mid: gain(q.Mid), High: gain(q.High)}
		default:
			t.Errorf("%s: no test", row["id"])
		}
		in := false
		if row["value"] != "" {
			in = got.Contains(number(t, row["value"]))
		} else {
			lo, hi := number(t, row["lo"]), number(t, row["hi"])
			in = got.Low <= hi && got.High >= lo && got.Mid >= lo-0.5 && got.Mid <= hi+0.5
		}
		if in != (row["inside"] == "yes") {
			t.Errorf(
				"%s: %.2f, table %s [%s to %s] says %q",
				row["id"],
				got,
				row["value"],
				row["lo"],
				row["hi"],
				row["inside"],
			)
		}
		all++
		if in {
			inside++
		}
		t.Logf(
			"%s %s: %.2f [%.2f to %.2f], published %s [%s to %s] %s",
			row["id"],
			row["what"],
			got.Mid,
			got.Low,
			got.High,
			row["value"],
			row["lo"],
			row["hi"],
			row["unit"],
		)
	}
	t.Logf("points: own heat: %d of %d inside, high end over low end %.2f",
		inside, all, OwnHeatFactor*OwnHeatFactor)
	if all != 6 {
		t.Errorf("%d rows", all)
	}
}

// Masses of dough after 3 h, computed with one temperature each: U 6
// W/(m2 K) on 0.08 m^(2/3) m2, 2700 J/(kg K), 26 C at first.
func TestOwnHeatByMass(t *testing.T) {
	for _, c := range []struct{ kg, osmotic, room, hours, yeast, want float64 }{
		{0.5, 1, 22, 3, 1, 23.6}, {10, 1, 22, 3, 1, 26.1}, {100, 1, 22, 3, 1, 28.0},
		{100, 1, 26, 3, 1, 29.5}, {100, 0.5, 22, 3, 1, 26.2}, {100, 1, 22, 4, 0.5, 26.7},
	} {
		q, _ := OwnHeat(c.yeast, c.osmotic)
		// A body so good at conducting that it is even, with that much
		// surface for its mass.
		area := 0.08 * math.Pow(c.kg, -1.0/3) // m2/kg
		var v Volumes
		v.Start(
			1,
			1/(1000*area),
			Properties{SpecificHeat: 2700, DensityKgM3: 1000, ConductivityWmK: 1e4},
			26,
		)
		v.SetOwnHeat(q.Mid, activity)
		v.Stage(c.room, 6)
		near(t, "mean", v.Advance(c.hours*3600).MeanC, c.want, 0.1)
	}
}

// The excess in closed form is the solver's where the heat does not
// change, and near it for a kilogram of dough.
func TestOwnExcess(t *testing.T) {
	even := NewCurve(0, 100, 2, func(float64) float64 { return 1 })
	rapid.Check(t, func(t *rapid.T) {
		draw := func(what string, lo, hi float64) float64 {
			return rapid.Float64Range(lo, hi).Draw(t, what)
		}
		b := Body{
			Shape: Shape(rapid.IntRange(0, 2).Draw(t, "shape")),
			Half:  [3]float64{draw("half", 0.005, 0.06)},
		}
		q, h := draw("W/kg", 0.1, 2), draw("h", 4, 20)
		var v Volumes
		v.Start(float64(b.Shape)+1, b.Half[0], doughProperties, 20)
		v.SetOwnHeat(q, even)
		v.Stage(20, h)
		e := OwnExcess(b, doughProperties, h)
		seconds := draw("hours", 0.2, 12) * 3600
		got := e.After(State{}, q, seconds)
		s := v.Advance(seconds)
		if math.Abs(s.MeanC-20-got.MeanC) > 0.05*got.MeanC+0.02 ||
			math.Abs(s.CoreC-20-got.CoreC) > 0.1*e.InTheEnd(q)+0.02 ||
			math.Abs(s.SurfaceC-20-got.SurfaceC) > 0.1*e.InTheEnd(q)+0.02 {
			t.Fatalf("%+v; closed %+v", s, got)
		}
		s = v.Advance(1e7)
		if got = e.After(got, q, 1e8); math.Abs(s.CoreC-20-got.CoreC) > 0.01*got.CoreC ||
			math.Abs(s.MeanC-20-got.MeanC) > 0.01*got.MeanC ||
			math.Abs(s.SurfaceC-20-got.SurfaceC) > 0.02*got.SurfaceC {
			t.Fatalf("in the end %+v; closed %+v", s, got)
		}
		// When the yeast stops, the excess decays.
		v.SetOwnHeat(0, even)
		s, got = v.Advance(seconds), e.After(got, 0, seconds)
		if math.Abs(s.MeanC-20-got.MeanC) > 0.08*e.InTheEnd(q)+0.02 {
			t.Fatalf("without heat %+v; closed %+v", s, got)
		}
	})
	kilo := BowlOf(0.001/1.1, 0.066)
	q, _ := OwnHeat(1, 0.6)
	e := OwnExcess(kilo, doughProperties, 7)
	got := e.After(State{}, q.Mid, 3*3600)
	near(t, "a kilogram, core", got.CoreC, 1.46, 0.05)
	near(t, "a kilogram, mean", got.MeanC, 1.28, 0.05)
	for _, seconds := range []float64{0, -5} {
		if got := e.After(State{}, 1, seconds); got != (State{}) {
			t.Errorf("after %g s: %+v", seconds, got)
		}
	}
	if got := OwnExcess(kilo, doughProperties, 0).After(State{}, 1, 60); !math.IsNaN(got.CoreC) {
		t.Errorf("insulated: %g", got.CoreC)
	}
	// What is colder than its walk is warmed by its surroundings.
	behind := e.After(State{-1, -1, -1}, 0, 100*3600)
	near(t, "a deficit without heat", behind.CoreC, 0, 1e-3)
	// A tub loses nothing from its middle at first.
	tub := OwnExcess(BowlOf(0.1, 0.5), doughProperties, 7)
	near(t, "100 kg, core", tub.After(State{}, 1, 1800).CoreC,
		1800/doughProperties.SpecificHeat, 1e-9)
}

func TestOwnHeatIsSilent(t *testing.T) {
	for _, yeast := range []float64{-0.1, 6.1, math.NaN(), math.Inf(1)} {
		if q, why := OwnHeat(yeast, 1); !strings.Contains(why, "yeast") ||
			q != (figure.Estimate{}) {
			t.Errorf("%g %%: %v %q", yeast, q, why)
		}
	}
	for _, osmotic := range []float64{-1, math.NaN(), math.Inf(1)} {
		if _, why := OwnHeat(1, osmotic); why == "" {
			t.Errorf("slowed by %g", osmotic)
		}
	}
	for _, yeast := range []float64{0, 6} {
		if _, why := OwnHeat(yeast, 0.5); why != "" {
			t.Error(why)
		}
	}
	none, _ := OwnHeat(0, 1)
	near(t, "no yeast", none.High, 0, 0)
	// Twice the yeast is less than twice the heat; slowed yeast is
	// slowed heat.
	one, _ := OwnHeat(1, 1)
	two, _ := OwnHeat(2, 0.5)
	near(t, "twice at half the pace", two.Mid/one.Mid, math.Pow(2, 0.7)/2, 1e-9)
	near(t, "error", one.High/one.Mid, 1.6, 1e-9)
	near(t, "error", one.Mid/one.Low, 1.6, 1e-9)
}
