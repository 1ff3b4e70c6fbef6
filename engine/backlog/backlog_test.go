package backlog

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/finding"
	"forebake/engine/source"
)

func f(formula, rule, subject string) *finding.Finding {
	return &finding.Finding{Formula: formula, Rule: rule, Subject: subject, Answer: finding.Flagged}
}

func read(t interface{ Fatalf(string, ...any) }, text []byte) *List {
	l, problems := Read(source.New("backlog.hcl", text))
	if len(problems) > 0 {
		t.Fatalf("%v in\n%s", problems, text)
	}
	return l
}

func TestCover(t *testing.T) {
	old := []*finding.Finding{
		f("Buns", "salt-low", "dough \"d\""),
		f("Buns", "core-missing", "bake in dough \"d\""),
		f("Buns", "core-missing", "bake in dough \"d\""),
		f("Loaf", "salt-low", "dough \"d\""),
	}
	safe := f("Buns", "cool-first-stage", "cool in filling \"f\"")
	safe.Safety = true
	waived := f("Buns", "egg-high", "dough \"d\"")
	waived.Answer = finding.Waived
	l, safety := Of(append(old, safe, waived, f("", "waiver-idle", "house")), "2026-11-25")
	if len(l.Entries) != 3 || safety != 1 {
		t.Fatalf("%d lines and %d of food safety: %+v", len(l.Entries), safety, l.Entries)
	}
	l = read(t, l.Text())

	// The same again: nothing counts but food safety.
	left, covered, cleared := l.Cover(append(old, safe), []string{"Buns", "Loaf"})
	if len(left) != 1 || left[0] != safe || len(covered) != 4 || len(cleared) != 0 {
		t.Errorf("left %d, covered %d, cleared %d", len(left), len(covered), len(cleared))
	}
	// One more of a kind is new, one less is cleared; a formula that
	// was not checked says nothing.
	left, covered, cleared = l.Cover(
		[]*finding.Finding{old[0], f("Buns", "salt-low", "dough \"d\""), old[1]},
		[]string{"Buns"},
	)
	if len(left) != 1 || len(covered) != 2 || len(cleared) != 1 ||
		cleared[0].Rule != "core-missing" ||
		cleared[0].Times != 1 {
		t.Errorf("left %d, covered %d, cleared %+v", len(left), len(covered), cleared)
	}
	shorter := l.Less(cleared)
	if len(shorter.Entries) != 3 || shorter.Entries[0].Rule != "core-missing" ||
		shorter.Entries[0].Times != 1 {
		t.Errorf("%+v", shorter.Entries)
	}
	_, _, cleared = l.Cover(nil, []string{"Buns", "Loaf"})
	if got := l.Less(cleared); len(got.Entries) != 0 {
		t.Errorf("%+v", got.Entries)
	}
	if got := read(t, l.Less(cleared).Text()); got.Made != "2026-11-25" {
		t.Errorf("an empty list reads as %+v", got)
	}
}

func TestTextReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		word := rapid.OneOf(
			rapid.StringMatching(`[a-z]{1,9}(-[a-z]{1,9})?`),
			rapid.SampledFrom(
				[]string{
					`dough "knot dough"`,
					"back\\slash",
					"${x}",
					"%{if}",
					"$${",
					"crème",
					"a\tb",
					"\u202ebidi",
					"line\nbreak",
					"emoji 🥐",
				},
			),
		)
		var findings []*finding.Finding
		for range rapid.IntRange(0, 12).Draw(t, "n") {
			findings = append(
				findings,
				f(word.Draw(t, "formula"), word.Draw(t, "rule"), word.Draw(t, "subject")),
			)
		}
		l, _ := Of(findings, "2026-11-25")
		got := read(t, l.Text())
		for i := range got.Entries {
			got.Entries[i].Place = source.Place{}
		}
		if !reflect.DeepEqual(got.Entries, l.Entries) {
			t.Fatalf("%+v\nreads back as\n%+v\nfrom\n%s", l.Entries, got.Entries, l.Text())
		}
		left, covered, cleared := got.Cover(findings, nil)
		if len(left) != 0 || len(covered) != len(findings) || len(cleared) != 0 {
			t.Fatal("a list does not cover what it was made of")
		}
		if string(got.Text()) != string(l.Text()) {
			t.Fatal("writing again changes the file")
		}
	})
}

func TestBroken(t *testing.T) {
	known := func(rows string) string {
		return "backlog \"x\" {\n  formula \"b\" {\n    known = [" + rows + "]\n  }\n}"
	}
	const row = `{ rule = "a", on = "d" }`
	for text, want := range map[string]string{
		"":                                       "backlog.hcl:1:1: no backlog block",
		"backlog \"x\" {\n}\nbacklog \"y\" {\n}": "a second backlog block",
		"backlog \"x\" {\n  formula \"b\" {\n  }\n}":   "formula \"b\" has no known",
		known(`{ rule = "a" }`):                        "names a rule and what it is on",
		known(`{ rul = "a", on = "d" }`):               "nearest is rule",
		known(`{ rule = "a", on = "d", times = 0.5 }`): "times",
		known(row + ", " + row):                        "stands twice",
	} {
		_, problems := Read(source.New("backlog.hcl", []byte(text)))
		found := false
		for _, p := range problems {
			found = found || strings.Contains(p.String(), want)
		}
		if !found {
			t.Errorf("%q: %v, not %q", text, problems, want)
		}
	}
}

func FuzzRead(f *testing.F) {
	l, _ := Of(
		[]*finding.Finding{
			{Formula: "Buns", Rule: "salt-low", Subject: "dough \"d\"", Answer: finding.Flagged},
		},
		"2026-11-25",
	)
	f.Add(string(l.Text()))
	f.Add("backlog \"x\" {\n  formula \"${a}\" {\n" +
		"    known = [{ rule = \"a\", on = \"d\", times = 3 }]\n  }\n}")
	f.Fuzz(func(t *testing.T, text string) {
		l, problems := Read(source.New("b.hcl", []byte(text)))
		if len(problems) > 0 {
			return
		}
		again, problems := Read(source.New("b.hcl", l.Less(nil).Text()))
		if len(problems) > 0 || len(again.Entries) != len(l.Entries) {
			t.Fatalf("%v: %d lines of %d read back", problems, len(again.Entries), len(l.Entries))
		}
	})
}

// A list is written up to the length that can be read again.
func TestFits(t *testing.T) {
	list := func(lines int, word string) []byte {
		var findings []*finding.Finding
		for i := range lines {
			findings = append(findings, f("Buns", fmt.Sprintf("r%d", i), word))
		}
		l, _ := Of(findings, "2026-11-25")
		return l.Text()
	}
	most := source.MaxBrackets - 3 // those of the backlog, of the formula and of the list
	for _, test := range []struct {
		lines int
		word  string
		fits  bool
	}{
		{0, "d", true},
		{most - 1, "d", true},
		{most, "d", true},
		{most + 1, "d", false},
		{5000, strings.Repeat("x", 160), true},
		{5000, strings.Repeat("x", 200), false},
	} {
		text := list(test.lines, test.word)
		if err := Fits(text); (err == nil) != test.fits ||
			err != nil && !strings.Contains(err.Error(), "one for each folder") {
			t.Errorf("%d lines, %d bytes: %v", test.lines, len(text), err)
		}
	}
}
