package formula

import (
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

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

// saidAt reads or answers words in the place of a temperature, and reports whether it did.
func (rd *reader) saidAt(s *Step, text string, at source.Place, what string) bool {
	word := said.Fold(strings.ReplaceAll(text, ".", ""))
	take := func(write, says string) {
		s.At, _ = rd.QuantityText(write, at, forTemperature, what)
		s.At.Text = text
		rd.assumed(at, says)
	}
	if t, ok := said.GasMark(word); ok {
		take(t.Text, t.Says)
		return true
	}
	if write, taken, ok := said.Warmth(word); ok {
		if taken && s.Verb.Waits() {
			take(write, fmt.Sprintf("%q is taken as %s: measure it", text, write))
		} else {
			rd.Fault(at, "%s: %q is no figure; measure it, or write %q", what, text, write)
		}
		return true
	}
	if number, ok := said.Degrees(text); ok {
		rd.Fault(at, "%s: %q does not say of which scale; write \"%s C\", or \"%s F\"", what, text,
			number, number)
		return true
	}
	if degrees, ok := said.Fanned(text); ok && s.Verb.Bakes() {
		if s.Way == nil {
			s.Way = fanOven
		}
		if s.At, ok = rd.QuantityText(degrees, at, forTemperature, what); ok {
			s.At.Text = text
		}
		return true
	}
	from, to, ok := said.Falling(text, s.Verb.Bakes())
	if ok {
		rd.Fault(at, "%s: an oven that falls is a step for each figure, one after the other: write "+
			"{ %s = \"?\", at = %q }, { %s = \"?\", at = %q }, each with its own time", what,
			s.Verb.Name, from, s.Verb.Name, to)
	}
	return ok
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
	long, short, isArea := said.Area(text)
	switch {
	case !ok || !isArea:
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

// saidTemp reads a word for how warm an ingredient goes in, tells what it was taken for, and
// reports whether it is one.
func (rd *reader) saidTemp(in *Ingredient, e hclsyntax.Expression) bool {
	text, at, ok := rd.literal(e)
	write := said.GoingIn(said.Fold(text))
	if !ok || write == "" {
		return false
	}
	in.Temp, _ = rd.QuantityText(write, at, forTemperature, in.Name)
	in.Temp.Text = text
	rd.assumed(at, fmt.Sprintf("%q of %q is taken as %s: measure it", text, in.Name, write))
	return true
}

// saidAmount gives the amount of an ingredient as a text that the quantity reader reads, and tells
// what a word in it was taken for.
func (rd *reader) saidAmount(in *Ingredient, text string, at source.Place) string {
	if sameName(in.Name, "egg") || sameName(in.Name, "eggs") {
		if count, name, says, ok := said.SizedEggs(text, rd.opts.Units); ok {
			in.sized = name
			rd.assumed(at, says)
			return count
		}
	}
	if it, ok := rd.opts.Larder.Find(rd.larderName(in)); ok {
		if t, taken := said.Amount(it, text, rd.opts.Units); taken {
			rd.assumed(at, t.Says)
			return t.Text
		}
	}
	text, says := said.Country(said.Bracketed(text), rd.opts.Units, rd.File.Text)
	rd.assumed(at, says)
	return text
}

// larderName is the name that the larder knows the ingredient by: of an egg, that of its size.
func (rd *reader) larderName(in *Ingredient) string {
	if in.sized != "" {
		return said.EggName(in.sized, rd.opts.Units)
	}
	return said.EggName(in.Name, rd.opts.Units)
}

// bareAmount reads a number without quotes where it can only be a count: "egg" = 2.
func (rd *reader) bareAmount(in *Ingredient, e hclsyntax.Expression) (Given, bool) {
	n, at, ok := rd.wholeNumber(e)
	if !ok || !rd.counted(in.Name) {
		return Given{}, false
	}
	return bareCount(n, at), true
}
