// Package source holds the text of one file: places, lines and columns,
// the guard that keeps hostile text from the HCL parser, and the parse.
//
// It also applies edits to a text byte by byte (Apply). It opens
// no file.
//
// The readers of formula, house and rule files call it, and all code
// that prints a place. It evaluates no expression and knows nothing
// of baking.
//
// Places are byte ranges of File.Text. Lines and columns are computed
// only for output, since output formats count columns differently.
package source

import (
	"bytes"
	"cmp"
	"slices"
	"sort"
	"strconv"
	"strings"
	"sync"
	"unicode"
	"unicode/utf8"

	"golang.org/x/text/width"
)

// File is a file's name and text. Neither may change in use, because
// line marks and the guard's result are cached. It is safe for
// concurrent use.
type File struct {
	Name string // as shown to the user, normally a relative path
	Text []byte // as read, byte-order mark and line endings included
	// Limit is the most bytes that Parse accepts; 0 means MaxFileBytes,
	// never more than MaxLimitBytes
	Limit int

	markOnce sync.Once
	marks    []mark // ascending by offset, the first at 0

	guardOnce sync.Once
	guarded   scanned
}

// New returns a File of a name and a text. It does not copy the text.
func New(name string, text []byte) *File { return &File{Name: name, Text: text} }

// Position is a line and a column, both counted from 1.
type Position struct{ Line, Column int }

// mark is an offset with known columns. Each line start has one, and a
// long line one every markEvery bytes, because a whole file may be one
// line. A look-up walks from the nearest mark, so it is short.
type mark struct {
	offset, line         int
	cells, runes, utf16s int // columns before offset, counted from 0
}

const markEvery = 512

const byteOrderMark = "\xef\xbb\xbf"

// tabStop is the distance between tab stops for columns in error
// messages, by the GNU Coding Standards.
const tabStop = 8

// Position returns the line and column of a byte offset.
//
// The column follows the GNU Coding Standards, section "Formatting
// Error Messages". Printing ASCII is one column wide, and tab stops are
// every 8 columns. Other characters have wcwidth's width in a UTF-8
// locale: none for combining marks, two for wide East Asian characters
// and emoji. A leading byte-order mark and a carriage return have no
// width. A byte that is not UTF-8 has width one. An offset outside the
// text counts as its nearest end, one inside a character as its start.
func (f *File) Position(offset int) Position {
	m := f.locate(offset)
	return Position{Line: m.line, Column: m.cells + 1}
}

// RuneColumn returns the column of a byte offset in Unicode code
// points, from 1, without a leading byte-order mark.
func (f *File) RuneColumn(offset int) int { return f.locate(offset).runes + 1 }

// UTF16Column returns the column of a byte offset in UTF-16 code units,
// from 1, without a leading byte-order mark.
func (f *File) UTF16Column(offset int) int { return f.locate(offset).utf16s + 1 }

// Lines returns the number of lines. Text after the last newline is a
// line, even when empty.
func (f *File) Lines() int {
	f.markOnce.Do(f.index)
	return f.marks[len(f.marks)-1].line
}

// LineSpan returns the byte range of line n (from 1), without its line
// ending and a leading byte-order mark. A line that does not exist is
// an empty range at the end.
func (f *File) LineSpan(n int) Span {
	f.markOnce.Do(f.index)
	i := sort.Search(len(f.marks), func(i int) bool { return f.marks[i].line >= n })
	if n < 1 || i == len(f.marks) {
		return Span{len(f.Text), len(f.Text)}
	}
	start := f.marks[i].offset
	end := len(f.Text)
	if nl := bytes.IndexByte(f.Text[start:], '\n'); nl >= 0 {
		end = start + nl
		if end > start && f.Text[end-1] == '\r' {
			end--
		}
	}
	if n == 1 && bytes.HasPrefix(f.Text[:end], []byte(byteOrderMark)) {
		start += len(byteOrderMark)
	}
	return Span{start, end}
}

// Line returns the text of line n (from 1) without its ending, safe for
// a terminal. Tabs become spaces up to Position's tab stops, and Safe
// escapes the rest. A line that does not exist is empty.
func (f *File) Line(n int) string {
	s := f.LineSpan(n)
	text := string(f.Text[s.Start:s.End])
	if !strings.Contains(text, "\t") {
		return Safe(text)
	}
	var b strings.Builder
	cells := 0
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRuneInString(text[i:])
		next := advance(cells, r, size)
		if r == '\t' {
			b.WriteString(strings.Repeat(" ", next-cells))
		} else {
			b.WriteString(text[i : i+size])
		}
		cells = next
		i += size
	}
	return Safe(b.String())
}

func (f *File) index() {
	f.marks = make([]mark, 1, 2+bytes.Count(f.Text, []byte("\n")))
	f.marks[0] = mark{line: 1}
	for start, line := 0, 1; ; line++ {
		nl := bytes.IndexByte(f.Text[start:], '\n')
		end := len(f.Text)
		if nl >= 0 {
			end = start + nl
		}
		if end-start > markEvery {
			m := f.marks[len(f.marks)-1]
			last := start
			for m.offset < end {
				m = f.step(m)
				if m.offset-last >= markEvery {
					f.marks = append(f.marks, m)
					last = m.offset
				}
			}
		}
		if nl < 0 {
			return
		}
		start = end + 1
		f.marks = append(f.marks, mark{offset: start, line: line + 1})
	}
}

// lineMark is the last mark at or before an offset, on its line.
func (f *File) lineMark(offset int) mark {
	f.markOnce.Do(f.index)
	i := sort.Search(len(f.marks), func(i int) bool { return f.marks[i].offset > offset })
	return f.marks[max(i, 1)-1]
}

func (f *File) locate(offset int) mark {
	offset = max(0, min(offset, len(f.Text)))
	m := f.lineMark(offset)
	for m.offset < offset {
		next := f.step(m)
		if next.offset > offset {
			break
		}
		m = next
	}
	return m
}

// step moves a mark over one character.
func (f *File) step(m mark) mark {
	if m.offset == 0 && bytes.HasPrefix(f.Text, []byte(byteOrderMark)) {
		m.offset = len(byteOrderMark)
		return m
	}
	r, size := utf8.DecodeRune(f.Text[m.offset:])
	m.offset += size
	m.cells = advance(m.cells, r, size)
	m.runes++
	m.utf16s++
	if r > 0xFFFF {
		m.utf16s++
	}
	return m
}

// advance returns the column after r, given the column before it.
func advance(cells int, r rune, size int) int {
	switch {
	case r == '\t':
		return cells - cells%tabStop + tabStop
	case r == '\r':
		return cells
	case r < 0x7F:
		return cells + 1
	case r == utf8.RuneError && size == 1:
		return cells + 1
	}
	return cells + runeWidth(r)
}

func runeWidth(r rune) int {
	switch {
	case r == 0xAD: // soft hyphen: wcwidth gives it one column, though its class is Cf
		return 1
	case r >= 0x1160 && r <= 0x11FF: // Hangul vowels and finals join the character before
		return 0
	case unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf):
		return 0
	}
	switch width.LookupRune(r).Kind() {
	case width.EastAsianWide, width.EastAsianFullwidth:
		return 2
	}
	return 1
}

// Span is a range of bytes, its end excluded.
type Span struct{ Start, End int }

// Place is a range of bytes of a file. The zero Place is no place
// at all.
type Place struct {
	File       *File
	Start, End int
}

// IsZero reports whether the place is unset.
func (p Place) IsZero() bool { return p.File == nil }

// FileName returns the name of the place's file, or "" for no place.
func (p Place) FileName() string {
	if p.IsZero() {
		return ""
	}
	return p.File.Name
}

// Line returns the line on which the place starts, from 1, or 0 for
// no place.
func (p Place) Line() int {
	if p.IsZero() {
		return 0
	}
	return p.File.lineMark(p.Start).line
}

// String returns "name:line:column", safe for a terminal, or "" for
// no place.
func (p Place) String() string {
	if p.IsZero() {
		return ""
	}
	at := p.File.Position(p.Start)
	return Safe(p.File.Name) + ":" + strconv.Itoa(at.Line) + ":" + strconv.Itoa(at.Column)
}

// Problem is a fault that makes a file unusable. Its text starts in
// lower case and has no final full stop.
type Problem struct {
	Place Place // zero when it concerns no file
	Text  string
	Paste string // lines to paste that correct it, shown indented below; often empty

	// Unread is the whole text that says nothing where a figure or a known word is due; "" for
	// other faults. A reader may take such a value as open, where it tells so.
	Unread string

	rest bool // counts the problems that are left out, and stands behind those of its place
}

// String returns "name:line:column: text", safe for a terminal.
func (p Problem) String() string {
	if p.Place.IsZero() {
		return Safe(p.Text)
	}
	return p.Place.String() + ": " + Safe(p.Text)
}

// Problems is a list of problems. As an error it has one line for each.
type Problems []Problem

// Error returns one line for each problem.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.String()
	}
	return strings.Join(lines, "\n")
}

// Err returns the problems as an error, or nil when there are none.
func (ps Problems) Err() error {
	if len(ps) == 0 {
		return nil
	}
	return ps
}

// Sort sorts the problems in place by file name, start and text, those
// without a place first. It returns them without duplicates, of each
// file at most MaxProblems and one that counts the rest. Those without
// a place are all kept: each names another file.
func (ps Problems) Sort() Problems {
	slices.SortStableFunc(ps, func(a, b Problem) int {
		return cmp.Or(
			cmp.Compare(fileName(a), fileName(b)),
			cmp.Compare(a.Place.Start, b.Place.Start),
			restLast(a, b),
			cmp.Compare(a.Text, b.Text),
			cmp.Compare(a.Place.End, b.Place.End),
		)
	})
	return slices.CompactFunc(ps, func(a, b Problem) bool {
		return fileName(a) == fileName(b) && a.Place.Start == b.Place.Start && a.Text == b.Text
	}).folded()
}

func restLast(a, b Problem) int {
	switch {
	case a.rest == b.rest:
		return 0
	case a.rest:
		return 1
	}
	return -1
}

// folded keeps each file's first problems, and counts the rest in one
// at the first of them. It is idempotent. The problems are sorted.
func (ps Problems) folded() Problems {
	out := ps[:0]
	for len(ps) > 0 {
		name := fileName(ps[0])
		n := 1
		for n < len(ps) && fileName(ps[n]) == name {
			n++
		}
		if name == "" || n <= MaxProblems+1 {
			out = append(out, ps[:n]...)
		} else {
			first := andMore(ps[MaxProblems].Place, n-MaxProblems)
			out = append(append(out, ps[:MaxProblems]...), first)
		}
		ps = ps[n:]
	}
	return out
}

func fileName(p Problem) string {
	if p.Place.IsZero() {
		return ""
	}
	return p.Place.File.Name
}
