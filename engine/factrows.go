package engine

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/rule/show"
	"forebake/engine/run"
	"forebake/engine/source"
)

// Facts computes the figures of some files' formulas: those named,
// else all of the formula and its parts. With all, those of steps,
// ingredients and the kitchen come too. A result with problems has
// no figures.
func (e *Engine) Facts(inputs []Input, names []string, all bool) ([]finding.FactRow, *Result) {
	res := e.do(inputs, run.Options{Keep: true})
	wanted := map[string]bool{}
	for _, name := range names {
		if fault := unknownFact(res, name); fault != "" {
			res.Problems = append(res.Problems, source.Problem{Text: fault})
		}
		wanted[name] = true
	}
	if len(res.Problems) > 0 {
		return nil, res
	}
	c := chosen{wanted: wanted, all: all}
	for i := range res.Files {
		c.house = res.Files[i].House
		for _, f := range res.Files[i].Models {
			c.formula(f, facts.NewSheet(f, res.Files[i].House.House.Kitchen))
		}
	}
	return c.rows, res
}

// chosen collects the figures that were asked for.
type chosen struct {
	wanted map[string]bool // empty for no choice by name
	all    bool            // also figures of steps, ingredients and the kitchen
	house  *Loaded         // of the file at hand
	rows   []finding.FactRow
}

// formula adds the figures of one formula.
func (c *chosen) formula(f *formula.Formula, s *facts.Sheet) {
	detailed := c.all || len(c.wanted) > 0
	c.add(f, s, facts.Subject{On: facts.OnFormula})
	for _, p := range f.Parts {
		c.add(f, s, facts.Subject{On: facts.OnPart, Part: p})
		if !detailed {
			continue
		}
		for _, in := range p.Ingredients {
			c.add(f, s, facts.Subject{On: facts.OnIngredient, Part: p, Ingredient: in})
		}
		for _, step := range p.Steps {
			c.add(f, s, facts.Subject{On: facts.OnStep, Part: p, Step: step})
		}
	}
	if detailed {
		c.add(f, s, facts.Subject{On: facts.OnKitchen})
	}
}

// add adds the figures of one subject.
func (c *chosen) add(f *formula.Formula, s *facts.Sheet, x facts.Subject) {
	for _, fact := range c.house.Rules.Figures.All(x.On) {
		if len(c.wanted) > 0 && !c.wanted[fact.Name] || !fact.Of(x) {
			continue
		}
		row := show.Figure(fact.Name, fact, s.Value(fact, x))
		if fact.Unit == "C" && !strings.Contains(fact.Name, "friction") &&
			run.ReadsFahrenheit(f, c.house) {
			row.Shown = quantity.WithFahrenheit(row.Shown)
			row.Error = quantity.WithFahrenheit(row.Error)
		}
		c.rows = append(c.rows, finding.FactRow{Formula: f.Name, Subject: show.Subject(x),
			Figure: row,
			Means:  fact.Means, Source: fact.Source, Error: fact.Error,
			Main: fact.Main()})
	}
}

// unknownFact says that no house of a run knows a figure; "" where
// one does.
func unknownFact(res *Result, name string) string {
	var known []string
	for i := range res.Files {
		if res.Files[i].House == nil {
			continue
		}
		names, _ := FactNames(res.Files[i].House)
		if slices.Contains(names, name) {
			return ""
		}
		known = append(known, names...)
	}
	if len(known) == 0 {
		return "" // no house can be used, which is told already
	}
	return reading.UnknownText("fact", name, "the catalogue", known)
}

// History follows the parts of some files' formulas through their
// steps. A result with problems has no rows.
func (e *Engine) History(inputs []Input) ([]finding.HistoryRow, *Result) {
	res := e.do(inputs, run.Options{Keep: true})
	if len(res.Problems) > 0 {
		return nil, res
	}
	var rows []finding.HistoryRow
	for i := range res.Files {
		for _, f := range res.Files[i].Models {
			start := math.NaN()
			if f.Start.Set {
				start = f.Start.Lo
			}
			for _, line := range facts.NewSheet(f, res.Files[i].House.House.Kitchen).Timeline() {
				row := HistoryRow(&line)
				row.Formula, row.StartMin = f.Name, start
				if run.ReadsFahrenheit(f, res.Files[i].House) {
					for _, shown := range []*string{&row.Ambient, &row.Core, &row.Mean} {
						*shown = quantity.WithFahrenheit(*shown)
					}
				}
				rows = append(rows, row)
			}
		}
	}
	return rows, res
}

// HistoryRow writes one step of a timeline.
func HistoryRow(line *facts.Line) finding.HistoryRow {
	return finding.HistoryRow{
		Part:    show.Subject(facts.Subject{On: facts.OnPart, Part: line.Part}),
		Step:    line.Step.Text(),
		Clock:   line.StartH,
		Notes:   historyNote(line),
		Ambient: show.Value(&line.Ambient, "C"),
		Core:    show.Value(&line.Core, "C"),
		Mean:    show.Value(&line.Mean, "C"),
		Rise:    show.Value(&line.Hours, "h"),
	}
}

// historyNote says where a step's figures come from, or what they lack.
func historyNote(line *facts.Line) string {
	switch {
	case line.Measured && line.Step.Reading.Rise.Set:
		return "rise measured"
	case line.Measured:
		return "temperature measured"
	case line.Core.Absent && line.Core.Need != nil && line.Core.Need.What != "":
		return fmt.Sprintf("needs %s (line %d)", line.Core.Need.What, line.Core.Need.Place.Line())
	case line.Step.HeatUnsaid():
		return "anything up to the boil: write to = \"... C\""
	case line.Bowl:
		return "taken as left in its bowl: say how it stands by as = ..."
	}
	return ""
}
