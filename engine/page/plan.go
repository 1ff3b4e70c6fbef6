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

// Plan prints the clock of some formulas: the sums, every step day by
// day, work for the day before, and steps that need two people or fall
// in the night.
func Plan(w io.Writer, run *finding.Run, p *finding.Plan, o report.Options) error {
	return write(w, run, o, func(t *text) {
		fmt.Fprintf(t, "%s\n\n", t.Bold(p.Head))
		for _, f := range p.Formulas {
			about := fmt.Sprintf("%s: begins %s, ready %s. Hands-on %s; standing, chilling and "+
				"baking %s.", source.Safe(f.Name), f.Begins, f.Ready, f.HandsOn, f.Waiting)
			if f.Sooner != "" {
				about += " It is ready " + f.Sooner +
					" sooner, since the oven or the mixer is taken then."
			}
			t.Paragraph(about, "  ", "    ")
		}
		t.WriteString("\n")
		for _, d := range p.Days {
			t.planDay(d, len(p.Formulas) > 1)
		}
		t.list("A day before can be made", p.Early)
		t.list("Two pairs of hands", p.Hands)
		for _, n := range p.Nights {
			t.planNight(n, p.Night)
		}
		t.list("Hand work without a time, which the clock counts as none", p.Untimed)
	})
}

// list prints lines under a heading, and nothing where there are none.
func (t *text) list(head string, lines []string) {
	if len(lines) == 0 {
		return
	}
	fmt.Fprintf(t, "%s\n", t.Bold(head))
	for _, l := range lines {
		t.Paragraph(source.Safe(l), "  ", "    ")
	}
	t.WriteString("\n")
}

// planDay prints the steps of a day as a table, its notes below each.
func (t *text) planDay(d finding.PlanDay, several bool) {
	fmt.Fprintf(t, "%s\n", t.Bold(d.Name))
	rows := make([][5]string, len(d.Steps))
	var width [5]int
	for i, s := range d.Steps {
		work := "waits"
		if s.HandsOn {
			work = "hands"
		}
		if s.Tool != "" {
			work += ", " + s.Tool
		}
		of := source.Safe(s.Part)
		if several {
			of += ", " + source.Safe(s.Formula)
		}
		rows[i] = [5]string{s.Clock, fmt.Sprint(s.Number), source.Safe(s.Step), work, of}
		for k, cell := range rows[i] {
			width[k] = max(width[k], utf8.RuneCountInString(cell))
		}
	}
	pad := func(s string, n int) string {
		return s + strings.Repeat(" ", max(0, n-utf8.RuneCountInString(s)))
	}
	for i, r := range rows {
		head := fmt.Sprintf("  %s  %s%s  %s  %s  ", pad(r[0], width[0]),
			strings.Repeat(" ", width[1]-len(r[1])), r[1], pad(r[2], min(width[2], 30)),
			pad(r[3], width[3]))
		t.WriteString(strings.TrimRight(head+r[4], " ") + "\n")
		rest := strings.Repeat(" ", width[0]+width[1]+6)
		for _, n := range d.Steps[i].Notes {
			t.Paragraph(source.Safe(n)+".", rest, rest+"  ")
		}
	}
	t.WriteString("\n")
}

// planNight says who is wanted by night, and what avoids it.
func (t *text) planNight(n finding.PlanNight, night string) {
	fmt.Fprintf(t, "%s\n", t.Bold("By night, "+night))
	t.Paragraph(fmt.Sprintf("%s wants somebody at %s: %s.", source.Safe(n.Formula), n.At,
		source.Safe(n.Step)), "  ", "    ")
	switch {
	case n.Offer == "":
		t.Paragraph("No single chill avoids it.", "  ", "    ")
	default:
		t.Paragraph("It can be avoided by "+source.Safe(n.Offer)+".", "  ", "    ")
		t.Paragraph("Write: "+source.Safe(n.Write), "  ", "    ")
		t.Paragraph(n.New, "  ", "    ")
	}
	if n.Later != "" {
		t.Paragraph("Without one, ready at "+n.Later+" is the soonest that wants nobody by night.",
			"  ", "    ")
	}
	t.WriteString("\n")
}
