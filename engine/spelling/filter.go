package spelling

import (
	"strings"
	"sync"
)

// filter is the quick test of a pattern: texts of which at least one stands in every match.
// Letter case counts in none.
type filter struct {
	any   bool // nothing is known, or too little to be worth a look
	from0 bool // all of them begin the text
	size  int  // how many of their first bytes make a key
	shift uint
	bits  []uint64 // the keys, hashed
	keys  []uint32
	lits  []lit
}

// edge is what a place in a text has to be, or what is known of it.
type edge uint8

const (
	atStart edge = 1 << iota // nothing stands before it
	atEnd                    // nothing stands behind it
	atGap                    // no ASCII letter is on the other side
	atWord                   // \b: as atGap, where a word begins or ends on this side
)

// lit is a text in lower case, and what stands on either side.
type lit struct {
	text              string
	before, after     edge
	notFirst, notLast bool // more of the match stands before or behind it
}

// mostLits bounds the texts of a filter, maxKey the bytes of a key.
const (
	mostLits = 512
	maxKey   = 4
)

// parsers are those that are not at work: what they have room for is used again.
var parsers = sync.Pool{New: func() any { return &parser{slab: make([]lit, 0, 1024)} }}

// filterOf makes the filter of an expression.
func filterOf(text string) *filter {
	p := parsers.Get().(*parser)
	defer parsers.Put(p)
	lits := p.literals(text)
	if len(lits) == 0 || len(lits) > mostLits {
		return &filter{any: true}
	}
	f := &filter{from0: true, size: maxKey, lits: make([]lit, len(lits)),
		keys: make([]uint32, len(lits))}
	for i, l := range lits {
		f.lits[i] = l.settled()
		f.size = min(f.size, len(l.text))
		f.from0 = f.from0 && l.before&atStart != 0
	}
	words := 1
	for f.shift = 26; words*4 < len(lits); f.shift-- {
		words *= 2
	}
	f.bits = make([]uint64, words)
	for i, l := range f.lits {
		for j := range f.size {
			f.keys[i] = f.keys[i]<<8 | uint32(l.text[j])
		}
		h := f.hash(f.keys[i])
		f.bits[h>>6] |= 1 << (h & 63)
	}
	return f
}

// settled is a text with edges that ask for no more than can be told from the byte beyond.
func (l lit) settled() lit {
	gap := func(e edge, by byte) edge {
		if e&atWord != 0 && (isLetter(by) || by >= '0' && by <= '9' || by == '_') {
			e |= atGap
		}
		return e
	}
	l.before = gap(l.before, l.text[0]) & (atStart | atGap)
	l.after = gap(l.after, l.text[len(l.text)-1]) & (atEnd | atGap)
	return l
}

func (f *filter) hash(key uint32) uint32 { return key * 0x9E3779B1 >> f.shift }

func (f *filter) inBytes(text []byte) bool { return f.any || f.in(string(text)) }

// in reports whether a text may match. Where a letter stands that only folding makes one of
// the pattern's, it may.
func (f *filter) in(text string) bool {
	if f.any {
		return true
	}
	if f.from0 {
		return f.begins(text)
	}
	mask := uint32(1)<<(8*f.size) - 1 // the shift by 32 gives 0, less 1 all bits
	key, last := uint32(0), byte(0)
	for i := range len(text) {
		c := text[i]
		if c < 0x80 {
			c = lower[c]
		} else if c < 0xC0 {
			if last == 0xC3 {
				c = lowerAfterC3(c)
			}
		} else if c >= 0xC5 && isStrange(text[i:]) {
			return true
		}
		last = c
		key = key<<8 | uint32(c)
		h := f.hash(key & mask)
		if f.bits[h>>6]&(1<<(h&63)) != 0 && i+1 >= f.size && f.at(text, i+1-f.size, key&mask) {
			return true
		}
	}
	return false
}

// begins is in for texts that all begin a match at the start.
func (f *filter) begins(text string) bool {
	if len(text) >= f.size {
		key, last := uint32(0), byte(0)
		for i := range f.size {
			last = lowerAt(text[i], last)
			key = key<<8 | uint32(last)
		}
		h := f.hash(key)
		if f.bits[h>>6]&(1<<(h&63)) != 0 && f.at(text, 0, key) {
			return true
		}
	}
	for i := range len(text) {
		if text[i] >= 0xC5 && isStrange(text[i:]) {
			return true
		}
	}
	return false
}

// at reports whether one of the texts stands at a place, which has the key.
func (f *filter) at(text string, from int, key uint32) bool {
	for n, k := range f.keys {
		if k == key && f.lits[n].isAt(text, from) {
			return true
		}
	}
	return false
}

func (l *lit) isAt(text string, from int) bool {
	end := from + len(l.text)
	switch {
	case end > len(text), l.before&atStart != 0 && from > 0, l.after&atEnd != 0 && end < len(text),
		l.before&atGap != 0 && from > 0 && isLetter(text[from-1]),
		l.after&atGap != 0 && end < len(text) && isLetter(text[end]):
		return false
	}
	last := byte(0)
	for i := range len(l.text) {
		if last = lowerAt(text[from+i], last); last != l.text[i] {
			return false
		}
	}
	return true
}

// lower has the lower case of ASCII.
var lower = func() (out [0x80]byte) {
	for i := range out {
		out[i] = byte(i)
		if i >= 'A' && i <= 'Z' {
			out[i] += 'a' - 'A'
		}
	}
	return out
}()

// lowerAt is the lower case of a byte behind another, within ASCII and Latin-1.
func lowerAt(c, last byte) byte {
	switch {
	case c < 0x80:
		return lower[c]
	case last == 0xC3:
		return lowerAfterC3(c)
	}
	return c
}

// lowered is the lower case of a text, within ASCII and Latin-1.
func lowered(text string) string {
	out, last := []byte(text), byte(0)
	for i, c := range out {
		last = lowerAt(c, last)
		out[i] = last
	}
	return string(out)
}

// lowerAfterC3 is the second byte of a letter of Latin-1, in lower case.
func lowerAfterC3(c byte) byte {
	if c >= 0x80 && c < 0x9F && c != 0x97 { // the sign of multiplication
		c += 0x20
	}
	return c
}

// isStrange reports whether a text begins with a letter that folds to one of ASCII or Latin-1,
// and is in neither: the long s, capital sharp s and ÿ, the signs of Kelvin and Ångström.
func isStrange(text string) bool {
	return strings.HasPrefix(text, "ſ") || strings.HasPrefix(text, "ẞ") ||
		strings.HasPrefix(text, "Ÿ") || strings.HasPrefix(text, "\u212A") ||
		strings.HasPrefix(text, "\u212B")
}

func isLetter(c byte) bool { return c|0x20 >= 'a' && c|0x20 <= 'z' }
