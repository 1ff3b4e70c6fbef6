package recipe

import (
	"strings"
	"testing"
)

// oneLine are methods of one line, each a text over and over: with stops that end no sentence, with
// joints of ingredients, with more steps than a part may have, and without an end.
var oneLine = map[string]string{
	"stops":     "rest 1 min. then ",
	"brackets":  "rest (1 hr. or so ",
	"joints":    "1 cup plus 1 tbsp plus ",
	"sentences": "Knead. ",
	"one":       "bake 10 min at 200 C and ",
}

const listed = "Buns\n\n500 g flour\n300 g milk\n10 g yeast\n\nMethod\n"

// longText is a recipe whose method is one line of about so many bytes.
func longText(text string, bytes int) string {
	return listed + strings.Repeat(text, (bytes-len(listed))/len(text))
}

func BenchmarkOneLine(b *testing.B) {
	opts := options()
	for name, text := range oneLine {
		b.Run(name, func(b *testing.B) {
			whole := []byte(longText(text, MaxBytes))
			b.SetBytes(int64(len(whole)))
			for b.Loop() {
				_, _ = Convert(whole, opts)
			}
		})
	}
}

// TestLongSentence holds that a sentence too long to be tried is told, and that the rest of its
// line is read.
func TestLongSentence(t *testing.T) {
	text := listed + "Mix 10 min. Then " + strings.Repeat("bake 10 min at 200 C and ", 200) +
		"rest. Bake 20 min at 190 C."
	got, err := Convert([]byte(text), options())
	if err != nil {
		t.Fatal(err)
	}
	for _, want := range []string{`mix = "10 min"`, "not read: Then bake 10 min",
		`bake = "20 min"`} {
		if strings.Count(got.Text, want) != 1 {
			t.Errorf("%q stands %d times in\n%s", want, strings.Count(got.Text, want), got.Text)
		}
	}
}
