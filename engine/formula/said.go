package formula

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula/values"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/unread"
	"forebake/engine/source"
)

// assumed tells what a word was taken for.
func (rd *reader) assumed(at source.Place, says string) {
	if says != "" {
		rd.formula.Said = append(rd.formula.Said, Said{at, says})
	}
}

// notRead tells words beside what was understood, from which nothing is reckoned.
func (rd *reader) notRead(at source.Place, words string) {
	rd.assumed(at, fmt.Sprintf("not read: %q", strings.Trim(words, " ,;:()-")))
}

// value reads values that depend on nothing else in the formula.
func (rd *reader) value() values.Reader { return values.Reader{Reader: rd.Reader} }

// find looks up an ingredient's name, with its words of preparation.
func (rd *reader) find(in *Ingredient) (*larder.Item, []string, bool) {
	name := in.called()
	return said.Ingredient(rd.opts.Larder, name, rd.unitsOf(name))
}

// isOpen reports whether an option of the ingredient is "?".
func (in *Ingredient) isOpen(option string) bool {
	return slices.ContainsFunc(in.Open, func(o *IngredientOption) bool { return o.Name == option })
}

// bareAmount reads an unquoted number that can only be a count: "egg" = 2.
func (rd *reader) bareAmount(in *Ingredient, e hclsyntax.Expression) (Given, bool) {
	n, at, ok := rd.value().WholeNumber(e)
	if !ok || !rd.counted(in.called()) {
		return Given{}, false
	}
	return values.BareCount(n, at), true
}

// measureInName takes a measure off a name that the larder knows without it: "pinch of salt".
func (rd *reader) measureInName(in *Ingredient) {
	if _, _, known := rd.find(in); known || in.sized != "" {
		return
	}
	measure, thing, ok := said.Named(in.Name)
	if !ok {
		return
	}
	in.sized, in.measure = thing, measure
	if _, _, known := rd.find(in); !known {
		in.sized, in.measure = "", ""
	}
}

// measured gives the amount of an ingredient whose name begins with a measure: that of the
// name where the value is none, or only its number.
func (rd *reader) measured(in *Ingredient, text string, at source.Place) string {
	fields, out := strings.Fields(in.measure), text
	switch {
	case in.measure == "":
		return text
	case strings.TrimSpace(text) == "" || said.NoAmount(text):
		out = in.measure
	case said.Whole(text):
		out = text + " " + fields[len(fields)-1]
	}
	rd.assumed(at, fmt.Sprintf("%q = %q is read as %s of %s", in.Name, text, out, in.sized))
	return out
}

// besideName tells the words of a name that the larder can do without.
func (rd *reader) besideName(in *Ingredient) {
	if over := rd.opts.Larder.Unread(in.called()); over != "" {
		rd.assumed(in.Place, fmt.Sprintf("%q is read as %s, without %q", in.Name,
			in.Item.Name, over))
	}
	_, _, whole := rd.opts.Larder.Described(in.called())
	_, rest := said.Beside(rd.opts.Larder, in.called())
	if !whole && rest != "" && said.WarmthOf(in.Item, rest) == "" && said.Form(rest) != rest {
		rd.notRead(in.Place, rest)
	}
}

// otherSetting gives the setting that a key of an ingredient means, tells one that says
// nothing that is reckoned, and reports others; nil where none is to be read.
func (rd *reader) otherSetting(in *Ingredient, pair reading.Pair,
	pairs []reading.Pair) *IngredientOption {
	o, known := findIngredientOption(said.OtherSetting(pair.Key))
	text, at, quoted := rd.Literal(pair.Value)
	switch {
	case known && !slices.ContainsFunc(pairs, isKey(o.Name)):
		if o.Name == formOption {
			in.aside = strings.TrimSpace(in.aside + " " + text)
		}
		rd.assumed(pair.Place, fmt.Sprintf("%s of %q is read as %s", pair.Key, in.Name, o.Name))
		return o
	case quoted && rd.isProse(pair.Key, text, ingredientOptionNames(nil)) &&
		!unread.AskedOf(rd.opts.Larder, text):
		rd.notRead(at, pair.Key+" "+text)
	default:
		rd.Unknown(pair.Place, "key", pair.Key, "an ingredient", ingredientOptionNames(nil))
	}
	return nil
}

// isProse reports whether a key that is not known, and near to none that is, holds words that
// can be told as not read.
func (rd *reader) isProse(key, text string, known []string) bool {
	return said.NoFigure(text) && !reading.IsNear(key, known) && !unread.Asked(rd.opts.Larder, text)
}

// fryingFat puts the fat that a dough is fried in, { "sunflower oil" = "2 l" }, on the dough's
// list, apart from its weights: its allergens and cautions count.
func (rd *reader) fryingFat(b *hclsyntax.Body) {
	i := slices.IndexFunc(rd.formula.Parts, func(p *Part) bool { return p.Kind == Dough })
	for _, word := range fryingKeys {
		a := b.Attributes[strings.ReplaceAll(word, " ", "_")]
		if a == nil || i < 0 {
			continue
		}
		dough := rd.formula.Parts[i]
		var buf [4]reading.Pair
		pairs, _ := rd.Pairs(a.Expr, a.Name, buf[:0])
		for _, pair := range pairs {
			in := &Ingredient{Part: dough, Name: strings.TrimSpace(pair.Key), Place: pair.Place,
				Apart: true}
			rd.readAmount(in, pair.Value)
			in.Item, _, _ = rd.find(in)
			dough.Ingredients = append(dough.Ingredients, in)
			rd.fatApart(in.Place, in.Name, "fried")
		}
	}
}

// fatApart tells that words name what the dough is fried or cooked in.
func (rd *reader) fatApart(at source.Place, words, how string) {
	rd.assumed(at, fmt.Sprintf("%q is read as what the dough is %s in: it is left out of its "+
		"weights, and its allergens and cautions are told", words, how))
}
