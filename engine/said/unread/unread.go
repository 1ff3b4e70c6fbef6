// Package unread decides whether words beside what was understood can
// be told as not read, or have to be asked about. It is the one place of
// that rule: words that could turn the meaning of what was read are
// asked; others are told in the report, never dropped in silence.
package unread

import (
	"strings"

	"forebake/engine/larder"
	"forebake/engine/spelling"
)

// turning are words that deny, restrict or replace what stands beside
// them, in English, German, French, Italian, Spanish, Swedish and Danish.
var turning = spelling.Pattern(`(?i)\b(?:not|no|never|none|non|nor|neither|without|instead|` +
	`unless|except|but|or|only|if|substitutes?|alternatives?|replac\w+|swap\w*|less|more|half|` +
	`double|twice the|another|rather|omit|skip|leave ` +
	`out|free|vegan|plant|imitation|style|n't|don't|kein\w*|ohne|nicht|oder|statt|pas|sans|ou|` +
	`senza|oppure|sin|utan|inte|eller|uden|ikke)\b|n't\b`)

// amounts are words that change how much, how long or how warm.
var amounts = spelling.Pattern(`(?i)\b(?:heap\w*|scant|round(?:ed|ing)|generous|packed|each|per|` +
	`every|dozen|hours?|minutes?|days?|nights?|overnight|hot|warm\w*|cold|chill\w*|cool\w*|` +
	`fridge|freezer|refrigerat\w*|frozen|freez\w*|thaw\w*|boil\w*|simmer\w*|scald\w*|fry|fried|` +
	`frying|bak(?:e|ed|ing)|cook\w*|oven|raw|underdone|pasteuri[sz]ed|unpasteuri[sz]ed|` +
	`room temperature|celsius|fahrenheit|degrees)\b`)

// kinds are words that make another thing of an ingredient.
var kinds = spelling.Pattern(`(?i)\b(?:salted|sweetened|unsweetened|smoked|dried|dry|instant|` +
	`active|canned|tinned|pickled|candied|cured|ferment\w*|cultured|evaporated|condensed|` +
	`powder\w*|light|low|reduced|diet|skim\w*|fat|lean|wild|foraged|bitter|sour|homemade|` +
	`home-made|leftover|liqueur|syrup|extract|essence|paste|juice|sauce|oil|flour|starch|raising|` +
	`whole|nuts?)\b`)

// Turns reports whether words deny, restrict or replace something.
func Turns(words string) bool { return turning.MatchString(words) }

// Asked reports whether words have to be asked about: they deny,
// replace, or say another quantity, warmth or food.
func Asked(l *larder.Larder, words string) bool {
	return strings.ContainsAny(words, "0123456789½¼¾⅓⅔⅛%°") || turning.MatchString(words) ||
		amounts.MatchString(words) || Food(l, words) != ""
}

var (
	// others are words for another amount.
	others = spelling.Pattern(`(?i)\b(?:half|halves|thirds?|quarters?|double|twice|each|per|` +
		`every|dozen|rest|plus|minus|less|more|heap\w*|scant)\b`)
	either = spelling.Pattern(`(?i)\b(?:or|oder|ou|oppure|eller)\b[^,;]*`)
)

// Aside reports whether words behind an amount can be left aside, and
// told: another food that they offer holds no other allergen, and they
// say no amount, nothing raw and no kind of the item.
func Aside(l *larder.Larder, it *larder.Item, words string) bool {
	plain := WithoutLacks(it, either.ReplaceAllString(words, ""))
	if strings.ContainsAny(words, "0123456789½¼¾⅓⅔⅛%°") || others.MatchString(words) ||
		turning.MatchString(plain) || larder.Grave(words) != "" ||
		len(it.Readings) == 0 && kinds.MatchString(plain) { // an unlisted thing is of any kind
		return false
	}
	if Food(l, plain) != "" {
		return false
	}
	food := Food(l, words) // that they offer in its place
	names := []string{food}
	if a, several := l.Ambiguous(food); several {
		names = append(names, a.Choices...)
	}
	for _, name := range names {
		other, ok := l.Find(name)
		if ok && (len(larder.LackingCodes(it.US, other.US)) > 0 ||
			len(larder.LackingCodes(it.EU, other.EU)) > 0) {
			return false
		}
	}
	return true
}

// AskedOf reports the same of words beside an ingredient's name, where
// words that make another thing of it are asked about too.
func AskedOf(l *larder.Larder, words string) bool {
	return kinds.MatchString(words) || Asked(l, words)
}

// Food is a food that the larder knows among words; "" for none.
func Food(l *larder.Larder, words string) string {
	typed := strings.FieldsFunc(words, func(c rune) bool {
		return strings.ContainsRune(" ,;:()/", c)
	})
	for n := 3; n > 0; n-- {
		for i := range typed {
			if i+n > len(typed) {
				break
			}
			name := strings.Join(typed[i:i+n], " ")
			if strings.HasPrefix(name, "and ") || strings.Contains(name, "-") && n > 1 {
				continue // "and flour -" is found as flour, by itself
			}
			if _, ok := l.Find(name); ok {
				return name
			}
			if a, ok := l.Ambiguous(name); ok && len(a.Choices) > 0 {
				return name
			}
		}
	}
	return ""
}

var (
	lacks = spelling.Pattern(`(?i)\b(?:no|without|without any) (?:skins?|seeds|pips|stalks|` +
		`stones)\b|\b(?:bake|oven)[- ]?(?:stable|proof|fast)\b`)
	// ownJuice are parts of cassava that make it worse: it is judged with them.
	ownJuice = spelling.Pattern(`(?i)\b(?:peels?|skins?|juices?|bitter)\b`)
	noFat    = spelling.Pattern(`(?i)\b(?:no|without|without any) (?:added )?` +
		`(?:butter|cream|oil)\b`)
)

// leanG is the fat of a food that needs no fat to be what it is, at the most, g per 100 g.
const leanG = 1

// WithoutLacks drops words that deny what a food does not hold anyway: "no butter" of a potato.
func WithoutLacks(it *larder.Item, words string) string {
	if it.Fat < leanG {
		words = noFat.ReplaceAllString(words, "")
	}
	if it.Hazard == larder.HazardCassava {
		words = ownJuice.ReplaceAllString(words, "")
	}
	return lacks.ReplaceAllString(words, "")
}
