package formula

import (
	"cmp"
	"fmt"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// Span is an open or ranged setting of a step. A figure that follows from it spans
// the results of its readings.
type Span struct {
	What     string // what to write so that it is settled: "the at of this chill"
	Place    source.Place
	Open     bool
	Readings []Narrowing
	Step     *Step // that it is a setting of; nil for other settings
}

// Narrowing puts one figure in the place of an open or ranged setting, in a copy of the formula.
type Narrowing func(f *Formula)

// Copy copies the formula with its serial numbers, so that steps can be changed.
func (f *Formula) Copy() *Formula {
	out := *f
	parts := make([]Part, len(f.Parts))
	out.Parts, out.Order = make([]*Part, len(f.Parts)), make([]*Part, len(f.Order))
	of := func(p *Part) *Part {
		if p == nil {
			return nil
		}
		return &parts[p.Serial]
	}
	ingredients, steps := make([]Ingredient, f.Ingredients), make([]Step, f.Steps)
	for i, p := range f.Parts {
		parts[i] = *p
		q := &parts[i]
		out.Parts[i], q.Formula = q, &out
		q.Ingredients = make([]*Ingredient, len(p.Ingredients))
		for k, in := range p.Ingredients {
			one := &ingredients[in.Serial]
			*one = *in
			one.Part, one.Of = q, of(in.Of)
			q.Ingredients[k] = one
		}
	}
	for i, p := range f.Order {
		out.Order[i] = of(p)
	}
	for i, p := range f.Parts {
		q := &parts[i]
		q.Steps = make([]*Step, len(p.Steps))
		for k, s := range p.Steps {
			one := &steps[s.Serial]
			*one = *s
			one.Part, one.Uses, one.root = q, of(s.Uses), s.Root()
			if len(s.With) > 0 {
				one.With = make([]*Ingredient, len(s.With))
			}
			for n, in := range s.With {
				one.With[n] = &ingredients[in.Serial]
			}
			q.Steps[k] = one
		}
	}
	return &out
}

// Root is the first step among equal ones of a formula's copies: that of the
// formula itself, or the first that was changed like this one.
func (s *Step) Root() *Step { return cmp.Or(s.root, s) }

// same finds the step of a copy.
func (s *Step) same(f *Formula) *Step {
	steps := f.Parts[s.Part.Serial].Steps
	return steps[slices.IndexFunc(steps, func(o *Step) bool { return o.Serial == s.Serial })]
}

// Spans lists the settings that are open or ranges, except open amounts and ranged
// temperatures of ingredients, which are always followed as ranges.
func (f *Formula) Spans() []Span {
	out := slices.Clone(f.open)
	if n := f.Makes.Number; n.Set {
		out = append(out, Span{"makes", n.Place, false, ends(n.Interval, func(f *Formula, x float64,
		) {
			f.Makes.Pieces = x
		}), nil})
	}
	for _, p := range f.Parts {
		for _, in := range p.Ingredients {
			out = append(out, in.settings()...)
		}
		for _, s := range p.Steps {
			for _, o := range s.Open {
				if o.spans == nil {
					continue
				}
				if list := o.spans(s); len(list) > 0 {
					out = append(out, Span{"the " + o.Name + " of this " + s.Verb.Name, s.Place,
						true, at(s, list), s})
				}
			}
			if s.OpenOwn {
				if list := s.ownReadings(); len(list) > 0 {
					out = append(out, Span{s.Verb.Measures() + " of this " + s.Verb.Name, s.Place,
						true, at(s, list), s})
				}
			}
			if s.isShapeOpen() { // a range, whose other end is the thickest
				out = append(out, Span{s.Verb.Name, s.Place, false, at(s, []func(*Step){
					func(s *Step) { s.Words, s.OpenOwn = Thinnest.Name, false },
				}), s})
			}
			out = append(out, s.ranges()...)
		}
	}
	return out
}

// at turns changes of a step into narrowings of its formula.
func at(s *Step, list []func(*Step)) []Narrowing {
	out := make([]Narrowing, len(list))
	for i, set := range list {
		changed := map[*Step]*Step{} // the first of each root: those after it are equal
		out[i] = func(f *Formula) {
			other := s.same(f)
			root := other.Root()
			if changed[root] == nil {
				changed[root] = other
			}
			set(other)
			other.root = changed[root]
		}
	}
	return out
}

// fastestC is about where S. aureus and B. cereus grow fastest, C: within a range of temperatures
// it is worse than either end (optima of 35 to 40 C, ICMSF, memory).
const fastestC = 38

// dyingC is where some yeast dies, and some lives: colder nearly all of it lives, hotter none is
// left to be judged (thermal death from 48 to 55 C, memory).
const dyingC = 50

// between is what a range is followed at besides its ends.
func between(g *Given) []float64 {
	if g.Kind == quantity.Temperature {
		return []float64{fastestC, dyingC}
	}
	return nil
}

// ranges lists the ranged settings of a step, each with its two ends.
func (s *Step) ranges() []Span {
	var out []Span
	add := func(iv Interval, set func(*Step, Interval), also ...float64) {
		if !isRange(iv) {
			return
		}
		var list []func(*Step)
		for _, x := range append([]float64{iv.Lo, iv.Hi}, also...) {
			if iv.Contains(x) {
				list = append(list, func(s *Step) { set(s, figure.Point(x)) })
			}
		}
		out = append(out, Span{s.Verb.Name, s.Place, false, at(s, list), s})
	}
	for _, field := range [...]func(*Step) *Given{
		func(s *Step) *Given { return &s.Time }, func(s *Step) *Given { return &s.Measure },
		func(s *Step) *Given { return &s.At }, func(s *Step) *Given { return &s.To },
		func(s *Step) *Given { return &s.Core }, func(s *Step) *Given { return &s.Amount },
	} {
		if g := field(s); g.Set && isRange(g.Interval) {
			add(g.Interval, func(s *Step, iv Interval) { field(s).Interval = iv }, between(g)...)
		}
	}
	for _, field := range [...]func(*Step) **Given{
		func(s *Step) **Given { return &s.Count }, func(s *Step) **Given { return &s.Pieces },
		func(s *Step) **Given { return &s.Slice }, func(s *Step) **Given { return &s.Wide },
	} {
		if g := *field(s); g != nil && isRange(g.Interval) {
			add(g.Interval, func(s *Step, iv Interval) {
				one := **field(s)
				one.Interval = iv
				*field(s) = &one
			})
		}
	}
	for _, o := range StepOptions {
		if len(s.plain) == 0 { // as of nearly every step
			break
		}
		if g, ok := s.plain[o.Name]; ok {
			add(g.Interval, func(s *Step, iv Interval) {
				g.Interval = iv
				o.slot.put(s, g)
			})
		}
	}
	if s.Form != nil {
		if list := corners(s.Form.Sides, func(s *Step, box [3]float64) {
			one := *s.Form
			one.Brick, s.Form = box, &one
		}); list != nil {
			out = append(out, Span{s.Verb.Name, s.Place, false, at(s, list), s})
		}
		add(s.Form.MM, func(s *Step, iv Interval) {
			one := *s.Form
			one.MM, s.Form = iv, &one
		})
		add(s.Form.Each.Interval, func(s *Step, iv Interval) {
			one := *s.Form
			one.Each.Interval, s.Form = iv, &one
		})
	}
	if s.Reading != nil {
		for _, field := range [...]func(*Reading) *Given{
			func(r *Reading) *Given { return &r.Temp }, func(r *Reading) *Given { return &r.Rise },
			func(r *Reading) *Given { return &r.After },
		} {
			if g := field(s.Reading); g.Set {
				add(g.Interval, func(s *Step, iv Interval) {
					one := *s.Reading
					field(&one).Interval, s.Reading = iv, &one
				}, between(g)...)
			}
		}
	}
	return out
}

// isRange reports whether an interval has two ends that are written.
func isRange(iv Interval) bool { return !iv.IsPoint() && iv.IsFinite() }

// ends makes the two narrowings of a range.
func ends(iv Interval, set func(*Formula, float64)) []Narrowing {
	return []Narrowing{
		func(f *Formula) { set(f, iv.Lo) }, func(f *Formula) { set(f, iv.Hi) },
	}
}

// corners sets a brick to each corner of its ranges; nil where no side is a range.
func corners(sides [3]Interval, set func(*Step, [3]float64)) []func(*Step) {
	if sides[0].IsPoint() && sides[1].IsPoint() && sides[2].IsPoint() {
		return nil
	}
	var out []func(*Step)
	for _, box := range figure.Corners(sides) {
		out = append(out, func(s *Step) { set(s, box) })
	}
	return out
}

// settings lists an ingredient's open settings, and the ranges that no figure
// follows: those of its item, in the house, and its DE.
func (in *Ingredient) settings() []Span {
	var out []Span
	if g := in.Grams; in.Amount.Set && !in.Amount.IsPoint() && g.FixedG.IsFinite() {
		var list []Narrowing
		for _, end := range [...]func(Interval) float64{
			func(iv Interval) float64 { return iv.Lo }, func(iv Interval) float64 { return iv.Hi },
		} {
			list = append(list, func(f *Formula) {
				for _, other := range f.Parts[in.Part.Serial].Ingredients {
					if other.Serial == in.Serial {
						other.Amount.Interval = figure.Point(end(other.Amount.Interval))
						other.Grams = Mass{FixedG: figure.Point(end(g.FixedG)),
							PerFlour: figure.Point(end(g.PerFlour))}
					}
				}
				f.sum()
			})
		}
		out = append(out, Span{"amount of " + in.Name, in.Place, false, list, nil})
	}
	here := func(list []func(*Ingredient)) []Narrowing {
		narrow := make([]Narrowing, len(list))
		for i, set := range list {
			narrow[i] = func(f *Formula) {
				for _, other := range f.Parts[in.Part.Serial].Ingredients {
					if other.Serial == in.Serial {
						set(other)
					}
				}
			}
		}
		return narrow
	}
	for _, o := range in.Open {
		name := fmt.Sprintf("%s of %q", o.Name, in.Name)
		out = append(out, Span{name, in.Place, true, here(o.Spans(in)), nil})
	}
	if in.DE != nil && !in.DE.IsPoint() {
		var list []func(*Ingredient)
		for _, x := range [...]float64{in.DE.Lo, in.DE.Hi} {
			list = append(list, func(in *Ingredient) {
				one := *in.DE
				one.Interval, in.DE = figure.Point(x), &one
			})
		}
		out = append(out, Span{"de of " + in.Name, in.Place, false, here(list), nil})
	}
	if in.Item == nil || len(in.Item.Readings) == 0 || in.isLater() {
		return out
	}
	var list []Narrowing
	for _, reading := range in.Item.Readings {
		list = append(list, func(f *Formula) {
			for _, p := range f.Parts {
				for _, other := range p.Ingredients {
					if other.Item == in.Item {
						other.Item = reading
					}
				}
			}
		})
	}
	return append(out, Span{in.Item.Open, in.Place, in.Item.Open != "", list, nil})
}

// isLater reports whether an earlier ingredient of the formula is the same item.
func (in *Ingredient) isLater() bool {
	for _, p := range in.Part.Formula.Parts {
		for _, other := range p.Ingredients {
			if other.Item == in.Item {
				return other != in
			}
		}
	}
	return false
}

// point is a figure as if it had been written.
func point(s *Step, x float64, kind quantity.Kind) Given {
	unit := kind.Base()
	if kind == quantity.Count {
		unit = "pieces"
	}
	q := quantity.Quantity{Kind: kind, Interval: figure.Point(x), Unit: unit}
	q.Text = quantity.Format(x, unit)
	return Given{Quantity: q, Place: s.Place, Set: true}
}

// points sets a field of a step to each figure of a list.
func points(list []float64, kind quantity.Kind, set func(*Step, Given)) []func(*Step) {
	out := make([]func(*Step), len(list))
	for i, x := range list {
		out[i] = func(s *Step) { set(s, point(s, x, kind)) }
	}
	return out
}

// ownReadings are what may stand for the verb's own open value. Of a verb that puts
// on a part, it is any part that does not take this one in.
func (s *Step) ownReadings() []func(*Step) {
	kinds := s.Verb.Own.Kinds
	var out []func(*Step)
	if s.Verb.PutsOn() {
		out = append(out, func(*Step) {})
		for _, p := range s.Part.Formula.Parts {
			if p == s.Part || p.holds(s.Part) {
				continue
			}
			out = append(out, func(s *Step) {
				s.Uses = s.Part.Formula.Parts[p.Serial]
				s.Words = p.Name
				s.Uses.Taken = append(s.Uses.Taken[:len(s.Uses.Taken):len(s.Uses.Taken)], s.Place)
			})
		}
		return out
	}
	add := func(list []float64, kind quantity.Kind, set func(*Step, Given)) {
		if kinds.Has(kind) {
			out = append(out, points(list, kind, set)...)
		}
	}
	measure := func(s *Step, g Given) { s.Measure = g }
	add(anyMinutes, quantity.Time, func(s *Step, g Given) { s.Time = g })
	add(anyLength, quantity.Length, measure)
	add(anyMass, quantity.Mass, measure)
	if s.Verb.Own.Count {
		out = append(out, points(anyCount, quantity.Count, measure)...)
	}
	return out
}

// holds reports whether a part takes another in, by an ingredient or a step, at any depth.
func (p *Part) holds(other *Part) bool {
	seen := map[*Part]bool{}
	var look func(*Part) bool
	look = func(q *Part) bool {
		if q == other {
			return true
		}
		if q == nil || seen[q] {
			return false
		}
		seen[q] = true
		for _, in := range q.Ingredients {
			if in.Of != nil && look(in.Of) {
				return true
			}
		}
		for _, s := range q.Steps {
			if s.Uses != nil && look(s.Uses) {
				return true
			}
		}
		return false
	}
	return look(p)
}

// readings are the readings that may be taken of a part, and none.
func readings(list []float64, at source.Place, field func(*Part) *Given) []func(*Part) {
	out := []func(*Part){func(p *Part) { *field(p) = Given{} }}
	for _, x := range list {
		out = append(out, func(p *Part) { *field(p) = PlainNumber(x, at) })
	}
	return out
}

// OpenPart keeps that a setting of a part is "?".
func (f *Formula) OpenPart(p *Part, key string, at source.Place) {
	list := openParts[key](p, at)
	narrow := make([]Narrowing, len(list))
	for i, set := range list {
		narrow[i] = func(f *Formula) { set(f.Parts[p.Serial]) }
	}
	f.open = append(f.open, Span{fmt.Sprintf("%s of %q", key, p.Name), at, true, narrow, nil})
}

// OpenKeys lists the settings of the formula itself, and of its parts, that are "?".
func (f *Formula) OpenKeys() []Span { return f.open }

// settled is a figure of a formula as if it had been written.
func settled(at source.Place, x float64, kind quantity.Kind) Given {
	return point(&Step{Place: at}, x, kind)
}

// OpenKey keeps that a setting of a formula is "?".
func (f *Formula) OpenKey(key string, at source.Place) {
	f.open = append(f.open, Span{key, at, true, openFormula[key](at), nil})
}

// IsSettled reports whether each setting of a step is one figure, except its time,
// place and target, which callers check.
func (s *Step) IsSettled() bool {
	if len(s.Open) > 0 || s.OpenOwn {
		return false
	}
	for _, g := range [...]*Given{s.Count, s.Pieces, s.Slice, s.Wide} {
		if g != nil && !g.IsPoint() {
			return false
		}
	}
	for _, g := range s.plain {
		if !g.IsPoint() {
			return false
		}
	}
	if f := s.Form; f != nil &&
		(corners(f.Sides, nil) != nil || !f.MM.IsPoint() || !f.Each.IsPoint()) {
		return false
	}
	return s.Reading == nil ||
		s.Reading.Temp.IsPoint() && s.Reading.Rise.IsPoint() && s.Reading.After.IsPoint()
}

func lines(list []float64, kind quantity.Kind, set func(*Ingredient, Given)) []func(*Ingredient) {
	out := make([]func(*Ingredient), len(list))
	for i, x := range list {
		out[i] = func(in *Ingredient) { set(in, settled(in.Place, x, kind)) }
	}
	return out
}

func words(list []string, set func(*Ingredient, string)) []func(*Ingredient) {
	out := make([]func(*Ingredient), len(list))
	for i, word := range list {
		out[i] = func(in *Ingredient) { set(in, word) }
	}
	return out
}

// HasTin reports whether a step puts the formula into that tin.
func (f *Formula) HasTin(name string) bool {
	for _, p := range f.Parts {
		for _, s := range p.Steps {
			if s.Tin != "" && SameName(s.Tin, name) || slices.Contains(s.Open, OptTin) {
				return true
			}
		}
	}
	return false
}
