package hazard

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/larder"
	"forebake/engine/spelling"
)

// claim is what a name promises of the food, and which ingredients break it.
type claim struct {
	name   string // as it is told
	words  string // a pattern of the words that make it
	breaks func(it *larder.Item) bool
}

// claims are the promises that names of formulas and parts make. Allergen codes with a question
// mark stay with the label.
var claims = []claim{
	{"nut-free", `nut[- ]?free|(?:no|without) nuts|nussfrei|ohne nüsse|sans noix|sin nueces|` +
		`senza noci`,
		holds("tree_nuts", "nuts", "peanuts")},
	{"peanut-free", `peanut[- ]?free|(?:no|without) peanuts`, holds("peanuts")},
	{"gluten-free", `(?:gluten|wheat)[- ]?free|glutenfrei|sans gluten|sin gluten|senza glutine`,
		holds("gluten_cereals", "wheat")},
	{"milk-free", `(?:dairy|milk)[- ]?free|(?:no|without) (?:dairy|milk)|milchfrei|non[- ]dairy|` +
		`parve|pareve`, holds("milk")},
	{"egg-free", `egg[- ]?free|eggless|(?:no|without) eggs?|eifrei|ohne ei(?:er)?|sans œufs?|` +
		`sin huevos?|senza uova`, holds("egg", "eggs")},
	{"soy-free", `so[yi]a?[- ]?free`, holds("soya", "soybeans")},
	{"sesame-free", `sesame[- ]?free`, holds("sesame")},
	{"vegan", `vegan[aoe]?s?|plant[- ]based|végétalienn?e?s?`, func(it *larder.Item) bool {
		return holds("milk", "egg", "eggs")(it) || it.Is(larder.Honey) || ofSlaughter(it)
	}},
	{"vegetarian", `vegetari(?:an|sch)[a-z]*|végétarienn?e?s?`, ofSlaughter},
	{"alcohol-free", `alcohol[- ]?free|non[- ]alcoholic|alkoholfrei|sans alcool`,
		func(it *larder.Item) bool { return it.Is(larder.Spirit) }},
	{"for babies", `(?:for|pour|für|para|per) (?:bab(?:y|ies|ys)|infants?|toddlers|bébés)`,
		func(it *larder.Item) bool { return it.Is(larder.Honey) || it.Is(larder.WholeNut) }},
}

// slaughterFats are the fats of the larder that come from meat.
var slaughterFats = []string{"lard", "suet", "beef dripping", "duck fat"}

// ofSlaughter reports whether an ingredient is meat or fish, or is made of it.
func ofSlaughter(it *larder.Item) bool {
	control := it.ControlOf()
	return control == larder.ControlMeat || control == larder.ControlFish ||
		it.Is(larder.Gelatin) || slices.Contains(slaughterFats, it.Name) ||
		holds("fish", "crustacean_shellfish", "crustaceans", "molluscs")(it)
}

// holds gives a test for an ingredient that surely holds one of the allergens.
func holds(codes ...string) func(*larder.Item) bool {
	return func(it *larder.Item) bool {
		return slices.ContainsFunc(append(slices.Clone(it.US), it.EU...), func(code string) bool {
			group, _, _ := strings.Cut(code, ":")
			return !strings.HasSuffix(code, "?") && slices.Contains(codes, group)
		})
	}
}

// claimWords are the patterns of claims, whole words and none that says not.
var claimWords = func() (out []func(string) bool) {
	for _, c := range claims {
		says := spelling.Pattern(`(?i)(?:^|[^\pL-])(not |non[- ])?(?:` + c.words + `)(?:$|[^\pL])`)
		out = append(out, func(text string) bool {
			m := says().FindStringSubmatch(text)
			return m != nil && m[1] == ""
		})
	}
	return out
}()

// Belied lists the ingredients that break what the name of the formula, or of the part that they
// are in, promises: "almonds (nut-free)".
func Belied(s *Sheet) Value {
	var out []string
	look := func(name string, parts []*Part) {
		for i, says := range claimWords {
			if !says(name) {
				continue
			}
			for _, p := range parts {
				for _, in := range p.Ingredients {
					told := fmt.Sprintf("%s (%s)", in.Name, claims[i].name)
					if in.Item != nil && in.Of == nil && claims[i].breaks(in.Item) &&
						!slices.Contains(out, told) {
						out = append(out, told)
					}
				}
			}
		}
	}
	var all []*Part
	for _, p := range s.Formula.Parts {
		all = append(all, s.Part(p))
		var own []*Part
		for _, q := range s.Part(p).Contents() {
			own = append(own, s.Part(q.Part))
		}
		look(p.Name, own)
	}
	look(s.Formula.Name, all)
	return figure.List(out)
}
