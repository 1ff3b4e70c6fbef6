// Package sheets adds the unit that words of a sheet's size leave out. It knows no formula.
package sheets

import (
	"strconv"
	"strings"

	"forebake/engine/said"
	"forebake/engine/spelling"
)

const (
	figure = `(?:\d+ \d+/\d+|\d+/\d+|\d+(?:\.\d+)?|[½¼¾])`
	unit   = `(mm|cm|in\b|inch(?:es)?\b|"|″)`
)

var (
	united = spelling.Pattern(`(?i)` + figure + `[ -]?` + unit)
	sides  = spelling.Pattern(`(?i)(` + figure + `) ?(x|×|by) ?(` + figure + `)([ -]?` + unit +
		`)?`)
	thick = spelling.Pattern(`(?i)(^|[ ,(])(` + figure + `)[ -](thick|in thickness|deep)\b`)
)

// narrowestMM is below any side of a rolled sheet, mm.
const narrowestMM = 100

// Sized gives a size without a unit the unit of the other length in the text: "1/2 inch thick,
// about 12 x 18" is 12 x 18 inch. Beside millimetres, sides that would be too narrow for a sheet
// are centimetres. added is what was added; ok is false where no unit is missing, or none is told.
func Sized(text string) (out, added string, ok bool) {
	all := united.FindAllStringSubmatch(text, -1)
	if len(all) != 1 {
		return text, "", false
	}
	one := said.InchWord(strings.ToLower(all[0][1]))
	if m := sides.FindStringSubmatchIndex(text); m != nil && m[8] < 0 {
		a, _ := strconv.ParseFloat(text[m[2]:m[3]], 64)
		b, _ := strconv.ParseFloat(text[m[6]:m[7]], 64)
		if one == "mm" && a < narrowestMM && b < narrowestMM {
			one = "cm"
		}
		added = text[m[0]:m[1]] + " " + one
		return text[:m[0]] + added + text[m[1]:], added, true
	}
	m := thick.FindStringSubmatchIndex(text)
	if m == nil || !strings.HasPrefix(one, "in") || !sides.MatchString(text) {
		return text, "", false // 1 thick of 30 x 40 cm may be mm
	}
	added = text[m[4]:m[5]] + " " + one
	return text[:m[4]] + added + text[m[5]:], added, true
}

// Sides beyond which a size without any unit is no longer in inches, or in centimetres: no bench
// takes more.
const mostInches, leastCM, mostCM = 40, 15, 99

// Unwritten gives a size without any unit the country's: "into a 12x18 rectangle" is of inches
// where the file is of the US. Elsewhere it is of centimetres if no side would be too narrow.
func Unwritten(text string, isUS func() bool) (out, added string, ok bool) {
	m := sides.FindStringSubmatchIndex(text)
	if m == nil || m[8] >= 0 || united.MatchString(text) {
		return text, "", false
	}
	a, fault1 := strconv.ParseFloat(text[m[2]:m[3]], 64)
	b, fault2 := strconv.ParseFloat(text[m[6]:m[7]], 64)
	unit, us := "cm", isUS()
	switch {
	case fault1 != nil || fault2 != nil:
		return text, "", false
	case us && max(a, b) <= mostInches:
		unit = "in"
	case us || min(a, b) < leastCM || max(a, b) > mostCM:
		return text, "", false
	}
	added = text[m[0]:m[1]] + " " + unit
	return text[:m[0]] + added + text[m[1]:], added, true
}
