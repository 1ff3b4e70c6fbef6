// Package beside reads an amount with words beside it that no other
// reader knows: "1/4 pint, blood heat", "as needed, about 1/4 cup", "48
// pieces of 5 g". It knows no formula.
package beside

import (
	"fmt"
	"strconv"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said/unread"
	"forebake/engine/spelling"
)

// otherAmount are words that make another amount of the one before them.
var otherAmount = spelling.Pattern(`(?i)\b(?:minus|plus|weight|net|gross|extra|of (?:the|total|` +
	`dough|flour|it)|divided|split)\b`)

// Words parts an amount from the words behind it, "5 cups, spooned and
// leveled", where they can turn nothing. counted says that the thing is
// counted where no unit is written. ok is false where they are asked.
func Words(l *larder.Larder, text string, counted bool) (amount, words string, ok bool) {
	amount, words = Parted(text, counted)
	if amount == "" {
		return "", "", false
	}
	return amount, words, !unread.AskedOf(l, words) && !OtherAmount(words)
}

// OtherAmount reports whether words make another amount of the one before them.
func OtherAmount(words string) bool { return otherAmount.MatchString(words) }

// Parted is an amount and the words behind it; "" for none. counted is as of Words.
func Parted(text string, counted bool) (amount, words string) {
	text = strings.TrimSpace(text)
	if strings.Contains(text, "%") { // "2 % of the dough" is another percent
		return "", ""
	}
	for i := len(text) - 1; i > 0; i-- {
		if !strings.ContainsRune(" ,;(", rune(text[i])) {
			continue
		}
		amount = strings.TrimRight(text[:i], " ,;(")
		words = strings.Trim(text[i:], " ,;().-")
		_, fault := quantity.Read(quantity.OfCountry(amount, "us"), quantity.Amounts)
		if fault != nil && counted && text[i] != ' ' {
			_, fault = quantity.Read(amount+" pieces", quantity.Of(quantity.Count))
		}
		if fault == nil && words != "" {
			return amount, words
		}
	}
	return "", ""
}

var pieces = spelling.Pattern(`(?i)^(\d+) ?(?:(?:pieces?|pcs?\.?|sticks?|bars?|squares?|cubes?|` +
	`slices?|balls?|lumps?|stück|stk|pièces?|bâtons?|batons?|pezzi|piezas|st|kpl)?) ?` +
	`(?:(?:of|à|de|da|@) ?(\d[\d.,]* ?(?:g|grams?|oz|ounces?))(?: each)?|` +
	`[,(] ?(?:about )?(\d[\d.,]* ?(?:g|grams?|oz|ounces?)) (?:each|apiece)\)?)$`)

// Pieces reads a number of pieces with the weight of one: "48 pieces of
// 5 g" is 240 g.
func Pieces(text string) (total string, ok bool) {
	m := pieces.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	n, err := strconv.Atoi(m[1])
	one, fault := quantity.Read(m[2]+m[3], quantity.Of(quantity.Mass)) // one of them is empty
	if err != nil || fault != nil || n < 1 {
		return "", false
	}
	x, _ := quantity.FromBase(one.Lo*float64(n), one.Unit)
	return quantity.Plain(x) + " " + one.Unit, true
}

var needed = spelling.Pattern(`(?i)^(?:(?:or )?as (?:needed|required|necessary)|if needed|enough|` +
	`to taste|nach bedarf|q\.?b\.?|al gusto|selon besoin)[ ,;:(]+([^()]*\d[^()]*)\)?$`)

// Needed reads an amount that is called as much as is needed: "as
// needed, about 1/4 cup".
func Needed(text string) (amount string, ok bool) {
	m := needed.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return strings.TrimSpace(m[1]), true
}

var less = spelling.Pattern(`(?i)^(.*\d.*?),? (?:minus|less|menos|meno|moins|−|-) ` +
	`(.*(?:\d|½|¼|¾|⅓|⅔).*)$`)

// Less reads an amount with another taken off: "1 cup minus 1 tbsp" is
// 222 ml. Both are volumes, or both weights.
func Less(text string) (out string, ok bool) {
	m := less.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	kinds := quantity.Of(quantity.Mass, quantity.Volume)
	a, fault1 := quantity.Read(m[1], kinds)
	b, fault2 := quantity.Read(m[2], kinds)
	if fault1 != nil || fault2 != nil || a.Kind != b.Kind || !a.IsPoint() || !b.IsPoint() ||
		a.Lo <= b.Lo {
		return "", false
	}
	return fmt.Sprintf("%.4g %s", a.Lo-b.Lo, a.Kind.Base()), true
}

var level = spelling.Pattern(`(?i)^(.*\d.*?),? \(?(?:without (?:a |the )?top|no top|bez gorki|` +
	`struck|level(?:led|ed)?(?: off)?)\)?$`)

// Level reads a spoon that is told to be level: "1 tsp without top".
func Level(text string) (out string, ok bool) {
	m := level.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	_, fault := quantity.Read(m[1], quantity.Of(quantity.Volume))
	return m[1], fault == nil
}

var upTo = spelling.Pattern(`(?i)^(.*\d.*?),? \(?(?:plus|and|\+|with) (?:up to|perhaps|maybe) ` +
	`(?:another |an? extra )?([\d½¼¾⅓⅔].*?)(?: (?:more|extra))?(?:,? (?:if|as) [^\d]*)?\)?$`)

// UpTo reads an amount of which more may go in: "1/2 cup plus up to 1
// tbsp more if needed" is a range.
func UpTo(text string) (out string, ok bool) {
	m := upTo.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	kinds := quantity.Of(quantity.Mass, quantity.Volume)
	a, fault1 := quantity.Read(m[1], kinds)
	b, fault2 := quantity.Read(m[2], kinds)
	if fault1 != nil || fault2 != nil || a.Kind != b.Kind {
		return "", false
	}
	return fmt.Sprintf("%.4g to %.4g %s", a.Lo, a.Hi+b.Hi, a.Kind.Base()), true
}

var more = spelling.Pattern(`(?i)^(.*\d.*?)[,;]? \(?(?:and |plus |or |with )?(?:a (?:little|` +
	`bit|touch) |some )?more,? (?:if|as|when|should)\b[^\d]*$`)

// More reads an amount of which more goes in as the baker sees fit: "2
// tbsp, more if too thick". The more is not counted.
func More(text string) (out string, ok bool) {
	m := more.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	_, fault := quantity.Read(m[1], quantity.Amounts)
	return m[1], fault == nil
}

var heaped = spelling.Pattern(`(?i)^(heaped|heaping|rounded|scant|generous) ` +
	`([\d./½¼¾⅓⅔ ]+) ?(.+)$`)

// Heaped reads a spoon or cup whose word stands before its number:
// "scant 1/2 cup".
func Heaped(text string) (out string, ok bool) {
	m := heaped.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return quantity.Heaped(m[2], m[1], m[3])
}

var eachOf = spelling.Pattern(`(?i)^(?:in(?:to)? )?(\d+)((?: \pL[\pL'-]{2,}){0,3}?|x|×|),? ?\(?` +
	`(?:(?:at|of|x|×|da|di|de|à|von|zu|å|av|af|weighing|scaled (?:at|to)) ?)?` +
	`(?:about |around |roughly |ca\.? |circa |etwa |env(?:iron|\.) |at )*(\d[\d.,]*(?: \d/\d)?` +
	`(?: ?(?:-|–|to) ?\d[\d.,]*(?: \d/\d)?)? ?(?:g|grams?|gr|oz)\b)` +
	`(?: each| apiece| l'uno| cad(?:auno|a una?)| chacune?| je)?\)?((?:[,;] ?[^\d]*)?)$`)

// kindWords are words between a number and a weight that make the number one of them.
var kindWords = spelling.Pattern(`(?i)^(?:grams?|min|mins|cups?|days?|hours?)\b`)

// EachOf writes pieces with their weight as one text that is read: "10, about 95 g each" is "10
// pieces of 95 g", and "16 pieces (55 g), rolled" too. Others stay.
func EachOf(text string) string {
	if quantity.IsPlain(text) { // "60 g", as most are
		return text
	}
	m := eachOf.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || kindWords.MatchString(strings.TrimSpace(m[2])) || unread.Turns(m[4]) ||
		strings.Contains(text, m[1]+m[3]) {
		return text
	}
	return m[1] + " pieces of " + m[3]
}

var both = spelling.Pattern(`(?i)^(?:about )?([\d.,]+ ?%)[,;]? ?(?:\(|/|=|or|i\.e\.)? ?` +
	`(\d[\d.,]* ?(?:g|kg|ml|l|oz|lbs?))\)?$`)

// Both gives the weight of an amount that is written as baker's percent
// and as a weight: "100 %, 500 g".
func Both(text string) (out string, ok bool) {
	m := both.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	_, fault := quantity.Read(m[2], quantity.Of(quantity.Mass, quantity.Volume))
	return m[2], fault == nil
}

var orEnough = spelling.Pattern(`(?i)^(.*\d.*?),? \(?or (?:as much as|enough|whatever|as|more|` +
	`less|` +
	`until|to taste|so)\b[^\d]*$`)

// OrEnough reads an amount that the baker may change by eye: "5 tbsp, or
// enough to pipe".
func OrEnough(text string) (out string, ok bool) {
	m := orEnough.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	_, fault := quantity.Read(m[1], quantity.Amounts)
	return m[1], fault == nil
}

var cubic = spelling.Pattern(`(?i)^(\d+) ?cc\.?$`)

// fewestCubic is the number from which "cc" can be no teaspoons.
const fewestCubic = 20

// Cubic reads cubic centimetres, of so many that they are no French
// teaspoons: "150 cc".
func Cubic(text string) (out string, ok bool) {
	m := cubic.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	n, err := strconv.Atoi(m[1])
	return m[1] + " ml", err == nil && n >= fewestCubic
}

var (
	envelopes = spelling.Pattern(`(?i)^(\d+) ?(?:sachets?|packets?|envelopes?|packages?|pkgs?|` +
		`packs?)[, ]*\(?(\d+(?:\.\d+)?) ?g\)?$`)
	shellEggs = spelling.Pattern(`(?i)^(\d+) ?(?:x|×) ?\d{2} ?g (?:[\pL -]+ )?eggs?$`)
	pieceOf   = spelling.Pattern(`(?i)^(\d+|½|1/2)[,;] ?(?:split|scraped|slit|halved|opened|` +
		`seeds)\b[^\d]*$`)
)

// A packet of dry yeast holds this much, g: the packets of the trade, 7 to 11 g, with room. Memory.
const (
	leastPacketG = 6
	mostPacketG  = 12
)

// Envelopes reads packets of dry yeast with a weight that can be of each
// or of all, "2 envelopes (16 g)", where only one of the two fits a packet.
func Envelopes(text string) (total string, ok bool) {
	m := envelopes.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	n, err1 := strconv.ParseFloat(m[1], 64)
	g, err2 := strconv.ParseFloat(m[2], 64)
	if err1 != nil || err2 != nil || n < 2 {
		return "", false
	}
	fits := func(one float64) bool { return one >= leastPacketG && one <= mostPacketG }
	switch each, all := fits(g), fits(g/n); {
	case all && !each:
		return m[2] + " g", true
	case each && !all:
		return quantity.Plain(g*n) + " g", true
	}
	return "", false
}

// ShellEggs reads eggs that are told by their weight in the shell, "2 x 59
// g eggs": how many they are.
func ShellEggs(text string) (count string, ok bool) {
	m := shellEggs.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return m[1] + " pieces", true
}

// OpenedPods reads pods that are opened, "1, split and scraped": how many
// they are.
func OpenedPods(text string) (count string, ok bool) {
	m := pieceOf.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return m[1] + " pieces", true
}

var zestOf = spelling.Pattern(`(?i)^(\d|½|1/2|an?|one|half an?|two) (lemon|orange|lime)s?(?:,? ` +
	`(?:and|plus|\+|&) (\d|½|1/2|an?|one|half an?|two) (lemon|orange|lime)s?)?$`)

// Fruit is a number of fruits, and their kind: "1" and "orange".
type Fruit struct{ Number, Kind string }

// ZestOf reads the fruits that a zest is of, one kind or two: "1 orange
// and 1 lemon". The second is empty where there is one.
func ZestOf(text string) (first, second Fruit, ok bool) {
	m := zestOf.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return first, second, false
	}
	return Fruit{m[1], strings.ToLower(m[2])}, Fruit{m[3], strings.ToLower(m[4])}, true
}
