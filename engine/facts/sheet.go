package facts

import (
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/safety"
)

// Sheet computes the facts of one formula in one kitchen, each once.
type Sheet struct {
	safety.Sheet

	values     [5][]cell
	arena      []cell
	declared   []declaredCells // of the figures that rule files declare, by index
	generation uint32
	trial      *Sheet // see retry
	weighed    *Sheet // with every open amount weighed, see Withheld
	isWeighed  bool   // that one is turned to the formula at hand
	spanning   spanning
}

// NewSheet makes the sheet of a formula.
func NewSheet(f *formula.Formula, k *kitchen.Kitchen) *Sheet {
	s := &Sheet{}
	s.Reset(f, k)
	return s
}

// Reset makes the sheet serve another formula, keeping its memory: one sheet serves all formulas of a worker.
func (s *Sheet) Reset(f *formula.Formula, k *kitchen.Kitchen) {
	s.Sheet.Reset(f, k)
	s.isWeighed, s.spanning.known = false, false
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
	if f.declared != nil {
		return s.declaredValue(f, x)
	}
	row := x.row(f.On)
	c := &s.values[f.On][row*len(catalogue[f.On])+f.index]
	if c.generation != s.generation {
		c.generation = s.generation // before the call: a fact that asks for itself is a mistake that must not hang
		c.value, c.spread = s.over(f, x, s.compute(f, x))
	}
	return &c.value
}

func (s *Sheet) compute(f *Fact, x Subject) Value {
	switch f.On {
	case OnPart:
		return f.part(s.Part(x.Part))
	case OnStep:
		if f.of != nil && !f.of(x.Step.Verb) {
			return figure.Absent("a "+x.Step.Verb.Name+" step has no "+f.Name, x.Step.Place)
		}
		return f.step(&s.Sheet, x.Step)
	case OnIngredient:
		return f.ingredient(&s.Sheet, x.Ingredient)
	case OnKitchen:
		return f.kitchen(s.Kitchen)
	}
	return f.formula(&s.Sheet)
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
			trial.Pinned = map[*formula.Ingredient]Interval{in: pin(in)}
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

// Withheld reports whether a missing figure is missing only because amounts are open or ranges: with every one of them weighed
// it could be reckoned. Such a figure is not known yet, which is not the same as one that the formula does without.
func (s *Sheet) Withheld(f *Fact, x Subject) bool {
	if f.declared != nil {
		return s.declaredWithheld(f, x)
	}
	s.Value(f, x)
	if s.values[f.On][x.row(f.On)*len(catalogue[f.On])+f.index].spread {
		return true
	}
	if !s.isWeighed { // once a formula: a rule may ask of every ingredient
		s.weighAll()
	}
	return s.weighed.Pinned != nil && !s.weighed.Value(f, x).Absent
}

// weighAll turns the sheet of Withheld to the formula at hand, with all that is open weighed.
func (s *Sheet) weighAll() {
	if s.weighed == nil {
		s.weighed = &Sheet{}
	}
	s.isWeighed, s.weighed.Pinned = true, nil
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
		s.weighed.Pinned = all
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

// sharp reports whether the amount of an ingredient is one figure, or all of a part.
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

// declaredCell finds the cell of a declared figure on a subject.
func (s *Sheet) declaredCell(f *Fact, row int) *declaredCell {
	for f.index >= len(s.declared) {
		s.declared = append(s.declared, declaredCells{})
	}
	d := &s.declared[f.index]
	if d.fact != f {
		d.fact = f
		clear(d.cells)
	}
	for row >= len(d.cells) {
		d.cells = append(d.cells, declaredCell{})
	}
	return &d.cells[row]
}

func (s *Sheet) declaredValue(f *Fact, x Subject) *Value {
	row := x.row(f.On)
	c := s.declaredCell(f, row)
	if c.generation != s.generation {
		c.generation = s.generation // before the call, so that no figure can ask for itself
		v := f.declared.Value(s, x)
		c = s.declaredCell(f, row) // another figure's value may have moved the cells
		c.value = v
	}
	return &c.value
}

// declaredWithheld is Withheld for a declared figure, worked out once a subject: figures read
// each other, and asking anew each time would double the work with every figure.
func (s *Sheet) declaredWithheld(f *Fact, x Subject) bool {
	row := x.row(f.On)
	if c := s.declaredCell(f, row); c.asked != s.generation {
		withheld := f.declared.Withheld(s, x)
		c = s.declaredCell(f, row)
		c.asked, c.withheld = s.generation, withheld
	}
	return s.declaredCell(f, row).withheld
}

// OpenAmounts lists the ingredients whose amounts are open where a need asks for all amounts of a
// part; those of the parts that it takes in count as well.
func (s *Sheet) OpenAmounts(n *figure.Need) []*formula.Ingredient {
	rest, ok := strings.CutPrefix(n.What, "all amounts of \"")
	if !ok {
		return nil
	}
	name, _, _ := strings.Cut(rest, "\"")
	var out []*formula.Ingredient
	for _, p := range s.Formula.Parts {
		if p.Name != name {
			continue
		}
		for _, q := range s.Part(p).Contents() {
			for _, in := range q.Ingredients {
				if in.Amount.Open {
					out = append(out, in)
				}
			}
		}
	}
	return out
}
