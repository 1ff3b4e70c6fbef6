package formula

import (
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"
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

// KindWords are other words that bakers have for a kind of part.
var KindWords = map[string]Kind{
	"final_dough": Dough, "main_dough": Dough, "batter": Dough,
	"sponge": Preferment, "poolish": Preferment, "biga": Preferment, "levain": Preferment,
	"starter": Preferment, "tangzhong": Preferment, "yudane": Preferment, "soaker": Preferment,
	"scald": Preferment, "roux": Preferment, "old_dough": Preferment, "pre_ferment": Preferment,
	"cream": Filling, "custard": Filling, "jam": Filling, "butter": Filling, "curd": Filling,
	"pastry_cream": Filling, "compote": Filling, "ganache": Filling, "butter_block": Filling,
	"beurrage": Filling, "paste": Filling, "spread": Filling, "whipped_cream": Filling,
	"glaze": Topping, "icing": Topping, "frosting": Topping, "streusel": Topping,
	"crumble": Topping,
	"coating": Topping, "finish": Topping, "decoration": Topping, "garnish": Topping,
	"drizzle": Topping, "crumb": Topping, "crosses": Topping, "cross_paste": Topping,
	"sprinkle": Topping, "sauce": Topping, "fondant": Topping, "meringue": Topping,
	"frying": Topping, "frying_oil": Topping, "frying_fat": Topping, "for_frying": Topping,
	"egg_wash": Wash, "eggwash": Wash, "dorure": Wash,
	"sugar_syrup": Syrup, "simple_syrup": Syrup,
}

// String is the word that opens a block of the kind.
func (k Kind) String() string { return KindNames[k] }

// IsDough reports whether a part of the kind is mixed as a dough.
func (k Kind) IsDough() bool { return k == Dough || k == Preferment }

// KindNamed is the kind of a part that a word opens, in any letter case.
func KindNamed(word string) (Kind, bool) {
	for k, name := range KindNames {
		if name == word {
			return Kind(k), true
		}
	}
	k, known := KindWords[strings.ReplaceAll(strings.ToLower(word), "-", "_")]
	return k, known
}

// IsPart reports whether a word opens a part of a formula.
func IsPart(word string) bool {
	_, ok := KindNamed(word)
	return ok
}

// Only reports whether a formula's ingredients stand in it and in no dough.
func (f *Formula) Only(b *hclsyntax.Body) bool {
	return b.Attributes["ingredients"] != nil && !slices.ContainsFunc(b.Blocks,
		func(block *hclsyntax.Block) bool {
			kind, ok := KindNamed(block.Type)
			return ok && kind == Dough
		})
}
