// Package ingredients reads one line of a part's ingredients: an amount and settings, in figures
// or in words.
package ingredients

import (
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/reading"
)

// Reader reads the ingredients of one formula.
type Reader struct {
	*formula.Reader
	Listed []string                 // the names of the ingredients of the part that is read
	eggs   func(name string) string // whose sizes they are of; nil until asked
}

// Named is the ingredient of a part that has the name; nil for none.
func Named(p *formula.Part, name string) *formula.Ingredient {
	for _, in := range p.Ingredients {
		if formula.SameName(in.Name, name) {
			return in
		}
	}
	return nil
}

// PartName reports whether an ingredient's name is that of a part, "the sponge", and gives it.
func PartName(name string) (string, bool) {
	if len(name) > 4 && strings.EqualFold(name[:4], "the ") {
		return strings.TrimSpace(name[4:]), true
	}
	return "", false
}

// ReadAmount reads "200 g", "?", "all" or { amount = "200 g", temp = "6 C" }.
func (rd *Reader) ReadAmount(in *formula.Ingredient, e hclsyntax.Expression) {
	quoted := in.Quoted()
	if _, isObject := e.(*hclsyntax.ObjectConsExpr); !isObject {
		rd.FillIngredient(in, formula.AmountOption, e, quoted)
		return
	}
	var buf [8]reading.Pair
	pairs, _ := rd.Pairs(e, quoted, buf[:0])
	weighed := false
	for i, pair := range pairs {
		if slices.ContainsFunc(pairs[:i], reading.IsKey(pair.Key)) {
			rd.Fault(pair.Place, "%q stands twice for %s", pair.Key, quoted)
			continue
		}
		if o, known := findIngredientOption(pair.Key); known {
			rd.FillIngredient(in, o, pair.Value, quoted)
			weighed = weighed || o == formula.AmountOption
		} else if o := rd.otherSetting(in, pair, pairs); o != nil {
			rd.FillIngredient(in, o, pair.Value, quoted)
			weighed = weighed || o == formula.AmountOption
		}
	}
	if !weighed {
		rd.Fault(in.Place,
			"%s has no amount: add amount = \"100 g\", or amount = \"?\" while drafting", quoted)
	}
}

// CheckOptions refuses options that mean nothing for the ingredient.
func (rd *Reader) CheckOptions(in *formula.Ingredient) {
	for _, o := range formula.IngredientOptions {
		if o.Check == nil {
			continue
		}
		one := in
		if slices.Contains(in.Open, o) { // what may stand there shows whether anything may
			tried := *in
			o.Spans(in)[0](&tried)
			one = &tried
		}
		o.Check(rd.Reader, one)
	}
}
