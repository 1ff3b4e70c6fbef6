package report_test

import (
	"bytes"
	"strings"
	"testing"

	"forebake/engine/finding"
	"forebake/engine/page"
	"forebake/engine/report"
)

// The pages of mend and compare begin with the whole prelude; those of
// facts with the number of cautions.
func TestPagesBeginWithThePrelude(t *testing.T) {
	run := report.Marked()
	row := []finding.FactRow{
		{Formula: "Buns", Subject: "dough", Figure: finding.Figure{Name: "mass_g", Shown: "1 g"}},
	}
	pages := map[string]func(out *bytes.Buffer) error{
		"mend": func(out *bytes.Buffer) error {
			return page.Mend(out, run, []finding.Mending{{Formula: "THE BODY"}}, report.Options{})
		},
		"compare": func(out *bytes.Buffer) error {
			return page.Compare(
				out,
				run,
				[]finding.Comparison{{A: "THE BODY", B: "THE BODY"}},
				page.Sides{},
				report.Options{},
			)
		},
	}
	for name, print := range pages {
		var out bytes.Buffer
		if err := print(&out); err != nil {
			t.Fatal(err)
		}
		before, _, ok := strings.Cut(report.Read(t, out.String()), "THE BODY")
		if !ok {
			t.Fatalf("%s has no body: %s", name, out.String())
		}
		for _, part := range []string{"caution", "unread", "set aside", "unchecked", "loosened"} {
			for _, mark := range report.Parts[part] {
				if !strings.Contains(before, mark) {
					t.Errorf("%s: %s: no %q before the body in\n%s", name, part, mark, out.String())
				}
			}
		}
	}
	for name, print := range map[string]func(out *bytes.Buffer) error{
		"facts": func(out *bytes.Buffer) error {
			return page.FactsText(out, run, row, false, report.Options{})
		},
		"history": func(out *bytes.Buffer) error {
			return page.History(out, run, []finding.HistoryRow{{Formula: "Buns", Part: "dough"}},
				report.Options{})
		},
	} {
		var out bytes.Buffer
		if err := print(&out); err != nil ||
			!strings.HasPrefix(
				out.String(),
				"1 caution for these formulas; forebake check prints them.\n\n",
			) {
			t.Errorf("%s: %v, %s", name, err, out.String())
		}
	}
	var out bytes.Buffer
	if err := page.FactsJSON(&out, run, row); err != nil ||
		!strings.Contains(report.Read(t, out.String()),
			"text of the caution. detail of the caution") {
		t.Errorf("facts as JSON: %v, %s", err, out.String())
	}
}
