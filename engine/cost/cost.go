// Package cost adds up what a formula's ingredients cost, and lists
// them as a label does.
//
// It counts what goes into the dough or onto it: of a part taken in by
// weight, only that share. Package engine calls it.
package cost

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/makeup"
	"forebake/engine/quantity"
)

// used is one ingredient of all parts together.
type used struct {
	item  *larder.Item
	name  string // as the baker first wrote it
	grams figure.Interval
}

// usedIn adds up a formula's ingredients, heaviest first, open
// ones last.
func usedIn(s *facts.Sheet) []used {
	var out []used
	shares := sharesOf(s)
	for _, p := range s.Formula.Parts {
		for _, in := range p.Ingredients {
			if in.Item == nil {
				continue
			}
			g := s.Amount(in).Mul(shares[p.Serial])
			i := slices.IndexFunc(out, func(u used) bool { return u.item == in.Item })
			if i < 0 {
				out = append(out, used{in.Item, in.Name, g})
				continue
			}
			out[i].grams = out[i].grams.Add(g)
		}
	}
	slices.SortStableFunc(out, func(a, b used) int {
		switch x, y := a.grams.Mid(), b.grams.Mid(); {
		case a.grams.IsFinite() != b.grams.IsFinite():
			if a.grams.IsFinite() {
				return -1
			}
			return 1
		case x > y:
			return -1
		case x < y:
			return 1
		}
		return 0
	})
	return out
}

// sharesOf is the share used of each part, by serial: all of one that
// no other takes in, else what the others take.
func sharesOf(s *facts.Sheet) []figure.Interval {
	f := s.Formula
	out := make([]figure.Interval, len(f.Parts))
	// Order has each part after those that go into it, so backwards
	// takers come first.
	for i := len(f.Order) - 1; i >= 0; i-- {
		p := f.Order[i]
		share, taken := figure.Interval{}, false
		for _, q := range f.Parts {
			for _, in := range q.Ingredients {
				if in.Of != p {
					continue
				}
				taken = true
				one := figure.Point(1)
				if !in.Amount.All {
					one = s.Amount(in).Div(s.Part(p).Grams(makeup.Mass))
				}
				share = share.Add(one.Mul(out[q.Serial]))
			}
		}
		if !taken {
			share = figure.Point(1)
		}
		out[p.Serial] = figure.Between(max(0, min(1, share.Lo)), max(0, min(1, share.Hi)))
	}
	return out
}

// Of works out what a formula costs, and its labels.
func Of(s *facts.Sheet) finding.Costing {
	f := s.Formula
	out := finding.Costing{Formula: f.Name, File: f.Place.File.Name, Line: f.Place.Line(),
		Whole: true}
	list := usedIn(s)
	sum, priced := figure.Interval{}, 0
	for _, u := range list {
		row := finding.CostRow{Name: u.name, Weight: quantity.FormatInterval(u.grams, "g"),
			Grams: ends(u.grams)}
		switch p := u.item.Price; {
		case p.Known:
			cost := u.grams.Scale(p.PerKg / 1000)
			row.Price = quantity.Format(p.PerKg, "money") + " per kg"
			row.Cost = quantity.FormatInterval(cost, "money")
			sum = sum.Add(cost)
			priced++
		case isWater(u.item):
			row.Price, row.Cost = "free", quantity.Format(0, "money")
		default:
			out.Unpriced = append(out.Unpriced, u.name)
			out.Whole = false
		}
		out.Rows = append(out.Rows, row)
	}
	if priced > 0 {
		e := ends(sum)
		out.Sum = &e
		if n := s.Pieces(); !n.Absent && n.Lo > 0 {
			each := ends(sum.Div(n.Interval()))
			out.PerPiece, out.Pieces = &each, quantity.FormatInterval(n.Interval(), "pieces")
		}
	}
	out.Notes = notes(s, list)
	for _, law := range lawsOf(s.Kitchen.Code) {
		out.Labels = append(out.Labels, law.label(s, list))
	}
	return out
}

func ends(iv figure.Interval) finding.Ends {
	return finding.Ends{Low: iv.Lo, Mid: iv.Mid(), High: iv.Hi}
}

// notes says what the sum leaves out or counts whole.
func notes(s *facts.Sheet, list []used) []string {
	var out []string
	var open []string
	for _, u := range list {
		if !u.grams.IsFinite() {
			open = append(open, u.name)
		}
	}
	if len(open) > 0 {
		out = append(out, "No weight is written of "+strings.Join(open, ", ")+
			": the cost has no upper end, and the place in the list is not known.")
	}
	if isFried(s.Formula) {
		out = append(out, "The fat that it fries in is not counted.")
	}
	for i, share := range sharesOf(s) {
		if p := s.Formula.Parts[i]; share.Hi < 1 {
			out = append(out, fmt.Sprintf("Of %s %q %s %% go in; the rest is not counted.", p.Kind,
				p.Name, quantity.FormatInterval(share.Scale(100), "")))
		}
	}
	for _, p := range s.Formula.Parts {
		switch p.Kind {
		case formula.Wash, formula.Topping, formula.Syrup:
			if len(s.Part(p).TakenBy()) == 0 {
				out = append(out, fmt.Sprintf("All of %s %q counts, though some may be left over.",
					p.Kind, p.Name))
			}
		}
	}
	return out
}
