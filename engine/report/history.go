package report

import (
	"fmt"
	"io"
	"math"
	"strings"
	"unicode/utf8"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// History prints timelines, a table a part: when each step begins, what is around the part, and what it is like as the step
// ends.
func History(w io.Writer, rows []finding.HistoryRow) error {
	var b strings.Builder
	formula, part := "", ""
	head := [6]string{"clock", "step", "around it", "core at its end", "mean at its end", "hours at 26 C"}
	for i := 0; i < len(rows); {
		end := i
		for end < len(rows) && rows[end].Formula == rows[i].Formula && rows[end].Part == rows[i].Part {
			end++
		}
		if b.Len() > 0 {
			b.WriteString("\n")
		}
		if rows[i].Formula != formula {
			fmt.Fprintf(&b, "%s\n\n", source.Safe(rows[i].Formula))
		}
		formula, part = rows[i].Formula, rows[i].Part
		fmt.Fprintf(&b, "%s\n", source.Safe(part))
		table := [][6]string{head}
		for _, r := range rows[i:end] {
			table = append(table, [6]string{clock(r), source.Safe(r.Step), r.Ambient, r.Core, r.Mean, r.Rise})
		}
		var width [6]int
		for _, line := range table {
			for k, cell := range line {
				width[k] = max(width[k], utf8.RuneCountInString(cell))
			}
		}
		for n, line := range table {
			text := " "
			for k, cell := range line {
				text += " " + cell + strings.Repeat(" ", width[k]-utf8.RuneCountInString(cell)+1)
			}
			if n > 0 {
				text += source.Safe(rows[i+n-1].Notes)
			}
			b.WriteString(strings.TrimRight(text, " ") + "\n")
		}
		i = end
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// clock tells when a step begins: the time of day where the formula says when work starts, else hours and minutes since then.
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
