// Package report prints a run's findings: text for people, error lines
// for editors, JSON for programs, SARIF for code-scanning sites,
// Markdown for reviews.
//
// It knows findings and cautions, never how they were found. One walk
// over a run (Write) calls the parts of a format in order. The prelude
// comes first, headed by the cautions, and the totals last. A file's
// texts are made safe before they are printed.
package report

import (
	"bufio"
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// totals gives the closing line, the same numbers in every format.
func totals(t finding.Totals) string {
	text := fmt.Sprintf("%s, %s: %d stop, %d risk, %d note, %d unsure, %d waived",
		Count(t.Formulas, "formula"), Count(t.Rules,
			"rule"), t.Stop, t.Risk, t.Note, t.Unsure, t.Waived)
	if t.Backlog > 0 {
		text += fmt.Sprintf(", %d in the backlog", t.Backlog)
	}
	if t.Unread > 0 {
		text += fmt.Sprintf(", %d not read", t.Unread)
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

// FileLine gives the file and line of a place: "house.hcl:3".
func FileLine(p source.Place) string { return fmt.Sprintf("%s:%d", p.FileName(), p.Line()) }

// Reason gives a house's reason in one line, without its final stop.
func Reason(because string) string {
	return strings.TrimRight(strings.Join(strings.Fields(because), " "), ".")
}

// untilText gives a waiver's last day, after a comma; "" for none.
func untilText(f *finding.Finding) string {
	if f.Until == "" {
		return ""
	}
	return ", until " + f.Until
}

// lines prints one line of cautions a formula and one a finding, in
// the GNU form "file:line:column: level: text", by which editors find
// the place.
type lines struct{ *bufio.Writer } // line by line: a large collection has some hundred thousand

func init() { register(Format{"lines", ".txt", false, noMends, newLines, endsInTotals}) }

func newLines(out io.Writer, _ Options) Writer { return lines{bufio.NewWriter(out)} }

func (b lines) Begin(Head) {}

// Cautions prints one line a formula, with all its cautions'
// short lines.
func (b lines) Cautions(c *Cautions) {
	for _, one := range c.byFormula() {
		alone := &Cautions{one.list, 1, 1}
		var parts []string
		for _, s := range alone.short() {
			if s.pack != "" {
				s.text = source.Safe(finding.AddedBy(s.pack)) + ": " + s.text
			}
			parts = append(parts, s.text)
		}
		fmt.Fprintf(b, "%s: caution: %s\n", source.Safe(one.place.String()),
			strings.Join(parts, " "))
	}
}

func (b lines) Unread(list source.Problems) {
	for _, p := range list {
		at := "forebake"
		if !p.Place.IsZero() {
			at = p.Place.String()
		}
		fmt.Fprintf(b, "%s: unread: %s\n", at, source.Safe(p.Text))
	}
}

// SetAside prints nothing: these findings have lines among the others,
// with level and reason.
func (b lines) SetAside([]*finding.Finding) {}

func (b lines) Unchecked(list []finding.Unchecked) {
	for _, u := range list {
		fmt.Fprintf(b, "%s: unchecked: %s\n", source.Safe(u.Place.String()), source.Safe(u.Text()))
	}
}

func (b lines) Loosened(list []finding.Loosened) {
	for _, l := range list {
		fmt.Fprintf(b, "%s: loosened: food safety: %s is %s, and was %s [%s] (because %s, %s)\n",
			source.Safe(l.Place.String()), source.Safe(l.What), l.To, l.From, l.Rule,
			source.Safe(Reason(l.Because)), source.Safe(FileLine(l.Place)))
	}
}

func (b lines) Findings(f *Found) {
	for _, one := range f.All() {
		// clear while a seasoning is as usual: amount-missing says it
		if one.Answer != finding.Assumed {
			fmt.Fprintln(b, line(one))
		}
	}
}

// Assumed prints nothing: an editor jumps from line to line, and these
// have none. The other formats tell them.
func (b lines) Assumed([]finding.Assumptions) {}

func (b lines) Notices(list []string) {
	for _, n := range finding.OneLine(list) {
		fmt.Fprintf(b, "forebake: %s\n", source.Safe(n))
	}
}

func (b lines) Totals(t finding.Totals) { fmt.Fprintf(b, "forebake: %s\n", totals(t)) }

func (b lines) End() error { return b.Flush() }

// line prints a finding in one line. A waived food-safety finding keeps
// its level there: a reader may skip waived findings.
func line(f *finding.Finding) string {
	level, text := f.Word(), f.Text
	if f.Answer == finding.Waived && f.Safety {
		level += " " + f.Level.String()
	}
	if f.Doubt {
		text += " " + doubt(f)
	}
	out := fmt.Sprintf("%s: %s: %s [%s]", source.Safe(f.Place.String()), level, source.Safe(text),
		f.Rule)
	if f.Answer == finding.Waived {
		out += fmt.Sprintf(" (because %s%s, %s)", source.Safe(Reason(f.Because)),
			source.Safe(untilText(f)), source.Safe(FileLine(f.By)))
	}
	return out
}

// doubt says what left a finding flagged in doubt open.
func doubt(f *finding.Finding) string { return "Not ruled out: " + f.Reason + "." }
