// Package said reads words that mean a figure: a gas mark, a warm place, a pinch, a sachet, a sign
// instead of a time. Each answer is a text for the quantity reader, or a line to write, with the
// words of a report. It reads no file.
package said

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said/unread"
	"forebake/engine/spelling"
)

// Taken is a word's reading: a text to read, and what a report says of it.
type Taken struct{ Text, Says string }

var gasMark = spelling.Pattern(`^(?:gas )?(?:gas|mark)(?: mark)? ?([1-9])$`)

// GasMark is the temperature of a mark of a UK oven, its words in lower case.
func GasMark(words string) (Taken, bool) {
	m := gasMark.FindStringSubmatch(words)
	if m == nil {
		return Taken{}, false
	}
	t := quantity.GasMark(m[1])
	return Taken{t, fmt.Sprintf("gas mark %s is taken as %s", m[1], t)}, true
}

// warmths are words for ambient and oven temperatures. Common practice, no source. A taken one is
// read as its ambient range, and told; others are asked.
var warmths = map[string]struct {
	write string
	taken bool
}{
	"warm oven": {"30 C", false}, "warm place": {"25 C to 30 C", true},
	"warm spot": {"25 C to 30 C", true}, "warm room": {"25 C to 30 C", true},
	"warm": {"25 C to 30 C", true}, "cool place": {"12 C to 16 C", false},
	"airing cupboard":        {"25 C to 30 C", true}, // the next: memory
	"warm oven (turned off)": {"25 C to 45 C", true},
	"warm oven turned off":   {"25 C to 45 C", true},
	"turned off oven":        {"22 C to 45 C", true}, "oven turned off": {"22 C to 45 C", true},
	"oven off with light on": {"24 C to 35 C", true}, "oven with light on": {"24 C to 35 C", true},
	"oven with the light on": {"24 C to 35 C", true}, "oven light on": {"24 C to 35 C", true},
	"cellar":   {"10 C to 14 C", false},
	"lukewarm": {"35 C to 40 C", false},
	"proofer":  {"28 C", false}, "prover": {"28 C", false}, "cold": {"4 C", false},
}

var warmSpot = spelling.Pattern(`^(?:some ?where|any ?where)? ?(?:nice and )?warm(?: (?:place|` +
	`spot|kitchen|room|corner|cupboard|draught free place|draft free place|and draught free|` +
	`and draft free))?(?: (?:in|of|by|near|free from|away from) .*)?$`)

// heater are places beside a source of heat: as warm as a warm place. A burning stove can be far
// warmer: measure it.
var heater = spelling.Pattern(`^(?:(?:by|near|next to|beside|close to|above|over|on top of|` +
	`neben|bei|près|` +
	`près de|à côté du) (?:the |an? |my |our |du |de la |der |dem )?)?(?:aga|range cooker|` +
	`radiator|boiler|heater|` +
	`stove|hearth|fire ?place|wood ?burner|heizung|heizkörper|kachelofen|radiateur|poêle|element)$`)

// warmWords are words for a warm place in other languages.
var warmWords = spelling.Pattern(`^(?:(?:an|in|am|bei|en|i|på|à) )?(?:(?:einem?|einen|un|une|` +
	`et|ett|endroit|the) )*` +
	`(?:warmen?|warmer|lieu|endroit|luogo|varmt?|varmen|lämpimässä|chaud|tiède)(?: (?:ort|` +
	`platz|stelle|chaud|tiède|` +
	`caldo|tiepido|ställe|sted))?$`)

// Warmth is what to write for words of warmth, in lower case; take is
// true where the range can be taken.
func Warmth(words string) (write string, take, ok bool) {
	w, ok := warmths[words]
	if !ok && (warmSpot.MatchString(words) || heater.MatchString(words) ||
		warmWords.MatchString(words)) {
		w, ok = warmths["warm place"], true
	}
	return w.write, w.taken, ok
}

// goingIn are words for an ingredient's temperature. Common practice, no source.
var goingIn = map[string]string{"lukewarm": "35 C to 40 C", "tepid": "35 C to 40 C",
	"warm": "35 C to 43 C", "hand hot": "35 C to 43 C", "hand warm": "35 C to 40 C",
	"finger warm": "35 C to 40 C", "melted": "32 C to 45 C", "melted and cooled": "25 C to 35 C",
	"melted and cool": "25 C to 35 C", "blood warm": "35 C to 38 C",
	"blood heat": "35 C to 38 C", "blood temperature": "35 C to 38 C",
	"body temperature": "35 C to 38 C",
	"room temperature": "18 C to 24 C", "room temp": "18 C to 24 C", "rt": "18 C to 24 C",
	"room": "18 C to 24 C", "room warm": "18 C to 24 C", "ambient": "18 C to 24 C",
	"softened": "18 C to 24 C", "soft": "18 C to 24 C", "soft but cool": "14 C to 20 C",
	"cool room temperature": "15 C to 20 C",
	"slightly softened":     "15 C to 20 C", "slightly warm": "30 C to 38 C",
	"just warm": "30 C to 38 C", "very soft": "20 C to 26 C", "hot": "50 C to 95 C",
	"cool":      "10 C to 20 C",
	"very cold": "0 C to 4 C", "very warm": "38 C to 46 C", "at room temperature": "18 C to 24 C",
	"kitchen temperature": "18 C to 24 C", "cooled": "15 C to 30 C",
	"scalded and cooled": "25 C to 43 C", "lauwarm": "35 C to 40 C", "zimmerwarm": "18 C to 24 C",
	"kalt": "2 C to 8 C", "weich": "18 C to 24 C", "tiède": "35 C to 40 C", "froid": "2 C to 8 C",
	"mou": "18 C to 24 C", "pommade": "18 C to 24 C", "tiepido": "35 C to 40 C",
	"freddo": "2 C to 8 C", "morbido": "18 C to 24 C", "ljummen": "35 C to 40 C",
	"rumsvarm": "18 C to 24 C", "rumsvarmt": "18 C to 24 C", "lunken": "35 C to 40 C",
	"fingervarm": "35 C to 40 C", "kall": "2 C to 8 C", "kold": "2 C to 8 C",
	"cool but pliable": "10 C to 16 C", "pliable": "10 C to 16 C",
	"cold": "2 C to 8 C", "chilled": "2 C to 8 C", "fridge cold": "2 C to 8 C",
	"fridge":             "2 C to 8 C",
	"fridge temperature": "2 C to 8 C", "from fridge": "2 C to 8 C",
	"straight from the fridge": "2 C to 8 C", "cold from fridge": "2 C to 8 C",
	"from the fridge": "2 C to 8 C", "cold from the fridge": "2 C to 8 C", "ice cold": "0 C to 4 C",
	"iced": "0 C to 4 C", "frozen": "-20 C to -12 C", "from the freezer": "-20 C to -12 C"}

// GoingIn is an ingredient's temperature by words in lower case; "" for others.
func GoingIn(words string) string { return goingIn[words] }

// forms are words for the form of an ingredient.
var forms = spelling.Pattern(`\b(?:melted|(?:finely |roughly |coarsely )?(?:chopped|ground|` +
	`grated|sliced|crushed)|softened|cubed|diced|mashed|halved|beaten|whole|flaked|slivered)\b`)

// Form is the form that a name's words give, "" for none.
func Form(words string) string { return forms.FindString(words) }

var protein = spelling.Pattern(`\b(\d{1,2}(?:\.\d+)?) ?% protein\b`)

// Protein is a flour's protein by words of its name: "13 %"; "" for none.
func Protein(words string) string {
	if m := protein.FindStringSubmatch(words); m != nil {
		return m[1] + " %"
	}
	return ""
}

// Ingredient gives what the larder knows of a name with its words of
// preparation. For an egg the size and the kitchen's country count.
func Ingredient(l *larder.Larder, name, units string) (*larder.Item, []string, bool) {
	if egg := EggName(name, units); egg != name {
		it, ok := l.Find(egg)
		return it, nil, ok
	}
	it, words, ok := l.Described(name)
	if !ok {
		if t := warmth.FindString(name); t != "" && !bound.MatchString(name) {
			it, words, ok = l.Described(strings.Replace(name, t, "", 1)) // "warm milk (110F)"
		}
	}
	if !ok {
		if head, rest := Beside(l, name); head != "" {
			it, words, _ = l.Described(head)
			return it, append(words, rest), true
		}
	}
	if len(words) == 0 {
		return it, nil, ok
	}
	if plain, _ := l.Find("egg"); it == plain {
		size := sizes.FindString(strings.Join(words, " "))
		if sized, ok := l.Find(EggName(size+" egg", units)); ok {
			return sized, words, true
		}
	}
	return it, words, ok
}

// Beside parts a name that the larder does not know whole into what it knows, and the words behind
// a comma or in brackets that it can do without: "bread flour, from the mill". No head means that
// it has to be asked.
func Beside(l *larder.Larder, name string) (head, rest string) {
	i := strings.IndexAny(name, ",(")
	if i < 0 {
		i = strings.Index(name, " - ")
	}
	if i <= 0 {
		return "", ""
	}
	head, rest = strings.TrimSpace(name[:i]), strings.Trim(name[i:], " ,()-")
	it, _, ok := l.Described(head)
	if !ok || larder.Harmless(name, it) != "" {
		return "", ""
	}
	// One unknown word beside a name of several kinds can be the kind: "flour (carob)".
	if _, several := l.Ambiguous(head); several && GoesIn(rest) == "" &&
		!strings.Contains(rest, " ") {
		return "", ""
	}
	if GoesIn(rest) == "" && unread.AskedOf(l, unread.WithoutLacks(it, rest)) {
		if _, apart := Apart(name); !apart {
			return "", ""
		}
	}
	return head, rest
}

var named = spelling.Pattern(`(?i)^((?:(?:an?|one|\d+) )?(?:(?:small|large|good|generous|big) )?` +
	`(?:pinch(?:es)?|dash(?:es)?|splash|drizzle|few drops|knob|prise|nypa|pizzico|pincée)) ?` +
	`(?:of|de|di|d'|av)? (\pL.*)$`)

// Named parts a name that begins with a measure: "pinch of salt".
func Named(name string) (amount, thing string, ok bool) {
	m := named.FindStringSubmatch(strings.TrimSpace(name))
	if m == nil {
		return "", "", false
	}
	return m[1], m[2], true
}

var sizes = spelling.Pattern(`\b(?:large|medium|small)\b`)

var sign = spelling.Pattern(`(?i)^(?:just |only )?(?:un)?till?\b|\b(?:doubled|double|tripled|` +
	`bubbly|golden|ready|` +
	`done|smooth|soft|completely|cold enough|boil|simmer)\b`)

// Sign reports whether a text is a sign in place of a time: "until doubled".
func Sign(text string) bool {
	return !strings.ContainsAny(text, "0123456789") && sign.MatchString(text)
}

// SpellPattern matches a time with its unit, in the languages that are read.
const SpellPattern = `[\d¼½¾⅓⅔][^,;()]*?(?:hours?|hrs?|h|minutes?|mins?|min|days?|weeks?|wochen?|` +
	`minuten|minutter|minuter|minuti|stunden?|ore|ora|heures?|timmar|timme|timer?)\b`

var timeIn = spelling.Pattern(`(?i)^(.*?)(?:\b(?:about|around|roughly|approx\.?|another|for|` +
	`circa) )*(` + SpellPattern + `(?: *(?:to|or|and|-|–)? *` + SpellPattern + `)*|` +
	`over ?night\b)(.*)$`)

var portions = spelling.Pattern(`(?i)\b(?:per|each|every|twice|times|[ap]\.?m)\b`)

var worded = spelling.Pattern(`^\p{L}.*\p{L}$`)

// TimeIn reads a time with words beside it: "until doubled, about 2 h",
// "overnight, hanging". Words with their own figures are none.
func TimeIn(text string) (time, rest string, ok bool) {
	if !strings.ContainsAny(text, "0123456789¼½¾⅓⅔") && !mayHold(text, "night") {
		return "", "", false
	}
	m := timeIn.FindStringSubmatch(text)
	if m == nil || strings.ContainsAny(m[1]+m[3], "0123456789¼½¾⅓⅔") ||
		otherUnit.MatchString(m[2]) { // the h of an inch is no hour
		return "", "", false
	}
	rest = strings.Trim(strings.TrimRight(m[1], " ,;(")+" "+
		strings.TrimLeft(m[3], " ,;.)"), " ,;()!.")
	return m[2], rest, worded.MatchString(rest) && !portions.MatchString(rest)
}

var times = spelling.Pattern(`(?i)^(\d+) ?(?:times?|sets?|(?:(?:letter|book|single|double|` +
	`simple) )?(?:turns?|folds?))(?:[,;(] ?[^\d]*)?$`)

var every = spelling.Pattern(`(?i)^(\d{1,2}) ?(?:times?|x|folds?|sets?)?,? (?:(?:one|` +
	`once) )?(?:every|at|each) (\d[^,;]*?)(?: intervals?)?$`)

var apartBy = spelling.Pattern(`(?i)^(\d{1,2}) ?(?:(?:letter|book|single|double|simple) )?` +
	`(?:turns?|folds?|times?),? (?:with |and )?(?:(?:resting|rest|chilling|chill|an?) )*` +
	`(\d[\d./ -]*(?:min\w*|h|hours?|hrs?))` +
	`(?: (?:in the |in )?(?:fridge|chill\w*|rest\w*))? (?:in )?between(?: each| them)?$`)

// Every reads a number of times with the wait between them: "3 times, every 20 min".
func Every(text string) (n int, wait string, ok bool) {
	m := every.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		m = apartBy.FindStringSubmatch(strings.TrimSpace(text))
	}
	if m == nil {
		return 0, "", false
	}
	n, _ = strconv.Atoi(m[1])
	_, fault := quantity.Read(m[2], quantity.Of(quantity.Time))
	return n, m[2], fault == nil && n > 0 && n <= 8
}

// Times reads a number of times: "4 times", "in half".
func Times(text string) (number string, ok bool) {
	text = strings.TrimSpace(text)
	if word, known := shares[strings.ToLower(text)]; known {
		return word, true
	}
	if m := halved.FindStringSubmatch(text); m != nil {
		return shares[strings.ToLower(m[1])], true
	}
	if m := times.FindStringSubmatch(text); m != nil {
		return m[1], true
	}
	return "", false
}

var halved = spelling.Pattern(`(?i)^(in half|in two|in three|in four) (?:\pL|[ -])+$`)

var shares = map[string]string{"in half": "2", "in two": "2", "halves": "2", "in three": "3",
	"thirds": "3", "in four": "4", "quarters": "4", "once": "1", "twice": "2"}

var (
	covers = spelling.Pattern(`(?i)\b(?:film|wrap|cloth|towel|lid|foil|plastic|bag|paper|` +
		`parchment|` +
		`tuch|folie|deckel|linge|torchon|couvercle|canovaccio|pellicola|duk|plast|klæde|liina)\b`)
	// refused could mean either: "until it springs back, then bare".
	refused = spelling.Pattern(`(?i)\b(?:not?|without|un\w+|un-?covered|bare|open|off|half|` +
		`partly|partially|then|` +
		`if|or|maybe|ohne|offen|sans|découvert\w*|senza|scopert\w*|utan|uden|\d+)\b|\?`)
	uncovers = spelling.Pattern(`(?i)^(?:no|none|un\w*|not\b.*|nein|nicht.*|non|nej|nei|off|` +
		`open|bare|false|` +
		`ohne.*|sans.*|without(?: (?:a|any))? \w+)$`)
)

// IsCover reports whether words name a thing that covers: "tea towel".
func IsCover(text string) bool { return covers.MatchString(text) }

// Covered reads words for a cover: "cling film", "no". Of others it says
// yes, but for those that could turn it: the caller looks for food.
func Covered(text string) (yes, ok bool) {
	text = strings.TrimSpace(text)
	if uncovers.MatchString(text) {
		return false, true
	}
	yes = !refused.MatchString(text) && text != ""
	return yes, yes
}

var (
	noSteam = spelling.Pattern(`(?i)^(?:no|none|not?\b.*|off|false|dry|without.*|ohne.*|` +
		`sans.*|senza.*|nein|non|nej)$`)
	letsIn = spelling.Pattern(`(?i)^(?:yes|true|on|ja|oui|sì|si|a little|a lot|some|lots|` +
		`plenty|generous|` +
		`mit dampf|(?:for |first |the first )?\d+ ?(?:s|sec\w*|min\w*)|(?:at|in) the (?:start|` +
		`beginning|first ` +
		`\d+ ?min\w*))$`)
)

// Steamed reads words for steam that is let in: "no", "10 s".
func Steamed(text string) (yes, ok bool) {
	text = strings.TrimSpace(text)
	if noSteam.MatchString(text) {
		return false, true
	}
	yes = letsIn.MatchString(text)
	return yes, yes
}

// dryYeast is above the dry yeast for a gram of fresh.
const dryYeast = 0.5

var amountOf = spelling.Pattern(
	`(?i)^([\d\s./⁄½¼¾⅓⅔⅛]+|an? |half an? )\s*([\p{L} ]*?)(?: of [a-z ]+)?$`)

// halfOf is half of a measure: "half stick".
var halfOf = spelling.Pattern(`(?i)^half (?:an? )?(\p{L})`)

// alonePinch is a pinch without a number.
var alonePinch = spelling.Pattern(`(?i)^(?:un[ao]? |une |eine? |en |ett? )?(` +
	`(?:(?:small|large|good|generous|big|tiny) )?` +
	`(?:pinch|dash|pizzico|pizca|pinc[ée]e|prise|nypa))$`)

// Amount gives an ingredient's quantity for a kitchen word. units is
// whose measures the kitchen uses.
func Amount(it *larder.Item, text, units string) (Taken, bool) {
	text = halfOf.ReplaceAllString(text, "1/2 $1")
	if t, ok := spoon(it, text); ok {
		return t, true
	}
	m := amountOf.FindStringSubmatch(alonePinch.
		ReplaceAllString(strings.TrimSuffix(strings.TrimSpace(text), "."), "a $1"))
	if m == nil {
		return Taken{}, false
	}
	n, fault := quantity.Read(strings.TrimSpace(m[1])+" pieces", quantity.Of(quantity.Count))
	if fault != nil || !n.IsPoint() {
		return Taken{}, false
	}
	word := strings.ToLower(strings.TrimSpace(m[2]))
	if (word == "halves" || word == "half") && it.Class == larder.ClassFruit && it.Piece > 0 {
		return Taken{Text: quantity.Plain(n.Lo/2) + " pieces"}, true
	}
	z, isZest := zests[it.Name]
	if isZest && word == "" || word != "" && counts(word, it) {
		switch {
		case isZest:
			return Taken{quantity.Plain(n.Lo*z.lo) + " to " + quantity.Plain(n.Lo*z.hi) + " g",
				fmt.Sprintf("the zest of one is taken as %s to %s g: weigh it",
					quantity.Plain(z.lo), quantity.Plain(z.hi))}, true
		case it.Piece > 0:
			return Taken{Text: quantity.Plain(n.Lo) + " pieces"}, true
		}
	}
	for _, k := range measures {
		if !k.word.MatchString(word) || !k.fits(it) ||
			k.us && (units == "uk" || units == "metric") {
			continue
		}
		out := quantity.Plain(n.Lo * k.lo)
		if k.hi > k.lo {
			out += " to " + quantity.Plain(n.Lo*k.hi)
		}
		return Taken{out + " " + k.unit, k.says}, true
	}
	return Taken{}, false
}

// spoon weighs a spoon of what has no single density in the larder: kosher salt and most spices.
func spoon(it *larder.Item, text string) (Taken, bool) {
	var lo, hi float64
	var says string
	switch {
	case it.Name == "kosher salt":
		lo, hi = kosherLo, kosherHi
		says = "a teaspoon of kosher salt is taken as 2.8 to 4.8 g, by its make: weigh it"
	case it.Class == larder.ClassSpice && it.Density == 0 && it.PerMl.Hi == 0:
		lo, hi = spiceLo, spiceHi
		says = "a spoon of " + it.Name +
			" is taken as 0.3 to 0.65 g a millilitre, as of most spices: weigh it"
	default:
		return Taken{}, false
	}
	q, fault := quantity.Read(text, quantity.Of(quantity.Volume))
	if fault != nil {
		return Taken{}, false
	}
	return Taken{quantity.Plain(tenth(q.Lo*lo)) + " to " + quantity.Plain(tenth(q.Hi*hi)) + " g",
		says}, true
}

// A millilitre of a ground spice, g: the larder's other rows, most of them.
const (
	spiceLo = 0.3
	spiceHi = 0.65
)

// A millilitre of kosher salt of the two makes, g: the larder's rows.
const (
	kosherLo = 0.57
	kosherHi = 0.97
)

func tenth(g float64) float64 { return math.Round(10*g) / 10 }

// units of what is counted, beside the words of its own name.
const counted = " large medium small whole pod pods clove cloves stalk stalks fruit fruits " +
	"unwaxed organic ripe leaf leaves blatt blätter feuille feuilles schote schoten gousse gousses "

// counts reports whether words behind a number only name the thing: "1
// orange" of orange zest, "2 cloves" of garlic.
func counts(words string, it *larder.Item) bool {
	own := " " + singulars(strings.ToLower(it.Name+" "+strings.Join(it.Aliases, " "))) + " " +
		fruits[it.Name]
	for _, w := range strings.Fields(words) {
		if !strings.Contains(own, " "+singulars(w)+" ") && !strings.Contains(counted, " "+w+" ") {
			return false
		}
	}
	return !strings.Contains(own, " leaf ")
}

// fruits are other words for the fruit that a zest is of.
var fruits = map[string]string{"lemon zest": "zitrone limone citron limón citroner ",
	"orange zest": "arancia apelsin appelsin apfelsine naranja ", "lime zest": "limette "}

var inBrackets = spelling.Pattern(`^([^()]+?)\s*\(([^()]+)\)$`)

// Bracketed gives the weight of an amount written twice: "3 1/2 cups
// (440 g)". A weight says more than a volume. Other texts stay.
func Bracketed(text string) string {
	m := inBrackets.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return text
	}
	for _, one := range []string{m[2], m[1]} {
		if _, fault := quantity.Read(one, quantity.Of(quantity.Mass)); fault == nil {
			return one
		}
	}
	return text
}

var sizedEggs = spelling.Pattern(`(?i)^([\d\s./⁄½¼¾]+|an?|one|two|three|four) (large|lge?\.?|` +
	`medium|` +
	`med\.?|small|sm\.?|extra[- ]large|x-?l)(?:,? (?:free[- ]?range|barn|organic|whole|fresh|` +
	`hens?'?s?|` +
	`brown|white|UK|US))*(?: eggs?)?$`)

// eggWords are the larder's words for the sizes of eggs.
var eggWords = map[string]string{"lg": "large", "lge": "large", "med": "medium", "sm": "small",
	"xl": "extra large"}

// SizedEggs reads "2 large" of eggs: the count, and that size's egg name.
func SizedEggs(text string) (count, name string, ok bool) {
	m := sizedEggs.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", "", false
	}
	size := strings.TrimSuffix(strings.ToLower(m[2]), ".")
	if word := eggWords[strings.ReplaceAll(size, "-", "")]; word != "" {
		size = word
	}
	if n := numbers[strings.ToLower(m[1])]; n != "" {
		m[1] = n
	}
	return m[1] + " pieces", strings.ReplaceAll(size, "-", " ") + " egg", true
}

// EggName is the larder's name of an egg by the country's sizes: large is 50 g in the US, 60 g in
// the UK and the EU. Other names stay.
func EggName(name, units string) string {
	if units != "uk" && units != "metric" {
		return name
	}
	switch size, rest, _ := strings.Cut(strings.ToLower(strings.TrimSpace(name)), " "); {
	case rest != "egg" && rest != "eggs":
		return name
	case size == "large":
		return "size L egg"
	case size == "medium":
		return "size M egg"
	}
	return name
}

// Signs of a country's kitchen in a formula's text. Common practice, no source.
var (
	usSigns = spelling.Pattern(`(?i)\d ?°?F"|\bcups?"|\bsticks?"|all-purpose`)
	ukSigns = spelling.Pattern(
		`(?i)gas mark|"gas \d|caster sugar|icing sugar|` +
			`strong (?:white )?(?:bread )?flour|plain flour|self[- ]raising|treacle|golden syrup|` +
			`muscovado|fast-action|mixed spice`)
)

// IsUS reports whether the words of a file are of the US, and none of the UK.
func IsUS(file []byte) bool { return usSigns.Match(file) && !ukSigns.Match(file) }

// Country reads a measure that differs between the US and the UK by the kitchen's country: the
// house's, else that of other words in the file, as says tells.
func Country(text, units string, file []byte) (out, says string) {
	if units == "" && strings.Contains(quantity.OfCountry(text, "us"), " us ") {
		us, uk := usSigns.Match(file), ukSigns.Match(file)
		switch {
		case us && !uk:
			units = "us"
		case uk && !us:
			units = "uk"
		default:
			return text, ""
		}
		says = fmt.Sprintf("%q is taken as of the %s, by the other words here; units = %q in the "+
			"kitchen block says it", text, strings.ToUpper(units), units)
	}
	return quantity.OfCountry(text, units), says
}

var exampleTime = spelling.Pattern(`"\d+ (?:min|h)"`)

// WithTime puts a written time into a line to write. A text that is no time leaves the line.
func WithTime(line, text string) string {
	if _, fault := quantity.Read(text, quantity.Of(quantity.Time)); fault != nil {
		return line
	}
	first, rest, found := strings.Cut(line, " }")
	at := exampleTime.FindStringIndex(first)
	if at == nil {
		return line
	}
	first = first[:at[0]] + strconv.Quote(text) + first[at[1]:]
	if found {
		first += " }"
	}
	return first + rest
}

// Count reads a whole number of pieces, with or without a word; why is the fault.
func Count(text string) (n float64, why string) {
	g, fault := quantity.Read(text+" pieces", quantity.Of(quantity.Count))
	if fault != nil {
		return 0, fault.Text
	}
	if !g.IsPoint() || g.Lo != math.Trunc(g.Lo) {
		return 0, "not a whole number"
	}
	return g.Lo, ""
}

// Clock reads "18:00" as minutes after midnight.
func Clock(text string) (minutes float64, ok bool) {
	var h, m int
	n, err := fmt.Sscanf(text, "%d:%d", &h, &m)
	whole := fmt.Sprintf("%02d:%02d", h, m) == fmt.Sprintf("%05s", text)
	return float64(60*h + m), n == 2 && err == nil && whole && h <= 23 && m <= 59
}

var aboutSo = spelling.Pattern(`(?i)^(?:about|around|roughly|approx(?:imately|\.)?|some|makes|` +
	`ca\.?|circa|c\.) `)

// Made is how many pieces a formula says it makes.
type Made struct {
	Lo, Hi float64
	Range  string // as written, where it is one: "10 to 12"
	Each   string // the mass of each, as written
}

// Makes reads "24 pieces", "10 to 12 buns" and "2 loaves of 450 g"; why is the fault.
func Makes(text string) (m Made, why string) {
	if text != "" && (text[0] < '0' || text[0] > '9') {
		text = aboutSo.ReplaceAllString(text, "")
	}
	number, rest, _ := strings.Cut(text, " ")
	n, bad := Count(number)
	m.Lo, m.Hi = n, n
	if to, has := strings.CutPrefix(rest, "to "); has && bad == "" {
		var high string
		high, rest, _ = strings.Cut(to, " ")
		m.Hi, bad = Count(high)
		if bad == "" && m.Hi < m.Lo {
			return m, fmt.Sprintf("%s to %s runs backwards; write the smaller number first",
				number, high)
		}
		if m.Hi > m.Lo {
			m.Range = number + " to " + high
		}
	}
	var unit string
	unit, m.Each, _ = strings.Cut(rest, " of ")
	if bad != "" || strings.TrimSpace(unit) == "" && strings.TrimSpace(rest) != "" {
		return m,
			fmt.Sprintf("write \"24 pieces\", \"2 loaves of 450 g\" or \"1.8 kg\", not %q", text)
	}
	return m, ""
}
