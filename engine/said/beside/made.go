package beside

import (
	"strconv"
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

const (
	nearly = `(?:about |around |roughly |approx(?:\.|imately)? |some |makes |ca\.? |circa |` +
		`etwa |env\. )`
	ofMass = `\d[\d.,]*(?: \d/\d| ?[½¼¾])? ?(?:kg|g|grams?|gr|oz|lbs?)`
	// andFilled is what goes into each piece besides its dough.
	andFilled = `(?: (?:of )?dough)?,? (?:plus|with|and|\+) (?:about )?` + ofMass +
		` (?:of )?[^\d]*`
	eachWords = `(?:each|apiece|a piece|l'uno|l'una|cad(?:auno|auna|a uno|a una)|ciascun[oa]|` +
		`pièce|chacune?|je|stück|st|cada un[oa]|c/u)`
)

var (
	dozens = spelling.Pattern(`(?i)^` + nearly + `?(half an?|an?|one|two|three|four|five|six|\d+|` +
		`½|1/2) ?dozens?\b ?(.*)$`)
	fromTo  = spelling.Pattern(`^(\d+) ?[-–] ?(\d+) (.*)$`)
	inWords = spelling.Pattern(`(?i)^(?:one|two|three|four|five|six|eight|ten|twelve) (\pL|\d)`)
	massAt  = spelling.Pattern(`(?i)^` + nearly + `?(\d+(?: to \d+)?)((?: [^\d,]+?)??),? ` +
		`(?:scaled (?:at|to) |` +
		`weighing |at |à |da |de |di |von |zu |å |x |` +
		`of )` + nearly + `?(` + ofMass + `)(?: ` + eachWords +
		`)?(?: (?:of )?dough)?(?:,? with [^\d]*|,? \([^\d]*\)|` + andFilled + `)?$`)
	massEach = spelling.Pattern(`(?i)^` + nearly + `?(\d+(?: to \d+)?)((?: [^\d,]+?)?),? \(?` +
		nearly + `?(` + ofMass + `)(?: of)?(?: dough)? ` + eachWords + `\b(?:[^\d]*|` +
		andFilled + `)$`)
)

// forTable is how it is cut and shared, and how wide it is: neither is a number of pieces.
var (
	forTable = spelling.Pattern(`(?i)[,;(]+ ?(?:to )?(?:serv(?:es?|ing|ings)|cut|sliced?|feeds?|` +
		`yields?|enough|for|pour|für) (?:about |in |into |for )*\d[^,;]*$`)
	wideMade = spelling.Pattern(`(?i),? (?:of|at|about|à|von) (?:about )?\d[\d.]*` +
		`(?: ?(?:x|×|by) ?\d[\d.]*)* ?-?(?:cm|mm|in|inch(?:es)?|")(?: (?:long|wide|across|each))?$`)
)

// inTin is the tin that all the pieces stand in, and how.
var inTin = spelling.Pattern(`(?i)^(\d+(?: (?:to )?\d+)?(?: [\pL-]+){0,3}?),? (?:baked )?in ` +
	`(?:an?|one|the|my|our) [^(]*\b(?:tin|pan|springform|dish|mou?ld|tray|ring|form|skillet)\b` +
	`(?:[,;( ].*)?$`)

// dozen are the numbers of dozens in words.
var dozen = map[string]float64{"half a": 0.5, "half an": 0.5, "½": 0.5, "1/2": 0.5, "a": 1, "an": 1,
	"one": 1, "two": 2, "three": 3, "four": 4, "five": 5, "six": 6, "eight": 8,
	"ten": 10, "twelve": 12}

// MadeHead is what a formula makes before a comma, a bracket, a size or
// "for", where no weight stands behind it: "1 tart of 26 cm, 8 parts".
func MadeHead(text string) string {
	head := text
	if i := strings.IndexAny(text, ",(;"); i > 0 && !weighed.MatchString(text[i:]) {
		head = text[:i]
	}
	return strings.TrimSpace(madeSize.ReplaceAllString(head, ""))
}

var (
	weighed  = spelling.Pattern(`(?i)\d ?(?:k?g|dkg|dag|oz|lbs?)\b`)
	madeSize = spelling.Pattern(`(?i) (?:of|à|de|in|,)? ?\d+(?:[.,]\d+)? ?` +
		`(?:cm|mm|inch(?:es)?|in|")(?:\W|$).*$`)
)

// Made writes what a formula makes as the reader of it knows it: "2
// dozen" is "24 pieces", "28 buns at 85 g" is "28 buns of 85 g". Others
// stay.
func Made(text string) string {
	text = strings.TrimSpace(text)
	for _, p := range []*spelling.Words{forTable, wideMade} {
		text = strings.TrimRight(p.ReplaceAllString(text, ""), " ")
	}
	if m := dozens.FindStringSubmatch(text); m != nil {
		n, known := dozen[strings.ToLower(m[1])]
		if !known {
			n, _ = strconv.ParseFloat(m[1], 64)
		}
		rest := strings.TrimPrefix(m[2], "of ")
		if rest == "" || strings.HasPrefix(rest, ",") || strings.HasPrefix(rest, "(") {
			rest = strings.TrimSpace("pieces " + strings.TrimLeft(rest, ", "))
		}
		text = quantity.Plain(12*n) + " " + rest
	}
	if inWords.MatchString(text) {
		word, rest, _ := strings.Cut(text, " ")
		text = quantity.Plain(dozen[strings.ToLower(word)]) + " " + rest
	}
	if m := inTin.FindStringSubmatch(text); m != nil {
		if text = m[1]; !strings.Contains(text, " ") {
			text += " pieces"
		}
	}
	text = fromTo.ReplaceAllString(text, "$1 to $2 $3")
	for _, p := range []func() [][]string{
		func() [][]string { return massEach.FindAllStringSubmatch(text, 1) },
		func() [][]string { return massAt.FindAllStringSubmatch(text, 1) },
	} {
		if m := p(); m != nil {
			unit := strings.TrimSpace(m[0][2])
			if unit == "" {
				unit = "pieces"
			}
			return m[0][1] + " " + unit + " of " + m[0][3]
		}
	}
	return text
}
