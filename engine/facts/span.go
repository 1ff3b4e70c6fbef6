package facts

import (
	"math"
	"slices"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
)

// An open setting spans every value that may stand there, and a range spans itself. A figure is
// reckoned on a sheet of its own for each reading of them, and spans what comes out.

// mostReadings bounds the sheets of one formula. Beyond it a figure of an open setting is not
// known at all.
const mostReadings = 64

// version is the formula and the kitchen with one figure for each open or ranged setting.
type version struct {
	sheet   *Sheet
	formula *formula.Formula
	kitchen *kitchen.Kitchen
	pinned  bool
}

// spanning is what a sheet keeps of the settings that are open or ranges.
type spanning struct {
	known    bool // the rest is that of the formula at hand
	spans    []formula.Span
	open     bool // one of them is open, so that the formula as it stands is no reading
	tooMany  bool
	readings []*version
	pool     []*version
	inner    bool // the sheet is that of a reading
}

// spread works out the readings of the formula at hand, once.
func (s *Sheet) spread() []*version {
	sp := &s.spanning
	if sp.known || sp.inner {
		return sp.readings
	}
	sp.known, sp.open, sp.tooMany = true, false, false
	sp.readings = sp.readings[:0]
	sp.spans = s.Formula.Spans()
	kitchens := s.Kitchen.Spans()
	total := len(kitchens)
	for i := range sp.spans {
		sp.open = sp.open || sp.spans[i].Open
		total += len(sp.spans[i].Readings)
	}
	if total == 0 {
		return nil
	}
	if total > mostReadings {
		sp.tooMany = true
	}
	usual := make([]int, len(sp.spans))
	for i := range sp.spans {
		usual[i] = -1 // a range stands as it is, unless it is its turn
		if sp.spans[i].Open {
			usual[i] = len(sp.spans[i].Readings) / 2
		}
	}
	product := 1
	for i := range sp.spans {
		product = min(product*len(sp.spans[i].Readings), mostReadings+1)
	}
	pick := slices.Clone(usual)
	if len(sp.spans) > 1 && product+len(kitchens) <= mostReadings {
		for n := range product {
			for i := range sp.spans {
				size := len(sp.spans[i].Readings)
				pick[i], n = n%size, n/size
			}
			s.addReading(pick, s.Kitchen)
		}
	} else {
		for i := range sp.spans {
			for k := range sp.spans[i].Readings {
				if len(sp.readings) >= mostReadings {
					break
				}
				copy(pick, usual)
				pick[i] = k
				s.addReading(pick, s.Kitchen)
			}
		}
		if len(sp.spans) > 1 { // all at their low, all at their high ends
			for i := range pick {
				pick[i] = 0
			}
			s.addReading(pick, s.Kitchen)
			for i := range pick {
				pick[i] = len(sp.spans[i].Readings) - 1
			}
			s.addReading(pick, s.Kitchen)
		}
	}
	copy(pick, usual)
	for _, k := range kitchens {
		s.addReading(pick, k)
	}
	return sp.readings
}

func (s *Sheet) addReading(pick []int, k *kitchen.Kitchen) {
	sp := &s.spanning
	n := len(sp.readings)
	if n == len(sp.pool) {
		sp.pool = append(sp.pool, &version{sheet: &Sheet{}})
	}
	r := sp.pool[n]
	r.formula, r.kitchen, r.pinned = s.Formula.Copy(), k, false
	for i, which := range pick {
		if which >= 0 {
			sp.spans[i].Readings[which](r.formula)
		}
	}
	r.sheet.Reset(r.formula, k)
	r.sheet.spanning = spanning{inner: true, known: true}
	sp.readings = append(sp.readings, r)
}

// pin carries the pinned amounts of a sheet over to a reading.
func (r *version) pin(s *Sheet) {
	if r.pinned || s.Pinned == nil {
		return
	}
	r.pinned = true
	r.sheet.Pinned = make(map[*formula.Ingredient]Interval, len(s.Pinned))
	for in, g := range s.Pinned {
		for _, other := range r.formula.Parts[in.Part.Serial].Ingredients {
			if other.Serial == in.Serial {
				r.sheet.Pinned[other] = g
			}
		}
	}
}

// in gives the subject in a reading's copy of the formula.
func (r *version) in(x Subject) Subject {
	if x.Part != nil {
		x.Part = r.formula.Parts[x.Part.Serial]
	}
	if x.Step != nil {
		for _, other := range r.formula.Parts[x.Step.Part.Serial].Steps {
			if other.Serial == x.Step.Serial {
				x.Step = other
				break
			}
		}
	}
	if x.Ingredient != nil {
		for _, other := range r.formula.Parts[x.Ingredient.Part.Serial].Ingredients {
			if other.Serial == x.Ingredient.Serial {
				x.Ingredient = other
				break
			}
		}
	}
	return x
}

// over gives the figure over all readings; spread reports whether they tell whether it is given,
// or what it says, in different ways.
func (s *Sheet) over(f *Fact, x Subject, base Value) (v Value, spread bool) {
	readings := s.spread()
	if len(readings) == 0 {
		return base, false
	}
	sp := &s.spanning
	if f.advice || !sp.open && (f.Type == Text || f.Type == List) {
		return base, false // no range of a figure changes a word that a rule reads
	}
	v = base
	for _, r := range readings {
		r.pin(s)
		one := r.sheet.Value(f, r.in(x))
		if one.Absent && !base.Absent && !sp.open {
			continue // an end of a range that cannot be reckoned takes nothing from the range that can
		}
		spread = spread || one.Absent != base.Absent || !slices.Equal(one.Words, base.Words)
		v.Lo, v.Hi = min(v.Lo, one.Lo), max(v.Hi, one.Hi)
		if v.Need == nil {
			v.Need = one.Need
		}
	}
	moved := spread || v.Lo != base.Lo || v.Hi != base.Hi
	if !moved {
		return base, false
	}
	spread = spread || sp.open && sp.tooMany
	if spread {
		v.Absent = true
		if f.Type == Number {
			v.Lo, v.Hi, v.Mid = math.Inf(-1), math.Inf(1), math.NaN()
		} else if f.Type == YesNo {
			v.Lo, v.Hi, v.Mid = 0, 1, math.NaN()
		}
	}
	if base.Lo <= base.Mid && base.Mid <= base.Hi && !spread {
		v.Mid = base.Mid
	} else if !spread && (math.IsNaN(v.Mid) || v.Mid < v.Lo || v.Mid > v.Hi) {
		v.Mid = math.NaN()
	}
	if !base.Absent && (v.Lo != v.Hi || spread) {
		for i := range sp.spans {
			if sp.spans[i].Open {
				v.Need = &figure.Need{What: sp.spans[i].String(), Place: sp.spans[i].Place}
				break
			}
		}
	}
	if v.Need == nil && v.Absent {
		v.Need = &figure.Need{What: "one figure for each range", Place: s.Formula.Place}
	}
	return v, spread
}
