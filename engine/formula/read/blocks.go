package read

import (
	"maps"
	"slices"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/said"
)

// fryingKeys are keys of a formula for the fat that its dough is fried in.
var fryingKeys = []string{"frying", "for frying", "to fry", "frying oil", "frying fat",
	"oil for frying",
	"deep frying", "fryer"}

// blockWords are all words that may open a part.
var blockWords = slices.Concat(formula.KindNames, slices.Sorted(maps.Keys(formula.KindWords)))

// blocksOf are the words that open a part, with those of a body that differ in letter
// case alone.
func blocksOf(b *hclsyntax.Body) []string {
	all := blockWords
	for _, block := range b.Blocks {
		if _, ok := formula.KindNamed(block.Type); ok && !slices.Contains(all, block.Type) {
			all = append(all[:len(all):len(all)], block.Type)
		}
	}
	return all
}

// keysOf are the keys that a body may hold, with the other words for them that it holds: of
// each key one, and of notes any.
func (rd *reader) keysOf(b *hclsyntax.Body, keys []string) []string {
	known := true
	for name := range b.Attributes {
		known = known && slices.Contains(keys, name)
	}
	if known { // as most bodies are
		return keys
	}
	all := keys
	for name := range b.Attributes {
		ofFormula := slices.Contains(keys, formula.FormulaKeys[0])
		if ofFormula && slices.Contains(fryingKeys, said.Key(name)) {
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
				rd.Assumed(rd.Place(b.Attributes[word].NameRange), word+" is kept as a note")
			}
		}
	}
	return all
}

// onlyPart is the dough that a formula's own ingredients and steps are.
func onlyPart(b *hclsyntax.Block) *hclsyntax.Block {
	body := &hclsyntax.Body{Attributes: hclsyntax.Attributes{}, SrcRange: b.Body.SrcRange}
	for _, key := range []string{"ingredients", "steps"} {
		if a := b.Body.Attributes[key]; a != nil {
			body.Attributes[key] = a
		}
	}
	dough := formula.KindNames[formula.Dough]
	return &hclsyntax.Block{Type: dough, Labels: []string{dough}, Body: body,
		TypeRange: b.TypeRange, LabelRanges: b.LabelRanges}
}
