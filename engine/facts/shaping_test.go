package facts

import (
	"fmt"
	"math"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/kitchen"
)

// dry is a dough of so many grams, of flour alone, with steps; fill is
// what is in "f".
func dry(t tester, grams, fill float64, steps string, change func(*kitchen.Kitchen)) *Sheet {
	t.Helper()
	return sheetIn(t, fmt.Sprintf(`dough "d" {
  ingredients = { "bread flour" = "%v g" }
  steps = [ %s ]
}
filling "f" { ingredients = { "jam" = "%v g" } }`, grams, steps, fill), kitchenOf(change))
}

// 1 kg at 1.15 g/mL and 5 mm: 0.174 m2, as near square as a bench of
// 120 x 60 cm allows, with 15 % of error either way.
func TestSheetByHand(t *testing.T) {
	s := dry(t, 1000, 1, `{ sheet = "5 mm" }`, nil)
	area := 1000 / 1.15 / 0.5 // cm2
	v := stepValue(t, s, "d", 0, "area_cm2")
	near(t, "area", v.Mid, area, 1e-6)
	near(t, "published area", v.Mid, 1740, 2)
	near(t, "least", v.Lo, area*0.85, 1e-6)
	near(t, "most", v.Hi, area*1.15, 1e-6)
	for _, name := range []string{"width_cm", "length_cm"} {
		near(t, name, stepValue(t, s, "d", 0, name).Mid, math.Sqrt(area), 1e-6)
	}
	wantInterval(t, "lots", stepValue(t, s, "d", 0, "lots"), 1, 1)
	largest := 116.0 * 56 * 0.5 * 1.15
	near(t, "largest", stepValue(t, s, "d", 0, "largest_g").Mid, largest, 1e-6)

	// Too wide for the bench, it grows along it; off the bench, it is
	// cut in lots.
	s = dry(t, 3000, 1, `{ sheet = "5 mm" }`, nil)
	near(t, "width on the bench", stepValue(t, s, "d", 0, "width_cm").Mid, 56, 1e-6)
	near(t, "length on the bench", stepValue(t, s, "d", 0, "length_cm").Mid, 3000/1.15/0.5/56, 1e-6)
	for _, grams := range []float64{largest * 0.99, largest * 1.01, largest * 2.01, largest * 5.5} {
		want := math.Ceil(grams / largest)
		s = dry(t, grams, 1, `{ sheet = "5 mm" }`, nil)
		wantInterval(t, "lots", stepValue(t, s, "d", 0, "lots"), want, want)
		near(
			t,
			"length of one lot",
			stepValue(t, s, "d", 0, "length_cm").Mid,
			grams/want/1.15/0.5/stepValue(t, s, "d", 0, "width_cm").Mid,
			1e-6,
		)
	}
	s = dry(t, 2000, 1, `{ divide = 4 }, { sheet = "5 mm" }`, nil)
	wantInterval(t, "one of four", stepValue(t, s, "d", 1, "sheet_g"), 500, 500)
	small := dry(t, 2000, 1, `{ sheet = "5 mm" }`, func(k *kitchen.Kitchen) {
		k.BenchLength.Interval, k.BenchWidth.Interval = figure.Point(300), figure.Point(30)
	})
	needs(
		t,
		"a bench that is all margin",
		stepValue(t, small, "d", 0, "width_cm"),
		"a sheet that can be rolled",
	)
	needs(
		t,
		"no thickness",
		stepValue(t, dry(t, 2000, 1, `{ sheet = "?" }`, nil), "d", 0, "area_cm2"),
		"the thickness of this sheet",
	)
}

// A sheet of 457 mm whose dough and filling are 7.9 mm thick rolls up
// to 68 mm in 4.3 turns; and by mass, sqrt(4m/(pi rho W)).
func TestCoilByHand(t *testing.T) {
	const side, layer = 45.7, 0.79 // cm
	grams := side * side * layer * 1.15
	s := dry(t, grams, 1, `{ sheet = "7.9 mm" }, { roll = "coil", slice = "50 mm" }`, nil)
	coil, turns := stepValue(t, s, "d", 1, "coil_mm"), stepValue(t, s, "d", 1, "turns")
	near(t, "coil", coil.Mid, 68, 0.5)
	near(t, "turns", turns.Mid, 4.3, 0.05)
	near(t, "coil by mass", coil.Mid, 10*math.Sqrt(4*grams/(math.Pi*1.15*side)), 1e-6)
	wantInterval(
		t,
		"slices",
		Value{Lo: stepValue(t, s, "d", 1, "slices").Mid, Hi: stepValue(t, s, "d", 1, "slices").Mid},
		9,
		9,
	)
	if !(coil.Lo < 68 && coil.Hi > 68 && turns.Lo < turns.Mid && turns.Hi > turns.Mid) {
		t.Errorf("coil %v to %v, turns %v to %v", coil.Lo, coil.Hi, turns.Lo, turns.Hi)
	}

	// With a filling the layer is both.
	s = dry(
		t,
		1000,
		300,
		`{ sheet = "5 mm" }, { fill = "f" }, { roll = "coil", slice = "40 mm" }`,
		nil,
	)
	area := 1000 / 1.15 / 0.5
	rho := s.Part(s.Formula.PartNamed("f")).Material().Density / 1000
	thick := 10 * 300 / rho / area
	near(t, "filling", stepValue(t, s, "d", 1, "filling_mm").Mid, thick, 1e-6)
	wantInterval(t, "filling on dough", stepValue(t, s, "d", 1, "filling_ratio_pct"), 30, 30)
	near(
		t,
		"filled coil",
		stepValue(t, s, "d", 2, "coil_mm").Mid,
		math.Sqrt(4*10*math.Sqrt(area)*(5+thick)/math.Pi),
		1e-6,
	)
	needs(
		t,
		"no sheet",
		stepValue(t, dry(t, 1000, 1, `{ roll = "coil", slice = "40 mm" }`, nil), "d", 0, "coil_mm"),
		"a sheet step",
	)
	needs(t, "no slice", stepValue(t, s, "d", 1, "turns"), "no turns")
	needs(
		t,
		"no slice",
		stepValue(
			t,
			dry(t, 1000, 1, `{ sheet = "5 mm" }, { roll = "coil" }`, nil),
			"d",
			1,
			"slices",
		),
		"slice = ",
	)
}

// A dough of two lots gives the slices of two rolls, a divided one
// those of each piece.
func TestSlicesOfAllLots(t *testing.T) {
	slices := func(grams float64, steps string) Value {
		s := dry(t, grams, 1, steps+`{ sheet = "5 mm" }, { roll = "coil", slice = "40 mm" }`, nil)
		return stepValue(t, s, "d", len(s.Formula.Parts[0].Steps)-1, "slices")
	}
	largest := 116.0 * 56 * 0.5 * 1.15
	one := slices(largest*0.6, "")
	near(t, "one roll", one.Mid, math.Floor(0.6*1160/40), 0)
	near(t, "two rolls, each as long", slices(largest*1.2, "").Mid, 2*one.Mid, 0)
	near(t, "two pieces, each as long", slices(largest*1.2, `{ divide = 2 }, `).Mid, 2*one.Mid, 0)
	if !(one.Lo <= one.Mid && one.Mid <= one.Hi) {
		t.Errorf("%v to %v", one.Lo, one.Hi)
	}
}

// 2800 mL at 4.0 mL/g takes 700 g; a filling that does not rise takes
// its share: 600 g of dough and 200 g of filling in 2400 mL are 4 mL a
// g of dough and 3 in all.
func TestTinByHand(t *testing.T) {
	tin := func(l, w, h float64) func(*kitchen.Kitchen) {
		return func(k *kitchen.Kitchen) {
			k.Tins = append(k.Tins, kitchen.Tin{Name: "t", Inside: [3]float64{l, w, h}})
		}
	}
	s := dry(t, 700, 1, `{ pan = "x", tin = "t" }`, tin(280, 100, 100))
	wantInterval(t, "fill", stepValue(t, s, "d", 0, "fill_ml_per_g"), 4, 4)
	wantInterval(t, "width", stepValue(t, s, "d", 0, "tin_width_mm"), 100, 100)
	s = dry(t, 2400, 800, `{ fill = "f" }, { pan = "x", tin = "t", count = 4 }`, tin(240, 100, 100))
	wantInterval(t, "fill by dough", stepValue(t, s, "d", 1, "fill_ml_per_g"), 4, 4)
	wantInterval(t, "fill in all", stepValue(t, s, "d", 1, "fill_total_ml_per_g"), 3, 3)
	wantInterval(
		t,
		"usual for a filled dough, least",
		stepValue(t, s, "d", 1, "fill_low_ml_per_g"),
		2.4,
		2.4,
	)
	// The cards' own tins: 11 x 5 x 3.5 in with 765 g, 9 x 4.5 x 2.75
	// in with 709 g.
	for _, test := range []struct{ l, w, h, grams, want float64 }{{279.4, 127, 88.9, 765, 4.12},
		{228.6, 114.3, 69.85, 709, 2.574}} {
		v := stepValue(
			t,
			dry(
				t,
				3*test.grams,
				1,
				`{ divide = 3 }, { pan = "x", tin = "t" }`,
				tin(test.l, test.w, test.h),
			),
			"d",
			1,
			"fill_ml_per_g",
		)
		near(t, "card", v.Mid, test.want, 0.005)
	}
	// A coil goes into the tin that a later step names.
	s = dry(
		t,
		2400,
		800,
		`{ sheet = "5 mm" }, { roll = "coil", slice = "200 mm" }, `+
			`{ pan = "x", tin = "t", count = 4 }`,
		tin(240, 90, 100),
	)
	wantInterval(
		t,
		"the tin that the coil goes into",
		stepValue(t, s, "d", 1, "tin_width_mm"),
		90,
		90,
	)
	needs(
		t,
		"no tin",
		stepValue(t, dry(t, 700, 1, `{ pan = "x" }`, nil), "d", 0, "fill_ml_per_g"),
		"tin = ",
	)
	wantInterval(
		t,
		"volume",
		stepValue(
			t,
			dry(t, 700, 1, `{ pan = "x", tin = "t" }`, tin(280, 100, 100)),
			"d",
			0,
			"tin_ml",
		),
		2800,
		2800,
	)
}

// A coil of 55 mm with layers of 5 mm holds pi/4 x 55 x 55 / 5 = 475 mm
// of sheet; one of 4 to 6 mm is taken at 6.
func TestWidestSheetForTin(t *testing.T) {
	tin := func(k *kitchen.Kitchen) {
		k.Tins = append(k.Tins, kitchen.Tin{Name: "t", Inside: [3]float64{300, 55, 100}})
	}
	roll := func(sheet string) *Sheet {
		return dry(
			t,
			1000,
			1,
			`{ sheet = `+sheet+` }, { roll = "coil" }, { pan = "x", tin = "t" }`,
			tin,
		)
	}
	wantInterval(t, "5 mm", stepValue(t, roll(`"5 mm"`), "d", 1, "wide_for_tin_cm"), 47, 47)
	wantInterval(
		t,
		"4 to 6 mm",
		stepValue(t, roll(`"4 mm to 6 mm"`), "d", 1, "wide_for_tin_cm"),
		39,
		39,
	)
	wantInterval(t, "no width", stepValue(t, roll(`"5 mm"`), "d", 1, "has_width"), 0, 0)
	at := stepValue(t, roll(`"5 mm", wide = "47 cm"`), "d", 1, "coil_mm")
	if !(at.Hi <= 55 && at.Lo > 54) {
		t.Errorf("at that width the coil is %v to %v", at.Lo, at.Hi)
	}
	wantInterval(
		t,
		"width",
		stepValue(t, roll(`"5 mm", wide = "47 cm"`), "d", 1, "has_width"),
		1,
		1,
	)
	needs(
		t,
		"no thickness",
		stepValue(t, roll(`"?"`), "d", 1, "coil_mm"),
		"the thickness of the sheet",
	)
	needs(
		t,
		"no thickness",
		stepValue(t, roll(`"?"`), "d", 1, "wide_for_tin_cm"),
		"the thickness of the sheet",
	)
	needs(
		t,
		"no tin",
		stepValue(
			t,
			dry(t, 1000, 1, `{ sheet = "5 mm" }, { roll = "coil" }`, nil),
			"d",
			1,
			"wide_for_tin_cm",
		),
		"tin = ",
	)
}

func TestLeftOver(t *testing.T) {
	for _, test := range []struct {
		grams float64
		steps string
		want  float64
	}{
		{1000, `{ divide = "75 g" }`, 100 * 25.0 / 75}, {975, `{ divide = "75 g" }`, 0},
		{74, `{ divide = "75 g" }`, 100 * 74.0 / 75},
		{1000, `{ divide = "75 g", pieces = 10 }`, 100 * 250.0 / 75},
		{1000, `{ divide = 2 }, { divide = "75 g" }`, 100 * 50.0 / 75},
	} {
		s := dry(t, test.grams, 1, test.steps, nil)
		wantInterval(
			t,
			test.steps,
			stepValue(t, s, "d", len(s.Formula.Parts[0].Steps)-1, "remainder_pct"),
			test.want,
			test.want,
		)
	}
	needs(
		t,
		"by number",
		stepValue(t, dry(t, 1000, 1, `{ divide = 10 }`, nil), "d", 0, "remainder_pct"),
		"by weight",
	)
}

// A piece's weight into the oven: by the tin's count, the pieces, the
// divide, or what the formula makes.
func TestPieceByHand(t *testing.T) {
	for _, test := range []struct {
		steps string
		want  float64
	}{
		{`{ bake = "20 min" }`, 1000}, {`{ divide = 10 }, { bake = "20 min" }`, 100},
		{`{ divide = "125 g" }, { bake = "20 min" }`, 125},
		{`{ shape = "knots", pieces = 20 }, { bake = "20 min" }`, 50},
		{`{ pan = "x", tin = "long tin", count = 2 }, { bake = "20 min" }`, 500},
		{`{ bake = "20 min", tin = "long tin", count = 2 }`, 500},
		{`{ fill = "f" }, { divide = 10 }, { bake = "20 min" }`, 150},
	} {
		s := dry(t, 1000, 500, test.steps, nil)
		wantInterval(
			t,
			test.steps,
			stepValue(t, s, "d", len(s.Formula.Parts[0].Steps)-1, "piece_g"),
			test.want,
			test.want,
		)
	}
}

// A filling's wait: its own last cooling, and the same on a tray of
// 15 mm.
func TestFillingReady(t *testing.T) {
	body := func(cool string) *Sheet {
		return sheetIn(t, `dough "d" { 
  ingredients = { "bread flour" = "1000 g" } 
  steps = [ { fill = "f" } ] 
}
filling "f" {
  ingredients = { "whole milk" = "1000 g", "sugar" = "200 g", "corn starch" = "80 g" }
  steps = [ { cook = "5 min", to = "90 C" }`+cool+` ]
}`, kitchenOf(nil))
	}
	s := body(`, { cool = "1 h", at = "fridge", as = "tray 60 mm" }`)
	ready, tray := stepValue(
		t,
		s,
		"d",
		0,
		"filling_ready_min",
	), stepValue(
		t,
		s,
		"d",
		0,
		"tray_ready_min",
	)
	near(t, "the cool itself", ready.Mid/60, func() float64 {
		v := s.HoursTo(s.Formula.PartNamed("f").Steps[1], 24)
		return v.Mid
	}(), 1e-9)
	if !(tray.Mid < ready.Mid/3 && tray.Mid > 10) {
		t.Errorf("60 mm %v min, 15 mm %v", ready.Mid, tray.Mid)
	}
	thin := body(`, { cool = "1 h", at = "fridge", as = "tray 15 mm" }`)
	near(
		t,
		"a tray of 15 mm is one",
		stepValue(t, thin, "d", 0, "filling_ready_min").Mid,
		stepValue(t, thin, "d", 0, "tray_ready_min").Mid,
		0.01,
	)
	needs(t, "no cooling", stepValue(t, body(``), "d", 0, "filling_ready_min"), "a cool step")
	needs(
		t,
		"a warm place",
		stepValue(t, body(`, { cool = "1 h", at = "30 C" }`), "d", 0, "filling_ready_min"),
		"cold enough",
	)
	needs(
		t,
		"a warm place",
		stepValue(t, body(`, { cool = "1 h", at = "30 C" }`), "d", 0, "tray_ready_min"),
		"surroundings that cool",
	)
}
