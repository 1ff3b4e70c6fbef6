package facts

import (
	"slices"

	"forebake/engine/formula"
)

// catalogue holds the facts by subject, in declaration order.
var catalogue = [...][]*Fact{
	OnFormula:    number(OnFormula, slices.Concat(formulaFacts, hazardFormulaFacts)),
	OnPart:       number(OnPart, slices.Concat(partFacts, hazardPartFacts)),
	OnStep:       number(OnStep, slices.Concat(stepFacts, hazardStepFacts)),
	OnIngredient: number(OnIngredient, ingredientFacts),
	OnKitchen:    number(OnKitchen, kitchenFacts),
}

func number(on On, list []Fact) []*Fact {
	out := make([]*Fact, len(list))
	for i := range list {
		list[i].On, list[i].index = on, i
		if list[i].of != nil {
			list[i].Verbs = formula.VerbNames(list[i].of)
		}
		out[i] = &list[i]
	}
	return out
}

// All gives the facts of one kind of subject, in declaration order. The
// caller must not change the list.
func All(on On) []*Fact { return catalogue[on] }

// Find finds a fact by subject and name.
func Find(on On, name string) (*Fact, bool) {
	for _, f := range catalogue[on] {
		if f.Name == name {
			return f, true
		}
	}
	return nil, false
}
