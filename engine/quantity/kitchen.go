package quantity

import (
	"strings"

	"forebake/engine/figure"
	"forebake/engine/spelling"
)

// kitchenWord is a kitchen's measure that is no fixed unit.
type kitchenWord struct {
	kind    Kind
	means   string
	choices []measureOf
}

// measureOf is what one can stand for: lo to hi of a unit.
type measureOf struct {
	lo, hi float64
	unit   string
}

// Overnight is the length of a night, min: 8 to 14 h. Trade usage,
// a judgement.
var Overnight = figure.Interval{Lo: 8 * 60, Hi: 14 * 60}

// night reads "overnight" where a time may stand.
func night(text string, allowed Kinds) (Quantity, bool) {
	word := strings.TrimSpace(text)
	if !allowed.Has(Time) || !strings.EqualFold(word, "overnight") &&
		!strings.EqualFold(word, "over night") {
		return Quantity{}, false
	}
	return Quantity{Kind: Time, Interval: Overnight, Unit: "h", Text: text}, true
}

// heaps are words before a spoon or a cup: how many level ones it
// holds. Kitchen practice, no source.
var heaps = map[string]struct{ lo, hi float64 }{
	"heaped": {1.25, 2}, "heaping": {1.25, 2}, "rounded": {1.1, 1.4}, "scant": {0.85, 0.95},
	"generous": {1.05, 1.3},
}

// kitchenWords holds them by their singular. Sources: a stick of butter
// is 4 oz (table of the USDA, SR 28 NDB 01001, read); pinch 1/24 to 1/4
// tsp and dash 1/8 tsp (measuring-spoon pages, read), the bounds a
// judgement; dry yeast 7 g a sachet (German and US pages, read), baking
// powder 11 g in France, 15 to 16 g in Germany and Italy (memory); a
// cube of fresh yeast 42 g in Germany (read), 25 g in Italy (memory),
// 50 g in Sweden (read).
var kitchenWords = map[string]kitchenWord{
	"stick": {Mass, "is 4 oz of butter in the US, and no unit", []measureOf{{4, 4, "oz"}}},
	"pinch": {Mass, "is no fixed measure: weigh it",
		[]measureOf{{0.1, 1, "g"}}},
	"pinche": {Mass, "is no fixed measure: weigh it", []measureOf{{0.1, 1, "g"}}},
	"dash":   {Volume, "is no fixed measure: weigh it", []measureOf{{0.3, 1.5, "ml"}}},
	"dashe":  {Volume, "is no fixed measure: weigh it", []measureOf{{0.3, 1.5, "ml"}}},
	"sachet": {Mass, sachetMeans, nil}, "packet": {Mass, sachetMeans, nil},
	"envelope": {Mass, sachetMeans, nil},
	"cube": {Mass, "of fresh yeast is 42 g in Germany, 25 g in Italy, 50 g in Sweden",
		[]measureOf{{42, 42, "g"}, {25, 25, "g"}, {50, 50, "g"}}},
	"würfel":  {Mass, "of fresh yeast is 42 g in Germany", []measureOf{{42, 42, "g"}}},
	"pint":    {Volume, "differs by a fifth between the US and the UK", usOrUK("pint")},
	"quart":   {Volume, "differs by a fifth between the US and the UK", usOrUK("quart")},
	"gallon":  {Volume, "differs by a fifth between the US and the UK", usOrUK("gallon")},
	"knob":    {Mass, "is no fixed measure: weigh it", nil},
	"handful": {Mass, "is no fixed measure, some 30 to 50 g: weigh it", []measureOf{{30, 50, "g"}}},
	"glass": {Volume, "is 100 to 250 ml by the country: measure it",
		[]measureOf{{100, 250, "ml"}}},
	"glasse": {Volume, "is 100 to 250 ml by the country: measure it",
		[]measureOf{{100, 250, "ml"}}},
	"leaf":  {Mass, "of gelatin is 1.7 to 5 g by its grade: weigh it", []measureOf{{1.7, 5, "g"}}},
	"leave": {Mass, "of gelatin is 1.7 to 5 g by its grade: weigh it", []measureOf{{1.7, 5, "g"}}},
	"can":   {Mass, "is a pack: its label says the weight", nil},
	"tin":   {Mass, "is a pack: its label says the weight", nil},
	"jar":   {Mass, "is a pack: its label says the weight", nil},
	"t": {Volume, "is a tablespoon as T and a teaspoon as t: say which",
		[]measureOf{{1, 1, "tbsp"}, {1, 1, "tsp"}}},
	"c": {Volume, "is a cup here", []measureOf{{1, 1, "cup"}}},
	"cc": {Volume, "is a teaspoon in French, and a millilitre in English: say which",
		[]measureOf{{1, 1, "tsp"}, {1, 1, "ml"}}},
	"large": {Count, "is a size: of an egg name it, \"large egg\" or \"size L egg\"; weigh others",
		[]measureOf{{1, 1, "pieces"}}},
	"medium": {Count, "is a size: of an egg name it, \"medium egg\" or \"size M egg\"; " +
		"weigh others",
		[]measureOf{{1, 1, "pieces"}}},
}

const sachetMeans = "is a pack: read the label for its weight"

// countryUnit finds measures with one name in the US and the UK.
var countryUnit = spelling.Pattern(`(?i)(^|[\d\s½¼¾⅓⅔⅛])(pints?|quarts?|gallons?|fl\.? ?oz\.?|` +
	`fluid ounces?)\b`)

var saidCountry = spelling.Pattern(`(?i)\b(us|uk|imperial)\b`)

// OfCountry says whose pints, quarts, gallons and fluid ounces they
// are, by the kitchen's measures: "us" or "uk". For any other kitchen
// the text stays.
func OfCountry(text, units string) string {
	if units != "us" && units != "uk" || !countryUnit.MatchString(text) ||
		saidCountry.MatchString(text) {
		return text
	}
	return countryUnit.ReplaceAllStringFunc(text, func(s string) string {
		m := countryUnit.FindStringSubmatch(s)
		if strings.HasPrefix(strings.ToLower(m[2]), "f") && units == "us" {
			return s // the unit of that name is the US one
		}
		return m[1] + " " + units + " " + m[2]
	})
}

func usOrUK(name string) []measureOf {
	return []measureOf{{1, 1, "US " + name}, {1, 1, "UK " + name}}
}

// Heaped gives the level spoons or cups that one holds that is not
// level: "1.25 to 2 tsp".
func Heaped(number, word, unit string) (string, bool) {
	h, ok := heaps[strings.ToLower(word)]
	n, fault := Read(strings.TrimSpace(number)+" "+strings.TrimSpace(unit), Of(Volume))
	if !ok || fault != nil || !n.IsPoint() {
		return "", false
	}
	x, _ := FromBase(n.Lo, n.Unit)
	return Plain(round(x*h.lo)) + " to " + Plain(round(x*h.hi)) + " " + n.Unit, true
}
