package engine_test

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/family"
	"forebake/engine/finding"
	"forebake/engine/kitchen"
)

// TestBeginChecksClean holds that the rules find each family's starting
// formula clean, at a kilogram of flour and at other sizes that the
// bowl takes.
func TestBeginChecksClean(t *testing.T) {
	for _, name := range engine.Families() {
		for _, flour := range []string{"1 kg", "500 g", "1.5 kg"} {
			text, err := engine.Begin(name, flour)
			if err != nil {
				t.Fatal(err)
			}
			e := engine.New()
			res := e.Check([]engine.Input{{Name: name + ".hcl", Text: []byte(text),
				Dir: t.TempDir()}})
			if len(res.Problems) > 0 {
				t.Fatalf("%s\n%s", res.Problems, text)
			}
			for _, f := range res.Findings {
				if f.Answer == finding.Flagged {
					t.Errorf("%s of %s: %s %s at line %d: %s", flour, name, f.Level, f.Rule,
						f.Place.Line(), f.Text)
				}
			}
			if flour == "1 kg" && res.Totals.Unsure > 1 {
				t.Errorf("%s: %d answers are unsure", name, res.Totals.Unsure)
			}
		}
	}
}

// rounding is what round weights may take off a percentage.
const rounding = 0.3

// TestBeginStandsInItsRange holds that a starting formula lies inside
// its family's published ranges.
func TestBeginStandsInItsRange(t *testing.T) {
	for _, name := range engine.Families() {
		text, err := engine.Begin(name, "")
		if err != nil {
			t.Fatal(err)
		}
		if !strings.Contains(text, "derived: ") && !strings.Contains(text, "read: ") {
			t.Errorf("%s names no source", name)
		}
		f, _ := family.Find(name)
		ranges := map[string]family.Range{"hydration_pct": f.Hydration, "sugar_pct": f.Sugar,
			"fat_pct": f.Fat, "salt_pct": f.Salt, "yeast_pct": f.Yeast, "egg_pct": f.Egg}
		var names []string
		for fact := range ranges {
			names = append(names, fact)
		}
		rows, res := engine.New().Facts([]engine.Input{{Name: "f.hcl", Text: []byte(text),
			Dir: t.TempDir()}}, names, false)
		if len(res.Problems) > 0 {
			t.Fatal(res.Problems)
		}
		seen := 0
		for _, row := range rows {
			r := ranges[row.Name]
			if !strings.HasPrefix(row.Subject, "dough ") || !r.Known {
				continue
			}
			seen++
			if row.Value < r.Lo-rounding || row.Value > r.Hi+rounding {
				t.Errorf("%s: %s is %v, and %v to %v is published", name, row.Name, row.Value, r.Lo,
					r.Hi)
			}
		}
		if seen < 5 {
			t.Errorf("%s: %d figures", name, seen)
		}
	}
}

var commented = regexp.MustCompile(`(?m)^( *)# (.* = .*|tin .*|prices = \{|ingredient .*\{|  ".*|` +
	`  .* = .*|\})$`)

// TestBeginHouse holds that the starting house file reads, as written
// and with every figure filled in, and asks for each key of a kitchen.
func TestBeginHouse(t *testing.T) {
	text := engine.BeginHouse()
	for _, k := range kitchen.Keys {
		if !regexp.MustCompile(`(?m)^    # ` + k.Name + ` += "`).MatchString(text) {
			t.Errorf("it does not ask for %s", k.Name)
		}
	}
	for _, one := range []string{text, commented.ReplaceAllString(text, "$1$2")} {
		dir := t.TempDir()
		if err := os.WriteFile(filepath.Join(dir, "house.hcl"), []byte(one), 0o600); err != nil {
			t.Fatal(err)
		}
		l, problems := engine.New().Load(dir)
		if len(problems) > 0 {
			t.Fatalf("%s\n%s", problems, one)
		}
		if one != text && (!l.House.Kitchen.Oven.Set || len(l.House.Kitchen.Tins) != 3) {
			t.Errorf("the figures are not read\n%s", one)
		}
	}
}
