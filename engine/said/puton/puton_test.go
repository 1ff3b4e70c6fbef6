package puton

import (
	"encoding/csv"
	"os"
	"strings"
	"testing"

	"forebake/engine/larder"
	_ "forebake/engine/seed"
)

// TestOf reads each row of the table; no things means that the words
// are asked.
func TestOf(t *testing.T) {
	file, err := os.Open("../../../testdata/tables/puton.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil || len(rows) < 20 {
		t.Fatal(len(rows), err)
	}
	for _, row := range rows[1:] {
		things, notRead := Of(larder.New(), row[0], "")
		if got := Words(things); got != row[1] {
			t.Errorf("%q is read as %q, want %q", row[0], got, row[1])
		}
		if got := strings.Join(notRead, "; "); got != row[2] {
			t.Errorf("%q leaves %q, want %q", row[0], got, row[2])
		}
	}
}

// Nothing that is written is dropped: each word of what reads stands in
// a thing, in what is told, or is a number, a unit or a joining word.
func FuzzOf(f *testing.F) {
	f.Add("1 egg beaten with 1 tsp water")
	f.Add("butter, then sugar or not")
	l := larder.New()
	f.Fuzz(func(t *testing.T, words string) {
		things, notRead := Of(l, words, "")
		for _, word := range []string{"not", "without", "instead", "unless"} {
			padded := " " + strings.Join(strings.Fields(strings.ToLower(words)), " ") + " "
			if len(things) > 0 && strings.Contains(padded, " "+word+" ") {
				t.Errorf("%q is read as %s and %q", words, Words(things), notRead)
			}
		}
	})
}
