package recipe

import (
	"regexp"
	"slices"
	"strings"

	"forebake/engine/spelling"
)

// usual is how long a step usually takes where a text does not say, and at what sign. Common practice,
// no source; of a bake and of what is kept nothing is taken.
var usual = []struct {
	verb, time string
	dough      bool
	sign       func() *regexp.Regexp
}{
	{doSoak, "5 to 15 min", true, spelling.Pattern(`(?i)yeast|foam|froth|bubbl`)},
	{doSoak, "30 min to 12 h", true, spelling.Pattern(``)},
	{doRest, "1 h to 3 h", true, spelling.Pattern(`(?i)doubl|risen|puff|volume|size|bulk`)},
	{doRest, "10 to 40 min", true, spelling.Pattern(``)},
	{doProof, "45 to 150 min", true, spelling.Pattern(``)},
	{doChill, "30 min to 2 h", true, spelling.Pattern(``)},
	{doCool, "30 min to 2 h", true, spelling.Pattern(``)}, // of what is live or baked dough
	{doCool, "1 h to 4 h", false, spelling.Pattern(``)},
	{doMelt, "2 to 10 min", false, spelling.Pattern(``)},
	{doCook, "2 to 20 min", false, spelling.Pattern(``)},
}

// mixTime is how long a mix usually takes, by its words. Common practice, no source.
func mixTime(words string) string {
	switch lower := strings.ToLower(words); {
	case strings.Contains(lower, "knead"):
		return "5 to 15 min"
	case strings.Contains(lower, "beat"), strings.Contains(lower, "work"), strings.Contains(lower, "whip"), strings.Contains(lower, "cream"):
		return "2 to 10 min"
	}
	return "1 to 10 min"
}

// usualSheet is how thick a sweet dough is rolled out.
const usualSheet = "3 mm to 12 mm"

// usualFat is how hot fat for frying dough usually is.
const usualFat = "170 C to 190 C"

var mixWays = []struct{ words, way string }{
	{byDoughHook, byDoughHook}, {byPaddle, byPaddle}, {byStandMixer, byStandMixer},
	{bySpiral, bySpiral}, {byPlanetary, byPlanetary}, {"electric mixer", byMixer}, {byFoodProcessor, byFoodProcessor}, {"by hand", byHand},
	{"wooden spoon", byHand}, {"floured surface", byHand}, {"floured board", byHand}, {"work surface", byHand},
	{byMixer, byMixer},
}

// usualOn is what goes on a piece where a list does not say how much, g; eggs are counted. Common
// practice, no source.
const usualOnLo, usualOnHi = 1.0, 3.0

// without is what is said of a step once its usual time is known.
func without(says []string, text string) []string {
	return slices.DeleteFunc(says, func(t string) bool { return t == text })
}
