package spelling

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// node is what is known of the matches of a piece of an expression.
type node struct {
	exact []lit // all its matches, or with open what each begins with and what each ends with
	open  bool
	must  []lit // one of these stands in every match
}

// least are the texts of which one stands in every match; none where nothing is known.
func (p *parser) least(n *node) []lit {
	switch {
	case n.must != nil:
		return n.must
	case n.open: // one that begins it, and another that ends it
		return p.inner(n.exact, false, true)
	}
	return n.exact
}

const (
	mostClass = 16  // members of a class that are told apart
	mostJoint = 32  // texts that are joined of several pieces
	enough    = 3   // bytes of a text that need not be longer
	useless   = 900 // a cost at which a filter says no too seldom
	unknown   = 1 << 20
)

// parser reads the syntax of regexp as far as this program writes it. It gives up on the rest.
type parser struct {
	text   string
	at     int
	failed bool
	lines  bool  // ^ and $ may be the edge of a line
	slab   []lit // room for lists, all of which end with the parser
	stack  []lit // alternatives that are still read
}

// list gives room for a list of some length.
func (p *parser) list(n int) []lit {
	if len(p.slab)+n > cap(p.slab) {
		p.slab = make([]lit, 0, max(2*cap(p.slab), n)) // lists keep the room that they have
	}
	from := len(p.slab)
	p.slab = p.slab[:from+n]
	return p.slab[from : from+n : from+n]
}

// listOf is a list of its own, with room for more at its end.
func (p *parser) listOf(list []lit, more int) []lit {
	out := p.list(len(list) + more)
	copy(out, list)
	return out
}

// literals lists texts of which at least one stands in every match of an expression, where
// letter case does not count. It lists none where it knows none of use.
//
// The list holds until the parser, which may have read others before, is used again.
func (p *parser) literals(text string) []lit {
	*p = parser{text: text, slab: p.slab[:0], stack: p.stack[:0]}
	n := p.either()
	if p.failed || p.at < len(text) {
		return nil
	}
	if lits := p.least(&n); cost(lits) < useless {
		return lits
	}
	return nil
}

// cost guesses how often one of some texts stands where the pattern does not match: low is good.
func cost(lits []lit) int {
	sum := 0
	for _, l := range lits {
		sum += l.cost()
	}
	if len(lits) == 0 {
		return unknown
	}
	return sum
}

// costs of texts by their bytes but for blanks.
var costs = [...]int{800, 400, 80, 20, 6, 3, 2}

func (l *lit) cost() int {
	if l.text == "" {
		return unknown
	}
	n := 0
	for i := range len(l.text) {
		if l.text[i] != ' ' {
			n++
		}
	}
	c := costs[min(n, len(costs)-1)]
	first, last := l.text[0], l.text[len(l.text)-1]
	switch {
	case l.before&atStart != 0:
		c /= 8
	case n == 1 && !isLetter(first) && first != ' ':
		c /= 12
	case n > 0 && (l.before != 0 || !isLetter(first)):
		c /= 3
	}
	if n > 0 && n < 4 && (l.after != 0 || n > 1 && !isLetter(last)) {
		c /= 3
	}
	return c + 1
}

// either reads alternatives up to a closing bracket or the end.
func (p *parser) either() node {
	n := p.row()
	if !p.more('|') {
		return n
	}
	from := len(p.stack)
	exact, open, known := true, false, true
	for {
		least := p.least(&n)
		exact, open, known = exact && n.exact != nil, open || n.open, known && least != nil
		p.stack = append(p.stack, least...)
		if !p.more('|') {
			break
		}
		p.at++
		n = p.row()
	}
	all := p.listOf(p.stack[from:], 0)
	p.stack = p.stack[:from]
	switch {
	case exact:
		for i := range all {
			all[i].notLast = false
		}
		return node{exact: withoutStart(all), open: open}
	case known:
		return node{must: all}
	}
	return node{}
}

// withoutStart drops the edges of a text from a list where any gap does as well.
func withoutStart(list []lit) []lit {
	gap := false
	for _, l := range list {
		gap = gap || l.text == "" && l.before == atGap
	}
	if !gap {
		return list
	}
	out := list[:0]
	for _, l := range list {
		if l.text != "" || l.before&^(atStart|atEnd) != 0 || l.before == 0 {
			out = append(out, l)
		}
	}
	return out
}

// more reports whether a sign comes next.
func (p *parser) more(sign byte) bool { return p.at < len(p.text) && p.text[p.at] == sign }

// row reads what follows one another, up to a bar or a closing bracket.
func (p *parser) row() node {
	run, broken := p.single(lit{}), false // what all so far ends with, and whether more is before
	var best choice
	var last node
	for items := 0; !p.failed && !p.isOver(); items++ {
		n := p.piece()
		if items == 0 && p.isOver() {
			return n
		}
		if gap := edgeOf(n.exact); gap != 0 && last.must != nil {
			best.offer(p.edged(last.must, 0, gap), items == 1, false)
		}
		if n.must != nil {
			n.must = p.edged(n.must, edgeOf(run), 0)
			best.offer(n.must, items == 0, p.isOver())
		}
		last = n
		switch {
		case n.exact == nil:
			best.offer(run, !broken, false)
			run, broken = p.single(lit{}), true
		case len(n.exact) > 1 && len(run) > 1 && len(run)*len(n.exact) > mostJoint ||
			mayEnd(run, n.exact):
			best.offer(run, !broken, false)
			best.offer(n.exact, false, false)
			run, broken = unlessEmpty(n.exact), true
		default:
			if len(n.exact) > 1 {
				best.offer(n.exact, false, false)
			}
			run = p.join(run, n.exact)
			if n.open {
				best.offer(run, !broken, false)
				run, broken = unlessEmpty(n.exact), true
			}
		}
	}
	if !broken {
		return node{exact: run}
	}
	best.offer(run, false, true)
	return node{must: p.inner(best.list, !best.begins, !best.ends)}
}

// isOver reports whether a row ends here.
func (p *parser) isOver() bool { return p.at >= len(p.text) || p.more('|') || p.more(')') }

// choice is the best list so far, and whether its texts may begin and end a match.
type choice struct {
	list         []lit
	cost         int
	begins, ends bool
}

func (c *choice) offer(list []lit, begins, ends bool) {
	if n := cost(list); n < unknown && (c.list == nil || n < c.cost) {
		*c = choice{list, n, begins, ends}
	}
}

// inner marks the texts of a list that do not begin or end the match that they stand in.
func (p *parser) inner(list []lit, notFirst, notLast bool) []lit {
	if !notFirst && !notLast || list == nil {
		return list
	}
	out := p.listOf(list, 0)
	for i := range out {
		out[i].notFirst = out[i].notFirst || notFirst
		out[i].notLast = out[i].notLast || notLast
	}
	return out
}

// edgeOf is the edge that all of a list are, and nothing else: 0 where they are none.
func edgeOf(list []lit) edge {
	if len(list) == 0 {
		return 0
	}
	all := atGap | atWord | atStart | atEnd
	for _, l := range list {
		if l.text != "" {
			return 0
		}
		e := l.before
		if e&(atStart|atEnd) != 0 {
			e |= atGap
		}
		all &= e
	}
	return all
}

// edged gives those texts of a list edges that begin or end a match of it.
func (p *parser) edged(list []lit, before, after edge) []lit {
	if before|after == 0 {
		return list
	}
	out := p.listOf(list, 0)
	for i := range out {
		if !out[i].notFirst {
			out[i].before |= before
		}
		if !out[i].notLast {
			out[i].after |= after
		}
	}
	return out
}

// mayEnd reports whether texts are long enough, and what follows them may be nothing.
func mayEnd(before, next []lit) bool {
	empty := false
	for _, l := range next {
		empty = empty || l == lit{}
	}
	if !empty {
		return false
	}
	for _, l := range before {
		if len(l.text) < enough {
			return false
		}
	}
	return true
}

// unlessEmpty is a list, or one empty text where it holds one: the rest says no more than that.
func unlessEmpty(list []lit) []lit {
	for i, l := range list {
		if l == (lit{}) {
			return list[i : i+1 : i+1]
		}
	}
	return list
}

// single is a list of one.
func (p *parser) single(l lit) []lit {
	out := p.list(1)
	out[0] = l
	return out
}

// join gives every text of one list, and behind it each of another.
func (p *parser) join(before, next []lit) []lit {
	if len(before) == 1 && before[0] == (lit{}) {
		return next
	}
	if len(next) == 1 && next[0] == (lit{}) {
		return before
	}
	out := p.list(len(before) * len(next))
	for i, a := range before {
		for j, b := range next {
			out[i*len(next)+j] = joined(a, b)
		}
	}
	return out
}

func joined(a, b lit) lit {
	switch {
	case a.text == "" && b.text == "":
		return lit{before: a.before | b.before}
	case a.text == "":
		b.before |= a.before
		return b
	case b.text == "":
		a.after |= b.before
		return a
	}
	return lit{text: a.text + b.text, before: a.before, after: b.after}
}

// piece reads one thing and how often it comes.
func (p *parser) piece() node {
	n := p.thing()
	for !p.failed && p.at < len(p.text) {
		least, most := 1, 1
		switch p.text[p.at] {
		case '?':
			least = 0
		case '*':
			least, most = 0, 2
		case '+':
			most = 2
		case '{':
			least, most = p.counts()
		default:
			return n
		}
		p.at++
		if p.more('?') { // as few as may be: it matches the same texts
			p.at++
		}
		switch {
		case least == 0 && most > 1 || least == 0 && n.exact == nil:
			n = node{}
		case least == 0:
			n.exact = p.listOf(n.exact, 1)
			n.exact[len(n.exact)-1] = lit{}
		case most > 1:
			n.open, n.must = n.exact != nil, p.inner(n.must, false, true)
		}
	}
	return n
}

// counts reads {n}, {n,} or {n,m} up to its last sign: 2 stands for more.
func (p *parser) counts() (least, most int) {
	number := func() (n int, is bool) {
		for ; p.at < len(p.text) && p.text[p.at] >= '0' && p.text[p.at] <= '9'; p.at++ {
			n, is = min(n*10+int(p.text[p.at]-'0'), 2), true
		}
		return n, is
	}
	p.at++
	least, is := number()
	most = least
	if p.more(',') {
		p.at++
		if n, is := number(); is {
			most = n
		} else {
			most = 2
		}
	}
	if !is || !p.more('}') {
		p.failed = true
	}
	return least, most
}

// thing reads a group, a class, an edge or a run of letters.
func (p *parser) thing() node {
	switch c := p.text[p.at]; c {
	case '(':
		return p.group()
	case '[':
		return p.class()
	case '\\':
		return p.escape()
	case '.':
		p.at++
		return node{}
	case '^', '$':
		p.at++
		if p.lines {
			return p.edge(0)
		}
		if c == '^' {
			return p.edge(atStart)
		}
		return p.edge(atEnd)
	case '*', '+', '?', '{', ')', '|':
		p.failed = true
		return node{}
	}
	return p.run()
}

func (p *parser) edge(e edge) node { return node{exact: p.single(lit{before: e})} }

// gap is a rune that is no letter.
func (p *parser) gap() node { return node{exact: p.single(lit{before: atGap}), open: true} }

// run reads letters and signs that stand for themselves, all but one that comes more than once.
func (p *parser) run() node {
	from, last, plain := p.at, p.at, true
	for p.at < len(p.text) {
		r, size := rune(p.text[p.at]), 1
		if r >= utf8.RuneSelf {
			r, size = utf8.DecodeRuneInString(p.text[p.at:])
			plain = plain && (r < 'À' || r > 'Þ')
		} else if isSign(p.text[p.at]) {
			break
		}
		if !isPlain(r) {
			break
		}
		plain = plain && (r < 'A' || r > 'Z')
		last = p.at
		p.at += size
	}
	switch {
	case p.at == from: // a letter whose case is not looked at, or a bracket
		r, size := utf8.DecodeRuneInString(p.text[p.at:])
		p.failed = r < 0x80
		p.at += size
		return node{}
	case last > from && p.at < len(p.text) && strings.IndexByte(`*+?{`, p.text[p.at]) >= 0:
		p.at = last
	}
	text := p.text[from:p.at]
	if !plain {
		text = lowered(text)
	}
	return node{exact: p.single(lit{text: text})}
}

// isSign reports whether a sign of ASCII does not stand for itself.
func isSign(c byte) bool {
	switch c {
	case '\\', '.', '+', '*', '?', '(', ')', '|', '[', ']', '{', '}', '^', '$':
		return true
	}
	return false
}

// isPlain reports whether a letter has no other case than one that the filter folds.
func isPlain(r rune) bool {
	return r <= 'ÿ' && r != 'µ' || r >= '‐' && r <= '⁞' ||
		r != utf8.RuneError && unicode.SimpleFold(r) == r
}

// group reads what stands in brackets.
func (p *parser) group() node {
	p.at++
	if p.more('?') {
		p.at++
		if p.more('P') || p.more('<') {
			end := strings.IndexByte(p.text[p.at:], '>')
			if end < 0 {
				p.failed = true
				return node{}
			}
			p.at += end
		} else {
			for ; p.at < len(p.text) && p.text[p.at] != ':' && p.text[p.at] != ')'; p.at++ {
				p.lines = p.lines || p.text[p.at] == 'm'
			}
		}
		if p.at >= len(p.text) {
			p.failed = true
			return node{}
		}
		p.at++
		if p.text[p.at-1] == ')' {
			return p.edge(0)
		}
	}
	n := p.either()
	if !p.more(')') {
		p.failed = true
	}
	p.at++
	return n
}

// escape reads what a backslash begins.
func (p *parser) escape() node {
	if p.at+1 >= len(p.text) {
		p.failed = true
		return node{}
	}
	c := p.text[p.at+1]
	p.at += 2
	switch {
	case c == 'b':
		return p.edge(atWord)
	case c == 'B':
		return p.edge(0)
	case c == 'A':
		return p.edge(atStart)
	case c == 'z':
		return p.edge(atEnd)
	case c == 'd':
		return p.members(digits)
	case c == 's', c == 'W':
		return p.gap()
	case c == 'w', c == 'S', c == 'D':
		return node{}
	case c == 'p', c == 'P':
		if letters := p.property(); c == 'P' && letters {
			return p.gap()
		}
		return node{}
	case c == 'n', c == 't', c == 'r':
		return p.gap()
	case c < 0x80 && !isLetter(c) && (c < '0' || c > '9'):
		return node{exact: p.single(lit{text: p.text[p.at-1 : p.at]})}
	}
	p.failed = true
	return node{}
}

// property reads the rest of \p, and reports whether it is all letters.
func (p *parser) property() bool {
	name := ""
	if p.more('{') {
		end := strings.IndexByte(p.text[p.at:], '}')
		if end < 0 {
			p.failed = true
			return false
		}
		name = p.text[p.at+1 : p.at+end]
		p.at += end + 1
	} else if p.at < len(p.text) {
		_, size := utf8.DecodeRuneInString(p.text[p.at:])
		name = p.text[p.at : p.at+size]
		p.at += size
	}
	return name == "L"
}

// lowers has the lower case of each sign of ASCII.
var lowers = string(lower[:])

var digits = []rune("0123456789")

// members is one rune of a class.
func (p *parser) members(runes []rune) node {
	list := p.list(len(runes))
	for i, r := range runes {
		if !isPlain(r) {
			return node{}
		}
		if r < utf8.RuneSelf {
			list[i] = lit{text: lowers[r : r+1]}
		} else {
			list[i] = lit{text: lowered(string(r))}
		}
	}
	if len(list) > mostClass/4 {
		return node{must: list}
	}
	return node{exact: list}
}

// class reads what stands in square brackets.
func (p *parser) class() node {
	p.at++
	not := p.more('^')
	if not {
		p.at++
	}
	var runes []rune
	many, letters := false, false // more than are told apart; all ASCII letters are in it
	hasLetter := false
	for first := true; ; first = false {
		if p.at >= len(p.text) || strings.HasPrefix(p.text[p.at:], "[:") {
			p.failed = true
			return node{}
		}
		if p.more(']') && !first {
			p.at++
			break
		}
		low, set := p.member()
		if set != 0 {
			many = true
			letters = letters || set == 'w'
			hasLetter = hasLetter || set != 's' && set != 'd'
			continue
		}
		high := low
		if p.more('-') && p.at+1 < len(p.text) && p.text[p.at+1] != ']' {
			p.at++
			if high, set = p.member(); set != 0 || high < low {
				p.failed = true
				return node{}
			}
		}
		hasLetter = hasLetter || low <= 'z' && high >= 'A' || folds(low, high)
		if high-low >= mostClass {
			many = true
			continue
		}
		for ; low <= high; low++ {
			runes = append(runes, low)
		}
	}
	switch {
	case not && letters, !not && !hasLetter && (many || len(runes) > mostClass/4):
		return p.gap()
	case not || many || len(runes) > mostClass:
		return node{}
	}
	return p.members(runes)
}

// folds reports whether a range holds a letter that folds to one of ASCII.
func folds(low, high rune) bool {
	return low <= 'ſ' && high >= 'ſ' || low <= '\u212A' && high >= '\u212A'
}

// member reads one rune of a class, or a set: w of all letters, s or d of none, x of any.
func (p *parser) member() (r rune, set byte) {
	r, size := utf8.DecodeRuneInString(p.text[p.at:])
	p.at += size
	if r != '\\' {
		return r, 0
	}
	if p.at >= len(p.text) {
		p.failed = true
		return 0, 'x'
	}
	c := p.text[p.at]
	p.at++
	switch {
	case c == 'p':
		if p.property() {
			return 0, 'w'
		}
		return 0, 'x'
	case c == 'P':
		p.property()
		return 0, 'x'
	case c == 'w', c == 's', c == 'd':
		return 0, c
	case c == 'S', c == 'W', c == 'D':
		return 0, 'x'
	case c == 'n':
		return '\n', 0
	case c == 't':
		return '\t', 0
	case c == 'r':
		return '\r', 0
	case c < 0x80 && !isLetter(c) && (c < '0' || c > '9'):
		return rune(c), 0
	}
	p.failed = true
	return 0, 'x'
}
