package engine_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"
	"unicode/utf8"

	"forebake/engine"
	"forebake/engine/report"
)

// Longest text for FuzzCheck: hostile length has its own tests.
const fuzzBytes = 4 << 10

// FuzzCheck checks any bytes as a formula file, from reading to print.
// Either there are problems, each with a text and a place that splits
// no character, or the formulas are judged; a second engine says the
// same bytes.
func FuzzCheck(f *testing.F) {
	for _, pattern := range []string{"../formulas/*.hcl", "../testdata/broken/*.hcl"} {
		paths, err := filepath.Glob(pattern)
		if err != nil || len(paths) == 0 {
			f.Fatalf("no seeds at %s", pattern)
		}
		for _, path := range paths {
			text, err := os.ReadFile(path)
			if err != nil {
				f.Fatal(err)
			}
			if len(text) <= fuzzBytes {
				f.Add(text)
			}
		}
	}
	dir := f.TempDir()
	engines := [2]*engine.Engine{engine.New(), engine.New()}
	engines[0].Workers, engines[1].Workers = 1, 2
	f.Fuzz(func(t *testing.T, text []byte) {
		if len(text) > fuzzBytes {
			return
		}
		var said [2]bytes.Buffer
		for i, e := range engines {
			res := e.Check([]engine.Input{{Name: "f.hcl", Text: bytes.Clone(text), Dir: dir}})
			for _, p := range res.Problems {
				if at := p.Place; p.Text == "" || at.File == nil || at.Start < 0 ||
					at.Start > at.End ||
					at.End > len(text) ||
					utf8.Valid(text) && (at.Start < len(text) && !utf8.RuneStart(text[at.Start]) ||
						at.End < len(text) && !utf8.RuneStart(text[at.End])) {
					t.Fatalf("%q stands at %d to %d of %d", p.Text, at.Start, at.End, len(text))
				}
				said[i].WriteString(p.String() + "\n")
			}
			if (len(res.Problems) == 0) != (len(res.Formulas) > 0) {
				t.Fatalf("%d problems and %d formulas", len(res.Problems), len(res.Formulas))
			}
			if len(res.Cautions) < len(res.Formulas) {
				t.Fatalf("%d cautions for %d formulas", len(res.Cautions), len(res.Formulas))
			}
			for _, format := range report.Formats {
				if err := report.Write(&said[i], format, &res.Run, report.Options{}); err != nil {
					t.Fatal(err)
				}
			}
		}
		if !bytes.Equal(said[0].Bytes(), said[1].Bytes()) {
			t.Fatalf("two engines say\n%s\nand\n%s", said[0].Bytes(), said[1].Bytes())
		}
	})
}
