package tolerant

import "slices"

// fix mends a problem's line, harder with every call. First it opens
// the value or removes the setting, then the line, then the block
// around it. done holds the lines that were mended in this round.
func (p *page) fix(done map[int]bool, from int) {
	i := p.at(from)
	for ; i > 0 && !p.lines[i].full(); i-- {
		// The parser places what is missing at the next line.
	}
	if i < 0 || !p.lines[i].full() || done[i] {
		return
	}
	l := &p.lines[i]
	l.tries++
	switch {
	case l.out && l.last == i || l.tries > 3:
		done[i] = p.takeOut(l.parent)
	case l.tries == 1 && l.soften(from-l.Start):
		done[i] = true
	default:
		done[i] = p.takeOut(i)
	}
	if !done[i] {
		delete(done, i)
	}
}

// takeOut takes a line out with all that it opens.
func (p *page) takeOut(i int) bool {
	if i < 0 {
		return false
	}
	any := false
	for k := i; k <= p.lines[i].last; k++ {
		l := &p.lines[k]
		any = any || !l.out && l.full()
		l.out = true
		l.closers = slices.DeleteFunc(l.closers, func(c closing) bool { return c.of >= i })
	}
	if !any && p.lines[i].parent >= 0 {
		return p.takeOut(p.lines[i].parent)
	}
	return any
}

// soften opens the value of an ingredient, or takes out the one setting
// of an entry that the problem stands on. It reports whether the line
// was changed.
func (l *line) soften(from int) bool {
	if l.open {
		return false
	}
	first := l.tokens[0]
	if first.kind == quoted && !l.inBlock && !l.inList {
		if from < first.to && len(l.tokens) > 2 { // its name: no amount mends that
			return false
		}
		l.mods = nil
		l.put(first.to, len(l.typed), ` = "?"`)
		return true
	}
	if !l.inList || first.kind != opener {
		return false
	}
	start, end, nth := l.entry(from)
	if nth == 0 || start < 0 { // the verb, or no entry of its own
		return false
	}
	l.put(start, end, "")
	return true
}

// entry finds the setting in braces that holds a place of the line:
// from the comma before it, and its number from 0.
func (l *line) entry(at int) (start, end, nth int) {
	depth, start := 0, -1
	count := 0
	for _, t := range l.tokens {
		switch {
		case t.kind == opener:
			depth++
		case t.kind == closer:
			depth--
			if depth == 0 {
				return start, t.from, count
			}
		case t.kind == comma && depth == 1:
			if at < t.from {
				return start, t.from, count
			}
			start = t.from
			count++
		}
	}
	return start, l.tokens[len(l.tokens)-1].to, count
}
