package list

import (
	"math"
	"strconv"
	"strings"
	"unicode"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said/tins"
	"forebake/engine/spelling"
)

const numberForm = `(?:\d+\s*[¼½¾⅓⅔⅛⅜⅝⅞]|` +
	`[¼½¾⅓⅔⅛⅜⅝⅞]|\d+\s+\d+\s*[/⁄]\s*\d+|\d+\s*[/⁄]\s*\d+|` +
	`\d+(?:[.,]\d+)?)`

// Number is the form of a number of a cook book: "2", "1 1/2", "½", "1,5".
const Number = numberForm

var (
	amountAt = spelling.Pattern(`^(?:about |approx\.? |approximately |around |roughly |~ ?)?(` +
		numberForm + `)(?:\s*(?:-|–|—|to|or)\s*(` + numberForm + `))?`)
	numberAlone = spelling.Pattern(numberForm)
	timesForm   = spelling.Pattern(`^(\d+)\s*[x×]\s*`)
	noAmount    = spelling.Pattern(`(?i)\b(to taste|as needed|as required|a (?:little|drop|` +
		`splash|knob|handful|few)|(?:large |good |generous )?pinch(?:es)?|dash(?:es)?|some)\b`)
	wholeMass  = quantity.Of(quantity.Mass, quantity.Volume)
	allAmounts = quantity.Amounts
)

// numberWords are numbers that a list spells out.
var numberWords = map[string]string{"a": "1", "an": "1", "one": "1", "two": "2", "three": "3",
	"four": "4", "five": "5", "six": "6", "half": "1/2", "quarter": "1/4", "dozen": "12"}

// numbered is a text whose first word is a figure where it is a number
// in letters.
func numbered(text string) string {
	first, rest, found := strings.Cut(strings.TrimSpace(text), " ")
	if n := numberWords[strings.ToLower(first)]; n != "" && found {
		return n + " " + rest
	}
	return strings.TrimSpace(text)
}

// packs are measures that are packs of a thing: the grams of one, and what
// the reader says of it. Sources: dry yeast 7 g a sachet (German, US pages,
// read); SR 28 table for the stick of butter.
var packs = map[string]struct{ unit, says string }{
	"sachet":   {"7 g", "a sachet of dry yeast is 7 g; read the label"},
	"packet":   {"7 g", "a packet of dry yeast is 7 g; read the label"},
	"package":  {"7 g", "a package of dry yeast is 7 g; read the label"},
	"pkg":      {"7 g", "a package of dry yeast is 7 g; read the label"},
	"envelope": {"7 g", "an envelope of dry yeast is 7 g; read the label"},
	"stick":    {"4 oz", "a US stick of butter is 4 oz"},
}

// dryYeast is above what a gram of fresh yeast stands for.
const dryYeast = 0.5

// bounded are measures without a size: what one may weigh.
var bounded = map[string]struct{ lo, hi, unit string }{
	"pinch": {"0.1", "1", "g"}, "dash": {"0.3", "1.5", "ml"}, "glass": {"200", "250", "ml"},
	"cube":    {"25", "50", "g"}, // of fresh yeast, by country
	"handful": {"20", "60", "g"}, "knob": {"10", "30", "g"}, "splash": {"5", "20", "ml"},
	"glug": {"10", "30", "ml"}, "drop": {"0.03", "0.1", "ml"}, "sprig": {"0.5", "3", "g"},
	"dollop": {"15", "45", "g"}, "squeeze": {"3", "15", "ml"}, "grating": {"0.1", "0.5", "g"},
}

// looseAt finds such a measure at the start of a text, with the words for
// its size.
var looseAt = spelling.Pattern(`(?i)^((?:few|couple of) )?((?:(?:good|large|small|generous|big|` +
	`tiny|little|fat|heaped) )+)?(pinch|dash|glass|handful|knob|splash|glug|drop|sprig|dollop|` +
	`squeeze|grating)(?:e?s)?\b`)

var littleAt = spelling.Pattern(`(?i)^a (?:little|few) `)

// measured reads a line that begins with an amount.
func (r Reader) measured(l *Line, text string, inside []string) bool {
	if littleAt.MatchString(text) && !looseAt.MatchString(text[2:]) {
		return false // "a little milk" is no figure
	}
	text = numbered(text)
	// "a good pinch", "few drops"
	if m := looseAt.FindStringSubmatch(strings.TrimPrefix(text, "1 ")); m != nil {
		number := "1 "
		if m[1] != "" {
			number = "2 to 5 "
		}
		text = number + m[3] + strings.TrimPrefix(text, "1 ")[len(m[0]):]
		if m[2] != "" {
			l.says(strings.TrimSpace(m[1]+m[2]) + " " + m[3])
		}
	}
	each := 1.0
	if m := timesForm.FindStringSubmatch(text); m != nil {
		each, _ = strconv.ParseFloat(m[1], 64)
		text = text[len(m[0]):]
	}
	m := amountAt.FindStringSubmatch(text)
	if m == nil {
		return false
	}
	number, rest := m[1], strings.TrimSpace(text[len(m[0]):])
	if m[2] != "" {
		number += " to " + m[2]
	}
	rest = strings.TrimPrefix(rest, "x ")
	for _, w := range []string{"heaped", "heaping", "rounded", "scant", "generous", "level"} {
		if after, found := cutWord(rest, w); found {
			rest = after
			if w != "level" {
				l.says(w + ": weigh it")
			}
		}
	}
	if r.packed(l, number, rest, each) || r.loose(l, number, rest, inside) {
		return true
	}
	amount, after := r.unitOf(l, number, rest)
	if amount == "" {
		return r.counted(l, number, each, rest, inside)
	}
	after = strings.TrimLeft(after, " ")
	// "7 g sachet", "400 g can": the pack behind a weight says no more.
	for _, w := range []string{"sachet", "packet", "package", "envelope", "can", "tin", "jar",
		"block", "pack"} {
		if a, found := cutWord(after, w); found {
			after = a
		} else if a, found := cutWord(after, w+"s"); found {
			after = a
		}
	}
	if each != 1 {
		amount = r.times(l, amount, each)
	}
	l.Amount = r.better(l, amount, inside)
	r.named(l, after)
	return true
}

// packed reads so many packs of a known weight.
func (r Reader) packed(l *Line, number, rest string, each float64) bool {
	for w, p := range packs {
		after, found := cutWord(rest, w)
		if !found {
			after, found = cutWord(rest, w+"s")
		}
		// "1 sachet", and "7 g sachet": the grams go before the pack.
		if found {
			unit, number1, _ := strings.Cut(p.unit, " ")
			n, one := plainNumber(number)
			if !one {
				break
			}
			x, _ := strconv.ParseFloat(unit, 64)
			l.Amount = quantity.Plain(n*x*each) + " " + number1
			r.named(l, after)
			if it, ok := r.item(l.Name); ok && w != "stick" && it.Yeast < dryYeast {
				// of vanilla sugar, of saffron: the reader of a
				// formula knows
				l.Amount = number + " " + w
			} else {
				l.says(p.says)
				if number != "1" {
					l.says(number + " of them")
				}
			}
			return true
		}
	}
	return false
}

// loose reads a measure that is none, such as a handful: it lies between
// two weights.
func (r Reader) loose(l *Line, number, rest string, inside []string) bool {
	for w, b := range bounded {
		after, found := cutWord(rest, w)
		if !found {
			after, found = cutWord(rest, w+"es")
		}
		if !found {
			after, found = cutWord(rest, w+"s")
		}
		if found {
			if q, fault := quantity.Read(number+" pieces",
				quantity.Of(quantity.Count)); fault == nil {
				lo, _ := strconv.ParseFloat(b.lo, 64)
				hi, _ := strconv.ParseFloat(b.hi, 64)
				l.Amount = quantity.Plain(q.Lo*lo) + " to " + quantity.Plain(q.Hi*hi) + " " + b.unit
			} else {
				l.Amount = "?"
			}
			if written, ok := weightIn(inside); ok {
				l.Amount = written
				l.says("written " + number + " " + w + " too")
			} else {
				l.says("a " + w + " is no fixed measure: weigh it")
			}
			r.named(l, after)
			return true
		}
	}
	return false
}

// times multiplies an amount that is one figure and a unit.
func (r Reader) times(l *Line, amount string, n float64) string {
	q, fault := quantity.Read(amount, allAmounts)
	if fault != nil {
		return "?"
	}
	lo, _ := quantity.FromBase(q.Lo*n, q.Unit)
	hi, _ := quantity.FromBase(q.Hi*n, q.Unit)
	out := quantity.Plain(lo)
	if hi > lo {
		out += " to " + quantity.Plain(hi)
	}
	l.says(quantity.Plain(n) + " times " + amount)
	return out + " " + q.Unit
}

// unitOf reads the unit behind a number, and what joins it: "1 cup plus 2
// tbsp", "500 g/1 lb 2 oz". The amount is "" where no unit stands there.
func (r Reader) unitOf(l *Line, number, rest string) (amount, after string) {
	unit, n := unitAt(rest)
	if n == 0 {
		return "", rest
	}
	after = rest[n:]
	switch strings.TrimSuffix(unit, ".") {
	case "T", "Tb", "Tbs":
		unit = "tbsp"
	case "t":
		unit = "tsp"
	case "c", "C":
		unit = "cup"
	}
	of := strings.ToLower(strings.Trim(unit, ".s"))
	if of == "pint" || of == "quart" || of == "gallon" {
		if r.Kitchen == Unknown {
			l.says(number + " " + unit + ": US or UK? They differ by a fifth")
			return "?", after
		}
		l.says("read as a " + string(r.Kitchen) + " " + of + ", by the other words here")
		unit = string(r.Kitchen) + " " + of
	}
	amount = number + " " + unit
	for {
		next := strings.TrimLeft(after, " ")
		joined := false
		for _, w := range []string{"plus", "and", "&", "+", ""} {
			tail, found := next, w == ""
			if w != "" {
				tail, found = cutWord(next, w)
			}
			m := amountAt.FindStringSubmatch(tail)
			if !found || m == nil || m[2] != "" {
				continue
			}
			u, n := unitAt(strings.TrimLeft(tail[len(m[0]):], " "))
			if n == 0 {
				continue
			}
			switch u {
			case "T", "Tb", "Tbs":
				u = "tbsp"
			case "t":
				u = "tsp"
			}
			more := amount + " " + m[1] + " " + u
			if _, fault := quantity.Read(more, allAmounts); fault == nil {
				amount, joined = more, true
				after = strings.TrimLeft(tail[len(m[0]):], " ")[n:]
				break
			}
		}
		if !joined {
			break
		}
	}
	return r.otherMeasures(l, amount, after)
}

// otherMeasures steps over the same amount in other units, "500 g/1 lb 2
// oz", and takes a weight where the first is none.
func (r Reader) otherMeasures(l *Line, amount, after string) (string, string) {
	for {
		next := strings.TrimLeft(after, " ")
		tail, found := strings.CutPrefix(next, "/")
		if !found {
			if tail, found = strings.CutPrefix(next, "or "); !found {
				break
			}
		}
		tail = strings.TrimLeft(tail, " ")
		m := amountAt.FindStringSubmatch(tail)
		if m == nil {
			break
		}
		end := tail[len(m[0]):]
		u, n := unitAt(strings.TrimLeft(end, " "))
		if n == 0 {
			break
		}
		end = strings.TrimLeft(end, " ")[n:]
		if a := amountAt.FindStringSubmatch(strings.TrimLeft(end, " ")); a != nil { // 1 lb 2 oz
			tail := strings.TrimLeft(strings.TrimLeft(end, " ")[len(a[0]):], " ")
			if _, k := unitAt(tail); k > 0 {
				end = tail[k:]
			}
		}
		better := r.better(l, amount, []string{m[1] + " " + u})
		if better == amount {
			l.says("written " + strings.TrimSpace(tail[:len(tail)-len(end)]) + " too")
		}
		amount, after = better, end
	}
	return amount, after
}

// unitAt finds the unit at the start of a text: its word, and how
// many bytes it takes with the blank before what follows. A unit must
// end a word.
func unitAt(text string) (string, int) {
	fields := strings.Fields(text)
	for words := min(2, len(fields)); words >= 1; words-- {
		word := strings.Join(fields[:words], " ")
		n := len(word)
		if !strings.HasPrefix(text, word) {
			continue
		}
		bare := strings.TrimRight(word, ".,")
		if i := strings.IndexByte(bare, '/'); i > 0 {
			bare, n = bare[:i], i
		}
		switch bare {
		case "T", "t", "Tb", "Tbs", "c", "C":
			return bare, n
		}
		lower := strings.ToLower(bare)
		switch strings.TrimSuffix(lower, "s") {
		case "pint", "quart", "gallon":
			return lower, n
		}
		q, fault := quantity.Read("1 "+bare, wholeMass)
		if fault == nil && words == len(strings.Fields(bare)) &&
			q.Unit != "" {
			return bare, n
		}
		if q, fault := quantity.Read("1 "+lower, wholeMass); fault == nil && q.Unit != "" {
			return lower, n
		}
	}
	return "", 0
}

// better takes a weight that stands in brackets or behind a stroke for a
// volume, which packs differently in every cup.
func (r Reader) better(l *Line, amount string, others []string) string {
	q, fault := quantity.Read(amount, allAmounts)
	if fault != nil && amount != "?" || q.Kind == quantity.Mass && q.IsPoint() && amount != "?" {
		return amount
	}
	if w, ok := weightIn(others); ok {
		l.says("written " + amount + " too")
		return w
	}
	return amount
}

// weightIn is the first weight among texts, such as those in the brackets
// of a line.
func weightIn(texts []string) (string, bool) {
	for _, o := range texts {
		for _, one := range strings.FieldsFunc(o, func(r rune) bool {
			return r == '/' || r == ';' || r == ','
		}) {
			one = strings.TrimSpace(one)
			for _, w := range []string{"about ", "approx. ", "approx ", "approximately ", "ca. ",
				"around "} {
				one = strings.TrimPrefix(one, w)
			}
			if w, fault := quantity.Read(one, quantity.Of(quantity.Mass)); fault == nil {
				return w.Text, true
			}
		}
	}
	return "", false
}

// counted reads an amount without a unit: eggs, and what has a known weight
// a piece.
func (r Reader) counted(l *Line, number string, each float64, rest string, inside []string) bool {
	if rest == "" || !unicode.IsLetter([]rune(rest)[0]) {
		return false
	}
	r.named(l, rest)
	it, ok := r.item(l.Name)
	switch {
	case ok && it.Piece > 0 && it.Class != larder.ClassFat:
		l.Amount = number + " pieces"
		if number == "1" {
			l.Amount = "1 piece"
		}
		if each != 1 {
			l.Amount = r.times(l, l.Amount, each)
		}
		l.Amount = r.better(l, l.Amount, inside)
	default:
		l.Amount = r.better(l, "?", inside)
		for _, o := range inside {
			if w, fault := quantity.Read(strings.TrimPrefix(o, "about "), wholeMass); fault == nil {
				l.Amount = w.Text
			}
		}
		if l.Amount == "?" {
			l.says(number + " " + rest + ": weigh it")
		}
	}
	return true
}

// unmeasured reads a line without a figure: a pinch, to taste.
func (r Reader) unmeasured(l *Line, text string, inside []string) {
	m := noAmount.FindString(text)
	lower := strings.ToLower(m)
	rest := strings.TrimSpace(strings.Replace(text, m, "", 1))
	rest = strings.Trim(rest, " ,")
	l.Amount = "?"
	switch {
	case strings.Contains(lower, "pinch"):
		l.Amount = "0.1 to 1 g"
		l.says(m + " is no fixed measure: weigh it")
	case strings.Contains(lower, "dash"):
		l.Amount = "0.3 to 1.5 ml"
		l.says(m + " is no fixed measure: weigh it")
	default:
		l.says(m + ": weigh it")
	}
	if written, ok := weightIn(inside); ok {
		l.Amount, l.Says = written, []string{"written " + m + " too"}
	}
	r.named(l, strings.TrimPrefix(rest, "of "))
}

// plainNumber reads "1", "1/2" or "two".
func plainNumber(text string) (float64, bool) {
	text = strings.ToLower(strings.TrimSpace(text))
	if n := numberWords[strings.TrimPrefix(text, "a ")]; n != "" {
		text = n
	}
	q, fault := quantity.Read(text+" pieces", quantity.Of(quantity.Count))
	return q.Hi, fault == nil && q.IsPoint()
}

// cutWord takes a whole word, in any letter case, off the start of a text.
func cutWord(text, word string) (string, bool) {
	if len(text) < len(word) || !strings.EqualFold(text[:len(word)], word) {
		return text, false
	}
	rest := text[len(word):]
	if rest != "" {
		if c := []rune(rest)[0]; unicode.IsLetter(c) || unicode.IsDigit(c) {
			return text, false
		}
	}
	return strings.TrimLeft(rest, " ."), true
}

// Added is the sum of two amounts of one kind, "?" where they are of two.
func Added(a, b string) string {
	x, fault1 := quantity.Read(a, quantity.Amounts)
	y, fault2 := quantity.Read(b, quantity.Amounts)
	if fault1 != nil || fault2 != nil || x.Kind != y.Kind {
		return "?"
	}
	lo, _ := quantity.FromBase(x.Lo+y.Lo, x.Unit)
	hi, _ := quantity.FromBase(x.Hi+y.Hi, x.Unit)
	out := quantity.Plain(lo)
	if hi > lo {
		out += " to " + quantity.Plain(hi)
	}
	return strings.TrimSpace(out + " " + x.Unit)
}

// FromVolume is what a volume of food weighs where the larder has no
// density: 0.5 to 1.1 g/ml, from flaked to mashed foods. Common practice,
// no source. "" of what is no volume.
func FromVolume(amount string) string {
	q, fault := quantity.Read(amount, quantity.Of(quantity.Volume))
	if fault != nil {
		return ""
	}
	tenths := 10.0
	if q.Lo > 20 {
		tenths = 1
	}
	return quantity.Plain(math.Round(q.Lo*0.5*tenths)/tenths) + " to " +
		quantity.Plain(math.Round(q.Hi*1.1*tenths)/tenths) + " g"
}

var tinForm = spelling.Pattern(`(?i)(?:\b(two|three|four|six|2|3|4|6) (?:[a-z]+[ ,]+){0,3}?)?(` +
	numberForm +
	`[ -]?(?:(?:mm|cm|in(?:ch(?:es)?)?|"|″)[ -]?)?(?:\s?(?:x|×|by)[ -]?` + numberForm +
	`[ -]?(?:(?:mm|cm|in(?:ch(?:es)?)?|"|″)[ -]?)?){0,2}\.?\s?` +
	`(?:\([^()]*\) ?)?(?:[a-z-]+ ){0,3}?(?:tin|pan|dish|mou?ld|bundt(?: tin| pan)?))(?:e?s)?\b`)

// tinAside is a tin with its size behind it: "loaf tin (23 x 13 cm)".
var tinAside = spelling.Pattern(`(?i)(?:\b(two|three|four|six|2|3|4|` +
	`6) (?:[\w-]+ ){0,2}?)?\b((?:loaf|round|square|cake|bundt|springform|baking|brownie|` +
	`pie)? ?(?:tin|pan|dish|mou?ld))(?:e?s)? ?\(([^()]*\d[^()]*)\)`)

// Tin is the tin of a known size that a text names, "23 cm round tin", and
// how many there are; each "" where the text does not say.
func Tin(text string) (tin, count string) {
	var all [][]string // the sides in brackets go before the pounds of a loaf
	for _, m := range tinAside.FindAllStringSubmatch(text, -1) {
		all = append(all, []string{m[0], m[1], strings.TrimSpace(m[3]) + " " +
			strings.TrimSpace(m[2])})
	}
	for _, m := range append(all, tinForm.FindAllStringSubmatch(text, -1)...) {
		if _, sized := tins.Size(m[2]); !sized {
			continue
		}
		if n := numberWords[strings.ToLower(m[1])]; n != "" {
			return m[2], n
		}
		return m[2], m[1]
	}
	return "", ""
}
