package recipe

import (
	"slices"
)

// mark is a cue at its place in a sentence.
type mark struct {
	cue
	start, end int
}

// cuesOf finds the cues of a sentence, in order, none within another.
func cuesOf(text string) []mark {
	taken := make([]bool, len(text)+1)
	var out []mark
	for _, c := range cues {
		for _, at := range c.words.FindAllStringIndex(text, -1) {
			if slices.Contains(taken[at[0]:at[1]], true) {
				continue
			}
			for i := at[0]; i < at[1]; i++ {
				taken[i] = true
			}
			out = append(out, mark{c, at[0], at[1]})
		}
	}
	slices.SortFunc(out, func(a, b mark) int { return a.start - b.start })
	return slices.DeleteFunc(out, func(m mark) bool { return m.verb == aside })
}
