// Package times reads two times that stand in one text: of two sides, of two ways, or of two waits.
// It knows no formula.
package times

import (
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/spelling"
)

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
	m := bothSides().FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || otherTime().MatchString(m[3]) {
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
	m := eitherWay().FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || !letters().MatchString(m[2]) {
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
