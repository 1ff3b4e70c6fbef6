package said

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/spelling"
)

var noAmount = spelling.Pattern(`(?i)^(?:(?:enough )?to (?:cover|fill|taste)|(?:per|` +
	`da) (?:coprire|` +
	`ricoprire|decorare|guarnire|spennellare|spolverare)|para (?:cubrir|decorar|barnizar|` +
	`espolvorear|` +
	`polvilhar|pincelar)|pour (?:décorer|dorer|saupoudrer)|zum (?:bestreuen|bestäuben|` +
	`bestreichen)|` +
	`c(?:antidad)?/?n(?:ecesaria)?|(?:as|if|where) (?:needed|required|desired|` +
	`you like|necessary)|some|plenty|lots|a (?:lot|little|bit|few|handful|sprinkle|sprinkling|` +
	`dusting|knob|glug)|` +
	`enough|optional|for [a-z][a-z ,-]*|to (?:serve|dust|sprinkle|coat|brush|finish|decorate|` +
	`glaze|grease|roll)|nach bedarf|etwas|q\.?b\.?|un peu|quelques|lite|lidt|efter smag|efter ` +
	`smak|nach geschmack|al gusto|a piacere)(?:[ ,;(].*)?$`)

// NoAmount reports whether words say that an amount is not weighed: "to
// taste", "for dusting".
func NoAmount(text string) bool {
	return NoFigure(text) && noAmount.MatchString(strings.TrimSpace(text))
}

const unitWords = `kg|g|grams?|oz|ounces?|lbs?|ml|dl|cl|l|tsps?|tbsps?|teaspoons?|tablespoons?|` +
	`cups?|sachets?|pack(?:et|age)?s?|pkgs?|envelopes?|cubes?|pinch(?:es)?|EL|TL|msk|tsk|spsk`

// measured is an amount and words behind it.
var measured = spelling.Pattern(`(?i)^((?:about |ca\.? )?[\d./⁄,¼½¾⅓⅔⅛ -]+` +
	`(?:to [\d./¼½¾⅓⅔⅛ ]+)?` +
	`(?:` + unitWords + `)?)\.?,? ` +
	`\(?((?:\p{L}|-| )+)\)?$`)

// KindBeside reads an amount that says the kind of what is only named,
// "50 g fresh" of yeast: the amount, and the name with its kind.
func KindBeside(l *larder.Larder, name, text string) (amount, whole string, ok bool) {
	if m := ofOne.FindStringSubmatch(strings.TrimSpace(text)); m != nil { // zest of 1/2, of lemon
		if it, ok := l.Find(name + " " + m[1]); ok {
			return m[2], it.Name, true
		}
	}
	text = strings.TrimSpace(text)
	if m := fatBeside.FindStringSubmatch(text); m != nil { // "200 g, 35% fat" of cream
		it, _, ok := l.Described(name + " " + m[2])
		if plain, _ := l.Find(name); ok && it != plain && it.Class == larder.ClassDairy {
			return m[1], it.Name, true
		}
	}
	weighed := figureAside.FindString(text) // "1 packet active dry (2 1/4 tsp)"
	m := measured.FindStringSubmatch(strings.TrimSpace(strings.Replace(text, weighed, "", 1)))
	if m == nil || strings.TrimSpace(m[1]) == "" {
		return "", "", false
	}
	plain, known := l.Find(name)
	_, several := l.Ambiguous(name)
	for _, whole := range []string{m[2] + " " + name, name + " " + m[2]} {
		it, found := l.Find(whole)
		if found && (!known || it != plain || several && !it.Prepared(strings.Fields(m[2]))) {
			if amount = strings.TrimSpace(m[1]); Number(amount) && it.Piece == 0 {
				return text, whole, true // "2 sprigs" of rosemary
			}
			return strings.TrimSpace(amount + weighed), whole, true
		}
	}
	return "", "", false
}

// fatBeside is the fat of a dairy food behind its amount.
var fatBeside = spelling.Pattern(`(?i)^(.*\d ?\pL+)[,;]? ?\(?(\d+(?:[.,]\d+)? ?%)(?: fat)?\)?$`)

// figureAside is the same amount in brackets, in another measure.
var figureAside = spelling.Pattern(` ?\((?:about )?[\d./½¼¾⅓⅔ ]+ ?(?:` + unitWords +
	`)(?: each)?\)`)

var (
	fresh = spelling.Pattern(`(?i)\b(?:würfel|hefewürfel|cubes?|cakes?|blocks?|fresh|compressed|` +
		`frisch\w*|fraîche?|cubetto|panetto|fresc[oa]|färsk|fersk|tuore\w*|live)(?:\b|$|[ ,.)])`)
	dried = spelling.Pattern(`(?i)\b(?:dry|dried|instant|active|sachets?|packets? of dry|` +
		`trocken\w*|sèche|sec|secc[oa]|torr|tør|kuiva\w*)\b`)
)

// FreshYeast is the larder's fresh yeast where a name alone could be of
// others, and a word of the name or the amount says fresh, or the cube
// that only fresh yeast is sold in; "" for others.
func FreshYeast(l *larder.Larder, name, amount string) string {
	a, several := l.Ambiguous(name)
	if !several || !slices.Contains(a.Choices, "fresh yeast") {
		return ""
	}
	words := name + " " + amount
	if !fresh.MatchString(words) || dried.MatchString(words) {
		return ""
	}
	return "fresh yeast"
}

var (
	letter = spelling.Pattern(`^([\d\s./⁄½¼¾⅓⅔⅛-]+?) ?([Tt])\b\.?(.*)$`)
	bigT   = spelling.Pattern(`"[\d ./⁄½¼¾⅓⅔⅛-]+T\b`)
	smallT = spelling.Pattern(`"[\d ./⁄½¼¾⅓⅔⅛-]+t\b`)
	cups   = spelling.Pattern(`"[\d ./⁄½¼¾⅓⅔⅛-]+(?:[Cc]ups?|c)\b`)
)

// Spoons reads the spoons of France, and a T as a tablespoon and a t as
// a teaspoon in a file that has both, or cups beside them. Others stay.
func Spoons(text string, file []byte) (out, says string) {
	text = frenchSpoon.ReplaceAllString(frenchTea.ReplaceAllString(text, "tsp"), "tbsp")
	m := letter.FindStringSubmatch(text)
	if m == nil || !cups.Match(file) && !(bigT.Match(file) && smallT.Match(file)) {
		return text, ""
	}
	spoon := map[string]string{"T": "tbsp", "t": "tsp"}[m[2]]
	out = m[1] + " " + spoon + m[3]
	return out, fmt.Sprintf("%q is read as %s: T is a tablespoon, and t a teaspoon", text, out)
}

var (
	second = spelling.Pattern(`(?i)^(.*?\d.*?|(?:an? )?(?:(?:good|large|small|generous|big) )?` +
		`(?:pinch(?:es)?|dash))[,;]? (?:\(?(?:plus|and|\+|(?:beaten |whisked |` +
		`mixed )(?:with|in)|(?:soaked|steeped|infused|dissolved|bloomed|crumbled) ` +
		`(?:over ?night )?in|with)) ` +
		`([\d./¼½¾⅓⅔⅛ ]+(?:(?:` + unitWords + `)\.? )?(?:of )?)((?:\p{L}|[- ])+)\)?$`)
	soaked = spelling.Pattern(`(?i)^(.*?\d[^,(]*?)[,;]? \(?(?:soaked|plumped|steeped|` +
		`macerated)\b([^\d]*|[^\d]*\d+(?: to \d+)? ?(?:min\w*|h|hours?|days?)\b[^\d]*)$`)
	extra = spelling.Pattern(`(?i)\b(?:more|extra|dust|roll|knead|work|surface|bench|pan|tin)\b`)
)

var ofOne = spelling.Pattern(`(?i)^(?:(?:finely )?grated )?(zest|juice|rind|peel) (?:of|` +
	`from) ([\d./½¼¾ ]+)$`)

var (
	steeped  = spelling.Pattern(`(?i)\b(?:steeped|soaked|infused|bloomed)\b`)
	hotWords = spelling.Pattern(`(?i)\b(?:boiling|boiled|hot|warm|just|over ?night|freshly)\b`)
)

// Second is an amount that names another ingredient with its own: "1, beaten with 1 tbsp milk".
type Second struct{ First, Name, Amount string }

// SecondThing reads an amount that holds another ingredient's too.
func SecondThing(l *larder.Larder, it *larder.Item, text string) (s Second, ok bool) {
	m := second.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil || extra.MatchString(m[3]) {
		return s, false
	}
	s = Second{strings.TrimRight(strings.TrimSpace(m[1]), ",;"), strings.TrimSpace(m[3]),
		strings.TrimSpace(m[2])}
	if it.Class == larder.ClassEgg { // "1 whole egg plus 2 yolks"
		switch singulars(strings.ToLower(s.Name)) {
		case "yolk", "white":
			s.Name = "egg " + s.Name
		}
	}
	if m := steeped.FindStringSubmatch(text); m != nil { // it has cooled when it goes in
		s.Name = strings.TrimSpace(hotWords.ReplaceAllString(s.Name, " "))
	}
	if i := strings.LastIndexByte(s.Amount, ' '); strings.HasSuffix(s.Amount, " of") {
		s.Amount = s.Amount[:i]
	}
	other, _, known := l.Described(s.Name)
	return s, known && other != it
}

// Soaked reads an amount of what is soaked, with no figure of the
// liquid: "100 g, soaked and drained".
func Soaked(text string) (amount string, ok bool) {
	m := soaked.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	return strings.TrimSpace(m[1]), true
}

var (
	eggSize = spelling.Pattern(`(?i)^([\d./ ½]+?) ?(?:pieces?|pcs?|whole|eggs?)?,? ?` +
		`\(?(?:size |größe |gr\.? ?)?(XL|[SML])\)?$`)
	wholeEggs = spelling.Pattern(`(?i)^([\d./ ½]+?) (?:whole )?eggs?$`)
	oneCup    = spelling.Pattern(`^([\d./⁄¼½¾⅓⅔⅛ -]+) ?c(?:\.|\b)((?:,| ).*)?$`)
	purpose   = spelling.Pattern(`(?i)^(.*?\d.*?)[,;]? \(?(?:for|to) ((?:\p{L}|[ -])+)\)?$`)
	moreOf    = spelling.Pattern(`(?i)^(.*?\d.*?)[,;]? \(?(?:plus|and|\+) (?:(?:\d[\d./]* ?\pL*|` +
		`some|a little|extra|more|another|a bit) )+(?:for|to|pour|für|per|till|til)\b[^\d]*$`)
	warmed = spelling.Pattern(`(?i)^(.*?\d.*?)[,;]? \(?(?:@|at|(?:(?:scalded|warmed|heated|` +
		`cooled|cool|melted|boiled|then|and|about) )*(?:to|about)?) ?(\d+(?: ?(?:-|–|` +
		`to) ?\d+)? ?°? ?[CF])\)?$`)
	inTwo = spelling.Pattern(`(?i)^(\d[\d.]* ?(?:g|kg|ml|l)) ?/ ?\d[\d./ ]* ?(?:oz|lbs?|` +
		`fl oz|cups?)\b`)
	bracketed = spelling.Pattern(`^([^()]*\d[^()]*?) ?\(([^()]*\pL[^()]*)\)$`)
	asNote    = spelling.Pattern(`(?i)^(.*?\d[^,(]*?)[,;] ?(?:cut|chopped|torn|broken|sliced|` +
		`divided|rinsed|drained|patted|separated|stripped|taken|straight|out ` +
		`of|from|if|about|approx|such as|in)\b([^\d]*)$`)
)

// prepared takes words off an amount that say how it is prepared or
// what it is for, and names the size of eggs as SizedEggs reads it.
// says tells of what may not go in.
func prepared(it *larder.Item, text string) (out, says string) {
	if it.Class == larder.ClassEgg {
		if m := eggSize.FindStringSubmatch(text); m != nil {
			return m[1] + " " + map[string]string{"S": "small", "M": "medium", "L": "large",
				"XL": "extra large"}[strings.ToUpper(m[2])], ""
		}
		if m := wholeEggs.FindStringSubmatch(text); m != nil {
			return m[1], ""
		}
	}
	if m := oneCup.FindStringSubmatch(text); m != nil {
		return strings.TrimSpace(m[1]) + " cup" + m[2], ""
	}
	if m := moreOf.FindStringSubmatch(text); m != nil {
		return strings.TrimSpace(m[1]),
			fmt.Sprintf("%q is read as %s: the rest is not counted here", text,
				strings.TrimSpace(m[1]))
	}
	if m := inTwo.FindStringSubmatch(text); m != nil {
		return m[1] + text[len(m[0]):], ""
	}
	if m := warmed.FindStringSubmatch(text); m != nil && !bound.MatchString(m[2]) {
		return strings.TrimSpace(m[1]), ""
	}
	if m := bracketed.FindStringSubmatch(text); m != nil && !orElse.MatchString(m[2]) {
		return strings.TrimSpace(m[1]), fmt.Sprintf("%q is read as %s", text,
			strings.TrimSpace(m[1]))
	}
	if m := purpose.FindStringSubmatch(text); m != nil && !orElse.MatchString(m[2]) {
		if extra.MatchString(m[2]) {
			says = fmt.Sprintf("%q is counted whole in this part; write only what goes in", text)
		}
		return strings.TrimSpace(m[1]), says
	}
	if m := asNote.FindStringSubmatch(text); m != nil && !orElse.MatchString(m[2]) {
		return strings.TrimSpace(m[1]), ""
	}
	return text, ""
}

var orElse = spelling.Pattern(`(?i)\b(?:or|plus|each|per|every)\b`)

var wasSoaked = spelling.Pattern(`(?i)\b(?:soaked|plumped|macerated|trempés?|eingeweicht\w*)\b`)

// IsSoaked reports whether words say that a thing was soaked.
func IsSoaked(words string) bool { return wasSoaked.MatchString(words) }

// Number reports whether a text is a plain number and nothing else.
func Number(text string) bool {
	_, err := strconv.ParseFloat(strings.TrimSpace(text), 64)
	return err == nil && strings.Trim(text, "0123456789.- ") == ""
}

var waits = spelling.Pattern(`(?i)\b(?:rest|prove|proof|rise|chill|retard|stand|leave|overnight|` +
	`fridge|freezer|refrigerat\w*)\b`)

// mayHold reports whether a text may hold one of some words, whatever
// the letter case: a cheap look before a pattern that needs one.
func mayHold(text string, words ...string) bool {
	low := strings.ToLower(text)
	return strings.Contains(low, "\u017f") || // a pattern takes it for an s
		slices.ContainsFunc(words, func(w string) bool { return strings.Contains(low, w) })
}

// Waits reports whether words of a step that takes no time tell of a
// wait, which would be lost.
func Waits(words string) bool {
	if !mayHold(words, "re", "pro", "ris", "chil", "stand", "leave", "overnight", "freez",
		"fridg") ||
		!waits.MatchString(words) {
		return false
	}
	if only := onlyIf.FindStringIndex(words); only != nil { // "chill 10 min if it is soft"
		words = strings.TrimSpace(words[:only[0]])
	}
	_, _, timed := TimeIn(words)
	return timed || inCold.MatchString(words)
}

// onlyIf is a clause behind a comma that holds in one case alone.
var onlyIf = spelling.Pattern(`(?i)[,;(] ?[^,;()]*\b(?:if|when needed|should it)\b`)

var inCold = spelling.Pattern(`(?i)\b(?:fridge|freezer|refrigerat\w*|overnight|chill)\b`)
