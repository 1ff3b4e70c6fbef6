package larder

import (
	"slices"
	"strconv"
	"strings"

	"forebake/engine/spelling"
)

// Names that tell which of several a food is by a figure: cream by its fat, chocolate by its
// cocoa, flour by its type.
var (
	creamOf = spelling.Pattern(`^(?:(?:fresh|whipping|pouring|liquid|dairy|cooking|single|double|` +
		`heavy|light|table) )?(?:cream|sahne|creme|panna|gradde|flode) ?\(?(\d+) ?%(?: fat)?\)?$`)
	chocolateOf = spelling.Pattern(`^(?:(dark|bittersweet|plain|milk|white) )?(?:couverture )?` +
		`(?:chocolate|couverture)(?: (?:chips|couverture|callets|buttons))?,? ?\(?(?:min )?(\d\d)` +
		` ?%(?: (?:cocoa|cacao)(?: solids)?)?\)?$`)
	flourOf = spelling.Pattern(`^(.*(?:flour|mehl|farine|farina))[ ,(]+(type|typ|tipo|t) ?` +
		`(\d{1,4})\)?$`)
	ownShare = spelling.Pattern(`\b\d+ ?%,? (almond|hazelnut|pistachio|fruit|meat|cocoa|cacao)s?` +
		`(?: solids)?\b`)
)

// byFigure finds the item of a name that says which by a figure, "cream 35 %"; said is the figure.
func (l *Larder) byFigure(name string) (it *Item, said []string, ok bool) {
	if !strings.ContainsAny(name, "0123456789") {
		return nil, nil, false
	}
	folded := fold(name)
	if m := creamOf.FindStringSubmatch(folded); m != nil {
		for _, one := range []string{"heavy cream", "double cream", "light cream",
			"half-and-half"} {
			if it, ok = l.Find(one); ok && it.fatIs(m[1]) {
				return it, []string{m[1] + "% fat"}, true
			}
		}
	}
	if m := chocolateOf.FindStringSubmatch(folded); m != nil {
		it, ok = l.Find(chocolateBy(m[1], m[2]))
		return it, []string{m[2] + "%"}, ok
	}
	m := flourOf.FindStringSubmatch(folded)
	if m == nil {
		return nil, nil, false
	}
	head, _, _, known := l.described(m[1])
	if !known || head.Flour == 0 {
		return nil, nil, false
	}
	for _, typed := range []string{"German type " + m[3] + " wheat flour", "German type " + m[3] +
		" rye flour", "German type " + m[3] + " spelt flour", "French type " + m[3] + " flour",
		"Italian " + m[3] + " flour"} {
		it, ok = l.Find(typed)
		spelt := func(of *Item) bool { return strings.Contains(of.Name, "spelt") }
		if ok && slices.Equal(it.EU, head.EU) && spelt(it) == spelt(head) {
			return it, nil, true
		}
	}
	return nil, nil, false
}

// chocolateBy is the larder's chocolate of a colour and its cocoa, %; "" for none. Dark and milk
// chocolate overlap at no figure that is sold (common practice, no source).
func chocolateBy(colour, pct string) string {
	x, err := strconv.Atoi(pct)
	switch {
	case err != nil:
		return ""
	case colour == "milk" && x >= 20 && x <= 55:
		return "milk chocolate"
	case colour == "white" && x >= 20 && x <= 45:
		return "white chocolate"
	case colour == "milk" || colour == "white" || x > 85:
		return ""
	case x >= 70:
		return "dark chocolate 70-85%"
	case x >= 60:
		return "dark chocolate 60-69%"
	case x >= 45:
		return "dark chocolate 45-59%"
	}
	return ""
}

// withoutOwnShare drops from words how much of its own main food an item holds: "50% almond" of
// marzipan. The share of another food stays, so that it is asked.
func (it *Item) withoutOwnShare(words string) string {
	m := ownShare.FindStringSubmatch(words)
	if m == nil {
		return words
	}
	own := false
	switch m[1] {
	case "almond", "hazelnut", "pistachio":
		own = slices.Contains(it.EU, "nuts:"+m[1])
	case "fruit":
		own = it.Class == ClassFruit
	case "meat":
		own = it.Control == ControlMeat
	case "cocoa", "cacao":
		own = it.Class == ClassChocolate
	}
	if !own {
		return words
	}
	return strings.TrimSpace(strings.Replace(words, m[0], " ", 1))
}
