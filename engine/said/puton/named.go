package puton

import (
	"slices"
	"strings"

	"forebake/engine/larder"
	"forebake/engine/said"
	"forebake/engine/said/unread"
	"forebake/engine/spelling"
)

// Told is a part that words name, with how much of it goes on, and how.
type Told struct {
	Name  string
	Share string // "a third", as written; "" for all of it
	Each  string // how much on each piece, as written
	How   string // words beside it that change no figure
}

var (
	share = spelling.Pattern(`(?i)^(?:about |roughly )?((?:an? |one |two |three )?(?:half|halves|` +
		`thirds?|quarters?|fifths?|eighths?|sixths?)|[123]/[2-8]|½|⅓|⅔|¼|¾|some|most|(?:the )?` +
		`(?:rest|remainder|other half|remaining(?: half)?))(?: of)?(?: the| it)? `)
	// before are words before a thing that say nothing of what it is.
	before = spelling.Pattern(`(?i)^(?:(?:with|in|into|some|the|an?|all|of|more|extra|plenty|` +
		`generously|lightly|liberally|thinly|evenly|again|each|them|it|on|over|then|and|tops?|` +
		`(?:generous|thick|thin|good|even|light|heaped|little|bit|coat|coating|layer|spoonful|` +
		`teaspoonful|tablespoonful|blob|dollop|swirl|drizzle|dusting|sprinkling|` +
		`(?:table|tea|dessert)?spoons?)|hot|warm|cold|` +
		`cool|chilled|cooled|melted|soft|softened|sieved|strained|reserved|prepared|,) ?)*$`)
	andRest = spelling.Pattern(`(?i)\bthe (?:rest|remainder|other half)\b`)
	oneEach = spelling.Pattern(`(?i)[,;]? ?\(?\b((?:about |around )?\d[\d.,/]*(?: \d/\d)?` +
		`(?: ?(?:-|–|to) ?\d[\d.,/]*)? ?(?:g|grams?|oz|ml|tsp|tbsp|teaspoons?|tablespoons?)` +
		`(?: (?:of it|in|on|to|for|into))* (?:each|apiece|(?:an?|per|every) \pL{3,})(?: \pL+)?)\)?`)
)

// places are where a thing goes on, or stays off, and when: they change no figure.
var places = []*spelling.Words{
	spelling.Pattern(`(?i)\b(?:but )?(?:not|never|avoiding|keeping off|without) ` +
		`(?:touching |over |on |onto |to |up to )?(?:the )?(?:cut |very |outer )?` +
		`(?:edges?|sides?|faces?|seams?|layers|paper|tins?|tops?|bottoms?|ends?|borders?)\b`),
	spelling.Pattern(`(?i)\bonly (?:on |over )?(?:the )?(?:cut )?(?:tops?|edges?|sides?|centres?|` +
		`middles?)\b|\b(?:tops?|edges?|sides?) only\b`),
	spelling.Pattern(`(?i)\b(?:over|on|onto|across|to|along) (?:the )?(?:bottom |top |lower |` +
		`upper |middle )?(?:(?:one |a |two |three )?(?:half|thirds?|quarters?)|2/3|1/3|1/2)` +
		`(?: of (?:the |it|each)(?: ?\pL+)?)?`),
	spelling.Pattern(`(?i)\b(?:while|when|whilst|once|as soon as|until)(?: (?:it|they|the \pL+)` +
		`(?: is| are|'s|'re)?)?(?: still| just| completely| nearly| almost| come)? (?:hot|warm|` +
		`cold|cool(?:ed)?|lukewarm|tepid|out|baked|set|fried)\b(?: (?:from|of) the oven)?`),
	spelling.Pattern(`(?i)\b(?:(?:down|along|in|into|on|onto|over|across|at) the ` +
		`(?:middle|cent\pL+|length|tops?|edges?|sides?|ends?)(?: of (?:each|it|the \pL+))?|` +
		`(?:on|onto|over|into|in|of) each)` +
		`(?: (?:one|piece|bun|roll|ball|loaf|round|disc|well|hollow))?\b`),
	spelling.Pattern(`(?i)\b(?:straight|hot|warm|fresh) (?:from|out of) the (?:oven|fryer|fat)\b`),
	spelling.Pattern(`(?i)\b(?:leaving|leave|up to|to within) (?:about |an? )?[\d./½¼¾]+[ -]?` +
		`(?:cm|mm|inch(?:es)?|in|")(?:[^\pL]|$)`),
	// a spoon that no figure tells is as the baker takes it, of all that there is
	spelling.Pattern(`(?i)\b(?:an? |one |some )?(?:(?:good|heaped|heaping|generous|rounded|level|` +
		`small|big|little|thick|thin) )*(?:(?:(?:table|tea|dessert)? ?spoon(?:ful)?s?|blobs?|` +
		`dollops?|pieces?|squares?|lines?|strips?|bit|pat|knob) )?(?:each|apiece|per \pL{3,})\b`),
	spelling.Pattern(`(?i)\b(?:envelope|book|letter|swiss roll|jelly roll|parcel)[ -](?:style|` +
		`fashion)\b`),
	spelling.Pattern(`(?i)\b(?:twice|two coats|2 coats|three times|again|once more|once)\b` +
		`(?:,? (?:\d{1,2}|five|ten) min(?:ute)?s? apart)?`),
	spelling.Pattern(`(?i)\buntil (?:it|they) (?:takes?|absorbs?|holds?) no more\b|` +
		`\buntil (?:saturated|soaked through|absorbed)\b`),
}

// Plain drops where, when and how often a thing is put on, which change no figure: "melted butter
// while hot", "beaten egg, only the edges". how are the words that were dropped.
func Plain(words string) (plain, how string) {
	plain = words
	for _, p := range places {
		for _, one := range p.FindAllString(plain, -1) {
			how = strings.TrimSpace(how + " " + strings.Trim(one, " ,;"))
		}
		plain = p.ReplaceAllString(plain, " ")
	}
	return strings.Trim(strings.Join(strings.Fields(plain), " "), " ,;"), how
}

// Part reads words that name one of some parts with how much of it goes on and how: "a third of
// the lard filling over two thirds of the dough", "raspberry jam, 15 g each". why is how to write
// words that could turn the meaning, or hold another food: ok is false then, and the part is told.
func Part(l *larder.Larder, words string, parts []string) (told Told, why string, ok bool) {
	words = strings.TrimSpace(words)
	name, at := among(words, parts)
	if name == "" {
		return Told{}, "", false
	}
	told.Name = name
	head, tail := strings.TrimSpace(words[:at]), words[at+len(name):]
	if m := share.FindStringSubmatch(head + " "); m != nil {
		told.Share, head = m[1], strings.TrimSpace((head + " ")[len(m[0]):])
		if andRest.MatchString(tail) {
			told.Share, tail = "", andRest.ReplaceAllString(tail, "")
		}
	}
	whole := words[at-len(lastWord(words[:at])) : at+len(name)]
	_, food := l.Find(whole)
	_, own := l.Find(name)
	if food && !own && len(whole) > len(name) || !before.MatchString(head) {
		return Told{}, "", false // "maple syrup" is no "syrup"
	}
	if m := oneEach.FindStringSubmatchIndex(tail); m != nil {
		told.Each = tail[m[2]:m[3]]
		tail = tail[:m[0]] + " " + tail[m[1]:]
	}
	told.How = strings.Trim(strings.Join(strings.Fields(head+" "+tail), " "), " ,;()")
	rest, _ := Plain(tail)
	for _, part := range parts { // "round the custard"
		rest = besidePart(rest, part)
	}
	if thin.MatchString(name) { // how warm it is changes nothing of a glaze
		rest = warmth.ReplaceAllString(rest, " ")
	}
	if rest = strings.Trim(rest, " ,;().!"); unread.Asked(l, rest) {
		return told, rest, false
	}
	return told, "", true
}

var (
	thin   = spelling.Pattern(`(?i)\b(?:glaze|syrup|jam|icing|wash|butter)$`)
	warmth = spelling.Pattern(`(?i)\b(?:warm(?:ed)?|hot|heated|boiled|melted|cold|cooled)\b`)
)

// among is the part that words begin with, else the one that they name, of several the longest, and
// where it stands.
func among(words string, parts []string) (name string, at int) {
	low := strings.ToLower(words)
	at = len(words) + 1
	for _, part := range parts {
		part = strings.TrimSpace(part)
		i := strings.Index(low, strings.ToLower(part))
		if part == "" || len(low) != len(words) || i < 0 || !said.Names(words, part) ||
			i > 0 && !strings.ContainsAny(low[i-1:i], " ,;(") {
			continue
		}
		if i < at || i == at && len(part) > len(name) {
			name, at = part, i
		}
	}
	return name, at
}

// lastWord is the last word of some words with the blank behind it.
func lastWord(words string) string {
	trimmed := strings.TrimRight(words, " ")
	i := strings.LastIndexAny(trimmed, " ,;(")
	return words[i+1:]
}

// besidePart drops another part that words only say the place by, by its name or the last word of
// it: "round the jam" of "plum jam".
func besidePart(words, part string) string {
	if !said.Names(words, part) {
		if part = lastWord(part); !said.Names(words, part) {
			return words
		}
	}
	fields := strings.Fields(words)
	for i := range fields {
		tail := strings.ToLower(strings.Join(fields[i:], " "))
		for _, the := range []string{" ", " the "} {
			for _, by := range []string{"round", "around", "over", "on", "onto", "between",
				"beside", "under", "beneath", "into", "to"} {
				if rest, is := strings.CutPrefix(tail, by+the+strings.ToLower(part)); is {
					return strings.Join(append(slices.Clone(fields[:i]), rest), " ")
				}
			}
		}
	}
	return words
}

// Short is a name for a block of what words say is put on: without what it is made of, and how.
func Short(words string) string {
	plain, _ := Plain(words)
	if i := strings.IndexAny(plain, ",;(:"); i > 0 {
		plain = plain[:i]
	}
	return strings.TrimSpace(leading.ReplaceAllString(strings.TrimSpace(plain), ""))
}

// OfWord is what a step's own word puts on, "egg wash", where its words name no food and say no
// more than where and how often; "" for others.
func OfWord(l *larder.Larder, word, words string) string {
	key := said.Key(word)
	plain, _ := Plain(words)
	if together[key] == nil || !said.NoFigure("x"+plain) || unread.Asked(l, plain) {
		return ""
	}
	return key
}

// Again reports whether words say only where, when or how often, and not what: "again, while warm".
func Again(words string) bool {
	plain, how := Plain(words)
	return onlyHow.MatchString(plain) && (how != "" || plain != "")
}

var onlyHow = spelling.Pattern(`(?i)^(?:(?:all|over|the|whole|tops?|loaf|loaves|buns|rolls|dough|` +
	`pieces|surface|edges|sides|generously|lightly|well|thinly|evenly|and|on|it|them|with|care|` +
	`carefully|gently|everything|before|baking|serving|bake),? ?)*$`)
