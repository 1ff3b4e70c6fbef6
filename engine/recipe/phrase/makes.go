package phrase

import (
	"fmt"
	"strings"

	"forebake/engine/quantity"
	"forebake/engine/spelling"
)

var (
	makesLine = spelling.Pattern(`(?i)^(?:makes|yields?|quantity|for)\b:?\s*(?:about|abt\.?|` +
		`approximately|approx\.?|around|some)?\s*(\d+|one|two|three|four|six|a)(?:\s*(?:-|–|` +
		`to)\s*(\d+))?\s*(dozen|doz\.?)?\s*(?:[\dx×./-]+[- ]?(?:inch|in\.?|cm|g|` +
		`lb)\s+)?(?:(?:large|small|medium|soft|big|generous)\b)?\s*([\pL][\pL -]*)?\.?$`)
	cardMakes = spelling.Pattern(`(?i)^(?:batch|makes|yields?|quantity)\b:?\s*(\d+)\s*(?:pcs?\.?|` +
		`pieces|units|ea)?\s*(?:x|×|of|@)\s*(\d+ ?(?:g|kg))\.?$`)
	aboutWord = spelling.Pattern(`(?i)\b(?:about|around|approx\w*|some)\b`)
)

// Made is how much a recipe makes: as a formula writes it, and the number
// of pieces.
type Made struct {
	Text, Count     string
	Read            string // the figures that were read
	Servings, About bool
}

// Makes reads "Makes 12 rolls", "Yield: 2 dozen", "Batch: 6 pcs x 450 g".
func Makes(text string) (Made, bool) {
	if m := cardMakes.FindStringSubmatch(text); m != nil {
		return Made{Text: m[1] + " pieces of " + m[2], Count: m[1]}, true
	}
	m := makesLine.FindStringSubmatch(strings.Trim(text, "() "))
	if m == nil {
		return Made{}, false
	}
	n := Number(strings.ToLower(m[1]))
	if m[3] != "" {
		n = timesCount(n, 12)
		if m[2] != "" {
			n += " to " + timesCount(m[2], 12)
		}
	} else if m[2] != "" {
		n += " to " + m[2]
	}
	unit := strings.TrimSpace(m[4])
	if unit == "" {
		unit = "pieces"
	}
	lower := strings.ToLower(unit)
	for _, w := range []string{"serving", "people", "person"} {
		if strings.HasPrefix(lower, w) {
			return Made{Servings: true}, true
		}
	}
	_, isUnit := quantity.Read("1 "+unit, quantity.Of(quantity.Time, quantity.Volume))
	if isUnit == nil {
		return Made{}, false
	}
	if n == "1" && unit == "pieces" {
		unit = "piece"
	}
	return Made{n + " " + unit, n, m[1] + " " + m[2], false,
		strings.Contains(lower, "about") || aboutWord.MatchString(text)}, true
}

func timesCount(n string, by float64) string {
	q, fault := quantity.Read(n+" pieces", quantity.Of(quantity.Count))
	if fault != nil {
		return n
	}
	return quantity.Plain(q.Hi * by)
}

var madeAside = spelling.Pattern(`(?i)\(((?:makes |yields )?(?:about |approx\.? |` +
	`ca\.? )?\d+(?:-\d+)? (?:pieces|buns|rolls|slices|balls|servings)|(?:makes|yields) (?:about |` +
	`approx\.? )?\d+(?:-\d+)?)\)`)

// MadeAside finds how much a recipe makes in brackets, "(makes 12)", and
// the rest of the text.
func MadeAside(text string) (made, rest string) {
	m := madeAside.FindStringSubmatch(text)
	if m == nil {
		return "", text
	}
	made = m[1]
	if !strings.HasPrefix(strings.ToLower(made), "makes") &&
		!strings.HasPrefix(strings.ToLower(made), "yields") {
		made = "makes " + made
	}
	return made, strings.Trim(strings.Join(strings.Fields(strings.Replace(text, m[0], " ", 1)),
		" "), " .")
}

// Counted is a number with what it counts: "1 thing", "2 things".
func Counted(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	if what == "question or guess" {
		return fmt.Sprintf("%d questions or guesses", n)
	}
	return fmt.Sprintf("%d %ss", n, what)
}
