package times

import (
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/spelling"
)

const (
	numbers = `[\d./½¼¾⅓⅔]+(?: \d/\d)?(?: ?(?:-|–|to) ?[\d./½¼¾]+(?: \d/\d)?)?`
	spells  = numbers + ` ?(?:hours?|hrs?|h|minutes?|mins?|min|days?)\b(?: ?\d+ ?min\w*\b)?`
)

var (
	spell = spelling.Pattern(`(?i)(?:\b(?:about|around|roughly|for|at least|another) )*(` +
		spells + `)`)
	night = spelling.Pattern(`(?i)\bover ?night\b[,;: (]*`)
	// chosen is a night that is one end of a choice or of a range.
	chosen = spelling.Pattern(`(?i)(?:\b(?:or|to|until|till|then|and|plus|at least|minimum)|-|–)` +
		` *over ?night\b|\bover ?night\b[,;:]? *(?:or|to|and|then|plus|at least|minimum|-|–)`)
)

// Night drops the night where its hours stand beside it: "overnight in the fridge, 8 to 12 hours"
// is "in the fridge, 8 to 12 hours". ok is false where the night is a choice or an end of a range,
// and where nothing but a time is left.
func Night(text string) (hours string, ok bool) {
	if !night.MatchString(text) || chosen.MatchString(text) ||
		len(spell.FindAllString(text, -1)) != 1 {
		return "", false
	}
	hours = strings.Trim(night.ReplaceAllString(text, ""), " ,;(")
	_, fault := quantity.Read(strings.Trim(hours, " ()"), quantity.Of(quantity.Time))
	return hours, fault != nil
}

// Waits reports whether words hold a length of time or a night, "leave 20 min".
func Waits(text string) bool { return spell.MatchString(text) || night.MatchString(text) }

var (
	areas = spelling.Pattern(`(?i)(?:[\d./½¼¾]+ ?(?:cm|mm|in|inch(?:es)?|")? ?(?:x|×|by) ?)*` +
		`[\d./½¼¾]+[- ]?(?:cm|mm|inch(?:es)?|in|")(?:[^\pL]|$)`)
	// moments lie within a time: "foil after 25 min", "lid off for the last 5 min".
	moments = spelling.Pattern(`(?i)\b(?:after(?: the)?(?: first)?|for the (?:first|last|final)|` +
		`in the (?:first|last|final)) (` + spells + `)`)
	degreed = spelling.Pattern(`(?i)\d ?(?:°|º|deg(?:rees?)?)? ?[CF]\b|\d ?[°º]`)
	heats   = spelling.Pattern(`(?i)(?:\b(?:at|about|around|to|of) )*[\d.]+(?: ?(?:-|–|to) ?` +
		`[\d.]+)? ?(?:°|º|deg(?:rees?)?)? ?[CF]\b`)
)

// Told is what words beside a time tell: how warm it is, "" for nothing, and the words without
// figures.
type Told struct{ Time, Temp, Words string }

// Figures reads the one time among words with a temperature, with sizes and with moments within
// the time: "40 min at 175 C, foil after 25 min", "overnight, flattened to 20 x 30 cm". ok is
// false where another figure is left.
func Figures(text string) (told Told, ok bool) {
	rest := text
	var within []string
	for _, m := range moments.FindAllStringSubmatch(rest, -1) {
		within = append(within, m[1])
	}
	plain := areas.ReplaceAllString(moments.ReplaceAllString(rest, " "), " ")
	rest = plain
	all := spell.FindAllStringSubmatch(rest, -1)
	switch {
	case len(all) == 1:
		told.Time, rest = all[0][1], strings.Replace(rest, all[0][0], " ", 1)
	case len(all) == 0 && night.MatchString(rest) && !chosen.MatchString(rest):
		told.Time, rest = "overnight", night.ReplaceAllString(rest, " ")
	default:
		return Told{}, false
	}
	whole, fault := quantity.Read(told.Time, quantity.Of(quantity.Time))
	if fault != nil || told.Time != "overnight" && !strings.Contains(text, told.Time) {
		return Told{}, false // a size stood in the middle of it
	}
	for _, one := range within {
		q, fault := quantity.Read(one, quantity.Of(quantity.Time))
		if fault != nil || q.Hi > whole.Lo {
			return Told{}, false
		}
	}
	if degreed.MatchString(rest) {
		if told.Temp, ok = said.TempIn("at " + NoFlame(rest)); !ok {
			return Told{}, false
		}
		rest = heats.ReplaceAllString(rest, " ")
	}
	if told.Temp == "" && plain == text {
		return Told{}, false // no other figure: TimeIn reads it
	}
	told.Words = strings.Trim(strings.Join(strings.Fields(rest), " "), " ,;:()-")
	return told, !strings.ContainsAny(rest, "0123456789½¼¾⅓⅔°")
}

// Heated reports whether words hold a temperature.
func Heated(text string) bool { return degreed.MatchString(text) }

var flame = spelling.Pattern(`(?i)\bover (an? |the )?((?:very )?(?:low|medium|gentle|high|` +
	`moderate|slow)(?:(?:-| to )(?:low|medium|high))?(?: heat| flame)?|heat|flame)\b`)

// NoFlame says on where words say over of a flame, which is no bound: "over a medium heat".
func NoFlame(text string) string { return flame.ReplaceAllString(text, "on $1$2") }

var bare = spelling.Pattern(`(?i)^([^@]*?\d ?(?:hours?|hrs?|h|minutes?|mins?|min)\b\.?)` +
	`(?: (?:in|on) (?:the|an?) [\pL ]+)?,? ?(?:\bat|@|\bin an?) (\d{2,3})` +
	`(?: ?(?:degrees|deg|°|º))?( fan)?(?: oven)?((?:[,;( ][^\d]*)?)$`)

// AtBare reads a time with an oven's heat that says no scale: "22-25 min at 350". rest are the
// words behind it.
func AtBare(text string) (time, heat, rest string, ok bool) {
	m := bare.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || degreed.MatchString("0"+m[4]) {
		return "", "", "", false
	}
	_, fault := quantity.Read(said.Time(m[1]), quantity.Of(quantity.Time))
	return m[1], m[2] + m[3], strings.Trim(m[4], " ,;()"), fault == nil
}

const side = `(` + numbers + ` ?(?:secs?|seconds?|s|minutes?|mins?|min)\b\.?)`

var (
	firstSide = spelling.Pattern(`(?i)^(?:about )?` + side + `(?: on)?(?: the| one)?` +
		`(?: first| 1st)? side\b([^\d]*?)[,;]? ?(?:and |then |and then )?(?:about )?` + side +
		`(?: on)?(?: the)? (?:second|2nd|other|next)(?: side| one)?\b([^\d]*)$`)
	flipped = spelling.Pattern(`(?i)^(?:about )?` + side + `[,;]? (?:then )?((?:flip|turn)` +
		`(?:ped|ed)?(?: them| it)?(?: over)?)[,;]? ?(?:and |then |for )*` + side +
		`( more)?([^\d]*)$`)
)

// TwoSides adds up the times of two sides: "3 min first side, 2 min second side" is 5 min. rest
// are the words beside them.
func TwoSides(text string) (time, rest string, ok bool) {
	text = strings.TrimSpace(text)
	for _, p := range []*spelling.Words{firstSide, flipped} {
		m := p.FindStringSubmatch(text)
		if m == nil {
			continue
		}
		kind := quantity.Of(quantity.Time)
		a, fault1 := quantity.Read(m[1], kind)
		b, fault2 := quantity.Read(m[3], kind)
		if fault1 != nil || fault2 != nil {
			return "", "", false
		}
		time = quantity.Plain(a.Lo + b.Lo)
		if hi := a.Hi + b.Hi; hi > a.Lo+b.Lo {
			time += " to " + quantity.Plain(hi)
		}
		return time + " min", strings.Trim(strings.Join(m[2:3], "")+m[len(m)-1], " ,;()"), true
	}
	return "", "", false
}

var least = spelling.Pattern(`(?i)^(?:at least |min(?:imum|\.)? |from )?(` + spells +
	`)(?: min(?:imum|\.)?| at (?:the )?least)?,? (?:but |and |or )?(?:up to|at (?:the )?most|` +
	`(?:no|not) more than|max(?:imum|\.)?) (` + spells + `)((?:[,;( ][^\d]*)?)$`)

// LeastToMost reads a time with its longest, "1 h minimum, up to 24 h", as a range. rest are the
// words behind it.
func LeastToMost(text string) (span, rest string, ok bool) {
	m := least.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", "", false
	}
	kind := quantity.Of(quantity.Time)
	a, fault1 := quantity.Read(m[1], kind)
	b, fault2 := quantity.Read(m[2], kind)
	if fault1 != nil || fault2 != nil || b.Hi <= a.Lo {
		return "", "", false
	}
	return quantity.Plain(a.Lo) + " to " + quantity.Plain(b.Hi) + " min",
		strings.Trim(m[3], " ,;()"), true
}

// Either parts two waits of which the baker has the choice: "1 hour or overnight in the fridge".
func Either(text string) (one, other string, ok bool) {
	at := either.FindStringIndex(text)
	if at == nil {
		return "", "", false
	}
	one, other = strings.Trim(text[:at[0]], " ,;"), strings.Trim(text[at[1]:], " ,;")
	for _, half := range []string{one, other} {
		if !Waits(half) {
			return "", "", false
		}
	}
	return one, other, true
}

var either = spelling.Pattern(`(?i),? \bor (?:else )?(?:leave |chill |for )*`)
