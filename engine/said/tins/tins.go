// Package tins reads the names of tins: how many there are, and the size
// that a name tells. It knows no formula.
package tins

import (
	"math"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/spelling"
)

// Tin is the inside of a tin by its name, mm: length, width and height. A side that the name does
// not give is any possible one.
type Tin struct {
	Sides [3]figure.Interval
	Round bool
}

// anyHeight is the height of a tin that only has its floor written, mm (judgement).
var anyHeight = figure.Interval{Lo: 20, Hi: 130}

var (
	box = spelling.Pattern(`(?i)([\d./½¼¾ ]*\d[\d./½¼¾]*|\d*[½¼¾]) ?(mm|cm|in\b|inch(?:es)?|"|` +
		`″)? ?(?:x|×|by) ?([\d./½¼¾ ]*\d[\d./½¼¾]*|\d*[½¼¾]) ?(mm|cm|in\b|inch(?:es)?|"|″)?` +
		`(?: ?(?:x|×|by) ?([\d./½¼¾]+))?[ -]?(mm|cm|in\b|inch(?:es)?|"|″)?`)
	tinWord = spelling.Pattern(`(?i)\b(?:tins?|pans?|moulds?|molds?|dish(?:es)?|trays?|sheets?|` +
		`case|casserole|ring|form|bundt|loaf|springform|skillet|brownie)\b`)
	roundTin = spelling.Pattern(`(?i)\b(?:round|springform|spring form|bundt|tube|kugelhopf|` +
		`gugelhupf|ring|cake|skillet|savarin|angel)\b`)
	roundBox = spelling.Pattern(`(?i)\b(?:round|rings?|springform|spring form|bundt|kugelhopf|` +
		`gugelhupf|savarin)\b`)
	squareTin = spelling.Pattern(`(?i)\b(?:square|brownie)\b`)
	deep      = spelling.Pattern(
		`(?i)([\d./½¼¾]+)[ -]?(mm|cm|in\b|inch(?:es)?|"|″) (?:deep|high|tall)`)
)

var pounds = spelling.Pattern(`(?i)\b([12])[ -]?(?:lb|pound)s?\b.*\bloaf\b`)

// loafTins are the insides of tins named by the pounds of a loaf, mm. Common practice, no source.
var loafTins = map[string][3]figure.Interval{
	"1": {{Lo: 145, Hi: 185}, {Lo: 75, Hi: 105}, {Lo: 50, Hi: 75}},
	"2": {{Lo: 200, Hi: 245}, {Lo: 100, Hi: 135}, {Lo: 60, Hi: 85}},
}

// Size reads the size in a tin's name: "9x5 inch loaf tin", "23 cm square tin", "9-inch round". Two
// sides without a unit are inches if nothing else is possible.
func Size(name string) (t Tin, ok bool) {
	if inRows.MatchString(name) {
		return Tin{}, false
	}
	if t, ok = byRoom(name); !ok {
		t, ok = byLengths(name)
		t.usualDepth(name)
	}
	return t, ok
}

// byLengths reads the lengths in a tin's name.
func byLengths(name string) (t Tin, ok bool) {
	if !strings.ContainsAny(name, "0123456789./½¼¾") {
		return t, false
	}
	kind := quantity.Of(quantity.Length)
	read := func(number, unit string) figure.Interval {
		q, fault := quantity.Read(strings.TrimSpace(number)+" "+said.InchWord(unit), kind)
		if fault != nil {
			return figure.Interval{}
		}
		return q.Interval
	}
	height := anyHeight
	rest := name
	if m := deep.FindStringSubmatch(name); m != nil {
		height, rest = read(m[1], m[2]), strings.Replace(name, m[0], "", 1)
	}
	if m := box.FindStringSubmatch(rest); m != nil {
		last := m[6]
		if last == "" {
			last = m[4]
		}
		if last == "" {
			last = m[2]
		}
		if last == "" {
			if last = bareUnit(m[1], m[3]); last == "" {
				return Tin{}, false
			}
		}
		unit := func(own string) string {
			if own != "" {
				return own
			}
			return last
		}
		t.Sides = [3]figure.Interval{read(m[1], unit(m[2])), read(m[3], unit(m[4])), height}
		if m[5] != "" {
			t.Sides[2] = read(m[5], last)
			t.Round = roundBox.MatchString(rest) && t.Sides[0] == t.Sides[1]
		} else if roundBox.MatchString(rest) && height == anyHeight {
			t.Sides, t.Round = widthAndHeight(t.Sides[0], t.Sides[1]), true
		}
		if !t.Round && t.Sides[0].Hi < t.Sides[1].Hi {
			t.Sides[0], t.Sides[1] = t.Sides[1], t.Sides[0]
		}
		return t, t.fits()
	}
	if m := pounds.FindStringSubmatch(name); m != nil {
		t.Sides = loafTins[m[1]]
		return t, true
	}
	one, isOne := said.LengthIn("a " + rest)
	if !isOne || !tinWord.MatchString(rest) && !roundTin.MatchString(rest) {
		return Tin{}, false
	}
	side := read(one, "")
	if side == (figure.Interval{}) {
		q, fault := quantity.Read(one, kind)
		if fault != nil {
			return Tin{}, false
		}
		side = q.Interval
	}
	switch {
	case squareTin.MatchString(rest):
	case roundTin.MatchString(rest):
		t.Round = true
	default:
		return Tin{}, false
	}
	t.Sides = [3]figure.Interval{side, side, height}
	return t, t.fits()
}

// widthAndHeight are the sides of a round tin with two figures, as the house writes them: width,
// then height, unless no tin is so tall and narrow.
func widthAndHeight(width, height figure.Interval) [3]figure.Interval {
	const tall = 1.6 // a tin for kulich is 1.4 times as high as wide (judgement)
	if height.Lo > tall*width.Hi {
		width, height = height, width
	}
	return [3]figure.Interval{width, width, height}
}

// otherWord is a word that is no unit of length: "triangles" in "triangles 9 x 28 cm".
var otherWord = spelling.Pattern(`(?i)\b(?:(?:mm|cm|in|inch|inches|x|by|a|an|the)\b|([a-z]{3,}))`)

// Named reports whether words with a size may mean a tin, "9x13 inch", and not the pieces
// that are cut to it: "triangles 9 x 28 cm, rolled".
func Named(text string) bool {
	if trayed.MatchString(text) {
		return false
	}
	if tinWord.MatchString(text) || roundTin.MatchString(text) || pounds.MatchString(text) {
		return true
	}
	for _, m := range otherWord.FindAllStringSubmatch(text, -1) {
		if m[1] != "" {
			return false
		}
	}
	return true
}

var (
	// inRows are pieces by the number of their rows, and no size: "5 x 6 on a lined tray".
	inRows = spelling.Pattern(`(?i)^\W*[1-9] ?(?:x|×|by) ?[1-9]\W+(?:on|per|to|in rows|rows|` +
		`across|` +
		`each)\b`)
	trayed = spelling.Pattern(`(?i)\b(?:trayed?|tray(?: them)?) up\b|\brows? of\b`)
	flat   = spelling.Pattern(`(?i)\b(?:(?:baking |cookie |sheet |half[- ]sheet |` +
		`oven )*(?:sheets?|` +
		`sheet pans?|trays?)|backbleche?|bleche?|plaques?|teglie?|bandejas?)(?:\b|$)`)
	walled = spelling.Pattern(`(?i)\b(?:tins?|moulds?|molds?|dish(?:es)?|loaf|cake|muffin|` +
		`roasting|deep|` +
		`frames?|rings?|kasten\w*|formen?)\b`)
)

// Flat reports whether words name a tray or a sheet without a size, which gives no shape to its
// pieces: "2 lined baking trays, 5 cm apart".
func Flat(text string) bool {
	if _, sized := Size(text); sized || walled.MatchString(text) {
		return false
	}
	return flat.MatchString(text)
}

// bareUnit is the unit of sides without one: inches for small figures, 9x13, cm for large ones,
// 20x30; "" between them.
func bareUnit(a, b string) string {
	count := quantity.Of(quantity.Count)
	x, fault1 := quantity.Read(strings.TrimSpace(a)+" pieces", count)
	y, fault2 := quantity.Read(strings.TrimSpace(b)+" pieces", count)
	const mostInches, leastCM = 17, 20
	switch {
	case fault1 != nil || fault2 != nil:
		return ""
	case max(x.Hi, y.Hi) <= mostInches:
		return "in"
	case max(x.Lo, y.Lo) >= leastCM && min(x.Lo, y.Lo) > 9:
		return "cm"
	}
	return ""
}

// fits reports whether a tin has sides that a tin can have, mm.
func (t Tin) fits() bool {
	for i, s := range t.Sides {
		if s.Lo < 15 || s.Hi > 900 || i < 2 && s.Lo < 40 {
			return false
		}
	}
	return true
}

// Text is the size as a house file writes it: "229 x 127 x 20 to 130 mm", "230 x 20 to 130
// mm round".
func (t Tin) Text() string {
	side := func(s figure.Interval) string {
		lo, hi := quantity.Plain(math.Round(s.Lo)), quantity.Plain(math.Round(s.Hi))
		if lo == hi {
			return lo
		}
		return lo + " to " + hi
	}
	if t.Round {
		return side(t.Sides[0]) + " x " + side(t.Sides[2]) + " mm round"
	}
	return side(t.Sides[0]) + " x " + side(t.Sides[1]) + " x " + side(t.Sides[2]) + " mm"
}

var severalTins = spelling.Pattern(`(?i)^(?:into |in )?(?:(\d+|two|three|four|five|` +
	`six|eight|ten|twelve)(?: ?(?:x|×) ?|` +
	` )(?:(?:well|greased|buttered|lined|oiled|floured|paper-lined|parchment-lined|` +
	`and) )*)((?:\d[\d./½]* ?-?(?:lb|g|kg)\b.*|\d[\d./½]*[ -]?(?:cm|in|inch) (?:round|square|` +
	`spring|` +
	`cake|deep).*|\d[\d.]* ?(?:x|×|by) ?\d.*|[a-z][a-z -]*)\b(?:tin|pan|mould|mold|dish|tray|` +
	`case)(?:e?s)?)(?:,[^\d]*)?$`)

// threeSides are those of one tin, "9 x 13 x 2 in. pan", where no plural says that it is several.
var (
	threeSides = spelling.Pattern(`(?i)^\d[\d.]* ?(?:x|×|by) ?\d[\d.]* ?(?:x|×|by) ?\d`)
	manyTins   = spelling.Pattern(`(?i)\b(?:tins|pans|moulds|molds|dishes|trays|cases)\b`)
)

var unitFirst = spelling.Pattern(`(?i)^(?:inch(?:es)?|in|cm|mm|lbs?|pounds?|kg|g|qts?|quarts?|` +
	`cups?|` +
	`litres?|liters?|l)\b`)

// shares are how many pieces go into each tin: ", 6 rolls each".
var shares = spelling.Pattern(`(?i)[,;( ]+(?:\d+|\w+)(?: [a-z-]+){0,2} (?:each|` +
	`per (?:tin|pan|tray|` +
	`mould|mold|dish)|(?:to|in) (?:a|each)(?: (?:tin|pan|tray|mould|mold|dish))?)\)?$`)

// Several reads a count of tins and the name of one: "2 x 2lb loaf tins". The count is 0 if none is
// written.
func Several(text string) (n float64, name string) {
	text = strings.TrimSpace(shares.ReplaceAllString(text, ""))
	m := severalTins.FindStringSubmatch(text)
	if m == nil || unitFirst.MatchString(m[2]) || // "9 inch square pan" is one
		threeSides.MatchString(text) && !manyTins.MatchString(text) {
		return 0, strings.TrimPrefix(strings.TrimPrefix(text, "into "), "in ")
	}
	count := m[1]
	if digit := said.NumberWord(count); digit != "" {
		count = digit
	}
	n, _ = said.Count(count)
	return n, strings.TrimSuffix(m[2], "s")
}
