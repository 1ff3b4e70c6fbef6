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
			for _, head := range headsOf(re) {
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

// headsOf lists the beginnings of a pattern's matches, some of them
// twice. One shorter than headBytes is a whole match, or goes on with
// any letter.
func headsOf(re *syntax.Regexp) []string {
	var b beginnings
	b.of(re)
	return append(b.done, b.open...)
}

// beginnings are those of a pattern's matches: done, which what follows
// the pattern does not lengthen, and open, which it may.
type beginnings struct{ done, open []string }

func (b *beginnings) of(re *syntax.Regexp) {
	switch re.Op {
	case syntax.OpLiteral:
		b.put(strings.ToLower(string(re.Rune)))
	case syntax.OpCharClass:
		b.class(re.Rune)
	case syntax.OpAnyChar, syntax.OpAnyCharNotNL:
		b.done = append(b.done, "")
	case syntax.OpCapture:
		b.of(re.Sub[0])
	case syntax.OpQuest:
		b.of(re.Sub[0])
		b.open = append(b.open, "")
	case syntax.OpStar, syntax.OpPlus, syntax.OpRepeat:
		b.of(re.Sub[0])
		// It may come again: what follows is not looked at.
		b.done, b.open = append(b.done, b.open...), nil
		if re.Op == syntax.OpStar || re.Op == syntax.OpRepeat && re.Min == 0 {
			b.open = append(b.open, "")
		}
	case syntax.OpAlternate:
		for _, sub := range re.Sub {
			b.of(sub)
		}
	case syntax.OpConcat:
		b.concat(re.Sub)
	default: // the edges of words and texts, which hold no letter
		b.open = append(b.open, "")
	}
}

func (b *beginnings) class(ranges []rune) {
	n := 0
	for i := 0; i < len(ranges); i += 2 {
		n += int(ranges[i+1]-ranges[i]) + 1
	}
	if n > mostRunes {
		b.done = append(b.done, "")
		return
	}
	for i := 0; i < len(ranges); i += 2 {
		for r := ranges[i]; r <= ranges[i+1]; r++ {
			b.put(strings.ToLower(string(r)))
		}
	}
}

func (b *beginnings) concat(list []*syntax.Regexp) {
	whole := beginnings{open: []string{""}}
	for _, sub := range list {
		var next beginnings
		next.of(sub)
		before := whole.open
		whole.open = nil
		for _, head := range before {
			for _, tail := range next.done {
				whole.done = append(whole.done, cut(head+tail))
			}
			for _, tail := range next.open {
				whole.put(head + tail)
			}
		}
		if len(whole.done)+len(whole.open) > mostHeads {
			b.done = append(b.done, "")
			return
		}
		if len(whole.open) == 0 {
			break
		}
	}
	b.done, b.open = append(b.done, whole.done...), append(b.open, whole.open...)
}

// put keeps a beginning: done once it is as long as is looked at.
func (b *beginnings) put(head string) {
	if len(head) >= headBytes {
		b.done = append(b.done, cut(head))
	} else {
		b.open = append(b.open, head)
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
