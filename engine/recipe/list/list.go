// Package list reads the lines of a list of ingredients as cook books write
// them: how much of what, how warm, in what form, and what for. A recipe
// calls it. It decides nothing about the dough, and leaves no word of a
// line out silently: what it made nothing of stands in Says.
package list

import (
	"slices"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/spelling"
)

// Line is one ingredient.
type Line struct {
	Name, Amount string
	Options      []Option
	Says         []string // what a baker is to read beside it
	// what the text says it is for: "egg wash", "frying"; "" for the
	// part itself
	For     string
	Unknown string // why no formula can name it; "" where the larder knows the name
}

// Option is a setting of an ingredient with its value as plain text.
type Option struct{ Key, Value string }

// Text is all of a line but its name.
func (l *Line) Text() string {
	return l.Amount + l.OptionsText() + " " + strings.Join(l.Says, " ")
}

func (l *Line) says(text string) { l.Says = append(l.Says, text) }

func (l *Line) has(key string) bool {
	return slices.ContainsFunc(l.Options, func(o Option) bool { return o.Key == key })
}

// put sets an option once; a second note goes behind the first.
func (l *Line) put(key, value string) {
	for i, o := range l.Options {
		if o.Key == key {
			if key == "note" {
				l.Options[i].Value += ", " + value
			}
			return
		}
	}
	l.Options = append(l.Options, Option{key, value})
}

// OptionsText are the options in words, each behind a comma.
func (l *Line) OptionsText() string {
	out := ""
	for _, o := range l.Options {
		out += ", " + o.Key + " " + o.Value
	}
	return out
}

// Reader reads lines. Scale is the letter that degrees without one mean, ""
// where that is unknown.
type Reader struct {
	Larder  *larder.Larder
	Kitchen Kitchen
	Scale   string
}

// Kitchen is whose measures a text uses, by the words in it.
type Kitchen string

// The kitchens whose words are told apart.
const (
	Unknown Kitchen = ""
	US      Kitchen = "US"
	UK      Kitchen = "UK"
)

// Words that a cook book of one of the two countries uses and one of the
// other hardly does. A text with words of both is of neither. Common
// practice, no source.
var (
	usWords = spelling.Pattern(`(?i)\b(all-purpose|sticks?|cups?|confectioners'? sugar|` +
		`powdered sugar|heavy cream|kosher|packets?|envelopes?|\d{3} ?°? ?F)\b`)
	ukWords = spelling.Pattern(`(?i)\b(gas mark|gas \d|caster|strong (white |plain )?flour|` +
		`plain flour|self-raising|icing sugar|castor|sultanas|treacle|(?:tea|table|` +
		`dessert)spoonfuls?|double cream|sachets?|cling ?film|knock back)\b`)
)

// KitchenOf tells whose words a text uses.
func KitchenOf(text string) Kitchen {
	isUS, isUK := usWords.MatchString(text), ukWords.MatchString(text)
	switch {
	case isUS && !isUK:
		return US
	case isUK && !isUS:
		return UK
	}
	return Unknown
}

// Left is what a list says and a formula has no place for, such as "flour
// for dusting".
type Left string

var (
	bullet = spelling.Pattern(`^(?:(?:[-*•–·▢☐□‣+]|\[[ xX]?\])\s*)+`)
	parens = spelling.Pattern(`\(([^()]*)\)`)
	more   = spelling.Pattern(`(?i)[,;(]?\s*\b(?:plus|and|\+)?\s*(?:a little |some |` +
		`a bit )?(?:more|extra)\b(?: \w+)? (?:for|to)\b[^()]*\)?$|[,;(]?\s*\b(?:plus|` +
		`and) (?:a little |some |a bit )?(?:more|extra)\b[^()]*\)?$`)
	purpose = spelling.Pattern(`(?i)[,;(]*\s*\b(?:all )?(?:(?:for|to) (?:the |your )?)` +
		`(` + onTheBench + `|` + elsewhere + `)\b([^()]*)\)?$`)
	plusFor = spelling.Pattern(`(?i),?\s*(?:\bplus|\band|\+) (.*)$`)
	bench   = spelling.Pattern(`(?i)^(?:` + onTheBench + `)$`)
)

// onTheBench are purposes that put nothing into what is eaten that counts,
// or that are no part of the bake; elsewhere are those that make another
// part. Frying fat is no part either.
const (
	onTheBench = `dust(?:ing)?|greas\w+|kneading|oiling|flouring|(?:bowl|pans?|tins?|bench|` +
		`counter|board|trays?|baking sheet|mou?lds?)|work(?:ing)?(?: ?surfaces?)?|rolling out|` +
		`shaping|serv(?:e|ing)|garnish\w*|(?:deep[- ]|shallow[- ])?fry(?:ing)?`
	elsewhere = `(?:egg ?)?wash(?:ing)?|glaz(?:e|ing)|brush(?:ing)?|roll(?:ing)?|coat(?:ing)?|` +
		`(?:\w+ )?fill(?:ing)?|stuff(?:ing)?|frost(?:ing)?|icing|ice|sprinkl(?:e|ing)|` +
		`top(?:ping)?|decorat\w*|finish(?:ing)?|toss(?:ing)?|dredg(?:e|ing)|scatter(?:ing)?|` +
		`syrup|streusel|crumble|sponge|starter|poolish|biga|tangzhong|dough|laminat\w*|roll-in`
)

// Lines reads a line of a list, and reports whether it is one. It may hold
// several ingredients.
func (r Reader) Lines(text string) (lines []Line, left []Left, ok bool) {
	written := strings.TrimSpace(bullet.ReplaceAllString(strings.TrimSpace(text), ""))
	text, percent := english(written)
	if percent != "" {
		defer func() {
			if ok && len(lines) > 0 {
				lines[0].says(percent + " of the flour, as written")
			}
		}()
	}
	if !strings.Contains(text, "42 g") {
		written = text // a spoon is a spoon in all languages, and a cube is told
	}
	aside := ""
	if cut := more.FindStringIndex(text); cut != nil {
		aside = strings.Trim(text[cut[0]:], " ,;()")
		text = strings.Trim(text[:cut[0]], " ,;(")
	}
	if text == "" {
		return nil, []Left{Left(written)}, true
	}
	goal := ""
	if m := purpose.FindStringSubmatchIndex(text); m != nil && m[0] > 0 {
		goal = strings.ToLower(text[m[2]:m[3]])
		rest := strings.TrimSpace(text[:m[0]])
		tail := strings.Trim(text[m[0]:], " ,;()")
		// "1/4 cup sugar, plus 1 cup for rolling": the second amount alone
		// is for that.
		if p := plusFor.FindStringSubmatchIndex(rest); p != nil {
			first, okFirst := r.several(rest[:p[0]])
			second, okSecond := r.again(first, rest[p[2]:p[3]])
			if okFirst && okSecond {
				return r.whole(written, append(first, r.sorted(second, goal, tail, &left)...),
					left, aside)
			}
		}
		found, is := r.several(rest)
		if !is {
			found, is = r.bare(rest)
		}
		if !is {
			return nil, nil, false
		}
		return r.whole(written, r.sorted(found, goal, tail, &left), left, aside)
	}
	lines, ok = r.several(text)
	if !ok && aside != "" {
		return nil, []Left{Left(written)}, true
	}
	return r.whole(written, lines, left, aside)
}

// again reads "1 cup" behind "1/4 cup sugar" as so much of the same thing.
func (r Reader) again(first []Line, text string) ([]Line, bool) {
	if lines, ok := r.several(text); ok {
		return lines, true
	}
	if len(first) != 1 {
		return nil, false
	}
	return r.several(text + " " + first[0].Name)
}

// sorted says of lines what they are for; those of the bench are left out,
// as a baker reads.
func (r Reader) sorted(lines []Line, goal, tail string, left *[]Left) []Line {
	of := lines[:0:0]
	for _, l := range lines {
		it, known := r.Larder.Find(l.Name)
		flour := known && it.Flour > 0
		switch {
		case goal == "dough":
		case bench.MatchString(goal) && (!strings.HasPrefix(goal, "dus") || flour ||
			l.Amount == "?"),
			flour && strings.Contains(goal, "rol"):
			*left = append(*left, Left(strings.TrimSpace(l.amountText()+l.Name+" "+tail)))
			continue
		default:
			l.For = goal
		}
		of = append(of, l)
	}
	return of
}

func (l *Line) amountText() string {
	if l.Amount == "?" {
		return ""
	}
	return l.Amount + " "
}

// whole adds what is said of the whole line, and the words that nothing was
// made of.
func (r Reader) whole(written string, lines []Line, left []Left,
	aside string) ([]Line, []Left, bool) {
	if len(lines) == 0 {
		return nil, left, len(left) > 0
	}
	for i, l := range lines {
		if l.Unknown != "" {
			lines[i].Unknown = r.Larder.UnknownText(l.Name)
		}
	}
	last := &lines[len(lines)-1]
	if aside != "" {
		last.says("left out: " + aside)
	}
	var all strings.Builder
	for _, l := range lines {
		all.WriteString(" " + l.Name + " " + l.Amount + " " + l.For + " " + l.Unknown)
		for _, o := range l.Options {
			all.WriteString(" " + o.Value)
		}
		all.WriteString(" " + strings.Join(l.Says, " "))
	}
	for _, l := range left {
		all.WriteString(" " + string(l))
	}
	if missing(written, all.String()) {
		last.says("written: " + strings.Trim(written, " ,."))
	}
	return lines, left, true
}

// missing reports whether a word or a figure of a text stands nowhere in
// what was made of it. Words that a formula has no use for do not count.
func missing(text, made string) bool {
	has := map[string]bool{}
	for _, w := range wordsOf(made) {
		has[w], has[strings.TrimSuffix(w, "s")] = true, true
	}
	return slices.ContainsFunc(wordsOf(text), func(w string) bool {
		return !has[w] && !has[strings.TrimSuffix(w, "s")] && !slices.Contains(idle, w) &&
			numberWords[w] == "" && (len(w) > 2 || w[0] >= '0' && w[0] <= '9')
	})
}

// idle are words of a list that no figure hangs on.
var idle = strings.Fields("the and for with plus from about approximately approx around each " +
	"your good quality organic free range fresh freshly finely roughly lightly " +
	"sifted unsifted level very well all other some into large tbs tbsp tbsps warmed degrees")

var wordForm = spelling.Pattern(`\pL+|\d+|[½¼¾⅓⅔⅛⅜⅝⅞]`)

func wordsOf(text string) []string { return wordForm.FindAllString(strings.ToLower(text), -1) }

// joiners stand between two ingredients of one line.
var joiners = spelling.Pattern(`(?i)\s*(?:\+|&|,|;|\bplus\b|\band\b|\b(?:lightly )?(?:beaten|` +
	`mixed|whisked|thinned) (?:together )?with\b|\bwith\b)\s*`)

// several reads the ingredients of one text: "1 large egg + 1 yolk" are
// two. It cuts where what stands before is an ingredient and what follows
// begins with an amount.
func (r Reader) several(text string) ([]Line, bool) {
	text = strings.Trim(text, " ,.;")
	var lines []Line
	from := 0
	for _, at := range joiners.FindAllStringIndex(outside(text), -1) {
		if at[0] <= from || amountAt.FindString(numbered(text[at[1]:])) == "" {
			continue
		}
		if l, ok := r.one(text[from:at[0]]); ok && l.Unknown == "" && r.startsOne(text[at[1]:]) {
			lines, from = append(lines, l), at[1]
		}
	}
	l, ok := r.one(text[from:])
	if ok && l.Unknown != "" { // "1 egg 50g butter"
		for _, at := range unjoined.FindAllStringIndex(text[from:], -1) {
			first, one := r.one(text[from : from+at[0]])
			second, two := r.one(text[from+at[0]:])
			if one && two && first.Unknown == "" && second.Unknown == "" {
				return append(lines, first, second), true
			}
		}
	}
	if ok {
		return append(lines, l), true
	}
	if from == 0 {
		return nil, false
	}
	l, ok = r.one(text) // no end to what was cut: it is one after all
	return []Line{l}, ok
}

// longestOne bounds what is read as one ingredient, bytes: a name may have
// half of it, and cook books keep a line below 200.
const longestOne = 500

// startsOne reports whether a text begins with an ingredient: "1 tbsp"
// alone is more of the one before.
func (r Reader) startsOne(text string) bool {
	text = text[:min(len(text), longestOne+1)]
	end := len(text)
	if at := joiners.FindStringIndex(outside(text)); at != nil && at[0] > 0 {
		end = at[0]
	}
	l, ok := r.one(text[:end])
	return ok && (l.Unknown == "" || l.Amount != "?")
}

var unjoined = spelling.Pattern(`(?i)\s\d+ ?(?:g|kg|ml|dl|oz)\b`)

// outside is a text of the same length with blanks for what stands
// in brackets.
func outside(text string) string {
	return parens.ReplaceAllStringFunc(text, func(s string) string {
		return strings.Repeat("_", len(s))
	})
}

// turned is a line that has its amount behind the name: "Bread flour: 500
// g", "Eggs 2".
var turned = spelling.Pattern(`^(\pL[^\d½¼¾⅓⅔⅛:]*?(?:\b(?:T ?|[Tt]ype |` +
	`[Tt]ipo )\d{2,4})?)(?:\s*[:=…]+|\s+[-–—.]+|\.{2,})?\s+(` + numberForm + `(?:\s*(?:-|–|to)\s*` +
	numberForm + `)?\s*[\pL.]{0,12}(?: \pL{2,6}\.?)?)\s*((?:\([^()]*\))?)(?:,\s*(.*))?$`)

// one reads a single ingredient.
func (r Reader) one(text string) (Line, bool) {
	if len(text) > longestOne {
		return Line{}, false
	}
	l, ok := r.plain(text)
	if ok {
		return l, true
	}
	m := turned.FindStringSubmatch(strings.Trim(text, " ,.;"))
	if m == nil || len(strings.Fields(m[1])) > 5 {
		return Line{}, false
	}
	name := m[1]
	head, tail, _ := strings.Cut(name, ",")
	if small := strings.ToLower(head); r.sure(head) && r.sure(small) {
		name = small + name[len(head):len(name)-len(tail)] + tail
	}
	rest := ""
	if m[4] != "" {
		rest = ", " + m[4]
	}
	l, ok = r.plain(m[2] + " " + name + " " + m[3] + rest)
	return l, ok && l.Unknown == "" && l.Amount != "?"
}

// spoonful is a measure as old books write it: "teaspoonful".
var spoonful = spelling.Pattern(`(?i)\b((?:tea|table)spoon|cup)fuls?\b`)

func (r Reader) plain(text string) (Line, bool) {
	var l Line
	inside := []string{}
	text = parens.ReplaceAllStringFunc(text, func(s string) string {
		inside = append(inside, strings.TrimSpace(strings.Trim(s, "()")))
		return " "
	})
	text = strings.Trim(strings.Join(strings.Fields(text), " "), " ,.;")
	text = spoonful.ReplaceAllString(text, "$1")
	switch {
	case text == "":
		return l, false
	case r.citrus(&l, text):
	case r.measured(&l, text, inside):
	case noAmount.MatchString(text) && len(strings.Fields(text)) <= 7 &&
		!strings.Contains(text, ". "):
		r.unmeasured(&l, text, inside)
	default:
		return l, false
	}
	if l.Name == "" {
		return l, false
	}
	for _, s := range inside {
		r.insideParens(&l, s)
	}
	if l.has("temp") {
		l.Says = slices.DeleteFunc(l.Says, func(s string) bool {
			return strings.Contains(s, ": how warm?")
		})
	}
	return l, true
}

// bare reads a name without any amount, where the larder knows it:
// "Melted butter".
func (r Reader) bare(text string) ([]Line, bool) {
	if len(strings.Fields(text)) > 6 {
		return nil, false
	}
	l := Line{Amount: "?"}
	r.named(&l, text)
	if l.Name == "" || l.Unknown != "" {
		return nil, false
	}
	if small := strings.ToLower(l.Name[:1]) + l.Name[1:]; r.sure(l.Name) && r.sure(small) {
		l.Name = small
	}
	return []Line{l}, true
}

// Named reads a line that is the name of a thing alone, without an amount:
// "pearl sugar".
func (r Reader) Named(text string) (Line, bool) {
	found, ok := r.bare(strings.Trim(bullet.ReplaceAllString(strings.TrimSpace(text), ""), " ,."))
	if !ok {
		return Line{}, false
	}
	return found[0], true
}
