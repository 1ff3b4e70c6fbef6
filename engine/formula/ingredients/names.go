package ingredients

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"forebake/engine/formula"
	"forebake/engine/formula/values"
	"forebake/engine/larder"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/unread"
	"forebake/engine/source"
)

// NotRead tells words beside what was understood, from which nothing is reckoned.
func (rd *Reader) NotRead(at source.Place, words string) {
	rd.Assumed(at, fmt.Sprintf("not read: %q", strings.Trim(words, " ,;:()-")))
}

// Find looks up an ingredient's name, with its words of preparation.
func (rd *Reader) Find(in *formula.Ingredient) (*larder.Item, []string, bool) {
	name := in.Called()
	return said.Ingredient(rd.Opts.Larder, name, rd.UnitsOf(name))
}

// bareAmount reads an unquoted number that can only be a count: "egg" = 2.
func (rd *Reader) bareAmount(in *formula.Ingredient, e hclsyntax.Expression) (formula.Given, bool) {
	n, at, ok := rd.Values().WholeNumber(e)
	if !ok || !rd.counted(in.Called()) {
		return formula.Given{}, false
	}
	return values.BareCount(n, at), true
}

// EitherName takes the first of two that an ingredient may be, "mace or nutmeg", where it
// changes no figure much and loses no caution, and tells so.
func (rd *Reader) EitherName(in *formula.Ingredient) {
	if _, _, known := rd.Find(in); known || in.Sized != "" {
		return
	}
	if one, ok := rd.Opts.Larder.Either(in.Name); ok {
		in.Sized = one
		rd.Assumed(in.Place, fmt.Sprintf("%q is read as %s: the other is made of nearly the "+
			"same, and has no other allergen", in.Name, one))
	}
}

// MeasureInName takes a measure off a name that the larder knows without it: "pinch of salt".
func (rd *Reader) MeasureInName(in *formula.Ingredient) {
	if _, _, known := rd.Find(in); known || in.Sized != "" {
		return
	}
	measure, thing, ok := said.Named(in.Name)
	if !ok {
		return
	}
	in.Sized, in.Measure = thing, measure
	if _, _, known := rd.Find(in); !known {
		in.Sized, in.Measure = "", ""
	}
}

// measured gives the amount of an ingredient whose name begins with a measure: that of the
// name where the value is none, or only its number.
func (rd *Reader) measured(in *formula.Ingredient, text string, at source.Place) string {
	fields, out := strings.Fields(in.Measure), text
	switch {
	case in.Measure == "":
		return text
	case strings.TrimSpace(text) == "" || said.NoAmount(text):
		out = in.Measure
	case said.Whole(text):
		out = text + " " + fields[len(fields)-1]
	}
	rd.Assumed(at, fmt.Sprintf("%q = %q is read as %s of %s", in.Name, text, out, in.Sized))
	return out
}

// BesideName tells the words of a name that the larder can do without.
func (rd *Reader) BesideName(in *formula.Ingredient) {
	if over := rd.Opts.Larder.Unread(in.Called()); over != "" {
		rd.Assumed(in.Place, fmt.Sprintf("%q is read as %s, without %q", in.Name,
			in.Item.Name, over))
	}
	_, _, whole := rd.Opts.Larder.Described(in.Called())
	_, rest := said.Beside(rd.Opts.Larder, in.Called())
	if !whole && rest != "" && said.WarmthOf(in.Item, rest) == "" && said.Form(rest) != rest {
		rd.NotRead(in.Place, rest)
	}
}

// otherSetting gives the setting that a key of an ingredient means, tells one that says
// nothing that is reckoned, and reports others; nil where none is to be read.
func (rd *Reader) otherSetting(in *formula.Ingredient, pair reading.Pair,
	pairs []reading.Pair) *formula.IngredientOption {
	o, known := findIngredientOption(said.OtherSetting(pair.Key))
	text, at, quoted := rd.Literal(pair.Value)
	switch {
	case known && !slices.ContainsFunc(pairs, reading.IsKey(o.Name)):
		if o.Name == formula.FormOption {
			in.Aside = strings.TrimSpace(in.Aside + " " + text)
		}
		rd.Assumed(pair.Place, fmt.Sprintf("%s of %q is read as %s", pair.Key, in.Name, o.Name))
		return o
	case quoted && rd.IsProse(pair.Key, text, OptionNames(nil)) &&
		!unread.AskedOf(rd.Opts.Larder, text):
		rd.NotRead(at, pair.Key+" "+text)
	case isYesNo(pair.Value) && !reading.IsNear(pair.Key, OptionNames(nil)): // optional = true
		rd.NotRead(pair.Place, pair.Key)
	default:
		rd.Unknown(pair.Place, "key", pair.Key, "an ingredient", OptionNames(nil))
	}
	return nil
}

// isYesNo reports whether a value is true or false.
func isYesNo(e hclsyntax.Expression) bool {
	v, ok := e.(*hclsyntax.LiteralValueExpr)
	return ok && v.Val.Type() == cty.Bool
}

// IsProse reports whether a key that is not known, and near to none that is, holds words that
// can be told as not read.
func (rd *Reader) IsProse(key, text string, known []string) bool {
	return said.NoFigure(text) && !reading.IsNear(key, known) && !unread.Asked(rd.Opts.Larder, text)
}
