package engine

import (
	"fmt"
	"math"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// Facts computes the figures of the formulas of a file: those named, or all of the formula and its parts; with all, those
// of steps, ingredients and the kitchen too.
func (e *Engine) Facts(in Input, names []string, all bool) ([]finding.FactRow, source.Problems) {
	list, l, problems := e.formulasOf(in)
	if len(problems) > 0 {
		return nil, problems
	}
	wanted := map[string]bool{}
	for _, name := range names {
		if problem := unknownFact(l, name); problem != "" {
			return nil, source.Problems{{Text: problem}}
		}
		wanted[name] = true
	}
	var rows []finding.FactRow
	for _, f := range list {
		s := facts.NewSheet(f, l.House.Kitchen)
		add := func(x facts.Subject, deep bool) {
			if deep && !all && len(names) == 0 {
				return
			}
			for _, fact := range l.Rules.Figures.All(x.On) {
				if len(names) > 0 && !wanted[fact.Name] || !fact.Of(x) {
					continue
				}
				rows = append(rows, finding.FactRow{Formula: f.Name, Subject: rule.SubjectName(x), Figure: rule.Figure(fact.Name, fact, s.Value(fact, x)),
					Means: fact.Means, Source: fact.Source, Error: fact.Error})
			}
		}
		add(facts.Subject{On: facts.OnFormula}, false)
		for _, p := range f.Parts {
			add(facts.Subject{On: facts.OnPart, Part: p}, false)
			for _, in := range p.Ingredients {
				add(facts.Subject{On: facts.OnIngredient, Part: p, Ingredient: in}, true)
			}
			for _, step := range p.Steps {
				add(facts.Subject{On: facts.OnStep, Part: p, Step: step}, true)
			}
		}
		add(facts.Subject{On: facts.OnKitchen}, true)
	}
	return rows, nil
}

// formulasOf reads the formulas of one input in its house.
func (e *Engine) formulasOf(in Input) ([]*formula.Formula, *Loaded, source.Problems) {
	l, problems := e.Load(in.Dir)
	if len(problems) > 0 {
		return nil, nil, problems
	}
	text := in.Text
	if in.Path != "" {
		var err error
		if text, err = readFormula(in.Path); err != nil {
			return nil, nil, source.Problems{{Text: fmt.Sprintf("%s: %s", in.Name, err)}}
		}
	}
	list, problems := ReadFormulas(source.New(in.Name, text), l.House)
	return list, l, problems
}

func unknownFact(l *Loaded, name string) string {
	var known []string
	for on := range facts.OnNames {
		for _, f := range l.Rules.Figures.All(facts.On(on)) {
			if f.Name == name {
				return ""
			}
			known = append(known, f.Name)
		}
	}
	return reading.UnknownText("fact", name, "the catalogue", known)
}

// History follows the parts of every formula of a file through their steps.
func (e *Engine) History(in Input) ([]finding.HistoryRow, source.Problems) {
	list, l, problems := e.formulasOf(in)
	if len(problems) > 0 {
		return nil, problems
	}
	show := func(v *facts.Value, unit string) string {
		if v.Absent {
			return "-"
		}
		f := &facts.Fact{Unit: unit}
		text := rule.Show(f, v)
		if v.Origin == facts.Model && v.Lo < v.Hi {
			if ends := rule.ShowRange(f, v); text != "about "+ends {
				text += " (" + ends + ")"
			}
		}
		return text
	}
	var rows []finding.HistoryRow
	for _, f := range list {
		s := facts.NewSheet(f, l.House.Kitchen)
		start := math.NaN()
		if f.Start.Set {
			start = f.Start.Lo
		}
		for _, line := range s.Timeline() {
			r := finding.HistoryRow{Formula: f.Name, Part: rule.SubjectName(facts.Subject{On: facts.OnPart, Part: line.Part}), Step: stepText(line.Step), Clock: line.StartH, StartMin: start,
				Ambient: show(&line.Ambient, "C"), Core: show(&line.Core, "C"), Mean: show(&line.Mean, "C"), Rise: show(&line.Hours, "h")}
			switch {
			case line.Measured && line.Step.Measured.Rise.Set:
				r.Notes = "rise measured"
			case line.Measured:
				r.Notes = "temperature measured"
			case line.Core.Absent && line.Core.Need != nil && line.Core.Need.What != "":
				r.Notes = fmt.Sprintf("needs %s (line %d)", line.Core.Need.What, line.Core.Need.Place.Line())
			case line.Bowl:
				r.Notes = "taken as left in its bowl: say how it stands by as = ..."
			}
			rows = append(rows, r)
		}
	}
	return rows, nil
}

// stepText names a step as the baker wrote it: "chill 14 h", "sheet 5 mm", "fill almond filling".
func stepText(s *formula.Step) string {
	text := s.Verb.Name
	switch {
	case s.Measure.Set:
		text += " " + s.Measure.Text
	case s.Words != "":
		text += " " + s.Words
	}
	if s.Time.Set {
		text += " " + s.Time.Text
	}
	return text
}
