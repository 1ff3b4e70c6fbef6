package recipe

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"unicode"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

// kitchen is whose measures a text uses, by the words in it.
type kitchen string

const (
	unknownKitchen kitchen = ""
	us             kitchen = "US"
	uk             kitchen = "UK"
)

// Words that a cook book of one of the two countries uses and one of the other hardly does. A text
// with words of both is of neither. Common practice, no source.
var (
	usWords = spelling.Pattern(`(?i)\b(all-purpose|sticks?|cups?|confectioners'? sugar|` +
		`powdered sugar|heavy cream|kosher|packets?|envelopes?|\d{3} ?°? ?F)\b`)
	ukWords = spelling.Pattern(`(?i)\b(gas mark|gas \d|caster|strong (white |plain )?flour|` +
		`plain flour|self-raising|icing sugar|double cream|sachets?|cling ?film|knock back)\b`)
)

func kitchenOf(text string) kitchen {
	isUS, isUK := usWords().MatchString(text), ukWords().MatchString(text)
	switch {
	case isUS && !isUK:
		return us
	case isUK && !isUS:
		return uk
	}
	return unknownKitchen
}

const numberForm = `(?:\d+\s*[¼½¾⅓⅔⅛⅜⅝⅞]|[¼½¾⅓⅔⅛⅜⅝⅞]|\d+\s+\d+\s*[/⁄]\s*\d+|\d+\s*[/⁄]\s*\d+|\d+(?:[.,]\d+)?)`

var (
	amountAt = spelling.Pattern(`^(?:about |approx\.? |approximately |around |roughly |~ ?)?(` +
		numberForm + `)(?:\s*(?:-|–|—|to|or)\s*(` + numberForm + `))?`)
	numberAlone = spelling.Pattern(numberForm)
	bullet      = spelling.Pattern(`^(?:[-*•–·▢☐□‣+]|\[ ?\])\s*`)
	parens      = spelling.Pattern(`\(([^()]*)\)`)
	timesForm   = spelling.Pattern(`^(\d+)\s*[x×]\s*`)
	leftOut     = spelling.Pattern(`(?i)\b(?:plus|and) (?:a little |some )?(?:more|extra)\b.*$|^extra (?:flour|butter|oil|sugar|egg)\b.*$|` +
		`(?i),?\s*(?:plus )?for (?:the )?(?:dusting|greasing|kneading|rolling|the (?:bowl|pan|tin|` +
		`bench|work ?surface|counter|tray)|oiling|sprinkling|serving|brushing|decorat\w+|garnish\w*)\b.*$`)
	juiceOf    = spelling.Pattern(`(?i)^(?:the )?juice (?:of|from) (.+?) (lemon|orange|lime)s?\b`)
	zestOf     = spelling.Pattern(`(?i)^(?:the )?(?:finely )?(?:grated )?(?:zest|rind) (?:of|from) (.+?) (lemon|orange|lime)s?\b`)
	noAmount   = spelling.Pattern(`(?i)\b(to taste|as needed|as required|a (?:little|drop|splash|knob|handful|few)|(?:large |good |generous )?pinch(?:es)?|dash(?:es)?|some)\b`)
	degrees    = spelling.Pattern(`(?i)(\d{1,3}(?:[.,]\d)?)(?:\s*(?:-|–|to)\s*(\d{1,3}))?\s*(?:°|º|˚|deg(?:rees?)?\.?)?\s*(C|F|celsius|fahrenheit)\b`)
	wholeMass  = quantity.Of(quantity.Mass, quantity.Volume)
	allAmounts = quantity.Amounts
)

// numberWords are numbers that a list spells out.
var numberWords = map[string]string{"a": "1", "an": "1", "one": "1", "two": "2", "three": "3",
	"four": "4", "five": "5", "six": "6", "half": "1/2", "quarter": "1/4", "dozen": "12"}

// packs are measures that are packs of a thing: the grams of one, and what the reader says of it.
// Sources: dry yeast 7 g a sachet (German, US pages, read); SR 28 table for the stick of butter.
var packs = map[string]struct{ unit, says string }{
	"sachet":   {"7 g", "a sachet of dry yeast is 7 g; read the label"},
	"packet":   {"7 g", "a packet of dry yeast is 7 g; read the label"},
	"package":  {"7 g", "a package of dry yeast is 7 g; read the label"},
	"pkg":      {"7 g", "a package of dry yeast is 7 g; read the label"},
	"envelope": {"7 g", "an envelope of dry yeast is 7 g; read the label"},
	"stick":    {"4 oz", "a US stick of butter is 4 oz"},
}

// bounded are measures without a size: what one may weigh.
var bounded = map[string]struct{ lo, hi, unit string }{
	"pinch": {"0.1", "1", "g"}, "dash": {"0.3", "1.5", "ml"},
}

// asForms are words of preparation that the formula's "as" reads, and others that say how a thing
// stands: melted fat weighs on the dough, and chopped nuts on the choking hazard.
var asForms = []string{"melted", "softened", "finely chopped", "roughly chopped", "chopped",
	"finely ground", "ground", "cubed", "diced", "flaked", "sliced", "slivered", "whole", "beaten",
	"lightly beaten", "halved", "crushed", "grated", "finely grated", "sifted"}

// stateWords are words in a name that the larder knows the thing by, "melted butter", and that say
// how warm it is or how it stands.
var stateWords = []string{"lukewarm", "tepid", "warm", "hot", atBoil, "melted", "softened"}

// descriptions are words before a name that do not change what the thing is made of.
var descriptions = []string{"warm", "lukewarm", "tepid", "hot", "cold", "ice-cold", "iced", doCool,
	"chilled", "softened", "soft", "melted", "sifted", "packed", "firmly packed", "lightly packed",
	"finely", "freshly", "roughly", "coarsely", "grated", "chopped", "sliced", "diced", "crushed",
	"beaten", "lightly beaten", "lightly", "toasted", "good-quality", "good", "ripe", "unsifted",
	"organic", "free-range", "room-temperature", "room temperature", "cubed", "fresh", "fine",
	"very", "well", atBoil, "level", "of", "the", "whole"}

// ingredientLine reads a line of a list, and reports whether it is one.
func (d *draft) ingredientLine(p *part, text string) bool {
	written := text
	text = strings.TrimSpace(bullet().ReplaceAllString(text, ""))
	l := &line{from: d.at}
	if cut := leftOut().FindStringIndex(text); cut != nil {
		rest := strings.Trim(text[:cut[0]], " ,;(")
		aside := strings.Trim(text[cut[0]:], " ,;()")
		if rest == "" || !numberAlone().MatchString(rest) && !noAmount().MatchString(rest) {
			p.remarks = append(p.remarks, remark{d.at, "left out: " + written})
			return true
		}
		l.says = append(l.says, "left out: "+aside)
		text = rest
	}
	inside := []string{}
	text = parens().ReplaceAllStringFunc(text, func(s string) string {
		inside = append(inside, strings.TrimSpace(strings.Trim(s, "()")))
		return " "
	})
	text = strings.Trim(strings.Join(strings.Fields(text), " "), " ,.;")
	switch {
	case text == "":
		return false
	case d.citrus(l, text):
	case d.measured(l, text, inside):
	case noAmount().MatchString(text) && len(strings.Fields(text)) <= 7 && !strings.Contains(text, ". "):
		d.unmeasured(l, text)
	default:
		return false
	}
	if l.name == "" {
		return false
	}
	for _, s := range inside {
		d.insideParens(l, s)
	}
	p.lines = append(p.lines, l)
	return true
}

// citrus reads the juice or the zest of so many fruits. 48 g is the juice of a lemon (SR 28 NDB
// 09152), 2 to 3 tsp of 6 g a tbsp its zest (SR 28 NDB 09156).
func (d *draft) citrus(l *line, text string) bool {
	if m := juiceOf().FindStringSubmatch(text); m != nil {
		l.name, l.amount = strings.ToLower(m[2])+" juice", "?"
		n, ok := plainNumber(m[1])
		if ok && l.name == "lemon juice" {
			l.amount = quantity.Plain(48*n) + " g"
			l.says = append(l.says, "the juice of a lemon is some 48 g: weigh it")
		} else {
			l.says = append(l.says, text+": weigh it")
		}
		return true
	}
	if m := zestOf().FindStringSubmatch(text); m != nil {
		l.name, l.amount = strings.ToLower(m[2])+" zest", "?"
		if n, ok := plainNumber(m[1]); ok {
			l.amount = quantity.Plain(3*n) + " g to " + quantity.Plain(6*n) + " g"
		}
		l.says = append(l.says, text+": weigh it")
		return true
	}
	return false
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

// measured reads a line that begins with an amount.
func (d *draft) measured(l *line, text string, inside []string) bool {
	words := strings.Fields(text)
	first := strings.ToLower(words[0])
	if n := numberWords[first]; n != "" && len(words) > 1 {
		text = n + " " + strings.Join(words[1:], " ")
	}
	each := 1.0
	if m := timesForm().FindStringSubmatch(text); m != nil {
		each, _ = strconv.ParseFloat(m[1], 64)
		text = text[len(m[0]):]
	}
	m := amountAt().FindStringSubmatch(text)
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
				l.says = append(l.says, w+": weigh it")
			}
		}
	}
	if d.packed(l, number, rest, each) || d.loose(l, number, rest) {
		return true
	}
	amount, after := d.unitOf(l, number, rest)
	if amount == "" {
		return d.counted(l, number, each, rest, inside)
	}
	after = strings.TrimLeft(after, " ")
	// "7 g sachet", "400 g can": the pack behind a weight says no more.
	for _, w := range []string{"sachet", "packet", "package", "envelope", "can", "tin", "jar", "block", "pack"} {
		if a, found := cutWord(after, w); found {
			after = a
		} else if a, found := cutWord(after, w+"s"); found {
			after = a
		}
	}
	if each != 1 {
		amount = d.times(l, amount, each)
	}
	l.amount = d.better(l, amount, inside)
	d.named(l, after)
	return true
}

// packed reads so many packs of a known weight.
func (d *draft) packed(l *line, number, rest string, each float64) bool {
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
			l.amount = quantity.Plain(n*x*each) + " " + number1
			l.says = append(l.says, p.says)
			d.named(l, after)
			return true
		}
	}
	return false
}

// loose reads a measure that is none, such as a handful: it lies between two weights.
func (d *draft) loose(l *line, number, rest string) bool {
	for w, b := range bounded {
		after, found := cutWord(rest, w)
		if !found {
			after, found = cutWord(rest, w+"es")
		}
		if found {
			if n, one := plainNumber(number); one {
				lo, _ := strconv.ParseFloat(b.lo, 64)
				hi, _ := strconv.ParseFloat(b.hi, 64)
				l.amount = quantity.Plain(n*lo) + " to " + quantity.Plain(n*hi) + " " + b.unit
			} else {
				l.amount = "?"
			}
			l.says = append(l.says, "a "+w+" is no fixed measure: weigh it")
			d.named(l, after)
			return true
		}
	}
	return false
}

// times multiplies an amount that is one figure and a unit.
func (d *draft) times(l *line, amount string, n float64) string {
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
	l.says = append(l.says, quantity.Plain(n)+" times "+amount)
	return out + " " + q.Unit
}

// unitOf reads the unit behind a number, and what joins it: "1 cup plus 2 tbsp", "500 g/1 lb 2 oz".
// The amount is "" where no unit stands there.
func (d *draft) unitOf(l *line, number, rest string) (amount, after string) {
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
	if of := strings.ToLower(strings.Trim(unit, ".s")); of == "pint" || of == "quart" || of == "gallon" {
		if d.kitchen == unknownKitchen {
			l.says = append(l.says, number+" "+unit+": US or UK? They differ by a fifth")
			return "?", after
		}
		l.says = append(l.says, "read as a "+string(d.kitchen)+" "+of+", by the other words here")
		unit = string(d.kitchen) + " " + of
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
			m := amountAt().FindStringSubmatch(tail)
			if !found || m == nil || m[2] != "" {
				continue
			}
			u, n := unitAt(strings.TrimLeft(tail[len(m[0]):], " "))
			if n == 0 {
				continue
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
	return d.otherMeasures(l, amount, after)
}

// otherMeasures steps over the same amount in other units, "500 g/1 lb 2 oz", and takes a weight
// where the first is none.
func (d *draft) otherMeasures(l *line, amount, after string) (string, string) {
	for {
		next := strings.TrimLeft(after, " ")
		tail, found := strings.CutPrefix(next, "/")
		if !found {
			if tail, found = strings.CutPrefix(next, "or "); !found {
				break
			}
		}
		tail = strings.TrimLeft(tail, " ")
		m := amountAt().FindStringSubmatch(tail)
		if m == nil {
			break
		}
		end := tail[len(m[0]):]
		u, n := unitAt(strings.TrimLeft(end, " "))
		if n == 0 {
			break
		}
		end = strings.TrimLeft(end, " ")[n:]
		if a := amountAt().FindStringSubmatch(strings.TrimLeft(end, " ")); a != nil { // 1 lb 2 oz
			tail := strings.TrimLeft(strings.TrimLeft(end, " ")[len(a[0]):], " ")
			if _, k := unitAt(tail); k > 0 {
				end = tail[k:]
			}
		}
		amount = d.better(l, amount, []string{m[1] + " " + u})
		after = end
	}
	return amount, after
}

// unitAt finds the unit at the start of a text: its word, and how many bytes it takes with the
// blank before what follows. A unit must end a word.
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
		if q, fault := quantity.Read("1 "+bare, wholeMass); fault == nil && words == len(strings.Fields(bare)) &&
			q.Unit != "" {
			return bare, n
		}
		if q, fault := quantity.Read("1 "+lower, wholeMass); fault == nil && q.Unit != "" {
			return lower, n
		}
	}
	return "", 0
}

// better takes a weight that stands in brackets or behind a stroke for a volume, which packs
// differently in every cup.
func (d *draft) better(l *line, amount string, others []string) string {
	q, fault := quantity.Read(amount, allAmounts)
	if fault != nil || q.Kind == quantity.Mass {
		return amount
	}
	for _, o := range others {
		for _, one := range strings.FieldsFunc(o, func(r rune) bool { return r == '/' || r == ';' || r == ',' }) {
			one = strings.TrimSpace(strings.TrimPrefix(strings.TrimSpace(one), "about "))
			if w, fault := quantity.Read(one, quantity.Of(quantity.Mass)); fault == nil {
				l.says = append(l.says, "written "+amount+" too")
				return w.Text
			}
		}
	}
	return amount
}

// counted reads an amount without a unit: eggs, and what has a known weight a piece.
func (d *draft) counted(l *line, number string, each float64, rest string, inside []string) bool {
	if rest == "" || !unicode.IsLetter([]rune(rest)[0]) {
		return false
	}
	d.named(l, rest)
	it, ok := d.opts.Larder.Find(l.name)
	switch {
	case ok && it.Piece > 0 && it.Class != larder.ClassFat:
		l.amount = number + " pieces"
		if number == "1" {
			l.amount = "1 piece"
		}
		if each != 1 {
			l.amount = d.times(l, l.amount, each)
		}
		l.amount = d.better(l, l.amount, inside)
	default:
		l.amount = d.better(l, "?", inside)
		for _, o := range inside {
			if w, fault := quantity.Read(strings.TrimPrefix(o, "about "), wholeMass); fault == nil {
				l.amount = w.Text
			}
		}
		if l.amount == "?" {
			l.says = append(l.says, number+" "+rest+": weigh it")
		}
	}
	return true
}

// unmeasured reads a line without a figure: a pinch, to taste.
func (d *draft) unmeasured(l *line, text string) {
	m := noAmount().FindString(text)
	lower := strings.ToLower(m)
	rest := strings.TrimSpace(strings.Replace(text, m, "", 1))
	rest = strings.Trim(rest, " ,")
	l.amount = "?"
	switch {
	case strings.Contains(lower, "pinch"):
		l.amount = "0.1 to 1 g"
		l.says = append(l.says, m+" is no fixed measure: weigh it")
	case strings.Contains(lower, "dash"):
		l.amount = "0.3 to 1.5 ml"
		l.says = append(l.says, m+" is no fixed measure: weigh it")
	default:
		l.says = append(l.says, m+": weigh it")
	}
	d.named(l, strings.TrimPrefix(rest, "of "))
}

// named reads the name of the thing and what is said of it behind a comma.
func (d *draft) named(l *line, text string) {
	text = strings.Trim(text, " ,.;")
	text = strings.TrimPrefix(text, "of ")
	name, after, _ := strings.Cut(text, ",")
	if before, second, found := strings.Cut(name, " or "); found {
		l.says = append(l.says, "or "+strings.TrimSpace(second)+"?")
		name = before
	}
	name = d.egg(l, strings.TrimSpace(name))
	var prepared []string
	if found, words, ok := d.resolve(name); ok {
		name, prepared = found, words
	}
	for _, w := range strings.Fields(strings.ToLower(name)) {
		if slices.Contains(stateWords, w) && !slices.Contains(prepared, w) {
			prepared = append(prepared, w)
		}
	}
	l.name = name
	d.ask(l)
	for _, w := range prepared {
		d.describe(l, w)
	}
	for _, s := range strings.Split(after, ",") {
		d.describe(l, strings.TrimSpace(s))
	}
}

var eggSize = spelling.Pattern(`(?i)^(extra[- ]large|x-?large|xl|jumbo|large|medium|small|size [smlx]+)\s+(?:free-range |fresh |organic )?eggs?$`)

// egg names an egg by its size and the kitchen's country. A large egg is 50 g in the US and 60 g in
// the EU and the UK.
func (d *draft) egg(l *line, name string) string {
	m := eggSize().FindStringSubmatch(name)
	if m == nil {
		return name
	}
	size := strings.ToLower(m[1])
	switch {
	case strings.HasPrefix(size, "size"):
		return name
	case d.kitchen == uk && (size == "large" || size == "medium"):
		named := map[string]string{"large": "size L egg", "medium": "size M egg"}[size]
		l.says = append(l.says, "read as a UK "+size+" egg, by the other words here")
		return named
	case size == "large" && d.kitchen == unknownKitchen:
		l.says = append(l.says, "large: read as the US one of 50 g; one of the EU or the UK is "+
			"\"size L egg\", 60 g")
	}
	if size == "large" {
		return "egg"
	}
	return strings.NewReplacer("x-large", "extra large", "xlarge", "extra large", "xl", "extra large",
		"extra-large", "extra large").Replace(size) + " egg"
}

// resolve finds the larder's name in words, some of which only describe the thing. prepared are
// those words.
func (d *draft) resolve(name string) (found string, prepared []string, ok bool) {
	if d.knows(name) {
		return name, nil, true
	}
	words := strings.Fields(name)
	for len(words) > 1 {
		n := 0
		for _, k := range []int{2, 1} {
			if k < len(words) && slices.Contains(descriptions, strings.ToLower(strings.Join(words[:k], " "))) {
				n = k
				break
			}
		}
		if n == 0 {
			return "", nil, false
		}
		prepared = append(prepared, strings.Join(words[:n], " "))
		words = words[n:]
		if rest := strings.Join(words, " "); d.knows(rest) {
			return rest, prepared, true
		}
	}
	return "", nil, false
}

func (d *draft) knows(name string) bool {
	_, ok := d.opts.Larder.Find(name)
	if !ok {
		_, ok = d.opts.Larder.Ambiguous(name)
	}
	return ok
}

// ask says what a name may mean, where the larder is not sure of it or does not know it.
func (d *draft) ask(l *line) {
	if isPart(l.name) {
		return
	}
	a, ambiguous := d.opts.Larder.Ambiguous(l.name)
	_, known := d.opts.Larder.Find(l.name)
	switch {
	case !known:
		l.says = append(l.says, d.opts.Larder.UnknownText(l.name))
	case ambiguous && len(a.Choices) > 0:
		l.says = append(l.says, fmt.Sprintf("read as %s; it may be %s", a.Taken,
			strings.Join(without(a.Choices, a.Taken), ", ")))
	}
}

func without(list []string, word string) []string {
	return slices.DeleteFunc(slices.Clone(list), func(s string) bool { return s == word })
}

// describe reads what is said of an ingredient: a temperature, a form, or words.
func (d *draft) describe(l *line, text string) {
	text = strings.Trim(text, " .")
	lower := strings.ToLower(text)
	has := func(key string) bool {
		return slices.ContainsFunc(l.options, func(o setting) bool { return o.key == key })
	}
	put := func(key, value string) {
		if !has(key) {
			l.options = append(l.options, setting{key, quote(value)})
		}
	}
	switch {
	case text == "":
	case degrees().MatchString(text):
		if c, ok := temperature(text); ok {
			put("temp", c)
		}
	case slices.Contains([]string{"of", "the", "very", "well", "good", "level", "fine", "ripe",
		"organic", "free-range", "good-quality", "fresh", "packed", "firmly packed", "sifted", "unsifted"}, lower):
		// nothing that a formula says
	case strings.Contains(lower, "lukewarm"), strings.Contains(lower, "tepid"):
		put("temp", "35 to 40 C")
		l.says = append(l.says, text+": read as 35 to 40 C")
	case lower == atBoil:
		put("temp", "95 to 100 C")
		l.says = append(l.says, "boiling: how hot is it when it goes in? read as 95 to 100 C")
	case strings.Contains(lower, "warm"), lower == "hot", strings.HasPrefix(lower, "scalded"):
		l.says = append(l.says, text+": how warm? add temp = \"40 C\"")
	case strings.Contains(lower, "divided"):
		put("note", text)
		l.says = append(l.says, "divided: say what goes in later, with reserve")
	case strings.Contains(lower, "optional"):
		put("note", text)
		l.says = append(l.says, "optional: read as taken")
	case slices.Contains(asForms, lower):
		put("as", lower)
	case strings.HasPrefix(lower, "melted") || strings.HasPrefix(lower, "softened"):
		put("as", strings.Fields(strings.Trim(lower, ","))[0])
	default:
		put("note", text)
	}
}

// insideParens reads what stands in brackets.
func (d *draft) insideParens(l *line, text string) {
	if q, fault := quantity.Read(strings.TrimPrefix(text, "about "), allAmounts); fault == nil {
		if q.Text != l.amount && !slices.ContainsFunc(l.says, func(s string) bool { return strings.HasPrefix(s, "written ") }) {
			l.says = append(l.says, "written "+text+" too")
		}
		return
	}
	if numberAlone().MatchString(text) && !degrees().MatchString(text) {
		l.says = append(l.says, "written "+text+" too")
		return
	}
	d.describe(l, text)
}

// temperature reads the first temperature of a text.
func temperature(text string) (string, bool) {
	m := degrees().FindStringSubmatch(text)
	if m == nil {
		return "", false
	}
	number := m[1]
	if m[2] != "" {
		number += " to " + m[2]
	}
	out := number + " " + strings.ToUpper(m[3][:1])
	_, fault := quantity.Read(out, quantity.Of(quantity.Temperature))
	return out, fault == nil
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
