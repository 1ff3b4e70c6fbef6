// Package quantity reads and prints quantities as a baker writes them:
// amounts, temperatures, times, lengths, and ranges of them.
//
// The readers of formula and house files call Read; reports print with
// Format. It knows no ingredients, so it converts no volume, count or
// percentage to grams. It does not read "?" or "all".
package quantity

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"forebake/engine/figure"
)

// Quantity is one quantity, as read.
type Quantity struct {
	Kind            Kind
	figure.Interval // in the kind's base unit, always finite
	// Unit is canonical: of the upper end of a range, or of the largest
	// part of "1 h 30 min"
	Unit string
	Text string // as written
}

// String returns the quantity in its unit. Read reads it back as the
// same quantity.
func (q Quantity) String() string {
	if q.Kind == None {
		return ""
	}
	number := func(x float64) string {
		y, _ := FromBase(x, q.Unit)
		return strconv.FormatFloat(y+0, 'f', -1, 64)
	}
	if q.Lo == q.Hi {
		return number(q.Lo) + " " + q.Unit
	}
	return number(q.Lo) + " to " + number(q.Hi) + " " + q.Unit
}

// Fault says why a text is not a quantity.
type Fault struct {
	Start, End int // the bytes of the text at fault
	// Text is in lower case, without a final full stop, with the
	// corrected text if there is one
	Text string
}

const (
	longestText   = 200  // bytes; "1 h 30 min to 2 h 45 min" has 24
	largestNumber = 1e9  // in base units: a thousand tonnes, two thousand years
	least         = 1e-9 // in any unit, except zero
	absoluteZero  = -273.15
)

// Read reads a quantity of an allowed kind: "200 g", "1.5kg", "1 1/2
// cups", "½ tsp", "-18 C", "1 h 30 min", and ranges such as "90 min to
// 2 h" and "2-3 h", whose lower end may take the upper end's unit. It
// returns either the quantity or the fault.
func Read(text string, allowed Kinds) (Quantity, *Fault) {
	if q, ok := readPlain(text, allowed); ok {
		return q, nil
	}
	if q, ok := night(text, allowed); ok {
		return q, nil
	}
	r := reader{text: text, allowed: allowed}
	if len(text) > longestText {
		return Quantity{}, &Fault{0, len(text), textTooLong}
	}
	q, fault := r.quantity()
	if fault != nil {
		return Quantity{}, fault
	}
	return q, nil
}

// readPlain reads the commonest form, "200 g", without an
// allocation: up to nine digits with at most one point, an optional
// blank, and a unit's canonical name. The reader reads all else, and
// words the faults.
func readPlain(text string, allowed Kinds) (Quantity, bool) {
	i, points, whole, scale := 0, 0, 0.0, 1.0
	for ; i < len(text) && i < 10; i++ {
		c := text[i]
		if c == '.' && points == 0 && i > 0 {
			points++
			continue
		}
		if !isDigit(c) {
			break
		}
		whole = whole*10 + float64(c-'0')
		if points > 0 {
			scale *= 10
		}
	}
	if i == 0 || i == 10 || text[i-1] == '.' || whole == 0 {
		return Quantity{}, false
	}
	if thousandPoint(text[:i]) {
		return Quantity{}, false
	}
	name := text[i:]
	if name != "" && name[0] == ' ' {
		name = name[1:]
	}
	u := exactUnit(name)
	if u == nil || !allowed.Has(u.kind) {
		return Quantity{}, false
	}
	x := u.toBase(whole / scale)
	if x > largestNumber || whole/scale < least {
		return Quantity{}, false
	}
	return Quantity{Kind: u.kind, Interval: figure.Point(x), Unit: u.name, Text: text}, true
}

// IsPlain reports whether a text is a number and a unit's canonical
// name, with no word whose meaning depends on a kitchen or a country:
// "200 g", "90 min".
func IsPlain(text string) bool {
	_, ok := ReadPlain(text, ^Kinds(0))
	return ok
}

// ReadPlain reads a plain text of an allowed kind (IsPlain); ok is false
// for every other.
func ReadPlain(text string, allowed Kinds) (q Quantity, ok bool) {
	q, ok = readPlain(text, allowed)
	return q, ok && q.Unit != "floz"
}

type reader struct {
	text    string
	at      int
	allowed Kinds
}

// term is a number and the unit after it.
type term struct {
	start, numberEnd, end int
	number                float64
	unit                  *unit // nil if none is written
}

// measure is one end of a range: a term, or several as in "1 h 30 min".
type measure struct {
	terms      []term
	start, end int
}

func (m measure) unit() *unit { return m.terms[0].unit }

func (m measure) base() float64 {
	sum := 0.0
	for _, t := range m.terms {
		sum += t.unit.toBase(t.number)
	}
	return sum
}

// quoted is a text that is quoted when printed, which saves the quoting
// without a fault.
type quoted struct{ text string }

func (q quoted) String() string { return quote(q.text) }

func (r *reader) fault(start, end int, format string, args ...any) *Fault {
	return &Fault{start, max(start, end), fmt.Sprintf(format, args...)}
}

// nearly are words before an amount that call it inexact.
var nearly = []string{"about", "approx.", "approx", "approximately", "around", "roughly",
	"ca.", "ca",
	"circa", "c.", "~"}

// nearlyWord steps over a word that calls an amount inexact.
func (r *reader) nearlyWord() {
	r.blanks()
	for _, w := range nearly {
		if n := len(w); len(r.text)-r.at > n && strings.EqualFold(r.text[r.at:r.at+n], w) {
			if rest := r.text[r.at+n:]; w == "~" || unicode.IsSpace(rune(rest[0])) {
				if next := strings.TrimLeft(rest, " "); next != "" && startsNumber(next) {
					r.at += n
					r.blanks()
				}
			}
			return
		}
	}
}

func (r *reader) quantity() (Quantity, *Fault) {
	r.nearlyWord()
	if r.at == len(r.text) {
		return Quantity{}, r.fault(0, len(r.text), "this is empty; write for example %q",
			r.example())
	}
	lo, fault := r.measure()
	if fault != nil {
		return Quantity{}, fault
	}
	hi := lo
	isRange := r.rangeSign()
	if isRange {
		if r.blanks(); r.at == len(r.text) {
			return Quantity{}, r.fault(r.at, r.at,
				"the upper end of the range is missing; write for example %q", r.rangeExample())
		}
		if hi, fault = r.measure(); fault != nil {
			return Quantity{}, fault
		}
	}
	if r.blanks(); r.at < len(r.text) {
		rest := r.text[r.at:]
		if len(hi.terms) == 1 && hi.terms[0].unit == nil {
			return Quantity{}, r.unknownUnit(hi, rest)
		}
		if strings.ContainsAny(rest, "0123456789") { // without it the amount would be another
			text := quote(rest) + " is not part of the quantity; write one figure for the whole"
			if r.allowed.Has(Mass) { // an example would be another amount
				return Quantity{}, r.fault(r.at, len(r.text), "%s; another food has its own line",
					text)
			}
			return Quantity{}, r.fault(r.at, len(r.text), "%s, or a range, such as %q", text,
				r.rangeExample())
		}
		return Quantity{}, r.fault(r.at, len(r.text),
			"%s is not part of the quantity; write %q", quote(rest),
			strings.TrimSpace(r.text[:r.at]))
	}
	if fault := r.needUnits(&lo, hi, isRange); fault != nil {
		return Quantity{}, fault
	}
	for _, m := range []measure{lo, hi} {
		if fault := r.check(m); fault != nil {
			return Quantity{}, fault
		}
	}
	if a, b := lo.unit().kind, hi.unit().kind; a != b {
		return Quantity{}, r.fault(lo.start, hi.end, "%s mixes %s and %s", quote(r.text), a, b)
	}
	iv := figure.Interval{Lo: lo.base(), Hi: hi.base()}
	if iv.Lo > iv.Hi {
		return Quantity{}, r.fault(lo.start, hi.end, "%s runs backwards; write %q", quote(r.text),
			r.swapped(lo, hi))
	}
	kind := hi.unit().kind
	if iv.Hi == 0 && kind != Temperature && r.allowed&AllowZero == 0 {
		return Quantity{}, r.fault(lo.start, hi.end,
			"%s is zero; write more than zero or leave the line out", quote(r.text))
	}
	iv = figure.Interval{Lo: iv.Lo + 0, Hi: iv.Hi + 0} // no negative zero
	return Quantity{Kind: kind, Interval: iv, Unit: hi.unit().name, Text: r.text}, nil
}

// needUnits gives the lower end the upper end's unit if it has none,
// and returns a fault for a missing unit.
func (r *reader) needUnits(lo *measure, hi measure, isRange bool) *Fault {
	for _, m := range []measure{hi, *lo} {
		for i, t := range m.terms {
			if t.unit != nil {
				continue
			}
			if isRange && m.start == lo.start && len(lo.terms) == 1 && len(hi.terms) == 1 &&
				hi.unit() != nil {
				lo.terms[0].unit = hi.unit()
				continue
			}
			guess := r.guess()
			switch {
			case i > 0:
				guess = "min"
			case isRange && m.start == hi.start && lo.unit() != nil:
				guess = lo.unit().name
			}
			written := r.text[t.start:t.numberEnd]
			with := func(unit string) string {
				return strings.TrimSpace(r.text[:t.numberEnd]) + " " + unit + r.text[t.numberEnd:]
			}
			// The number alone does not decide: every likely unit
			// is named.
			switch {
			case guess == "C" && t.number >= 32: // below, a Fahrenheit reading is unlikely
				return r.fault(
					t.start,
					t.numberEnd,
					"%q has no unit; write %q, or %q if it is Fahrenheit",
					written,
					with("C"),
					with("F"),
				)
			case guess == "g" && r.allowed.Has(Count) && !isRange && t.number > 0:
				return r.fault(
					t.start,
					t.numberEnd,
					"%q has no unit; write %q, or %q if it is counted",
					written,
					with("g"),
					with("pieces"),
				)
			}
			return r.fault(t.start, t.numberEnd, "%q has no unit; write %q",
				written, strings.TrimSpace(r.text[:t.numberEnd])+" "+guess+r.text[t.numberEnd:])
		}
	}
	return nil
}

// check checks the kind, sign and size of one end.
func (r *reader) check(m measure) *Fault {
	whole := quoted{r.text[m.start:m.end]} // quoted only for a fault
	for i, t := range m.terms {
		if !r.allowed.Has(t.unit.kind) {
			if t.unit.name == "m" && r.allowed.Has(Time) {
				return r.fault(t.start, t.end, "%q is metres; for minutes write %q", "m",
					r.text[t.start:t.numberEnd]+" min")
			}
			if fault := r.letter(t); fault != nil {
				return fault
			}
			return r.fault(t.start, t.end, "%s is %s; write %s, such as %q", whole, t.unit.kind,
				r.wanted(), r.example())
		}
		if i > 0 {
			first := m.terms[i-1].unit
			if !joins(first, t.unit) {
				return r.fault(t.start, t.end,
					"%s does not add up to one quantity; write it in one unit", whole)
			}
			if t.number < 0 {
				return r.fault(t.start, t.end, "%s is below zero; write more than zero",
					quote(r.text[t.start:t.end]))
			}
		}
		if x := math.Abs(t.number); x != 0 && x < least {
			return r.fault(t.start, t.end, tooSmall, whole)
		}
	}
	kind, x := m.unit().kind, m.base()
	switch {
	case math.Abs(x) > largestNumber || math.IsNaN(x):
		return r.fault(m.start, m.end, tooLarge, whole)
	case kind == Temperature && x < absoluteZero-1e-9:
		return r.fault(m.start, m.end,
			"%s is below absolute zero (-273.15 C); mend the figure", whole)
	case kind != Temperature && m.terms[0].number < 0:
		return r.fault(m.start, m.end, "%s is below zero; write more than zero", whole)
	}
	return nil
}

// letter returns the fault for a letter that is a unit elsewhere but a
// kitchen's word here: "1 c".
func (r *reader) letter(t term) *Fault {
	word := strings.TrimSpace(r.text[t.numberEnd:t.end])
	if word != "c" { // "24 C" is rather a temperature in the wrong place
		return nil
	}
	saved := r.at
	defer func() { r.at = saved }()
	r.at = t.end - 1
	return r.kitchenWord(t, word, word)
}

// joins reports whether two units may form one quantity, larger first:
// hours and minutes, pounds and ounces, or cups and spoons.
func joins(a, b *unit) bool {
	sameSystem := a.kind == Time || a.name == "lb" && b.name == "oz" ||
		a.name == "kg" && b.name == "g" || bothIn(spoons, a, b) || bothIn(litres, a, b)
	return sameSystem && a.kind == b.kind && a.factor > b.factor
}

// spoons and litres are measures that add up: "1 cup 2 tbsp", "1 l
// 2 dl".
var (
	spoons = []string{"cup", "floz", "tbsp", "tsp"}
	litres = []string{"l", "dl", "cl", "ml"}
)

func bothIn(names []string, a, b *unit) bool {
	return slices.Contains(names, a.name) && slices.Contains(names, b.name)
}

func (r *reader) swapped(lo, hi measure) string {
	first, second := r.text[hi.start:hi.end], r.text[lo.start:lo.end]
	if lo.terms[0].end == lo.terms[0].numberEnd { // it has the unit of the upper end
		t := hi.terms[0]
		first = r.text[t.start:t.numberEnd]
		second += r.text[t.numberEnd:t.end]
	}
	return first + " to " + second
}

func (r *reader) measure() (measure, *Fault) {
	m := measure{start: r.at}
	for {
		t, fault := r.term(len(m.terms) == 0)
		if fault != nil {
			return m, fault
		}
		m.terms = append(m.terms, t)
		m.end = t.end
		r.at = t.end
		if t.unit == nil {
			return m, nil
		}
		r.blanks()
		r.plusSign()
		if r.at == len(r.text) || !startsNumber(r.text[r.at:]) {
			r.at = m.end
			return m, nil
		}
	}
}

func (r *reader) term(signed bool) (term, *Fault) {
	t := term{start: r.at}
	negative := false
	if c, size := utf8.DecodeRuneInString(r.text[r.at:]); signed && (c == '-' || c == '\u2212') {
		negative = true
		r.at += size
		r.blanks()
	}
	number, fault := r.number()
	if fault != nil {
		return t, fault
	}
	if negative {
		number = 0 - number
	}
	t.number, t.numberEnd, t.end = number, r.at, r.at
	r.blanks()
	if u, end := r.unit(); u != nil {
		t.unit, t.end = u, end
	}
	r.at = t.end
	return t, nil
}

// plusSign steps over what joins an amount's two terms: "1 cup plus
// 2 tbsp".
func (r *reader) plusSign() {
	for _, w := range []string{"plus", "and", "+", "&"} {
		rest := r.text[r.at:]
		if len(rest) <= len(w) || !strings.EqualFold(rest[:len(w)], w) {
			continue
		}
		if next := strings.TrimLeft(rest[len(w):], " "); next != "" && startsNumber(next) &&
			(len(w) == 1 || rest[len(w)] == ' ') {
			r.at += len(w)
			r.blanks()
			return
		}
	}
}

func startsNumber(s string) bool {
	c, _ := utf8.DecodeRuneInString(s)
	_, isVulgar := vulgar[c]
	return c >= '0' && c <= '9' || c == '.' && len(s) > 1 && isDigit(s[1]) || isVulgar
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

// vulgar holds the fractions that have a Unicode character.
var vulgar = map[rune]float64{
	'¼': 1.0 / 4, '½': 1.0 / 2, '¾': 3.0 / 4,
	'⅐': 1.0 / 7, '⅑': 1.0 / 9, '⅒': 1.0 / 10,
	'⅓': 1.0 / 3, '⅔': 2.0 / 3,
	'⅕': 1.0 / 5, '⅖': 2.0 / 5, '⅗': 3.0 / 5, '⅘': 4.0 / 5,
	'⅙': 1.0 / 6, '⅚': 5.0 / 6,
	'⅛': 1.0 / 8, '⅜': 3.0 / 8, '⅝': 5.0 / 8, '⅞': 7.0 / 8,
}

// number reads 12, 1.5, .5, 1/2, 1 1/2, ½ or 1½. Its fault for another
// notation says what to write.
func (r *reader) number() (float64, *Fault) {
	start := r.at
	if c, size := utf8.DecodeRuneInString(r.text[r.at:]); vulgar[c] != 0 {
		r.at += size
		return vulgar[c], nil
	}
	for r.at < len(r.text) {
		c := r.text[r.at]
		groups := c == ',' && r.at+1 < len(r.text) && isDigit(r.text[r.at+1])
		if !isDigit(c) && c != '.' && !groups {
			break
		}
		r.at++
	}
	digits := r.text[start:r.at]
	if strings.Trim(digits, ".,") == "" {
		r.at = start
		if x, ok := r.oneWord(); ok {
			return x, nil
		}
		word := r.restWord()
		if start == 0 && startsWithLetter(word) {
			return 0, r.fault(0, len(r.text), "%s is not %s; \"?\" stands for what is to be "+
				"decided, and words go into a note; write for example %s", quote(r.text),
				r.wanted(), r.mayStand())
		}
		return 0, r.fault(start, start+len(word), "%s is not a number; write for example %q",
			quote(word), r.example())
	}
	if fault := r.oddNumber(start, digits); fault != nil {
		return 0, fault
	}
	if decimalComma(digits) {
		digits = strings.Replace(digits, ",", ".", 1)
	} else if fault := r.pointOrThousand(start, digits); fault != nil {
		return 0, fault
	}
	x, err := strconv.ParseFloat(digits, 64)
	if err != nil && !math.IsInf(x, 0) {
		return 0, r.fault(start, r.at, "%s is not a number; write for example %q", quote(digits),
			r.example())
	}
	if strings.Contains(digits, ".") {
		return x, nil
	}
	return r.fraction(start, x)
}

// oneWord reads "a", "an", "half a" and "half an" before a unit.
func (r *reader) oneWord() (float64, bool) {
	for _, w := range []struct {
		words string
		x     float64
	}{{"half an ", 0.5}, {"half a ", 0.5}, {"an ", 1}, {"a ", 1}} {
		n := len(w.words)
		if len(r.text)-r.at > n && strings.EqualFold(r.text[r.at:r.at+n], w.words) {
			r.at += n
			return w.x, true
		}
	}
	return 0, false
}

// decimalComma reports whether a number's comma can only be a decimal
// point: one comma, without three digits after one to three others.
func decimalComma(digits string) bool {
	whole, after, found := strings.Cut(digits, ",")
	if !found || after == "" || strings.ContainsAny(after, ".,") || strings.Contains(whole, ".") {
		return false
	}
	return len(after) != 3 || len(whole) > 3 || strings.Trim(whole, "0") == ""
}

// thousandPoint reports whether a number's point may separate
// thousands, as in "1.000": one to three digits before it and three
// after, the last a zero, which no decimal number needs.
func thousandPoint(digits string) bool {
	whole, after, found := strings.Cut(digits, ".")
	return found && len(after) == 3 && after[2] == '0' && !strings.ContainsAny(after, ".,") &&
		len(whole) >= 1 && len(whole) <= 3 && whole[0] != '0'
}

// pointOrThousand returns a fault for a point that may separate
// thousands, in grams or millilitres: kilograms and litres have
// three decimals.
func (r *reader) pointOrThousand(start int, digits string) *Fault {
	if !thousandPoint(digits) {
		return nil
	}
	u, _ := (&reader{text: r.text, at: skipBlanks(r.text, r.at)}).unit()
	if u != nil && u.name != "g" && u.name != "ml" {
		return nil
	}
	write := func(number string) string { return r.text[:start] + number + r.text[r.at:] }
	return r.fault(start, r.at, "%q can be a thousand or a decimal number; write %q, or %q", digits,
		write(strings.Replace(digits, ".", "", 1)),
		write(strings.TrimRight(strings.TrimRight(digits, "0"), ".")))
}

// oddNumber returns a fault for another notation: commas, hexadecimal,
// an exponent, blanks.
func (r *reader) oddNumber(start int, digits string) *Fault {
	rest := r.text[r.at:]
	if strings.Contains(digits, ",") {
		whole := strings.ReplaceAll(digits, ",", "")
		groups := strings.Split(digits, ",")
		thousands := !strings.Contains(digits, ".") && len(groups[0]) <= 3 && groups[0] != "0"
		for _, g := range groups[1:] {
			thousands = thousands && len(g) == 3
		}
		write := func(number string) string { return r.text[:start] + number + rest }
		point := strings.Replace(digits, ",", ".", 1)
		switch point = strings.TrimRight(strings.TrimRight(point, "0"), "."); {
		case thousands && len(groups) == 2:
			return r.fault(start, r.at,
				"%q has a comma; write %q, or %q if the comma is a decimal point", digits,
				write(whole), write(point))
		case thousands:
			return r.fault(start, r.at, "%q has commas; write %q", digits, write(whole))
		case decimalComma(digits):
			return nil
		}
		return r.fault(start, r.at, "%q is not a number; write it without commas", digits)
	}
	if len(rest) > 1 && digits == "0" && (rest[0] == 'x' || rest[0] == 'X') && isHex(rest[1]) {
		end := r.at + 1
		for end < len(r.text) && isHex(r.text[end]) {
			end++
		}
		return r.fault(start, end, "%s is not a plain number; write it in the digits 0 to 9",
			quote(r.text[start:end]))
	}
	if len(rest) > 1 && (rest[0] == 'e' || rest[0] == 'E') {
		end := r.at + 1
		if r.text[end] == '+' || r.text[end] == '-' {
			end++
		}
		from := end
		for end < len(r.text) && isDigit(r.text[end]) {
			end++
		}
		if end > from {
			return r.exponent(start, end)
		}
	}
	if len(rest) > 1 && (rest[0] == '_' || rest[0] == '\'') && isDigit(rest[1]) {
		return r.fault(start, r.at+1, "%q does not belong in a number; write the digits alone",
			rest[:1])
	}
	// "1 000 g": digits in groups of three.
	if len(digits) > 3 || digits == "0" || strings.Contains(digits, ".") ||
		!strings.HasPrefix(rest, " ") {
		return nil
	}
	if next := strings.TrimLeft(rest, " "); next == "" || !isDigit(next[0]) {
		return nil
	}
	if groups := strings.Fields(rest); len(groups) > 0 {
		g := groups[0]
		n := 0
		for n < len(g) && isDigit(g[n]) {
			n++
		}
		if n == 3 && !strings.HasPrefix(g[n:], "/") && !strings.HasPrefix(g[n:], "⁄") {
			end := r.at + strings.Index(rest, g) + n
			return r.fault(start, end, "%q has a blank inside the number; write %q",
				r.text[start:end], r.text[:start]+digits+g[:n]+r.text[end:])
		}
	}
	return nil
}

func (r *reader) exponent(start, end int) *Fault {
	written := r.text[start:end]
	x, err := strconv.ParseFloat(written, 64)
	switch {
	case err != nil || x > largestNumber:
		return r.fault(start, end, tooLarge, quote(written))
	case x < least:
		return r.fault(start, end, tooSmall, quote(written))
	}
	return r.fault(start, end, "%s is not a plain number; write %q", quote(written),
		r.text[:start]+strconv.FormatFloat(x, 'f', -1, 64)+r.text[end:])
}

func isHex(c byte) bool { return isDigit(c) || c >= 'a' && c <= 'f' || c >= 'A' && c <= 'F' }

// fraction reads the fraction after a whole number, if any: "/2", "
// 1/2" or "½".
func (r *reader) fraction(start int, whole float64) (float64, *Fault) {
	after := r.at
	if den, ok := r.denominator(); ok {
		if den == 0 {
			return 0, r.fault(start, r.at, "%q divides by zero; write the amount as a number",
				r.text[start:r.at])
		}
		return whole / den, nil
	}
	r.blanks()
	if c, size := utf8.DecodeRuneInString(r.text[r.at:]); vulgar[c] != 0 {
		r.at += size
		return whole + vulgar[c], nil
	}
	from := r.at
	for r.at < len(r.text) && isDigit(r.text[r.at]) {
		r.at++
	}
	if r.at > from && from > after {
		num, _ := strconv.ParseFloat(r.text[from:r.at], 64)
		if den, ok := r.denominator(); ok {
			if num >= den {
				return 0, r.fault(start, r.at, "%q is not a mixed number: %q is not below 1",
					r.text[start:r.at], r.text[from:r.at])
			}
			return whole + num/den, nil
		}
	}
	r.at = after
	return whole, nil
}

// denominator reads a fraction's slash and the whole number after it.
func (r *reader) denominator() (float64, bool) {
	c, size := utf8.DecodeRuneInString(r.text[r.at:])
	if c != '/' && c != '\u2044' {
		return 0, false
	}
	from := r.at + size
	end := from
	for end < len(r.text) && isDigit(r.text[end]) {
		end++
	}
	if end == from {
		return 0, false
	}
	r.at = end
	den, _ := strconv.ParseFloat(r.text[from:end], 64)
	return den, true
}

// unit reads a unit: one word, or two as in "fl oz" and "degrees C". It
// returns the unit and its end, or nil.
func (r *reader) unit() (*unit, int) {
	word, end := wordAt(r.text, r.at)
	if word == "" {
		return nil, r.at
	}
	switch strings.ToLower(strings.TrimSuffix(word, ".")) {
	case "°", "º", "deg", "degs", "degree", "degrees":
		next, nextEnd := wordAt(r.text, skipBlanks(r.text, end))
		if u := unitNamed(next); u != nil && u.kind == Temperature {
			return u, nextEnd
		}
		return nil, r.at
	case "fl", "fluid", "per", "us", "uk", "imperial":
		next, nextEnd := wordAt(r.text, skipBlanks(r.text, end))
		first := strings.TrimSuffix(word, ".")
		if w := strings.TrimSuffix(strings.ToLower(next), "."); w == "fl" || w == "fluid" {
			first += " " + w // "UK fl oz"
			next, nextEnd = wordAt(r.text, skipBlanks(r.text, nextEnd))
		}
		if u := unitNamed(strings.ToLower(first + " " + strings.TrimSuffix(next, "."))); u != nil {
			return u, nextEnd
		}
		return nil, r.at
	case "℃":
		return unitNamed("C"), end
	case "℉":
		return unitNamed("F"), end
	}
	if u := unitNamed(word); u != nil {
		return u, end
	}
	if trimmed := strings.TrimSuffix(word, "."); trimmed != word {
		return unitNamed(trimmed), end
	}
	return nil, r.at
}

// wordAt gives the unit-like word at a place: a sign, or letters with
// an optional full stop.
func wordAt(text string, at int) (string, int) {
	c, size := utf8.DecodeRuneInString(text[at:])
	switch c {
	case '%', '°', 'º', '℃', '℉':
		return text[at : at+size], at + size
	}
	end := at
	for end < len(text) {
		c, size := utf8.DecodeRuneInString(text[end:])
		if !unicode.IsLetter(c) {
			break
		}
		end += size
	}
	if end > at && end < len(text) && text[end] == '.' {
		end++
	}
	return text[at:end], end
}

// to are the words for a range in English, German, French, Swedish
// and Danish.
var to = []string{"to", "bis", "à", "till", "til"}

// rangeSign steps over "to" or a dash.
func (r *reader) rangeSign() bool {
	r.blanks()
	rest := r.text[r.at:]
	for _, word := range to {
		if len(rest) < len(word) || !strings.EqualFold(rest[:len(word)], word) {
			continue
		}
		if c, _ := utf8.DecodeRuneInString(rest[len(word):]); !unicode.IsLetter(c) {
			r.at += len(word)
			return true
		}
	}
	c, size := utf8.DecodeRuneInString(rest)
	if c == '-' || c == '\u2212' || c >= '\u2010' && c <= '\u2014' {
		r.at += size
		return true
	}
	return false
}

func (r *reader) blanks() { r.at = skipBlanks(r.text, r.at) }

func skipBlanks(text string, at int) int {
	for at < len(text) {
		c, size := utf8.DecodeRuneInString(text[at:])
		if !unicode.IsSpace(c) {
			break
		}
		at += size
	}
	return at
}

// restWord returns the text up to the next blank.
func (r *reader) restWord() string {
	rest := r.text[r.at:]
	if end := strings.IndexFunc(rest, unicode.IsSpace); end > 0 {
		return rest[:end]
	}
	return rest
}

func (r *reader) unknownUnit(m measure, rest string) *Fault {
	word := r.restWord()
	t := m.terms[0]
	name := strings.TrimRight(word, ".,;")
	if fault := r.kitchenWord(t, word, name); fault != nil {
		return fault
	}
	if fault := r.times(t, word, rest); fault != nil {
		return fault
	}
	var write []string
	for _, near := range nearestUnits(name, r.allowed) {
		write = append(write, strconv.Quote(strings.TrimSpace(r.text[:t.numberEnd])+" "+near.name+
			rest[len(word):]))
	}
	if len(write) > 0 {
		return r.fault(r.at, r.at+len(word), "%s is not a unit; write %s", quote(word),
			strings.Join(write, ", or "))
	}
	return r.fault(r.at, r.at+len(word), "%s is not a unit; the units here are %s", quote(word),
		r.unitNames())
}

// unitNames lists the units of the allowed kinds, the likeliest
// kind first.
func (r *reader) unitNames() string {
	var names []string
	for _, k := range likeliest {
		for _, u := range units {
			if r.allowed.Has(k) && u.kind == k {
				names = append(names, u.name)
			}
		}
	}
	return strings.Join(names, ", ")
}

// kitchenWord returns the fault for a kitchen's measure that is no
// unit: it says what the word may mean, and offers lines that keep
// the amount.
func (r *reader) kitchenWord(t term, word, name string) *Fault {
	if fault := r.heap(t, word, name); fault != nil {
		return fault
	}
	lower := strings.ToLower(name)
	w, ok := kitchenWords[strings.TrimSuffix(lower, "s")]
	if !ok || lower == "ts" || !r.allowed.Has(w.kind) || t.number <= 0 || t.number > 1e6 {
		return nil
	}
	before := strings.TrimSpace(r.text[:t.start])
	var write []string
	for _, c := range w.choices {
		line := strconv.FormatFloat(round(c.lo*t.number), 'f', -1, 64)
		if c.hi > c.lo {
			line += " to " + strconv.FormatFloat(round(c.hi*t.number), 'f', -1, 64)
		}
		write = append(write, strconv.Quote(strings.TrimSpace(before+" "+line+" "+c.unit)))
	}
	if len(write) == 0 {
		write = []string{`"?" until you have`}
	}
	return r.fault(r.at, r.at+len(word), "%s %s; write %s", quote(name), w.means,
		strings.Join(write, ", or "))
}

// times returns the fault for "2 x 7 g": it offers the product.
func (r *reader) times(t term, word, rest string) *Fault {
	if word != "x" && word != "X" && word != "×" {
		return nil
	}
	each, fault := Read(strings.TrimSpace(rest[len(word):]), r.allowed)
	if fault != nil || !each.IsPoint() || t.number <= 0 || t.number > 1e6 {
		return nil
	}
	x, _ := FromBase(each.Lo*t.number, each.Unit)
	return r.fault(r.at, r.at+len(word), "%q is no unit; write the whole: %q", word,
		strconv.FormatFloat(round(x), 'f', -1, 64)+" "+each.Unit)
}

// heap returns the fault for a spoon that is not level.
func (r *reader) heap(t term, word, name string) *Fault {
	h, ok := heaps[strings.ToLower(name)]
	if !ok || !r.allowed.Has(Volume) || t.number <= 0 || t.number > 1e6 {
		return nil
	}
	u, end := (&reader{text: r.text, at: skipBlanks(r.text, r.at+len(word))}).unit()
	if u == nil || u.kind != Volume || strings.TrimSpace(r.text[end:]) != "" {
		return nil
	}
	number := func(x float64) string { return strconv.FormatFloat(round(x), 'f', -1, 64) }
	return r.fault(r.at, r.at+len(word), "a %s measure is %s to %s of a level one: weigh it; "+
		"write %q", strings.ToLower(name), number(h.lo), number(h.hi),
		number(h.lo*t.number)+" to "+number(h.hi*t.number)+" "+u.name)
}

// round drops the last bits that a product of decimals leaves.
func round(x float64) float64 { return math.Round(x*1e6) / 1e6 }

// likeliest is the order in which a kind is guessed.
var likeliest = []Kind{Mass, Temperature, Time, Length, Percent, Volume, Count}

func (r *reader) kind() Kind {
	for _, k := range likeliest {
		if r.allowed.Has(k) {
			return k
		}
	}
	return Mass
}

func (r *reader) guess() string { return r.kind().Base() }

func (r *reader) wanted() string {
	var names []string
	for _, k := range likeliest {
		if r.allowed.Has(k) {
			names = append(names, k.String())
		}
	}
	if n := len(names); n > 1 {
		return strings.Join(names[:n-1], ", ") + " or " + names[n-1]
	}
	return strings.Join(names, "")
}

func (r *reader) example() string { return examples[r.kind()] }

// mayStand says what may be written in place of words.
func (r *reader) mayStand() string {
	out := fmt.Sprintf("%q, or %q", r.example(), r.rangeExample())
	if r.allowed.Has(Time) {
		out += ", or \"overnight\""
	}
	return out
}

func startsWithLetter(word string) bool {
	c, _ := utf8.DecodeRuneInString(word)
	return unicode.IsLetter(c)
}

func (r *reader) rangeExample() string { return rangeExamples[r.kind()] }
