package finding

import (
	"slices"

	"forebake/engine/source"
)

// Group is the findings of a formula or a house file.
type Group struct {
	Name, File string       // the name of a house file is "", for its findings belong to no formula
	Place      source.Place // of the formula
	List       []*Finding
}

// Groups gives the findings by formula and by house file, and the
// formulas without any. Formulas are ordered by file and line, house
// files by name.
func (r *Run) Groups() (formulas, houses []Group, clear []string) {
	type key struct{ file, name string }
	lists := map[key][]*Finding{}
	for _, one := range r.Findings {
		k := key{one.Place.FileName(), one.Formula}
		if one.Formula == "" && lists[k] == nil {
			houses = append(houses, Group{File: k.file})
		}
		lists[k] = append(lists[k], one)
	}
	for _, one := range r.Formulas {
		k := key{one.Place.FileName(), one.Name}
		if lists[k] == nil {
			clear = append(clear, one.Name)
			continue
		}
		formulas = append(formulas, Group{one.Name, k.file, one.Place, lists[k]})
	}
	for i := range houses {
		houses[i].List = lists[key{houses[i].File, ""}]
	}
	return formulas, houses, clear
}

// WorstFirst sorts a copy of groups by their most serious findings.
func WorstFirst(formulas []Group) []Group {
	list := slices.Clone(formulas)
	slices.SortStableFunc(list, func(a, b Group) int {
		return slices.Compare(b.weights(), a.weights())
	})
	return list
}

// weights counts a group's findings, most serious first.
func (g Group) weights() []int {
	out := make([]int, Ranks)
	for _, f := range g.List {
		out[f.Seriousness()]++
	}
	return out
}
