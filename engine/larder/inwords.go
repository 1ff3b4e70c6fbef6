package larder

import (
	"slices"
	"strings"
)

const digits = "0123456789"

// InWords finds the item of a name whose words stand in another order, "flour (bread)", or of the
// one longer name that holds them all, three or a figure: "wheat flour 405" is German type 405
// wheat flour. Words that deny, or that tell another state, find nothing.
func (l *Larder) InWords(name string) (it *Item, longer bool) {
	typed := foldedWords(strings.NewReplacer("(", " ", ")", " ").Replace(name))
	head, _ := l.Find(strings.TrimSpace(inRound().ReplaceAllString(name, " ")))
	denies := func(w string) bool { return strings.Contains(others, " "+w+" ") }
	if len(typed) < 2 || strings.Contains(name, ",") || slices.ContainsFunc(typed, denies) {
		return nil, false
	}
	var held *Item
	several := false
	for _, other := range l.Names() {
		words := foldedWords(other)
		if len(words) < len(typed) || slices.ContainsFunc(typed, func(w string) bool {
			return !slices.Contains(words, w)
		}) {
			continue
		}
		found, ok := l.Find(other)
		switch {
		case !ok || Harmless(name, found) != "" || lacking(gravesOf(name), found) != "",
			head != nil && head.Class != found.Class: // "milk (almond)" is asked
			continue
		case len(words) == len(typed):
			return found, false
		case held != nil && held != found:
			several = true
		}
		held = found
	}
	// "raw ham" is no raw ham hock
	if several || len(gravesOf(name)) > 0 || len(typed) < 3 && !strings.ContainsAny(name, digits) {
		return nil, false
	}
	return held, held != nil
}
