package rule

import (
	"fmt"
	"strings"
	"testing"

	"forebake/engine/expr"
	"forebake/engine/figure"
	"forebake/engine/source"
)

// Answers in three values. In this formula has_salt is open, the flour
// is 450 to 550 g, and the sugar is a point.
const threeValued = `formula "t" {
  dough "d" { ingredients = { "bread flour" = "450 g to 550 g", "salted butter" = "?",
    "sugar" = "100 g", "water" = "?" } }
}
`

func TestThreeValues(t *testing.T) {
	s := sheetOf(t, threeValued)
	j := NewJudge()
	j.Open(s)
	subject := subjectsFor(s.Formula, "dough")[0]
	judge := func(text string) figure.Truth {
		t.Helper()
		limits := []expr.Limit{{Name: "x_g", Value: 500}}
		x, _, problems := parseCondition("dough", text, limits)
		if x == nil {
			t.Fatalf("%s: %v", text, problems)
		}
		return j.holds(x, subject, limits)
	}
	written := map[figure.Truth]string{
		figure.Yes:  "true",
		figure.No:   "false",
		figure.Open: "dough.has_salt",
	}
	all := []figure.Truth{figure.No, figure.Open, figure.Yes}
	rank := map[figure.Truth]int{figure.No: 0, figure.Open: 1, figure.Yes: 2}
	for _, a := range all {
		want := map[figure.Truth]figure.Truth{
			figure.Yes:  figure.No,
			figure.No:   figure.Yes,
			figure.Open: figure.Open,
		}[a]
		if got := judge("not " + written[a]); got != want {
			t.Errorf("not %s: %d", written[a], got)
		}
		for _, b := range all {
			and, or := a, b
			if rank[a] > rank[b] {
				and, or = b, a
			}
			equal := figure.No
			switch {
			case a == figure.Open || b == figure.Open:
				equal = figure.Open
			case a == b:
				equal = figure.Yes
			}
			unequal := map[figure.Truth]figure.Truth{
				figure.Yes:  figure.No,
				figure.No:   figure.Yes,
				figure.Open: figure.Open,
			}[equal]
			for form, want := range map[string]figure.Truth{
				"%s and %s": and,
				"%s && %s":  and,
				"%s or %s":  or,
				"%s || %s":  or,
				"%s == %s":  equal,
				"%s != %s":  unequal,
			} {
				text := fmt.Sprintf(form, written[a], written[b])
				if got := judge(text); got != want {
					t.Errorf("%s: %d, not %d", text, got, want)
				}
			}
			for _, c := range all {
				want := b
				switch {
				case c == figure.No:
					want = a
				case c == figure.Open && a != b:
					want = figure.Open
				}
				text := fmt.Sprintf("%s ? %s : %s", written[c], written[b], written[a])
				if got := judge(text); got != want {
					t.Errorf("%s: %d, not %d", text, got, want)
				}
			}
		}
	}
	for text, want := range map[string]figure.Truth{
		// 450 to 550 against points and itself.
		"dough.flour_g > 449": figure.Yes, "dough.flour_g > 450": figure.Open,
		"dough.flour_g >= 450": figure.Yes, "dough.flour_g > 500": figure.Open,
		"dough.flour_g > 550": figure.No, "dough.flour_g >= 550": figure.Open,
		"dough.flour_g < 450": figure.No, "dough.flour_g <= 450": figure.Open,
		"dough.flour_g <= 550": figure.Yes, "dough.flour_g < 550": figure.Open,
		"dough.flour_g < 551":  figure.Yes,
		"dough.flour_g == 500": figure.Open, "dough.flour_g == 551": figure.No,
		"dough.flour_g != 551": figure.Yes, "dough.flour_g != 500": figure.Open,
		"dough.flour_g in [100, 449]": figure.No, "dough.flour_g in [100, 500]": figure.Open,
		"500 in [100, 500]":         figure.Yes,
		"dough.flour_g > limit.x_g": figure.Open, "limit.x_g in [500]": figure.Yes,
		// One figure stands for one value, but an interval does not
		// know that it meets itself.
		"dough.flour_g - dough.flour_g == 0":   figure.Open,
		"dough.flour_g - dough.flour_g <= 100": figure.Yes, "dough.flour_g * 2 > 899": figure.Yes,
		"dough.flour_g / 2 < 276": figure.Yes, "-dough.flour_g < -449": figure.Yes,
		"min(dough.flour_g, 10) == 10": figure.Yes, "max(dough.flour_g, 600) == 600": figure.Yes,
		"max(dough.flour_g, 500) >= 500":   figure.Yes,
		"abs(dough.flour_g - 1000) >= 450": figure.Yes,
		"round(dough.flour_g / 1000) == 1": figure.Open,
		"round(dough.flour_g / 1000) <= 1": figure.Yes,
		// Not given at all, and open: known only asks whether it
		// is given.
		"known(dough.ph)": figure.No, "dough.ph > 4.6": figure.Open,
		"known(dough.ph) and dough.ph > 4.6": figure.No, "dough.ph > 4.6 or true": figure.Yes,
		"known(dough.salt_g)": figure.Yes,
		"dough.salt_g >= 0":   figure.Yes, "dough.salt_g > 0": figure.Open,
		"dough.salt_g < 0": figure.No, "dough.ph == dough.ph": figure.Open,
		"1 / dough.salt_g > 0":                 figure.Open,
		"dough.family == 'any enriched dough'": figure.Yes, "dough.family in ['a', 'b']": figure.No,
		"'wheat' in dough.allergens": figure.Yes, "'fish' in dough.allergens": figure.No,
		"(dough.has_salt ? 'a' : 'a') == 'a'":         figure.Yes,
		"(dough.has_salt ? 'a' : 'b') == 'a'":         figure.Open,
		"(dough.has_salt ? 1 : 3) > 0":                figure.Yes,
		"(dough.has_salt ? 1 : 3) > 2":                figure.Open,
		"(dough.has_salt ? 1 : 3) == 2":               figure.Open,
		"kitchen.room_c == 22 and formula.pieces > 3": figure.Open,
		"kitchen.room_c != 22 and formula.pieces > 3": figure.No,
	} {
		if got := judge(text); got != want {
			t.Errorf("%s: %d, not %d", text, got, want)
		}
	}
}

// An unsure answer names what would settle it, and only that.
func TestUnsureNamesWhatSettles(t *testing.T) {
	s := sheetOf(t, threeValued)
	j := NewJudge()
	j.Open(s)
	for _, test := range []struct {
		when, says string
		needs      []string
	}{
		{"dough.salt_g > 10", `needs the amount of \"salted butter\" (line 2)`,
			[]string{"salted butter"}},
		{"dough.flour_g > 500 and dough.sugar_g > 1",
			`flagged at 550 g, clear at 450 g, from \"bread flour\" at line 2`,
			[]string{"dough.flour_g"}},
		{"dough.ph > 4.6", `needs ph of \"d\"`, []string{"dough.ph"}},
		{"dough.ph > 4.6 and dough.flour_g > 900", ``, nil},
		{"dough.has_salt and dough.ph < 4", `needs`, []string{"dough.has_salt", "dough.ph"}},
		{"formula.pieces > 3", `needs makes = \"24 pieces\"`, []string{"formula.pieces"}},
	} {
		f, problems := readText(
			"rule \"r\" {\n  on = \"dough\"\n  level = \"note\"\n  when = \"" + test.when +
				"\"\n  say = \"s\"\n  why = \"w\"\n  source = \"s\"\n}\n",
		)
		if len(problems) > 0 {
			t.Fatal(f.Name, problems)
		}
		p, _ := readPack("p", []*source.File{f}, testOptions(false))
		list := j.Findings(p.Rules[0], nil)
		if test.needs == nil {
			if len(list) != 0 {
				t.Errorf("%s: %v", test.when, list[0].Text)
			}
			continue
		}
		if len(list) != 1 {
			t.Errorf("%s: %d findings", test.when, len(list))
			continue
		}
		says := strings.ReplaceAll(test.says, `\"`, `"`)
		if !strings.Contains(list[0].Reason, says) ||
			strings.Join(list[0].Needs, ",") != strings.Join(test.needs, ",") {
			t.Errorf("%s: %q needs %q", test.when, list[0].Reason, list[0].Needs)
		}
	}
}
