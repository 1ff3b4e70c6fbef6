package protocol

import "unicode/utf8"

// Encoding is how a client counts characters in a line.
type Encoding string

// A client's possible encodings; the first is the default.
const (
	UTF16 Encoding = "utf-16"
	UTF8  Encoding = "utf-8"
)

// Offset turns a position into a byte offset. A position behind the end
// of a line, or of the text, counts as that end, and one within a
// character as its start.
func (e Encoding) Offset(text []byte, p Position) int {
	at := 0
	for line := 0; line < p.Line; line++ {
		n := endOfLine(text[at:])
		if n < 0 {
			return len(text)
		}
		at += n
	}
	units := 0
	for at < len(text) && text[at] != '\n' && text[at] != '\r' {
		r, size := utf8.DecodeRune(text[at:])
		units += e.units(r, size)
		if units > p.Character {
			break
		}
		at += size
	}
	return at
}

// endOfLine is where the next line begins, -1 for none. A line ends
// with \n, \r\n or \r.
func endOfLine(text []byte) int {
	for i, c := range text {
		switch {
		case c == '\n':
			return i + 1
		case c == '\r' && (i+1 == len(text) || text[i+1] != '\n'):
			return i + 1
		}
	}
	return -1
}

func (e Encoding) units(r rune, size int) int {
	switch {
	case e == UTF8:
		return size
	case r > 0xFFFF:
		return 2
	}
	return 1
}

// Position turns a byte offset into a position.
func (e Encoding) Position(text []byte, offset int) Position {
	offset = max(0, min(offset, len(text)))
	var p Position
	at := 0
	for {
		n := endOfLine(text[at:])
		if n < 0 || at+n > offset {
			break
		}
		at += n
		p.Line++
	}
	for at < offset {
		r, size := utf8.DecodeRune(text[at:])
		if at+size > offset {
			break
		}
		p.Character += e.units(r, size)
		at += size
	}
	return p
}

// Range turns a byte range into a range of positions. One that crosses
// lines ends with its first line, so that an editor underlines a name
// and not a block.
func (e Encoding) Range(text []byte, start, end int) Range {
	start = max(0, min(start, len(text)))
	end = max(start, min(end, len(text)))
	for i := start; i < end; i++ {
		if text[i] == '\n' || text[i] == '\r' {
			end = i
		}
	}
	if end == start { // a place without width: the word at it
		for end < len(text) && text[end] > ' ' {
			end++
		}
	}
	return Range{e.Position(text, start), e.Position(text, end)}
}
