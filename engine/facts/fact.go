// Package facts is the catalogue of figures: each is declared once,
// with its subject, unit, meaning, source, and the function that
// computes it from a formula.
//
// Package rule checks the names and types in rules against it, and asks
// a Sheet for values; the facts verb and the reference page print it. A
// figure is computed when first asked for, once a subject. The tables
// call packages makeup, process and safety, which compute.
package facts

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/process"
	"forebake/engine/safety"
	"forebake/engine/science/ferment"
)

// Short names of what the tables call.
type (
	Interval = figure.Interval
	Value    = figure.Value
	Line     = process.Line // one step of Sheet.Timeline
	part     = safety.Part
	parts    = safety.Sheet // all parts of a formula
)

// On is the kind of subject that a fact is about.
type On uint8

// The kinds of subject.
const (
	OnFormula On = iota
	OnPart
	OnStep
	OnIngredient
	OnKitchen
)

// OnNames are the kinds of subject as rules write them.
var OnNames = []string{"formula", "part", "step", "ingredient", "kitchen"}

// Type is the type of a fact's value.
type Type uint8

// The types of value.
const (
	Number Type = iota
	YesNo
	Text
	List
)

// TypeNames are the types of value as printed.
var TypeNames = []string{"number", "yes or no", "text", "list"}

// YeastWork is the unit of a rise: percent of yeast times hours at
// 26 C.
const YeastWork = "%-hours"

// mostLog is the largest growth or kill that is told in full, log10: no
// food holds more cells a gram.
const mostLog = 12

// Seen gives a figure as a baker sees it, with its unit: yeast work as
// the rise it makes.
func Seen(iv figure.Interval, unit string) (figure.Interval, string) {
	switch {
	case iv.IsUnknown():
	case unit == YeastWork:
		return upTo(figure.Interval{Lo: ferment.RiseOf(iv.Lo), Hi: ferment.RiseOf(iv.Hi)},
			ferment.MostRise), "times"
	case unit == "log":
		return upTo(iv, mostLog), unit
	}
	return iv, unit
}

// upTo opens an interval above a figure that is told in full.
func upTo(iv figure.Interval, most float64) figure.Interval {
	if iv.Hi > most {
		iv = figure.Interval{Lo: min(iv.Lo, most), Hi: math.Inf(1)}
	}
	return iv
}

// Fact declares one figure. The rest follows from it: the names and
// types that rules are checked against, the printed catalogue, the
// units in messages.
type Fact struct {
	// What each answer reads stands together.
	On       On
	Type     Type
	index    int      // place in the catalogue of its subject; see Declare
	declared Declared // computes a figure that a rule file declares; nil for the program's own

	Name   string
	Unit   string // as printed; "" for yes/no and text
	Means  string // one line
	Label  string // plain name for messages where Name in words is none; "" for those where it is
	Source string
	Error  string // the model's error in words; "" for arithmetic
	Misses string // published points outside the model's estimate; "" for none
	// the reading or entry that settles a model's figure, ready to
	// stand after a semicolon; "" for arithmetic
	Settle string
	// step facts: the verbs that have it, by their trait; none for all
	Verbs  []string
	Kinds  []formula.Kind           // part facts: the kinds that have it; none for all
	of     func(*formula.Verb) bool // the trait of the verbs that have it; nil for all
	main   bool                     // it stands on the first screen of its subject
	words  bool                     // it follows from words, which no range of a figure changes
	names  bool                     // it follows from names and notes, which no setting changes
	past   bool                     // step facts: no later step of its part moves it
	advice bool                     // it takes the careful end of every range itself, for a message
	// harsher reports whether one value is harsher than another, for a
	// figure that takes the careful end of the unknown: an open or
	// ranged setting gives its harshest value. Else nil.
	harsher func(a, b *Value) bool
	// EndsAtHeat: no step after the last one that heats moves it.
	EndsAtHeat bool
	// ofRanges limits harsher to ranges: an open setting leaves the
	// figure open.
	ofRanges bool

	part       func(*part) Value
	step       func(*parts, *formula.Step) Value
	ingredient func(*parts, *formula.Ingredient) Value
	formula    func(*parts) Value
	kitchen    func(*kitchen.Kitchen) Value
}

// Asker is the sheet on which a declared figure is computed: a
// *Sheet. It is an interface because a sheet knows facts and facts
// know no sheet.
type Asker interface {
	Value(f *Fact, x Subject) *Value
	Withheld(f *Fact, x Subject) bool
}

// Declared computes a figure that a rule file declares. Several
// goroutines call it at once, each with its own sheet.
type Declared interface {
	// Value computes the figure on a subject, from facts on the sheet.
	Value(on Asker, x Subject) Value

	// Withheld reports whether an absent figure may be given once open
	// amounts are weighed.
	Withheld(on Asker, x Subject) bool
}

// Declare makes the fact of a declared figure. index is its place among
// the declared figures of a house, whatever their subjects, so that a
// sheet finds its values.
func Declare(f Fact, index int, d Declared) *Fact {
	f.index, f.declared = index, d
	return &f
}

// Declared gives what computes the fact; nil for the program's own.
func (f *Fact) Declared() Declared { return f.declared }

// Main reports whether the fact is on its subject's first screen.
func (f *Fact) Main() bool { return f.main }

// HasVerb reports whether a step of the named verb has the fact.
func (f *Fact) HasVerb(name string) bool {
	v, ok := formula.FindVerb(name)
	return f.of == nil || ok && f.of(v)
}

// Of reports whether a subject has the fact: a step by verb, a part
// by kind.
func (f *Fact) Of(x Subject) bool {
	switch f.On {
	case OnPart:
		return len(f.Kinds) == 0 || slices.Contains(f.Kinds, x.Part.Kind)
	case OnStep:
		return f.of == nil || f.of(x.Step.Verb)
	}
	return true
}

// Subject is what a fact or a rule is about. Only the fields of its
// kind are set, and those above it: a step has its part.
type Subject struct {
	On         On
	Part       *formula.Part
	Step       *formula.Step
	Ingredient *formula.Ingredient
}

// row is the subject's place among those of its kind in the formula.
func (x *Subject) row(on On) int {
	switch on {
	case OnPart:
		return x.Part.Serial
	case OnStep:
		return x.Step.Serial
	case OnIngredient:
		return x.Ingredient.Serial
	}
	return 0
}

// waits are the verbs that leave the part standing, in which it
// may cool.
var waits = (*formula.Verb).Waits

// either is the trait of verbs with one of two traits.
func either(a, b func(*formula.Verb) bool) func(*formula.Verb) bool {
	return func(v *formula.Verb) bool { return a(v) || b(v) }
}
