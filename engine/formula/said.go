package formula

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula/values"
	"forebake/engine/larder"
	"forebake/engine/said"
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
