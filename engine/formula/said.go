package formula

import (
	"fmt"
	"regexp"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/quantity"
	"forebake/engine/source"
)

// This file answers words that plainly mean something and are no figure: a gas mark, a warm place, an
// oven that falls, a sign in place of a time. Each answer gives the line to write.

// gasMarks are the marks of UK ovens, C. Marks 4, 6 and 7 were read in pages that pair them; the
// others are common practice.
var gasMarks = map[string]string{"1": "140 C", "2": "150 C", "3": "170 C", "4": "180 C",
	"5": "190 C", "6": "200 C", "7": "220 C", "8": "230 C", "9": "240 C"}

// warmths are words for how warm it is around a part or in an oven. Common practice, no source.
var warmths = []struct{ words, write string }{
	{"warm oven", "30 C"}, {"warm place", "25 C to 30 C"}, {"warm spot", "25 C to 30 C"},
	{"warm", "25 C to 30 C"}, {"cool place", "12 C to 16 C"}, {"cellar", "10 C to 14 C"},
	{"slow oven", "150 C"}, {"moderate oven", "180 C"}, {"hot oven", "220 C"},
	{"very hot oven", "230 C"}, {"lukewarm", "35 C to 40 C"}, {"proofer", "28 C"},
	{"prover", "28 C"}, {"cold", "4 C"},
}

var (
	gasMark = regexp.MustCompile(`(?i)^(?:gas )?(?:gas|mark)(?: mark)? ?([1-9])$`)
	falling = regexp.MustCompile(`(?i)^(.*?\d ?°? ?[CF]?),? ?(?:and )?(?:then|falling to|down to|->|→) ?(.*)$`)
	area    = regexp.MustCompile(`(?i)^([\d.]+) ?(mm|cm|in|inch|inches)? ?(?:x|×|by) ?([\d.]+) ?(mm|cm|in|inch|inches)$`)
	sign    = regexp.MustCompile(`(?i)^(?:un)?till?\b|\b(?:doubled|double|tripled|bubbly|golden|ready|done|smooth|soft)\b`)
)

// saidAt answers words in the place of a temperature, and reports whether it did.
func (rd *reader) saidAt(s *Step, text string, at source.Place, what string) bool {
	word := fold(strings.ReplaceAll(text, ".", ""))
	if m := gasMark.FindStringSubmatch(word); m != nil {
		rd.Fault(at, "%s: gas mark %s is %s; write %q", what, m[1], gasMarks[m[1]], gasMarks[m[1]])
		return true
	}
	for _, w := range warmths {
		if word == w.words {
			rd.Fault(at, "%s: %q is no figure; measure it, or write %q", what, text, w.write)
			return true
		}
	}
	first, second := "", ""
	if m := falling.FindStringSubmatch(text); m != nil {
		first, second = strings.TrimSpace(m[1]), strings.TrimSpace(m[2])
	} else if a, b, found := strings.Cut(text, " to "); found && s.Verb.Bakes() {
		first, second = a, b
	}
	from, fault1 := quantity.Read(withScale(first, second), forTemperature)
	to, fault2 := quantity.Read(second, forTemperature)
	if first == "" || fault1 != nil || fault2 != nil || from.Lo <= to.Hi {
		return false
	}
	rd.Fault(at, "%s: an oven that falls is a step for each figure, one after the other: write "+
		"{ %s = \"?\", at = %q }, { %s = \"?\", at = %q }, each with its own time", what,
		s.Verb.Name, from.Text, s.Verb.Name, to.Text)
	return true
}

// withScale gives a bare number the scale of another temperature.
func withScale(first, second string) string {
	if first == "" || strings.ContainsAny(first, "CFcf") || second == "" {
		return first
	}
	return first + " " + second[len(second)-1:]
}

// saidTime answers a sign in the place of a time, and reports whether it did.
func (rd *reader) saidTime(s *Step, e hclsyntax.Expression, what string) bool {
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		return false
	}
	text, inside, ok := source.StringLiteral(e)
	if !ok || !sign.MatchString(text) || strings.ContainsAny(text, "0123456789") {
		return false
	}
	at := source.Place{File: rd.File, Start: inside.Start, End: inside.End}
	line := fmt.Sprintf("{ %s = \"?\", note = %q }", s.Verb.Name, text)
	if s.Verb.Waits() && strings.Contains(strings.ToLower(text), "doubl") {
		line += ", or as you saw it { " + s.Verb.Name + " = \"1 h\", measured = \"2 x after 1 h\" }"
	}
	rd.Fault(at, "%s: %q is a sign and no time; write %s", what, text, line)
	return true
}

// saidArea answers a sheet that is given as length by width, and reports whether it did.
func (rd *reader) saidArea(e hclsyntax.Expression, own bool, what string) bool {
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		return false
	}
	text, inside, ok := source.StringLiteral(e)
	m := area.FindStringSubmatch(strings.TrimSpace(text))
	if !ok || m == nil {
		return false
	}
	at := source.Place{File: rd.File, Start: inside.Start, End: inside.End}
	long, other := m[1], m[3]
	unit := m[4]
	x, fault1 := quantity.Read(long+" "+unit, forLength)
	y, fault2 := quantity.Read(other+" "+unit, forLength)
	if fault1 != nil || fault2 != nil {
		return false
	}
	if y.Hi > x.Hi {
		x, y = y, x
	}
	if own {
		rd.Fault(at, "%s: this is length by width, and its own value is the thickness; write "+
			"{ %s = \"?\", wide = %q } until you have measured it, wide being the side that is "+
			"rolled up, or %q", what, what, x.Text, y.Text)
		return true
	}
	rd.Fault(at, "%s: one side, the one that is rolled up: write %q, or %q", what, x.Text, y.Text)
	return true
}

// bareAmount reads a number without quotes where it can only be a count: "egg" = 2.
func (rd *reader) bareAmount(in *Ingredient, e hclsyntax.Expression) (Given, bool) {
	n, at, ok := rd.wholeNumber(e)
	if !ok || !rd.counted(in.Name) {
		return Given{}, false
	}
	return bareCount(n, at), true
}
