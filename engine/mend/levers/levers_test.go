package levers_test

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"math"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/formula/edit"
	"forebake/engine/formula/read"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/mend/levers"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// fixtures hold most of what a formula can say, in several ways
// of writing.
var fixtures = []string{`
formula "grams" {
  family = "sweet dough"
  makes  = "2 loaves of 800 g"
  dough "d" {
    ingredients = {
      "bread flour"      = "1000 g"
      "whole milk"       = { amount = "400 g to 420 g", temp = "30 C" }
      "water"            = "100 g"
      "active dry yeast" = "12 g"
      "sugar"            = "150 g"
      "honey"            = { amount = "2 tbsp" }
      "unsalted butter"  = { amount = "150 g", temp = "61 F" }
      "cinnamon"         = "2 tsp"
    }
    steps = [
      { mix = "8 min", by = "spiral", to = "25 C" },
      { rest = "90 min to 2 h", at = "25 C", as = "bowl", covered = true },
      { chill = "12 h", at = "fridge", as = "slab 60 mm", covered = true },
      { sheet = "5 mm", wide = "400 mm", time = "10 min" },
      { fill = "f" },
      { roll = "coil", slice = "30 mm", pieces = 12 },
      { divide = "2 pieces" },
      { pan = "long tin", tin = "long tin" },
      { proof = "9 min", at = "80 F", as = "ball" },
      { bake = "35 min", at = "190 C", core = "94 C" },
    ]
  }
  filling "f" {
    ingredients = {
      "dates"           = "200 g"
      "unsalted butter" = "80 g"
      "water"           = "100 g"
    }
    steps = [
      { cook = "5 min", to = "80 C" },
    ]
  }
}
`, `
formula "percent" {
  makes = "1.6 kg"
  dough "d" {
    ingredients = {
      "bread flour"   = "1000 g"
      "water"         = { amount = "60 %", temp = "20 C" }
      "salt"          = "1.8 %"
      "fresh yeast"   = { amount = "3 %", strain = "standard" }
      "egg"           = "10 %"
      "whole milk"    = "5 %"
    }
    steps = [
      { mix = "8 min" }, { divide = "80 g" },
      { cool = "3 h", at = "room", core = "30 C" },
    ]
  }
  filling "f" {
    ingredients = {
      "raspberries" = "300 g"
      "sugar"       = "60 g"
    }
    steps = [
      { cook = "10 min", to = "90 C" },
      { cool = "45 min", at = "20 C", as = "tray 30 mm" },
    ]
  }
}
`, `
formula "count" {
  makes = "1 loaf"
  dough "d" {
    ingredients = { "bread flour" = "500 g", "water" = "300 g" }
    steps = [{ mix = "5 min", at = "22 C" }, { pan = "short tin", count = 1 }]
  }
}
`}

// words are what kinds that take a word can be set to.
var words = []string{"osmotolerant", "instant"}

func options() formula.Options {
	return formula.Options{Larder: larder.New(), Tins: []string{"long tin", "short tin"}}
}

// text is a fixture with what was read from it.
type text struct {
	file *source.File
	one  *formula.Formula
}

func readText(t *testing.T, bytes []byte) text {
	t.Helper()
	f := source.New("t.hcl", bytes)
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: f}
	one := read.Formula(r, body.Blocks[0], options())
	if len(r.Problems) > 0 {
		t.Fatalf("%v\n%s", r.Problems, bytes)
	}
	return text{f, one}
}

// subjects lists everything in a formula that a rule can look at.
func subjects(f *formula.Formula) []facts.Subject {
	out := []facts.Subject{{On: facts.OnFormula}}
	for _, p := range f.Parts {
		out = append(out, facts.Subject{On: facts.OnPart, Part: p})
		for _, s := range p.Steps {
			out = append(out, facts.Subject{On: facts.OnStep, Part: p, Step: s})
		}
		for _, in := range p.Ingredients {
			out = append(out, facts.Subject{On: facts.OnIngredient, Part: p, Ingredient: in})
		}
	}
	return out
}

func query(name string, f *formula.Formula, x facts.Subject) *levers.Query {
	return &levers.Query{Name: name, Formula: f, Subject: x, Kitchen: kitchen.Default()}
}

// found lists the levers of a kind on a formula, each once.
func found(t *testing.T, k levers.Kind, f *formula.Formula) []*levers.Lever {
	t.Helper()
	var out []*levers.Lever
	for _, name := range k.Names() {
		for _, x := range subjects(f) {
			for _, computed := range []bool{false, true} {
				q := query(name, f, x)
				q.Computed = computed
				for _, l := range levers.Find(q) {
					if l.Kind == k && !slices.ContainsFunc(out, l.Same) {
						out = append(out, l)
					}
				}
			}
		}
	}
	return out
}

// settings gives some values that a lever can take, other than the
// written one.
func settings(l *levers.Lever) []levers.Setting {
	var out []levers.Setting
	switch {
	case l.IsAdvice():
		return []levers.Setting{levers.At(l.Low), levers.At(l.High)}
	case l.Low == l.High && l.Step > 0:
		return []levers.Setting{levers.At(l.Low)} // a restatement has one value
	case l.Kind.Traits().Setter == levers.ByRule:
		for _, word := range words {
			out = append(out, levers.Setting{Word: word})
		}
		return out
	}
	start := l.Start
	if math.IsNaN(start) {
		start = (l.Low + min(l.High, 100)) / 2
	}
	tries := []float64{l.Low, start * 0.8, start * 1.5, l.Low + 4*l.Step, start + l.Step, l.High}
	for _, x := range tries {
		x = max(l.Low, min(x, l.High, 5000))
		near, _ := l.Steps(x)
		if to := levers.At(l.Number(near)); to.Number >= l.Low && !to.Equals(levers.At(l.Start)) {
			out = append(out, to)
		}
	}
	return out
}

// TestKinds ranges over the registry: every kind has its traits, finds
// something in a fixture, edits it, reads the value back and describes
// the change.
func TestKinds(t *testing.T) {
	var texts []text
	for _, f := range fixtures {
		texts = append(texts, readText(t, []byte(f)))
	}
	for _, k := range levers.Kinds() {
		t.Run(reflect.TypeOf(k).Name(), func(t *testing.T) {
			if len(k.Names()) == 0 {
				t.Error("no adjust block can ask for it")
			}
			traits := reflect.ValueOf(k.Traits())
			for i := range traits.NumField() {
				if traits.Field(i).Uint() == 0 {
					t.Errorf("its traits say nothing of %s", traits.Type().Field(i).Name)
				}
			}
			places := 0
			for _, from := range texts {
				for _, l := range found(t, k, from.one) {
					places++
					checkGrid(t, l)
					changed := 0
					for _, to := range settings(l) {
						if checkChange(t, from, l, to) {
							changed++
						}
					}
					if changed == 0 {
						t.Errorf("no change of %s reads", k.Noun(l, from.one))
					}
				}
			}
			if places == 0 {
				t.Error("it finds nothing in the fixtures; add a place for it")
			}
		})
	}
}

// checkGrid looks at the values that a lever may take, and at its
// published range.
func checkGrid(t *testing.T, l *levers.Lever) {
	t.Helper()
	if l.Kind.Traits().Setter == levers.Searched {
		if !(l.Step > 0) || l.Unit == "" || !(l.Low < l.High) {
			t.Errorf("%+v is no grid", l.Grid)
		}
		if times := l.Round / l.Step; times < 1-1e-9 || math.Abs(times-math.Round(times)) > 1e-6 {
			t.Errorf("a baker's step of %v is no multiple of %v %s", l.Round, l.Step, l.Unit)
		}
	}
	if l.Kind.Traits().Presence == levers.Added && l.Start != 0 {
		t.Errorf("it is missing, and starts at %v", l.Start)
	}
}

// checkChange sets a lever, and reports whether the result could be
// read. A word may be meant for another kind. A bound of the grid may
// lie outside a step's range.
func checkChange(t *testing.T, from text, l *levers.Lever, to levers.Setting) bool {
	t.Helper()
	k := l.Kind
	changer, err := edit.New(from.file)
	if err != nil {
		t.Fatal(err)
	}
	edits, err := k.Edit(l, &levers.Text{Changer: changer, Formula: from.one}, to)
	if err != nil {
		t.Errorf("%v: %v", to, err)
		return false
	}
	told := k.Describe(&levers.Change{Lever: l, From: from.one, To: to, Edits: edits})
	if told == "" || strings.Contains(told, "%!") {
		t.Errorf("it describes %v as %q", to, told)
	}
	if l.IsAdvice() {
		if len(edits) > 0 {
			t.Errorf("it is advice, and edits %v", edits)
		}
		return true
	}
	noun := k.Noun(l, from.one)
	if !strings.HasPrefix(told, noun+": ") {
		t.Errorf("%q does not begin with %q", told, noun)
	}
	bytes, err := source.Apply(from.file.Text, edits)
	if err != nil {
		t.Fatal(err)
	}
	if !readable(bytes) {
		return false
	}
	after := readText(t, bytes)
	checkProof(t, l, to, from.one, after.one)
	if cost := k.Cost(l, to); !(cost > 0) {
		t.Errorf("%s costs %v", told, cost)
	}
	checkFields(t, l)
	return true
}

// readable reports whether a text reads without a problem.
func readable(bytes []byte) bool {
	f := source.New("t.hcl", bytes)
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return false
	}
	r := &reading.Reader{File: f}
	read.Formula(r, body.Blocks[0], options())
	return len(r.Problems) == 0
}

// checkProof compares the formula before and after a change with what
// the kind declares.
func checkProof(t *testing.T, l *levers.Lever, to levers.Setting, before, after *formula.Formula) {
	t.Helper()
	noun, traits := l.Kind.Noun(l, before), l.Kind.Traits()
	differ := edit.Differ(before, after)
	if len(differ) == 0 || traits.Extent == levers.OneValue && len(differ) > 1 {
		t.Errorf("%s set to %v: %d values differ: %q", noun, to, len(differ), differ)
	}
	if got := l.Kind.Value(l, after); traits.Basis == levers.Absolute && !got.Equals(to) {
		t.Errorf("%s set to %v reads %v", noun, to, got)
	}
	if traits.Basis == levers.OfWritten {
		checkRatios(t, noun, to.Number/100, before, after)
	}
	entries := func(f *formula.Formula) int { return f.Ingredients + f.Steps }
	if added := entries(after) > entries(before); added != (traits.Presence == levers.Added) {
		t.Errorf("%s set to %v: %d entries became %d", noun, to, entries(before), entries(after))
	}
}

// checkRatios holds that each amount that differs was multiplied by a
// factor, up to a step of the scale.
func checkRatios(t *testing.T, noun string, factor float64, before, after *formula.Formula) {
	t.Helper()
	for i, p := range before.Parts {
		for j, in := range p.Ingredients {
			was, is := in.Amount, after.Parts[i].Ingredients[j].Amount
			want := was.Hi * factor
			if is.Hi != was.Hi && math.Abs(is.Hi-want) > max(5, want/50) {
				t.Errorf("%s, %s: %s became %s, times %v", noun, in.Name, was.Text, is.Text, factor)
			}
		}
	}
}

// checkFields looks at what a lever says that it writes and depends on.
func checkFields(t *testing.T, l *levers.Lever) {
	t.Helper()
	if len(l.Kind.Writes(l)) == 0 {
		t.Error("it edits the formula, and writes no field")
	}
	if !l.Same(l) {
		t.Error("it is not the same as itself")
	}
	// A percentage of a percentage depends on the first.
	if l.Kind.Traits().Basis == levers.OfWritten && !l.DependsOn(l) {
		t.Error("it multiplies what is written, and does not depend on itself")
	}
}

// TestEveryKindIsRegistered reads the package's own files: each type
// that finds levers is in the registry, and each stands in a file of
// its own.
func TestEveryKindIsRegistered(t *testing.T) {
	registered := map[string]bool{}
	for _, k := range levers.Kinds() {
		registered[reflect.TypeOf(k).Name()] = true
	}
	paths, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	for _, path := range paths {
		file, err := parser.ParseFile(token.NewFileSet(), path, nil, 0)
		if err != nil {
			t.Fatal(err)
		}
		var here []string
		for _, decl := range file.Decls {
			if f, ok := decl.(*ast.FuncDecl); ok && f.Recv != nil && f.Name.Name == "Find" {
				here = append(here, fmt.Sprint(f.Recv.List[0].Type))
			}
		}
		if len(here) > 1 {
			t.Errorf("%s declares several kinds: %q", path, here)
		}
		for _, name := range here {
			if !registered[name] {
				t.Errorf("%s declares %s, and does not register it", path, name)
			}
			delete(registered, name)
		}
	}
	if len(registered) > 0 {
		t.Errorf("registered without a Find of their own: %v", registered)
	}
}

// TestGuideNames holds that the guide's paragraph on adjust blocks
// names no lever that is unknown.
func TestGuideNames(t *testing.T) {
	readme, err := os.ReadFile("../../../formulas/GUIDE.md")
	if err != nil {
		t.Fatal(err)
	}
	_, paragraph, _ := strings.Cut(string(readme), "An `adjust` block names a lever")
	paragraph, _, _ = strings.Cut(paragraph, "\n\n")
	told := map[string]bool{}
	for i, quoted := range strings.Split(paragraph, "`") {
		for _, name := range strings.Fields(quoted) {
			told[name] = i%2 == 1
		}
	}
	other := []string{"adjust", "within", "to", "step"}
	if len(told) < 20 {
		t.Fatalf("the guide tells of %d names", len(told))
	}
	for name, isName := range told {
		if isName && !levers.Known(name) && !slices.Contains(other, name) {
			t.Errorf("the guide tells of %q, which is no lever", name)
		}
	}
}

// TestFindOrder holds that the levers of single ingredients come before
// that of their class.
func TestFindOrder(t *testing.T) {
	f := readText(t, []byte(fixtures[0])).one
	x := facts.Subject{On: facts.OnPart, Part: f.Parts[0]}
	list := levers.Find(query("sugar", f, x))
	var nouns []string
	for _, l := range list {
		nouns = append(nouns, l.Kind.Noun(l, f))
	}
	want := []string{`sugar in dough "d"`, `honey in dough "d"`, `all sugar in dough "d"`}
	if !slices.Equal(nouns, want) {
		t.Errorf("got %q, want %q", nouns, want)
	}
}

// TestUsual holds the published ranges that levers of a class give to
// those of the family.
func TestUsual(t *testing.T) {
	f := readText(t, []byte(fixtures[0])).one
	for _, name := range levers.Names() {
		for _, x := range subjects(f) {
			for _, l := range levers.Find(query(name, f, x)) {
				usual, known := l.Kind.Usual(l, f)
				if known && !(usual.Low <= usual.Mid && usual.Mid <= usual.High && usual.High > 0) {
					t.Errorf("%s: %+v", l.Kind.Noun(l, f), usual)
				}
				want := f.Family.Sugar
				if name != "sugar" || x.Part.Kind != formula.Dough {
					continue
				}
				if usual.Low != want.Lo || usual.High != want.Hi {
					t.Errorf("%s: %+v, and the family has %+v", l.Kind.Noun(l, f), usual, want)
				}
			}
		}
	}
}
