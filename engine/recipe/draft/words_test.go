package draft

import (
	"testing"

	"forebake/engine/formula"
)

// The words that a draft is written in are those of the formula reader.
func TestWordsAreTheReaders(t *testing.T) {
	for _, w := range stepWords {
		if v, ok := formula.FindVerb(w); !ok || v.Name != w {
			t.Errorf("no step %q", w)
		}
	}
	for _, w := range wayWords {
		known := false
		for _, way := range formula.Ways {
			known = known || way.Name == w
		}
		if !known {
			t.Errorf("no way %q", w)
		}
	}
}
