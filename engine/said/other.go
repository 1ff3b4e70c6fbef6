package said

import "strings"

// otherWords are words of the craft that no verb can stand for without
// a loss: the line to write in place of each.
var otherWords = map[string]string{
	"laminate": `{ fill = "roll-in butter" }, then { sheet = "6 mm" }, { fold = 1 } ` +
		`and { chill = "30 min" } for each turn`,
	"cover":    "covered = true in the rest or the proof that it is covered for",
	"wrap":     "covered = true in the rest, the chill or the store that it is wrapped for",
	"cure":     `{ store = "14 days" }`,
	"serve":    `{ hold = "1 h", at = "60 C" }, or nothing for it`,
	"autolyse": `{ soak = "30 min" } before the mix`,
}

// OtherStep gives the line to write for a word of the craft that is no
// step; "" where there is none.
func OtherStep(word string) string { return otherWords[Key(word)] }

// OtherSteps lists the words that OtherStep knows.
func OtherSteps() []string {
	out := make([]string, 0, len(otherWords))
	for word := range otherWords {
		out = append(out, word)
	}
	return out
}

// otherOptions are words that bakers write for an option of a step.
var otherOptions = map[string]string{
	"temp": "at", "temperature": "at", "oven": "at", "in": "at", "place": "at", "where": "at",
	"until": "note", "speed": "note", "vitesse": "note", "when": "note", "why": "note",
	"tool": "note", "on": "at", "cover": "covered", "comment": "note", "how": "note",
	"over":   "note",
	"method": "by", "using": "by", "weight": "amount", "mass": "amount",
	"number": "pieces", "thickness": "as", "form": "as", "internal": "core", "inside": "core",
	"minutes": "time", "duration": "time", "for": "time",
}

// OtherOption gives the option that a word means; "" where there
// is none.
func OtherOption(word string) string { return otherOptions[Key(word)] }

// Key is a key in small letters, with blanks for underscores.
func Key(key string) string { return strings.ReplaceAll(strings.ToLower(key), "_", " ") }

// Stems gives the words that a form in "-ing" may be of: "baking" is of
// "bak", or "bake".
func Stems(key string) []string {
	stem, doing := strings.CutSuffix(Key(key), "ing")
	if !doing || len(stem) < 2 {
		return nil
	}
	forms := []string{stem, stem + "e"}
	if n := len(stem); stem[n-1] == stem[n-2] {
		forms = append(forms, stem[:n-1])
	}
	return forms
}

// little are the words that a baker puts before a way or a place, and
// that say nothing.
var little = map[string]bool{"by": true, "in": true, "on": true, "at": true, "with": true,
	"over": true, "a": true, "an": true, "the": true}

// Fold makes a baker's words comparable: small letters, blanks for
// hyphens and commas, and none of the little words before them.
func Fold(text string) string {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool {
		return r == ' ' || r == '-' || r == ',' || r == '_' || r == '\t'
	})
	for len(words) > 1 && little[words[0]] {
		words = words[1:]
	}
	return strings.Join(words, " ")
}

// Whole reports whether a text is a whole number and nothing else.
func Whole(text string) bool { return text != "" && strings.Trim(text, "0123456789 ") == "" }
