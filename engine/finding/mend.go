package finding

import "forebake/engine/source"

// Mend is a change that would clear a finding.
type Mend struct {
	Text  string `json:"text"`  // "instant yeast in dough \"d\": 2.4 % to 0.9 % (line 15)"
	Trust string `json:"trust"` // one of Trusts
	// Edits make the change in the text that was judged; advice
	// has none.
	Edits []source.Edit `json:"-"`
}

// The trusts of a mend.
const (
	Exact    = "exact"    // the rule computes it
	Searched = "searched" // a search found it, and a check proved it
	Taste    = "taste"    // the baker decides
)

// Trusts lists the trusts, firmest first.
var Trusts = []string{Exact, Searched, Taste}

// Mending is the result of mending one formula, ready to print.
type Mending struct {
	Formula string         `json:"formula"`
	File    string         `json:"file"`
	Line    int            `json:"line"`
	Lines   []ChangedLines `json:"-"` // what differs in the file
	Changes []Change       `json:"changes"`
	Choices []Change       `json:"choices"` // taste: not made unless asked for
	Left    []Left         `json:"left"`    // flagged still, each with why
	Worse   []Worse        `json:"worse"`   // answers that the changes make worse, or open
	Doubted []Doubted      `json:"doubted"`
	Spent   bool           `json:"spent"` // the search ended at its budget
	Wrote   bool           `json:"wrote"`
}

// FileEdits is what changes in a file, as bytes of the text read.
type FileEdits struct {
	File  string
	Edits []source.Edit
}

// Doubted is a comment on a changed line that may no longer be true.
type Doubted struct {
	Line int    `json:"line"` // of the mended text
	Text string `json:"text"`
}

// Worse is an answer that a formula's changes make worse. From clear to
// unsure is worse too.
type Worse struct {
	Rule    string `json:"rule"`
	Subject string `json:"subject"`
	Level   Level  `json:"level"`
	Line    int    `json:"line"`
	Was     Answer `json:"was"`
	Is      Answer `json:"is"`
}

// ChangedLines is a run of lines before and after.
type ChangedLines struct {
	OldLine int      `json:"old_line"`
	NewLine int      `json:"new_line"`
	Old     []string `json:"old"`
	New     []string `json:"new"`
}

// Change is one change of a formula, by one lever.
type Change struct {
	Mend
	Rules   []Helped      `json:"rules"`
	With    []string      `json:"with"` // rules whose change needs this one; only without Rules
	Figures []BeforeAfter `json:"figures"`
	Alone   string        `json:"alone"` // what would do for the findings without the other changes
}

// Choose adds a change of taste. One that helps several findings is
// one choice.
func (m *Mending) Choose(c Change) {
	for i := range m.Choices {
		if one := &m.Choices[i]; one.Text == c.Text && one.Trust == c.Trust {
			one.Rules = append(one.Rules, c.Rules...)
			one.Figures = append(one.Figures, c.Figures...)
			return
		}
	}
	m.Choices = append(m.Choices, c)
}

// Helped is a finding that a change cleared, or left unsure.
type Helped struct {
	Rule    string `json:"rule"`
	Subject string `json:"subject"`
	Level   Level  `json:"level"`
	Line    int    `json:"line"`
	Unsure  bool   `json:"unsure"` // the model cannot tell any more; not cleared
}

// BeforeAfter is a figure on the formula as it was and as mended.
type BeforeAfter struct {
	Label   string `json:"label"`
	Subject string `json:"subject"`
	Before  string `json:"before"`
	After   string `json:"after"`
}

// Left is a finding that no change clears.
type Left struct {
	Rule    string   `json:"rule"`
	Subject string   `json:"subject"`
	Level   Level    `json:"level"`
	Line    int      `json:"line"`
	Why     string   `json:"why"`
	Against []string `json:"against"` // rules that pull the same lever the other way
	Nearest string   `json:"nearest"` // the change that comes nearest
	Instead string   `json:"instead"` // what a baker would do, where no value serves
}
