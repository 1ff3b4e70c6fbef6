package formula

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/source"
)

// assumed tells what a word was taken for.
func (rd *reader) assumed(at source.Place, says string) {
	if says != "" {
		rd.formula.Said = append(rd.formula.Said, Said{at, says})
	}
}

// literal gives the text of a value in quotes, and its place.
func (rd *reader) literal(e hclsyntax.Expression) (string, source.Place, bool) {
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		return "", source.Place{}, false
	}
	text, inside, ok := source.StringLiteral(e)
	return text, source.Place{File: rd.File, Start: inside.Start, End: inside.End}, ok
}

// saidTime reads words in the place of a time: a sign to wait for, or a time with more said beside
// it. It reports whether they were.
func (rd *reader) saidTime(s *Step, e hclsyntax.Expression) bool {
	text, at, ok := rd.literal(e)
	if !ok {
		return false
	}
	if said.Sign(text) {
		s.sign = &sign{text, at}
		return true
	}
	time, rest, ok := said.TimeIn(text)
	if !ok {
		return false
	}
	if _, fault := quantity.Read(text, forTime); fault == nil {
		return false
	}
	s.Time, _ = rd.QuantityText(time, at, forTime, s.Verb.Name)
	s.Time.Text = text
	s.sign = &sign{rest, at}
	rd.assumed(at, fmt.Sprintf("%q is read as %s", text, time))
	return true
}

// saidArea reads a sheet that is given as length by width, or answers a side that is, and reports
// whether it did.
func (rd *reader) saidArea(s *Step, e hclsyntax.Expression, own bool, what string) bool {
	text, at, ok := rd.literal(e)
	if !ok || quantity.IsPlain(text) {
		return false
	}
	long, short, isArea := said.Area(text)
	switch {
	case !isArea:
		return false
	case !own:
		rd.Fault(at, "%s: one side, the one that is rolled up: write %q, or %q", what, long.Text,
			short.Text)
		return true
	}
	s.OpenOwn = true // the thickness is to be decided
	if s.Wide == nil {
		s.Wide = &Given{Quantity: long, Place: at, Set: true}
		s.Wide.Text = text
	}
	rd.assumed(at, fmt.Sprintf("%q is length by width: the thickness is taken as \"?\", and the "+
		"longer side as the one that is rolled up; write { %s = \"5 mm\", wide = %q } with your "+
		"thickness", text, what, long.String()))
	return true
}

// saidAmount gives the amount of an ingredient as a text that the quantity reader reads, and tells
// what a word in it was taken for.
func (rd *reader) saidAmount(in *Ingredient, text string, at source.Place) string {
	if quantity.IsPlain(text) {
		return text
	}
	if sameName(in.Name, "egg") || sameName(in.Name, "eggs") {
		if count, name, says, ok := said.SizedEggs(text, rd.opts.Units); ok {
			in.sized = name
			rd.assumed(at, says)
			return count
		}
	}
	if it, _, ok := rd.find(in); ok {
		if t, taken := said.Amount(it, text, rd.opts.Units); taken {
			rd.assumed(at, t.Says)
			return t.Text
		}
	}
	text, says := said.Country(said.Bracketed(text), rd.opts.Units, rd.File.Text)
	rd.assumed(at, says)
	return text
}

// find gives what the larder knows of an ingredient's name, with the words of preparation in it.
func (rd *reader) find(in *Ingredient) (*larder.Item, []string, bool) {
	name := in.Name
	if in.sized != "" {
		name = in.sized
	}
	return said.Ingredient(rd.opts.Larder, name, rd.opts.Units)
}

// described takes what a name says of the ingredient beside what it is: how warm it goes in, and
// its form, where no option says them.
func (rd *reader) described(in *Ingredient, words []string) {
	all := strings.Join(words, " ")
	if all == "" {
		return
	}
	if in.Form == "" && !in.isOpen("as") {
		in.Form = said.Form(all)
	}
	if pct := said.Protein(all); pct != "" && in.Protein == nil && in.Item.Flour > 0 && !in.isOpen("protein") {
		if g, ok := rd.QuantityText(pct, in.Place, forPercent, in.Name); ok {
			in.Protein = &g
		}
	}
	if write := said.WarmthIn(all); write != "" && !in.Temp.Set && !in.isOpen("temp") {
		in.Temp, _ = rd.QuantityText(write, in.Place, forTemperature, in.Name)
		rd.assumed(in.Place, fmt.Sprintf("%q is taken to go in at %s: measure it", in.Name, write))
	}
}

// isOpen reports whether an option of the ingredient is "?".
func (in *Ingredient) isOpen(option string) bool {
	return slices.ContainsFunc(in.Open, func(o *IngredientOption) bool { return o.Name == option })
}

// bareAmount reads a number without quotes where it can only be a count: "egg" = 2.
func (rd *reader) bareAmount(in *Ingredient, e hclsyntax.Expression) (Given, bool) {
	n, at, ok := rd.wholeNumber(e)
	if !ok || !rd.counted(in.Name) {
		return Given{}, false
	}
	return bareCount(n, at), true
}
