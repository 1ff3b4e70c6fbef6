package finding

import "testing"

func TestCauses(t *testing.T) {
	salt, oven := Cause{Text: "salt has no amount"}, Cause{Text: "needs an oven"}
	list := []*Finding{
		{Rule: "oven-hot", Causes: []Cause{oven}},
		{Rule: "salt-low", Causes: []Cause{salt}},
		{Rule: "bake-short", Causes: []Cause{salt, oven}},
		{Rule: "salt-low", Subject: "another dough", Causes: []Cause{salt}},
	}
	got := Causes(list)
	if len(got) != 2 || got[0].Cause != salt || got[1].Cause != oven {
		t.Fatalf("causes are %+v", got)
	}
	if got[0].Answers != 3 || got[1].Answers != 2 {
		t.Errorf("%d and %d answers wait; want 3 and 2", got[0].Answers, got[1].Answers)
	}
	if r := got[0].Rules; len(r) != 2 || r[0] != "bake-short" || r[1] != "salt-low" {
		t.Errorf("rules are %q", r)
	}
}
