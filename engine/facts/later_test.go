package facts

import (
	"os"
	"path/filepath"
	"testing"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// What comes later moves no figure that says so: not the time of a later
// step, nor its surroundings, nor what it aims at, nor its pieces.
func TestLaterStepsMoveNothing(t *testing.T) {
	paths, err := filepath.Glob("../../testdata/published/formulas/*.hcl")
	if err != nil || len(paths) < 20 {
		t.Fatal(paths, err)
	}
	compared, moved := 0, 0
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		file := source.New(filepath.Base(path), text)
		body, problems := source.Parse(file)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		r := &reading.Reader{File: file}
		f := read.Formula(r, body.Blocks[0], formula.Options{Larder: larder.New()})
		if len(r.Problems) > 0 {
			continue // it wants its own house
		}
		a, b := NewSheet(f, kitchen.Default()), &Sheet{}
		for _, p := range f.Parts {
			for i := range p.Steps {
				other := f.Copy()
				for _, s := range other.Parts[p.Serial].Steps[i+1:] {
					change(s)
				}
				b.Reset(other, kitchen.Default())
				for _, fact := range All(OnStep) {
					x := Subject{On: OnStep, Part: p, Step: p.Steps[i]}
					y := Subject{On: OnStep, Part: other.Parts[p.Serial],
						Step: other.Parts[p.Serial].Steps[i]}
					if !fact.past || !fact.Of(x) {
						continue
					}
					v, w := *a.Value(fact, x), *b.Value(fact, y)
					compared++
					if v.Absent != w.Absent || v.Lo != w.Lo || v.Hi != w.Hi {
						moved++
						t.Errorf("%s: %s of step %d: %v to %v, then %v to %v", path, fact.Name, i,
							v.Lo, v.Hi, w.Lo, w.Hi)
					}
				}
			}
		}
	}
	if compared < 1000 {
		t.Errorf("only %d compared", compared)
	}
}

// change gives a step other figures.
func change(s *formula.Step) {
	for _, g := range []*formula.Given{&s.Time, &s.At, &s.To, &s.Core} {
		if g.Set {
			g.Interval = figure.Point(g.Lo*0.7 + 9)
		}
	}
	for _, g := range []**formula.Given{&s.Count, &s.Pieces} {
		if *g != nil {
			one := **g
			one.Interval = figure.Point(one.Lo + 3)
			*g = &one
		}
	}
	s.Reading = nil
}
