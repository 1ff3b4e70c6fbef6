// Package names folds ingredient names, so that the spellings of one
// name have the same key: letter case, runs of spaces, hyphens, accents
// and apostrophes do not count. The larder calls it to look up a name,
// and the table's generator to build the sorted index, so both agree.
// It does not handle near names or plurals; the larder does.
package names

import "unicode"

// Append appends the folded form of name to dst and returns the
// extended slice. A name of ASCII letters costs no allocation if dst
// has the capacity.
func Append(dst []byte, name string) []byte {
	start := len(dst)
	gap := false
	put := func(s ...byte) {
		if gap && len(dst) > start {
			dst = append(dst, ' ')
		}
		gap = false
		dst = append(dst, s...)
	}
	for i := 0; i < len(name); i++ {
		c := name[i]
		switch {
		case c >= 0x80:
			return appendRunes(dst, start, gap, name[i:])
		case 'A' <= c && c <= 'Z':
			put(c + 'a' - 'A')
		case c == ' ' || c == '-' || c == '_' || '\t' <= c && c <= '\r':
			gap = true
		case c == '\'' || c == '`':
		default:
			put(c)
		}
	}
	return dst
}

// appendRunes does the rest of Append from the first character beyond
// ASCII on.
func appendRunes(dst []byte, start int, gap bool, rest string) []byte {
	for _, r := range rest {
		r = unicode.ToLower(r)
		switch {
		case unicode.IsSpace(r), r == '-', r == '_', r >= 0x2010 && r <= 0x2015, r == 0x2212:
			gap = true
			continue
		case r == '\'', r == '`', r == 0x2018, r == 0x2019, r == 0x02BC, r == 0x00B4,
			r == 0x00AD, r == 0x200B, r == 0xFEFF, unicode.Is(unicode.Mn, r):
			// Apostrophes, soft hyphens, and combining accents, which
			// may be separate characters.
			continue
		}
		if gap && len(dst) > start {
			dst = append(dst, ' ')
		}
		gap = false
		if plain, ok := unaccented(r); ok {
			dst = append(dst, plain...)
		} else {
			dst = append(dst, string(r)...)
		}
	}
	return dst
}

// unaccented returns an accented Latin letter of the European languages
// without its accent.
func unaccented(r rune) (string, bool) {
	switch r {
	case 'à', 'á', 'â', 'ã', 'ä', 'å', 'ā', 'ă', 'ą':
		return "a", true
	case 'ç', 'ć', 'č':
		return "c", true
	case 'ď', 'đ':
		return "d", true
	case 'è', 'é', 'ê', 'ë', 'ē', 'ė', 'ę', 'ě':
		return "e", true
	case 'ğ':
		return "g", true
	case 'ì', 'í', 'î', 'ï', 'ī', 'ı':
		return "i", true
	case 'ł', 'ľ':
		return "l", true
	case 'ñ', 'ń', 'ň':
		return "n", true
	case 'ò', 'ó', 'ô', 'õ', 'ö', 'ø', 'ō', 'ő':
		return "o", true
	case 'ř':
		return "r", true
	case 'ś', 'š', 'ş', 'ș':
		return "s", true
	case 'ť', 'ţ', 'ț':
		return "t", true
	case 'ù', 'ú', 'û', 'ü', 'ū', 'ů', 'ű':
		return "u", true
	case 'ý', 'ÿ':
		return "y", true
	case 'ź', 'ż', 'ž':
		return "z", true
	case 'æ':
		return "ae", true
	case 'œ':
		return "oe", true
	case 'ß':
		return "ss", true
	}
	return "", false
}
