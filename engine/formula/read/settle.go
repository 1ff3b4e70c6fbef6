package read

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/spelling"
)

// usual takes for what is put on in a thin coat, and of which no amount is written, the
// usual share of what it is put on, as far as its grams are known. It gives the words that
// tell so.
func (rd *reader) usual(in *formula.Ingredient, s *formula.Step) string {
	grams := formula.Interval{}
	for _, other := range s.Part.Ingredients {
		a := other.Amount
		switch {
		case !a.Set || other.Apart:
		case a.Kind == quantity.Mass:
			grams = grams.Add(a.Interval)
		case a.Kind == quantity.Volume && other.Item != nil:
			grams = grams.Add(a.Interval.Scale(other.Item.Density))
		case a.Kind == quantity.Count && other.Item != nil:
			grams = grams.Add(a.Interval.Scale(other.Item.Piece))
		}
	}
	if in.Item == nil || !in.Amount.Open || s.Verb.Fills() || !said.Thin(in.Item) ||
		grams.Hi == 0 ||
		!grams.IsFinite() {
		return ""
	}
	in.Usual = formula.Interval{
		Lo: said.WashLeastPct * grams.Lo / 100,
		Hi: said.WashMostPct * grams.Hi / 100,
	}
	return fmt.Sprintf(", %s of it, %d to %d %% of what it is put on (common practice)",
		quantity.FormatInterval(in.Usual, "g"), said.WashLeastPct, said.WashMostPct)
}

// takeApart gives what stands apart in the list of the part that a step puts something on,
// of the same kind as a thing, and takes it out of there; nil for none.
func (rd *reader) takeApart(s *formula.Step, it *larder.Item) *formula.Ingredient {
	for i, in := range s.Part.Ingredients {
		if in.Apart && in.Item != nil && (in.Item == it ||
			in.Item.Class == it.Class && said.Thin(it) &&
				it.Class != larder.ClassFat && said.Thin(in.Item)) {
			s.Part.Ingredients = slices.Delete(s.Part.Ingredients, i, i+1)
			in.Apart = false
			return in
		}
	}
	return nil
}

// laterIn are words that name a share of an ingredient: the rest of it goes in before.
var laterIn = spelling.Pattern(`(?i)\b(?:half|some|most|rest|remain\w*|part|more|extra|other)\b`)

// leaveForLater takes what a later mix names, { add = "butter" }, out of the mix that
// begins the part and names nothing, and tells so. Of what is held back the reserve counts.
func (rd *reader) leaveForLater(p *formula.Part) {
	first := slices.IndexFunc(p.Steps, func(s *formula.Step) bool { return s.Verb.Mixes() })
	if first < 0 || len(p.Steps[first].With) > 0 || !p.Kind.IsDough() {
		return
	}
	later := map[*formula.Ingredient]bool{}
	for _, u := range rd.Withs {
		if s := u.Step; s.Part == p && s.Verb.Mixes() && s.Index > first &&
			!laterIn.MatchString(u.Name) &&
			len(s.With) < len(p.Mixed()) {
			for _, in := range s.With {
				later[in] = in.Reserve == nil
			}
		}
	}
	var names []string
	for _, in := range p.Mixed() {
		if later[in] {
			names = append(names, in.Name)
		}
	}
	if len(names) == 0 || len(names) == len(p.Mixed()) {
		return
	}
	s := p.Steps[first]
	s.With = slices.DeleteFunc(slices.Clone(p.Mixed()),
		func(in *formula.Ingredient) bool { return later[in] })
	rd.Assumed(s.Place, fmt.Sprintf("this %s is read without %s: a later step adds it", s.Verb.Name,
		strings.Join(names, " and ")))
}

// settleEach multiplies an amount for one piece by the pieces that the part is
// divided into.
func (rd *reader) settleEach(s *formula.Step) {
	if s.Portion.Set && s.Uses != nil {
		s.Amount = s.Portion
		s.Amount.Kind, s.Amount.Unit = quantity.Mass, "g"
		s.Amount.Interval = s.Uses.MassG.Mul(s.Portion.Interval)
	}
	if !s.PerPiece.Set {
		return
	}
	s.Amount = s.PerPiece
	n, text := s.Part.PiecesAt(s), s.PerPiece.Text
	if !s.PerPiece.IsFinite() {
		s.PerPiece.Interval = rd.spooned(s.Uses, text)
		if one := s.PerPiece.Interval.Mul(n); n.IsFinite() && one.Lo > s.Uses.MassG.Hi {
			s.Amount = formula.Given{} // spoons differ
			rd.Assumed(s.PerPiece.Place, fmt.Sprintf("%q each would be more than all of %q: "+
				"all of it is read as going on", text, s.Uses.Name))
			return
		}
	}
	if !n.IsFinite() || !s.PerPiece.IsFinite() {
		s.Amount, s.Open = formula.Given{}, append(s.Open, formula.OptAmount)
		rd.Assumed(s.PerPiece.Place, fmt.Sprintf("%q each is taken as \"?\": write a weight such "+
			"as "+
			"\"15 g each\", and { divide = 12 } with your number", text))
		return
	}
	s.Amount.Interval = s.PerPiece.Interval.Mul(n)
	whole := quantity.FormatInterval(s.Amount.Interval, "g")
	s.Amount.Text = whole
	rd.Assumed(s.PerPiece.Place, fmt.Sprintf("%q each, of %s pieces, is read as %s", text,
		quantity.FormatInterval(n, ""), whole))
}

// spooned weighs a spoon of a part that is one ingredient, g; of others it is open.
func (rd *reader) spooned(p *formula.Part, text string) formula.Interval {
	q, fault := quantity.Read(strings.TrimPrefix(text, "about "), quantity.Of(quantity.Volume))
	if fault != nil || p == nil || len(p.Ingredients) != 1 || p.Ingredients[0].Item == nil {
		return figure.Positive()
	}
	it := p.Ingredients[0].Item
	switch span := it.PerMl; {
	case span != (formula.Interval{}):
		return q.Interval.Mul(span)
	case it.Density > 0:
		return q.Interval.Scale(it.Density)
	}
	return figure.Positive()
}

// tellMakes tells what a formula makes where other words say it: "2 dozen" is 24 pieces.
func (rd *reader) tellMakes(m formula.Makes) {
	if m.Text == "" {
		return
	}
	if text := strings.TrimSpace(formula.PlacedText(m.Place)); text != m.Text {
		rd.Assumed(m.Place, fmt.Sprintf("makes = %q is read as %q", text, m.Text))
	}
}

// flourOfMakes turns the percent of a part's flours into the grams that makes comes to,
// where they are all in percent and add up to 100, as bakers write them. It reports whether
// it did.
func (rd *reader) flourOfMakes(p *formula.Part) bool {
	m, flours, rest := rd.Formula.Makes, formula.Mass{}, formula.Mass{}
	total := m.Total.Interval
	if m.Each.Set && !m.Number.Set {
		total = m.Each.Interval.Scale(m.Pieces)
	}
	for _, other := range rd.Formula.Parts {
		if other.Kind == formula.Dough && other != p || total.Lo <= 0 {
			return false // whose weight makes tells is not said
		}
	}
	for _, in := range p.Ingredients {
		rest = rest.Add(in.Grams)
		if share := in.FlourIn(); share != (formula.Interval{}) {
			flours = flours.Add(in.Grams.Times(share))
			if in.Of != nil || in.Amount.Kind != quantity.Percent {
				return false
			}
		}
	}
	if flours.PerFlour.Lo < 0.999 || flours.PerFlour.Hi > 1.001 || !rest.FixedG.IsFinite() {
		return false
	}
	p.FlourG = total.Sub(rest.FixedG).Div(rest.PerFlour)
	if p.FlourG.Lo <= 0 {
		return false
	}
	for _, in := range p.Ingredients {
		if in.FlourIn() != (formula.Interval{}) {
			pct := in.Amount.Text
			in.Amount.Interval = in.Grams.Grams(p.FlourG)
			in.Amount.Kind, in.Amount.Unit = quantity.Mass, quantity.Mass.Base()
			in.Grams = formula.Mass{FixedG: in.Amount.Interval}
			rd.Assumed(in.Amount.Place, fmt.Sprintf("%s of %s is reckoned from makes, "+
				"as the weight of the dough: %s = \"%s\"", pct, in.Quoted(), in.Quoted(),
				quantity.FormatInterval(in.Amount.Interval, "g")))
		}
	}
	return true
}
