package finding

import (
	"cmp"
	"fmt"
	"slices"

	"forebake/engine/source"
)

// Cause is one thing that leaves answers open: "salt has no amount".
type Cause struct {
	Text    string
	Place   source.Place
	Assumed bool   // not waited for: what was taken in its stead
	ByModel bool   // only the width of a model's answer
	Settle  string // what would make that narrower, in words; often none
}

// Waiting is a cause with the answers that wait for it.
type Waiting struct {
	Cause
	Rules   []string // sorted, each once
	Answers int
}

// Causes groups unsure answers by what they wait for, what settles most
// first. An answer that waits for two things counts at both.
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

// Open is a formula's unsure answers in reading order. First is food
// safety within the models' error, then missing figures, then all
// others within that error.
type Open struct {
	Told   []Waiting
	Within *Within // nil where that is fewer than two answers, or all are told one by one
}

// Within folds the answers within the models' error into one.
type Within struct {
	Rules   []string // with their lines, in the order of the formula
	Answers int
	Settle  string // what narrows the most of them; "" for none
	Settles int    // how many it does
}

// OpenOf sorts unsure answers. With all, each cause is told separately.
func OpenOf(list []*Finding, all bool) Open {
	var safe, others, within []*Finding
	for _, f := range list {
		switch {
		case f.Safety && f.isWithinError():
			safe = append(safe, f)
		case !all && f.isWithinError():
			within = append(within, f)
		default:
			others = append(others, f)
		}
	}
	if len(within) < 2 {
		others, within = append(others, within...), nil
	}
	return Open{append(Causes(safe), Causes(others)...), withinOf(within)}
}

// isWithinError reports whether an answer waits only for a
// narrower model.
func (f *Finding) isWithinError() bool {
	for _, c := range f.Causes {
		if !c.ByModel {
			return false
		}
	}
	return f.Answer == Unsure && len(f.Causes) > 0
}

// WaitsAs reports whether two food-safety findings, neither ruled out, stand in one place and wait
// for one reading.
func (f *Finding) WaitsAs(g *Finding) bool {
	if !f.Safety || !g.Safety || !f.Doubt || !g.Doubt || f.Place != g.Place {
		return false
	}
	return slices.ContainsFunc(f.Causes, func(a Cause) bool {
		return slices.ContainsFunc(g.Causes, func(b Cause) bool {
			return a == b || a.Settle != "" && a.Settle == b.Settle
		})
	})
}

func withinOf(list []*Finding) *Within {
	if len(list) == 0 {
		return nil
	}
	list = slices.Clone(list)
	slices.SortStableFunc(list, func(a, b *Finding) int {
		return cmp.Compare(a.Place.Start, b.Place.Start)
	})
	out := Within{Answers: len(list)}
	settles := map[string]int{}
	for _, f := range list {
		name := fmt.Sprintf("%s (line %d)", f.Rule, f.Place.Line())
		if !slices.Contains(out.Rules, name) {
			out.Rules = append(out.Rules, name)
		}
		counted := map[string]bool{"": true}
		for _, c := range f.Causes {
			if !counted[c.Settle] {
				counted[c.Settle] = true
				if settles[c.Settle]++; settles[c.Settle] > out.Settles {
					out.Settle, out.Settles = c.Settle, settles[c.Settle]
				}
			}
		}
	}
	return &out
}
