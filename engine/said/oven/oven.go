// Package oven reads an oven's heat where it is written on several scales or for two sides at once.
// The formula reader calls it. It knows no formula.
package oven

import (
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

// FanWords are words for the moving air of an oven. Common practice, no source.
const FanWords = `fan[ -]oven|fan[ -]forced|fan|convection|umluft|hei(?:ß|ss)luft|` +
	`varmluft(?:sugn)?|chaleur tournante|(?:forno )?ventilat[oa]|con ventilador|ventilad[oa]|` +
	`ventilée?|konvektion`

var (
	// asides are the same heat of a fan, or on the scale of a gas oven, beside one in degrees.
	asides = spelling.Pattern(`(?i)[,;/( ]*(?:\b(?:` + FanWords + `)(?: oven)?:? ?` +
		`\d{2,3} ?°? ?[CF]?\b|(?:[/,(]|\bor\b) ?\d{2,3} ?°? ?[CF]? ?(?:` + FanWords + `)\b|` +
		`\b(?:fan off|no fan|conventional(?: oven)?|statico|chaleur statique|` +
		`ober-?/?unterhitze)(?:\b|$)|` +
		`\b(?:gas(?: mark)?|th\.?|thermostat) ?\d{1,2}(?:[./]\d)?\b)[ )]*`)
	// lands write degrees that are Celsius there.
	lands = spelling.Pattern(`(?i)^(\d{2,3}(?: ?(?:-|–|bis|à) ?\d{2,3})?) ?` +
		`(?:grad|degr[ée]s|stopni|` +
		`grader|gradi|grados|graus|astetta|stupň\pL+)\b.*$`)
	sides = spelling.Pattern(`(?i)^(?:top:?(?: heat)? ?)?(\d{2,3}) ?°?C?` +
		`(?: top(?: heat)?)?[,/ ]+` +
		`(?:and )?(?:bottom:?(?: heat)? ?)?(\d{2,3}) ?°? ?C(?: bottom(?: heat)?)?$`)
)

// Heat is a heat written with words or scales beside it, as one text that the quantity reader
// reads; ok is false where it is none of these. The heats of top and bottom are a range.
func Heat(text string) (heat string, ok bool) {
	text = strings.TrimSpace(text)
	if heat = named[strings.TrimPrefix(strings.ToLower(text), "a ")]; heat != "" {
		return heat, true
	}
	if m := sides.FindStringSubmatch(text); m != nil {
		lo, hi := min(m[1], m[2]), max(m[1], m[2])
		if len(lo) == len(hi) {
			return lo + " to " + hi + " C", true
		}
	}
	if m := lands.FindStringSubmatch(text); m != nil {
		heat = strings.NewReplacer("bis", "to", "à", "to").Replace(m[1]) + " C"
	} else if asides.MatchString(text) {
		heat = strings.Trim(asides.ReplaceAllString(text, " "), " ,;/()")
	}
	_, fault := quantity.Read(heat, quantity.Of(quantity.Temperature))
	return heat, heat != "" && fault == nil
}

var falling = spelling.Pattern(
	`(?i)^(.*?\d ?°? ?[CF]?),? ?(?:and )?(?:then|falling to|down to|->|→) ?(.*)$`)

// Falling reads an oven that falls from one temperature to another:
// "220 C, then 180 C", and of an oven "220 C to 180 C".
func Falling(text string, oven bool) (from, to string, ok bool) {
	if m := falling.FindStringSubmatch(text); m != nil {
		from, to = strings.TrimSpace(m[1]), strings.TrimSpace(m[2])
	} else if a, b, found := strings.Cut(text, " to "); found && oven {
		from, to = a, b
	}
	if from == "" || to == "" {
		return "", "", false
	}
	if !strings.ContainsAny(from, "CFcf") {
		from += " " + to[len(to)-1:]
	}
	warm := quantity.Of(quantity.Temperature)
	a, fault1 := quantity.Read(from, warm)
	b, fault2 := quantity.Read(to, warm)
	return a.Text, b.Text, fault1 == nil && fault2 == nil && a.Lo > b.Hi
}

var fanned = spelling.Pattern(`(?i)^(.*\d ?°? ?[CF]?),? ?\(?(?:` + FanWords + `|turbo|air)\)?$`)

// still is the same heat of an oven without a fan, beside that of a fan.
var still = spelling.Pattern(`(?i)[ ,;]*[/,;(] ?\d{2,3} ?°? ?[CF]? ?(?:conventional|no fan|` +
	`without (?:a )?fan|static|statico|standard|ober-?/?unterhitze)(?: oven)?\)?$`)

// Fanned reads a temperature of a fan oven: "180 C fan".
func Fanned(text string) (temperature string, ok bool) {
	m := fanned.FindStringSubmatch(still.ReplaceAllString(strings.TrimSpace(text), ""))
	if m == nil {
		return "", false
	}
	return strings.TrimSpace(m[1]), true
}

var coreIn = spelling.Pattern(`(?i)[,;(]+ ?(?:and )?(?:(?:to (?:an? )?|until )?(?:the )?(?:core|` +
	`internal(?: temp\w*)?|inside|centre|middle|crumb)(?: temp\w*)?(?: of| at| is| reaches)? ` +
	`(\d{2,3} ?(?:°|º)? ?[CF])|(?:until|to) (\d{2,3} ?(?:°|º)? ?[CF]) (?:inside|core|` +
	`in the (?:core|middle|centre|center)|internal\w*))\)?`)

// twice is a second core in what is left.
var twice = spelling.Pattern(`(?i)\b(?:core|internal\w*|inside)\b`)

// CoreIn parts the core that a bake's words tell from the rest: "25 min at 190 C, core 96 C".
func CoreIn(text string) (rest, core string, ok bool) {
	at := coreIn.FindStringSubmatchIndex(text)
	if at == nil {
		return text, "", false
	}
	for _, i := range []int{2, 4} {
		if at[i] >= 0 {
			core = text[at[i]:at[i+1]]
		}
	}
	rest = strings.Trim(text[:at[0]]+text[at[1]:], " ,;")
	return rest, core, !twice.MatchString(rest)
}

const asRead = `(\d{2,3}(?:\.\d+)? ?(?:°|º|degrees|deg\.?)? ?[CF]?)`

var atLeast = spelling.Pattern(`(?i)^(?:(?:at least|over|above|more than|min(?:imum|\.)?(?: of)?|` +
	`(?:no|not) (?:less than|below|under)) ` + asRead + `|` + asRead + `,? ?\(?(?:at least|` +
	`(?:or|and) (?:more|over|above|higher|hotter|up)|min(?:imum|\.)?|plus|\+)\)?)$`)

// AtLeast reads a core that is to be reached, "at least 90 C", as its lowest. The scale may be left
// out.
func AtLeast(text string) (temperature string, ok bool) {
	m := atLeast.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return strings.TrimSpace(m[1] + m[2]), true
}

var degrees = spelling.Pattern(`(?i)^(\d+) ?(?:degrees?|deg|°)$`)

// Degrees reads a temperature without a scale: "375 degrees".
func Degrees(text string) (number string, ok bool) {
	m := degrees.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return m[1], true
}

// named are the ovens of household books by name, each from its coolest to its hottest: memory.
var named = map[string]string{
	"slow oven": "140 C to 165 C", "moderate oven": "165 C to 195 C",
	"medium oven": "165 C to 195 C", "moderately hot oven": "185 C to 210 C",
	"hot oven": "200 C to 235 C", "very hot oven": "225 C to 260 C",
}

var bounded = spelling.Pattern(`(?i)^(.*?\d ?°? ?[CF])[,;( ]+(?:(?:but )?(?:never|not|no) (over|` +
	`above|more than|warmer than|hotter than|past|beyond|below|under|less than|cooler than)|` +
	`(max\.?|maximum|at (?:the )?most)|(?:min\.?|minimum|at least)) (\d{1,3}) ?(°? ?[CF])?\)?$`)

// Bounded reads a temperature with its bound, "25 C, never over 27". ok is
// false where the bound denies the temperature.
func Bounded(text string) (temperature string, ok bool) {
	m := bounded.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	unit := m[5]
	if unit == "" {
		unit = m[1][len(m[1])-1:]
	}
	heat := quantity.Of(quantity.Temperature)
	g, fault := quantity.Read(m[1], heat)
	limit, fault2 := quantity.Read(m[4]+" "+unit, heat)
	if fault != nil || fault2 != nil {
		return "", false
	}
	switch m[2] {
	case "below", "under", "less than", "cooler than":
		return m[1], limit.Hi <= g.Lo
	case "":
		if m[3] == "" {
			return m[1], limit.Hi <= g.Lo
		}
	}
	return m[1], limit.Lo >= g.Hi
}
