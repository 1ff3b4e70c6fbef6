// Package levers declares the values of a formula that a mend may
// change: one kind a file.
//
// Package rule asks it which names an adjust block may use. Package
// mend asks it for levers, for the edits of a change and for its words.
// This package judges nothing and searches nothing: the caller decides
// on the value. It knows no rule, so that package rule can import it.
package levers

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"sync"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/formula/edit"
	"forebake/engine/kitchen"
	"forebake/engine/source"
)

// Kind declares one kind of lever. A new kind is one file: a type with
// these methods, and an init that registers it. Methods that several
// kinds have in common are embedded; see embedded.go. A kind that
// leaves one out does not compile.
type Kind interface {
	// Names lists the names by which an adjust block asks for the kind.
	// Kinds may share a name.
	Names() []string

	// Means is one line for the reference page: the value that the
	// kind changes.
	Means() string

	// Traits says what a search may do with the kind.
	Traits() Traits

	// Find lists the levers that a query means, the likeliest first.
	// It sets their part, index, class and item; the registry sets
	// the rest.
	Find(q *Query) []*Lever

	// Grid gives the values that a lever may take in the formula of
	// the query.
	Grid(l *Lever, q *Query) Grid

	// Value reads what the lever is set to in a formula, before an edit
	// or after it. The number is NaN where none is written.
	Value(l *Lever, f *formula.Formula) Setting

	// Figure gives the reader of the figure that a rule's to and within
	// are in. Nil stands for the lever's own value in base units.
	Figure(l *Lever) Figure

	// Usual gives the published range of the lever's figure; false
	// where none is known.
	Usual(l *Lever, f *formula.Formula) (figure.Estimate, bool)

	// Instead says what a baker would do where a formula writes no
	// value of the kind, or none that serves. It is empty where nothing
	// is known.
	Instead(q *Query) string

	// Edit gives the edits that set the lever.
	Edit(l *Lever, t *Text, to Setting) ([]source.Edit, error)

	// Writes lists the fields that an edit changes.
	Writes(l *Lever) []Field

	// Scales lists the fields that an edit multiplies. Its result
	// depends on earlier changes of them.
	Scales(l *Lever) []Field

	// Cost says how much a change asks of the baker: the share by which
	// a figure moves.
	Cost(l *Lever, to Setting) float64

	// ForBaker reports whether the change is a matter of taste, which
	// the baker decides.
	ForBaker(l *Lever) bool

	// Noun names the lever: "instant yeast in dough \"d\"".
	Noun(l *Lever, f *formula.Formula) string

	// Describe words a change: "instant yeast in dough \"d\": 9 g to 4
	// g (line 7)".
	Describe(c *Change) string
}

// Lever is one value of a formula that can be changed. It holds for
// every version of the formula: parts are found by serial, ingredients
// and steps by index.
type Lever struct {
	Kind Kind
	Grid

	Part  int
	Index int    // of the ingredient or the step
	Class string // of kinds that act on a class of ingredients: its name
	Item  string // of kinds that add an ingredient: what is added

	Asked  string    // the name by which the adjust block asked
	Within []float64 // bounds of the figure, from the rule; nil for none
	Start  float64   // the value as written; NaN where none is
}

// Setting is what a lever is set to: a number in the lever's unit, or a
// word such as a strain.
type Setting struct {
	Number float64
	Word   string
}

// At is the setting of a number.
func At(x float64) Setting { return Setting{Number: x} }

// Equals reports whether two settings are the same word, or the same
// number up to rounding.
func (s Setting) Equals(o Setting) bool {
	if s.Word != "" || o.Word != "" {
		return s.Word == o.Word
	}
	return math.Abs(s.Number-o.Number) <= 1e-6*max(1, math.Abs(o.Number))
}

// Grid is the values that a lever may take: multiples of Step from Low
// to High, in Unit.
type Grid struct {
	Unit  string
	Step  float64 // the finest that a person can set or weigh; 0 where the kind takes no number
	Round float64 // the step in which a baker would choose a value
	Low   float64
	High  float64
	Coarse
}

// Coarse widens the steps above a value. The zero Coarse leaves them as
// they are.
type Coarse struct{ Above, Step float64 }

// Query is what an adjust block asks for on a subject.
type Query struct {
	Name     string // of the adjust block: "sugar", "chill.time"
	Formula  *formula.Formula
	Subject  facts.Subject
	Kitchen  *kitchen.Kitchen
	Within   []float64
	Computed bool // the block computes what the lever is set to
}

// Text is a formula with the changer of its file, ready for an edit.
type Text struct {
	*edit.Changer
	Formula *formula.Formula
}

// Change is one lever set to a value by edits of a formula's text.
type Change struct {
	Lever *Lever
	From  *formula.Formula
	To    Setting
	Edits []source.Edit
}

// Figure reads the figure that a lever moves; false when it is
// not known.
type Figure func(*facts.Sheet, *formula.Formula) (float64, bool)

// ErrGone says that a formula lacks the lever's entry: another change
// adds it.
var ErrGone = errors.New("the entry is not there")

// kinds holds what the init of each file registers.
var kinds []Kind

// register adds a kind to those that Find asks.
func register(k Kind) { kinds = append(kinds, k) }

// named holds the kinds by the names that adjust blocks ask for, and
// those names in order.
type named struct {
	kinds map[string][]Kind
	names []string
}

// byName is made on first use, when all kinds are registered.
var byName = sync.OnceValue(func() named {
	all := named{kinds: map[string][]Kind{}}
	for _, k := range kinds {
		for _, name := range k.Names() {
			if all.kinds[name] == nil {
				all.names = append(all.names, name)
			}
			all.kinds[name] = append(all.kinds[name], k)
		}
	}
	return all
})

// Kinds lists every kind of lever.
func Kinds() []Kind { return slices.Clone(kinds) }

// Names lists every name by which an adjust block may ask, each once.
func Names() []string { return slices.Clone(byName().names) }

// Known reports whether an adjust block may ask by a name.
func Known(name string) bool { return byName().kinds[name] != nil }

// Find lists the levers that a query means, those for a last
// resort last.
func Find(q *Query) []*Lever {
	var out []*Lever
	for _, k := range byName().kinds[q.Name] {
		for _, l := range k.Find(q) {
			l.Kind, l.Asked, l.Within = k, q.Name, q.Within
			l.Grid = k.Grid(l, q)
			l.Start = k.Value(l, q.Formula).Number
			out = append(out, l)
		}
	}
	slices.SortStableFunc(out, func(a, b *Lever) int {
		return cmp.Compare(a.Kind.Traits().Resort, b.Kind.Traits().Resort)
	})
	return out
}

// Instead says what a baker would do where no lever of a query serves;
// "" where nothing is known.
func Instead(q *Query) string {
	for _, k := range byName().kinds[q.Name] {
		if text := k.Instead(q); text != "" {
			return text
		}
	}
	return ""
}

// IsWish reports whether the lever holds what the baker wants, and it
// is written: a mend leaves it alone.
func (l *Lever) IsWish() bool {
	return l.Kind.Traits().Role == Wish && !math.IsNaN(l.Start)
}

// Same reports whether two levers change the same value.
func (l *Lever) Same(o *Lever) bool {
	return l.Kind == o.Kind && l.Part == o.Part && l.Index == o.Index &&
		l.Class == o.Class && l.Item == o.Item
}

// DependsOn reports whether a change of the lever depends on what
// another lever writes.
func (l *Lever) DependsOn(o *Lever) bool {
	for _, scaled := range l.Kind.Scales(l) {
		if slices.ContainsFunc(o.Kind.Writes(o), scaled.overlaps) {
			return true
		}
	}
	return false
}

// Searchable reports whether a search can try values of the lever.
func (l *Lever) Searchable() bool {
	return l.Kind.Traits().Setter == Searched && !math.IsNaN(l.Start)
}

// IsAdvice reports whether the lever stands outside the formula, so
// that a change is advice only.
func (l *Lever) IsAdvice() bool { return l.Kind.Traits().Extent == NoValue }

// Steps gives the number of steps next to x and then the
// other neighbour.
func (l *Lever) Steps(x float64) (near, far int) {
	n := x / l.Step
	near, far = int(math.Floor(n+1e-6)), int(math.Ceil(n-1e-6))
	if n-math.Floor(n) > 0.5 {
		near, far = far, near
	}
	return near, far
}

// Number gives the value of n steps.
func (g Grid) Number(n int) float64 {
	x := rounded(float64(n) * g.Step)
	if g.Coarse.Step > 0 && x > g.Coarse.Above {
		return g.Coarse.Step * math.Ceil(x/g.Coarse.Step)
	}
	return x
}

// EdgeText names the value of n steps as the last that serves.
// Direction leads away from the written value.
func (l *Lever) EdgeText(n, direction int) string {
	word := "more"
	if direction < 0 {
		word = "less"
	}
	text := plain(l.Number(n)) + " " + l.Unit
	switch x := l.Number(n); {
	case l.Kind.Traits().Basis == OfWritten:
		text += " of what is written"
	case l.Unit == "min" && x > 60 && math.Mod(x, 60) == 0:
		text = plain(x/60) + " h"
	case l.Unit == "min" && x > 60:
		text = fmt.Sprintf("%s h %s min", plain(math.Floor(x/60)), plain(math.Mod(x, 60)))
	}
	return fmt.Sprintf("or %s: %s is the edge", word, text)
}

// onGrid gives the multiple of the step nearest to x.
func (g Grid) onGrid(x float64) float64 { return toStep(x, g.Step) }
