package bakersmath

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// heatBetween sums an ingredient's specific heat in small steps, at the
// middle of each: a second way.
func heatBetween(i Ingredient, toC float64) float64 {
	const steps = 20000
	step, sum := (toC-i.TempC)/steps, 0.0
	for n := range steps {
		c, t := i.SpecificHeatKJ, i.TempC+(float64(n)+0.5)*step
		if i.Butter && t > 15 && t < 35 {
			c = 4.5
		}
		sum += c * step
	}
	if i.Dissolves {
		sum += 17
	}
	return i.MassKg * sum
}

func TestButterTakesUpHeatAsItMelts(t *testing.T) {
	butter := func(at float64) Ingredient {
		return Ingredient{MassKg: 2, SpecificHeatKJ: HeatButterKJ, TempC: at, Butter: true}
	}
	for _, c := range []struct{ from, to, want float64 }{ // worked by hand
		{5, 15, 2 * 10 * 2.3},
		{5, 24, 2 * (10*2.3 + 9*4.5)},
		{18, 24, 2 * 6 * 4.5},
		{10, 40, 2 * (5*2.3 + 20*4.5 + 5*2.3)},
		{36, 40, 2 * 4 * 2.3},
		{24, 5, -2 * (9*4.5 + 10*2.3)},
	} {
		if got := butter(c.from).takesUp(c.to); math.Abs(got-c.want) > 1e-9 {
			t.Errorf("%g to %g: %g kJ, want %g", c.from, c.to, got, c.want)
		}
		if slow := heatBetween(butter(c.from), c.to); math.Abs(slow-c.want) > 0.02 {
			t.Errorf("%g to %g: %g kJ in steps, want %g", c.from, c.to, slow, c.want)
		}
	}
}

// 100 flour, 60 water, 20 sugar: dissolving cools by 17*0.2/(1.76+0.25+2.508).
func TestSugarCoolsTheDough(t *testing.T) {
	dough := func(dissolves bool) float64 {
		c, ok := HeatBalanceDoughC([]Ingredient{
			{MassKg: 1, SpecificHeatKJ: HeatFlourKJ, TempC: 20},
			{MassKg: 0.6, SpecificHeatKJ: HeatWaterKJ, TempC: 20},
			{MassKg: 0.2, SpecificHeatKJ: HeatSugarKJ, TempC: 20, Dissolves: dissolves},
		}, 3)
		if !ok {
			t.Fatal("refused")
		}
		return c
	}
	if got := dough(false); math.Abs(got-23) > 1e-9 {
		t.Errorf("all at 20 C and 3 C of rise: %g", got)
	}
	if got := dough(false) - dough(true); math.Abs(got-0.7526) > 0.0005 {
		t.Errorf("sugar cools by %g", got)
	}
}

// Either side of where ice begins, and of where all the liquid is ice.
func TestIceLimits(t *testing.T) {
	for _, at := range []float64{19.5, 20} {
		if ice, ok := iceForLiquid(20, 0, 1, HeatWaterKJ, at, nil); !ok || ice != 0 {
			t.Errorf("water wanted at 20 C and had at %g: %g g", at, ice)
		}
	}
	if ice, ok := iceForLiquid(20, 0, 1, HeatWaterKJ, 20.1, nil); !ok ||
		!(ice > 0.9 && ice < 1.1) {
		t.Errorf("a tenth of a degree: %g g", ice)
	}
	// 1 kg flour from 30 to 20 C gives 17.6 kJ; ice that ends at 20 C
	// takes 417.6 a kg: 42.15 g.
	flour := []Ingredient{{MassKg: 1, SpecificHeatKJ: HeatFlourKJ, TempC: 30}}
	if ice, ok := iceForLiquid(20, 0, 0.0422, HeatWaterKJ, 20, flour); !ok ||
		math.Abs(ice-42.15) > 0.01 {
		t.Errorf("%g g, %v", ice, ok)
	}
	if _, ok := iceForLiquid(20, 0, 0.0421, HeatWaterKJ, 20, flour); ok {
		t.Error("more ice than liquid")
	}
}

func drawIngredients(t *rapid.T) []Ingredient {
	var out []Ingredient
	for range rapid.IntRange(1, 5).Draw(t, "others") {
		i := Ingredient{
			MassKg:         rapid.Float64Range(0, 50).Draw(t, "kg"),
			SpecificHeatKJ: rapid.Float64Range(0.5, 5).Draw(t, "heat"),
			TempC: rapid.Float64Range(0, 45).
				Draw(t, "at"),
			Butter:    rapid.Bool().Draw(t, "butter"),
			Dissolves: rapid.Bool().Draw(t, "dissolves"),
		}
		if i.Butter {
			i.SpecificHeatKJ = HeatButterKJ
		}
		out = append(out, i)
	}
	return out
}

// What they give and take sums to zero, by the slow way too.
func TestDoughBalancesProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := append(
			drawIngredients(t),
			Ingredient{
				MassKg:         rapid.Float64Range(0.1, 20).Draw(t, "water"),
				SpecificHeatKJ: HeatWaterKJ,
				TempC:          20,
			},
		)
		rise := rapid.Float64Range(0, 10).Draw(t, "rise")
		dough, ok := HeatBalanceDoughC(all, rise)
		if !ok {
			t.Fatal("refused")
		}
		sum, turned := 0.0, 0.0
		for _, i := range all {
			h := heatBetween(i, dough-rise)
			sum += h
			turned += math.Abs(h)
		}
		if math.Abs(sum) > 2e-3*(1+turned) {
			t.Fatalf("dough %g: %g kJ left of %g", dough, sum, turned)
		}
		// A warmer ingredient never makes a colder dough.
		all[0].TempC += 5
		if warmer, ok := HeatBalanceDoughC(all, rise); !ok || warmer < dough-1e-9 {
			t.Fatalf("%g, after warming %g", dough, warmer)
		}
	})
}

// Solve for the liquid, put it back, and the dough is the one
// asked for.
func TestLiquidInvertsDoughProperty(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		others := drawIngredients(t)
		desired, rise := rapid.Float64Range(10, 35).
			Draw(t, "desired"),
			rapid.Float64Range(0, 10).
				Draw(t, "rise")
		liquid := Ingredient{
			MassKg:         rapid.Float64Range(0.1, 50).Draw(t, "liquid"),
			SpecificHeatKJ: rapid.Float64Range(2, 4.18).Draw(t, "its heat"),
		}
		var ok bool
		liquid.TempC, ok = HeatBalanceLiquidC(
			desired,
			rise,
			liquid.MassKg,
			liquid.SpecificHeatKJ,
			others,
		)
		if !ok {
			t.Fatal("refused")
		}
		if got, ok := HeatBalanceDoughC(append(others, liquid), rise); !ok ||
			math.Abs(got-desired) > 1e-8 {
			t.Fatalf("dough %g, wanted %g with liquid at %g", got, desired, liquid.TempC)
		}
	})
}

// The ice found, melted and mixed in with the rest of the liquid, gives
// the dough asked for.
func TestIceForLiquidProperty(t *testing.T) {
	answered := 0
	rapid.Check(t, func(t *rapid.T) {
		others := drawIngredients(t)
		desired, rise := rapid.Float64Range(18, 30).
			Draw(t, "desired"),
			rapid.Float64Range(0, 10).
				Draw(t, "rise")
		liquid := rapid.Float64Range(0.1, 100).Draw(t, "liquid")
		heat := rapid.SampledFrom([]float64{HeatWaterKJ, HeatMilkKJ, HeatEggKJ}).Draw(t, "its heat")
		at := rapid.Float64Range(0.5, 35).Draw(t, "at")
		need, _ := HeatBalanceLiquidC(desired, rise, liquid, heat, others)
		g, ok := iceForLiquid(desired, rise, liquid, heat, at, others)
		switch {
		case !ok:
			// Refused only where all ice still leaves the dough
			// too warm.
			iced := append(
				others,
				Ingredient{
					MassKg:         liquid,
					SpecificHeatKJ: HeatWaterKJ,
					TempC:          -IceMeltKJ / HeatWaterKJ,
				},
			)
			if dough, _ := HeatBalanceDoughC(iced, rise); dough < desired-1e-6 {
				t.Fatalf("refused, yet ice alone gives %g of %g", dough, desired)
			}
			return
		case need >= at:
			if g != 0 {
				t.Fatalf("%g g of ice for a liquid that may be at %g", g, need)
			}
			return
		}
		answered++
		ice := g / 1000
		// Ice at 0 C is water at minus its heat of melting over the
		// specific heat.
		mixed := append(others, Ingredient{MassKg: liquid - ice, SpecificHeatKJ: heat, TempC: at},
			Ingredient{MassKg: ice, SpecificHeatKJ: HeatWaterKJ, TempC: -IceMeltKJ / HeatWaterKJ})
		if dough, ok := HeatBalanceDoughC(mixed, rise); !ok || math.Abs(dough-desired) > 1e-7 {
			t.Fatalf("%g g ice: dough %g, wanted %g", g, dough, desired)
		}
	})
	if answered == 0 {
		t.Error("no draw needed ice")
	}
}

// Specific heats from memory beside those of their make-up: 4.18 for
// water, 2.0 for protein, 1.98 for fat (Choi & Okos at 20 C, memory);
// salt 0.864 (handbooks, memory). Cold water is 1 C.
func TestSpecificHeatsByMakeUp(t *testing.T) {
	near(t, "egg, 76 % water", HeatEggKJ, 0.76*4.18+0.24*2.0, 0.3)
	near(t, "milk, 87.7 % water", HeatMilkKJ, 0.877*4.18+0.123*1.8, 0.15)
	near(t, "oil", HeatOilKJ, 1.98, 0.05)
	near(t, "salt", HeatSaltKJ, 0.864, 0.03)
	near(t, "coldest liquid", ColdestLiquidC, 1, 0.1)
}

func TestBalanceRefusals(t *testing.T) {
	nan, inf := math.NaN(), math.Inf(1)
	water := Ingredient{MassKg: 1, SpecificHeatKJ: HeatWaterKJ, TempC: 20}
	check := func(name string, x float64, ok bool) {
		t.Helper()
		if ok || x != 0 {
			t.Errorf("%s: %g, %v", name, x, ok)
		}
	}
	x, ok := HeatBalanceDoughC(nil, 3)
	check("empty bowl", x, ok)
	for _, bad := range []Ingredient{
		{MassKg: -1, SpecificHeatKJ: 1}, {MassKg: 1, SpecificHeatKJ: -1},
		{MassKg: nan, SpecificHeatKJ: 1},
		{MassKg: 1, SpecificHeatKJ: 1, TempC: nan}, {MassKg: inf, SpecificHeatKJ: 1, TempC: 20},
		{MassKg: 1, SpecificHeatKJ: 2, TempC: inf, Butter: true},
	} {
		x, ok = HeatBalanceDoughC([]Ingredient{water, bad}, 3)
		check("dough", x, ok)
		x, ok = HeatBalanceLiquidC(24, 3, 1, 4, []Ingredient{bad})
		check("liquid", x, ok)
		x, ok = iceForLiquid(24, 3, 1, 4, 20, []Ingredient{bad})
		check("ice", x, ok)
	}
	x, ok = HeatBalanceDoughC([]Ingredient{water}, nan)
	check("rise", x, ok)
	for _, bad := range []float64{0, -1, nan, inf} {
		x, ok = HeatBalanceLiquidC(24, 3, bad, 4, nil)
		check("liquid mass", x, ok)
		x, ok = HeatBalanceLiquidC(24, 3, 1, bad, nil)
		check("liquid heat", x, ok)
		x, ok = iceForLiquid(24, 3, bad, 4, 20, nil)
		check("ice mass", x, ok)
	}
	x, ok = iceForLiquid(24, 3, 1, 4, nan, nil)
	check("ice, liquid at", x, ok)
}

// iceForLiquid is the ice at 0 C in place of as much liquid at liquidC,
// g, so that the dough ends at desiredC after rising riseC; 0 for none.
// ok is false where all ice would not be enough, where the dough before
// its rise would be under 0 C, and as in HeatBalanceLiquidC.
func iceForLiquid(
	desiredC, riseC, liquidKg, specificHeatKJ, liquidC float64,
	others []Ingredient,
) (iceG float64, ok bool) {
	needC, ok := HeatBalanceLiquidC(desiredC, riseC, liquidKg, specificHeatKJ, others)
	if !ok || math.IsNaN(liquidC) {
		return 0, false
	}
	if needC >= liquidC {
		return 0, true
	}
	meetC := desiredC - riseC
	if meetC < 0 { // the ice would not melt
		return 0, false
	}
	return iceFor(meetC, needC, liquidKg, specificHeatKJ, liquidC)
}
