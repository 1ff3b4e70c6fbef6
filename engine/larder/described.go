package larder

import (
	"math"
	"slices"
	"strconv"
	"strings"
	"sync"

	"forebake/engine/larder/internal/names"
	"forebake/engine/spelling"
)

const (
	dryBelow = 20 // g of water per 100 g
	wetFrom  = 40
)

func always(*Item) bool      { return true }
func dry(it *Item) bool      { return it.Water < dryBelow }
func wet(it *Item) bool      { return it.Water >= wetFrom && !it.Is(Cooked) }
func butFlour(it *Item) bool { return it.Flour == 0 }
func ofFruit(it *Item) bool {
	return it.Class == ClassFruit || it.Class == ClassOther && it.Control == ""
}
func unsalted(it *Item) bool  { return it.Salt == 0 }
func ofMilkFat(it *Item) bool { return it.Class == ClassFat && it.Is(MilkFat) }
func osmotolerant(it *Item) bool {
	return it.Yeast > 0 && strings.Contains(it.Name, "osmotolerant")
}
func ofColour(it *Item) bool    { return it.Name == "food colouring" }
func ofPotato(it *Item) bool    { return strings.Contains(it.Name, "potato") && it.Flour == 0 }
func littleSugar(it *Item) bool { return it.Sugars < dryBelow }

// fillers are words without a meaning of their own.
const fillers = " and then at room temperature the a in into from fridge to of or but not until " +
	"slightly if needed with for plus extra dusting rolling greasing work surface tin pan bowl " +
	"brushing temp temperature temperatura ambiente more little glaze serve decorate sprinkle " +
	"finish top kneading taste free straight sprinkling coating topping garnish drizzling " +
	"filling frying needed as when over your hand use time an each about approx just more some " +
	"optional i it is blood finger "

func filler(word string) bool { return strings.Contains(fillers, " "+word+" ") }

// leaves reports whether a word leaves the make-up of an item unchanged.
func leaves(word string, it *Item) bool {
	if filler(word) {
		return true
	}
	if word == "fat" {
		return it == nil || it.fatIs(strconv.FormatFloat(it.Fat, 'f', 2, 64))
	}
	if pct, is := strings.CutSuffix(word, "%"); word == "protein" || is {
		return it == nil || it.Flour > 0 || it.fatIs(pct) // protein of a flour, from its label
	}
	test := plainWords()[word]
	if test == nil {
		test = plainWords()[singular(word)]
	}
	return test != nil && (it == nil || test(it))
}

// fatIs reports whether a dairy food or a fat holds about so much fat, %: "butter 82%".
func (it *Item) fatIs(pct string) bool {
	x, err := strconv.ParseFloat(pct, 64)
	near := 1.0 // of milk
	switch {
	case it.Fat > 60: // of butter
		near = 2
	case it.Fat > 10: // of cream, whose makes differ
		near = 4.5
	}
	return err == nil && (it.Class == ClassDairy || it.Is(MilkFat)) && math.Abs(x-it.Fat) <= near
}

var (
	ofSome = spelling.Pattern(`^(?:the )?(?:(?:finely|freshly) )?(?:(?:grated|pared) )?` +
		`(zest|rind|juice|peel|seeds|yolks?|whites?) (?:of|from) (?:the )?` +
		`(?:(?:\d+(?:/\d+)?|[½¼¾]|an?|one|two|three|half an?|half) )?(.+)$`)
	leadingCount = spelling.Pattern(`^\d+ `)
	inRound      = spelling.Pattern(`\(([^()]*)\)`)

	inches        = spelling.Pattern(`[\d/½¼¾.]+[- ]?(?:inch(?:es)?|cm|mm|in)\b`)
	partedPercent = spelling.Pattern(` +%`) // "35 %" is one word
	leadingKind   = spelling.Pattern(`^(flour|yeast|sugar|salt|butter|cream|oil|eggs?|mehl) (.+)$`)
)

// Described finds the item of a name with words of preparation, said: "unsalted butter, softened",
// "chopped walnuts", "zest of 1 orange". It removes only words that leave the make-up unchanged.
// Words in brackets or after a comma that are in no name of the larder are passed over; see Unread.
// Any other unknown word makes it fail.
func (l *Larder) Described(name string) (it *Item, said []string, ok bool) {
	if it, said, _, ok = l.described(name); ok {
		return it, said, true
	}
	if it, _ = l.inWords(name); it != nil {
		return it, nil, true
	}
	head, _, _ := strings.Cut(inRound.ReplaceAllString(name, " "), ",")
	if Poison(head) == "" {
		return nil, nil, false
	}
	it, ok = l.Find(PoisonName) // so that it is judged
	return it, nil, ok
}

// Unread are the words of a name that Described passes over: "top grade" of "wheat flour, top
// grade"; "" for none.
func (l *Larder) Unread(name string) string {
	_, _, unread, _ := l.described(name)
	return unread
}

func (l *Larder) described(name string) (it *Item, said []string, unread string, ok bool) {
	d := l.descriptions.Get(name, func(name string) (d description) {
		d.it, d.said, d.unread, d.ok = l.describe(name)
		d.said = slices.Clip(d.said) // it is kept: what a reader adds goes elsewhere
		return d
	})
	return d.it, d.said, d.unread, d.ok
}

// description is what described gives.
type description struct {
	it     *Item
	said   []string
	unread string
	ok     bool
}

func (l *Larder) describe(name string) (it *Item, said []string, unread string, ok bool) {
	if it, ok = l.Find(name); ok {
		return it, nil, "", true
	}
	name = inPlain(name)
	if m := makers.FindString(name); m != "" && !l.tells(fold(m)) { // "King's bread flour"
		if it, said, unread, ok = l.described(name[len(m):]); ok {
			return it, said, strings.TrimSpace(m + unread), true
		}
	}
	if it, said, unread, ok = l.stateOf(name); ok {
		return it, said, unread, true
	}
	if it, said, ok = l.byFigure(name); ok {
		return it, said, "", true
	}
	aside := ""
	var also []*Item // another name of it in brackets: "plum butter (Powidl)"
	head := inRound.ReplaceAllStringFunc(inches.ReplaceAllString(name, " "),
		func(s string) string {
			if other, known := l.Find(strings.Trim(s, "() ")); known {
				also = append(also, other)
			} else {
				aside += " " + strings.ReplaceAll(strings.Trim(s, "()"), ",", " ")
			}
			return " "
		})
	head, after, _ := strings.Cut(partedPercent.ReplaceAllString(head, "%"), ",")
	aside = fold(strings.ReplaceAll(after, ",", " ") + partedPercent.ReplaceAllString(aside, "%"))
	head = leadingCount.ReplaceAllString(fold(head), "")
	if m := ofSome.FindStringSubmatch(head); m != nil {
		head = singularLast(m[2]) + " " + m[1]
	}
	it, ok = l.turned(head, aside) // "potatoes, boiled and mashed" are boiled potatoes
	if !ok {
		it, said, ok = l.stripped(strings.Fields(head))
		if m := leadingKind.FindStringSubmatch(head); !ok && m != nil { // "flour T45"
			it, said, ok = l.stripped(strings.Fields(m[2] + " " + m[1]))
		}
		plain := aside
		if ok && it.Flour > 0 { // "bread flour (high gluten)"
			plain = strongWords.ReplaceAllString(aside, "")
		}
		if ok {
			plain = it.withoutOwnShare(plain)
		}
		for _, w := range strings.Fields(plain) {
			if ok && !leaves(w, it) {
				ok = !l.tells(w)
				unread = strings.TrimSpace(unread + " " + w)
			}
		}
	}
	if _, several := l.Ambiguous(head); !ok && several && len(also) == 1 && aside == "" {
		return also[0], nil, "", Harmless(name, also[0]) == "" // "curd (plain yoghurt)"
	}
	if !ok || slices.ContainsFunc(also, func(other *Item) bool { return other != it }) ||
		unread != "" && Harmless(name, it) != "" {
		return nil, nil, "", false
	}
	if aside != "" {
		said = append(said, aside)
	}
	if unread == "" && ok && it.withoutOwnShare(aside) != aside {
		unread = aside
	}
	if unread != "" {
		unread = aside
	}
	return it, said, unread, true
}

// strongWords call a flour strong, and name no added gluten.
var strongWords = spelling.Pattern(`\b(?:high|strong)[ -](?:gluten|protein)\b`)

// makers match who made a thing: "King's bread flour".
var makers = spelling.Pattern(`^\p{Lu}\p{L}+['’]s `)

// others are words that change the meaning of the next word, and that are in no larder name.
const others = " no non not without ohne sans senza sin utan uten less free frei vegan plant " +
	"based style like type substitute substituted alternative replacement replacer mock " +
	"artificial instead xylitol erythritol stevia allulose splenda sweetener sheeps sheep ewes " +
	"ewe cows camels camel mares mare buffalos goats insect cricket acorn pea fava mix cured "

func turnsNext(word string) bool { return strings.Contains(others, " "+word+" ") }

// tells reports whether a folded word may mean another ingredient: it is in a larder name or an
// ambiguous one, a figure, or one of others.
func (l *Larder) tells(word string) bool {
	word = strings.TrimSpace(word)
	if strings.ContainsAny(word, digits+"%&/") || turnsNext(word) ||
		heldWords()[word] || heldWords()[singular(word)] {
		return true
	}
	return slices.ContainsFunc(l.added, func(it *Item) bool { return it.speaksOf([]string{word}) })
}

// heldWords are the words of all names of the shipped larder, folded.
var heldWords = sync.OnceValue(func() map[string]bool {
	out := make(map[string]bool, len(index))
	hold := func(name string) {
		for _, w := range strings.FieldsFunc(name, func(c rune) bool {
			return strings.ContainsRune(" ,()", c)
		}) {
			out[w], out[singular(w)] = true, true
		}
	}
	for i := range index {
		hold(index[i].key)
	}
	for key := range ambiguousByKey() {
		hold(key)
	}
	return out
})

// turned finds a name whose kind stands behind a comma, where the other words there leave it as it
// is.
func (l *Larder) turned(head, aside string) (*Item, bool) {
	if kind, rest, more := strings.Cut(head, " "); more && plainWords()[kind] != nil {
		// "russet potatoes, boiled and riced": a kind that leaves it as it is
		if it, ok := l.turned(rest, aside); ok && leaves(kind, it) {
			return it, true
		}
	}
	words := strings.Fields(aside)
	for i, w := range words {
		for _, name := range []string{
			aside + " " + head, head + " " + aside, w + " " + head, head + " " + w,
			w + " di " + head, w + " de " + head, w + " d'" + head, // "limone, scorza"
		} {
			it, ok := l.Find(name)
			for k, other := range words {
				if strings.Contains(name, aside) && !strings.Contains(aside, "soaked") {
					break // all of them
				}
				ok = ok && (k == i || filler(other) || plainWords()[other] != nil &&
					other != "soaked")
			}
			if ok {
				return it, true
			}
		}
	}
	return nil, false
}

func fold(text string) string { return string(names.Append(nil, text)) }

func foldedWords(text string) []string { return strings.Fields(fold(text)) }

// singularLast is a name with its last word in the singular: the zest of lemons is lemon zest.
func singularLast(name string) string {
	typed := strings.Fields(name)
	if n := len(typed); n > 0 {
		typed[n-1] = singular(typed[n-1])
	}
	return strings.Join(typed, " ")
}

// stripped takes words of preparation off the start and the end of a name until the larder knows
// the rest.
func (l *Larder) stripped(typed []string) (*Item, []string, bool) {
	for from := range typed {
		if from > 0 && !leaves(typed[from-1], nil) {
			break
		}
		for to := len(typed); to > from; to-- {
			if to < len(typed) && !leaves(typed[to], nil) {
				break
			}
			off := slices.Concat(typed[:from], typed[to:])
			it, ok := l.Find(strings.Join(typed[from:to], " "))
			if !ok || slices.ContainsFunc(off, func(w string) bool { return !leaves(w, it) }) {
				continue
			}
			if len(off) == 0 {
				return it, nil, true
			}
			return it, []string{strings.Join(off, " ")}, true
		}
	}
	return nil, nil, false
}

// Prepared reports whether words beside an amount only say how the item is prepared.
func (it *Item) Prepared(words []string) bool {
	for _, w := range words {
		for _, one := range foldedWords(w) {
			if !leaves(one, it) || strings.HasSuffix(w, "%") {
				return false
			}
		}
	}
	return true
}
