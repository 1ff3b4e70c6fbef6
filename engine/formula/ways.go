package formula

import (
	"strings"

	"forebake/engine/figure"
	"forebake/engine/science/bake"
	"forebake/engine/science/bakersmath"
	"forebake/engine/science/heat"
	"forebake/engine/spelling"
)

// Way is how a step is done: by = "...". Each is one row of Ways, whose traits decide all answers
// about it. The list is closed, since an unknown word would lose the cautions of its way. The
// baker's own words go into note.
type Way struct {
	Name  string
	Means string           // one line for the reference page
	suits func(*Verb) bool // the verbs that it can be said of
	Also  []string         // other words that bakers write for it
	wayTraits

	Steps []string // words for a step that is done this way: { fry = "2 min" }
	// how hot wet food gets in it where nothing is written, C; nothing if empty
	Food figure.Interval
	// temperature of its water or air where the step writes none, C; nothing if empty
	Holds figure.Interval
}

// wayTraits are the traits of a way. The zero of each is the least favourable for food safety.
type wayTraits struct {
	fat   fat
	air   air
	oven  bake.OvenKind
	mixer bakersmath.Mixer
}

// fat says whether there is hot fat.
type fat uint8

const (
	hotFat fat = iota
	noFat
)

// air is the medium around the part: one more than its heat.Place, or 0 for that of the step's
// place, which is slower.
type air uint8

const ownAir air = 0

func in(p heat.Place) air { return air(p) + 1 }

// noMixer is the mixer of a way that mixes nothing.
const noMixer = bakersmath.NotSaid

// noOven is the oven of a way without one, or of unknown kind.
const noOven = bake.AnyOven

// way makes a row. It takes every trait, so that a row without one does not compile.
func way(name, means string, suits func(*Verb) bool, fat fat, air air, oven bake.OvenKind,
	mixer bakersmath.Mixer, also ...string) *Way {
	return &Way{Name: name, Means: means, suits: suits, Also: also,
		wayTraits: wayTraits{fat, air, oven, mixer}}
}

// Boils reports whether wet food boils this way. Syrup passes 100 C; a simmer does not.
func (w *Way) Boils() bool { return w != nil && w.Food.Hi > 100 }

// heatsTo sets the temperature of wet food without a written to, C.
func (w *Way) heatsTo(lo, hi float64) *Way {
	w.Food = figure.Interval{Lo: lo, Hi: hi}
	return w
}

// holds sets the temperature of the way's own water or air, C.
func (w *Way) holds(lo, hi float64) *Way {
	w.Holds = figure.Interval{Lo: lo, Hi: hi}
	return w
}

// Words are the name of the way and the other words for it.
func (w *Way) Words() []string { return append([]string{w.Name}, w.Also...) }

// step adds words that name a step and the way it is done at once.
func (w *Way) step(words ...string) *Way {
	w.Steps = words
	return w
}

// warms reports whether the verb heats outside an oven.
func warms(v *Verb) bool { return v.Cooks() || v.Melts() }

// IceBath is the way to cool that advice names first.
var IceBath = way("ice bath", "in ice and water", (*Verb).Cools,
	noFat, in(heat.IceBath), noOven, noMixer,
	"ice", "ice water", "iced water", "ice water bath", "ice and water", "bath of ice").
	holds(iceLoC, iceHiC)

// iceLoC and iceHiC are what a bath of ice and water holds, C.
const iceLoC, iceHiC = 0, 2

// Griddle is the way to cook on a plate: muffins, and batters that are poured.
var Griddle = way("griddle", "on a griddle, a hot plate or in a waffle iron", (*Verb).Cooks,
	noFat, ownAir, noOven, noMixer, "griddled", "hot plate", "hotplate", "flat top",
	"waffle iron", "waffle maker", "waffle plates")

// Steaming is in steam; of a dough, time alone may prove it.
var Steaming = way("steaming", "in steam", (*Verb).Cooks,
	noFat, ownAir, noOven, noMixer, "steam", "steamed", "steamer")

// steamOven is the way to bake that has steam in the oven all the time.
var steamOven = way("steam oven", "in hot moving air and steam", (*Verb).Bakes,
	noFat, ownAir, bake.FanOven, noMixer,
	"steam", "combi oven", "combi steamer", "combination oven")

// FanOven is the way to bake of a temperature that says "fan".
var FanOven = way("fan oven", "in hot moving air", (*Verb).Bakes,
	noFat, ownAir, bake.FanOven, noMixer,
	"fan", "convection", "convection oven", "fan assisted oven", "hot air", "moving air",
	"air fryer")

// AnyMixer is a mixer of unknown kind.
var AnyMixer = way("mixer", "a mixer of any kind", (*Verb).Mixes,
	noFat, ownAir, noOven, bakersmath.NotSaid, "machine", "kneading machine", "knetmaschine",
	"maschine", "pétrin", "impastatrice", "maskin", "maskine", "bread machine")

// Ways are all the ways that the program knows, by what they do.
var Ways = []*Way{
	way("hand", "by hand, with a spoon or a scraper", (*Verb).Mixes, noFat, ownAir, noOven,
		bakersmath.ByHand, "hands", "von hand", "mit der hand", "hand kneten", "à la main",
		"main", "mano", "a mano", "för hand",
		"hånd", "håndkraft", "käsin", "hand on the bench", "hand mixing", "hand kneading",
		"kneading by hand", "kneading", "bench", "spoon", "wooden spoon", "spatula", "scraper",
		"rubbing in", "rubbed in", "fingertips"),
	way("spiral", "a spiral mixer", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.Spiral, "spiral mixer", "spiralkneter", "spiralkneten",
		"spirale", "pétrin spirale", "impastatrice a spirale", "spiralblandare", "spiralrører"),
	way("planetary", "a planetary mixer", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.Planetary, "planetary mixer", "vertical mixer",
		"batteur", "batteur mélangeur", "planetaria", "planetenrührer", "planetenrührwerk"),
	way("dough hook", "the hook of a planetary mixer", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.Planetary, "hook", "knethaken", "crochet", "gancio",
		"degkrok", "dejkrog"),
	way("paddle", "the paddle of a planetary mixer", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.Planetary, "beater", "flat beater", "paddle attachment"),
	way("whisk", "a whisk, by hand or machine", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.NotSaid, "whisking", "balloon whisk", "whip", "whipping"),
	way("stand mixer", "a small mixer for the home", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.StandMixer,
		"home mixer", "table mixer", "kitchen mixer", "kitchen machine", "küchenmaschine",
		"hand mixer", "electric hand mixer", "handrührgerät", "handmixer", "hand mixer with hooks",
		"robot", "robot pâtissier", "köksmaskin", "kjøkkenmaskin", "køkkenmaskine"),
	way("fork mixer", "a fork mixer", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.Fork, "fork kneader"),
	way("diving arm", "a mixer with diving arms", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.TwinArm,
		"diving arms", "diving arm mixer", "twin arm", "twin arm mixer", "double arm mixer"),
	way("food processor", "a food processor", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.FoodProcessor, "processor"),
	way("high speed", "a high-speed mixer", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.HighSpeed, "high speed mixer"),
	way("blender", "a blender, on a stand or in the hand", (*Verb).Mixes,
		noFat, ownAir, noOven, bakersmath.NotSaid,
		"hand blender", "stick blender", "immersion blender"),
	AnyMixer,

	way("frying", "in hot fat, deep or shallow", (*Verb).Cooks,
		hotFat, ownAir, noOven, noMixer,
		"fry", "fried", "fryer", "deep frying", "deep fry", "deep fried", "deep fryer", "deep fat",
		"deep fat frying", "deep fat fried", "deep fat fryer", "hot fat", "hot oil", "hot lard",
		"oil", "fat", "lard", "frying in oil", "frying in fat", "fried in oil", "fried in fat",
		"shallow frying", "shallow fry", "shallow fried", "pan frying", "pan fry", "pan fried",
		"frying pan", "hot frying fat", "hot frying oil", "frying oil", "frying fat").
		step("fry", "deep-fry", "deep fry", "shallow-fry", "shallow fry", "pan-fry", "pan fry"),
	way("pan", "in a pan or a pot, on the flame", warms,
		noFat, ownAir, noOven, noMixer,
		"pot", "saucepan", "kettle", "jacketed kettle", "hob", "stove", "stovetop", "flame",
		"low flame", "low heat", "gas", "induction").
		step("scald", "brown", "saute", "sauté", "sweat"),
	way("stirring", "in a pan, stirred all the time", warms,
		noFat, ownAir, noOven, noMixer, "stirred", "stir", "constant stirring", "whisking",
		"constant whisking", "whisk"),
	way("double boiler", "in a bowl over hot water", warms,
		noFat, ownAir, noOven, noMixer,
		"bain-marie", "water bath", "hot water bath", "hot water", "simmering water"),
	way("microwave", "in a microwave oven", warms,
		noFat, ownAir, noOven, noMixer, "microwave oven", "microwaved"),
	// What boils is at 100 C, at 3,000 m at 90 C; simmering 85 to 96 C and poaching 71 to 82 C are
	// ranges of cookery books (memory).
	way("boiling", "boiling, by itself or in water", (*Verb).Cooks,
		noFat, ownAir, noOven, noMixer,
		"boil", "boiled", "boiling water", "rolling boil", "the boil").
		step("boil", "bring to the boil", "bring to a boil").heatsTo(90, 105),
	way("simmering", "just under the boil, by itself or in water", (*Verb).Cooks,
		noFat, ownAir, noOven, noMixer, "simmer", "simmered").
		step("simmer").heatsTo(85, 100),
	way("poaching", "in hot water that does not boil", (*Verb).Cooks,
		noFat, ownAir, noOven, noMixer, "poach", "poached").
		step("poach").heatsTo(71, 85),
	Steaming,
	way("roasting", "dry, in an oven or an open pan: nuts, fruit", (*Verb).Cooks,
		noFat, ownAir, bake.StaticOven, noMixer,
		"roast", "roasted", "toasting", "toasted", "oven", "dry pan").
		step("toast", "roast"),
	Griddle,

	IceBath,
	way("stirred ice bath", "in ice and water, stirred", (*Verb).Cools,
		noFat, in(heat.StirredBath), noOven, noMixer,
		"stirred ice", "stirred ice water", "stirring in an ice bath", "ice bath stirred").
		holds(iceLoC, iceHiC),
	way("fan", "in moving air", (*Verb).Cools,
		noFat, in(heat.FanFridge), noOven, noMixer, "moving air", "forced air", "fan cooling"),
	// A soft cycle blows air of 3 C: Foodservice Equipment Reports (read). A hard one goes down to
	// -20 C: common practice, no source. UK guidance asks for 70 to 3 C in 90 min (read).
	way("blast chiller", "in a blast chiller or freezer, at -20 to 3 C without at",
		(*Verb).Cools, noFat,
		in(heat.Blast), noOven, noMixer, "blast", "blast chilling", "blast freezer",
		"blast freezing", "shock freezer", "shock chiller").holds(-20, 3),

	way("deck oven", "on the hot deck, in still air", (*Verb).Bakes,
		noFat, ownAir, bake.DeckOven, noMixer,
		"deck", "stone oven", "stone", "hearth"),
	way("static oven", "on a shelf, in still air", (*Verb).Bakes,
		noFat, ownAir, bake.StaticOven, noMixer,
		"oven", "conventional oven", "conventional heat", "top and bottom heat"),
	FanOven,
	way("rack oven", "on a rack that turns in hot moving air", (*Verb).Bakes,
		noFat, ownAir, bake.FanOven, noMixer, "rack", "rotary oven", "rotary rack oven"),
	steamOven,
	way("wood oven", "in an oven of brick, heated with wood", (*Verb).Bakes,
		noFat, ownAir, bake.DeckOven, noMixer,
		"wood fired oven", "wood fired", "brick oven", "masonry oven"),
}

// Suits reports whether the way can be said of a verb.
func (w *Way) Suits(v *Verb) bool { return w.suits(v) }

// Oven is the kind of oven; AnyOven where no way is written.
func (w *Way) Oven() bake.OvenKind {
	if w == nil {
		return bake.AnyOven
	}
	return w.oven
}

// Steams reports whether there is steam in the oven.
func (w *Way) Steams() bool { return w == steamOven }

// HotFat reports whether there is hot fat. It is false where no way is written.
func (w *Way) HotFat() bool { return w != nil && w.fat == hotFat }

// Iced reports whether ice and water are around the part.
func (w *Way) Iced() bool {
	return w != nil && (w.air == in(heat.IceBath) || w.air == in(heat.StirredBath))
}

// Air is the medium around the part; ok is false if the step's place decides it.
func (w *Way) Air() (p heat.Place, ok bool) {
	if w == nil || w.air == ownAir {
		return 0, false
	}
	return heat.Place(w.air - 1), true
}

// Mixer is the kind of mixer, for how much it warms a dough.
func (w *Way) Mixer() bakersmath.Mixer {
	if w == nil {
		return bakersmath.NotSaid
	}
	return w.mixer
}

// String gives the name; "" of no way.
func (w *Way) String() string {
	if w == nil {
		return ""
	}
	return w.Name
}

// WayNames lists the names of the ways that suit a verb.
func WayNames(v *Verb) []string {
	var names []string
	for _, w := range Ways {
		if w.Suits(v) {
			names = append(names, w.Name)
		}
	}
	return names
}

// notThat are words that negate a sign: "do not boil", "just below the boil".
var notThat = spelling.Pattern(
	`(?i)\b(?:not|never|don't|without|before|below|under|nearly|almost)\b`)

// WayIn is the way of cooking that a sign names: "bring to the boil"; nil for none.
func WayIn(text string) *Way {
	if notThat.MatchString(text) {
		return nil
	}
	for _, w := range Ways {
		if w.Food != (figure.Interval{}) && strings.Contains(strings.ToLower(text), w.Steps[0]) {
			return w
		}
	}
	return nil
}
