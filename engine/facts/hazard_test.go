package facts

import "testing"

// TestHazards holds hazard figures of formulas: by the codes' own
// temperatures, by sums of the written times, or as the baker
// wrote them.
func TestHazards(t *testing.T) {
	const (
		inSteam = `{ mix = "10 min" }, { fill = "f" }, { cook = "9 min", by = "steaming", ` +
			`measured = "62 C core" }`
		before = `{ mix = "10 min" }, { fill = "f" }, { bake = "20 min", at = "200 C" }`
		after  = `{ mix = "10 min" }, { bake = "20 min", at = "200 C" }, { fill = "f" }`
	)
	for _, c := range []struct {
		name, figure, filling, steps string
		lo, hi                       float64
	}{
		{"raw after the bake", "meat_heated_c", `"minced beef" = "200 g" }`, after, 22, 22},
		{"its own cook, and then after the bake", "meat_heated_c",
			`"minced beef" = "200 g" }
      steps = [{ cook = "8 min", to = "71 C" }]`, after, 71, 71},
		{"a cook of something else", "meat_heated_c",
			`"minced beef" = "200 g", "onion" = "50 g" }
      steps = [{ cook = "8 min", to = "71 C", with = ["onion"] }]`, after, 22, 22},
		{"before the bake, which is judged by itself", "meat_heated_c", `"minced beef" = "200 g" }`,
			before, 100, 100},
		{"probed in steam", "meat_heated_c", `"minced beef" = "200 g" }`, inSteam, 62, 62},
		{"minced", "meat_needs_c", `"minced beef" = "200 g" }`, after, 68, 68},
		{"poultry among others", "meat_needs_c", `"raw salmon" = "9 g", "raw chicken" = "9 g" }`,
			after, 74, 74},
		{"whole fish", "meat_needs_c", `"raw salmon" = "200 g" }`, after, 63, 63},
		{"stuffed in a dough", "meat_needs_c", `"raw salmon" = "200 g" }`, before, 74, 74},
		{"cured to be eaten raw", "meat_needs_c", `"smoked salmon" = "200 g" }`, after, 0, 0},
		{"read at the boil", "boiled_min", `"dried kidney beans" = "200 g", "water" = "500 g" }
      steps = [{ cook = "12 min", to = "80 C", measured = "99 C core" },
        { cook = "8 h", to = "80 C" }]`,
			after, 12, 12},
		{"nuts soaked and held", "soaked_h", `"cashews" = "200 g", "water" = "200 g" }
      steps = [{ soak = "18 h", at = "22 C" }, { mix = "2 min" }, { hold = "5 h", at = "22 C" }]`,
			after, 23, 23},
		{"nuts in honey", "soaked_h", `"cashews" = "200 g", "honey" = "200 g" }
      steps = [{ rest = "30 h", at = "22 C" }]`, after, 0, 0},
		{"toasted before", "soaked_h", `"cashews" = "200 g", "water" = "200 g" }
      steps = [{ cook = "10 min", to = "150 C", by = "roasting" }, { rest = "30 h", at = "22 C" }]`,
			after, 0, 0},
	} {
		s := sheet(t, `  filling "f" {
    ingredients = { `+c.filling+`
  }
  dough "d" {
    ingredients = { "bread flour" = "500 g", "water" = "300 g", "instant yeast" = "6 g" }
    steps = [`+c.steps+`]
  }`)
		wantInterval(t, c.name, value(t, s, "f", c.figure), c.lo, c.hi)
	}
}

// A kilogram that loses 8 to 13 % in the oven: 5 g of nutmeg in 995 g
// are 5 to 5.75 g/kg.
func TestDoses(t *testing.T) {
	for name, want := range map[string][2]float64{
		"nutmeg_g_per_kg":    {5, 5 / 0.87},
		"nitrite_mg_per_kg":  {62.5, 62.5 / 0.87},
		"kernels_g_per_kg":   {0, 0},
		"coumarin_mg_per_kg": {0, 0},
	} {
		s := sheet(t, `dough "d" {
      ingredients = { "bread flour" = "600 g", "water" = "394 g", "nutmeg" = "5 g",
        "curing salt" = "1 g" }
    }`)
		wantInterval(t, name, value(t, s, "", name), want[0], want[1])
	}
}
