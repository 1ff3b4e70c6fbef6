package tolerant

import "strings"

// frame is a bracket that is open.
type frame struct {
	line, indent int
	end          string // what closes it
	block        bool   // of a block, not of a value
	dropped      bool   // its line was taken out
}

// balance closes quotes and brackets. Where one is missing, the
// indentation tells which.
func (p *page) balance() {
	var open []frame
	before := -1 // the last line that holds anything
	for i := range p.lines {
		l := &p.lines[i]
		if !l.full() {
			continue
		}
		open = p.closeBefore(open, i, before)
		p.place(l, open)
		if before >= 0 {
			p.separate(open, i, before)
		}
		if l.open {
			l.closeQuote()
		} else {
			l.respell(p.words)
			l.split()
			l.assign(p.next(i))
			l.complete(p.next(i))
		}
		open = p.follow(open, i)
		before = i
	}
	if before >= 0 {
		for len(open) > 0 {
			open = p.close(open, before)
		}
	}
}

// next is the next line that holds anything, nil at the end.
func (p *page) next(i int) *line {
	for i++; i < len(p.lines); i++ {
		if p.lines[i].full() {
			return &p.lines[i]
		}
	}
	return nil
}

// place notes in which bracket a line stands.
func (p *page) place(l *line, open []frame) {
	for _, t := range l.tokens { // closing brackets that it begins with are those of lines before
		if t.kind != closer || len(open) == 0 {
			break
		}
		open = open[:len(open)-1]
	}
	l.parent, l.inBlock = -1, len(open) == 0
	if n := len(open); n > 0 {
		l.inList, l.inBlock = open[n-1].end == "]", open[n-1].block
		for k := n - 1; k >= 0; k-- {
			if open[k].block {
				l.parent = open[k].line
				break
			}
		}
	}
}

// closeBefore closes the brackets that a line's indentation shows to be
// over: those opened on lines no less deep.
func (p *page) closeBefore(open []frame, i, before int) []frame {
	l := &p.lines[i]
	first := l.tokens[0]
	for len(open) > 0 && l.indent <= open[len(open)-1].indent {
		top := open[len(open)-1]
		if first.kind == closer {
			if l.typed[first.from:first.to] == top.end && l.indent == top.indent {
				return open
			}
			if !p.closes(open[:len(open)-1], l, first) {
				return open
			}
		}
		open = p.close(open, before)
	}
	return open
}

// closes reports whether a closing bracket at the start of a line
// belongs to one of the brackets, by its indentation.
func (p *page) closes(open []frame, l *line, t token) bool {
	for _, f := range open {
		if f.indent == l.indent && f.end == l.typed[t.from:t.to] {
			return true
		}
	}
	return false
}

// close closes the innermost bracket behind a line.
func (p *page) close(open []frame, behind int) []frame {
	top := open[len(open)-1]
	open = open[:len(open)-1]
	p.lines[top.line].last = max(p.lines[top.line].last, behind)
	if top.dropped {
		return open
	}
	end := top.end
	if len(open) > 0 && open[len(open)-1].end == "]" {
		end += ","
	}
	if l := &p.lines[behind]; top.line == behind && !l.open {
		at := l.tokens[len(l.tokens)-1].to
		l.put(at, at, " "+end)
	} else {
		l.closers = append(l.closers, closing{top.line, "\n" + end})
	}
	return open
}

// follow goes along the brackets of a line.
func (p *page) follow(open []frame, i int) []frame {
	l := &p.lines[i]
	tokens := l.tokens
	shown := l.typed
	if l.open && len(l.mods) > 0 || l.added {
		shown = string(apply([]byte(l.typed), l.apart()))
		after := line{typed: shown}
		after.lex(false)
		tokens = after.tokens
	}
	for k, t := range tokens {
		switch t.kind {
		case opener:
			end := map[byte]string{'{': "}", '[': "]", '(': ")"}[shown[t.from]]
			open = append(open, frame{line: i, indent: l.indent, end: end, dropped: l.out,
				block: end == "}" && beginsBlock(tokens[:k])})
		case closer:
			n := len(open)
			// A bracket that was opened on another line is closed at
			// the start of one, and not deeper than it.
			if n == 0 || open[n-1].end != shown[t.from:t.to] ||
				open[n-1].line != i && l.indent > open[n-1].indent &&
					(k == 0 || tokens[k-1].kind != closer) {
				if !l.open { // what closes nothing is taken out
					l.put(t.from, t.to, " ")
				}
				continue
			}
			if open[n-1].block && open[n-1].line != i && k > 0 && !l.open {
				l.put(t.from, t.from, "\n") // a block ends on a line of its own
			}
			p.lines[open[n-1].line].last = i
			open = open[:n-1]
		}
	}
	return open
}

// beginsBlock reports whether tokens begin a block: a word, then
// labels alone.
func beginsBlock(tokens []token) bool {
	if len(tokens) == 0 || tokens[0].kind != word {
		return false
	}
	for _, t := range tokens[1:] {
		if t.kind != quoted && t.kind != word {
			return false
		}
	}
	return true
}

// separate puts the comma between two entries of a list that stand on
// lines of their own.
func (p *page) separate(open []frame, i, before int) {
	if len(open) == 0 || open[len(open)-1].end != "]" || p.lines[i].tokens[0].kind != opener {
		return
	}
	b := &p.lines[before]
	if len(b.closers) > 0 || b.out || b.open {
		return
	}
	if t := b.tokens[len(b.tokens)-1]; t.kind == closer {
		b.put(t.to, t.to, ",")
	}
}

// closeQuote mends a line with a quote that is not closed. The quoted
// text is not known: a value becomes open, and an entry without a name
// is removed.
func (l *line) closeQuote() {
	l.tries++
	first := l.tokens[0]
	text := strings.TrimRight(l.typed, " \t")
	switch {
	case l.inBlock && first.kind == word && strings.HasSuffix(text, "{") && l.indexOf(equals) < 0:
		name := strings.Trim(strings.ReplaceAll(text[first.to:len(text)-1], `"`, ""), " \t")
		l.put(first.to, len(l.typed), ` "`+name+`" {`)
	case !l.inBlock && !l.inList && first.kind == quoted && endOfText(l.typed, first.from+1) > 0 &&
		len(l.tokens) > 1 && l.tokens[1].kind == equals:
		l.put(first.to, len(l.typed), ` = "?"`)
	default:
		l.out = true
	}
}

// complete ends a line that stops in the middle: a block without its bracket, a setting whose value
// begins on the next line without its bracket.
func (l *line) complete(next *line) {
	n := len(l.tokens)
	t := l.tokens[n-1]
	deeper := next != nil && next.indent > l.indent
	switch {
	case l.inBlock && n > 1 && t.kind == quoted && beginsBlock(l.tokens):
		l.added = true
		if deeper {
			l.put(t.to, t.to, " {")
		} else {
			l.put(t.to, t.to, " {}")
		}
	case t.kind == equals && deeper && n == 2:
		switch next.tokens[0].kind {
		case opener:
			l.added = true
			l.put(t.to, t.to, " [")
		case quoted:
			l.added = true
			l.put(t.to, t.to, " {")
		}
	}
}

// assign puts the sign = between a setting and the bracket of its value, where it is missing: a
// block holds no list, and its lines begin with no text in quotes.
func (l *line) assign(next *line) {
	if !l.inBlock || len(l.tokens) < 2 || l.tokens[0].kind != word || l.tokens[1].kind != opener {
		return
	}
	at := l.tokens[1].from
	list := l.typed[at] == '['
	inside := len(l.tokens) > 2 && l.tokens[2].kind == quoted
	below := len(l.tokens) == 2 && next != nil && next.indent > l.indent &&
		next.tokens[0].kind == quoted
	if list || inside || below {
		l.put(at, at, "= ")
		l.added = true
	}
}

// respell corrects the word that a block or setting begins with, where it is nearly one that is
// known.
func (l *line) respell(words Words) {
	if first := l.tokens[0]; l.inBlock && first.kind == word && len(l.tokens) > 1 {
		if w := words.near(l.typed[first.from:first.to]); w != "" {
			l.put(first.from, first.to, w)
		}
	}
}

// split puts the settings and blocks of one line on lines of their own, where a line ending is
// missing between them.
func (l *line) split() {
	if !l.inBlock {
		return
	}
	depth := 0 // of brackets that hold a value
	for k, t := range l.tokens {
		begins := t.kind == word && k > 0 && k+1 < len(l.tokens) &&
			(l.tokens[k+1].kind == equals || l.tokens[k+1].kind == quoted) &&
			l.tokens[k-1].kind != equals && l.tokens[k-1].kind != word
		switch {
		case t.kind == opener && (depth > 0 || !beginsBlock(l.tokens[:k])):
			depth++
		case t.kind == closer && depth > 0:
			depth--
		case depth == 0 && begins && (l.tokens[k-1].kind != opener ||
			l.tokens[len(l.tokens)-1].kind != closer): // a block of one setting may be one line
			l.put(t.from, t.from, "\n")
		}
	}
}
