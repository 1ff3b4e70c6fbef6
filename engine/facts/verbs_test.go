package facts_test

import (
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"forebake/engine/facts"
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// demo reads every formula of the demo kitchen.
func demo(t *testing.T) ([]*formula.Formula, *kitchen.Kitchen) {
	t.Helper()
	text, err := os.ReadFile("../../formulas/house.hcl")
	if err != nil {
		t.Fatal(err)
	}
	h, problems := house.Read(source.New("house.hcl", text), nil)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	paths, err := filepath.Glob("../../formulas/*.hcl")
	if err != nil {
		t.Fatal(err)
	}
	var list []*formula.Formula
	for _, path := range paths {
		if filepath.Base(path) == "house.hcl" {
			continue
		}
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		list = append(list, readOne(t, filepath.Base(path), string(text), h.FormulaOptions()))
	}
	return list, h.Kitchen
}

func readOne(t *testing.T, name, text string, o formula.Options) *formula.Formula {
	t.Helper()
	file := source.New(name, []byte(text))
	body, problems := source.Parse(file)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: file}
	f := read.Formula(r, body.Blocks[0], o)
	if len(r.Problems) > 0 {
		t.Fatal(r.Problems)
	}
	return f
}

// eachFact visits every figure of a formula, its parts, ingredients
// and steps.
func eachFact(f *formula.Formula, visit func(fact *facts.Fact, x facts.Subject, name string)) {
	all := func(x facts.Subject, name string) {
		for _, fact := range facts.All(x.On) {
			visit(fact, x, name+"."+fact.Name)
		}
	}
	all(facts.Subject{On: facts.OnFormula}, f.Name)
	for _, p := range f.Parts {
		all(facts.Subject{On: facts.OnPart, Part: p}, f.Name+"/"+p.Name)
		for _, in := range p.Ingredients {
			all(
				facts.Subject{On: facts.OnIngredient, Part: p, Ingredient: in},
				f.Name+"/"+p.Name+"/"+in.Name,
			)
		}
		for _, s := range p.Steps {
			all(
				facts.Subject{On: facts.OnStep, Part: p, Step: s},
				fmt.Sprintf("%s/%s/step %d", f.Name, p.Name, s.Index),
			)
		}
	}
}

// No figure depends on a verb's name: with every verb renamed all stay,
// except the name itself. A verb of the same traits is thus the same in
// every answer.
func TestNoAnswerDependsOnAVerbsName(t *testing.T) {
	list, k := demo(t)
	looked := 0
	for _, f := range list {
		type answer struct {
			lo, hi, mid float64
			words       []string
			absent      bool
		}
		before := map[string]answer{}
		s := facts.NewSheet(f, k)
		eachFact(f, func(fact *facts.Fact, x facts.Subject, name string) {
			v := s.Value(fact, x)
			before[name] = answer{v.Lo, v.Hi, v.Mid, v.Words, v.Absent}
		})
		for _, p := range f.Parts {
			for _, step := range p.Steps {
				other := *step.Verb
				other.Name = "park"
				step.Verb = &other
			}
		}
		s = facts.NewSheet(f, k)
		eachFact(f, func(fact *facts.Fact, x facts.Subject, name string) {
			if fact.On == facts.OnStep && fact.Name == "verb" {
				return
			}
			looked++
			v, want := s.Value(fact, x), before[name]
			same := v.Lo == want.lo && v.Hi == want.hi && v.Absent == want.absent &&
				slices.Equal(v.Words, want.words) &&
				(v.Mid == want.mid || math.IsNaN(v.Mid) && math.IsNaN(want.mid))
			if !same {
				t.Errorf("%s: %v..%v (%v) becomes %v..%v (%v) when the verbs have other names",
					name, want.lo, want.hi, want.words, v.Lo, v.Hi, v.Words)
			}
		})
	}
	if looked < 5000 {
		t.Errorf("%d figures were looked at; there should be more", looked)
	}
}

// waitFormula is a part that stands for six hours in the room by
// a verb.
func waitFormula(verb string) string {
	return `formula "f" {
  filling "custard" {
    ph          = 6.5
    ingredients = { "whole milk" = { amount = "2000 g", temp = "21 C" },
      "egg yolk" = { amount = "480 g", temp = "21 C" }, "sugar" = "400 g", "corn starch" = "160 g" }
    steps       = [{ ` + verb + ` = "6 h", at = "room" }]
  }
  filling "cooked custard" {
    ph          = 6.5
    ingredients = { "whole milk" = "2000 g", "egg yolk" = "480 g", "sugar" = "400 g",
      "corn starch" = "160 g" }
    steps       = [{ cook = "8 min", to = "85 C" }, { ` + verb + ` = "6 h", at = "room" }]
  }
}`
}

// A wait by any verb counts its hours, and its cooling is followed. One
// without a time is of unknown time.
func TestEveryWaitCounts(t *testing.T) {
	_, k := demo(t)
	want := map[string]string{}
	for _, v := range formula.Verbs {
		if !v.Waits() {
			continue
		}
		f := readOne(t, v.Name, waitFormula(v.Name), formula.Options{Larder: larder.New()})
		s := facts.NewSheet(f, k)
		for _, name := range []string{"warm_h", "budget_salmonella", "budget_s_aureus",
			"budget_b_cereus"} {
			fact, _ := facts.Find(facts.OnPart, name)
			got := s.Value(fact, facts.Subject{On: facts.OnPart, Part: f.Parts[0]})
			agree(t, want, v.Name, name, fmt.Sprintf("%.6g to %.6g", got.Lo, got.Hi))
			if !(got.Lo > 0) {
				t.Errorf(
					"%s: %s is %v, and the custard stood for six hours",
					v.Name,
					name,
					got.Interval(),
				)
			}
		}
		for _, name := range []string{"starts_hot", "h_57_to_21", "h_57_to_5", "cooling_way"} {
			fact, _ := facts.Find(facts.OnStep, name)
			p := f.Parts[1]
			got := s.Value(fact, facts.Subject{On: facts.OnStep, Part: p, Step: p.Steps[1]})
			agree(
				t,
				want,
				v.Name,
				name,
				fmt.Sprintf("%.6g to %.6g %v %v", got.Lo, got.Hi, got.Words, got.Absent),
			)
			if got.Absent {
				t.Errorf("%s: no %s", v.Name, name)
			}
		}
		untimed := readOne(
			t,
			v.Name,
			strings.ReplaceAll(waitFormula(v.Name), `"6 h"`, `"?"`),
			formula.Options{Larder: larder.New()},
		)
		warm, _ := facts.Find(facts.OnPart, "warm_h")
		if got := facts.NewSheet(untimed, k).Value(warm,
			facts.Subject{On: facts.OnPart, Part: untimed.Parts[0]}); !math.IsInf(got.Hi, 1) {
			t.Errorf("%s without a time counts for %v h in the warm", v.Name, got.Interval())
		}
	}
}

func agree(t *testing.T, want map[string]string, verb, name, got string) {
	t.Helper()
	if want[name] == "" {
		want[name] = got
	}
	if got != want[name] {
		t.Errorf("%s: %s is %s, and %s by another verb", verb, name, got, want[name])
	}
}

// unfavourable are food-safety figures, with the end that counts
// against the formula.
var unfavourable = []struct {
	on   facts.On
	name string
	high bool
}{
	{
		facts.OnPart,
		"warm_h",
		true,
	}, {facts.OnPart, "budget_salmonella", true}, {facts.OnPart, "budget_s_aureus", true},
	{
		facts.OnPart,
		"budget_b_cereus",
		true,
	}, {facts.OnPart, "is_killed", false}, {facts.OnPart, "has_raw_egg", true},
	{facts.OnPart, "has_raw_flour", true}, {facts.OnPart, "needs_control", true},
}

// A verb with no declared trait never improves an answer about food
// safety, whichever step it replaces.
func TestUndeclaredTraitsAreUnfavourable(t *testing.T) {
	list, k := demo(t)
	tried, worse := 0, 0
	for _, f := range list {
		measure := func() map[string]float64 {
			out := map[string]float64{}
			s := facts.NewSheet(f, k)
			for _, u := range unfavourable {
				fact, ok := facts.Find(u.on, u.name)
				if !ok {
					t.Fatalf("no %s", u.name)
				}
				for _, p := range f.Parts {
					v := s.Value(fact, facts.Subject{On: u.on, Part: p})
					if u.high {
						out[p.Name+" "+u.name] = v.Hi
					} else {
						out[p.Name+" "+u.name] = -v.Lo
					}
				}
			}
			return out
		}
		before := measure()
		for _, p := range f.Parts {
			for _, step := range p.Steps {
				known := step.Verb
				step.Verb = &formula.Verb{Name: "park"}
				tried++
				for name, bad := range measure() {
					// What is spread at another temperature is followed
					// in other volume steps.
					if bad < before[name]-1e-9-0.005*math.Abs(before[name]) {
						t.Errorf("%s: %s in %q as an undeclared verb: %s is %.4g, and was %.4g",
							f.Name, known.Name, p.Name, name, bad, before[name])
					}
					if bad > before[name] {
						worse++
					}
				}
				step.Verb = known
			}
		}
	}
	if tried < 100 || worse < tried {
		t.Errorf("%d verbs were left undeclared, and %d answers got worse", tried, worse)
	}
}
