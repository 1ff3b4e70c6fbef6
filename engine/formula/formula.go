// Package formula is the model of a formula file: formulas, their parts, ingredients and steps,
// each with its place in the file. Package read makes it from HCL.
//
// The kinds of step, the options, the ways and the places are one row each: verbs.go, options.go,
// ways.go, places.go. Everything else asks the rows.
//
// Package read weighs each ingredient in grams. All other figures belong to package facts.
package formula

import (
	"slices"
	"strings"

	"forebake/engine/family"
	"forebake/engine/figure"
	"forebake/engine/formula/values"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said/tins"
	"forebake/engine/source"
)

// Given is a quantity that the baker wrote, with its place; the zero Given was not written.
type Given = reading.Given

// Formula is one formula block.
type Formula struct {
	Name  string
	Place source.Place // of its name

	Family *family.Family // nil when the formula names none
	Makes  Makes
	Start  Given // minutes after midnight at which work starts
	Keep   Given // how long you want it to keep

	Parts []*Part // in file order
	Order []*Part // the same, each after all the parts that go into it

	Ingredients, Steps int // how many there are in all parts

	Said []Said // what words with several meanings are read as, in file order

	Tins     []string  // names of the house's tins
	OpenTins []OpenTin // of an open size
	open     []Span    // its own settings and those of its parts that are "?", to be decided
}

// OpenTin is a tin that a step names and the house does not: its size is open, or told by its name.
type OpenTin struct {
	Name  string
	Place source.Place
	Size  *tins.Tin // by its name, as in "9x5 inch loaf tin"; nil where it is open
}

// Said is a meaning that the reader took of a word that has several. A report tells it.
type Said struct {
	Place source.Place
	Text  string
}

// Makes is what the formula is meant to yield.
type Makes = values.Makes

// Mass is a mass that may depend on the part's total flour.
type Mass = values.Mass

// Geometry is the shape in which a part stands while it warms or cools.
type Geometry = values.Geometry

// Reading is what the baker read in a step. It always beats a model.
type Reading = values.Reading

// Part is one mix of ingredients with its own steps: a dough, a filling, a syrup.
type Part struct {
	Formula     *Formula
	Serial      int // 0 for the first part of the formula
	Kind        Kind
	Name        string
	Place       source.Place // of its name
	Implied     bool         // no block holds it: a step names what it puts on
	Ingredients []*Ingredient
	Steps       []*Step

	PH            Given // measured by the baker; nothing here computes a pH
	WaterActivity Given // measured by the baker; beats the model

	// Taken lists the uses of the part: other parts' ingredients, and steps.
	Taken []source.Place

	FlourG Interval // total flour, g, taken parts included
	MassG  Interval // everything, g
}

// Interval is short for the interval of package figure.
type Interval = figure.Interval

// Ingredient is one line of a part: something from the larder, or another part ("the sponge").
type Ingredient struct {
	Part   *Part
	Serial int    // 0 for the first ingredient of the formula
	Name   string // as the baker wrote it
	Place  source.Place

	Item *larder.Item // what it is made of; nil when Of is set
	Of   *Part        // the part taken in; nil for a larder item

	Amount  Amount
	Temp    Given
	Protein *Given // % of the flour, from its label; nil when not given
	// Hydration is the water of a culture in % of its flour; nil when not given.
	Hydration *Given
	DE        *Given // the dextrose equivalent of a glucose syrup; nil when not given
	Reserve   *Given // held back for later, in the amount's own kind of unit
	Strain    string // one of Strains; "" when not given
	Form      string // as given by "as": "melted", "cold cubes"; free text
	Note      string
	Sized     string              // of an egg, its name by the size that its amount says: "2 large"
	Second    *Ingredient         // that its amount holds too: "1 + 1 yolk"
	Measure   string              // that its name begins with: "pinch of salt"
	Aside     string              // words beside the amount, that say how it is prepared
	Open      []*IngredientOption // the options that are "?", to be decided; not the amount

	Grams Mass // the amount in grams
	Held  Mass // the reserve in grams

	HeldAll  bool    // the reserve is all of it, or a share of it
	HeldPart float64 // that share, 0 to 1; 0 for all

	Apart bool     // it is not of the dough whose list it stands in: "egg, to glaze"; 0 g in it
	Usual Interval // g, what is usual of an amount that is not written; of none nothing
	Loose bool     // of no weight that matters: icing sugar "for dusting"
}

// Amount is how much of an ingredient the baker wrote.
type Amount struct {
	Given
	Open bool // "?": to be decided
	All  bool // "all" of another part
}

// ByVolume reports whether the amount was measured by spoon, cup or jug.
func (a Amount) ByVolume() bool { return a.Set && a.Kind == quantity.Volume }

// PartNamed finds a part by name, in any letter case.
func (f *Formula) PartNamed(name string) *Part {
	for _, p := range f.Parts {
		if SameName(p.Name, name) {
			return p
		}
	}
	return nil
}

// Limits of one formula, far above any real one. They bound the work of the checker.
const (
	MaxParts       = 64
	MaxIngredients = 256 // in one part
	MaxSteps       = 128 // in one part
	MaxMinutes     = 60 * 24 * 366
)

// Keys of the blocks, for messages and the reference page.
var (
	FormulaKeys = []string{"family", "makes", "start", "keep", "about"}
	PartKeys    = []string{"ingredients", "steps", "ph", "water_activity", "about"}
)

// Number gives every part, ingredient and step its serial number within the formula.
func (f *Formula) Number() {
	for i, p := range f.Parts {
		p.Serial = i
		for _, in := range p.Ingredients {
			in.Serial = f.Ingredients
			f.Ingredients++
		}
		for _, s := range p.Steps {
			s.Serial = f.Steps
			f.Steps++
		}
	}
}

// SameName reports whether two names are one to a baker: letter case and outer blanks do not count.
func SameName(a, b string) bool {
	return strings.EqualFold(strings.TrimSpace(a), strings.TrimSpace(b))
}

// PlainNumber is a number without a unit, as a given quantity.
func PlainNumber(x float64, at source.Place) Given {
	return Given{Quantity: quantity.Quantity{Interval: figure.Point(x)}, Place: at, Set: true}
}

// Quoted gives the ingredient's name in quotes, as messages show it.
func (in *Ingredient) Quoted() string { return "\"" + source.Safe(in.Name) + "\"" }

// HasOpen reports whether an option of the ingredient is "?".
func (in *Ingredient) HasOpen(option string) bool {
	return slices.ContainsFunc(in.Open, func(o *IngredientOption) bool { return o.Name == option })
}

// PartNames are the names of its parts, in the order of the file.
func (f *Formula) PartNames() []string {
	var names []string
	for _, p := range f.Parts {
		names = append(names, p.Name)
	}
	return names
}
