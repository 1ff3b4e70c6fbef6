package quantity

import (
	"math"
	"strconv"
	"strings"

	"forebake/engine/spelling"
)

// celsius finds temperatures in messages: "74 C", "about 53 to 56 C".
// One in quotes is a line to paste, one behind a word for a difference
// is none.
var celsius = spelling.Pattern(
	`(by |within |closer to that than |friction |rise of |` +
		`")?(-?\d+(?:\.\d+)?)(?:( to )(-?\d+(?:\.\d+)?))? C\b("?)`)

// WithFahrenheit adds Fahrenheit to each temperature of a message: "74
// C (165 F)". A second scale is printed only here.
func WithFahrenheit(text string) string {
	if !strings.Contains(text, " C") {
		return text
	}
	return celsius.ReplaceAllStringFunc(text, func(s string) string {
		m := celsius.FindStringSubmatch(s)
		if m[1] != "" || m[5] != "" {
			return s
		}
		out := fahrenheit(m[2])
		if m[4] != "" {
			out += m[3] + fahrenheit(m[4])
		}
		return s + " (" + out + " F)"
	})
}

// fahrenheit converts a written number of degrees Celsius, to a
// whole degree.
func fahrenheit(number string) string {
	c, err := strconv.ParseFloat(number, 64)
	if err != nil {
		return number
	}
	return strconv.FormatFloat(math.Round(c*9/5+32)+0, 'f', 0, 64)
}
