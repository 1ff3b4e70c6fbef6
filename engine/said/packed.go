package said

import (
	"fmt"
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

const (
	packs = `(?:sachets?|packets?|envelopes?|packages?|pkgs?|packs?|bags?|tins?|cans?|jars?|` +
		`cubes?|würfel|blocks?|cakes?|cartons?|tubs?|bottles?|bars?|sticks?|pouch(?:es)?|boxe?s?)`
	number = `(\d+(?:[./]\d+)?|an?|one|two|three|four)`
	mass   = `(\d[\d.,]* ?(?:kg|g|grams?|oz|ounces?|lbs?|ml|cl|dl|l))`
)

var (
	// packOf: 7 g sachet; packsOf: 2 x 7 g sachets; packsEnd: 2 sachets
	// (7 g each)
	packOf  = spelling.Pattern(`(?i)^` + mass + ` ` + packs + `$`)
	packsOf = spelling.Pattern(`(?i)^` + number + ` ?(?:(?:x|×|\*) ?` + mass + `(?: ` +
		packs + `)?| ` +
		mass + ` ` + packs + `)$`)
	packsEnd = spelling.Pattern(`(?i)^` + number + ` ` + packs + `,? (?:of )?\(?` + mass +
		`( each)?\)?$`)
	each = spelling.Pattern(`(?i)^(.*\d.*?) ?(?:each|apiece|(?:an?|per|every) \pL{3,}|` +
		`(?:for|in|on|to|into) (?:each|every|an?)\b(?: \pL+)?)$`)
	plus = spelling.Pattern(`(?i)^(\d[\d.,]* ?(?:g|kg|ml|l)),? (?:plus|and|\+) (?:some |` +
		`a (?:little|bit) )?(?:more|extra)\b.*$`)
)

// numbers are numbers in words.
var numbers = map[string]string{"a": "1", "an": "1", "one": "1", "two": "2", "three": "3",
	"four": "4", "five": "5", "six": "6", "eight": "8", "ten": "10", "twelve": "12", "twenty": "20"}

// NumberWord is the number that a word is, in figures; "" for others.
func NumberWord(word string) string { return numbers[strings.ToLower(word)] }

// Packed reads an amount by its packs: "7 g sachet", "2 x 7 g", "1 tin
// (397 g)". why asks where the text can mean two amounts.
func Packed(text string) (out, why string) {
	text = strings.TrimSpace(text)
	if m := packOf.FindStringSubmatch(text); m != nil {
		return m[1], ""
	}
	m, whole := packsOf.FindStringSubmatch(text), false
	switch {
	case m != nil:
		m[2] += m[3] // one of the two is empty
	default:
		if m = packsEnd.FindStringSubmatch(text); m == nil {
			return "", ""
		}
		whole = m[3] == ""
	}
	count := strings.ToLower(m[1])
	if w, ok := numbers[count]; ok {
		count = w
	}
	n, fault := quantity.Read(count+" pieces", quantity.Of(quantity.Count))
	q, fault2 := quantity.Read(m[2], quantity.Of(quantity.Mass, quantity.Volume))
	if fault != nil || fault2 != nil || n.Lo <= 0 {
		return "", ""
	}
	x, _ := quantity.FromBase(q.Lo*n.Lo, q.Unit)
	times := quantity.Plain(x) + " " + q.Unit
	if whole && n.Lo < 1 { // "1/2 cube (21 g)"
		return m[2], ""
	}
	if whole && n.Lo != 1 {
		return "", fmt.Sprintf("%q can be of each or of all; write %q, or %q", text, times, m[2])
	}
	return times, ""
}

// Each reads an amount for one piece: "15 g each".
func Each(text string) (one string, ok bool) {
	m := each.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return strings.TrimSpace(m[1]), true
}

// AndMore reads an amount with more for the bench: "500 g plus extra".
// Dusting is too little to count.
func AndMore(text string) (out string, ok bool) {
	m := plus.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return m[1], true
}

// TheRest reports whether words of an amount say that all that is left
// goes on.
func TheRest(text string) bool { return restOf.MatchString(strings.TrimSpace(text)) }

var restOf = spelling.Pattern(`(?i)^(?:(?:all )?(?:the |its )?(?:rest|remainder|other half|` +
	`remaining(?: \pL+)?)(?: of it)?|what is left|der rest|le reste|il resto|el resto)$`)

var someShares = map[string]float64{"half": 0.5, "half of it": 0.5, "1/2": 0.5, "½": 0.5,
	"a third": 1.0 / 3, "one third": 1.0 / 3, "1/3": 1.0 / 3, "two thirds": 2.0 / 3,
	"2/3": 2.0 / 3, "a quarter": 0.25, "one quarter": 0.25, "1/4": 0.25, "three quarters": 0.75,
	"3/4": 0.75, "an eighth": 0.125, "a fifth": 0.2, "a sixth": 1.0 / 6, "all": 1, "all of it": 1,
	"a half": 0.5, "one half": 0.5, "⅓": 1.0 / 3, "⅔": 2.0 / 3, "¼": 0.25, "¾": 0.75,
	"two fifths": 0.4, "one fifth": 0.2, "one sixth": 1.0 / 6, "one eighth": 0.125}

// Share reads a share of a whole: "half", "a third".
func Share(text string) (x float64, ok bool) {
	x, ok = someShares[strings.ToLower(strings.TrimSpace(text))]
	return x, ok
}

var pods = spelling.Pattern(`(?i)^(\d+|an?|half an?|1/2|½) ?(?:pods?|beans?|sticks?|gousses?|` +
	`schoten?|` +
	`stång(?:er)?|stænger|baccell[oi]|bacc(?:a|he)|stecc(?:a|he)|vainas?|ramas?|vage(?:m|ns)|` +
	`favas?|stangen?|laska)$`)

var vanillas = spelling.Pattern(`(?i)^(?:van[ií]g?l+[aeij]\w*|vainilla|baunilha)$`)

// IsVanilla reports whether a name is vanilla and no more, in any of a
// kitchen's languages.
func IsVanilla(name string) bool { return vanillas.MatchString(strings.TrimSpace(name)) }

// Vanilla is what a name that is vanilla and no more is, by its amount:
// of pods the bean, with their number, by the spoon the extract. name is
// "" for others.
func Vanilla(word, text string) (amount, name string) {
	if !IsVanilla(word) {
		return "", ""
	}
	if m := Pods(text); m != "" {
		return m, "vanilla bean"
	}
	if _, fault := quantity.Read(text, quantity.Of(quantity.Volume)); fault == nil {
		return text, "vanilla extract"
	}
	return "", ""
}

var wholeOnes = spelling.Pattern(`(?i)\b(?:whole|inter[aei]|entera?s?|enteros?|inteir[ao]s?|` +
	`entiere?s?|entière?s?|ganze[nrs]?|hela|hele)(?:\b|$)`)

// IsWhole reports whether a name says that its things are left whole.
func IsWhole(name string) bool { return wholeOnes.MatchString(name) }

// Pods reads a number of pods of what may be an extract too: "1 pod"
// of vanilla.
func Pods(text string) string {
	m := pods.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return ""
	}
	if w, ok := numbers[strings.ToLower(m[1])]; ok {
		m[1] = w
	}
	return m[1] + " pieces"
}
