package hazard

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"forebake/engine/figure"
	"forebake/engine/formula"
	"forebake/engine/larder"
	"forebake/engine/spelling"
)

// thing is something that is no food, by the words that put it into one.
type thing struct {
	words  *spelling.Words // the first group is told
	leaves bool            // a later step may take it out
}

const (
	putsIn = `(?:hid(?:e|ing)|press(?:ing)?|push(?:ing)?|tuck(?:ing)?|bury|insert|put|slip|drop|` +
		`stick|wrap|bake|knead|work|place|add|poke)`
	metal = `(?:lucky|silver|gold(?:en)?|metal|brass|copper|clean|washed|wrapped|foil-wrapped|` +
		`euro|cent|real|scrubbed|boiled|sterili[sz]ed|new|old)`
)

// things are the foreign bodies that customs and habits put into bread.
var things = []thing{
	{words: spelling.Pattern(`(?i)\b` + putsIn +
		`\b[^.;]{0,40}?\b(?:(?:an?|one|the|each) )?((?:` + metal +
		` )+coins?|(?:an?|one|the) coin|sixpences?|threepences?|penn(?:y|ies)|trinkets?|charms?|` +
		`thimbles?|figurines?|(?:plastic|porcelain|china|ceramic|metal|wax|glass) ` +
		`(?:bab(?:y|ies)|beans?|figures?|kings?|dolls?|animals?|beads?|toys?|stars?|hearts?)|` +
		`fèves?|(?:dry|dried) bean|(?:gold|silver|brass|wedding|engagement|toy) rings?|` +
		`marbles)\b`)},
	{words: spelling.Pattern(`(?i)\b(?:hide|bury|tuck) (?:an?|the|one) (?:lucky )?(ring)\b`)},
	{words: spelling.Pattern(`(?i)((?:craft|non-edible|inedible|florist'?s?|floral) ` +
		`(?:glitter|wires?|foam|tape)|(?:glass|plastic|metal) beads?|(?:wax|porcelain) figures?)`)},
	{words: spelling.Pattern(`(?i)((?:glücks)?(?:münzen?|pfennige?)|pièces? de monnaie|` +
		`monet(?:a|e|ina) (?:d'oro|d'argento|portafortuna)|monedas?|` +
		`(?:cach|gliss|insér|enfonc)[\pL]+ [^.;]{0,30}fèves?|porzellanfigur(?:en)?|` +
		`haba de (?:porcelana|cerámica)|figurita)`)},
	{words: spelling.Pattern(`(?i)\b(?:leav(?:e|ing)|left|keep) (?:the |all |both )?` +
		`(toothpicks?|cocktail sticks?|skewers?|picks|string|twine|pins)\b(?: in| on| where)?`)},
	{words: spelling.Pattern(`(?i)\b(?:clos|secur|fasten|pin|hold|fix|skewer|tie|truss)[\pL]*\b` +
		`[^.;]{0,40}?\b(toothpicks?|cocktail sticks?|` +
		`(?:wooden |metal )?skewers?|string|twine|pins)\b`), leaves: true},
}

// noThing is what a coin or a charm is compared with, or what is said not to go in.
var noThing = spelling.Pattern(`(?i)(?:(?:size|thick\w*|width|wide|like|big|shape|as|into|of) ` +
	`(?:(?:of|as) )?(?:an?|the)? ?|(?:chocolate|candy|sugar|marzipan|ginger|carrot|dough|sized) )` +
	`(?:\w+ )?(?:coins?|penn(?:y|ies)|thimbles?)\b|\b(?:coin|penny)[- ](?:sized?|shaped?)|` +
	`\b(?:no|not|never|without|instead of|in place of|rather than) [^.,;]*`)

// takesOut tells of a step that takes such a thing out again.
var takesOut = spelling.Pattern(`(?i)(?:remov|take (?:\w+ )?out|pull(?:ing)? (?:\w+ )?out|` +
	`(?:snip|cut|take) (?:\w+ )*off|discard|entfern|zieh|retire|togli|rimuov|quita|saca)`)

// meats are foods that are dangerous while they are raw.
const meats = `(?:chicken|poultry|turkey|duck|goose|meats?|pork|beef|veal|lamb|mutton|game|mince|` +
	`steaks?|bacon|sausages?|offal|liver|fish|prawns?|shrimps?|seafood|hähnchen|geflügel|fleisch|` +
	`hackfleisch|poulet|viande|volaille|pollo|carne)`

// rawMeat are words of raw meat, or of what runs out of it, beside food.
var rawMeat = spelling.Pattern(`(?i)\b((?:raw|uncooked|thawing|defrosting|unwashed|rohe[ms]?|` +
	`crue?s?|crud[oa])(?: [\pL-]+){0,2} ` + meats + `|` +
	meats + ` (?:juices?|drip(?:s|pings?)?|blood|` +
	`marinade|brine)|(?:juices?|drip(?:s|pings?)?|blood|marinade|brine) (?:of|from) (?:the )?` +
	`(?:[\pL-]+ )?` + meats + `|(?:poulet|viande|pollo|carne) cru[de]?[oae]?s?)\b`)

// apart are words that keep the two from each other.
var apart = spelling.Pattern(`(?i)\b(?:no|not|never|without|away from|apart from|separate\w*|` +
	`instead of|above|over the raw|clean\w*|washed|disinfect\w*|sanit\w*|other|another|different|` +
	`own|ohne|nie|sans|jamais|senza|mai|sin|nunca)\b[^.;]*`)

// ContactsNamed lists what words say of raw meat beside a part that nothing heats any more.
func ContactsNamed(p *Part) Value {
	var out []string
	said(p, func(words string, line int, step *formula.Step) {
		if step == nil || !strings.Contains(words, " ") || !anyMeat.May(words) ||
			step.HeatsAll() || step.IsBeforeHeat() {
			return
		}
		words = apart.ReplaceAllString(words, "")
		if m := rawMeat.FindStringSubmatch(words); m != nil {
			out = append(out, fmt.Sprintf("%s (line %d)", m[1], line))
		}
	})
	return figure.List(out)
}

// eats are words that say that somebody eats it, and not that nobody does.
var eats = spelling.Pattern(`(?i)(\b(?:not?|never|don't|nobody)\b[^.;,]{0,20})?\b(?:` +
	`eat(?:en|ing)?|serve[ds]?|serving|enjoy(?:ed)?|no[- ]bake|unbaked|edible|taste[ds]?|` +
	`gegessen|serviert|` +
	`servir|servis?|servire|mangia\w*|comer)\b`)

// SaysEaten reports whether the words of a part's steps, or its name, say that it is eaten.
func SaysEaten(p *Part) Value {
	says := func(text string) bool {
		m := eats.FindStringSubmatch(text)
		return m != nil && m[1] == ""
	}
	yes := says(p.Name) || p.IsDough() && says(p.Part.Formula.Name)
	said(p, func(words string, _ int, step *formula.Step) {
		yes = yes || step != nil && says(words)
	})
	return figure.YesNo(yes)
}

// anyMeat is asked first: most words name none.
var anyMeat = spelling.Pattern(`(?i)` + meats)

// said is what the steps and ingredients of a part say in words, and the line of each. The name of
// a part that a step puts on tells a shape as often as a food: it is left out. So is an ingredient
// by the larder's own name, which the larder judges; a house's own is not.
func said(p *Part, tell func(words string, line int, step *formula.Step)) {
	for _, s := range p.Steps {
		words := s.Words
		if s.Uses != nil {
			words = ""
		}
		if words+s.Manner+s.Note != "" {
			tell(words+" "+s.Manner+". "+s.Note, s.Place.Line(), s)
		}
	}
	for _, in := range p.Ingredients {
		plain := in.Item != nil && in.Form+in.Aside+in.Note == "" && in.Item.Basis != "house" &&
			(in.Name == in.Item.Name || slices.Contains(in.Item.Aliases, in.Name))
		if in.Of == nil && !plain {
			tell(in.Name+" "+in.Form+" "+in.Aside+". "+in.Note, in.Place.Line(), nil)
		}
	}
}

// shapes reports whether a verb's words tell a shape.
func shapes(v *formula.Verb) bool {
	return v.Finishes() || v.Divides() || v.Sheets() || v.Coils()
}

// PoisonsNamed lists the poisonous plants that the words of a part's steps and ingredients name.
func PoisonsNamed(p *Part) Value {
	var out []string
	said(p, func(words string, line int, step *formula.Step) {
		if step != nil && shapes(step.Verb) {
			return
		}
		if plant := larder.Poison(words); plant != "" {
			out = append(out, fmt.Sprintf("%s (line %d)", plant, line))
		}
	})
	return figure.List(out)
}

// ThingsNamed lists what is no food and is put into it, by the words of a part's steps.
func ThingsNamed(p *Part) Value {
	var out []string
	said(p, func(words string, line int, step *formula.Step) {
		for _, t := range things {
			if !t.words.MatchString(words) {
				continue
			}
			words = noThing.ReplaceAllString(words, "")
			m := t.words.FindStringSubmatch(words)
			if m != nil && !(t.leaves && (takesOut.MatchString(words) || takenOut(step))) {
				out = append(out, fmt.Sprintf("%s (line %d)", cmp.Or(m[1:]...), line))
				return
			}
		}
	})
	return figure.List(out)
}

// takenOut reports whether a later step takes something out.
func takenOut(step *formula.Step) bool {
	return step != nil && slices.ContainsFunc(step.Part.Steps[step.Index+1:],
		func(s *formula.Step) bool { return takesOut.MatchString(s.Words + " " + s.Note) })
}
