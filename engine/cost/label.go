package cost

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/facts"
	"forebake/engine/figure"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/quantity"
)

// law is how a place's law orders the list of ingredients and
// marks allergens.
type law struct {
	codes        []string // of the kitchen, for which it holds
	name         string
	jurisdiction string // of the larder's lists of allergens
	finished     bool   // added water counts as it is left in the product
	contains     bool   // a line names the allergens below the list
	source       string
}

// laws are the laws that a kitchen can name.
var laws = []law{
	{[]string{"us-food-code"}, "US", "US", false, true,
		"21 CFR 101.4(a)(1), descending order of predominance by weight (read); allergens: FD&C " +
			"Act 403(w) as amended by FALCPA (memory)"},
	{[]string{"eu-852-2004"}, "EU", "EU", true, false,
		"Regulation (EU) 1169/2011, Annex VII part A, added water by its weight in the product, " +
			"left out up to 5 % (read in translation); Articles 18 and 21 (memory)"},
	{[]string{"uk"}, "UK", "EU", true, false,
		"Regulation (EU) 1169/2011 as kept in UK law, Annex VII part A (read in translation), " +
			"Articles 18 and 21 (memory)"},
}

// lawsOf gives the laws for a kitchen's code; all where it names none.
func lawsOf(code string) []law {
	var out []law
	for _, l := range laws {
		if code == "" || slices.Contains(l.codes, code) {
			out = append(out, l)
		}
	}
	return out
}

// littleWater is the share of the product up to which added water need
// not be listed.
const littleWater = 0.05

// label writes the list.
func (l law) label(s *facts.Sheet, list []used) finding.Label {
	out := finding.Label{Law: l.name, Source: l.source}
	list = slices.Clone(list)
	i := slices.IndexFunc(list, func(u used) bool { return isWater(u.item) })
	if i >= 0 && l.finished {
		list, out.Assumed = l.waterLeft(s, list, i)
	}
	if i >= 0 && !l.finished {
		out.Assumed = append(out.Assumed, "water stands as it is put in")
	}
	out.Assumed = append(out.Assumed, mayTurn(list)...)
	var names []string
	set := map[string]bool{}
	check := map[string]bool{}
	for _, u := range list {
		names = append(names, u.item.Name+l.marks(u.item, set, check))
	}
	out.List = strings.Join(names, ", ") + "."
	switch sure := sorted(set); {
	case !l.contains:
	case len(sure) == 0:
		out.Contains = "no allergen of the list is declared of these ingredients"
	default:
		out.Contains = "Contains: " + strings.Join(sure, ", ") + "."
	}
	if open := sorted(check); len(open) > 0 {
		out.Assumed = append(out.Assumed, "read the label for "+strings.Join(open, ", "))
	}
	out.Assumed = append(out.Assumed, "what is itself made of several things, such as chocolate, "+
		"margarine or jam, brings its own list from its label")
	return out
}

// isWater reports whether an ingredient is added water.
func isWater(item *larder.Item) bool {
	return item.Class == larder.ClassLiquid && item.Water > 99
}

// waterLeft places added water by its weight in the finished product.
func (l law) waterLeft(s *facts.Sheet, list []used, i int) ([]used, []string) {
	water := list[i]
	whole := figure.Interval{}
	for _, u := range list {
		whole = whole.Add(u.grams)
	}
	if isFried(s.Formula) {
		return list, []string{"water stands as it is put in: how much of it hot fat drives out " +
			"is not known"}
	}
	lost := s.KindMass(formula.Dough).Add(s.Spread()).Mul(s.BakeLoss())
	left := water.grams.Sub(lost)
	left = figure.Between(max(0, left.Lo), max(0, left.Hi))
	if !left.IsFinite() || !whole.IsFinite() {
		return list, []string{"water stands as it is put in: the weight of the batch is open, " +
			"and with it what the bake loses"}
	}
	says := []string{fmt.Sprintf("%s of water is put in, and the bake is taken to lose %s of the "+
		"batch as water: %s is left", quantity.FormatInterval(water.grams, "g"),
		quantity.FormatInterval(s.BakeLoss().Scale(100), "%"), quantity.FormatInterval(left, "g"))}
	share := left.Div(whole.Sub(lost))
	if share.Hi <= littleWater {
		return slices.Delete(list, i, i+1),
			append(says, "that is under 5 % of the product, so water is left out")
	}
	at := func(g float64) int {
		n := 0
		for k, u := range list {
			if k != i && u.grams.Mid() > g {
				n++
			}
		}
		return n
	}
	if at(left.Lo) != at(left.Hi) {
		says = append(says, "within that its place may be another: weigh a batch before and after "+
			"its bake")
	}
	place := at(left.Mid())
	list = slices.Delete(list, i, i+1)
	return slices.Insert(list, place, water), says
}

// mayTurn tells of neighbours in the list whose weight ranges meet: the
// list orders them by the middle. waterLeft tells of added water.
func mayTurn(list []used) []string {
	var out []string
	for i := 1; i < len(list); i++ {
		a, b := list[i-1], list[i]
		if isWater(a.item) || isWater(b.item) || !a.grams.IsFinite() || !b.grams.IsFinite() {
			continue
		}
		if b.grams.Hi > a.grams.Lo {
			out = append(out, fmt.Sprintf("%s and %s may change places, since their weights meet: "+
				"weigh them", a.item.Name, b.item.Name))
		}
	}
	return out
}

// isFried reports whether a part is cooked in hot fat.
func isFried(f *formula.Formula) bool {
	return slices.ContainsFunc(f.Parts, func(p *formula.Part) bool {
		return slices.ContainsFunc(p.Steps, (*formula.Step).InHotFat)
	})
}

// marks names the allergens of an ingredient in capitals, as emphasis,
// and collects them.
func (l law) marks(item *larder.Item, set, check map[string]bool) string {
	codes := item.US
	if l.jurisdiction == "EU" {
		codes = item.EU
	}
	var words []string
	for _, code := range codes {
		bare, often := strings.CutSuffix(code, "?")
		if often {
			check[larder.AllergenName(l.jurisdiction, bare)+" in "+item.Name] = true
			continue
		}
		set[larder.AllergenName(l.jurisdiction, bare)] = true
		word := larder.AllergenName(l.jurisdiction, bare)
		if _, member, ok := strings.Cut(bare, ":"); ok {
			word = member
		}
		if word = strings.ToUpper(word); !slices.Contains(words, word) {
			words = append(words, word)
		}
	}
	if item.Undeclared {
		check["all allergens of "+item.Name+", which are not declared"] = true
	}
	if len(words) == 0 {
		return ""
	}
	return " (" + strings.Join(words, ", ") + ")"
}

func sorted(set map[string]bool) []string {
	var out []string
	for word := range set {
		out = append(out, word)
	}
	slices.Sort(out)
	return out
}
