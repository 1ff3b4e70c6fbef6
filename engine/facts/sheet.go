package facts

import (
	"math"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/safety"
)

// Sheet computes the facts of one formula in one kitchen, each once.
type Sheet struct {
	safety.Sheet

	columns    [5][]column
	counts     [5]int // subjects
	cells      arena
	declared   []declaredCells // of the figures that rule files declare, by index
	generation uint32
	trial      *Sheet // see retry
	trialOf    uint32 // the generation of this sheet that it was last turned to
	weighed    *Sheet // with every open amount weighed, see Withheld
	isWeighed  bool   // that one is turned to the formula at hand
	usual      *Sheet // with every open seasoning at most as usual, see Usual
	isUsual    bool   // that one is turned to the formula at hand
	spanning   spanning
	settled    map[asked][]*formula.Ingredient // what Settles gave: several rules ask it
}

// asked is a figure of a subject.
type asked struct {
	fact *Fact
	of   Subject
}

// NewSheet makes the sheet of a formula.
func NewSheet(f *formula.Formula, k *kitchen.Kitchen) *Sheet {
	s := &Sheet{}
	s.Reset(f, k)
	return s
}

// beside makes a sheet that follows the same parts with other figures.
func (s *Sheet) beside() *Sheet {
	other := &Sheet{}
	other.Simulator.Share(&s.Simulator)
	return other
}

// Reset makes the sheet serve another formula, keeping its memory: one
// sheet serves all of a worker's formulas.
func (s *Sheet) Reset(f *formula.Formula, k *kitchen.Kitchen) {
	s.Sheet.Reset(f, withTins(f, k))
	s.isWeighed, s.isUsual, s.spanning.known = false, false, false
	clear(s.settled)
	s.counts = [...]int{
		OnFormula:    1,
		OnPart:       len(f.Parts),
		OnStep:       f.Steps,
		OnIngredient: f.Ingredients,
		OnKitchen:    1,
	}
	s.generation++
	s.cells.reset()
}

// withTins adds to the kitchen the tins that only the formula names.
func withTins(f *formula.Formula, k *kitchen.Kitchen) *kitchen.Kitchen {
	for _, t := range f.OpenTins {
		one := kitchen.OpenTin(t.Name, t.Place)
		if t.Size != nil {
			one = kitchen.SizedTin(t.Name, t.Place, t.Size.Sides, t.Size.Round)
		}
		k = k.WithTin(one)
	}
	return k
}

// Value gives a fact's value on a subject. A step fact of a verb
// without such a figure is absent.
func (s *Sheet) Value(f *Fact, x Subject) *Value {
	if f.declared != nil {
		return s.declaredValue(f, x)
	}
	c := s.cell(f, x)
	if c.generation != s.generation {
		// before the call: a fact that asks for itself must not hang
		c.generation = s.generation
		c.value, c.spread = s.compute(f, x), false
		if readings := s.spread(); len(readings) > 0 {
			c.value, c.spread = s.over(f, x, c.value, readings)
		}
	}
	return &c.value
}

// Kept is Value where it is computed already, else nil. x may be below the
// fact's own subject: a step, for a fact of its part.
func (s *Sheet) Kept(f *Fact, x *Subject) *Value {
	if f.declared != nil {
		return nil
	}
	columns := s.columns[f.On]
	if columns == nil {
		return nil
	}
	column := &columns[f.index]
	if column.generation != s.generation {
		return nil
	}
	c := &column.cells[x.row(f.On)]
	if c.generation != s.generation {
		return nil
	}
	return &c.value
}

// cell finds a fact's cell on a subject. Those of one fact are
// adjacent, since a rule asks the same of every subject.
func (s *Sheet) cell(f *Fact, x Subject) *cell {
	if s.columns[f.On] == nil {
		s.columns[f.On] = make([]column, len(catalogue[f.On]))
	}
	c := &s.columns[f.On][f.index]
	if c.generation != s.generation {
		c.generation, c.cells = s.generation, s.cells.take(s.counts[f.On])
	}
	return &c.cells[x.row(f.On)]
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

// Settles lists the ingredients whose open amount or range leaves a
// fact open, in file order. It weighs each in turn and looks whether
// the fact's interval shrinks; only unsure answers ask for it. Ranges
// are left out of a model's figure, whose error stays.
func (s *Sheet) Settles(f *Fact, x Subject) []*formula.Ingredient {
	if known, ok := s.settled[asked{f, x}]; ok {
		return known
	}
	before := *s.Value(f, x)
	var out []*formula.Ingredient
	for _, p := range s.Formula.Parts {
		for _, in := range p.Ingredients {
			if sharp(in) || in.Of != nil && !in.Amount.Open ||
				before.Origin == figure.ByModel && !in.IsOpen() {
				continue
			}
			trial := s.retry()
			trial.Pinned = map[*formula.Ingredient]Interval{in: pin(in)}
			after := trial.Value(f, x)
			if after.Lo > before.Lo || after.Hi < before.Hi ||
				len(after.Words) != len(before.Words) {
				out = append(out, in)
			}
		}
	}
	if s.settled == nil {
		s.settled = map[asked][]*formula.Ingredient{}
	}
	s.settled[asked{f, x}] = out
	return out
}

// retry gives a second sheet of the formula, on which amounts may be
// pinned. It is made when first needed and kept: a sheet is large.
func (s *Sheet) retry() *Sheet {
	if s.trial == nil {
		s.trial = s.beside()
	}
	// The readings of its ranges stay while the formula does: only
	// their figures are recomputed.
	known := s.trial.spanning.known && s.trialOf == s.generation
	s.trial.Reset(s.Formula, s.Kitchen)
	s.trial.spanning.known, s.trialOf = known, s.generation
	return s.trial
}

// IsSplit reports whether some of the values that an open setting or a
// range spans give a figure, and others none.
func (s *Sheet) IsSplit(f *Fact, x Subject) bool {
	if f.declared != nil {
		return false
	}
	s.Value(f, x)
	return s.cell(f, x).spread
}

// Withheld reports whether a figure is missing only because amounts are
// open or ranges: with each weighed it could be computed. It is
// unknown, which is not absence.
func (s *Sheet) Withheld(f *Fact, x Subject) bool {
	if f.declared != nil {
		return s.declaredWithheld(f, x)
	}
	if s.IsSplit(f, x) {
		return true
	}
	if !s.isWeighed { // once a formula: a rule may ask of every ingredient
		s.weighAll()
	}
	return s.weighed.Pinned != nil && !s.weighed.Value(f, x).Absent
}

// weighAll turns the sheet of Withheld to the formula, with all open
// amounts weighed.
func (s *Sheet) weighAll() {
	if s.weighed == nil {
		s.weighed = s.beside()
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

// Usual is the sheet with each open seasoning between nothing and its
// class's usual most; nil where no open amount is so bounded.
func (s *Sheet) Usual() *Sheet {
	if s.isUsual {
		if s.usual == nil || s.usual.Pinned == nil {
			return nil
		}
		return s.usual
	}
	s.isUsual = true
	var pins map[*formula.Ingredient]Interval
	for _, p := range s.Formula.Parts {
		for _, in := range p.Ingredients {
			if g, ok := s.Part(p).MostUsual(in); ok {
				if pins == nil {
					pins = map[*formula.Ingredient]Interval{}
				}
				pins[in] = figure.Between(0, g)
			}
		}
	}
	if s.usual == nil {
		if pins == nil {
			return nil
		}
		s.usual = s.beside()
	}
	s.usual.Reset(s.Formula, s.Kitchen)
	s.usual.Pinned = pins
	if pins == nil {
		return nil
	}
	return s.usual
}

// Weighing is the cost of Settles on this formula, in ingredients read:
// it recomputes the formula for every amount that is open or a range.
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

// ingredientsPerStep is about how many ingredients are read in the time
// of following one step.
const ingredientsPerStep = 200

// sharp reports whether an ingredient's amount is one figure, or all of
// a part.
func sharp(in *formula.Ingredient) bool {
	return in.Amount.All || in.Apart || !in.Amount.Open && in.Amount.IsPoint()
}

// pin is a possible weight of an open amount, or the middle of a range.
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

// declaredWithheld is Withheld for a declared figure, cached by
// subject: figures read each other, and asking anew would double the
// work with every figure.
func (s *Sheet) declaredWithheld(f *Fact, x Subject) bool {
	row := x.row(f.On)
	if c := s.declaredCell(f, row); c.asked != s.generation {
		withheld := f.declared.Withheld(s, x)
		c = s.declaredCell(f, row)
		c.asked, c.withheld = s.generation, withheld
	}
	return s.declaredCell(f, row).withheld
}

// OpenAmounts lists the ingredients with open amounts where a need asks
// for all amounts of a part, including those of parts it takes in.
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
				if in.IsOpen() {
					out = append(out, in)
				}
			}
		}
	}
	return out
}

// An open setting spans every value that may stand there, a range
// itself. A figure is computed on its own sheet for each reading of
// them, and spans the results.

// mostReadings bounds the sheets of one formula, fewestReadings those
// of a formula with more than largeReading entries. Beyond it a figure
// of an open setting is unknown.
const (
	mostReadings   = 64
	fewestReadings = 4
	largeReading   = 1600 // ingredients and steps that are read in all sheets together
)

// most is how many readings of the formula are followed.
func (s *Sheet) most() int {
	entries := max(1, s.Formula.Ingredients+s.Formula.Steps)
	return max(fewestReadings, min(mostReadings, largeReading/entries))
}

// Readings is about how many sheets a formula's open and ranged
// settings need: its figures cost that many times as much.
func Readings(f *formula.Formula, k *kitchen.Kitchen) int {
	total := 0
	for _, span := range f.Spans() {
		total += len(span.Readings)
	}
	for _, span := range withTins(f, k).Spans(f.HasTin) {
		total += len(span.Readings)
	}
	s := Sheet{}
	s.Formula = f
	return min(total, s.most())
}

// version is the formula and the kitchen with one figure for each open
// or ranged setting.
type version struct {
	sheet   *Sheet
	formula *formula.Formula
	kitchen *kitchen.Kitchen
	turned  uint32 // the generation of the sheet above that it was last turned to
	of      int    // the span that it is a reading of, those of the kitchen behind; -1 for several
}

// spanning is what a sheet keeps of the settings that are open
// or ranges.
type spanning struct {
	known    bool // the rest is that of the formula at hand
	spans    []formula.Span
	kitchen  []kitchen.Span
	open     bool // one of them is open, so that the formula as it stands is no reading
	tooMany  bool // not every value of the open ones has its turn
	readings []*version
	pool     []*version
	inner    bool // the sheet is that of a reading
	moves    []moves
}

// moves is a figure's change over the readings of one span, all
// else equal.
type moves struct {
	seen, moved bool
	first       Value
}

// spread computes the readings of the formula, once.
func (s *Sheet) spread() []*version {
	sp := &s.spanning
	if sp.known || sp.inner {
		return sp.readings
	}
	most := s.most()
	sp.known, sp.open, sp.tooMany = true, false, false
	sp.readings = sp.readings[:0]
	sp.spans = s.Formula.Spans()
	sp.kitchen = s.Kitchen.Spans(s.Formula.HasTin)
	kitchens := 0
	for i := range sp.kitchen {
		sp.open = sp.open || sp.kitchen[i].Open
		kitchens += len(sp.kitchen[i].Readings)
	}
	total, opened := kitchens, kitchens
	for i := range sp.spans {
		total += len(sp.spans[i].Readings)
		if sp.spans[i].Open {
			sp.open = true
			opened += len(sp.spans[i].Readings)
		}
	}
	if total == 0 {
		return nil
	}
	sp.tooMany = sp.open && opened > most
	usual := make([]int, len(sp.spans))
	for i := range sp.spans {
		usual[i] = -1 // a range stands as it is, unless it is its turn
		if sp.spans[i].Open {
			usual[i] = len(sp.spans[i].Readings) / 2
		}
	}
	product := 1
	for i := range sp.spans {
		product = min(product*len(sp.spans[i].Readings), most+1)
	}
	pick := slices.Clone(usual)
	if len(sp.spans) > 1 && product+kitchens <= most {
		for n := range product {
			for i := range sp.spans {
				size := len(sp.spans[i].Readings)
				pick[i], n = n%size, n/size
			}
			s.addReading(pick, s.Kitchen, -1)
		}
	} else {
		if len(sp.spans) > 1 { // all at their low, all at their high ends
			for i := range pick {
				pick[i] = 0
			}
			s.addReading(pick, s.Kitchen, -1)
			for i := range pick {
				pick[i] = len(sp.spans[i].Readings) - 1
			}
			s.addReading(pick, s.Kitchen, -1)
		}
		for _, open := range [...]bool{true, false} {
			if !open && total > most { // too many ranges for each to have its turn alone
				s.addGroups(pick, usual, (most-len(sp.readings))/2)
				break
			}
			for i := range sp.spans {
				if sp.spans[i].Open == open {
					s.addEach(pick, usual, i, most)
				}
			}
		}
	}
	copy(pick, usual)
	for i := range sp.kitchen {
		for _, k := range sp.kitchen[i].Readings {
			s.addReading(pick, k, len(sp.spans)+i)
		}
	}
	return sp.readings
}

// addEach adds the readings of one span, all others as usual, up to so
// many in all.
func (s *Sheet) addEach(pick, usual []int, span, most int) {
	for k := range s.spanning.spans[span].Readings {
		if len(s.spanning.readings) >= most {
			return
		}
		copy(pick, usual)
		pick[span] = k
		s.addReading(pick, s.Kitchen, span)
	}
}

// addGroups adds readings with groups of ranges at their low and high
// ends in turn; open settings are as usual. The groups follow from the
// names: the order of ingredients changes no figure.
func (s *Sheet) addGroups(pick, usual []int, groups int) {
	order := make([]int, len(pick))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(i, k int) int {
		return strings.Compare(s.spanning.spans[i].What, s.spanning.spans[k].What)
	})
	for g := range max(1, groups) {
		for _, high := range [...]bool{false, true} {
			copy(pick, usual)
			for n, i := range order {
				switch span := &s.spanning.spans[i]; {
				case span.Open || n%max(1, groups) != g:
				case high:
					pick[i] = len(span.Readings) - 1
				default:
					pick[i] = 0
				}
			}
			s.addReading(pick, s.Kitchen, -1)
		}
	}
}

func (s *Sheet) addReading(pick []int, k *kitchen.Kitchen, of int) {
	sp := &s.spanning
	n := len(sp.readings)
	if n == len(sp.pool) {
		sp.pool = append(sp.pool, &version{sheet: s.beside()})
	}
	r := sp.pool[n]
	r.formula, r.kitchen, r.turned, r.of = s.Formula.Copy(), k, 0, of
	for i, which := range pick {
		if which >= 0 {
			sp.spans[i].Readings[which](r.formula)
		}
	}
	sp.readings = append(sp.readings, r)
}

// turn turns a reading to the sheet, with its pinned amounts.
func (r *version) turn(s *Sheet) {
	if r.turned == s.generation {
		return
	}
	r.turned = s.generation
	r.sheet.Reset(r.formula, r.kitchen)
	r.sheet.spanning = spanning{inner: true, known: true}
	if s.Pinned == nil {
		return
	}
	r.sheet.Pinned = make(map[*formula.Ingredient]Interval, len(s.Pinned))
	for in, g := range s.Pinned {
		for _, other := range r.formula.Parts[in.Part.Serial].Ingredients {
			if other.Serial == in.Serial {
				r.sheet.Pinned[other] = g
			}
		}
	}
}

// value computes a figure of a reading. It is not kept: it is asked
// for once, and goes into the figure over all readings.
func (r *version) value(s *Sheet, f *Fact, x Subject) Value {
	r.turn(s)
	return r.sheet.compute(f, r.in(x))
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

// seen is what of the open and ranged settings may move a figure.
type seen struct {
	spans         []formula.Span
	after         *formula.Step // no setting of a later step of its part does; nil for all do
	open, tooMany bool          // as of spanning
}

// seenBy leaves out, for a figure of a step that nothing later moves, the
// settings of later steps.
func (sp *spanning) seenBy(f *Fact, x Subject, most int) seen {
	see := seen{spans: sp.spans, open: sp.open, tooMany: sp.tooMany}
	if !f.past || !sp.open {
		return see
	}
	see.after, see.open = x.Step, false
	readings := 0
	for i := range sp.spans {
		if sp.spans[i].Open && !see.isAfter(i) {
			see.open = true
			readings += len(sp.spans[i].Readings)
		}
	}
	for i := range sp.kitchen {
		see.open = see.open || sp.kitchen[i].Open
		readings += len(sp.kitchen[i].Readings)
	}
	see.tooMany = see.open && readings > most
	return see
}

// isAfter reports whether a span is a setting of a later step.
func (see *seen) isAfter(span int) bool {
	if see.after == nil || span < 0 || span >= len(see.spans) {
		return false
	}
	step := see.spans[span].Step
	return step != nil && step.Part == see.after.Part && step.Index > see.after.Index
}

// over gives the figure over all readings; spread reports whether they
// differ in its value, or in whether it has one.
func (s *Sheet) over(
	f *Fact,
	x Subject,
	base Value,
	readings []*version,
) (v Value, spread bool) {
	sp := &s.spanning
	see := sp.seenBy(f, x, s.most())
	if f.harsher != nil && !(see.open && (see.tooMany || f.ofRanges)) {
		worst := base
		var missing *figure.Need
		for _, r := range readings {
			if see.isAfter(r.of) {
				continue
			}
			one := r.value(s, f, x)
			spread = spread || one.Absent != base.Absent
			if one.Absent {
				missing = one.Need
			}
			if f.harsher(&one, &worst) {
				worst = one
			}
		}
		if missing != nil && !worst.Absent { // it may be lower still
			worst.Lo, worst.Mid, worst.Need = math.Inf(-1), math.NaN(), missing
		}
		return worst, spread
	}
	if f.names || f.advice || !see.open && (f.Type == Text || f.Type == List || f.words) {
		return base, false // no range of a figure changes a word that a rule reads
	}
	v = base
	clear(sp.moves)
	for _, r := range readings {
		if see.isAfter(r.of) {
			continue
		}
		one := r.value(s, f, x)
		sp.note(r.of, &one)
		if one.Absent && !base.Absent && !see.open &&
			math.IsInf(base.Hi, 1) {
			continue // the range is open at that end already
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
	spread = spread || see.open && see.tooMany
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
		if need := sp.firstOpen(&see); need != nil {
			v.Need = need
		}
	}
	if v.Need == nil && v.Absent {
		v.Need = &figure.Need{What: "one figure for each range", Place: s.Formula.Place}
	}
	return v, spread
}

// asOne follows the name of a setting that is to be settled.
const asOne = ", as one figure"

// firstOpen names the first open setting of formula or kitchen that
// moves the figure.
func (sp *spanning) firstOpen(see *seen) *figure.Need {
	// Where no one's readings move it, the first open one stands
	// for all.
	for _, any := range [...]bool{false, true} {
		for i := range sp.spans {
			if sp.spans[i].Open && !see.isAfter(i) &&
				(any || i < len(sp.moves) && sp.moves[i].moved) {
				return &figure.Need{What: sp.spans[i].What + asOne, Place: sp.spans[i].Place}
			}
		}
		for i := range sp.kitchen {
			n := len(sp.spans) + i
			if sp.kitchen[i].Open && (any || n < len(sp.moves) && sp.moves[n].moved) {
				return &figure.Need{What: sp.kitchen[i].What + asOne, Place: sp.kitchen[i].Place}
			}
		}
	}
	return nil
}

// note keeps whether a span's readings tell different things.
func (sp *spanning) note(of int, v *Value) {
	if of < 0 || !sp.open {
		return
	}
	for of >= len(sp.moves) {
		sp.moves = append(sp.moves, moves{})
	}
	m := &sp.moves[of]
	if !m.seen {
		m.seen, m.first = true, *v
		return
	}
	m.moved = m.moved || m.first.Absent != v.Absent || m.first.Lo != v.Lo || m.first.Hi != v.Hi ||
		!slices.Equal(m.first.Words, v.Words)
}
