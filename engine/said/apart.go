package said

import (
	"fmt"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/spelling"
)

var (
	// purposes are what a line of a dough's list can be for that is not the dough.
	purposes = spelling.Pattern(`(?i)^(.*?)[ ,;(]*\b(?:to|for)(?: the| your| a)?(?: final| egg|` +
		` light)? (?:glaz(?:e|ing)|wash(?:ing)?|brush(?:ing)?|dust(?:ing)?|` +
		`flour(?:ing)? the (?:bench|surface)|roll(?:ing)?|serv(?:e|ing)|decorat(?:e|ing|ion)|` +
		`sprinkl(?:e|ing)|finish(?:ing)?|greas(?:e|ing)|oil(?:ing)? the (?:tin|pan|bowl)|lin(?:e|` +
		`ing)|coat(?:ing)?|toss(?:ing)?|topping|garnish(?:ing)?|drizzl(?:e|ing)|frying|` +
		`deep[- ]?frying|(?:loaf |baking |cake )?(?:tins?|pans?|moulds?|molds?|trays?|bowl|bench|` +
		`counter|board|(?:work ?|work )?surface|worktop|top|hands))\b(.*)$`)
	// forDough are the words that give the line, or a share of it, to the dough after all.
	forDough = spelling.Pattern(`(?i)\+|&|.[ ,;(](?:extra|some|more|a little|a bit|additional)\b|` +
		`\b(?:plus|and|roll(?:ing|ed)?[- ]in|dough|top up)\b`)
)

// Apart reads a name or an amount that says what it is for and that this is not the dough,
// "egg, to glaze": what stands before. A line that is for the dough too is none.
func Apart(text string) (head string, ok bool) {
	if !mayHold(text, "to ", "for ") {
		return "", false
	}
	m := purposes.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || forDough.MatchString(text) {
		return "", false
	}
	return strings.TrimRight(strings.TrimSpace(m[1]), " ,;("), true
}

// Common practice, no source: what a wash or a coat of fat on the outside weighs, % of what
// it is put on.
const WashLeastPct, WashMostPct = 1, 6

// Thin reports whether an item is put on in a thin coat where no amount is written: egg,
// milk, cream, melted fat.
func Thin(it *larder.Item) bool {
	return it.Class == larder.ClassEgg && it.Water > 40 || it.Class == larder.ClassFat ||
		it.Class == larder.ClassDairy && flows(it)
}

var metric = spelling.Pattern(`\d ?(?:g|ml)\b`)

// IsSizedEgg reports whether words name an egg's size.
func IsSizedEgg(name string) bool {
	return mayHold(name, "egg") && mayHold(name, "large", "medium", "small") &&
		sizes.MatchString(strings.ToLower(name))
}

// EggSays tells which country's egg a size was taken for, where the kitchen does not say;
// "" for a size that they do not share.
func EggSays(name, units string) string {
	size := sizes.FindString(strings.ToLower(name))
	us, eu := map[string]string{"large": "50 g", "medium": "44 g"}[size],
		map[string]string{"large": "60 g", "medium": "51 g"}[size]
	letter := strings.ToUpper(size[:1])
	switch {
	case us == "" || ownCountry.MatchString(name):
		return ""
	case units == "uk":
		return fmt.Sprintf("a %s egg is taken as one of the UK and the EU, size %s, %s, by the "+
			"other words here; units = \"us\" in the kitchen block makes it the US one of %s", size,
			letter, eu, us)
	}
	return fmt.Sprintf("a %s egg is taken as the US one of %s; one of the EU or the UK is "+
		"\"size %s egg\", %s", size, us, letter, eu)
}

var ownCountry = spelling.Pattern(`(?i)\b(?:us|uk|eu)\b`)

// EggCountry tells whose egg sizes a formula counts a name in, by the words of its
// file: "uk", or "" where they do not tell. A medium one is the US one only in a text
// of US measures.
func EggCountry(file []byte) func(name string) string {
	if usSigns.Match(file) {
		return func(string) string { return "" }
	}
	uk, isMetric := ukSigns.Match(file), metric.Match(file)
	return func(name string) string {
		if uk || isMetric && strings.Contains(strings.ToLower(name), "medium") {
			return "uk"
		}
		return ""
	}
}

// classes are words for several ingredients of a part.
var classes = map[string]larder.Class{"fruit": larder.ClassFruit, "fruits": larder.ClassFruit,
	"dried fruit": larder.ClassFruit, "nuts": larder.ClassNut}

// ClassOf finds the class that words mean: "the dried fruit".
func ClassOf(text string) (larder.Class, bool) {
	text = strings.ToLower(strings.TrimSpace(text))
	c, ok := classes[strings.TrimSpace(strings.TrimPrefix(text, "the "))]
	return c, ok
}
