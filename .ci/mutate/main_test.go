package main

import "testing"

// A constant that has moved would end a run of the whole list at its
// line, after all before it.
func TestListNamesConstants(t *testing.T) {
	const list = "../mutations.txt"
	lines, err := read(list, "", 0)
	if err != nil {
		t.Fatal(err)
	}
	if len(lines) < 150 {
		t.Fatalf("only %d constants", len(lines))
	}
	if err := known(list, lines, "../.."); err != nil {
		t.Error(err)
	}
}
