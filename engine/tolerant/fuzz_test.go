package tolerant_test

import (
	"testing"

	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// FuzzRepair types over a demo formula: whatever is typed, the repaired
// text reads without a problem, and every place of it leads back into
// the text.
func FuzzRepair(f *testing.F) {
	for _, text := range demos(f) {
		f.Add(text[:len(text)/2], uint16(10))
		f.Add(text, uint16(300))
	}
	f.Add([]byte("formula \"x\" {\n  dough \"d\" {\n    ingredients = {\n \"a"), uint16(3))
	f.Add([]byte("}]{[=\"\n<<E\n/*"), uint16(0))
	f.Fuzz(func(t *testing.T, text []byte, at uint16) {
		typed := source.New("typed.hcl", text)
		r := tolerant.Repair(typed, words, problemsOf)
		_ = tolerant.Where(text, int(at))
		if r.File == nil {
			return
		}
		if ps := problemsOf(r.File); len(ps) > 0 {
			t.Fatalf("the repaired text has problems: %v\n%s", ps, r.File.Text)
		}
		for i := range len(r.File.Text) + 1 {
			o := r.Offset(i)
			if o < 0 || o > len(text) {
				t.Fatalf("offset %d leads to %d of %d", i, o, len(text))
			}
		}
	})
}
