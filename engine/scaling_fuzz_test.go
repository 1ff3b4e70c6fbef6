package engine_test

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"forebake/engine"
	"forebake/engine/formula"
	"forebake/engine/formula/edit"
	"forebake/engine/source"
)

// FuzzScale scales any bytes as a formula file. Either there are
// problems, each with a text, or the scaled text reads, has the same
// lines, and differs only in amounts, counts, readings and notes.
func FuzzScale(f *testing.F) {
	paths, err := filepath.Glob("../formulas/*.hcl")
	if err != nil || len(paths) == 0 {
		f.Fatal("no seeds")
	}
	for i, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			f.Fatal(err)
		}
		if len(text) <= fuzzBytes {
			f.Add(text, uint16(3+40*i))
		}
	}
	dir := f.TempDir()
	e := engine.New()
	f.Fuzz(func(t *testing.T, text []byte, pieces uint16) {
		if len(text) > fuzzBytes || pieces == 0 {
			return
		}
		in := engine.Input{Name: "f.hcl", Text: bytes.Clone(text), Dir: dir}
		res := e.Scale(in, "", engine.Size{Pieces: float64(pieces)})
		for _, p := range res.Problems {
			if p.Text == "" {
				t.Fatal("a problem without a text")
			}
		}
		if len(res.Problems) > 0 {
			if res.Text != nil {
				t.Fatalf("a text beside problems: %s", res.Text)
			}
			return
		}
		if a, b := bytes.Count(text, []byte("\n")), bytes.Count(res.Text, []byte("\n")); a != b {
			t.Fatalf("%d lines, then %d\n%s", a, b, res.Text)
		}
		was, is := readAgain(t, text), readAgain(t, res.Text)
		for _, name := range edit.Differ(was, is) {
			if !scales(name) {
				t.Fatalf("%s is changed\n%s", name, res.Text)
			}
		}
	})
}

// scales reports whether a formula's value, by its name in
// formula.Values, may change with its size.
func scales(name string) bool {
	for _, end := range []string{"makes", "makes in all", " reserve", " pieces", " count", " note",
		" measured", " measure"} {
		if strings.HasSuffix(name, end) {
			return true
		}
	}
	_, ingredient, ok := strings.Cut(name, "\": ")
	return ok && !strings.HasPrefix(ingredient, "step ")
}

// readAgain reads the first formula of a text in the default house.
func readAgain(t *testing.T, text []byte) *formula.Formula {
	t.Helper()
	body, problems := source.Parse(source.New("f.hcl", text))
	if len(problems) > 0 || len(body.Blocks) == 0 {
		t.Fatalf("%v\n%s", problems, text)
	}
	return readFormula(t, text)
}
