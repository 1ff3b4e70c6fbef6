package engine

import (
	"slices"
	"strconv"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/quantity"
	"forebake/engine/rule"
)

// Cards gives the cards of the rules in force in the houses of a run, in order of name. Where two houses have one rule, the card is
// that of the house whose files come first.
func (res *Result) Cards() []finding.Card {
	var out []finding.Card
	seen := map[string]bool{}
	for _, l := range res.houses {
		for _, r := range l.Rules.Rules {
			if !seen[r.ID] {
				seen[r.ID] = true
				out = append(out, l.Rules.Card(r))
			}
		}
	}
	finding.SortCards(out)
	return out
}

// Rulebook gives the packs in force in a house with the cards of their rules.
func (l *Loaded) Rulebook() finding.Rulebook {
	book := finding.Rulebook{Unchecked: l.Unchecked}
	for _, p := range l.Rules.Packs {
		if len(p.Rules) == 0 && len(p.Figures) == 0 {
			continue
		}
		card := finding.PackCard{Name: p.Name, About: p.About, Safety: p.Safety, NoPack: isNoPack(p.Name) != ""}
		for _, f := range p.Figures {
			card.Figures = append(card.Figures, rule.FigureCard(f))
		}
		for _, r := range l.Rules.Rules {
			if r.Pack == p.Name {
				card.Rules = append(card.Rules, l.Rules.Card(r))
			}
		}
		book.Packs = append(book.Packs, card)
	}
	for _, c := range l.Rules.Cautions {
		book.Cautions = append(book.Cautions, c.Card())
	}
	return book
}

// FactNames gives every fact's name once, in the order of declaration, with what it means.
func (l *Loaded) FactNames() (names, means []string) {
	seen := map[string]bool{}
	for on := range facts.OnNames {
		for _, f := range l.Rules.Figures.All(facts.On(on)) {
			if !seen[f.Name] {
				seen[f.Name] = true
				names, means = append(names, f.Name), append(means, f.Means)
			}
		}
	}
	return names, means
}

// Catalogue gives every fact, step verb, unit and house key that a house knows, from the
// declarations that the program and its rule files work by.
func (l *Loaded) Catalogue() finding.Catalogue {
	var c finding.Catalogue
	for on, subject := range facts.OnNames {
		for _, f := range l.Rules.Figures.All(facts.On(on)) {
			only := slices.Clone(f.Verbs)
			for _, k := range f.Kinds {
				only = append(only, k.String())
			}
			c.Facts = append(c.Facts, finding.CatalogueFact{
				Subject: subject, Name: f.Name, Type: facts.TypeNames[f.Type], Unit: f.Unit, Means: f.Means,
				Source: f.Source, Error: f.Error, Steps: strings.Join(only, ", "),
			})
		}
	}
	for _, v := range formula.Verbs {
		c.Verbs = append(c.Verbs, finding.CatalogueVerb{Name: v.Name, Means: v.Means, Measure: v.Measures(), Options: v.Options()})
	}
	for _, u := range quantity.Units() {
		is := strconv.FormatFloat(u.Factor, 'f', -1, 64) + " " + u.Kind.Base()
		switch u.Name {
		case "F":
			is = "(F - 32) x 5/9 C"
		case "s":
			is = "1/60 min"
		}
		c.Units = append(c.Units, finding.CatalogueUnit{Name: u.Name, Kind: u.Kind.String(), Is: is, Spelt: u.Also})
	}
	for _, k := range house.Keys {
		c.Keys = append(c.Keys, finding.CatalogueKey{Block: k.Block, Name: k.Name, Default: k.Default, Means: k.Means})
		if k.Name == "kitchen" {
			for _, in := range kitchen.Keys {
				c.Keys = append(c.Keys, finding.CatalogueKey{Block: "kitchen", Name: in.Name, Default: in.Default, Means: in.Means})
			}
		}
	}
	return c
}
