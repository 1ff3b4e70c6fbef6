// Package finding holds what a run finds: findings and cautions, with
// their levels, places and figures, and their order in print.
//
// Package rule makes findings, package run collects them, package
// report prints them. Ordering and counting here gives every format the
// same numbers.
package finding

import (
	"fmt"
	"sort"
	"strconv"
	"strings"

	"forebake/engine/source"
)

// Level is how much a finding matters.
type Level uint8

// The levels, most serious first.
const (
	Stop Level = iota // do not bake this
	Risk              // likely to disappoint, or outside good practice
	Note              // worth knowing
)

// LevelNames are the levels as written.
var LevelNames = []string{"stop", "risk", "note"}

func (l Level) String() string { return LevelNames[l] }

// MarshalText gives the word of a level.
func (l Level) MarshalText() ([]byte, error) { return []byte(l.String()), nil }

// LevelNamed finds a level by name.
func LevelNamed(name string) (Level, bool) {
	for i, n := range LevelNames {
		if n == name {
			return Level(i), true
		}
	}
	return 0, false
}

// Answer is a rule's answer on a subject.
type Answer uint8

// The answers. Clear is not a finding; the others are.
const (
	Clear Answer = iota
	Flagged
	Unsure // a figure is missing, or the answer turns inside its error or range
	Waived // set aside by the house, with a reason
	// Assumed is an answer that an open amount of a seasoning leaves
	// open, and that is clear at the usual amount of its class.
	Assumed
)

// AnswerNames are the answers as written.
var AnswerNames = []string{"clear", "flagged", "unsure", "waived", "assumed"}

func (a Answer) String() string { return AnswerNames[a] }

// MarshalText gives the word of an answer.
func (a Answer) MarshalText() ([]byte, error) { return []byte(a.String()), nil }

// Figure is one fact behind a finding.
type Figure struct {
	Name    string  // "dough.sugar_pct"
	Label   string  // the same in plain words: "sugar"
	Shown   string  // value and unit as a person reads it
	Error   string  // a model's ends, as a person reads them; "" for others
	Value   float64 // middle; NaN when unknown
	Low     float64 // may be infinite
	High    float64
	Unit    string
	Text    string   // for a text, yes/no or list fact
	List    []string // for a list fact
	Numeric bool
	Kind    string       // arithmetic, model, measured, given
	Place   source.Place // the line that the figure came from, where there is one
}

// Spot is the finding's subject, without its part, and its line:
// "salt (line 12)".
func (f *Finding) Spot() string {
	what, _, _ := strings.Cut(f.Subject, " in ")
	return what + " (line " + strconv.Itoa(f.Place.Line()) + ")"
}

// Restates reports whether another figure of a model says the same:
// its value and ends in one unit.
func (f *Figure) Restates(other *Figure) bool {
	return f.Numeric && f.Kind == "model" && other.Kind == f.Kind && other.Unit == f.Unit &&
		other.Value == f.Value && other.Low == f.Low && other.High == f.High
}

// Finding is one rule's answer on one subject, unless clear.
type Finding struct {
	Rule    string
	Pack    string
	Level   Level
	Answer  Answer
	Formula string
	Subject string // "dough \"knot dough\"", "sugar in knot dough", "bake in knot dough"
	Place   source.Place
	Text    string // what is wrong and what to do, or what is missing
	Why     string
	Source  string
	Figures []*Figure // those of limits are shared by all findings of a rule: not to be changed
	Lesser  []int     // indexes of Figures that do not decide: margins, limits of other branches
	Mends   []Mend    // changes that would clear it, where they were looked for
	Needs   []string  // facts or fields that would settle an unsure answer, or one flagged in doubt
	Reason  string    // of an unsure answer, or one flagged in doubt: what left it open
	Causes  []Cause   // the same one by one, alike for all answers that wait for one thing
	Doubt   bool      // flagged because it could not be ruled out, not because it is certain
	Safety  bool      // of a food-safety rule

	// Of a waived answer: why, until which day (both as the house wrote
	// them; Until may be ""), and the waiver's place.
	Because, Until string
	By             source.Place
}

// Loosened is one setting of a house that makes a food-safety rule less
// strict. Every format shows it.
type Loosened struct {
	Rule, Pack string
	What       string // "level", or "limit first_h"
	From, To   string
	Because    string
	Place      source.Place // in the house file
}

// Unchecked is a food-safety pack that a house leaves out. Every format
// says so.
type Unchecked struct {
	Pack  string
	Place source.Place // in the house file
}

// Text says what is left unchecked.
func (u Unchecked) Text() string {
	return fmt.Sprintf("food safety is not checked: this house leaves out the pack %q", u.Pack)
}

// Caution is a food-safety line that is always shown.
type Caution struct {
	Kind    string // the caution's name in its pack; at most one of a kind is shown for a formula
	Pack    string // the house's own pack that adds it; "" for a shipped one
	Rank    int    // place in the pack: the most serious stands first, own ones after the shipped
	Text    string
	Detail  string // differs by formula, such as the allergens by name; often none
	Source  string
	Formula string
	Place   source.Place // of the formula

	// The short line: the thing, a colon, its danger and what to do; ""
	// for none. Words are those of its list, where ListHere stands.
	// With names the caution whose line covers this one.
	Short string
	Words []string
	With  string
	At    source.Place // of the thing; zero where it is the whole formula
	Heat  string       // the temperature that it is brought to; often none
}

// ListHere stands in a short line for the words of its list.
const ListHere = "\x00"

// Whole gives the text with its detail. A house's own begins with its
// pack's name, so that it never passes for a shipped one.
func (c *Caution) Whole() string {
	text := c.Text
	if c.Detail != "" {
		text += " " + c.Detail
	}
	if c.Pack != "" {
		text = AddedBy(c.Pack) + ": " + text
	}
	return text
}

// AddedBy marks a caution as a house's own.
func AddedBy(pack string) string { return "Added by " + pack + ", not by forebake" }

// Totals are the counts of a run, the same in every format.
type Totals struct {
	Formulas, Rules                  int
	Stop, Risk, Note, Unsure, Waived int
	Backlog                          int // covered by a backlog: they count in none of the others
	Unread                           int // files that could not be read
}

// Count adds a finding to the totals.
func (t *Totals) Count(f *Finding) {
	switch {
	case f.Answer == Assumed: // one line of the report tells of all
	case f.Answer == Unsure:
		t.Unsure++
	case f.Answer == Waived:
		t.Waived++
	case f.Level == Stop:
		t.Stop++
	case f.Level == Risk:
		t.Risk++
	default:
		t.Note++
	}
}

// At reports whether a finding is flagged at or above a level.
func (f *Finding) At(level Level) bool { return f.Answer == Flagged && f.Level <= level }

// Sort orders findings by file, line, column, level, rule, subject and
// text, whatever the number of workers.
func Sort(list []*Finding) {
	sort.SliceStable(list, func(i, j int) bool {
		a, b := list[i], list[j]
		if x, y := a.file(), b.file(); x != y {
			return x < y
		}
		if a.Place.Start != b.Place.Start {
			return a.Place.Start < b.Place.Start
		}
		if a.Level != b.Level {
			return a.Level < b.Level
		}
		if a.Rule != b.Rule {
			return a.Rule < b.Rule
		}
		if a.Subject != b.Subject {
			return a.Subject < b.Subject
		}
		return a.Text < b.Text
	})
}

func (f *Finding) file() string {
	if f.Place.File == nil {
		return ""
	}
	return f.Place.File.Name
}
