package source

import (
	"bytes"
	"strconv"
	"unicode"
	"unicode/utf8"

	"github.com/hashicorp/hcl/v2/hclsyntax"
)

// PlainText is DecodeString for a quoted text in which each byte of the
// file stands for itself: the i-th rune stands at start+i. ok is false
// for other texts.
func PlainText(f *File, expr hclsyntax.Expression) (text string, start int, ok bool) {
	if _, _, ok := StringLiteral(expr); !ok {
		return "", 0, false
	}
	r := expr.Range()
	start, end := r.Start.Byte+1, r.End.Byte-1
	if start < 1 || end < start || end >= len(f.Text) || f.Text[start-1] != '"' ||
		f.Text[end] != '"' {
		return "", 0, false
	}
	for _, c := range f.Text[start:end] {
		if c < ' ' || c > '~' || c == '\\' || c == '$' || c == '%' {
			return "", 0, false
		}
	}
	return asString(f.Text[start:end]), start, true
}

// decoder decodes the source of a text into runes and records the
// offset of each.
type decoder struct {
	text    []byte // the file up to the end of the literal
	out     []rune
	offsets []int
}

func (d *decoder) emit(r rune, at int) {
	d.out = append(d.out, r)
	d.offsets = append(d.offsets, at)
}

// plain emits the character or the escaped template sign at i. It
// returns the offset after it.
func (d *decoder) plain(i, end int) int {
	c := d.text[i]
	if (c == '$' || c == '%') && i+2 < end && d.text[i+1] == c && d.text[i+2] == '{' {
		d.emit(rune(c), i)
		d.emit('{', i+2)
		return i + 3
	}
	r, size := utf8.DecodeRune(d.text[i:end])
	d.emit(r, i)
	return i + size
}

func (d *decoder) quoted(start, end int) {
	for i := start; i < end; {
		if d.text[i] != '\\' || i+1 >= end {
			i = d.plain(i, end)
			continue
		}
		r, size := escape(d.text[i+1 : end])
		d.emit(r, i)
		i += 1 + size
	}
	d.offsets = append(d.offsets, end)
}

// escape decodes what follows a backslash.
func escape(rest []byte) (r rune, size int) {
	digits := 0
	switch rest[0] {
	case 'n':
		return '\n', 1
	case 'r':
		return '\r', 1
	case 't':
		return '\t', 1
	case 'u':
		digits = 4
	case 'U':
		digits = 8
	}
	if digits > 0 && len(rest) > digits {
		if n, err := strconv.ParseUint(string(rest[1:1+digits]), 16, 32); err == nil {
			return rune(n), 1 + digits
		}
	}
	return utf8.DecodeRune(rest) // \" and \\; the parser rejects all others
}

func (d *decoder) heredoc(start int) bool {
	first := bytes.IndexByte(d.text[start:], '\n')
	last := bytes.LastIndexByte(d.text[start:], '\n')
	if first < 0 {
		return false
	}
	begin, end := start+first+1, start+last+1
	strip := 0
	if isFlush(d.text[start:]) {
		strip = indent(d.text[begin:end])
	}
	for i := begin; i < end; {
		stop := end
		if nl := bytes.IndexByte(d.text[i:end], '\n'); nl >= 0 {
			stop = i + nl + 1
		}
		if !blank(d.text[i:stop]) {
			i += stripped(d.text[i:stop], strip)
		}
		for i < stop {
			i = d.plain(i, stop)
		}
	}
	d.offsets = append(d.offsets, end)
	return true
}

func blank(line []byte) bool { return len(bytes.TrimLeftFunc(line, unicode.IsSpace)) == 0 }

// indent returns the smallest number of leading spaces of the lines.
// Blank lines do not count. HCL counts a tab or another Unicode space
// as one.
func indent(lines []byte) int {
	least := -1
	for len(lines) > 0 {
		line := lines
		if nl := bytes.IndexByte(lines, '\n'); nl >= 0 {
			line = lines[:nl+1]
		}
		lines = lines[len(line):]
		if blank(line) {
			continue
		}
		n := utf8.RuneCount(line) - utf8.RuneCount(bytes.TrimLeftFunc(line, unicode.IsSpace))
		if least < 0 || n < least {
			least = n
		}
	}
	return max(0, least)
}

// stripped returns how many bytes the first n characters have,
// including combining marks after the last, as in HCL.
func stripped(line []byte, n int) int {
	at := 0
	for ; n > 0 && at < len(line); n-- {
		first, size := utf8.DecodeRune(line[at:])
		at += size
		for at < len(line) && !unicode.IsControl(first) { // no mark joins one
			r, size := utf8.DecodeRune(line[at:])
			if r != 0x200D && !unicode.In(r, unicode.Mn, unicode.Me, unicode.Mc) {
				break
			}
			at += size
		}
	}
	return at
}
