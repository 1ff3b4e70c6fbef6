package said

import (
	"strings"

	"forebake/engine/spelling"
)

// otherWords are words of the craft that no verb replaces without a
// loss, each with the line to write.
var otherWords = map[string]string{
	"laminate": `{ fill = "roll-in butter" }, then { sheet = "6 mm" }, { fold = 1 } ` +
		`and { chill = "30 min" } for each turn`,
	"cure":  `{ store = "14 days" }`,
	"serve": `{ hold = "1 h", at = "60 C" }, or nothing for it`,
}

var rotates = spelling.Pattern(`(?i)\b(?:90|180|45|ninety) ?(?:degrees?|deg|°|º|grad|degrés|` +
	`gradi)|` +
	`^(?:it |the (?:dough|tray|tin|pan) )?(?:an? )?(?:quarter(?: turn)?|half turn|round|around|` +
	`over|upside down|clockwise|the (?:tray|tin|pan|dough)|out)\b`)

// Rotates reports whether words say that a thing is turned round, and
// not folded: "90 degrees".
func Rotates(text string) bool { return rotates.MatchString(strings.TrimSpace(text)) }

// Covering reports whether a word of a step covers or wraps what it is
// said of.
func Covering(word string) bool {
	return word == "cover" || word == "wrap" || word == "abdecken" || word == "couvrir"
}

// OtherStep gives the line for a word of the craft that is no step; ""
// for none.
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
	"method": "by", "using": "by", "weight": "note", "mass": "amount",
	"number": "pieces", "thickness": "as", "form": "as", "makes": "pieces", "yield": "pieces",
	"leaving": "note", "leave": "note", "while": "note", "width": "note", "border": "note",
	"fat": "note", "oil": "note", "internal": "core", "inside": "core",
	"minutes": "time", "duration": "time", "for": "time", "into": "at", "onto": "at", "under": "at",
	"then": "note", "after": "note", "per piece": "note", "piece": "note", "each": "note",
	"desired dough temperature": "to", "desired temperature": "to", "moule": "tin", "adds": "with",
	"add": "with", "ingredients": "with", "adding": "with", "note to self": "note", "notes": "note",
	"remark": "note", "tip": "note", "turning": "note", "turn": "note", "mould": "tin",
	"mold": "tin", "dish": "tin", "tray": "tin", "machine": "by",
	"target": "to", "dough temp": "to", "dough temperature": "to", "final temp": "to", "ddt": "to",
	"core temp": "core", "internal temp": "core", "internal temperature": "core", "size": "note",
	"within": "note",
	"decor":  "note", "before": "note", "preheat": "note", "tray up": "tin", "trays": "tin",
}

// otherSettings are words that bakers write for a setting of an
// ingredient.
var otherSettings = map[string]string{"state": "as", "form": "as", "prep": "as",
	"preparation": "as",
	"condition":   "as", "cut": "as", "how": "as", "temperature": "temp", "at": "temp",
	"warmth": "temp",
	"weight": "amount", "quantity": "amount", "qty": "amount", "mass": "amount", "volume": "amount",
	"count": "amount", "number": "amount", "comment": "note", "notes": "note", "remark": "note",
	"brand": "note", "for": "note", "hold back": "reserve", "held back": "reserve"}

// OtherSetting gives the setting of an ingredient that a word means; ""
// for none.
func OtherSetting(word string) string { return otherSettings[Key(word)] }

// OtherOption gives the option that a word means; "" for none.
func OtherOption(word string) string { return otherOptions[Key(word)] }

// Key is a key in small letters, with blanks for underscores.
func Key(key string) string { return strings.ReplaceAll(strings.ToLower(key), "_", " ") }

// Stems gives the words that an "-ing" form may be of: "baking" is of
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

// little are the words before a way or a place that say nothing.
var little = map[string]bool{"by": true, "in": true, "on": true, "at": true, "with": true,
	"over": true, "a": true, "an": true, "the": true}

// Fold makes a baker's words comparable: small letters, blanks for
// hyphens and commas, no little words before them.
func Fold(text string) string {
	words := strings.FieldsFunc(strings.ToLower(text), func(r rune) bool {
		return r == ' ' || r == '-' || r == ',' || r == '_' || r == '\t'
	})
	for len(words) > 1 && little[words[0]] {
		words = words[1:]
	}
	return strings.Join(words, " ")
}

// Whole reports whether a text is only a whole number.
func Whole(text string) bool { return text != "" && strings.Trim(text, "0123456789 ") == "" }

// otherKeys are words that bakers write for a key of a formula or of
// a part.
var otherKeys = map[string][]string{
	"steps": {"method", "instructions", "directions", "process", "procedure",
		"preparation", "step"},
	"makes": {"yield", "yields", "make"},
	"about": {"title", "description", "note", "notes", "comment", "source", "author", "serves",
		"servings", "category", "tags", "difficulty", "summary", "equipment"},
	"ingredients": {"ingredient"},
	"tin":         {"pan", "mould", "mold", "dish", "tray", "moule", "form", "pans", "tins"},
}

// OtherKeys gives the words that bakers write for a key, in a
// fixed order.
func OtherKeys(key string) []string { return otherKeys[key] }

var (
	zestAlone = spelling.Pattern(`(?i)^(?:(?:finely |fresh |freshly )*grated )?(?:citrus )?` +
		`(?:zest|rind)(?:, (?:finely )?grated)?$`)
	restNames = spelling.Pattern(`(?i)^(?:fermento|auto)ly[sz]e$|^(?:bench rest|bulk|` +
		`(?:first|second|final|bulk|intermediate) (?:rise|rest|prove|proof|ferment\w*))$`)
)

// IsZest reports whether a name is zest and does not say of what.
func IsZest(name string) bool { return zestAlone.MatchString(strings.TrimSpace(name)) }

// IsRest reports whether words name a rest, and no shape: "autolyse".
func IsRest(words string) bool { return restNames.MatchString(strings.TrimSpace(words)) }
