// Package values reads the values of a formula that hang on nothing else in it: what it
// makes, its clock, counts of pieces. The formula reader calls it; it knows no verb and
// no ingredient.
package values

import (
	"fmt"
	"math"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/beside"
	"forebake/engine/said/counts"
	"forebake/engine/said/turns"
	"forebake/engine/source"
)

// Given is a quantity that the baker wrote, with its place.
type Given = reading.Given

// Reader reads values of one file.
type Reader struct{ *reading.Reader }

// The kinds of quantity that are read here.
const (
	forTime  = quantity.Kinds(1 << quantity.Time)
	forMass  = quantity.Kinds(1 << quantity.Mass)
	forCount = quantity.Kinds(1 << quantity.Count)
)

// Makes is what the formula is meant to yield: "24 pieces", "2 loaves of 450 g", "1.8 kg".
type Makes struct {
	Place  source.Place
	Pieces float64 // 0 when not given; of a range the low end
	Number Given   // the number of pieces as written, where it is a range
	Each   Given   // shaped and unbaked weight of one piece, g
	Total  Given   // weight of all, g
	Text   string  // as it is read: "28 buns of 85 g" of "28 buns at 85 g"
}

// Makes reads "24 pieces", "2 loaves of 450 g", "1.8 kg".
func (rd Reader) Makes(e hclsyntax.Expression) Makes {
	if n, at, ok := rd.WholeNumber(e); ok {
		return Makes{Place: at, Pieces: n}
	}
	text, at, ok := rd.Text(e, "makes")
	if !ok {
		return Makes{}
	}
	m := Makes{Place: at}
	text = strings.TrimSpace(text)
	if _, isMass := quantity.Read(text, forMass); isMass == nil {
		m.Total, _ = rd.QuantityText(text, at, forMass, "makes")
		return m
	}
	written := text
	text = beside.Made(text)
	n, why := said.Makes(text)
	if head := beside.MadeHead(text); why != "" || n.Each != "" && !isMass(n.Each) {
		if one, none := said.Makes(head); none == "" && (one.Each == "" || isMass(one.Each)) {
			text, n, why = head, one, ""
		}
	}
	m.Text = text
	if why != "" {
		rd.Fault(at, "makes: %s", why)
		return Makes{}
	}
	m.Pieces = n.Lo
	if n.Range != "" {
		m.Number = BareCount(n.Lo, at)
		m.Number.Interval, m.Number.Text = figure.Between(n.Lo, n.Hi), n.Range
	}
	if n.Each != "" {
		inside := at
		if text == written {
			inside.Start = at.End - len(n.Each)
		}
		if m.Each, ok = rd.QuantityText(n.Each, inside, forMass, "makes"); !ok {
			return Makes{}
		}
	}
	return m
}

// isMass reports whether a text is a weight.
func isMass(text string) bool {
	_, fault := quantity.Read(text, forMass)
	return fault == nil
}

// WholeNumber reads a bare whole number.
func (rd Reader) WholeNumber(e hclsyntax.Expression) (float64, source.Place, bool) {
	lit, ok := e.(*hclsyntax.LiteralValueExpr)
	if !ok {
		return 0, source.Place{}, false
	}
	at := rd.Place(lit.SrcRange)
	n, fault := said.Count(string(rd.File.Text[at.Start:at.End]))
	return n, at, fault == ""
}

// Keep reads "3 day".
func (rd Reader) Keep(e hclsyntax.Expression) Given {
	if _, ok := e.(*hclsyntax.TemplateExpr); !ok {
		rd.Fault(rd.Place(e.Range()), "keep must be a time in quotes, such as \"3 day\"")
		return Given{}
	}
	text, at, ok := rd.Text(e, "keep")
	if !ok {
		return Given{}
	}
	if _, fault := quantity.Read(text, forTime); fault != nil {
		rd.Fault(at, "keep must be a time such as \"3 day\", not %q", text)
		return Given{}
	}
	g, _ := rd.QuantityText(text, at, forTime, "keep")
	return g
}

// Clock reads "18:00" as minutes after midnight.
func (rd Reader) Clock(e hclsyntax.Expression) Given {
	if _, ok := e.(*hclsyntax.TemplateExpr); !ok {
		rd.Fault(rd.Place(e.Range()), "start must be a clock time in quotes, such as \"18:00\"")
		return Given{}
	}
	text, at, ok := rd.Text(e, "start")
	if !ok {
		return Given{}
	}
	minutes, ok := said.Clock(text)
	if !ok {
		rd.Fault(at, "start must be a clock time such as \"18:00\", not %q", text)
		return Given{}
	}
	q := quantity.Quantity{Kind: quantity.Time, Interval: figure.Point(minutes),
		Unit: "min"}
	return Given{Quantity: q, Place: at, Set: true}
}

// BareCount is a whole number of pieces, written without quotes.
func BareCount(n float64, at source.Place) Given {
	q := quantity.Quantity{Kind: quantity.Count, Interval: figure.Point(n), Unit: "pieces"}
	return Given{Quantity: q, Place: at, Set: true}
}

// countText reads a whole number of pieces, or a quantity of another kind, in quotes; at is
// where the text stands. faulted is true where the problem is recorded already.
func (rd Reader) countText(e hclsyntax.Expression, kinds quantity.Kinds, what string,
) (g Given, at source.Place, faulted bool) {
	at = rd.Place(e.Range())
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		return Given{}, at, false
	}
	text, inside, ok := rd.Text(e, what)
	if !ok {
		return Given{}, at, true
	}
	if number, ok := said.Times(text); ok {
		n, _ := said.Count(number)
		return BareCount(n, inside), inside, false
	}
	if number, ok := counts.CountIn(text); ok {
		n, _ := said.Count(number)
		one := BareCount(n, inside)
		one.Text = text
		return one, inside, false
	}
	if mass, ok := counts.MassIn(text); ok && kinds.Has(quantity.Mass) {
		text = mass
	}
	if n, bad := said.Count(text); bad == "" && said.Whole(text) {
		return BareCount(n, inside), inside, false // "12" is 12
	}
	q, fault := quantity.Read(text, kinds)
	whole := q.Lo == math.Trunc(q.Lo) && q.Hi == math.Trunc(q.Hi)
	if fault == nil && (q.Kind != quantity.Count || whole) {
		return Given{Quantity: q, Place: inside, Set: true}, inside, false
	}
	return Given{}, inside, false
}

// CountOr reads the own value of a verb that counts or measures: fold = "3 pieces" or
// "2 min".
func (rd Reader) CountOr(e hclsyntax.Expression, kinds quantity.Kinds, what string,
) (Given, bool) {
	if text, at, ok := rd.Literal(e); ok && kinds.Has(quantity.Time) && turns.Is(text) {
		one := BareCount(1, at) // which kind of turn it is changes no figure here
		one.Text = text
		return one, true
	}
	g, at, faulted := rd.countText(e, kinds, what)
	if g.Set || faulted {
		return g, g.Set
	}
	other := "a time such as \"2 min\""
	if kinds.Has(quantity.Mass) {
		other = "a weight such as \"75 g\""
	}
	text, _, _ := rd.Literal(e)
	says := fmt.Sprintf("%s must be a whole number such as 3, or %s", what, other)
	if number, rest, ok := counts.Begins(text); ok {
		says += fmt.Sprintf("; the words behind %s are not read: write %s = %s, note = %q", number,
			strings.ReplaceAll(what, " ", "_"), number, rest)
	}
	rd.FaultUnread(at, text, nil, says)
	return Given{}, false
}

// Count reads a whole number of pieces or tins, written 24 or "24 pieces".
func (rd Reader) Count(e hclsyntax.Expression, what string) *Given {
	if n, at, ok := rd.WholeNumber(e); ok {
		g := BareCount(n, at)
		return &g
	}
	g, at, faulted := rd.countText(e, forCount, what)
	if g.Set {
		return &g
	}
	if !faulted {
		text, _, _ := rd.Literal(e)
		rd.FaultUnread(at, text, nil, what+
			" must be a whole number, such as 24 or \"24 pieces\"")
	}
	return nil
}
