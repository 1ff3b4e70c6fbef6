package formula

import (
	"forebake/engine/said"
	"maps"
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

// kindWords are other words that bakers have for a kind of part.
var kindWords = map[string]Kind{
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

// fryingKeys are keys of a formula for the fat that its dough is fried in.
var fryingKeys = []string{"frying", "for frying", "to fry", "frying oil", "frying fat",
	"oil for frying",
	"deep frying", "fryer"}

// blockWords are all words that may open a part.
var blockWords = slices.Concat(KindNames, slices.Sorted(maps.Keys(kindWords)))

func (k Kind) String() string { return KindNames[k] }

// isDough reports whether a part of the kind is mixed as a dough.
func (k Kind) isDough() bool { return k == Dough || k == Preferment }

func kindNamed(word string) (Kind, bool) {
	for k, name := range KindNames {
		if name == word {
			return Kind(k), true
		}
	}
	k, known := kindWords[strings.ReplaceAll(strings.ToLower(word), "-", "_")]
	return k, known
}

// blocksOf are the words that open a part, with those of a body that differ in letter
// case alone.
func blocksOf(b *hclsyntax.Body) []string {
	all := blockWords
	for _, block := range b.Blocks {
		if _, ok := kindNamed(block.Type); ok && !slices.Contains(all, block.Type) {
			all = append(all[:len(all):len(all)], block.Type)
		}
	}
	return all
}

// keysOf are the keys that a body may hold, with the other words for them that it holds: of
// each key one, and of notes any.
func (rd *reader) keysOf(b *hclsyntax.Body, keys []string) []string {
	all := keys
	for name := range b.Attributes {
		if slices.Contains(keys, FormulaKeys[0]) && slices.Contains(fryingKeys, said.Key(name)) {
			all = append(all[:len(all):len(all)], name)
		}
	}
	for _, key := range keys {
		held := b.Attributes[key] != nil
		for _, word := range said.OtherKeys(key) {
			if b.Attributes[word] == nil || held && key != "about" {
				continue
			}
			all, held = append(all[:len(all):len(all)], word), true
			if key == "about" {
				rd.assumed(rd.Place(b.Attributes[word].NameRange), word+" is kept as a note")
			}
		}
	}
	return all
}

// IsPart reports whether a word opens a part of a formula.
func IsPart(word string) bool {
	_, ok := kindNamed(word)
	return ok
}

// only reports whether a formula's ingredients stand in it and in no dough.
func (f *Formula) only(b *hclsyntax.Body) bool {
	return b.Attributes["ingredients"] != nil && !slices.ContainsFunc(b.Blocks,
		func(block *hclsyntax.Block) bool {
			kind, ok := kindNamed(block.Type)
			return ok && kind == Dough
		})
}

// onlyPart is the dough that a formula's own ingredients and steps are.
func onlyPart(b *hclsyntax.Block) *hclsyntax.Block {
	body := &hclsyntax.Body{Attributes: hclsyntax.Attributes{}, SrcRange: b.Body.SrcRange}
	for _, key := range []string{"ingredients", "steps"} {
		if a := b.Body.Attributes[key]; a != nil {
			body.Attributes[key] = a
		}
	}
	return &hclsyntax.Block{Type: KindNames[Dough], Labels: []string{KindNames[Dough]}, Body: body,
		TypeRange: b.TypeRange, LabelRanges: b.LabelRanges}
}
