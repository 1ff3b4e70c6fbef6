package known

import (
	"fmt"
	"slices"
	"strings"
	"sync"

	"forebake/engine/formula"
	"forebake/engine/said"
	"forebake/engine/spelling"
)

// wayByWord finds the ways of a name or another word for them, folded. A word may mean one thing
// of one verb and another of another: cool by a fan, bake by a fan.
var wayByWord = sync.OnceValue(func() map[string][]*formula.Way {
	m := map[string][]*formula.Way{}
	for _, w := range formula.Ways {
		for _, word := range w.Words() {
			m[said.Fold(word)] = append(m[said.Fold(word)], w)
		}
	}
	return m
})

// Way finds the way that a baker's words mean of a verb: "hand", "By Hand", "in hot oil".
func Way(v *formula.Verb, text string) (*formula.Way, bool) {
	list, ok := wayByWord()[text]
	if !ok {
		list = wayByWord()[said.Fold(text)]
	}
	for _, w := range list {
		if w.Suits(v) {
			return w, true
		}
	}
	return wayAmong(v, text)
}

// besideWay are words that may stand beside a way and change nothing of it.
var besideWay = spelling.Pattern(`\b(?:with|using|fitted|the|an?|my|our|in|on|by|at|to|of|and|` +
	`then|or|attachment|bowl|set|mit|und|avec|au|con|med|den|dem|le|la|low|medium|middle|high|` +
	`slow|fast|first|second|speed|gear|\d+)\b`)

// wayAmong finds the way that is named among other words: "stand mixer with the dough hook". Of
// several the first counts, and hot fat before any. Words that could turn it round, or a
// misspelling, make it none.
func wayAmong(v *formula.Verb, text string) (found *formula.Way, ok bool) {
	words, first := " "+said.Fold(text)+" ", 0
	rest := words
	for _, w := range formula.Ways {
		for _, word := range w.Words() {
			word = " " + said.Fold(word) + " "
			at := strings.Index(words, word)
			if at < 0 || !w.Suits(v) {
				continue
			}
			rest = strings.ReplaceAll(rest, word, "  ")
			hotter := w.HotFat() && !found.HotFat()
			if found == nil || hotter || at < first && w.HotFat() == found.HotFat() {
				found, first = w, at
			}
		}
	}
	return found, found != nil && strings.TrimSpace(besideWay.ReplaceAllString(rest, "")) == ""
}

// NearWays are the names of the ways to do a verb that are nearest to a word.
func NearWays(v *formula.Verb, text string) (nearest []string) {
	var words []string
	means := map[string]*formula.Way{}
	for _, w := range formula.Ways {
		if !w.Suits(v) {
			continue
		}
		for _, word := range w.Words() {
			words, means[word] = append(words, word), w
		}
	}
	for _, word := range spelling.Nearest(text, words, 3) {
		if name := means[word].Name; !slices.Contains(nearest, name) {
			nearest = append(nearest, name)
		}
	}
	return nearest
}

// UnknownWay says that a way is not known of a verb, what is nearest, and which there are.
func UnknownWay(v *formula.Verb, text string) string {
	says := fmt.Sprintf("no way to %s %q", v.Name, text)
	if nearest := NearWays(v, text); len(nearest) > 0 {
		says += "; nearest is " + strings.Join(nearest, ", ")
	}
	return says + "; the ways are " + strings.Join(formula.WayNames(v), ", ") +
		"; other words go into note = \"...\""
}

// WayIn is the way that one of some words between commas names; nil for none.
func WayIn(v *formula.Verb, words string) *formula.Way {
	ends := func(c rune) bool { return strings.ContainsRune(",;()", c) }
	for _, one := range strings.FieldsFunc(words, ends) {
		if way, ok := Way(v, strings.TrimSpace(one)); ok {
			return way
		}
	}
	return nil
}
