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
	case under.MatchString(text) && !bare.MatchString(text):
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
	return airless.MatchString(text) && !notIn.MatchString(text) && !Unpacked(text)
}

var (
	served = spelling.Pattern(`(?i)\b(?:serv\w*|eat\w*)(?: \w+){0,3} (?:luke)?(?:warm|hot)\b|` +
		`\b(?:luke)?(?:warm|hot)(?: \w+){0,3} (?:to )?(?:serv\w*|eat\w*|the table)\b`)
	notServed = spelling.Pattern(`(?i)\b(?:not|never|don't|before|cold)\b`)
)

// ServedWarm reports whether words say that what is baked is eaten warm: "serve warm".
func ServedWarm(text string) bool {
	return served.MatchString(text) && !notServed.MatchString(text)
}

// Unpacked reports whether words take something out of what it is in:
// "turn out", "unmould".
func Unpacked(text string) bool { return unpacked.MatchString(text) }

// How deep what is spread lies, mm, by the rim that holds it: a judgement.
const (
	leastSpreadMM = 15
	mostSpreadMM  = 25 // the rim of a baking tray or a plate
	mostShallowMM = 50 // the rim of a shallow dish
)

var (
	spreadOn = spelling.Pattern(`(?i)\b(?:spread|poured|laid|turned|tipped|scraped|smoothed|` +
		`smeared)(?: (?:it|them|out|thin|thinly|flat|evenly|on|onto|over|in|into|across|an?|the|` +
		`large|wide|cold|clean|lined|baking|sheet|metal|flat))* ` +
		`(?:trays?|plates?|sheets?|platters?|sheet pans?)\b`)
	shallow = spelling.Pattern(`(?i)\bshallow (?:(?:baking|glass|metal|gratin|cold|clean|lined|` +
		`roasting|wide) )*(?:trays?|dish(?:es)?|pans?|tins?|containers?|plates?|bowls?|tubs?)\b`)
	deeper = spelling.Pattern(`(?i)\b(?:not|no|never|without|or|deep|then)\b`)
)

// Spread reads how deep a filling lies that words say is spread, "spread on a tray", mm. ok is
// false for other words, and where they could be turned round.
func Spread(text string) (lo, hi float64, ok bool) {
	switch {
	case deeper.MatchString(text):
		return 0, 0, false
	case shallow.MatchString(text):
		return leastSpreadMM, mostShallowMM, true
	case spreadOn.MatchString(text):
		return leastSpreadMM, mostSpreadMM, true
	}
	return 0, 0, false
}
