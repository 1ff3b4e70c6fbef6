package facts

import (
	"math"
	"strings"
	"testing"

	"forebake/engine/science/ferment"
)

// Hours from the first step to the last: parts made side by side, each
// waiting for what goes into it.
func TestHours(t *testing.T) {
	const sponge = `preferment "sponge" {
    ingredients = { "bread flour" = "200 g", "water" = "200 g" }
    steps = [ { mix = "3 min" }, { rest = "8 h to 10 h", at = "room" } ]
  }
`
	const filling = `filling "f" {
    ingredients = { "sugar" = "100 g" }
    steps = [ { cook = "5 min" }, { cool = "1 h", at = "room" } ]
  }
`
	dough := func(steps string) string {
		return "dough \"d\" {\n ingredients = { \"the sponge\" = \"all\", " +
			"\"bread flour\" = \"800 g\" }\n steps = [ " + steps + " ]\n}\n"
	}
	for _, test := range []struct {
		name, body string
		lo, hi     float64 // min
	}{
		// The sponge is ready after 3 + 480 to 600; then 12 + 60, no
		// wait for the filling (65), 90 to 120, 16.
		{"a night's sponge", sponge + filling +
			dough(`{ mix = "12 min" }, { rest = "1 h", at = "room" }, { fill = "f" }, `+
				`{ proof = "90 min to 2 h" }, { bake = "16 min" }`), 483 + 72 + 90 + 16,
			603 + 72 + 120 + 16},
		// The filling takes 24 h 5 min, and the fill waits; then 10
		// and 16.
		{"a slow filling", sponge + strings.Replace(filling, "1 h", "24 h", 1) +
			dough(`{ mix = "12 min" }, { fill = "f", time = "10 min" }, { bake = "16 min" }`),
			1445 + 26, 1445 + 26},
		// The fill may wait or not: 483 to 603 + 12 against 545.
		{"an even race", sponge + strings.Replace(filling, "1 h", "9 h", 1) +
			dough(`{ mix = "12 min" }, { fill = "f" }`), 545, 615},
		{"another part ends last", sponge + "topping \"t\" {\n ingredients = { \"sugar\" = \"1 " +
			"g\" }\n steps = [ { store = \"2 day\" } ]\n}\n" + dough(`{ mix = "12 min" }`),
			2880, 2880},
		{"no steps", "dough \"d\" { ingredients = { \"bread flour\" = \"1 g\" } }", 0, 0},
		{"a shape takes no time of its own",
			dough(`{ mix = "1 h" }, { shape = "knots" }, { sheet = "5 mm" }`) + sponge,
			603 - 120 + 60, 603 + 60},
	} {
		wantInterval(
			t,
			test.name,
			value(t, sheet(t, test.body), "", "hours"),
			test.lo/60,
			test.hi/60,
		)
	}
}

func TestRetardHours(t *testing.T) {
	for steps, want := range map[string][2]float64{
		``:                                {0, 0},
		`{ rest = "9 h", at = "fridge" }`: {0, 0},
		`{ mix = "9 min" }, { chill = "14 h" }, { bake = "16 min" }`: {14, 14},
		`{ mix = "9 min" }, { chill = "90 min" }, { shape = "knots" }, ` +
			`{ chill = "2 h to 3 h" }`: {3.5, 4.5},
		`{ mix = "9 min" }, { chill = "7 h 30 min to 8 h 30 min", at = "6 C" }, ` +
			`{ temper = "2 h" }`: {7.5, 8.5},
	} {
		s := sheet(
			t,
			"dough \"d\" {\n ingredients = { \"bread flour\" = \"1 kg\", "+
				"\"water\" = \"600 g\" }\n steps = [ "+steps+" ]\n}",
		)
		wantInterval(t, "retard of "+steps, value(t, s, "d", "retard_h"), want[0], want[1])
	}
}

// integral sums hours at 26 C of a dough moving from one temperature
// towards another, by the trapezoid rule: slow and plain, beside the
// quadrature in use.
func integral(from, ambient, tau, hours float64) (equivalent, end float64) {
	const steps = 200000
	at := func(h float64) float64 { return ambient + (from-ambient)*math.Exp(-h/tau) }
	for i := range steps {
		a, b := at(hours*float64(i)/steps), at(hours*float64(i+1)/steps)
		equivalent += (ferment.TemperatureFactor(a) + ferment.TemperatureFactor(b)) / 2 *
			hours / steps
	}
	return equivalent, at(hours)
}

func TestFermentationByHand(t *testing.T) {
	// 1 % instant yeast in 1000 g flour and 600 g water, 20 g salt: the
	// flour binds 120 g.
	molality, ok := ferment.Molality(ferment.Solutes{SaltG: 20, WaterG: 600, FlourG: 1000})
	if !ok {
		t.Fatal("no molality")
	}
	pace := ferment.OsmoticFactor(molality) / ferment.CardsOwnHeat
	dough := func(steps string) Value {
		return value(
			t,
			sheet(
				t,
				"dough \"d\" {\n ingredients = { \"bread flour\" = \"1 kg\", "+
					"\"water\" = \"600 g\", \"salt\" = \"20 g\", "+
					"\"instant yeast\" = \"10 g\" }\n steps = [ "+steps+" ]\n}",
			),
			"d",
			"ferment_e",
		)
	}
	within := func(name string, v Value, lo, hi, factor float64) {
		t.Helper()
		lo, hi = lo*pace/factor, hi*pace*factor
		if v.Absent || math.Abs(v.Lo-lo) > 2e-3*lo || math.Abs(v.Hi-hi) > 2e-3*hi {
			t.Errorf("%s: %v to %v, by hand %v to %v", name, v.Lo, v.Hi, lo, hi)
		}
	}
	within(
		"2 h at 26 C",
		dough(
			`{ mix = "9 min", to = "26 C" }, { rest = "2 h", at = "26 C", as = "slab 0.1 mm" }, `+
				`{ shape = "knots" }, { proof = "9 h", at = "30 C" }`,
		),
		2,
		2,
		1.4,
	)
	// In the cold a dough works no less than if it were cold at once,
	// and no more than if it stayed warm.
	for _, as := range []string{"", `, as = "slab 40 mm"`, `, as = "slab 5 mm", covered = false`,
		`, as = "bowl", covered = true`} {
		v := dough(
			`{ mix = "9 min", to = "26 C" }, { chill = "14 h"` + as + ` }, { bake = "9 min" }`,
		)
		cold, warm := 14*ferment.TemperatureFactor(4)*pace, 14*pace
		if v.Absent || v.Mid < cold || v.Mid > warm || v.Lo < cold/2.5 || v.Hi > warm*1.8 {
			t.Errorf(
				"a night at 4 C%s: %v to %v, about %v; cold at once %v, warm all night %v",
				as,
				v.Lo,
				v.Hi,
				v.Mid,
				cold,
				warm,
			)
		}
	}
	// A thin slab changes with a time constant of minutes: by hand,
	// with ten and with forty.
	quick, _ := integral(26, 4, 10.0/60, 14)
	slow, _ := integral(26, 4, 40.0/60, 14)
	if v := dough(`{ mix = "9 min", to = "26 C" }, { chill = "14 h", as = "slab 10 mm", ` +
		`covered = false }, { bake = "9 min" }`); v.Mid < quick*pace ||
		v.Mid > slow*pace {
		t.Errorf("a slab of 10 mm: about %v, by hand %v to %v", v.Mid, quick*pace, slow*pace)
	}
	within(
		"a reading beats the aim",
		dough(`{ mix = "9 min", to = "20 C", measured = "26 C" }, `+
			`{ rest = "2 h", at = "26 C", as = "slab 0.1 mm" }`),
		2,
		2,
		1.4,
	)
	within(
		"a range",
		dough(`{ mix = "9 min", to = "26 C" }, { rest = "1 h to 2 h", at = "26 C", `+
			`as = "slab 0.1 mm" }`),
		1,
		2,
		1.4,
	)
	wantAbsent(t, "no mix", dough(`{ rest = "2 h", at = "26 C" }`))
	wantAbsent(
		t,
		"no temperature of the hold",
		dough(`{ mix = "9 min", to = "26 C" }, { hold = "2 h" }`),
	)
	cool := dough(`{ mix = "9 min", to = "26 C" }, { rest = "2 h", at = "18 C" }`)
	warm := dough(`{ mix = "9 min", to = "26 C" }, { rest = "2 h", at = "26 C" }`)
	if v := dough(`{ mix = "9 min", to = "26 C" }, { rest = "2 h" }`); v.Lo != cool.Lo ||
		math.Abs(v.Hi/warm.Hi-1) > 0.05 {
		t.Errorf("no place: %v, in a room of 18 to 26 C %v to %v", v, cool.Lo, warm.Hi)
	}
	plain := sheet(
		t,
		"dough \"d\" { ingredients = { \"bread flour\" = \"1 kg\", \"water\" = \"600 g\" } }",
	)
	wantAbsent(t, "no yeast", value(t, plain, "d", "ferment_e"))
	dry := sheet(
		t,
		"dough \"d\" {\n ingredients = { \"bread flour\" = \"1 kg\", \"water\" = \"90 g\", "+
			"\"instant yeast\" = \"10 g\" }\n steps = [ { mix = \"9 min\", to = \"26 C\" }, "+
			"{ rest = \"2 h\", at = \"26 C\" } ]\n}",
	)
	wantInterval(t, "no free water", value(t, dry, "d", "ferment_e"), 0, 0)
	wantAbsent(t, "molality without free water", value(t, dry, "d", "solute_molality"))
}

// Dough against what is asked, after 0 to 5 % lost in bowl and on
// the bench.
func TestMakesGap(t *testing.T) {
	const filling = "\nfilling \"f\" { ingredients = { \"sugar\" = \"200 g\" } }"
	dough := func(grams, steps string) string {
		return "\ndough \"d\" {\n ingredients = { \"bread flour\" = \"" + grams +
			"\" }\n steps = [ " + steps + " ]\n}"
	}
	for _, test := range []struct {
		name, body string
		lo, hi     float64
	}{
		{"just enough", `makes = "10 pieces of 100 g"` + dough("1000 g", ""), 0, 0},
		{"1 % short", `makes = "10 pieces of 100 g"` + dough("990 g", ""), -1, -1},
		{"with 5 % lost still enough", `makes = "10 pieces of 100 g"` + dough("1052 g", ""), 0, 0},
		{"left over", `makes = "10 pieces of 100 g"` + dough("1100 g", ""), 4.5, 4.5},
		{"a range about it", `makes = "10 pieces of 100 g"` + dough("900 g to 1100 g", ""),
			-10, 4.5},
		{"a range of piece weights", `makes = "10 pieces of 100 g to 110 g"` + dough("1000 g", ""),
			100 * (1000.0/1100 - 1), 0},
		{"a weight in all", `makes = "1 kg"` + dough("800 g", ""), -20, -20},
		{"the filling is in the piece", `makes = "10 pieces of 100 g"` +
			dough("900 g", `{ fill = "f" }`) + filling, 5.5, 5.5},
		{"a filling that nobody spreads is not", `makes = "10 pieces of 100 g"` +
			dough("900 g", "") + filling, -10, -10},
		{"divided before the filling", `makes = "10 pieces"` +
			dough("900 g", `{ divide = "100 g" }, { fill = "f" }`) + filling, -10, -10},
		{"divided by number", dough("1000 g", `{ divide = 10 }, { divide = "100 g" }`), 0, 0},
		{"open dough", `makes = "10 pieces of 100 g"` + dough("?", ""), -100, math.Inf(1)},
	} {
		wantInterval(
			t,
			test.name,
			value(t, sheet(t, test.body), "", "makes_gap_pct"),
			test.lo,
			test.hi,
		)
	}
	for body, want := range map[string]string{
		`makes = "10 pieces of 100 g"` + dough("900 g", ""): "900 g of dough",
		`makes = "10 pieces of 100 g"` + dough("700 g", `{ fill = "f" }`) +
			filling: "900 g of dough and what goes on before the bake",
		`makes = "10 pieces of 100 g"` + dough("1200 g", `{ fill = "f" }`) +
			filling: "1200 g of dough",
		`makes = "10 pieces of 100 g"` + dough("800 g", `{ bake = "20 min" }, { fill = "f" }`) +
			filling: "800 g of dough",
	} {
		got := value(t, sheet(t, body), "", "makes_counted").Words
		if len(got) != 1 || got[0] != want {
			t.Errorf("%s: counted %q, want %q", body, got, want)
		}
	}
	wantAbsent(t, "nothing asked", value(t, sheet(t, dough("1 kg", "")), "", "makes_gap_pct"))
	wantAbsent(
		t,
		"pieces without a weight",
		value(t, sheet(t, `makes = "10 pieces"`+dough("1 kg", "")), "", "makes_gap_pct"),
	)
	wantAbsent(
		t,
		"weight without pieces",
		value(t, sheet(t, dough("1 kg", `{ divide = "100 g" }`)), "", "makes_gap_pct"),
	)
}

// What is still raw, by what the steps say. Egg is cooked at 70 C,
// flour at 74 C.
func TestRawByState(t *testing.T) {
	no, open, yes := [2]float64{0, 0}, [2]float64{0, 1}, [2]float64{1, 1}
	for _, test := range []struct {
		steps      string
		egg, flour [2]float64
	}{
		{``, yes, yes},
		{`{ mix = "3 min" }, { chill = "2 h" }`, yes, yes},
		{`{ bake = "9 min" }`, no, no},
		{`{ cook = "5 min", to = "69.4 C" }`, yes, yes},
		{`{ cook = "5 min", to = "70 C" }`, no, yes},
		{`{ cook = "5 min", to = "73.9 C" }`, no, yes},
		{`{ cook = "5 min", to = "74 C" }`, no, no},
		{`{ cook = "5 min", to = "160 F" }`, no, yes},
		{`{ cook = "5 min" }`, open, open},
		{`{ cook = "5 min", to = "60 C to 72 C" }`, open, yes},
		{`{ cook = "5 min", to = "72 C to 80 C" }`, no, open},
		{`{ cook = "5 min", to = "60 C" }, { cook = "5 min", to = "80 C" }`, no, no},
		{`{ cook = "5 min", to = "60 C" }, { cook = "5 min" }`, open, open},
		{`{ cook = "5 min" }, { bake = "9 min" }`, no, no},
		{`{ cook = "5 min", to = "95 C", core = "60 C" }`, yes, yes},
		{`{ cook = "5 min", to = "95 C", measured = "60 C" }`, yes, yes},
		{`{ cook = "5 min", to = "60 C", measured = "95 C core" }`, no, no},
		{`{ cook = "5 min", at = "180 C" }`, open, open}, // the pan's heat is not the food's
		{`{ melt = "5 min", to = "90 C" }`, yes, yes},    // no cook
	} {
		s := sheet(
			t,
			"filling \"f\" {\n ingredients = { \"egg\" = \"100 g\", "+
				"\"bread flour\" = \"20 g\" }\n steps = [ "+test.steps+" ]\n}",
		)
		wantInterval(
			t,
			"raw egg after "+test.steps,
			value(t, s, "f", "has_raw_egg"),
			test.egg[0],
			test.egg[1],
		)
		wantInterval(
			t,
			"raw flour after "+test.steps,
			value(t, s, "f", "has_raw_flour"),
			test.flour[0],
			test.flour[1],
		)
	}
	// What another part cooked stays cooked, and what this part cooks
	// is cooked whatever it takes in.
	inner := func(inner, outer string) *Sheet {
		return sheet(
			t,
			"filling \"i\" {\n ingredients = { \"egg\" = \"100 g\" }\n steps = [ "+inner+
				" ]\n}\nfilling \"o\" {\n ingredients = { \"the i\" = \"all\", "+
				"\"sugar\" = \"9 g\" }\n steps = [ "+outer+" ]\n}",
		)
	}
	for _, test := range []struct {
		inner, outer string
		want         [2]float64
	}{
		{``, ``, yes}, {`{ cook = "5 min", to = "80 C" }`, ``, no},
		{``, `{ cook = "5 min", to = "80 C" }`, no}, {`{ cook = "5 min" }`, ``, open},
		{`{ cook = "5 min" }`, `{ cook = "5 min", to = "60 C" }`, open},
		{``, `{ cook = "5 min" }`, open}, {`{ cook = "5 min", to = "60 C" }`, ``, yes},
	} {
		wantInterval(
			t,
			test.inner+" in "+test.outer,
			value(t, inner(test.inner, test.outer), "o", "has_raw_egg"),
			test.want[0],
			test.want[1],
		)
	}
	for name, want := range map[string][2]float64{
		"egg yolk":              yes,
		"pasteurised whole egg": no,
		"sugar":                 no,
		"whole milk":            no,
	} {
		s := sheet(t, "filling \"f\" { ingredients = { \""+name+"\" = \"100 g\" } }")
		wantInterval(t, "raw egg in "+name, value(t, s, "f", "has_raw_egg"), want[0], want[1])
	}
}

func TestAllergens(t *testing.T) {
	s := sheet(
		t,
		`dough "d" { ingredients = { "bread flour" = "500 g", "whole milk" = "300 g",
  "egg" = "50 g", "the p" = "all" } }
  preferment "p" { ingredients = { "rye flour" = "100 g", "water" = "100 g" } }
  filling "f" { ingredients = { "ground almonds" = "100 g", "dark chocolate 70-85%" = "50 g",
    "sesame seeds" = "5 g" } }
  syrup "s" { ingredients = { "sugar" = "1 g", "water" = "1 g" } }`,
	)
	for _, test := range []struct{ part, fact, want string }{
		{"d", "allergens_us", "egg, milk, wheat"},
		{"d", "allergens_eu", "cereals containing gluten (rye), cereals containing gluten " +
			"(wheat), eggs, milk"},
		{"d", "allergens", "cereals containing gluten (rye), cereals containing gluten (wheat), " +
			"egg, eggs, milk, wheat"},
		{"p", "allergens_us", ""},
		{"p", "allergens_eu", "cereals containing gluten (rye)"},
		{"f", "allergens_us", "sesame, tree nuts (almond)"},
		{"f", "allergens_eu", "nuts (almond), sesame seeds"},
		{"s", "allergens", ""},
		{"s", "allergens_to_check", ""},
		{"d", "allergens_to_check", ""},
		{"", "allergens_us", "egg, milk, sesame, tree nuts (almond), wheat"},
		{"", "allergens_eu", "cereals containing gluten (rye), cereals containing gluten " +
			"(wheat), eggs, milk, nuts (almond), sesame seeds"},
	} {
		if got := strings.Join(value(t, s, test.part, test.fact).Words, ", "); got != test.want {
			t.Errorf("%s of %q: %q, not %q", test.fact, test.part, got, test.want)
		}
	}
	// What is certainly there need not be looked for on a label.
	check := strings.Join(value(t, s, "f", "allergens_to_check").Words, ", ")
	if !strings.Contains(check, "milk") {
		t.Errorf("chocolate often holds milk, and the filling says %q", check)
	}
	whole := strings.Join(value(t, s, "", "allergens_to_check").Words, ", ")
	if strings.Contains(whole, "milk") {
		t.Errorf("milk is in the dough for certain, and the formula says %q", whole)
	}
}
