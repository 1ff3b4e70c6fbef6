package quantity

import (
	"math"
	"strconv"
	"strings"
)

// Written returns another value, lo to hi in base units, in q's
// notation: its unit, spelling and blank. A time in hours that is not
// whole is in hours and minutes: "1 h 15 min", not "1.25 h".
func (q Quantity) Written(lo, hi float64) string {
	if lo != hi {
		return q.end(lo) + " to " + q.end(hi)
	}
	return q.end(hi)
}

// end returns one value in the notation of q.
func (q Quantity) end(x float64) string {
	if q.Kind == Time && q.Unit != "min" && q.Unit != "s" {
		return clockText(x, q.Unit)
	}
	y, _ := FromBase(x, q.Unit)
	number := Plain(y)
	if q.Unit == "pieces" && q.Text == "" { // a bare number
		return number
	}
	blank, word := " ", q.Unit
	// "180 g", "180g", "1 piece": a number, an optional blank, and
	// one word.
	if rest := strings.TrimLeft(q.Text, "0123456789."); rest != q.Text && rest != "" {
		if w := strings.TrimSpace(rest); !strings.ContainsAny(w, " 0123456789/") {
			if u := unitNamed(w); u != nil && u.name == q.Unit {
				word = w
				if rest[0] != ' ' {
					blank = ""
				}
			}
		}
	}
	switch {
	case word == "piece" && y != 1:
		word = "pieces"
	case word == "pieces" && y == 1:
		word = "piece"
	}
	return number + blank + word
}

// clockText returns minutes as days, or as hours and minutes.
func clockText(x float64, unit string) string {
	whole := func(a float64) bool { return math.Abs(a-math.Round(a)) < 1e-9 }
	switch {
	case unit == "day" && whole(x/1440) && x >= 1440:
		return Plain(x/1440) + " day"
	case x >= 60 && whole(x/60):
		return Plain(x/60) + " h"
	case x > 60:
		hours := math.Floor(x / 60)
		return Plain(hours) + " h " + Plain(x-60*hours) + " min"
	}
	return Plain(x) + " min"
}

// Plain returns a number without an exponent, rounded to six decimals
// to hide binary rounding.
func Plain(x float64) string {
	return strconv.FormatFloat(math.Round(x*1e6)/1e6+0, 'f', -1, 64)
}

// Duration returns minutes as a baker writes them: "45 min", "1 h 30
// min", "14 h".
func Duration(minutes float64) string { return clockText(math.Round(minutes), "h") }
