package main

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// noFormulas are files of testdata/published with worked examples and
// units, and nothing to bake.
var noFormulas = []string{
	"osmotic.hcl",
	"trade.hcl",
	"units.hcl",
	"water-activity.hcl",
	"worked-examples.hcl",
}

func publishedFormulas(t *testing.T) []string {
	t.Helper()
	var out []string
	for _, pattern := range []string{"*.hcl", "formulas/*.hcl"} {
		paths, err := filepath.Glob(filepath.Join("../../testdata/published", pattern))
		if err != nil {
			t.Fatal(err)
		}
		out = append(out, paths...)
	}
	out = slices.DeleteFunc(
		out,
		func(path string) bool { return slices.Contains(noFormulas, filepath.Base(path)) },
	)
	if len(out) < 40 {
		t.Fatalf("%d published formulas; 40 are the least", len(out))
	}
	return out
}

var basisNamed = regexp.MustCompile(`\((read|quoted|memory)\)`)

// TestPublishedNamed holds that each published formula says at its top
// where it was published, and how that is known.
func TestPublishedNamed(t *testing.T) {
	for _, path := range publishedFormulas(t) {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		head, _, _ := strings.Cut(string(text), "\nformula ")
		if !strings.HasPrefix(head, "# ") || !basisNamed.MatchString(head) {
			t.Errorf("%s: no source with its basis at the top", path)
		}
	}
}

// TestPublishedTrust counts the findings on formulas that bake well:
// no stop, at most half a risk and three findings a formula. Open
// answers are counted apart: many of these recipes leave temperatures
// to the baker.
func TestPublishedTrust(t *testing.T) {
	paths := publishedFormulas(t)
	var out, errs bytes.Buffer
	run(append([]string{"check", "--as", "json"}, paths...), strings.NewReader(""), &out, &errs)
	var report struct {
		Findings []struct{ Rule, Level, Answer, Subject, File string }
		Totals   struct{ Formulas int }
	}
	if err := json.Unmarshal(out.Bytes(), &report); err != nil {
		t.Fatalf("%v: %s", err, errs.String())
	}
	if report.Totals.Formulas != len(paths) {
		t.Errorf(
			"%d of %d formulas are judged: %s",
			report.Totals.Formulas,
			len(paths),
			errs.String(),
		)
	}
	count := map[string]int{}
	for _, f := range report.Findings {
		switch {
		case f.Answer == "assumed": // one line of a report tells of all
		case f.Answer != "flagged":
			count["unsure"]++
		case f.Level == "stop":
			t.Errorf("%s: stop %s, %s", f.File, f.Rule, f.Subject)
			count["stop"]++
		default:
			count[f.Level]++
		}
	}
	n := float64(max(1, report.Totals.Formulas))
	risks, all := float64(count["risk"])/n, float64(count["stop"]+count["risk"]+count["note"])/n
	t.Logf(
		"%d formulas: %d stops, %.1f risks, %.1f notes a formula, %.1f findings in all; %.1f "+
			"open answers",
		report.Totals.Formulas,
		count["stop"],
		risks,
		float64(count["note"])/n,
		all,
		float64(count["unsure"])/n,
	)
	if risks > 0.5 || all > 3 {
		t.Errorf("%.1f risks and %.1f findings a formula; 0.5 and 3 are the most", risks, all)
	}
}
