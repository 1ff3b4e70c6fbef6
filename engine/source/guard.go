package source

import (
	"bytes"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Limits of the text that the guard passes to the HCL parser. All
// figures were measured with hcl v2.25.0 and Go 1.26.
//
// The parser recurses: 57 KB of "{" overflow the stack, which ends the
// process without recovery. A level of "{" takes about 17 KB of stack,
// one of "!" about 4.4 KB, and the limit is 1 GB. MaxBrackets and
// MaxSigns count raw bytes, so no text evades them; they bound the
// stack (340 MB and 440 MB). The limits on depth and runs follow the
// syntax and give the useful message. The others bound the parser's
// quadratic cases.
const (
	MaxFileBytes     = 256 << 10 // a formula is about 3 KB
	MaxLimitBytes    = 1 << 20   // the largest File.Limit
	MaxBrackets      = 20_000    // ( [ { in the raw text
	MaxSigns         = 100_000   // ! and - in the raw text
	MaxDepth         = 64        // nested ( [ { ${ %{
	MaxSignRun       = 64        // ! or - with only blanks and comments between
	MaxChoices       = 64        // ? in one setting
	MaxSplats        = 64        // [*] and .* in one setting
	MaxTemplateSigns = 1_024     // $ and % in one quoted text or heredoc
	MaxDirectives    = 64        // %{ in one file
	MaxHeredocLines  = 4_096     // lines inside heredocs in one file
	MaxProblems      = 20        // problems told of one file
)

// Block is the range of a top-level block, from its type's first byte
// to the byte after its closing brace.
type Block struct {
	Type       string
	Start, End int
}

// Blocks returns a file's top-level blocks, as the guard found them. It
// returns false if the guard refused the file, or met unknown text
// between blocks. Then the caller should parse the whole file.
//
// Settings between blocks are not listed.
func Blocks(f *File) ([]Block, bool) {
	g := f.guard()
	if len(g.problems) > 0 || !g.sure {
		return nil, false
	}
	return g.blocks, true
}

// scanned is the guard's result.
type scanned struct {
	problems Problems
	blocks   []Block
	sure     bool
}

func (f *File) guard() *scanned {
	f.guardOnce.Do(func() { f.guarded = guard(f) })
	return &f.guarded
}

func guard(f *File) scanned {
	refuse := func(start, end int, text string) scanned {
		return scanned{problems: Problems{{Place: f.place(start, end), Text: text}}}
	}
	limit := MaxFileBytes
	if f.Limit > 0 {
		limit = min(f.Limit, MaxLimitBytes)
	}
	if len(f.Text) > limit {
		return refuse(0, 0, tooLarge(len(f.Text), limit))
	}
	if at, ok := firstInvalid(f.Text); !ok {
		return refuse(at, at+1, notUTF8(f.Text[at:]))
	}
	if at := bytes.IndexByte(f.Text, 0); at >= 0 {
		return refuse(at, at+1, hasNUL)
	}
	if i, ok := firstBeyond(f.Text, "([{", MaxBrackets); !ok {
		return refuse(i, i+1, tooManyBrackets)
	}
	if i, ok := firstBeyond(f.Text, "!-", MaxSigns); !ok {
		return refuse(i, i+1, tooManySigns)
	}
	s := scanner{file: f, text: f.Text, sure: true}
	if bytes.HasPrefix(f.Text, []byte(byteOrderMark)) {
		s.at = len(byteOrderMark)
	}
	s.push(frame{kind: inBody, open: s.at})
	s.run()
	if len(s.problems) > 0 {
		return scanned{problems: s.problems}
	}
	return scanned{blocks: s.blocks, sure: s.sure}
}

// firstInvalid returns the offset of the first byte that is not UTF-8,
// and true if there is none.
func firstInvalid(text []byte) (int, bool) {
	if utf8.Valid(text) {
		return 0, true
	}
	for i := 0; i < len(text); {
		r, size := utf8.DecodeRune(text[i:])
		if r == utf8.RuneError && size == 1 {
			return i, false
		}
		i += size
	}
	return 0, true
}

// firstBeyond returns the offset of the first sign beyond the most that
// may stand in a text, and true if there is none.
func firstBeyond(text []byte, signs string, most int) (int, bool) {
	n := 0
	for i := range signs {
		n += bytes.Count(text, []byte{signs[i]}) // faster than a look at each byte
	}
	if n <= most {
		return 0, true
	}
	for i, c := range text {
		if strings.IndexByte(signs, c) < 0 {
			continue
		}
		if most--; most < 0 {
			return i, false
		}
	}
	return 0, true
}

// place returns a Place within the file, on character boundaries.
func (f *File) place(start, end int) Place {
	start = f.snap(start)
	return Place{File: f, Start: start, End: max(start, f.snap(end))}
}

func (f *File) snap(at int) int {
	at = max(0, min(at, len(f.Text)))
	for back := 0; back < utf8.UTFMax && at > 0 && at < len(f.Text) &&
		!utf8.RuneStart(f.Text[at]); back++ {
		at--
	}
	return at
}

type frameKind uint8

const (
	inBody     frameKind = iota // content of a block or of the file: settings and blocks
	inBrace                     // { } of an object
	inBracket                   // [ ]
	inParen                     // ( )
	inTemplate                  // ${ } or %{ } inside a text
	inQuote                     // " "
	inHeredoc                   // <<EOT ... EOT
)

// frame is an open bracket, quote, heredoc or body.
type frame struct {
	kind   frameKind
	open   int    // offset of the opening sign
	marker []byte // of a heredoc
	signs  int    // $ and % seen, in a quote or a heredoc

	// In a body: of the current setting or block header.
	assigned        bool // "=" was seen
	choices, splats int
}

// scanner follows the text as the HCL lexer does, as far as telling
// code, quoted text, heredocs and comments apart. It stops with a
// problem at an unpaired bracket, so it agrees with the lexer on every
// text that passes.
type scanner struct {
	file     *File
	text     []byte
	at       int
	frames   []frame
	depth    int
	problems Problems

	signRun      int
	directives   int
	heredocLines int

	blocks []Block
	sure   bool
	header header
}

// header is the state of the current top-level line.
type header struct {
	state headerState
	start int // of its first word
	word  Span
}

type headerState uint8

const (
	lineStart  headerState = iota
	afterWord              // after a word, perhaps with labels
	inSetting              // after "=", up to the end of the line
	inBlock                // inside the braces
	afterBlock             // after a closing brace: only a line end may follow
)

func (s *scanner) push(f frame) { s.frames = append(s.frames, f) }

func (s *scanner) pop() {
	if kind := s.top().kind; kind != inQuote && kind != inHeredoc {
		s.depth--
	}
	s.frames = s.frames[:len(s.frames)-1]
}

func (s *scanner) top() *frame { return &s.frames[len(s.frames)-1] }

func (s *scanner) fail(start, end int, text string) {
	s.problems = Problems{{Place: s.file.place(start, end), Text: text}}
}

func (s *scanner) run() {
	for s.at < len(s.text) && len(s.problems) == 0 {
		switch s.top().kind {
		case inQuote:
			s.quote()
		case inHeredoc:
			s.heredoc()
		default:
			s.code()
		}
	}
	if len(s.problems) > 0 {
		return
	}
	if top := s.top(); len(s.frames) > 1 {
		s.neverClosed(top)
		return
	}
	if st := s.header.state; st == afterWord {
		s.sure = false
	}
}

func (s *scanner) neverClosed(f *frame) {
	switch f.kind {
	case inHeredoc:
		s.fail(f.open, f.open+2, heredocUnclosed(string(f.marker)))
	case inQuote:
		s.fail(f.open, f.open+1, quoteUnclosed)
	case inTemplate:
		s.fail(f.open, f.open+2, bracketUnclosed(string(s.text[f.open:f.open+2])))
	default:
		s.fail(f.open, f.open+1, bracketUnclosed(string(s.text[f.open:f.open+1])))
	}
}

// codeByte marks the bytes of code that the scanner examines; it skips
// all others.
var codeByte = func() (t [256]bool) {
	for _, c := range "\n\"#/<=(){}[]!-?*" {
		t[c] = true
	}
	return t
}()

// code reads up to and including the next byte that codeByte marks.
func (s *scanner) code() {
	atTop := len(s.frames) == 1
	s.words(atTop)
	if s.at >= len(s.text) {
		return
	}
	c := s.text[s.at]
	if c != '!' && c != '-' && c != '\n' && c != '#' && c != '/' {
		s.signRun = 0
	}
	switch c {
	case '\n':
		s.lineEnd(atTop)
	case '#':
		s.lineComment()
	case '/':
		s.slash(atTop)
	case '"':
		if atTop && s.header.state != afterWord && s.header.state != inSetting {
			s.sure = false
		}
		s.push(frame{kind: inQuote, open: s.at})
		s.at++
	case '<':
		if !s.openHeredoc() {
			s.other(atTop)
		} else if atTop && s.header.state != inSetting {
			s.sure = false
		}
	case '=':
		s.equals(atTop)
	case '(', '[', '{':
		s.open(c, atTop)
	case ')', ']', '}':
		s.close(c)
	default:
		s.sign(c, atTop)
	}
}

// words skips words and the bytes that codeByte does not mark.
func (s *scanner) words(atTop bool) {
	for s.at < len(s.text) {
		c := s.text[s.at]
		if codeByte[c] {
			return
		}
		if c == ' ' || c == '\t' || c == '\r' {
			s.at++
			continue
		}
		s.signRun = 0
		if isWordByte(c) {
			from := s.at
			s.word()
			if atTop {
				s.headerWord(from, s.at)
			}
			continue
		}
		if atTop {
			s.headerOther()
		}
		s.at++
	}
}

// lineEnd ends a setting of the body that it stands in.
func (s *scanner) lineEnd(atTop bool) {
	s.at++
	if top := s.top(); top.kind == inBody {
		top.assigned, top.choices, top.splats = false, 0, 0
		s.signRun = 0
		if atTop {
			s.headerNewline()
		}
	}
}

// slash reads a comment, or skips the sign of a division.
func (s *scanner) slash(atTop bool) {
	switch s.peek(1) {
	case '/':
		s.lineComment()
	case '*':
		end := bytes.Index(s.text[s.at+2:], []byte("*/"))
		if end < 0 {
			s.fail(s.at, s.at+2, commentUnclosed)
			return
		}
		s.at += 2 + end + 2
	default:
		s.signRun = 0
		s.other(atTop)
	}
}

// equals reads the sign of a setting, or skips == and =>.
func (s *scanner) equals(atTop bool) {
	if next := s.peek(1); next == '=' || next == '>' {
		s.at++
		s.other(atTop)
		return
	}
	if top := s.top(); top.kind == inBody {
		top.assigned = true
	}
	if atTop {
		if s.header.state == afterWord {
			s.header.state = inSetting
		} else if s.header.state != inSetting {
			s.sure = false
		}
	}
	s.at++
}

// sign counts the signs whose number is bounded: ! and - in a row, ?
// and * of one setting.
func (s *scanner) sign(c byte, atTop bool) {
	switch c {
	case '!', '-':
		if c == '!' && s.peek(1) == '=' {
			s.signRun = 0
			s.at++
		} else if s.signRun++; s.signRun > MaxSignRun {
			s.fail(s.at, s.at+1, tooLongSignRun(c))
			return
		}
	case '?':
		if body := s.body(); body != nil {
			if body.choices++; body.choices > MaxChoices {
				s.fail(s.at, s.at+1, tooManyChoices)
				return
			}
		}
	case '*':
		prev, body := s.before(), s.body()
		if (prev == '[' || prev == '.') && body != nil {
			if body.splats++; body.splats > MaxSplats {
				s.fail(s.at, s.at+1, tooManySplats)
				return
			}
		}
	}
	s.other(atTop)
}

// other skips a byte that only the parser uses.
func (s *scanner) other(atTop bool) {
	if atTop {
		s.headerOther()
	}
	s.at++
}

// body returns the innermost body, which holds the counts of the
// current setting.
func (s *scanner) body() *frame {
	for i := len(s.frames) - 1; i >= 0; i-- {
		if s.frames[i].kind == inBody {
			return &s.frames[i]
		}
	}
	return nil
}

// before returns the last non-blank byte before s.at.
func (s *scanner) before() byte {
	for i := s.at - 1; i >= 0; i-- {
		if c := s.text[i]; c != ' ' && c != '\t' && c != '\r' && c != '\n' {
			return c
		}
	}
	return 0
}

func (s *scanner) peek(n int) byte {
	if s.at+n < len(s.text) {
		return s.text[s.at+n]
	}
	return 0
}

// lineComment skips a comment up to its newline, which is code: it ends
// a setting.
func (s *scanner) lineComment() {
	nl := bytes.IndexByte(s.text[s.at:], '\n')
	if nl < 0 {
		s.at = len(s.text)
		return
	}
	s.at += nl
}

func isWordByte(c byte) bool {
	return c == '_' || c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c >= '0' && c <= '9' ||
		c >= utf8.RuneSelf
}

// word skips a name or a number. A hyphen within a name belongs to it.
func (s *scanner) word() {
	number := s.text[s.at] >= '0' && s.text[s.at] <= '9'
	for s.at < len(s.text) && (isWordByte(s.text[s.at]) || s.text[s.at] == '-' && !number) {
		s.at++
	}
}

func (s *scanner) open(c byte, atTop bool) {
	f := frame{open: s.at, kind: inParen}
	switch c {
	case '[':
		f.kind = inBracket
	case '{':
		f.kind = inBrace
		if top := s.top(); top.kind == inBody && !top.assigned {
			f.kind = inBody
		}
	}
	if atTop {
		switch {
		case f.kind == inBody && s.header.state == afterWord:
			s.header.state = inBlock
		case s.header.state != inSetting:
			s.sure = false
		}
	}
	s.deeper(f, 1)
}

// deeper opens a bracket of the given length in bytes.
func (s *scanner) deeper(f frame, length int) {
	if s.depth++; s.depth > MaxDepth {
		s.fail(s.at, s.at+length, tooDeep)
		return
	}
	s.push(f)
	s.at += length
}

func (s *scanner) close(c byte) {
	top := s.top()
	want := byte('}')
	switch top.kind {
	case inParen:
		want = ')'
	case inBracket:
		want = ']'
	}
	if len(s.frames) == 1 {
		s.fail(s.at, s.at+1, closesNothing(c))
		return
	}
	if c != want {
		line := s.file.Position(top.open).Line
		s.fail(s.at, s.at+1, closesWrong(c, s.text[top.open], want, line))
		return
	}
	s.pop()
	s.at++
	if len(s.frames) == 1 && s.header.state == inBlock {
		s.blocks = append(s.blocks, Block{
			Type:  string(s.text[s.header.word.Start:s.header.word.End]),
			Start: s.header.start,
			End:   s.at,
		})
		s.header.state = afterBlock
	}
}

// openHeredoc opens a heredoc if one starts here: << or <<-, a name,
// and a line end.
func (s *scanner) openHeredoc() bool {
	if s.peek(1) != '<' {
		return false
	}
	from := s.at + 2
	if from < len(s.text) && s.text[from] == '-' {
		from++
	}
	nl := bytes.IndexByte(s.text[from:], '\n')
	if nl < 0 {
		return false
	}
	marker := bytes.TrimSuffix(s.text[from:from+nl], []byte{'\r'})
	if !isName(marker) {
		return false
	}
	s.push(frame{kind: inHeredoc, open: s.at, marker: marker})
	s.at = from + nl + 1
	s.heredocLine()
	return true
}

// isName reports whether a name is an HCL identifier: a letter or "_",
// then letters, digits, marks, "_" or "-".
func isName(name []byte) bool {
	for i, r := range string(name) {
		switch {
		case r == '_' || unicode.IsLetter(r) || unicode.Is(unicode.Nl, r):
		case i > 0 && (r == '-' || unicode.In(r, unicode.Nd, unicode.Mn, unicode.Mc, unicode.Pc)):
		case unicode.Is(unicode.Other_ID_Start, r):
		case i > 0 && unicode.Is(unicode.Other_ID_Continue, r):
		default:
			return false
		}
	}
	return len(name) > 0
}

func (s *scanner) quote() {
	top := s.top()
	for s.at < len(s.text) {
		switch c := s.text[s.at]; c {
		case '"':
			s.pop()
			s.at++
			return
		case '\\':
			if next := s.peek(1); next == '\n' || next == '\r' || next == 0 {
				s.at++
			} else {
				s.at += 2
			}
		case '\n', '\r':
			s.fail(top.open, top.open+1, quoteUnclosed)
			return
		case '$', '%':
			if s.template(top, c) {
				return
			}
		default:
			s.at++
		}
	}
}

func (s *scanner) heredoc() {
	top := s.top()
	for s.at < len(s.text) {
		switch c := s.text[s.at]; c {
		case '\n':
			s.at++
			if s.heredocLine() {
				return
			}
		case '$', '%':
			if s.template(top, c) {
				return
			}
		default:
			s.at++
		}
	}
}

// heredocLine reads the start of a heredoc's line, and closes the
// heredoc if the line is its marker. The line end is then read as code.
func (s *scanner) heredocLine() bool {
	if s.heredocLines++; s.heredocLines > MaxHeredocLines {
		s.fail(s.at, s.at, tooManyHeredocLines)
		return true
	}
	nl := bytes.IndexByte(s.text[s.at:], '\n')
	if nl < 0 {
		return false
	}
	line := s.text[s.at : s.at+nl]
	if !bytes.Equal(bytes.TrimSpace(line), s.top().marker) {
		return false
	}
	s.at += len(line)
	s.pop()
	return true
}

// template reads a $ or a % within a text: an escape, the start of a
// template, or a plain sign. It reports whether the scanner has left
// the text or failed.
func (s *scanner) template(top *frame, c byte) bool {
	if top.signs++; top.signs > MaxTemplateSigns {
		s.fail(s.at, s.at+1, tooManyTemplateSigns)
		return true
	}
	switch {
	case s.peek(1) == c && s.peek(2) == '{':
		s.at += 3
		return false
	case s.peek(1) != '{':
		s.at++
		return false
	}
	if c == '%' {
		if s.directives++; s.directives > MaxDirectives {
			s.fail(s.at, s.at+2, tooManyDirectives)
			return true
		}
	}
	s.signRun = 0
	s.deeper(frame{kind: inTemplate, open: s.at}, 2)
	return true
}

func (s *scanner) headerWord(from, to int) {
	switch s.header.state {
	case lineStart:
		s.header = header{state: afterWord, start: from, word: Span{from, to}}
		if !isName(s.text[from:to]) {
			s.sure = false
		}
	case afterBlock:
		s.sure = false
	}
}

func (s *scanner) headerOther() {
	if s.header.state != inSetting {
		s.sure = false
	}
}

func (s *scanner) headerNewline() {
	if s.header.state == afterWord {
		s.sure = false
	}
	s.header = header{}
}
