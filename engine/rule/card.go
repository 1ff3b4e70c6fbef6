package rule

import (
	"fmt"
	"strings"

	"forebake/engine/expr"
	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/source"
)

// Card describes a rule. Every output that explains a rule prints it.
func (rule *Rule) Card() finding.Card {
	c := finding.Card{
		ID: rule.ID, Pack: rule.Pack, Level: rule.Level.String(), On: strings.Join(rule.On, ", "),
		File: source.Safe(rule.Place.File.Name), Line: rule.Place.Line(),
		When: oneLine(rule.When.Text()), Say: rule.Say.text(), Why: rule.Why, Source: rule.Source,
		NoteWhen: oneLine(rule.Note.Text()), RiskWhen: oneLine(rule.Risk.Text()),
		Careful: rule.Careful,
		Doubt:   rule.Doubt, Middle: rule.Middle, Safety: rule.Safety, Because: rule.Because,
		Was: rule.Was,
	}
	if rule.LevelBy != nil {
		c.LevelBy = rule.LevelBy.String()
	}
	for _, l := range rule.Limits {
		limit := finding.CardLimit{
			Name: l.Name, Value: l.Value, Shown: l.Shown(), From: l.From, Source: l.Source,
		}
		if l.By != nil {
			limit.By = l.By.String()
		}
		c.Limits = append(c.Limits, limit)
	}
	for _, r := range rule.When.Expr().Reads() {
		if f := r.Fact; f != nil {
			c.Reads = append(c.Reads, finding.CardFact{
				Name: r.Name, Unit: f.Unit, Means: f.Means, Source: f.Source, Error: f.Error,
				Misses: f.Misses,
			})
		}
	}
	for _, a := range rule.Adjust {
		lever := a.Lever
		if a.To != nil {
			lever += " to " + oneLine(a.To.Text())
		}
		if len(a.Within) == 2 {
			lever += fmt.Sprintf(" (within %v to %v)", a.Within[0], a.Within[1])
		}
		c.Levers = append(c.Levers, lever)
	}
	return c
}

func oneLine(text string) string { return strings.Join(strings.Fields(text), " ") }

// Card gives a rule's card with the house's waivers of it.
func (s *Set) Card(rule *Rule) finding.Card {
	c := rule.Card()
	for _, w := range s.Waivers {
		if w.ID == rule.ID {
			c.Waivers = append(c.Waivers, finding.CardWaiver{
				Formula: w.Formula, Until: w.Until, Because: w.Because, By: w.Place.String(),
			})
		}
	}
	return c
}

// Card describes a caution.
func (c *Caution) Card() finding.CautionCard {
	card := finding.CautionCard{
		On: strings.Join(c.On, ", "), Say: c.Say.text(), Source: c.Source,
		File: c.Place.File.Name, Line: c.Place.Line(),
	}
	if c.Detail != nil {
		card.Detail = c.Detail.text()
	}
	return card
}

// FigureCard describes a declared figure.
func FigureCard(f *expr.Figure) finding.FigureCard {
	return finding.FigureCard{
		Name: f.Name, On: strings.Join(f.Subject.Words, ", "), Is: oneLine(f.Is.Text()),
		Unit: f.Fact.Unit, Means: f.Means, File: f.Place.File.Name, Line: f.Place.Line(),
	}
}

// text is the message as written, its figures in braces.
func (m *Message) text() string {
	var b strings.Builder
	for _, p := range m.pieces() {
		if p.expr != nil {
			b.WriteString("{" + p.written + "}")
		} else {
			b.WriteString(p.text)
		}
	}
	return b.String()
}

// Subjects counts the subjects of a formula that a rule judges.
func Subjects(rule *Rule, f *formula.Formula) int {
	n := 0
	rule.names.Subject.Each(f, func(facts.Subject) { n++ })
	return n
}
