package formula

import (
	"fmt"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
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
	if sum, ok := said.Sum(text); ok && s.Verb.Mixes() {
		s.Time, _ = rd.QuantityText(sum, at, forTime, s.Verb.Name)
		s.Time.Text, s.Note = sum, text
		rd.assumed(at, fmt.Sprintf("%q is read as %s in all", text, sum))
		return true
	}
	if clear := said.Time(text); clear != text {
		if q, fault := quantity.Read(clear, forTime); fault == nil {
			s.Time = Given{Quantity: q, Place: at, Set: true}
			s.Time.Text = text
			return true
		}
		text = clear
	}
	time, rest, ok := said.TimeIn(text)
	if !ok {
		if rd.namesOwn(s, text, at) {
			return true
		}
		if t, ok := said.TempIn(text); ok && s.Verb.Takes(optTo) { // "until thick, 65 C"
			s.To, _ = rd.QuantityText(t, at, forTemperature, s.Verb.Name)
			rd.assumed(at, fmt.Sprintf("%q is read as to = %q", text, t))
			text = strings.Trim(strings.Replace(text, t, "", 1), " ,;()")
			s.sign, s.manner = &sign{text, at}, text
		} else if to := said.Until(text); to != "" && s.Verb.Takes(optTo) {
			s.To, _ = rd.QuantityText(to, at, forTemperature, s.Verb.Name)
			s.To.Text = text
			rd.assumed(at, fmt.Sprintf("%q is read as to = %q", text, to))
			s.sign, s.manner = &sign{text, at}, text
		}
		if s.sign == nil && (said.Sign(text) || said.Manner(text)) {
			s.sign, s.manner = &sign{text, at}, text
		}
		return s.sign != nil
	}
	if _, fault := quantity.Read(text, forTime); fault == nil {
		return false
	}
	s.manner = rest
	s.Time, _ = rd.QuantityText(time, at, forTime, s.Verb.Name)
	s.Time.Text = text
	if s.Note == "" {
		s.Note = rest
	}
	rd.assumed(at, fmt.Sprintf("%q is read as %s", text, time))
	return true
}

// saidArea reads a sheet that is given as length by width, or answers a side that is, and reports
// whether it did.
func (rd *reader) saidArea(s *Step, e hclsyntax.Expression, own bool, what string) bool {
	text, at, ok := rd.literal(e)
	long, short, isArea := said.Area(text)
	switch {
	case ok && !isArea && own && said.NoFigure(text): // { flatten = "by hand" }
		s.OpenOwn, s.Note = true, text
		rd.assumed(at, fmt.Sprintf("%q says no thickness: taken as \"?\"", text))
		return true
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
	if m := said.Pods(text); m != "" && sameName(in.Name, "vanilla") {
		in.sized = "vanilla bean"
		return m
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
	all := strings.TrimSpace(strings.Join(words, " "))
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

// namesOwn reads the ingredients that stand in the place of a time: { dissolve = "the yeast" }.
func (rd *reader) namesOwn(s *Step, text string, at source.Place) bool {
	if !s.Verb.Joins() && !s.Verb.Heats() || s.Verb.Bakes() {
		return false
	}
	var names []string
	for _, in := range s.Part.Ingredients {
		names = append(names, in.Name)
	}
	if _, why := said.Which(text, names); why != "" {
		return false
	}
	rd.withs = append(rd.withs, use{step: s, name: text, place: at})
	s.OpenOwn = true
	rd.assumed(at, fmt.Sprintf("%q says what goes in and no time: taken as \"?\"", text))
	return true
}

// settleManner takes what words beside a time say of the place and the cover, where no option says
// them.
func (rd *reader) settleManner(s *Step) {
	if s.manner == "" {
		return
	}
	for _, p := range Places {
		for _, word := range append([]string{p.Name}, p.Also...) {
			if p.Cold() && s.Where == nil && !s.At.Set && s.Verb.Takes(optAt) &&
				!slices.Contains(s.Open, optAt) && said.Inside(s.manner, word) {
				s.Where = p
				rd.assumed(s.Place, fmt.Sprintf("%q is read as at = %q", s.manner, p.Name))
			}
		}
	}
	if yes, ok := said.Cover(s.manner); ok && s.Covered == nil && s.Verb.Takes(optCovered) &&
		!slices.Contains(s.Open, optCovered) {
		s.Covered = &yes
	}
}

// settleEach multiplies an amount for one piece by the pieces that the part is divided into.
func (rd *reader) settleEach(s *Step) {
	if s.part.Set && s.Uses != nil {
		s.Amount = s.part
		s.Amount.Kind, s.Amount.Unit = quantity.Mass, "g"
		s.Amount.Interval = s.Uses.MassG.Mul(s.part.Interval)
	}
	if !s.each.Set {
		return
	}
	s.Amount = s.each
	n, text := s.Part.piecesAt(s), s.each.Text
	if !n.IsFinite() || !s.each.IsFinite() {
		s.Amount, s.Open = Given{}, append(s.Open, optAmount)
		rd.assumed(s.each.Place, fmt.Sprintf("%q each is taken as \"?\": write a weight such as \"15 g each\", "+
			"and { divide = 12 } with your number", text))
		return
	}
	s.Amount.Interval = s.each.Interval.Mul(n)
	whole := quantity.FormatInterval(s.Amount.Interval, "g")
	s.Amount.Text = whole
	rd.assumed(s.each.Place, fmt.Sprintf("%q each, of %s pieces, is read as %s", text,
		quantity.FormatInterval(n, ""), whole))
}

// piecesAt is the number of pieces that a part is in at a step, by the nearest step that counts
// them, else by what the formula makes; infinite where nothing says it.
func (p *Part) piecesAt(s *Step) Interval {
	n := figure.Positive()
	for _, other := range p.Steps {
		if other.Index > s.Index && n.IsFinite() {
			break
		}
		switch m := other.Measure; {
		case other.Pieces != nil:
			n = other.Pieces.Interval
		case other.Verb.Divides() && m.Set && m.Kind == quantity.Count:
			n = m.Interval
		case other.Verb.Divides() && m.Set && m.Lo > 0 && p.Formula.Makes.Pieces == 0:
			n = p.MassG.Div(m.Interval)
		}
	}
	if m := p.Formula.Makes; !n.IsFinite() && m.Pieces > 0 && m.Number.Text == "" {
		return figure.Point(m.Pieces)
	}
	return n
}
