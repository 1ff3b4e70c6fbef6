package spelling

import (
	"regexp/syntax"
	"strings"
	"sync"
	"unicode/utf8"
)

// headBytes is how much of a match is looked at, mostHeads how many
// beginnings are told apart: beyond it any text may begin a match.
const (
	headBytes = 4
	mostHeads = 4096
	mostRunes = 64 // of one class
)

// heads are the beginnings of all matches of some patterns, lower-case,
// each at most headBytes long.
type heads struct {
	any   bool // one of them is empty
	pairs [1 << 10]uint64
	whole map[string]bool
}

// MayMatch gives a quick test of texts: no where none of the patterns
// matches, by the letters with which a match begins. Most texts begin
// none, and neither compile nor run a pattern. The patterns are as for
// Pattern; one that may begin with any letter makes the test useless.
func MayMatch(patterns ...string) func(text string) bool {
	find := sync.OnceValue(func() *heads {
		h := &heads{whole: map[string]bool{}}
		for _, text := range patterns {
			re, err := syntax.Parse(text, syntax.Perl)
			if err != nil {
				panic(err)
			}
			for head := range headsOf(re) {
				h.add(head)
			}
		}
		return h
	})
	return func(text string) bool { return find().in(text) }
}

func (h *heads) add(head string) {
	if head == "" {
		h.any = true
		return
	}
	h.whole[head] = true
	first := int(head[0]) << 8
	if len(head) > 1 {
		h.mark(first | int(head[1]))
		return
	}
	for second := range 1 << 8 {
		h.mark(first | second)
	}
}

func (h *heads) mark(pair int) { h.pairs[pair>>6] |= 1 << (pair & 63) }

func (h *heads) in(text string) bool {
	// Of all letters only the long s is folded upwards and not down.
	if h.any || strings.Contains(text, "ſ") {
		return true
	}
	text = strings.ToLower(text)
	for i := range len(text) {
		pair := int(text[i]) << 8
		if i+1 < len(text) {
			pair |= int(text[i+1])
		}
		if h.pairs[pair>>6]&(1<<(pair&63)) == 0 {
			continue
		}
		for n := i + 1; n <= min(len(text), i+headBytes); n++ {
			if h.whole[text[i:n]] {
				return true
			}
		}
	}
	return false
}

// headsOf lists the beginnings of a pattern's matches. One shorter than
// headBytes is a whole match, or goes on with any letter.
func headsOf(re *syntax.Regexp) map[string]bool {
	heads, open := beginnings(re)
	for head := range open {
		heads[head] = true
	}
	return heads
}

// beginnings lists the beginnings of a pattern's matches that what
// follows the pattern does not lengthen, and those that it may: whole
// matches.
func beginnings(re *syntax.Regexp) (done, open map[string]bool) {
	done, open = map[string]bool{}, map[string]bool{}
	switch re.Op {
	case syntax.OpLiteral:
		put(done, open, strings.ToLower(string(re.Rune)))
	case syntax.OpCharClass:
		n := 0
		for i := 0; i < len(re.Rune); i += 2 {
			n += int(re.Rune[i+1]-re.Rune[i]) + 1
		}
		if n > mostRunes {
			done[""] = true
			break
		}
		for i := 0; i < len(re.Rune); i += 2 {
			for r := re.Rune[i]; r <= re.Rune[i+1]; r++ {
				put(done, open, strings.ToLower(string(r)))
			}
		}
	case syntax.OpAnyChar, syntax.OpAnyCharNotNL:
		done[""] = true
	case syntax.OpCapture:
		return beginnings(re.Sub[0])
	case syntax.OpQuest:
		done, open = beginnings(re.Sub[0])
		open[""] = true
	case syntax.OpStar, syntax.OpPlus, syntax.OpRepeat:
		done, open = beginnings(re.Sub[0])
		for head := range open { // it may come again: what follows is not looked at
			done[head] = true
		}
		clear(open)
		if re.Op == syntax.OpStar || re.Op == syntax.OpRepeat && re.Min == 0 {
			open[""] = true
		}
	case syntax.OpAlternate:
		for _, sub := range re.Sub {
			d, o := beginnings(sub)
			for head := range d {
				done[head] = true
			}
			for head := range o {
				open[head] = true
			}
		}
	case syntax.OpConcat:
		open[""] = true
		for _, sub := range re.Sub {
			d, o := beginnings(sub)
			before := open
			open = map[string]bool{}
			for head := range before {
				for next := range d {
					done[cut(head+next)] = true
				}
				for next := range o {
					put(done, open, head+next)
				}
			}
			if len(done)+len(open) > mostHeads {
				return map[string]bool{"": true}, map[string]bool{}
			}
			if len(open) == 0 {
				break
			}
		}
	default: // the edges of words and texts, which hold no letter
		open[""] = true
	}
	return done, open
}

// put keeps a beginning: done once it is as long as is looked at.
func put(done, open map[string]bool, head string) {
	if len(head) >= headBytes {
		done[cut(head)] = true
	} else {
		open[head] = true
	}
}

// cut shortens a beginning to what is looked at, in whole runes.
func cut(head string) string {
	if len(head) <= headBytes {
		return head
	}
	n := headBytes
	for !utf8.RuneStart(head[n]) {
		n--
	}
	return head[:n]
}
