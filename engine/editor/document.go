package editor

import (
	"fmt"
	"net/url"
	"path/filepath"
	"runtime"
	"strings"

	"forebake/engine/editor/protocol"
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

// pathOf turns a file address (RFC 8089) into a path; another address
// is an error.
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

// change applies an edit of the client.
func (d *document) change(e protocol.Encoding, c protocol.ContentChange) {
	d.file = nil
	if c.Range == nil {
		d.text = []byte(c.Text)
		return
	}
	from, to := e.Offset(d.text, c.Range.Start), e.Offset(d.text, c.Range.End)
	if to < from {
		from, to = to, from
	}
	text := make([]byte, 0, len(d.text)+len(c.Text))
	text = append(append(append(text, d.text[:from]...), c.Text...), d.text[to:]...)
	d.text = text
}
