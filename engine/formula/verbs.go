package formula

import (
	"fmt"
	"slices"
	"strings"

	"forebake/engine/formula/values"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/said"
	"forebake/engine/said/puton"
	"forebake/engine/said/turns"
	"forebake/engine/source"
	"forebake/engine/spelling"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// Verb is a kind of step. Each is one row of Verbs, and every answer that depends on the
// kind of step comes from the row's traits. No verb's name stands in code outside its row.
type Verb struct {
	Name  string
	Means string   // one line for the reference page
	also  []string // other words that bakers write for it; one of two rows is the second once baked
	traits

	own     ownValue
	options []*Option // its own, then those of every step
	says    []string  // "bake: core", for messages, by the option's index
}

// traits are what the program asks of a verb. Each has a type of its own, so that a row
// cannot leave one out or put it in the place of another: it would not compile. The zero of
// each is the unfavourable one for food safety, where it matters for that.
type traits struct {
	waits waits
	heat  heatFlow
	place *Place
	usual usual
	joins joins
	bulk  bulk
	gas   gas
	touch touch
	work  work
	form  form
	puts  puts
	shelf shelf
	order order
}

// waits says whether the verb leaves the part standing in some surroundings. A standing
// part without a time stands for an unknown time.
type waits uint8

const (
	standing waits = iota
	passing
)

// heatFlow says what the verb does to the part's temperature. After an undeclared one the
// temperature is unknown, and nothing counts as cooked.
type heatFlow uint8

const (
	heatUnknown heatFlow = iota
	noHeat               // it follows its surroundings, or stays as it is
	takesHeat            // it is cooled; by = says how
	melts                // it is warmed to a target, and not cooked
	cooks                // it is heated to a target in a pan, a pot or hot fat
	bakes                // an oven heats it
)

// nowhere is the place of a verb that has none of its own.
var nowhere *Place

// usual says where a part stands if the step names no place and the verb has none of
// its own.
type usual uint8

const (
	anywhere usual = iota // it has to be written
	inRoom                // in the room: in a cool corner of it, or a warm one
	inWarmth              // there, or in a warm place
)

// joins says which ingredients the verb brings together.
type joins uint8

const (
	joinsNothing joins = iota
	mixes              // those of the part, which begins here
	soaks              // one of them with a liquid, before the mix
)

// bulk says whether the bulk ferment ends where the verb begins.
type bulk uint8

const (
	goesOn bulk = iota
	endsBulk
)

// gas says whether the verb drives the gas out, so that a rise is counted from there.
type gas uint8

const (
	losesGas gas = iota
	keepsGas
)

// touch says whether hands, tools or air of service get into the part. After a cook, what
// gets in is alive; what stays closed has spores alone in it.
type touch uint8

const (
	touched touch = iota
	closed
)

// work says whether the baker stands by it. It has no bearing on safety.
type work uint8

const (
	attended work = iota
	unattended
)

// form says what the verb makes of the part's shape.
type form uint8

const (
	keepsForm form = iota
	sheets         // flat, to a thickness
	coils          // a sheet rolled up
	divides        // pieces, by weight or number
	shapes         // pieces in their final shape
	pans           // in tins or on trays
)

// puts says where another part goes that the verb puts on. Its own value is that
// part's name.
type puts uint8

const (
	putsNothing puts = iota
	fills            // on the dough, and into it when it is rolled up
	washes           // on the outside before the bake: crust afterwards
	tops             // on the outside after the bake
)

// shelf says whether the part is kept in it: for later, where days count, or for service.
type shelf uint8

const (
	onShelf shelf = iota
	inService
	inMaking
)

// order says whether the verb needs raw dough, and cannot stand after the bake.
type order uint8

const (
	anyTime order = iota
	rawOnly
)

// takes lists the options of a verb, in the order in which messages name them. Every step
// takes those of everyStep as well.
type takes []*Option

// verb makes a row. It takes every trait, so that a row without one does not compile.
func verb(name, means string, own ownValue, takes takes, waits waits, heat heatFlow, place *Place,
	usual usual, joins joins, bulk bulk, gas gas, touch touch, work work, form form, puts puts,
	shelf shelf,
	order order, also ...string) *Verb {
	v := &Verb{Name: name, Means: means, own: own, also: also}
	v.traits = traits{waits, heat, place, usual, joins, bulk, gas, touch, work, form, puts, shelf,
		order}
	v.options = append(append(v.options, takes...), everyStep...)
	v.says = make([]string, len(StepOptions))
	for _, o := range v.options {
		if StepOptions[o.index] != o {
			panic("option " + o.Name + " is no row of StepOptions")
		}
		v.says[o.index] = name + ": " + o.Name
	}
	return v
}

// Cool is the step that a mend puts in where a filling is never cooled.
var Cool = verb("cool", "let it cool",
	aTime, takes{optAt, optTo, optCore, optBy, optAs, optCovered},
	standing, takesHeat, nowhere, inRoom, joinsNothing, goesOn, keepsGas, closed, unattended,
	keepsForm, putsNothing, inMaking, anyTime, "ressuage", "cool down", "leave to cool", "let cool")

// Chill is the step that a plan offers where it would want somebody by night.
var Chill = verb("chill", "put it in the cold",
	aTime, takes{optAt, optTo, optCore, optBy, optAs, optCovered, optHumidity, optTin, optCount},
	standing, takesHeat, fridge, anywhere, joinsNothing, goesOn, keepsGas, closed, unattended,
	keepsForm, putsNothing, inMaking, anyTime, "retard", "refrigerate", "fridge rest", "cold proof",
	"fridge", "in the fridge")

// The verbs that other words can stand for: a roll that ends flat, a tin alone, a fold
// of ingredients.
var (
	mixVerb, sheetVerb, panVerb, restVerb, proofVerb *Verb
)

func init() {
	for _, v := range Verbs {
		switch {
		case v.Mixes():
			mixVerb = v
		case v.Sheets():
			sheetVerb = v
		case v.usual == inRoom && v.Alone() && v.heat == noHeat:
			restVerb = v
		case v.Proofs():
			proofVerb = v
		case v.Pans():
			panVerb = v
		}
	}
}

// Verbs are all the steps that the program knows, in the order of a bake.
var Verbs = []*Verb{
	verb("soak", "wet something before the mix: dry yeast, fruit, bread",
		aTime, takes{optAt, optTo, optCovered},
		standing, noHeat, nowhere, inRoom, soaks, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "bloom", "plump", "dissolve", "activate",
		"proof yeast", "proof the yeast", "hydrate"),
	verb("mix", "bring the ingredients together, by hand or machine",
		aTime, takes{optBy, optTo, optAt},
		passing, noHeat, nowhere, anywhere, mixes, goesOn, losesGas, touched, attended,
		keepsForm, putsNothing, inMaking, rawOnly, "knead", "beat", "whisk", "stir",
		"combine", "blend",
		"whip", "cream", "rub in", "first speed", "second speed", "frisage", "frasage", "incordare",
		"pétrissage",
		"mash", "grind", "puree", "fold in", "work in", "incorporate", "bassinage", "add", "rub",
		"stir in", "mix in", "beat in", "whisk in", "knead in", "kneten", "pétrir", "petrir",
		"impastare",
		"knåda"),
	verb("fold", "stretch and fold the dough in its tub",
		aTimeOrCount, takes{optAt, optTime, optCovered},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, rawOnly, "turn", "knock back", "punch down", "punch",
		"knock down", "deflate", "degas",
		"stretch and fold", "coil fold", "slap and fold", "book fold", "letter fold", "single turn",
		"double turn", "letter turn", "book turn", "rabat"),
	verb("rest", "leave it to stand and rise",
		aTime, takes{optAt, optTo, optAs, optCovered, optHumidity, optTin, optCount},
		standing, noHeat, nowhere, inRoom, joinsNothing, goesOn, keepsGas, closed, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "bulk", "ferment", "rise", "stand", "ruhen",
		"lievitare",
		"jäsa",
		"first rise", "bulk rise", "pointage", "bulk ferment", "bulk fermentation", "bench rest",
		"relax",
		"first prove"),
	Chill,
	verb("temper", "let it come back from the cold",
		aTime, takes{optAt, optTo, optAs, optCovered},
		standing, noHeat, nowhere, inRoom, joinsNothing, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime),
	verb("freeze", "freeze it",
		aTime, takes{optAt, optTo, optCore, optBy, optAs, optCovered},
		standing, takesHeat, freezer, anywhere, joinsNothing, goesOn, keepsGas, closed, unattended,
		keepsForm, putsNothing, inMaking, anyTime),
	verb("thaw", "thaw it",
		aTime, takes{optAt, optTo, optCore, optAs, optCovered},
		standing, noHeat, nowhere, inRoom, joinsNothing, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "defrost"),
	verb("cook", "heat it in a pan, a pot or hot fat",
		aTime, takes{optAt, optTo, optCore, optBy, optAs},
		passing, cooks, nowhere, anywhere, joinsNothing, endsBulk, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, anyTime, "heat", "heat up", "bring to temperature",
		"aufkochen", "kochen"),
	verb("melt", "melt it, or warm it and no more",
		aTime, takes{optAt, optTo, optBy},
		passing, melts, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "warm", "warm up", "heat gently"),
	verb("sheet", "roll or sheet it flat, to a thickness",
		aLength, takes{optAt, optTime, optWide},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, losesGas, touched, attended,
		sheets, putsNothing, inMaking, rawOnly, "roll out", "flatten", "press",
		"pat", "pat out"),
	verb("fill", "spread a filling on it",
		aPart, takes{optAmount, optAt, optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, fills, inMaking, anyTime, "spread", "lock", "lock in", "enclose", "stuff",
		"pipe"),
	verb("roll", "roll the sheet into a coil",
		aLengthOrWords, takes{optSlice, optPieces, optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, losesGas, touched, attended,
		coils, putsNothing, inMaking, rawOnly, "roll up", "coil"),
	verb("divide", "cut it into pieces, by weight or number",
		aMassOrCount, takes{optPieces, optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, losesGas, touched, attended,
		divides, putsNothing, inMaking, anyTime, "scale", "portion", "cut", "slice", "division"),
	verb("shape", "give it its shape",
		anyWords, takes{optPieces, optAs, optTin, optCount, optTime, optAt},
		passing, noHeat, nowhere, anywhere, joinsNothing, endsBulk, losesGas, touched, attended,
		shapes, putsNothing, inMaking, rawOnly, "mould", "mold", "form", "plait", "braid",
		"twist", "façonnage", "boulage", "preshape", "pre-shape", "round"),
	verb("pan", "put it in its tin or on its tray",
		anyWords, takes{optTin, optCount, optPieces, optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, endsBulk, keepsGas, touched, attended,
		pans, putsNothing, inMaking, anyTime, "place", "arrange", "transfer"),
	verb("wash", "brush a wash on before the bake",
		aPart, takes{optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, washes, inMaking, anyTime, "glaze", "egg wash", "dorure", "eggwash",
		"top", "dip",
		"finish", "coat", "smear", "pour", "roll in", "toss in"),
	verb("dust", "flour, sugar or seeds on the outside, too little to count",
		harmlessWords, takes{optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, anyTime, "sprinkle", "scatter", "strew"),
	verb("score", "cut its skin, or prick it, so that it opens where you want",
		anyWords, takes{optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, rawOnly, "slash", "snip", "dock", "dimple", "prick"),
	verb("handle", "work of the hands that changes no figure: drain, sift, trim, unmould",
		anyWords, takes{optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, anyTime, "drain", "strain", "sieve", "sift",
		"trim", "vent",
		"seal", "invert", "turn out", "unmould", "unmold", "flip", "preheat", "grease", "line",
		"garnish",
		"crimp", "serve warm", "split", "halve", "stamp", "emboss", "indent",
		"reserve", "set aside", "hide"),
	verb("proof", "the final rise",
		aTime, takes{optAt, optTo, optAs, optCovered, optHumidity, optTin, optCount},
		standing, noHeat, nowhere, inWarmth, joinsNothing, endsBulk, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, rawOnly, "prove",
		"second rise", "apprêt", "final rise", "final proof",
		"second prove", "final prove", "last prove"),
	verb("bake", "bake it",
		aTime, takes{optAt, optCore, optBy, optSteam, optCovered, optTin, optCount},
		passing, bakes, nowhere, anywhere, joinsNothing, endsBulk, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "cuisson", "par-bake", "bake off",
		"backen", "cuire",
		"cuocere", "grädda"),
	verb("brush", "put a syrup, glaze or topping on after the bake",
		aPart, takes{optTime},
		passing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, closed, attended,
		keepsForm, tops, inMaking, anyTime, "glaze", "frost", "drizzle", "top", "dip", "finish",
		"decorate", "soak", "ice", "coat", "pour", "pour over", "roll in", "toss in"),
	Cool,
	verb("hold", "keep it hot or cold for service",
		aTime, takes{optAt, optAs, optCovered},
		standing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inService, anyTime),
	verb("store", "keep it for later",
		aTime, takes{optAt, optAs, optCovered},
		standing, noHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, closed, unattended,
		keepsForm, putsNothing, onShelf, anyTime),
}

// stepWord is a key of a step: a verb, or an option. A word for a verb may say the way too.
type stepWord struct {
	verb       *Verb
	way        *Way
	afterwards *Verb // what it means once the part is baked or cooked; nil for the same
	option     *Option
}

// stepWords are all the keys of steps. The word of two verbs' rows means the second
// after heat.
var stepWords = func() map[string]stepWord {
	m := make(map[string]stepWord, len(Verbs)+len(StepOptions))
	for _, v := range Verbs {
		for _, word := range append([]string{v.Name}, v.also...) {
			if first := m[word]; first.verb != nil {
				first.afterwards = v
				m[word] = first
				continue
			}
			m[word] = stepWord{verb: v}
		}
		for _, w := range Ways {
			for _, word := range w.steps {
				if w.suits(v) && m[word].verb == nil {
					m[word] = stepWord{verb: v, way: w}
				}
			}
		}
	}
	said.StepWords(func(word, english string) {
		if m[word] == (stepWord{}) {
			m[word] = m[english]
		}
	})
	for _, o := range StepOptions {
		word := m[o.Name]
		word.option = o
		m[o.Name] = word
	}
	return m
}()

// stepNamed finds a key of a step: "bake", "Bake", "deep_fry", "baking".
func stepNamed(key string) stepWord {
	if word, ok := stepWords[key]; ok {
		return word
	}
	if word, ok := stepWords[said.Key(key)]; ok {
		return word
	}
	for _, form := range said.Stems(key) {
		if word, ok := stepWords[form]; ok && word.verb != nil {
			return word
		}
	}
	return stepWord{}
}

// settleOption settles what a word that is a verb and an option stands for: the verb where
// the step has no other.
func settleOption(words []stepWord) {
	other := false
	for _, w := range words {
		other = other || w.verb != nil && w.option == nil
	}
	for i := range words {
		if words[i].option != nil && other {
			words[i].verb = nil
		}
	}
}

// unknownStep says that a word is no step, with the near words for one, else all steps.
func unknownStep(word string) string {
	var words []string
	for _, v := range Verbs {
		words = append(append(words, v.Name), v.also...)
	}
	words = append(words, said.OtherSteps()...)
	for _, w := range Ways {
		words = append(words, w.steps...)
	}
	if near := spelling.Nearest(word, words, 3); len(near) > 0 {
		return fmt.Sprintf("no step %q; nearest is %s", word, strings.Join(near, ", "))
	}
	return fmt.Sprintf("no step %q; known are %s", word, strings.Join(VerbNames(nil), ", "))
}

// Waits reports whether the part stands in some surroundings for the time of the step: its
// warm hours count, and its cooling goes on in it.
func (v *Verb) Waits() bool { return v.waits == standing }

// Alone reports whether the part stands and stays closed.
func (v *Verb) Alone() bool { return v.Waits() && v.touch == closed }

// Touched reports whether something alive can get into the part.
func (v *Verb) Touched() bool { return v.touch == touched }

// Attended reports whether the baker stands by it.
func (v *Verb) Attended() bool { return v.work == attended }

// HeatUnknown reports whether it is undeclared what the verb does to the temperature.
func (v *Verb) HeatUnknown() bool { return v.heat == heatUnknown }

// Cools reports whether the verb takes heat out.
func (v *Verb) Cools() bool { return v.heat == takesHeat }

// Melts reports whether the verb warms the part to a target without cooking it.
func (v *Verb) Melts() bool { return v.heat == melts }

// Cooks reports whether the verb heats the part to a target, in a pan, a pot or hot fat.
func (v *Verb) Cooks() bool { return v.heat == cooks }

// Bakes reports whether an oven heats the part.
func (v *Verb) Bakes() bool { return v.heat == bakes }

// HeatsThrough reports whether the verb cooks or bakes.
func (v *Verb) HeatsThrough() bool { return v.Cooks() || v.Bakes() }

// Heats reports whether the verb puts heat in.
func (v *Verb) Heats() bool { return v.Melts() || v.HeatsThrough() }

// Retards reports whether the verb puts the part in the fridge unless something else
// is written.
func (v *Verb) Retards() bool { return v.Waits() && v.place == fridge }

// Freezes reports whether the verb puts the part in the freezer unless something else
// is written.
func (v *Verb) Freezes() bool { return v.Waits() && v.place == freezer }

// Mixes reports whether the verb brings the part's ingredients together.
func (v *Verb) Mixes() bool { return v.joins == mixes }

// Soaks reports whether the verb wets one ingredient before the mix.
func (v *Verb) Soaks() bool { return v.joins == soaks }

// Joins reports whether the verb brings an ingredient and a liquid together.
func (v *Verb) Joins() bool { return v.joins != joinsNothing }

// EndsBulk reports whether the bulk ferment ends where the verb begins.
func (v *Verb) EndsBulk() bool { return v.bulk == endsBulk }

// Proofs reports whether the part stands in it for its last rise.
func (v *Verb) Proofs() bool { return v.Waits() && v.EndsBulk() }

// Degasses reports whether the verb drives the gas out.
func (v *Verb) Degasses() bool { return v.gas == losesGas }

// Sheets reports whether the verb rolls the part flat.
func (v *Verb) Sheets() bool { return v.form == sheets }

// Coils reports whether the verb rolls a sheet up.
func (v *Verb) Coils() bool { return v.form == coils }

// ClosesIn reports whether the verb can bring what lies on the dough to the inside.
func (v *Verb) ClosesIn() bool {
	return v.form == coils || v.form == shapes || v.form == sheets || v.Turns()
}

// LiesOutside reports whether the step puts a topping on that no later step before a bake
// closes in.
func (s *Step) LiesOutside() bool {
	if s.Uses == nil || s.Uses.Kind != Topping {
		return false
	}
	for _, later := range s.Part.Steps[s.Index+1:] {
		if later.Verb.ClosesIn() || later.Verb.Bakes() {
			return later.Verb.Bakes()
		}
	}
	return true
}

// Divides reports whether the verb cuts the part into pieces by weight or number.
func (v *Verb) Divides() bool { return v.form == divides }

// Pans reports whether the verb puts the part in tins or on trays.
func (v *Verb) Pans() bool { return v.form == pans }

// Finishes reports whether the pieces are in their final shape and number after the verb.
func (v *Verb) Finishes() bool { return v.form == shapes || v.form == pans }

// PutsOn reports whether the verb puts another part on this one.
func (v *Verb) PutsOn() bool { return v.puts != putsNothing }

// Fills reports whether the verb puts another part on the dough, to be rolled in.
func (v *Verb) Fills() bool { return v.puts == fills }

// Washes reports whether the verb puts another part on the outside before the bake.
func (v *Verb) Washes() bool { return v.puts == washes }

// Tops reports whether the verb puts another part on the outside after the bake.
func (v *Verb) Tops() bool { return v.puts == tops }

// Stores reports whether the days in it count as days kept.
func (v *Verb) Stores() bool { return v.Waits() && v.shelf == onShelf }

// Chills reports whether the part is meant to come into the cold in it, or to stay there:
// it is cooled, or kept.
func (v *Verb) Chills() bool { return v.Cools() || v.Waits() && v.shelf != inMaking }

// NeedsTime reports whether a step without a time leaves an unknown time in the schedule.
func (v *Verb) NeedsTime() bool { return v.own == aTime }

// Group is a word that a rule's "on" may use for every verb with a trait.
type Group struct {
	Name  string
	Means string
	Has   func(*Verb) bool
}

// Groups are the words for several verbs. A verb belongs to a group by its traits.
var Groups = []Group{
	{"wait", "every step that leaves the part standing", (*Verb).Waits},
}

// FindGroup finds a group by its word.
func FindGroup(name string) (Group, bool) {
	for _, g := range Groups {
		if g.Name == name {
			return g, true
		}
	}
	return Group{}, false
}

// VerbNames lists the names of the verbs for which has is true, or of all where it is nil.
func VerbNames(has func(*Verb) bool) []string {
	var names []string
	for _, v := range Verbs {
		if has == nil || has(v) {
			names = append(names, v.Name)
		}
	}
	return names
}

// FindVerb gives the verb of that name, or of another word for it that says no more than
// the verb.
func FindVerb(name string) (*Verb, bool) {
	word := stepWords[name]
	return word.verb, word.verb != nil && word.way == nil && word.option == nil
}

// Takes reports whether the option may stand beside the verb.
func (v *Verb) Takes(o *Option) bool { return o.index < len(v.says) && v.says[o.index] != "" }

// Options lists the names of the options, the verb's own before those of every step.
func (v *Verb) Options() []string {
	names := make([]string, len(v.options))
	for i, o := range v.options {
		names[i] = o.Name
	}
	return names
}

// Turns reports whether the step is told by its time or by a count of folds.
func (v *Verb) Turns() bool { return v.own.count && v.own.kinds == forTime }

// ownValue says what may stand behind the verb itself: rest = "1 h", sheet = "5 mm".
type ownValue struct {
	kinds quantity.Kinds
	words bool // any text
	bare  bool // that names no ingredient whose allergen would not be told
	count bool // a whole number of times or pieces, written 3 or "3 pieces"
}

var (
	aTime          = ownValue{kinds: forTime}
	aTimeOrCount   = ownValue{kinds: forTime, count: true}
	aLength        = ownValue{kinds: forLength}
	aLengthOrWords = ownValue{kinds: forLength, words: true}
	aMassOrCount   = ownValue{kinds: forMass, count: true}
	anyWords       = ownValue{words: true}
	harmlessWords  = ownValue{words: true, bare: true}
	aPart          = ownValue{} // of a verb that puts one on
)

// Measures says what the verb's own value may be: "a time", "a mass, or a whole number".
func (v *Verb) Measures() string {
	var out []string
	for _, k := range []quantity.Kind{quantity.Time, quantity.Mass, quantity.Length} {
		if v.own.kinds.Has(k) {
			out = append(out, k.String())
		}
	}
	if v.own.count {
		out = append(out, "a whole number")
	}
	if v.PutsOn() {
		out = append(out, "the name of a part")
	}
	if v.own.words {
		out = append(out, "words")
	}
	return strings.Join(out, ", or ")
}

// The kinds of quantity that options and verbs take.
const (
	forTime        = quantity.Kinds(1 << quantity.Time)
	forMass        = quantity.Kinds(1 << quantity.Mass)
	forLength      = quantity.Kinds(1 << quantity.Length)
	forTemperature = quantity.Kinds(1 << quantity.Temperature)
	forCount       = quantity.Kinds(1 << quantity.Count)
	forPercent     = quantity.Kinds(1 << quantity.Percent)
)

// Keeps reports whether the part only stands ready in it: it is kept for later, or
// for service.
func (v *Verb) Keeps() bool { return v.Waits() && v.shelf != inMaking }

// MeasuredIn reports whether the verb's own value can be of a kind, such as a time or
// a length.
func (v *Verb) MeasuredIn(k quantity.Kind) bool { return v.own.kinds.Has(k) }

// stepWord finds a key of a step. To laminate is to put the butter in where the turns are
// steps of their own.
func (rd *reader) stepWord(s *Step, pair reading.Pair) stepWord {
	word := stepNamed(pair.Key)
	if said.Key(pair.Key) == "laminate" && rd.layered == nil &&
		slices.ContainsFunc(s.Part.Steps, func(s *Step) bool { return s.Verb.Fills() }) {
		rd.assumed(pair.Place, "laminate after the butter is in is read as its turns; each sheet "+
			"before a turn is a step of its own")
		return stepNamed("turn")
	}
	if word == (stepWord{}) && said.Key(pair.Key) == "laminate" && (rd.turnsLater ||
		rd.layered != nil) {
		if rd.layered == nil {
			rd.assumed(pair.Place, "laminate is read as the butter that is put in: the turns "+
				"are the folds below")
		}
		return stepNamed("enclose")
	}
	text, at, _ := rd.Literal(pair.Value)
	first, rest, more := strings.Cut(said.Key(pair.Key), " ")
	switch {
	case word.verb != nil && word.verb.Turns() && said.Rotates(text): // { turn = "90 degrees" }
		rd.assumed(at, fmt.Sprintf("%s = %q is read as turned round, and not as a fold", pair.Key,
			text))
		return stepNamed("handle")
	case word.verb != nil && word.verb.Turns() && slices.ContainsFunc(rd.blocks, func(name string) bool {
		return sameName(name, text)
	}): // { tourage = "butter block", turns = 3 }
		rd.assumed(at, fmt.Sprintf("%s = %q is read as { fill = %q }, and its turns", pair.Key, text,
			text))
		return stepNamed("enclose")
	case word != (stepWord{}):
	case said.Covering(first): // with a thing that covers, or with what is eaten
		return rd.covering(pair.Place, first, text)
	case first == "serve" && said.NoFigure(text) && strings.Contains(text, " "):
		rd.assumed(at, fmt.Sprintf("%q is kept as a note: what waits for service, warm "+
			"or cold, is a hold", text))
		return stepNamed("serve warm")
	case more && stepNamed(first).verb == mixVerb && rd.mixes(rest): // { add_butter = "5 min" }
		rd.assumed(pair.Place, fmt.Sprintf("%s is read as a mix of %s", pair.Key, rest))
		return stepNamed(first)
	}
	return word
}

// covering is the step that covers or wraps: a wait where a time is said, work of the hands
// where only a cloth or paper is, else what puts another part on.
func (rd *reader) covering(at source.Place, word, text string) stepWord {
	_, _, timed := said.TimeIn(text)
	switch {
	case timed && (said.IsCover(text) || !rd.isFood(text)):
		rd.assumed(at, word+" with a time is read as a rest")
		return stepNamed(restVerb.Name)
	case said.IsCover(text) || text == "":
		rd.assumed(at, fmt.Sprintf("%s = %q is read as work of the hands; covered = true in a "+
			"step says that it is covered", word, text))
		return stepNamed("handle")
	case word == "wrap":
		return stepNamed("enclose")
	}
	return stepNamed("coat")
}

// mixes reports whether a word is an ingredient of the part that is read.
func (rd *reader) mixes(word string) bool {
	_, why := said.Which(word, rd.listed)
	return why == ""
}

// tinAlone reads a step that names a tin and no verb: the dough goes into it.
func (rd *reader) tinAlone(s *Step, pairs []reading.Pair, words []stepWord) bool {
	i := slices.IndexFunc(words, func(w stepWord) bool { return w.option == optTin })
	if i < 0 {
		return false
	}
	text, _, _ := rd.Literal(pairs[i].Value)
	s.Verb, s.Place, s.word, s.Words = panVerb, pairs[i].Place, pairs[i].Key, text
	return true
}

// tinKey is a key of a part that says its tin, by the option's name or another word; nil
// for none.
func tinKey(b *hclsyntax.Body) *hclsyntax.Attribute {
	for _, name := range append([]string{optTin.Name}, said.OtherKeys(optTin.Name)...) {
		if a := b.Attributes[name]; a != nil {
			return a
		}
	}
	return nil
}

// tinOfPart reads a tin that stands beside the steps as that of the last step that can take
// one before the bake, else of the bake.
func (rd *reader) tinOfPart(p *Part, a *hclsyntax.Attribute) {
	at := rd.Place(a.NameRange)
	var into *Step
	for _, s := range p.Steps {
		switch {
		case s.Tin != "" || slices.Contains(s.Open, optTin):
			rd.Fault(at, "%s stands beside the steps, and the %s at line %d has a tin: take one "+
				"out", a.Name, s.Verb.Name, s.Place.Line())
			return
		case !s.Verb.Takes(optTin) || s.Verb.Bakes() && into != nil:
		case s.Verb.EndsBulk():
			into = s
		}
	}
	if into == nil {
		rd.Fault(at, "no step goes into a tin: add { pan = \"in the tin\", tin = %s } to the steps",
			placedText(rd.Place(a.Expr.Range())))
		return
	}
	optTin.fill(rd, into, a.Expr)
	rd.assumed(at, fmt.Sprintf("%s of the %s is read as the tin of its %s", a.Name, p.Kind,
		into.Verb.Name))
}

// steamApart gives a step that says nothing but whether there is steam to the bake that it
// stands before, and reports whether it did.
func (rd *reader) steamApart(items []hclsyntax.Expression, i int) bool {
	object, ok := items[i].(*hclsyntax.ObjectConsExpr)
	if !ok || i+1 == len(items) || len(object.Items) != 1 ||
		wordOf(object.Items[0]).option != optSteam {
		return false
	}
	bake, isObject := items[i+1].(*hclsyntax.ObjectConsExpr)
	if v := verbOf(items[i+1]); !isObject || v == nil || !v.Takes(optSteam) ||
		slices.ContainsFunc(bake.Items, func(pair hclsyntax.ObjectConsItem) bool {
			return wordOf(pair).option == optSteam
		}) {
		return false
	}
	whole := *bake
	whole.Items = append(slices.Clone(bake.Items), object.Items[0])
	rd.assumed(rd.Place(object.Range()), "steam before the bake is read as its steam")
	items[i+1] = &whole
	return true
}

// settleVerb takes another verb where the value says that it is meant: a roll that ends
// flat, a fold of ingredients.
func (rd *reader) settleVerb(s *Step, own hclsyntax.Expression) {
	if rd.firstRise {
		s.Verb = restVerb
		rd.assumed(s.Place, s.word+" stands before the work on the bench: it is read as the first "+
			"rise, a rest")
	}
	text, at, ok := rd.Literal(own)
	switch {
	case rd.lastRise && said.Rises(s.word):
		s.Verb = proofVerb
		rd.assumed(s.Place, s.word+" of what is shaped is read as the last rise, a proof")
		return
	case !ok:
		return
	case s.Verb.Coils() && said.InRounds(text) && !s.IsAfterHeat():
		s.Verb = stepNamed("shape").verb
	case s.Verb.Coils() && s.IsAfterHeat() && rd.blockIn(text) != "":
		s.Verb = stepNamed("brush").verb
	case s.Verb.Coils() && said.RolledOut(text):
		s.Verb = sheetVerb
	case s.Verb.Coils() && s.IsAfterHeat() && rd.tossedIn(text) != "":
		s.Verb = stepNamed("brush").verb // baked or fried, it is tossed in sugar
	case s.Verb.Turns() && said.NoFigure(text):
		if _, why := said.Which(text, rd.names(s)); why != "" {
			return
		}
		s.Verb = mixVerb
	default:
		return
	}
	rd.assumed(at, fmt.Sprintf("%s = %q is read as %s", s.word, text, s.Verb.Name))
}

// pipedOn takes what is piped on a shaped dough, a topping that nothing rolls in, for what
// lies on it.
func (rd *reader) pipedOn(u use) {
	s := u.step
	if !s.Verb.Fills() || said.Key(s.word) != "pipe" || s.Uses.Kind != Topping ||
		slices.ContainsFunc(s.Part.Steps[s.Index+1:], func(next *Step) bool {
			v := next.Verb
			return v.Sheets() || v.Coils() || v.Divides() || v.form == shapes
		}) {
		return
	}
	s.Verb = stepNamed("top").verb
	if s.IsAfterHeat() {
		s.Verb = stepNamed("top").afterwards
	}
	rd.assumed(u.place, fmt.Sprintf("%s = %q is read as %s: it lies on the dough", s.word, u.name,
		s.Verb.Name))
}

// tossedIn is what the larder knows of what a piece is rolled in, "caster sugar, for
// tossing"; "" for none.
func (rd *reader) tossedIn(text string) string {
	if head, ok := said.Apart(text); ok {
		text = head
	}
	if !rd.isFood(text) {
		return ""
	}
	return text
}

// isFood reports whether the larder knows all that words name.
func (rd *reader) isFood(text string) bool {
	things, _ := puton.Of(rd.opts.Larder, text, rd.opts.Units)
	return len(things) > 0
}

// asStep is a step that is written as one text, "mix 10 min", as the file holds it; ""
// where its first words are no verb.
func asStep(text string) string {
	words := strings.Fields(text)
	for n := min(2, len(words)); n > 0; n-- {
		head := strings.ToLower(strings.Trim(strings.Join(words[:n], " "), ":,"))
		if stepNamed(head).verb == nil {
			continue
		}
		key := strings.ReplaceAll(head, " ", "_")
		if rest := strings.Join(words[n:], " "); rest != "" {
			return fmt.Sprintf("{ %s = %q },", key, rest)
		}
		return fmt.Sprintf("{ %s = \"?\" },", key)
	}
	return ""
}

// verbsAlone parts a step that holds verbs and no option, { mix = "10 min", rest = "1 h" },
// into steps; none where an option could belong to either.
func verbsAlone(item hclsyntax.Expression) (out []hclsyntax.Expression) {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	if !ok {
		return nil
	}
	for _, pair := range object.Items {
		if w := wordOf(pair); w.verb == nil || w.option != nil || w.verb.PutsOn() ||
			said.OtherOption(hcl.ExprAsKeyword(pair.KeyExpr)) != "" {
			return nil
		}
		one := *object
		one.Items = []hclsyntax.ObjectConsItem{pair}
		out = append(out, &one)
	}
	return out
}

// hasTurns reports whether a step folds the dough.
func hasTurns(item hclsyntax.Expression) bool {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	return ok && slices.ContainsFunc(object.Items, func(pair hclsyntax.ObjectConsItem) bool {
		v := wordOf(pair).verb
		return v != nil && v.Turns()
	})
}

// risesAgain reports whether the first of some steps is a proof, and the dough is worked,
// folded, cut or shaped after it, and left again before it is heated: then it was the
// first rise.
func risesAgain(items []hclsyntax.Expression) bool {
	worked := false
	for i, item := range items {
		v := verbOf(item)
		switch {
		case i == 0 && (v == nil || !v.Proofs()):
			return false
		case i == 0 || v == nil:
		case v.HeatsThrough():
			return false
		case v.Waits() && worked:
			return true
		case v.order == rawOnly && v.Degasses(), v.Divides(), v.Turns():
			worked = true
		}
	}
	return false
}

// risesLast reports whether a wait is the last of a dough that is shaped or in its tin, before
// it is heated.
func risesLast(items []hclsyntax.Expression, i int) bool {
	v := verbOf(items[i])
	shaped := slices.ContainsFunc(items[:i], func(item hclsyntax.Expression) bool {
		before := verbOf(item)
		return before != nil && before.Finishes()
	})
	if v != restVerb || !shaped {
		return false
	}
	for _, item := range items[i+1:] {
		switch next := verbOf(item); {
		case next == nil:
		case next.HeatsThrough():
			return true
		case next.Waits(), next.Divides(), next.Turns(), next.order == rawOnly && next.Degasses():
			return false
		}
	}
	return false
}

// blockIn is the part of the formula that words name, "in the coating sugar"; "" for none.
func (rd *reader) blockIn(text string) string {
	for _, name := range rd.blocks {
		if said.Names(text, name) {
			return name
		}
	}
	return ""
}

// addsBeside reads what goes in beside how long it is mixed, { add = "butter", mix = "8 min" }, as one
// step. It reports whether it did.
func (rd *reader) addsBeside(s *Step, word stepWord, pair reading.Pair) bool {
	text, at, ok := rd.Literal(pair.Value)
	if !ok || !s.Verb.Mixes() || said.OtherOption(s.word) != optWith.Name {
		return false
	}
	switch {
	case word.verb.Mixes():
		with, open := s.With, s.OpenOwn
		rd.readOwn(s, pair.Value)
		s.With, s.OpenOwn = with, open && !s.Time.Set
	case word.verb.Turns():
		rd.keepAside(s, pair.Key, text, at)
		s.manner = text
	default:
		return false
	}
	rd.assumed(pair.Place, fmt.Sprintf("%s beside %s is read as one step: what goes in, and how",
		pair.Key, s.word))
	return true
}

// verbOf is the verb of a step as it is written; nil for none.
func verbOf(item hclsyntax.Expression) *Verb {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	if !ok {
		return nil
	}
	for _, pair := range object.Items {
		if w := wordOf(pair); w.verb != nil && w.option == nil {
			return w.verb
		}
	}
	return nil
}

// twoThings gives the filling verb of a step and the one other verb beside it; nil where
// there is none of its kind, or more than one.
func twoThings(item hclsyntax.Expression) (fill, other *Verb) {
	object, ok := item.(*hclsyntax.ObjectConsExpr)
	if !ok {
		return nil, nil
	}
	for _, pair := range object.Items {
		switch w := wordOf(pair); {
		case w.verb == nil || w.option != nil:
		case w.verb.Fills() && fill == nil:
			fill = w.verb
		case !w.verb.Fills() && other == nil:
			other = w.verb
		default:
			return nil, nil // three things at once
		}
	}
	return fill, other
}

// wordOf is what the key of a pair in a step means.
func wordOf(pair hclsyntax.ObjectConsItem) stepWord {
	return stepNamed(hcl.ExprAsKeyword(pair.KeyExpr))
}

// readDone takes a step that says no more than that it is done: once, or of an open time.
func (rd *reader) readDone(s *Step, at source.Place) {
	switch {
	case s.Verb.Turns():
		s.Measure = values.BareCount(1, at)
	case s.Verb.own.words:
	default:
		s.OpenOwn = true
		rd.assumed(at, fmt.Sprintf("%s = true says no figure: taken as \"?\"", s.word))
	}
}

// goesOn is a bake in the same oven at another heat: what is aimed at and read holds at
// its end.
func (s *Step) goesOn(time, temp Given) *Step {
	one := *s
	one.Time, one.At, one.Where, one.Steam = time, temp, nil, nil
	s.Core, s.Reading = Given{}, nil
	return &one
}

// standing is a wait between two folds: in the cold by its word or its place, else as
// a rest.
func (s *Step) standing(wait Given, word string) *Step {
	one := &Step{Part: s.Part, Verb: stepNamed("rest").verb, Place: s.Place, word: "rest",
		Time: wait,
		At:   s.At, Where: s.Where, Covered: s.Covered}
	if strings.Contains(word, "chill") || s.Where.Cold() {
		one.Verb, one.Where = Chill, nil
	}
	return one
}

// readFolds reads how often a dough is folded with the wait between, "3 times, every 20
// min": a fold and a wait each. It reports whether it did.
func (rd *reader) readFolds(s *Step, text string, at source.Place) bool {
	n, wait, ok := said.Every(text)
	if !ok {
		return false
	}
	time, ok := rd.QuantityText(wait, at, forTime, s.Verb.Name)
	if !ok {
		return true
	}
	word := strings.ReplaceAll(strings.ToLower(text), "fridge", "chill")
	s.Measure = values.BareCount(1, at)
	for i := range n {
		if i > 0 {
			rd.after = append(rd.after, func() *Step {
				one := *s
				return &one
			})
		}
		rd.after = append(rd.after, func() *Step { return s.standing(time, word) })
	}
	rd.assumed(at, fmt.Sprintf("%q is read as %d times { %s = 1 }, { rest = %q }", text, n,
		s.word, wait))
	return true
}

// foldsDuring reads folds that lie within the rise that they stand beside, "1 at 45 min": their
// moments take no time of their own. It reports whether it did.
func (rd *reader) foldsDuring(s *Step, text string, at source.Place) bool {
	n, ok := turns.During(text)
	if ok {
		s.Measure = values.BareCount(float64(n), at)
		s.Measure.Text, s.Note = text, text
		rd.assumed(at, fmt.Sprintf("%q is read as %s = %d within the rise beside it, whose time "+
			"holds its wait", text, s.word, n))
	}
	return ok
}

// readTurns reads turns that are told by their kinds, and reports whether it did.
func (rd *reader) readTurns(s *Step, text string, at source.Place) bool {
	n, ok := turns.Several(text)
	if ok {
		s.Measure = values.BareCount(float64(n), at)
		s.Measure.Text = text
		rd.assumed(at, fmt.Sprintf("%q is read as %d turns", text, n))
	}
	return ok
}

// readLayers reads a lamination as one word, { laminate = "3 single folds" }: the fat that
// the list has for it is put in, and each fold is sheeted, folded and left for what
// rest_between says.
func (rd *reader) readLayers(s *Step, text string, at source.Place) {
	p := rd.layerPart(s)
	rd.uses = append(rd.uses, use{step: s, name: p.Name, place: at})
	n, rest, ok := turns.Folds(text)
	if !ok {
		n = 0
	}
	rd.turnsAfter(s, n, at)
	says := fmt.Sprintf("{ fill = %q }, then { sheet = \"?\" } and { fold = 1 } %d times",
		p.Name, n)
	if n == 0 || rest != "" {
		rest = text
		says = fmt.Sprintf("{ fill = %q }; write each turn as { sheet = \"?\" }, { fold = 1 }",
			p.Name)
	}
	rd.assumed(at, fmt.Sprintf("%s = %q is read as %s, with what stands between them", s.word,
		text, says))
}

// turnsAfter puts turns behind a step: each is sheeted, folded and left for what rest_between says.
func (rd *reader) turnsAfter(s *Step, n int, at source.Place) {
	for range n {
		rd.after = append(rd.after,
			func() *Step {
				return &Step{Part: s.Part, Verb: sheetVerb, Place: s.Place,
					OpenOwn: true}
			},
			func() *Step {
				return &Step{Part: s.Part, Verb: stepNamed("fold").verb, Place: s.Place,
					Measure: values.BareCount(1, at)}
			}, func() *Step {
				if !rd.between.Set {
					return nil
				}
				return s.standing(rd.between, rd.betweenWord)
			})
	}
}

// besideTurns reads what stands beside the butter that is put in, turns = 3 or fold = "simple". It
// reports whether it is of its turns.
func (rd *reader) besideTurns(s *Step, pair reading.Pair) bool {
	n, at, ok := rd.value().WholeNumber(pair.Value)
	text, inside, quoted := rd.Literal(pair.Value)
	word := stepNamed(pair.Key).verb
	switch {
	case !s.Verb.Fills() || said.Key(pair.Key) != "turns" && (word == nil || !word.Turns()):
		return false
	case quoted && said.Whole(text):
		n, _ = said.Count(text)
		at, ok = inside, true
	}
	if !ok || n < 1 || n > MaxTurns {
		if quoted {
			rd.keepAside(s, pair.Key, text, inside)
		}
		return quoted
	}
	rd.turnsAfter(s, int(n), at)
	rd.assumed(at, fmt.Sprintf("%s = %s is read as { sheet = \"?\" } and { fold = 1 } %[2]s times",
		pair.Key, quantity.Plain(n)))
	return true
}

// MaxTurns bounds the turns that one line can stand for.
const MaxTurns = 8

// tellBetween tells where the dough stands between its folds.
func (rd *reader) tellBetween(s *Step) {
	if !rd.between.Set {
		return
	}
	one := s.standing(rd.between, rd.betweenWord)
	where := "in the room"
	if place := one.Stands(); place != nil {
		where = "in the " + place.Name
	} else if one.At.Set {
		where = "at " + one.At.Text
	}
	rd.assumed(rd.between.Place, fmt.Sprintf("%s = %q is read as { %s = %q } after each fold, %s",
		strings.ReplaceAll(rd.betweenWord, " ", "_"), rd.between.Text, one.Verb.Name, rd.between.Text,
		where))
}

// layerPart makes a filling of the fat that a dough's list has for its layers.
func (rd *reader) layerPart(s *Step) *Part {
	in := rd.layered
	p := &Part{Formula: rd.formula, Name: in.Name, Place: in.Place, Implied: true, Kind: Filling,
		Ingredients: []*Ingredient{in}}
	s.Part.Ingredients = slices.DeleteFunc(s.Part.Ingredients,
		func(i *Ingredient) bool { return i == in })
	in.Part, rd.layered = p, nil
	rd.formula.Parts = append(rd.formula.Parts, p)
	rd.assumed(in.Place, fmt.Sprintf("%q is not mixed in: it is read as filling %q { "+
		"ingredients = { %q = %q } }",
		in.Name, in.Name, in.Item.Name, writtenText(in.Amount.Given)))
	return p
}
