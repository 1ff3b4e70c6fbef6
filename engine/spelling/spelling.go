// Package spelling finds the known names nearest to a misspelt word,
// and keeps the patterns by which readers know other words.
//
// Readers call it for an unknown name, to end the message with
// "nearest is ...". It holds no names of its own, and returns none
// that is not near.
package spelling

import (
	"slices"
	"strings"
	"unicode"
)

// longest is the number of runes of a word that are compared. The cost
// of a comparison grows with its square.
const longest = 64

// Nearest returns at most limit names near to word, the nearest first,
// equal ones in alphabetical order. Letter case, the order of whole
// words, and blanks, hyphens, underscores or dots between them do not
// count. Names that differ only in these come first. Then come names
// within about one typing error in three letters: a letter missing,
// added, changed, or swapped with its neighbour (optimal string
// alignment distance). Last come names that begin with word, as a whole
// word or with at least three letters.
func Nearest(word string, names []string, limit int) []string {
	w := fold(word)
	if len(w) == 0 || limit <= 0 {
		return nil
	}
	sorted := sortWords(w)
	allowed := slips(len(w))
	type candidate struct {
		name  string
		score int
	}
	var found []candidate
	seen := map[string]bool{}
	for _, name := range names {
		if seen[name] {
			continue
		}
		seen[name] = true
		n := fold(name)
		if len(n) == 0 {
			continue
		}
		best := distance(w, n, allowed)
		if d := distance(sorted, sortWords(n), allowed); d+1 < best {
			best = d + 1 // the same words in another order count as one error
			if d > 0 {
				best = max(best, 2)
			}
		}
		switch {
		case best <= allowed || best == 1 && len(w) > 2:
			found = append(found, candidate{name, best})
		case startsWith(n, w) || len(n) >= 3 && startsWith(w, n):
			found = append(found, candidate{name, allowed + 1})
		}
	}
	slices.SortFunc(found, func(a, b candidate) int {
		if a.score != b.score {
			return a.score - b.score
		}
		return strings.Compare(a.name, b.name)
	})
	out := make([]string, 0, min(limit, len(found)))
	for _, c := range found[:min(limit, len(found))] {
		out = append(out, c.name)
	}
	if len(out) == 0 {
		return nil
	}
	return out
}

// slips returns the number of typing errors allowed in a word of
// n runes.
func slips(n int) int {
	switch {
	case n <= 2:
		return 0
	case n <= 4:
		return 1
	}
	return n / 3
}

// IsSlip reports whether a word is a name with one letter wrong, or two
// in a long one.
func IsSlip(word, name string) bool {
	w, n := fold(word), fold(name)
	most := 1
	if len(w) > 8 {
		most = 2
	}
	d := distance(w, n, most)
	return d > 0 && d <= most
}

// startsWith reports whether long begins with short, as whole words or
// with at least three letters.
func startsWith(long, short []rune) bool {
	if len(short) >= len(long) || !slices.Equal(long[:len(short)], short) {
		return false
	}
	return len(short) >= 3 || long[len(short)] == ' '
}

// fold lowers the case of s and replaces each separator between words
// by one blank.
func fold(s string) []rune {
	out := make([]rune, 0, min(len(s), longest))
	parted := false
	for _, r := range s {
		if len(out) >= longest {
			break
		}
		if unicode.IsSpace(r) || r == '-' || r == '_' || r == '.' {
			parted = true
			continue
		}
		if parted && len(out) > 0 {
			out = append(out, ' ')
		}
		parted = false
		out = append(out, unicode.ToLower(r))
	}
	return out[:min(len(out), longest)]
}

func sortWords(w []rune) []rune {
	words := strings.Fields(string(w))
	slices.Sort(words)
	return []rune(strings.Join(words, " "))
}

// distance returns the optimal string alignment distance of a and b, or
// a number above most if it exceeds most.
func distance(a, b []rune, most int) int {
	if d := len(a) - len(b); d > most || -d > most {
		return most + 1
	}
	var rows [3][longest + 2]int
	before, last, row := rows[0][:], rows[1][:], rows[2][:]
	for j := 0; j <= len(b); j++ {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		least := i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
			least = min(least, row[j])
		}
		if least > most {
			return most + 1
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}
