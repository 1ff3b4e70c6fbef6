package hazard

import (
	"slices"
	"strings"
	"unicode"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/spelling"
)

// claim is what a name promises of the food, and which ingredients break it.
type claim struct {
	name   string // as it is told
	harms  bool   // whoever believes it is hurt: an allergy, an infant
	words  string // a pattern of the words that make it
	breaks func(it *larder.Item) bool
}

// noInfant is what a baby of a name is that is nobody under one year old: a small vegetable, a
// pancake, a custom.
var noInfant = spelling.Pattern(`(?i)dutch bab(?:y|ies)|king cake bab(?:y|ies)|` +
	`baby['’]?s?[- ](?:spinach|potato|carrot|corn|leaf|leaves|kale|gem|beet|bell|` +
	`shower|swiss|back|banana|squid|octopus|marrow|tomato|onion|turnip|courgette|` +
	`yoda|shark|jesus|first birthday)|` +
	`infant (?:jesus|of prague)|\bnot (?:\pL+ )?for (?:\pL+ )?(?:bab|infant|toddler)\pL*|` +
	`\d+[- ]?months?[- ]old (?:starter|sour\pL*|culture|mother|cheese|levain)`)

// forInfants are words of names that say that somebody under one year old eats it. Months from
// the twelfth on are no infant's.
const forInfants = `(?:for|pour|für|para|per) (?:\pL+ )?(?:bab(?:y|ies|ys)|infants?|bébés?|` +
	`bebés?|neonati|lattanti|säuglinge?|nourrissons?|lactantes)|infants?|infant's|` +
	`bab(?:y|ies)['’]s?(?: first)?|baby[- ](?:led|foods?|biscuits?|rusks?|teeth\pL*|snacks?|` +
	`friendly|cereal|weaning|cookies?|fingers?|toasts?|porridge|formula)|teeth(?:ing|ers?)|` +
	`weaning|first foods?|babybrei|beikost|zahnungs?\pL*|babykekse?|biscuits? bébés?|` +
	`svezzamento|diversification alimentaire|destete|dentición|dentizione|` +
	`(?:from|ab|dès|à partir de|dai|da|dal|desde|a partir de)(?: dem| les| l'| los)? ?` +
	`(?:[4-9]|1[01]|four|five|six|seven|eight|nine|ten|eleven|sechs|acht|six|huit|sei|otto|seis|` +
	`ocho)(?:th|\.|e|º)? ?\+? ?(?:months?|monate?n?|mois|mesi|mese|meses|mos?\b)|` +
	`\b(?:[4-9]|1[01]) ?\+ ?(?:months?|monate|mois|mesi|meses|mos?\b)|` +
	`\b(?:[4-9]|1[01])[- ]?(?:months?|mo)(?:\+|[- ](?:olds?|plus|and (?:up|over|older)))`

// maybeInfants is told of a baby that may be the size of a bun.
const maybeInfants = "baby, if one eats it"

// notForInfants is what an infant may not eat: honey, whole nuts, raw milk, a spirit.
func notForInfants(it *larder.Item) bool {
	return it.Is(larder.Honey) || it.Is(larder.WholeNut) || it.Is(larder.Spirit) ||
		it.ControlOf() == larder.ControlRawMilk || it.Hazard == larder.HazardSprouts
}

// claims are the promises that names of formulas and parts make. Allergen codes with a question
// mark stay with the label.
var claims = []claim{
	{"nut-free", true, `nut[- ]?free|(?:no|without) nuts|nussfrei|ohne nüsse|sans noix|` +
		`sin nueces|senza noci`,
		holds("tree_nuts", "nuts", "peanuts")},
	{"peanut-free", true, `peanut[- ]?free|(?:no|without) peanuts`, holds("peanuts")},
	{"gluten-free", true, `(?:gluten|wheat)[- ]?free|glutenfrei|sans gluten|sin gluten|` +
		`senza glutine`,
		func(it *larder.Item) bool { return holds("gluten_cereals", "wheat")(it) && !isOat(it) }},
	{"gluten-free", false, `gluten[- ]?free|glutenfrei|sans gluten|sin gluten|senza glutine`,
		isOat}, // oats may be grown free of it, and nothing here says so
	{"milk-free", true, `(?:dairy|milk)[- ]?free|(?:no|without) (?:dairy|milk)|milchfrei|` +
		`non[- ]dairy|ohne milch|sans lait|sin leche|senza latte|parve|pareve`, holds("milk")},
	{"egg-free", true, `egg[- ]?free|eggless|(?:no|without) eggs?|eifrei|ohne ei(?:er)?|` +
		`sans œufs?|sin huevos?|senza uova`, holds("egg", "eggs")},
	{"soy-free", true, `so[yi]a?[- ]?free`, holds("soya", "soybeans")},
	{"sesame-free", true, `sesame[- ]?free`, holds("sesame")},
	{"vegan", false, `vegan[aoe]?s?|plant[- ]based|végétalienn?e?s?`,
		func(it *larder.Item) bool {
			return holds("milk", "egg", "eggs")(it) || it.Is(larder.Honey) || ofSlaughter(it)
		}},
	{"vegetarian", false, `vegetari(?:an|sch)[a-z]*|végétarienn?e?s?`, ofSlaughter},
	{"alcohol-free", false, `alcohol[- ]?free|non[- ]alcoholic|alkoholfrei|sans alcool`,
		func(it *larder.Item) bool { return it.Is(larder.Spirit) }},
	{"for babies", true, forInfants, notForInfants},
	{"for toddlers", true, `toddlers?|tout-petits|kleinkinder|bambini piccoli`,
		func(it *larder.Item) bool { return it.Is(larder.WholeNut) }},
	{"for toddlers", false, `(?:for|pour|für|para|per) (?:\pL+ )?toddlers`,
		func(it *larder.Item) bool { return it.Is(larder.Honey) }},
	{maybeInfants, false, `bab(?:y|ies|ys)|bébés?`,
		func(it *larder.Item) bool { return it.Is(larder.Honey) }},
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

// isOat reports whether an ingredient's only cereal with gluten is oats.
func isOat(it *larder.Item) bool {
	return holds("gluten_cereals")(it) && !holds("wheat")(it) && !slices.ContainsFunc(it.EU,
		func(code string) bool {
			of, cereal, _ := strings.Cut(code, ":")
			return of == "gluten_cereals" && cereal != "oats" && !strings.HasSuffix(code, "?")
		})
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
			m := says.FindStringSubmatch(text)
			return m != nil && m[1] == ""
		})
	}
	return out
}()

// claimed reports whether a name may hold the words of a claim once noInfant is taken out, which
// must not make new ones: then they begin a word of it as it is.
func claimed(name string) bool {
	if !wordOfClaim.May(name) {
		return false
	}
	if !noInfant.MatchString(name) {
		return true
	}
	before := ' '
	for i, c := range name {
		if !unicode.IsLetter(before) && before != '-' && anyClaim.MatchString(name[i:]) {
			return true
		}
		before = c
	}
	return false
}

// anyClaim is the words of all claims together, at the beginning of a text; wordOfClaim anywhere.
var anyClaim, wordOfClaim = func() (first, anywhere *spelling.Words) {
	var words []string
	for _, c := range claims {
		words = append(words, c.words)
	}
	all := `(?i:(?:not |non[- ])?(?:` + strings.Join(words, "|") + `))`
	return spelling.Pattern(`^` + all), spelling.Pattern(all)
}()

// Belied lists the ingredients that break what the name of the formula, or of the part that they
// are in, promises: "almonds (nut-free)".
func Belied(s *Sheet) Value {
	out, _ := belied(s)
	return figure.List(out)
}

// BeliedHarms reports whether such a promise is one of an allergen, or for an infant.
func BeliedHarms(s *Sheet) Value {
	_, harms := belied(s)
	return figure.YesNo(harms)
}

func belied(s *Sheet) (out []string, harms bool) {
	look := func(name string, parts []*Part) {
		if !claimed(name) {
			return
		}
		name = noInfant.ReplaceAllString(name, "")
		for i, says := range claimWords {
			c := claims[i]
			sure := c.name != maybeInfants || !claimWords[infants](name)
			if says(name) && sure {
				for _, in := range breaking(c, parts) {
					harms = harms || c.harms
					if told := in.Name + " (" + c.name + ")"; !slices.Contains(out, told) {
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
	return out, harms
}

// ForInfants reports whether a name says that somebody under one year old eats it.
func ForInfants(name string) bool {
	return claimed(name) && claimWords[infants](noInfant.ReplaceAllString(name, ""))
}

// breaking are the ingredients of parts that break a claim.
func breaking(c claim, parts []*Part) (out []*formula.Ingredient) {
	for _, p := range parts {
		for _, in := range p.Ingredients {
			if in.Item != nil && in.Of == nil && c.breaks(in.Item) {
				out = append(out, in)
			}
		}
	}
	return out
}

// infants is the place of the claim for babies.
var infants = slices.IndexFunc(claims, func(c claim) bool { return c.name == "for babies" })

// frail are words for guests whom a small dose makes ill: "highly susceptible population" of FDA
// Food Code 2022, 1-201.10(B) (memory).
const frail = `(?:care|nursing|rest|retirement|old people'?s) homes?|hospitals?|hospices?|` +
	`elderly|pregnan\w*|antenatal|prenatal|maternity|expectant|mothers?[- ]to[- ]be|chemo\w*|` +
	`immun\w*|pre-?schools?|kindergartens?|nurser(?:y|ies)|day ?care|altenheim|pflegeheim|` +
	`krankenhaus|schwangere?n?|kita|maison de retraite|hôpital|enceintes?|crèche|` +
	`casa di riposo|ospedale|incinta|asilo|embarazad\w*|residencia de mayores|guardería`

var (
	// frailWords are those words, and one before them that says not.
	frailWords = spelling.Pattern(`(?i)(\b(?:not?|never|nobody|nor|kein\w*|nicht|pas|non|no)\b` +
		`[^.;,]{0,30})?(?:^|[^\pL])(?:` + frail + `)(?:$|[^\pL])`)
)

// ForFrail reports whether the names of the formula and its parts, or the words of its steps, say
// that such guests eat it.
func ForFrail(s *Sheet) Value {
	says := func(text string) bool {
		if !frailWords.May(text) {
			return false
		}
		m := frailWords.FindStringSubmatch(text)
		return m != nil && m[1] == ""
	}
	yes := says(s.Formula.Name) || claimWords[infants](s.Formula.Name)
	for _, p := range s.Formula.Parts {
		yes = yes || says(p.Name) || slices.ContainsFunc(p.Steps, func(step *formula.Step) bool {
			return says(step.Words + ". " + step.Note)
		})
	}
	return figure.YesNo(yes)
}
