// Package source holds the text of one file: its places, lines and columns,
// the guard that keeps hostile text away from the HCL parser, and the parse
// itself.
//
// It also splices edits into a text byte by byte (Apply), and writes files anew
// without ever leaving half of one (WriteAll).
//
// Every reader of formula, house and rule files calls it, and so does whatever
// prints a place. It never evaluates an expression and knows no word of baking.
//
// Places are byte ranges into File.Text. Lines and columns are worked out only
// when something is printed, because each output counts columns its own way.
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

// File is one file's name and text. Neither may change once the file is in
// use: lines and the guard's answer are kept. It is safe for concurrent use.
type File struct {
	Name  string // as shown to the user, normally a relative path
	Text  []byte // as read, byte-order mark and line endings included
	Limit int    // most bytes that Parse accepts; 0 means MaxFileBytes, never more than MaxLimitBytes

	markOnce sync.Once
	marks    []mark // ascending by offset, the first at 0

	guardOnce sync.Once
	guarded   scanned
}

// New makes a File of a name and a text, which it does not copy.
func New(name string, text []byte) *File { return &File{Name: name, Text: text} }

// Position is a line and a column, both counted from 1.
type Position struct{ Line, Column int }

// mark is a place whose columns are known. There is one at each line's start
// and, because a whole file may be one line, one every markEvery bytes within
// a long line; a look-up walks from the nearest mark and so never far.
type mark struct {
	offset, line         int
	cells, runes, utf16s int // columns before offset, counted from 0
}

const markEvery = 512

const byteOrderMark = "\xef\xbb\xbf"

// tabStop is the distance between tab stops that the GNU Coding Standards
// prescribe for column numbers in error messages.
const tabStop = 8

// Position gives the line and column of a byte offset.
//
// The column is the one that the GNU Coding Standards (section "Formatting
// Error Messages") ask for: printing ASCII is one column wide, tab stops are
// every 8 columns, and other characters take the width that wcwidth would give
// them in a UTF-8 locale (none for combining marks, two for wide East Asian
// characters and emoji). A leading byte-order mark and a carriage return take
// none; a byte that is not UTF-8 takes one. An offset outside the text is moved
// to its nearest end, one inside a character to that character's start.
func (f *File) Position(offset int) Position {
	m := f.locate(offset)
	return Position{Line: m.line, Column: m.cells + 1}
}

// RuneColumn gives the column of a byte offset in Unicode code points, from 1.
// A leading byte-order mark is not counted.
func (f *File) RuneColumn(offset int) int { return f.locate(offset).runes + 1 }

// UTF16Column gives the column of a byte offset in UTF-16 code units, from 1.
// A leading byte-order mark is not counted.
func (f *File) UTF16Column(offset int) int { return f.locate(offset).utf16s + 1 }

// Lines is the number of lines; text after the last newline counts as one,
// even when it is empty.
func (f *File) Lines() int {
	f.markOnce.Do(f.index)
	return f.marks[len(f.marks)-1].line
}

// LineSpan gives the byte range of line n (from 1) without its line ending and
// without a leading byte-order mark. A line that does not exist is empty, at
// the end of the text.
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

// Line gives the text of line n (from 1) without its ending, fit for a
// terminal: tabs become spaces up to the stops that Position counts, and
// whatever Safe escapes is escaped. A line that does not exist is empty.
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
	f.marks = append(f.marks, mark{line: 1})
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

func (f *File) locate(offset int) mark {
	f.markOnce.Do(f.index)
	offset = max(0, min(offset, len(f.Text)))
	i := sort.Search(len(f.marks), func(i int) bool { return f.marks[i].offset > offset })
	m := f.marks[i-1]
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

// advance gives the column after r when the column before it is cells.
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

// Place is a range of bytes of a file. The zero Place is no place at all.
type Place struct {
	File       *File
	Start, End int
}

// IsZero reports that there is no place.
func (p Place) IsZero() bool { return p.File == nil }

// Line is the line that the place starts on, from 1; 0 when there is no place.
func (p Place) Line() int {
	if p.IsZero() {
		return 0
	}
	return p.File.Position(p.Start).Line
}

// String gives "name:line:column", fit for a terminal; "" when there is no place.
func (p Place) String() string {
	if p.IsZero() {
		return ""
	}
	at := p.File.Position(p.Start)
	return Safe(p.File.Name) + ":" + strconv.Itoa(at.Line) + ":" + strconv.Itoa(at.Column)
}

// Problem is something that keeps a file from being used. Its text starts in
// lower case and has no final stop.
type Problem struct {
	Place Place // zero when no file is to blame
	Text  string
	Paste string // lines ready to paste that mend it, shown indented below; often none
}

// String gives "name:line:column: text", fit for a terminal.
func (p Problem) String() string {
	if p.Place.IsZero() {
		return Safe(p.Text)
	}
	return p.Place.String() + ": " + Safe(p.Text)
}

// Problems is a list of problems; as an error it reads one problem a line.
type Problems []Problem

// Error gives one problem a line.
func (ps Problems) Error() string {
	lines := make([]string, len(ps))
	for i, p := range ps {
		lines[i] = p.String()
	}
	return strings.Join(lines, "\n")
}

// Err gives the problems as an error, nil when there are none.
func (ps Problems) Err() error {
	if len(ps) == 0 {
		return nil
	}
	return ps
}

// Sort orders the problems in place by file name, start and text, those
// without a place first, and returns them with repeats dropped.
func (ps Problems) Sort() Problems {
	slices.SortStableFunc(ps, func(a, b Problem) int {
		return cmp.Or(
			cmp.Compare(fileName(a), fileName(b)),
			cmp.Compare(a.Place.Start, b.Place.Start),
			cmp.Compare(a.Text, b.Text),
			cmp.Compare(a.Place.End, b.Place.End),
		)
	})
	return slices.CompactFunc(ps, func(a, b Problem) bool {
		return fileName(a) == fileName(b) && a.Place.Start == b.Place.Start && a.Text == b.Text
	})
}

func fileName(p Problem) string {
	if p.Place.IsZero() {
		return ""
	}
	return p.Place.File.Name
}
