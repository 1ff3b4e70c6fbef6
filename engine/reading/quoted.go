package reading

import (
	"fmt"
	"strings"

	"forebake/engine/source"
)

// Quoted writes a text as HCL does: the signs that open a template are
// doubled, and characters that are not plain are escaped.
func Quoted(s string) string {
	var b strings.Builder
	b.WriteByte('"')
	runes := []rune(s)
	for i, c := range runes {
		switch {
		case c == '"' || c == '\\':
			b.WriteByte('\\')
			b.WriteRune(c)
		case (c == '$' || c == '%') && i+1 < len(runes) && runes[i+1] == '{':
			b.WriteRune(c)
			b.WriteRune(c)
		case c == '\n':
			b.WriteString(`\n`)
		case source.Safe(string(c)) != string(c):
			if c > 0xffff {
				fmt.Fprintf(&b, `\U%08x`, c)
			} else {
				fmt.Fprintf(&b, `\u%04x`, c)
			}
		default:
			b.WriteRune(c)
		}
	}
	b.WriteByte('"')
	return b.String()
}
