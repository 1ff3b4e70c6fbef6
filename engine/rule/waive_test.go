package rule

import (
	"path"
	"strings"
	"testing"
	"time"

	"pgregory.net/rapid"

	"forebake/engine/finding"
	"forebake/engine/house"
)

func TestGlob(t *testing.T) {
	for _, c := range []struct {
		pattern, name string
		want          bool
	}{
		{"Cardamom*", "Cardamom knots", true}, {"Cardamom*", "Cardamom", true},
		{"cardamom*", "CARDAMOM knots", true}, {"Cardamom", "Cardamom knots", false},
		{"*knots", "Cardamom knots", true}, {"*knots", "Cardamom knots, second", false},
		{"*", "anything", true}, {"*", "", true}, {"", "", true}, {"", "x", false},
		{"C*m k*s", "Cardamom knots", true}, {"?ardamom knots", "Cardamom knots", true},
		{"?", "", false}, {"Cr?me*", "Crème buns", true},
		{"a*b*c", "aXbYbZc", true}, {"a*b*c", "aXbYbZ", false}, {"50/50*", "50/50 loaf", true},
		{"[a]*", "[a] loaf", true}, {"[a]*", "a loaf", false},
	} {
		if got := glob(c.pattern, c.name); got != c.want {
			t.Errorf("%q on %q: %v", c.pattern, c.name, got)
		}
	}
	// Where neither has a letter that path.Match reads another way,
	// both agree.
	rapid.Check(t, func(t *rapid.T) {
		pattern, name := rapid.StringMatching(`[ab*?]{0,8}`).
			Draw(t, "pattern"),
			rapid.StringMatching(`[ab]{0,10}`).
				Draw(t, "name")
		want, err := path.Match(pattern, name)
		if err != nil {
			t.Fatal(err)
		}
		if got := glob(pattern, name); got != want {
			t.Fatalf("%q on %q: %v, path.Match says %v", pattern, name, got, want)
		}
	})
}

func day(text string) time.Time {
	t, err := time.Parse(dateForm, text)
	if err != nil {
		panic(err)
	}
	return t
}

func dated(until string) *Set {
	return &Set{
		Waivers: []*Waiver{
			{
				Waiver:  house.Waiver{Rule: "r", Because: "b", Until: until, HasUntil: true},
				ID:      "r",
				InForce: true,
			},
		},
	}
}

// The last day is inclusive, to its last second, in whatever zone the
// clock is; a date that cannot be read never holds.
func TestLastDay(t *testing.T) {
	for _, c := range []struct {
		until string
		today time.Time
		own   string // the finding about the waiver; "" where it holds
	}{
		{"2027-03-31", day("2027-03-30"), ""}, {"2027-03-31", day("2027-03-31"), ""},
		{"2027-03-31", day("2027-04-01"), "waiver-expired"},
		{"2027-03-31", time.Date(2027, 3, 31, 23, 59, 59, 999,
			time.FixedZone("east", 14*3600)), ""},
		{"2027-03-31", time.Date(2027, 4, 1, 0, 0, 0, 0, time.FixedZone("west", -11*3600)),
			"waiver-expired"},
		{"2028-02-29", day("2028-02-29"), ""}, {"2028-02-29", day("2028-03-01"), "waiver-expired"},
		{"2027-12-31", day("2028-01-01"), "waiver-expired"}, {"9999-12-31", day("2027-01-01"), ""},
		{"2027-02-29", day("2026-01-01"), "waiver-undated"},
		{"2027-3-31", day("2026-01-01"), "waiver-undated"},
		{"31.3.2027", day("2026-01-01"), "waiver-undated"},
		{"2027-13-01", day("2026-01-01"), "waiver-undated"},
		{"", day("2026-01-01"), "waiver-undated"},
		{"2027-03-31 ", day("2026-01-01"), "waiver-undated"},
		{"99999-01-01", day("2026-01-01"), "waiver-undated"},
		{"forever", day("2026-01-01"), "waiver-undated"},
	} {
		f := &finding.Finding{Rule: "r", Answer: finding.Flagged, Level: finding.Stop}
		own := dated(
			c.until,
		).Waive([]*finding.Finding{f}, Seen{Today: c.today, Formulas: []string{""}})
		if c.own == "" {
			if len(own) > 0 || f.Answer != finding.Waived || f.Until != c.until ||
				f.Because != "b" ||
				f.Level != finding.Stop {
				t.Errorf("%s on %s: %+v, own %v", c.until, c.today, f, own)
			}
			continue
		}
		if len(own) != 1 || own[0].Rule != c.own || own[0].Level != finding.Risk ||
			own[0].Pack != OwnPack ||
			f.Answer != finding.Flagged {
			t.Errorf("%s on %s: %+v, own %v", c.until, c.today, f, own)
		}
		if c.own == "waiver-undated" && len(own) == 1 &&
			!strings.Contains(own[0].Text, `until = "20`) {
			t.Errorf("%s: no text to write: %s", c.until, own[0].Text)
		}
	}
}

// A waiver that set nothing aside is told of where its rule ran, and
// nowhere else.
func TestIdleWaiver(t *testing.T) {
	for _, c := range []struct {
		name    string
		pattern string
		inForce bool
		seen    Seen
		found   string // the formula with a finding; "" for none
		idle    string // a piece of what is said; "" for nothing
	}{
		{"it matched", "", true, Seen{Formulas: []string{"a", "b"}}, "b", ""},
		{"it found nothing", "", true, Seen{Formulas: []string{"a"}}, "", "matches no finding"},
		{"its formula was checked and gave nothing", "b*", true,
			Seen{Formulas: []string{"a", "bun"}}, "a", "matches no finding"},
		{"its formula was not among the files named", "bun", true,
			Seen{Formulas: []string{"a"}}, "a", ""},
		{"its formula is not in the folder", "bunn", true,
			Seen{Formulas: []string{"a", "buns"}, Folder: true}, "a", `nearest name is "buns"`},
		{"a file could not be judged", "", true,
			Seen{Formulas: []string{"a"}, Folder: true, Broken: true}, "", ""},
		{"its pack is not in force", "", false,
			Seen{Formulas: []string{"a"}, Folder: true}, "", ""},
		{"nothing was checked", "", true, Seen{}, "", ""},
	} {
		s := &Set{
			Waivers: []*Waiver{
				{
					Waiver:  house.Waiver{Rule: "r", Because: "b", Formula: c.pattern},
					ID:      "r",
					InForce: c.inForce,
				},
			},
		}
		var list []*finding.Finding
		if c.found != "" {
			list = append(
				list,
				&finding.Finding{Rule: "r", Formula: c.found, Answer: finding.Flagged},
			)
		}
		own := s.Waive(list, c.seen)
		switch {
		case c.idle == "" && len(own) > 0:
			t.Errorf("%s: %s", c.name, own[0].Text)
		case c.idle != "" && (len(own) != 1 || own[0].Rule != "waiver-idle" ||
			own[0].Level != finding.Note || !strings.Contains(own[0].Text, c.idle)):
			t.Errorf("%s: %v", c.name, own)
		}
	}
}

// Of two waivers that cover a finding the first has the word, and
// neither is idle. An unsure answer is set aside too.
func TestTwoWaivers(t *testing.T) {
	s := &Set{Waivers: []*Waiver{
		{Waiver: house.Waiver{Rule: "r", Because: "first", Formula: "a*"}, ID: "r", InForce: true},
		{Waiver: house.Waiver{Rule: "r", Because: "second"}, ID: "r", InForce: true},
	}}
	a := &finding.Finding{Rule: "r", Formula: "ab", Answer: finding.Unsure}
	b := &finding.Finding{Rule: "r", Formula: "b", Answer: finding.Flagged}
	other := &finding.Finding{Rule: "q", Formula: "b", Answer: finding.Flagged}
	own := s.Waive([]*finding.Finding{a, b, other}, Seen{Formulas: []string{"ab", "b"}})
	if len(own) > 0 || a.Answer != finding.Waived || a.Because != "first" ||
		b.Because != "second" ||
		other.Answer != finding.Flagged {
		t.Errorf("%+v %+v %+v, own %v", a, b, other, own)
	}
	if a.At(finding.Note) || b.At(finding.Note) {
		t.Error("a waived finding fails a run")
	}
}
