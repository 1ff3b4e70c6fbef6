package formula_test

import (
	"bytes"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/formula/edit"
	"forebake/engine/formula/read"
	"forebake/engine/house"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// demoHouse is the house of the demo formulas, whose larder and tins
// they use.
func demoHouse(t *testing.T) *house.House {
	t.Helper()
	text, err := os.ReadFile("../../formulas/house.hcl")
	if err != nil {
		t.Fatal(err)
	}
	h, problems := house.Read(source.New("house.hcl", text), nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return h
}

func readText(t *testing.T, text []byte, o formula.Options) (*formula.Formula, *source.File) {
	t.Helper()
	f := source.New("f.hcl", text)
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		t.Fatalf("%v\n%s", problems, text)
	}
	r := &reading.Reader{File: f}
	one := read.Formula(r, body.Blocks[0], o)
	if len(r.Problems) > 0 {
		t.Fatalf("%v\n%s", r.Problems, text)
	}
	return one, f
}

// copies gives a file as four bakers' editors would save it.
func copies(text []byte) map[string][]byte {
	crlf := bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n"))
	lines := strings.Split(string(text), "\n")
	for i, line := range lines {
		rest := strings.TrimLeft(line, " ")
		lines[i] = strings.Repeat("\t", (len(line)-len(rest))/2) + rest
	}
	return map[string][]byte{
		"plain":        text,
		"CRLF":         crlf,
		"BOM":          append([]byte("\xef\xbb\xbf"), text...),
		"tabs":         []byte(strings.Join(lines, "\n")),
		"BOM and CRLF": append([]byte("\xef\xbb\xbf"), crlf...),
	}
}

// Every value of every demo formula can be changed by itself: the file
// reads again, to a formula that differs in that value alone, and no
// byte outside one line differs.
func TestChangeOneValue(t *testing.T) {
	h := demoHouse(t)
	paths, err := filepath.Glob("../../formulas/*.hcl")
	if err != nil {
		t.Fatal(err)
	}
	changes := 0
	for _, path := range paths {
		if filepath.Base(path) == "house.hcl" {
			continue
		}
		original, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		for style, text := range copies(original) {
			one, file := readText(t, text, h.FormulaOptions())
			c, err := edit.New(file)
			if err != nil {
				t.Fatal(err)
			}
			check := func(what string, e source.Edit, err error, want ...string) {
				t.Helper()
				changes++
				if err != nil {
					t.Errorf("%s, %s: %s: %v", path, style, what, err)
					return
				}
				changed, err := source.Apply(text, []source.Edit{e})
				if err != nil {
					t.Fatal(err)
				}
				if n := len(source.Compare(text, changed)); n > 1 {
					t.Errorf("%s, %s: %s changes %d places", path, style, what, n)
				}
				if crlf := bytes.Count(text, []byte("\r\n")); crlf > 0 &&
					bytes.Count(changed, []byte("\n")) != bytes.Count(changed, []byte("\r\n")) {
					t.Errorf("%s, %s: %s mixes line endings", path, style, what)
				}
				again, _ := readText(t, changed, h.FormulaOptions())
				got := edit.Differ(one, again)
				slices.Sort(got)
				slices.Sort(want)
				if !slices.Equal(got, want) {
					t.Errorf(
						"%s, %s: %s changes %q, want %q:\n%q",
						path,
						style,
						what,
						got,
						want,
						e.New,
					)
				}
			}
			for _, p := range one.Parts {
				part := p.Kind.String() + " \"" + p.Name + "\": "
				for _, in := range p.Ingredients {
					name := part + in.Name
					if in.Amount.Set {
						e, err := c.Amount(
							in,
							in.Amount.Written(in.Amount.Lo*1.25, in.Amount.Hi*1.25),
						)
						check("amount of "+in.Name, e, err, name)
					}
					if in.Of == nil && !in.Amount.All {
						e, err := c.Option(in, "temp", "17 C")
						check("temp of "+in.Name, e, err, name+" temp")
						if in.Item.Yeast > 0 {
							strain := "osmotolerant"
							if in.Strain == strain {
								strain = "standard"
							}
							e, err := c.Option(in, "strain", strain)
							check("strain of "+in.Name, e, err, name+" strain")
						}
					}
				}
				e, err := c.Add(p, "salep", "3 g")
				if err == nil &&
					p.Kind == formula.Dough { // not in the larder: look at the line instead
					changed, _ := source.Apply(text, []source.Edit{e})
					diff := source.Compare(text, changed)
					last := p.Ingredients[len(p.Ingredients)-1].Place.Line()
					line := string(file.Text[file.LineSpan(last).Start:file.LineSpan(last).End])
					if len(diff) != 1 || len(diff[0].Old) != 0 ||
						strings.Index(diff[0].New[0], " = ") < strings.Index(line, " = ") ||
						diff[0].New[0][:4] != line[:4] {
						t.Errorf(
							"%s, %s: the new line %+v does not stand like %q",
							path,
							style,
							diff,
							line,
						)
					}
				}
				for _, s := range p.Steps {
					name := part + "step " + quantity.Plain(float64(s.Index+1)) + " " + s.Verb.Name
					if s.Time.Set {
						e, err := c.Main(s, s.Time.Written(s.Time.Lo+5, s.Time.Hi+5))
						check("time of "+s.Verb.Name, e, err, name+" time")
					}
					if s.Count != nil {
						e, err := c.Step(s, "count", s.Count.Written(s.Count.Lo+1, s.Count.Hi+1))
						check("count of "+s.Verb.Name, e, err, name+" count")
					}
					switch s.Verb.Name {
					case "proof":
						e, err := c.Step(s, "at", "29 C")
						if s.At.Text != "29 C" {
							check("at of "+s.Verb.Name, e, err, name+" at")
						}
					case "bake":
						e, err := c.Step(s, "core", "91.5 C")
						check("core", e, err, name+" core")
					case "mix":
						e, err := c.Step(s, "to", "23.5 C")
						check("to", e, err, name+" to")
					case "chill", "cool", "rest":
						e, err := c.Step(s, "as", "slab 33 mm")
						if s.Reading == nil {
							check("as of "+s.Verb.Name, e, err, name+" as")
						}
					}
					if s.Form != nil && s.Form.Shape == "slab" {
						e, err := c.Step(s, "as", s.Form.Written(s.Form.MM.Hi+1))
						check("slab of "+s.Verb.Name, e, err, name+" as")
					}
				}
			}
			if one.Makes.Each.Set {
				e, err := c.Makes(one, quantity.Plain(one.Makes.Pieces)+" pieces of 77 g")
				check("makes", e, err, "makes each")
			}
		}
	}
	if changes < 500 {
		t.Errorf("%d changes were tried; there should be more", changes)
	}
}

// What is missing is put in as its neighbours stand; what is there
// keeps its form.
func TestChangeForms(t *testing.T) {
	lines := func(s ...string) string { return strings.Join(s, "\n") }
	base := lines(
		`formula "t" {`,
		`  makes = 12`,
		`  dough "d" {`,
		`    ingredients = {`,
		`      "bread flour"   = "500g"`,
		`      "instant yeast" = "5 g"   # fresh bag`,
		`      "whole milk"    = {`,
		`        amount = "1 1/2 cups",`,
		`        temp   = "20 C",`,
		`      }`,
		`      "egg" = "1 piece" # large`,
		`    }`,
		`    steps = [`,
		`      { rest = "1 h" },`,
		`      { mix = "5 min", by = "hand" },`,
		`    ]`,
		`  }`,
		`  filling "f" { ingredients = { "dates" = "100 g", "water" = "50 g" } }`,
		`}`, "")
	one, file := readText(t, []byte(base), demoHouse(t).FormulaOptions())
	c, err := edit.New(file)
	if err != nil {
		t.Fatal(err)
	}
	d, f := one.Parts[0], one.Parts[1]
	flour, yeast := d.Ingredients[0], d.Ingredients[1]
	milk, egg := d.Ingredients[2], d.Ingredients[3]
	edit := func(e source.Edit, err error) source.Edit {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return e
	}
	for _, test := range []struct {
		edit     source.Edit
		old, new string
	}{
		{edit(c.Amount(flour, flour.Amount.Written(450, 450))), `"500g"`, `"450g"`},
		{edit(c.Amount(egg, egg.Amount.Written(2, 2))), `"1 piece"`, `"2 pieces"`},
		{edit(c.Amount(milk, milk.Amount.Written(354.88235475, 354.88235475))), `"1 1/2 cups"`,
			`"1.5 cup"`},
		{edit(c.Option(yeast, "strain", "osmotolerant")), `"5 g"   #`,
			`{ amount = "5 g", strain = "osmotolerant" }   #`},
		{edit(c.Option(milk, "temp", "6 C")), `temp   = "20 C",`, `temp   = "6 C",`},
		{edit(c.Option(milk, "as", "warm")), `temp   = "20 C",`,
			"temp   = \"20 C\",\n        as = \"warm\","},
		{edit(c.Rename(yeast, "fresh yeast")), `"instant yeast" = `, `"fresh yeast"   = `},
		{edit(c.Add(d, "salt", "9 g")), `"egg" = "1 piece" # large`,
			"\"egg\" = \"1 piece\" # large\n      \"salt\" = \"9 g\""},
		{edit(c.Add(f, "cornstarch", "9 g")), `"water" = "50 g" }`,
			`"water" = "50 g", "cornstarch" = "9 g" }`},
		{edit(c.Main(d.Steps[0], d.Steps[0].Time.Written(90, 90))), `rest = "1 h"`,
			`rest = "1 h 30 min"`},
		{edit(c.Main(d.Steps[0], d.Steps[0].Time.Written(120, 120))), `rest = "1 h"`,
			`rest = "2 h"`},
		{edit(c.Step(d.Steps[1], "to", "24 C")), `by = "hand" }`, `by = "hand", to = "24 C" }`},
		{edit(c.AddStep(d.Steps[0], `{ fold = 2 }`)), `{ rest = "1 h" },`,
			"{ rest = \"1 h\" },\n      { fold = 2 },"},
		{edit(c.AddStep(d.Steps[1], `{ fold = 2 }`)), `by = "hand" },`,
			"by = \"hand\" },\n      { fold = 2 },"},
		{edit(c.Makes(one, "10")), `makes = 12`, `makes = 10`},
	} {
		got, err := source.Apply([]byte(base), []source.Edit{test.edit})
		if err != nil {
			t.Fatal(err)
		}
		if want := strings.Replace(base, test.old, test.new, 1); string(got) != want {
			t.Errorf("got\n%s\nwant %s", got, test.new)
		}
	}
}

// A written quantity reads as the value that was asked for, whatever
// way the baker's own was written in.
func TestWrittenReads(t *testing.T) {
	for _, text := range []string{"180 g", "180g", "1.5 kg", "4 oz", "1 lb 2 oz", "2 1/2 tsp",
		"½ cup", "3 pieces", "1 piece", "1.6 %", "27 C", "80 F", "90 min", "1 h 30 min",
		"90 min to 2 h", "2 h", "1 day", "30 s", "5 mm", "1 in", "2-3 h"} {
		q, fault := quantity.Read(
			text,
			quantity.Amounts|quantity.Of(quantity.Temperature, quantity.Time, quantity.Length),
		)
		if fault != nil {
			t.Fatal(fault)
		}
		for _, by := range []float64{1, 2, 0.5, 1.1} {
			lo, hi := q.Lo*by, q.Hi*by
			again, fault := quantity.Read(q.Written(lo, hi), quantity.Of(q.Kind))
			if fault != nil ||
				max(again.Lo-lo, lo-again.Lo, again.Hi-hi, hi-again.Hi) > 1e-4*max(1, hi) {
				t.Errorf(
					"%q times %v is written %q, and reads %v (%v)",
					text,
					by,
					q.Written(lo, hi),
					again.Interval,
					fault,
				)
			}
		}
	}
}

// An edit changes the value behind another word for a verb, as the word
// is written.
func TestChangeBehindAnotherWord(t *testing.T) {
	text := []byte(`formula "f" {
  dough "d" {
    ingredients = { "bread flour" = "1000 g" }
    steps       = [{ at = "room", ferment = "1 h" }, { "prove" = "2 h", at = "27 C" }]
  }
}
`)
	f, file := readText(t, text, formula.Options{Larder: demoHouse(t).Larder})
	c, err := edit.New(file)
	if err != nil {
		t.Fatal(err)
	}
	for i, want := range []string{"90 min", "95 min"} {
		s := f.Parts[0].Steps[i]
		e, err := c.Time(s, want)
		if err != nil {
			t.Fatal(err)
		}
		if e.New != want || e.Old != s.Time.Text {
			t.Errorf("step %d: %q becomes %q", i, e.Old, e.New)
		}
	}
}
