package layout

import (
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestFold(t *testing.T) {
	for _, test := range []struct{ in, want string }{
		{"short\n", "short\n"},
		{"  name      g   what it is in words", "  name      g   what it\n                is in\n" +
			"                words"},
		{"one two three four five six seven", "one two three four five\n    six seven"},
		{"\x00one two three four five six seven\n", "one two three four five six seven\n"},
		{"  averyveryverylongwordthatstands alone",
			"  averyveryverylongwordthatstands\n      alone"},
		{"\x1b[1mone two three four five six\x1b[0m",
			"\x1b[1mone two three four five\n    six\x1b[0m"},
	} {
		if got := Fold(test.in, 24); got != test.want {
			t.Errorf("%q folds to %q, not %q", test.in, got, test.want)
		}
	}
}

// A fold loses no word, and leaves no wider line than the longest
// word needs.
func TestFoldKeepsWords(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		words := rapid.SliceOf(rapid.StringMatching(`[a-z]{1,12}`)).Draw(t, "words")
		gap := rapid.SampledFrom([]string{" ", "  ", "      "}).Draw(t, "gap")
		line := rapid.SampledFrom([]string{"", "  ", "        "}).Draw(t, "indent") +
			strings.Join(words, gap)
		width := rapid.IntRange(40, 120).Draw(t, "width")
		got := Fold(line, width)
		if a, b := strings.Join(strings.Fields(got), " "), strings.Join(words, " "); a != b {
			t.Fatalf("%q became %q", b, a)
		}
		for _, one := range strings.Split(got, "\n") {
			if len(one) > width {
				t.Fatalf("a line of %d at %d: %q", len(one), width, one)
			}
		}
	})
}
