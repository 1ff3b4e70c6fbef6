package quantity

import (
	"strconv"
	"unicode/utf8"
)

const (
	textTooLong = "this is too long to be a quantity"
	tooLarge    = "%s is implausibly large; check the number and its unit"
	tooSmall    = "%s is implausibly small; check the number and its unit"
)

var examples = map[Kind]string{
	Mass:        "200 g",
	Volume:      "200 ml",
	Count:       "2 pieces",
	Percent:     "2 %",
	Temperature: "24 C",
	Time:        "90 min",
	Length:      "40 mm",
}

var rangeExamples = map[Kind]string{
	Mass:        "190 to 210 g",
	Volume:      "190 to 210 ml",
	Count:       "2 to 3 pieces",
	Percent:     "2 to 3 %",
	Temperature: "24 to 26 C",
	Time:        "90 min to 2 h",
	Length:      "30 to 40 mm",
}

// quote quotes an excerpt of the user's text, shortened.
func quote(s string) string {
	const most = 40
	if len(s) <= most {
		return strconv.Quote(s)
	}
	cut := most
	for cut > 0 && !utf8.RuneStart(s[cut]) {
		cut--
	}
	return strconv.Quote(s[:cut] + "...")
}
