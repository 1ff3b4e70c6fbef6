// Package family holds the usual ranges of the make-up of each family
// of doughs. Package facts takes the rules' family limits from it. It
// judges no dough.
//
// Where a quantity has both a published and a derived range, the
// published one is used if it has both ends. If it has no typical
// value, that of the derived range is used and the source says so.
// Derived ranges are the outermost of the formulas found, rounded: a
// judgement, not a survey.
package family

import "strings"

// Range is the usual range of a quantity in one family.
type Range struct {
	Known   bool    // false if no source was found; the other fields are then zero
	Lo, Hi  float64 // % on total flour, unless the field says otherwise; Lo < Hi
	Typical float64 // in [Lo, Hi]; 0 if no source gives one
	Margin  float64 // in the unit of Lo: how soft the ends are; see Usual
	Source  string
	Basis   string // basis of Lo and Hi: read, derived or computed
}

// Family is one kind of dough.
type Family struct {
	Name    string
	Aliases []string

	// Hydration counts all water, from any source; for laminated doughs
	// without that of the roll-in butter
	Hydration    Range
	Sugar        Range
	Fat          Range // for laminated doughs before the roll-in
	Egg          Range // liquid whole egg, or yolk if EggIsYolk
	Salt         Range
	Yeast        Range // as instant dry yeast
	MilkSolids   Range // dry milk solids
	FlourProtein Range // % of the flour as it is
	RollIn       Range // roll-in fat
	Fruit        Range // dried and candied fruit

	// EggIsYolk is true if the egg range counts yolk only (panettone).
	EggIsYolk bool

	// DoughFloorC is the lowest dough temperature after mixing, C: 20,
	// or 16 for laminated doughs.
	DoughFloorC float64
}

// Names returns the families' names, from lean to laminated.
func Names() []string {
	names := make([]string, len(families))
	for i := range families {
		names[i] = families[i].Name
	}
	return names
}

// Find returns the family of that name or alias. Letter case, spaces
// and hyphens do not count. The family must not be changed.
func Find(name string) (*Family, bool) {
	for i := range families {
		if strings.EqualFold(families[i].Name, name) { // the spelling of most files
			return &families[i], true
		}
	}
	key := fold(name)
	for _, list := range [...][]Family{families[:], counted()} {
		for i := range list {
			f := &list[i]
			if fold(f.Name) == key {
				return f, true
			}
			for _, a := range f.Aliases {
				if fold(a) == key {
					return f, true
				}
			}
		}
	}
	return nil, false
}

// Any returns the family for a formula that names none: for each
// quantity the outermost range of all families, and the lowest dough
// floor. So a dough is outside it only if it is outside every family.
// Its egg range excludes panettone's, which counts yolk. It has no
// name, and must not be changed.
func Any() *Family { return &anyFamily }

func fold(name string) string {
	return strings.Join(strings.Fields(strings.ReplaceAll(strings.ToLower(name), "-", " ")), " ")
}
