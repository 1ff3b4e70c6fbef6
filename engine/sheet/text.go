package sheet

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/report"
)

func writeText(w io.Writer, p *Page) error {
	t := report.NewPage(w, report.Options{})
	t.WriteString(textMark + "\nCautions and allergens\n")
	for _, c := range p.Prelude.Short {
		t.Paragraph(packNote(c)+c.Text, "! ", "  ")
	}
	textList(t, "Not checked", p.Prelude.Left)
	if len(p.Prelude.SetAside) > 0 {
		t.WriteString("\nFood safety, set aside by the house\n")
		textFindings(t, p.Prelude.SetAside)
	}
	textList(t, "Food safety, made less strict by the house", p.Prelude.Less)
	for i := range p.Formulas {
		textFormula(t, &p.Formulas[i])
	}
	t.WriteString("\nThe cautions, whole, with their sources\n")
	for _, c := range p.Prelude.Whole {
		t.Paragraph(packNote(c)+c.Text, "! ", "  ")
		t.Paragraph("Source: "+c.Source+".", "  ", "  ")
	}
	fmt.Fprintf(t, "\nforebake %s, from %s. It warns; it never proves a food safe.\n", p.Version,
		p.File)
	return t.End()
}

func textList(t *report.Page, head string, lines []string) {
	if len(lines) == 0 {
		return
	}
	t.WriteString("\n" + head + "\n")
	for _, l := range lines {
		t.Paragraph(l, "  ", "    ")
	}
}

func textFindings(t *report.Page, list []Finding) {
	for _, f := range list {
		because := ""
		if f.Because != "" {
			because = " Waived because " + f.Because + "."
		}
		t.Paragraph(fmt.Sprintf("%s, %s: %s (%s)%s", f.Word, f.Where, f.Text, f.Rule, because),
			"  ", "    ")
	}
}

func textFormula(t *report.Page, f *Formula) {
	fmt.Fprintf(t, "\n%s\n", f.Name)
	if about := f.facts(); about != "" {
		t.Paragraph(about, "  ", "  ")
	}
	t.WriteString("  date ________  batch ________  room ____ C  initials ____\n")
	if len(f.Open) > 0 {
		t.WriteString("\nOpen findings\n")
		textFindings(t, f.Open)
	}
	if len(f.Waived) > 0 {
		t.WriteString("\nWaived by the house\n")
		textFindings(t, f.Waived)
	}
	for _, p := range f.Parts {
		fmt.Fprintf(t, "\n%s: %s, %% of the %s\n", p.Kind, p.Name, p.Of)
		for _, in := range p.Ingredients {
			t.WriteString(strings.TrimRight(fmt.Sprintf("  %16s  %8s  %6s  %s", in.weighed(),
				in.Percent, in.Temp, in.named()), " ") + "\n")
		}
		if p.Total != "" {
			fmt.Fprintf(t, "  %16s  %8s  %6s  all\n", p.Total, "", "")
		}
		t.WriteString("\n")
		for _, s := range p.Steps {
			t.Paragraph(join(", ", s.Does, s.How), fmt.Sprintf("  %2d  %s  ", s.Number, s.Clock),
				"      ")
			if asks := s.checks(); asks != "" {
				t.Paragraph(asks, "      ", "      ")
			}
			t.WriteString("      [temperature    ] [rise      ] [time      ] [initials    ]\n")
		}
		for _, c := range []*Curve{p.Temperature, p.Rise} {
			if c == nil {
				continue
			}
			fmt.Fprintf(t, "\n  %s, %s, at the end of each step\n", c.Title, c.Unit)
			for _, r := range c.Rows {
				t.Paragraph(join("; surface ", r.First, r.Second),
					fmt.Sprintf("  %s  %s: ", r.Clock,
						r.Step), "      ")
			}
		}
	}
}
