// Package linehash identifies a text's lines by their content, as
// code-scanning sites do. A finding keeps its hash when lines are added
// above it.
//
// The method is the published one of the site that names it
// primaryLocationLineHash (github.com/github/codeql-action,
// src/fingerprints.ts); the test holds its published examples.
package linehash

import (
	"strconv"
	"unicode/utf16"
)

const (
	span   = 100    // UTF-16 units that a line's hash looks at, from its start on
	factor = 37     // of each unit against the next
	ending = 0xFFFF // stands behind the last unit of the text
)

// Of gives a hash for each line: 64 bits in hexadecimal digits, a
// colon, and the count of equal ones so far. Blanks and tabs do not
// count, and every line ending counts as one line feed. A text that
// ends in a line ending has an empty last line.
func Of(text []byte) []string {
	units := make([]uint16, 0, len(text)+1) // a unit takes a byte or more
	starts := []int{0}
	returned := false // behind a carriage return
	var both [2]uint16
	for _, r := range string(text) {
		for _, u := range utf16.AppendRune(both[:0], r) {
			after := returned
			returned = u == '\r'
			switch {
			case u == ' ' || u == '\t' || u == '\n' && after:
				continue
			case u == '\r':
				u = '\n'
			}
			units = append(units, u)
			if u == '\n' {
				starts = append(starts, len(units))
			}
		}
	}
	units = append(units, ending)
	out := make([]string, len(starts))
	seen := make(map[uint64]int, len(starts))
	var word [40]byte
	for i, start := range starts {
		var hash uint64 // wraps round, as the method asks
		for k := start; k < start+span; k++ {
			hash *= factor
			if k < len(units) {
				hash += uint64(units[k])
			}
		}
		seen[hash]++
		one := append(strconv.AppendUint(word[:0], hash, 16), ':')
		out[i] = string(strconv.AppendInt(one, int64(seen[hash]), 10))
	}
	return out
}
