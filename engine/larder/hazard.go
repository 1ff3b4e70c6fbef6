package larder

import (
	"slices"
	"strings"
)

// Hazard is what in an ingredient can hurt by itself: by its dose,
// until it is cooked, or on the skin. hazards.csv says which ingredient
// has one, by whose figures.
type Hazard string

// The hazards. Item.HazardFigure is by the hazard; 0 where none is
// said here.
const (
	HazardCookTo     Hazard = "cook to"        // C that raw meat or fish must reach
	HazardEatenRaw   Hazard = "eaten raw"      // cured meat or fish, sold ready to eat
	HazardKernel     Hazard = "bitter kernel"  // g in 1 g: cyanide
	HazardCoumarin   Hazard = "coumarin"       // mg in 1 g
	HazardNutmeg     Hazard = "nutmeg"         // g in 1 g
	HazardNitrite    Hazard = "nitrite"        // mg in 1 g, nitrate too
	HazardBromate    Hazard = "bromate"        // mg in 1 g
	HazardLiquorice  Hazard = "glycyrrhizin"   // mg in 1 g
	HazardLectin     Hazard = "lectin"         // until it is boiled
	HazardElderberry Hazard = "raw elderberry" // until it is cooked
	HazardCassava    Hazard = "raw cassava"    // cyanide, until it is cooked
	HazardBerries    Hazard = "frozen berries" // viruses, until they are boiled
	HazardJuice      Hazard = "raw juice"      // until it is heated
	HazardFormula    Hazard = "infant formula" // until water of 70 C meets it
	HazardSprouts    Hazard = "sprouts"        // for the frail
	HazardCaustic    Hazard = "caustic"        // on skin, and where it is eaten unbaked
	HazardNoFood     Hazard = "no food"
)

// stuffedC is what raw meat and fish of no declared kind must reach, C:
// that of poultry and of stuffed food (FDA Food Code 2022,
// 3-401.11(A)(3), read).
const stuffedC = 74

// CookC is what raw meat or fish must reach to be cooked, C; 0 for
// anything else, and for what is eaten without a cook.
func (it *Item) CookC() float64 { return it.cookC(it.ControlOf()) }

// cookC is CookC of an item that needs control for a reason.
func (it *Item) cookC(control Control) float64 {
	switch {
	case control != ControlMeat && control != ControlFish || it.Is(Cooked):
		return 0
	case it.Hazard == HazardEatenRaw:
		return 0
	case it.Hazard == HazardCookTo:
		return it.HazardFigure
	}
	return stuffedC
}

// MoistPlant reports whether the item is a moist food of plants, and
// nothing says that it is acid: under oil, spores of C. botulinum in it
// have what they need. Dried herbs are not; what nobody declared is.
func (it *Item) MoistPlant() bool {
	const dry = 20 // g of water in 100 g
	switch it.Class {
	case ClassFruit, ClassSpice, ClassNut, ClassOther:
	default:
		return false
	}
	switch it.ControlOf() {
	case ControlProtein, ControlMeat, ControlFish, ControlRawMilk, ControlSoftCheese,
		ControlHardCheese:
		return false
	}
	return it.Water >= dry && it.Alcohol < dry && !it.Is(Acid) && !it.Is(Pectin)
}

// grave is a kind of name of which no harmless ingredient may take
// the place.
type grave struct {
	why   string
	words [][]string       // any word of each list; "sprout*" is a beginning
	but   []string         // a word with which it is harmless
	holds func(*Item) bool // whether an item has the harm too
	// why a house's own ingredient of the name needs control; "" by its label
	needs Control
}

func hazardous(h Hazard) func(*Item) bool {
	return func(it *Item) bool { return it.Hazard == h }
}

// isRawFlesh reports whether an item of the larder is raw meat or fish.
func isRawFlesh(it *Item) bool { return it.cookC(it.Control) > 0 }

// graves are those kinds, by the words of a name.
var graves = []grave{
	{"raw or not pasteurised", [][]string{{"raw", "unpasteurised", "unpasteurized", "cru", "crue"}},
		nil, func(it *Item) bool {
			animal := it.Class == ClassDairy || it.Class == ClassEgg || it.Is(MilkFat) ||
				it.Control == ControlMeat || it.Control == ControlFish
			switch {
			case it.Is(Cooked), it.Class == ClassFlour && !it.Is(RawFlour):
				return false
			case !animal:
				return true
			}
			return it.Control == ControlRawMilk || it.Is(RawEgg) || isRawFlesh(it)
		}, ControlRawMilk},
	{"raw meat", [][]string{{"raw", "minced", "ground", "mince"}, {"meat", "beef", "pork", "veal",
		"lamb", "mutton", "goat", "venison", "duck", "goose", "chicken", "turkey",
		"rabbit", "liver",
		"sausage*"}},
		[]string{"cheese", "milk", "cooked", "cured"}, isRawFlesh, ControlMeat},
	{"raw fish", [][]string{{"raw", "minced"}, {"fish", "salmon", "tuna", "cod", "trout", "herring",
		"mackerel", "squid", "shrimp*", "prawn*", "mussel*", "oyster*", "scallop*", "crab",
		"lobster"}},
		[]string{"cooked", "cured", "smoked"}, isRawFlesh, ControlFish},
	{"sprouted seeds", [][]string{{"sprout*"}}, []string{"brussels", "brussel"},
		func(it *Item) bool { return it.Control == ControlSprouts }, ControlSprouts},
	{"dried pulses", [][]string{{"dried", "dry", "raw", "soaked"}, {"bean", "beans"}},
		[]string{"paste", "vanilla", "tonka", "cocoa", "mung", "adzuki", "soy"},
		hazardous(HazardLectin), ""},
	{"bitter kernels, which give off cyanide",
		[][]string{{"kernel*", "bitter"}, {"apricot*", "almond*", "peach*", "plum*", "cherry"}},
		[]string{"extract", "aroma", "flavouring"}, hazardous(HazardKernel), ""},
	{"a caustic", [][]string{{"lye", "caustic", "hydroxide"}}, nil, hazardous(HazardCaustic), ""},
	{"nitrite or nitrate",
		[][]string{{"nitrite", "nitrate", "saltpetre", "saltpeter", "curing", "cure"}},
		nil, hazardous(HazardNitrite), ""},
	{"bromate", [][]string{{"bromate*"}}, nil, hazardous(HazardBromate), ""},
	{"elderberries", [][]string{{"elderberr*"}}, []string{"jam", "syrup", "jelly", "cordial"},
		hazardous(HazardElderberry), ""},
	{"cassava, which gives off cyanide", [][]string{{"cassava", "manioc", "mandioca", "yuca"}},
		[]string{"starch", "flour", "cooked", "boiled", "meal", "farinha"},
		hazardous(HazardCassava), ""},
	{"a cherry or plum stone, which gives off cyanide",
		[][]string{{"pit", "pits", "stone", "stones"},
			{"cherry", "apricot*", "peach*", "plum*"}}, nil, hazardous(HazardKernel), ""},
	{"a poison", [][]string{{"foxglove", "hemlock", "oleander", "monkshood", "aconite",
		"nightshade", "yew",
		"holly", "ackee", "comfrey", "castor", "ginkgo", "morel*", "fugu", "amanita", "shikimi"}},
		[]string{"sugar", "decoration*", "dried"}, hazardous(HazardNoFood), ""},
	{"a poison", [][]string{{"laurel"}, {"cherry"}}, nil, hazardous(HazardNoFood), ""},
	{"a poison", [][]string{{"death"}, {"cap", "caps"}}, nil, hazardous(HazardNoFood), ""},
	{"mad honey, a poison", [][]string{{"mad"}, {"honey"}}, nil, hazardous(HazardNoFood), ""},
	{"Japanese star anise, a poison", [][]string{{"japanese"}, {"anise"}}, nil,
		hazardous(HazardNoFood), ""},
	{"green or sprouted potatoes, which hold solanine",
		[][]string{{"green", "sprouted"}, {"potato*"}}, nil,
		hazardous(HazardNoFood), ""},
	{"wild mushrooms, which only who knows them may pick",
		[][]string{{"wild", "foraged"}, {"mushroom*"}},
		nil, hazardous(HazardNoFood), ""},
	{"rhubarb leaves", [][]string{{"rhubarb"}, {"leaf", "leaves"}}, nil,
		hazardous(HazardNoFood), ""},
	{"coumarin", [][]string{{"tonka", "cassia"}}, nil, hazardous(HazardCoumarin), ""},
	{"liquorice", [][]string{{"liquorice", "licorice"}}, nil, hazardous(HazardLiquorice), ""},
	{"the allergen lupin", [][]string{{"lupin*"}}, nil,
		func(it *Item) bool { return slices.Contains(it.EU, "lupin") }, ""},
	{"the allergen fish", [][]string{{"surimi", "fish", "roe", "caviar"}}, nil,
		func(it *Item) bool { return slices.Contains(it.EU, "fish") }, ""},
}

// gravesOf are the kinds that a name is of.
func gravesOf(name string) []*grave {
	typed := foldedWords(name)
	says := func(word string) bool {
		return slices.ContainsFunc(typed, func(w string) bool {
			begin, some := strings.CutSuffix(word, "*")
			return w == word || some && strings.HasPrefix(w, begin)
		})
	}
	var out []*grave
	for i := range graves {
		g := &graves[i]
		all := !slices.ContainsFunc(g.but, says)
		for _, any := range g.words {
			all = all && slices.ContainsFunc(any, says)
		}
		if all {
			out = append(out, g)
		}
	}
	return out
}

// Harmless says what the name says that the item is not; "" where the
// item may stand for it.
func Harmless(name string, it *Item) string { return lacking(gravesOf(name), it) }

// lacking is the first reason that an item does not hold; "" where it
// holds all.
func lacking(of []*grave, it *Item) string {
	for _, g := range of {
		if !g.holds(it) {
			return g.why
		}
	}
	return ""
}

// Grave says why a name needs an ingredient of its own kind; "" where
// it does not.
func Grave(name string) string {
	var out []string
	for _, g := range gravesOf(name) {
		out = append(out, g.why)
	}
	return strings.Join(out, ", and ")
}

// Holding lists up to three items of the larder that hold what the name
// says, those that share most words with it first.
func (l *Larder) Holding(name string) []string {
	of := gravesOf(name)
	if len(of) == 0 {
		return nil
	}
	typed := foldedWords(name)
	shares := map[string]int{} // words, by the item's name
	var out []string
	for i := range shipped {
		it := &shipped[i]
		own := gravesOf(it.Name)
		if slices.ContainsFunc(of, func(g *grave) bool {
			return !slices.Contains(own, g) || !g.holds(it)
		}) {
			continue
		}
		for _, word := range foldedWords(it.Name) {
			if slices.Contains(typed, word) {
				shares[it.Name]++
			}
		}
		out = append(out, it.Name)
	}
	slices.SortStableFunc(out, func(a, b string) int { return shares[b] - shares[a] })
	return out[:min(len(out), 3)]
}

// byName is the reason that the name of a house's own ingredient gives:
// raw milk, sprouts.
func (it *Item) byName() Control {
	for _, g := range gravesOf(it.Name) {
		if g.needs != ControlRawMilk || it.Class == ClassDairy || slices.Contains(it.EU, "milk") {
			return g.needs
		}
	}
	return ""
}
