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
	return manners().MatchString(text) && !strings.ContainsAny(text, "0123456789") &&
		len(strings.Fields(text)) > 1 || alone().MatchString(text)
}

var alone = spelling.Pattern(`(?i)^(?:covered|uncovered|hanging|wrapped|gently|slowly|quickly|` +
	`briefly|slightly|fully|a little|a bit|once|twice|three times)$`)

var (
	under = spelling.Pattern(`(?i)\b(?:cloth|towel|cling film|film|plastic|foil|lid|covered|` +
		`wrapped|bag)\b`)
	bare = spelling.Pattern(`(?i)\b(?:uncovered|without|no|not|off|unwrapped)\b`)
)

// Cover reports whether words beside a time say that the part is
// covered, or uncovered.
func Cover(text string) (covered, ok bool) {
	switch {
	case strings.Contains(strings.ToLower(text), "uncovered"):
		return false, true
	case under().MatchString(text) && !bare().MatchString(text):
		return true, true
	}
	return false, false
}

var (
	airless = spelling.Pattern(`(?i)\b(?:jars?|vacuum|vacuum-\w+|vacuumed|vac-?pac\w*|` +
		`hermetic\w*|canning|tin cans?|preserving glass\w*)\b`)
	notIn    = spelling.Pattern(`(?i)\b(?:without|no|not|never|cut|with an?)\b`)
	unpacked = spelling.Pattern(`(?i)\b(?:out|unmou?ld\w*|remov\w+|open\w*|unpack\w*)\b`)
)

// Airless reports whether words name what shuts the air out: a jar, a
// vacuum bag.
func Airless(text string) bool {
	return airless().MatchString(text) && !notIn().MatchString(text) && !Unpacked(text)
}

// Unpacked reports whether words take something out of what it is in:
// "turn out", "unmould".
func Unpacked(text string) bool { return unpacked().MatchString(text) }

var turnedRound = spelling.Pattern(`(?i)\b(?:not|never|before|or)\b`)

// Inside reports whether words say that something is in the named
// place, in lower case: "in the fridge".
func Inside(text, place string) bool {
	if !strings.Contains(strings.ToLower(text), place) || turnedRound().MatchString(text) {
		return false
	}
	in := `(?i)\b(?:in|into)(?: the| a| your| my)? ` + regexp.QuoteMeta(place) + `\b`
	return regexp.MustCompile(in).MatchString(text) // few words name a place at all
}

// NoFigure reports whether words hold no figure at all.
func NoFigure(text string) bool {
	return strings.TrimSpace(text) != "" && !strings.ContainsAny(text, "0123456789¼½¾⅓⅔")
}

// Vessel reports whether words name a vessel that changes no figure:
// "oiled bowl".
func Vessel(text string) bool { return NoFigure(text) && vessel().MatchString(text) }

var vessel = spelling.Pattern(`(?i)\b(?:bowl|tub|box|container|basket|couche|tray|sheet|paper|` +
	`parchment|board|pan|tin|dish|cloth|squares)\b`)

var until = spelling.Pattern(`(?i)^(?:(?:cool(?:ed)?|warm(?:ed)?|down|until|till|at|is|it|just|` +
	`completely|fully) )*(?:to )?(.+)$`)

// Until is the temperature that words wait for: "to room temperature",
// "until lukewarm"; "" for others.
func Until(text string) string {
	m := until().FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || strings.TrimSpace(text) == m[1] {
		return ""
	}
	return GoingIn(Fold(m[1]))
}
