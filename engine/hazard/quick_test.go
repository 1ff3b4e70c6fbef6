package hazard

import (
	"testing"

	"pgregory.net/rapid"
)

// What is asked before the claims one by one rules out none of them.
func TestNoClaimIsMissed(t *testing.T) {
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
	})
}
