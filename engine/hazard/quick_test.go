package hazard

import (
	"testing"

	"pgregory.net/rapid"

	"forebake/engine/spelling"
)

// The quick tests rule out no words that the patterns find.
func TestQuickTestsMissNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		around := rapid.StringMatching(`[a-zé ]{0,6}`)
		before, after := around.Draw(t, "before"), around.Draw(t, "after")
		claim := claims[rapid.IntRange(0, len(claims)-1).Draw(t, "claim")]
		name := before + " " + rapid.StringMatching(claim.words).Draw(t, "words") + " " + after
		for i, says := range claimWords {
			if says(name) && !claimed(name) {
				t.Errorf("%q: claim %q is missed", name, claims[i].name)
			}
		}
		thing := things[rapid.IntRange(0, len(things)-1).Draw(t, "thing")]
		words := before + rapid.StringMatching(thing.words).Draw(t, "words") + after
		if spelling.Pattern(thing.words)().MatchString(words) && !mayBeThing(words) {
			t.Errorf("%q is missed", words)
		}
	})
}
