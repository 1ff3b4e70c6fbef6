package bakersmath

import (
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/figure"
)

// three makes the three runs' bowls out of one.
func three(b Bowl) [figure.Runs]Bowl { return [figure.Runs]Bowl{b, b, b} }

// spiral is a mix of a dough of kg in a room.
func spiral(kg, room float64) Mixing {
	return Mixing{By: Spiral, SlowMin: 4, FastMin: 6, MassKg: kg, RoomC: room}
}

// house is a mix whose rise was measured.
func house(k float64) Mixing { return Mixing{HouseK: k, Measured: true} }

// A lean dough at 60 % water: 1 kg of flour at a temperature.
func lean(flourC, aimC float64, m Mixing) Bowl {
	return Bowl{
		Goods:        []Ingredient{{MassKg: 1, SpecificHeatKJ: HeatFlourKJ, TempC: flourC}},
		Mixing:       m,
		AimC:         aimC,
		LiquidKg:     0.6,
		LiquidHeatKJ: HeatWaterKJ,
	}
}

// Expected, computed: at flour 20 C, aim 24 C and a rise of 3.7 K the
// water is 20.5 C, at 30 C 13.5 C. The balance's error is 0.5 C of
// dough, 0.85 C of water.
func TestWaterExpected(t *testing.T) {
	for _, c := range []struct{ flourC, waterC float64 }{{20, 20.5}, {30, 13.5}} {
		plan, silent := Water(three(lean(c.flourC, 24, house(3.7))))
		if silent != "" {
			t.Fatal(silent)
		}
		near(t, "liquid", plan.LiquidC.Mid, c.waterC, 0.05)
		near(
			t,
			"high end",
			plan.LiquidC.High-plan.LiquidC.Mid,
			0.5*(1.76+0.6*4.18)/(0.6*4.18),
			1e-9,
		)
		near(t, "low end", plan.LiquidC.Mid-plan.LiquidC.Low, 0.5*(1.76+0.6*4.18)/(0.6*4.18), 1e-9)
		near(t, "ice", plan.IceG.High, 0, 0)
	}
}

// Flour and preferment go in at their own temperatures, not at
// the room's.
func TestFlourIsNotAtTheRoom(t *testing.T) {
	cold, _ := Water(three(lean(10, 24, spiral(1.6, 24))))
	warm, _ := Water(three(lean(28, 24, spiral(1.6, 24))))
	if !(cold.LiquidC.Mid > warm.LiquidC.Mid+12) {
		t.Errorf("flour at 10 C %v, at 28 C %v", cold.LiquidC, warm.LiquidC)
	}
	with := func(at float64) Plan {
		b := lean(20, 24, spiral(2.4, 22))
		b.Goods = append(b.Goods, Ingredient{MassKg: 0.8, SpecificHeatKJ: DoughHeatKJ, TempC: at})
		plan, silent := Water(three(b))
		if silent != "" {
			t.Fatal(silent)
		}
		return plan
	}
	// 0.8 kg of preferment 10 K warmer gives 21.6 kJ, 8.6 K of 0.6 kg
	// of water.
	near(t, "preferment", with(16).LiquidC.Mid-with(26).LiquidC.Mid, 0.8*2.7*10/(0.6*4.18), 1e-9)
}

// The trade factor's published examples beside the balance: with flour
// and room alike the two differ by a known amount, since the factor
// counts the room as in the bowl.
func TestFactorBesideTheBalance(t *testing.T) {
	tried := 0
	for _, r := range rows(t, "dough-worked-examples.csv") {
		n, fahrenheit := numbersOf(t, r["inputs"]), true
		var desired, factor, flour, room, friction float64
		switch r["id"] {
		case "W01":
			desired, factor, flour, room, friction = n[0], n[1], n[2], n[3], n[4]
		case "W02": // the preferment, at the flour's temperature, goes with the flour
			desired, factor, flour, room, friction = n[0], n[1], n[2], n[2], n[3]
		case "W03":
			desired, factor, flour, room, friction = n[0], n[1], n[3], n[4], n[2]
		case "W04":
			desired, factor, flour, room, friction = n[0], n[1], n[3], n[4], n[5]
			fahrenheit = false
		case "W06", "W07":
			desired, factor, flour, room = n[0]/3, 3, n[1], n[2]
		default:
			continue
		}
		published, rise := number(t, r["published_answer"]), friction/factor
		if fahrenheit {
			desired, flour, room, published, rise = celsius(
				desired,
			), celsius(
				flour,
			), celsius(
				room,
			), celsius(
				published,
			), rise/1.8
		}
		plan, silent := Water(three(lean(flour, desired, house(rise))))
		if silent != "" {
			t.Fatalf("%s: %s", r["id"], silent)
		}
		// The published water in the balance: how far off the trade's
		// dough is.
		mixed, ok := HeatBalanceDoughC(
			[]Ingredient{{MassKg: 1, SpecificHeatKJ: HeatFlourKJ, TempC: flour},
				{MassKg: 0.6, SpecificHeatKJ: HeatWaterKJ, TempC: published}},
			rise,
		)
		share := 0.6 * HeatWaterKJ / (HeatFlourKJ + 0.6*HeatWaterKJ)
		if !ok || math.Abs(mixed-desired-share*(published-plan.LiquidC.Mid)) > 1e-9 {
			t.Errorf("%s: dough %g for %g", r["id"], mixed, desired)
		}
		if flour == room {
			tried++
			gap := desired - rise - flour
			near(t, r["id"]+" balance", plan.LiquidC.Mid, flour+gap/share, 1e-9)
			near(t, r["id"]+" factor", published, flour+factor*gap, 1e-9)
		}
	}
	if tried != 3 {
		t.Errorf("%d examples with flour and room alike", tried)
	}
}

// The mixing's error is in the liquid's, times the dough's heat over
// the liquid's.
func TestWaterCarriesTheErrorOfMixing(t *testing.T) {
	b := lean(20, 26, Mixing{By: Spiral, SlowMin: 2, FastMin: 3, MassKg: 1.6, RoomC: 22})
	plan, silent := Water(three(b))
	if silent != "" {
		t.Fatal(silent)
	}
	inOrder(t, "liquid", plan.LiquidC)
	measured, _ := Water(three(lean(20, 26, house(3.0))))
	got, less := plan.LiquidC.High-plan.LiquidC.Low, measured.LiquidC.High-measured.LiquidC.Low
	if !(got > 3*less) {
		t.Errorf("modelled friction: %g wide, measured %g", got, less)
	}
	// 0.8*3.8 min is 3.04 K (1.79 to 5.17): the ends of the water are
	// 1.7 K times 3.38 K apart, and 1.7 C.
	share := 0.6 * HeatWaterKJ / (HeatFlourKJ + 0.6*HeatWaterKJ)
	near(t, "width", plan.LiquidC.High-plan.LiquidC.Low, (0.8*3.8*(1.7-1/1.7)+1)/share, 0.35)
}

// A rich dough in a hot room: ice by weight, in the middle run only if
// needed there.
func TestIceByWeight(t *testing.T) {
	goods := []Ingredient{
		{MassKg: 1, SpecificHeatKJ: HeatFlourKJ, TempC: 30},
		{MassKg: 0.2, SpecificHeatKJ: HeatSugarKJ, TempC: 30, Dissolves: true},
		{MassKg: 0.2, SpecificHeatKJ: HeatButterKJ, TempC: 18, Butter: true},
	}
	b := Bowl{Goods: goods, Mixing: house(8), AimC: 24, LiquidKg: 0.5, LiquidHeatKJ: HeatMilkKJ}
	// All meet at 16 C; the butter gives heat where it sets again.
	want := 16 + (1*1.76*(16-30)+0.2*(1.25*(16-30)+17)+0.2*4.5*(16-18))/(0.5*3.9)
	plan, silent := Water(three(b))
	if silent != "" || math.Abs(plan.LiquidC.Mid-want) > 1e-9 || plan.IceG.Mid != 0 {
		t.Errorf("%+v, want milk at %g: %s", plan, want, silent)
	}
	b.Mixing = house(11) // 3 K more of rise, and chilled milk is no longer enough
	plan, silent = Water(three(b))
	if silent != "" || plan.LiquidC.Mid != ColdestLiquidC ||
		!(plan.IceG.Mid > 10 && plan.IceG.Mid < 60) {
		t.Errorf("%+v %s", plan, silent)
	}
	inOrder(t, "ice", plan.IceG)
	// The ice, melted and mixed in, gives the dough that was wanted.
	ice := plan.IceG.Mid / 1000
	dough, ok := HeatBalanceDoughC(
		append(
			goods,
			Ingredient{MassKg: 0.5 - ice, SpecificHeatKJ: HeatMilkKJ, TempC: ColdestLiquidC},
			Ingredient{MassKg: ice, SpecificHeatKJ: HeatWaterKJ, TempC: -IceMeltKJ / HeatWaterKJ},
		),
		11,
	)
	if !ok || math.Abs(dough-24) > 1e-7 {
		t.Errorf("dough %g", dough)
	}
}

// Past both ends of the range there is no figure, and the reason says
// what to do: no liquid at 79 C.
func TestWaterIsSilentOutside(t *testing.T) {
	b := lean(-4, 26, house(2))
	b.Goods[0].MassKg = 2
	plan, silent := Water(three(b))
	if silent != TooCold || !math.IsNaN(plan.LiquidC.Mid) || plan.LiquidC.Low != HottestLiquidC ||
		!math.IsInf(plan.LiquidC.High, 1) || plan.IceG.High != 0 {
		t.Errorf("cold flour: %+v %q", plan, silent)
	}
	b = lean(35, 18, house(20))
	plan, silent = Water(three(b))
	if silent != TooWarm || !math.IsNaN(plan.IceG.Mid) || plan.LiquidC.High != ColdestLiquidC ||
		plan.IceG.Low != 600 || !math.IsInf(plan.IceG.High, 1) {
		t.Errorf("a hot mix: %+v %q", plan, silent)
	}
	if plan, silent = Water(three(lean(24, 20, house(25)))); silent != TooWarm {
		t.Errorf("a dough that freezes: %+v %q", plan, silent)
	}
	for want, change := range map[string]func(*Bowl){
		noLiquid:   func(b *Bowl) { b.LiquidKg = 0 },
		unreadable: func(b *Bowl) { b.Goods[0].MassKg = math.NaN() },
		"the mix is 31 min": func(b *Bowl) {
			b.Mixing = Mixing{By: Spiral, FastMin: 31, MassKg: 2, RoomC: 20}
		},
		"the room is 60 C": func(b *Bowl) {
			b.Mixing = Mixing{By: Spiral, FastMin: 3, MassKg: 2, RoomC: 60}
		},
		"the mixer is not k": func(b *Bowl) { b.Mixing = Mixing{By: 99} },
	} {
		b := lean(20, 24, house(3))
		change(&b)
		if plan, silent := Water(three(b)); !strings.HasPrefix(silent, want) ||
			!math.IsNaN(plan.LiquidC.Mid) {
			t.Errorf("%q: %+v %q", want, plan, silent)
		}
	}
	// The hottest liquid is answered, a hotter one is not.
	share := 0.6 * HeatWaterKJ / (HeatFlourKJ + 0.6*HeatWaterKJ)
	for _, c := range []struct {
		liquid float64
		reason string
	}{{54.9, ""}, {55.1, TooCold}} {
		aim := 20 + share*(c.liquid-20)
		if _, silent := Water(three(lean(20, aim, house(0)))); silent != c.reason {
			t.Errorf("liquid at %g C: %q", c.liquid, silent)
		}
	}
	// An end out of reach stops at what is possible.
	bowls := three(lean(20, 24, house(3)))
	bowls[figure.Low].Mixing, bowls[figure.High].Goods = house(
		40,
	), []Ingredient{
		{MassKg: 3, SpecificHeatKJ: HeatFlourKJ, TempC: -2},
	}
	bowls[figure.Low].Mixing = house(28)
	plan, silent = Water(bowls)
	if silent != "" || plan.LiquidC.Low != ColdestLiquidC || plan.LiquidC.High != HottestLiquidC ||
		plan.IceG.High != 600 {
		t.Errorf("%+v %q", plan, silent)
	}
}

func TestDoughC(t *testing.T) {
	goods := []Ingredient{
		{MassKg: 1, SpecificHeatKJ: HeatFlourKJ, TempC: 20},
		{MassKg: 0.6, SpecificHeatKJ: HeatWaterKJ, TempC: 20},
	}
	short, silent := DoughC(
		three(Bowl{Goods: goods, Mixing: Mixing{By: Spiral, FastMin: 3, MassKg: 1.6, RoomC: 20}}),
	)
	long, silent2 := DoughC(
		three(Bowl{Goods: goods, Mixing: Mixing{By: Spiral, FastMin: 30, MassKg: 1.6, RoomC: 20}}),
	)
	if silent+silent2 != "" || !(long.Low > short.High) {
		t.Errorf("3 min %v %s, 30 min %v %s", short, silent, long, silent2)
	}
	near(t, "3 min", short.Mid, 22.4, 0.1)
	near(t, "its high end", short.High, 20+1.7*(short.Mid-20)+0.5, 0.05)
	near(t, "its low end", short.Low, 20+(short.Mid-20)/1.7-0.5, 0.05)
	for want, change := range map[string]func(*Bowl){
		unreadable: func(b *Bowl) { b.Goods = nil },
		"the dough is 101 C": func(b *Bowl) {
			b.Goods = []Ingredient{{MassKg: 1, SpecificHeatKJ: 4, TempC: 101}}
		},
		"the dough is -10 C": func(b *Bowl) {
			b.Goods = []Ingredient{{MassKg: 1, SpecificHeatKJ: 4, TempC: -10}}
		},
		"the mix is 31 min": func(b *Bowl) { b.Mixing.FastMin = 27 },
	} {
		b := Bowl{Goods: goods, Mixing: spiral(1.6, 20)}
		change(&b)
		if e, silent := DoughC(three(b)); !strings.HasPrefix(silent, want) || !math.IsNaN(e.Mid) {
			t.Errorf("%q: %v %q", want, e, silent)
		}
	}
}

// The plan poured into the bowl gives the wanted dough, in every run.
func TestWaterAndDoughAgreeProperty(t *testing.T) {
	answered := 0
	rapid.Check(t, func(t *rapid.T) {
		b := Bowl{Goods: drawIngredients(t), AimC: rapid.Float64Range(18, 30).Draw(t, "aim"),
			LiquidKg: rapid.Float64Range(0.1, 50).
				Draw(t, "liquid"),
			LiquidHeatKJ: rapid.Float64Range(2, 4.18).Draw(t, "its heat")}
		b.Mixing = Mixing{
			By:      Mixer(rapid.IntRange(0, int(TwinArm)).Draw(t, "by")),
			FastMin: rapid.Float64Range(0, 20).Draw(t, "min"),
			MassKg: rapid.Float64Range(0.5, 300).
				Draw(t, "kg"),
			RoomC: rapid.Float64Range(5, 35).Draw(t, "room"),
		}
		plan, silent := Water(three(b))
		if silent != "" {
			return
		}
		answered++
		if !(plan.LiquidC.Low >= ColdestLiquidC && plan.LiquidC.High <= HottestLiquidC &&
			plan.IceG.Low >= 0 && plan.IceG.High <= 1000*b.LiquidKg) {
			t.Fatalf("%+v", plan)
		}
		if !(plan.LiquidC.Low <= plan.LiquidC.Mid && plan.LiquidC.Mid <= plan.LiquidC.High &&
			plan.IceG.Low <= plan.IceG.Mid && plan.IceG.Mid <= plan.IceG.High) {
			t.Fatalf("%+v", plan)
		}
		ice := plan.IceG.Mid / 1000
		all := append(
			append([]Ingredient(nil), b.Goods...),
			Ingredient{
				MassKg:         b.LiquidKg - ice,
				SpecificHeatKJ: b.LiquidHeatKJ,
				TempC:          plan.LiquidC.Mid,
			},
			Ingredient{MassKg: ice, SpecificHeatKJ: HeatWaterKJ, TempC: -IceMeltKJ / HeatWaterKJ},
		)
		meet, ok := HeatBalanceDoughC(all, 0)
		if !ok {
			t.Fatal("refused")
		}
		if end := b.Mixing.EndC(meet, figure.Middle); math.Abs(end-b.AimC) > 1e-6 {
			t.Fatalf("dough %g, wanted %g", end, b.AimC)
		}
	})
	if answered == 0 {
		t.Error("no draw was answered")
	}
}
