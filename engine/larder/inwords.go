package larder

import (
	"slices"
	"strings"
	"sync"
)

const digits = "0123456789"

// Longer is the item of the one longer name that holds all words of a name that is no other: "wheat
// flour 405" is German type 405 wheat flour; nil for none.
func (l *Larder) Longer(name string) *Item {
	if _, _, _, known := l.described(name); known {
		return nil
	}
	if it, longer := l.inWords(name); longer {
		return it
	}
	return nil
}

// inWords finds the item of a name whose words stand in another order, "flour (bread)", or of the
// one longer name that holds them all, three or a figure. Words that deny, or that tell another
// state, find nothing.
func (l *Larder) inWords(name string) (it *Item, longer bool) {
	o := l.orders.Get(name, func(name string) (o order) {
		o.it, o.longer = l.inOtherOrder(name)
		return o
	})
	return o.it, o.longer
}

// order is what inWords gives.
type order struct {
	it     *Item
	longer bool
}

var noRounds = strings.NewReplacer("(", " ", ")", " ")

func (l *Larder) inOtherOrder(name string) (it *Item, longer bool) {
	typed := foldedWords(noRounds.Replace(name))
	if len(typed) < 2 || strings.Contains(name, ",") || slices.ContainsFunc(typed, turnsNext) {
		return nil, false
	}
	head, _ := l.Find(strings.TrimSpace(inRound.ReplaceAllString(name, " ")))
	var held *Item
	several := false
	for _, other := range l.holding(typed) {
		found, ok := l.Find(other)
		switch {
		case !ok || Harmless(name, found) != "" || lacking(gravesOf(name), found) != "",
			head != nil && head.Class != found.Class: // "milk (almond)" is asked
			continue
		case len(foldedWords(other)) == len(typed):
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

// holding lists the names that hold all the words.
func (l *Larder) holding(typed []string) []string {
	fewest := shippedByWord()[typed[0]]
	for _, w := range typed[1:] {
		if list := shippedByWord()[w]; len(list) < len(fewest) {
			fewest = list
		}
	}
	out := slices.Clone(fewest)
	for _, it := range l.added {
		out = append(append(out, it.Name), it.Aliases...)
	}
	return slices.DeleteFunc(out, func(name string) bool {
		words := foldedWords(name)
		return slices.ContainsFunc(typed, func(w string) bool { return !slices.Contains(words, w) })
	})
}

// shippedByWord are the names of the shipped items by each of their words. Only a name that is not
// known asks for it.
var shippedByWord = sync.OnceValue(func() map[string][]string {
	m := map[string][]string{}
	for i := range shipped {
		for _, name := range append([]string{shipped[i].Name}, shipped[i].Aliases...) {
			for _, w := range foldedWords(name) {
				m[w] = append(m[w], name)
			}
		}
	}
	return m
})
