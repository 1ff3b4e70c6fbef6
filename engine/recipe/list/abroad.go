package list

import (
	"strings"

	"forebake/engine/said"
	"forebake/engine/spelling"
)

// measuresAbroad find the words of said.Abroad behind a number.
var measuresAbroad = func() (out []*spelling.Words) {
	for _, m := range said.Abroad {
		out = append(out, abroadAt(m.Words))
	}
	return out
}()

func abroadAt(words string) *spelling.Words {
	return spelling.Pattern(`^(` + numberForm + `(?: ?(?:-|–|to) ?` + numberForm + `)?) ?(?:` +
		words + `)(?: |$)`)
}

var (
	about = spelling.Pattern(`(?i)^(?:ca\.?|circa|env(?:iron)?\.?|etwa|ungefähr|` +
		`około|ok\.|noin|cirka|c:a) (\d.*)$`)
	// ofAbroad is the "of" behind an amount: "250 g de farine", "80
	// g d'eau".
	ofAbroad = spelling.Pattern(`(?i)^(` + numberForm + `` +
		`(?: ?(?:[a-zµ]{1,4}\.?|pinch|packet|glass))?) (?:de la |de l['’]|des |de |d['’]|di |` +
		`del |della |dell['’]|af )(\pL.*)$`)
	// countBehind are words behind a number at the end, which only say that
	// it is counted.
	countBehind = spelling.Pattern(`(?i)^(\pL[^\d]* \d+) ?(?:nos?\.?|pcs?\.?|stk\.?|st\.?)$`)
	// percentColumn is a column of baker's percentages behind the weight.
	percentColumn = spelling.Pattern(`^(\pL.* ` + numberForm + ` ?(?:kg|g|lb|oz))` +
		`[ |]+(\d+(?:[.,]\d+)? ?%)$`)
)

// english turns what other languages write around the figure of a line into
// what the reader knows, and says which percentage stood beside a weight.
func english(text string) (out, percent string) {
	if m := countBehind.FindStringSubmatch(text); m != nil { // "Egg - 1 no."
		text = m[1]
	}
	if m := percentColumn.FindStringSubmatch(text); m != nil {
		text, percent = m[1], m[2]
	}
	if m := about.FindStringSubmatch(text); m != nil {
		text = "about " + m[1]
	}
	lead := ""
	if rest, found := strings.CutPrefix(text, "about "); found {
		lead, text = "about ", rest
	}
	for i, words := range measuresAbroad {
		if at := words.FindStringSubmatchIndex(strings.ToLower(text)); at != nil {
			text = text[:at[3]] + " " + said.Abroad[i].English + " " + text[min(at[1], len(text)):]
			text = strings.Join(strings.Fields(text), " ")
			break
		}
	}
	if m := ofAbroad.FindStringSubmatch(text); m != nil {
		text = strings.TrimSpace(m[1]) + " " + m[2]
	}
	return lead + text, percent
}
