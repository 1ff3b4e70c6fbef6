package tins

import (
	"encoding/csv"
	"os"
	"testing"
)

// TestNamesOfTins reads each tin of the table of bakers' words.
func TestNamesOfTins(t *testing.T) {
	file, err := os.Open("../../../testdata/tables/said.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	found := 0
	for _, r := range rows {
		if r[0] != "tin" {
			continue
		}
		found++
		got := ""
		if tin, ok := Size(r[1]); ok {
			got = tin.Text()
		}
		if got != r[3] {
			t.Errorf("%q: %q, want %q", r[1], got, r[3])
		}
	}
	if found < 5 {
		t.Errorf("%d tins in the table", found)
	}
}

// TestFlat holds which words name a tray that gives no shape.
func TestFlat(t *testing.T) {
	for text, want := range map[string]bool{
		"2 lined baking trays, 5 cm apart": true, "greased baking sheets": true,
		"2 greased half sheet pans": true, "lined trays": true, "Backblech": true,
		"tray 40 x 30 cm": false, "9x13 inch baking pan": false, "loaf tin": false,
		"5 x 6 on a lined tray, nearly touching": true, "3 by 4 to a sheet": true,
		"muffin tray": false, "Bundt pan": false,
	} {
		if Flat(text) != want {
			t.Errorf("%q: %v", text, !want)
		}
	}
	if Named("round, and tray up 4 x 7, nearly touching") || !Named("two 8x4 loaf tins") {
		t.Error("how buns are set out is no tin")
	}
}

// TestSeveral holds how many tins words name, with words of preparation or none.
func TestSeveral(t *testing.T) {
	for _, test := range []struct {
		text, name string
		n          float64
	}{
		{"2 x 2lb loaf tins", "2lb loaf tin", 2},
		{"in two greased 9 inch round cake pans", "9 inch round cake pan", 2},
		{"two 8.5 x 4.5 inch loaf pans, buttered", "8.5 x 4.5 inch loaf pan", 2},
		{"two well greased loaf tins", "loaf tin", 2},
		{"two 9x5 inch loaf pans, 8 balls in each", "9x5 inch loaf pan", 2},
		{"two buttered 9 x 9 inch pans, 6 rolls each", "9 x 9 inch pan", 2},
		{"2 x 20 cm cake tins, 7 buns per tin", "20 cm cake tin", 2},
		{"into the long tin", "the long tin", 0},
		{"9 inch square pan", "9 inch square pan", 0},
		{"9 x 13 x 2 in. pan, buttered", "9 x 13 x 2 in. pan, buttered", 0},
		{"2 x 9 x 5 inch loaf tins", "9 x 5 inch loaf tin", 2},
	} {
		if n, name := Several(test.text); n != test.n || name != test.name {
			t.Errorf("%q: %v of %q", test.text, n, name)
		}
	}
}

// TestBare takes the words off a tin's name by which it is made ready, and leaves a house's own.
func TestBare(t *testing.T) {
	own := []string{"greased ring"}
	for text, want := range map[string]string{
		"greased 9x13 pan": "9x13 pan", "9x13 pan, greased": "9x13 pan",
		"buttered fluted brioche moulds":   "fluted brioche moulds",
		"10 cup bundt pan, buttered well":  "10 cup bundt pan",
		"2 lb loaf tin, greased and lined": "2 lb loaf tin", "Greased ring": "Greased ring",
		"12-hole muffin tin, buttered and sugared": "12-hole muffin tin",
		"well-buttered, floured kugelhopf tin":     "kugelhopf tin", "greased": "greased",
		"loaf tin, lined, 30 x 11 x 8 cm": "loaf tin, lined, 30 x 11 x 8 cm",
	} {
		if got := Bare(text, own); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
	for text, want := range map[string]string{
		"buttered brioche moulds": "buttered moulds", "almond rings": "almond rings",
		"brioche crumbs": "brioche crumbs",
	} {
		if got := Foodless(text); got != want {
			t.Errorf("%q: %q, want %q", text, got, want)
		}
	}
}
