package larder

import (
	"slices"
	"strings"
)

// Allergen is one entry of a jurisdiction's list of allergens that must
// be declared.
type Allergen struct {
	Jurisdiction string // "US" or "EU"
	Code         string
	Plain        string // short name for a screen
	Name         string // as in the law's list, shortened
	Reference    string // the law
	Basis        string
}

// Allergens returns both lists: the nine of the US, then the fourteen
// of the EU.
func Allergens() []Allergen { return slices.Clone(allergens[:]) }

// AllergenName returns a short plain name for a code as Item holds it:
// EU "gluten_cereals:wheat" is "cereals containing gluten (wheat)". A
// final ? is spelt out, because such an allergen is not asserted. An
// unknown code is returned unchanged.
func AllergenName(jurisdiction, code string) string {
	a := findAllergen(jurisdiction, code)
	if a == nil {
		return code
	}
	bare, often := strings.CutSuffix(code, "?")
	_, member, _ := strings.Cut(bare, ":")
	switch {
	case often && member != "":
		return a.Plain + " (" + member + "; often present: read the label)"
	case often:
		return a.Plain + " (often present: read the label)"
	case member != "":
		return a.Plain + " (" + member + ")"
	}
	return a.Plain
}

// briefs holds the short words of codes whose own word is long, or is
// another in each jurisdiction.
var briefs = map[string]string{
	"crustacean_shellfish": "crustaceans", "tree_nuts": "nuts", "soybeans": "soy",
	"gluten_cereals": "gluten", "eggs": "egg",
}

// BriefAllergen returns one short word for a code, the same in both
// jurisdictions and without its member. An allergen that is often
// present ends in a question mark: the label decides.
func BriefAllergen(code string) string {
	bare, often := strings.CutSuffix(code, "?")
	word, _, _ := strings.Cut(bare, ":")
	if brief := briefs[word]; brief != "" {
		word = brief
	}
	if often {
		return word + "?"
	}
	return word
}

// findAllergen finds the entry of a code, with or without its member
// and question mark.
func findAllergen(jurisdiction, code string) *Allergen {
	code, _, _ = strings.Cut(strings.TrimSuffix(code, "?"), ":")
	for i := range allergens {
		if a := &allergens[i]; a.Code == code && a.Jurisdiction == jurisdiction {
			return a
		}
	}
	return nil
}
