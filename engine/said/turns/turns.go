// Package turns reads words for the folds and the layers of a dough. It
// knows no formula.
package turns

import (
	"slices"
	"strconv"
	"strings"

	"forebake/engine/spelling"
)

// numbers are those that a dough is folded, in words.
var numbers = []string{"one", "two", "three", "four", "five", "six"}

// count is a number in figures or in words; 0 for others.
func count(word string) int {
	switch word = strings.ToLower(word); word {
	case "once", "a", "an":
		return 1
	case "twice":
		return 2
	}
	if i := slices.Index(numbers, word); i >= 0 {
		return i + 1
	}
	n, _ := strconv.Atoi(word)
	return n
}

var folds = spelling.Pattern(`(?i)^(?:with |in |give it |do )?(\d|one|two|three|four|five|six) ` +
	`((?:letter|book|single|double|simple|three-fold|four-fold|half|tri-?fold) )?(?:turns?|` +
	`folds?|tours?)\b(.*)$`)

// Folds reads how often a dough is folded: "3 single folds". Rest are
// the words behind it.
func Folds(text string) (n int, rest string, ok bool) {
	m := folds.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return 0, "", false
	}
	n = count(m[1])
	return n, strings.Trim(m[3], " ,;()"), n > 0
}

var several = spelling.Pattern(`(?i)^(?:(\d) )?(?:tours? )?(letter|book|single|double|simple|` +
	`three-fold|four-fold)s?(?: (?:turns?|folds?|tours?))?$`)

var joined = spelling.Pattern(`(?i)\s*(?:,|\+|&|\band\b|\bet\b|\bund\b|\bthen\b|\bpuis\b)\s*`)

// Several adds up turns of a laminated dough that are told by their
// kinds: "1 double, 1 simple".
func Several(text string) (n int, ok bool) {
	all := joined.Split(strings.TrimSpace(text), -1)
	for _, one := range all {
		m := several.FindStringSubmatch(one)
		if m == nil {
			return 0, false
		}
		n += max(count(m[1]), 1)
	}
	return n, len(all) > 1
}

var moreTimes = spelling.Pattern(`(?i)^(once|twice|thrice|(?:\d|one|two|three|four|five|six) ` +
	`?(?:times?|x)|(?:\d|one|two|three|four|five|six)(?: more)? (?:times?|turns?|folds?)|` +
	`another (?:(?:\d|one|two|three|four|five|six) )?(?:times?|turns?|folds?))(?: more| again)?` +
	`(?:[,;(]? ?\(?(\pL[^\d]*?)\)?)?$`)

// Times reads how often a dough is folded in words: "twice more", "3 times again". Rest are the
// words behind it.
func Times(text string) (n int, rest string, ok bool) {
	m := moreTimes.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return 0, "", false
	}
	words := strings.Fields(strings.TrimPrefix(strings.ToLower(m[1]), "another "))
	switch n = count(strings.TrimSuffix(words[0], "x")); {
	case words[0] == "thrice":
		n = 3
	case n == 0:
		n = 1 // "another turn"
	}
	return n, m[2], true
}

var kinds = spelling.Pattern(`(?i)\b(?:(\d|an?|one|two|three|four) )?(?:letter|book|single|` +
	`double|simple|three-fold|four-fold|half)[ -](?:turn|fold)s?\b`)

// Count adds up the turns that are told by their kinds among other words:
// "lock in the butter, then one book fold and two single folds" are 3.
func Count(text string) (n int) {
	for _, m := range kinds.FindAllStringSubmatch(text, -1) {
		n += max(count(m[1]), 1)
	}
	return n
}

var during = spelling.Pattern(`(?i)^(\d|one|two|three|four|once|twice|a|an)(?: (?:times?|folds?|` +
	`sets?))?,? (?:at|after|@) (?:the )?(?:\d+ ?(?:min\w*|h\w*)?(?:,? ?(?:and|,|&) ?)?)+` +
	`(?: mark)?$`)

// During reads folds by the minutes of a rise at which they are done: "1
// at 45 min", "2 at 30 and 60 min".
func During(text string) (n int, ok bool) {
	m := during.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return 0, false
	}
	n = count(m[1])
	return n, n > 0
}

var waiting = spelling.Pattern(`(?i)\b(?:leav(?:e|ing)|left|stand(?:ing)?|wait(?:ing)?|` +
	`between|until|till?|lassen|laisser|lasciare|dejar|` +
	`rest(?:s|ed|ing)?|overnight|prov(?:e|ing)|proof(?:ing)?|ris(?:e|ing)|chill(?:ed|ing)?|` +
	`fridge|freez(?:e|er|ing)|cool(?:ed|ing)?|relax\w*)\b`)

var remainder = spelling.Pattern(`(?i)\b(?:the|all) rest of\b`)

// Waits reports whether words of a fold may tell of a wait: what they say takes a time.
func Waits(text string) bool {
	return waiting.MatchString(remainder.ReplaceAllString(text, " "))
}

// LeastSome and MostSome are how many folds "some folds" are: common practice, no source.
const LeastSome, MostSome = 2, 6

var some = spelling.Pattern(`(?i)\b(?:some|several|few|couple|every|each|folds|turns|times|` +
	`repeat\w*|again)\b`)

// Some reports whether words say that a dough is folded more than once: "a few gentle folds".
func Some(text string) bool {
	return some.MatchString(ofEach.ReplaceAllString(text, " "))
}

// ofEach are the pieces that are folded once each: "each one in half".
var ofEach = spelling.Pattern(`(?i)\b(?:each|every) (?:one|piece|roll|ball|round|bun|disc)\b`)

var layers = spelling.Pattern(`(?i)\b(?:laminat(?:e|ing|ion)|roll(?:ing)?[- ]in|tourage|beurrage|` +
	`(?:butter )?block|layers|layering|lock[- ]?in)\b`)

// Layers reports whether words of an ingredient's name say that it is
// folded into the dough, and not mixed.
func Layers(name string) bool { return layers.MatchString(name) }

// turns are the words for one fold of a laminated dough.
var turns = map[string]bool{"letter": true, "letter turn": true, "letter fold": true,
	"single":      true,
	"single turn": true, "simple": true, "book": true, "book turn": true, "book fold": true,
	"double": true, "double turn": true, "half": true, "three-fold": true, "four-fold": true,
	"knock back": true, "knock it back": true, "punch down": true, "degas": true, "deflate": true,
	"double fold": true, "single fold": true, "simple fold": true, "simple turn": true,
	"piega a 3": true, "piega a 4": true, "piega a tre": true, "piega a quattro": true,
	"piega semplice": true, "piega doppia": true,
	"in half": true, "in three": true, "in thirds": true, "in four": true, "in quarters": true,
	"tri-fold": true, "tour double": true, "tour simple": true}

// Is reports whether words are one turn of a laminated dough.
func Is(words string) bool {
	words = strings.ToLower(strings.TrimSpace(words))
	if i := strings.IndexAny(words, ",;("); i > 0 { // "single turn (3 fold)", "in three, seal"
		words = strings.TrimSpace(words[:i])
	}
	words, _, _ = strings.Cut(strings.TrimPrefix(words, "fold "), " like ")
	for _, one := range []string{"one ", "a ", "1 "} {
		words = strings.TrimPrefix(words, one)
	}
	return turns[words]
}
