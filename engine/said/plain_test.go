package said

import (
	"testing"

	"pgregory.net/rapid"
)

// No pattern finds warmth in a name of plainNames.
func TestPlainNamesAreNotWarm(t *testing.T) {
	for name := range plainNames {
		if isWarm(name) {
			t.Errorf("%q says how warm it goes in", name)
		}
	}
	if !isWarm("warm milk") || NoWarmth("cold water") {
		t.Error("a warm name is taken for a plain one")
	}
}

// What the cheap look passes over, no pattern finds.
func TestMayHoldPassesNothingOver(t *testing.T) {
	words := []string{"into ", "rest", "ſtand", "2 x 2lb loaf", "tinſ", "diſh", "pans",
		"Trays", "caſe", "for ", "FOR ", "to glaze", "duſting", "overnight", "Over night",
		"freezer", "FRIDGE", "rise", "riſe", "proof", "Retard", "chill", "30 min", "½ h",
		"the bench", "a", "large", "ſmall", "egg"}
	found := 0
	rapid.Check(t, func(t *rapid.T) {
		text := ""
		for range rapid.IntRange(1, 5).Draw(t, "words") {
			text += rapid.SampledFrom(words).Draw(t, "word") +
				rapid.SampledFrom([]string{"", " ", ", "}).Draw(t, "between")
		}
		apart := purposes.MatchString(text) && !forDough.MatchString(text)
		if _, ok := Apart(text); ok && !apart {
			t.Fatalf("Apart(%q) is true", text)
		} else if apart {
			found++
			if head, ok := Apart(text); !ok && purposes.MatchString(text) {
				t.Fatalf("Apart(%q) gives %q, %v", text, head, ok)
			}
		}
		_, _, timed := TimeIn(text)
		want := waits.MatchString(text) && (timed || inCold.MatchString(text))
		if Waits(text) != want {
			t.Fatalf("Waits(%q) is not %v", text, want)
		}
	})
	if found == 0 {
		t.Error("no text holds a purpose")
	}
}
