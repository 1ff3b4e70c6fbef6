package larder

import (
	"slices"
	"strings"

	"forebake/engine/spelling"
)

// Words of a name that say whether heat reached it, folded.
const (
	rawWords    = " raw uncooked unpasteurised unpasteurized unpasteurise unheated "
	heatedWords = " cooked boiled braised roast roasted baked fried grilled steamed poached " +
		"stewed simmered pulled browned canned tinned precooked pasteurised pasteurized uht " +
		"sterilised sterilized hardboiled blanched "
)

func anyOf(typed []string, words string) bool {
	return slices.ContainsFunc(typed, func(w string) bool {
		return strings.Contains(words, " "+w+" ")
	})
}

// isRaw reports whether heat still has to reach the item.
func (it *Item) isRaw() bool {
	switch it.Hazard {
	case HazardLectin, HazardCassava, HazardElderberry, HazardJuice, HazardSprouts:
		return true
	}
	return it.Is(RawEgg) || it.Is(RawFlour) || it.Control == ControlRawMilk || isRawFlesh(it) ||
		it.Control == ControlRawVegetable
}

// turnsState reports whether a near name would say another state than what was written: raw for
// cooked or pasteurised, or the reverse. A name that says none is never answered with a heated one.
func turnsState(name string, near string, it *Item) bool {
	typed, known := foldedWords(name), foldedWords(near)
	switch raw, heated := anyOf(typed, rawWords), anyOf(typed, heatedWords); {
	case heated && !raw:
		return it.isRaw() || anyOf(known, rawWords)
	case raw:
		return !it.isRaw() || anyOf(known, heatedWords)
	}
	return anyOf(known, heatedWords) || it.Control == ControlRawMilk
}

// denied are words that deny a state: what is not cooked is raw.
var denied = spelling.Pattern(`(?i)\b(?:not|never|no|nicht|pas|non)[- ]` +
	`(?:(?:yet|fully|been|at all) )*(?:(cooked|boiled|roasted|baked|fried|steamed|heated|` +
	`heat[- ]treated|grilled|poached)|` +
	`(pasteuri[sz]ed))\b`)

// inPlain writes the state that words deny as the one that they mean: "chicken, not cooked" is raw.
func inPlain(name string) string {
	m := denied.FindStringSubmatch(name)
	switch {
	case m == nil:
		return name
	case m[2] != "":
		return strings.Replace(name, m[0], "unpasteurised", 1)
	}
	return strings.Replace(name, m[0], "raw", 1)
}

// stateOf finds the item of a name without a word that only says the state it has anyway: "raw
// chicken wings", "pasteurised cream cheese".
func (l *Larder) stateOf(name string) (*Item, []string, string, bool) {
	words := strings.Fields(name)
	for i, w := range words {
		w = fold(strings.Trim(w, ",;()"))
		raw := w == "raw" || w == "uncooked"
		if !raw && w != "pasteurised" && w != "pasteurized" && w != "uht" || len(words) < 2 {
			continue
		}
		rest := strings.Join(slices.Concat(words[:i], words[i+1:]), " ")
		it, said, unread, ok := l.described(strings.Trim(rest, " ,;"))
		plain := it != nil && !it.Is(Cooked) && (it.Class == ClassNut || it.Class == ClassFruit)
		if ok && (raw && (it.isRaw() || plain) || !raw && it.Class == ClassDairy && !it.isRaw()) {
			return it, said, unread, true
		}
		break // one of them
	}
	return nil, nil, "", false
}
