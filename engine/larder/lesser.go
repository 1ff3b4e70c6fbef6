package larder

import (
	"fmt"
	"slices"
	"strings"
)

// guarded lists the traits that cautions and food-safety rules read, in
// plain words. An item may not take the name of another that has more
// of them: the cautions would not be shown for that name. Pourable and
// Solid say how an item is measured and are left out.
var guarded = []struct {
	trait Trait
	plain string
}{
	{RawFlour, "raw flour"}, {RawEgg, "raw egg"}, {Egg, "egg"}, {Dairy, "milk"},
	{WholeNut, "whole nuts"}, {Nut, "nuts"}, {Honey, "honey"}, {Spirit, "alcohol"},
	{Leavens, "a leaven"}, {EnzymeFruit, "raw enzyme fruit"}, {Fruit, "fruit"},
	{Starch, "starch"}, {Pectin, "pectin"}, {Cinnamon, "cinnamon"},
	{StrongSpice, "strong spice"}, {MilkFat, "milk fat"}, {Gelatin, "gelatin"},
}

// Lacks lists the traits and allergens of other that the item does not
// have, in plain words; none if the item can stand for other.
func (it *Item) Lacks(other *Item) []string {
	var out []string
	for _, g := range guarded {
		if other.Is(g.trait) && !it.Is(g.trait) {
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

// LackingCodes lists the allergen codes of want that list does not hold.
// A code that is there for certain stands for one that is often there.
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
