package tolerant_test

import (
	"bytes"
	"slices"
	"testing"

	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// TestAlign squeezes the blanks of the demo formulas and aligns them
// again: nothing but blanks differs, a second time changes nothing, and
// the demo formulas themselves are aligned.
func TestAlign(t *testing.T) {
	for path, text := range demos(t) {
		body, _, _ := bytes.Cut(text, []byte("<<"))
		if bytes.Contains(body, []byte("farm")) {
			continue
		}
		squeezed := bytes.ReplaceAll(body, []byte("    "), []byte(" "))
		squeezed = bytes.ReplaceAll(squeezed, []byte(" = "), []byte("="))
		got, err := source.Apply(squeezed, tolerant.Align(squeezed))
		if err != nil {
			t.Fatal(err)
		}
		if !slices.EqualFunc(bytes.Fields(bare(got)), bytes.Fields(bare(squeezed)), bytes.Equal) {
			t.Errorf("%s: more than blanks is changed", path)
		}
		if again := tolerant.Align(got); len(again) > 0 {
			t.Errorf("%s: aligned twice, it changes again: %v", path, again)
		}
		if ps := problemsOf(source.New(path, got)); len(ps) > 0 {
			t.Errorf("%s: %v\n%s", path, ps, got)
		}
	}
}

// bare is a text without the blanks around its signs =.
func bare(text []byte) []byte {
	return bytes.ReplaceAll(bytes.ReplaceAll(text, []byte(" "), nil), []byte("\t"), nil)
}
