// Package counts reads into how many pieces a dough is cut, with words beside the number. It knows
// no formula.
package counts

import (
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/said/unread"
	"forebake/engine/spelling"
)

var (
	countOf = spelling.Pattern(`(?i)^(\d+)(?: ?x)? ((?:[a-z-]+ ?)+)(?:, \d+ \w+ each [a-z]+)?$`)
	countBy = spelling.Pattern(`(?i)^(\d+) ?(?:x|×|(?:[a-z]+ )?(?:of|at|à)) ?(\d[\d.]* ?(?:g|kg|` +
		`oz|lb)s?)\b[a-z ]*$`)
	massOf = spelling.Pattern(`(?i)^(?:about |into )?(\d[\d.,]*(?: ?(?:-|–|` +
		`to) ?\d[\d.,]*)? ?(?:g|kg|oz|lbs?))(?: (?:each|pieces?|balls?|buns?|rolls?|portions?|` +
		`lumps?|chunks?))+$`)
	unitWord = spelling.Pattern(`(?i)^(?:g|kg|mg|oz|lbs?|min|mins|minutes?|h|hours?|mm|cm|m|in|` +
		`inch(?:es)?|grams?|percent|s|sec|days?|c|f|celsius|fahrenheit)\b`)
)

// CountIn reads a count with words behind it: "16 triangles", "3 equal strands", "10 x 55 g".
func CountIn(text string) (number string, ok bool) {
	text = strings.TrimSpace(strings.TrimPrefix(strings.ToLower(text), "into "))
	if near, ok := strings.CutPrefix(text, "about "); ok {
		if said.Whole(near) {
			return strings.TrimSpace(near), true
		}
		text = near
	}
	if m := countBy.FindStringSubmatch(text); m != nil {
		return m[1], true
	}
	m := countOf.FindStringSubmatch(text)
	if m == nil || unitWord.MatchString(m[2]) {
		return "", false
	}
	return m[1], true
}

// MassIn reads a weight with words for pieces behind it: "80 g balls".
func MassIn(text string) (mass string, ok bool) {
	m := massOf.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return m[1], true
}

var sizedCount = spelling.Pattern(`(?i)^(?:into )?(\d+) ?(?:equal |small |large )?` +
	`((?:squares?|rectangles?|triangles?|strips?|slices?|pieces?|rounds?|circles?|diamonds?|` +
	`fingers?|buns?|rolls?|rings?|batons?|bars?|balls?|dis[ck]s?|with|using))\b.*$`)

// SizedCount reads a count whose pieces have a size: "12 squares of 10 cm".
func SizedCount(text string) (number string, ok bool) {
	if two := cutTwice.FindStringSubmatch(text); two != nil { // "into 2, then each into 3"
		a, _ := said.Count(two[1])
		b, _ := said.Count(two[2])
		return quantity.Plain(a * b), a*b > 0
	}
	trimmed := strings.TrimSpace(text)
	m := sizedCount.FindStringSubmatch(trimmed)
	switch {
	case m == nil:
		// "12 rolls, with dental floss", "lengthwise into 2 strands"
		if m = countAside.FindStringSubmatch(trimmed); m == nil {
			m = cutInto.FindStringSubmatch(text)
		}
	case said.LengthAt(text[len(m[1]):]) == nil && !pieceMass.MatchString(text[len(m[1]):]):
		m = countAside.FindStringSubmatch(trimmed)
	}
	if m == nil {
		number, _, ok = Led(text)
		return number, ok
	}
	return m[1], true
}

var begins = spelling.Pattern(`^(?:(?:in(?:to)?|about) )*(\d+),? (\pL.*)$`)

// Begins parts the number of pieces that words begin with from the words behind it.
func Begins(text string) (number, rest string, ok bool) {
	m := begins.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || unitWord.MatchString(m[2]) {
		return "", "", false
	}
	return m[1], m[2], true
}

var (
	led = spelling.Pattern(`(?i)^(?:in(?:to)? )?(?:about |around |roughly |some |ca\.? )*` +
		`(\d+)((?: \pL[\pL'-]*)+)(.*)$`)
	// shares are pieces told again by what they are for: "3 for each loaf".
	shares = spelling.Pattern(`(?i)\b\d+ (?:for|per|to|in|on|from|of them (?:for|to)|a) ` +
		`(?:each |every |an? |the )?\pL+|\b(?:in )?\d+ rows? of \d+\b`)
)

// Led reads a count that begins the words, with what else is said of the pieces: "24 doughnuts
// with a 3 inch cutter", "6 strands, 3 for each loaf". rest are the words behind the number. ok is
// false where they hold another figure than a length or a share of the pieces, or deny something.
func Led(text string) (number, rest string, ok bool) {
	m := led.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || strings.TrimSpace(m[3]) == "" ||
		unitWord.MatchString(strings.TrimSpace(m[2])) {
		return "", "", false
	}
	rest = strings.TrimSpace(m[2] + m[3])
	plain := shares.ReplaceAllString(said.NoSizes(rest), "")
	return m[1], rest, !strings.ContainsAny(plain, "0123456789½¼¾%°") && !unread.Turns(plain)
}

var (
	countAside = spelling.Pattern(`(?i)^(\d+) (?:\pL|[ -])+[,;(] ?[^\d]*$`)
	cutInto    = spelling.Pattern(`(?i)^(?:[\pL ]+ )?in(?:to)? (\d+)(?: [\pL ]+)?$`)
	cutTwice   = spelling.Pattern(`(?i)^(?:in(?:to)? )?(\d{1,2})(?: [\pL ]+)?[,;]? (?:and )?` +
		`(?:then )?each (?:one )?in(?:to)? (\d{1,2})(?: [\pL ]+)?$`)
	pieceMass = spelling.Pattern(`(?i)^ ?\pL+,? \d+ ?(?:g|grams?|oz)(?: each)?$`)
	sideBy    = spelling.Pattern(`(?i)[\d.,]+ ?(?:cm|mm|in\.?|inch)? ?(?:x|×|by) ?$`)
	cutOpen   = spelling.Pattern(`(?i)^(?:horizontal|lengthw|crossw|diagonal|open\b|` +
		`in the (?:middle|cent)|through|triangles?$|crescents?$)`)
)

// CutWord reports whether a value says only the shape that pieces are
// cut to, "rounds", or their size, "10 g cubes".
func CutWord(text string) bool {
	text = strings.TrimSpace(text)
	plain := said.NoSizes(text)
	return said.NoFigure(plain) && (plain != text || !strings.Contains(text, " "))
}

// CutSize reports whether words say how large pieces are cut and not how many: "2 cm strips",
// "triangles 9 x 27 cm", or how: "horizontally".
func CutSize(text string) bool {
	at := said.LengthAt(text)
	return at != nil && said.NoFigure("x"+sideBy.ReplaceAllString(text[:at[0]], "")) ||
		cutOpen.MatchString(text)
}
