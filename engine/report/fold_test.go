package report

import (
	"encoding/json"
	"fmt"
	"strings"
	"testing"

	"forebake/engine/finding"
	"forebake/engine/layout"
	"forebake/engine/source"
)

// largeRun is a run over many formulas, with cautions and findings of
// every kind.
func largeRun(formulas, each int) *finding.Run {
	run := &finding.Run{Version: "0.1.0"}
	for i := range formulas {
		file := source.New(fmt.Sprintf("f%05d.hcl", i), []byte("formula \"a formula\" {\n}\n"))
		at := source.Place{File: file, Start: 8, End: 14}
		name := fmt.Sprintf("Formula %d", i)
		run.Formulas = append(run.Formulas, finding.Formula{Name: name, Place: at})
		for _, kind := range []string{"raw-dough", "raw-egg"} {
			run.Cautions = append(
				run.Cautions,
				&finding.Caution{
					Kind:    kind,
					Text:    "Whole text of " + kind + ".",
					Detail:  "It differs: " + name,
					Source:  "a source",
					Formula: name,
					Place:   at,
					Short:   "Thing: danger and what to do.",
				},
			)
		}
		for k := range each {
			f := &finding.Finding{
				Rule:    fmt.Sprintf("rule-%d", k%7),
				Level:   finding.Level(k % 3),
				Answer:  finding.Flagged,
				Formula: name,
				Subject: "dough",
				Place:   at,
				Text:    "What is wrong and what to do about it.",
				Why:     "A reason of some length.",
				Source:  "a book",
			}
			if k%4 == 3 {
				f.Answer, f.Reason = finding.Unsure, "needs a figure"
			}
			run.Findings = append(run.Findings, f)
			run.Totals.Count(f)
		}
	}
	run.Totals.Formulas = formulas
	return run
}

// A log stays under code-review sites' limit, drops the least serious
// first, and says what it dropped.
func TestSARIFIsFolded(t *testing.T) {
	for _, size := range [][2]int{{10, 5}, {4000, 9}, {12000, 3}} {
		run := largeRun(size[0], size[1])
		var log struct {
			Runs []struct {
				Properties  struct{ Cautions []any }
				Invocations []struct {
					ToolExecutionNotifications []struct{ Message struct{ Text string } }
				}
				Results []struct{ RuleID, Level string }
			}
		}
		format, _ := FormatNamed("sarif")
		text := inFormat(t, format, run)
		if err := json.Unmarshal([]byte(text), &log); err != nil {
			t.Fatal(err)
		}
		one, stops, cautions := log.Runs[0], 0, 0
		for _, r := range one.Results {
			switch {
			case r.RuleID == sarifCaution:
				cautions++
			case r.Level == "error":
				stops++
			}
		}
		says := fmt.Sprint(one.Invocations)
		others := len(one.Results) - cautions - stops // a stop goes last
		whole := size[0] < 1000
		merged := strings.Contains(says, "stand as one")
		if len(one.Results) > maxResults || len(text) > maxLog ||
			whole && stops != run.Totals.Stop ||
			!merged && (len(one.Properties.Cautions) != len(run.Cautions) || cautions != size[0]) ||
			merged && (len(one.Properties.Cautions) != 2 || cautions != 1) {
			t.Errorf(
				"%v: %d results, %d of %d stops, %d cautions",
				size,
				len(one.Results),
				stops,
				run.Totals.Stop,
				cautions,
			)
		}
		if !whole && stops < run.Totals.Stop && others > 0 {
			t.Errorf("%v: stops were left out, and %d others not", size, others)
		}
		if whole != !strings.Contains(says, "left out of the results") {
			t.Errorf("%v: %s", size, says)
		}
	}
}

// A page stays under a comment's limit, keeps every caution, and says
// what it folded.
func TestMarkdownIsFolded(t *testing.T) {
	for _, size := range [][2]int{{3, 5}, {40, 20}, {300, 10}, {5000, 4}} {
		format, _ := FormatNamed("markdown")
		text := inFormat(t, format, largeRun(size[0], size[1]))
		if len(text) > maxMarkdown {
			t.Errorf("%v: %d bytes", size, len(text))
		}
		for _, kind := range []string{"raw-dough", "raw-egg"} {
			if !strings.Contains(read(t, text), "Whole text of "+kind) {
				t.Errorf("%v: no caution %s", size, kind)
			}
		}
		if folded := strings.Contains(text, "Folded to fit a comment"); folded != (size[0] > 3) {
			t.Errorf("%v: folded %v", size, folded)
		}
	}
}

// Text for a person keeps its width, unless one word is wider.
func TestTextKeepsItsWidth(t *testing.T) {
	format, _ := FormatNamed("text")
	for _, width := range []int{40, 60, 80, 120} {
		var out strings.Builder
		if err := Write(&out, format, largeRun(12, 9), Options{Width: width}); err != nil {
			t.Fatal(err)
		}
		for _, line := range strings.Split(out.String(), "\n") {
			if layout.Columns(line) > width {
				t.Errorf("%d columns: %q", width, line)
			}
		}
	}
}
