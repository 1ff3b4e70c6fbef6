package engine

import (
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/plan"
	"forebake/engine/run"
	"forebake/engine/sheet"
)

// Sheets makes the sheet of each file of some inputs, in order. A
// formula's clock is its plan's: by the clocks asked for, else by its
// own start, else counted from zero. A result with problems has none.
func (e *Engine) Sheets(inputs []Input, ask PlanAsk) ([]sheet.Page, *Result, error) {
	ready, start, err := ask.clocks()
	if err != nil {
		return nil, nil, err
	}
	res := e.do(inputs, run.Options{Keep: true})
	if len(res.Problems) > 0 {
		return nil, res, nil
	}
	pages := make([]sheet.Page, len(res.Files))
	for i := range res.Files {
		f := &res.Files[i]
		one := alone(res, f)
		pages[i] = sheet.Page{Version: Version, File: f.Input.Name, Prelude: sheet.Collect(one)}
		for _, model := range f.Models {
			s, err := sheetOf(f, model, one, ready, start)
			if err != nil {
				return nil, res, err
			}
			pages[i].Formulas = append(pages[i].Formulas, sheet.Of(s))
		}
		if e.Progress != nil {
			e.Progress(i+1, len(res.Files))
		}
	}
	return pages, res, nil
}

// alone gives a run's part about one of its files.
func alone(res *Result, f *run.File) *finding.Run {
	one := res.Run
	one.Formulas = f.Formulas
	one.Loosened, one.Unchecked = f.House.Rules.Loosened, f.House.Unchecked
	one.Cautions, one.Findings = nil, nil
	for _, c := range res.Cautions {
		if c.Place.File == f.Text {
			one.Cautions = append(one.Cautions, c)
		}
	}
	for _, found := range res.Findings {
		if found.Place.File == f.Text {
			one.Findings = append(one.Findings, found)
		}
	}
	return &one
}

// sheetOf gathers what the sheet of a formula says.
func sheetOf(f *run.File, model *formula.Formula, one *finding.Run, ready, start *plan.Clock) (
	sheet.Subject, error) {
	s := sheet.Subject{Formula: model, Rules: f.House.Rules,
		Facts: facts.NewSheet(model, f.House.House.Kitchen)}
	for _, found := range one.Findings {
		if found.Formula == model.Name {
			s.Findings = append(s.Findings, found)
		}
	}
	job, problems := plan.Of([]*formula.Formula{model})
	if len(problems) > 0 {
		s.Unplanned = problems[0].String()
		return s, nil
	}
	p := &planning{formulas: []*formula.Formula{model}, job: job, schedule: plan.Solve(job.Chains)}
	s.Job, s.Schedule = p.job, p.schedule
	if ready == nil && start == nil && !model.Start.Set {
		return s, nil
	}
	anchor, err := p.hold(ready, start)
	s.Anchor = &anchor
	return s, err
}
