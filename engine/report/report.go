// Package report prints what a check found: as text for people, as error lines for editors, as JSON for
// programs, as SARIF for code-scanning sites, as Markdown for reviews.
//
// It knows findings and cautions, never how they were found. In every format the cautions come first and the totals last,
// with the same numbers. Whatever came from a file is made safe before it reaches a terminal.
package report

import (
	"bufio"
	"fmt"
	"io"
	"slices"
	"sort"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// Run is what one run found, ready to print.
type Run struct {
	Version   string
	Cautions  []*finding.Caution
	Findings  []*finding.Finding // sorted
	Formulas  []Formula          // every formula judged
	Loosened  []finding.Loosened // food safety that a house makes less strict
	Unchecked []finding.Unchecked
	Totals    finding.Totals
	Notices   []string
	Problems  source.Problems       // inputs that could not be used; told on standard error, and in logs that are read without it
	Cards     func() []finding.Card // the rules in force by name, asked for by the formats that describe them; may be nil
}

// Formula is a formula that was judged.
type Formula struct {
	Name  string
	Place source.Place
}

// Writer prints a run in one format.
type Writer func(w io.Writer, run *Run, o Options) error

// Options are the reader's wishes.
type Options struct {
	Colour bool
	Width  int // columns that text is wrapped to; 0 for the usual 96
}

// Formats are the formats by name.
var Formats = map[string]Writer{"text": Text, "lines": Lines, "json": JSON, "sarif": SARIF, "markdown": Markdown}

// FormatNames lists the formats.
func FormatNames() []string {
	var names []string
	for name := range Formats {
		names = append(names, name)
	}
	sort.Strings(names)
	return names
}

// totals gives the closing line, the same numbers in every format.
func totals(t finding.Totals) string {
	text := fmt.Sprintf("%s, %s: %d stop, %d risk, %d note, %d unsure, %d waived",
		Count(t.Formulas, "formula"), Count(t.Rules, "rule"), t.Stop, t.Risk, t.Note, t.Unsure, t.Waived)
	if t.Backlog > 0 {
		text += fmt.Sprintf(", %d in the backlog", t.Backlog)
	}
	return text
}

// Count prints a number with its noun: "1 rule", "2 rules".
func Count(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}

// word is what a finding is called in print: its level when it is flagged, else its answer.
func word(f *finding.Finding) string {
	if f.Answer == finding.Flagged {
		return f.Level.String()
	}
	return f.Answer.String()
}

// who gives the file and line that something was said at.
func who(p source.Place) string { return fmt.Sprintf("%s:%d", fileName(p), p.Line()) }

// reason gives a house's reason in one line, ready to stand before a full stop or a comma.
func reason(because string) string {
	return strings.TrimRight(strings.Join(strings.Fields(because), " "), ".")
}

// until says how long a waiver holds; nothing where it has no end.
func until(f *finding.Finding) string {
	if f.Until == "" {
		return ""
	}
	return ", until " + f.Until
}

// merged is a caution with all the formulas that it is for.
type merged struct {
	*finding.Caution
	details []detail
}

// detail is what a caution says of some formulas only.
type detail struct {
	text     string
	formulas []string
}

// merge puts cautions of one wording together, the most serious kind first; within a kind in order of the formulas. Each
// formula has at most one of a kind.
func merge(cautions []*finding.Caution) []*merged {
	var out []*merged
	byText := map[string]*merged{}
	for _, c := range cautions {
		key := c.Kind + "\x00" + c.Text
		m := byText[key]
		if m == nil {
			m = &merged{Caution: c}
			byText[key] = m
			out = append(out, m)
		}
		at := len(m.details)
		for i := range m.details {
			if m.details[i].text == c.Detail {
				at = i
			}
		}
		if at == len(m.details) {
			m.details = append(m.details, detail{text: c.Detail})
		}
		if !slices.Contains(m.details[at].formulas, c.Formula) { // two versions of one formula say it once
			m.details[at].formulas = append(m.details[at].formulas, c.Formula)
		}
	}
	sort.SliceStable(out, func(i, j int) bool { return out[i].Rank < out[j].Rank })
	return out
}

// byPlace sorts cautions as the error lines want them: by file and line of the formula, the most serious first.
func byPlace(cautions []*finding.Caution) []*finding.Caution {
	out := append([]*finding.Caution{}, cautions...)
	sort.SliceStable(out, func(i, j int) bool {
		a, b := out[i], out[j]
		if x, y := fileName(a.Place), fileName(b.Place); x != y {
			return x < y
		}
		if a.Place.Start != b.Place.Start {
			return a.Place.Start < b.Place.Start
		}
		return a.Rank < b.Rank
	})
	return out
}

func fileName(p source.Place) string {
	if p.File == nil {
		return ""
	}
	return p.File.Name
}

// Lines prints one line a caution and one a finding, in the GNU form "file:line:column: level: text", which editors jump by.
func Lines(w io.Writer, run *Run, _ Options) error {
	b := bufio.NewWriter(w) // line by line: a large collection has some hundred thousand
	for _, c := range byPlace(run.Cautions) {
		fmt.Fprintf(b, "%s: caution: %s\n", source.Safe(c.Place.String()), source.Safe(c.Whole()))
	}
	for _, u := range run.Unchecked {
		fmt.Fprintf(b, "%s: unchecked: %s\n", source.Safe(u.Place.String()), source.Safe(u.Text()))
	}
	for _, l := range run.Loosened {
		fmt.Fprintf(b, "%s: loosened: food safety: %s is %s, and was %s [%s] (because %s, %s)\n", source.Safe(l.Place.String()), source.Safe(l.What), l.To, l.From, l.Rule,
			source.Safe(reason(l.Because)), source.Safe(who(l.Place)))
	}
	for _, f := range run.Findings {
		fmt.Fprintln(b, line(f))
	}
	for _, n := range run.Notices {
		fmt.Fprintf(b, "forebake: %s\n", source.Safe(n))
	}
	fmt.Fprintf(b, "forebake: %s\n", totals(run.Totals))
	return b.Flush()
}

// line prints a finding in one line. What a house sets aside of food safety keeps its level in the line, so that whoever passes over
// waived findings does not pass over it.
func line(f *finding.Finding) string {
	level, text := word(f), f.Text
	if f.Answer == finding.Waived && f.Safety {
		level += " " + f.Level.String()
	}
	if f.Doubt {
		text += " " + doubt(f)
	}
	out := fmt.Sprintf("%s: %s: %s [%s]", source.Safe(f.Place.String()), level, source.Safe(text), f.Rule)
	if f.Answer == finding.Waived {
		out += fmt.Sprintf(" (because %s%s, %s)", source.Safe(reason(f.Because)), source.Safe(until(f)), source.Safe(who(f.By)))
	}
	return out
}

// doubt says why a finding is flagged that is not certain.
func doubt(f *finding.Finding) string { return "Not ruled out: " + f.Reason + "." }
