package formula

import (
	"maps"
	"slices"
)

// Kind is the kind of a part.
type Kind uint8

// The kinds of part that a formula may hold.
const (
	Dough Kind = iota
	Preferment
	Filling
	Topping
	Syrup
	Wash
)

// KindNames are the kinds as written in a file, by Kind.
var KindNames = []string{"dough", "preferment", "filling", "topping", "syrup", "wash"}

// kindWords are other words that bakers have for a kind of part.
var kindWords = map[string]Kind{
	"sponge": Preferment, "poolish": Preferment, "biga": Preferment, "levain": Preferment,
	"starter": Preferment, "tangzhong": Preferment,
	"cream": Filling, "custard": Filling, "jam": Filling,
	"glaze": Topping, "icing": Topping, "frosting": Topping, "streusel": Topping, "crumble": Topping,
	"coating": Topping, "egg_wash": Wash,
}

// blockWords are all words that may open a part.
var blockWords = slices.Concat(KindNames, slices.Sorted(maps.Keys(kindWords)))

func (k Kind) String() string { return KindNames[k] }

func kindNamed(word string) (Kind, bool) {
	for k, name := range KindNames {
		if name == word {
			return Kind(k), true
		}
	}
	k, known := kindWords[word]
	return k, known
}
