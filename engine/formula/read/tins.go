package read

import (
	"fmt"
	"slices"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/formula/steps"
	"forebake/engine/said"
)

// tinKey is a key of a part that says its tin, by the option's name or another word; nil
// for none.
func tinKey(b *hclsyntax.Body) *hclsyntax.Attribute {
	tin := formula.OptTin.Name
	for _, name := range append([]string{tin}, said.OtherKeys(tin)...) {
		if a := b.Attributes[name]; a != nil {
			return a
		}
	}
	return nil
}

// tinOfPart reads a tin that stands beside the steps as that of the last step that can take
// one before the bake, else of the bake.
func (rd *reader) tinOfPart(p *formula.Part, a *hclsyntax.Attribute) {
	at := rd.Place(a.NameRange)
	var into *formula.Step
	for _, s := range p.Steps {
		switch {
		case s.Tin != "" || slices.Contains(s.Open, formula.OptTin):
			rd.Fault(at, "%s stands beside the steps, and the %s at line %d has a tin: take one "+
				"out", a.Name, s.Verb.Name, s.Place.Line())
			return
		case !s.Verb.Takes(formula.OptTin) || s.Verb.Bakes() && into != nil:
		case s.Verb.EndsBulk():
			into = s
		}
	}
	if into == nil {
		rd.Fault(at, "no step goes into a tin: add { pan = \"in the tin\", tin = %s } to the steps",
			formula.PlacedText(rd.Place(a.Expr.Range())))
		return
	}
	rd.FillStep(into, formula.OptTin, a.Expr)
	rd.Assumed(at, fmt.Sprintf("%s of the %s is read as the tin of its %s", a.Name, p.Kind,
		into.Verb.Name))
}

// pipedOn takes what is piped on a shaped dough, a topping that nothing rolls in, for what
// lies on it.
func (rd *reader) pipedOn(u steps.Use) {
	s := u.Step
	if !s.Verb.Fills() || said.Key(s.Word) != "pipe" || s.Uses.Kind != formula.Topping ||
		slices.ContainsFunc(s.Part.Steps[s.Index+1:], func(next *formula.Step) bool {
			v := next.Verb
			return v.Sheets() || v.Coils() || v.Divides() || v.Form == formula.Shapes
		}) {
		return
	}
	s.Verb = formula.StepNamed("top").Verb
	if s.IsAfterHeat() {
		s.Verb = formula.StepNamed("top").Afterwards
	}
	rd.Assumed(u.Place, fmt.Sprintf("%s = %q is read as %s: it lies on the dough", s.Word, u.Name,
		s.Verb.Name))
}
