// Package layout lays a page of text out in the columns of a terminal.
// It knows no formula.
package layout

import "strings"

// Verbatim begins a line that is never folded, such as one of a formula
// file. No text from a file holds it (source.Safe).
const Verbatim = "\x00"

// Fold cuts the lines of a page that are wider than so many columns, at
// spaces. What is cut off stands below the last column of a table, else
// further in than the line. A word is never cut.
func Fold(s string, width int) string {
	var b strings.Builder
	for line := range strings.Lines(s) {
		text, end := strings.CutSuffix(line, "\n")
		if rest, ok := strings.CutPrefix(text, Verbatim); ok {
			b.WriteString(rest)
		} else {
			foldLine(&b, text, width)
		}
		if end {
			b.WriteString("\n")
		}
	}
	return b.String()
}

func foldLine(b *strings.Builder, line string, width int) {
	hang := hanging(line, width)
	if at := cutAt(line, hang, width); at < 0 || Columns(line[:at]) > width {
		hang = indentOf(line) + 4 // the last column is wider than the page
	}
	from := hang
	for Columns(line) > width {
		at := cutAt(line, from, width)
		if at < 0 {
			break
		}
		b.WriteString(strings.TrimRight(line[:at], " ") + "\n")
		line = strings.Repeat(" ", hang) + strings.TrimLeft(line[at:], " ")
		from = hang
	}
	b.WriteString(line)
}

// hanging is the indent of a continuation line. It is that of the last
// column within two thirds of the width, else four more than the
// line's own.
func hanging(line string, width int) int {
	own := indentOf(line)
	hang := own + 4
	for i := own; i+2 < len(line) && i < width*2/3; i++ {
		if line[i] == ' ' && line[i+1] == ' ' && line[i+2] != ' ' && Columns(line[:i+2]) == i+2 {
			hang = i + 2
		}
	}
	if hang > width*2/3 {
		return own + 4
	}
	return hang
}

func indentOf(line string) int { return len(line) - len(strings.TrimLeft(line, " ")) }

// cutAt is the last space behind an indent within so many columns, else
// the first space after them; -1 where there is none.
func cutAt(line string, from, width int) int {
	best := -1
	for i := from + 1; i < len(line); i++ {
		if line[i] != ' ' {
			continue
		}
		wide := Columns(line[:i])
		if wide > width && best >= 0 {
			return best
		}
		if strings.TrimSpace(line[from:i]) == "" {
			continue
		}
		best = i
		if wide > width {
			return best
		}
	}
	return best
}

// Columns counts the letters of a text without its colour codes.
func Columns(s string) int {
	n, code := 0, false
	for _, r := range s {
		switch {
		case code:
			code = r != 'm'
		case r == '\x1b':
			code = true
		default:
			n++
		}
	}
	return n
}
