package report

import (
	"fmt"
	"slices"
	"testing"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// TestMended lists the formulas whose mends each format prints: a text
// of many formulas has those of the worst one alone.
func TestMended(t *testing.T) {
	few, many := runOf(mostWhole), runOf(mostWhole+1)
	for _, c := range []struct {
		format string
		run    *finding.Run
		o      Options
		want   int
	}{
		{"lines", few, Options{}, 0}, {"lines", many, Options{All: true}, 0},
		{"text", few, Options{}, mostWhole}, {"text", many, Options{}, 1},
		{"text", many, Options{All: true}, mostWhole + 1},
		{"json", many, Options{}, mostWhole + 1}, {"sarif", many, Options{}, mostWhole + 1},
		{"markdown", many, Options{}, mostWhole + 1}, {"text", &finding.Run{}, Options{}, 0},
	} {
		f, ok := FormatNamed(c.format)
		if !ok {
			t.Fatal(c.format)
		}
		got := f.Mended(c.run, c.o)
		if len(got) != c.want {
			t.Errorf("%s of %d formulas, %+v: mends of %d, not %d", c.format,
				len(c.run.Formulas), c.o, len(got), c.want)
		}
		if worst := c.run.Places(); c.want == 1 && !slices.Equal(got, worst[1:2]) {
			t.Errorf("the mends of %v are printed, not those of the stop", got)
		}
	}
}

// runOf makes a run over formulas with a note each, the second with a
// stop too.
func runOf(n int) *finding.Run {
	run := &finding.Run{}
	for i := range n {
		name := fmt.Sprint("f", i)
		at := source.Place{File: source.New(name+".hcl", []byte("formula")), End: 7}
		run.Formulas = append(run.Formulas, finding.Formula{Name: name, Place: at})
		levels := []finding.Level{finding.Note}
		if i == 1 {
			levels = append(levels, finding.Stop)
		}
		for _, l := range levels {
			run.Findings = append(run.Findings, &finding.Finding{Rule: "r", Level: l,
				Answer: finding.Flagged, Formula: name, Place: at})
		}
	}
	return run
}
