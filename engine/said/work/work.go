// Package work reads the word of a step for what kind of work it is, and
// words for what it is done with. It knows no formula.
package work

import (
	"strings"

	"forebake/engine/said"
	"forebake/engine/spelling"
)

// rises are words of a step that say that the dough rises, whether at
// first or at last.
var rises = map[string]bool{"rise": true, "rising": true, "let rise": true, "lievitare": true,
	"lievitazione": true, "jäsa": true, "jäs": true, "jäsning": true,
	"gehen": true, "gehen lassen": true,
	"aufgehen": true, "gären": true, "pousse": true, "pousser": true, "levado": true, "heve": true,
	"hev": true, "hæve": true, "hævning": true, "raske": true, "kohota": true, "kohotus": true,
	"wyrastanie": true, "leudar": true, "levar": true, "fermentar": true, "crescer": true}

// Rises reports whether a word of a step says that the dough rises.
func Rises(word string) bool { return rises[said.Key(word)] }

var onceOnly = spelling.Pattern(`^(?:knock (?:it )?back|knock down|punch(?: (?:it )?down)?|` +
	`deflate|` +
	`degas|rabat|rabattre|dégaz\w+|zusammenschlagen|zusammenstoßen|sgonfiare|slå ned)$`)

// Once reports whether a word of a step is work that is done once where
// no number is said: the dough is knocked back.
func Once(word string) bool { return onceOnly.MatchString(said.Key(word)) }

var ofYeast = spelling.Pattern(`(?i)^(?:the |your |dissolve )*(?:(?:dry|dried|active|` +
	`fresh) )*(?:yeast|` +
	`hefe|levure|lievito|levadura|jäst|gær|gjær)\b`)

// ProofsYeast reports whether words of a proof are of the yeast, and not of the dough: "the yeast
// in the warm milk".
func ProofsYeast(words string) bool { return ofYeast.MatchString(strings.TrimSpace(words)) }

// plainNotes are keys of a step that say that their words are a note.
var plainNotes = map[string]bool{"note to self": true, "notes": true, "remark": true, "tip": true,
	"comment": true, "why": true}

// PlainNote reports whether a key says that its words are a note.
func PlainNote(key string) bool { return plainNotes[said.Key(key)] }

var tools = spelling.Pattern(`(?i)\b(?:piping bag|pastry bag|bag|nozzle|tip|syringe|spatula|` +
	`scraper|` +
	`fork|knife|blade|lame|scissors|cutter|pin|brush|spoon|ladle|scoop|whisk|hands?|fingers?|` +
	`fingertips|thumb|ruler|razor|dowel|thermometer|sieve|strainer|ring|wheel|floss|thread|` +
	`sac à poche|poche|spritzbeutel|nudelholz|messer|mattarello|coltello|sprits|manga pastelera|` +
	`rodillo|cuchillo)\b`)

// Tool reports whether words name a tool, and no food.
func Tool(words string) bool { return said.NoFigure(words) && tools.MatchString(words) }

var byHand = spelling.Pattern(`(?i)\b(?:by hand|palms?|fingers?|fingertips|hands|pat(?:ted)?|` +
	`press(?:ed)?|dimple)\b`)

var patted = spelling.Pattern(`^(?:pat|press|flatten by hand|push|dimple)(?: out| down| flat)?$`)

// ByHand reports whether a step that makes a dough flat does so by hand: by its word, or by the
// words beside it. A pin among them is a pin.
func ByHand(word, words string) bool {
	return !rolled.MatchString(words) &&
		(patted.MatchString(said.Key(word)) || byHand.MatchString(words))
}

var rolled = spelling.Pattern(`(?i)\b(?:pins?|roll(?:ed|ing)?|sheeter)\b`)

var thin = spelling.Pattern(`(?i)\b(?:(?:paper|wafer|tissue|very|as|strudel)[- ]thin|` +
	`thin as\b.*|see[- ]through|see through it|translucent|transparent|read (?:a|the|your) ` +
	`(?:newspaper|paper|letter|pattern)|sehr dünn|hauchdünn|très fine?|sottilissim\pL+|` +
	`papierdünn|tunn som papper)\b`)

// Thin reports whether words say that a dough is drawn out thin on purpose: "paper-thin".
func Thin(words string) bool { return thin.MatchString(words) }

var long = spelling.Pattern(`(?i)\b(?:hours?|hrs?|day|days|night|long|slow\w*|sous[- ]vide|` +
	`confit|keep\w*|hold\w*|sit\w*)\b`)

// Long reports whether words of a cook or a melt say that it goes on for longer than an hour.
func Long(words string) bool { return long.MatchString(words) }

var leftTo = spelling.Pattern(`(?i)^(?:it |them |the \pL+ )?to (\pL+)\b`)

// LeftTo is what words say that a part is left to do: "to cool for 20 min" is cool; "" for none.
func LeftTo(words string) string {
	if m := leftTo.FindStringSubmatch(strings.TrimSpace(words)); m != nil {
		return strings.ToLower(m[1])
	}
	return ""
}

// Leaves reports whether a word of a step leaves a part alone and says no more.
func Leaves(word string) bool { return said.Key(word) == "leave" || said.Key(word) == "leaving" }

// Dries reports whether a word of a step says that the air dries a part.
func Dries(word string) bool { return strings.HasPrefix(said.Key(word), "dry") }

var (
	byHeat = spelling.Pattern(`(?i)\b(?:oven|stove|hob|heat|dehydrator|pan)\b`)
	wiped  = spelling.Pattern(`(?i)\b(?:paper|cloth|towels?|salad spinner|well|thoroughly|pat)\b`)
)

// DriedBy tells how words say that a part is dried: by heat, or by the hands.
func DriedBy(words string) (heat, hands bool) {
	heat = byHeat.MatchString(words)
	return heat, !heat && said.NoFigure(words) && wiped.MatchString(words)
}

var cutsInto = spelling.Pattern(`(?i)\b(?:length-?(?:ways?|wise)|down the middle|` +
	`(?:nearly|almost|partly|half-?way|not quite) (?:all the way )?through|slits?|notch\w*|` +
	`snips?|cross(?:es)? (?:in|on|into)|der länge nach|längs|nel senso della lunghezza)\b`)

// CutsInto reports whether words of a cut leave the piece whole, or open it along its length: a
// roll that is cut lengthways and twisted is still one.
func CutsInto(words string) bool { return cutsInto.MatchString(words) }
