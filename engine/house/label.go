package house

import (
	"fmt"
	"maps"
	"math"
	"slices"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/figure"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// label reads the figures of a house's ingredient. Each may be a
// range or "?": then the item holds what it may be, with one figure
// each (larder.Item.Readings).
type label struct {
	reader *reading.Reader
	attr   hclsyntax.Attributes
	name   string
	at     source.Place // of the name
	before larder.Item  // that of like, or an empty one

	values  map[string]float64 // of the keys that are written; of a range the middle
	spanned []spanned
}

// spanned is a figure of the label that is a range or "?".
type spanned struct {
	key     string
	figures []float64 // what it may be, the ends among them
	open    bool
}

// percents are the keys in % of the mass.
var percents = []string{"water", "protein", "fat", "sugar", "salt", "alcohol", "flour",
	"carbohydrate"}

// What may stand for "?" (judgement: from the least to the most that a
// food has).
var (
	anyPercent = []float64{0, 5, 15, 35, 65, 100}
	anyDensity = []float64{0.1, 0.5, 1, 1.5}
	anyPiece   = []float64{0.1, 5, 50, 500}
	anyPrice   = []float64{0, 1, 10, 1000}
)

// read reads every figure of the label.
func (l *label) read() {
	l.values = map[string]float64{}
	for _, key := range percents {
		l.span(key, anyPercent, func(e hclsyntax.Expression) (figure.Interval, bool) {
			g, ok := l.reader.Quantity(e, quantity.Of(quantity.Percent)|quantity.AllowZero, key)
			if ok && g.Hi > 100 {
				l.reader.Fault(g.Place, "%s: a figure between 0 and 100 %%", key)
				return g.Interval, false
			}
			return g.Interval, ok
		})
	}
	l.span("density", anyDensity, func(e hclsyntax.Expression) (figure.Interval, bool) {
		text, at, ok := l.reader.Text(e, "density")
		if !ok {
			return figure.Interval{}, false
		}
		x, good := perUnit(text, "g/ml")
		if !good || x.Lo <= 0.05 || x.Hi >= 3 {
			l.reader.Fault(at, "density: write grams per millilitre: \"0.95 g/ml\"")
		}
		return x, good
	})
	l.span("piece", anyPiece, func(e hclsyntax.Expression) (figure.Interval, bool) {
		g, ok := l.reader.Quantity(e, quantity.Of(quantity.Mass), "piece")
		return g.Interval, ok
	})
	l.span("price", anyPrice, func(e hclsyntax.Expression) (figure.Interval, bool) {
		text, at, ok := l.reader.Text(e, "price")
		if !ok {
			return figure.Interval{}, false
		}
		if x, good := perUnit(text, "per kg"); good {
			return x, true
		}
		piece, has := l.values["piece"]
		if !has {
			piece = l.before.Piece
		}
		if x, good := perUnit(text, "per piece"); good && piece > 0 {
			return x.Scale(1000 / piece), true
		}
		l.reader.Fault(at, "price: write it per weight: \"9.20 per kg\"")
		return figure.Interval{}, false
	})
}

// span reads one figure, a range of it, or "?".
func (l *label) span(key string, anything []float64,
	read func(hclsyntax.Expression) (figure.Interval, bool)) {
	a := l.attr[key]
	if a == nil {
		return
	}
	if l.reader.IsOpen(a.Expr) {
		l.spanned = append(l.spanned, spanned{key, anything, true})
		return
	}
	iv, ok := read(a.Expr)
	switch {
	case !ok:
	case iv.IsPoint():
		l.values[key] = iv.Lo
	default:
		l.values[key] = (iv.Lo + iv.Hi) / 2
		l.spanned = append(l.spanned, spanned{key, []float64{iv.Lo, iv.Hi}, false})
	}
}

// compose makes the item of the figures that a label gives; fault says
// what is wrong with them.
func (l *label) compose(values map[string]float64) (item larder.Item, fault string) {
	item = l.before
	set := func(key string, to *float64) {
		if x, has := values[key]; has {
			*to = x
		}
	}
	set("water", &item.Water)
	set("protein", &item.Protein)
	set("fat", &item.Fat)
	set("sugar", &item.Sugars)
	set("salt", &item.Salt)
	set("alcohol", &item.Alcohol)
	if x, has := values["flour"]; has {
		item.Flour = x / 100
	}
	item.Ash += item.Salt - l.before.Salt
	if x, has := values["carbohydrate"]; has {
		item.Carbohydrate = x
	} else {
		// The sum stays 100 g: carbohydrate by difference takes the
		// change first, then water.
		rest := 100 - (item.Water + item.Protein + item.Fat + item.Ash + item.Alcohol)
		item.Carbohydrate = max(0, rest)
		if _, has := values["water"]; rest < 0 && !has {
			item.Water = max(0, item.Water+rest)
		}
	}
	if item.Sugars != l.before.Sugars {
		scaleSugars(&item, l.before)
	}
	sum := item.Water + item.Protein + item.Fat + item.Carbohydrate + item.Ash + item.Alcohol
	if sum > 102 {
		fault = fmt.Sprintf("ingredient %q adds up to %s of 100 g: check its figures", l.name,
			quantity.Format(sum, "g"))
	} else if item.Sugars > item.Carbohydrate+2 {
		fault = fmt.Sprintf(
			"ingredient %q has more sugar (%s) than carbohydrate (%s): check its figures",
			l.name, quantity.Format(item.Sugars, "%"), quantity.Format(item.Carbohydrate, "%"))
	}
	set("density", &item.Density)
	set("piece", &item.Piece)
	if x, has := values["price"]; has {
		item.Price = larder.Price{PerKg: x, Known: true}
	}
	return item, fault
}

// item gives the ingredient, with what it may be where figures are
// ranges or "?".
func (l *label) item() larder.Item {
	l.read()
	item, fault := l.compose(l.values)
	item.Readings = nil
	for _, base := range l.before.Readings { // like is a house's own, and has ranges itself
		other := *l
		other.before = *base
		if one, wrong := other.compose(l.values); wrong == "" {
			one.Name = l.name
			item.Readings = append(item.Readings, &one)
		}
	}
	var open []string
	for _, s := range l.spanned {
		if s.open {
			open = append(open, s.key)
		}
		span := figure.Between(s.figures[0], s.figures[len(s.figures)-1])
		switch s.key {
		case "density":
			item.PerMl = span
			item.Density = (span.Lo + span.Hi) / 2
		case "piece":
			item.PerPiece = span
			item.Piece = (span.Lo + span.Hi) / 2
		case "flour":
			item.FlourSpan = span.Scale(0.01)
		}
	}
	if len(open) > 0 {
		item.Open = strings.Join(open, " and ") + " of the house's " + l.name
	}
	for _, values := range l.readings() {
		// What cannot be is no reading: figures that add up to more
		// than the whole.
		if one, wrong := l.compose(values); wrong == "" {
			one.Name = l.name
			one.PerMl, one.PerPiece, one.FlourSpan = item.PerMl, item.PerPiece, item.FlourSpan
			item.Readings = append(item.Readings, &one)
		}
	}
	if fault != "" && len(item.Readings) == 0 {
		l.reader.Fault(l.at, "%s", fault)
	}
	return item
}

// copyReadings gives the readings of an item what is no figure.
func copyReadings(item *larder.Item) {
	for _, one := range item.Readings {
		one.Aliases, one.Source, one.Basis = item.Aliases, item.Source, item.Basis
		one.US, one.EU, one.Undeclared = item.US, item.EU, item.Undeclared
	}
}

// edges gives the ends of what an open figure can be beside the others:
// the whole is 100 g.
func (l *label) edges(s spanned) []float64 {
	if !s.open {
		return nil
	}
	values := maps.Clone(l.values)
	fits := func(x float64) bool {
		values[s.key] = x
		_, fault := l.compose(values)
		return fault == ""
	}
	var out []float64
	for i, to := range s.figures[1:] {
		in, beyond := s.figures[i], to
		if fits(in) == fits(beyond) {
			continue
		}
		if !fits(in) {
			in, beyond = beyond, in
		}
		for range 30 { // halves: a millionth of a percent
			if half := (in + beyond) / 2; fits(half) {
				in = half
			} else {
				beyond = half
			}
		}
		out = append(out, in)
	}
	return out
}

// readings lists the figures with each spanned one at each of its
// values, and all of them at their least and at their most.
func (l *label) readings() []map[string]float64 {
	var out []map[string]float64
	put := func(pick func(s spanned) float64) {
		values := maps.Clone(l.values)
		for _, s := range l.spanned {
			if x := pick(s); !math.IsNaN(x) {
				values[s.key] = x
			}
		}
		out = append(out, values)
	}
	for _, s := range l.spanned {
		for _, x := range slices.Concat(s.figures, l.edges(s)) {
			put(func(other spanned) float64 {
				if other.key == s.key {
					return x
				}
				return math.NaN()
			})
		}
	}
	if len(l.spanned) > 1 {
		put(func(s spanned) float64 { return s.figures[0] })
		put(func(s spanned) float64 { return s.figures[len(s.figures)-1] })
	}
	return out
}
