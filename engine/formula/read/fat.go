package read

import (
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/reading"
)

// fryingFat puts the fat that a dough is fried in, { "sunflower oil" = "2 l" }, on the dough's
// list, apart from its weights: its allergens and cautions count.
func (rd *reader) fryingFat(b *hclsyntax.Body) {
	isDough := func(p *formula.Part) bool { return p.Kind == formula.Dough }
	i := slices.IndexFunc(rd.Formula.Parts, isDough)
	for _, word := range fryingKeys {
		a := b.Attributes[strings.ReplaceAll(word, " ", "_")]
		if a == nil || i < 0 {
			continue
		}
		dough := rd.Formula.Parts[i]
		var buf [4]reading.Pair
		pairs, _ := rd.Pairs(a.Expr, a.Name, buf[:0])
		for _, pair := range pairs {
			in := &formula.Ingredient{
				Part: dough, Name: strings.TrimSpace(pair.Key), Place: pair.Place,
				Apart: true}
			rd.ReadAmount(in, pair.Value)
			in.Item, _, _ = rd.Find(in)
			dough.Ingredients = append(dough.Ingredients, in)
			rd.FatApart(in.Place, in.Name, "fried")
		}
	}
}
