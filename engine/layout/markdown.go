package layout

import (
	"strings"
	"unicode"
)

// Separator is an empty HTML comment. It separates a sign from the word
// behind it. Sites look for mentions and addresses in the rendered
// text, which has lost a backslash.
const Separator = "<!-- -->"

// Markdown makes a text safe in Markdown: one line without markup,
// HTML, the end of a table cell, a link, a mention, a reference or a
// formula. Rendered, it reads as it was written.
func Markdown(s string) string {
	rs := []rune(strings.Join(strings.Fields(s), " "))
	var b strings.Builder
	for i, r := range rs {
		next := ' '
		if i+1 < len(rs) {
			next = rs[i+1]
		}
		word := unicode.IsLetter(next) || unicode.IsDigit(next) || next == '"' || next == '/'
		if r == ':' && unicode.IsDigit(next) {
			word = !isPosition(rs[i+1:])
		}
		switch r {
		case '=': // alone on a line it makes a heading of the line above
			if i == 0 {
				b.WriteByte('\\')
			}
			b.WriteRune(r)
		case '<':
			b.WriteString("&lt;")
		case '>':
			b.WriteString("&gt;")
		case '&':
			b.WriteString("&amp;")
		case '$': // a formula of mathematics
			b.WriteString("&#36;")
		case '\\', '`', '*', '_', '[', ']', '|', '~', '#', '!':
			b.WriteString("\\" + string(r))
		default:
			b.WriteRune(r)
		}
		if word && strings.ContainsRune("@#!$%~:", r) || r == '&' && unicode.IsDigit(next) ||
			next == '.' && strings.HasSuffix(strings.ToLower(string(rs[max(0, i-2):i+1])), "www") ||
			r == '-' && i >= 2 && strings.EqualFold(string(rs[i-2:i]), "gh") &&
				unicode.IsDigit(next) {
			b.WriteString(Separator)
		}
	}
	return b.String()
}

// isPosition reports whether the digits behind a colon are a line, a
// column or minutes. Those of a sign such as :100: are not.
func isPosition(rs []rune) bool {
	i := 0
	for i < len(rs) && unicode.IsDigit(rs[i]) {
		i++
	}
	if i < len(rs) && rs[i] == ':' {
		return i+1 < len(rs) && unicode.IsDigit(rs[i+1])
	}
	return i == len(rs) || !unicode.IsLetter(rs[i]) && rs[i] != '_'
}
