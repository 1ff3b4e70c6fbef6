package engine_test

import (
	"forebake/engine/formula"
	"forebake/engine/formula/read"
	"forebake/engine/house"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// readFormulas reads the formulas of a file that holds nothing else.
func readFormulas(f *source.File, h *house.House) ([]*formula.Formula, source.Problems) {
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return nil, problems
	}
	r := &reading.Reader{File: f}
	var out []*formula.Formula
	for _, b := range body.Blocks {
		out = append(out, read.Formula(r, b, h.FormulaOptions()))
	}
	return out, r.Problems
}
