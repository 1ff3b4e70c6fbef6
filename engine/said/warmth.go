package said

import (
	"math"
	"strings"
	"sync"
	"sync/atomic"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

// warmNames are words for an ingredient's temperature, the particular before the general, in seven
// languages. Common practice, no source. of reports whether a word means it for an ingredient:
// soft brown sugar is not warm.
var warmNames = []struct {
	word  *spelling.Words
	write string
	of    func(*larder.Item) bool
}{
	{names(`room[- ]temp(?:erature|\.)?|zimmerwarm\w*|rums(?:varm|tempererad)\w*|rumstempererat|` +
		`stuetempereret|temp[ée]rature ambiante|temperatura ambiente`), "18 C to 24 C", anything},
	{names(`luke ?warm|tepid|lauwarm\w*|ti[eè]des?|tiepid[oa]|tibi[oa]|templad[oa]|ljumm(?:en|` +
		`et)|lunkent?|finger(?:varmt?|warm\w*)|hand[- ]?(?:warm\w*|hot)|blood[- ](?:warm|heat)|` +
		`body (?:heat|temperature)`),
		"35 C to 40 C", anything},
	{names(`boiling|kochende\w*|bouillante?|bollente|kogende|kokande`), "95 C to 100 C", flows},
	{names(`melted[, ]+(?:and |but )?(?:still )?(?:very )?hot|hot,? melted`), "50 C to 95 C",
		anything},
	{names(`melted|zerlassen\w*|geschmolzen\w*|flüssige?|fondue?s?|fus[oa]|derretid[oa]|sm[aä]lt|` +
		`smeltet`), "32 C to 45 C", anything},
	{names(`warm(?:ed)?|warme?[nrs]?|varmt?|varme`), "35 C to 43 C", anything},
	{names(`ice[- ]cold|iced`), "0 C to 4 C", anything},
	{names(`(?:cool|cold) (?:but|and|yet) (?:still )?(?:pliable|malleable|plastic)|pliable|` +
		`malleable`),
		"10 C to 16 C", isFat},
	{
		names(
			`fridge|refrigerated|chilled|cold|kalte?[nrs]?|froide?|fredd[oa]|` +
				`fr[ií][oa]|kallt?|koldt?`),
		"2 C to 8 C", anything},
	{names(`cool(?:ish)?|kühle?[nrs]?|svalt?|kølig`), "10 C to 20 C", anything},
	{names(`frozen|tiefgekühlt\w*|surgelée?s?`), "-20 C to -12 C", isFat},
	{names(`soft|softened|weiche?[nrs]?|mous?|mol(?:le)?|ramollie?|pommade|morbid[oa]|mjukt?|` +
		`bl(?:ø|o)dt?`),
		"18 C to 24 C", isFat},
	{names(`hot|scalding|heisse?[nrs]?|heiße?[nrs]?|chaude?|cald[oa]|caliente|het(?:t|a)?`),
		"50 C to 95 C", flows},
}

func names(words string) *spelling.Words {
	return spelling.Pattern(`(?i)(?:^|[\s,(])(?:` + words + `)(?:$|[\s,.)])`)
}

func anything(*larder.Item) bool { return true }

// flows reports whether a hot ingredient is a hot liquid: a hot pepper is not.
func flows(it *larder.Item) bool {
	return it.Class == larder.ClassFat || it.Class == larder.ClassLiquid ||
		it.Class == larder.ClassDairy
}

func isFat(it *larder.Item) bool {
	return it.Class == larder.ClassFat || it.Class == larder.ClassDairy && it.Fat > 10
}

// afterwards are words that cancel an earlier one: scalded and cooled, frozen and thawed.
var afterwards = spelling.Pattern(
	`(?i)\b(?:cooled|cooling|thawed|defrosted|pressed|brewed?|smoked)\b`)

var turnedOff = spelling.Pattern(`(?i)\bnot (?:too |very )?\w+`)

var meltedCooled = spelling.Pattern(`(?i)\bmelted\b.*\bcool(?:ed)?\b`)

// plainNames are the commonest names that no pattern of warmth matches.
// A run that meets no other compiles none.
var plainNames = map[string]bool{"flour": true, "bread flour": true, "strong flour": true,
	"strong white flour": true, "white flour": true, "plain flour": true,
	"all-purpose flour": true, "whole wheat flour": true, "pastry flour": true,
	"Manitoba flour": true, "rye flour": true, "water": true, "milk": true, "whole milk": true,
	"buttermilk": true, "milk powder": true, "cream": true, "sour cream": true, "yogurt": true,
	"butter": true, "unsalted butter": true, "salted butter": true, "shortening": true,
	"lard": true, "margarine": true, "oil": true, "vegetable oil": true, "olive oil": true,
	"egg": true, "eggs": true, "egg yolk": true, "egg yolks": true, "egg white": true,
	"large egg": true, "medium egg": true, "yeast": true, "fresh yeast": true, "dry yeast": true,
	"instant yeast": true, "active dry yeast": true, "sourdough starter": true,
	"sugar": true, "caster sugar": true, "brown sugar": true, "icing sugar": true,
	"powdered sugar": true, "vanilla sugar": true, "pearl sugar": true, "honey": true,
	"malt": true, "salt": true, "fine salt": true, "sea salt": true, "cocoa": true,
	"cinnamon": true, "cardamom": true, "nutmeg": true, "vanilla": true, "saffron": true,
	"raisins": true, "sultanas": true, "currants": true, "almonds": true, "hazelnuts": true,
	"walnuts": true, "lemon zest": true, "orange zest": true, "candied orange peel": true,
	"candied lemon peel": true, "rum": true}

// cool caches names that no pattern matches, mostCool at most.
var (
	cool    sync.Map
	coolLen atomic.Int64
)

const mostCool, longestCool = 2048, 64

// NoWarmth reports whether a name has no word for temperature.
func NoWarmth(name string) bool {
	if _, known := cool.Load(name); known || plainNames[name] {
		return true
	}
	return !isWarm(name)
}

// isWarm tries the patterns, and caches a name that none matches.
func isWarm(name string) bool {
	if warmth.MatchString(name) || meltedCooled.MatchString(name) ||
		turnedOff.MatchString(name) {
		return true
	}
	for _, w := range warmNames {
		if w.word.MatchString(name) {
			return true
		}
	}
	if len(name) <= longestCool && coolLen.Add(1) <= mostCool {
		cool.Store(strings.Clone(name), true)
	}
	return false
}

// WarmthOf is an ingredient's temperature by words of its name or beside its amount; "" for none.
func WarmthOf(it *larder.Item, words string) string {
	if t := warmth.FindString(words); t != "" && !bound.MatchString(words) {
		if _, fault := quantity.Read(t, quantity.Of(quantity.Temperature)); fault == nil {
			return t
		}
	}
	if meltedCooled.MatchString(words) && isFat(it) {
		return goingIn["melted and cooled"]
	}
	if afterwards.MatchString(words) {
		return ""
	}
	words = turnedOff.ReplaceAllString(words, " ")
	for _, w := range warmNames {
		if w.of(it) && w.word.MatchString(words) {
			return w.write
		}
	}
	return ""
}

var parts = spelling.Pattern(`(?i)\s*(?:[,;()]|\band\b|\bbut\b|\bstill\b)\s*`)

// GoesIn is the temperature of an ingredient in words: "cold", "melted, lukewarm". Several words
// give their common range, else their whole span; "" if one is unknown.
func GoesIn(text string) string {
	if t := goingIn[Fold(text)]; t != "" {
		return t
	}
	lo, hi := math.Inf(-1), math.Inf(1) // in common
	from, to := math.Inf(1), math.Inf(-1)
	for _, one := range parts.Split(strings.TrimSpace(text), -1) {
		if one == "" {
			continue
		}
		t := goingIn[Fold(one)]
		q, fault := quantity.Read(t, quantity.Of(quantity.Temperature))
		if t == "" || fault != nil {
			return ""
		}
		lo, hi = max(lo, q.Lo), min(hi, q.Hi)
		from, to = min(from, q.Lo), max(to, q.Hi)
	}
	switch {
	case from > to:
		return ""
	case lo > hi:
		lo, hi = from, to
	}
	return quantity.Plain(lo) + " C to " + quantity.Plain(hi) + " C"
}

// scales are the plausible ranges of a temperature without a unit, by place, in C and F. Ovens and
// fryers: judgement. Others: what dough survives.
var scales = map[string]struct{ c, f [2]float64 }{
	"oven": {[2]float64{120, 270}, [2]float64{275, 525}},
	"fat":  {[2]float64{140, 210}, [2]float64{300, 410}},
	"room": {[2]float64{-25, 45}, [2]float64{60, 115}},
	"core": {[2]float64{60, 105}, [2]float64{160, 215}},
}

// Scaled adds the only plausible scale to a temperature of an oven, hot fat, ambient air or a core:
// "190" or "375 degrees" of an oven. ok is false if the file uses only the other scale.
func Scaled(text, where string, file []byte) (out string, ok bool) {
	m := unscaled.FindStringSubmatch(strings.TrimSpace(text))
	s, known := scales[where]
	if m == nil || !known {
		return "", false
	}
	q, fault := quantity.Read(m[1]+" C", quantity.Of(quantity.Temperature))
	if fault != nil {
		return "", false
	}
	isC, isF := q.Lo >= s.c[0] && q.Lo <= s.c[1], q.Lo >= s.f[0] && q.Lo <= s.f[1]
	c, f := celsius.Match(file), fahrenheit.Match(file)
	switch {
	case isC && !isF && (c || !f):
		return m[1] + " C", true
	case isF && !isC && (f || !c):
		return m[1] + " F", true
	}
	return "", false
}

var (
	unscaled   = spelling.Pattern(`(?i)^(-?\d+(?:\.\d+)?) ?(?:degrees?|deg\.?|°|º)?$`)
	celsius    = spelling.Pattern(`\d ?°? ?C"`)
	fahrenheit = spelling.Pattern(`\d ?°? ?F"`)
)

var warmPlace = spelling.Pattern(`(?i)\b(?:in|at|near|by|an|på|au|dans|al|et|` +
	`in) (?:an?|the|some|your|einem|einer|ett|un|une|et|endroit)? ?(?:nice |very |` +
	`endroit )?(?:warm|warmen|varmt|varm|chaud|tiède|caldo)(?:$|[ ,.])`)

// warmLiquid is a liquid for yeast, not a place: "in warm water".
var warmLiquid = spelling.Pattern(`(?i)\b(?:warm\w*|varm\w*|tièdes?|chaude?s?|cald[oa]) (?:of )?` +
	`(?:water|milk|liquid|cream|butter|juice|cider|beer|oil|wasser|milch|lait|eau|latte|acqua|` +
	`vatten|mjölk|vand|mælk|vann|melk|leche|agua)\b`)

// WarmPlace is the temperature of "in a warm place"; ok is false for other words.
func WarmPlace(words string) (write string, ok bool) {
	if !warmPlace.MatchString(words) || afterwards.MatchString(words) ||
		warmLiquid.MatchString(words) {
		return "", false
	}
	return warmths["warm place"].write, true
}
