package engine

import (
	"strconv"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/house"
	"forebake/engine/kitchen"
	"forebake/engine/quantity"
)

// Rulebook gives the packs in force in a house with the cards of their rules.
func Rulebook(l *Loaded) finding.Rulebook {
	book := finding.Rulebook{Unchecked: l.Unchecked}
	for _, p := range l.Rules.Packs {
		if len(p.Rules) == 0 {
			continue
		}
		card := finding.PackCard{Name: p.Name, About: p.About, Safety: p.Safety}
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

// FactNames gives the name of every fact once, with its meaning, in order of declaration.
func FactNames() (names, means []string) {
	seen := map[string]bool{}
	for on := range facts.OnNames {
		for _, f := range facts.All(facts.On(on)) {
			if !seen[f.Name] {
				seen[f.Name] = true
				names, means = append(names, f.Name), append(means, f.Means)
			}
		}
	}
	return names, means
}

// typeNames are the types of facts as the catalogue prints them.
var typeNames = map[facts.Type]string{facts.Number: "number", facts.YesNo: "yes or no",
	facts.Text: "text", facts.List: "list"}

// Catalogue gives every fact, step verb, unit and house key, from their declarations.
func Catalogue() finding.Catalogue {
	var c finding.Catalogue
	for on, subject := range facts.OnNames {
		for _, f := range facts.All(facts.On(on)) {
			c.Facts = append(c.Facts, finding.CatalogueFact{Subject: subject, Name: f.Name,
				Type: typeNames[f.Type], Unit: f.Unit, Means: f.Means, Source: f.Source, Error: f.Error,
				Steps: strings.Join(f.Verbs, ", ")})
		}
	}
	for _, v := range formula.Verbs {
		c.Verbs = append(c.Verbs, finding.CatalogueVerb{Name: v.Name, Means: v.Means,
			Measure: v.Measures(), Options: v.Options()})
	}
	for _, u := range quantity.Units() {
		is := strconv.FormatFloat(u.Factor, 'f', -1, 64) + " " + u.Kind.Base()
		switch u.Name {
		case "F":
			is = "(F - 32) x 5/9 C"
		case "s":
			is = "1/60 min"
		}
		c.Units = append(c.Units,
			finding.CatalogueUnit{Name: u.Name, Kind: u.Kind.String(), Is: is, Spelt: u.Also})
	}
	for _, k := range house.Keys {
		c.Keys = append(c.Keys,
			finding.CatalogueKey{Block: k.Block, Name: k.Name, Default: k.Default, Means: k.Means})
		if k.Name == "kitchen" {
			for _, in := range kitchen.Keys {
				c.Keys = append(c.Keys, finding.CatalogueKey{Block: "kitchen", Name: in.Name,
					Default: in.Default, Means: in.Means})
			}
		}
	}
	return c
}
