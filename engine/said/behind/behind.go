// Package behind reads the words behind an amount clause by clause: "220 g, cold, bashed flat",
// "8 oz, boiled, riced and cooled". It knows no formula. Words that could turn the meaning, or name
// another food, are left to be asked.
package behind

import (
	"fmt"
	"regexp"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/quantity"
	"forebake/engine/said"
	"forebake/engine/said/beside"
	"forebake/engine/said/unread"
	"forebake/engine/spelling"
)

// Said is what words behind an amount come to.
type Said struct {
	Amount string       // the amount alone
	Words  string       // all that stands behind it, as written
	Item   *larder.Item // what the larder knows it as in that state; nil where nothing changes
	Temp   string       // how warm it goes in, by a word that its name's words do not tell
	Untold []string     // clauses from which nothing is reckoned
}

var (
	// sized is the size of a fruit or a root, which is no figure.
	sized   = spelling.Pattern(`(?i)^(\d+|½|1/2) (?:small|medium|large|big)(?:[- ]sized)?\b`)
	clauses = spelling.Pattern(`\s*[,;()]\s*`)
	joined  = spelling.Pattern(`(?i)\s*(?:&|\band then\b|\band\b|\bthen\b|\bbut\b)\s*`)
	// cooked are words of a cook that no figure proves: told, and never counted as one.
	cooked = spelling.Pattern(`(?i)\b(?:pre-?)?(?:boiled|cooked|roasted|roast|baked|fried|` +
		`steamed|simmered|poached|toasted|saut[ée]ed|browned|braised|blanched|grilled|` +
		`microwaved|stewed|` +
		`until (?:just |very )?(?:soft|tender|done|golden|cooked))\b`)
	// drained are words by which water is taken off, and none that dry a thing.
	drained = spelling.Pattern(`(?i)\b(?:squeezed|patted|wrung|drained|pressed|dabbed|wiped) ` +
		`(?:very |well )?dry\b`)
	// harmless are words of a part, or of a quality, that make no other food.
	harmless = spelling.Pattern(`(?i)\b(?:(?:the )?(?:white|green|pale)` +
		`(?: and (?:white|green|pale))? (?:parts?|bits?|tops?|ends?)(?: only)?|leaves only|` +
		`(?:no|without) added (?:sugar|salt)|` +
		`(?:the )?(?:baking|cooking|everyday) (?:kind|type|sort)|for baking|skins? off|` +
		`in (?:a (?:little|bit of|drop of) |some |hot )?` +
		`(?:vegetable |olive |sunflower |rapeseed )?oil)\b`)
	before = spelling.Pattern(`(?i)^(?:(?:in|into|with|over|on|through|for|from|to|of|all|some|` +
		`it|the|its|their|a|an|and|more|extra|little) )+`)
	into = spelling.Pattern(`(?i)\b(?:in|into|with|over|on|through|for|from|to|of) ` +
		`(?:all |some )?(?:of )?(?:the |its |their )?`)
)

// reader reads the clauses of one amount.
type reader struct {
	*larder.Larder
	it     *larder.Item
	name   string
	listed []string
	out    Said
}

// Read parts an amount of an ingredient from the words behind it. listed are the names of its
// part's list, which it may be mixed with; counted says that a bare number counts it. ok is false
// where the words have to be asked.
func Read(l *larder.Larder, it *larder.Item, name, text string, listed []string, counted bool) (
	s Said, ok bool,
) {
	if counted && it.Class != larder.ClassEgg {
		text = sized.ReplaceAllString(strings.TrimSpace(text), "$1")
	}
	amount, words := Parted(it, strings.TrimSpace(text), counted)
	plain := harmless.ReplaceAllString(words, "")
	if amount == "" || unread.Turns(strings.ReplaceAll(plain, "but", "")) {
		return s, false
	}
	r := reader{Larder: l, it: it, name: name, listed: listed}
	r.out.Amount, r.out.Words = amount, words
	if r.state(words) {
		return r.out, true
	}
	for _, clause := range clauses.Split(words, -1) {
		if clause == "" || r.clause(clause) {
			continue
		}
		for _, part := range joined.Split(clause, -1) {
			if part != "" && !r.clause(part) {
				return s, false
			}
		}
	}
	return r.out, true
}

// Parted is the longest amount of an ingredient at the start of a text, by figures or by a
// kitchen's measures, and the words behind it; "" for none.
func Parted(it *larder.Item, text string, counted bool) (amount, words string) {
	if strings.Contains(text, "%") { // "2 % of the dough" is another percent
		return "", ""
	}
	for i := len(text) - 1; i > 0; i-- {
		if !strings.ContainsRune(" ,;(", rune(text[i])) {
			continue
		}
		amount, words = strings.TrimRight(text[:i], " ,;("), strings.Trim(text[i:], " ,;().-")
		if words == "" {
			continue
		}
		bare := said.Bracketed(amount)
		_, fault := quantity.Read(quantity.OfCountry(bare, "us"), quantity.Amounts)
		if fault != nil && counted && text[i] != ' ' {
			_, fault = quantity.Read(bare+" pieces", quantity.Of(quantity.Count))
		}
		_, measure := said.Amount(it, amount, "")
		_, _, egg := said.SizedEggs(amount)
		if fault == nil || measure || egg && it.Class == larder.ClassEgg {
			return amount, words
		}
	}
	return "", ""
}

// state reads words that the larder knows beside the name: the thing as it is, or in a state that
// it has a row of, "boiled" of a potato.
func (r *reader) state(words string) bool {
	whole := r.name + ", " + words
	it, _, known := r.Described(whole)
	if !known || it.Name == larder.PoisonName || r.Unread(whole) != "" {
		return false
	}
	if it != r.it {
		if r.out.Item != nil && r.out.Item != it {
			return false
		}
		r.out.Item = it
	}
	return true
}

// clause reports whether one clause can turn nothing, and notes what it says.
func (r *reader) clause(clause string) bool {
	plain := strings.TrimSpace(r.withoutListed(said.NoSizes(harmless.ReplaceAllString(
		drained.ReplaceAllString(clause, ""), ""))))
	if plain == "" {
		return true
	}
	if t, ok := said.TempIn(clause); ok && !unread.Turns(plain) {
		r.out.Temp = t
		return true
	}
	if t := said.GoesIn(plain); t != "" {
		if said.WarmthOf(r.it, clause) == "" {
			r.out.Temp = t
		}
		return true
	}
	if !strings.ContainsAny(plain, "0123456789") && said.WarmthOf(r.it, plain) != "" &&
		unread.Food(r.Larder, plain) == "" {
		return true
	}
	if r.state(plain) {
		return true
	}
	rest := strings.TrimSpace(cooked.ReplaceAllString(plain, " "))
	if !unread.AskedOf(r.Larder, plain) && !beside.OtherAmount(plain) ||
		rest != plain && !unread.AskedOf(r.Larder, rest) && !beside.OtherAmount(rest) {
		r.out.Untold = append(r.out.Untold, clause)
		return true
	}
	return false
}

// withoutListed drops foods of the same list from words, which name no other: "melted in the milk".
func (r *reader) withoutListed(words string) string {
	for {
		food := Food(r.Larder, words)
		if food == "" || !r.lists(food) {
			return words
		}
		at := spelling.Pattern(into.String() + regexp.QuoteMeta(food) + `\b`).
			FindStringIndex(words)
		if at == nil {
			return words
		}
		words = words[:at[0]] + " " + words[at[1]:]
	}
}

// Food is a food that the larder knows among words, without "in the" before it; "" for none.
func Food(l *larder.Larder, words string) string {
	food := unread.Food(l, words)
	return before.ReplaceAllString(food, "") // "in the milk"
}

// lists reports whether a food stands in the same list.
func (r *reader) lists(food string) bool {
	it, known := r.Find(food)
	for _, name := range r.listed {
		other, _, ok := r.Described(name)
		if known && ok && other == it || strings.HasSuffix(strings.ToLower(name),
			strings.ToLower(food)) {
			return true
		}
	}
	return false
}

var oneOf = spelling.Pattern(`(?i)^(?:1|an?|one) (?:(?:small|medium|large|big|whole) )*(?:\pL+)?` +
	`[,(]* ?\(?(?:about|ca\.?|approx\.?|roughly|weighing|around) (\d[\d.,]* ?(?:g|kg|oz|lbs?))` +
	`\)?(?:$|[,; ](.*)$)`)

// Weighing gives the weight of one thing that is told beside its number: "1 large, about 250 g,
// boiled".
func Weighing(text string) (out string, ok bool) {
	m := oneOf.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return "", false
	}
	if rest := strings.Trim(m[2], " ,;"); rest != "" {
		return m[1] + ", " + rest, true
	}
	return m[1], true
}

const (
	part = `(half|a half|a third|one third|two thirds|a quarter|three quarters|` +
		`1/2|1/3|2/3|1/4|3/4)`
	wash = `(?:glaz\w+|(?:egg[- ]?)?wash\w*|brush\w*|dust\w*|sprinkl\w*|top\w*|finish\w*|` +
		`coat\w*)`
	dough = `(?:dough|mix|batter|bread|buns?)`
)

var (
	doughFirst = spelling.Pattern(`(?i)^(.*\d.*?)[,;]? ?\(?` + part + ` (?:of it )?` +
		`(?:for|in|into|to) (?:the )?` + dough + `[,;]? (?:and )?(?:the )?(?:other )?` +
		`[\pL/\d ]+? (?:for|to|as) (?:the )?` + wash + `[^\d]*$`)
	washFirst = spelling.Pattern(`(?i)^(.*\d.*?)[,;]? ?\(?` + part + ` (?:of it )?` +
		`(?:for|to|as) (?:the )?` + wash + `[,;]? (?:and )?(?:the )?(?:other )?` +
		`(?:rest|remainder|half|[\pL/\d ]+?) (?:for|in|into|to) (?:the )?` + dough + `[^\d]*$`)
	words = spelling.Pattern(`(?i)^(.*?\d(?:[\d./¼½¾ ]*)(?: ?(?:g|kg|ml|l|oz|lbs?|cups?|tbsp|tsp|` +
		`pieces?))?)\b[,;]? ?(.*)$`)
)

// Shared reads an amount of which a share is for the dough and the rest is for a wash or a glaze:
// "1, beaten (half for the dough, half to glaze)". says tells how it was counted.
func Shared(text string) (amount, says string, ok bool) {
	text = strings.TrimSpace(text)
	m, rest := doughFirst.FindStringSubmatch(text), false
	if m == nil {
		if m, rest = washFirst.FindStringSubmatch(text), true; m == nil {
			return "", "", false
		}
	}
	share, known := said.Share(m[2])
	if strings.EqualFold(m[2], "a half") {
		share, known = 0.5, true
	}
	w := words.FindStringSubmatch(m[1])
	if !known || w == nil {
		return "", "", false
	}
	if rest {
		share = 1 - share
	}
	amount = strings.TrimSpace(w[1])
	q, fault := quantity.Read(amount, quantity.Amounts)
	if fault != nil {
		q, fault = quantity.Read(amount+" pieces", quantity.Of(quantity.Count))
	}
	if fault != nil || !q.IsPoint() {
		return "", "", false
	}
	x, _ := quantity.FromBase(q.Lo*share, q.Unit)
	out := fmt.Sprintf("%.4g %s", x, q.Unit)
	if w[2] != "" {
		out += ", " + strings.Trim(w[2], " ,;(")
	}
	return out, fmt.Sprintf("%q is counted as %.4g %s here: the rest goes on the outside", text, x,
		q.Unit), true
}

var figures = spelling.Pattern(`(?i)^((?:(?:(?:finely |freshly )?(?:grated )?(?:zest|rind|` +
	`juice|peel|seeds) )?(?:of|from) )?)(one|two|three|four|five|six|eight|ten|twelve)\b`)

// InFigures writes the number of an amount that is a word in figures: "from one orange".
func InFigures(text string) string {
	m := figures.FindStringSubmatch(strings.TrimSpace(text))
	if m == nil {
		return text
	}
	return m[1] + said.NumberWord(m[2]) + strings.TrimSpace(text)[len(m[0]):]
}
