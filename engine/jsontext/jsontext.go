// Package jsontext writes JSON objects with long lists, item by item.
// As one text, a large collection's list would take several times the
// memory of the check. It knows no formula; the formats and the pages
// call it.
package jsontext

import (
	"bufio"
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"iter"
	"runtime"
	"strings"
	"sync/atomic"
	"unicode/utf16"

	"forebake/engine/source"
)

// List is a list of a JSON object that is written item by item. The
// writer takes every item, until the text is refused.
type List struct {
	Indent string // of its key
	Key    string
	Items  iter.Seq[any]
	Flat   bool // each item stands on one line
	Taken  *int // counts the items that were written, where it is asked for
}

// WriteInto writes an object as Write does, and fills in the items
// of its lists. The lists are empty in the object, and named in
// their order.
func WriteInto(w io.Writer, object any, lists ...List) error {
	out := bufio.NewWriterSize(w, 1<<16)
	rest, err := indented(object, "")
	if err != nil {
		return err
	}
	for _, l := range lists {
		// No text of a file can hold a line end as it is, so this is
		// the object's own.
		mark := "\n" + l.Indent + "\"" + l.Key + "\": ["
		before, after, ok := strings.Cut(rest, mark+"]")
		if !ok {
			return fmt.Errorf("no empty list %q in the object to write", l.Key)
		}
		out.WriteString(before + mark)
		some, fault := writeItems(out, l)
		if fault != nil {
			return fault
		}
		if some {
			out.WriteString("\n" + l.Indent)
		}
		out.WriteString("]")
		rest = after
	}
	out.WriteString(rest)
	return out.Flush()
}

// itemsAtOnce is how many items of a list one worker lays out at
// a time.
const itemsAtOnce = 64

// chunk is some items of a list, laid out by a worker.
type chunk struct {
	items []any
	text  bytes.Buffer
	err   error
	done  chan struct{}
}

// writeItems writes the items of a list in their order; some reports
// whether there are any. They are laid out on all processors, a few at
// a time: the report of a large collection takes as long as its check.
func writeItems(out *bufio.Writer, l List) (some bool, err error) {
	crew := max(1, runtime.GOMAXPROCS(0))
	work, order := make(chan *chunk, crew), make(chan *chunk, 2*crew)
	for range crew {
		go func() {
			lay := newLayout(l.Indent+"  ", l.Flat)
			for c := range work {
				c.err = lay.out(&c.text, c.items)
				close(c.done)
			}
		}()
	}
	var refused atomic.Bool
	spare := make(chan *chunk, 4*crew) // written, and to be filled anew
	fresh := func() *chunk {
		select {
		case c := <-spare:
			c.items, c.done = c.items[:0], make(chan struct{})
			c.text.Reset()
			return c
		default:
			return &chunk{done: make(chan struct{})}
		}
	}
	go func() {
		next := fresh()
		hand := func() {
			order <- next
			work <- next
			next = fresh()
		}
		l.Items(func(item any) bool {
			if refused.Load() {
				return false
			}
			if next.items = append(next.items, item); len(next.items) == itemsAtOnce {
				hand()
			}
			return true
		})
		if len(next.items) > 0 {
			hand()
		}
		close(work)
		close(order)
	}()
	for c := range order {
		<-c.done
		if c.err != nil && err == nil {
			err = c.err
		}
		if some {
			out.WriteString(",")
		}
		some = true
		_, full := out.Write(c.text.Bytes())
		switch {
		case full != nil && err == nil:
			err = full
			refused.Store(true)
		case full == nil && l.Taken != nil:
			*l.Taken += len(c.items)
		}
		clear(c.items)
		select {
		case spare <- c:
		default:
		}
	}
	return some, err
}

// layout lays out the items of a list, one worker's.
type layout struct {
	indent string
	item   bytes.Buffer
	encode *json.Encoder
}

func newLayout(indent string, flat bool) *layout {
	l := &layout{indent: indent}
	l.encode = json.NewEncoder(&l.item)
	l.encode.SetEscapeHTML(false)
	if !flat {
		l.encode.SetIndent(indent, "  ")
	}
	return l
}

// out writes items with commas between them, each on lines of its own.
func (l *layout) out(out *bytes.Buffer, items []any) error {
	for i, item := range items {
		l.item.Reset()
		if err := l.encode.Encode(item); err != nil {
			return err
		}
		if i > 0 {
			out.WriteString(",")
		}
		out.WriteString("\n" + l.indent)
		text := bytes.TrimSuffix(l.item.Bytes(), []byte("\n"))
		if isPlain(text) {
			out.Write(text)
		} else {
			out.WriteString(escaped(string(text)))
		}
	}
	return nil
}

// isPlain reports whether a text holds only line ends and what every
// terminal shows as it is.
func isPlain(text []byte) bool {
	for _, c := range text {
		if (c < ' ' || c > '~') && c != '\n' {
			return false
		}
	}
	return true
}

// Write writes indented JSON. Characters that control a terminal are
// written as JSON escapes; all others stay readable.
func Write(w io.Writer, v any) error { return WriteInto(w, v) }

func indented(v any, prefix string) (string, error) {
	var b bytes.Buffer
	e := json.NewEncoder(&b)
	e.SetEscapeHTML(false)
	e.SetIndent(prefix, "  ")
	if err := e.Encode(v); err != nil {
		return "", err
	}
	return escaped(b.String()), nil
}

// escaped replaces every character that source.Safe refuses by its
// JSON escape.
func escaped(s string) string {
	var b strings.Builder
	for _, line := range strings.SplitAfter(s, "\n") {
		text := strings.TrimSuffix(line, "\n")
		if source.Safe(text) == text {
			b.WriteString(line)
			continue
		}
		for _, r := range text {
			if one := string(r); source.Safe(one) == one {
				b.WriteString(one)
				continue
			}
			for _, unit := range utf16.Encode([]rune{r}) {
				fmt.Fprintf(&b, "\\u%04x", unit)
			}
		}
		b.WriteString(line[len(text):])
	}
	return b.String()
}
