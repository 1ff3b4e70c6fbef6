package finding

import "forebake/engine/source"

// Mend is a change that would clear a finding.
type Mend struct {
	Text  string // "instant yeast in dough \"d\": 2.4 % to 0.9 % (line 15)"
	Trust string // one of Trusts
	// Edits make the change in the text that was judged; none for advice, which changes no text.
	Edits []source.Edit
}

// Trusts are the grades of a mend: computed by the rule, found by a search and proven, or left to
// the baker's taste.
var Trusts = []string{"exact", "searched", "taste"}

// Mending is the result of mending one formula, ready to print.
type Mending struct {
	Formula string
	File    string
	Line    int
	Lines   []ChangedLines // what differs in the file
	Changes []Change
	Choices []Change // taste: not made unless asked for
	Left    []Left   // flagged still, each with why
	Worse   []Worse  // answers that the changes make worse, or open
	Doubted []Doubted
	Spent   bool // the search ended at its budget
	Wrote   bool
}

// Doubted is a comment on a changed line, which may not be true any more.
type Doubted struct {
	Line int // of the mended text
	Text string
}

// Worse is an answer that the changes of a formula make worse. From clear to unsure is worse too.
type Worse struct {
	Rule, Subject string
	Level         Level
	Line          int
	Was, Is       Answer
}

// ChangedLines is a run of lines before and after.
type ChangedLines struct {
	OldLine, NewLine int
	Old, New         []string
}

// Change is one change of a formula, by one lever.
type Change struct {
	Mend
	Rules   []Helped
	With    []string // rules whose change needs this one beside it; only where Rules is empty
	Figures []BeforeAfter
}

// Helped is a finding that a change cleared, or left unsure.
type Helped struct {
	Rule, Subject string
	Level         Level
	Line          int
	Unsure        bool // the model cannot tell any more; not cleared
}

// BeforeAfter is a figure on the formula as it was and as mended.
type BeforeAfter struct{ Label, Subject, Before, After string }

// Left is a finding that no change clears.
type Left struct {
	Rule, Subject string
	Level         Level
	Line          int
	Why           string
	Against       []string // rules that pull the same lever the other way
	Nearest       string   // the change that comes nearest
	Instead       string   // what a baker would do, where no value serves
}
