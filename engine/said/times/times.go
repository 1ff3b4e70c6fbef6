// Package times reads two times that stand in one text: of two sides, of two ways, or of two waits.
// It knows no formula.
package times

import (
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/spelling"
)

// Has reports whether words hold a time.
func Has(text string) bool {
	_, _, timed := said.TimeIn(text)
	return timed
}

var (
	otherTime = spelling.Pattern(`(?i)\d ?(?:s|secs?|seconds?|mins?|minutes?|h|hours?)\b`)
	letters   = spelling.Pattern(`\pL{2,}`)
)

var bothSides = spelling.Pattern(`(?i)^(?:about )?([\d./½¼¾ ]+(?:(?:-|–|to) ?[\d./½¼¾ ]+)?) ?` +
	`(s|secs?|seconds?|m|mins?|minutes?|min)\.? (?:per|each|a|on each|on either|pro|je|par|` +
	`per ogni|` +
	`por) (?:side|seite|face|lato|lado|sida|side)\b(.*)$`)

// BothSides gives the whole time of what is turned once: "3 min each
// side, 3 at a time" is 6 min. rest are the words behind it.
func BothSides(text string) (time, rest string, ok bool) {
	m := bothSides.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || otherTime.MatchString(m[3]) {
		return "", "", false
	}
	q, fault := quantity.Read(strings.TrimSpace(m[1])+" "+m[2], quantity.Of(quantity.Time))
	if fault != nil {
		return "", "", false
	}
	time = quantity.Plain(2*q.Lo) + " min"
	if !q.IsPoint() {
		time = quantity.Plain(2*q.Lo) + " to " + quantity.Plain(2*q.Hi) + " min"
	}
	return time, strings.Trim(m[3], " ,;()"), true
}

// Spell is a time with the words beside it.
type Spell struct{ Time, Words string }

// ThenTime reads two times of which one follows the other: "30 min, then
// overnight in the fridge".
func ThenTime(text string) (first, then Spell, ok bool) {
	a, b, both := strings.Cut(text, "then ")
	if !both {
		return first, then, false
	}
	for i, half := range []string{a, b} {
		half = strings.Trim(half, " ,;")
		for _, and := range []string{" and", ","} {
			half = strings.TrimSuffix(half, and)
		}
		time, words, timed := said.TimeIn(half)
		if _, fault := quantity.Read(half, quantity.Of(quantity.Time)); fault == nil {
			time, words, timed = half, "", true
		}
		if _, fault := quantity.Read(time, quantity.Of(quantity.Time)); !timed || fault != nil {
			return first, then, false
		}
		if i == 0 {
			first = Spell{time, words}
		} else {
			then = Spell{time, words}
		}
	}
	return first, then, true
}

var eitherWay = spelling.Pattern(`(?i)^(` + said.SpellPattern + `)([^\d]*?)\b(?:or|oder|` +
	`ou) (` + said.SpellPattern +
	`)([^\d]*)$`)

// EitherTime reads two times of which either is meant, by the way that
// it is done, as a range: "8 min by hand or 5 min in the mixer".
func EitherTime(text string) (span, rest string, ok bool) {
	m := eitherWay.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || !letters.MatchString(m[2]) {
		return "", "", false
	}
	kinds := quantity.Of(quantity.Time)
	a, fault1 := quantity.Read(m[1], kinds)
	b, fault2 := quantity.Read(m[3], kinds)
	if fault1 != nil || fault2 != nil {
		return "", "", false
	}
	return quantity.Plain(min(a.Lo, b.Lo)) + " to " + quantity.Plain(max(a.Hi, b.Hi)) + " min",
		strings.Trim(m[2]+m[4], " ,;()"), true
}

// In reads a time with words beside it as said.TimeIn does, where the
// speed of a mixer stands among them too: "4 min on speed 1".
func In(text string) (time, rest string, ok bool) {
	if time, rest, ok = said.TimeIn(text); ok {
		return time, rest, ok
	}
	plain := strings.Trim(said.NoGear(text), " ,;()")
	if plain == strings.Trim(text, " ,;()") {
		return "", "", false
	}
	if _, fault := quantity.Read(plain, quantity.Of(quantity.Time)); fault == nil {
		return plain, strings.Trim(strings.Replace(text, plain, "", 1), " ,;()"), true
	}
	return said.TimeIn(plain)
}

var during = spelling.Pattern(`(?i)^([^,;()]*?\d[^,;()]*?)[,;( ] ?([\pL -]+?) (?:after|at)` +
	`(?: the)?(?: first)? (\d+)(?: ?(\pL+))?\)?$`)

// During reads a time with what is done within it, "2 h, fold after 1 h": the
// words take no time of their own. ok is false where the moment lies
// behind the time, and where the words have to be asked about.
func During(text string, asked func(string) bool) (time, rest string, ok bool) {
	m := during.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || asked(m[2]) {
		return "", "", false
	}
	kind := quantity.Of(quantity.Time)
	whole, fault := quantity.Read(m[1], kind)
	unit := m[4]
	if unit == "" {
		unit = "min"
	}
	moment, fault2 := quantity.Read(m[3]+" "+unit, kind)
	if fault != nil || fault2 != nil || moment.Hi >= whole.Lo {
		return "", "", false
	}
	return m[1], strings.Trim(text[len(m[1]):], " ,;()"), true
}

var (
	oneAfter = spelling.Pattern(`(?i)(?:\b(?:at least|about|around|another|a further) )*` +
		`(\d[\d./½¼¾]*(?: \d/\d)?(?: ?(?:-|–|to) ?\d[\d./½¼¾]*)? ?(?:secs?|seconds?|mins?|` +
		`minutes?|hours?|hrs?|h|s)\b(?: \d+ ?(?:s|secs?|mins?|min)\b)?)(?: more\b)?`)
	lids = spelling.Pattern(`(?i)\b(?:lid|cover|foil) (?:on|off)\b|` +
		`\bturn(?:ed)? (?:(?:it|them) )?out\b(?: upside down)?(?: on(?:to)?(?: to)? (?:a|the) ` +
		`(?:wire |cooling )?(?:plate|rack|wire|board|tray|dish|cloth))?`)
	changes = spelling.Pattern(`(?i)\b(?:low\w*|high\w*|reduc\w*|temperature|down|up|heat|off|` +
		`out|door|open\w*|bench|counter|worktop|place|room|divid\w*|shap\w*|roll\w*|cut\w*|` +
		`fill\w*|mix\w*|knead\w*|add\w*|steam\w*|of|first|last|total|in all|altogether|` +
		`after|before|end|into|through|includ\w*|within)\b`)
	// follows ends what stands before a time that begins where the one before it ends.
	follows = spelling.Pattern(`(?i)(?:[,;+]|\b(?:then|plus)) ?(?:for )?$`)
)

// InTurn adds up times that follow each other in one place: "5 min in
// the tin, then 1 h on a rack". own is the verb, which may be said again.
// ok is false where words beside them could change the place, the heat or
// the dough.
func InTurn(text, own string, asked func(string) bool) (time string, ok bool) {
	for _, and := range []string{" and ", " then ", ", "} {
		text = strings.ReplaceAll(text, and+own+" ", " then ")
	}
	all := oneAfter.FindAllStringSubmatch(text, -1)
	words := lids.ReplaceAllString(oneAfter.ReplaceAllString(text, ""), "")
	if len(all) < 2 || strings.ContainsAny(words, "0123456789½¼¾") || asked(words) ||
		changes.MatchString(words) || strings.HasSuffix(strings.TrimSpace(words), " in") ||
		!strings.ContainsAny(text, ",;+") && !strings.Contains(text, " then ") {
		return "", false
	}
	for _, at := range oneAfter.FindAllStringIndex(text, -1)[1:] {
		if !follows.MatchString(text[:at[0]]) {
			return "", false // "2 h, fold after 1 h" is two hours
		}
	}
	var lo, hi float64
	for _, one := range all {
		q, fault := quantity.Read(one[1], quantity.Of(quantity.Time))
		if fault != nil {
			return "", false
		}
		lo, hi = lo+q.Lo, hi+q.Hi
	}
	if time = quantity.Plain(lo); hi > lo {
		time += " to " + quantity.Plain(hi)
	}
	return time + " min", true
}

var leftOut = spelling.Pattern(`(?i)[,;(]+ ?(?:still )?(?:no|without(?: the)?) ([\pL ]+?)` +
	`(?: yet| so far| for now)?\)?$`)

// LeftOut parts a time of a mix from what is not in it yet: "6 min on
// medium, no butter yet".
func LeftOut(text string) (rest, what string, ok bool) {
	text = strings.TrimSpace(text)
	at := leftOut.FindStringSubmatchIndex(text)
	if at == nil {
		return text, "", false
	}
	return text[:at[0]], text[at[2]:at[3]], true
}
