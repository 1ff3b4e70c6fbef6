// Package puton reads the words for what a step puts on and no part
// holds: "1 egg beaten with 1 tsp water", "melted butter, then cinnamon
// sugar". It knows no formula.
package puton

import (
	"slices"
	"strconv"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/said/unread"
	"forebake/engine/spelling"
)

// Thing is one ingredient of what is put on. Grams is the zero interval
// where no amount is written.
type Thing struct {
	Name  string
	Grams figure.Interval
}

// together are words for what is put on, whose make-up is plain.
var together = map[string][]string{"egg wash": {"egg"}, "eggwash": {"egg"}, "dorure": {"egg"},
	"cinnamon sugar": {"sugar", "cinnamon"}, "sugar syrup": {"sugar", "water"},
	"simple syrup": {"sugar", "water"}, "stock syrup": {"sugar", "water"},
	"light syrup": {"sugar", "water"}, "heavy syrup": {"sugar", "water"},
	"sugar glaze": {"sugar", "water"}, "bun wash": {"sugar", "water"},
	"sugar wash": {"sugar", "water"}, "water icing": {"icing sugar", "water"},
	"garlic butter": {"butter", "garlic"}, "honey butter": {"butter", "honey"},
	"zimtzucker": {"sugar", "cinnamon"}, "zimt und zucker": {"sugar", "cinnamon"},
	"cinnamon and sugar": {"sugar", "cinnamon"}, "milk wash": {"whole milk"},
	"butter wash": {"butter"}, "cream wash": {"heavy cream"}}

var (
	// label is a word for a wash before what it is made of: "dorure: 1 egg".
	label = spelling.Pattern(`(?i)^(?:(?:hot|warm|sticky|sugar|bun|light|thin|simple|sweet|shiny|` +
		`milk|egg|butter) )*(?:egg ?wash|dorure|glaze|wash|coating|topping|syrup|icing|` +
		`to finish|finish|filling|for the \pL+):? *(?::|=|-|\() *(.+?)\)?$`)
	leading = spelling.Pattern(`(?i)^(?:(?:with|in|some|the|a|an|one|more|extra|plenty of|` +
		`lots of|(?:a )?(?:little|bit|dash|splash|drop|drizzle|dusting|sprinkling|sprinkle|` +
		`handful|few|coat|knob)(?: of)?|beaten|whisked|brushed with|brush with|dip in|roll in|` +
		`all over with|(?:the )?(?:rest|remainder) of the) )+`)
	joined = spelling.Pattern(`(?i)\s*(?:,? and then |,? then | and | und | et | e | och | og |` +
		`\+|&| plus | (?:(?:lightly |well )?(?:beaten|mixed|whisked|thinned|loosened|let down|` +
		`whipped|stirred|blended|verquirlt|verrührt|combined|dissolved|steeped) )?(?:with|mit|` +
		`avec|con|med) | (?:beaten|mixed|whisked|dissolved|stirred|infused|steeped) (?:in|into) |` +
		` (?:in|into) (?:a |the )?(?:little |splash of |bit of )|, ?|; ?)\s*`)
	either   = spelling.Pattern(`(?i) (?:or|oder|ou|eller|o) `)
	measured = spelling.Pattern(`(?i)^(about |ca\.? )?((?:[\d./⁄¼½¾⅓⅔⅛]+(?: ?(?:-|–|` +
		`to) ?[\d./¼½¾]+)?(?: [\d/⁄¼½¾]+)?)) ?(.*)$`)
)

// PartName is a name without the little words before it: "with syrup".
func PartName(words string) string {
	return strings.TrimSpace(withThe.ReplaceAllString(strings.TrimSpace(words), ""))
}

var withThe = spelling.Pattern(`(?i)^(?:(?:with|in|some|the|more|all of|half of|rest of) )+`)

// Of gives the ingredients of what is put on, and the words beside them
// that say nothing of what it is; none where a word could be another
// food, or turn the meaning.
func Of(l *larder.Larder, words, units string) (things []Thing, notRead []string) {
	words = intoFigure.ReplaceAllString(strings.TrimSpace(words), "$1 with $2")
	if things, notRead = inBrackets(l, words, units); things != nil {
		return things, notRead
	}
	if m := warmedBehind.FindStringSubmatch(words); m != nil { // "apricot jam, boiled and sieved"
		thing, ok := one(l, m[1], units)
		if it, _, _ := said.Ingredient(l, thing.Name, units); ok && it.Water < wetAbove {
			return []Thing{thing}, []string{m[2]}
		}
	}
	if m := label.FindStringSubmatch(words); m != nil {
		if things, notRead = Of(l, m[1], units); things != nil {
			return things, notRead
		}
	}
	if list := known(words); list != nil {
		return list, nil
	}
	if thing, ok := one(l, words, units); ok {
		return []Thing{thing}, nil
	}
	if list := oneOf(l, words, units); list != nil {
		return list, nil
	}
	for _, part := range joined.Split(words, -1) {
		part = strings.TrimSpace(part)
		switch list := known(part); {
		case part == "":
			continue
		case list != nil:
			things = append(things, list...)
			continue
		case len(things) > 0 && withEgg(part) != part:
			part = withEgg(part) // "1 egg + 1 yolk"
		}
		if g, ok := weight(part); ok && len(things) > 0 &&
			things[len(things)-1].Grams == (figure.Interval{}) {
			things[len(things)-1].Grams = g
			continue
		}
		list := oneOf(l, part, units)
		if list == nil {
			list = syrupOf(l, part)
		}
		thing, ok := one(l, part, units)
		switch {
		case ok:
			things = append(things, thing)
		case list != nil:
			things = append(things, list...)
		default:
			head, rest, cut := beside(l, part, units)
			switch {
			case cut:
				things, notRead = append(things, head), append(notRead, rest)
			case len(things) > 0 && !unread.Asked(l, part):
				notRead = append(notRead, part)
			default:
				return nil, nil
			}
		}
	}
	return things, notRead
}

var (
	// intoFigure is a liquid that has its own amount: "2 tbsp sugar in 2 tbsp water".
	intoFigure  = spelling.Pattern(`(?i)(\pL) in(?:to)? (\d)`)
	bracketed   = spelling.Pattern(`^([^():=]+?) ?\(([^()]+)\)$`)
	warmedWords = spelling.Pattern(`(?i)^(?:warm(?:ed)?|heated|melted|hot|boiled|sieved|strained)` +
		`(?: through| up)?$`)
)

var warmedBehind = spelling.Pattern(`(?i)^([^,;]+?), ((?:(?:warm(?:ed)?|hot|heated|boiled|melted|` +
	`sieved|strained|thinned)(?:,? and |, | )?)+)$`)

// inBrackets reads a thing with its amount in brackets, "apricot jam (2 tbsp, warmed)", or things
// with the list of what they are, "milk and egg (1 egg, 1 tbsp milk)".
func inBrackets(l *larder.Larder, words, units string) (things []Thing, notRead []string) {
	m := bracketed.FindStringSubmatch(words)
	if m == nil {
		return nil, nil
	}
	if thing, ok := one(l, m[1], units); ok {
		it, _, _ := said.Ingredient(l, thing.Name, units)
		first, rest, _ := strings.Cut(m[2], ",")
		g, weighed := grams(it, strings.TrimSpace(first), units)
		rest = strings.TrimSpace(rest)
		if weighed && (rest == "" || warmedWords.MatchString(rest) && it.Water < wetAbove ||
			!unread.AskedOf(l, rest)) {
			if thing.Grams = g; rest != "" {
				notRead = append(notRead, rest)
			}
			return []Thing{thing}, notRead
		}
	}
	heads, _ := Of(l, m[1], units)
	list, notRead := Of(l, m[2], units)
	if len(heads) == 0 || len(list) == 0 {
		return nil, nil // a label is read apart
	}
	for _, head := range heads { // the list holds all that is named before it
		a, _, _ := said.Ingredient(l, head.Name, units)
		if !slices.ContainsFunc(list, func(thing Thing) bool {
			b, _, _ := said.Ingredient(l, thing.Name, units)
			return a != nil && b != nil && a.Class == b.Class
		}) {
			return nil, nil
		}
	}
	return list, notRead
}

// wetAbove is the water in 100 g of a thing whose warmth matters, g: not that of a jam.
const wetAbove = 45

// known are the things of words whose make-up is plain.
func known(words string) []Thing {
	plain := strings.ToLower(strings.TrimSpace(leading.ReplaceAllString(words, "")))
	var out []Thing
	for _, name := range together[plain] {
		out = append(out, Thing{Name: name})
	}
	return out
}

// syrupOf are the sugar and the water of "papelón syrup", a syrup that is called by its sugar.
func syrupOf(l *larder.Larder, words string) []Thing {
	name, is := strings.CutSuffix(strings.ToLower(strings.TrimSpace(words)), " syrup")
	it, known := l.Find(name)
	if _, whole := l.Find(words); !is || whole || !known || it.Class != larder.ClassSugar {
		return nil
	}
	return []Thing{{Name: name}, {Name: "water"}}
}

// oneOf are the things of which either may be put on, "sesame or poppy
// seeds", where they are of one class or both dry: the dangers of both are told.
func oneOf(l *larder.Larder, words, units string) (things []Thing) {
	names := either.Split(words, -1)
	if len(names) < 2 {
		return nil
	}
	tail := words[strings.LastIndexByte(words, ' ')+1:]
	var class larder.Class
	dry := false
	for i, name := range names {
		thing, ok := one(l, name, units)
		if !ok {
			if thing, ok = one(l, name+" "+tail, units); !ok { // "sesame or poppy seeds"
				return nil
			}
		}
		it, _, _ := said.Ingredient(l, thing.Name, units)
		if i > 0 && it.Class != class && !(dry && it.Water < dryBelow) {
			return nil
		}
		class, dry, thing.Grams = it.Class, it.Water < dryBelow, figure.Interval{}
		things = append(things, thing)
	}
	return things
}

// dryBelow is the water in 100 g below which nothing grows in a
// topping, g.
const dryBelow = 20

// one reads one ingredient with or without its amount: "25 g melted
// butter", "1 egg", "milk".
func one(l *larder.Larder, words, units string) (Thing, bool) {
	plain := strings.TrimSpace(leading.ReplaceAllString(strings.TrimSpace(words), ""))
	if _, ok := l.Find(plain); !ok && unread.Turns(plain) { // half and half is a food
		return Thing{}, false
	}
	if over := l.Unread(plain); over != "" {
		return Thing{}, false
	}
	if head, _ := said.Beside(l, plain); head != "" {
		if _, _, whole := l.Described(plain); !whole {
			return Thing{}, false
		}
	}
	if _, _, ok := said.Ingredient(l, plain, units); ok && said.NoFigure(plain) {
		return Thing{Name: plain}, true
	}
	if amount, name, ok := said.Named(strings.TrimSpace(words)); ok { // "pinch of salt"
		if it, _, ok := said.Ingredient(l, name, units); ok {
			if g, ok := grams(it, amount, units); ok {
				return Thing{Name: name, Grams: g}, true
			}
		}
	}
	m := measured.FindStringSubmatch(plain)
	if m == nil {
		return Thing{}, false
	}
	fields := strings.Fields(m[3])
	for n := 0; n <= min(2, len(fields)-1); n++ { // words of the unit
		name := strings.Join(fields[n:], " ")
		name = strings.TrimPrefix(name, "of ")
		it, _, ok := said.Ingredient(l, name, units)
		if !ok {
			continue
		}
		amount := m[2]
		if n == 0 && !unitBehind(amount) {
			amount += " pieces"
		} else if n > 0 {
			amount += " " + strings.TrimSuffix(strings.Join(fields[:n], " "), ".")
		}
		if g, ok := grams(it, amount, units); ok {
			return Thing{Name: name, Grams: g}, true
		}
	}
	return Thing{}, false
}

// unitBehind reports whether a number ends in its unit: none does that
// the pattern of numbers reads.
func unitBehind(number string) bool {
	return !strings.ContainsAny(number[len(number)-1:], "0123456789½¼¾⅓⅔⅛")
}

// grams weighs an amount of an item; ok is false where the larder does
// not know what it weighs.
func grams(it *larder.Item, amount, units string) (figure.Interval, bool) {
	if taken, ok := said.Amount(it, amount, units); ok {
		amount = taken.Text
	}
	q, fault := quantity.Read(amount, quantity.Amounts)
	if fault != nil {
		return figure.Interval{}, false
	}
	span, per := it.PerMl, it.Density
	switch q.Kind {
	case quantity.Mass:
		return q.Interval, true
	case quantity.Volume:
	case quantity.Count:
		span, per = it.PerPiece, it.Piece
	default:
		return figure.Interval{}, false
	}
	if span == (figure.Interval{}) {
		span = figure.Point(per)
	}
	return q.Interval.Mul(span), span.Lo > 0
}

// weight is an amount that stands alone behind its ingredient, g.
func weight(words string) (figure.Interval, bool) {
	q, fault := quantity.Read(strings.Trim(words, "() "), quantity.Of(quantity.Mass))
	return q.Interval, fault == nil
}

// withEgg is what a yolk or a white is of.
func withEgg(part string) string {
	fields := strings.Fields(part)
	if slices.Contains(fields, "egg") {
		return part
	}
	if i := slices.IndexFunc(fields, func(w string) bool {
		w = strings.ToLower(w)
		return w == "yolk" || w == "yolks" || w == "white" || w == "whites"
	}); i >= 0 {
		return strings.Join(slices.Insert(fields, i, "egg"), " ")
	}
	return part
}

// beside reads one ingredient and the words behind it that say how it is
// put on: "melted butter all over".
func beside(l *larder.Larder, part, units string) (thing Thing, rest string, ok bool) {
	fields := strings.Fields(part)
	for n := len(fields) - 1; n > 0; n-- {
		rest = strings.Join(fields[n:], " ")
		if thing, ok = one(l, strings.Join(fields[:n], " "), units); ok {
			return thing, rest, !unread.AskedOf(l, rest)
		}
	}
	return Thing{}, "", false
}

var intoTins = spelling.Pattern(
	`(?i)^(?:in|into) .*\b(?:moulds?|molds?|tins?|pans?|cases?|cups?|rings?)\b`)

// Into reports whether words say what tins a thing goes into.
func Into(words string) bool { return intoTins.MatchString(words) }

// Lines are things as a part's ingredients are written, open where no
// amount is said.
func Lines(things []Thing) string {
	out := make([]string, len(things))
	for i, thing := range things {
		amount := "?"
		if thing.Grams != (figure.Interval{}) {
			amount = quantity.FormatInterval(thing.Grams, "g")
		}
		out[i] = strconv.Quote(thing.Name) + " = " + strconv.Quote(amount)
	}
	return strings.Join(out, ", ")
}

// Words tell the things: "egg, 50 g and water, 4.9 g".
func Words(things []Thing) string {
	out := make([]string, len(things))
	for i, thing := range things {
		out[i] = thing.Name
		if thing.Grams != (figure.Interval{}) {
			out[i] += ", " + quantity.FormatInterval(thing.Grams, "g")
		}
	}
	return strings.Join(out, " and ")
}

var fatMeasure = spelling.Pattern(`(?i)^(?:about |at least )?(?:[\d./½¼¾ ]+(?:(?:-|–|` +
	`to) ?[\d./ ]+)? ?(?:quarts?|qts?\.?|` +
	`cups?|l|ml|dl|liters?|litres?|pints?|gallons?|oz|kg|g|inch(?:es)?|in\.?|cm) (?:of )?)?` +
	`(?:hot |clean |fresh )*`)

// Fats are the fats that words name, without how much there is or how
// deep it stands: "2 quarts canola oil or shortening".
func Fats(text string) (names []string) {
	text, _, _ = strings.Cut(text, ",") // "peanut oil, 3 inches deep"
	text = fatMeasure.ReplaceAllString(strings.TrimSpace(text), "")
	for _, name := range strings.Split(text, " or ") {
		if name = strings.TrimSpace(name); name != "" {
			names = append(names, name)
		}
	}
	return names
}
