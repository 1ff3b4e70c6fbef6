package family

import (
	"math"
	"slices"
	"strings"
)

// tradeWords are names of breads that are made of a family's dough:
// trade usage, a judgement. Those of which formulas were published
// stand in nearestByMakeUp.
var tradeWords = map[string]string{
	"cinnamon bun": "sweet dough", "cinnamon rolls": "sweet dough", "sticky bun": "sweet dough",
	"monkey bread": "sweet dough", "chelsea bun": "sweet dough", "morning bun": "sweet dough",
	"cardamom bun": "sweet dough", "fruit bun": "sweet dough", "tea bun": "sweet dough",
	"hot cross buns": "sweet dough", "king cake": "sweet dough", "maritozzo": "sweet dough",
	"maritozzi": "sweet dough", "pulla": "sweet dough", "hefezopf": "sweet dough",
	"striezel": "sweet dough", "babka": "sweet dough", "krantz": "sweet dough",
	"cozonac": "sweet dough", "potica": "sweet dough", "sweet bread": "sweet dough",
	"tea loaf": "sweet dough", "coffee cake": "sweet dough", "easter bread": "sweet dough",
	"butterzopf": "milk bread", "zopf": "milk bread", "milk rolls": "milk bread",
	"hokkaido milk bread": "milk bread", "brioche commune": "brioche moderate",
	"panbrioche": "brioche moderate", "savarin": "brioche moderate", "baba": "brioche moderate",
	"brioche mousseline": "brioche rich", "berliner": "doughnut", "krapfen": "doughnut",
	"sufganiyot": "doughnut", "paczki": "doughnut", "bomboloni": "doughnut",
	"raised doughnut": "doughnut", "donuts": "doughnut", "doughnuts": "doughnut",
	"dresden stollen": "stollen", "plunder": "danish", "wienerbrod": "danish",
	"pain au chocolat": "croissant", "kipferl": "croissant", "parker house roll": "lean sweet roll",
	"dinner roll": "lean sweet roll", "dinner rolls": "lean sweet roll",
	"burger bun": "lean sweet roll", "hamburger bun": "lean sweet roll",
	"bun": "sweet dough", "buns": "sweet dough", "vetebrod": "sweet dough",
	"vetebröd": "sweet dough", "bulle": "sweet dough", "bullar": "sweet dough",
	"enriched bread": "sweet dough", "enriched dough": "sweet dough",
	"yeast cake": "sweet dough", "kolach": "sweet dough", "kolache": "sweet dough",
	"colomba": "panettone", "pandoro": "panettone",
}

// Said returns the family whose dough a name of the trade is made of,
// also in the plural.
func Said(name string) (*Family, bool) {
	key := fold(name)
	for _, k := range []string{key, trimPlural(key)} {
		if known, ok := tradeWords[k]; ok {
			return Find(known)
		}
		if f, ok := Find(k); ok {
			return f, true
		}
		if f, ok := Nearest(k); ok {
			return f, true
		}
	}
	return nil, false
}

// goods end a family's name and say no more than that it is dough.
var goods = strings.Fields("dough doughs bread breads bun buns roll rolls loaf loaves pastry " +
	"pastries")

// OfDough returns the family of a name with words for dough behind it: "croissant dough",
// "sweet bun dough".
func OfDough(name string) (*Family, bool) {
	words := strings.Fields(fold(name))
	for len(words) > 1 && slices.Contains(goods, words[len(words)-1]) {
		words = words[:len(words)-1]
		short := strings.Join(words, " ")
		for _, try := range []string{short, trimPlural(short), short + " dough"} {
			if f, ok := Find(try); ok {
				return f, true
			}
		}
		if f, ok := Said(short); ok {
			return f, true
		}
	}
	return nil, false
}

// Words lists every name and alias of the families, for near names.
func Words() []string {
	var out []string
	for i := range families {
		out = append(append(out, families[i].Name), families[i].Aliases...)
	}
	return out
}

func trimPlural(word string) string {
	if n := len(word); n > 3 && word[n-1] == 's' && word[n-2] != 's' {
		return word[:n-1]
	}
	return word
}

// MakeUp is what a dough is made of, % on total flour. NaN is a figure
// that is not known.
type MakeUp struct{ Hydration, Sugar, Fat, Egg float64 }

// ByMakeUp returns the family that a dough is nearest to, and false
// where no figure is known. The distance is that from the typical
// value, in half widths of the family's range, summed over the known
// figures. Laminated families are left out: their butter is rolled in,
// not mixed.
func ByMakeUp(m MakeUp) (*Family, bool) {
	var best *Family
	least := math.Inf(1)
	for i := range families {
		f := &families[i]
		if f.RollIn.Known {
			continue
		}
		sum, n := 0.0, 0
		for _, q := range []struct {
			x float64
			r Range
		}{{m.Hydration, f.Hydration}, {m.Sugar, f.Sugar}, {m.Fat, f.Fat}, {m.Egg, f.Egg}} {
			if math.IsNaN(q.x) || !q.r.Known {
				continue
			}
			middle := q.r.Typical
			if middle == 0 {
				middle = (q.r.Lo + q.r.Hi) / 2
			}
			sum += math.Abs(q.x-middle) / ((q.r.Hi - q.r.Lo) / 2)
			n++
		}
		if n > 0 && sum/float64(n) < least {
			best, least = f, sum/float64(n)
		}
	}
	return best, best != nil
}
