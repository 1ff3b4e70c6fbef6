package engine

import (
	"forebake/engine/finding"
	"forebake/engine/mixing"
	"forebake/engine/run"
	"forebake/engine/source"
)

// KitchenNow is what a baker reads in the kitchen before a mix.
type KitchenNow = mixing.Now

// KitchenReadings are all readings that Mix takes, in the order of
// their flags.
var KitchenReadings = mixing.Readings

// Mix answers how the liquid of each mix of a file's formulas is
// prepared, from the kitchen's readings now. name picks one formula; ""
// means all.
func (e *Engine) Mix(in Input, name string, now KitchenNow) ([]finding.Mix, *Result) {
	res := e.do([]Input{in}, run.Options{Keep: true})
	if len(res.Problems) > 0 {
		return nil, res
	}
	file := &res.Files[0]
	var out []finding.Mix
	for _, f := range file.Models {
		if name == "" || named(file.Models, name) == f {
			out = append(out, mixing.Plan(f, file.House.House.Kitchen, now)...)
		}
	}
	switch {
	case name != "" && named(file.Models, name) == nil:
		_, res.Problems = theFormula(file, name)
	case len(out) == 0:
		res.Problems = source.Problems{{Place: file.Models[0].Place,
			Text: "no dough here is mixed: " +
				"write { mix = \"10 min\", by = \"spiral\", to = \"26 C\" } in its steps"}}
	}
	return out, res
}
