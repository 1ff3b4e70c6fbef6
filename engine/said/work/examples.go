package work

import (
	"strings"

	"forebake/engine/spelling"
)

// Signs of a file's own units, in its amounts and its temperatures.
var (
	inFahrenheit = spelling.Pattern(`\d ?(?:°|degrees?)? ?F\b`)
	inCelsius    = spelling.Pattern(`\d ?°? ?C"`)
	inCups       = spelling.Pattern(`(?i)\d ?(?:cups?|sticks?|oz|lbs?)\b`)
	inGrams      = spelling.Pattern(`\d ?(?:g|kg|ml)\b`)
)

// Examples of messages, and the same in the units of the US.
var (
	degrees = strings.NewReplacer(`"24 C"`, `"75 F"`, `"24 to 26 C"`, `"75 to 79 F"`,
		`"22 C"`, `"72 F"`, `"27 C"`, `"80 F"`, `"190 C"`, `"375 F"`, `"60 C"`, `"140 F"`)
	weights = strings.NewReplacer(`"200 g"`, `"7 oz"`, `"190 to 210 g"`, `"6 1/2 to 7 1/2 oz"`,
		`"100 g"`, `"4 oz"`, `"75 g"`, `"2 1/2 oz"`, `"15 g each"`, `"1/2 oz each"`,
		`"slab 40 mm"`, `"slab 1 1/2 in"`, `"5 mm"`, `"1/4 in"`, `"40 mm"`, `"1 1/2 in"`)
	example = spelling.Pattern(`(?:for example|such as|; or write a temperature:) .*$`)
)

// Examples gives a message its examples in the units that a file uses,
// where it uses those of the US alone. Only what stands behind "such
// as" or "for example" changes: never an amount of the baker's own.
func Examples(text string, file []byte) string {
	at := example.FindStringIndex(text)
	if at == nil {
		return text
	}
	head, tail := text[:at[0]], text[at[0]:]
	if inFahrenheit.Match(file) && !inCelsius.Match(file) {
		tail = degrees.Replace(tail)
	}
	if inCups.Match(file) && !inGrams.Match(file) {
		tail = weights.Replace(tail)
	}
	return head + tail
}
