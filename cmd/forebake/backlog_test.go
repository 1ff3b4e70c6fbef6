package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A collection of three hundred formulas is taken on with a backlog and fails no check; one new fault does; mending an old one shortens
// the list.
func TestBacklogOfACollection(t *testing.T) {
	dir := t.TempDir()
	t.Chdir(dir)
	write := func(name, text string) {
		t.Helper()
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	check := func(want int, args ...string) string {
		t.Helper()
		var out, errs bytes.Buffer
		if status := run(append([]string{"check", "--fail-at", "note"}, args...), strings.NewReader(""), &out, &errs); status != want {
			t.Fatalf("%q ends with %d, not %d: %s", args, status, want, errs.String()+out.String())
		}
		return errs.String()
	}
	formula := func(i int, salt string) string {
		return fmt.Sprintf("formula \"Old %d\" {\n  dough \"dough\" {\n    ingredients = { \"bread flour\" = \"1000 g\", \"water\" = \"600 g\", \"instant yeast\" = \"12 g\"%s }\n"+
			"    steps       = [{ mix = \"10 min\" }, { bake = \"20 min\", at = \"200 C\" }]\n  }\n}\n", i, salt)
	}
	write("house.hcl", "house \"h\" {\n  packs = [\"draft\", \"balance\"]\n}\n")
	for i := range 300 {
		write(fmt.Sprintf("old-%03d.hcl", i), formula(i, ""))
	}
	check(exitFound, ".")
	check(0, "--write-backlog", "backlog.hcl", ".")
	check(0, "--backlog", "backlog.hcl", ".")
	lines := func() int {
		text, err := os.ReadFile("backlog.hcl")
		if err != nil {
			t.Fatal(err)
		}
		return strings.Count(string(text), "{ rule = ")
	}
	all := lines()
	if all != 600 {
		t.Errorf("%d lines, not two for each formula", all)
	}

	write("old-007.hcl", formula(7, ", \"salt\" = \"40 g\"")) // one mended, one new
	check(exitFound, "--backlog", "backlog.hcl", ".")
	write("old-007.hcl", formula(7, ", \"salt\" = \"17 g\""))
	check(0, "--backlog", "backlog.hcl", ".")
	check(0, "--backlog", "backlog.hcl", "--write-backlog", "backlog.hcl", ".")
	if got := lines(); got != all-1 {
		t.Errorf("%d lines after one was mended, not %d", got, all-1)
	}
	write("new.hcl", strings.Replace(formula(0, ""), "Old 0", "New", 1))
	check(exitFound, "--backlog", "backlog.hcl", ".")
	if left, _ := filepath.Glob(".*"); len(left) > 0 {
		t.Errorf("left behind: %s", left)
	}
}
