package tolerant

import (
	"cmp"
	"slices"
	"strings"
	"unicode/utf8"

	"forebake/engine/source"
)

// Align gives the edits that indent a text by its brackets and align
// the signs = of neighbouring lines: settings, ingredients, and the
// verbs of steps. They touch blanks alone, and none before a comment.
// The text must parse.
func Align(text []byte) []source.Edit {
	p := scan(text)
	a := aligner{page: p, groups: make([][]entry, 1)}
	for i := range p.lines {
		a.line(i)
	}
	for range a.groups {
		a.flush()
		a.groups = a.groups[:len(a.groups)-1]
		if len(a.groups) == 0 {
			break
		}
	}
	slices.SortFunc(a.edits, func(x, y source.Edit) int { return cmp.Compare(x.Start, y.Start) })
	return a.edits
}

// aligner goes through the lines of a page. groups holds, for each open
// bracket, the lines whose signs are aligned with each other.
type aligner struct {
	*page
	groups [][]entry
	edits  []source.Edit
}

// entry is a line with the token that is aligned.
type entry struct{ line, equals int }

// line takes one line.
func (a *aligner) line(i int) {
	l := &a.lines[i]
	switch {
	case l.opaque:
		return
	case strings.TrimSpace(l.typed) == "":
		a.flush()
		return
	}
	depth := len(a.groups) - 1
	for _, t := range l.tokens {
		if t.kind != closer || depth == 0 {
			break
		}
		depth--
	}
	a.blanks(l, 0, l.indent, strings.Repeat("  ", depth))
	before := len(a.groups)
	for k, t := range l.tokens {
		switch t.kind {
		case opener:
			a.groups = append(a.groups, nil)
		case closer:
			if len(a.groups) > 1 {
				a.flush()
				a.groups = a.groups[:len(a.groups)-1]
			}
		case equals:
			if k+1 < len(l.tokens) {
				a.blanks(l, t.to, l.tokens[k+1].from, " ")
			}
		}
	}
	k := l.indexOf(equals)
	switch {
	case len(a.groups) != before: // it opens or closes a bracket of several lines
		a.flush()
	case k == 1 || k == 2 && l.tokens[0].kind == opener:
		last := len(a.groups) - 1
		a.groups[last] = append(a.groups[last], entry{i, k})
	}
}

// flush aligns the lines of the innermost bracket so far.
func (a *aligner) flush() {
	last := len(a.groups) - 1
	width := 0
	key := func(e entry) (l *line, from, to int) {
		l = &a.lines[e.line]
		return l, l.tokens[e.equals-1].from, l.tokens[e.equals-1].to
	}
	for _, e := range a.groups[last] {
		l, from, to := key(e)
		width = max(width, utf8.RuneCountInString(l.typed[from:to]))
	}
	for _, e := range a.groups[last] {
		l, from, to := key(e)
		pad := width - utf8.RuneCountInString(l.typed[from:to]) + 1
		a.blanks(l, to, l.tokens[e.equals].from, strings.Repeat(" ", pad))
	}
	a.groups[last] = nil
}

// blanks puts blanks in the place of others.
func (a *aligner) blanks(l *line, from, to int, want string) {
	if from > to || l.typed[from:to] == want || strings.TrimLeft(l.typed[from:to], " \t") != "" {
		return
	}
	a.edits = append(a.edits, source.Edit{Start: l.Start + from, End: l.Start + to,
		Old: l.typed[from:to], New: want})
}
