package said

import (
	"strings"

	"forebake/engine/larder"
	"forebake/engine/spelling"
)

// Words of other languages for a measure. Common practice, no source.
const (
	pinchAbroad = `prisen?|pizzic(?:o|hi)|pinc[ée]es?|nypa|knsp\.?|knivspids|msp\.?|` +
		`messerspitzen?|pizcas?|szczypt[aę]`
	packetAbroad = `päckchen|packerl|pck\.?|pckg\.?|packung(?:en)?|bustin[ae]|paket(?:e|en)?|` +
		`pak(?:ke|je)|breve?|saszetk[ai]|sobres?|zakjes?|beutel|tüten?|tütchen|torebk[ai]|` +
		`opakowani[ea]`
	northPacket = `pos[ea]r?|påsa?r?|påse|pussi[a]?`
	glassAbroad = `gläser|glas|szklan(?:ka|ki|ek)|stakan[ai]?|verres?|bicchier[ei]|vasos?`
)

const packet = `sachets?|packets?|envelopes?|packages?|pkgs?|packs?|` + packetAbroad

// Abroad are the words of other languages for a measure or a count, with the English one. Common
// practice, no source. A Würfel of fresh yeast is 42 g in Germany.
var Abroad = []struct{ Words, English string }{
	{`c(?:uill(?:[èe]re)?s?)?\.? ?à ?(?:s\b\.?|soupe)|c\. ?s\.|cucchiai(?:o|ata)?|` +
		`cucharadas?|msk|spsk|rkl|łyżk[aię]|ess?löffel|essl\.`, "tbsp"},
	{`c(?:uill(?:[èe]re)?s?)?\.? ?à ?(?:c\b\.?|caf[ée])|c\. ?c\.|cucchiain[oi]|` +
		`cucharaditas?|tsk|łyżeczk[aię]|tee?löffel|teel\.|tl|TL`, "tsp"},
	{pinchAbroad, "pinch"},
	{packetAbroad, "packet"},
	{`würfel(?: frische)? hefe`, "x 42 g fresh yeast"},
	{glassAbroad, "glass"},
	{`st(?:ü|ue)ck|stk\.?|st\.|st\b|pcs?\.?|piezas?|pezz[io]|pi[èe]ces?|szt\.?|sztuk[ai]?|` +
		`kpl|nos?\.?`, ""},
}

// measures are kitchen words whose size depends on the ingredient.
// Sources: pinch and dash from measuring-spoon pages (read), the bounds
// a judgement; a sachet of dry yeast is 7 g (German and US pages,
// read); saffron 0.1 to 0.5 g, cardamom pods and drops (memory);
// a Würfel of fresh yeast is 42 g (German pages, read); vanilla sugar
// 7.5 g in France, 8 g in Germany, 10 g in Austria (memory); a stick of
// butter is 4 oz (SR 28, read). Dry yeast of the north 11 to 14 g,
// baking powder 11 to 16 g, a small glass 20 to 50 ml, pudding powder 35 to 45 g a packet, a glass
// 150 to 250 ml, a bunch of herbs 10 to 40 g, a handful 5 to 40 g, a dessertspoon 10 ml, a
// spoon, a strip of zest, a rasher, a sprig, a knob (memory).
var measures = []struct {
	word   *spelling.Words
	lo, hi float64
	unit   string
	us     bool // a measure of the US alone
	fits   func(*larder.Item) bool
	says   string
}{
	{spelling.Pattern(`^(?:(?:small|large|good|generous|big|tiny) )?(?:pinch(?:es)?|` +
		pinchAbroad + `)$`), 0.1, 1,
		"g", false,
		func(*larder.Item) bool { return true }, "a pinch is taken as 0.1 to 1 g: weigh it"},
	{spelling.Pattern(`^(?:level )?(?:dessert ?spoons?(?:fuls?)?|dsp)$`), 10, 10, "ml", false,
		func(it *larder.Item) bool { return it.Density > 0 },
		"a dessertspoon is taken as 10 ml: weigh it"},
	{spelling.Pattern(`^(?:heaped|heaping|rounded) (?:dessert ?spoons?(?:fuls?)?|dsp)$`), 12.5, 20,
		"ml", false, func(it *larder.Item) bool { return it.Density > 0 },
		"a heaped dessertspoon is taken as 12.5 to 20 ml: weigh it"},
	{spelling.Pattern(`^(?:level )?(?:soup ?spoons?(?:fuls?)?|big spoons?)$`), 13, 18, "ml", false,
		func(it *larder.Item) bool { return it.Density > 0 },
		"a soup spoon is taken as 13 to 18 ml: weigh it"},
	{spelling.Pattern(`^(?:level )?(?:coffee|small) ?spoons?(?:fuls?)?$`), 4, 6, "ml", false,
		func(it *larder.Item) bool { return it.Density > 0 },
		"a coffee spoon is taken as 4 to 6 ml: weigh it"},
	{spelling.Pattern(`^(?:heap(?:ed|ing) |level )?spoons?(?:fuls?)?$`), 5, 20, "ml", false,
		func(it *larder.Item) bool { return it.Density > 0 },
		"a spoon is taken as 5 to 20 ml: weigh it"},
	{spelling.Pattern(`^(?:(?:thin|wide|long|small|large|pared) )?strips?$`), 0.5, 3, "g", false,
		func(it *larder.Item) bool { return zests[it.Name].hi > 0 },
		"a strip of zest is taken as 0.5 to 3 g: weigh it"},
	{spelling.Pattern(`^(?:rashers?|strips?|slices?)$`), 15, 40, "g", false,
		func(it *larder.Item) bool {
			return it.Name == "bacon" || it.Name == "back bacon" || it.Name == "ham"
		},
		"a rasher or slice is taken as 15 to 40 g: weigh it"},
	{spelling.Pattern(`^(?:(?:small|large|big|good) )?sprigs?$`), 0.3, 3, "g", false,
		func(it *larder.Item) bool { return it.Class == larder.ClassSpice || it.Water > 80 },
		"a sprig is taken as 0.3 to 3 g: weigh it"},
	{spelling.Pattern(`^(?:(?:small|large|big|good|generous) )?knobs?$`), 10, 25, "g", false,
		func(it *larder.Item) bool { return it.Class == larder.ClassFat },
		"a knob is taken as 10 to 25 g: weigh it"},
	{spelling.Pattern(`^(?:(?:small|large|big) )?(?:thumbs?|thumb[- ]sized? pieces?)$`), 10, 25,
		"g", false, func(it *larder.Item) bool { return it.Name == "fresh ginger" },
		"a thumb of ginger is taken as 10 to 25 g: weigh it"},
	{spelling.Pattern(`^(?:leaf|leaves|sheets?|blatt|blätter|feuilles?|fogli[oa]?)$`), 1.7, 5,
		"g", false, func(it *larder.Item) bool { return it.Name == "leaf gelatin" },
		"a leaf of gelatin is taken as 1.7 to 5 g, by its grade: weigh it"},
	{spelling.Pattern(`^dash(?:es)?$`), 0.3, 1.5, "ml", false,
		func(it *larder.Item) bool { return it.Density > 0 },
		"a dash is taken as 0.3 to 1.5 ml: weigh it"},
	{spelling.Pattern(`^(?:` + packet + `)$`), 7, 7, "g", false,
		func(it *larder.Item) bool { return it.Yeast > dryYeast },
		"a packet of dry yeast is taken as 7 g: read its label"},
	{spelling.Pattern(`^(?:` + northPacket + `)$`), 11, 14, "g", false,
		func(it *larder.Item) bool { return it.Yeast > dryYeast },
		"a packet of dry yeast of the north is taken as 11 to 14 g: read its label"},
	{spelling.Pattern(`^(?:` + packet + `)$`), 11, 16, "g", false,
		func(it *larder.Item) bool { return strings.Contains(it.Name, "baking powder") },
		"a packet of baking powder is taken as 11 to 16 g: read its label"},
	{spelling.Pattern(`^(?:` + packet + `)$`), 35, 45, "g", false,
		func(it *larder.Item) bool { return strings.Contains(it.Name, "custard powder") },
		"a packet of pudding powder is taken as 35 to 45 g: read its label"},
	{spelling.Pattern(`^(?:glass(?:es|ful)?|` + glassAbroad + `)$`),
		150, 250, "ml", false,
		func(it *larder.Item) bool { return it.Density > 0 },
		"a glass is taken as 150 to 250 ml: measure it"},
	{spelling.Pattern(`^(?:bicchierin[oi]|chupitos?|shots?|shot glass(?:es)?|` +
		`liqueur glass(?:es)?|schnapsglas|stamperl|kieliszek|snapseglass?)$`), 20, 50, "ml", false,
		func(it *larder.Item) bool { return it.Density > 0 },
		"a small glass is taken as 20 to 50 ml: measure it"},
	{spelling.Pattern(`^(?:` + packet + `)$`), 7.5, 10, "g", false,
		func(it *larder.Item) bool { return it.Name == "vanilla sugar" },
		"a packet of vanilla sugar is taken as 7.5 to 10 g: read its label"},
	{spelling.Pattern(`^(?:sachets?|packets?|envelopes?|pinch(?:es)? of threads)$`), 0.1, 0.5,
		"g", false,
		func(it *larder.Item) bool { return it.Name == "saffron" },
		"a packet of saffron is taken as 0.1 to 0.5 g: read its label"},
	{spelling.Pattern(`^(?:green )?(?:pods?|kapseln?|gousses?|capsules?|kapslar|kapsler)$`),
		0.1, 0.3, "g", false,
		func(it *larder.Item) bool { return it.Name == "cardamom" },
		"the seeds of a pod are taken as 0.1 to 0.3 g: weigh them"},
	{spelling.Pattern(`^(?:few )?(?:drops?|tropfen|gouttes?|gocc[ei]a?|droppar?|dråber?)$`),
		0.03, 0.3, "ml", false,
		func(it *larder.Item) bool { return it.Density > 0 },
		"a drop is taken as 0.03 ml, and a few as up to 0.3 ml: weigh it"},
	{spelling.Pattern(`^(?:(?:small|large|big|good) )?(?:bunch(?:es)?|bund|bouquet|mazzetto|` +
		`manojo)$`),
		10, 40, "g", false,
		func(it *larder.Item) bool { return it.Water > 70 && it.Class != larder.ClassFruit },
		"a bunch is taken as 10 to 40 g: weigh it"},
	{spelling.Pattern(`^(?:(?:small|large|big|good) )?handfuls?$`), 5, 40, "g", false,
		func(it *larder.Item) bool { return it.Water > 70 && it.Class != larder.ClassFruit },
		"a handful of a herb is taken as 5 to 40 g: weigh it"},
	{spelling.Pattern(`^(?:würfel|wuerfel|hefewürfel)$`), 42, 42, "g", false,
		func(it *larder.Item) bool { return it.YeastKind == "fresh" },
		"a Würfel of fresh yeast is taken as 42 g"},
	{spelling.Pattern(`^sticks?$`), 4, 4, "oz", true,
		func(it *larder.Item) bool {
			return it.Class == larder.ClassFat && it.Water > 0 && it.Fat < 90
		},
		"a stick is taken as the US one of 4 oz"},
}

// zests are the zest of one fruit, g. Memory.
var zests = map[string]struct{ lo, hi float64 }{"lemon zest": {3, 8}, "orange zest": {5, 12},
	"lime zest": {2, 5}}
