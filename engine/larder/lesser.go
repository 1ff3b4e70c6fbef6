package larder

import (
	"fmt"
	"slices"
	"strings"
)

// traitWords names the traits in plain words. guards marks those that
// cautions and food-safety rules read: an item may not take the name of
// another that has more of them, since the cautions would not be shown
// for that name.
var traitWords = []struct {
	trait  Trait
	plain  string
	guards bool
}{
	{RawFlour, "raw flour", true}, {RawEgg, "raw egg", true}, {Egg, "egg", true},
	{Dairy, "milk", true}, {WholeNut, "whole nuts", true}, {Nut, "nuts", true},
	{Honey, "honey", true}, {Spirit, "alcohol", true}, {Leavens, "a leaven", true},
	{EnzymeFruit, "raw enzyme fruit", true}, {Fruit, "fruit", true}, {Starch, "starch", true},
	{Pectin, "pectin", true}, {Cinnamon, "cinnamon", true}, {StrongSpice, "strong spice", true},
	{MilkFat, "milk fat", true}, {Gelatin, "gelatin", true},
	{Pourable, "a liquid", false}, {Solid, "weighed, not measured by the cup", false},
	{NeedsControl, "needs time and temperature control where water is free", false},
	{Acid, "acid", false}, {LiveCulture, "a live culture", false}, {Cooked, "cooked", false},
	{KeptOut, "keeps its water in the dough", false}, {AcidFruit, "acid fruit", false},
	{Undissolved, "stays in grains", false},
}

// Words lists the traits in plain words.
func (t Trait) Words() []string {
	var out []string
	for _, w := range traitWords {
		if t&w.trait != 0 {
			out = append(out, w.plain)
		}
	}
	return out
}

// Lacks lists the traits and allergens of other that the item does not
// have, in plain words; none if the item can stand for other.
func (it *Item) Lacks(other *Item) []string {
	var out []string
	for _, g := range traitWords {
		if g.guards && other.Is(g.trait) && !it.Is(g.trait) {
			out = append(out, g.plain)
		}
	}
	if it.Class != other.Class {
		out = append(out, fmt.Sprintf("the class %s", other.Class))
	}
	if other.Undeclared && !it.Undeclared {
		return out // any declared list says more than none
	}
	for _, list := range []struct {
		law        string
		have, want []string
	}{{"US", it.US, other.US}, {"EU", it.EU, other.EU}} {
		for _, code := range LackingCodes(list.have, list.want) {
			allergen := "the allergen " + AllergenName(list.law, code)
			if !slices.Contains(out, allergen) {
				out = append(out, allergen)
			}
		}
	}
	return out
}

// LackingCodes lists the allergen codes of want that list does not
// hold. A code that is there for certain stands for one that is
// often there.
func LackingCodes(list, want []string) []string {
	var out []string
	for _, code := range want {
		if !slices.Contains(list, code) &&
			!slices.Contains(list, strings.TrimSuffix(code, "?")) {
			out = append(out, code)
		}
	}
	return out
}

// AddCodes returns list with the codes of more that it does not hold.
func AddCodes(list, more []string) []string {
	return append(slices.Clone(list), LackingCodes(list, more)...)
}
