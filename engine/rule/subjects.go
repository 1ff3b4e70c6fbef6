package rule

import (
	"strings"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
)

// Subjects counts the subjects of a formula that a rule looks at.
func Subjects(rule *Rule, f *formula.Formula) int {
	n := 0
	rule.names.Subject.Each(f, func(facts.Subject) { n++ })
	return n
}

// Card gives what a caution says about itself.
func (c *Caution) Card() finding.CautionCard {
	card := finding.CautionCard{On: strings.Join(c.On, ", "), Say: c.Say.text(), Source: c.Source, File: c.Place.File.Name, Line: c.Place.Line()}
	if c.Detail != nil {
		card.Detail = c.Detail.text()
	}
	return card
}
