package behind

import (
	"slices"
	"testing"

	"forebake/engine/larder"
	"forebake/engine/said"
)

// TestRead reads words behind an amount, tells those from which nothing is reckoned, and leaves
// those that could turn it.
func TestRead(t *testing.T) {
	l := larder.New()
	for _, r := range []struct {
		name, text, amount, item, warm string
		untold                         []string
	}{
		{"russet potatoes", "8 oz, boiled, riced and cooled", "8 oz", "boiled potato", "", nil},
		{"water", "190 ml, cool", "190 ml", "", "10 C to 20 C", nil},
		{"salted butter", "220 g, cold, bashed flat", "220 g", "", "2 C to 8 C",
			[]string{"bashed flat"}},
		{"butter", "80 g, melted in the milk", "80 g", "", "32 C to 45 C", nil},
		{"dry butter 84%", "250 g, beaten to a 20 cm square, pliable", "250 g", "",
			"10 C to 16 C", []string{"beaten to a 20 cm square"}},
		{"onion", "1, fried until soft", "1", "cooked onion", "", nil},
		{"raw milk", "300 ml, boiled", "300 ml", "", "", []string{"boiled"}},
		{"raw chicken", "500 g, braised", "500 g", "", "", []string{"braised"}},
		{"butter", "50 g, melted and still hot", "50 g", "", "50 C to 95 C", nil},
		{"potato", "2 medium, boiled and mashed", "2", "", "", nil},
		{"egg yolk", "2, beaten with the milk", "2", "", "", nil},
		// asked: another food, another kind, another amount, a denial
		{"egg yolk", "2, beaten with the cream", "", "", "", nil},
		{"sugar", "100 g, half of it brown", "", "", "", nil},
		{"butter", "80 g, not melted", "", "", "", nil},
		{"salt", "10 g, smoked", "", "", "", nil},
		{"flour", "200 g, 2 eggs", "", "", "", nil},
		{"honey", "50 g, or sugar", "", "", "", nil},
		{"water", "2 % of the dough", "", "", "", nil},
	} {
		it, _, _ := l.Described(r.name)
		s, ok := Read(l, it, r.name, r.text, []string{"whole milk", r.name}, it.Piece > 0)
		item := ""
		if s.Item != nil {
			item = s.Item.Name
		}
		if ok != (r.amount != "") || ok && (s.Amount != r.amount || item != r.item ||
			!slices.Equal(s.Untold, r.untold)) {
			t.Errorf("%s, %q: %+v %q %v", r.name, r.text, s, item, ok)
		}
		if warm := said.WarmthOf(it, s.Words); ok && warm != r.warm && s.Temp != r.warm {
			t.Errorf("%s, %q: %q and %q", r.name, r.text, warm, s.Temp)
		}
	}
}

// TestShared counts the share of an amount that is for the dough.
func TestShared(t *testing.T) {
	for text, want := range map[string]string{
		"1, beaten (half for the dough, half to glaze)":   "0.5 pieces, beaten",
		"2 (half for the glaze, the rest for the dough)":  "1 pieces",
		"60 g, a third to glaze, the rest into the dough": "40 g",
		"1 egg": "", "1, half to glaze": "", "200 g (half rye, half wheat)": "",
	} {
		if got, _, ok := Shared(text); got != want || ok != (want != "") {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// TestWeighing takes the weight of one thing for its amount.
func TestWeighing(t *testing.T) {
	for text, want := range map[string]string{
		"1 large, about 250 g, boiled": "250 g, boiled", "one (about 180 g)": "180 g",
		"2, about 100 g": "", "1 cup, about 120 g": "120 g", "250 g": "",
	} {
		if got, ok := Weighing(text); got != want || ok != (want != "") {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// TestInFigures writes the number of an amount in figures.
func TestInFigures(t *testing.T) {
	for text, want := range map[string]string{
		"from one orange": "from 1 orange", "two large": "2 large", "One": "1",
		"zest of two lemons": "zest of 2 lemons", "onerous": "onerous", "100 g": "100 g",
	} {
		if got := InFigures(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}

// FuzzRead holds that no words crash the reader, and that what is read is the amount before them.
func FuzzRead(f *testing.F) {
	for _, text := range []string{"220 g, cold, bashed flat", "1, beaten (half for the dough, " +
		"half to glaze)", "8 oz, boiled, riced and cooled", "1 large, about 250 g", "2 % of it"} {
		f.Add(text)
	}
	l := larder.New()
	it, _ := l.Find("raw milk")
	f.Fuzz(func(t *testing.T, text string) {
		s, ok := Read(l, it, "raw milk", text, nil, true)
		if ok && s.Amount == "" {
			t.Errorf("%q: read without an amount", text)
		}
		if ok && s.Item != nil && s.Item.Control != larder.ControlRawMilk {
			t.Errorf("%q: words alone made raw milk %s", text, s.Item.Name)
		}
		Shared(text)
		Weighing(text)
		InFigures(text)
	})
}
