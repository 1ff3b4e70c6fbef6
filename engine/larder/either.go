package larder

import (
	"math"
	"strings"

	"forebake/engine/spelling"
)

// orWords part two names of which either may be meant, the second in brackets or none: "mace or
// nutmeg", "marzipan (or almond paste)".
var orWords = spelling.Pattern(`(?i)[ ,]*\(?\b(?:or|oder|ou|o|eller)\b `)

// nearG is how far two foods may be apart for either to be taken for the other, g per 100 g
// (judgement).
const nearG = 10

// Either is the name to take for two of which either may be meant: they are of one kind, their
// figures are near, and the one that is taken lacks no trait, allergen or danger of the other. ok
// is false for all others, which have to be asked.
func (l *Larder) Either(name string) (one string, ok bool) {
	names := orWords.Split(strings.TrimRight(strings.TrimSpace(name), ")"), -1)
	if len(names) != 2 {
		return "", false
	}
	last := names[1][strings.LastIndexByte(names[1], ' ')+1:]
	a, _, known := l.Described(names[0])
	if !known { // "sunflower or rapeseed oil"
		names[0] += " " + last
		a, _, known = l.Described(names[0])
	}
	b, _, other := l.Described(names[1])
	switch {
	case !known || !other || a.Class != b.Class || !a.near(b):
		return "", false
	case a.covers(b):
		return names[0], true
	case b.covers(a):
		return names[1], true
	}
	return "", false
}

// covers reports whether the item has all that can hurt of another.
func (it *Item) covers(other *Item) bool {
	return len(it.Lacks(other)) == 0 && (other.Hazard == "" || it.Hazard == other.Hazard)
}

// near reports whether two items are made of nearly the same.
func (it *Item) near(other *Item) bool {
	if it.Yeast != other.Yeast || it.Flour != other.Flour || it.Control != other.Control {
		return false
	}
	for _, pair := range [...][2]float64{{it.Water, other.Water}, {it.Fat, other.Fat},
		{it.Sugars, other.Sugars}, {10 * it.Salt, 10 * other.Salt}, {it.Alcohol, other.Alcohol}} {
		if math.Abs(pair[0]-pair[1]) > nearG {
			return false
		}
	}
	return true
}
