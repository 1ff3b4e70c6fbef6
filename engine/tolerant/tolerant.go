// Package tolerant makes a half-typed text readable, for an editor. The
// line or block that is broken is completed, opened or taken out; every
// other byte stays. The readers and the judge then read the repaired
// text as they read any file, so a check from the command line never
// comes here.
//
// A broken ingredient keeps its name with an open amount. What is taken
// out stands among the problems of the text, so a text with problems is
// never taken for clear.
package tolerant

import (
	"bytes"
	"slices"
	"sort"
	"strings"

	"forebake/engine/source"
	"forebake/engine/spelling"
)

// rounds bounds the repairs of one text: each asks the reader once.
const rounds = 24

// Repaired is a text that reads without a problem, and the way back to
// the text that was typed.
type Repaired struct {
	File     *source.File    // the repaired text; nil where no repair was found
	Problems source.Problems // of the text as typed; none where it needed no repair
	typed    *source.File
	edits    []edit // ascending, on the typed text
}

// edit puts text in the place of a span of the typed text.
type edit struct {
	source.Span
	text string
}

// Words are the words that settings and blocks begin with.
type Words []string

// near finds the word that a misspelt one stands for, "" for none.
func (w Words) near(s string) string {
	if slices.Contains(w, s) {
		return ""
	}
	if list := spelling.Nearest(s, w, 1); len(list) > 0 {
		return list[0]
	}
	return ""
}

// Whole is a text that needs no repair.
func Whole(typed *source.File) *Repaired { return &Repaired{File: typed, typed: typed} }

// Repair reads a text by read, which gives the problems of a file, and
// mends it until read gives none. A text without problems is returned
// as it is.
func Repair(
	typed *source.File, words Words, read func(*source.File) source.Problems,
) *Repaired {
	r := Whole(typed)
	if r.Problems = read(typed); len(r.Problems) == 0 {
		return r
	}
	p := scan(typed.Text)
	p.words = words
	p.balance()
	if _, problems := source.Parse(typed); len(problems) == 0 {
		p.keep() // its brackets are right: what is wrong is what it says
	}
	for range rounds {
		r.edits = p.edits()
		r.File = source.New(typed.Name, apply(typed.Text, r.edits))
		problems := read(r.File)
		if len(problems) == 0 {
			return r
		}
		done := map[int]bool{} // lines: of several problems of one the first tells
		for _, one := range problems {
			if one.Place.File != r.File {
				continue
			}
			p.fix(done, r.Offset(one.Place.Start))
		}
		if len(done) == 0 {
			break
		}
	}
	r.File = nil
	return r
}

// Offset turns an offset in the repaired text into the one in the typed
// text that it stands for.
func (r *Repaired) Offset(at int) int {
	shift := 0 // of the repaired text against the typed one
	for _, e := range r.edits {
		start := e.Start + shift
		if at < start {
			break
		}
		if at <= start+len(e.text) && at-start < max(len(e.text), 1) {
			old := r.typed.Text[e.Start:e.End]
			same := 0
			for same < min(len(old), len(e.text)) && old[same] == e.text[same] {
				same++
			}
			if n := at - start; n <= same {
				return e.Start + n
			}
			tail := 0
			for tail < min(len(old), len(e.text))-same &&
				old[len(old)-1-tail] == e.text[len(e.text)-1-tail] {
				tail++
			}
			if left := start + len(e.text) - at; left <= tail {
				return e.End - left
			}
			return e.Start + same
		}
		shift += len(e.text) - (e.End - e.Start)
	}
	return max(0, min(at-shift, len(r.typed.Text)))
}

// Place turns a place in the repaired text into the one in the typed
// text. Any other is returned as it is.
func (r *Repaired) Place(p source.Place) source.Place {
	if p.File != r.File || r.File == r.typed {
		return p
	}
	start, end := r.Offset(p.Start), r.Offset(p.End)
	return source.Place{File: r.typed, Start: start, End: max(start, end)}
}

// Back turns an offset in the typed text into the one in the
// repaired text.
func (r *Repaired) Back(at int) int {
	shift := 0
	for _, e := range r.edits {
		if at < e.Start || at == e.Start && e.End > e.Start {
			break
		}
		if at < e.End {
			return e.Start + shift + min(at-e.Start, len(e.text))
		}
		shift += len(e.text) - (e.End - e.Start)
	}
	return at + shift
}

func apply(text []byte, edits []edit) []byte {
	out := make([]byte, 0, len(text)+64)
	at := 0
	for _, e := range edits {
		out = append(append(out, text[at:e.Start]...), e.text...)
		at = e.End
	}
	return append(out, text[at:]...)
}

// page is the typed text by lines.
type page struct {
	lines []line
	words Words
}

// line is one line of the typed text, without its ending, and what the
// repair makes of it.
type line struct {
	source.Span
	typed  string
	tokens []token
	indent int
	open   bool // a quote is not closed
	opaque bool // inside a heredoc or a comment of several lines

	out     bool      // taken out
	mods    []edit    // by the line's own offsets
	added   bool      // a bracket was put into it
	closers []closing // put after it
	tries   int       // repairs so far
	last    int       // the last line of what it opens; itself where it opens nothing
	inList  bool      // its innermost bracket is a list
	inBlock bool      // or a block, or the file
	parent  int       // the line of its innermost block; -1 for the file
}

// closing is a bracket that was missing, and the line of the one that
// it closes.
type closing struct {
	of   int
	text string
}

// token is one word, text or sign of a line.
type token struct {
	kind     kind
	from, to int // in the line
}

type kind byte

const (
	word   kind = 'w'
	quoted kind = '"'
	sign   kind = 's' // a number, an operator or anything else
	opener kind = '{'
	closer kind = '}'
	equals kind = '='
	comma  kind = ','
)

func scan(text []byte) *page {
	p := &page{}
	for start := 0; start <= len(text); {
		end := len(text)
		if n := bytes.IndexByte(text[start:], '\n'); n >= 0 {
			end = start + n
		}
		l := line{Span: source.Span{Start: start, End: end}}
		if l.End > l.Start && text[l.End-1] == '\r' {
			l.End--
		}
		l.typed = string(text[l.Start:l.End])
		p.lines = append(p.lines, l)
		start = end + 1
	}
	heredoc, comment := "", false
	for i := range p.lines {
		l := &p.lines[i]
		l.last = i
		if heredoc != "" {
			l.opaque = true
			if strings.TrimSpace(l.typed) == heredoc {
				heredoc = ""
			}
			continue
		}
		heredoc, comment = l.lex(comment)
	}
	return p
}

// lex cuts a line into tokens. It gives the word that ends a heredoc
// which begins here, and whether a comment goes on.
func (l *line) lex(comment bool) (heredoc string, goesOn bool) {
	s := l.typed
	l.indent = len(s) - len(strings.TrimLeft(s, " \t"))
	for i := 0; i < len(s); {
		if comment {
			n := strings.Index(s[i:], "*/")
			if n < 0 {
				l.opaque = len(l.tokens) == 0
				return "", true
			}
			i, comment = i+n+2, false
			continue
		}
		switch c := s[i]; {
		case c == ' ' || c == '\t':
			i++
		case c == '#' || strings.HasPrefix(s[i:], "//"):
			return "", false
		case strings.HasPrefix(s[i:], "/*"):
			comment = true
			i += 2
		case strings.HasPrefix(s[i:], "<<"):
			return strings.TrimSpace(strings.TrimLeft(s[i:], "<-")), false
		case c == '"':
			end := endOfText(s, i+1)
			l.open = l.open || end < 0
			if end < 0 {
				end = len(s)
			}
			l.add(quoted, i, end)
			i = end
		case strings.IndexByte("{[(", c) >= 0:
			l.add(opener, i, i+1)
			i++
		case strings.IndexByte("}])", c) >= 0:
			l.add(closer, i, i+1)
			i++
		case c == '=' && !strings.HasPrefix(s[i:], "=="):
			l.add(equals, i, i+1)
			i++
		case c == ',':
			l.add(comma, i, i+1)
			i++
		case isWord(c):
			n := i
			for n < len(s) && (isWord(s[n]) || s[n] == '-' || '0' <= s[n] && s[n] <= '9') {
				n++
			}
			l.add(word, i, n)
			i = n
		default:
			l.add(sign, i, i+1)
			i++
		}
	}
	return "", comment
}

func (l *line) add(k kind, from, to int) {
	l.tokens = append(l.tokens, token{k, from, to})
}

func isWord(c byte) bool {
	return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || c == '_' || c >= 0x80
}

// endOfText is the place behind the quote that closes a text, -1
// for none.
func endOfText(s string, i int) int {
	for ; i < len(s); i++ {
		switch s[i] {
		case '\\':
			i++
		case '"':
			return i + 1
		}
	}
	return -1
}

// keep takes back all changes of the lines but those of a misspelt word
// and a missing sign =.
func (p *page) keep() {
	for i := range p.lines {
		l := &p.lines[i]
		l.out, l.mods, l.added, l.closers, l.tries = false, nil, false, nil, 0
		if l.full() {
			l.respell(p.words)
			l.assign(p.next(i))
		}
	}
}

// put changes a span of the line.
func (l *line) put(from, to int, text string) {
	l.mods = append(l.mods, edit{source.Span{Start: from, End: to}, text})
}

// apart gives the edits of a line in their order, without those within what another one changes.
func (l *line) apart() []edit {
	slices.SortStableFunc(l.mods, func(a, b edit) int { return a.Start - b.Start })
	var out []edit
	end := 0
	for _, m := range l.mods {
		if m.Start >= end && m.End <= l.End-l.Start { // none reaches beyond it
			out, end = append(out, m), m.End
		}
	}
	return out
}

// edits lists what the lines are changed into.
func (p *page) edits() []edit {
	var out []edit
	for i := range p.lines {
		l := &p.lines[i]
		switch {
		case l.out:
			out = append(out, edit{l.Span, ""})
		default:
			for _, m := range l.apart() {
				m.Start, m.End = m.Start+l.Start, m.End+l.Start
				out = append(out, m)
			}
		}
		for _, c := range l.closers {
			out = append(out, edit{source.Span{Start: l.End, End: l.End}, c.text})
		}
	}
	return out
}

// at is the line that an offset of the typed text stands in.
func (p *page) at(offset int) int {
	return sort.Search(len(p.lines), func(i int) bool { return p.lines[i].Start > offset }) - 1
}

// full reports whether a line holds anything but blanks and comments.
func (l *line) full() bool { return len(l.tokens) > 0 && !l.opaque }

// indexOf finds the first token of a kind, -1 for none.
func (l *line) indexOf(k kind) int {
	return slices.IndexFunc(l.tokens, func(t token) bool { return t.kind == k })
}
