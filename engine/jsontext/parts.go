package jsontext

import (
	"bytes"
	"net/url"
	"path"
	"strings"
)

// Capped counts the bytes of a text, and keeps them while they are no more than Most.
type Capped struct {
	bytes.Buffer
	Most, Size int
}

func (c *Capped) Write(p []byte) (int, error) {
	if c.Size += len(p); c.Size <= c.Most {
		c.Buffer.Write(p)
	}
	return len(p), nil
}

// Reference makes a relative reference (RFC 3986) of a path with slashes, percent-encoded. A colon is encoded too: the
// text before it would be read as a scheme. A path from the root becomes a file URI.
func Reference(name string) string {
	parts := strings.Split(name, "/")
	for i, part := range parts {
		parts[i] = strings.ReplaceAll(url.PathEscape(part), ":", "%3A")
	}
	uri := strings.Join(parts, "/")
	if path.IsAbs(name) {
		return "file://" + uri
	}
	return uri
}
