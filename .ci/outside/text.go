// Package outside measures the built program from the outside. It
// knows the format of formula and house files, and the JSON of a
// check. It imports nothing of the engine, so that no fault of the
// engine can hide.
package outside

import (
	"fmt"
	"strings"
)

// Kind is what stands as a value.
type Kind int

// The kinds of values.
const (
	Quoted Kind = iota // "27 C"
	Bare               // 24, true
	List               // [ ... ]
	Object             // { ... }
)

// Value is one value of a file. Start and End are byte offsets, quotes
// and brackets included.
type Value struct {
	Kind       Kind
	Start, End int
	Text       string // of a quoted or bare value, without its quotes
	Items      []*Value
	Pairs      []*Pair
}

// Pair is one setting: key = value.
type Pair struct {
	Key        string
	Start, End int // from the key's first byte to the value's last
	Value      *Value
}

// Block is a block with all that stands in it. The whole file is a
// block without a type.
type Block struct {
	Type       string
	Label      string
	Start, End int
	Pairs      []*Pair
	Blocks     []*Block
}

// Parse reads the places of all settings of a file.
func Parse(text string) (*Block, error) {
	p := &parser{text: text}
	root := &Block{End: len(text)}
	if err := p.body(root, false); err != nil {
		return nil, err
	}
	return root, nil
}

type parser struct {
	text string
	at   int
}

func (p *parser) fault(format string, args ...any) error {
	return fmt.Errorf("line %d: %s", Line(p.text, p.at), fmt.Sprintf(format, args...))
}

// skip goes over blanks and comments, and over commas where asked to.
func (p *parser) skip(commas bool) {
	for p.at < len(p.text) {
		c := p.text[p.at]
		switch {
		case c == ' ' || c == '\t' || c == '\n' || c == '\r' || commas && c == ',':
			p.at++
		case c == '#' || strings.HasPrefix(p.text[p.at:], "//"):
			for p.at < len(p.text) && p.text[p.at] != '\n' {
				p.at++
			}
		case strings.HasPrefix(p.text[p.at:], "/*"):
			end := strings.Index(p.text[p.at:], "*/")
			if end < 0 {
				p.at = len(p.text)
				return
			}
			p.at += end + 2
		default:
			return
		}
	}
}

func word(c byte) bool {
	return c == '_' || c == '-' || c == '.' || c >= '0' && c <= '9' || c >= 'a' && c <= 'z' ||
		c >= 'A' && c <= 'Z'
}

// name reads a key, a block type or a label, quoted or not.
func (p *parser) name() (string, error) {
	if p.at < len(p.text) && p.text[p.at] == '"' {
		v, err := p.value()
		if err != nil {
			return "", err
		}
		return v.Text, nil
	}
	from := p.at
	for p.at < len(p.text) && word(p.text[p.at]) {
		p.at++
	}
	if p.at == from {
		return "", p.fault("a name is expected")
	}
	return p.text[from:p.at], nil
}

func (p *parser) body(b *Block, braces bool) error {
	for {
		p.skip(false)
		switch {
		case p.at >= len(p.text):
			if braces {
				return p.fault("the block %q is not closed", b.Type)
			}
			return nil
		case p.text[p.at] == '}' && braces:
			p.at++
			return nil
		}
		start := p.at
		key, err := p.name()
		if err != nil {
			return err
		}
		p.skip(false)
		if p.at < len(p.text) && p.text[p.at] == '=' {
			p.at++
			p.skip(false)
			v, err := p.value()
			if err != nil {
				return err
			}
			b.Pairs = append(b.Pairs, &Pair{Key: key, Start: start, End: v.End, Value: v})
			continue
		}
		inner := &Block{Type: key, Start: start}
		for p.at < len(p.text) && p.text[p.at] != '{' {
			label, err := p.name()
			if err != nil {
				return err
			}
			inner.Label = label
			p.skip(false)
		}
		p.at++
		if err := p.body(inner, true); err != nil {
			return err
		}
		inner.End = p.at
		b.Blocks = append(b.Blocks, inner)
	}
}

func (p *parser) value() (*Value, error) {
	if p.at >= len(p.text) {
		return nil, p.fault("a value is expected")
	}
	v := &Value{Start: p.at}
	switch p.text[p.at] {
	case '"':
		v.Kind = Quoted
		p.at++
		for p.at < len(p.text) && p.text[p.at] != '"' && p.text[p.at] != '\n' {
			if p.text[p.at] == '\\' {
				p.at++
			}
			p.at++
		}
		if p.at >= len(p.text) || p.text[p.at] != '"' {
			return nil, p.fault("a quote is not closed")
		}
		p.at++
		v.Text = p.text[v.Start+1 : p.at-1]
	case '[':
		v.Kind = List
		p.at++
		for {
			p.skip(true)
			if p.at < len(p.text) && p.text[p.at] == ']' {
				p.at++
				break
			}
			item, err := p.value()
			if err != nil {
				return nil, err
			}
			v.Items = append(v.Items, item)
		}
	case '{':
		v.Kind = Object
		p.at++
		for {
			p.skip(true)
			if p.at < len(p.text) && p.text[p.at] == '}' {
				p.at++
				break
			}
			start := p.at
			key, err := p.name()
			if err != nil {
				return nil, err
			}
			p.skip(false)
			if p.at >= len(p.text) || p.text[p.at] != '=' && p.text[p.at] != ':' {
				return nil, p.fault("%q has no value", key)
			}
			p.at++
			p.skip(false)
			inner, err := p.value()
			if err != nil {
				return nil, err
			}
			v.Pairs = append(v.Pairs, &Pair{Key: key, Start: start, End: inner.End, Value: inner})
		}
	default:
		v.Kind = Bare
		for p.at < len(p.text) && word(p.text[p.at]) {
			p.at++
		}
		if p.at == v.Start {
			return nil, p.fault("a value is expected, not %q", p.text[p.at:p.at+1])
		}
		v.Text = p.text[v.Start:p.at]
	}
	v.End = p.at
	return v, nil
}

// Line gives the line of a byte offset, from 1.
func Line(text string, at int) int {
	return 1 + strings.Count(text[:min(at, len(text))], "\n")
}

// LineText gives one line of a text, without the blanks around it.
func LineText(text string, line int) string {
	lines := strings.Split(text, "\n")
	if line < 1 || line > len(lines) {
		return ""
	}
	return strings.TrimSpace(lines[line-1])
}

// Replace puts other text in place of a stretch.
func Replace(text string, start, end int, with string) string {
	return text[:start] + with + text[end:]
}

// Remove takes a stretch out together with the comma behind it, or else
// the one before it. Lines keep their numbers: no line break is removed
// that stands outside of the stretch, and those inside of it are kept.
func Remove(text string, start, end int) string {
	after := end
	for after < len(text) && (text[after] == ' ' || text[after] == '\t') {
		after++
	}
	if after < len(text) && text[after] == ',' {
		end = after + 1
		for end < len(text) && text[end] == ' ' {
			end++
		}
	} else {
		before := start
		for before > 0 && (text[before-1] == ' ' || text[before-1] == '\t') {
			before--
		}
		if before > 0 && text[before-1] == ',' {
			start = before - 1
		}
	}
	return text[:start] + strings.Repeat("\n", strings.Count(text[start:end], "\n")) + text[end:]
}

// Find gives the setting of that key, nil where there is none.
func Find(pairs []*Pair, key string) *Pair {
	for _, p := range pairs {
		if p.Key == key {
			return p
		}
	}
	return nil
}
