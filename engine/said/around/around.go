// Package around reads words for what is around a part: a cover, or a jar
// or a bag that holds no air.
package around

import (
	"strings"

	"forebake/engine/spelling"
)

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
		`hermetic\w*|canning|tin cans?|preserving glass\w*|` +
		`lids? (?:screwed|clamped|clipped) (?:on|down|tight))\b`)
	notIn    = spelling.Pattern(`(?i)\b(?:without|no|not|never|cut|with an?)\b`)
	unpacked = spelling.Pattern(`(?i)\b(?:out|unmou?ld\w*|remov\w+|open\w*|unpack\w*)\b`)
)

// Airless reports whether words name what shuts the air out: a jar, a
// vacuum bag.
func Airless(text string) bool {
	return airless().MatchString(text) && !notIn().MatchString(text) && !Unpacked(text)
}

var (
	served = spelling.Pattern(`(?i)\b(?:serv\w*|eat\w*)(?: \w+){0,3} (?:luke)?(?:warm|hot)\b|` +
		`\b(?:luke)?(?:warm|hot)(?: \w+){0,3} (?:to )?(?:serv\w*|eat\w*|the table)\b`)
	notServed = spelling.Pattern(`(?i)\b(?:not|never|don't|before|cold)\b`)
)

// ServedWarm reports whether words say that what is baked is eaten warm: "serve warm".
func ServedWarm(text string) bool {
	return served().MatchString(text) && !notServed().MatchString(text)
}

// Unpacked reports whether words take something out of what it is in:
// "turn out", "unmould".
func Unpacked(text string) bool { return unpacked().MatchString(text) }

var (
	shallow = spelling.Pattern(`(?i)\bshallow (?:\pL+ )?(?:trays?|dish(?:es)?|pans?|containers?)\b`)
	spread  = spelling.Pattern(`(?i)\b(?:spread|poured)(?: \pL+){0,3} (?:on|onto|over|in|into) ` +
		`(?:an? |the )?(?:\pL+ ){0,2}(?:trays?|plates?|sheets?|dish|pan)\b|\bin a thin layer\b`)
)

// Shallow is how deep a part stands that words put in a shallow tray, or spread on a plate, mm. Two
// inches are the most that guides call shallow (memory); the rest is a judgement.
func Shallow(words string) (least, most float64, ok bool) {
	switch {
	case spread().MatchString(words):
		return 5, 30, true
	case shallow().MatchString(words):
		return 10, 50, true
	}
	return 0, 0, false
}
