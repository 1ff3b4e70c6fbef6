package makeup

import (
	"fmt"
	"sort"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/larder"
)

// Law says which allergens a list takes.
type Law uint8

const (
	USLaw Law = iota
	EULaw
	BothLaws
	OnLabel // those that an ingredient often holds, of both laws
)

// Allergens are the part's allergens that a law takes.
func (p *Part) Allergens(l Law) Value {
	set := map[string]bool{}
	p.allergens(l, set)
	return figure.List(sorted(set))
}

// Allergens are those in any part.
func (s *Sheet) Allergens(l Law) Value {
	set := map[string]bool{}
	for i := range s.parts {
		s.parts[i].ownAllergens(l, set)
	}
	if l == OnLabel {
		// What is certainly there need not be checked.
		sure := map[string]bool{}
		for i := range s.parts {
			s.parts[i].ownAllergens(BothLaws, sure)
		}
		for name := range sure {
			delete(set, name)
		}
	}
	return figure.List(sorted(set))
}

func (p *Part) allergens(l Law, set map[string]bool) {
	for _, q := range p.Contents() {
		q.ownAllergens(l, set)
	}
}

func (p *Part) ownAllergens(l Law, set map[string]bool) {
	for _, in := range p.Ingredients {
		if in.Of != nil {
			continue
		}
		if l != EULaw {
			addAllergens(in.Item.US, "US", l, set)
		}
		if l != USLaw {
			addAllergens(in.Item.EU, "EU", l, set)
		}
		if in.Item.Undeclared {
			set[fmt.Sprintf("%q (allergens not declared: read the label)", in.Item.Name)] = true
		}
	}
}

// addAllergens takes the certain codes or, for OnLabel, those that end
// in a question mark.
func addAllergens(codes []string, jurisdiction string, l Law, set map[string]bool) {
	for _, code := range codes {
		plain, often := strings.CutSuffix(code, "?")
		if often == (l == OnLabel) {
			set[larder.AllergenName(jurisdiction, plain)] = true
		}
	}
}

// AllergensBrief gives every allergen of both laws by a short word,
// certain ones first; those to check on a label end in a question mark.
func (s *Sheet) AllergensBrief() Value {
	sure, open := map[string]bool{}, map[string]bool{}
	for i := range s.parts {
		for _, in := range s.parts[i].Ingredients {
			if in.Of != nil {
				continue
			}
			if in.Item.Undeclared {
				open[fmt.Sprintf("%q not declared", in.Item.Name)] = true
			}
			for _, codes := range [][]string{in.Item.US, in.Item.EU} {
				for _, code := range codes {
					if word := larder.BriefAllergen(code); strings.HasSuffix(word, "?") {
						open[word] = true
					} else {
						sure[word] = true
					}
				}
			}
		}
	}
	for word := range sure {
		delete(open, word+"?")
	}
	return figure.List(append(sorted(sure), sorted(open)...))
}

func sorted(set map[string]bool) []string {
	words := make([]string, 0, len(set))
	for w := range set {
		words = append(words, w)
	}
	sort.Strings(words)
	return words
}
