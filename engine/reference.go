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
	"forebake/engine/mend/levers"
	"forebake/engine/quantity"
	"forebake/engine/rule"
	"forebake/engine/run"
)

// Rulebook gives the packs in force in a house with their rules' cards.
func Rulebook(l *Loaded) finding.Rulebook {
	book := finding.Rulebook{Unchecked: l.Unchecked}
	for _, p := range l.Rules.Packs {
		if len(p.Rules) == 0 && len(p.Figures) == 0 {
			continue
		}
		card := finding.PackCard{Name: p.Name, About: p.About, Safety: p.Safety,
			NoPack: !run.IsPack(p.Name)}
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

// FactNames gives every fact name of a house once, with its meaning, in
// declaration order.
func FactNames(l *Loaded) (names, means []string) {
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

// Catalogue gives every fact, step verb, unit and house key that a
// house knows, from the declarations in the program and its rule files.
func Catalogue(l *Loaded) finding.Catalogue {
	var c finding.Catalogue
	for on, subject := range facts.OnNames {
		for _, f := range l.Rules.Figures.All(facts.On(on)) {
			only := stepsText(f.Verbs)
			for _, k := range f.Kinds {
				only = strings.TrimPrefix(only+", "+k.String(), ", ")
			}
			c.Facts = append(c.Facts, finding.CatalogueFact{Subject: subject, Name: f.Name,
				Type: facts.TypeNames[f.Type], Unit: f.Unit, Means: f.Means, Source: f.Source,
				Error: f.Error,
				Steps: only})
		}
	}
	for _, v := range formula.Verbs {
		c.Verbs = append(c.Verbs, finding.CatalogueVerb{Name: v.Name, Means: v.Means,
			Measure: v.Measures(), Options: v.Options()})
	}
	c.Options, c.Words = catalogueOptions(), catalogueWords()
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
	c.Keys = HouseKeys()
	for _, k := range levers.Kinds() {
		c.Levers = append(c.Levers,
			finding.CatalogueLever{Names: k.Names(), Means: k.Means(), Trusts: trusts(k)})
	}
	slices.SortStableFunc(c.Levers, func(a, b finding.CatalogueLever) int {
		return strings.Compare(a.Names[0], b.Names[0])
	})
	return c
}

// HouseKeys lists the keys of a house file, those of its kitchen
// block below.
func HouseKeys() (out []finding.CatalogueKey) {
	for _, k := range house.Keys {
		out = append(out,
			finding.CatalogueKey{Block: k.Block, Name: k.Name, Default: k.Default, Means: k.Means})
		if k.Name == "kitchen" {
			for _, in := range kitchen.Keys {
				out = append(out, finding.CatalogueKey{Block: "kitchen", Name: in.Name,
					Default: in.Default, Means: in.Means})
			}
		}
	}
	return out
}

// trusts lists the trusts of a lever kind's changes: none for what the
// baker wants.
func trusts(k levers.Kind) []string {
	t := k.Traits()
	if t.Role == levers.Wish {
		return nil
	}
	found := map[string]bool{}
	for _, name := range k.Names() {
		switch {
		case k.ForBaker(&levers.Lever{Kind: k, Asked: name, Class: name}):
			found[finding.Taste] = true
		case t.Setter == levers.ByRule:
			found[finding.Exact] = true
		default:
			found[finding.Searched] = true
		}
	}
	return slices.DeleteFunc(slices.Clone(finding.Trusts),
		func(trust string) bool { return !found[trust] })
}

// stepsText lists verbs: by their group's word where they are one, and
// not at all where they are all.
func stepsText(verbs []string) string {
	if len(verbs) == len(formula.Verbs) {
		return ""
	}
	for _, g := range formula.Groups {
		if slices.Equal(verbs, formula.VerbNames(g.Has)) {
			return "every " + g.Name
		}
	}
	return strings.Join(verbs, ", ")
}

func catalogueOptions() []finding.CatalogueOption {
	var out []finding.CatalogueOption
	for _, o := range formula.StepOptions {
		taking := formula.VerbNames(func(v *formula.Verb) bool { return v.Takes(o) })
		out = append(out, finding.CatalogueOption{Subject: facts.OnNames[facts.OnStep],
			Name: o.Name, Means: o.Means, Steps: stepsText(taking)})
	}
	for _, o := range formula.IngredientOptions {
		out = append(out, finding.CatalogueOption{Subject: facts.OnNames[facts.OnIngredient],
			Name: o.Name, Means: o.Means})
	}
	return out
}

func catalogueWords() []finding.CatalogueWord {
	var out []finding.CatalogueWord
	for _, w := range formula.Ways {
		out = append(out, finding.CatalogueWord{List: "way", Name: w.Name, Means: w.Means,
			Steps: strings.Join(formula.VerbNames(w.Suits), ", "), Spelt: w.Also})
	}
	for _, p := range formula.Places {
		out = append(
			out,
			finding.CatalogueWord{List: "place", Name: p.Name, Means: p.Means, Spelt: p.Also},
		)
	}
	for _, g := range formula.Groups {
		out = append(out, finding.CatalogueWord{List: "group", Name: g.Name, Means: g.Means,
			Steps: strings.Join(formula.VerbNames(g.Has), ", ")})
	}
	return out
}
