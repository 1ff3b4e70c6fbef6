package asked

import (
	"slices"
	"testing"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/rule"
)

// TestCompare holds the order of mending: serious first, then food
// safety, then what is weighed, then how the dough rises, then the
// formula as a whole.
func TestCompare(t *testing.T) {
	adjust := func(lever string) []rule.Adjust { return []rule.Adjust{{Lever: lever}} }
	rules := []*rule.Rule{
		{ID: "stop", Level: finding.Stop},
		{ID: "safe", Level: finding.Risk, Safety: true},
		{ID: "water", Level: finding.Risk, Adjust: adjust("liquid")},
		{ID: "bulk", Level: finding.Risk, Adjust: adjust("rest.time")},
		{ID: "leaven", Level: finding.Risk, Adjust: adjust("yeast")},
		{ID: "makes", Level: finding.Risk},
		{ID: "worth", Level: finding.Note, Safety: true},
	}
	var want, got []string
	var list []Question
	for i := len(rules) - 1; i >= 0; i-- {
		want = append(want, rules[len(rules)-1-i].ID)
		q := Question{Rule: rules[i], On: facts.OnPart}
		if rules[i].ID == "makes" {
			q.On = facts.OnFormula
		}
		list = append(list, q)
	}
	slices.SortFunc(list, func(a, b Question) int {
		return Compare(a, b, func(q Question) finding.Level { return q.Rule.Level })
	})
	for _, q := range list {
		got = append(got, q.Rule.ID)
	}
	if !slices.Equal(got, want) {
		t.Errorf("order %v, want %v", got, want)
	}
}
