package rule

import (
	"testing"
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
	if rep.Points < 10*len(rep.Verdicts) {
		t.Errorf("only %d points for %d trials", rep.Points, len(rep.Verdicts))
	}
}
