package engine_test

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"forebake/engine"
)

func saltless(name string) string {
	return fmt.Sprintf(
		"formula %q {\n  dough \"d\" {\n    ingredients = {\n      \"bread flour\" = \"1000 g\"\n"+
			"      \"water\" = \"600 g\"\n      \"instant yeast\" = \"10 g\"\n"+
			"      \"salt\" = \"5 g\"\n    }\n  }\n}\n",
		name,
	)
}

// The findings of a few formulas carry their mends; those of many do
// not, and a notice says how to get them.
func TestSuggest(t *testing.T) {
	for _, n := range []int{2, 13, 61} {
		var text string
		for i := range n {
			text += saltless(fmt.Sprint("t", i))
		}
		e := engine.New()
		inputs := []engine.Input{{Name: "t.hcl", Text: []byte(text), Dir: t.TempDir()}}
		res := e.Check(inputs)
		e.Suggest(res, res.Places())
		told := 0
		for _, f := range res.Findings {
			if f.Rule == "salt-low" && len(f.Mends) == 1 && f.Mends[0].Trust == "exact" &&
				strings.HasPrefix(f.Mends[0].Text, `salt in dough "d": 5 g to 18 g (line `) {
				told++
			}
		}
		switch {
		case n < 61 && (told != n || len(res.Notices) != 0):
			t.Errorf("%d of %d findings carry their mend; notices %q", told, n, res.Notices)
		case n == 61 && (told != 0 || len(res.Notices) != 1):
			t.Errorf("of 61 formulas %d findings carry a mend; notices %q", told, res.Notices)
		}
	}
}

// changedFiles counts the files that a result would write.
func changedFiles(res *engine.MendResult) int {
	files := map[string]bool{}
	for _, m := range res.Mendings {
		if len(m.Changes) > 0 {
			files[m.File] = true
		}
	}
	return len(files)
}

// All formulas of a file are mended in one writing, the same for any
// number of workers; a file that changed meanwhile is refused.
func TestMendFiles(t *testing.T) {
	want := ""
	for _, workers := range []int{1, 3} {
		dir := t.TempDir()
		var inputs []engine.Input
		for i := range 4 {
			path := filepath.Join(dir, fmt.Sprintf("f%d.hcl", i))
			if err := os.WriteFile(path, []byte(saltless("a")+saltless("b")), 0o644); err != nil {
				t.Fatal(err)
			}
			inputs = append(inputs, engine.Input{Name: filepath.Base(path), Path: path, Dir: dir})
		}
		e := engine.New()
		e.Workers = workers
		var progress []int
		e.Progress = func(done, of int) { progress = append(progress, done, of) }
		res := e.Mend(inputs, false)
		if !slices.Equal(progress, []int{1, 4, 2, 4, 3, 4, 4, 4}) {
			t.Errorf("%d workers: the progress is %v", workers, progress)
		}
		if len(res.Problems) > 0 || len(res.Mendings) != 8 || changedFiles(res) != 4 {
			t.Fatalf(
				"%v, %d mendings, %d files",
				res.Problems,
				len(res.Mendings),
				changedFiles(res),
			)
		}
		if got := fmt.Sprintf("%+v", res.Mendings); want == "" {
			want = got
		} else if got != want {
			t.Error("another number of workers, another answer")
		}
		last := inputs[3].Path
		mine := []byte(saltless("c"))
		if err := os.WriteFile(last, mine, 0o644); err != nil {
			t.Fatal(err)
		}
		if err := res.Write(); err == nil || !strings.Contains(err.Error(), "has changed") {
			t.Errorf("a file that changed under the run: %v", err)
		}
		for i, in := range inputs {
			text, err := os.ReadFile(in.Path)
			if old := saltless("a") + saltless("b"); err != nil || i < 3 && string(text) != old ||
				i == 3 && string(text) != string(mine) {
				t.Errorf("%s was written: %v", in.Name, err)
			}
		}
		if res = e.Mend(inputs, false); res.Write() != nil {
			t.Fatal("the second run is not written")
		}
		for i, formulas := range []int{2, 2, 2, 1} {
			text, _ := os.ReadFile(inputs[i].Path)
			if strings.Count(string(text), `"18 g"`) != formulas {
				t.Errorf("not all formulas are mended:\n%s", text)
			}
		}
	}
}

// TestSuggestSome mends the formulas that are asked for, and no other.
func TestSuggestSome(t *testing.T) {
	e := engine.New()
	res := e.Check([]engine.Input{{Name: "t.hcl", Text: []byte(saltless("a") + saltless("b")),
		Dir: t.TempDir()}})
	e.Suggest(res, res.Places()[1:])
	for _, f := range res.Findings {
		if want := f.Formula == "b"; f.Rule == "salt-low" && (len(f.Mends) > 0) != want {
			t.Errorf("%q: mends %v", f.Formula, f.Mends)
		}
	}
}
