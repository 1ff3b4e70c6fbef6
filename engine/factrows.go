package engine

import (
	"fmt"
	"os"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/reading"
	"forebake/engine/rule"
	"forebake/engine/source"
)

// FactRow is one figure of one subject.
type FactRow struct {
	Formula string
	Subject string
	finding.Figure
	Means, Source, Error string
}

// Facts computes the figures of the formulas of a file: those named, or all of the formula and its parts; with all, those
// of steps, ingredients and the kitchen too.
func (e *Engine) Facts(in Input, names []string, all bool) ([]FactRow, source.Problems) {
	l, problems := e.Load(in.Dir)
	if len(problems) > 0 {
		return nil, problems
	}
	text := in.Text
	if in.Path != "" {
		var err error
		if text, err = os.ReadFile(in.Path); err != nil {
			return nil, source.Problems{{Text: fmt.Sprintf("%s: %s", in.Name, err)}}
		}
	}
	list, problems := ReadFormulas(source.New(in.Name, text), l.House)
	if len(problems) > 0 {
		return nil, problems
	}
	wanted := map[string]bool{}
	for _, name := range names {
		if problem := unknownFact(name); problem != "" {
			return nil, source.Problems{{Text: problem}}
		}
		wanted[name] = true
	}
	var rows []FactRow
	for _, f := range list {
		s := facts.NewSheet(f, l.House.Kitchen)
		add := func(x facts.Subject, deep bool) {
			if deep && !all && len(names) == 0 {
				return
			}
			for _, fact := range facts.All(x.On) {
				if len(names) > 0 && !wanted[fact.Name] || x.On == facts.OnStep && !fact.HasVerb(x.Step.Verb.Name) {
					continue
				}
				rows = append(rows, FactRow{Formula: f.Name, Subject: rule.SubjectName(x), Figure: rule.Figure(fact.Name, fact, s.Value(fact, x)),
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

func unknownFact(name string) string {
	var known []string
	for on := range facts.OnNames {
		for _, f := range facts.All(facts.On(on)) {
			if f.Name == name {
				return ""
			}
			known = append(known, f.Name)
		}
	}
	return reading.UnknownText("fact", name, "the catalogue", known)
}
