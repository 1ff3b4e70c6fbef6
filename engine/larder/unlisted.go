package larder

import (
	"slices"
	"strconv"
	"strings"
	"sync"
	"unicode"

	"forebake/engine/figure"
	"forebake/engine/spelling"
)

// Unlisted is an item of which only the name is known. It may be
// anything that Readings holds, its allergens are not declared, and
// what its name says of them stands as often present. ok is false where
// the name is asked instead: a word for foods of several kinds, a slip
// of a known name, one that says a poison, and what makes a dough, flour or
// leaven. So is one with characters that nobody sees. Raw meat, fish
// and milk in the name count as that.
func (l *Larder) Unlisted(name string) (it *Item, ok bool) {
	if a, several := l.Ambiguous(name); several {
		if fold(a.Word) != fold(name) { // more is said, which may choose
			return nil, false
		}
		if len(a.Choices) == 1 {
			return l.orUnlisted(name, a.Choices[0])
		}
		return l.oneOf(name, a.Choices)
	}
	if l.isWheat(name) {
		out, ok := l.oneOf(name, wheats)
		if ok {
			out.Open = "what kind of flour " + strconv.Quote(name) + " is"
		}
		return out, ok
	}
	typed := l.thing(name)
	hidden := func(r rune) bool { return !unicode.IsPrint(r) }
	if len(typed) == 0 || strings.ContainsFunc(name, hidden) ||
		l.Held(name) != "" && Grave(name) == "" ||
		slices.ContainsFunc(typed, l.makesDough) || l.isSlip(typed) {
		return nil, false
	}
	us, eu, traits := l.namedIn(typed)
	out := unlisted(name, us, eu)
	out.Traits = traits
	raw, ok := l.rawOf(name, typed)
	if !ok {
		return nil, false
	}
	control := Control("")
	if raw != nil {
		control = raw.Control
		out.Control, out.Traits = raw.Control, raw.Traits|traits
		out.Hazard, out.HazardFigure = raw.Hazard, raw.HazardFigure
	}
	out.read(control)
	return out, true
}

// oneOf is an item that is one of several of a kind, "cream" or "lard or
// butter": which is not known. ok is false for leavens and for foods of
// different kinds.
func (l *Larder) oneOf(name string, choices []string) (out *Item, ok bool) {
	for _, c := range choices {
		it, known := l.Find(c)
		if !known || it.Yeast > 0 {
			return nil, false
		}
		if out == nil {
			first := *it
			out = &first
			out.Name, out.Aliases, out.Readings = name, nil, nil
			out.Open = "which " + strconv.Quote(name) + " it is"
			out.PerMl = figure.Point(it.Density)
		}
		if it.Class != out.Class || it.ControlOf() != out.ControlOf() || it.Hazard != out.Hazard {
			return nil, false
		}
		out.Traits |= it.Traits & guards // each caution stands, whichever it is
		one := *it
		one.Name, one.Aliases = name, nil
		out.Readings = append(out.Readings, &one)
		out.PerMl = out.PerMl.Hull(figure.Point(it.Density))
		out.US, out.EU = eitherCodes(out.US, it.US), eitherCodes(out.EU, it.EU)
	}
	if out == nil {
		return nil, false
	}
	for _, one := range out.Readings {
		one.PerMl, one.US, one.EU = out.PerMl, out.US, out.EU
		one.Traits |= out.Traits & guards
	}
	return out, len(out.Readings) > 1
}

// orUnlisted is an item that is a known food or one that the larder does
// not have: "rum or spirit 96 %". ok is false for a leaven, and where the
// name says what can hurt.
func (l *Larder) orUnlisted(name, known string) (*Item, bool) {
	it, ok := l.Find(known)
	if !ok || it.Yeast > 0 || it.Flour > 0 || it.Hazard != "" || Grave(name) != "" {
		return nil, false
	}
	us, eu, traits := l.namedIn(foldedWords(name))
	one, out := *it, unlisted(name, eitherCodes(us, it.US), eitherCodes(eu, it.EU))
	out.Traits = traits | it.Traits&guards
	one.Traits |= out.Traits
	one.Name, one.Aliases, one.Undeclared = name, nil, true
	one.US, one.EU = out.US, out.EU
	out.read("")
	out.Readings = append(out.Readings, &one)
	return out, true
}

// wheats are what a flour of an unknown name may be.
var wheats = []string{"all-purpose flour", "bread flour", "pastry flour", "whole wheat flour"}

// isWheat reports whether a name is of a flour by its type, its class or
// a mill's word, and names no other grain or food.
func (l *Larder) isWheat(name string) bool {
	if Grave(name) != "" {
		return false
	}
	flour := false
	for _, w := range foldedWords(name) {
		if it, ok := l.Find(w); ok && (it.Class != ClassFlour || !slices.Contains(it.US, "wheat")) {
			return false
		}
		flour = flour || flourWords[w]
	}
	return flour && typeOfFlour.MatchString(name)
}

// flourWords are flour in several languages.
var flourWords = map[string]bool{"flour": true, "farine": true, "mehl": true, "farina": true,
	"harina": true, "maka": true, "liszt": true, "mjol": true, "meel": true, "farinha": true}

// typeOfFlour is a type or class beside the word.
var typeOfFlour = spelling.Pattern(`(?i)\d{2,4}\b|\b(?:first|second|third|1st|2nd|3rd) class\b|` +
	`\b(?:fine|plain|soft|hard|strong|bakers?|patent|premium|special|luxury|house)\b`)

// eitherCodes are the allergens of one or the other: those of both, and
// as often present those of one.
func eitherCodes(a, b []string) []string {
	var out []string
	for _, c := range AddCodes(a, b) {
		if !slices.Contains(a, c) || !slices.Contains(b, c) {
			c = strings.TrimSuffix(c, "?") + "?"
		}
		if !slices.Contains(out, c) {
			out = append(out, c)
		}
	}
	return out
}

// rawOf gives the raw meat, fish or milk that a name counts as; nil for
// none. ok is false where it says another thing that can hurt.
func (l *Larder) rawOf(name string, typed []string) (it *Item, ok bool) {
	milk := slices.ContainsFunc(typed, func(w string) bool {
		one, known := l.Find(w)
		a, several := l.Ambiguous(w) // cream
		if several && len(a.Choices) > 0 {
			one, known = l.Find(a.Choices[0])
		}
		return known && (one.Class == ClassDairy || one.Is(MilkFat))
	})
	for _, g := range gravesOf(name) {
		switch {
		case g.needs == ControlMeat || g.needs == ControlFish:
			for _, held := range l.Holding(name) {
				if one, known := l.Find(held); known && isRawFlesh(one) {
					it = one
					break
				}
			}
			if it == nil {
				return nil, false
			}
		case g.needs == ControlRawMilk && it == nil && milk:
			it, _ = l.Find("raw milk")
		case g.needs != ControlRawMilk || slices.Contains(typed, "egg") ||
			slices.Contains(typed, "eggs"):
			return nil, false
		}
	}
	return it, true
}

// unlisted is the middle of what may stand there.
func unlisted(name string, us, eu []string) *Item {
	return &Item{Name: name, Class: ClassOther, Undeclared: true, Basis: "none",
		Source: "not in the larder", US: us, EU: eu,
		Water: 40, Protein: 8, Fat: 15, Carbohydrate: 35, Sugars: 20, Sucrose: 20, Ash: 2,
		Density: 0.9, Piece: 20, Control: ControlUndeclared,
		PerMl: figure.Between(0.4, 1.4), PerPiece: figure.Between(0.2, 500),
		Open: "what is in " + strconv.Quote(name)}
}

// unlistedReadings are what an unknown food may be at its most, g per
// 100 g (judgement). What is dry or fat needs no control.
var unlistedReadings = []struct {
	water, protein, fat, carbohydrate, sugars, salt, alcohol float64
	keeps                                                    bool
}{
	{99, 0, 0, 0, 0, 0, 0, false}, {0, 0, 100, 0, 0, 0, 0, true}, {0, 0, 0, 100, 100, 0, 0, true},
	{5, 10, 2, 80, 2, 0, 0, true}, {45, 25, 25, 3, 1, 0, 0, false},
	{70, 5, 0, 5, 0, 20, 0, false}, {50, 0, 0, 10, 10, 0, 40, true},
}

// read gives an unlisted item each of its readings. control is that of
// what its name says is raw; "" for nothing.
func (it *Item) read(control Control) {
	for _, r := range unlistedReadings {
		one := *it
		one.Readings = nil
		one.Water, one.Protein, one.Fat = r.water, r.protein, r.fat
		one.Carbohydrate = r.carbohydrate
		one.Sugars, one.Sucrose, one.Salt, one.Ash = r.sugars, r.sugars, r.salt, r.salt
		if one.Alcohol = r.alcohol; control != "" || r.keeps {
			one.Control = control
		}
		it.Readings = append(it.Readings, &one)
	}
}

// makesDough reports whether a word names a flour or a leaven, whichever.
func (l *Larder) makesDough(word string) bool {
	makes := func(n string) bool {
		it, ok := l.Find(n)
		return ok && (it.Class == ClassFlour || it.Flour > 0 || it.Yeast > 0)
	}
	a, several := l.Ambiguous(word)
	other := func(n string) bool { return !makes(n) } // rice, or its flour
	return makes(word) || several && len(a.Choices) > 0 && !slices.ContainsFunc(a.Choices, other)
}

// isSlip reports whether the words are a known name with one of them
// spelt nearly right.
func (l *Larder) isSlip(typed []string) bool {
	for i, w := range typed {
		if len(w) < 4 {
			continue
		}
		for _, known := range l.wordsLike(w) {
			mended := slices.Clone(typed)
			mended[i] = known
			if _, _, ok := l.Described(strings.Join(mended, " ")); ok {
				return true
			}
		}
	}
	return false
}

// wordsLike lists words of known names that are spelt nearly as one that
// is none of them. They open with the same letter.
func (l *Larder) wordsLike(w string) (like []string) {
	all := shippedWords()[w[0]]
	for _, it := range l.added {
		for _, own := range foldedWords(it.Name) {
			if own[0] == w[0] && !slices.Contains(all, own) {
				all = append(slices.Clip(all), own)
			}
		}
	}
	for _, known := range all {
		if known == w {
			return nil
		}
		if spelling.IsSlip(w, known) {
			like = append(like, known)
		}
	}
	return like
}

// shippedWords are the words of all shipped names, by their first letter.
var shippedWords = sync.OnceValue(func() map[byte][]string {
	seen := map[string]bool{}
	all := map[byte][]string{}
	for _, e := range index {
		for _, w := range strings.Fields(e.key) {
			if !seen[w] {
				seen[w] = true
				all[w[0]] = append(all[w[0]], w)
			}
		}
	}
	return all
})

// guards are the traits that cautions and food-safety rules read.
var guards = func() (all Trait) {
	for _, w := range traitWords {
		if w.guards {
			all |= w.trait
		}
	}
	return all
}()

// told are the traits that a word in an unknown name gives it: those by
// which it can hurt somebody. Raw egg is none where it says a heat.
const told = Egg | Dairy | Nut | WholeNut | Honey | Spirit | RawEgg

var noRawEgg = spelling.Pattern(`(?i)\b(?:pasteuri[sz]ed|cooked|boiled|dried|powder\w*|baked|` +
	`fried|noodles?|pasta|candied|chocolate)\b`)

// namedIn lists the allergens of the foods that are named in words, as
// often present, and the traits by which they hurt.
func (l *Larder) namedIn(typed []string) (us, eu []string, traits Trait) {
	for from := range typed {
		for to := min(len(typed), from+3); to > from; to-- {
			if it, ok := l.Find(strings.Join(typed[from:to], " ")); ok {
				us = AddCodes(us, eitherCodes(nil, it.US))
				eu = AddCodes(eu, eitherCodes(nil, it.EU))
				traits |= it.Traits & told
				break
			}
		}
	}
	if noRawEgg.MatchString(strings.Join(typed, " ")) {
		traits &^= RawEgg
	}
	return us, eu, traits
}
