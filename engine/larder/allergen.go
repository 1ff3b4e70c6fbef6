package larder

import (
	"slices"
	"strings"
)

// Allergen is one entry of a jurisdiction's list of allergens to declare.
type Allergen struct {
	Jurisdiction string // "US" or "EU"
	Code         string
	Plain        string // short name for a screen
	Name         string // as the law's list has it, shortened
	Reference    string // the law
	Basis        string
}

// Allergens returns both lists, the US nine and then the EU fourteen.
func Allergens() []Allergen { return slices.Clone(allergens[:]) }

// AllergenName returns a short plain name for a code as Item holds it: EU
// "gluten_cereals:wheat" is "cereals containing gluten (wheat)". A final ? is
// spelt out, since such an allergen is not asserted. An unknown code comes back
// as it is.
func AllergenName(jurisdiction, code string) string {
	a := lookAllergen(jurisdiction, code)
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

// lookAllergen takes a code with or without its member and question mark.
func lookAllergen(jurisdiction, code string) *Allergen {
	code, _, _ = strings.Cut(strings.TrimSuffix(code, "?"), ":")
	for i := range allergens {
		if a := &allergens[i]; a.Code == code && a.Jurisdiction == jurisdiction {
			return a
		}
	}
	return nil
}
