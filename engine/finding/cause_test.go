package finding

import (
	"slices"
	"testing"

	"forebake/engine/source"
)

// What only the models leave open is one line; food safety and missing
// figures come before it.
func TestOpenOf(t *testing.T) {
	file := source.New("a.hcl", []byte("one\ntwo\nthree\n"))
	at := func(start int) source.Place {
		return source.Place{File: file, Start: start, End: start + 1}
	}
	model := func(settle string) []Cause {
		return []Cause{{Text: settle, ByModel: true, Settle: settle}}
	}
	missing := []Cause{{Text: "salt has no amount"}}
	list := []*Finding{
		{Rule: "proof-short", Answer: Unsure, Place: at(8), Causes: model("rise")},
		{Rule: "salt-low", Answer: Unsure, Causes: missing},
		{Rule: "bulk-short", Answer: Unsure, Place: at(0), Causes: model("rise")},
		{Rule: "core-unsafe", Answer: Unsure, Safety: true, Causes: model("probe")},
		{Rule: "mixed", Answer: Unsure, Causes: append(model("probe"), missing...)},
	}
	told := func(o Open) (out []string) {
		for _, w := range o.Told {
			out = append(out, w.Text)
		}
		return out
	}
	got := OpenOf(list, false)
	if want := []string{"probe", "salt has no amount", "probe"}; !slices.Equal(told(got), want) {
		t.Errorf("told are %q; want %q", told(got), want)
	}
	w := got.Within
	if w == nil || w.Answers != 2 || w.Settle != "rise" || w.Settles != 2 ||
		!slices.Equal(w.Rules, []string{"bulk-short (line 1)", "proof-short (line 3)"}) {
		t.Errorf("within the models' error are %+v", w)
	}
	if all := OpenOf(list, true); all.Within != nil || len(all.Told) != 4 {
		t.Errorf("with all, %+v", all)
	}
	if one := OpenOf(list[2:3], false); one.Within != nil || len(one.Told) != 1 {
		t.Errorf("one answer is folded: %+v", one)
	}
}

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
