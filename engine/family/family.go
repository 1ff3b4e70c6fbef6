// Package family holds the ranges of make-up within which doughs of one kind are
// usually made. The facts call it to give rules their family limits, and the
// starting formulas are drawn from its typical values. It never judges a dough.
//
// Where a family has both a published and a derived range for a quantity, the
// published one stands if it has both ends; if it lacks a typical value, the
// derived one's is kept and the source says so. Derived ranges are a judgement (the
// outermost of the formulas that were found, rounded), not a survey.
package family

import "strings"

// Range is where a quantity of one family usually lies.
type Range struct {
	Known   bool    // false: nothing was found, and the other fields are zero
	Lo, Hi  float64 // % on total flour, unless the field says otherwise; Lo < Hi
	Typical float64 // in [Lo, Hi]; 0 where no source gives one
	Source  string
	Basis   string // of Lo and Hi: read, derived or computed
}

// Family is one kind of dough.
type Family struct {
	Name    string
	Aliases []string

	Hydration    Range // all water, wherever it comes from; of laminated doughs: without that of the roll-in butter
	Sugar        Range
	Fat          Range // of laminated doughs: before the roll-in
	Egg          Range // liquid whole egg, or yolk where EggIsYolk
	Salt         Range
	Yeast        Range // as instant dry yeast
	MilkSolids   Range // dry milk solids
	FlourProtein Range // % of the flour as it is
	RollIn       Range // roll-in fat
	Fruit        Range // dried and candied fruit

	// EggIsYolk: the published egg range counts yolk alone (panettone).
	EggIsYolk bool

	// DoughFloorC is the coldest the dough should leave the mixer, C: 20, or 16
	// for laminated doughs.
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

// Find returns the family of that name or alias. Letter case, spaces and hyphens
// make no difference. Nobody changes what it points to.
func Find(name string) (*Family, bool) {
	for i := range families {
		if strings.EqualFold(families[i].Name, name) { // as most files write it
			return &families[i], true
		}
	}
	key := fold(name)
	for i := range families {
		f := &families[i]
		if fold(f.Name) == key {
			return f, true
		}
		for _, a := range f.Aliases {
			if fold(a) == key {
				return f, true
			}
		}
	}
	return nil, false
}

// Any returns the family for a formula that names none: for each quantity the
// outermost of all families, and the lowest dough floor, so that a dough stands
// outside it only if it stands outside every family. Its egg range leaves
// panettone's out, which counts yolk. It has no name. Nobody changes what it
// points to.
func Any() *Family { return &anyFamily }

func fold(name string) string {
	return strings.Join(strings.Fields(strings.ReplaceAll(strings.ToLower(name), "-", " ")), " ")
}
