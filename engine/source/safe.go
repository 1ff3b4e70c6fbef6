package source

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Safe makes text safe for a terminal or a log. Characters that could
// move the cursor, or hide or reorder text, become visible escapes such
// as \u202e: control characters (C0, DEL, C1), format characters
// (Unicode class Cf: bidirectional marks, overrides and isolates,
// zero-width characters, byte-order marks), line and paragraph
// separators, and bytes that are not UTF-8 (\xff). Other text is
// returned unchanged, without an allocation.
func Safe(s string) string {
	for i := 0; i < len(s); {
		r, size := rune(s[i]), 1
		if r >= utf8.RuneSelf {
			r, size = utf8.DecodeRuneInString(s[i:])
		}
		if unsafeRune(r, size) {
			return escapeFrom(s, i)
		}
		i += size
	}
	return s
}

func unsafeRune(r rune, size int) bool {
	switch {
	case r < 0x20 || r == 0x7F:
		return true
	case r < 0x7F:
		return false
	case r == utf8.RuneError && size == 1:
		return true
	case r < 0xA0: // C1
		return true
	}
	return r == 0x2028 || r == 0x2029 || unicode.Is(unicode.Cf, r)
}

func escapeFrom(s string, from int) string {
	var b strings.Builder
	b.Grow(len(s) + 16)
	b.WriteString(s[:from])
	for i := from; i < len(s); {
		r, size := utf8.DecodeRuneInString(s[i:])
		switch {
		case !unsafeRune(r, size):
			b.WriteString(s[i : i+size])
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\r':
			b.WriteString(`\r`)
		case r == '\t':
			b.WriteString(`\t`)
		case r == utf8.RuneError && size == 1:
			fmt.Fprintf(&b, `\x%02x`, s[i])
		case r < 0x80:
			fmt.Fprintf(&b, `\x%02x`, r)
		case r > 0xFFFF:
			fmt.Fprintf(&b, `\U%08x`, r)
		default:
			fmt.Fprintf(&b, `\u%04x`, r)
		}
		i += size
	}
	return b.String()
}
