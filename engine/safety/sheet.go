// Package safety says what could make someone ill: which parts need time and
// temperature control, how long they are warm, what the heat kills, how long
// they keep. How fast they cool is asked in package cooling.
//
// Each file answers one question, by the table or the law beside it:
//
//	control.go   which part needs control        FDA Food Code 2022, 1-201.10(B), table B
//	live.go      rise in a live dough or a scald growth measured in such food (microbe.Growth)
//	exposure.go  warm hours, share of time used  times by organism (microbe.LimitSource)
//	raw.go       egg or flour eaten raw          70 C (Food Code 3-401.11), 74 C (consumers)
//	core.go      the core's temperature          71, 74, 82 C (rules/hygiene.hcl), the code
//	sealed.go    C. botulinum without air        published limits (microbe.Botulinum)
//	kill.go      a bake's kill of Salmonella     D and z values by food and water activity
//	keeping.go   days kept                       the kitchen's code; mould by Cauvain & Seiler
//
// clock.go adds up the exposure. The unfavourable end of every error is in
// the figures; the rules take it.
package safety

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/kitchen"
	"forebake/engine/larder"
	"forebake/engine/process"
	"forebake/engine/safety/clock"
	"forebake/engine/science/microbe"
)

// Short names of package figure.
type (
	Interval = figure.Interval
	Value    = figure.Value
)

// processedPart is the part with what it goes through. Embedded under this
// name it leaves Part.Part the part of the formula.
type processedPart = process.Part

// Sheet holds the parts of one formula in one kitchen, with their safety.
type Sheet struct {
	process.Sheet
	law   *microbe.Limits // the food-safety figures in force in lawOf
	lawOf *kitchen.Kitchen

	parts  []Part
	clocks clock.Clocks
}

// Part is the working sheet of one part.
type Part struct {
	*processedPart
	sheet                     *Sheet
	controlled                *microbe.Control
	activity                  *microbe.Interval
	ownExposed                *clock.Clock // see exposure.go
	exposed                   *clock.Clock
	killed                    *Value                 // see IsKilled
	heated                    *Value                 // see HeatedTo
	eggHeated                 *Value                 // see EggHeatedTo
	eggHeatedAll, flourHeated *Value                 // see eggHeatedOn, flourHeatedTo
	uncooked                  map[larder.Trait]Value // see Raw; kept where other parts are taken in
	cooled                    *figure.Truth          // see cooledInAll
	milky                     *bool                  // see rawMilk
	held                      map[int]figure.Truth   // see heldWarm
}

// Reset makes the sheet serve another formula, keeping its memory.
func (s *Sheet) Reset(f *formula.Formula, k *kitchen.Kitchen) {
	s.Sheet.Reset(f, k)
	s.clocks.Again()
	if s.Traced == nil {
		s.Traced = func(p *formula.Part) (raw, baked bool) { return s.Part(p).traced() }
	}
	if cap(s.parts) < len(f.Parts) {
		s.parts = make([]Part, len(f.Parts))
	}
	s.parts = s.parts[:len(f.Parts)]
	for i := range s.parts {
		s.parts[i] = Part{processedPart: s.Sheet.Part(f.Parts[i]), sheet: s}
	}
}

// Part is a part of the formula on this sheet.
func (s *Sheet) Part(p *formula.Part) *Part { return &s.parts[p.Serial] }

// Sheet is the sheet that the part is on.
func (p *Part) Sheet() *Sheet { return p.sheet }

// once caches a part's value for figures that ask the parts which take it in.
func (p *Part) once(kept **Value, work func(*Part) Value) Value {
	if *kept == nil {
		v := work(p)
		*kept = &v
	}
	return **kept
}

// Limits are the food-safety figures in force in the kitchen.
func (s *Sheet) Limits() *microbe.Limits {
	if s.law == nil || s.lawOf != s.Kitchen {
		l := s.Kitchen.Law()
		s.law, s.lawOf = &l, s.Kitchen
	}
	return s.law
}
