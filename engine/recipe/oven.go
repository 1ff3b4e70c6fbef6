package recipe

import (
	"slices"
	"strings"

	"forebake/engine/recipe/list"
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
		for _, at := range c.words().FindAllStringIndex(text, -1) {
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

// ovenOf reads the oven's temperature: the one without a fan where both stand there. fan says that it
// is of a fan oven.
func (d *draft) ovenOf(text string) (t, says string, fan bool) {
	rest := fanForm().ReplaceAllString(text, "")
	if coreAt := coreForm().FindStringIndex(rest); coreAt != nil {
		rest = rest[:coreAt[0]] + rest[coreAt[1]:]
	}
	d.used = append(d.used, fanForm().FindString(text), gasMark().FindString(text))
	if t, ok := d.list.Temperature(rest); ok {
		if l, is := list.Letterless(rest); is {
			says = l + " has no letter: read as " + t
		}
		return t, says, false
	}
	if l, is := list.Letterless(rest); is {
		return "?", l + ": C or F?", false
	}
	if m := bareOven().FindStringSubmatch(rest); m != nil { // "bake 350 for 30 min"
		if t, ok := d.list.Temperature(m[1] + "°"); ok {
			return t, m[1] + ": read as " + t, false
		}
		return "?", m[1] + ": C or F?", false
	}
	for _, w := range ovenWords {
		if strings.Contains(strings.ToLower(rest), w.words) {
			return w.t, w.words + ": read as " + w.t + ", common practice", false
		}
	}
	if m := gasMark().FindStringSubmatch(rest); m != nil && gasMarks[m[1]] != "" {
		return gasMarks[m[1]], "gas mark " + m[1] + ": read as " + gasMarks[m[1]], false
	}
	if m := fanForm().FindStringSubmatch(text); m != nil {
		return m[1] + " " + strings.ToUpper(orElse(m[2], orElse(d.list.Scale, "C"))), "", true
	}
	return "", "", false
}
