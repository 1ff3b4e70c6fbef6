package facts

import "math"

// rung orders the words of a level from the mildest: clear, note, risk, stop.
func rung(v *Value) int {
	for i, word := range [...]string{"clear", "note", "risk", "stop"} {
		if len(v.Words) == 1 && v.Words[0] == word {
			return i
		}
	}
	return math.MaxInt // what is no level of these
}
