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

// Sides names the two files of a comparison, and the formulas that only
// one of them has.
type Sides struct {
	A, B         string
	OnlyA, OnlyB []string
}

// Compare prints the prelude and the formulas side by side, part by
// part, with the findings gained and lost.
func Compare(w io.Writer, run *finding.Run, list []finding.Comparison, sides Sides,
	o report.Options) error {
	return write(w, run, o, func(t *text) {
		for i := range list {
			t.comparison(&list[i], sides)
		}
		for _, name := range sides.OnlyA {
			t.Paragraph(fmt.Sprintf("%q stands in A only.", source.Safe(name)), "", "")
		}
		for _, name := range sides.OnlyB {
			t.Paragraph(fmt.Sprintf("%q stands in B only.", source.Safe(name)), "", "")
		}
	})
}

func (t *text) comparison(c *finding.Comparison, sides Sides) {
	name := source.Safe(c.A)
	if c.A != c.B {
		name += " and " + source.Safe(c.B)
	}
	fmt.Fprintf(t, "%s\n  A: %s\n  B: %s\n\n", t.Bold(name), source.Safe(sides.A),
		source.Safe(sides.B))
	for _, p := range c.Parts {
		t.comparedPart(p)
	}
	t.moved("Gained in B", c.Gained)
	t.moved("Lost from A", c.Lost)
	if len(c.Gained)+len(c.Lost) == 0 {
		t.WriteString("The same findings in both.\n\n")
	}
}

func (t *text) comparedPart(p finding.ComparedPart) {
	name := p.Kind + " \"" + source.Safe(p.A) + "\""
	switch {
	case p.A == "":
		name = p.Kind + " \"" + source.Safe(p.B) + "\", in B only"
	case p.B == "":
		name += ", in A only"
	case p.A != p.B:
		name += ", in B \"" + source.Safe(p.B) + "\""
	}
	fmt.Fprintf(t, "%s, %% of the %s\n", name, p.Of)
	t.row(" ", "", "A", "B")
	for _, r := range p.Ingredients {
		t.row(differs(r.A, r.B), source.Safe(r.Name), r.A, r.B)
	}
	if len(p.Figures) > 0 {
		t.WriteString("\n")
	}
	for _, r := range p.Figures {
		t.row(differs(r.A, r.B), r.Name, r.A, r.B)
	}
	if len(p.Steps) > 0 {
		t.WriteString("\n  Steps that differ\n")
	}
	for _, d := range p.Steps {
		for i, line := range d.Old {
			if line != "" {
				t.Verbatim(fmt.Sprintf("  A %3d  %s", d.OldLine+i, source.Safe(line)))
			}
		}
		for i, line := range d.New {
			if line != "" {
				t.Verbatim(fmt.Sprintf("  B %3d  %s", d.NewLine+i, source.Safe(line)))
			}
		}
	}
	t.WriteString("\n")
}

// differs is the sign of a row: a star where its figures differ.
func differs(a, b string) string {
	if a != b {
		return "*"
	}
	return " "
}

// row prints a sign, a name and two figures.
func (t *text) row(sign, name, a, b string) {
	show := func(s string) string {
		if s == "" {
			return "-"
		}
		return s
	}
	pad := func(s string, n int) string {
		return s + strings.Repeat(" ", max(0, n-utf8.RuneCountInString(s)))
	}
	t.WriteString(strings.TrimRight(fmt.Sprintf("%s %s  %s  %s", sign, pad(name, 26),
		pad(show(a), 18), show(b)), " ") + "\n")
}

// moved lists the findings that one side has and the other has not.
func (t *text) moved(head string, list []*finding.Finding) {
	if len(list) == 0 {
		return
	}
	fmt.Fprintf(t, "%s\n", t.Bold(head))
	for _, f := range list {
		t.Paragraph(fmt.Sprintf("%s, %s: %s", source.Safe(report.FileLine(f.Place)),
			source.Safe(f.Subject), f.Rule),
			"  "+t.Word(f)+" ", "         ")
	}
	t.WriteString("\n")
}
