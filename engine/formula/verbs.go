package formula

import (
	"slices"
	"strings"
	"sync"

	"forebake/engine/quantity"
	"forebake/engine/said"
)

// Verb is a kind of step. Each is one row of Verbs, and every answer that depends on the
// kind of step comes from the row's traits. No verb's name stands in code outside its row.
type Verb struct {
	Name  string
	Means string   // one line for the reference page
	Also  []string // other words that bakers write for it; one of two rows is the second once baked
	traits

	Own     ownValue
	options []*Option // those of its row, then those whose rows name it by a trait
	Says    []string  // "bake: core", for messages, by the option's index
}

// traits are what the program asks of a verb. Each has a type of its own, so that a row
// cannot leave one out or put it in the place of another: it would not compile. The zero of
// each is the unfavourable one for food safety, where it matters for that.
type traits struct {
	waits waits
	Heat  heatFlow
	place *Place
	Usual usual
	joins joins
	bulk  bulk
	gas   gas
	touch touch
	work  work
	Form  form
	puts  puts
	shelf shelf
	Order order
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
	NoHeat               // it follows its surroundings, or stays as it is
	takesHeat            // it is cooled; by = says how
	melts                // it is warmed to a target, and not cooked
	cooks                // it is heated to a target in a pan, a pot or hot fat
	bakes                // an oven heats it
)

// nowhere is the place of a verb that has none of its own.
var nowhere *Place

// HasUsualPlace reports whether the verb says where a part stands whose step names no place.
func (v *Verb) HasUsualPlace() bool { return v.Usual != anywhere }

// usual says where a part stands if the step names no place and the verb has none of
// its own.
type usual uint8

const (
	anywhere usual = iota // it has to be written
	InRoom                // in the room: in a cool corner of it, or a warm one
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
	Shapes         // pieces in their final shape
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
	RawOnly
)

// takes lists the options of a verb, in the order in which messages name them. Those whose own
// row says that the verb takes them (takenBy) follow by name.
type takes []*Option

// verb makes a row. It takes every trait, so that a row without one does not compile.
func verb(name, means string, own ownValue, takes takes, waits waits, heat heatFlow, place *Place,
	usual usual, joins joins, bulk bulk, gas gas, touch touch, work work, form form, puts puts,
	shelf shelf,
	order order, also ...string) *Verb {
	v := &Verb{Name: name, Means: means, Own: own, Also: also}
	v.traits = traits{waits, heat, place, usual, joins, bulk, gas, touch, work, form, puts, shelf,
		order}
	v.options = append(v.options, takes...)
	for _, o := range StepOptions {
		if o.takenBy != nil && o.takenBy(v) {
			v.options = append(v.options, o)
		}
	}
	slices.SortFunc(v.options[len(takes):], func(a, b *Option) int {
		return strings.Compare(a.Name, b.Name)
	})
	v.Says = make([]string, len(StepOptions))
	for _, o := range v.options {
		v.Says[o.Index] = name + ": " + o.Name
	}
	return v
}

// Cool is the step that a mend puts in where a filling is never cooled.
var Cool = verb("cool", "let it cool",
	aTime, takes{OptAt, OptTo, OptCore, OptBy, OptAs, OptCovered},
	standing, takesHeat, nowhere, InRoom, joinsNothing, goesOn, keepsGas, closed, unattended,
	keepsForm, putsNothing, inMaking, anyTime, "ressuage", "cool down", "leave to cool", "let cool",
	"hang")

// Chill is the step that a plan offers where it would want somebody by night.
var Chill = verb("chill", "put it in the cold",
	aTime, takes{OptAt, OptTo, OptCore, OptBy, OptAs, OptCovered, OptTin, OptCount},
	standing, takesHeat, fridge, anywhere, joinsNothing, goesOn, keepsGas, closed, unattended,
	keepsForm, putsNothing, inMaking, anyTime, "retard", "refrigerate", "fridge rest", "cold proof",
	"fridge", "in the fridge")

// The verbs that words for other verbs can stand for: a roll that ends flat, a tin alone, a
// fold of ingredients, a cover that is only a cloth.
var (
	MixVerb, SheetVerb, PanVerb, RestVerb, ProofVerb, ShapeVerb *Verb

	HandleVerb, BrushVerb, ChillVerb, FoldVerb, CookVerb *Verb
	HoldVerb, FillVerb                                   *Verb
)

func init() {
	for _, v := range Verbs {
		switch {
		case v.Mixes():
			MixVerb = v
		case v.Sheets():
			SheetVerb = v
		case v.Usual == InRoom && v.Alone() && v.Heat == NoHeat:
			RestVerb = v
		case v.Pans():
			PanVerb = v
		case v.Proofs():
			ProofVerb = v
		}
	}
	HandleVerb, BrushVerb = verbNamed("handle"), verbNamed("brush")
	ShapeVerb, CookVerb = verbNamed("shape"), verbNamed("cook")
	ChillVerb, FoldVerb = verbNamed("chill"), verbNamed("fold")
	HoldVerb, FillVerb = verbNamed("hold"), verbNamed("fill")
}

// Verbs are all the steps that the program knows, in the order of a bake.
var Verbs = []*Verb{
	verb("soak", "wet something before the mix: dry yeast, fruit, bread",
		aTime, takes{OptAt, OptTo, OptCovered},
		standing, NoHeat, nowhere, InRoom, soaks, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "bloom", "plump", "dissolve", "activate",
		"proof yeast", "proof the yeast", "hydrate", "marinate", "macerate"),
	verb("mix", "bring the ingredients together, by hand or machine",
		aTime, takes{OptBy, OptTo, OptAt},
		passing, NoHeat, nowhere, anywhere, mixes, goesOn, losesGas, touched, attended,
		keepsForm, putsNothing, inMaking, RawOnly, "knead", "beat", "whisk", "stir",
		"combine", "blend",
		"whip", "cream", "rub in", "first speed", "second speed", "frisage", "frasage", "incordare",
		"pétrissage",
		"mash", "grind", "puree", "fold in", "work in", "incorporate", "bassinage", "add", "rub",
		"stir in", "mix in", "beat in", "whisk in", "knead in", "kneten", "pétrir", "petrir",
		"impastare",
		"knåda"),
	verb("fold", "stretch and fold the dough in its tub",
		aTimeOrCount, takes{OptAt, OptTime, OptCovered},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, RawOnly, "turn", "knock back", "punch down", "punch",
		"knock down", "deflate", "degas",
		"stretch and fold", "coil fold", "slap and fold", "book fold", "letter fold", "single turn",
		"double turn", "letter turn", "book turn", "rabat", "turns", "roll and fold",
		"fold and roll", "roll and turn"),
	verb("rest", "leave it to stand and rise",
		aTime, takes{OptAt, OptTo, OptAs, OptCovered, OptTin, OptCount},
		standing, NoHeat, nowhere, InRoom, joinsNothing, goesOn, keepsGas, closed, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "bulk", "ferment", "rise",
		"let rise", "allow to rise", "let it rise", "let prove", "let proof", "stand", "ruhen",
		"lievitare",
		"jäsa",
		"first rise", "bulk rise", "pointage", "bulk ferment", "bulk fermentation", "bench rest",
		"relax",
		"first prove", "leave", "dry", "dry out"),
	Chill,
	verb("temper", "let it come back from the cold",
		aTime, takes{OptAt, OptTo, OptAs, OptCovered},
		standing, NoHeat, nowhere, InRoom, joinsNothing, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime),
	verb("freeze", "freeze it",
		aTime, takes{OptAt, OptTo, OptCore, OptBy, OptAs, OptCovered},
		standing, takesHeat, freezer, anywhere, joinsNothing, goesOn, keepsGas, closed, unattended,
		keepsForm, putsNothing, inMaking, anyTime),
	verb("thaw", "thaw it",
		aTime, takes{OptAt, OptTo, OptCore, OptAs, OptCovered},
		standing, NoHeat, nowhere, InRoom, joinsNothing, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "defrost"),
	verb("cook", "heat it in a pan, a pot or hot fat",
		aTime, takes{OptAt, OptTo, OptCore, OptBy, OptAs},
		passing, cooks, nowhere, anywhere, joinsNothing, endsBulk, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, anyTime, "heat", "heat up", "bring to temperature",
		"aufkochen", "kochen"),
	verb("melt", "melt it, or warm it and no more",
		aTime, takes{OptAt, OptTo, OptBy},
		passing, melts, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "warm", "warm up", "heat gently"),
	verb("sheet", "roll or sheet it flat, to a thickness",
		aLength, takes{OptAt, OptTime, OptWide},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, losesGas, touched, attended,
		sheets, putsNothing, inMaking, RawOnly, "roll out", "flatten", "press",
		"pat", "pat out", "pound"),
	verb("fill", "spread a filling on it",
		aPart, takes{OptAmount, OptAt, OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, fills, inMaking, anyTime, "spread", "lock", "lock in", "enclose", "stuff",
		"pipe", "spoon", "spoon on", "dollop"),
	verb("roll", "roll the sheet into a coil",
		aLengthOrWords, takes{OptSlice, OptPieces, OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, losesGas, touched, attended,
		coils, putsNothing, inMaking, RawOnly, "roll up", "coil"),
	verb("divide", "cut it into pieces, by weight or number",
		aMassOrCount, takes{OptPieces, OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, losesGas, touched, attended,
		divides, putsNothing, inMaking, anyTime, "scale", "portion", "cut", "slice", "division"),
	verb("shape", "give it its shape",
		anyWords, takes{OptPieces, OptAs, OptTin, OptCount, OptTime, OptAt},
		passing, NoHeat, nowhere, anywhere, joinsNothing, endsBulk, losesGas, touched, attended,
		Shapes, putsNothing, inMaking, RawOnly, "mould", "mold", "form", "plait", "braid",
		"twist", "façonnage", "boulage", "preshape", "pre-shape", "round"),
	verb("pan", "put it in its tin or on its tray",
		anyWords, takes{OptTin, OptCount, OptPieces, OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, endsBulk, keepsGas, touched, attended,
		pans, putsNothing, inMaking, anyTime, "place", "arrange", "transfer", "lay", "lay out"),
	verb("wash", "brush a wash on before the bake",
		aPart, takes{OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, washes, inMaking, anyTime, "glaze", "egg wash", "dorure", "eggwash",
		"top", "dip",
		"finish", "coat", "smear", "pour", "roll in", "toss in", "toss"),
	verb("dust", "flour, sugar or seeds on the outside, too little to count",
		harmlessWords, takes{OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, anyTime, "sprinkle", "scatter", "strew", "spray",
		"mist", "dredge"),
	verb("score", "cut its skin, or prick it, so that it opens where you want",
		anyWords, takes{OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, RawOnly, "slash", "snip", "dock", "dimple", "prick"),
	verb("handle", "work of the hands that changes no figure: drain, sift, trim, unmould",
		anyWords, takes{OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, attended,
		keepsForm, putsNothing, inMaking, anyTime, "drain", "strain", "sieve", "sift",
		"trim", "vent",
		"seal", "invert", "turn out", "unmould", "unmold", "flip", "preheat", "grease", "line",
		"garnish",
		"crimp", "serve warm", "split", "halve", "stamp", "emboss", "indent",
		"reserve", "set aside", "hide", "bag", "remove", "take out", "take off", "lift out",
		"demould", "demold", "depan", "tip", "tip out", "scrape", "scrape down", "pat dry"),
	verb("proof", "the final rise",
		aTime, takes{OptAt, OptTo, OptAs, OptCovered, OptTin, OptCount},
		standing, NoHeat, nowhere, inWarmth, joinsNothing, endsBulk, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, RawOnly, "prove",
		"second rise", "apprêt", "final rise", "final proof",
		"second prove", "final prove", "last prove"),
	verb("bake", "bake it",
		aTime, takes{OptAt, OptCore, OptBy, OptSteam, OptCovered, OptTin, OptCount},
		passing, bakes, nowhere, anywhere, joinsNothing, endsBulk, keepsGas, touched, unattended,
		keepsForm, putsNothing, inMaking, anyTime, "cuisson", "par-bake", "bake off",
		"backen", "cuire",
		"cuocere", "grädda", "reheat", "warm through"),
	verb("brush", "put a syrup, glaze or topping on after the bake",
		aPart, takes{OptTime},
		passing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, closed, attended,
		keepsForm, tops, inMaking, anyTime, "glaze", "frost", "drizzle", "top", "dip", "finish",
		"decorate", "soak", "ice", "coat", "pour", "pour over", "roll in", "toss in", "toss"),
	Cool,
	verb("hold", "keep it hot or cold for service",
		aTime, takes{OptAt, OptAs, OptCovered},
		standing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, touched, unattended,
		keepsForm, putsNothing, inService, anyTime, "display", "show", "keep warm", "keep hot"),
	verb("store", "keep it for later",
		aTime, takes{OptAt, OptAs, OptCovered},
		standing, NoHeat, nowhere, anywhere, joinsNothing, goesOn, keepsGas, closed, unattended,
		keepsForm, putsNothing, onShelf, anyTime),
}

// StepWord is a key of a step: a verb, or an option. A word for a verb may say the way too.
type StepWord struct {
	Verb       *Verb
	Way        *Way
	Afterwards *Verb // what it means once the part is baked or cooked; nil for the same
	Option     *Option
}

// stepWords are all the keys of steps. The word of two verbs' rows means the second
// after heat. They are put together on first use: a verb such as help needs none.
var stepWords = sync.OnceValue(func() map[string]StepWord {
	m := make(map[string]StepWord, manyWords)
	for _, v := range Verbs {
		for _, word := range append([]string{v.Name}, v.Also...) {
			if first := m[word]; first.Verb != nil {
				first.Afterwards = v
				m[word] = first
				continue
			}
			m[word] = StepWord{Verb: v}
		}
		for _, w := range Ways {
			for _, word := range w.Steps {
				if w.Suits(v) && m[word].Verb == nil {
					m[word] = StepWord{Verb: v, Way: w}
				}
			}
		}
	}
	said.StepWords(func(word, english string) {
		if m[word] == (StepWord{}) {
			m[word] = m[english]
		}
	})
	for _, o := range StepOptions {
		word := m[o.Name]
		word.Option = o
		m[o.Name] = word
	}
	return m
})

// manyWords is room for the keys of steps in all languages.
const manyWords = 768

// verbNamed finds a verb by the name of its row.
func verbNamed(name string) *Verb {
	return Verbs[slices.IndexFunc(Verbs, func(v *Verb) bool { return v.Name == name })]
}

// StepNamed finds a key of a step: "bake", "Bake", "deep_fry", "baking".
func StepNamed(key string) StepWord {
	if word, ok := stepWords()[key]; ok {
		return word
	}
	if word, ok := stepWords()[said.Key(key)]; ok {
		return word
	}
	for _, form := range said.Stems(key) {
		if word, ok := stepWords()[form]; ok && word.Verb != nil {
			return word
		}
	}
	return StepWord{}
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
func (v *Verb) HeatUnknown() bool { return v.Heat == heatUnknown }

// Cools reports whether the verb takes heat out.
func (v *Verb) Cools() bool { return v.Heat == takesHeat }

// Melts reports whether the verb warms the part to a target without cooking it.
func (v *Verb) Melts() bool { return v.Heat == melts }

// Cooks reports whether the verb heats the part to a target, in a pan, a pot or hot fat.
func (v *Verb) Cooks() bool { return v.Heat == cooks }

// Bakes reports whether an oven heats the part.
func (v *Verb) Bakes() bool { return v.Heat == bakes }

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

// Rises reports whether a dough rises in it: a rest, a retard or a proof.
func (v *Verb) Rises() bool {
	return v.Proofs() || v.Retards() || v.Alone() && v.Heat == NoHeat && v.Usual == InRoom
}

// Degasses reports whether the verb drives the gas out.
func (v *Verb) Degasses() bool { return v.gas == losesGas }

// Sheets reports whether the verb rolls the part flat.
func (v *Verb) Sheets() bool { return v.Form == sheets }

// Coils reports whether the verb rolls a sheet up.
func (v *Verb) Coils() bool { return v.Form == coils }

// ClosesIn reports whether the verb can bring what lies on the dough to the inside.
func (v *Verb) ClosesIn() bool {
	return v.Form == coils || v.Form == Shapes || v.Form == sheets || v.Turns()
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
func (v *Verb) Divides() bool { return v.Form == divides }

// Pans reports whether the verb puts the part in tins or on trays.
func (v *Verb) Pans() bool { return v.Form == pans }

// Finishes reports whether the pieces are in their final shape and number after the verb.
func (v *Verb) Finishes() bool { return v.Form == Shapes || v.Form == pans }

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
func (v *Verb) NeedsTime() bool { return v.Own == aTime }

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
	word := stepWords()[name]
	return word.Verb, word.Verb != nil && word.Way == nil && word.Option == nil
}

// Takes reports whether the option may stand beside the verb.
func (v *Verb) Takes(o *Option) bool { return o.Index < len(v.Says) && v.Says[o.Index] != "" }

// Options lists the names of the options, the verb's own before those of every step.
func (v *Verb) Options() []string {
	names := make([]string, len(v.options))
	for i, o := range v.options {
		names[i] = o.Name
	}
	return names
}

// Turns reports whether the step is told by its time or by a count of folds.
func (v *Verb) Turns() bool { return v.Own.Count && v.Own.Kinds == ForTime }

// ownValue says what may stand behind the verb itself: rest = "1 h", sheet = "5 mm".
type ownValue struct {
	Kinds quantity.Kinds
	Words bool // any text
	Bare  bool // that names no ingredient whose allergen would not be told
	Count bool // a whole number of times or pieces, written 3 or "3 pieces"
}

var (
	aTime          = ownValue{Kinds: ForTime}
	aTimeOrCount   = ownValue{Kinds: ForTime, Count: true}
	aLength        = ownValue{Kinds: ForLength}
	aLengthOrWords = ownValue{Kinds: ForLength, Words: true}
	aMassOrCount   = ownValue{Kinds: ForMass, Count: true}
	anyWords       = ownValue{Words: true}
	harmlessWords  = ownValue{Words: true, Bare: true}
	aPart          = ownValue{} // of a verb that puts one on
)

// Measures says what the verb's own value may be: "a time", "a mass, or a whole number".
func (v *Verb) Measures() string {
	var out []string
	for _, k := range []quantity.Kind{quantity.Time, quantity.Mass, quantity.Length} {
		if v.Own.Kinds.Has(k) {
			out = append(out, k.String())
		}
	}
	if v.Own.Count {
		out = append(out, "a whole number")
	}
	if v.PutsOn() {
		out = append(out, "the name of a part")
	}
	if v.Own.Words {
		out = append(out, "words")
	}
	return strings.Join(out, ", or ")
}

// The kinds of quantity that options and verbs take.
const (
	ForTime        = quantity.Kinds(1 << quantity.Time)
	ForMass        = quantity.Kinds(1 << quantity.Mass)
	ForLength      = quantity.Kinds(1 << quantity.Length)
	ForTemperature = quantity.Kinds(1 << quantity.Temperature)
	ForCount       = quantity.Kinds(1 << quantity.Count)
	ForPercent     = quantity.Kinds(1 << quantity.Percent)
)

// Keeps reports whether the part only stands ready in it: it is kept for later, or
// for service.
func (v *Verb) Keeps() bool { return v.Waits() && v.shelf != inMaking }

// MeasuredIn reports whether the verb's own value can be of a kind, such as a time or
// a length.
func (v *Verb) MeasuredIn(k quantity.Kind) bool { return v.Own.Kinds.Has(k) }

// GoesOn is a bake in the same oven at another heat: what is aimed at and read holds at
// its end.
func (s *Step) GoesOn(time, temp Given) *Step {
	one := *s
	one.Time, one.At, one.Where, one.Steam = time, temp, nil, nil
	s.Core, s.Reading = Given{}, nil
	return &one
}

// Standing is a wait between two folds: in the cold by its word or its place, else as
// a rest.
func (s *Step) Standing(wait Given, word string) *Step {
	one := &Step{Part: s.Part, Verb: StepNamed("rest").Verb, Place: s.Place, Word: "rest",
		Time: wait,
		At:   s.At, Where: s.Where, Covered: s.Covered}
	if strings.Contains(word, "chill") || s.Where.Cold() {
		one.Verb, one.Where = Chill, nil
	}
	return one
}
