// Package facts is the catalogue of figures: each is declared once, with its subject, unit, meaning and source, and the
// function that computes it from a formula.
//
// Package rule reads the catalogue to check the names and types in rules, and asks a Sheet for values while judging; the
// facts verb and the reference page print it. Figures are computed when first asked for and once a subject; nothing is
// computed that no rule and no output asks for. The science itself lives in the science packages.
package facts

import (
	"math"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/kitchen"
	"forebake/engine/science/microbe"
	"forebake/engine/source"
)

// Interval is short for the interval of package figure.
type Interval = figure.Interval

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

// OnNames are the kinds of subject as written in rules.
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

// Origin tells where a value comes from.
type Origin uint8

// The origins of a value.
const (
	Arithmetic Origin = iota // computed exactly from what is written
	Model                    // a model with an error
	Measured                 // the baker's own reading
	AsGiven                  // as written in the file
)

// OriginNames are the origins as printed.
var OriginNames = []string{"arithmetic", "model", "measured", "given"}

func (o Origin) String() string { return OriginNames[o] }

// Value is the value of a fact: an interval for a number, 0 to 1 for yes or no, words for a text or list.
type Value struct {
	Lo, Hi float64 // a missing figure is -Inf..+Inf; yes is 1, no is 0, not known 0..1
	Mid    float64 // the best single figure; for a model its middle
	Words  []string
	Origin Origin
	Absent bool  // the formula does not give it, as against giving a range or "?"
	Need   *Need // what to write so that it is known
}

// Need says what would settle a missing figure.
type Need struct {
	What  string // "temp of \"whole milk\"", ready to stand after "needs "
	Place source.Place
}

// Exact tells whether the value is a single known point.
func (v *Value) Exact() bool { return !v.Absent && v.Lo == v.Hi && !math.IsInf(v.Lo, 0) }

// Interval gives the value as an interval.
func (v *Value) Interval() Interval { return Interval{Lo: v.Lo, Hi: v.Hi} }

// Fact is the declaration of one figure. Everything else follows from it: the names and types that rules are checked
// against, the printed catalogue, the units in messages.
type Fact struct {
	Name   string
	On     On
	Type   Type
	Unit   string // as printed; "" for yes/no and text
	Means  string // one line
	Label  string // plain name for messages where Name in words is none; "" for those where it is
	Source string
	Error  string                   // the model's error in words; "" for arithmetic
	Settle string                   // what reading or entry settles a model's figure, ready to stand after a semicolon; "" for arithmetic
	Verbs  []string                 // step facts: the verbs that have it, by their trait; none for all
	of     func(*formula.Verb) bool // the trait of the verbs that have it; nil for all
	index  int                      // place in the catalogue of its subject

	part       func(*part) Value
	step       func(*Sheet, *formula.Step) Value
	ingredient func(*Sheet, *formula.Ingredient) Value
	formula    func(*Sheet) Value
	kitchen    func(*kitchen.Kitchen) Value
}

// catalogue holds the facts by subject, in the order of declaration.
var catalogue = [...][]*Fact{
	OnFormula:    number(OnFormula, formulaFacts),
	OnPart:       number(OnPart, partFacts),
	OnStep:       number(OnStep, stepFacts),
	OnIngredient: number(OnIngredient, ingredientFacts),
	OnKitchen:    number(OnKitchen, kitchenFacts),
}

func number(on On, list []Fact) []*Fact {
	out := make([]*Fact, len(list))
	for i := range list {
		list[i].On, list[i].index = on, i
		if list[i].of != nil {
			list[i].Verbs = formula.VerbNames(list[i].of)
		}
		out[i] = &list[i]
	}
	return out
}

// All gives the facts about one kind of subject, in the order of declaration. The caller must not change the list.
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

// HasVerb reports whether a step of the verb of that name has the fact.
func (f *Fact) HasVerb(name string) bool {
	v, ok := formula.FindVerb(name)
	return f.of == nil || ok && f.of(v)
}

// Subject is what a fact or a rule looks at. Only the fields of its kind are set, and those above it: a step has its part.
type Subject struct {
	On         On
	Part       *formula.Part
	Step       *formula.Step
	Ingredient *formula.Ingredient
}

// Sheet computes the facts of one formula in one kitchen, each once.
type Sheet struct {
	Formula *formula.Formula
	Kitchen *kitchen.Kitchen

	parts      []part
	values     [5][]cell
	arena      []cell
	generation uint32
	follower   history.Simulator
	law        *microbe.Limits // the food-safety figures in force in lawOf
	lawOf      *kitchen.Kitchen
	trial      *Sheet                           // see retry
	weighed    *Sheet                           // with every open amount weighed, see Withheld
	isWeighed  bool                             // that one is turned to the formula at hand
	pinned     map[*formula.Ingredient]Interval // masses that stand for open ones, g; see Settles and Withheld
}

// cell holds a value that was computed for the formula of that generation; older ones are as good as empty, so that
// turning the sheet to the next formula clears nothing.
type cell struct {
	generation uint32
	value      Value
}

// NewSheet makes the sheet of a formula.
func NewSheet(f *formula.Formula, k *kitchen.Kitchen) *Sheet {
	s := &Sheet{}
	s.Reset(f, k)
	return s
}

// Reset makes the sheet serve another formula, keeping its memory: one sheet serves all formulas of a worker.
func (s *Sheet) Reset(f *formula.Formula, k *kitchen.Kitchen) {
	s.Formula, s.Kitchen, s.pinned, s.isWeighed = f, k, nil, false
	if cap(s.parts) < len(f.Parts) {
		s.parts = make([]part, len(f.Parts))
	}
	s.parts = s.parts[:len(f.Parts)]
	for i := range s.parts {
		s.parts[i] = part{sheet: s, Part: f.Parts[i]}
	}
	counts := [...]int{OnFormula: 1, OnPart: len(f.Parts), OnStep: f.Steps, OnIngredient: f.Ingredients, OnKitchen: 1}
	need := 0
	for on, n := range counts {
		need += n * len(catalogue[on])
	}
	if cap(s.arena) < need {
		s.arena = make([]cell, need)
	}
	s.arena = s.arena[:need]
	s.generation++
	at := 0
	for on, n := range counts {
		size := n * len(catalogue[on])
		s.values[on] = s.arena[at : at+size]
		at += size
	}
}

// Value gives the value of a fact on a subject. A step fact asked of a step whose verb has no such figure is absent.
func (s *Sheet) Value(f *Fact, x Subject) *Value {
	row := 0
	switch f.On {
	case OnPart:
		row = x.Part.Serial
	case OnStep:
		row = x.Step.Serial
	case OnIngredient:
		row = x.Ingredient.Serial
	}
	c := &s.values[f.On][row*len(catalogue[f.On])+f.index]
	if c.generation != s.generation {
		c.generation = s.generation // before the call: a fact that asks for itself is a mistake that must not hang
		c.value = s.compute(f, x)
	}
	return &c.value
}

func (s *Sheet) compute(f *Fact, x Subject) Value {
	switch f.On {
	case OnPart:
		return f.part(&s.parts[x.Part.Serial])
	case OnStep:
		if f.of != nil && !f.of(x.Step.Verb) {
			return absent("a "+x.Step.Verb.Name+" step has no "+f.Name, x.Step.Place)
		}
		return f.step(s, x.Step)
	case OnIngredient:
		return f.ingredient(s, x.Ingredient)
	case OnKitchen:
		return f.kitchen(s.Kitchen)
	}
	return f.formula(s)
}

// Settles lists the ingredients whose open amount or range leaves a fact open, in file order. It weighs each in turn and
// looks whether the fact's interval shrinks, so it says what would really help; only unsure answers ask for it.
func (s *Sheet) Settles(f *Fact, x Subject) []*formula.Ingredient {
	before := *s.Value(f, x)
	var out []*formula.Ingredient
	for _, p := range s.Formula.Parts {
		for _, in := range p.Ingredients {
			if sharp(in) || in.Of != nil && !in.Amount.Open {
				continue
			}
			trial := s.retry()
			trial.pinned = map[*formula.Ingredient]Interval{in: pin(in)}
			after := trial.Value(f, x)
			if after.Lo > before.Lo || after.Hi < before.Hi || len(after.Words) != len(before.Words) {
				out = append(out, in)
			}
		}
	}
	return out
}

// retry gives a second sheet of the same formula, on which amounts may be pinned. It is made when first needed and kept: a
// sheet is large.
func (s *Sheet) retry() *Sheet {
	if s.trial == nil {
		s.trial = &Sheet{}
	}
	s.trial.Reset(s.Formula, s.Kitchen)
	return s.trial
}

// Withheld tells whether a missing figure is missing only because amounts are open or ranges: with every one of them weighed
// it could be reckoned. Such a figure is not known yet, which is not the same as one that the formula does without.
func (s *Sheet) Withheld(f *Fact, x Subject) bool {
	if !s.isWeighed { // once a formula: a rule may ask of every ingredient
		s.weighAll()
	}
	return s.weighed.pinned != nil && !s.weighed.Value(f, x).Absent
}

// weighAll turns the sheet of Withheld to the formula at hand, with all that is open weighed.
func (s *Sheet) weighAll() {
	if s.weighed == nil {
		s.weighed = &Sheet{}
	}
	s.isWeighed, s.weighed.pinned = true, nil
	var all map[*formula.Ingredient]Interval
	for _, p := range s.Formula.Parts {
		for _, in := range p.Ingredients {
			if sharp(in) {
				continue
			}
			if all == nil {
				all = map[*formula.Ingredient]Interval{}
			}
			all[in] = pin(in)
		}
	}
	if all != nil {
		s.weighed.Reset(s.Formula, s.Kitchen)
		s.weighed.pinned = all
	}
}

// Weighing is what Settles would cost on this formula, in ingredients looked at: it reckons the formula anew for every amount that is
// open or a range.
func (s *Sheet) Weighing() int {
	open := 0
	for _, p := range s.Formula.Parts {
		for _, in := range p.Ingredients {
			if !sharp(in) {
				open++
			}
		}
	}
	return open * (s.Formula.Ingredients + ingredientsPerStep*s.Formula.Steps)
}

// ingredientsPerStep is about how many ingredients are looked at in the time that following one step takes.
const ingredientsPerStep = 200

// sharp tells whether the amount of an ingredient is one figure, or all of a part.
func sharp(in *formula.Ingredient) bool {
	return in.Amount.All || !in.Amount.Open && in.Amount.IsPoint()
}

// pin is a weight that an open amount could have, or the middle of a range.
func pin(in *formula.Ingredient) Interval {
	if g := in.Grams.FixedG; g.IsFinite() && g.Hi > 0 {
		return figure.Point(g.Mid())
	}
	return figure.Point(1)
}

// The makers of values.

func num(iv Interval) Value {
	return Value{Lo: iv.Lo, Hi: iv.Hi, Mid: middle(iv)}
}

func middle(iv Interval) float64 {
	switch {
	case iv.Lo == iv.Hi:
		return iv.Lo
	case iv.IsFinite():
		return (iv.Lo + iv.Hi) / 2
	}
	return math.NaN()
}

// modelled gives a model's middle figure a factor of error on both sides: mid/factor .. mid*factor.
func modelled(iv Interval, factor float64) Value {
	return Value{Lo: iv.Lo / factor, Hi: iv.Hi * factor, Mid: middle(iv), Origin: Model}
}

func given(g formula.Given, what string, at source.Place) Value {
	if !g.Set {
		return absent(what, at)
	}
	v := num(g.Interval)
	v.Origin = AsGiven
	return v
}

func yes(b bool) Value {
	if b {
		return Value{Lo: 1, Hi: 1, Mid: 1}
	}
	return Value{}
}

// maybe is a yes or no that the formula leaves open.
func maybe(what string, at source.Place) Value {
	return Value{Lo: 0, Hi: 1, Mid: math.NaN(), Need: &Need{what, at}}
}

func text(word string) Value { return Value{Words: []string{word}, Origin: AsGiven} }

func list(words []string) Value { return Value{Words: words} }

// absent is a figure that the formula does not give. what says what to write.
func absent(what string, at source.Place) Value {
	return Value{Lo: math.Inf(-1), Hi: math.Inf(1), Mid: math.NaN(), Absent: true, Need: &Need{what, at}}
}
