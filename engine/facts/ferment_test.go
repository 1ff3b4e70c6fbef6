package facts

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/science/ferment"
)

// published reads a formula file of testdata/published, without its
// outer block.
func published(t *testing.T, name string) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "..", "testdata", "published", name))
	if err != nil {
		t.Fatal(err)
	}
	_, body, ok := strings.Cut(string(text), "\" {\n")
	if !ok {
		t.Fatal("no formula")
	}
	return body[:strings.LastIndex(body, "}")]
}

// Published cards and the E that doubles in bulk by them, from which
// the constant of a doubling was set (computed, without their own
// heat): 1.54, 1.21; a proof 1.12. Each within the stated factor.
func TestFermentOfCards(t *testing.T) {
	for _, test := range []struct {
		file, dough, fact string
		want              float64
	}{
		{"afrs-d055-roll-dough.hcl", "roll dough", "ferment_e", 1.54},
		{"afrs-d055-roll-dough.hcl", "roll dough", "proof_e", 1.12},
		{"challah.hcl", "challah", "ferment_e", 1.21},
	} {
		v := value0(t, sheetIn(t, published(t, test.file), kitchenOf(nil)), test.dough, test.fact)
		if v.Absent || v.Mid > 1.4*test.want || v.Mid < test.want/1.4 || v.Lo > test.want ||
			v.Hi < test.want {
			t.Errorf(
				"%s of %s: %v (%v to %v), expected %v",
				test.fact,
				test.file,
				v.Mid,
				v.Lo,
				v.Hi,
				test.want,
			)
		}
		near(
			t,
			test.file+" "+test.fact+", and nearer than it need be",
			v.Mid,
			test.want,
			0.35*test.want,
		)
	}
}

// sweet is a dough at 60 % with 2 % salt and some sugar, 1 h at 26 C.
func sweet(t tester, sugarPct, yeastPct float64, strain string) Value {
	t.Helper()
	return value0(t, sheetIn(t, fmt.Sprintf(`dough "d" {
  ingredients = { "bread flour" = "1000 g", "water" = "600 g", "salt" = "20 g", "sugar" = "%v g",
    "instant yeast" = { amount = "%v %%", strain = "%s" } }
  steps = [ { mix = "9 min", measured = "26 C" }, { rest = "1 h", at = "26 C", as = "slab 5 mm" } ]
}`, 10*sugarPct, yeastPct, strain), kitchenOf(nil)), "d", "ferment_e")
}

// Published times to double at 26 C with 1.75 % instant yeast.
func TestDoublingTimes(t *testing.T) {
	for _, test := range []struct {
		sugar  float64
		strain string
		hours  float64
	}{{15, "standard", 1.8}, {20, "standard", 2.2}, {20, "osmotolerant", 1.1}} {
		v := sweet(t, test.sugar, 1.75, test.strain)
		hours := ferment.DoublingE / v.Mid
		if v.Absent || hours > 1.4*test.hours || hours < test.hours/1.4 {
			t.Errorf(
				"%v %% sugar, %s: a doubling in %v h, published %v",
				test.sugar,
				test.strain,
				hours,
				test.hours,
			)
		}
	}
	// Osmotolerant yeast is nearly twice as fast in challah, at 11 %
	// sugar (quoted).
	ratio := sweet(t, 11, 1.75, "osmotolerant").Mid / sweet(t, 11, 1.75, "standard").Mid
	near(t, "osmotolerant against standard yeast at 11 % sugar", ratio, 1.9, 0.15)
}

// The proof is counted apart from the bulk; either by hand where the
// dough has its surroundings' temperature.
func TestBulkAndProof(t *testing.T) {
	s := sheetIn(t, `dough "d" {
  ingredients = { "bread flour" = "1000 g", "water" = "600 g", "salt" = "20 g",
    "instant yeast" = "0.1 g" }
  steps = [ { mix = "9 min", measured = "30 C" }, { rest = "2 h", at = "30 C", as = "slab 5 mm" },
    { divide = "100 g", time = "10 min" }, { rest = "15 min", at = "30 C", as = "slab 5 mm" },
    { shape = "buns" }, { proof = "50 min to 70 min", at = "30 C", as = "slab 5 mm" },
      { bake = "15 min", at = "200 C" }, { cool = "9 h", at = "30 C" } ]
}`, kitchenOf(nil))
	g := ferment.TemperatureFactor(30)
	bulk, proof := value0(t, s, "d", "bulk_h26"), value0(t, s, "d", "proof_h26")
	near(t, "bulk", bulk.Mid, 2.25*g, 2e-3*2.25*g)
	near(t, "proof", proof.Mid, 1*g, 2e-3*g)
	near(t, "bulk, least", bulk.Lo, 2.25*g/ferment.TemperatureError(30), 5e-3)
	near(t, "proof, least", proof.Lo, 5.0/6*g/ferment.TemperatureError(30), 5e-3)
	near(t, "proof, most", proof.Hi, 7.0/6*g*ferment.TemperatureError(30), 5e-3)
	dose := value0(t, s, "d", "ferment_e").Mid / bulk.Mid
	near(t, "one dose for both", value0(t, s, "d", "proof_e").Mid/proof.Mid, dose, 1e-9)
}

// In the cold a tub ferments more than a slab; a chill without a shape
// says what would settle it.
func TestRetardInATub(t *testing.T) {
	night := func(as string) Value {
		return value0(t, sheetIn(t, `dough "d" {
  ingredients = { "bread flour" = "2500 g", "water" = "1500 g", "salt" = "50 g",
    "instant yeast" = "25 g" }
  steps = [ { mix = "9 min", measured = "24 C" }, { chill = "14 h"`+as+` } ]
}`, kitchenOf(nil)), "d", "ferment_e")
	}
	tub, slab, thin, open := night(
		`, as = "bowl"`,
	), night(
		`, as = "slab 40 mm"`,
	), night(
		`, as = "slab 20 mm"`,
	), night(
		"",
	)
	if !(tub.Mid > 1.5*slab.Mid && slab.Mid > 1.2*thin.Mid) {
		t.Errorf("tub %v, slab of 40 mm %v, of 20 mm %v", tub.Mid, slab.Mid, thin.Mid)
	}
	if open.Need == nil || !strings.Contains(open.Need.What, "slab") || open.Lo > thin.Lo*1.001 ||
		open.Hi < tub.Hi*0.999 {
		t.Errorf(
			"a shape that nobody says: %v to %v, needs %+v; slab %v, tub %v",
			open.Lo,
			open.Hi,
			open.Need,
			thin.Lo,
			tub.Hi,
		)
	}
	if tub.Need != nil || slab.Need != nil {
		t.Error("a shape that is written needs nothing")
	}
	if spread := math.Sqrt(slab.Hi / slab.Lo); spread < ferment.RiseError(true, false) {
		t.Errorf("a retard's error is a factor of 1.8 at least, not %v", spread)
	}
}

// With a reading of the rise, only the error of a doubling remains.
func TestRiseBeatsTheModel(t *testing.T) {
	s := sheetIn(t, `dough "d" {
  ingredients = { "bread flour" = "1000 g", "water" = "600 g", "instant yeast" = "10 g" }
  steps = [ { mix = "9 min", measured = "24 C" },
    { rest = "90 min", at = "room", measured = "2 x" }, { shape = "loaf" },
    { proof = "1 h", at = "30 C" } ]
}`, kitchenOf(nil))
	v := value0(t, s, "d", "ferment_e")
	near(t, "a doubling", v.Mid, 1.25, 1e-9)
	near(t, "least", v.Lo, 1.25/1.17, 1e-6)
	near(t, "most", v.Hi, 1.25*1.17, 1e-6)
	if p := value0(t, s, "d", "proof_e"); v.Origin != figure.Measured ||
		p.Origin != figure.Measured {
		t.Errorf("origins %s and %s", v.Origin, p.Origin)
	}
}
