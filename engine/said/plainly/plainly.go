// Package plainly reads the figures that stand plainly in a text, whatever
// words are around them. It is asked last, where no other reader knows the
// words; the caller tells what it took. It knows no formula.
package plainly

import (
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/said/oven"
	"forebake/engine/spelling"
)

const number = `\d[\d.]*(?: ?[½¼¾])?(?: \d/\d)?`

var (
	time = spelling.Pattern(`(?i)(?:` + number + `|[½¼¾])(?: ?(?:-|–|to) ?(?:` + number +
		`|[½¼¾]))?(?:[- ]?ish)? ?(?:secs?|seconds?|mins?|minutes?|hours?|hrs?|h|s)\b` +
		`(?: \d+ ?(?:mins?|minutes?)\b)?(?:[- ]?ish\b)?`)
	ish = spelling.Pattern(`(?i)[- ]?ish\b`)
	// span joins two times to one that lies between them.
	span = spelling.Pattern(`(?i)^ ?(?:to|-|–|or|bis|à|up to) ?$`)
	// moment stands before a time that is a moment within another, or how often.
	moment = spelling.Pattern(`(?i)\b(?:after|every|each|from|at|last|first|halfway)(?: the)?` +
		`(?: (?:first|last|about))? ?$`)
	inTurn = spelling.Pattern(`(?i)(?:[,;+&(]|\b(?:then|plus|and|more))[^\d]*$`)
	// bound are words that make a figure a bound, or one of two ways.
	bound = spelling.Pattern(`(?i)\b(?:unless|except|instead|if|or|at least|at most|up to|` +
		`(?:no|not|never|nor)[ ,]+(?:more|less|longer|over|under|above|below|before)|` +
		`(?:more|less|longer) than|min(?:imum)?\.?|max(?:imum)?\.?|per|oder|ou)(?:\b|$)`)
	// harmless are figures that change no time: sizes, speeds, shares of a tin, air.
	harmless = spelling.Pattern(`(?i)\d[\d.]* ?(?:x|×|by) ?\d[\d.]*` +
		`(?: ?(?:cm|mm|in\b|inch(?:es)?|"))?|` +
		number + `[- ]?(?:cm|mm|inch(?:es)?|")|\d/\d|\d+ ?%|` +
		`\b(?:on|speed|gear|number|no\.?) ?\d\b|\b\d(?:st|nd|rd|th)\b`)
	word   = spelling.Pattern(`\pL{3}`) // less is a slip of the pen
	little = spelling.Pattern(`(?i)\b(?:on|at|in|for|by|of|to|my|so|it)\b`)
	digits = "0123456789½¼¾"
)

// Times gives the time that a text holds, as one that the quantity reader
// reads: the one, all in turn, or from the longest to all in turn where
// nothing says that they follow each other. rest are the words around. ok
// is false where a word makes a time a bound, or a figure stays that is
// none.
func Times(text string) (whole, rest string, ok bool) {
	text, _, _ = takeHeat(strings.TrimSpace(text))
	at := time.FindAllStringIndex(text, -1)
	if len(at) == 0 {
		return "", "", false
	}
	var all []quantity.Quantity
	rest, sure := text[:at[0][0]], true
	for i, one := range at {
		before := text[:one[0]]
		gap := before
		if i > 0 {
			gap = text[at[i-1][1]:one[0]]
			rest += gap
		}
		q, fault := quantity.Read(ish.ReplaceAllString(text[one[0]:one[1]], ""),
			quantity.Of(quantity.Time))
		switch {
		case fault != nil:
			return "", "", false
		case i > 0 && span.MatchString(gap) && len(all) > 0:
			last := &all[len(all)-1]
			if q.Hi < last.Hi {
				return "", "", false // it runs backwards
			}
			last.Lo, last.Hi = min(last.Lo, q.Lo), max(last.Hi, q.Hi)
			rest = strings.TrimSuffix(rest, gap)
		case len(all) > 0 && moment.MatchString(gap):
		default:
			sure = sure && (len(all) == 0 || inTurn.MatchString(gap))
			all = append(all, q)
		}
	}
	rest += text[at[len(at)-1][1]:]
	around := little.ReplaceAllString(harmless.ReplaceAllString(rest, ""), "")
	if bound.MatchString(rest) || strings.ContainsAny(around, digits) ||
		strings.Trim(around, " ,;:.()!") != "" && !word.MatchString(around) {
		return "", "", false
	}
	var longest, lo, hi float64
	for _, q := range all {
		longest, lo, hi = max(longest, q.Lo), lo+q.Lo, hi+q.Hi
	}
	if !sure {
		lo = longest
	}
	if whole = quantity.Plain(lo); hi > lo {
		whole += " to " + quantity.Plain(hi)
	}
	return whole + " min", strings.Trim(rest, " ,;()"), true
}

var (
	heat = spelling.Pattern(`(?i)(?:^|[^\d.,-])(-?\d{1,3}(?:\.\d+)?(?: ?(?:-|–|to) ?\d{1,3})? ?` +
		`(?:°|º|degrees?|deg\.?)? ?(?:[CF]\b|°|º|degrees?))`)
	fan = spelling.Pattern(`(?i)[,;/( ]*(?:\bor ?)?\d{2,3} ?°? ?[CF]? ?(?:` +
		oven.FanWords + `)\b\)?|` +
		`[,;/( ]*\b(?:` + oven.FanWords + `) ?\d{2,3} ?°? ?[CF]?\)?|` +
		`[,;/( ]*\bgas(?: mark)? ?\d\b\)?`)
	bare    = spelling.Pattern(`(?i)(?:\bat|@|\boven) ?(\d{3})\b|^(\d{3}) \pL{3}`)
	beside  = spelling.Pattern(`(?i)(?:\bat|@|\bin an?|\boven)? *$`)
	reaches = spelling.Pattern(`(?i)\b(?:until|till|to|hits|reaches|core|inside|middle)[^,;]*$`)
)

// takeHeat takes the one heat off a text, and the same on other scales
// beside it. heat is "" where there is none or several; it may have no
// scale.
func takeHeat(text string) (rest, found string, ends bool) {
	plain := text
	short := fan.ReplaceAllString(text, " ")
	if heat.MatchString(short) || bare.MatchString(short) {
		plain = short
	}
	at := heat.FindAllStringSubmatchIndex(plain, -1)
	if len(at) == 0 {
		at = bare.FindAllStringSubmatchIndex(plain, -1)
	}
	if len(at) != 1 {
		return text, "", false
	}
	one := at[0][2:]
	if one[0] < 0 {
		one = one[2:]
	}
	one = append([]int{0, 0}, one...)
	before := beside.ReplaceAllString(plain[:one[2]], "")
	return before + " " + strings.TrimLeft(plain[one[3]:], " "),
		strings.TrimSpace(plain[one[2]:one[3]]), reaches.MatchString(before + " ")
}

// Heat gives the one heat that stands among words, "175 C oil", "prover
// 26 C, 75 %": as one that a reader of heats knows, perhaps without its
// scale. ends is true where it is what the food reaches, and not what is
// around it.
func Heat(text string) (found string, ends, ok bool) {
	rest, found, ends := takeHeat(strings.TrimSpace(text))
	if found == "" || bound.MatchString(rest) || !word.MatchString(text) {
		return "", false, false
	}
	return found, ends, true
}

var (
	shapes   = spelling.Pattern(`(?i)\b(tray|slab|log)\b`)
	lengths  = spelling.Pattern(`(?i)` + number + `(?: ?(?:-|–|to) ?` + number + `)? ?(?:mm|cm)\b`)
	lone     = spelling.Pattern(`^\D*?(\d{1,2}(?: ?(?:-|–|to) ?\d{1,2})?)\D*$`)
	lying    = spelling.Pattern(`(?i)\bflat\b`)
	minus    = spelling.Pattern(`-\d`)
	standing = spelling.Pattern(`(?i)^(?:a |the )?(?:bench |table |short |quick )?(?:rest|proof|` +
		`prove|stand)(?:s|ed|ing)?,? \d`)
)

// Shape gives the one shape and the one thickness among words. What lies
// flat is a tray.
func Shape(text string) (shape, thick string) {
	all, long := shapes.FindAllString(text, -1), lengths.FindAllString(text, -1)
	if len(all) == 0 && lying.MatchString(text) {
		all = []string{"tray"}
	}
	if len(all) != 1 || len(long) != 1 || bound.MatchString(text) || minus.MatchString(text) ||
		strings.ContainsAny(strings.Replace(text, long[0], "", 1), digits) {
		return "", ""
	}
	return strings.ToLower(all[0]), long[0]
}

// Minutes gives the minutes of a short rest that leaves out its unit:
// "bench rest 10".
func Minutes(text string) (time string, ok bool) {
	m := lone.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || !standing.MatchString(text) || strings.ContainsAny(text, "°%") {
		return "", false
	}
	return m[1] + " min", true
}
