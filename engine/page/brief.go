package page

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/report"
	"forebake/engine/source"
)

// FactsBrief prints the main figures of each subject, one a line, so
// that a part fits on a screen. Figures that are not known, and those
// that are nothing, are counted only.
func FactsBrief(w io.Writer, run *finding.Run, rows []finding.FactRow, o report.Options) error {
	t := newText(w, o)
	t.figuresHead(run)
	formula := ""
	for i := 0; i < len(rows); {
		end := i
		for end < len(rows) && rows[end].Formula == rows[i].Formula &&
			rows[end].Subject == rows[i].Subject {
			end++
		}
		if rows[i].Formula != formula {
			formula = rows[i].Formula
			t.WriteString(t.Bold(source.Safe(formula)) + "\n\n")
		}
		t.briefSubject(rows[i:end])
		i = end
	}
	if len(rows) > 0 {
		t.Paragraph("Name a figure for its error and source; --all prints all of them, --history "+
			"the temperature of each step.", "", "  ")
	}
	return t.End()
}

// briefSubject prints the main figures of one subject.
func (t *text) briefSubject(rows []finding.FactRow) {
	t.WriteString(source.Safe(rows[0].Subject) + "\n")
	more := 0
	for i := range rows {
		r := &rows[i]
		if !r.Main || isNothing(r) {
			more++
			continue
		}
		shown := source.Safe(r.Figure.Shown)
		if r.Figure.Error != "" {
			shown += " (" + source.Safe(r.Figure.Error) + ")"
		}
		head := fmt.Sprintf("  %-22s %-32s", r.Figure.Name, shown)
		means, _, _ := strings.Cut(source.Safe(r.Means), ":")
		means, _, _ = strings.Cut(means, ";")
		line := head
		for _, word := range strings.Fields(means) {
			if !t.Fits(line + " " + word) {
				line = head // a meaning that is cut short says something else
				break
			}
			line += " " + word
		}
		if !t.Fits(head) {
			t.Paragraph(shown, fmt.Sprintf("  %-22s ", r.Figure.Name), strings.Repeat(" ", 25))
			continue
		}
		t.WriteString(strings.TrimRight(line, " ") + "\n")
	}
	if more > 0 {
		fmt.Fprintf(t, "  (%d more)\n", more)
	}
	t.WriteString("\n")
}

// isNothing reports whether a figure is not known, or says that there
// is none of a thing.
func isNothing(r *finding.FactRow) bool {
	f := &r.Figure
	return f.Shown == "unknown" || f.Shown == "none" ||
		f.Numeric && f.Value == 0 && f.Low == 0 && f.High == 0
}
