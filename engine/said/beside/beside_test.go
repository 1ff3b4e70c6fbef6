package beside

import (
	"testing"

	"forebake/engine/larder"
)

// TestWords tells words that turn nothing, and asks those that do.
func TestWords(t *testing.T) {
	for _, r := range []struct {
		text          string
		counted       bool
		amount, words string
		ok            bool
	}{
		{"1/4 pint, blood heat", false, "1/4 pint", "blood heat", true},
		{"5 cups, spooned and leveled", false, "5 cups", "spooned and leveled", true},
		{"30 g en dés", false, "30 g", "en dés", true},
		{"2, beaten stiff", true, "2", "beaten stiff", true},
		{"2, beaten stiff", false, "", "", false},
		{"1 bunch", true, "", "", false},
		{"2 % of the dough", false, "", "", false},
		{"200 g of milk", false, "200 g", "of milk", false},
		{"200 g, not more", false, "200 g", "not more", false},
		{"200 g peeled weight", false, "200 g", "peeled weight", false},
		{"100 g, dried", false, "100 g", "dried", false},
		{"100 g each", false, "100 g", "each", false},
		{"1 cup, 2 at most", false, "1 cup", "2 at most", false},
		{"2 tbsp hot", false, "2 tbsp", "hot", false},
	} {
		amount, words, ok := Words(larder.New(), r.text, r.counted)
		if amount != r.amount || words != r.words || ok != r.ok {
			t.Errorf("%q: %q, %q, %v", r.text, amount, words, ok)
		}
	}
}

// TestOthers reads amounts that are reckoned from two figures.
func TestOthers(t *testing.T) {
	for _, r := range []struct {
		read       func(string) (string, bool)
		text, want string
	}{
		{Pieces, "48 pieces of 5 g", "240 g"}, {Pieces, "2 sticks of 4 oz each", "8 oz"},
		{Pieces, "32 pieces, 5 g each", "160 g"}, {Pieces, "32, 5 g", ""},
		{Envelopes, "2 envelopes (16 g)", "16 g"}, {Envelopes, "2 packets (7 g)", "14 g"},
		{Envelopes, "2 packets (50 g)", ""}, {Envelopes, "3 packets (40 g)", ""},
		{ShellEggs, "2 x 59 g eggs", "2 pieces"}, {ShellEggs, "2 x 59 g", ""},
		{OpenedPods, "1, split and scraped", "1 pieces"}, {OpenedPods, "1, ground", ""},
		{Pieces, "48 pieces", ""}, {Pieces, "0 pieces of 5 g", ""},
		{Needed, "as needed, about 1/4 cup", "about 1/4 cup"}, {Needed, "as needed", ""},
		{Needed, "q.b. (50 g)", "50 g"},
		{Less, "1 cup minus 1 tbsp", "221.8 ml"}, {Less, "100 g less 10 g", "90 g"},
		{Less, "1 cup minus 10 g", ""}, {Less, "1 tbsp minus 1 cup", ""},
		{Level, "1 tsp without top", "1 tsp"}, {Level, "2 g, struck", ""},
		{UpTo, "1/2 cup plus up to 1 tbsp more if needed", "118.3 to 133.1 ml"},
		{UpTo, "1/2 cup plus up to 10 g", ""}, {More, "2 Tbsp, more if too thick", "2 Tbsp"},
		{More, "2 Tbsp or 3 if too thick", ""}, {Heaped, "scant 1/2 cup", "0.425 to 0.475 cup"},
		{Heaped, "1/2 cup", ""},
		{Cubic, "150 cc", "150 ml"}, {Cubic, "2 cc", ""},
	} {
		if got, ok := r.read(r.text); ok != (r.want != "") || ok && got != r.want {
			t.Errorf("%q: %q, want %q", r.text, got, r.want)
		}
	}
}

// TestZestOf reads the fruits of a zest, one kind or two.
func TestZestOf(t *testing.T) {
	first, more, ok := ZestOf("1 orange and 2 lemons")
	if !ok || first != (Fruit{"1", "orange"}) || more != (Fruit{"2", "lemon"}) {
		t.Error(first, more, ok)
	}
	if first, more, ok = ZestOf("1/2 Lime"); !ok || first != (Fruit{"1/2", "lime"}) ||
		more != (Fruit{}) {
		t.Error(first, more, ok)
	}
	for _, text := range []string{"1 orange or 1 lemon", "1 apple", "10 g"} {
		if _, _, ok := ZestOf(text); ok {
			t.Error(text)
		}
	}
}

// TestEachOf writes a number of pieces with their weight as one text.
func TestMade(t *testing.T) {
	for text, want := range map[string]string{
		"a dozen": "12 pieces", "about 3 dozen": "36 pieces", "2 dozen rolls": "24 rolls",
		"half a dozen": "6 pieces", "28 buns at 85 g": "28 buns of 85 g",
		"16 at 58 g":             "16 pieces of 58 g",
		"20 cornetti, 70 g each": "20 cornetti of 70 g",
		"2 stollen, about 900 g each with the marzipan":         "2 stollen of 900 g",
		"24 rolls, about 1 1/2 oz each":                         "24 rolls of 1 1/2 oz",
		"2 loaves of about 565 g":                               "2 loaves of 565 g",
		"20 Stück à 45 g":                                       "20 Stück of 45 g",
		"20 x 50 g":                                             "20 pieces of 50 g",
		"14 buns scaled at 85 g":                                "14 buns of 85 g",
		"18-20 rolls":                                           "18 to 20 rolls",
		"one 12-cup Bundt, serves 10":                           "1 12-cup Bundt",
		"10 buns of about 55 g dough plus 35 g bean paste":      "10 buns of 55 g",
		"16 buns, about 60 g dough each, with 20 g custard":     "16 buns of 60 g",
		"12, in a 23 cm springform (9 around, 3 in the middle)": "12 pieces",
		"15, in a roasting tin (5 rows of 3)":                   "15 pieces",
		"9 buns, in a 23 cm square tin":                         "9 buns",
		"12 rolls in a 9x13 pan (3 across, 4 down)":             "12 rolls",
		// these say no weight of a piece
		"1 loaf (450 g tin)":                 "1 loaf (450 g tin)",
		"12 buns, dough 45 g, filling 35 g":  "12 buns, dough 45 g, filling 35 g",
		"1 cake, 23 cm square, cuts into 16": "1 cake, 23 cm square, cuts into 16",
		"2 loaves of 450 g":                  "2 loaves of 450 g",
		"24 pieces":                          "24 pieces",
		"1.8 kg":                             "1.8 kg",
		"1 rosca for 12 people":              "1 rosca for 12 people",
		"dozens of them":                     "dozens of them",
	} {
		if got := Made(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

func TestEachOf(t *testing.T) {
	for text, want := range map[string]string{"10, about 95 g each": "10 pieces of 95 g",
		"10 at 95g": "10 pieces of 95g", "95 g": "95 g", "10": "10",
		"16 pieces (55 g)":                        "16 pieces of 55 g",
		"16 pieces (about 60 g), roll into balls": "16 pieces of 60 g",
		"15 pieces, 55-60 g":                      "15 pieces of 55-60 g",
		"2 equal loaves of 450 g":                 "2 pieces of 450 g",
		"10 x 55 g":                               "10 pieces of 55 g",
		"10x55g":                                  "10 pieces of 55g",
		"12 balls (35 g) or 40":                   "12 balls (35 g) or 40",
		"12 balls (35 g), not 40":                 "12 balls (35 g), not 40",
		"12 balls (35 g), no less":                "12 balls (35 g), no less",
		"2 cups 95 g":                             "2 cups 95 g"} {
		if got := EachOf(text); got != want {
			t.Errorf("%q: %q", text, got)
		}
	}
}
