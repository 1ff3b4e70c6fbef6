package recipe

import (
	"slices"
	"strings"

	"forebake/engine/recipe/draft"
	"forebake/engine/spelling"
)

// usual is how long a step usually takes where a text does not say, and at what sign. Common
// practice, no source; of a bake and of what is kept nothing is taken.
var usual = []struct {
	verb, time string
	dough      bool
	sign       *spelling.Words
}{
	{draft.Soak, "5 to 15 min", true, spelling.Pattern(`(?i)yeast|foam|froth|bubbl`)},
	{draft.Soak, "30 min to 12 h", true, spelling.Pattern(``)},
	{draft.Rest, "1 h to 3 h", true, spelling.Pattern(`(?i)doubl|risen|puff|volume|size|bulk`)},
	{draft.Rest, "10 to 40 min", true, spelling.Pattern(``)},
	{draft.Proof, "45 to 150 min", true, spelling.Pattern(``)},
	{draft.Chill, "30 min to 2 h", true, spelling.Pattern(``)},
	{draft.Cool, "30 min to 2 h", true, spelling.Pattern(``)}, // of what is live or baked dough
	{draft.Cool, "1 h to 4 h", false, spelling.Pattern(``)},
	{draft.Melt, "2 to 10 min", false, spelling.Pattern(``)},
	{draft.Cook, "2 to 20 min", false, spelling.Pattern(``)},
}

// mixTime is how long a mix usually takes, by its words. Common practice, no source.
func mixTime(words string) string {
	switch lower := strings.ToLower(words); {
	case strings.Contains(lower, "knead"):
		return "5 to 15 min"
	case strings.Contains(lower, "beat"), strings.Contains(lower, "work"),
		strings.Contains(lower, "whip"), strings.Contains(lower, "cream"):
		return "2 to 10 min"
	}
	return "1 to 10 min"
}

// usualSheet is how thick a sweet dough is rolled out.
const usualSheet = "3 mm to 12 mm"

// usualFat is how hot fat for frying dough usually is.
const usualFat = "170 C to 190 C"

var mixWays = []struct{ words, way string }{
	{draft.ByDoughHook, draft.ByDoughHook}, {draft.ByPaddle, draft.ByPaddle},
	{draft.ByStandMixer, draft.ByStandMixer}, {draft.BySpiral, draft.BySpiral},
	{draft.ByPlanetary, draft.ByPlanetary}, {"electric mixer", draft.ByMixer},
	{draft.ByFoodProcessor, draft.ByFoodProcessor}, {"by hand", draft.ByHand},
	{"wooden spoon", draft.ByHand}, {"floured surface", draft.ByHand},
	{"floured board", draft.ByHand}, {"work surface", draft.ByHand},
	{draft.ByMixer, draft.ByMixer},
}

// usualOn is what goes on a piece where a list does not say how much, g; eggs are counted. Common
// practice, no source.
const usualOnLo, usualOnHi = 1.0, 3.0

// without is a list without some of its items.
func without[T comparable](list []T, gone ...T) []T {
	return slices.DeleteFunc(list, func(one T) bool { return slices.Contains(gone, one) })
}

// isOneOf reports whether a word is one of some.
func isOneOf(word string, of ...string) bool { return slices.Contains(of, word) }
