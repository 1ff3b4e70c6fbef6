package larder

import "forebake/engine/spelling"

// plants are those that are laid on cakes by mistake, by the names of their flowers and leaves:
// cardiac glycosides, alkaloids, cyanide (lists of gardeners and poison centres, memory).
//
// Elder counts but for its flowers and berries: leaves, stalks and bark give off cyanide (US CDC,
// MMWR 33(13), 1984, memory).
const plants = `(lil(?:y|ies)[- ]of[- ]the[- ]valley|foxgloves?|oleanders?|hydrangeas?|` +
	`daffodils?|jonquils?|narciss(?:us|i)|yew|wisterias?|azaleas?|rhododendrons?|` +
	`monkshood|aconites?|wolfsbane|delphiniums?|` +
	`larkspurs?|hellebores?|christmas roses?|snowdrops?|hyacinths?|` +
	`bluebells?|mistletoe|holly|ivy|laburnum|lantanas?|` +
	`(?:calla|arum|peace|gloriosa) lil(?:y|ies)|` +
	`autumn crocus(?:es)?|buttercups?|anemones?|cherry[- ]laurel|mountain[- ]laurel|daphne|` +
	`angel'?s trumpets?|brugmansia|daturas?|nightshade|belladonna|hemlock|amaryllis|lobelias?|` +
	`(?:sweet[- ]peas?|lupins?) (?:flowers?|blossoms?|petals?|blooms?)|morning glor(?:y|ies)|` +
	`star of bethlehem|periwinkles?|privet|castor beans?|rhubarb lea(?:f|ves)|maiglöckchen|` +
	`lords[- ]and[- ]ladies|cuckoo[- ]?pint|giant hogweed|ragwort|meadow saffron|jimson ?weed|` +
	`thorn[- ]?apple|poke ?weed|poke ?berr(?:y|ies)|white snakeroot|bryony|spindle berr(?:y|ies)|` +
	`rosary peas?|dumb ?cane|dieffenbachia|euphorbia|spurge|death caps?|fly agarics?|` +
	`destroying angels?|convallaria|caladiums?|` +
	elder + `|hortensien?|oleanderblüten?|fingerhutblüten?|narzissen?|osterglocken?|goldregen|` +
	`eiben?|` +
	`eisenhut|efeu|kirschlorbeer|stechpalmen?|mistelzweige?|muguet|laurier-rose|laurier-cerise|` +
	`hortensias?|jonquilles?|narcisses?|fleurs? de digitale|houx|mughett[oi]|oleandr[oi]|` +
	`ortensi[ae]|narcis[oi]|glicin[ei]|agrifoglio|lirios? de los valles|adelfas?|narcisos?|` +
	`glicinias?|acebo)`

// elder are the parts of it that poison, alone and beside the berries.
const elder = `elder(?:[- ]?(?:berry|tree|bush|flower))? (?:(?:green|young|fresh|dried) )?` +
	greens + `|elderberr(?:y|ies)[^;]{0,40}? (?:with|and) ` +
	`(?:(?:the|their|its|all|some|a|few|green|young|fresh) )*` + greens +
	`|holunder(?:blätter|stiele?|rinde)|feuilles? de sureau`

const greens = `(?:lea(?:f|ves)|stalks?|stems?|twigs?|bark|roots?|branch(?:es)?)`

var poisonPlants = spelling.Pattern(`(?i)(?:^|[^\pL])` + plants + `(?:$|[^\pL])`)

// eaten are what such a flower is made of where it may be eaten, or is no flower.
const eaten = `(?:dough|marzipan|fondant|sugar|icing|paper|paste|plastic|silk|fabric|artificial|` +
	`fake|chocolate|wafer|pastry|buttercream|zucker|papier|teig)`

// noPlant is the shape of a plant in something that is eaten, a food that only shares its name, or
// words that warn of it.
var noPlant = spelling.Pattern(`(?i)buttercup (?:squash|pumpkin)|periwinkle snails?|` +
	`sea anemones?|ivy gourds?|` + eaten + `[- ]` + plants + `|` +
	plants + `(?: \pL+)? (?:cut |made |cast |piped |shaped )?(?:of|from|out of|in|aus|en|di|de) ` +
	`(?:the )?(?:\pL+ )?` + eaten + `|` +
	plants + `(?: \pL+)?[- ](?:shapes?|shaped|stencils?|stamps?|patterns?|mou?lds?|cutters?)|` +
	`(?:with|and) (?:\pL+ ){0,2}?` + greens + ` (?:\pL+ )?(?:removed|off|out|discarded|away)|` +
	`\b(?:no|not|never|without|instead of|avoid|don't|keine?|ohne|pas de|sans|sin|senza)` +
	`(?: \pL+){0,2} ` + plants)

// Poison is the poisonous plant, or part of one, that words name as something to eat; "" for none.
// The shape of one in dough or sugar is none, nor is a word that warns of it.
func Poison(words string) string {
	if !poisonPlants.MatchString(words) { // the next is a long one
		return ""
	}
	if m := poisonPlants.FindStringSubmatch(noPlant.ReplaceAllString(words, "")); m != nil {
		return m[1]
	}
	return ""
}

// PoisonName is the larder's name of what stands for all of them: no food, of no known make-up.
const PoisonName = "poisonous plant"
