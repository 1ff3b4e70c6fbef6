package quantity

import (
	"math"
	"regexp"
	"strconv"
	"strings"
)

// celsius finds temperatures as messages print them: "74 C", "about 53
// to 56 C". One in quotes is a line to paste, and one behind a word for
// a difference is none.
var celsius = regexp.MustCompile(
	`(by |within |closer to that than |friction |rise of |` +
		`")?(-?\d+(?:\.\d+)?)(?:( to )(-?\d+(?:\.\d+)?))? C\b("?)`)

// WithFahrenheit puts the Fahrenheit reading behind each temperature of
// a message: "74 C (165 F)". It is the one place where a temperature is
// printed in a second scale.
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

// fahrenheit converts a written number of degrees Celsius, to the
// whole degree.
func fahrenheit(number string) string {
	c, err := strconv.ParseFloat(number, 64)
	if err != nil {
		return number
	}
	return strconv.FormatFloat(math.Round(c*9/5+32)+0, 'f', 0, 64)
}
