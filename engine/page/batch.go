package page

import (
	"fmt"
	"io"

	"forebake/engine/finding"
	"forebake/engine/report"
	"forebake/engine/source"
)

// Batches prints batches side by side: what each says of itself, what
// was read and noted at each step, the marks of the tasting.
func Batches(w io.Writer, run *finding.Run, list []finding.Batches, o report.Options) error {
	return write(w, run, o, func(t *text) {
		for _, b := range list {
			t.batches(b)
		}
		for _, n := range finding.OneLine(run.Notices) {
			t.Paragraph(source.Safe(n), "", "  ")
		}
	})
}

func (t *text) batches(b finding.Batches) {
	fmt.Fprintf(t, "%s\n", t.Bold(source.Safe(b.Formula)))
	for _, h := range b.Heads {
		about := h.Date
		for _, s := range []string{h.Size, h.Room} {
			if s != "" {
				about += ", " + source.Safe(s)
			}
		}
		t.Paragraph(fmt.Sprintf("batch %d: %s", h.Number, about), "  ", "    ")
	}
	t.WriteString("\n")
	for _, s := range b.Steps {
		changed := ""
		if s.Changed {
			changed = " (changed since)"
		}
		fmt.Fprintf(t, "%3d %s, %s%s\n", s.Number, source.Safe(s.Step),
			source.Safe(s.Part), changed)
		t.cells(b, s.Cells)
	}
	for _, rows := range [][]finding.BatchRow{b.Marks, b.Notes} {
		for _, r := range rows {
			fmt.Fprintf(t, "    %s\n", source.Safe(r.Name))
			t.cells(b, r.Cells)
		}
	}
	if len(b.Steps)+len(b.Marks)+len(b.Notes) == 0 {
		t.WriteString("  Nothing is written down yet.\n")
	}
	t.WriteString("\n")
}

// cells prints one line a batch. A star marks the lines that differ.
func (t *text) cells(b finding.Batches, cells []string) {
	for i, c := range cells {
		if c == "" {
			c = "-"
		}
		sign := " "
		if len(cells) == 2 && cells[0] != cells[1] {
			sign = "*"
		}
		head := fmt.Sprintf("  %s   batch %d  ", sign, b.Heads[i].Number)
		t.Paragraph(source.Safe(c), head, "               ")
	}
}
