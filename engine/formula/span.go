package formula

import (
	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// Span is a setting of a step that is open, "?", or a range. A figure that follows from it spans
// what follows from each of its readings.
type Span struct {
	What     string // what to write so that it is settled: "the at of this chill"
	Place    source.Place
	Open     bool
	Readings []Narrowing
}

// Narrowing puts one figure in the place of an open or ranged setting, in a copy of the formula.
type Narrowing func(f *Formula)

// Copy gives a formula of the same parts, steps and ingredients, of which steps may be changed
// without a change to this one. Serial numbers are the same.
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
	lines := map[*Ingredient]*Ingredient{}
	for i, p := range f.Parts {
		parts[i] = *p
		q := &parts[i]
		out.Parts[i], q.Formula = q, &out
		q.Ingredients = make([]*Ingredient, len(p.Ingredients))
		for k, in := range p.Ingredients {
			one := *in
			one.Part, one.Of = q, of(in.Of)
			q.Ingredients[k], lines[in] = &one, &one
		}
	}
	for i, p := range f.Order {
		out.Order[i] = of(p)
	}
	for i, p := range f.Parts {
		q := &parts[i]
		q.Steps = make([]*Step, len(p.Steps))
		for k, s := range p.Steps {
			one := *s
			one.Part, one.Uses = q, of(s.Uses)
			one.With = make([]*Ingredient, len(s.With))
			for n, in := range s.With {
				one.With[n] = lines[in]
			}
			q.Steps[k] = &one
		}
	}
	return &out
}

// same finds the step of a copy.
func (s *Step) same(f *Formula) *Step {
	for _, other := range f.Parts[s.Part.Serial].Steps {
		if other.Serial == s.Serial {
			return other
		}
	}
	return nil
}

// Spans lists the settings of all steps that are open or ranges.
func (f *Formula) Spans() []Span {
	var out []Span
	for _, p := range f.Parts {
		for _, s := range p.Steps {
			for _, o := range s.Open {
				if o.spans == nil {
					continue
				}
				if list := o.spans(s); len(list) > 0 {
					out = append(
						out,
						Span{
							"the " + o.Name + " of this " + s.Verb.Name,
							s.Place,
							true,
							at(s, list),
						},
					)
				}
			}
			if s.OpenOwn {
				if list := s.ownReadings(); len(list) > 0 {
					out = append(
						out,
						Span{
							s.Verb.Measures() + " of this " + s.Verb.Name,
							s.Place,
							true,
							at(s, list),
						},
					)
				}
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
		out[i] = func(f *Formula) { set(s.same(f)) }
	}
	return out
}

// ranges lists the ranged settings of a step, each with its two ends.
func (s *Step) ranges() []Span {
	var out []Span
	add := func(iv Interval, set func(*Step, Interval)) {
		if iv.IsPoint() || !iv.IsFinite() {
			return
		}
		var list []func(*Step)
		for _, x := range [...]float64{iv.Lo, iv.Hi} {
			list = append(list, func(s *Step) { set(s, figure.Point(x)) })
		}
		out = append(out, Span{s.Verb.Name, s.Place, false, at(s, list)})
	}
	for _, field := range [...]func(*Step) *Given{
		func(s *Step) *Given { return &s.Time }, func(s *Step) *Given { return &s.Measure },
		func(s *Step) *Given { return &s.At }, func(s *Step) *Given { return &s.To },
		func(s *Step) *Given { return &s.Core }, func(s *Step) *Given { return &s.Amount },
	} {
		if g := field(s); g.Set {
			add(g.Interval, func(s *Step, iv Interval) { field(s).Interval = iv })
		}
	}
	for _, field := range [...]func(*Step) **Given{
		func(s *Step) **Given { return &s.Count }, func(s *Step) **Given { return &s.Pieces },
		func(s *Step) **Given { return &s.Slice }, func(s *Step) **Given { return &s.Wide },
	} {
		if g := *field(s); g != nil {
			add(g.Interval, func(s *Step, iv Interval) {
				one := **field(s)
				one.Interval = iv
				*field(s) = &one
			})
		}
	}
	if s.Form != nil {
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
				})
			}
		}
	}
	return out
}

// What may stand for an open setting: from the least to the most that a kitchen knows, with the
// figures between at which answers turn (judgement).
var (
	anyAround = []float64{-25, -18, 3, 8, 15, 22, 28, 38, 55}
	anyOven   = []float64{110, 150, 180, 200, 230, 280}
	anyTarget = []float64{
		-18,
		0,
		4,
		10,
		16,
		21,
		25,
		28,
		33,
		40,
		52,
		60,
		66,
		75,
		85,
		93,
		98,
		105,
		120,
	}
	anyMinutes = []float64{0.5, 5, 20, 60, 180, 720, 2880, 14400}
	anyLength  = []float64{1, 3, 8, 20, 45, 90, 200}
	anyWide    = []float64{100, 250, 450, 900, 2000}
	anyMass    = []float64{10, 45, 80, 250, 500, 1000, 3000}
	anyCount   = []float64{1, 2, 6, 12, 30, 100, 400}
	anyRise    = []float64{1.1, 1.8, 2.5, 4}
)

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

// init gives the options what may stand for "?". An option without an entry changes no figure.
func init() {
	optAt.spans = func(s *Step) []func(*Step) {
		list := anyAround
		if s.Verb.HeatsThrough() {
			list = anyOven
		}
		return points(list, quantity.Temperature, func(s *Step, g Given) { s.At = g })
	}
	optTo.spans = func(*Step) []func(*Step) {
		return points(anyTarget, quantity.Temperature, func(s *Step, g Given) { s.To = g })
	}
	optCore.spans = func(*Step) []func(*Step) {
		return points(anyTarget, quantity.Temperature, func(s *Step, g Given) { s.Core = g })
	}
	optBy.spans = func(s *Step) []func(*Step) {
		var out []func(*Step)
		for _, w := range Ways {
			if w.suits(s.Verb) {
				out = append(out, func(s *Step) { s.Way = w })
			}
		}
		return out
	}
	optAs.spans = func(*Step) []func(*Step) {
		var out []func(*Step)
		for _, mm := range anyLength {
			for _, shape := range []string{"slab", "log"} {
				out = append(out, func(s *Step) {
					s.Form = &Geometry{Place: s.Place, Shape: shape, MM: figure.Point(mm)}
				})
			}
		}
		for _, shape := range []string{"ball", "bowl"} {
			out = append(out, func(s *Step) { s.Form = &Geometry{Place: s.Place, Shape: shape} })
		}
		return out
	}
	count := func(field func(*Step) **Given, list []float64, kind quantity.Kind) func(*Step) []func(*Step) {
		return func(*Step) []func(*Step) {
			return points(list, kind, func(s *Step, g Given) { *field(s) = &g })
		}
	}
	optCount.spans = count(func(s *Step) **Given { return &s.Count }, anyCount, quantity.Count)
	optPieces.spans = count(func(s *Step) **Given { return &s.Pieces }, anyCount, quantity.Count)
	optSlice.spans = count(func(s *Step) **Given { return &s.Slice }, anyLength, quantity.Length)
	optWide.spans = count(func(s *Step) **Given { return &s.Wide }, anyWide, quantity.Length)
	optTime.spans = func(*Step) []func(*Step) {
		return points(anyMinutes, quantity.Time, func(s *Step, g Given) { s.Time = g })
	}
	optAmount.spans = func(s *Step) []func(*Step) {
		return points(anyMass, quantity.Mass, func(s *Step, g Given) { s.Amount = g })
	}
	optHumidity.spans = func(*Step) []func(*Step) {
		return points([]float64{40, 75, 95}, quantity.Percent,
			func(s *Step, g Given) { s.Humidity = g })
	}
	optCovered.spans = func(*Step) []func(*Step) {
		yes, no := true, false
		return []func(*Step){func(s *Step) { s.Covered = &yes }, func(s *Step) { s.Covered = &no }}
	}
	optMeasured.spans = func(s *Step) []func(*Step) {
		out := []func(*Step){func(*Step) {}}
		for _, c := range anyTarget {
			out = append(out, func(s *Step) {
				s.Reading = &Reading{
					Place: s.Place,
					Core:  true,
					Temp:  point(s, c, quantity.Temperature),
				}
			})
		}
		if s.Verb.Waits() {
			for _, x := range anyRise {
				out = append(out, func(s *Step) {
					s.Reading = &Reading{Place: s.Place, Rise: point(s, x, quantity.Count)}
				})
			}
		}
		return out
	}
}

// ownReadings are what may stand for the verb's own open value. Where it puts another part on,
// that is any part of the formula that does not take this one in.
func (s *Step) ownReadings() []func(*Step) {
	kinds := s.Verb.own.kinds
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
	if s.Verb.own.count {
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

// String tells a span for messages.
func (x *Span) String() string { return x.What + ", as one figure" }
