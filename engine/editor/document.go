package editor

import (
	"fmt"
	"net/url"
	"path/filepath"
	"runtime"
	"strings"
	"unicode/utf8"

	"forebake/engine/source"
	"forebake/engine/tolerant"
)

// document is an open text.
type document struct {
	uri     string
	path    string // on the disk; absolute
	version int
	text    []byte
	kind    tolerant.FileKind
	file    *source.File // of the text, for places; made when first asked for
}

// at gives the file of the text.
func (d *document) at() *source.File {
	if d.file == nil {
		d.file = source.New(filepath.ToSlash(d.path), d.text)
	}
	return d.file
}

// pathOf turns a file address (RFC 8089) into a path; another address is an error.
func pathOf(uri string) (string, error) {
	u, err := url.Parse(uri)
	if err != nil || u.Scheme != "file" {
		return "", fmt.Errorf("%q is no address of a file; this server reads file:// alone", uri)
	}
	path := u.Path
	if runtime.GOOS == "windows" {
		path = strings.TrimPrefix(path, "/")
	}
	return filepath.Clean(filepath.FromSlash(path)), nil
}

// uriOf turns a path into a file address.
func uriOf(path string) string {
	path = filepath.ToSlash(path)
	if !strings.HasPrefix(path, "/") {
		path = "/" + path
	}
	return (&url.URL{Scheme: "file", Path: path}).String()
}

// encoding is how a client counts characters in a line.
type encoding string

const (
	inUTF16 encoding = "utf-16"
	inUTF8  encoding = "utf-8"
)

// offset turns a position into a byte offset. A position behind the end of a line, or of the text,
// counts as that end, and one within a character as its start.
func (e encoding) offset(text []byte, p position) int {
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

// endOfLine is where the next line begins, -1 for none. A line ends with \n, \r\n or \r.
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

func (e encoding) units(r rune, size int) int {
	switch {
	case e == inUTF8:
		return size
	case r > 0xFFFF:
		return 2
	}
	return 1
}

// position turns a byte offset into a position.
func (e encoding) position(text []byte, offset int) position {
	offset = max(0, min(offset, len(text)))
	var p position
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

// span turns a byte range into a range of positions. One that crosses lines ends with its first
// line, so that an editor underlines a name and not a block.
func (e encoding) span(text []byte, start, end int) span {
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
	return span{e.position(text, start), e.position(text, end)}
}

// change applies an edit of the client.
func (d *document) change(e encoding, c contentChange) {
	d.file = nil
	if c.Range == nil {
		d.text = []byte(c.Text)
		return
	}
	from, to := e.offset(d.text, c.Range.Start), e.offset(d.text, c.Range.End)
	if to < from {
		from, to = to, from
	}
	text := make([]byte, 0, len(d.text)+len(c.Text))
	text = append(append(append(text, d.text[:from]...), c.Text...), d.text[to:]...)
	d.text = text
}
