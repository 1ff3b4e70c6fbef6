package page

import (
	"fmt"
	"io"
	"strings"
	"unicode/utf8"

	"forebake/engine/finding"
	"forebake/engine/report"
	"forebake/engine/source"
)

// Scale prints the prelude and a formula at another size: first what is
// new at that size, then the lots, then each part's weights.
func Scale(w io.Writer, run *finding.Run, s *finding.Scaling, o report.Options) error {
	return write(w, run, o, func(t *text) {
		fmt.Fprintf(t, "%s  %s\n", t.Bold(source.Safe(s.Formula)),
			t.Faint("("+source.Safe(s.File)+")"))
		t.Paragraph(fmt.Sprintf("%s, scaled to %s.", source.Safe(s.From), source.Safe(s.To)), "  ",
			"  ")
		t.Paragraph(fmt.Sprintf("All amounts times %s: %s.", factorText(s.Factor),
			source.Safe(s.Asked)), "  ", "  ")
		t.WriteString("\n")
		if len(s.New) == 0 {
			t.Paragraph("Nothing new is found at this size.", "", "")
			t.WriteString("\n")
		} else {
			t.Heading("New at this size: " + report.Tally(s.New))
			t.List(s.New)
		}
		t.moved("No longer found at this size", s.Gone)
		t.lines("To know", append(append([]string{}, s.Told...), doubtedComments(s.Doubted)...))
		t.lines("In lots", s.Lots)
		for _, p := range s.Parts {
			t.scaledPart(p)
		}
	})
}

// doubtedComments words the comments that may not be true any more.
func doubtedComments(list []finding.Doubted) []string {
	var out []string
	for _, d := range list {
		out = append(out, fmt.Sprintf("Line %d: the comment may give a figure of the old size: %s",
			d.Line, d.Text))
	}
	return out
}

// lines prints a list under a heading; nothing for an empty one.
func (t *text) lines(head string, list []string) {
	if len(list) == 0 {
		return
	}
	t.WriteString(t.Bold(head) + "\n")
	for _, one := range list {
		t.Paragraph(source.Safe(one), "  ", "    ")
	}
	t.WriteString("\n")
}

// factorText writes a factor with four digits.
func factorText(x float64) string {
	text := fmt.Sprintf("%.4f", x)
	return strings.TrimRight(strings.TrimRight(text, "0"), ".")
}

func (t *text) scaledPart(p finding.ScaledPart) {
	head := source.Safe(p.Part)
	columns := []string{"", "weigh"}
	if p.Lots > 1 {
		head += fmt.Sprintf(", %d mixes", p.Lots)
		columns = append(columns, "each mix")
	}
	columns = append(columns, "of flour", "")
	rows := [][]string{columns}
	for _, r := range p.Rows {
		row := []string{source.Safe(r.Name), r.Weigh}
		if p.Lots > 1 {
			row = append(row, r.Lot)
		}
		rows = append(rows, append(row, r.Share, source.Safe(r.Note)))
	}
	fmt.Fprintf(t, "%s\n", head)
	t.table(rows)
	t.WriteString("\n")
}

// table prints rows in columns; the last column is wrapped
// below itself.
func (t *text) table(rows [][]string) {
	var wide []int
	for _, row := range rows {
		for k, cell := range row[:len(row)-1] {
			for len(wide) <= k {
				wide = append(wide, 0)
			}
			wide[k] = max(wide[k], utf8.RuneCountInString(cell))
		}
	}
	for _, row := range rows {
		line := " "
		for k, cell := range row[:len(row)-1] {
			pad := strings.Repeat(" ", wide[k]-utf8.RuneCountInString(cell))
			if k == 0 {
				line += " " + cell + pad + " "
			} else {
				line += " " + pad + cell + " "
			}
		}
		if row[len(row)-1] == "" {
			t.WriteString(strings.TrimRight(line, " ") + "\n")
			continue
		}
		t.Paragraph(row[len(row)-1], line+" ", strings.Repeat(" ", len([]rune(line))+1))
	}
}

// Rewritten says that a file is written.
func Rewritten(w io.Writer, file string) error {
	_, err := fmt.Fprintf(w, "%s is written.\n", source.Safe(file))
	return err
}
