package source

import (
	"strings"
	"unicode/utf8"
	"unsafe"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
)

// plain is a second parser for the part of HCL that nearly every file keeps
// to: blocks, settings, quoted texts without ${ and %{, numbers, true, false,
// [ ] and { }. It makes the tree that hclsyntax would make, in a fraction of
// the time, because it reads each byte once and neither keeps tokens nor counts
// grapheme clusters.
//
// Whatever it does not know, or knows to be wrong, it gives up on, and
// hclsyntax reads the text instead and words the problems: plain has no message
// of its own. So it may refuse anything, but must accept nothing that hclsyntax
// refuses; FuzzPlain holds it to that. Among what it leaves to hclsyntax are
// heredocs, negative numbers, exponents, null, \u escapes, parentheses and
// names that are not ASCII.
//
// Two things differ from hclsyntax's tree: all columns are 1, and slices have
// no room to grow. The guard must have passed the text.
type plain struct {
	text string // the span that is parsed; all nodes' texts are cut from it
	at   int    // the byte of text that is read next
	base int    // the offset of text in the file
	line int
	name string

	depth  int  // of open brackets, as the guard counts them
	gaveUp bool // nodes made since then are not looked at

	// Nodes come from chunks and lists are filled on a stack and then cut to
	// size: one allocation for many nodes.
	texts    slab[textNode]
	words    slab[wordNode]
	keys     slab[hclsyntax.ObjectConsKeyExpr]
	objects  slab[hclsyntax.ObjectConsExpr]
	settings slab[hclsyntax.Attribute]
	items    slab[hclsyntax.ObjectConsItem]
	exprs    slab[hclsyntax.Expression]

	openItems []hclsyntax.ObjectConsItem
	openExprs []hclsyntax.Expression
}

// textNode is a quoted text: a template of one part.
type textNode struct {
	template hclsyntax.TemplateExpr
	literal  hclsyntax.LiteralValueExpr
	parts    [1]hclsyntax.Expression
}

// wordNode is an object's key without quotes.
type wordNode struct {
	key       hclsyntax.ObjectConsKeyExpr
	traversal hclsyntax.ScopeTraversalExpr
	steps     [1]hcl.Traverser
}

// blockNode is a block with, as is usual, one label.
type blockNode struct {
	block  hclsyntax.Block
	body   hclsyntax.Body
	labels [1]string
	ranges [1]hcl.Range
}

// slab hands out pieces of chunks that double in size, so that a file of a few
// lines pays for a few nodes.
type slab[T any] struct {
	free  []T
	chunk int
}

// cut gives n nodes without room for more.
func (s *slab[T]) cut(n int) []T {
	if n > len(s.free) {
		s.chunk = min(max(8, 2*s.chunk), 32)
		s.free = make([]T, max(n, s.chunk))
	}
	piece := s.free[:n:n]
	s.free = s.free[n:]
	return piece
}

func (s *slab[T]) one() *T { return &s.cut(1)[0] }

// copy is nil for an empty list, as hclsyntax has it.
func (s *slab[T]) copy(list []T) []T {
	if len(list) == 0 {
		return nil
	}
	piece := s.cut(len(list))
	copy(piece, list)
	return piece
}

// parsePlain parses the bytes from start to end of a file, start being on the
// given line. False means that hclsyntax must do it.
func parsePlain(f *File, start, end, line int) (*hclsyntax.Body, bool) {
	p := plain{
		text: asString(f.Text[start:end]), base: start, line: line, name: f.Name,
		openItems: make([]hclsyntax.ObjectConsItem, 0, 16), openExprs: make([]hclsyntax.Expression, 0, 16),
	}
	if strings.HasPrefix(p.text, byteOrderMark) {
		p.at = len(byteOrderMark)
	}
	// The outermost body starts at the first token: a line end is one, and so
	// is a comment that has one.
	p.blanks()
	first := p.pos()
	if p.newline() && p.text[p.at-1] != '\n' {
		first = p.pos()
	}
	body := new(hclsyntax.Body)
	p.body(body, first, false)
	return body, !p.gaveUp
}

func (p *plain) pos() hcl.Pos { return hcl.Pos{Line: p.line, Column: 1, Byte: p.base + p.at} }

// since gives the range from a place to here.
func (p *plain) since(start hcl.Pos) hcl.Range {
	return hcl.Range{Filename: p.name, Start: start, End: p.pos()}
}

// peek gives the byte n bytes ahead; behind the end 0, which the guard keeps out
// of texts.
func (p *plain) peek(n int) byte {
	if p.at+n < len(p.text) {
		return p.text[p.at+n]
	}
	return 0
}

// take steps over c if it is next.
func (p *plain) take(c byte) bool {
	if p.peek(0) != c {
		return false
	}
	p.at++
	return true
}

// need gives up unless there is what must be.
func (p *plain) need(there bool) {
	if !there {
		p.gaveUp = true
	}
}

// open counts a bracket that was opened. Accepted text closes them all, so the
// guard's limit is never met here; but this recursion need not rely on it.
func (p *plain) open() {
	p.depth++
	p.need(p.depth <= MaxDepth)
}

// closed steps over the bracket c if it is next. It is true as well when the
// plain parser has given up, to end every loop.
func (p *plain) closed(c byte) bool {
	if p.gaveUp || !p.take(c) {
		return p.gaveUp
	}
	p.depth--
	return true
}

// blanks steps over what stands between tokens of one line.
func (p *plain) blanks() {
	for p.at < len(p.text) {
		switch p.text[p.at] {
		case ' ', '\t':
			p.at++
		case '/':
			rest := p.text[p.at:]
			if !strings.HasPrefix(rest, "/*") {
				return
			}
			end := strings.Index(rest[2:], "*/")
			if end < 0 {
				return
			}
			p.at += 2 + end + 2
			p.line += strings.Count(rest[:2+end], "\n")
		default:
			return
		}
	}
}

// newline steps over one line end, or over one comment up to its line end or
// the end of the text. A carriage return elsewhere it leaves to hclsyntax.
func (p *plain) newline() bool {
	rest := p.text[p.at:]
	switch {
	case strings.HasPrefix(rest, "\n"), strings.HasPrefix(rest, "\r\n"):
	case strings.HasPrefix(rest, "#"), strings.HasPrefix(rest, "//"):
	default:
		return false
	}
	end := strings.IndexByte(rest, '\n') + 1
	if end == 0 {
		p.at = len(p.text)
		p.need(strings.IndexByte(rest, '\r') < 0)
		return true
	}
	if cr := strings.IndexByte(rest[:end], '\r'); cr >= 0 {
		p.need(cr == end-2)
	}
	p.at += end
	p.line++
	return true
}

// lines steps over all that stands between tokens where line ends do not count.
func (p *plain) lines() {
	for p.blanks(); p.newline(); p.blanks() {
	}
}

// word reads a name of ASCII letters; "" if none is here. When a byte of another
// alphabet follows, no caller finds what it wants next, and so all give up.
func (p *plain) word() string {
	from := p.at
	for p.at < len(p.text) {
		c := p.text[p.at]
		letter := c|0x20 >= 'a' && c|0x20 <= 'z' || c == '_'
		if !letter && (p.at == from || c != '-' && !isDigit(c)) {
			break
		}
		p.at++
	}
	return p.text[from:p.at]
}

func isDigit(c byte) bool { return c >= '0' && c <= '9' }

// body reads settings and blocks, up to and including the closing brace when
// nested and else up to the end. Its range begins at start.
func (p *plain) body(b *hclsyntax.Body, start hcl.Pos, nested bool) {
	b.Attributes, b.Blocks = hclsyntax.Attributes{}, hclsyntax.Blocks{}
	for p.lines(); nested || p.at < len(p.text); p.lines() {
		if nested && p.closed('}') || p.gaveUp {
			break
		}
		from := p.pos()
		name := p.word()
		nameRange := p.since(from)
		p.need(name != "")
		p.blanks()
		if p.peek(0) == '=' {
			a := p.setting(name, nameRange)
			p.need(b.Attributes[name] == nil)
			b.Attributes[name] = a
		} else {
			b.Blocks = append(b.Blocks, p.block(name, nameRange))
		}
		p.blanks()
		p.need(p.newline() || p.at == len(p.text))
	}
	b.SrcRange, b.EndRange = p.since(start), p.since(p.pos())
}

// setting reads "=" and a value.
func (p *plain) setting(name string, nameRange hcl.Range) *hclsyntax.Attribute {
	a := p.settings.one()
	a.Name, a.NameRange = name, nameRange
	from := p.pos()
	p.need(p.take('='))
	a.EqualsRange = p.since(from)
	p.blanks()
	a.Expr = p.value()
	a.SrcRange = p.since(nameRange.Start)
	return a
}

// block reads labels and a body.
func (p *plain) block(name string, nameRange hcl.Range) *hclsyntax.Block {
	n := new(blockNode)
	b := &n.block
	b.Type, b.TypeRange, b.Body = name, nameRange, &n.body
	from := p.pos()
	for ; !p.gaveUp && !p.take('{'); from = p.pos() {
		if len(b.Labels) == 0 {
			b.Labels, b.LabelRanges = n.labels[:0], n.ranges[:0]
		}
		label := ""
		if p.peek(0) == '"' {
			label = p.quoted()
		} else {
			label = p.word()
			p.need(label != "")
		}
		b.Labels, b.LabelRanges = append(b.Labels, label), append(b.LabelRanges, p.since(from))
		p.blanks()
	}
	b.OpenBraceRange = p.since(from)
	p.open()
	p.blanks()
	if p.peek(0) == '}' || p.newline() {
		p.body(b.Body, from, true)
	} else {
		p.oneLine(b.Body)
	}
	end := p.pos()
	end.Byte--
	b.CloseBraceRange = p.since(end)
	return b
}

// oneLine reads the one setting that a block on one line may hold, and the
// closing brace. Such a body spans no more than its setting.
func (p *plain) oneLine(b *hclsyntax.Body) {
	from := p.pos()
	name := p.word()
	nameRange := p.since(from)
	p.need(name != "")
	p.blanks()
	a := p.setting(name, nameRange)
	b.Attributes = hclsyntax.Attributes{name: a}
	b.SrcRange, b.EndRange = a.SrcRange, p.since(p.pos())
	p.blanks()
	p.need(p.closed('}'))
}

// value reads one value and stops right behind it. What may follow is the
// caller's business, and as callers know of no operators, calls or indexes,
// they give up on them.
func (p *plain) value() hclsyntax.Expression {
	switch p.peek(0) {
	case '"':
		return p.quotedText()
	case '{':
		return p.object()
	case '[':
		return p.list()
	}
	literal := new(hclsyntax.LiteralValueExpr)
	from := p.pos()
	switch word := p.word(); {
	case word == "true":
		literal.Val = cty.True
	case word == "false":
		literal.Val = cty.False
	case word == "" && isDigit(p.peek(0)):
		literal.Val = p.number()
	default:
		p.gaveUp = true
	}
	literal.SrcRange = p.since(from)
	return literal
}

// number reads digits with, perhaps, a point between them. A point behind them
// or a second one is the next thing, which no caller wants.
func (p *plain) number() cty.Value {
	from := p.at
	for pointed := false; ; p.at++ {
		if c := p.peek(0); c == '.' && !pointed && isDigit(p.peek(1)) {
			pointed = true
		} else if !isDigit(c) {
			break
		}
	}
	number, err := cty.ParseNumberVal(p.text[from:p.at])
	p.need(err == nil)
	return number
}

// quotedText reads a quoted text as a value or a key.
func (p *plain) quotedText() *hclsyntax.TemplateExpr {
	n := p.texts.one()
	from := p.pos()
	text := p.quoted()
	n.template.SrcRange = p.since(from)
	n.literal.Val = cty.StringVal(text)
	n.literal.SrcRange = n.template.SrcRange
	n.literal.SrcRange.Start.Byte++
	n.literal.SrcRange.End.Byte--
	if text == "" { // HCL places an empty part behind the closing quote
		n.literal.SrcRange.Start = p.pos()
		n.literal.SrcRange.End = p.pos()
	}
	n.parts[0] = &n.literal
	n.template.Parts = n.parts[:]
	return &n.template
}

// quoted reads a quoted text and gives what it means, not normalised.
func (p *plain) quoted() string {
	p.at++
	from := p.at
	escaped := false
	for ; p.at < len(p.text); p.at++ {
		switch p.text[p.at] {
		case '"':
			text := p.text[from:p.at]
			p.at++
			if escaped {
				d := decoder{text: []byte(text)}
				d.quoted(0, len(text))
				text = string(d.out)
			}
			return text
		case '\\':
			if strings.IndexByte(`"\nrt`, p.peek(1)) < 0 {
				p.gaveUp = true
				return ""
			}
			escaped = true
			p.at++
		case '$', '%':
			// A template or its escape, or one of the places where the lexer of
			// hclsyntax takes two characters for one sign.
			next := p.peek(1)
			p.need(next < utf8.RuneSelf && strings.IndexByte(`{$%\`, next) < 0)
		case '\n', '\r':
			p.gaveUp = true
			return ""
		}
	}
	p.gaveUp = true
	return ""
}

// list reads [ ] with its values. Line ends do not count.
func (p *plain) list() *hclsyntax.TupleConsExpr {
	l := new(hclsyntax.TupleConsExpr)
	from := p.pos()
	p.at++
	p.open()
	l.OpenRange = p.since(from)
	base := len(p.openExprs)
	for p.lines(); !p.closed(']'); p.lines() {
		p.openExprs = append(p.openExprs, p.value())
		p.lines()
		p.need(p.take(',') || p.peek(0) == ']')
	}
	l.Exprs = p.exprs.copy(p.openExprs[base:])
	p.openExprs = p.openExprs[:base]
	l.SrcRange = p.since(from)
	return l
}

// object reads { } with its keys and values. A line end or a comma must stand
// between two of them, and line ends count elsewhere too.
func (p *plain) object() *hclsyntax.ObjectConsExpr {
	o := p.objects.one()
	from := p.pos()
	p.at++
	p.open()
	o.OpenRange = p.since(from)
	base := len(p.openItems)
	for p.lines(); !p.closed('}'); p.lines() {
		key := p.key(len(p.openItems) == base)
		p.blanks()
		p.need(p.take('=') || p.take(':'))
		p.blanks()
		p.openItems = append(p.openItems, hclsyntax.ObjectConsItem{KeyExpr: key, ValueExpr: p.value()})
		p.blanks()
		p.need(p.take(',') || p.newline() || p.peek(0) == '}')
	}
	o.Items = p.items.copy(p.openItems[base:])
	p.openItems = p.openItems[:base]
	o.SrcRange = p.since(from)
	return o
}

// key reads a key of an object. A first key "for" starts a loop, and the words
// that are values make other nodes than names do.
func (p *plain) key(first bool) *hclsyntax.ObjectConsKeyExpr {
	if p.peek(0) == '"' {
		key := p.keys.one()
		key.Wrapped = p.quotedText()
		return key
	}
	n := p.words.one()
	from := p.pos()
	word := p.word()
	p.need(word != "" && word != "true" && word != "false" && word != "null" && !(word == "for" && first))
	n.traversal.SrcRange = p.since(from)
	n.steps[0] = hcl.TraverseRoot{Name: word, SrcRange: n.traversal.SrcRange}
	n.traversal.Traversal = n.steps[:]
	n.key.Wrapped = &n.traversal
	return &n.key
}

// asString sees a file's text as a string without copying it: the text of a File is never written to, and what the tree keeps of the
// string keeps no more than the File itself does.
func asString(text []byte) string { return unsafe.String(unsafe.SliceData(text), len(text)) }
