// Package published reads the tables of testdata/tables, which hold what the science is tested
// against. Tests alone import it.
package published

import (
	"encoding/csv"
	"os"
	"path/filepath"
	"strconv"
	"testing"
)

// Rows gives the rows of a table by column name, to the test of a package in engine/science.
func Rows(t *testing.T, name string) []map[string]string {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "..", "testdata", "tables", name))
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
