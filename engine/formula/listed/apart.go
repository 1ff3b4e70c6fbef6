package listed

import (
	"fmt"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
)

// Apart makes a separate step of a filling beside another verb, { shape = "balls", fill =
// "custard" }, and tells so. It comes before a verb that encloses it, else after the verb.
func Apart(items []hclsyntax.Expression, tell func(at hcl.Range, says string),
) []hclsyntax.Expression {
	var out []hclsyntax.Expression
	for _, item := range items {
		if in, tin := tinApart(item, tell); tin != nil {
			out = append(out, in, tin)
			continue
		}
		if several := VerbsAlone(item); len(several) > 1 {
			tell(item.Range(),
				"several things in one step are read as steps in their order")
			out = append(out, several...)
			continue
		}
		fill, other := TwoThings(item)
		if fill == nil || other == nil {
			out = append(out, item)
			continue
		}
		object := item.(*hclsyntax.ObjectConsExpr)
		one, rest := *object, *object
		one.Items, rest.Items = nil, nil
		for _, pair := range object.Items {
			w := WordOf(pair)
			if w.Verb == fill || w.Verb != other && w.Option != nil && fill.Takes(w.Option) &&
				!other.Takes(w.Option) {
				one.Items = append(one.Items, pair)
			} else {
				rest.Items = append(rest.Items, pair)
			}
		}
		tell(one.Items[0].KeyExpr.Range(),
			fmt.Sprintf("what stands beside %s is read as a step of its own", other.Name))
		if other.Sheets() {
			out = append(out, &rest, &one)
		} else {
			out = append(out, &one, &rest)
		}
	}
	return out
}

// tinApart makes a separate step of a tin beside a verb that takes none, { divide = 9, tin = "long
// tin" }; nil if there is none.
func tinApart(item hclsyntax.Expression, tell func(at hcl.Range, says string),
) (in, tin hclsyntax.Expression) {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	if !ok {
		return nil, nil
	}
	var verb *formula.Verb
	inTin := false
	for _, pair := range object.Items {
		w := WordOf(pair)
		if w.Verb != nil && w.Option == nil {
			verb = w.Verb
		}
		inTin = inTin || w.Verb == nil && w.Option == formula.OptTin
	}
	if !inTin || verb == nil || verb.Takes(formula.OptTin) || verb.PutsOn() {
		return nil, nil
	}
	one, rest := *object, *object
	one.Items, rest.Items = nil, nil
	for _, pair := range object.Items {
		w := WordOf(pair)
		if w.Verb == nil && (w.Option == formula.OptTin || w.Option == formula.OptCount) {
			one.Items = append(one.Items, pair)
		} else {
			rest.Items = append(rest.Items, pair)
		}
	}
	tell(one.Items[0].KeyExpr.Range(),
		fmt.Sprintf("the tin beside %s is read as a step of its own", verb.Name))
	return &rest, &one
}
