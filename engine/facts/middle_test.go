package facts

import (
	"strings"
	"testing"

	"forebake/engine/figure"
)

func withoutError(t *testing.T, s *Sheet, part, name string) (whole Value, left Interval) {
	t.Helper()
	x := Subject{On: OnPart, Part: s.Formula.PartNamed(part)}
	f, ok := Find(OnPart, name)
	if !ok {
		t.Fatal(name)
	}
	v := s.Value(f, x)
	return *v, s.WithoutError(f, x)
}

// Where each input is one figure, a model's middle is left; where one
// is a range, the span that it leaves open, which holds the middle of
// each sharper text.
func TestWithoutErrorKeepsWhatIsOpen(t *testing.T) {
	dough := func(rest, yeast string) *Sheet {
		return sheet(t, `dough "d" {
    ingredients = { "bread flour" = "1000 g", "water" = "560 g", "salt" = "18 g",
      "instant yeast" = "`+yeast+`" }
    steps = [{ mix = "10 min", to = "26 C" }, { rest = "`+rest+`", at = "26 C", as = "slab 5 mm" }]
  }`)
	}
	sharp, left := withoutError(t, dough("60 min", "10 g"), "d", "ferment_e")
	if left != figure.Point(sharp.Mid) || !(sharp.Lo < sharp.Mid && sharp.Mid < sharp.Hi) {
		t.Errorf("%+v leaves %v", sharp, left)
	}
	for _, c := range []struct{ rest, yeast string }{
		{"30 min to 90 min", "10 g"}, {"60 min", "5 g to 20 g"}, {"60 min", "?"},
	} {
		v, open := withoutError(t, dough(c.rest, c.yeast), "d", "ferment_e")
		if !open.Contains(sharp.Mid) || open.IsPoint() || open.Lo < v.Lo || open.Hi > v.Hi {
			t.Errorf("%v: %+v leaves %v, and %v is inside", c, v, open, sharp.Mid)
		}
	}
	// A figure of no model stays as it is.
	if v, left := withoutError(t, dough("60 min", "5 g to 20 g"), "d",
		"yeast_pct"); left != v.Interval() {
		t.Errorf("%+v leaves %v", v, left)
	}
}

// Published points of testdata/tables/water-activity-mixtures.csv lie
// in what a whole formula says.
func TestWaterActivityByClass(t *testing.T) {
	for _, c := range []struct {
		name, body string
		want       float64
	}{
		{"glucose syrup DE 42 of 80 % solids (read)", `syrup "p" {
    ingredients = { "glucose syrup" = { amount = "100 g", de = 42 } }
  }`, 0.758},
		{"sugar and water, nearly saturated (memory)", `syrup "p" {
    ingredients = { "sugar" = "205 g", "water" = "100 g" }
  }`, 0.85},
	} {
		v := value(t, sheet(t, c.body), "p", "water_activity")
		if v.Lo > c.want+0.005 || v.Hi < c.want-0.005 || v.Hi-v.Lo > 0.12 {
			t.Errorf("%s: %g to %g, published %g", c.name, v.Lo, v.Hi, c.want)
		}
	}
}

// A filled panettone keeps 3 to 4 days, one on a culture a month and
// more, a stollen weeks; a bread a few days. Frozen goods are not asked
// (labels and keeping advice: testdata/tables/shelf-life.csv).
func TestMouldFreeByFamily(t *testing.T) {
	const dough = `"bread flour" = "1000 g", "water" = "500 g", "sugar" = "250 g", ` +
		`"butter" = "300 g", "salt" = "10 g"`
	for _, c := range []struct {
		name, body string
		low, high  float64
	}{
		{"bread", `dough "d" {
    ingredients = { "bread flour" = "1000 g", "water" = "650 g", "salt" = "18 g" }
  }`, 2, 6},
		{"panettone on a culture", `family = "panettone"
  dough "d" {
    ingredients = { ` + dough + `, "stiff starter" = "250 g" }
  }`, 30, 180},
		{"panettone, filled", `family = "panettone"
  dough "d" {
    ingredients = { ` + dough + `, "stiff starter" = "250 g" }
    steps = [{ fill = "cream" }]
  }
  filling "cream" {
    ingredients = { "milk" = "500 g", "sugar" = "100 g", "egg yolk" = "80 g" }
  }`, 3, 4},
		{"stollen with almonds", `family = "stollen"
  dough "d" {
    ingredients = { ` + dough + `, "almonds" = "100 g" }
  }`, 14, 42},
		{"stollen with poppy", `family = "stollen"
  dough "d" {
    ingredients = { ` + dough + `, "poppy seeds" = "100 g" }
  }`, 7, 14},
		{"stollen, cold", `family = "stollen"
  dough "d" {
    ingredients = { ` + dough + ` }
    steps = [{ store = "40 day", at = "6 C" }]
  }`, 28, 120},
	} {
		v := value(t, sheet(t, c.body), "", "mould_free_days")
		if v.Absent || v.Lo != c.low || v.Hi != c.high {
			t.Errorf(
				"%s: %g to %g days (missing %v), not %g to %g",
				c.name,
				v.Lo,
				v.Hi,
				v.Absent,
				c.low,
				c.high,
			)
		}
	}
	frozen := value(t, sheet(t, `family = "stollen"
  dough "d" {
    ingredients = { `+dough+` }
    steps = [{ store = "40 day", at = "freezer" }]
  }`), "", "mould_free_days")
	wantAbsent(t, "frozen", frozen)
	f, _ := Find(OnFormula, "mould_free_days")
	if !strings.Contains(f.Means, "not a safety figure") || f.Misses == "" {
		t.Errorf("%+v", f)
	}
}
