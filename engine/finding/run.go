package finding

import (
	"strings"

	"forebake/engine/source"
)

// Run is the result of one run over some formula files, ready to print.
type Run struct {
	Version   string
	Cautions  []*Caution
	Findings  []*Finding      // sorted
	Formulas  []Formula       // those judged, in order of file and line
	Problems  source.Problems // files that could not be used, each with the reason
	Loosened  []Loosened
	Unchecked []Unchecked
	Assumed   []Assumptions // what is taken for settings that are not written
	Notices   []string      // those of several lines list what they tell
	Totals    Totals

	Cards func() []Card // the rules in force by name, for formats that describe them; may be nil
	House string        // the flag for why to find the house of this run; "" for the folder's own
}

// Places lists the places of the formulas.
func (r *Run) Places() []source.Place {
	places := make([]source.Place, len(r.Formulas))
	for i, f := range r.Formulas {
		places[i] = f.Place
	}
	return places
}

// Formula is a formula that was judged.
type Formula struct {
	Name  string
	Place source.Place
}

// OneLine joins the lines of each notice, for formats that list nothing.
func OneLine(notices []string) []string {
	out := make([]string, len(notices))
	for i, n := range notices {
		out[i] = strings.ReplaceAll(n, "\n", " ")
	}
	return out
}

// SetAside lists the food-safety findings that a house waives. Every
// report shows them in full.
func (r *Run) SetAside() []*Finding {
	var out []*Finding
	for _, f := range r.Findings {
		if f.Safety && f.Answer == Waived {
			out = append(out, f)
		}
	}
	return out
}

// Assumptions are the values taken for unwritten settings of a formula
// or a kitchen: a default, or the right one. Every report lists them.
type Assumptions struct {
	File    string // "" for a kitchen without a house file
	Formula string // "" for a kitchen
	Line    int    // of the formula
	List    []Assumption
}

// Assumption is one of them; equal for all settings of one kind.
type Assumption struct {
	What, Of string
	Line     int // 0 for a kitchen
}
