// Package phrase reads phrases of plain English cook books: how long
// something takes, into how many Pieces, how thick. A recipe calls it.
// Texts go in and texts of a formula file come out; it knows no formula.
package phrase

import (
	"regexp"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"forebake/engine/quantity"
	"forebake/engine/recipe/list"
	"forebake/engine/spelling"
)

// abbreviated are words whose full stop ends no sentence where a small
// letter follows.
var abbreviated = spelling.Pattern(`(?i)\b(?:in|ins|min|mins|hr|hrs|sec|secs|approx|tbsp|tbs|tsp|` +
	`oz|lb|lbs|qt|pt|no|ca|temp|deg|pkg|diam|refrig|tog|abt|doz|med|lg|sm|ht)$`)

// lastWord holds the longest abbreviation and what stands before it, bytes.
const lastWord = 12

var sentenceEnd = spelling.Pattern(`[.!?;](?:\s+|$)`)

// Longest is the length of the longest sentence that is tried, bytes: it
// bounds the work on a text without full stops. Cook books keep below 700.
const Longest = 4000

// Sentences cuts a line at its full stops; that of "1/2 in. thick" is none.
func Sentences(text string) []string {
	var out []string
	start, counted, open := 0, 0, 0 // brackets are counted as far as a stop was come to
	for _, at := range sentenceEnd.FindAllStringIndex(text, -1) {
		before, after := text[start:at[0]], text[at[1]:]
		open += strings.Count(text[counted:at[0]], "(") - strings.Count(text[counted:at[0]], ")")
		counted = at[0]
		small := after != "" && (after[0] >= 'a' && after[0] <= 'z' || after[0] == '(' ||
			after[0] == '@')
		last := before[max(0, len(before)-lastWord):]
		if small && abbreviated.MatchString(last) || strings.HasSuffix(before, "approx") ||
			strings.HasSuffix(before, "abt") || open > 0 {
			continue
		}
		if s := strings.TrimSpace(before); s != "" {
			out = append(out, s)
		}
		start, counted, open = at[1], at[1], 0
	}
	if s := strings.TrimSpace(text[start:]); s != "" {
		out = append(out, s)
	}
	return out
}

const wordNumber = `an?|half an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve|fifteen|` +
	`twenty|thirty|forty`

var (
	pieceForm = spelling.Pattern(`(?i)\b(\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|` +
		`twelve|sixteen|eighteen|twenty|twenty-four)\b(?: equal(?:ly)?|` +
		` even)?(?: -?sized)?(?: \d+ ?g)?\s+(?:(?:equal|even|small|large|smooth|tight|round|` +
		`equal-sized) )*(pieces?|parts?|portions?|balls?|rolls?|buns?|slices?|strands?|ropes?|` +
		`knots|strips|squares|rounds?|loaves|halves|triangles|doughnuts|wedges|circles)`)
	thickForm = spelling.Pattern(`(?i)(` + list.Number +
		`)\s*-?\s*(mm|cm|in(?:ch(?:es)?)?|")\.?(?:\s*-?\s*|\s+(?:in\s+)?)(?:thick|thickness)`)
	thinForm = spelling.Pattern(`(?i)(?:to|to about|thickness of|about) (` + list.Number +
		`)\s*-?\s*(mm|cm|in(?:ch(?:es)?)?|")`)
	areaForm = spelling.Pattern(`(?i)(` + list.Number +
		`)\s*-?(mm|cm|in(?:ch(?:es)?)?|")?\s*-?(?:x|×|by)-?\s*(` + list.Number +
		`)\s*-?\s*(mm|cm|in(?:ch(?:es)?)?|")`)
	timeForm = spelling.Pattern(`(?i)(?:(at least|up to|another|about|around|approximately|every|` +
		`after|after the first|the last|within|below|per) )?(` + list.Number +
		`|an?|half an|half|a further|a couple of|a few|three quarters of an|` + wordNumber + `)` +
		`(?:\s*(?:minutes?|mins?|seconds?|secs?|hours?|hrs?|h))?(?:\s*(?:-|–|—|to|or)\s*(` +
		list.Number + `|` + wordNumber + `))?\s*-?\s*(?:more |further )?(seconds?|secs?|minutes?|` +
		`mins?|hours?|hrs?|h|days?)(?:\b(?: (?:and )?(` + list.Number +
		`|a half)\s*(minutes?|mins?)?)?|([0-5]\d)\b)`)
	// minutesForm are minutes behind hours without their unit: no degrees,
	// weight or length.
	minutesForm = spelling.Pattern(`^[0-5]\d(?:[,.;)]|$| (?:at|in|until|or|and|then|covered|` +
		`with|on)\b)`)
	mixedForm = spelling.Pattern(`(?i)^(` + list.Number +
		`|an?|one|two)\s*(minutes?|mins?|hours?|hrs?|h)\b`)
	overnight = spelling.Pattern(`(?i)\bover ?night\b|\bthe night before\b`)
	eachGram  = spelling.Pattern(`(?i)\b(\d{2,4} ?g(?:rams?)?|\d(?:[.,]\d)? ?kg)\b`)
)

var smallNumbers = map[string]string{"two": "2", "three": "3", "four": "4", "five": "5", "six": "6",
	"fifteen": "15", "twenty": "20", "thirty": "30", "forty": "40", "seven": "7", "eight": "8",
	"nine": "9", "ten": "10", "twelve": "12", "sixteen": "16", "eighteen": "18",
	"twenty-four": "24", "one": "1", "a": "1", "an": "1", "half a": "1/2", "half an": "1/2",
	"half": "1/2", "a further": "1", "a couple of": "2", "three quarters of an": "3/4"}

// Overnight is how long a night is read as. Trade usage, a judgement.
const Overnight = "8 h to 14 h"

// Time is a time of a text, as a formula writes it, and where it
// stands there.
type Time struct {
	Text       string
	Start, End int
}

func Number(s string) string {
	if n := smallNumbers[strings.ToLower(s)]; n != "" {
		return n
	}
	return s
}

func timeUnit(u string) string {
	switch strings.ToLower(u)[0] {
	case 'h':
		return "h"
	case 'm':
		return "min"
	case 's':
		return "s"
	}
	return "day"
}

// Times reads the times that a text says something takes; "every 30
// minutes" is none.
func Times(text string) []Time {
	var out []Time
	for at := 0; at < len(text); {
		m := timeForm.FindStringSubmatchIndex(text[at:])
		if m == nil {
			break
		}
		from := at
		part := func(i int) string {
			if m[2*i] < 0 {
				return ""
			}
			return text[from+m[2*i] : from+m[2*i+1]]
		}
		start, end := from+m[0], from+m[1]
		at = end
		switch lead := strings.ToLower(part(1)); {
		case lead == "every", strings.HasPrefix(lead, "after"), lead == "the last",
			lead == "within", lead == "per":
			continue
		}
		if strings.EqualFold(part(2), "a few") {
			out = append(out, Time{"2 to 5 " + timeUnit(part(4)), start, end})
			continue
		}
		more, moreUnit := part(5), part(6)
		if part(7) != "" { // "1h30"
			more, moreUnit = part(7), "min"
		} else if moreUnit == "" && minutesForm.
			MatchString(more+text[end:]) { // "1 h 30 at room heat"
			moreUnit = "min"
		}
		q := timeText(part(2), text[start:end], part(3), part(4), more, moreUnit)
		if q != "" {
			out = append(out, Time{q, start, end})
		}
	}
	if len(out) == 0 {
		if m := overnight.FindStringIndex(text); m != nil {
			out = append(out, Time{Overnight, m[0], m[1]})
		}
	}
	return out
}

// timeText writes a time: "45 minutes to 1 hour", "1 hour and a half". ""
// where it is none.
func timeText(lo, whole, hi, unit, more, moreUnit string) string {
	unit = timeUnit(unit)
	out := Number(lo)
	if hi != "" {
		first := unit // "45 minutes to 1 hour" has a unit of its own
		if m := mixedForm.FindStringSubmatch(whole[strings.Index(whole, lo):]); m != nil {
			first = timeUnit(m[2])
		}
		if first != unit {
			out += " " + first
		}
		out += " to " + Number(hi)
	}
	out += " " + unit
	switch {
	case more != "" && moreUnit != "" && hi == "":
		out += " " + more + " min"
	case strings.EqualFold(more, "a half") && unit == "h" && Number(lo) == "1" && hi == "":
		out = "1 h 30 min"
	case strings.EqualFold(more, "a half"):
		return ""
	}
	if _, fault := quantity.Read(out, quantity.Of(quantity.Time)); fault != nil {
		return ""
	}
	return out
}

// TimeOf reads the first time of a text.
func TimeOf(text string) (string, bool) {
	all := Times(text)
	if len(all) == 0 {
		return "", false
	}
	return all[0].Text, true
}

// minutesTimes is a time n times, in the unit of the lower end; "" where it
// cannot be told.
func Multiply(text string, n float64) string {
	q, fault := quantity.Read(text, quantity.Of(quantity.Time))
	if fault != nil {
		return ""
	}
	return span(q.Lo*n, q.Hi*n)
}

// Sum adds times up.
func Sum(all []Time) string {
	lo, hi := 0.0, 0.0
	for _, t := range all {
		q, fault := quantity.Read(t.Text, quantity.Of(quantity.Time))
		if fault != nil {
			return all[0].Text
		}
		lo, hi = lo+q.Lo, hi+q.Hi
	}
	return span(lo, hi)
}

// span writes minutes.
func span(lo, hi float64) string {
	if lo == hi {
		return quantity.Plain(lo) + " min"
	}
	return quantity.Plain(lo) + " to " + quantity.Plain(hi) + " min"
}

// CutAt is the place before a later time of a text where its own part
// begins: "then", "and", a comma.
var joinWord = spelling.Pattern(`(?i)(?:,? then |,? and |[,;] |\()`)

func CutAt(text string, from, to int) int {
	all := joinWord.FindAllStringIndex(text[from:to], -1)
	if len(all) == 0 {
		return -1
	}
	return from + all[len(all)-1][0]
}

// ByTime cuts a text before each of its times but the first.
func ByTime(text string) []string {
	var out []string
	times, start := Times(text), 0
	for i := 1; i < len(times); i++ {
		if at := CutAt(text, times[i-1].End, times[i].Start); at > start {
			out = append(out, text[start:at])
			start = at
		}
	}
	return append(out, text[start:])
}

// Grams is the weight of a piece that a text says, as written; "" for none.
func Grams(text string) string { return eachGram.FindString(text) }

// AtNight reports whether a text says "overnight".
func AtNight(text string) bool { return overnight.MatchString(text) }

// Count is the number of pieces that a text names: "16 balls", "12 equal
// pieces"; "" for none.
func Count(text string) string {
	if m := pieceForm.FindStringSubmatch(text); m != nil {
		return Number(strings.ToLower(m[1]))
	}
	if m := piecesBehind.FindStringSubmatch(text); m != nil {
		return m[1] + m[2]
	}
	return ""
}

// piecesBehind is a number behind what it counts: "small pieces (about
// 40)", "to make 12".
var piecesBehind = spelling.Pattern(`(?i)\b(?:pieces?|balls?|rolls?|buns?|slices?|strips|squares|` +
	`rounds?|knots|portions?)\s*\((?:you\S* \w+ (?:get|have|need) |makes? )?(?:about |around |` +
	`approx\.? |some |roughly )?(\d{1,3})(?: (?:in all|in total|of them|pieces))?\)|` +
	`\b(?:you\S* (?:should|will|ought to)? ?(?:get|have|end up with)|to (?:make|give|yield|get)|` +
	`makes) (?:about |around |some )?(\d{1,3})\b`)

// Pieces reads into how many a dough is cut, or what each weighs; "" where
// the text does not say.
func Pieces(text string) string {
	if n := Count(text); n != "" {
		return n
	}
	lower := strings.ToLower(text)
	switch {
	case strings.Contains(lower, "in half"), strings.Contains(lower, "in two"),
		strings.Contains(lower, "halves"):
		return "2"
	case strings.Contains(lower, "quarters"):
		return "4"
	}
	if m := eachGram.FindStringSubmatch(text); m != nil {
		return m[1]
	}
	if m := bareCount.FindStringSubmatch(text); m != nil && !areaForm.MatchString(text) {
		return Number(strings.ToLower(m[1]))
	}
	return ""
}

var bareCount = spelling.Pattern(`(?i)\b(?:into|out|in) (?:about )?(\d{1,3}|` + wordNumber +
	`)\b(?:[^\d\w.\-"½¼¾⅓⅔ ]|\s*$|\s+[a-z]{5})`)

var shapeForms = spelling.Pattern(`(?i)\b(balls?|knots?|logs?|loaf|loaves|rounds?|rings?|buns|` +
	`rolls|crescents?|spirals?|ropes?|strands?|plait|braid|twists?|ovals?|oblongs?|bows?|sticks)\b`)

// Shape is what a piece is shaped to: the first such word, from the
// verb on.
func Shape(word, text string) string {
	lower := strings.ToLower(text)
	for _, from := range []int{max(0, strings.Index(lower, " into ")),
		max(0, strings.Index(lower, word)), 0} {
		if m := shapeForms.FindString(lower[from:]); m != "" {
			return m
		}
	}
	return strings.ToLower(strings.TrimSpace(word))
}

// Short is a text of one line, cut at a word.
func Short(text string) string {
	words := strings.Fields(text)
	out := ""
	for _, w := range words {
		if len(out)+len(w) > 70 {
			return out + " ..."
		}
		if out != "" {
			out += " "
		}
		out += w
	}
	return strings.TrimRight(out, " ,.;:")
}

// figures are the numbers of a text.
var figures = spelling.Pattern(`\d+(?:[.,/]\d+)*|[½¼¾⅓⅔⅛⅜⅝⅞]`)

// Unused are the figures of a text, with the word behind each, that what
// was made of it does not hold.
func Unused(text, made string) []string {
	has := map[string]bool{}
	for _, n := range figures.FindAllString(made, -1) {
		has[n] = true
	}
	var out []string
	words := strings.Fields(text)
	for i, w := range words {
		for _, n := range figures.FindAllString(w, -1) {
			if !has[n] {
				if i+1 < len(words) && !strings.ContainsAny(w, ".,;") {
					w += " " + words[i+1]
				}
				out = append(out, strings.Trim(w, " ,.;()"))
				break
			}
		}
	}
	return out
}

// IsNumber reports whether a count is one whole number.
func IsNumber(count string) bool {
	_, err := strconv.Atoi(count)
	return err == nil
}

// IsOne reports whether a count is 1 or no count at all.
func IsOne(count string) bool {
	n, err := strconv.Atoi(count)
	return err != nil || n <= 1
}

func lengthUnit(u string) string {
	if u == `"` || strings.HasPrefix(strings.ToLower(u), "in") {
		return "in"
	}
	return strings.ToLower(u)
}

// Sheet reads how thick a dough is rolled, and the longer side of a rectangle with the words for
// it. Each is "" where the text does not say.
func Sheet(text string) (thick, wide, area string) {
	rest := text
	if m := areaForm.FindStringSubmatch(text); m != nil {
		u := m[4]
		if u == "" {
			u = m[2]
		}
		long, a := quantity.Read(m[1]+" "+lengthUnit(u), quantity.Of(quantity.Length))
		other, b := quantity.Read(m[3]+" "+lengthUnit(u), quantity.Of(quantity.Length))
		if a == nil && b == nil {
			if other.Hi > long.Hi {
				long = other
			}
			wide, area = long.Text, m[0]
		}
		rest = strings.Replace(text, m[0], "", 1)
	}
	m := thickForm.FindStringSubmatch(rest)
	if m == nil && !sidesOnly.MatchString(rest) {
		if m = thinForm.FindStringSubmatch(rest); m != nil {
			q, fault := quantity.Read(m[1]+" "+lengthUnit(m[2]), quantity.Of(quantity.Length))
			if fault != nil || q.Hi > thickest {
				m = nil
			}
		}
	}
	if m != nil {
		thick = m[1] + " " + lengthUnit(m[2])
	}
	return thick, wide, area
}

// sidesOnly are words of a sheet whose figure is no thickness.
var sidesOnly = spelling.Pattern(`(?i)square|circle|diam|round|long`)

// thickest is the thickest sheet that "roll to 2 cm" means; more is a side of it. mm.
const thickest = 40

// HasWord reports whether a text holds words as whole words, in any letter case.
func HasWord(text, words string) bool {
	text, words = strings.ToLower(text), strings.ToLower(words)
	isWord := func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }
	for from := 0; words != ""; {
		i := strings.Index(text[from:], words)
		if i < 0 {
			return false
		}
		before, _ := utf8.DecodeLastRuneInString(text[:from+i])
		after, _ := utf8.DecodeRuneInString(text[from+i+len(words):])
		if !isWord(before) && !isWord(after) {
			return true
		}
		from += i + len(words)
	}
	return false
}

// substance is what a text says is put on: "brush with melted butter", "fill with jam".
var substance = spelling.Pattern(`(?i)\b(?:with|in) (?:the |a |an |some |plenty of |a little |` +
	`more |remaining |rest of the |lightly )*((?:[\pL-]+ ){0,3}?[\pL-]+)(?: (?:using|and|before|` +
	`while|then|over|to|until|from|on|when|mixture)\b|[,.;(]|$)`)

// plainOnes are words for a part and for what is no ingredient.
var plainOnes = spelling.Pattern(`(?i)^(?:it|them|top|tops|each|buns?|rolls?|dough|surface|half|` +
	`filling|glaze|frosting|icing|mixture|syrup|brush|fork|spoon|towel|tea towel|cloth|film|` +
	`plastic(?: wrap)?|foil|hands?|paper|all|knife|(?:hot|warm) (?:buns?|rolls?|loaf))$`)

// Substances are the things that a text says something is done with: "melted butter", "jam".
func Substances(text string) []string {
	var out []string
	for _, m := range substance.FindAllStringSubmatch(text, -1) {
		if !plainOnes.MatchString(strings.TrimSpace(m[1])) {
			out = append(out, strings.TrimSpace(m[1]))
		}
	}
	return out
}

// HasFigures reports whether a text holds a figure.
func HasFigures(text string) bool { return figures.MatchString(text) }

var either = spelling.Pattern(`(?i)\bor\b|\bby hand\b|\bby machine\b`)

// Either reports whether the words between two times make them one or the other.
func Either(between string) bool { return either.MatchString(between) }

// Around gives the word before and the word behind each place where a text holds a word; "" where
// none is or a stop lies between.
func Around(text, word string) [][2]string {
	text, word = strings.ToLower(text), strings.ToLower(word)
	var out [][2]string
	isWord := func(r rune) bool { return unicode.IsLetter(r) || unicode.IsDigit(r) }
	for from := 0; word != ""; {
		i := strings.Index(text[from:], word)
		if i < 0 {
			break
		}
		head, tail := text[:from+i], text[from+i+len(word):]
		last, _ := utf8.DecodeLastRuneInString(head)
		next, _ := utf8.DecodeRuneInString(tail)
		if !isWord(last) && !isWord(next) {
			var around [2]string
			words := strings.Fields(head)
			if len(words) > 0 && !strings.ContainsAny(words[len(words)-1], ",.;:(") {
				around[0] = words[len(words)-1]
			}
			if words := strings.Fields(tail); len(words) > 0 && strings.HasPrefix(tail, " ") {
				around[1] = strings.TrimRight(words[0], ",.;:)")
			}
			out = append(out, around)
		}
		from += i + len(word)
	}
	return out
}

var andHalf = spelling.Pattern(`(?i)\b(an?|one|two|three|four|` +
	`five) (?:(hours?) )?and a half( hours?)?`)

// Figures writes "one and a half hours" in figures.
func Figures(text string) string {
	return andHalf.ReplaceAllStringFunc(text, func(s string) string {
		m := andHalf.FindStringSubmatch(s)
		unit := ""
		if m[2] != "" || m[3] != "" {
			unit = " hours"
		}
		return Number(m[1]) + " 1/2" + unit
	})
}

var clauseEnd = spelling.Pattern(`[,;.(]| (?:and|with|then|over|using|from) `)

// Clause is a text up to where its first thing done ends: a comma, "and", "with".
func Clause(text string) string {
	if at := clauseEnd.FindStringIndex(text); at != nil {
		return text[:at[0]]
	}
	return text
}

const anyNumber = `half an|half|` + list.Number + `|` + wordNumber

var (
	every = spelling.Pattern(`(?i)\b(?:every|each|intervals of)(?: other)? (` + anyNumber +
		`)?[ -]?(hour|hr|h|minute|min)s?\b`)
	apart = spelling.Pattern(`(?i)\b(` + anyNumber +
		`)[ -]?(hour|hr|h|minute|min)(?:s|ly)?[ -]?(?:rests? |in )?(?:intervals?|apart|between)\b`)
	again = spelling.Pattern(`(?i)\b(once|twice|thrice|(?:(two|three|four|five|six|` +
		`\d)(?: more)? (?:times|sets|rounds|lots))|repeat (?:[\w ]{0,20}?)?` +
		`(two|three|four|five|\d))\b`)
)

// Interval is the time between steps that are done again: "every half hour", "30 minutes apart"; ""
// for none.
func Interval(text string) string {
	for _, form := range []*spelling.Words{every, apart} {
		if m := form.FindStringSubmatch(text); m != nil {
			n := m[1]
			if n == "" {
				n = "1"
			}
			out := Number(n) + " " + timeUnit(m[2])
			if _, fault := quantity.Read(out, quantity.Of(quantity.Time)); fault == nil {
				return out
			}
		}
	}
	return ""
}

// Repeats is how often a text says that something is done: "twice", "3 times"; 0 for not said.
func Repeats(text string) int {
	m := again.FindStringSubmatch(text)
	if m == nil {
		return 0
	}
	n := map[string]int{"once": 1, "twice": 2, "thrice": 3}[strings.ToLower(m[1])]
	if n == 0 {
		n, _ = strconv.Atoi(Number(m[2] + m[3]))
	}
	return min(n, mostRepeats)
}

// mostRepeats bounds how often a step is written again.
const mostRepeats = 8

// Within is how many steps with a time between lie in a time: 4 of 30 minutes in 2 hours.
func Within(all, between string) int {
	a, fault1 := quantity.Read(all, quantity.Of(quantity.Time))
	b, fault2 := quantity.Read(between, quantity.Of(quantity.Time))
	if fault1 != nil || fault2 != nil || b.Lo <= 0 || a.Lo < b.Hi {
		return 0
	}
	return min(int(a.Lo/b.Lo), mostRepeats)
}

// About reports whether a text says "about" of a number.
func About(text, n string) bool {
	return spelling.Pattern(`(?i)\b(?:about|around|approx\w*\.?|some|roughly) ` +
		regexp.QuoteMeta(n) + `\b *[^ g\d.]`).MatchString(text + ";")
}

var except = spelling.Pattern(`(?i)\b(?:except|apart from|other than|all but|everything but|` +
	`without|reserving|keeping back)(?: for)? (?:the )?[^,.;]*?( for \d| until | and knead|` +
	` together|[,.;]|$)`)

// Except is a text without the things that it leaves out: "mix everything except the jam".
func Except(text string) string { return except.ReplaceAllString(text, "$1") }

var humid = spelling.Pattern(`(?i)(\d{2}) ?% ?(?:RH\b|(?:rel\S* )?humid)`)

// Humidity is how humid a text says that the air is, "80 %"; "" for not said.
func Humidity(text string) string {
	if m := humid.FindStringSubmatch(text); m != nil {
		return m[1] + " %"
	}
	return ""
}
