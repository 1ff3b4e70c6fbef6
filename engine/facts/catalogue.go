package facts

import (
	"forebake/engine/formula"
)

// catalogue holds the facts by subject, in declaration order.
var catalogue = [...][]*Fact{
	OnFormula:    number(OnFormula, formulaFacts, hazardFormulaFacts),
	OnPart:       number(OnPart, partFacts, hazardPartFacts),
	OnStep:       number(OnStep, stepFacts, hazardStepFacts),
	OnIngredient: number(OnIngredient, ingredientFacts),
	OnKitchen:    number(OnKitchen, kitchenFacts),
}

// number gives the facts of some lists their subject and their numbers.
func number(on On, lists ...[]Fact) []*Fact {
	count := 0
	for _, list := range lists {
		count += len(list)
	}
	out := make([]*Fact, 0, count)
	for _, list := range lists {
		for i := range list {
			f := &list[i]
			f.On, f.index = on, len(out)
			if f.of != nil {
				f.Verbs = formula.VerbNames(f.of)
			}
			out = append(out, f)
		}
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
