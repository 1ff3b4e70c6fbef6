package jsontext

import (
	"bytes"
	"errors"
	"net/url"
	"path"
	"reflect"
	"strings"
)

// Filled makes every missing list of a value an empty one, so that a
// reader need not ask.
func Filled[T any](v T) T {
	fill(reflect.ValueOf(&v).Elem())
	return v
}

func fill(v reflect.Value) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			fill(v.Elem())
		}
	case reflect.Struct:
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() || f.Anonymous {
				fill(v.Field(i))
			}
		}
	case reflect.Slice:
		if v.IsNil() {
			v.Set(reflect.MakeSlice(v.Type(), 0, 0))
		}
		for i := range v.Len() {
			fill(v.Index(i))
		}
	}
}

// Capped keeps a text of at most so many bytes, and refuses the rest.
type Capped struct {
	bytes.Buffer
	Most int
}

// ErrFull is the error of a text that is longer than allowed.
var ErrFull = errors.New("the text is longer than allowed")

func (c *Capped) Write(p []byte) (int, error) {
	if c.Len()+len(p) > c.Most {
		return 0, ErrFull
	}
	return c.Buffer.Write(p)
}

// Reference makes a relative reference (RFC 3986) of a path with
// slashes, percent-encoded. A colon is encoded too: the text before it
// would be read as a scheme. A path from the root becomes a file URI.
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
