package larder

import (
	"strings"
	"sync"
)

// plainWords are words of preparation that leave the make-up of an item unchanged. A test reports
// for which items: fresh thyme is not the larder's dried thyme, and a mashed potato is cooked.
// Folded spellings, in the singular.
var plainWords = sync.OnceValue(func() map[string]func(*Item) bool {
	out := map[string]func(*Item) bool{}
	for _, g := range []struct {
		words string
		test  func(*Item) bool
	}{
		{"softened melted cooled chilled cold warm warmed hot lukewarm tepid boiling " +
			"iced sifted unsifted packed firmly lightly loosely tightly finely freshly " +
			"roughly coarsely thinly thickly well very grated chopped sliced diced cubed " +
			"crushed shredded minced beaten whisked separated peeled seeded deseeded hulled " +
			"washed rinsed halved quartered crumbled broken fine coarse good quality best " +
			"organic range pure plump large small medium cut torn divided firm pliable " +
			"waxed unwaxed slivered halve piece chunk cube half level scalded drained " +
			"steeped bloomed dissolved warming crisp crispy thin thick strips rounds " +
			"runny soaked plumped overnight aop aoc dop bio patted zested " +
			"strained reserved heaped level spooned swept sieved snipped riced pressed " +
			"twice once rubbed dice trimmed supermarket shop bought mg " +
			foreignAlways, always},
		{"soft whole " + foreignWhole, butFlour},
		{"dessert eating tart sharp", ofFruit},
		{"thawed defrosted frozen cored pitted stoned seedless mashed", ofFruit},
		{"ground milled toasted roasted blanched skinned shelled flaked " +
			foreignDry, dry},
		{"ripe fresh active bubbly fed " + foreignFresh, wet},
		{"unsalted", unsalted},
		{"saf gold", osmotolerant},
		{"pink red blue green yellow orange purple brown liquid gel", ofColour},
		{"russet floury waxy desiree maris piper king edward edwards yukon", ofPotato},
		{"bavarese tedesco irlandese normanno danese bavarois breton bretonne normand normande " +
			"irlandais irlandesa irish danish french breton normandy bavarian", ofMilkFat},
		{"unsweetened", littleSugar},
	} {
		for _, w := range strings.Fields(g.words) {
			out[w] = g.test
		}
	}
	return out
})

// The same in German, French, Italian, Spanish, Swedish and Danish.
const (
	foreignAlways = "weich weiche weicher weiches weichen lauwarm lauwarme lauwarmes lauwarmer " +
		"warme warmes warmer kalt kalte kaltes kalter zerlassen zerlassene geschmolzen " +
		"geschmolzene zimmerwarm zimmerwarme heisse heisses flussig flussige gehackt gehackte " +
		"gehackter gerieben geriebene abgerieben abgeriebene verquirlt verquirltes verquirlte " +
		"fein feine grob kleine grosse gesiebt gesiebte tiede tiedes chaud chaude fondu fondue " +
		"ramolli mou molle pommade froid froide rape rapee hache hachee haches hachees battu " +
		"battus tamise petit gros tiepido tiepida caldo calda morbido morbida freddo fredda fuso " +
		"fusa sciolto grattugiata grattugiato sbattuto tibia tibio templada templado derretida " +
		"derretido rallada picadas picada batido mjukt mjuk rumsvarmt rumsvarm " +
		"rumstempererat rumstempererad smalt kallt kall varmt varm ljummen ljummet fingervarm " +
		"fingervarmt hackad hackade riven rivet uppvispat uppvispad vispat blodt blod smeltet " +
		"koldt kold lunken lunkent hakket hakkede revet pisket stuetempereret " +
		"ammollata ammollate ammollati ammollato strizzata strizzati rinfrescata rinfrescato " +
		"cubetti cubi fette pezzi listarelle pomada pomata pommata en freddi fredde tiepide " +
		"rallado rallados ralladas ralada raladas cruda crudas crudo crudos picado picados " +
		"troceado troceados troceadas remojadas remojados escurridas escurrido hidratadas " +
		"sbriciolati sbriciolate spezzettate spezzettato setacciata setacciato tamizada " +
		"tamizado tostadas concassees concasses concassee decoupe decoupes coupe coupes " +
		"tranches rondelles eingeweichte eingeweicht gewurfelt gewurfelte gehobelt " +
		"fresche freschissime"
	foreignWhole = "entier entiers entiere entieres intero intera interi intere entera " +
		"enteras entero enteros inteira inteiras inteiro inteiros ganz ganze ganzer ganzes ganzen"
	foreignDry = "gemahlen gemahlene gemahlener moulu moulue tritato tritata tritate macinata " +
		"macinato molida stott malen mald malet stodt nymald"
	foreignFresh = "frisch frische frisches frischer frais fraiche fresco fresca"
)
