package facts

import (
	"math"
	"testing"

	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// sheet reads one formula from its body and makes its sheet, without a
// house file.
func sheet(t *testing.T, body string) *Sheet {
	t.Helper()
	f := source.New("f.hcl", []byte("formula \"t\" {\n"+body+"\n}\n"))
	parsed, problems := source.Parse(f)
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	r := &reading.Reader{File: f}
	one := read.Formula(r, parsed.Blocks[0], formula.Options{Larder: larder.New()})
	if len(r.Problems) > 0 {
		t.Fatal(r.Problems)
	}
	return NewSheet(one, kitchen.Default())
}

// value gives a fact of the formula, or of the named part.
func value(t *testing.T, s *Sheet, part, name string) Value {
	t.Helper()
	x := Subject{On: OnFormula}
	if part != "" {
		x = Subject{On: OnPart, Part: s.Formula.PartNamed(part)}
		if x.Part == nil {
			t.Fatalf("no part %q", part)
		}
	}
	f, ok := Find(x.On, name)
	if !ok {
		t.Fatalf("no fact %q", name)
	}
	return *s.Value(f, x)
}

func wantInterval(t *testing.T, what string, v Value, lo, hi float64) {
	t.Helper()
	close := func(a, b float64) bool { return a == b || math.Abs(a-b) <= 1e-6*max(1, math.Abs(b)) }
	if v.Absent || !close(v.Lo, lo) || !close(v.Hi, hi) {
		t.Errorf("%s is %v to %v (missing %v), not %v to %v", what, v.Lo, v.Hi, v.Absent, lo, hi)
	}
}

func wantAbsent(t *testing.T, what string, v Value) {
	t.Helper()
	if !v.Absent || v.Need == nil || v.Need.What == "" {
		t.Errorf("%s is %v to %v, and should be missing and say what it needs", what, v.Lo, v.Hi)
	}
}
