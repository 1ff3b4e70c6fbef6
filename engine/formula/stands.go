package formula

import (
	"fmt"
	"slices"
	"strings"
	"sync"
	"unicode"
)

// Stand is the shape of a large piece without a tin, which decides its thickness.
type Stand struct {
	Name string
	Long float64 // how many times as long as wide, at least 1; of a ring along its middle
	High float64 // height to width
	Ring bool    // no ends: as thick all along

	words string // singular, each alone
}

// stands are tried in this order, for words combine: "a plaited ring", "a round
// loaf", "balls in a loaf tin". Lengths and heights are common practice, within a
// third; those of a plait and a loaf come from published bakes (bake-times.csv,
// B07, B08, B19: 2 to 2.5 times as long, 0.6 to 0.75 high).
var stands = []*Stand{
	{"ring", 6, 0.6, true, "ring wreath crown garland couronne corona rosca roscon roscón kranz " +
		"tube circle horseshoe"},
	{"loaf", 2.5, 0.6, false, "tin pan mould mold"}, // one that the house does not know
	{"disc", 1, 0.4, false, "disc disk flat flattened coil snail spiral schnecke"},
	{"round", 1, 0.5, false, "round ball boule bun cob dome head purse parcel boulage"},
	{"loaf", 2.5, 0.6, false, "loaf loave plait braid twist plaited braided twisted oval bâtard " +
		"batard stollen strand treccia tresse"},
	{"log", 4, 0.6, false, "log roll rolled baton rope strudel stick long " +
		"cylinder baguette finger"},
}

// The stands that bound a large piece of unknown shape, and the middle one.
var (
	Thickest, UsualStand, Thinnest = standNamed("round"), standNamed("loaf"), standNamed("ring")
)

func standNamed(name string) *Stand {
	return stands[slices.IndexFunc(stands, func(s *Stand) bool { return s.Name == name })]
}

// StandAt is the stand of a part's pieces at a step: by the words of the last shaping, else by
// makes, else of a rolled-up sheet; nil for none.
func (p *Part) StandAt(index int) *Stand {
	coiled := false
	for i := index - 1; i >= 0; i-- {
		s := p.Steps[i]
		if s.isShapeOpen() {
			return Thickest
		}
		if s.Verb.Finishes() {
			if found := standIn(s.Words + " " + s.Word); found != nil {
				return found
			}
		}
		coiled = coiled || s.Verb.Coils()
	}
	if m := p.Formula.Makes; m.Place.File == nil {
	} else if found := standIn(PlacedText(m.Place)); found != nil {
		return found
	}
	if coiled {
		return standNamed("log")
	}
	return nil
}

// isShapeOpen reports whether a step's shape is "?". The thickest shape is the worst case, in the
// oven and in the cold.
func (s *Step) isShapeOpen() bool { return s.OpenOwn && s.Verb.Finishes() && s.Verb.Own.Words }

// standIn finds the first stand that a text names.
func standIn(text string) *Stand {
	first := len(stands)
	notLetter := func(r rune) bool { return !unicode.IsLetter(r) }
	for word := range strings.FieldsFuncSeq(strings.ToLower(text), notLetter) {
		if i, ok := standWords()[word]; ok {
			first = min(first, i)
		}
	}
	if first == len(stands) {
		return nil
	}
	return stands[first]
}

// standWords are the first stands of each word and of its plurals, by their numbers.
var standWords = sync.OnceValue(func() map[string]int {
	out := map[string]int{}
	for i, s := range slices.Backward(stands) {
		for name := range strings.FieldsSeq(s.words) {
			out[name], out[name+"s"], out[name+"es"] = i, i, i
		}
	}
	return out
})

// fewPieces is the most pieces of a batch that count as large.
const fewPieces = 3

// standsAs names the assumed stand of a large piece in a bake; "" for a loaf, the usual one, and
// for a tin.
func (p *Part) standsAs(bake *Step) string {
	n := p.Formula.Makes.Pieces
	if !bake.Verb.Bakes() || n < 1 || n > fewPieces {
		return ""
	}
	as := p.StandAt(bake.Index)
	if as == nil || as.Name == UsualStand.Name || slices.ContainsFunc(p.Steps[:bake.Index+1],
		func(s *Step) bool { return s.Tin != "" }) {
		return ""
	}
	return fmt.Sprintf("over 250 g, a %s %g times as long as wide, %g as high", as.Name,
		as.Long, as.High)
}
