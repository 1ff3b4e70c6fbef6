package larder

import (
	"slices"
	"strings"
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
func (l *Larder) holding(typed []string) (out []string) {
	lacks := func(name string) bool {
		words := foldedWords(name)
		return slices.ContainsFunc(typed, func(w string) bool { return !slices.Contains(words, w) })
	}
	fewest := shippedWith(typed[0])
	for _, w := range typed[1:] {
		if list := shippedWith(w); len(list) < len(fewest) {
			fewest = list
		}
	}
	for _, at := range fewest {
		out = append(append(out, shipped[at].Name), shipped[at].Aliases...)
	}
	for _, it := range l.added {
		out = append(append(out, it.Name), it.Aliases...)
	}
	return slices.DeleteFunc(out, lacks)
}

// wordEntry is a word, folded, and the shipped items that it is in a name of.
type wordEntry struct {
	word  string
	items []int16
}

// shippedWith are the shipped items that a folded word is in a name of.
func shippedWith(word string) []int16 {
	i, found := slices.BinarySearchFunc(byWord[:], word, func(e wordEntry, word string) int {
		return strings.Compare(e.word, word)
	})
	if !found {
		return nil
	}
	return byWord[i].items
}
