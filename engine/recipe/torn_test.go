package recipe

import (
	"math/rand/v2"
	"os"
	"path/filepath"
	"testing"
)

// TestAnyTextIsAccepted tears and joins the lists, and holds what is
// promised of every draft.
func TestAnyTextIsAccepted(t *testing.T) {
	paths, err := filepath.Glob("testdata/*.txt")
	if err != nil {
		t.Fatal(err)
	}
	var texts [][]byte
	for _, path := range paths {
		text, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		texts = append(texts, text)
	}
	rnd, opts := rand.New(rand.NewPCG(1, 2)), options()
	for range 120 {
		text := torn(rnd, texts)
		d, err := Convert(text, opts)
		if err != nil {
			continue
		}
		if fault := holds(d); fault != "" {
			t.Fatalf("%s\nof\n%s", fault, text)
		}
	}
}

// torn is one of the texts with up to 30 places changed: a letter, a
// piece of another text, a piece left out, a piece twice.
func torn(rnd *rand.Rand, texts [][]byte) []byte {
	out := append([]byte{}, texts[rnd.IntN(len(texts))]...)
	for range rnd.IntN(30) {
		if len(out) == 0 {
			return []byte("500 g flour")
		}
		i := rnd.IntN(len(out))
		j := min(len(out), i+rnd.IntN(30))
		switch rnd.IntN(4) {
		case 0:
			out[i] = byte(' ' + rnd.IntN(95))
		case 1:
			other := texts[rnd.IntN(len(texts))]
			k := rnd.IntN(len(other))
			piece := other[k:min(len(other), k+rnd.IntN(40))]
			out = append(out[:i:i], append(append([]byte{}, piece...), out[i:]...)...)
		case 2:
			out = append(out[:i:i], out[j:]...)
		case 3:
			out = append(out[:j:j], out[i:]...)
		}
	}
	return out
}
