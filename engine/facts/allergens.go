package facts

import (
	"fmt"
	"sort"
	"strings"

	"forebake/engine/larder"
)

const srcLaws = "US: FD&C Act 201(qq) with the FASTER Act of 2021; EU and UK: Regulation (EU) No 1169/2011, Annex II; from the larder, never from a label"

// law says which allergens a list takes.
type law uint8

const (
	usLaw law = iota
	euLaw
	bothLaws
	onLabel // those that an ingredient often holds, of both laws
)

func allergenList(p *part, l law) Value {
	set := map[string]bool{}
	p.allergens(l, set)
	return list(sorted(set))
}

func (s *Sheet) allergens(l law) Value {
	set := map[string]bool{}
	for i := range s.parts {
		s.parts[i].ownAllergens(l, set)
	}
	if l == onLabel {
		// What is there for certain need not be checked.
		sure := map[string]bool{}
		for i := range s.parts {
			s.parts[i].ownAllergens(bothLaws, sure)
		}
		for name := range sure {
			delete(set, name)
		}
	}
	return list(sorted(set))
}

func (p *part) allergens(l law, set map[string]bool) {
	for _, q := range p.everything() {
		q.ownAllergens(l, set)
	}
}

func (p *part) ownAllergens(l law, set map[string]bool) {
	for _, in := range p.Ingredients {
		if in.Of != nil {
			continue
		}
		if l != euLaw {
			addAllergens(in.Item.US, "US", l, set)
		}
		if l != usLaw {
			addAllergens(in.Item.EU, "EU", l, set)
		}
		if in.Item.Undeclared {
			set[fmt.Sprintf("%q (allergens not declared: read the label)", in.Item.Name)] = true
		}
	}
}

// addAllergens takes the codes that are there for certain, or for onLabel those that end in a question mark.
func addAllergens(codes []string, jurisdiction string, l law, set map[string]bool) {
	for _, code := range codes {
		plain, often := strings.CutSuffix(code, "?")
		if often == (l == onLabel) {
			set[larder.AllergenName(jurisdiction, plain)] = true
		}
	}
}

// allergensBrief gives every allergen of both laws by a short word, first those that are there for certain, then those to
// check on a label, which end in a question mark.
func (s *Sheet) allergensBrief() Value {
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
	return list(append(sorted(sure), sorted(open)...))
}

func sorted(set map[string]bool) []string {
	words := make([]string, 0, len(set))
	for w := range set {
		words = append(words, w)
	}
	sort.Strings(words)
	return words
}
