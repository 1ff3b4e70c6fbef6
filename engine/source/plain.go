package source

import (
	"strings"
	"unicode/utf8"

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

	depth int // of open brackets, as the guard counts them

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

func (s *slab[T]) take(n int) []T {
	if n == 0 {
		return nil
	}
	if n > len(s.free) {
		s.chunk = min(max(8, 2*s.chunk), 64)
		s.free = make([]T, max(n, s.chunk))
	}
	piece := s.free[:n:n]
	s.free = s.free[n:]
	return piece
}

func (s *slab[T]) one() *T { return &s.take(1)[0] }

// parsePlain parses the bytes from start to end of a file, start being on the
// given line. False means that hclsyntax must do it.
func parsePlain(f *File, start, end, line int) (*hclsyntax.Body, bool) {
	p := plain{text: string(f.Text[start:end]), base: start, line: line, name: f.Name}
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
	if !p.body(body, first, false) {
		return nil, false
	}
	return body, true
}

func (p *plain) pos() hcl.Pos { return hcl.Pos{Line: p.line, Column: 1, Byte: p.base + p.at} }

// since gives the range from a place to here.
func (p *plain) since(start hcl.Pos) hcl.Range {
	return hcl.Range{Filename: p.name, Start: start, End: p.pos()}
}

// here gives the empty range at this place.
func (p *plain) here() hcl.Range { return p.since(p.pos()) }

// peek gives the next byte; 0, which the guard keeps out of texts, at the end.
func (p *plain) peek() byte {
	if p.at < len(p.text) {
		return p.text[p.at]
	}
	return 0
}

// take steps over c if it is next.
func (p *plain) take(c byte) bool {
	if p.peek() != c {
		return false
	}
	p.at++
	return true
}

// enter counts a bracket that was opened. Accepted text closes them all, so
// the guard's limit is never met here; but this recursion need not rely on it.
func (p *plain) enter() bool {
	p.depth++
	return p.depth <= MaxDepth
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
	nl := 0
	switch {
	case rest == "":
		return false
	case rest[0] == '\n':
	case rest[0] == '\r':
		nl = 1
		if len(rest) == 1 || rest[1] != '\n' {
			return false
		}
	case rest[0] == '#' || strings.HasPrefix(rest, "//"):
		nl = strings.IndexByte(rest, '\n')
		comment := rest
		if nl >= 0 {
			comment = rest[:nl]
		}
		if cr := strings.IndexByte(comment, '\r'); cr >= 0 && cr != nl-1 {
			return false
		}
		if nl < 0 {
			p.at = len(p.text)
			return true
		}
	default:
		return false
	}
	p.at += nl + 1
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
		if !letter && (p.at == from || c != '-' && (c < '0' || c > '9')) {
			break
		}
		p.at++
	}
	return p.text[from:p.at]
}

// body reads settings and blocks, up to and including the closing brace when
// nested and else up to the end. Its range begins at start.
func (p *plain) body(b *hclsyntax.Body, start hcl.Pos, nested bool) bool {
	b.Attributes, b.Blocks = hclsyntax.Attributes{}, hclsyntax.Blocks{}
	for {
		p.lines()
		if p.at == len(p.text) {
			if nested {
				return false
			}
			break
		}
		if nested && p.take('}') {
			break
		}
		from := p.pos()
		name := p.word()
		if name == "" {
			return false
		}
		nameRange := p.since(from)
		p.blanks()
		if p.peek() == '=' {
			if a := p.setting(name, nameRange); a == nil || !add(b, a) {
				return false
			}
		} else if block := p.block(name, nameRange); block != nil {
			b.Blocks = append(b.Blocks, block)
		} else {
			return false
		}
		p.blanks()
		if p.at < len(p.text) && !p.newline() {
			return false
		}
	}
	b.SrcRange, b.EndRange = p.since(start), p.here()
	return true
}

// add is false when the body has the setting already.
func add(b *hclsyntax.Body, a *hclsyntax.Attribute) bool {
	had := len(b.Attributes)
	b.Attributes[a.Name] = a
	return len(b.Attributes) > had
}

// setting reads "=" and a value; nil if it gives up.
func (p *plain) setting(name string, nameRange hcl.Range) *hclsyntax.Attribute {
	from := p.pos()
	if !p.take('=') {
		return nil
	}
	equals := p.since(from)
	p.blanks()
	value := p.value()
	if value == nil {
		return nil
	}
	a := p.settings.one()
	*a = hclsyntax.Attribute{Name: name, Expr: value, SrcRange: p.since(nameRange.Start), NameRange: nameRange, EqualsRange: equals}
	return a
}

// block reads labels and a body; nil if it gives up.
func (p *plain) block(name string, nameRange hcl.Range) *hclsyntax.Block {
	n := new(blockNode)
	b := &n.block
	b.Type, b.TypeRange, b.Body = name, nameRange, &n.body
	from := p.pos()
	for ; !p.take('{'); from = p.pos() {
		label, ok := "", false
		if p.peek() == '"' {
			label, ok = p.quoted()
		} else {
			label = p.word()
			ok = label != ""
		}
		if !ok {
			return nil
		}
		if len(b.Labels) == 0 {
			b.Labels, b.LabelRanges = n.labels[:0], n.ranges[:0]
		}
		b.Labels, b.LabelRanges = append(b.Labels, label), append(b.LabelRanges, p.since(from))
		p.blanks()
	}
	b.OpenBraceRange = p.since(from)
	if !p.enter() {
		return nil
	}
	p.blanks()
	ok := false
	if p.peek() == '}' || p.newline() {
		ok = p.body(b.Body, from, true)
	} else {
		ok = p.oneLine(b.Body)
	}
	if !ok {
		return nil
	}
	p.depth--
	end := p.pos()
	end.Byte--
	b.CloseBraceRange = p.since(end)
	return b
}

// oneLine reads the one setting that a block on one line may hold, and the
// closing brace. Such a body spans no more than its setting.
func (p *plain) oneLine(b *hclsyntax.Body) bool {
	from := p.pos()
	name := p.word()
	nameRange := p.since(from)
	p.blanks()
	if name == "" {
		return false
	}
	a := p.setting(name, nameRange)
	if a == nil {
		return false
	}
	b.Attributes = hclsyntax.Attributes{name: a}
	b.SrcRange, b.EndRange = a.SrcRange, p.here()
	p.blanks()
	return p.take('}')
}

// value reads one value and stops right behind it; nil if it gives up. What may
// follow is the caller's business, and as callers know of no operators, calls
// or indexes, they give up on them.
func (p *plain) value() hclsyntax.Expression {
	from := p.pos()
	var literal cty.Value
	switch c := p.peek(); {
	case c == '"':
		if t := p.quotedText(); t != nil {
			return t
		}
		return nil
	case c == '{':
		if o := p.object(); o != nil {
			return o
		}
		return nil
	case c == '[':
		if l := p.list(); l != nil {
			return l
		}
		return nil
	case c >= '0' && c <= '9':
		number, err := cty.ParseNumberVal(p.number())
		if err != nil {
			return nil
		}
		literal = number
	default:
		switch p.word() {
		case "true":
			literal = cty.True
		case "false":
			literal = cty.False
		default:
			return nil
		}
	}
	return &hclsyntax.LiteralValueExpr{Val: literal, SrcRange: p.since(from)}
}

// number reads digits and, if more digits follow a point, those.
func (p *plain) number() string {
	from := p.at
	p.digits()
	if rest := p.text[p.at:]; len(rest) > 1 && rest[0] == '.' && rest[1] >= '0' && rest[1] <= '9' {
		p.at++
		p.digits()
	}
	return p.text[from:p.at]
}

func (p *plain) digits() {
	for p.at < len(p.text) && p.text[p.at] >= '0' && p.text[p.at] <= '9' {
		p.at++
	}
}

// quotedText reads a quoted text as a value or a key; nil if it gives up.
func (p *plain) quotedText() *hclsyntax.TemplateExpr {
	from := p.pos()
	text, ok := p.quoted()
	if !ok {
		return nil
	}
	n := p.texts.one()
	n.template.SrcRange = p.since(from)
	n.literal.Val = cty.StringVal(text)
	n.literal.SrcRange = n.template.SrcRange
	n.literal.SrcRange.Start.Byte++
	n.literal.SrcRange.End.Byte--
	if text == "" { // HCL places an empty part behind the closing quote
		n.literal.SrcRange = p.here()
	}
	n.parts[0] = &n.literal
	n.template.Parts = n.parts[:]
	return &n.template
}

// quoted reads a quoted text and gives what it means.
func (p *plain) quoted() (string, bool) {
	from := p.at + 1
	escaped := false
	for i := from; i < len(p.text); i++ {
		switch c := p.text[i]; c {
		case '"':
			p.at = i + 1
			if escaped {
				return unescape(p.text[from:i])
			}
			return p.text[from:i], true
		case '\\':
			escaped = true
			i++
		case '\n', '\r':
			return "", false
		case '$', '%':
			// A template or its escape, or one of the places where the lexer of
			// hclsyntax takes two characters for one sign.
			if i+1 == len(p.text) {
				return "", false
			}
			if next := p.text[i+1]; next == '{' || next == '$' || next == '%' || next == '\\' || next >= utf8.RuneSelf {
				return "", false
			}
		}
	}
	return "", false
}

func unescape(s string) (string, bool) {
	var b strings.Builder
	b.Grow(len(s))
	for {
		i := strings.IndexByte(s, '\\')
		if i < 0 {
			b.WriteString(s)
			return b.String(), true
		}
		b.WriteString(s[:i])
		switch c := s[i+1]; c { // the quote that ended s was not escaped, so there is one more byte
		case '"', '\\':
			b.WriteByte(c)
		case 'n':
			b.WriteByte('\n')
		case 'r':
			b.WriteByte('\r')
		case 't':
			b.WriteByte('\t')
		default:
			return "", false
		}
		s = s[i+2:]
	}
}

// list reads [ ] with its values; nil if it gives up. Line ends do not count.
func (p *plain) list() *hclsyntax.TupleConsExpr {
	from := p.pos()
	p.at++
	if !p.enter() {
		return nil
	}
	l := &hclsyntax.TupleConsExpr{OpenRange: p.since(from)}
	base := len(p.openExprs)
	for p.lines(); !p.take(']'); p.lines() {
		value := p.value()
		if value == nil {
			return nil
		}
		p.openExprs = append(p.openExprs, value)
		p.lines()
		if !p.take(',') && p.peek() != ']' {
			return nil
		}
	}
	l.Exprs = p.exprs.take(len(p.openExprs) - base)
	copy(l.Exprs, p.openExprs[base:])
	p.openExprs = p.openExprs[:base]
	p.depth--
	l.SrcRange = p.since(from)
	return l
}

// object reads { } with its keys and values; nil if it gives up. A line end or
// a comma must stand between two of them, and line ends count elsewhere too.
func (p *plain) object() *hclsyntax.ObjectConsExpr {
	from := p.pos()
	p.at++
	if !p.enter() {
		return nil
	}
	o := p.objects.one()
	o.OpenRange = p.since(from)
	base := len(p.openItems)
	for p.lines(); !p.take('}'); p.lines() {
		key := p.key(len(p.openItems) == base)
		if key == nil {
			return nil
		}
		p.blanks()
		if !p.take('=') && !p.take(':') {
			return nil
		}
		p.blanks()
		value := p.value()
		if value == nil {
			return nil
		}
		p.openItems = append(p.openItems, hclsyntax.ObjectConsItem{KeyExpr: key, ValueExpr: value})
		p.blanks()
		if !p.take(',') && !p.newline() && p.peek() != '}' {
			return nil
		}
	}
	o.Items = p.items.take(len(p.openItems) - base)
	copy(o.Items, p.openItems[base:])
	p.openItems = p.openItems[:base]
	p.depth--
	o.SrcRange = p.since(from)
	return o
}

// key reads a key of an object; nil if it gives up. A first key "for" starts a
// loop, and the words that are values make other nodes than names do.
func (p *plain) key(first bool) *hclsyntax.ObjectConsKeyExpr {
	if p.peek() == '"' {
		text := p.quotedText()
		if text == nil {
			return nil
		}
		key := p.keys.one()
		key.Wrapped = text
		return key
	}
	from := p.pos()
	word := p.word()
	if word == "" || word == "true" || word == "false" || word == "null" || word == "for" && first {
		return nil
	}
	n := p.words.one()
	n.traversal.SrcRange = p.since(from)
	n.steps[0] = hcl.TraverseRoot{Name: word, SrcRange: n.traversal.SrcRange}
	n.traversal.Traversal = n.steps[:]
	n.key.Wrapped = &n.traversal
	return &n.key
}
