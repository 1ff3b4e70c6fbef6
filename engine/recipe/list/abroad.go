package list

import (
	"regexp"
	"strings"

	"forebake/engine/spelling"
)

// measuresAbroad are words of other languages for measures and counts that stand behind a number,
// with the English ones. Common practice, no source. A Würfel of fresh yeast is 42 g in Germany.
var measuresAbroad = []struct {
	words   func() *regexp.Regexp
	english string
}{
	{abroadAt(`c(?:uill(?:[èe]re)?s?)?\.? ?à ?(?:s\b\.?|soupe)|c\. ?s\.|cucchiai(?:o|ata)?|` +
		`cucharadas?|msk|spsk|rkl|łyżk[aię]|ess?löffel|essl\.`), "tbsp"},
	{abroadAt(`c(?:uill(?:[èe]re)?s?)?\.? ?à ?(?:c\b\.?|caf[ée])|c\. ?c\.|cucchiain[oi]|` +
		`cucharaditas?|tsk|łyżeczk[aię]|tee?löffel|teel\.|tl|TL`), "tsp"},
	{abroadAt(`pinc[ée]es?|prisen?|pizzic[oh]i?|pizcas?|szczypt[aę]|nypa|knivspids|knsp\.?|` +
		`msp\.?|messerspitzen?`), "pinch"},
	{abroadAt(`pck\.?|pckg\.?|päckchen|packung|bustin[ae]|sobres?|pose|pak(?:ke|je)|torebk[ai]|` +
		`opakowani[ea]|påse`), "packet"},
	{abroadAt(`würfel(?: frische)? hefe`), "x 42 g fresh yeast"},
	{abroadAt(`verres?|bicchier[ei]|vasos?|szklank[ai]|stakan[a]?`), "glass"},
	{abroadAt(`st(?:ü|ue)ck|stk\.?|st\.|st\b|pcs?\.?|piezas?|pezz[io]|` +
		`pi[èe]ces?|szt\.?|sztuk[ai]?|kpl|nos?\.?`), ""},
}

func abroadAt(words string) func() *regexp.Regexp {
	return spelling.Pattern(`^(` + numberForm + `(?: ?(?:-|–|to) ?` + numberForm + `)?) ?(?:` +
		words + `)(?: |$)`)
}

var (
	about = spelling.Pattern(`(?i)^(?:ca\.?|circa|env(?:iron)?\.?|etwa|ungefähr|` +
		`około|ok\.|noin|cirka|c:a) (\d.*)$`)
	// ofAbroad is the "of" behind an amount: "250 g de farine", "80 g d'eau".
	ofAbroad = spelling.Pattern(`(?i)^(` + numberForm + `` +
		`(?: ?(?:[a-zµ]{1,4}\.?|pinch|packet|glass))?) (?:de la |de l['’]|des |de |d['’]|di |del |della |dell['’]|af )(\pL.*)$`)
	// countBehind are words behind a number at the end, which only say that it is counted.
	countBehind = spelling.Pattern(`(?i)^(\pL[^\d]* \d+) ?(?:nos?\.?|pcs?\.?|stk\.?|st\.?)$`)
	// percentColumn is a column of baker's percentages behind the weight.
	percentColumn = spelling.Pattern(`^(\pL.* ` + numberForm + ` ?(?:kg|g|lb|oz))` +
		`[ |]+(\d+(?:[.,]\d+)? ?%)$`)
)

// english turns what other languages write around the figure of a line into what the reader knows,
// and says which percentage stood beside a weight.
func english(text string) (out, percent string) {
	if m := countBehind().FindStringSubmatch(text); m != nil { // "Egg - 1 no."
		text = m[1]
	}
	if m := percentColumn().FindStringSubmatch(text); m != nil {
		text, percent = m[1], m[2]
	}
	if m := about().FindStringSubmatch(text); m != nil {
		text = "about " + m[1]
	}
	lead := ""
	if rest, found := strings.CutPrefix(text, "about "); found {
		lead, text = "about ", rest
	}
	for _, m := range measuresAbroad {
		if at := m.words().FindStringSubmatchIndex(strings.ToLower(text)); at != nil {
			text = text[:at[3]] + " " + m.english + " " + text[min(at[1], len(text)):]
			text = strings.Join(strings.Fields(text), " ")
			break
		}
	}
	if m := ofAbroad().FindStringSubmatch(text); m != nil {
		text = strings.TrimSpace(m[1]) + " " + m[2]
	}
	return lead + text, percent
}
