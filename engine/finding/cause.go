package finding

import (
	"cmp"
	"slices"

	"forebake/engine/source"
)

// Cause is one thing that leaves answers open: "salt has no amount".
type Cause struct {
	Text    string
	Place   source.Place
	Assumed bool // not waited for: what was taken in its stead
}

// Waiting is a cause with what waits for it.
type Waiting struct {
	Cause
	Rules   []string // sorted, each once
	Answers int
}

// Causes folds unsure answers by what they wait for, that which would settle most first. An answer
// that waits for two things counts at both.
func Causes(list []*Finding) []Waiting {
	var out []Waiting
	at := map[Cause]int{}
	for _, f := range list {
		causes := f.Causes
		if len(causes) == 0 && f.Answer == Unsure {
			causes = []Cause{{Text: f.Reason, Place: f.Place}} // no open answer goes untold
		}
		for _, c := range causes {
			i, known := at[c]
			if !known {
				i = len(out)
				at[c] = i
				out = append(out, Waiting{Cause: c})
			}
			w := &out[i]
			w.Answers++
			if k, has := slices.BinarySearch(w.Rules, f.Rule); !has {
				w.Rules = slices.Insert(w.Rules, k, f.Rule)
			}
		}
	}
	slices.SortStableFunc(out, func(a, b Waiting) int {
		return cmp.Or(cmp.Compare(b.Answers, a.Answers), cmp.Compare(a.Place.Start, b.Place.Start))
	})
	return out
}
