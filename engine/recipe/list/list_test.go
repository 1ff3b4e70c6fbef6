package list

import (
	"strings"
	"testing"

	"forebake/engine/larder"
)

// TestLines holds what single lines give: name, amount and purpose of
// each ingredient.
func TestLines(t *testing.T) {
	for text, want := range map[string]string{
		"1 large egg + 1 yolk, at room temperature":         "egg 1 piece; egg yolk 1 piece",
		"1 egg plus 1 yolk":                                 "egg 1 piece; egg yolk 1 piece",
		"1 egg beaten with 1 tablespoon milk, for egg wash": "egg 1 piece (egg wash); milk 1 tablespoon (egg wash)",
		"1/4 cup sugar, plus 1 cup for rolling":             "sugar 1/4 cup; sugar 1 cup (rolling)",
		"50 g flour, for dusting":                           "left 50 g flour for dusting",
		"Oil for deep frying":                               "left oil for deep frying",
		"2 tbsp melted butter, for brushing":                "melted butter 2 tbsp (brushing)",
		"200 g jam, for the filling":                        "jam 200 g (filling)",
		"500g flour, 10g instant yeast, 1 tsp salt":         "flour 500 g; instant yeast 10 g; salt 1 tsp",
		"Bread flour: 500 g":                                "bread flour 500 g",
		"Eggs 2":                                            "eggs 2 pieces",
		"milk 1 c, warm":                                    "milk 1 cup",
		"2 c. + 2 T. A.P. flour":                            "AP flour 2 cup 2 tbsp",
		"500 g flour Type 550":                              "Type 550 flour 500 g",
		"1 1/2 tbsp dry active yeast":                       "dry active yeast 1 1/2 tbsp",
		"1 cube fresh yeast (42 g)":                         "fresh yeast 42 g",
		"1 tbsp cream":                                      "heavy cream 1 tbsp",
		"1 egg 50g butter":                                  "egg 1 piece; butter 50 g",
		"3/4 cup milk, 120 F":                               "milk 3/4 cup",
	} {
		r := Reader{Larder: larder.New()}
		lines, left, ok := r.Lines(text)
		var got []string
		for _, l := range lines {
			one := l.Name + " " + l.Amount
			if l.For != "" {
				one += " (" + l.For + ")"
			}
			got = append(got, one)
		}
		for _, l := range left {
			got = append(got, "left "+string(l))
		}
		if out := strings.Join(got, "; "); !ok || out != want {
			t.Errorf("%s: %q, want %q", text, out, want)
		}
	}
}

func TestTemperature(t *testing.T) {
	for text, want := range map[string][2]string{
		"heat 1/4 C butter":        {"C", ""},
		"warm to 37°C":             {"", "37 C"},
		"in the fridge at 4°C":     {"", "4 C"},
		"at 350°":                  {"C", "350 F"},
		"at 220°":                  {"", "220 C"},
		"at 110 degrees":           {"F", "110 F"},
		"at 110 degrees, it says":  {"", ""},
		"165–170°C":                {"", "165 to 170 C"},
		"at 375 degrees F":         {"C", "375 F"},
		"105° to 115°, so warm":    {"F", "105 to 115 F"},
		"2 cups, and 3 C of flour": {"", ""},
	} {
		got, _ := Reader{Scale: want[0]}.Temperature(text)
		if got != want[1] {
			t.Errorf("%s: %q, want %q", text, got, want[1])
		}
	}
}

func TestTin(t *testing.T) {
	for text, want := range map[string][2]string{
		"put in a greased 23 cm round tin":                {"23 cm round tin", ""},
		"layer into a buttered 10-inch bundt tin":         {"10-inch bundt tin", ""},
		"place in two 9-in. round cake pans":              {"9-in. round cake pan", "2"},
		"put in two 2lb loaf tins (23 x 13 cm)":           {"23 x 13 cm loaf tin", "2"},
		"place in a greased 2 lb loaf tin":                {"2 lb loaf tin", ""},
		"in greased 9x13 pan":                             {"9x13 pan", ""},
		"put into the tin":                                {"", ""},
		"cut in 5 cm squares and put them on a lined tin": {"", ""},
	} {
		if tin, n := Tin(text); tin != want[0] || n != want[1] {
			t.Errorf("%s: %q, %q", text, tin, n)
		}
	}
}

// TestAbroad holds how the words of other languages around a figure are read.
func TestAbroad(t *testing.T) {
	for text, want := range map[string]string{
		"1 Pck. Trockenhefe": "Trockenhefe 7 g", "1 Würfel Hefe": "fresh yeast 42 g",
		"2 EL Zucker": "Zucker 2 EL", "1 tl sel": "sel 1 tsp",
		"12 cl de lait tiède": "lait tiède 12 cl",
		"1 c. à s. de kirsch": "kirsch 1 tbsp", "2 c. à café de sel": "sel 2 tsp",
		"ca 13 dl vetemjöl": "vetemjöl 13 dl", "Egg - 2 nos.": "egg 2 pieces",
		"Bread flour  2000 g   100%": "bread flour 2000 g",
		"20 amandes entières":        "amandes entières 20 pieces",
		"1 pincée de sel":            "sel 0.1 to 1 g", "3 Stück Eier": "Eier 3 pieces",
	} {
		r := Reader{Larder: larder.New()}
		lines, _, ok := r.Lines(text)
		if !ok || len(lines) != 1 || lines[0].Name+" "+lines[0].Amount != want {
			t.Errorf("%s: %v, %+v; want %q", text, ok, lines, want)
		}
	}
}
