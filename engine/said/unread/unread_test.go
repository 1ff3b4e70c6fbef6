package unread

import (
	"encoding/csv"
	"os"
	"testing"

	"forebake/engine/larder"
)

// TestAsked reads each row of the table: words that could turn the
// meaning are asked, others are told.
func TestAsked(t *testing.T) {
	file, err := os.Open("../../../testdata/tables/unread.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer file.Close()
	rows, err := csv.NewReader(file).ReadAll()
	if err != nil || len(rows) < 20 {
		t.Fatal(len(rows), err)
	}
	for _, row := range rows[1:] {
		ask := Asked
		if row[1] == "name" {
			ask = AskedOf
		}
		if got := ask(larder.New(), row[0]); got != (row[2] == "yes") {
			t.Errorf("%q beside a %s: asked is %v", row[0], row[1], got)
		}
	}
}
