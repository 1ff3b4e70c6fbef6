package phrase

import (
	"regexp"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/spelling"
)

// Names reports whether a text names an ingredient, by the last word of its
// name. A text that names another thing with that word, "icing sugar", does
// not name it.
func Names(in *larder.Larder, name, text string) bool {
	words := strings.Fields(name)
	if len(words) == 0 {
		return false
	}
	last := words[len(words)-1]
	for _, w := range []string{last, strings.TrimSuffix(last, "s"),
		strings.TrimSuffix(last, "es")} {
		for _, form := range []string{w, w + "s", w + "es"} {
			for _, a := range Around(text, form) {
				if len(w) > 2 && !other(in, name, a[0], form) && !other(in, name, form, a[1]) {
					return true
				}
			}
		}
	}
	return HasWord(text, name)
}

// dryBelow is the most water of fruit and nuts that are worked into a dough
// unnamed, %: zest has more.
const dryBelow = 40

// NotThis reports whether a text names another thing in full whose last
// word one shares, and says no other word of the one: "warm water" is not
// the cold water.
func NotThis(one, another, text string) bool {
	first, _, two := strings.Cut(one, " ")
	return one != another && LastWords(one, 1) == LastWords(another, 1) && HasWord(text, another) &&
		two && !HasWord(text, first)
}

// NamesClass reports whether a text names all ingredients of one's class:
// "the fruit".
func NamesClass(in *larder.Larder, name, text string) bool {
	it, known := in.Find(name)
	word := ""
	if known && it.Water < dryBelow {
		word = classWords[it.Class]
	}
	return word != "" && (HasWord(text, "the "+word) || HasWord(text, "and "+word))
}

// classWords are the words for all ingredients of a class.
var classWords = map[larder.Class]string{
	larder.ClassFruit: "fruit",
	larder.ClassNut:   "nuts",
	larder.ClassSpice: "spices",
}

// other reports whether two words name a thing of the larder that is not
// the one named.
func other(in *larder.Larder, name, first, second string) bool {
	if first == "" || second == "" {
		return false
	}
	it, known := in.Find(first + " " + second)
	own, _ := in.Find(name)
	return known && own != nil && it != own
}

// Speaks reports whether a text names a part itself: "the filling",
// "egg wash".
func Speaks(name, text string) bool {
	words := strings.Fields(name)
	names := []string{name, words[len(words)-1]}
	if kind := words[len(words)-1]; len(words) > 1 && (kind == "filling" || kind == "topping") {
		names = append(names, strings.TrimSuffix(name, " "+kind))
	}
	for _, n := range names {
		if HasWord(text, n) {
			return true
		}
	}
	return false
}

// LastWords are the last n words of a text.
func LastWords(text string, n int) string {
	words := strings.Fields(text)
	return strings.Join(words[max(0, len(words)-n):], " ")
}

// JoinsTo reports whether a text puts a part into something: "combine the
// starter with the flour".
func JoinsTo(text, name string) bool {
	return spelling.Pattern(`(?i)\b` + regexp.QuoteMeta(name) +
		`\b[^,.]{0,20}? (?:with|and|to|into|in)\b`).MatchString(text)
}
