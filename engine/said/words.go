package said

import (
	"strconv"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

var spoken = []struct {
	words *spelling.Words
	write string
}{
	{spelling.Pattern(`(?i)\b(?:an|one|1) hour and a half\b|\b(?:one|1) and a half hours\b`),
		"90 min"},
	{spelling.Pattern(`(?i)\bthree quarters of an hour\b`), "45 min"},
	{spelling.Pattern(`(?i)\ba quarter of an hour\b`), "15 min"},
	{spelling.Pattern(`(?i)\bhalf an hour\b`), "30 min"},
	{spelling.Pattern(`(?i)\bhalf a day\b`), "12 h"},
	{spelling.Pattern(`(?i)\ba couple of (hours|minutes)\b`), "2 $1"},
	{spelling.Pattern(`(?i)(?:\b|^)(?:über nacht|(?:toute |pendant |une |la )*nuit|` +
		`över natt(?:en)?|` +
		`natten over|over natten|tutta la notte|(?:per )?una notte|toda la noche)\b`), "overnight"},
}

// numbered are numbers in words before a unit of time.
var numbered = spelling.Pattern(`(?i)\b(?:(?:an|one) (?:hour|day)|a (?:minute|day|night)|` +
	`(?:two|three|four|five) (?:hours|minutes|days)|(?:ten|twenty) minutes)\b`)

// hourAnd is an hour and minutes among words: "1 h to 1 h 15, until doubled".
var hourAnd = spelling.Pattern(`(?i)\b(\d+) ?(?:h|hours?|hrs?) ?([0-5]\d)(?: ?min\w*)?\b`)

var clock = spelling.Pattern(`(?i)^(\d+) ?(?:h|hours?|hrs?),? ?(?:and )?([0-5]\d)(?: ?min)?$`)

var perSide = spelling.Pattern(`(?i)^(\d+(?:\.\d+)?) ?(s|secs?|seconds?|m|mins?|` +
	`minutes?)\.? (?:per|each|a|on each|on either) side$`)

// PlainTime reports whether a text is a plain quantity, or a range of
// times and no word beside: "60 to 90 min".
func PlainTime(text string) bool {
	lo, hi, isRange := strings.Cut(text, " to ")
	if !isRange {
		return quantity.IsPlain(text)
	}
	_, plain := quantity.ReadPlain(lo, quantity.Of(quantity.Time))
	_, ends := quantity.ReadPlain(hi, quantity.Of(quantity.Time))
	return ends && (plain || Whole(lo))
}

// further is a time beyond what was done: "5 more minutes".
var further = spelling.Pattern(`(?i)(\d) (?:more|further|extra) ` +
	`(s|secs?|seconds?|mins?|minutes?|h|hours?)\b`)

// Time gives a worded time in figures: "half an hour", "2 min per side". Others stay.
func Time(text string) string {
	text = further.ReplaceAllString(text, "$1 $2")
	for _, s := range spoken {
		text = s.words.ReplaceAllString(text, s.write)
	}
	text = numbered.ReplaceAllStringFunc(text, func(s string) string {
		word, unit, _ := strings.Cut(s, " ")
		return numbers[strings.ToLower(word)] + " " + unit
	})
	if m := clock.FindStringSubmatch(strings.TrimSpace(text)); m != nil {
		return m[1] + " h " + m[2] + " min"
	}
	text = hourAnd.ReplaceAllString(text, "$1 h $2 min")
	if m := perSide.FindStringSubmatch(strings.TrimSpace(text)); m != nil {
		if q, fault := quantity.Read(m[1]+" "+m[2], quantity.Of(quantity.Time)); fault == nil {
			return quantity.Plain(2*q.Lo) + " min"
		}
	}
	return text
}

var oneTime = spelling.Pattern(`(?i)\d+(?:\.\d+)? ?(?:s|secs?|seconds?|mins?|minutes?|h|hours?)\b`)

// Sum adds up a mix's times by speed: "5 min on low, then 8 min on medium".
func Sum(text string) (time string, ok bool) {
	if speeds.MatchString(strings.TrimSpace(text)) {
		text = speed.ReplaceAllString(text, "$1 min +")
	}
	text = gear.ReplaceAllString(strings.TrimSpace(text), "")
	all := oneTime.FindAllString(text, -1)
	rest := after.ReplaceAllString(strings.ToLower(oneTime.ReplaceAllString(text, "")), "+")
	if len(all) < 2 || strings.ContainsAny(rest, "0123456789") ||
		!sums.MatchString(rest) && !strings.Contains(rest, ",") ||
		bound.MatchString(rest) {
		return "", false
	}
	total := 0.0
	for _, one := range all {
		q, fault := quantity.Read(one, quantity.Of(quantity.Time))
		if fault != nil {
			return "", false
		}
		total += q.Lo
	}
	return quantity.Plain(total) + " min", true
}

// gear is the speed of a mixer, whose figure is no time; after are words between one time and the
// next. In English, German, French, Italian, Swedish and Danish.
var (
	gear = spelling.Pattern(`(?i)\(?\b(?:(?:on |at |auf |en |in |à )?(?:speeds?|gear|setting|` +
		`level|stufe|gang|` +
		`vitesse|velocità|hastighed|hastighet|trin|v\.?) ?[1-9]\b|[1-9](?:st|nd|rd|re|ère|er|` +
		`e|ème|de|a|ª|\.)? ?` +
		`(?:speed|gear|stufe|gang|vitesse|velocità|hastighed|hastighet)\b)\)?`)
	after = spelling.Pattern(`\b(?:then|puis|ensuite|et|dann|und|danach|poi|e|sedan|och|så|og|` +
		`derefter)\b`)
)

// speeds are minutes behind the letter of a speed, low, medium or high,
// with what goes in between in brackets: "L3 M5 (butter) L2 M5".
var (
	speeds = spelling.Pattern(`(?i)^(?:(?:L|M|H|ML|MH)\d{1,2}(?:$|[ ,+]+|\b)` +
		`(?:\([\pL ,]+\)[ ,+]*)?){2,}$`)
	speed = spelling.Pattern(`(?i)\b[LMH]{1,2}(\d{1,2})\b`)
)

var speedWords = spelling.Pattern(`(?i)^(?:on |at |auf |en |in |à )?(?:(?:the )?(?:low(?:est)?|` +
	`medium|high(?:est)?|slow|fast|first|second|low-medium|medium-low|medium-high|langsam|` +
	`schnell|` +
	`lente?|rapide?|lent[ao]|veloce|baja|alta|långsamt|snabbt)(?: speed| gear| setting)?[ ,]*` +
	`(?:to|then|-|and)? ?)+$`)

// IsSpeed reports whether words are the speed of a mixer: "on low".
func IsSpeed(words string) bool { return speedWords.MatchString(strings.TrimSpace(words)) }

// NoGear drops the speed of a mixer from words.
func NoGear(text string) string { return gear.ReplaceAllString(text, "") }

var sums = spelling.Pattern(`\b(?:plus|and)\b|\+`)

var (
	warmth = spelling.Pattern(`-?\d+(?:[.,]\d+)?(?: ?(?:-|–|to) ?-?\d+(?:[.,]\d+)?)? ?(?:°|º|` +
		`degrees?|deg)? ?[CF]\b`)
	bound = spelling.Pattern(`(?i)\b(?:not|no|never|below|under|over|above|less|more|max\w*|` +
		`min\w*|most|least|up|within|than|or|then|falling)\b`)
	ovens = spelling.Pattern(`(?i)^(\d+ ?°? ?[CF]) ?(?:/|\(|,| or ) ?(?:\d+ ?°? ?[CF] ?(?:fan|` +
		`convection)|fan \d+ ?°? ?[CF])(?:[ ,/]*gas(?: mark)? ?\d)?\)?$`)
	otherOven = spelling.Pattern(`(?i)\b(?:fan|convection|gas|umluft|hei(?:ß|ss)luft|varmluft\w*|` +
		`chaleur tournante|ventilat\w*|ventilad\w*|ventilé\w*|turbo|konvektion\w*)(?:\b|$)`)
)

// TempIn reads the one temperature among words: "preheated 190 C",
// "warm (about 40 C)". Words that make it a bound are asked.
func TempIn(text string) (temperature string, ok bool) {
	if quantity.IsPlain(text) {
		return "", false
	}
	if m := ovens.FindStringSubmatch(strings.TrimSpace(text)); m != nil {
		return m[1], true // "190C/170C fan/gas 5" is one oven
	}
	all := warmth.FindAllString(text, -1)
	if m := atMost.FindStringSubmatch(text); m != nil && len(all) == 1 {
		return m[1] + m[2], true
	}
	if len(all) != 1 || bound.MatchString(text) {
		return "", false
	}
	rest := strings.Replace(text, all[0], "", 1)
	if strings.ContainsAny(rest, "0123456789") || strings.TrimSpace(rest) == "" ||
		otherOven.MatchString(rest) {
		return "", false
	}
	return all[0], true
}

// atMost is a temperature that is not to be passed, or that words without a figure follow behind a
// comma: "24 C max", "25 C, no warmer or the butter runs".
var atMost = spelling.Pattern(`^(?i:(?:max(?:imum|\.)?|at most|no more than) )?(` + degreesIn +
	`)(?i:(?:,? (?:max(?:imum|\.)?|at (?:the )?most|tops))|[,;] ?(?:no|not|never|but no|` +
	`don't) [^\d]*)$|^(?i:max(?:imum|\.)?|at most) (` + degreesIn + `)$`)

const degreesIn = `-?\d+(?:[.,]\d+)?(?: ?(?:-|–|to) ?-?\d+(?:[.,]\d+)?)? ?(?:°|º|degrees?|` +
	`deg)? ?[CF]`

var (
	small = spelling.Pattern(`(?i)\b(?:level|leveled|levelled|gestrichen\w*|gestr\.?|rases?|` +
		`rasi?|struken|strukna|strøget|strøken) `)
	ofFruit = spelling.Pattern(`(?i)^(?:(?:grated |finely grated )?(?:zest|rind|juice|peel|` +
		`seeds)? ?(?:of|from) )(.+)$`)
	sizedBy = spelling.Pattern(`(?i)^(\d+) ?\(? ?(?:size )?(XL|[SML])\)?$`)
	heaped  = spelling.Pattern(`(?i)^([\d./ ½¼¾]+|an?|one) (heaped|heaping|rounded|scant|` +
		`generous|gehäuft\w*|geh\.?|bombée?s?|colm[oi]|rågad\w*|rågat|toppet) (.+)$`)
)

var (
	frenchSpoon = spelling.Pattern(`(?i)\bc(?:uill[eè]res?|\.)? ?à ?s(?:oupes?\b|\.|$)`)
	frenchTea   = spelling.Pattern(`(?i)\bc(?:uill[eè]res?|\.)? ?à ?c(?:afés?|\.|$)`)
)

// shareOf is a share of one: "1/2 an orange", "half a lemon".
var shareOf = spelling.Pattern(`(?i)^([\d/½¼¾⅓⅔]+|half|a quarter) (?:of )?(?:an?|one) `)

var english = spelling.Pattern(`^(?:heaped|heaping|rounded|scant|generous)$`)

var sticks = spelling.Pattern(`(?i)^[\d./ ½¼¾]+ sticks?$`)

// ounces is one packet whose weight is written.
var ounces = spelling.Pattern(
	`(?i)^(?:one |an? |1 )?\(?([\d./¼½¾]+)[- ]?(?:ounce|oz)\.?\)?[- ](?:packet|package|pack|` +
		`envelope|sachet|can|tin)$`)

// drops are measures of unweighed things (kitchen practice, no source).
var drops = []struct {
	words  *spelling.Words
	amount string
}{
	{spelling.Pattern(`(?i)^(?:an? )?(?:few|couple of) drops$`), "0.1 to 0.5 ml"},
	{spelling.Pattern(`(?i)^(?:an?|one|two|` +
		`\d) drops?(?: or two)?(?:[ ,][^\d]*)?$`), "0.03 to 0.3 ml"},
	{spelling.Pattern(`(?i)^(?:an? |1 )?(?:small |good )?splash$`), "2 to 10 ml"},
	{spelling.Pattern(`(?i)^(?:an? |1 )?drizzle$`), "5 to 20 ml"},
}

// dropsOf is the amount of an unweighed measure; "" for others. A drop
// of colour weighs about what water does.
func dropsOf(it *larder.Item, text string) string {
	for _, d := range drops {
		switch {
		case !d.words.MatchString(text):
		case it.Density == 0:
			return strings.Replace(d.amount, "ml", "g", 1)
		default:
			return d.amount
		}
	}
	return ""
}

// Said is an amount without the words on its preparation.
type Said struct{ Amount, Words, Says string }

// takenAs is the amount for a kitchen's measure.
func takenAs(text, amount string) Said {
	return Said{Amount: amount, Says: strconv.Quote(text) + " is taken as " + amount + ": weigh it"}
}

// Plainly removes a baker's words beside an amount: "80 g, soft", "1 level tsp", "1 medium,
// beaten". It removes only words that change nothing.
func Plainly(it *larder.Item, text, units string) Said {
	text = strings.ReplaceAll(small.ReplaceAllString(strings.TrimSpace(text), ""), " & ", " and ")
	if m := ounces.FindStringSubmatch(text); m != nil {
		return Said{Amount: strings.TrimSpace(m[1]) + " oz"}
	}
	if amount := dropsOf(it, text); amount != "" {
		return takenAs(text, amount)
	}
	text, _ = Spoons(text, nil)
	text = shareOf.ReplaceAllString(strings.ReplaceAll(text, "'s", ""), "$1 ")
	if m := ofFruit.FindStringSubmatch(text); m != nil {
		text = m[1]
	}
	if m := sizedBy.FindStringSubmatch(text); m != nil && it.Class == larder.ClassEgg {
		return Said{Amount: m[1] + " " + map[string]string{"S": "small", "M": "medium",
			"L":  "large",
			"XL": "extra large"}[strings.ToUpper(m[2])]}
	}
	if reads(it, text, units) {
		return Said{Amount: text}
	}
	if m := inBrackets.FindStringSubmatch(text); m != nil && reads(it, m[1], units) {
		_, fault := quantity.Read(m[2], quantity.Amounts)
		if fault == nil || sticks.MatchString(m[2]) && it.Class == larder.ClassFat {
			return Said{Amount: m[1]} // "1 package (2 1/4 tsp)"
		}
	}
	if m := heaped.FindStringSubmatch(text); m != nil {
		if n := numbers[strings.ToLower(m[1])]; n != "" {
			m[1] = n
		}
		how := strings.ToLower(m[2])
		if !english.MatchString(how) {
			how = "heaped"
		}
		if out, ok := quantity.Heaped(m[1], how, m[3]); ok {
			return takenAs(text, out)
		}
	}
	if i := strings.LastIndexByte(text, ','); i > 0 {
		if tail := strings.Fields(strings.Trim(text[i+1:], " ()")); it.Prepared(tail) {
			if one := Plainly(it, text[:i], units); reads(it, one.Amount, units) {
				one.Words = strings.TrimSpace(one.Words + " " + strings.Join(tail, " "))
				return one
			}
		}
	}
	flat := strings.NewReplacer("(", " ", ")", " ", ",", " , ").Replace(text)
	fields := strings.Fields(flat)
	for k := len(fields) - 1; k > 0; k-- {
		head := strings.TrimSpace(strings.TrimSuffix(strings.Join(fields[:k], " "), ","))
		if !reads(it, head, units) {
			continue
		}
		var tail []string
		for _, w := range fields[k:] {
			if w != "," {
				tail = append(tail, w)
			}
		}
		if len(tail) == 0 || !it.Prepared(tail) {
			continue
		}
		return Said{Amount: head, Words: strings.Join(tail, " ")}
	}
	if out, says := prepared(it, text); out != text {
		one := Plainly(it, out, units)
		if reads(it, one.Amount, units) {
			if tail, cut := strings.CutPrefix(text, out); cut && out != "" && text[0] != '(' {
				one.Words = strings.TrimSpace(one.Words + " " + strings.Trim(tail, " ,;()"))
			}
			one.Says += says
			return one
		}
	}
	return Said{Amount: text}
}

// reads reports whether an amount reads unchanged.
func reads(it *larder.Item, text, units string) bool {
	if _, fault := quantity.Read(Bracketed(text), quantity.Amounts); fault == nil {
		return true
	}
	if _, bad := Count(text); bad == "" && it.Piece > 0 {
		return true
	}
	if _, ok := Amount(it, text, units); ok {
		return true
	}
	if _, _, ok := SizedEggs(text); ok && it.Class == larder.ClassEgg {
		return true
	}
	out, why := Packed(text)
	return out != "" || why != ""
}

var (
	span = spelling.Pattern(`(?i)\d+(?:\.\d+)?(?: ?(?:-|–|to) ?\d+(?:\.\d+)?)? ?(?:hours?|hrs?|h|` +
		`minutes?|mins?|min)\b`)
	otherUnit = spelling.Pattern(`(?i)\d+(?:\.\d+)? ?(?:cm|mm|%|inch(?:es)?|in\b)`)
)

var sizesIn = spelling.Pattern(`(?i)[\d./½¼¾]+(?: \d/\d)?[- ]?(?:cm|mm|inch(?:es)?|in|")(?:\b|$)|` +
	`\b(?:in )?\d+ ?g (?:cubes?|pieces?|slices?|strips?|chunks?|batons?)\b`)

// NoSizes drops lengths from words: "a bag with a 1/4 inch tip".
func NoSizes(text string) string { return sizesIn.ReplaceAllString(text, "") }

// OneTime reads the one time among words with other figures: "until 2 cm below the rim, 3 h"; and
// one that may last into the morning.
func OneTime(text string) (time string, ok bool) {
	if span, ok := toNight(Time(text)); ok {
		return span, true
	}
	all := span.FindAllString(text, -1)
	if len(all) != 1 || portions.MatchString(text) || !otherUnit.MatchString(text) {
		return "", false
	}
	rest := otherUnit.ReplaceAllString(strings.Replace(text, all[0], "", 1), "")
	return all[0], !strings.ContainsAny(rest, "0123456789")
}
