package run

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"forebake/engine/files"
	"forebake/rules"
)

// A rule file found in a folder is skipped, up to a rule file's limit.
// A formula file over its own limit is refused, named or found; the
// message gives that limit.
func TestSizesOfFoundAndNamedFiles(t *testing.T) {
	const rule = "rule \"r\" {\n  on = \"dough\"\n  level = \"risk\"\n" +
		"  when = \"dough.salt_pct < 1\"\n  say = \"s\"\n  why = \"w\"\n" +
		"  source = \"common practice\"\n}\n"
	const formula = "formula \"f\" {\n  dough \"d\" { ingredients = { \"bread flour\" = \"100 " +
		"g\" } }\n}\n"
	padded := func(text string, size int) string {
		return text + strings.Repeat("# a remark that makes the file long\n", (size-len(text))/36)
	}
	for _, c := range []struct {
		name, text   string
		found, named string // the problem; "" for none, "skipped" where the file is passed over
	}{
		{"small rules", rule, "skipped", "this file holds rules"},
		{"large rules", padded(rule, 600<<10), "skipped",
			"599 KB is too large for a formula file; 256 KB is the most"},
		{"larger than any", padded(rule, 1100<<10),
			"KB is too large for a formula file; 256 KB is the most",
			"KB is too large for a formula file; 256 KB is the most"},
		{"a formula", padded(formula, 255<<10), "", ""},
		{"a large formula", padded(formula, 300<<10),
			"KB is too large for a formula file; 256 KB is the most",
			"KB is too large for a formula file; 256 KB is the most"},
		{"a large broken file", padded("formula {\n", 300<<10),
			"KB is too large for a formula file; 256 KB is the most",
			"KB is too large for a formula file; 256 KB is the most"},
		{"rules and a formula", rule + formula, "this file holds rules", "this file holds rules"},
		{"a backlog", "backlog \"2026-01-01\" {\n}\n", "skipped", "this is a backlog"},
		{"a house by another name", "house \"h\" {\n}\n", "skipped", "this is a house file"},
		{"a block of a house", "tin \"t\" {\n}\n", "tin is a block of the house file",
			"tin is a block of the house file"},
		{"nothing", "", "no formula in this file", "no formula in this file"},
	} {
		dir := t.TempDir()
		path := filepath.Join(dir, "f.hcl")
		if err := os.WriteFile(path, []byte(c.text), 0o666); err != nil {
			t.Fatal(err)
		}
		for how, want := range map[string]string{dir: c.found, path: c.named} {
			houses := &Houses{Shipped: rules.Files, Version: "0.1.0", Texts: files.Disk{}}
			res := Do(houses, Inputs([]string{how}), Options{})
			if want == "skipped" {
				want = "no formulas in this folder"
			}
			said := res.Problems.Error()
			if want == "" && said != "" || !strings.Contains(said, want) || len(res.Problems) > 1 {
				t.Errorf("%s, %s: %q, not %q", c.name, filepath.Base(how), said, want)
			}
			if unread := len(res.Problems); res.Totals.Unread != unread {
				t.Errorf(
					"%s, %s: %d are counted as not read, not %d",
					c.name,
					filepath.Base(how),
					res.Totals.Unread,
					unread,
				)
			}
		}
	}
}

// A pack larger than a formula file may be is used by its house, even
// where it is named as if it held formulas.
func TestPackIsNamedAsAFormula(t *testing.T) {
	t.Chdir(t.TempDir())
	large := "about = \"large\"\n" + strings.Repeat("# a remark that makes the file long\n", 9000)
	for name, text := range map[string]string{
		"house.hcl": "house \"h\" {\n  packs = [\"./own.hcl\"]\n}\n", "own.hcl": large,
		"f.hcl": "formula \"f\" {\n" +
			"  dough \"d\" { ingredients = { \"bread flour\" = \"100 g\" } }\n}\n",
	} {
		if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	for range 20 { // the workers race for the file
		houses := &Houses{Shipped: rules.Files, Version: "0.1.0", Texts: files.Disk{}}
		res := Do(houses, Inputs([]string{"own.hcl", "f.hcl"}), Options{Workers: 2})
		if len(res.Formulas) != 1 || len(res.Problems) != 1 ||
			!strings.Contains(
				res.Problems[0].Text,
				"own.hcl: 316 KB is too large for a formula file",
			) {
			t.Fatal(len(res.Formulas), res.Problems)
		}
	}
}
