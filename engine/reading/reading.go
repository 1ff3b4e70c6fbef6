// Package reading converts the expressions of a parsed HCL file to
// plain values, each with its place in the file.
//
// The readers of formulas, houses and rule packs call it. It walks the
// syntax tree and evaluates no expression. A file is data, and
// evaluation might not end. It collects problems and goes on, so that
// one run shows all the errors of a file.
package reading

import (
	"bytes"
	"fmt"
	"slices"
	"sort"
	"strings"
	"unicode"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"

	"forebake/engine/figure"
	"forebake/engine/quantity"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Reader reads one file and collects its problems.
type Reader struct {
	File     *source.File
	Problems source.Problems
}

// Place converts an HCL range to a place of the file.
func (r *Reader) Place(rng hcl.Range) source.Place {
	return source.Place{File: r.File, Start: rng.Start.Byte, End: rng.End.Byte}
}

// Fault records a problem at a place.
func (r *Reader) Fault(at source.Place, format string, args ...any) {
	r.Problems = append(r.Problems, source.Problem{Place: at, Text: fmt.Sprintf(format, args...)})
}

// FaultUnread records that a text says no figure, and none of the known words. A single word, or
// two of which one is near to a known word, may be a slip: such a text is no
// source.Problem.Unread.
func (r *Reader) FaultUnread(at source.Place, text string, known []string, fault string) {
	p := source.Problem{Place: at, Text: fault}
	words := strings.Fields(text)
	isSlip := func(word string) bool { return IsNear(word, known) }
	if len(words) > 2 || len(words) == 2 && !slices.ContainsFunc(words, isSlip) {
		p.Unread = text
	}
	r.Problems = append(r.Problems, p)
}

// written returns the expression as the user wrote it, shortened for
// a message.
func (r *Reader) written(e hclsyntax.Expression) string {
	rng := e.Range()
	text := string(r.File.Text[rng.Start.Byte:rng.End.Byte])
	if i := strings.IndexAny(text, "\r\n"); i >= 0 {
		text = text[:i] + " ..."
	}
	if len(text) > 40 {
		text = strings.ToValidUTF8(text[:40], "") + " ..."
	}
	return text
}

// Text reads a quoted text without interpolation. what names the value
// in messages ("the family").
func (r *Reader) Text(e hclsyntax.Expression, what string) (string, source.Place, bool) {
	if t, ok := e.(*hclsyntax.TemplateExpr); ok {
		first := t.SrcRange.Start.Byte + 1
		inside := source.Place{File: r.File, Start: first, End: max(first, t.SrcRange.End.Byte-1)}
		switch len(t.Parts) {
		case 0:
			return "", inside, true
		case 1:
			if lit, ok := t.Parts[0].(*hclsyntax.LiteralValueExpr); ok &&
				lit.Val.Type() == cty.String {
				if text := lit.Val.AsString(); text != "" {
					return text, r.Place(lit.SrcRange), true
				}
				return "", inside, true // HCL places an empty part behind the closing quote
			}
		}
		r.Fault(r.Place(t.SrcRange), "%s must be a plain text, without ${ } and %%{ }", what)
		return "", source.Place{}, false
	}
	at := r.Place(e.Range())
	if k, ok := e.(*hclsyntax.ObjectConsKeyExpr); ok {
		if word := hcl.ExprAsKeyword(k.Wrapped); word != "" && !k.ForceNonLiteral {
			return word, at, true
		}
		return r.Text(k.Wrapped, what)
	}
	if text := r.written(e); quotable(text) {
		r.Fault(at, "%s must be in quotes: write \"%s\"", what, text)
	} else {
		r.Fault(at, "%s must be a plain text in quotes, not %s", what, text)
	}
	return "", source.Place{}, false
}

// Literal returns the text of a value in quotes, and its place. It
// records no problem.
func (r *Reader) Literal(e hclsyntax.Expression) (string, source.Place, bool) {
	if _, isText := e.(*hclsyntax.TemplateExpr); !isText {
		return "", source.Place{}, false
	}
	text, inside, ok := source.StringLiteral(e)
	return text, source.Place{File: r.File, Start: inside.Start, End: inside.End}, ok
}

// quotable reports whether a value lacks only its quotes: it is a word
// or an amount, without a list, call or text.
func quotable(text string) bool {
	for _, c := range text {
		if !(unicode.IsLetter(c) || unicode.IsDigit(c) || strings.ContainsRune(" .:%°-_/", c)) {
			return false
		}
	}
	return true
}

// Quantity reads a quantity such as "200 g" of one of the
// allowed kinds.
func (r *Reader) Quantity(e hclsyntax.Expression, allowed quantity.Kinds,
	what string) (Given, bool) {
	if bare, ok := r.bareNumber(e); ok {
		// Read as text, the bare number gives the fault with the
		// corrected text.
		_, fault := quantity.Read(bare, allowed)
		if fault != nil {
			r.Fault(r.Place(e.Range()), "%s: %s", what, fault.Text)
		} else {
			r.Fault(r.Place(e.Range()), "%s must be in quotes: write \"%s\"", what, bare)
		}
		return Given{}, false
	}
	text, at, ok := r.Text(e, what)
	if !ok {
		return Given{}, false
	}
	return r.QuantityText(text, at, allowed, what)
}

// QuantityText reads a quantity from a text at a place.
func (r *Reader) QuantityText(text string, at source.Place, allowed quantity.Kinds,
	what string) (Given, bool) {
	q, fault := quantity.Read(text, allowed)
	if fault != nil {
		if at.End-at.Start == len(text) && fault.End > fault.Start {
			at = source.Place{File: at.File, Start: at.Start + fault.Start,
				End: at.Start + fault.End}
		}
		r.FaultUnread(at, text, nil, what+": "+fault.Text)
		return Given{}, false
	}
	return Given{Quantity: q, Place: at, Set: true}, true
}

// Given is a quantity that the user wrote, with its place. The zero
// Given was not written.
type Given struct {
	quantity.Quantity
	Place source.Place
	Set   bool
}

func (r *Reader) bareNumber(e hclsyntax.Expression) (string, bool) {
	switch n := e.(type) {
	case *hclsyntax.LiteralValueExpr:
		if n.Val.Type() == cty.Number {
			return r.written(e), true
		}
	case *hclsyntax.UnaryOpExpr:
		if n.Op == hclsyntax.OpNegate {
			if _, ok := r.bareNumber(n.Val); ok {
				return r.written(e), true
			}
		}
	}
	return "", false
}

// Number reads a plain number from lo to hi, with or without quotes.
func (r *Reader) Number(e hclsyntax.Expression, lo, hi float64,
	what string) (float64, source.Place, bool) {
	at := r.Place(e.Range())
	text, ok := r.bareNumber(e)
	if !ok {
		if text, at, ok = r.Text(e, what); !ok {
			return 0, at, false
		}
	}
	x, ok := plainNumber(strings.TrimSpace(text))
	if !ok {
		r.Fault(at, "%s must be a number, not %q", what, text)
		return 0, at, false
	}
	if !(x >= lo && x <= hi) {
		r.Fault(at, "%s must be between %s and %s, not %s", what, quantity.Format(lo, ""),
			quantity.Format(hi, ""), source.Safe(text))
		return 0, at, false
	}
	return x, at, true
}

// IsOpen reports whether a value is "?", to be decided. A value without
// that sign, written or as an escape, is not looked into.
func (r *Reader) IsOpen(e hclsyntax.Expression) bool {
	t, isText := e.(*hclsyntax.TemplateExpr)
	if !isText {
		return false
	}
	written := r.File.Text[t.SrcRange.Start.Byte:t.SrcRange.End.Byte]
	if !bytes.ContainsAny(written, `?\`) {
		return false
	}
	text, _, ok := source.StringLiteral(e)
	return ok && strings.TrimSpace(text) == "?"
}

// Figure reads a figure without a unit from lo to hi, or a range of it:
// 5.2, or "5 to 5.4".
func (r *Reader) Figure(e hclsyntax.Expression, lo, hi float64, what string) (Given, bool) {
	if text, _, ok := source.StringLiteral(e); ok {
		if low, high, isRange := strings.Cut(text, " to "); isRange {
			_, at, _ := r.Text(e, what)
			a, ok1 := plainNumber(strings.TrimSpace(low))
			b, ok2 := plainNumber(strings.TrimSpace(high))
			switch {
			case !ok1 || !ok2 || a > b:
				r.Fault(at, "%s must be a number or a range such as \"%s to %s\", not %q", what,
					quantity.Plain(lo), quantity.Plain(hi), text)
				return Given{}, false
			case !(a >= lo && b <= hi):
				r.Fault(at, "%s must be between %s and %s, not %s", what, quantity.Format(lo, ""),
					quantity.Format(hi, ""), source.Safe(text))
				return Given{}, false
			}
			q := quantity.Quantity{Interval: figure.Between(a, b), Text: text}
			return Given{Quantity: q, Place: at, Set: true}, true
		}
	}
	x, at, ok := r.Number(e, lo, hi, what)
	if !ok {
		return Given{}, false
	}
	return Given{Quantity: quantity.Quantity{Interval: figure.Point(x)}, Place: at, Set: true}, true
}

// Bool reads true or false.
func (r *Reader) Bool(e hclsyntax.Expression, what string) (value, ok bool) {
	if lit, is := e.(*hclsyntax.LiteralValueExpr); is && lit.Val.Type() == cty.Bool {
		return lit.Val.True(), true
	}
	r.Fault(r.Place(e.Range()), "%s must be true or false, not %s", what, r.written(e))
	return false, false
}

// Items reads a list.
func (r *Reader) Items(e hclsyntax.Expression, what string) ([]hclsyntax.Expression, bool) {
	if t, ok := e.(*hclsyntax.TupleConsExpr); ok {
		return t.Exprs, true
	}
	r.Fault(r.Place(e.Range()), "%s must be a list in square brackets [ ]", what)
	return nil, false
}

// Texts reads a list of texts.
func (r *Reader) Texts(e hclsyntax.Expression, what string) (texts []string, places []source.Place,
	ok bool) {
	items, ok := r.Items(e, what)
	if !ok {
		return nil, nil, false
	}
	for _, item := range items {
		if text, at, good := r.Text(item, what); good {
			texts, places = append(texts, text), append(places, at)
		} else {
			ok = false
		}
	}
	return texts, places, ok
}

// Pair is one key and value of an object, in file order.
type Pair struct {
	Key   string
	Place source.Place // of the key
	Value hclsyntax.Expression
}

// IsKey gives a test for the pair of a key.
func IsKey(key string) func(Pair) bool {
	return func(p Pair) bool { return p.Key == key }
}

// Pairs reads an object and appends its pairs to buf, which saves an
// allocation for each small object. Repeated keys are left to the
// caller, who words the problem.
func (r *Reader) Pairs(e hclsyntax.Expression, what string, buf []Pair) ([]Pair, bool) {
	object, ok := e.(*hclsyntax.ObjectConsExpr)
	if !ok {
		r.Fault(r.Place(e.Range()), "%s must be in curly brackets { }", what)
		return nil, false
	}
	pairs := buf
	for _, item := range object.Items {
		if key, at, good := r.Text(item.KeyExpr, "a name in "+what); good {
			pairs = append(pairs, Pair{Key: key, Place: at, Value: item.ValueExpr})
		}
	}
	return pairs, true
}

// MaxNameBytes bounds the name of a block: a formula, part, rule or
// tin. Every finding prints some names.
const MaxNameBytes = 256

// LabelPlace is where the label of a block stands, or its type where the
// syntax is broken: the parser then keeps labels without their places.
func (r *Reader) LabelPlace(b *hclsyntax.Block) source.Place {
	if len(b.LabelRanges) == 0 {
		return r.Place(b.TypeRange)
	}
	return r.Place(b.LabelRanges[0])
}

// Label returns the single label of a block, or records a problem.
func (r *Reader) Label(b *hclsyntax.Block) (string, source.Place) {
	if len(b.Labels) != 1 {
		r.Fault(r.Place(b.TypeRange), "%s needs one name in quotes: write %s \"name\" {",
			b.Type, b.Type)
		return "", r.Place(b.TypeRange)
	}
	at := r.LabelPlace(b)
	if strings.TrimSpace(b.Labels[0]) == "" {
		r.Fault(at, "%s needs a name: the quotes are empty", b.Type)
	}
	if n := len(b.Labels[0]); n > MaxNameBytes {
		r.Fault(at, "the name of this %s is %d bytes long; %d is the most", b.Type, n, MaxNameBytes)
		return b.Labels[0][:0], at
	}
	return b.Labels[0], at
}

// NoLabel records a problem if a block has a label.
func (r *Reader) NoLabel(b *hclsyntax.Block) {
	if len(b.Labels) > 0 {
		r.Fault(r.LabelPlace(b), "%s takes no name: write %s {", b.Type, b.Type)
	}
}

// Known records a problem for each key or block of a body that is not
// known, with the nearest names. in names the body ("a rule").
func (r *Reader) Known(b *hclsyntax.Body, in string, attributes, blocks []string) {
	// In most files every name is known, so this loop must
	// not allocate.
	for name, a := range b.Attributes {
		if slices.Contains(attributes, name) {
			continue
		}
		if slices.Contains(blocks, name) {
			r.Fault(r.Place(a.NameRange), "%s is a block: leave out the equals sign", name)
			continue
		}
		r.Unknown(r.Place(a.NameRange), "key", name, in,
			append(append([]string{}, attributes...), blocks...))
	}
	for _, block := range b.Blocks {
		if slices.Contains(blocks, block.Type) {
			continue
		}
		if slices.Contains(attributes, block.Type) {
			r.Fault(r.Place(block.TypeRange), "%s needs an equals sign: write %s = ...",
				block.Type, block.Type)
			continue
		}
		r.Unknown(r.Place(block.TypeRange), "block", block.Type, in,
			append(append([]string{}, blocks...), attributes...))
	}
}

// Unknown records an unknown name with the nearest known names, or all
// of them if they are few. in names the place of the search; it is
// empty where kind implies it.
func (r *Reader) Unknown(at source.Place, kind, name, in string, known []string) {
	r.Fault(at, "%s", UnknownText(kind, name, in, known))
}

// UnknownText returns the message for an unknown name, with the nearest
// known names.
func UnknownText(kind, name, in string, known []string) string {
	text := fmt.Sprintf("no %s %q", kind, name)
	if in != "" {
		text += " in " + in
	}
	if near := spelling.Nearest(name, known, 3); len(near) > 0 {
		return text + "; nearest is " + strings.Join(near, ", ")
	}
	if len(known) > 0 && len(known) <= 24 {
		list := append([]string{}, known...)
		sort.Strings(list)
		if len(list) == 1 {
			return text + "; the only one is " + list[0]
		}
		return text + "; known are " + strings.Join(list, ", ")
	}
	return text
}

// Box reads three lengths in one unit, "300 x 100 x 100 mm", in mm.
// Each may be a range.
func (r *Reader) Box(text string, at source.Place, what string) (box [3]figure.Interval, ok bool) {
	isTimes := func(c rune) bool { return c == 'x' || c == 'X' || c == '×' }
	sides := strings.FieldsFunc(text, isTimes)
	if len(sides) != 3 {
		r.Fault(at, "%s: write three lengths: \"300 x 100 x 100 mm\"", what)
		return box, false
	}
	last := strings.TrimSpace(sides[2])
	unit := UnitBehind(last)
	if unit == "" {
		r.Fault(at, "%s: the lengths have no unit; write \"%s mm\"", what, strings.TrimSpace(text))
		return box, false
	}
	for i, side := range sides {
		side = strings.TrimSpace(side)
		if i < 2 && UnitBehind(side) == "" {
			side += " " + unit
		}
		g, good := r.QuantityText(side, at, quantity.Of(quantity.Length), what)
		if !good {
			return box, false
		}
		box[i] = g.Interval
	}
	return box, true
}

// UnitBehind is what stands behind the last figure of a length: "mm" of
// "290 to 310 mm".
func UnitBehind(text string) string {
	return strings.TrimSpace(text[strings.LastIndexAny(text, "0123456789.")+1:])
}
