package larder

import (
	"slices"
	"strconv"
	"strings"
	"sync"

	"forebake/engine/larder/internal/names"
	"forebake/engine/spelling"
)

// Ambiguous is a bare word that may mean several ingredients, or none
// of the larder's: a baker is asked for one of Choices. Taken is the
// item that the larder takes all the same; a check may say so.
// Without Choices the word stands for a part to be written, or only a
// label tells.
type Ambiguous struct {
	Word, Taken string
	Choices     []string
	Why         string
}

// Ambiguous returns the entry of a word that may mean several things. A
// word that a house added to the larder is not ambiguous.
func (l *Larder) Ambiguous(word string) (Ambiguous, bool) {
	a := l.ambiguities.Get(word, l.ambiguity)
	if a == nil {
		return Ambiguous{}, false
	}
	return *a, true
}

// ambiguity is the entry that Ambiguous returns, nil for none.
func (l *Larder) ambiguity(word string) *Ambiguous {
	var room [72]byte
	key := names.Append(room[:0], word)
	if l.byKey[string(key)] != nil {
		return nil
	}
	if a, ok := ambiguousByKey()[string(key)]; ok {
		return a
	}
	if _, known := l.Find(word); known {
		return nil
	}
	if one, other, either := strings.Cut(string(key), " or "); either { // "butter or margarine"
		a := Ambiguous{Word: word, Why: "one or the other"}
		for _, name := range []string{one, other} {
			if it, ok := l.Find(name); ok {
				a.Choices = append(a.Choices, it.Name)
			}
		}
		if len(a.Choices) == 0 {
			return nil
		}
		return &a
	}
	head, _, _ := strings.Cut(word, ",") // "olives, pitted" are olives, whichever
	typed := foldedWords(head)
	for i := range typed {
		if i > 0 && !leaves(typed[i-1], nil) {
			break
		}
		for end := len(typed); end > i; end-- { // "manteca pomada"
			if end < len(typed) && !leaves(typed[end], nil) {
				break
			}
			if a, ok := ambiguousByKey()[strings.Join(typed[i:end], " ")]; ok {
				return a
			}
		}
	}
	return nil
}

// ambiguousByKey are the entries by their folded words: every name that
// is read is looked up.
var ambiguousByKey = sync.OnceValue(func() map[string]*Ambiguous {
	all := make(map[string]*Ambiguous, len(ambiguous))
	for i := range ambiguous {
		all[fold(ambiguous[i].Word)] = &ambiguous[i]
	}
	return all
})

// maxNear is how many near names are offered.
const maxNear = 4

// Near returns the names that an unknown one may mean, the likeliest
// first. Whole words go before letters: a name of the larder that
// shares the last word, the thing itself ("flour", "cheese"), and then
// others. Letters count only within words of five letters or more, or
// where all but the order of the letters is the same, so that ham is
// not jam.
func (l *Larder) Near(name string) []string {
	name = inPlain(name)
	typed := l.thing(name)
	if len(typed) == 0 {
		return nil
	}
	if held := l.Held(name); held != "" {
		return []string{held}
	}
	written, graves, all := name, gravesOf(name), l.Names()
	// Few names come into question: they alone are asked whether they hurt, or turn what was said.
	refused := func(n string, it *Item) bool {
		return it != nil && ((it.Hazard == HazardCaustic || it.Hazard == HazardNoFood) &&
			Harmless(n, it) == "" && Grave(written) == "" ||
			len(graves) > 0 && lacking(graves, it) != "" || turnsState(written, n, it))
	}
	name = strings.Join(typed, " ")
	offered := map[*Item]bool{} // one name of each item
	near := slices.DeleteFunc(spelling.Nearest(name, all, 12*maxNear), func(n string) bool {
		it, _ := l.Find(n)
		if refused(n, it) {
			return true
		}
		again := offered[it]
		offered[it] = true
		known := foldedWords(n)
		return again || !sharesWord(typed, known) || !sameStart(typed, known)
	})
	if len(near) > 0 {
		return near[:min(maxNear, len(near))]
	}
	type candidate struct {
		item  *Item
		score int
	}
	var found []candidate
	seen := map[*Item]bool{}
	for _, n := range all {
		it, ok := l.Find(n)
		if !ok || seen[it] {
			continue
		}
		score := 0
		words := foldedWords(n)
		for i, w := range typed {
			if len(w) < 3 || !slices.Contains(words, w) ||
				strings.Contains(rawWords+heatedWords, " "+w+" ") {
				continue
			}
			score++
			if i == len(typed)-1 {
				score++
			}
		}
		if score > 0 && !refused(n, it) {
			seen[it] = true
			if !turnsState(written, it.Name, it) {
				found = append(found, candidate{it, score})
			}
		}
	}
	slices.SortStableFunc(found, func(a, b candidate) int { return b.score - a.score })
	for _, c := range found[:min(maxNear, len(found))] {
		if c.score == found[0].score { // who shares the thing, before who shares a word
			near = append(near, c.item.Name)
		}
	}
	return near
}

// thing are the folded words of a name that say what it is: without what stands aside of it, and
// without how it is prepared, where something is left.
func (l *Larder) thing(name string) []string {
	head, _, _ := strings.Cut(inRound.ReplaceAllString(name, " "), ",")
	typed := foldedWords(head)
	said := slices.DeleteFunc(slices.Clone(typed), func(w string) bool { return leaves(w, nil) })
	if len(said) == 0 {
		return typed
	}
	return said
}

// Held is the longest name of the larder at the end or the start of an unknown one, with words
// left over that the larder does not know: "bread flour" of "Dove Farm bread flour". It is "" for
// none of two words or more, and for one that lacks what the name says.
func (l *Larder) Held(name string) string {
	typed, graves := l.thing(name), gravesOf(name)
	for n := len(typed) - 1; n > 1; n-- {
		for at := len(typed) - n; at >= 0; at -= len(typed) - n {
			it, ok := l.Find(strings.Join(typed[at:at+n], " "))
			left := slices.Concat(typed[:at], typed[at+n:])
			if ok && lacking(graves, it) == "" && !turnsState(name, it.Name, it) &&
				!slices.ContainsFunc(left, l.tells) {
				return it.Name
			}
		}
	}
	return ""
}

// sharesWord reports whether a name of several words has a word of the
// typed ones, or one near to it.
func sharesWord(typed, known []string) bool {
	if len(typed) < 2 {
		return true
	}
	return slices.ContainsFunc(typed, func(w string) bool {
		return len(w) > 2 && len(spelling.Nearest(w, known, 1)) > 0
	})
}

// sameStart reports whether two names are near by more than chance: a
// word of four letters or less must open with the same letter as some
// word of the other name.
func sameStart(typed, known []string) bool {
	for _, w := range typed {
		if len([]rune(w)) > 4 {
			continue
		}
		if !slices.ContainsFunc(known, func(k string) bool { return k[0] == w[0] }) {
			return false
		}
	}
	return true
}

// UnknownText is the message for a name that the larder does not know:
// the choices of an ambiguous word, or near names.
func (l *Larder) UnknownText(name string) string {
	text := "no ingredient " + strconv.Quote(name) + " in the larder"
	if a, ok := l.Ambiguous(name); ok {
		switch {
		case len(a.Choices) > 0:
			text = strconv.Quote(name) + " can mean several things: write " +
				strings.Join(a.Choices, ", or ")
		case a.Why != "":
			text += ": " + a.Why
		}
		return text
	}
	if why := Grave(name); why != "" {
		text += ": its name says " + why + ", so nothing else may stand for it"
	}
	if near := l.Near(name); len(near) > 0 {
		text += "; nearest is " + strings.Join(near, ", ")
	}
	return text
}
