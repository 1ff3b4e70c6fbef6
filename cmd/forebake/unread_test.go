package main

import (
	"bytes"
	"encoding/json"
	"os"
	"strings"
	"testing"

	"forebake/engine/report"
)

// An unreadable file is in every saved report, beside others and
// alone; an older report does not stay. A report on the screen says so
// too, except in a format read beside standard error where nothing
// else was read.
func TestUnreadStandsInEveryReport(t *testing.T) {
	for _, c := range []struct {
		name  string
		paths []string
		alone bool
		says  []string
	}{
		{"beside a sound file", []string{"a.hcl", "broken.hcl"}, false,
			[]string{"broken.hcl", "has no unit", "1 not read"}},
		{"alone", []string{"broken.hcl"}, true,
			[]string{"broken.hcl", "has no unit", "1 not read"}},
		{"not there", []string{"a.hcl", "nowhere.hcl"}, false,
			[]string{"nowhere.hcl: no such file or folder", "1 not read"}},
		{"in a broken house", []string{"school/b.hcl", "school/c.hcl"}, true,
			[]string{"school/house.hcl", "2 not read"}},
		{"a folder without formulas", []string{"empty", "a.hcl"}, false,
			[]string{"no formulas in this folder", "1 not read"}},
		{"a folder of rules", []string{"rules", "a.hcl"}, false,
			[]string{"rules: no formulas in this folder", "1 not read"}},
	} {
		for _, f := range report.Formats {
			t.Run(c.name+"/"+f.Name, func(t *testing.T) {
				folder(t, map[string]string{
					"a.hcl": cautious, "broken.hcl": "formula \"b\" {\n  dough \"d\" { " +
						"ingredients = { \"bread flour\" = 12 } }\n}\n",
					"school/house.hcl": "house \"h\" {\n  kitchem {}\n}\n",
					"school/b.hcl":     cautious, "school/c.hcl": cautious, "empty/notes.txt": "",
					"rules/c.hcl": ownSafety,
				})
				var out, errs bytes.Buffer
				run(
					[]string{"check", "--as", f.Name + ":out", "a.hcl"},
					strings.NewReader(""),
					&out,
					&errs,
				) // an old report
				out.Reset()
				errs.Reset()
				status := run(
					append([]string{"check", "--as", f.Name, "--as", f.Name + ":out"}, c.paths...),
					strings.NewReader(""),
					&out,
					&errs,
				)
				if status != exitUnused || errs.Len() == 0 {
					t.Errorf("status %d, %s", status, errs.String())
				}
				saved, err := os.ReadFile("out")
				if err != nil {
					t.Fatal(err)
				}
				screen := out.String()
				if c.alone && !f.Document {
					if screen != "" {
						t.Errorf("on the screen: %s", screen)
					}
					screen = string(saved)
				}
				for where, printed := range map[string]string{
					"saved":         string(saved),
					"on the screen": screen,
				} {
					words := strings.Join(
						strings.Fields(strings.NewReplacer(`\_`, "_").Replace(printed)),
						" ",
					)
					for _, part := range c.says {
						if n, ok := strings.CutSuffix(part, " not read"); ok &&
							strings.HasPrefix(printed, "{") {
							part = `"unread": ` + n
						}
						if !strings.Contains(words, part) {
							t.Errorf("%s: no %q in\n%s", where, part, printed)
						}
					}
				}
				switch f.Name {
				case "sarif":
					if r := readSARIF(t, string(saved)); r.Invocations[0].ExecutionSuccessful {
						t.Error("the log says that the run is whole")
					}
				case "json":
					d := json.NewDecoder(bytes.NewReader(saved))
					d.UseNumber()
					var v any
					if err := d.Decode(&v); err != nil {
						t.Fatal(err)
					}
					if faults := schemas["check"].check("", v); len(faults) > 0 {
						t.Error(faults)
					}
				}
			})
		}
	}
}
