package engine

import (
	"forebake/engine/cost"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/run"
)

// Cost computes what some files' formulas cost, and what their labels
// list. name picks one formula; "" means all.
func (e *Engine) Cost(in Input, name string) ([]finding.Costing, *Result) {
	res := e.do([]Input{in}, run.Options{Keep: true})
	if len(res.Problems) > 0 {
		return nil, res
	}
	file := &res.Files[0]
	if name != "" && named(file.Models, name) == nil {
		_, res.Problems = theFormula(file, name)
		return nil, res
	}
	var out []finding.Costing
	for _, f := range file.Models {
		if name == "" || named(file.Models, name) == f {
			out = append(out, cost.Of(facts.NewSheet(f, file.House.House.Kitchen)))
		}
	}
	return out, res
}
