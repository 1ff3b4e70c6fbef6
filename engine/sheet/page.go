// Package sheet makes the bench sheet. It holds the cautions, each
// part's weights, its steps on the clock with the readings to take and
// their right values, boxes for notes, the open findings, and curves of
// temperature and rise.
//
// The engine builds pages with Of, from a formula, its figures and its
// plan; the formats of this package print them. A sheet judges nothing:
// every figure and word is that of the run.
package sheet

import (
	"forebake/engine/finding"
	"forebake/engine/report"
	"forebake/engine/source"
)

// Page is the sheet of one file.
type Page struct {
	Version  string    `json:"version"`
	File     string    `json:"file"`
	Prelude  Prelude   `json:"prelude"`
	Formulas []Formula `json:"formulas"`
}

// Prelude is what stands before all else, as in every report.
type Prelude struct {
	Short    []report.CautionLine `json:"short"`
	Whole    []report.CautionLine `json:"whole"`
	SetAside []Finding            `json:"set_aside"`
	Left     []string             `json:"left"` // food-safety packs that the house leaves out
	Less     []string             `json:"less"` // food-safety rules that it makes less strict
}

// Formula is the sheet of one formula.
type Formula struct {
	Name      string    `json:"name"`
	Makes     string    `json:"makes"`
	Family    string    `json:"family"`
	Keep      string    `json:"keep"`
	Begins    string    `json:"begins"`
	Ready     string    `json:"ready"`     // clocks; "" where none is given
	Takes     string    `json:"takes"`     // how long, in their place
	Unplanned string    `json:"unplanned"` // why not
	Parts     []Part    `json:"parts"`
	Open      []Finding `json:"open"`
	Waived    []Finding `json:"waived"`
}

// Finding is a finding as a line.
type Finding struct {
	Word    string `json:"word"`
	Where   string `json:"where"`
	Text    string `json:"text"`
	Rule    string `json:"rule"`
	Because string `json:"because"` // of a waived one, with its day and place

	rank int // what could hurt somebody first, then by level
}

// Part is one part.
type Part struct {
	Kind        string       `json:"kind"`
	Name        string       `json:"name"`
	Of          string       `json:"of"` // Of: what percentages are on, "flour" or "weight"
	Ingredients []Ingredient `json:"ingredients"`
	Total       string       `json:"total"`
	Figures     []Figure     `json:"figures"`
	Steps       []Step       `json:"steps"`
	Temperature *Curve       `json:"-"` // nil where it is not known
	Rise        *Curve       `json:"-"`
}

// Ingredient is one line of the weights. Weight is "" for an amount
// that is to be decided.
type Ingredient struct {
	Name    string `json:"name"`
	Weight  string `json:"weight"`
	Written string `json:"written"`
	Percent string `json:"percent"`
	Temp    string `json:"temp"`
	Note    string `json:"note"`
}

// Figure is a figure by its name.
type Figure struct {
	Name  string `json:"name"`
	Value string `json:"value"`
}

// Step is one step.
type Step struct {
	Number   int    `json:"number"`
	Clock    string `json:"clock"`
	Does     string `json:"does"`
	How      string `json:"how"`
	HandsOn  bool   `json:"hands_on"`
	Look     string `json:"look"`
	Probe    string `json:"probe"`
	Right    string `json:"right"` // each often none
	Rises    bool   `json:"rises"` // a rise can be read
	Core     string `json:"core"`
	Surface  string `json:"surface"`
	RiseText string `json:"rise_text"` // the figures of the curves, for the tables beside them
}

// Collect makes the prelude of a run.
func Collect(run *finding.Run) Prelude {
	c := &collector{}
	report.Walk(c, run)
	return c.Prelude
}

// collector takes in a prelude.
type collector struct{ Prelude }

func (c *collector) Cautions(list *report.Cautions) {
	c.Short, c.Whole = list.Lines(), list.WholeLines()
}

// Unread takes in nothing: of a file that cannot be read there is
// no sheet.
func (c *collector) Unread(source.Problems) {}

func (c *collector) SetAside(list []*finding.Finding) {
	for _, f := range list {
		c.Prelude.SetAside = append(c.Prelude.SetAside, lineOf(f))
	}
}

func (c *collector) Unchecked(list []finding.Unchecked) {
	for _, u := range list {
		c.Left = append(c.Left, source.Safe(u.Text())+" ("+source.Safe(u.Place.String())+")")
	}
}

func (c *collector) Loosened(list []finding.Loosened) {
	for _, l := range list {
		c.Less = append(c.Less, source.Safe(l.Rule+": "+l.What+" is "+l.To+", and was "+l.From+
			", because "+l.Because+" ("+l.Place.String()+")"))
	}
}

// lineOf writes a finding as a line.
func lineOf(f *finding.Finding) Finding {
	out := Finding{Word: f.Word(), Where: source.Safe(f.Subject), Text: source.Safe(f.Text),
		Rule: f.Rule, rank: int(f.Level)}
	if f.Safety && f.Level != finding.Note {
		out.rank -= len(finding.LevelNames)
	}
	if f.Answer == finding.Waived {
		out.Word += " " + f.Level.String()
		out.Because = source.Safe(f.Because)
		if f.Until != "" {
			out.Because += ", until " + source.Safe(f.Until)
		}
		out.Because += " (" + source.Safe(f.By.String()) + ")"
	}
	return out
}
