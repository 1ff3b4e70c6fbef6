package said

import (
	"fmt"
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

var (
	sides = spelling.Pattern(`(?i)(?:^|[^\d./])([\d./½¼¾ ]*\d[\d./½¼¾]*|[½¼¾]) ?(mm|cm|in\b|` +
		`inch(?:es)?|"|″|'')? ?(?:x|×|by) ?([\d./½¼¾ ]*\d[\d./½¼¾]*|[½¼¾])[ -]?(mm|cm|in\b|` +
		`inch(?:es)?|"|″|'')`)
	third  = spelling.Pattern(`(?i)^ ?(?:x|×|by) ?\d`)
	length = spelling.Pattern(`(?i)([\d./½¼¾ ]*\d[\d./½¼¾]*|[½¼¾])(?: ?(?:-|–|` +
		`to) ?([\d./½¼¾]+))?[ -]?(mm|cm|in\b|inch(?:es)?|"|″)`)
	rolledOut = spelling.Pattern(`(?i)\b(?:out|again|thick|thickness|thin|thinner|rectangle|` +
		`sheet|square|` +
		`oblong|circle|flat)\b|^\d+[- ]?(?:inch(?:es)?|in|cm) wide\b`)
)

// InchWord is a unit of length, with its sign for an inch in letters.
func InchWord(unit string) string {
	if unit == `"` || unit == "″" || unit == "''" {
		return "in"
	}
	return unit
}

// LengthAt is where the first length of a text stands; nil for none.
func LengthAt(text string) []int { return length.FindStringIndex(text) }

// Area reads the sides of a sheet, "30 x 45 cm" or "into a 10x16 inch rectangle", the longer first.
// Words with other figures are none.
func Area(text string) (long, short quantity.Quantity, ok bool) {
	at := sides.FindStringSubmatchIndex(text)
	if at == nil {
		return long, short, false
	}
	m := sides.FindStringSubmatch(text)
	rest := text[:at[0]] + " " + text[at[1]:]
	if third.MatchString(text[at[1]:]) ||
		strings.ContainsAny(length.ReplaceAllString(rest, ""), "0123456789") {
		return long, short, false
	}
	unit := InchWord(m[4])
	first := unit
	if m[2] != "" {
		first = InchWord(m[2])
	}
	kind := quantity.Of(quantity.Length)
	long, fault1 := quantity.Read(strings.TrimSpace(m[1])+" "+first, kind)
	short, fault2 := quantity.Read(strings.TrimSpace(m[3])+" "+unit, kind)
	if short.Hi > long.Hi {
		long, short = short, long
	}
	return long, short, fault1 == nil && fault2 == nil
}

var shortSide = spelling.Pattern(`(?i)\b(?:short(?:er|est)?|narrow(?:er)?)[ -](?:side|end|edge)`)

// FromShortSide reports whether words say that a sheet is rolled up from its shorter side.
func FromShortSide(text string) bool { return shortSide.MatchString(text) }

// LengthIn reads the one length among words: "to 4 mm", "about 1/2 inch thick".
func LengthIn(text string) (out string, ok bool) {
	all := length.FindAllStringSubmatchIndex(text, -1)
	if len(all) != 1 || bound.MatchString(text) || sides.MatchString(text) {
		return "", false
	}
	at := all[0]
	if rest := text[:at[0]] + text[at[1]:]; strings.ContainsAny(rest, "0123456789") ||
		strings.TrimSpace(rest) == "" && !strings.ContainsAny(text, `"″-`) {
		return "", false
	}
	m := length.FindStringSubmatch(text)
	out = strings.TrimSpace(m[1])
	if m[2] != "" {
		out += " to " + m[2]
	}
	return out + " " + InchWord(m[3]), true
}

// thinnest is the thinnest coil, mm. Less is the thickness of a sheet.
const thinnest = 20

// RolledOut reports whether words of a roll say that it is rolled flat, and not up.
func RolledOut(text string) bool {
	text = strings.ReplaceAll(text, " up to ", " to ") // "10 inches wide, up to 12"
	if strings.Contains(strings.ToLower(text), " up") ||
		strings.HasPrefix(strings.ToLower(text), "up") {
		return false
	}
	if _, _, isArea := Area(text); isArea || rolledOut.MatchString(text) {
		return true
	}
	q, fault := quantity.Read(text, quantity.Of(quantity.Length))
	return fault == nil && q.Hi < thinnest
}

var inRounds = spelling.Pattern(`(?i)^(?:each |them |pieces )?(?:in|into|to|as)? ?(?:an? |` +
	`\d+ |tight |` +
	`smooth |small |even |long |neat )*(?:balls?|ropes?|strands?|rounds?|sausages?|snakes?|` +
	`batons?|` +
	`cylinders?|fingers?|torpedo(?:e?s)?|crescents?|kugeln|strängen?|boules?|boudins?|palline|` +
	`cordoni|bolas|bolitas|tiras)\b`)

// InRounds reports whether words of a roll make pieces of it, and no
// coil: "into balls".
func InRounds(text string) bool { return inRounds.MatchString(strings.TrimSpace(text)) }

var thickWords = spelling.Pattern(`(?i)([\d./½¼¾ ]*\d[\d./½¼¾]*|[½¼¾]) ?-?(mm|cm|in|` +
	`inch(?:es)?|"|″)[ -]` +
	`(?:thick|in thickness|deep|dick|épaisseur|d'épaisseur|spess[oi]|di spessore|de grosor|` +
	`tjock)\b`)

// Thickness is the thickness among the words of a shape, "a disc 15 mm
// thick"; "" for none.
func Thickness(text string) string {
	m := thickWords.FindStringSubmatch(text)
	if m == nil || bound.MatchString(text) {
		return ""
	}
	return strings.TrimSpace(m[1]) + " " + InchWord(m[2])
}

// ThickIn is the thickness that words beside an area tell; "" for none.
func ThickIn(text string) string {
	at := sides.FindStringIndex(text)
	if at == nil {
		return ""
	}
	out, _ := LengthIn("thick " + text[:at[0]] + " " + text[at[1]:])
	return out
}

var (
	timeAt = spelling.Pattern(`(?i)^(.*?\d.*?)(?:,? ?(?:\b(?:at|bei|vid|ved|in an?|in)\b|` +
		`@)| (?:à|a)|,) ?((?:about |oven at )?\d+(?: ?(?:-|–|` +
		`to) ?\d+)? ?°? ?(?:degrees )?[CF])\b\.?(?:,? (?:and )?(\d+ ?%)(?: (?:rh|` +
		`humidity))?)?([^\d]*| ?/ ?.*)$`)
	heatFor = spelling.Pattern(`(?i)^(\d+ ?°? ?[CF]),? (?:for|für|pour) (.*\d.*)$`)
	aside   = spelling.Pattern(`^([^()]*\d[^()]*?) ?\(([^()]*)\)$`)
	turning = spelling.Pattern(`(?i)^(.*?\d[^,;]*?)[,;] ?((?:turn|rotat|tent|flip|stir|shak|swap|` +
		`cover|foil|loosely|rack|lower|upper|middle|bottom|top)[^\n]*)$`)
	overnight = spelling.Pattern(`(?i)\bover ?night\b[,;: (]*`)
)

// TimeAt reads a time with the temperature beside it: "12-16 h at 18 C", "180 C for 25
// min"; of several heats, "190C / 170C fan", the first.
func TimeAt(text string) (t Heated, ok bool) {
	text = strings.TrimSpace(text)
	if m := heatFor.FindStringSubmatch(text); m != nil {
		return Heated{Time: m[2], Temp: m[1]}, true
	}
	m := timeAt.FindStringSubmatch(text)
	if m == nil {
		return t, false
	}
	return Heated{strings.TrimSpace(m[1]), strings.TrimSpace(m[2]), m[3],
		strings.Trim(m[4], " ,;")}, true
}

var timeTo = spelling.Pattern(`(?i)^(\d[^,;]*?),? (?:to|until|till|up to|auf|à|bis|fino a) ` +
	`(?:it (?:is|reaches) )?(\d+(?:\.\d+)? ?°? ?(?:degrees )?[CF])\.?$`)

// TimeTo reads a time with the temperature at its end: "3 min to 65 C".
func TimeTo(text string) (time, to string, ok bool) {
	m := timeTo.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", "", false
	}
	_, fault := quantity.Read(Time(m[1]), quantity.Of(quantity.Time))
	return m[1], m[2], fault == nil
}

// Heated is a time with how warm it is meanwhile, and how humid; Rest are the words beside them.
type Heated struct{ Time, Temp, Humidity, Rest string }

var twoHeats = spelling.Pattern(`(?i)^(\d[^,;]*?) (?:at|@) ?(\d+ ?°? ?[CF])[,;]? ?(?:and )?then ` +
	`(\d[^,;]*?) (?:at|@) ?(\d+ ?°? ?[CF])$`)

// TwoHeats reads a bake of two times with an oven of two heats.
func TwoHeats(text string) (first, then Heated, ok bool) {
	m := twoHeats.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return first, then, false
	}
	return Heated{Time: m[1], Temp: m[2]}, Heated{Time: m[3], Temp: m[4]}, true
}

var upToNight = spelling.Pattern(`(?i)^(?:at least |from )?(\d[\d./½¼¾]* ?(?:min\w*|h|hours?|` +
	`hrs?)),? (?:(?:and |or )?(?:up )?to|or|-|–) (?:even )?over ?night$|` +
	`^over ?night[,;( ]+(?:for )?(?:at least|minimum(?: of)?) (\d[\d.]* ?(?:h|hours?|hrs?))\)?$`)

// toNight reads a time that may last until the morning, "2 hours up to
// overnight", as up to the longest night.
func toNight(text string) (span string, ok bool) {
	m := upToNight.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	_, fault := quantity.Read(m[1]+m[2], quantity.Of(quantity.Time))
	return fmt.Sprintf("%s to %g h", m[1]+m[2], quantity.Overnight.Hi/60), fault == nil
}

var (
	// untilThen is a time with the sign of its end: "50 min more, until 1 inch from the top".
	untilThen = spelling.Pattern(`(?i)^(\d[\d./½¼¾ ]*(?:(?:min\w*|h|hours?|hrs?)? ?(?:-|–|to )` +
		`[\d./½¼¾ ]+)?(?:min\w*|h|hours?|hrs?))(?: more)?[,;]? ((?:or )?(?:until|till|so|when) .+)`)
	// inAside are figures that would be lost in an aside: a time, or a heat.
	inAside = spelling.Pattern(`(?i)\d ?(?:°|º|degrees|[CF]\b|min|h\b|hours?|hrs?|x\b)`)
)

// TimeAside takes an aside off a time: "25 min (turn after 15)", "45 min, turning once"; a night
// that has hours beside it is those hours: "overnight (12 hours)".
func TimeAside(text string) (time, note string, ok bool) {
	text = strings.TrimSpace(text)
	if m := untilThen.FindStringSubmatch(text); m != nil && !inAside.MatchString(m[2]) {
		return m[1], m[2], true
	}
	if short := overnight.ReplaceAllString(text, ""); short != text {
		short = strings.Trim(short, " ()")
		if _, fault := quantity.Read(short, quantity.Of(quantity.Time)); fault == nil {
			return short, text, true
		}
	}
	for _, p := range []func() [][]string{
		func() [][]string { return aside.FindAllStringSubmatch(text, 1) },
		func() [][]string { return turning.FindAllStringSubmatch(text, 1) },
	} {
		if m := p(); m != nil {
			one := Time(strings.TrimSpace(m[0][1]))
			if _, fault := quantity.Read(one, quantity.Of(quantity.Time)); fault == nil {
				return one, m[0][2], true
			}
		}
	}
	return "", "", false
}
