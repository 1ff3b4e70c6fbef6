package source

import (
	"strings"
	"unicode/utf8"
	"unsafe"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/zclconf/go-cty/cty"
)

// plain is a second parser for the HCL that most files use: blocks,
// settings, quoted texts without ${ and %{, numbers, true, false, [ ]
// and { }. It builds the same tree as hclsyntax in a fraction of the
// time: it reads each byte once, stores no tokens and counts no
// grapheme clusters.
//
// It gives up on unknown or wrong text. Then hclsyntax reads the
// text and words the problems: plain has no messages. So it may
// refuse anything, but must accept nothing that hclsyntax refuses;
// FuzzPlain checks that. Left to hclsyntax are heredocs, exponents,
// null, \u escapes, parentheses and names that are not ASCII.
//
// Its tree differs from that of hclsyntax in two respects: all columns
// are 1, and slices have no spare capacity. The guard must have passed
// the text.
type plain struct {
	text string // of the file; the nodes' texts are substrings of it
	at   int    // offset in text of the next byte
	line int
	name string
	// without is a type of top-level blocks that are left out; "" for none
	without string

	depth  int  // open brackets, as the guard counts them
	gaveUp bool // the result is not used

	// Nodes are allocated in chunks. Lists grow on a stack and are then
	// copied to their exact size.
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

// textNode is a quoted text: a template with one part.
type textNode struct {
	template hclsyntax.TemplateExpr
	literal  hclsyntax.LiteralValueExpr
	parts    [1]hclsyntax.Expression
}

// wordNode is an object's unquoted key.
type wordNode struct {
	key       hclsyntax.ObjectConsKeyExpr
	traversal hclsyntax.ScopeTraversalExpr
	steps     [1]hcl.Traverser
}

// blockNode is a block with room for one label, the usual number.
type blockNode struct {
	block  hclsyntax.Block
	body   hclsyntax.Body
	labels [1]string
	ranges [1]hcl.Range
}

// slab allocates from chunks that double in size, so that a short file
// allocates few nodes.
type slab[T any] struct {
	free  []T
	chunk int
}

// cut returns n nodes without spare capacity.
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

// copy returns a copy of a list, nil for an empty one, as in hclsyntax.
func (s *slab[T]) copy(list []T) []T {
	if len(list) == 0 {
		return nil
	}
	piece := s.cut(len(list))
	copy(piece, list)
	return piece
}

// parsePlain parses a file without its top-level blocks of one type, ""
// for none. It returns false if hclsyntax must parse it.
func parsePlain(f *File, without string) (*hclsyntax.Body, bool) {
	p := plain{
		text: asString(f.Text), line: 1, name: f.Name, without: without,
		openItems: make([]hclsyntax.ObjectConsItem, 0, 16),
		openExprs: make([]hclsyntax.Expression, 0, 16),
	}
	if strings.HasPrefix(p.text, byteOrderMark) {
		p.at = len(byteOrderMark)
	}
	// The outermost body starts at the first token. A line end is a
	// token, and so is a comment with a line end.
	p.blanks()
	first := p.pos()
	if p.newline() && p.text[p.at-1] != '\n' {
		first = p.pos()
	}
	body := new(hclsyntax.Body)
	p.body(body, first, false)
	return body, !p.gaveUp
}

func (p *plain) pos() hcl.Pos { return hcl.Pos{Line: p.line, Column: 1, Byte: p.at} }

// since returns the range from a position to the current one.
func (p *plain) since(start hcl.Pos) hcl.Range {
	return hcl.Range{Filename: p.name, Start: start, End: p.pos()}
}

// peek returns the byte n bytes ahead, or 0 after the end. The guard
// passes no zero byte.
func (p *plain) peek(n int) byte {
	if p.at+n < len(p.text) {
		return p.text[p.at+n]
	}
	return 0
}

// take consumes c if it is the next byte.
func (p *plain) take(c byte) bool {
	if p.peek(0) != c {
		return false
	}
	p.at++
	return true
}

// need gives up unless the condition holds.
func (p *plain) need(there bool) {
	if !there {
		p.gaveUp = true
	}
}

// open counts an opened bracket. The guard has checked the depth; this
// bounds the recursion without it.
func (p *plain) open() {
	p.depth++
	p.need(p.depth <= MaxDepth)
}

// closed consumes the bracket c if it is next. It also reports true
// once the parser has given up, which ends every loop.
func (p *plain) closed(c byte) bool {
	if p.gaveUp || !p.take(c) {
		return p.gaveUp
	}
	p.depth--
	return true
}

// blanks skips blanks and comments between tokens of one line.
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

// newline consumes one line end, or one comment up to its line end or
// the text's end. It leaves a carriage return elsewhere to hclsyntax.
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

// lines skips blanks, comments and line ends, where line ends do
// not count.
func (p *plain) lines() {
	for p.blanks(); p.newline(); p.blanks() {
	}
}

// word reads a name of ASCII letters, or "". If a byte outside ASCII
// follows, the caller misses its token and gives up.
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

// body reads settings and blocks. A nested body ends with its closing
// brace, the outermost with the text. Its range begins at start.
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
		if name == p.without && name != "" && !nested {
			p.pass()
			continue
		}
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

// pass leaves out a block up to the first line that is its closing
// brace alone.
func (p *plain) pass() {
	rest := p.text[p.at:]
	end := strings.Index(rest, "\n}\n")
	if end < 0 {
		p.gaveUp = true
		return
	}
	p.at += end + len("\n}")
	p.line += strings.Count(rest[:end+1], "\n")
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

// oneLine reads a block's single setting on one line, and the closing
// brace. The body's range is that of its setting.
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

// value reads one value and stops after it. The caller checks the next
// token. No caller accepts operators, calls or indexes, so plain gives
// up at them.
func (p *plain) value() hclsyntax.Expression {
	switch p.peek(0) {
	case '"':
		return p.quotedText()
	case '{':
		return p.object()
	case '[':
		return p.list()
	}
	if p.peek(0) == '-' && isDigit(p.peek(1)) {
		return p.negative()
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

// negative reads a minus and its number.
func (p *plain) negative() *hclsyntax.UnaryOpExpr {
	from := p.pos()
	p.at++
	n := &hclsyntax.UnaryOpExpr{Op: hclsyntax.OpNegate, SymbolRange: p.since(from)}
	n.Val = p.value()
	n.SrcRange = p.since(from)
	return n
}

// number reads digits with an optional point. A trailing or second
// point is left as the next token, which no caller accepts.
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
	if text == "" { // HCL places an empty part after the closing quote
		n.literal.SrcRange.Start = p.pos()
		n.literal.SrcRange.End = p.pos()
	}
	n.parts[0] = &n.literal
	n.template.Parts = n.parts[:]
	return &n.template
}

// quotedByte marks the bytes of a quoted text that quoted examines.
var quotedByte = [256]bool{'"': true, '\\': true, '$': true, '%': true, '\n': true, '\r': true}

// quoted reads a quoted text and returns it decoded, not normalised.
func (p *plain) quoted() string {
	p.at++
	from := p.at
	escaped := false
	for ; p.at < len(p.text); p.at++ {
		c := p.text[p.at]
		if !quotedByte[c] {
			continue
		}
		switch c {
		case '"':
			text := p.text[from:p.at]
			p.at++
			if escaped {
				return unescaped(text)
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
			// A template, its escape, or a pair of characters that
			// hclsyntax reads as one sign.
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

// unescaped decodes the escapes of a quoted text.
func unescaped(text string) string {
	in := []byte(text)
	out := in[:0] // an escape is longer than what it stands for
	for i := 0; i < len(in); i++ {
		if in[i] != '\\' {
			out = append(out, in[i])
			continue
		}
		r, size := escape(in[i+1:])
		out, i = utf8.AppendRune(out, r), i+size
	}
	return asString(out)
}

// list reads [ ] and its values. Line ends do not count.
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

// object reads { } and its keys and values. A line end or a comma must
// separate two of them; line ends count elsewhere too.
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
		p.openItems = append(p.openItems,
			hclsyntax.ObjectConsItem{KeyExpr: key, ValueExpr: p.value()})
		p.blanks()
		p.need(p.take(',') || p.newline() || p.peek(0) == '}')
	}
	o.Items = p.items.copy(p.openItems[base:])
	p.openItems = p.openItems[:base]
	o.SrcRange = p.since(from)
	return o
}

// key reads an object's key. It leaves to hclsyntax a first key "for",
// which starts a loop, and words that are values.
func (p *plain) key(first bool) *hclsyntax.ObjectConsKeyExpr {
	if p.peek(0) == '"' {
		key := p.keys.one()
		key.Wrapped = p.quotedText()
		return key
	}
	n := p.words.one()
	from := p.pos()
	word := p.word()
	p.need(word != "" && word != "true" && word != "false" && word != "null" &&
		!(word == "for" && first))
	n.traversal.SrcRange = p.since(from)
	n.steps[0] = hcl.TraverseRoot{Name: word, SrcRange: n.traversal.SrcRange}
	n.traversal.Traversal = n.steps[:]
	n.key.Wrapped = &n.traversal
	return &n.key
}

// asString returns a file's text as a string without a copy: the text
// of a File never changes.
func asString(text []byte) string { return unsafe.String(unsafe.SliceData(text), len(text)) }
