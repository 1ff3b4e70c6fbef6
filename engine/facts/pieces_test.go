package facts

import (
	"math"
	"testing"
)

// stollenLoose is a broadcaster's Dresden stollen (read, br.de) without
// its fruit, nuts and rum.
const (
	stollenLoose = `"type 405 flour" = "580 g", "fresh yeast" = "50 g", "milk" = "175 ml",
      "sugar" = "92 g", "butter" = "290 g", "salt" = "7 g"`
	stollenFruit = `"raisins" = "465 g", "candied peel" = "116 g", "almonds" = "90 g", ` +
		`"rum" = "40 ml"`
)

// A stollen's water, sugar and yeast demand are the same however its
// file is cut. The raisins take up 56 g of rum at the least, and 38 g
// stand on them; only what is left is the dough's.
func TestFruitOfAPartIsStillPieces(t *testing.T) {
	whole := sheet(t, `family = "stollen"
  dough "d" {
    ingredients = { `+stollenLoose+`, `+stollenFruit+` }
    steps = [{ soak = "12 h", with = ["raisins", "rum"] }]
  }`)
	cut := sheet(t, `family = "stollen"
  filling "fruit" {
    ingredients = { `+stollenFruit+` }
    steps = [{ soak = "12 h" }]
  }
  dough "d" {
    ingredients = { `+stollenLoose+`, "the fruit" = "all" }
  }`)
	twice := sheet(t, `family = "stollen"
  filling "fruit" {
    ingredients = { `+stollenFruit+` }
    steps = [{ soak = "12 h" }]
  }
  filling "fruit and milk" {
    ingredients = { "the fruit" = "all", "milk" = "175 ml" }
  }
  dough "d" {
    ingredients = { "type 405 flour" = "580 g", "fresh yeast" = "50 g",
      "sugar" = "92 g", "butter" = "290 g", "salt" = "7 g", "the fruit and milk" = "all" }
  }`)
	for _, name := range []string{"hydration_pct", "sugar_pct", "salt_pct", "fat_pct", "fruit_pct",
		"alcohol_on_water_pct", "yeast_needed_pct", "solids_pct"} {
		want := value(t, whole, "d", name)
		for i, s := range []*Sheet{cut, twice} {
			wantInterval(t, name, value(t, s, "d", name), want.Lo, want.Hi)
			if t.Failed() {
				t.Fatalf("file %d", i)
			}
		}
	}
	if h := value(t, cut, "d", "hydration_pct"); h.Lo < 41 || h.Hi > 48 {
		t.Errorf("hydration %g to %g", h.Lo, h.Hi)
	}
	if y := value(t, cut, "d", "yeast_needed_pct"); y.Mid < 1.5 || y.Mid > 4 {
		t.Errorf("it takes %g %% yeast, and the page has 3.0", y.Mid)
	}
	// The filling itself is wet and sweet: its own water activity
	// counts it all.
	if aw := value(t, cut, "fruit", "water_activity"); aw.Hi > 0.85 {
		t.Errorf("aw of the soaked fruit %g to %g", aw.Lo, aw.Hi)
	}
}

// Of 300 g of water on 400 g of raisins 100 to 252 g stay outside;
// without a soak step the fruit may have taken up nothing.
func TestLiquidOutsideSoakedFruit(t *testing.T) {
	for _, c := range []struct {
		steps    string
		low, top float64
	}{
		{`steps = [{ soak = "12 h" }]`, 100, 252},
		{``, 100, 300},
	} {
		s := sheet(t, `filling "fruit" {
    ingredients = { "raisins" = "400 g", "water" = "300 g" }
    `+c.steps+`
  }
  dough "d" {
    ingredients = { "bread flour" = "1000 g", "the fruit" = "all" }
  }`)
		wantInterval(t, "water", value(t, s, "d", "water_g"), c.low*0.999, c.top*0.999)
	}
}

// 1000 g flour, 400 g water and 250 g of a starter: 40.9 % with a stiff
// one at 46 %, 46.7 % if it were half water (computed). One name is
// used for both kinds.
func TestStarterByItsName(t *testing.T) {
	for _, c := range []struct {
		name     string
		low, top float64
	}{
		{`"stiff starter" = "250 g"`, 38.41, 41.43},
		{`"lievito madre" = "250 g"`, 38.41, 46.67},
		{`"lievito madre" = { amount = "250 g", hydration = "46 %" }`, 40.88, 40.88},
		{`"sourdough culture" = "250 g"`, 46.67, 46.67},
		{`"sourdough culture" = { amount = "250 g", hydration = "80 %" }`, 44.88, 44.88},
	} {
		s := sheet(t, `dough "d" {
    ingredients = { "bread flour" = "1000 g", "water" = "400 g", `+c.name+` }
  }`)
		h := value(t, s, "d", "hydration_pct")
		if math.Abs(h.Lo-c.low) > 0.06 || math.Abs(h.Hi-c.top) > 0.06 {
			t.Errorf("%s: %g to %g %%, not %g to %g", c.name, h.Lo, h.Hi, c.low, c.top)
		}
	}
}
