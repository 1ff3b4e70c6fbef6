// Package process gives a part's course: its mixing and temperatures, its
// fermentation, its shaping, the oven and the clock.
//
// It gives a part's make-up, and the temperatures of the parts that go into
// it, to package history, and turns the resulting record into figures.
// Package safety builds on it.
package process

import (
	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/history"
	"forebake/engine/kitchen"
	"forebake/engine/makeup"
)

// Short names of package figure.
type (
	Interval = figure.Interval
	Value    = figure.Value
)

// madePart is the part's make-up. Embedded under this name it leaves
// Part.Part the part of the formula.
type madePart = makeup.Part

// Sheet holds the parts of one formula in one kitchen, with their course.
type Sheet struct {
	makeup.Sheet
	// Traced reports whether a part's course is drawn, and whether it is
	// after a bake too: for parts whose safety is asked. The sheet above sets
	// it; nil draws none.
	Traced    func(*formula.Part) (raw, baked bool)
	Simulator history.Simulator // follows the parts; for the sheets above too

	parts []Part
}

// Part is the working sheet of one part.
type Part struct {
	*madePart
	sheet     *Sheet
	record    *history.Record
	prepared  *history.Setup
	material  *history.Material
	following bool
	named     *Interval // see anyTemp
}

// Reset makes the sheet serve another formula, keeping its memory.
func (s *Sheet) Reset(f *formula.Formula, k *kitchen.Kitchen) {
	s.Sheet.Reset(f, k)
	if cap(s.parts) < len(f.Parts) {
		s.parts = make([]Part, len(f.Parts))
	}
	s.parts = s.parts[:len(f.Parts)]
	for i := range s.parts {
		s.parts[i] = Part{madePart: s.Sheet.Part(f.Parts[i]), sheet: s}
	}
}

// Part is a part of the formula on this sheet.
func (s *Sheet) Part(p *formula.Part) *Part { return &s.parts[p.Serial] }
