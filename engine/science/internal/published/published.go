// Package published reads the tables of testdata/tables, which hold
// what the science is tested against. Tests alone import it.
package published

import (
	"encoding/csv"
	"io/fs"
	"strconv"
	"testing"
)

// Folder is where the tables stand, from the folder of a package
// in engine/science.
const Folder = "../../../testdata/tables"

// In gives a reader of the tables in a folder: the rows of a table by
// column name.
func In(folder fs.FS) func(t *testing.T, name string) []map[string]string {
	return func(t *testing.T, name string) []map[string]string {
		t.Helper()
		return rows(t, folder, name)
	}
}

func rows(t *testing.T, folder fs.FS, name string) []map[string]string {
	t.Helper()
	f, err := folder.Open(name)
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	r := csv.NewReader(f)
	r.Comment = '#'
	lines, err := r.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	var rows []map[string]string
	for _, line := range lines[1:] {
		row := map[string]string{}
		for i, column := range lines[0] {
			row[column] = line[i]
		}
		rows = append(rows, row)
	}
	return rows
}

// Number reads a figure of a table.
func Number(t *testing.T, text string) float64 {
	t.Helper()
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		t.Fatal(err)
	}
	return x
}
