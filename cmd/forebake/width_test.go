package main

import (
	"regexp"
	"strconv"
	"strings"
	"testing"
	"unicode/utf8"
)

// quoted is a line of a formula file that mend or compare
// prints unchanged.
var quoted = regexp.MustCompile(`^ +(\d+ [-+]|[AB] +\d+ ) `)

// TestWidth holds that every verb keeps to the terminal's columns on
// the demo formulas: a wider line is one word, or a line of a file.
func TestWidth(t *testing.T) {
	t.Chdir("../..")
	t.Setenv("NO_COLOR", "1")
	for _, columns := range []int{80, 60} {
		t.Setenv("COLUMNS", strconv.Itoa(columns))
		for _, line := range []string{
			"check formulas", "check --all formulas", "check formulas/first-draft.hcl",
			"check --as text formulas/school", "cautions formulas", "mend formulas",
			"mend --taste formulas/first-draft.hcl",
			"facts formulas", "facts --all formulas/almond-danish.hcl", "facts --list",
			"facts --history formulas", "why salt-high", "why live-dough-note", "packs",
			"compare formulas/first-draft.hcl formulas/second-draft.hcl", "trial",
			"trial hygiene yeast",
			"--help", "check --help", "mend --help", "facts --help", "trial --help",
			"compare --help",
		} {
			printed := printedBy(line)
			if len(printed) < 40 {
				t.Errorf("%s prints %q", line, printed)
			}
			faults := 0
			for _, row := range strings.Split(printed, "\n") {
				if utf8.RuneCountInString(row) <= columns || quoted.MatchString(row) ||
					!strings.Contains(strings.TrimSpace(row), " ") {
					continue
				}
				if faults++; faults <= 3 {
					t.Errorf("%s at %d columns: a line of %d: %q", line, columns,
						utf8.RuneCountInString(row), row)
				}
			}
		}
	}
}
