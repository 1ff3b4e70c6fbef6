package page

import (
	"fmt"
	"io"
	"math"
	"strings"
	"unicode/utf8"

	"forebake/engine/finding"
	"forebake/engine/report"
	"forebake/engine/source"
)

// History prints timelines, a table a part: when each step begins,
// the temperature around the part, and its state at the end of the
// step. A table that is wider than the page leaves out the ranges of
// its figures.
func History(w io.Writer, run *finding.Run, rows []finding.HistoryRow, o report.Options) error {
	t := newText(w, o)
	t.figuresHead(run)
	formula := ""
	for i := 0; i < len(rows); {
		end := i
		for end < len(rows) && rows[end].Formula == rows[i].Formula &&
			rows[end].Part == rows[i].Part {
			end++
		}
		if i > 0 {
			t.WriteString("\n")
		}
		if rows[i].Formula != formula {
			formula = rows[i].Formula
			fmt.Fprintf(t, "%s\n\n", source.Safe(formula))
		}
		t.timeline(rows[i:end])
		i = end
	}
	return t.End()
}

// timeline prints the steps of one part.
func (t *text) timeline(rows []finding.HistoryRow) {
	fmt.Fprintf(t, "%s\n", source.Safe(rows[0].Part))
	table := [][6]string{{"clock", "step", "around", "core after", "mean after", "h at 26 C"}}
	for _, r := range rows {
		table = append(table,
			[6]string{clock(r), source.Safe(r.Step), r.Ambient, r.Core, r.Mean, r.Rise})
	}
	width := widths(table)
	notes := 0
	for _, r := range rows {
		notes = max(notes, utf8.RuneCountInString(r.Notes))
	}
	if notes+1+total(width) > t.Width() {
		for n := range table[1:] {
			for k, cell := range table[n+1] {
				table[n+1][k], _, _ = strings.Cut(cell, " (")
			}
		}
		width = widths(table)
	}
	for n, line := range table {
		text := " "
		for k, cell := range line {
			text += " " + cell + strings.Repeat(" ", width[k]-utf8.RuneCountInString(cell)+1)
		}
		if n > 0 {
			text += source.Safe(rows[n-1].Notes)
		}
		t.WriteString(strings.TrimRight(text, " ") + "\n")
	}
}

// widths are the columns that the cells of a timeline take.
func widths(table [][6]string) (out [6]int) {
	for _, line := range table {
		for k, cell := range line {
			out[k] = max(out[k], utf8.RuneCountInString(cell))
		}
	}
	return out
}

// total is the width of a line of a timeline.
func total(width [6]int) (sum int) {
	for _, w := range width {
		sum += w + 2
	}
	return sum
}

// clock gives the time at which a step begins: the time of day where
// the formula has a start, else hours and minutes of work.
func clock(r finding.HistoryRow) string {
	minutes := int(math.Round(60 * r.Clock))
	if math.IsNaN(r.StartMin) {
		return fmt.Sprintf("%d:%02d", minutes/60, minutes%60)
	}
	at := int(r.StartMin) + minutes
	day := ""
	if n := at / (24 * 60); n > 0 {
		day = fmt.Sprintf(" +%dd", n)
	}
	return fmt.Sprintf("%02d:%02d%s", at/60%24, at%60, day)
}
