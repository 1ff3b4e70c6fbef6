package list

import (
	"fmt"
	"slices"
	"strconv"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/spelling"
)

var (
	degrees = spelling.Pattern(`(?i)(?:^|[^\d/⁄.,½¼¾⅓⅔])(\d{2,3}(?:[.,]\d)?|` +
		`\d(?:[.,]\d)?(?: ?[°º˚]))(?:\s*(?:°|º|˚)?\s*(?:-|–|—|to)\s*(\d{1,3}))?\s*(?:°|º|˚|` +
		`deg(?:rees?)?\.?)?\s*(C|F|celsius|centigrade|fahrenheit)\b`)
	letterless = spelling.Pattern(`(?i)(\d{2,3})(?:\s*(?:°|º|˚)?\s*(?:-|–|—|to)\s*(\d{2,3}))?` +
		`\s*(?:(?:°|º|˚)(?:[^CFcf\d]|$)|deg(?:rees?)?\b)`)
	// of a fridge
	coldDegrees = spelling.Pattern(`(?:@|\b[Aa]t) ?(\d)(?:\s*(?:-|–|to)\s*(\d{1,2}))? ?C\b`)
	citrusOf    = spelling.Pattern(`(?i)^(?:the )?(?:finely |freshly )?(?:grated |squeezed )?` +
		`(zest|rind|peel|juice)(?: and (juice|zest))? (?:of|from) (?:the )?(.+?) ` +
		`(?:(?:small|medium|large|un-?waxed|organic|untreated|unsprayed) )*` +
		`(lemon|orange|lime|grapefruit|clementine|mandarin)s?\b`)
	zested = spelling.Pattern(`(?i)^(.+?) (?:(?:small|medium|large|unwaxed|organic) )*` +
		`(lemon|orange|lime)s?,? (?:finely )?(zested|zest only|zest|grated rind|juiced|` +
		`juice only)$`)
	yolks   = spelling.Pattern(`(?i)^(?:(?:large|medium|egg) )*(yolk|white)(s?)$`)
	eggSize = spelling.Pattern(`(?i)^(extra[- ]large|x-?large|xl|jumbo|large|medium|small|` +
		`size [smlx]+)\s+(?:free-range |fresh |organic )?eggs?$`)
	sizedAt = spelling.Pattern(`(?i)^(?:size )?(?:(x?[sml])|(small|medium|large))$`)
)

// asForms are words of preparation that the formula's "as" reads, and
// others that say how a thing stands: melted fat weighs on the dough, and
// chopped nuts on the choking hazard.
var asForms = []string{"melted", "softened", "finely chopped", "roughly chopped", "chopped",
	"finely ground", "ground", "cubed", "diced", "flaked", "sliced", "slivered", "whole", "beaten",
	"lightly beaten", "halved", "crushed", "grated", "finely grated", "sifted"}

// stateWords are words in a name that the larder knows the thing by,
// "melted butter", and that say how warm it is or how it stands.
var stateWords = strings.Fields("lukewarm tepid warm hot boiling melted softened")

// descriptions are words before a name that do not change what the thing is
// made of.
var descriptions = []string{"warm", "lukewarm", "tepid", "hot", "cold", "ice-cold",
	"iced", "cooled",
	"chilled", "softened", "soft", "melted", "sifted", "packed", "firmly packed", "lightly packed",
	"finely", "freshly", "roughly", "coarsely", "grated", "chopped", "sliced", "diced", "crushed",
	"beaten", "lightly beaten", "new", "lightly", "toasted", "good-quality", "good", "ripe",
	"unsifted",
	"organic", "free-range", "room-temperature", "room temperature", "cubed", "fresh", "fine",
	"very", "well", "level", "of", "the", "whole", "granulated", "drained", "unwaxed"}

var boilingWord = spelling.Pattern(`(?i)^boiling$`)

// silent are descriptions that a formula says nothing of.
var silent = strings.Split("of;the;very;well;good;level;fine;ripe;organic;free-range;good-quality;"+
	"fresh;sifted;unsifted;finely;freshly;granulated;unwaxed", ";")

// citrus reads the juice or the zest of so many fruits. 48 g is the juice
// of a lemon (SR 28 NDB 09152), 2 to 3 tsp of 6 g a tbsp its zest (SR 28
// NDB 09156); of other juices from memory.
func (r Reader) citrus(l *Line, text string) bool {
	count, fruit, what := "", "", ""
	if m := citrusOf.FindStringSubmatch(text); m != nil {
		count, fruit, what = m[3], m[4], m[1]
		if m[2] != "" {
			l.says("the " + m[2] + " is a line of its own: weigh it too")
		}
	} else if m := zested.FindStringSubmatch(text); m != nil {
		count, fruit, what = m[1], m[2], m[3]
	} else {
		return false
	}
	fruit = strings.ToLower(fruit)
	n, ok := plainNumber(count)
	l.Amount = "?"
	if strings.HasPrefix(strings.ToLower(what), "ju") {
		l.Name = fruit + " juice"
		switch {
		case ok && fruit == "lemon":
			l.Amount = quantity.Plain(48*n) + " g"
			l.says("the juice of a lemon is some 48 g: weigh it")
		case ok && fruit == "orange":
			l.Amount = quantity.Plain(60*n) + " g to " + quantity.Plain(110*n) + " g"
			l.says("the juice of an orange, memory: weigh it")
		case ok && fruit == "lime":
			l.Amount = quantity.Plain(20*n) + " g to " + quantity.Plain(45*n) + " g"
			l.says("the juice of a lime, memory: weigh it")
		default:
			l.says(text + ": weigh it")
		}
	} else {
		l.Name = fruit + " zest"
		if ok {
			l.Amount = quantity.Plain(3*n) + " g to " + quantity.Plain(6*n) + " g"
		}
		l.says(text + ": weigh it")
	}
	r.ask(l)
	return true
}

// named reads the name of the thing and what is said of it behind a comma.
func (r Reader) named(l *Line, text string) {
	text = strings.Trim(text, " ,.;")
	text = strings.TrimPrefix(text, "of ")
	name, after, _ := strings.Cut(text, ",")
	if before, second, found := strings.Cut(name, " or "); found {
		l.says("or " + strings.TrimSpace(second) + "?")
		name = before
	}
	if m := yolks.FindStringSubmatch(strings.TrimSpace(name)); m != nil {
		name = "egg " + strings.ToLower(m[1]+m[2])
	}
	name = r.egg(l, strings.TrimSpace(name))
	var prepared []string
	if found, words, ok := r.resolve(name); ok {
		name, prepared = found, words
	}
	for _, w := range strings.Fields(strings.ToLower(name)) {
		if slices.Contains(stateWords, w) && !slices.Contains(prepared, w) {
			prepared = append(prepared, w)
		}
	}
	l.Name = name
	r.ask(l)
	for _, w := range prepared {
		r.describe(l, w)
	}
	for _, s := range strings.Split(after, ",") {
		r.describe(l, strings.TrimSpace(s))
	}
}

// egg names an egg by its size and the kitchen's country. A large egg is 50
// g in the US and 60 g in the EU and the UK.
func (r Reader) egg(l *Line, name string) string {
	m := eggSize.FindStringSubmatch(name)
	if m == nil {
		return name
	}
	size := strings.ToLower(m[1])
	switch {
	case strings.HasPrefix(size, "size"):
		return name
	case r.Kitchen == UK && (size == "large" || size == "medium"):
		named := map[string]string{"large": "size L egg", "medium": "size M egg"}[size]
		l.says("read as a UK " + size + " egg, by the other words here")
		return named
	case size == "large" && r.Kitchen == Unknown:
		l.says("large: read as the US one of 50 g; one of the EU or the UK is \"size L egg\", 60 g")
	}
	if size == "large" {
		return "egg"
	}
	return strings.NewReplacer("x-large", "extra large", "xlarge", "extra large", "xl",
		"extra large",
		"extra-large", "extra large").Replace(size) + " egg"
}

// resolve finds the larder's name in words, some of which only describe the
// thing. prepared are those words. A name that the larder is sure of goes
// before one that it asks about.
func (r Reader) resolve(name string) (found string, prepared []string, ok bool) {
	name = strings.ReplaceAll(name, "A.P.", "AP")
	if !r.sure(name) {
		if turned := r.turnedRound(strings.Fields(name)); turned != "" {
			return turned, nil, true
		}
	}
	for _, known := range []func(string) bool{r.sure, r.knows} {
		words, prepared := strings.Fields(name), []string(nil)
		if known(name) {
			return name, nil, true
		}
		for len(words) > 1 {
			n := 0
			for _, k := range []int{2, 1} {
				if k < len(words) && describes(strings.Join(words[:k], " ")) {
					n = k
					break
				}
			}
			if n == 0 {
				break
			}
			prepared = append(prepared, strings.Join(words[:n], " "))
			words = words[n:]
			if rest := strings.Join(words, " "); known(rest) {
				return rest, prepared, true
			}
		}
	}
	return "", nil, false
}

// turnedRound is the name of the larder that holds the same words in
// another order, "flour T45", "dry active yeast"; "" for none.
func (r Reader) turnedRound(words []string) string {
	orders := [][]int{{1, 0}}
	switch len(words) {
	case 3:
		orders = [][]int{{1, 0, 2}, {1, 2, 0}, {2, 0, 1}, {0, 2, 1}, {2, 1, 0}}
	case 2:
	default:
		return ""
	}
	for _, order := range orders {
		var name []string
		for _, i := range order {
			name = append(name, words[i])
		}
		if r.sure(strings.Join(name, " ")) {
			return strings.Join(name, " ")
		}
	}
	return ""
}

func describes(words string) bool {
	return slices.Contains(descriptions, strings.ToLower(words)) || boilingWord.MatchString(words)
}

// sure reports whether the larder has the name itself.
func (r Reader) sure(name string) bool {
	_, ok := r.Larder.Find(name)
	return ok
}

func (r Reader) knows(name string) bool {
	_, ok := r.item(name)
	if !ok {
		_, ok = r.Larder.Ambiguous(name)
	}
	return ok
}

// item is what a formula's reader takes a name for.
func (r Reader) item(name string) (*larder.Item, bool) {
	it, _, ok := said.Ingredient(r.Larder, name, string(r.Kitchen))
	return it, ok
}

// ask says what a name may mean, where the larder is not sure of it or does
// not know it. Of a word that a formula's reader would refuse, it takes the
// first choice and says so.
func (r Reader) ask(l *Line) {
	a, ambiguous := r.Larder.Ambiguous(l.Name)
	_, known := r.item(l.Name)
	switch {
	case known && ambiguous && len(a.Choices) > 0 && a.Taken != "":
		l.says(fmt.Sprintf("read as %s; it may be %s", a.Taken,
			strings.Join(without(a.Choices, a.Taken), ", ")))
	case known:
	case ambiguous && len(a.Choices) > 0:
		taken := a.Choices[0]
		if r.manyGrams(l) && slices.Contains(a.Choices, "fresh yeast") {
			taken = "fresh yeast"
		}
		if _, ok := r.item(taken); !ok {
			l.Unknown = unknown
			return
		}
		l.says(fmt.Sprintf("%s can mean several things: read as %s; it may be %s",
			strconv.Quote(l.Name),
			taken, strings.Join(without(a.Choices, taken), ", ")))
		l.Name = taken
	default:
		l.Unknown = unknown
	}
}

// unknown stands for why a name is not known until the line is read: near
// names take long to find.
const unknown = "unknown"

// freshFrom is the least weight of a yeast that is read as fresh, g:
// packets of dry yeast hold 7 to 11 g, cubes of fresh 25 to 50 g
// (common practice).
const freshFrom = 15

func (r Reader) manyGrams(l *Line) bool {
	q, fault := quantity.Read(l.Amount, quantity.Of(quantity.Mass))
	return fault == nil && q.Hi >= freshFrom
}

func without(list []string, word string) []string {
	return slices.DeleteFunc(slices.Clone(list), func(s string) bool { return s == word })
}

// describe reads what is said of an ingredient: a temperature, a form,
// or words.
func (r Reader) describe(l *Line, text string) {
	text = strings.Trim(text, " .")
	lower := strings.ToLower(text)
	warmth := said.GoingIn(strings.NewReplacer("-", " ", "at ", "", "just ", "").Replace(lower))
	degrees, isWarm := r.Temperature(text)
	switch {
	case text == "" || slices.Contains(silent, lower):
	case isWarm:
		l.put("temp", degrees)
	case strings.Contains(lower, "lukewarm"), strings.Contains(lower, "tepid"):
		l.put("temp", "35 to 40 C")
		l.says(text + ": read as 35 to 40 C")
	case boilingWord.MatchString(lower):
		l.put("temp", "95 to 100 C")
		l.says("boiling: how hot is it when it goes in? read as 95 to 100 C")
	case slices.Contains(asForms, lower):
		l.put("as", lower)
	case strings.Contains(lower, "warm") || lower == "hot" || strings.HasPrefix(lower, "scalded"):
		l.put("note", text)
		l.says(text + ": how warm? add temp = \"40 C\"")
	case strings.Contains(lower, "divided"):
		l.put("note", text)
		l.says("divided: say what goes in later, with reserve")
	case strings.Contains(lower, "optional"):
		l.put("note", text)
		l.says("optional: read as taken")
	case warmth != "":
		l.put("temp", strings.ReplaceAll(warmth, " C to", " to"))
		l.says(text + ": read as " + strings.ReplaceAll(warmth, " C to", " to"))
	case strings.HasPrefix(lower, "melted") || strings.HasPrefix(lower, "softened"):
		form, rest, _ := strings.Cut(lower, " ")
		l.put("as", strings.Trim(form, ","))
		if rest != "" {
			l.put("note", text)
		}
	default:
		l.put("note", text)
	}
}

// insideParens reads what stands in brackets: the same amount again, the
// kind, or words.
func (r Reader) insideParens(l *Line, text string) {
	m := sizedAt.FindStringSubmatch(text)
	if m != nil && strings.HasPrefix(strings.ToLower(l.Name), "egg") {
		letter := strings.ToUpper(m[1])
		if letter == "" {
			letter = strings.ToUpper(m[2][:1])
		}
		if sized := "size " + letter + " egg"; r.sure(sized) && (m[1] != "" || r.Kitchen != US) {
			l.Name = sized
			return
		}
	}
	words := strings.Fields(l.Name)
	if kind := text + " " + words[len(words)-1]; numberAlone.MatchString(text) && r.sure(kind) {
		l.says("written " + l.Name + " too")
		l.Name = kind // "plain flour (Type 550)"
		return
	}
	if _, fault := quantity.Read(strings.TrimPrefix(text, "about "), allAmounts); fault == nil {
		if !strings.Contains(strings.Join(l.Says, " "), "written ") {
			l.says("written " + text + " too")
		}
		return
	}
	if _, isWarm := r.Temperature(text); numberAlone.MatchString(text) && !isWarm {
		l.says("written " + text + " too")
		return
	}
	for _, s := range strings.Split(text, ",") {
		r.describe(l, strings.TrimSpace(s))
	}
}

// Temperature reads the first temperature of a text. Degrees without a
// letter are of the reader's scale, or of an oven by their size: none bakes
// bread at 300 C, or at 260 F.
func (r Reader) Temperature(text string) (string, bool) {
	m := degrees.FindStringSubmatch(text)
	letter := ""
	if m != nil {
		letter = strings.ToUpper(m[3][:1])
	} else if m = letterless.FindStringSubmatch(text); m != nil {
		letter = r.Scale
		if hot := len(m[1]) == 3; hot && m[1] >= "300" {
			letter = "F"
		} else if hot && m[1] >= "150" && m[1] <= "260" {
			letter = "C" // 260 F is 127 C, and bakes no bread
		}
	}
	if m == nil {
		if s := coldDegrees.FindStringSubmatch(text); s != nil {
			m, letter = s, "C"
		}
	}
	if m == nil || letter == "" {
		return "", false
	}
	number := strings.TrimRight(m[1], " °º˚")
	if m[2] != "" {
		number += " to " + m[2]
	}
	out := number + " " + letter
	_, fault := quantity.Read(out, quantity.Of(quantity.Temperature))
	return out, fault == nil
}

// Letterless finds degrees that say neither C nor F: "350°".
func Letterless(text string) (string, bool) {
	if degrees.MatchString(text) {
		return "", false
	}
	found := strings.TrimSpace(letterless.FindString(text))
	return found, found != ""
}

var (
	inC = spelling.Pattern(`(?i)(?:\d\d|\d ?[°º˚])\s*(?:°|º|˚|deg(?:rees?)?)?\s*(?:C|celsius|` +
		`centigrade)\b`)
	inF    = spelling.Pattern(`(?i)\d\d\s*(?:°|º|˚|deg(?:rees?)?)?\s*(?:F|fahrenheit)\b`)
	metric = spelling.Pattern(`(?i)\d\s*(?:g|kg|ml|dl|cl|grams?)\b`)
	cups   = spelling.Pattern(`(?i)\b(?:cups?|sticks?|all-purpose|ounces|pounds)\b`)
)

// ScaleOf is the letter that degrees without one mean in a text: the only
// one that stands there, else by its measures. "" where that does not tell.
func ScaleOf(text string) string {
	isC, isF := inC.MatchString(text), inF.MatchString(text)
	inUS, inMetric := cups.MatchString(text), metric.MatchString(text)
	switch {
	case isC != isF && isC:
		return "C"
	case isC != isF:
		return "F"
	case isC:
		return ""
	case inUS && !inMetric:
		return "F"
	case inMetric && !inUS:
		return "C"
	}
	return ""
}

// Item is what a formula's reader takes a name for.
func (r Reader) Item(name string) (*larder.Item, bool) { return r.item(name) }
