package finding

import "slices"

// Words are the words for findings in print, the most serious first.
var Words = []string{"stop", "risk", "note", "unsure", "waived"}

// Word is the word for a finding in print: its level when it is
// flagged, else its answer.
func (f *Finding) Word() string {
	if f.Answer == Flagged {
		return f.Level.String()
	}
	return f.Answer.String()
}

// Ranks is how many values Seriousness has.
var Ranks = 3 + len(Words)

// Seriousness orders findings: those of food safety that could hurt
// someone, stops, risks, notes, unsure answers, what a house sets
// aside, and what is clear as far as is assumed.
func (f *Finding) Seriousness() int {
	if f.CouldHurt() {
		return int(f.Level) // a stop, then a risk
	}
	if f.Answer == Assumed {
		return 2 + len(Words)
	}
	return 2 + slices.Index(Words, f.Word())
}

// CouldHurt reports whether a finding is one of food safety above
// a note.
func (f *Finding) CouldHurt() bool {
	return f.Safety && f.Answer == Flagged && f.Level != Note
}

// Serious lists findings as a person reads them: the most serious
// first, each kind by line.
func Serious(list []*Finding) []*Finding {
	out := slices.Clone(list)
	slices.SortStableFunc(out, func(a, b *Finding) int { return a.Seriousness() - b.Seriousness() })
	return out
}

// Hurtful lists the findings that could hurt someone, the most
// serious first.
func Hurtful(list []*Finding) []*Finding {
	return slices.DeleteFunc(Serious(list), func(f *Finding) bool { return !f.CouldHurt() })
}

// Fold keeps the most serious findings of a list, at most so many, in
// their order. It counts those left out, by word.
func Fold(list []*Finding, most int) (kept []*Finding, left map[string]int) {
	left = map[string]int{}
	if len(list) <= most {
		return list, left
	}
	ranks := make([]int, len(list))
	count := make([]int, Ranks)
	for i, f := range list {
		ranks[i] = f.Seriousness()
		count[ranks[i]]++
	}
	room := max(0, most)
	for i := range count {
		count[i] = min(count[i], room)
		room -= count[i]
	}
	for i, f := range list {
		if count[ranks[i]] > 0 {
			count[ranks[i]]--
			kept = append(kept, f)
		} else {
			left[f.Word()]++
		}
	}
	return kept, left
}
