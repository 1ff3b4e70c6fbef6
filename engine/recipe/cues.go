package recipe

import (
	"forebake/engine/recipe/draft"
	"forebake/engine/recipe/list"
	"forebake/engine/spelling"
)

// cue is a word of a method that begins a step. The first of the table that fits a place is taken.
type cue struct {
	verb  string // of the formula file; "" for what is no step
	words *spelling.Words
}

func cueOf(verb, words string) cue {
	return cue{verb, spelling.Pattern(`(?i)\b(?:` + words + `)\b`)}
}

// Verbs of a cue that are not verbs of the formula file.
const (
	preheat = "preheat"
	fatTo   = "fat to" // the frying fat is heated
	turns   = "turns"  // of a laminated dough
	lockIn  = "lock in"
	repeat  = "repeat"
	rise    = "rise"      // a rest, or a proof after the shaping
	spread  = draft.Brush // a wash, or a brush after the bake
	aside   = ""          // words that hold a verb and mean no step
)

// length is a figure with a unit of length, as in "1/2 in." or "3.5 mm".
const length = list.Number + `\s*-?\s*(?:mm|cm|in\b|inch(?:es)?|")`

// cues are the words of plain English for the steps. More than one word goes before one.
var cues = []cue{
	cueOf(aside, `turn (?:\w+ )?upside down|(?:middle|cent(?:re|er)|bottom|top|shelf|`+
		`lower third|upper third) of (?:the |a )?(?:\w+ )?oven(?: at| on)?|in (?:the |a |`+
		`an )(?:\w+ ){0,2}oven(?: at| on)`),
	cueOf(rise, `(?:1st|2nd|first|second|final|last|bulk) (?:proof(?:ing)?|prov(?:e|ing)|`+
		`ris(?:e|ing)|ferment(?:ation)?)|proofing|fermentation|pointage|d[ée]tente|appr[êe]t`),
	cueOf(draft.Temper, `(?:come|bring|return|get|warm|`+
		`take)(?: \w+){0,4}? (?:back )?(?:up )?to room temp(?:erature)?|(?:take|remove|lift|`+
		`bring)(?: \w+){0,4}? (?:out of|from) the (?:fridge|refrigerator|`+
		`cold)(?: and)?(?: (?:let|leave|allow) [\w ]{0,25}?to (?:warm|come) up)?`),
	cueOf(aside, `mixing bowl|baking (?:parchment|powder|soda)|stand mixer|the rest\b|`+
		`rolling pin|cooling rack|cool place|cool (?:water|milk)|resting place|the rest of|`+
		`chilled butter|melted butter|`+
		`(?:the )?(?:filling|glaze|dough) mixture|mixture|softened|room temperature|(?:before|`+
		`after|until|while|when|once) (?:baking|serving|cooking|proving|rising)|`+
		`lightly (?:floured|oiled|greased)[\w ]*|spoon handle|wooden spoon|(?:the|with|`+
		`a) (?:\w+ )?(?:glaze|fill|score|wash|mix)\b|`+
		`bread rolls?|dough rolls?|rolled oats|pastry brush|whipped cream|egg wash|beaten eggs?|`+
		`cut (?:it |them )?open|`+
		`in (?:a|the) (?:\w+ )?oven|cut[- ]sides?|a cool rise|(?:to )?form(?:s|ing)? (?:an? |`+
		`into an? |the )?(?:\w+ ){0,3}(?:dough|paste|ball|batter)|leav\w+ (?:an? |some |`+
		`plenty of |enough )?(?:\S+ ){0,2}(?:space|gap|border|margin)\b[^,.;]*|to allow for \w+|`+
		`ready to bake|(?:a|each) portion|(?:the|an?) (?:\w+ )?shape|`+
		`fold (?:\w+ ){0,2}in half|fold (?:in )?(?:the )?(?:corners|edges|sides|ends|points|`+
		`flaps)[\w ]*|coat (?:a|the|your) [\w ]*?(?:bowl|pan|tin)\b[\w ]*|`+
		`(?:over|on) (?:a )?(?:low|medium|high|gentle|moderate)[\w -]{0,15}?heat|`+
		`(?:top and )?bottom heat|(?:from|off) the heat|oven heat`),
	cueOf(draft.Handle, `(?:^butter|^flour|and (?:butter|flour)|grease|oil|line|`+
		`dust)(?: and (?:flour|line|dust|grease))? (?:a|an|the|your|two|2|`+
		`\d+)\b[^,;.]*?\b(?:tins?|pans?|trays?|mou?lds?|sheets?|dish|bowl|surface|bench|board|`+
		`counter)|drain|unmou?ld|depan|de-pan|invert (?:it|them|the|on|onto|in|when|after)`),
	cueOf(preheat, `preheat|pre-heat|heat (?:the |your |an )?oven|turn (?:the |your )?oven|`+
		`oven (?:to|on|at)|(?:reduce|lower|turn down|drop|increase|raise) (?:the )?(?:oven|heat|`+
		`temperature)(?: temperature)?(?: down)?(?: to)?`),
	cueOf(fatTo, `heat (?:[\w/½¼¾-]+ ){0,6}?(?:oil|fat|lard|shortening)|(?:oil|fat|lard) to`),
	cueOf(draft.Soak, `until (?:foamy|frothy|bubbly)|bloom|activate|soak|proof the yeast|`+
		`(?:dissolve|soften|sprinkle) (?:the )?(?:\w+ )?yeast|(?:mix|stir|whisk|`+
		`combine) (?:the |in )?(?:\w+ )?yeast (?:in|into|with) (?:the )?(?:\w+ )?(?:water|milk|`+
		`liquid)`),
	cueOf(turns, `(?:(?:give|make|do|perform) )?(?:(?:it|the dough|a|one|two|three|four|first|`+
		`second|third|another|\d) )*(?:letter|book|envelope|single|double|simple|wallet|three|`+
		`four|half)[- ](?:fold|turn)s?|`+
		`fold(?: \w+){0,5}? (?:in|into) (?:thirds|three|quarters|four)|`+
		`fold (?:\w+ ){0,3}?like a (?:business )?(?:letter|book)|(?:one|two|three|four|first|`+
		`second|third|another|\d) (?:more )?(?:folds?|turns?)`),
	cueOf(repeat, `repeat (?:this |the (?:\w+ )?(?:fold|turn|`+
		`process)(?:ing)? )?(?:and \w+ )?(?:once|twice|two|three|four|five|`+
		`\d)(?: more)?(?: times)?`),
	cueOf(lockIn, `enclose|lock in|encase|lock (?:\w+ ){1,3}in|`+
		`fold the dough over the (?:butter|block)|wrap the dough (?:around|over)`),
	cueOf(draft.Fold, `^folds?:\s*\w+|punch(?: it| the dough| dough)? down|knock(?: it|`+
		` the dough| dough)? (?:back|down)|deflate|degas|`+
		`stretch(?:es)? and folds?|fold the dough`),
	{draft.Fold, spelling.Pattern(`(?i)\bfold(?: once| twice)?(?:[,.;]|$)`)},
	cueOf(draft.Mix, `fold (?:it |them |the [\w ]{1,20}? )?in\b|fold in the|work the dough|`+
		`drizzle (?:it |the [\w ]+? )?in\b|trickle in|pour in`),
	cueOf(draft.Store, `(?:stores?|keeps?) (?:[\w ]{0,30}? )?(?:for )?(?:up to )?\d+(?: to `+
		`\d+)? days?`),
	cueOf(draft.Chill, `refrigerat\w*|refrig\b|chill|in the fridge|to the fridge|retard|`+
		`cold[- ]proof|in the refrigerator`),
	cueOf(draft.Freeze, draft.Freeze),
	cueOf(draft.Thaw, `thaw|defrost`),
	cueOf(spread, `(?:roll|toss|dredge|shake) (?:[\w ]{0,25}? )?in (?:the |`+
		`some )?(?:[\w-]+ ){0,3}?(?:sugar|cinnamon|seeds|crumbs|coconut|nuts)`),
	cueOf(draft.Shape, `roll (?:it |them |each (?:\w+ ){0,2}?|the (?:\w+ ){1,2}?|`+
		`pieces )?(?:\w+ )?in(?:to)? (?:a |an |\d+ )?(?:[\w"./-]+ ){0,4}?(?:ropes?|strands?|`+
		`snakes?|sausages?|balls?|rounds?|buns|crescents?)`),
	cueOf(draft.Roll, `roll (?:it |them |the \w+ |each (?:\w+ )?)?(?:tightly )?up|roll (?:it |`+
		`the \w+ )?(?:tightly )?into (?:a |an )?(?:[\w-]+ ){0,2}?(?:log|coil|cylinder|spiral)|`+
		`roll (?:it |them |the \w+ )?(?:tightly|firmly|snugly)|`+
		`roll (?:it )?(?:tightly )?from (?:the|a) (?:long|short|wide)|jelly[- ]roll`),
	cueOf(draft.Sheet, `sheet (?:[\w ]{0,20}? )?(?:to|at|down)|roll(?: \w+){0,4} out|roll out|`+
		`pat out|press out|flatten|roll(?: \w+){0,5}? \d[\d/ ]*" thick|`+
		`(?:roll|pat|press|stretch|beat)(?: [\w/"½¼¾×.-]+){0,10}? (?:rectangle|square|oblong|`+
		`circle|dis[ck])s?|`+
		`roll(?: \w+){0,5}? (?:about )?`+length+`|roll (?:it |dough |the (?:dough|\w+ \w+) |`+
		`each (?:piece|half) )?to`),
	cueOf(draft.Pan, `(?:place|put|arrange|transfer|set|tuck|lay|layer|tip|pack|pile|press|ease|`+
		`settle|sit|turn|drop|move|nestle|fit|pipe|pour|scrape|`+
		`stack)(?: [\w'"/½×.-]+){0,7}? (?:in|on|into|onto|to) `+
		`(?:[\w'"/½×.()-]+ ){0,9}?(?:tins?|pans?|trays?|sheets?|dish|mou?lds?|cases)|^(?:tin|`+
		`pan|mould)s?:\s*\w+`),
	cueOf(draft.Fill, `wrap [\w ]{0,30}?in(?:side|to)? each|(?:put|place|drop) (?:a |some |`+
		`\d )?(?:spoonful|teaspoon\w*|tablespoon\w*|dollop|spoon)s?\b|spread|fill|stuff|pipe|`+
		`inject|spoon`),
	cueOf(draft.Divide, `(?:pull|pinch|tear|break|cut|snip) off(?: [\w-]+){0,3}? (?:pieces|bits|`+
		`lumps|knobs|chunks|balls)|divide|scale|portion (?:it|the|out|into)|`+
		`slice (?:[\w ]+? )?into|cut in(?:to)? (?:\d|strips|squares|rounds|triangles)|`+
		`cut (?:out )?(?:\d[\w./½-]* ?-?(?:cm|mm|in|inch)? ?)?(?:circles|rounds|squares|`+
		`triangles|rectangles|strips|discs|disks)|cut (?:out )?(?:with|using|out)|stamp out|`+
		`cut (?:[\w ]{0,25}? )?into|weigh out`),
	cueOf(draft.Shape, `shape|form|roll (?:it |them |each (?:piece )?|the pieces )?into|plait|`+
		`braid|twist|mould|mold|round up|tie`),
	cueOf(draft.Bake, `bake|baked for`),
	cueOf(draft.Cook, `deep[- ]fry|fry|simmer|boil|bring to (?:a|the) (?:boil|simmer)|cook|`+
		`scald|heat|toast`),
	cueOf(draft.Melt, `melt|warm (?:it |the [\w ]+? |[\w ]{0,20}?)?to|warm the`),
	cueOf(spread, `brush|glaze|drizzle|coat|dip|ice the|frost the|pour (?:the|over|`+
		`[\w ]{0,25}?(?:over|onto)\b)|^wash:\s*\w+|top with`),
	cueOf(draft.Dust, `dust|sprinkle|scatter|strew`),
	cueOf(draft.Score, `score|slash|snip`),
	cueOf(draft.Cool, draft.Cool),
	cueOf(draft.Store, `store|keep for|keeps for`),
	cueOf(rise, `rise|puff(?: up)?|^bulk\b[^:]{0,20}:\s*\w+|^bench(?: rest)?:\s*\w+|prove|proof|`+
		`ferment|double(?:d|s)?(?: in (?:size|volume|bulk))?|let (?:it |them |the \w+ )?(?:rest|`+
		`stand|sit)|rest|leave (?:it |them |the \w+ )?(?:to stand|in a warm)|(?:put|place|`+
		`keep) (?:it |them )?(?:covered )?in a warm|set aside|stand|leave`),
	cueOf(draft.Mix, `mix|combine|stir|whisk|beat|knead|blend|cream (?:the|together|butter)|whip|`+
		`work in|incorporate|add|toss|rub|whizz|pulse|process|p[ée]trissage|p[ée]trir|frasage`),
}

// kinds are the words of a heading that say what kind of part stands below it, or of a purpose.
var kinds = []struct {
	kind  string
	words *spelling.Words
}{
	{"preferment", spelling.Pattern(`(?i)\b(sponge|poolish|biga|first dough|primo impasto|` +
		`preferment|pre-ferment|pre-dough|levain|starter|lievitino|tangzhong|yudane|` +
		`water roux|flying ferment|vorteig|leaven|esponja|opara|zaczyn|fördeg|fordej)\b`)},
	{draft.Wash, spelling.Pattern(`(?i)\b(wash|egg ?wash|to brush|dorure|pensling|` +
		`zum be(?:streichen|pinseln))\b`)},
	{"syrup", spelling.Pattern(`(?i)\bsyrup\b`)},
	{"topping", spelling.Pattern(`(?i)\b(frosting|icing|glaze|streusel|crumble|crumb topping|` +
		`topping|coating|to (?:finish|decorate|coat|glaze|top)|for the top|^top|finish|` +
		`decoration|garnish|crosses|guss|glasur|belag|garnering|pynt|kruszonka|lukier|polewa|` +
		`gla[çc]age|glassa|cobertura)\b`)},
	{"filling", spelling.Pattern(`(?i)\b(fillings?|to fill|frangipane|custard|pastry cream|` +
		`compote|jam|butter block|butter packet|butter layer|roll-in|tourage|rolling in|` +
		`beurrage|laminat\w+|layering|cream|remplissage|ripieno|relleno|nadzienie|masa serowa|` +
		`garniture|fyllning|fyld|täyte|f(?:ü|ue)ll(?:ung|e)|paste|ganache)\b`)},
	{"topping", spelling.Pattern(`(?i)\bcrumb\b`)},
	{"dough", spelling.Pattern(`(?i)(\bdough|\bbuns?\b|\brolls?\b|\bbread\b|\bloaf\b|` +
		`\bbrioche\b|\bdoughnuts?\b|d[ée]trempe|\bdegen?\b|\bteig\b|\bhefeteig\b|\bimpasto\b|` +
		`\bpâte\b|\bdeg\b|\bdej\b|\bmasa\b|\bciasto\b)`)},
}

var bulletAt = spelling.Pattern(`^(?:[-*•–·▢☐□‣+]|\[ ?\])\s*`)

// ofTheDay are sentences that only say on what day the work goes on.
var ofTheDay = spelling.Pattern(`(?i)^(?:(?:on )?(?:the )?(?:next |first |second )?(?:day|` +
	`morning|evening)(?: \d| one| two)?|the night before|enjoy\b[^\d]*|(?:first|now|next|` +
	`to start),? (?:let's )?(?:we )?make the \w+|serve\b[^\d]*|happy baking|` +
	`bon app[eé]tit)[.!]*$`)

var stepTitle = spelling.Pattern(`^[A-Z][\pL ,'-]{2,30}:\s+(.+)$`)

// inFridge are the words for the cold place where something is left.
var inFridge = spelling.Pattern(`(?i)^(?:in|to) the (?:fridge|refrigerator)$`)

// partWord finds the name of a part as the thing that is made in a sentence.
var partWord = spelling.Pattern(`(?i)\b(?:for|make|prepare|meanwhile|assemble|start|mix|combine|` +
	`stir|cook|whisk|beat|melt|toss|rub)(?:\b[^.]{0,25}\bthe| the|) ([\w ]*?(?:sponge|` +
	`poolish|biga|starter|tangzhong|filling|custard|topping|streusel|crumb|glaze|icing|` +
	`frosting|syrup|egg wash|wash))\b(?: ingredients)?( with| into| to| and the)?`)

// leaves are words for a wait that may mean none: "set aside", "leave a space".
var leaves = spelling.Pattern(`(?i)^(?:set aside|stand|leave)`)

// risesWord are the words for a wait in which a dough rises, and nothing else does.
var risesWord = spelling.Pattern(`(?i)\b(?:rise|prove|proof|double\w*|puff\w*)\b`)

// waitWord are the words for a wait of something that is put together already.
var waitWord = spelling.Pattern(`(?i)\b(?:leave|let|rest|stand|rise|set aside|prove|proof|` +
	`ferment)\b`)

// partOf is a share of an ingredient.
var partOf = spelling.Pattern(`(?i)\b(?:an? (?:third|quarter|half)|half|most|two[- ]thirds|` +
	`three[- ]quarters) (?:of )?(?:the |your )(?:flour|butter|sugar|milk|water|liquid)`)

var warmsOnly = spelling.Pattern(`(?i)\b(?:melt|warm|scald|heat)\b`)

// goesIn are the words of a mix for what goes into a dough that is mixed already.
var goesIn = spelling.Pattern(`(?i)^(?:add|stir|rub|work in|incorporate|beat|mix|knead|fold\b.*|` +
	`drizzle\b.*|trickle\b.*|pour\b.*)$`)

// everything are the words of a mix that takes in what it does not name.
var everything = spelling.Pattern(`(?i)\b(?:(?:all|remaining|other|dry|` +
	`wet)(?: of)?(?: the)?(?: \w+)? ingredients|everything|it all|all together|` +
	`all (?:except|but)\b|(?:combine|mix|add) all|the rest)\b`)

// gathers are sentences that bring ingredients together, and mix nothing yet.
var (
	gathers = spelling.Pattern(`(?i)^(?:put|place|tip|sift|measure|crumble|` +
		`make a well)\b.*\b(?:bowl|mixer|well|board|table|machine)\b`)
	putWord = spelling.Pattern(`(?i)\b(?:put|place|tip|combine)\b`)
)

var (
	coverWord = spelling.Pattern(`(?i)\b(?:cover(?:ed)?|wrap(?:ped)?|` +
		`under a (?:\w+ )?(?:towel|cloth))\b`)
	uncoverWord = spelling.Pattern(`(?i)\buncover(?:ed)?\b`)
	coverBake   = spelling.Pattern(`(?i)\bif\b|\bfoil\b|cover(?:ed)? (?:the \w+ )?with (?:the ` +
		`)?(?:jam|icing|glaze|filling|frosting|streusel|chocolate)`)
)

var (
	turnCount = spelling.Pattern(`(?i)\b(one|two|three|four|\d)(?: (?:more|letter|book|` +
		`envelope|single|double|simple|wallet))*[ ](?:folds?|turns?)`)
	betweenForm = spelling.Pattern(`(?i)\bbetween\b|\bafter each\b`)
)

// onto are the words for where a part goes that a sentence speaks of.
var onto = spelling.Pattern(`(?i)\b(?:over|on|onto|on top of|into the (?:centre|center|middle|` +
	`buns?|holes?|cold))\b`)

var ontoDough = spelling.Pattern(`(?i)\b(?:buns?|rolls?|loaf|loaves|dough|cakes?|pieces)\b`)

var purposeHead = spelling.Pattern(`(?i)^((?:for|to) [a-z -]{3,20}):\s+(.+)$`)

var (
	methodHead = spelling.Pattern(`(?i)^(?:the )?(method|directions?|instructions?|steps|` +
		`preparation|procedure|to make|how to make (?:it|them))\b[^.]{0,20}$`)
	listHead = spelling.Pattern(`(?i)^(?:the )?(ingredients|you will need|what you need|` +
		`shopping list)\b[^.]{0,20}$`)
	// Cards of a bakery: "Batch: 6 pcs x 450 g", "Scale: 75 g".
	cardLine = spelling.Pattern(`(?i)^(?:mix\w*|bulk[\w ]*|folds?|retard|scal\w+|divide|` +
		`shap\w+|tins?|pans?|mould|proof|prove|wash|snip|score|bake|depan|cool\w*|rest|` +
		`bench(?: rest)?|chill|freeze|thaw|knead)\s*:\s*\S`)
	doughTemp = spelling.Pattern(`(?i)^(?:DDT|FDT|(?:final |` +
		`desired )?dough temp\w*\.?)\s*:?\s*(.+)$`)
	inTitle = spelling.Pattern(`(?i)^(.*?)\s*(?:[(,–—-]\s*((?:makes|yields?|` +
		`serves)\b[^()]*?)\)?)$`)
	timesLine = spelling.Pattern(`(?i)^(?:(?:prep(?:aration)?|cook(?:ing)?|total|baking|` +
		`rising|proving|resting|active|hands-on)(?: time)?\s*:|serves \d|servings|` +
		`\d+ (?:portions|personnes|personer|portioner|portionen|porciones|persone|osób)$|` +
		`difficulty|category|cuisine|equipment|tags\b)`)
	numbered = spelling.Pattern(`(?i)^(?:step\s*)?\d{1,2}\s*[.):]\s+`)
	markup   = spelling.Pattern("^[#>*_=`\\s]+|[*_`=]+$")
)

// asideHead are headings of what is no recipe: what stands below them is not read.
var asideHead = spelling.Pattern(`(?i)^(?:(?:cook'?s |baker'?s |chef'?s )?notes?|tips?|` +
	`variations?|storage|to store|equipment|nutrition\w*|you will also need)\b[^.]{0,20}$`)

// inlineHead is a part whose ingredients stand behind its name: "Glaze: 100 g icing sugar, milk".
var inlineHead = spelling.Pattern(`^([\pL][\pL' -]{2,40}?)(?: \([^()]*\))?\s*(?::\s|[–—]\s|` +
	`-{2,}|…|\.{3,})\s*(.+)$`)

var (
	partItself = spelling.Pattern(`(?i)\b(?:dough|filling|topping|glaze|icing|frosting|syrup|` +
		`streusel|sponge|poolish|biga|starter|levain|wash|tangzhong|custard|crumble)$`)
	parenthesis = spelling.Pattern(`\([^()]*\)`)
	forThe      = spelling.Pattern(`(?i)^(?:for the|for|to) [\pL -]+:?$`)
)

// washAlone is a sentence that is the name of the wash: "Egg wash.", "Dorure."
var washAlone = spelling.Pattern(`(?i)^(?:egg[- ]?wash|dorure|dorer)\b`)

var atLeast = spelling.Pattern(`(?i)\b(?:at least|or more|or longer|minimum)\b`)

// spooned is an amount of something that a method says and no list may hold.
var spooned = spelling.Pattern(`(?i)\b(?:\d[\d/ ]*|one|two|three|a|half a) ?(?:teaspoons?|` +
	`tablespoons?|tsp|tbsp|pinch|ml|g) (?:of )?(?:fine |warm |cold |sea |the )*([a-z]+)`)

var (
	untilSign = spelling.Pattern(`(?i)\buntil [^,.;(]+`)
	toForm    = spelling.Pattern(`(?i)\b(?:to|reaches|until it is)(?: about)? (\d{2,3} ?(?:°|º|` +
		`˚|deg(?:rees)?)? ?[CF])\b`)
	eachSide  = spelling.Pattern(`(?i)\b(?:(?:on )?each|per|a|on both|both) sides?\b`)
	warmPlace = spelling.Pattern(`(?i)\bwarm,? (?:[\w-]+ ){0,2}?(?:place|spot|room|kitchen|oven|` +
		`corner|cupboard|nook)|\bin the warm(?:th)?(?: |[,.;)]|$)|` +
		`\bsomewhere (?:\w+ ){0,3}?(?:warm|cos[iy]e?|cozy|snug|toasty)|\bairing cupboard|` +
		`\b(?:near|by|beside) (?:the|a) (?:\w+ )?(?:stove|fire|radiator|oven|heater|range)\b`)
	coolPlace = spelling.Pattern(`(?i)\bcool,? (?:[\w-]+ ){0,2}?(?:place|spot|room|larder|` +
		`pantry|cellar|corner)|\bsomewhere (?:\w+ ){0,3}?cool|\bin the (?:larder|cellar|pantry)\b`)
	otherwise = spelling.Pattern(`(?i),? or (?:(?:leave|chill|refrigerate|rest|let|prove|proof|` +
		`up to|for|else|in the fridge)\b[\w ]*? ?)?(?:overnight|over night|` +
		`` + list.Number + `(?: to ` + list.Number + `)? (?:hours?|hrs?|h|days?|minutes?|` +
		`mins?))\b[^,.;]*`)
)

// headLeads are words before the name of a part in a heading.
var headLeads = []string{"für den ", "für die ", "für das ", "fuer den ", "fuer die ", "fuer das ",
	"pour la ", "pour le ", "per la ", "per il ", "para la ", "para el ", "for the ", "for ",
	"make the ", "to make the ", "prepare the ", "prepare ", "make ", "the "}

// englishHeads are headings of other languages that the method names in English.
var englishHeads = map[string]string{"teig": "dough", "masa": "dough", "deg": "dough",
	"dej": "dough", "ciasto": "dough",
	"füllung": "filling", "fuellung": "filling", "fülle": "filling",
	"fyllning": "filling", "fyld": "filling", "ripieno": "filling", "relleno": "filling",
	"nadzienie": "filling", "garniture": "filling", "guss": "icing", "glasur": "icing",
	"lukier": "icing", "glassa": "icing", "glaçage": "icing", "kruszonka": "crumble",
	"garnering": "topping", "pynt": "topping", "belag": "topping", "cobertura": "topping"}

// rollIn are words of a fat that is folded in, and not mixed: it is a part of its own.
var rollIn = spelling.Pattern(`(?i)\btourage\b|\broll-in\b|\blaminat|\bziehfett\b|\btourier|` +
	`\bbeurrage\b|\block-in\b`)
