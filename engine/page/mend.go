package page

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/report"
	"forebake/engine/source"
)

// Mend prints the prelude and what mending found, formula by formula:
// the changed lines, each change with its trust, and the findings left.
// Formulas with nothing to mend are named at the end.
func Mend(w io.Writer, run *finding.Run, list []finding.Mending, o report.Options) error {
	return write(w, run, o, func(t *text) {
		var clear []string
		for i := range list {
			if m := &list[i]; len(m.Changes)+len(m.Left) > 0 {
				t.mending(m)
			} else {
				clear = append(clear, source.Safe(m.Formula))
			}
		}
		if len(clear) > 0 {
			t.Paragraph(t.Bold("Nothing to mend in ")+report.Count(len(clear),
				"formula")+": "+strings.Join(clear, "; ")+".", "", "  ")
		}
	})
}

func (t *text) mending(m *finding.Mending) {
	cleared, unsure := 0, 0
	for _, c := range m.Changes {
		for _, r := range c.Rules {
			if r.Unsure {
				unsure++
			} else {
				cleared++
			}
		}
	}
	parts := []string{report.Count(len(m.Changes), "change")}
	if cleared > 0 {
		parts = append(parts, report.Count(cleared, "finding")+" cleared")
	}
	if unsure > 0 {
		parts = append(parts, fmt.Sprintf("%d no longer sure", unsure))
	}
	parts = append(parts, fmt.Sprintf("%d left", len(m.Left)))
	t.Paragraph(t.Faint("("+source.Safe(m.File)+")")+": "+strings.Join(parts, ", "),
		t.Bold(source.Safe(m.Formula))+"  ", "  ")
	t.WriteString("\n")
	for _, d := range m.Lines {
		t.diff(d)
	}
	if len(m.Lines) > 0 {
		t.WriteString("\n")
	}
	for _, d := range m.Doubted {
		t.Paragraph(
			fmt.Sprintf("%s:%d is changed; its comment may not be true any more: %s",
				source.Safe(m.File), d.Line, source.Safe(d.Text)),
			"  ",
			"    ",
		)
	}
	if len(m.Doubted) > 0 {
		t.WriteString("\n")
	}
	for _, c := range m.Changes {
		t.change(c)
	}
	if len(m.Choices) > 0 {
		t.WriteString("  For you to choose; --taste makes these too\n\n")
		for _, c := range m.Choices {
			t.change(c)
		}
	}
	if len(m.Worse) > 0 {
		t.WriteString("  Worse or open after the changes\n\n")
		for _, w := range m.Worse {
			t.Paragraph(fmt.Sprintf("%-5s %s:%d, %s: %s was %s, and is %s", w.Level,
				source.Safe(m.File), w.Line, source.Safe(w.Subject), w.Rule, w.Was, w.Is), "  ",
				"        ")
		}
		t.WriteString("\n")
	}
	if len(m.Left) > 0 {
		t.WriteString("  Left as they are\n\n")
		for _, l := range m.Left {
			t.left(m.File, l)
		}
	}
	if m.Spent {
		t.Paragraph(
			"The search ended at its budget of work: there may be better changes. Mend the "+
				"worst by hand and run it again.",
			"  ",
			"  ",
		)
		t.WriteString("\n")
	}
}

// Written names the files of the mendings that were written.
func Written(w io.Writer, list []finding.Mending) error {
	var files []string
	for i := range list {
		if m := &list[i]; m.Wrote && !slices.Contains(files, m.File) {
			files = append(files, m.File)
			if _, err := fmt.Fprintf(w, "%s is written.\n", source.Safe(m.File)); err != nil {
				return err
			}
		}
	}
	return nil
}

// diff prints lines before and after, with their numbers.
func (t *text) diff(d finding.ChangedLines) {
	for i, line := range d.Old {
		t.Verbatim(t.Removed(fmt.Sprintf("  %4d - %s", d.OldLine+i,
			source.Safe(strings.ReplaceAll(line, "\t", "    ")))))
	}
	for i, line := range d.New {
		t.Verbatim(t.Added(fmt.Sprintf("  %4d + %s", d.NewLine+i,
			source.Safe(strings.ReplaceAll(line, "\t", "    ")))))
	}
}

func (t *text) change(c finding.Change) {
	t.Paragraph(source.Safe(c.Text), fmt.Sprintf("  %-8s ", c.Trust), "           ")
	for _, r := range c.Rules {
		word := "clears"
		if r.Unsure {
			word = "eases"
		}
		tail := ""
		if r.Unsure {
			tail = "; within the model's error now: check says what would settle it"
		}
		t.Paragraph(fmt.Sprintf("%s %s (%s), %s%s", word, r.Rule, r.Level, source.Safe(r.Subject),
			tail), "           ", "             ")
	}
	if len(c.With) > 0 {
		t.Paragraph("goes with the change for "+strings.Join(c.With, ", "), "           ",
			"             ")
	}
	if c.Alone != "" {
		t.Paragraph("by itself, as check says: "+source.Safe(c.Alone)+"; with the other "+
			"changes it takes this", "           ", "             ")
	}
	for _, f := range c.Figures {
		if f.Before == "yes" || f.Before == "no" { // the rule's name says it
			continue
		}
		t.Paragraph(fmt.Sprintf("%s: %s before, %s after", f.Label, source.Safe(f.Before),
			source.Safe(f.After)), "           ", "             ")
	}
	t.WriteString("\n")
}

func (t *text) left(file string, l finding.Left) {
	t.Paragraph(fmt.Sprintf("%s:%d, %s: %s", source.Safe(file), l.Line, source.Safe(l.Subject),
		l.Rule), fmt.Sprintf("  %-5s ", l.Level), "        ")
	if len(l.Against) > 0 {
		t.Paragraph("These rules disagree: "+l.Rule+" and "+strings.Join(l.Against, ", ")+".",
			"        ", "        ")
	}
	t.Paragraph(report.UpperFirst(source.Safe(l.Why))+".", "        ", "        ")
	if l.Nearest != "" {
		t.Paragraph("Nearest that brings nothing new: "+source.Safe(l.Nearest)+".", "        ",
			"        ")
	}
	if l.Instead != "" {
		t.Paragraph("By hand: "+source.Safe(l.Instead)+".", "        ", "        ")
	}
	t.WriteString("\n")
}
