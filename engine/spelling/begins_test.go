package spelling

import (
	"regexp"
	"testing"

	"pgregory.net/rapid"
)

// quick are patterns of every kind that MayMatch takes apart.
var quick = []string{
	`(?i)foxgloves?|yew|(?:calla|arum) lil(?:y|ies)`, `(?i)so[yi]a?[- ]?free`, `(?:glücks)?münzen?`,
	`\b(?:[4-9]|1[01]) ?\+ ?(?:months?|mois)`, `(?:very )*(?:ho|hot)+`, `x{2,3}y`, `a?b?c`,
	`(?i)kg|ſet`, `[^.]old`, `(?:for|à) (?:\pL+ )?tea`,
}

// What a pattern matches is never ruled out by the quick test, whatever
// stands around it.
func TestQuickTestMissesNothing(t *testing.T) {
	for _, text := range quick {
		re, may := regexp.MustCompile(text), MayMatch(text)
		rapid.Check(t, func(t *rapid.T) {
			words := rapid.StringMatching(`[a-zA-Zé .-]{0,6}`).Draw(t, "before") +
				rapid.OneOf(rapid.StringMatching(text), rapid.String()).Draw(t, "match") +
				rapid.StringMatching(`[a-z ]{0,4}`).Draw(t, "after")
			if re.MatchString(words) && !may(words) {
				t.Fatalf("%q matches %s", words, text)
			}
		})
	}
}

// It is of use: ordinary words of a bakery begin no match.
func TestQuickTestRulesOut(t *testing.T) {
	may := MayMatch(quick[:4]...)
	for _, words := range []string{
		"", "milk buns", "bun dough", "Plaited ring 12", "gluten", "brötchen", "for 8",
	} {
		if may(words) {
			t.Errorf("%q is not ruled out", words)
		}
	}
}

func FuzzMayMatch(f *testing.F) {
	f.Add(quick[0], "Foxglove")
	f.Fuzz(func(t *testing.T, pattern, text string) {
		re, err := regexp.Compile(pattern)
		if err != nil || len(pattern) > 100 {
			return
		}
		if re.MatchString(text) && !MayMatch(pattern)(text) {
			t.Errorf("%q matches %q", text, pattern)
		}
	})
}
