package rule

import (
	"fmt"
	"strings"
	"testing"

	"forebake/engine/source"
)

// Answers in three values. In this formula has_salt is open, the flour is 450 to 550 g, and the sugar is a point.
const threeValued = `formula "t" {
  dough "d" { ingredients = { "bread flour" = "450 g to 550 g", "sugar" = "100 g", "salt" = "?", "water" = "?" } }
}
`

func TestThreeValues(t *testing.T) {
	s := sheetOf(t, threeValued)
	j := NewJudge()
	j.Open(s)
	subject := subjectsFor(s.Formula, "dough")[0]
	judge := func(text string) truth {
		t.Helper()
		limits := []Limit{{Name: "x_g", Value: 500}}
		x, _, problems := parseCondition("dough", text, limits)
		if x == nil {
			t.Fatalf("%s: %v", text, problems)
		}
		return j.holds(x, subject, limits)
	}
	written := map[truth]string{isTrue: "true", isFalse: "false", isOpen: "dough.has_salt"}
	all := []truth{isFalse, isOpen, isTrue}
	rank := map[truth]int{isFalse: 0, isOpen: 1, isTrue: 2}
	for _, a := range all {
		want := map[truth]truth{isTrue: isFalse, isFalse: isTrue, isOpen: isOpen}[a]
		if got := judge("not " + written[a]); got != want {
			t.Errorf("not %s: %d", written[a], got)
		}
		for _, b := range all {
			and, or := a, b
			if rank[a] > rank[b] {
				and, or = b, a
			}
			equal := isFalse
			switch {
			case a == isOpen || b == isOpen:
				equal = isOpen
			case a == b:
				equal = isTrue
			}
			unequal := map[truth]truth{isTrue: isFalse, isFalse: isTrue, isOpen: isOpen}[equal]
			for form, want := range map[string]truth{"%s and %s": and, "%s && %s": and, "%s or %s": or, "%s || %s": or, "%s == %s": equal, "%s != %s": unequal} {
				text := fmt.Sprintf(form, written[a], written[b])
				if got := judge(text); got != want {
					t.Errorf("%s: %d, not %d", text, got, want)
				}
			}
			for _, c := range all {
				want := b
				switch {
				case c == isFalse:
					want = a
				case c == isOpen && a != b:
					want = isOpen
				}
				text := fmt.Sprintf("%s ? %s : %s", written[c], written[b], written[a])
				if got := judge(text); got != want {
					t.Errorf("%s: %d, not %d", text, got, want)
				}
			}
		}
	}
	for text, want := range map[string]truth{
		// 450 to 550 against points and itself.
		"dough.flour_g > 449": isTrue, "dough.flour_g > 450": isOpen, "dough.flour_g >= 450": isTrue, "dough.flour_g > 500": isOpen, "dough.flour_g > 550": isFalse, "dough.flour_g >= 550": isOpen,
		"dough.flour_g < 450": isFalse, "dough.flour_g <= 450": isOpen, "dough.flour_g <= 550": isTrue, "dough.flour_g < 550": isOpen, "dough.flour_g < 551": isTrue,
		"dough.flour_g == 500": isOpen, "dough.flour_g == 551": isFalse, "dough.flour_g != 551": isTrue, "dough.flour_g != 500": isOpen,
		"dough.flour_g in [100, 449]": isFalse, "dough.flour_g in [100, 500]": isOpen, "500 in [100, 500]": isTrue,
		"dough.flour_g > limit.x_g": isOpen, "limit.x_g in [500]": isTrue,
		// One figure stands for one value, but an interval does not know that it meets itself.
		"dough.flour_g - dough.flour_g == 0": isOpen, "dough.flour_g - dough.flour_g <= 100": isTrue, "dough.flour_g * 2 > 899": isTrue, "dough.flour_g / 2 < 276": isTrue, "-dough.flour_g < -449": isTrue,
		"min(dough.flour_g, 10) == 10": isTrue, "max(dough.flour_g, 600) == 600": isTrue, "max(dough.flour_g, 500) >= 500": isTrue, "abs(dough.flour_g - 1000) >= 450": isTrue,
		"round(dough.flour_g / 1000) == 1": isOpen, "round(dough.flour_g / 1000) <= 1": isTrue,
		// Not given at all, and open: known only asks whether it is given.
		"known(dough.ph)": isFalse, "dough.ph > 4.6": isOpen, "known(dough.ph) and dough.ph > 4.6": isFalse, "dough.ph > 4.6 or true": isTrue, "known(dough.salt_g)": isTrue,
		"dough.salt_g >= 0": isTrue, "dough.salt_g > 0": isOpen, "dough.salt_g < 0": isFalse, "dough.ph == dough.ph": isOpen, "1 / dough.salt_g > 0": isOpen,
		"dough.family == 'any enriched dough'": isTrue, "dough.family in ['a', 'b']": isFalse, "'wheat' in dough.allergens": isTrue, "'fish' in dough.allergens": isFalse,
		"(dough.has_salt ? 'a' : 'a') == 'a'": isTrue, "(dough.has_salt ? 'a' : 'b') == 'a'": isOpen, "(dough.has_salt ? 1 : 3) > 0": isTrue, "(dough.has_salt ? 1 : 3) > 2": isOpen, "(dough.has_salt ? 1 : 3) == 2": isOpen,
		"kitchen.room_c == 22 and formula.pieces > 3": isOpen, "kitchen.room_c != 22 and formula.pieces > 3": isFalse,
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
		{"dough.salt_g > 10", `needs the amount of \"salt\" (line 2)`, []string{"salt"}},
		{"dough.flour_g > 500 and dough.sugar_g > 1", `it holds where flour is 550 g, not where it is 450 g, from \"bread flour\" at line 2`, []string{"dough.flour_g"}},
		{"dough.ph > 4.6", `needs ph of \"d\"`, []string{"dough.ph"}},
		{"dough.ph > 4.6 and dough.flour_g > 900", ``, nil},
		{"dough.has_salt and dough.ph < 4", `needs`, []string{"dough.has_salt", "dough.ph"}},
		{"formula.pieces > 3", `needs makes = \"24 pieces\"`, []string{"formula.pieces"}},
	} {
		f, problems := readText("rule \"r\" {\n  on = \"dough\"\n  level = \"note\"\n  when = \"" + test.when + "\"\n  say = \"s\"\n  why = \"w\"\n  source = \"s\"\n}\n")
		if len(problems) > 0 {
			t.Fatal(f.Name, problems)
		}
		p, _ := Read("p", []*source.File{f}, testOptions(false))
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
		if !strings.Contains(list[0].Reason, says) || strings.Join(list[0].Needs, ",") != strings.Join(test.needs, ",") {
			t.Errorf("%s: %q needs %q", test.when, list[0].Reason, list[0].Needs)
		}
	}
}
