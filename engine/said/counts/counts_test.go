package counts

import (
	"encoding/csv"
	"os"
	"testing"
)

// TestTable reads each row of the table of bakers' words that is a count or the weight of pieces.
func TestTable(t *testing.T) {
	file, err := os.Open("../../../testdata/tables/said.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	readers := map[string]func(string) (string, bool){
		"count": CountIn, "mass": MassIn, "sized count": SizedCount,
	}
	read := 0
	for _, r := range rows[1:] {
		reader := readers[r[0]]
		if reader == nil {
			continue
		}
		read++
		if got, _ := reader(r[1]); got != r[3] {
			t.Errorf("%s %q: %q, want %q", r[0], r[1], got, r[3])
		}
	}
	if read < 12 {
		t.Error("rows read:", read)
	}
}

// TestLed reads counts with words behind them, and leaves what holds another figure.
func TestLed(t *testing.T) {
	for text, want := range map[string]string{
		"24 doughnuts with a 3 inch cutter":        "24",
		"about 48 little pieces, roll into balls":  "48",
		"6 strands, 3 for each loaf":               "6",
		"16 balls, 8 for each loaf":                "16",
		"into 12 rounds, re-roll the scraps once":  "12",
		"20 rounds with a 7.5 cm cutter, close by": "20",
		"12 rolls in 3 rows of 4":                  "12",
		"12 buns of 50 g or 60 g":                  "",
		"12 buns, not 14":                          "",
		"12 pieces or more":                        "",
		"12 min":                                   "",
		"60 g balls, rolled":                       "",
		"12 pieces, rest 10 min":                   "",
		"12":                                       "",
		"a dozen":                                  "",
	} {
		if got, _, ok := Led(text); ok != (want != "") || ok && got != want {
			t.Errorf("%q: %q, %v", text, got, ok)
		}
	}
}

// FuzzLed gives only a number that begins the words.
func FuzzLed(f *testing.F) {
	f.Add("24 doughnuts with a 3 inch cutter")
	f.Add("6 strands, 3 for each loaf")
	f.Fuzz(func(t *testing.T, text string) {
		number, rest, ok := Led(text)
		if ok && (number == "" || rest == "" || len(number)+len(rest) > len(text)) {
			t.Errorf("%q: %q, %q", text, number, rest)
		}
	})
}
