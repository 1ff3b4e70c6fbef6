package rule

import (
	"fmt"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// Card gives what a rule says about itself; every output that explains a rule prints it from here.
func (rule *Rule) Card() finding.Card {
	c := finding.Card{
		ID: rule.ID, Pack: rule.Pack, Level: rule.Level.String(), On: strings.Join(rule.On, ", "), File: source.Safe(rule.Place.File.Name), Line: rule.Place.Line(),
		When: strings.Join(strings.Fields(rule.WhenText), " "), Say: rule.Say.text(), Why: rule.Why, Source: rule.Source, Doubt: rule.Doubt, Safety: rule.Safety, Because: rule.Because, Was: rule.Was,
	}
	if rule.LevelBy != nil {
		c.LevelBy = rule.LevelBy.String()
	}
	for _, l := range rule.Limits {
		limit := finding.CardLimit{Name: l.Name, Value: l.Value, Shown: l.Shown(), From: l.From, Source: l.Source}
		if l.By != nil {
			limit.By = l.By.String()
		}
		c.Limits = append(c.Limits, limit)
	}
	for i := range rule.When.reads {
		r := &rule.When.reads[i]
		if f := r.fact; f != nil {
			c.Reads = append(c.Reads, finding.CardFact{Name: r.name, Unit: f.Unit, Means: f.Means, Source: f.Source, Error: f.Error})
		}
	}
	for _, a := range rule.Adjust {
		lever := a.Lever
		if a.ToText != "" {
			lever += " to " + strings.Join(strings.Fields(a.ToText), " ")
		}
		if len(a.Within) == 2 {
			lever += fmt.Sprintf(" (within %v to %v)", a.Within[0], a.Within[1])
		}
		c.Levers = append(c.Levers, lever)
	}
	return c
}

// Card gives a rule's card with the waivers that the house has for it.
func (s *Set) Card(rule *Rule) finding.Card {
	c := rule.Card()
	for _, w := range s.Waivers {
		if w.ID == rule.ID {
			c.Waivers = append(c.Waivers, finding.CardWaiver{Formula: w.Formula, Until: w.Until, Because: w.Because, By: w.Place.String()})
		}
	}
	return c
}

// text gives the message as it was written, its figures in braces.
func (m *Message) text() string {
	var b strings.Builder
	for _, p := range m.pieces {
		if p.expr != nil {
			b.WriteString("{" + p.written + "}")
		} else {
			b.WriteString(p.text)
		}
	}
	return b.String()
}
