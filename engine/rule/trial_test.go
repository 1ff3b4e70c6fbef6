package rule

import (
	"strings"
	"testing"

	"forebake/engine/source"
)

// The second judge is asked on every shipped trial, and the two agree.
func TestShippedTrialsAreJudgedTwice(t *testing.T) {
	rep := RunTrials(shippedPacks())
	for _, v := range rep.Verdicts {
		if v.Differ != "" {
			t.Errorf("%s: %s %s", v.Trial.Place, v.Trial.Title(), v.Differ)
		}
	}
	t.Logf("%d trials, %d points", len(rep.Verdicts), rep.Points)
	if rep.Points < 2*len(rep.Verdicts) {
		t.Errorf("only %d points for %d trials", rep.Points, len(rep.Verdicts))
	}
}

// A rule that the expression library's checker refuses fails its
// trials, whatever the judge says.
func TestRefusedByTheLibraryFailsItsTrial(t *testing.T) {
	text := block("richness_pct", "dough", "dough.fat_pct + dough.egg_pct", "") + `rule "r" {
  on     = "dough"
  level  = "note"
  when   = "dough.richness_pct > 20"
  say    = "s"
  why    = "w"
  source = "s"
}
trial "t" {
  rule  = "r"
  cases = { "400 g" = "flagged", "100 g" = "clear" }
  formula "t" {
    dough "d" { ingredients = { "bread flour" = "1000 g", "egg" = "$case" } }
  }
}
`
	p, problems := readPack(
		"p",
		[]*source.File{source.New("p.hcl", []byte(text))},
		testOptions(true),
	)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, v := range RunTrials([]*Pack{p}).Verdicts {
		if !v.Passed {
			t.Errorf("%s fails: got %s; %s", v.Trial.Title(), v.Got, v.Differ)
		}
	}
	p.Rules[0].names.Figures = nil // the library's environment then has no such name
	for _, v := range RunTrials([]*Pack{p}).Verdicts {
		if v.Passed || v.Got != v.Trial.Expect ||
			!strings.Contains(v.Differ, "unknown field richness_pct") {
			t.Errorf("%s: passed %v, got %s; %s", v.Trial.Title(), v.Passed, v.Got, v.Differ)
		}
	}
}
