package said

import (
	"regexp"
	"strings"

	"forebake/engine/spelling"
)

// manners begin words on how or where a step is done, which give it
// no time.
var manners = spelling.Pattern(`(?i)^(?:on|in|into|under|over|at|by|with|without|onto|between|` +
	`inside|near|off|out of|to|upside down|covered|uncovered|hanging|wrapped|loosely|lightly|` +
	`gently|slowly|briefly|well|low heat|medium heat|gentle heat|high heat)\b`)

// Manner reports whether a text in a time's place says how or where a
// step is done: "on a rack", "under a cloth".
func Manner(text string) bool {
	text = strings.TrimSpace(text)
	return manners.MatchString(text) && !strings.ContainsAny(text, "0123456789") &&
		len(strings.Fields(text)) > 1 || alone.MatchString(text)
}

var alone = spelling.Pattern(`(?i)^(?:covered|uncovered|hanging|wrapped|gently|slowly|quickly|` +
	`briefly|slightly|fully|a little|a bit|once|twice|three times)$`)

var turnedRound = spelling.Pattern(`(?i)\b(?:not|never|before|or)\b`)

// kitchenThings are things called after the kitchen, which is then no place.
var kitchenThings = spelling.Pattern(`(?i)\bkitchen (?:towels?|paper|roll|foil|cloths?|aid|` +
	`machine|` +
	`mixer|scales?|timer|string|scissors|knife)\b`)

// Inside reports whether words say that something is in the named
// place, in lower case: "in the fridge".
func Inside(text, place string) bool {
	text = kitchenThings.ReplaceAllString(text, "")
	if !strings.Contains(strings.ToLower(text), place) || turnedRound.MatchString(text) {
		return false
	}
	in := `(?i)\b(?:in|into)(?: the| a| your| my)? ` + regexp.QuoteMeta(place) + `\b`
	return spelling.Pattern(in).MatchString(text)
}

var humid = spelling.Pattern(`(?i)(\d+(?: ?(?:-|–|to) ?\d+)? ?%) ?(?:rh\b|relative|humid\w*|` +
	`feuchte\w*|luftfeuchte\w*|d'humidité|umidità|humedad)|\bhumidity:? ?(?:of |at )?(\d+ ?%)`)

// HumidityIn is the humidity among words, "prover at 80 % humidity"; ""
// for none.
func HumidityIn(text string) string {
	m := humid.FindStringSubmatch(text)
	if m == nil {
		return ""
	}
	return m[1] + m[2]
}

// Names reports whether words hold a name, as whole words.
func Names(words, name string) bool {
	name = strings.ToLower(strings.TrimSpace(name))
	words = " " + strings.Join(strings.FieldsFunc(strings.ToLower(words), func(c rune) bool {
		return strings.ContainsRune(" ,;()", c)
	}), " ") + " "
	return name != "" && strings.Contains(words, " "+name+" ")
}

// NoFigure reports whether words hold no figure at all.
func NoFigure(text string) bool {
	return strings.TrimSpace(text) != "" && !strings.ContainsAny(text, "0123456789¼½¾⅓⅔")
}

// Deep reports whether words name a vessel as deep as a bowl: "a greased tub".
func Deep(text string) bool { return NoFigure(text) && deepVessel.MatchString(text) }

var deepVessel = spelling.Pattern(`(?i)\b(?:bowl|tub|container|bucket|basin|bin|pot|crock)\b`)

// Flattened reports whether words say that a dough lies flat: "flat on a sheet pan".
func Flattened(text string) bool {
	return NoFigure(text) && flattened.MatchString(text) && !turnedRound.MatchString(text)
}

var flattened = spelling.Pattern(`(?i)\b(?:flat|flattened|flatly|patted (?:out|flat)|dis[ck]|` +
	`(?:thin )?rectangle|square)\b`)

// Vessel reports whether words name a vessel that changes no figure:
// "oiled bowl".
func Vessel(text string) bool { return NoFigure(text) && vessel.MatchString(text) }

var vessel = spelling.Pattern(`(?i)\b(?:bowl|tub|box|container|basket|couche|tray|sheet|paper|` +
	`parchment|board|pan|tin|dish|cloth|squares)\b`)

var until = spelling.Pattern(`(?i)^(?:(?:cool(?:ed)?|warm(?:ed)?|down|until|till|at|is|it|just|` +
	`completely|fully),? )*(?:to )?(.+)$`)

// Until is the temperature that words wait for: "to room temperature",
// "until lukewarm"; "" for others.
func Until(text string) string {
	if head, tail, _ := strings.Cut(text, ","); NoFigure(tail) && !turnedRound.MatchString(tail) {
		text = head
	}
	m := until.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || strings.TrimSpace(text) == m[1] {
		return ""
	}
	return GoingIn(Fold(m[1]))
}
