package main

import (
	"bytes"
	"os"
	"strings"
	"testing"
)

// Where mend --write cannot print its report, it ends with 2, as its
// help says, and changes nothing.
func TestMendWritesNothingUnprinted(t *testing.T) {
	text, err := os.ReadFile("../../formulas/second-draft.hcl")
	if err != nil {
		t.Fatal(err)
	}
	house, err := os.ReadFile("../../formulas/house.hcl")
	if err != nil {
		t.Fatal(err)
	}
	t.Chdir(t.TempDir())
	writeFile(t, "house.hcl", string(house))
	writeFile(t, "b.hcl", string(text))
	full, err := os.OpenFile("/dev/full", os.O_WRONLY, 0)
	if err != nil {
		t.Skip(err)
	}
	defer full.Close()
	var errs bytes.Buffer
	for _, args := range [][]string{
		{"mend", "--write", "b.hcl"}, {"scale", "--pieces", "40", "--write", "b.hcl"},
	} {
		errs.Reset()
		if status := run(args, strings.NewReader(""), full, &errs); status != exitUnused ||
			!strings.Contains(errs.String(), "no space left") {
			t.Errorf("%s: status %d: %s", args[0], status, errs.String())
		}
	}
	if now, err := os.ReadFile("b.hcl"); err != nil || !bytes.Equal(now, text) {
		t.Errorf("the file is changed, though nothing could be said of it (%v)", err)
	}
}
