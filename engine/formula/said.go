package formula

import (
	"fmt"
	"regexp"
	"strings"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/source"
)

// This file answers words that plainly mean something and are no figure: a gas mark, a warm place, an
// oven that falls, a sign in place of a time. Each answer gives the line to write.

// gasMarks are the marks of UK ovens, C. Marks 4, 6 and 7 were read in pages that pair them; the
// others are common practice.
var gasMarks = map[string]string{"1": "140 C", "2": "150 C", "3": "170 C", "4": "180 C",
	"5": "190 C", "6": "200 C", "7": "220 C", "8": "230 C", "9": "240 C"}

// warmths are words for how warm it is around a part or in an oven. Common practice, no source.
// taken is read as the range, and told; others are asked.
var warmths = []struct {
	words, write string
	taken        bool
}{
	{"warm oven", "30 C", false}, {"warm place", "25 C to 30 C", true},
	{"warm spot", "25 C to 30 C", true}, {"warm room", "25 C to 30 C", true},
	{"warm", "25 C to 30 C", true}, {"cool place", "12 C to 16 C", false},
	{"cellar", "10 C to 14 C", false}, {"slow oven", "150 C", false},
	{"moderate oven", "180 C", false}, {"hot oven", "220 C", false},
	{"very hot oven", "230 C", false}, {"lukewarm", "35 C to 40 C", false},
	{"proofer", "28 C", false}, {"prover", "28 C", false}, {"cold", "4 C", false},
}

var (
	gasMark = regexp.MustCompile(`(?i)^(?:gas )?(?:gas|mark)(?: mark)? ?([1-9])$`)
	falling = regexp.MustCompile(`(?i)^(.*?\d ?°? ?[CF]?),? ?(?:and )?(?:then|falling to|down to|->|→) ?(.*)$`)
	area    = regexp.MustCompile(`(?i)^([\d.]+) ?(mm|cm|in|inch|inches)? ?(?:x|×|by) ?([\d.]+) ?(mm|cm|in|inch|inches)$`)
	sign    = regexp.MustCompile(`(?i)^(?:un)?till?\b|\b(?:doubled|double|tripled|bubbly|golden|ready|done|smooth|soft)\b`)
)

// measures are words of the kitchen that an ingredient gives a size to: what one is, and what a
// report says of it. Sources: pinch and dash from measuring-spoon pages (read), the bounds a judgement;
// a sachet of dry yeast is 7 g (German and US pages, read); a stick of butter is 4 oz (SR 28, read).
var measures = []struct {
	word   *regexp.Regexp
	lo, hi float64
	unit   string
	fits   func(*larder.Item) bool
	says   string
}{
	{regexp.MustCompile(`^(?:(?:small|large|good|generous|big) )?pinch(?:es)?$`), 0.1, 1, "g",
		func(*larder.Item) bool { return true }, "a pinch is taken as 0.1 to 1 g: weigh it"},
	{regexp.MustCompile(`^dash(?:es)?$`), 0.3, 1.5, "ml",
		func(it *larder.Item) bool { return it.Density > 0 },
		"a dash is taken as 0.3 to 1.5 ml: weigh it"},
	{regexp.MustCompile(`^(?:sachets?|packets?|envelopes?|packages?|pkgs?)$`), 7, 7, "g",
		func(it *larder.Item) bool { return it.Yeast > dryYeast },
		"a packet of dry yeast is taken as 7 g: read its label"},
	{regexp.MustCompile(`^(?:sachets?|packets?)$`), 7.5, 10, "g",
		func(it *larder.Item) bool { return it.Name == "vanilla sugar" },
		"a packet of vanilla sugar is taken as 7.5 to 10 g: read its label"},
	{regexp.MustCompile(`^sticks?$`), 4, 4, "oz",
		func(it *larder.Item) bool { return it.Class == larder.ClassFat && it.Water > 0 && it.Fat < 90 },
		"a stick is taken as the US one of 4 oz"},
}

// dryYeast is above what a gram of fresh yeast stands for.
const dryYeast = 0.5

var amountOf = regexp.MustCompile(`(?i)^([\d\s./⁄½¼¾⅓⅔⅛]+|an? |half an? )\s*([a-z ]+?)(?: of [a-z ]+)?$`)

// saidAmount gives the quantity of a word of the kitchen, as a text to read, and tells what it was
// taken for. Others stay as they are.
func (rd *reader) saidAmount(in *Ingredient, text string, at source.Place) string {
	m := amountOf.FindStringSubmatch(strings.TrimSpace(text))
	it, ok := rd.opts.Larder.Find(rd.opts.eggName(in.Name))
	if m == nil || !ok {
		return text
	}
	n, fault := quantity.Read(strings.TrimSpace(m[1])+" pieces", forCount)
	if fault != nil || !n.IsPoint() {
		return text
	}
	word := strings.ToLower(strings.TrimSpace(m[2]))
	for _, k := range measures {
		if !k.word.MatchString(word) || !k.fits(it) ||
			k.unit == "oz" && (rd.opts.Units == "uk" || rd.opts.Units == "metric") {
			continue
		}
		rd.formula.Assumed = append(rd.formula.Assumed, Assumed{at, k.says})
		out := quantity.Plain(n.Lo * k.lo)
		if k.hi > k.lo {
			out += " to " + quantity.Plain(n.Lo*k.hi)
		}
		return out + " " + k.unit
	}
	return text
}

var sizedEggs = regexp.MustCompile(`(?i)^([\d\s./⁄½¼¾]+) (large|medium|small|extra[- ]large)(?: eggs?)?$`)

// sizedEgg reads "2 large" of eggs: the ingredient is then the egg of that size.
func (rd *reader) sizedEgg(in *Ingredient, text string, at source.Place) string {
	m := sizedEggs.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || !sameName(in.Name, "egg") && !sameName(in.Name, "eggs") {
		return text
	}
	in.size = strings.ReplaceAll(strings.ToLower(m[2]), "-", " ")
	if in.size == "large" && rd.opts.Units == "" {
		rd.formula.Assumed = append(rd.formula.Assumed, Assumed{at, "a large egg is taken as the US " +
			"one of 50 g; one of the EU or the UK is \"size L egg\", 60 g"})
	}
	return m[1] + " pieces"
}

// saidAt answers words in the place of a temperature, and reports whether it did.
func (rd *reader) saidAt(s *Step, text string, at source.Place, what string) bool {
	word := fold(strings.ReplaceAll(text, ".", ""))
	if m := gasMark.FindStringSubmatch(word); m != nil {
		s.At, _ = rd.QuantityText(gasMarks[m[1]], at, forTemperature, what)
		s.At.Text = text
		rd.formula.Assumed = append(rd.formula.Assumed, Assumed{at, fmt.Sprintf(
			"gas mark %s is taken as %s", m[1], gasMarks[m[1]])})
		return true
	}
	for _, w := range warmths {
		if word == w.words && w.taken && s.Verb.Waits() {
			s.At, _ = rd.QuantityText(w.write, at, forTemperature, what)
			s.At.Text = text
			rd.formula.Assumed = append(rd.formula.Assumed, Assumed{at, fmt.Sprintf(
				"%q is taken as %s: measure it", text, w.write)})
			return true
		}
		if word == w.words {
			rd.Fault(at, "%s: %q is no figure; measure it, or write %q", what, text, w.write)
			return true
		}
	}
	first, second := "", ""
	if m := falling.FindStringSubmatch(text); m != nil {
		first, second = strings.TrimSpace(m[1]), strings.TrimSpace(m[2])
	} else if a, b, found := strings.Cut(text, " to "); found && s.Verb.Bakes() {
		first, second = a, b
	}
	from, fault1 := quantity.Read(withScale(first, second), forTemperature)
	to, fault2 := quantity.Read(second, forTemperature)
	if first == "" || fault1 != nil || fault2 != nil || from.Lo <= to.Hi {
		return false
	}
	rd.Fault(at, "%s: an oven that falls is a step for each figure, one after the other: write "+
		"{ %s = \"?\", at = %q }, { %s = \"?\", at = %q }, each with its own time", what,
		s.Verb.Name, from.Text, s.Verb.Name, to.Text)
	return true
}

// withScale gives a bare number the scale of another temperature.
func withScale(first, second string) string {
	if first == "" || strings.ContainsAny(first, "CFcf") || second == "" {
		return first
	}
	return first + " " + second[len(second)-1:]
}

// saidTime takes a sign in the place of a time as a time to be decided, tells so, and reports
// whether it is one.
func (rd *reader) saidTime(s *Step, e hclsyntax.Expression, what string) bool {
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		return false
	}
	text, inside, ok := source.StringLiteral(e)
	if !ok || !sign.MatchString(text) || strings.ContainsAny(text, "0123456789") {
		return false
	}
	at := source.Place{File: rd.File, Start: inside.Start, End: inside.End}
	s.OpenOwn = true
	if s.Note == "" {
		s.Note = text
	}
	how := "write the time"
	if s.Verb.Waits() && strings.Contains(strings.ToLower(text), "doubl") {
		how += ", with measured = \"2 x\" once you have seen it"
	}
	rd.formula.Assumed = append(rd.formula.Assumed, Assumed{at, fmt.Sprintf(
		"%q is a sign and no time: taken as \"?\"; %s", text, how)})
	return true
}

// saidArea reads a sheet that is given as length by width, or answers a side that is, and reports
// whether it did.
func (rd *reader) saidArea(s *Step, e hclsyntax.Expression, own bool, what string) bool {
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		return false
	}
	text, inside, ok := source.StringLiteral(e)
	m := area.FindStringSubmatch(strings.TrimSpace(text))
	if !ok || m == nil {
		return false
	}
	at := source.Place{File: rd.File, Start: inside.Start, End: inside.End}
	long, other := m[1], m[3]
	unit := m[4]
	x, fault1 := quantity.Read(long+" "+unit, forLength)
	y, fault2 := quantity.Read(other+" "+unit, forLength)
	if fault1 != nil || fault2 != nil {
		return false
	}
	if y.Hi > x.Hi {
		x, y = y, x
	}
	if own { // the thickness is to be decided
		s.OpenOwn = true
		if s.Wide == nil {
			x.Text = text
			s.Wide = &Given{Quantity: x, Place: at, Set: true}
		}
		rd.formula.Assumed = append(rd.formula.Assumed, Assumed{at, fmt.Sprintf("%q is length by "+
			"width: the thickness is taken as \"?\", and the longer side as the one that is rolled up; "+
			"write { %s = \"5 mm\", wide = %q } with your thickness", text, what, x.String())})
		return true
	}
	rd.Fault(at, "%s: one side, the one that is rolled up: write %q, or %q", what, x.Text, y.Text)
	return true
}

// bareAmount reads a number without quotes where it can only be a count: "egg" = 2.
func (rd *reader) bareAmount(in *Ingredient, e hclsyntax.Expression) (Given, bool) {
	n, at, ok := rd.wholeNumber(e)
	if !ok || !rd.counted(in.Name) {
		return Given{}, false
	}
	return bareCount(n, at), true
}

// goingIn are words for how warm an ingredient goes in. Common practice, no source.
var goingIn = map[string]string{"lukewarm": "35 C to 40 C", "tepid": "35 C to 40 C",
	"warm": "35 C to 43 C", "room temperature": "18 C to 24 C", "room": "18 C to 24 C",
	"cold": "2 C to 8 C", "fridge": "2 C to 8 C", "from fridge": "2 C to 8 C",
	"cold from fridge": "2 C to 8 C", "from the fridge": "2 C to 8 C",
	"cold from the fridge": "2 C to 8 C", "ice cold": "0 C to 4 C"}

// saidTemp reads a word for how warm an ingredient goes in, tells what it was taken for, and
// reports whether it is one.
func (rd *reader) saidTemp(in *Ingredient, e hclsyntax.Expression) bool {
	text, inside, ok := source.StringLiteral(e)
	write := goingIn[fold(text)]
	if !ok || write == "" {
		return false
	}
	at := source.Place{File: rd.File, Start: inside.Start, End: inside.End}
	in.Temp, _ = rd.QuantityText(write, at, forTemperature, in.Name)
	in.Temp.Text = text
	rd.formula.Assumed = append(rd.formula.Assumed, Assumed{at, fmt.Sprintf(
		"%q of %q is taken as %s: measure it", text, in.Name, write)})
	return true
}

var inBrackets = regexp.MustCompile(`^([^()]+?)\s*\(([^()]+)\)$`)

// bracketed gives the weight of an amount that is written twice: "3 1/2 cups (440 g)". A weight says
// more than a volume. Others stay as they are.
func bracketed(text string) string {
	m := inBrackets.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return text
	}
	for _, one := range []string{m[2], m[1]} {
		if _, fault := quantity.Read(one, forMass); fault == nil {
			return one
		}
	}
	return text
}

// Signs of a country's kitchen in the text of a formula. Common practice, no source.
var (
	usSigns = regexp.MustCompile(`(?i)\d ?°?F"|\bcups?"|\bsticks?"|all-purpose`)
	ukSigns = regexp.MustCompile(`(?i)gas mark|caster sugar|icing sugar|strong (?:white )?flour|plain flour`)
)

// country gives a shared measure the country of the kitchen: the house's, else that of the other
// words of the formula, which is told.
func (rd *reader) country(text string, at source.Place) string {
	units := rd.opts.Units
	if units == "" && quantity.OfCountry(text, "uk") != text && strings.Contains(
		quantity.OfCountry(text, "us"), " us ") {
		us, uk := usSigns.Match(rd.File.Text), ukSigns.Match(rd.File.Text)
		switch {
		case us && !uk:
			units = "us"
		case uk && !us:
			units = "uk"
		}
		if units != "" {
			rd.formula.Assumed = append(rd.formula.Assumed, Assumed{at, fmt.Sprintf("%q is taken as "+
				"of the %s, by the other words here: units = %q in the kitchen block says it", text,
				strings.ToUpper(units), units)})
		}
	}
	return quantity.OfCountry(text, units)
}
