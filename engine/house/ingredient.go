package house

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/finding"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// IngredientKeys are the keys of an ingredient block. Figures are per
// 100 g, as on a label.
var IngredientKeys = keysOf("ingredient")

// readIngredient reads an ingredient of the house: a larder item with
// some figures changed, or a new one.
func (h *House) readIngredient(r *reading.Reader, b *hclsyntax.Block) {
	name, at := r.Label(b)
	r.Known(b.Body, "an ingredient", IngredientKeys, nil)
	if strings.TrimSpace(name) == "" {
		return // Label reports it
	}
	if len(name) > 4 && strings.EqualFold(name[:4], "the ") {
		r.Fault(at, "ingredient %q: a leading \"the\" names a part of the formula; leave it out",
			name)
		return
	}
	attr := b.Body.Attributes
	item, ok := h.baseItem(r, attr, name, at)
	if !ok {
		return
	}
	item.Name, item.Aliases = name, nil
	before := item
	readLabel(r, attr, &item, &before)
	checkSums(r, &item, at)
	readMeasures(r, attr, &item)
	places := []source.Place{at}
	if a := attr["aliases"]; a != nil {
		var aliasesAt []source.Place
		item.Aliases, aliasesAt, _ = r.Texts(a.Expr, "aliases")
		places = append(places, aliasesAt...)
	}
	if a := attr["source"]; a != nil {
		item.Source, _, _ = r.Text(a.Expr, "source")
	}
	because, reasoned := "", true
	if a := attr["because"]; a != nil {
		because, _, reasoned = r.Text(a.Expr, "because")
	}
	if a := attr["allergens"]; a != nil {
		readAllergens(r, a.Expr, &item)
		if reasoned {
			h.keepAllergens(r.Place(a.NameRange), &item, &before, because)
		}
	}
	if !mayBear(r, h.Larder, &item, places) {
		return
	}
	if h.inherited != nil {
		if h.named == nil {
			h.named = map[string]bool{}
		}
		if !h.named[name] {
			h.Larder.Drop(name) // replaces that of the included house
		}
		h.named[name] = true
	}
	if err := h.Larder.Add(item); err != nil {
		r.Fault(at, "%s", err)
	}
}

// baseItem returns the larder's item that like names, else an item
// without figures, whose water, fat and sugar must then be written. ok is
// false where like cannot be read.
func (h *House) baseItem(r *reading.Reader, attr hclsyntax.Attributes, name string,
	at source.Place) (item larder.Item, ok bool) {
	if a := attr["like"]; a != nil {
		like, likeAt, ok := r.Text(a.Expr, "like")
		if !ok {
			return item, false
		}
		base, found := h.Larder.Find(like)
		if !found {
			r.Unknown(likeAt, "ingredient", like, "the larder", h.Larder.Names())
			return item, false
		}
		item = *base
		item.Source = "house file, after " + base.Name + " (" + base.Source + ")"
		return item, true
	}
	for _, key := range []string{"water", "fat", "sugar"} {
		if attr[key] == nil {
			r.Fault(at, "ingredient %q has no %s: add %s = \"12 %%\" from its label,"+
				" or like = \"...\" with the nearest larder name", name, key, key)
		}
	}
	return larder.Item{Class: larder.ClassOther, Basis: "house", Source: "house file",
		Undeclared: true}, true
}

// readLabel reads the figures per 100 g.
func readLabel(r *reading.Reader, attr hclsyntax.Attributes, item, before *larder.Item) {
	percent := func(key string, to *float64) {
		a := attr[key]
		if a == nil {
			return
		}
		g, ok := r.Quantity(a.Expr, quantity.Of(quantity.Percent)|quantity.AllowZero, key)
		if ok && (!g.IsPoint() || g.Lo > 100) {
			r.Fault(g.Place, "%s: one figure between 0 and 100 %%", key)
		} else if ok {
			*to = g.Lo
		}
	}
	percent("water", &item.Water)
	percent("protein", &item.Protein)
	percent("fat", &item.Fat)
	percent("sugar", &item.Sugars)
	percent("salt", &item.Salt)
	percent("alcohol", &item.Alcohol)
	flour := 100 * item.Flour
	percent("flour", &flour)
	item.Flour = flour / 100
	item.Ash += item.Salt - before.Salt
	if attr["carbohydrate"] != nil {
		percent("carbohydrate", &item.Carbohydrate)
	} else {
		// The sum stays 100 g: carbohydrate by difference takes the
		// change first, then water.
		rest := 100 - (item.Water + item.Protein + item.Fat + item.Ash + item.Alcohol)
		item.Carbohydrate = max(0, rest)
		if rest < 0 && attr["water"] == nil {
			item.Water = max(0, item.Water+rest)
		}
	}
	if item.Sugars != before.Sugars {
		scaleSugars(item, before)
	}
}

// checkSums records figures that cannot belong to one ingredient.
func checkSums(r *reading.Reader, item *larder.Item, at source.Place) {
	sum := item.Water + item.Protein + item.Fat + item.Carbohydrate + item.Ash + item.Alcohol
	if sum > 102 {
		r.Fault(at, "ingredient %q adds up to %s of 100 g: check its figures", item.Name,
			quantity.Format(sum, "g"))
	}
	if item.Sugars > item.Carbohydrate+2 {
		r.Fault(at, "ingredient %q has more sugar (%s) than carbohydrate (%s): check its figures",
			item.Name, quantity.Format(item.Sugars, "%"), quantity.Format(item.Carbohydrate, "%"))
	}
}

// readMeasures reads the density, the mass of a piece and the price.
func readMeasures(r *reading.Reader, attr hclsyntax.Attributes, item *larder.Item) {
	if a := attr["density"]; a != nil {
		if text, at, ok := r.Text(a.Expr, "density"); ok {
			if x, good := perUnit(text, "g/ml"); good && x > 0.05 && x < 3 {
				item.Density = x
			} else {
				r.Fault(at, "density: write grams per millilitre: \"0.95 g/ml\"")
			}
		}
	}
	if a := attr["piece"]; a != nil {
		if g, ok := r.Quantity(a.Expr, quantity.Of(quantity.Mass), "piece"); ok {
			item.Piece = g.Lo
		}
	}
	if a := attr["price"]; a != nil {
		if text, at, ok := r.Text(a.Expr, "price"); ok {
			if x, good := perUnit(text, "per kg"); good {
				item.Price = larder.Price{PerKg: x, Known: true}
			} else if x, good := perUnit(text, "per piece"); good && item.Piece > 0 {
				item.Price = larder.Price{PerKg: x / item.Piece * 1000, Known: true}
			} else {
				r.Fault(at, "price: write it per weight: \"9.20 per kg\"")
			}
		}
	}
}

// keepAllergens keeps the allergens of the item that like names on the
// list of the house's item. With a reason the house's list replaces it,
// and every report shows the allergens that it takes off.
func (h *House) keepAllergens(at source.Place, item, before *larder.Item, because string) {
	if strings.TrimSpace(because) == "" {
		item.US = larder.AddCodes(item.US, before.US)
		item.EU = larder.AddCodes(item.EU, before.EU)
		return
	}
	for _, list := range []struct {
		law, plain string
		now, were  []string
	}{{"US", "US", item.US, before.US}, {"EU", "EU and UK", item.EU, before.EU}} {
		if len(larder.LackingCodes(list.now, list.were)) == 0 {
			continue
		}
		h.Loosened = append(h.Loosened, finding.Loosened{
			Rule: "allergens-present", Pack: "cautions",
			What: fmt.Sprintf("the %s list of the house's ingredient %q", list.plain, item.Name),
			From: listed(
				list.law,
				list.were,
			), To: listed(list.law, list.now), Because: because, Place: at,
		})
	}
}

func listed(law string, codes []string) string {
	if len(codes) == 0 {
		return "empty"
	}
	names := make([]string, len(codes))
	for i, code := range codes {
		names[i] = larder.AllergenName(law, code)
	}
	return strings.Join(names, ", ")
}

// mayBear reports whether an item may bear its name and its aliases. A
// name of the larder keeps the traits and allergens that it has there:
// a formula that uses it would lose their cautions. places are those of
// the name and of each alias.
func mayBear(r *reading.Reader, l *larder.Larder, item *larder.Item, places []source.Place) bool {
	ok := true
	for i, name := range append([]string{item.Name}, item.Aliases...) {
		other, found := l.Find(name)
		if !found || i >= len(places) {
			continue
		}
		if lacks := item.Lacks(other); len(lacks) > 0 {
			if n := len(lacks) - 3; n > 1 {
				lacks = append(lacks[:3:3], fmt.Sprintf("%d more", n))
			}
			r.Fault(
				places[i],
				"ingredient %q cannot take the name %q: the larder's %q has %s, and "+
					"their cautions would be lost; use another name, or add like = %q",
				source.Safe(item.Name),
				source.Safe(name),
				source.Safe(other.Name),
				strings.Join(lacks, ", "),
				source.Safe(other.Name),
			)
			ok = false
		}
	}
	return ok
}

// scaleSugars scales the single sugars to the label's sum.
func scaleSugars(item, before *larder.Item) {
	if before.Sugars > 0 {
		k := item.Sugars / before.Sugars
		item.Sucrose, item.Glucose = before.Sucrose*k, before.Glucose*k
		item.Fructose, item.Maltose = before.Fructose*k, before.Maltose*k
		item.Lactose, item.Galactose = before.Lactose*k, before.Galactose*k
		return
	}
	item.Sucrose = item.Sugars
}

// readAllergens reads allergen codes of both jurisdictions: "milk",
// "nuts:almond".
func readAllergens(r *reading.Reader, e hclsyntax.Expression, item *larder.Item) {
	names, places, _ := r.Texts(e, "allergens")
	item.US, item.EU, item.Undeclared = nil, nil, false
	var known []string
	for _, a := range larder.Allergens() {
		known = append(known, a.Code)
	}
	for i, name := range names {
		code, _, _ := strings.Cut(strings.TrimSuffix(name, "?"), ":")
		found := false
		for _, a := range larder.Allergens() {
			if a.Code != code {
				continue
			}
			found = true
			if a.Jurisdiction == "US" {
				item.US = append(item.US, name)
			} else {
				item.EU = append(item.EU, name)
			}
		}
		if !found {
			r.Unknown(places[i], "allergen", name, "the lists of the US and the EU", known)
		}
	}
}

// perUnit reads a number followed by a fixed unit: "9.20 per kg".
func perUnit(text, unit string) (float64, bool) {
	number, ok := strings.CutSuffix(strings.ToLower(strings.Join(strings.Fields(text), " ")), unit)
	if !ok {
		return 0, false
	}
	q, fault := quantity.Read(strings.TrimSpace(number)+" g", quantity.Of(quantity.Mass))
	return q.Lo, fault == nil && q.IsPoint()
}
