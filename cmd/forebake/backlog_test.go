package main

import (
	"bytes"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

// A collection of three hundred formulas with a backlog fails no check;
// one new fault does; mending an old one shortens the list.
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
		status := run(append([]string{"check", "--fail-at", "note"}, args...),
			strings.NewReader(""), &out, &errs)
		if status != want {
			t.Fatalf("%q ends with %d, not %d: %s", args, status, want, errs.String()+out.String())
		}
		return errs.String()
	}
	formula := func(i int, salt string) string {
		return fmt.Sprintf(
			"formula \"Old %d\" {\n  makes = \"2 loaves\"\n  dough \"dough\" {\n"+
				"    ingredients = { \"bread flour\" = \"1000 g\", \"water\" = \"600 g\", "+
				"\"sugar\" = \"700 g\", \"instant yeast\" = \"12 g\"%s }\n"+
				"    steps       = [{ mix = \"10 min\" }, "+
				"{ bake = \"20 min\", at = \"200 C\" }]\n  }\n}\n",
			i,
			salt,
		)
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

// A list too long to be read again is not written; the old one stays.
func TestBacklogTooLong(t *testing.T) {
	const old = "backlog \"2026-01-01\" {\n}\n"
	dir := folder(
		t,
		map[string]string{
			"backlog.hcl": old,
			"house.hcl":   "house \"h\" {\n  packs = [\"./all.hcl\"]\n}\n",
			"all.hcl": "rule \"all\" {\n  on = \"part\"\n  level = \"note\"\n" +
				"  when = \"part.mass_g >= 0\"\n  say = \"s\"\n" +
				"  why = \"w\"\n  source = \"s\"\n}\n",
		},
	)
	for i := range 110 {
		var b strings.Builder
		for k := range 40 {
			fmt.Fprintf(
				&b,
				"formula \"%s %d %d\" {\n"+
					"  dough \"%s\" { ingredients = { \"water\" = \"1 g\" } }\n}\n",
				strings.Repeat("n", 60),
				i,
				k,
				strings.Repeat("d", 200),
			)
		}
		err := os.WriteFile(filepath.Join(dir, fmt.Sprintf("f%d.hcl", i)),
			[]byte(b.String()), 0o666)
		if err != nil {
			t.Fatal(err)
		}
	}
	var out, errs bytes.Buffer
	status := run([]string{"check", "--write-backlog", "backlog.hcl", "."}, strings.NewReader(""),
		&out, &errs)
	if status != exitUnused ||
		!strings.Contains(errs.String(), "one for each folder") {
		t.Errorf("status %d: %s", status, errs.String())
	}
	if text, err := os.ReadFile("backlog.hcl"); string(text) != old {
		t.Errorf("the old list holds %.40q, %v", text, err)
	}
}
