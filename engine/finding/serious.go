package finding

import "slices"

// Words are the printed words for findings, most serious first.
var Words = []string{"stop", "risk", "note", "unsure", "waived"}

// Word is the printed word for a finding: its level when flagged, else
// its answer.
func (f *Finding) Word() string {
	if f.Answer == Flagged {
		return f.Level.String()
	}
	return f.Answer.String()
}

// Ranks is how many values Seriousness has.
var Ranks = 3 + len(Words)

// Seriousness orders findings: food safety that could hurt someone,
// stops, risks, notes, unsure answers, what a house waives, what is
// clear as assumed.
func (f *Finding) Seriousness() int {
	if f.CouldHurt() {
		return int(f.Level) // a stop, then a risk
	}
	if f.Answer == Assumed {
		return 2 + len(Words)
	}
	return 2 + slices.Index(Words, f.Word())
}

// CouldHurt reports whether a finding is food safety above a note.
func (f *Finding) CouldHurt() bool {
	return f.Safety && f.Answer == Flagged && f.Level != Note
}

// Serious lists findings in reading order: most serious first, each
// kind by line.
func Serious(list []*Finding) []*Finding {
	out := slices.Clone(list)
	slices.SortStableFunc(out, func(a, b *Finding) int { return a.Seriousness() - b.Seriousness() })
	return out
}

// Hurtful lists the findings that could hurt someone, most
// serious first.
func Hurtful(list []*Finding) []*Finding {
	return slices.DeleteFunc(Serious(list), func(f *Finding) bool { return !f.CouldHurt() })
}

// Fold keeps at most so many of a list's most serious findings, in
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
