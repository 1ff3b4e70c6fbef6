package formula_test

import (
	"fmt"
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/formula/edit"
	"forebake/engine/formula/read"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/science/heat"
	"forebake/engine/source"
)

// written is a formula with one step, and a part to put on.
func written(step string) string {
	return `formula "f" {
  dough "d" {
    ingredients = { "bread flour" = "1000 g", "butter" = "100 g" }
    steps       = [{ ` + step + ` }]
  }
  filling "f" { ingredients = { "sugar" = "100 g" } }
}
`
}

func problemsOf(t *testing.T, text string) (*formula.Formula, source.Problems) {
	t.Helper()
	file := source.New("f.hcl", []byte(text))
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		t.Fatalf("%v\n%s", problems, text)
	}
	r := &reading.Reader{File: file}
	f := read.Formula(
		r,
		body.Blocks[0],
		formula.Options{Larder: larder.New(), Tins: []string{"long tin"}},
	)
	return f, r.Problems
}

// samples are two values that differ of each option whose values are of
// no common sort.
var samples = map[string][2]string{
	"at": {`"190 C"`, `"195 C"`}, "core": {`"94 C"`, `"95 C"`}, "by": {"", ""},
	"tin": {`"long tin"`, ""}, "as": {`"slab 30 mm"`, `"bowl"`}, "measured": {`"24 C"`, `"2 x"`},
	"with": {`"butter"`, `["bread flour", "butter"]`}, "humidity": {`"80 %"`, `"70 %"`},
	"steam": {`true`, `false`},
}

// sorts are two values of each common sort. An option without samples
// of its own is tried with the first that it reads.
var sorts = [][2]string{
	{`"25 C"`, `"26 C"`}, {`"5 min"`, `"6 min"`}, {`"30 mm"`, `"35 mm"`}, {`"50 g"`, `"60 g"`},
	{`"40 %"`, `"45 %"`}, {`3`, `4`}, {`true`, `false`}, {`"in three"`, `"in four"`},
}

// samplesOf gives the samples of an option; reads reports whether a
// value reads.
func samplesOf(o *formula.Option, reads func(value string) bool) ([2]string, bool) {
	if list, own := samples[o.Name]; own {
		return list, true
	}
	for _, list := range sorts {
		if reads(list[0]) && reads(list[1]) {
			return list, true
		}
	}
	return [2]string{}, false
}

// mainOf is a value of the verb's own.
func mainOf(v *formula.Verb) string {
	switch m := v.Measures(); {
	case strings.HasPrefix(m, "a time"):
		return `"20 min"`
	case strings.HasPrefix(m, "a length, or words"):
		return `"60 mm"` // of a coil: less is flat
	case strings.HasPrefix(m, "a length"):
		return `"8 mm"`
	case strings.HasPrefix(m, "a mass"):
		return `"75 g"`
	}
	if v.PutsOn() {
		return `"f"` // the part
	}
	return `"as ever"`
}

// Every option of every verb is read, shown and told apart: a line of
// the step holds it, and the proof of an edit sees it. "?" reads as if
// it were not written.
func TestEveryOptionIsReadShownAndProven(t *testing.T) {
	used := map[string]bool{}
	for _, v := range formula.Verbs {
		bare, problems := problemsOf(t, written(v.Name+" = "+mainOf(v)))
		if len(problems) > 0 {
			t.Fatalf("%s: %v", v.Name, problems)
		}
		for _, o := range formula.StepOptions {
			with := func(value string) (*formula.Formula, source.Problems) {
				return problemsOf(t, written(v.Name+" = "+mainOf(v)+", "+o.Name+" = "+value))
			}
			values, ok := samplesOf(o, func(value string) bool {
				_, problems := with(value)
				return len(problems) == 0 || !v.Takes(o)
			})
			if !ok {
				t.Fatalf("%q reads no value of a common sort: give it a sample", o.Name)
			}
			if o.Name == "by" {
				if names := formula.WayNames(v); len(names) > 1 {
					values = [2]string{fmt.Sprintf("%q", names[0]), fmt.Sprintf("%q", names[1])}
				} else {
					values = [2]string{`"hand"`, ""}
				}
			}
			f, problems := with(values[0])
			if !v.Takes(o) {
				refused := len(problems) == 1 &&
					(strings.Contains(problems[0].Text, v.Name+" takes no \""+o.Name+
						"\"; it takes ") ||
						o == formula.TimeOption())
				if !refused && (len(problems) > 0 || len(f.Said) <= len(bare.Said)) {
					t.Errorf("%s takes %q, and tells nothing of it: %v", v.Name, o.Name, problems)
				}
				continue
			}
			used[o.Name] = true
			if len(problems) > 0 {
				t.Errorf("%s, %s: %v", v.Name, o.Name, problems)
				continue
			}
			name := fmt.Sprintf("dough \"d\": step 1 %s %s", v.Name, o.Name)
			if got := edit.Differ(bare, f); len(got) != 1 || got[0] != name {
				t.Errorf("%s with %s differs in %q from one without", v.Name, o.Name, got)
			}
			line := f.Parts[0].Steps[0].Line()
			if !strings.Contains(line, ", "+o.Name+" "+strings.Trim(values[0], `"`)) {
				t.Errorf("%s with %s = %s is shown as %q", v.Name, o.Name, values[0], line)
			}
			if values[1] != "" {
				other, problems := with(values[1])
				if len(problems) > 0 {
					t.Errorf("%s, %s: %v", v.Name, o.Name, problems)
				} else if got := edit.Differ(f, other); len(got) != 1 || got[0] != name {
					t.Errorf("%s: %s = %s and %s differ in %q", v.Name, o.Name, values[0],
						values[1], got)
				} else if other.Parts[0].Steps[0].Line() == line {
					t.Errorf("%s: %s = %s and %s are shown alike: %s", v.Name, o.Name, values[0],
						values[1], line)
				}
			}
			open, problems := with(`"?"`)
			if len(problems) > 0 || len(edit.Differ(bare, open)) > 0 {
				t.Errorf(
					"%s: %s = \"?\" does not read as if it were not written: %v",
					v.Name,
					o.Name,
					problems,
				)
			}
		}
	}
	for _, o := range formula.StepOptions {
		if !used[o.Name] {
			t.Errorf("no verb takes %q", o.Name)
		}
	}
}

// Every option of an ingredient is read, shown and told apart.
func TestEveryIngredientOptionIsReadShownAndProven(t *testing.T) {
	samples := map[string][2]string{
		"amount": {
			`"10 g"`,
			`"11 g"`,
		}, "temp": {`"6 C"`, `"7 C"`}, "strain": {`"osmotolerant"`, `"standard"`},
		"protein": {`"12 %"`, `"13 %"`},
		"hydration": {
			`"45 %"`,
			`"50 %"`,
		}, "de": {`42`, `40`}, "as": {`"melted"`, `"cubes"`}, "reserve": {`"1 g"`, `"2 g"`},
		"note": {`"fresh"`, `"old"`},
	}
	for _, o := range formula.IngredientOptions {
		values, ok := samples[o.Name]
		if !ok {
			t.Fatalf("no sample of %q", o.Name)
		}
		in := map[string]string{
			"strain":    "instant yeast",
			"protein":   "bread flour",
			"hydration": "stiff starter",
			"de":        "glucose syrup",
		}[o.Name]
		if in == "" {
			in = "butter"
		}
		readValue := func(value string) (*formula.Formula, source.Problems) {
			settings := "amount = \"10 g\", " + o.Name + " = " + value
			if o.Name == "amount" {
				settings = "amount = " + value
			}
			return problemsOf(
				t,
				fmt.Sprintf(
					"formula \"f\" {\n  dough \"d\" { ingredients = { %q = { %s } } }\n}\n",
					in,
					settings,
				),
			)
		}
		one, problems := readValue(values[0])
		two, more := readValue(values[1])
		if problems = append(problems, more...); len(problems) > 0 {
			t.Errorf("%s: %v", o.Name, problems)
			continue
		}
		name := "dough \"d\": " + in
		if o.Name != "amount" {
			name += " " + o.Name
			got, want := o.Setting(one.Parts[0].Ingredients[0]), strings.Trim(values[0], `"`)
			if got != want {
				t.Errorf("%s = %s is shown as %q", o.Name, want, got)
			}
		}
		if got := edit.Differ(one, two); len(got) != 1 || got[0] != name {
			t.Errorf(
				"%s = %s and %s differ in %q, want %q",
				o.Name,
				values[0],
				values[1],
				got,
				name,
			)
		}
	}
}

// A verb reads its own value: a time, a measure or a part. No row is
// without one.
func TestEveryVerbHasItsOwnValue(t *testing.T) {
	seen := map[string]bool{}
	for _, v := range formula.Verbs {
		if seen[v.Name] {
			t.Errorf("%s has two rows", v.Name)
		}
		seen[v.Name] = true
		if v.Measures() == "" || v.Means == "" {
			t.Errorf("%s has no value of its own, or no meaning", v.Name)
		}
		f, problems := problemsOf(t, written(v.Name+" = "+mainOf(v)))
		if len(problems) > 0 {
			t.Errorf("%s: %v", v.Name, problems)
			continue
		}
		s := f.Parts[0].Steps[0]
		if !s.Time.Set && !s.Measure.Set && s.Words == "" {
			t.Errorf("%s = %s reads as nothing", v.Name, mainOf(v))
		}
		if v.PutsOn() != (s.Uses != nil) {
			t.Errorf("%s uses the part %v", v.Name, s.Uses)
		}
	}
}

// A verb takes "by" where some way suits it, and nowhere else; each
// word means one way of a verb.
func TestWaysSuitTheVerbsThatTakeThem(t *testing.T) {
	suited := map[string]bool{}
	for _, v := range formula.Verbs {
		names := formula.WayNames(v)
		takes := strings.Contains(" "+strings.Join(v.Options(), " ")+" ", " by ")
		if takes != (len(names) > 0) {
			t.Errorf("%s takes by = ...: %v; the ways %q suit it", v.Name, takes, names)
		}
		means := map[string]string{}
		for _, w := range formula.Ways {
			if !w.Suits(v) {
				continue
			}
			suited[w.Name] = true
			for _, word := range append([]string{w.Name}, w.Also...) {
				for _, said := range []string{word, strings.ToUpper(word), "in a " + word,
					strings.ReplaceAll(word, " ", "-")} {
					f, problems := problemsOf(
						t,
						written(v.Name+" = \"20 min\", by = "+fmt.Sprintf("%q", said)),
					)
					if len(problems) > 0 {
						t.Errorf("%s by %q: %v", v.Name, said, problems)
						continue
					}
					if got := f.Parts[0].Steps[0].Way; got != w {
						t.Errorf(
							"%s by %q is read as %s, and is a word for %s",
							v.Name,
							said,
							got,
							w,
						)
					}
				}
				if other := means[word]; other != "" {
					t.Errorf("%q means %s and %s of %s", word, other, w.Name, v.Name)
				}
				means[word] = w.Name
			}
		}
	}
	for _, w := range formula.Ways {
		if !suited[w.Name] || w.Means == "" {
			t.Errorf("%s suits no verb, or has no meaning", w.Name)
		}
	}
}

// Whatever a baker calls hot fat is hot fat, or is refused with the
// ways that there are.
func TestHotFatIsNeverLost(t *testing.T) {
	for _, said := range []string{"deep-fried", "fried", "fry", "deep frying", "deep fry",
		"Deep Fat Frying", "in hot oil", "hot oil", "hot fat",
		"in deep fat", "deep fat fryer", "in a deep-fryer", "fryer", "shallow frying", "pan-fried",
		"frying pan", "in oil", "in lard"} {
		f, problems := problemsOf(t, written(`cook = "3 min", by = "`+said+`"`))
		if len(problems) > 0 || !f.Parts[0].Steps[0].InHotFat() {
			t.Errorf("cook by %q is no frying: %v", said, problems)
		}
	}
	for _, said := range []string{"pan", "double boiler", "steam", "in the oven", "boiling water",
		"microwave", "on a griddle"} {
		f, problems := problemsOf(t, written(`cook = "3 min", by = "`+said+`"`))
		if len(problems) > 0 || f.Parts[0].Steps[0].InHotFat() {
			t.Errorf("cook by %q is frying: %v", said, problems)
		}
	}
	cook, _ := formula.FindVerb("cook")
	for said, want := range map[string]string{
		"deep fyring":      "nearest is frying; ",
		"hot oyl":          "nearest is frying; ",
		"as at home":       "",
		"sausage":          "",
		"with much effort": "",
	} {
		_, problems := problemsOf(t, written(`cook = "3 min", by = "`+said+`"`))
		text := fmt.Sprintf(
			"no way to cook %q; %sthe ways are %s; other words go into note = \"...\"",
			said,
			want,
			strings.Join(formula.WayNames(cook), ", "),
		)
		if len(problems) != 1 || problems[0].Text != text {
			t.Errorf("cook by %q: %v\nwant %s", said, problems, text)
		}
	}
}

// Every place of a formula is one that the kitchen knows the
// temperature of, by every word for it.
func TestPlacesAreTheKitchens(t *testing.T) {
	k := kitchen.Default()
	for _, p := range formula.Places {
		if g, ok := k.At(p.Name); !ok || g.Kind.Base() != "C" {
			t.Errorf("the kitchen does not say how warm %q is", p.Name)
		}
		if g, _ := k.At(p.Name); p.Cold() != (g.Hi < 8) {
			t.Errorf("%s is cold: %v, at %v C", p, p.Cold(), g.Interval)
		}
		if _, ok := heat.SurfaceCoefficient(p.Air()); !ok {
			t.Errorf("no air in %q", p.Name)
		}
		for _, word := range append([]string{p.Name}, p.Also...) {
			f, problems := problemsOf(t, written(`rest = "1 h", at = "in the `+word+`"`))
			if len(problems) > 0 || f.Parts[0].Steps[0].Stands() != p {
				t.Errorf("at = %q: %v", word, problems)
			}
		}
	}
	for said, want := range map[string]string{
		"fridg": `rest: at: no place "fridg" in the kitchen; nearest is fridge; or write a ` +
			`temperature: "27 C"`,
		"cellar": `rest: at: "cellar" is no figure; measure it, or write "10 C to 14 C"`,
		"350 F, then 325 F": `rest: at: an oven that falls is a step for each figure, one after ` +
			`the other: write { rest = "?", at = "350 F" }, { rest = "?", at = "325 F" }, ` +
			`each with its own time`,
		"outside": `rest: at: no place "outside" in the kitchen; known are freezer, fridge, ` +
			`room; or write a temperature: "27 C"`,
	} {
		_, problems := problemsOf(t, written(`rest = "1 h", at = "`+said+`"`))
		if len(problems) != 1 || problems[0].Text != want {
			t.Errorf("at = %q: %v", said, problems)
		}
	}
}

// A group holds verbs, and its word is no verb's and no part's.
func TestGroups(t *testing.T) {
	for _, g := range formula.Groups {
		if names := formula.VerbNames(g.Has); len(names) < 2 || g.Means == "" {
			t.Errorf("the group %s holds %q", g.Name, names)
		}
		if _, taken := formula.FindVerb(g.Name); taken ||
			strings.Contains(strings.Join(formula.KindNames, " "), g.Name) {
			t.Errorf("%s is another word already", g.Name)
		}
	}
}
