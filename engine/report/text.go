package report

import (
	"fmt"
	"io"
	"sort"
	"strings"

	"github.com/fatih/color"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// palette colours the words of a level; without colour each is the word itself.
type palette struct{ stop, risk, note, unsure, head, faint *color.Color }

func newPalette(on bool) palette {
	p := palette{
		stop: color.New(color.FgRed, color.Bold), risk: color.New(color.FgYellow, color.Bold), note: color.New(color.FgBlue),
		unsure: color.New(color.FgMagenta), head: color.New(color.Bold), faint: color.New(color.Faint),
	}
	for _, c := range []*color.Color{p.stop, p.risk, p.note, p.unsure, p.head, p.faint} {
		if on {
			c.EnableColor()
		} else {
			c.DisableColor()
		}
	}
	return p
}

func (p palette) level(f *finding.Finding) *color.Color {
	switch word(f) {
	case "stop":
		return p.stop
	case "risk":
		return p.risk
	case "note":
		return p.note
	}
	return p.unsure
}

// text prints for people.
type text struct {
	strings.Builder
	palette
	width int
}

// Text prints a run for people: cautions first, then each formula with what was found in it, then the totals.
func Text(w io.Writer, run *Run, o Options) error {
	t := &text{palette: newPalette(o.Colour), width: o.Width}
	if t.width == 0 {
		t.width = 96
	}
	t.cautions(run)
	groups := map[string][]*finding.Finding{}
	for _, f := range run.Findings {
		key := fileName(f.Place) + "\x00" + f.Formula
		groups[key] = append(groups[key], f)
	}
	var clear []string
	for _, f := range run.Formulas {
		list := groups[fileName(f.Place)+"\x00"+f.Name]
		if len(list) == 0 {
			clear = append(clear, source.Safe(f.Name))
			continue
		}
		t.WriteString(t.head.Sprint(source.Safe(f.Name)) + t.faint.Sprintf("  (%s)", source.Safe(fileName(f.Place))) + ": " + tally(list) + "\n\n")
		t.findings(list)
	}
	if len(clear) > 0 {
		t.paragraph(t.head.Sprint("Nothing found in ")+Count(len(clear), "formula")+": "+strings.Join(clear, "; ")+".", "", "  ")
		t.WriteString("\n")
	}
	for _, n := range run.Notices {
		t.paragraph(source.Safe(n), "", "  ")
	}
	if len(run.Findings) > 0 {
		t.paragraph("forebake why RULE tells a rule's source and limits, and how a house changes them.", "", "")
	}
	t.WriteString(totals(run.Totals) + ".\n")
	_, err := io.WriteString(w, t.String())
	return err
}

func (t *text) cautions(run *Run) {
	list := merge(run.Cautions)
	if len(list) == 0 {
		return
	}
	t.WriteString(t.head.Sprint("Cautions") + "\n\n")
	for _, c := range list {
		t.paragraph(source.Safe(c.Text), "  ! ", "    ")
		for _, d := range c.details {
			who := formulasOf(d.formulas, len(run.Formulas))
			switch {
			case d.text == "" && who == "":
			case d.text == "":
				t.paragraph(who+".", "    ", "    ")
			case who == "":
				t.paragraph(source.Safe(d.text), "    ", "    ")
			default:
				t.paragraph(who+": "+source.Safe(d.text), "    ", "      ")
			}
		}
		t.paragraph("Source: "+source.Safe(c.Source)+".", "    ", "    ")
	}
	t.WriteString("\n")
}

// formulasOf names the formulas that a caution is for: all of them, or each; nothing where there is only one.
func formulasOf(names []string, all int) string {
	switch {
	case all == 1:
		return ""
	case len(names) == all:
		return fmt.Sprintf("For all %d formulas", all)
	}
	safe := make([]string, len(names))
	for i, n := range names {
		safe[i] = source.Safe(n)
	}
	return "For " + strings.Join(safe, "; ")
}

func (t *text) findings(list []*finding.Finding) {
	flagged, open := []*finding.Finding(nil), []*finding.Finding(nil)
	for _, f := range list {
		if f.Answer == finding.Unsure {
			open = append(open, f)
		} else {
			flagged = append(flagged, f)
		}
	}
	told := map[string]bool{} // rules whose reason was given
	for _, f := range flagged {
		t.finding(f, told[f.Rule])
		told[f.Rule] = true
	}
	t.unsure(open)
}

// tally counts a formula's findings: "1 stop, 3 risk".
func tally(list []*finding.Finding) string {
	counts := map[string]int{}
	for _, f := range list {
		counts[word(f)]++
	}
	var parts []string
	for _, w := range []string{"stop", "risk", "note", "unsure", "waived"} {
		if counts[w] > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", counts[w], w))
		}
	}
	return strings.Join(parts, ", ")
}

const indent = "        "

// finding prints one finding; its reason only the first time that its rule speaks.
func (t *text) finding(f *finding.Finding, told bool) {
	fmt.Fprintf(t, "  %s line %d, %s\n", t.level(f).Sprintf("%-5s", word(f)), f.Place.Line(), source.Safe(f.Subject))
	t.paragraph(source.Safe(f.Text), indent, indent)
	if !told {
		t.paragraph("Why: "+source.Safe(f.Why), indent, indent)
	}
	if figures := figures(f); figures != "" {
		t.paragraph("Figures: "+figures+".", indent, indent)
	}
	for _, m := range f.Mends {
		t.paragraph("Mend: "+source.Safe(m.Text)+" ("+m.Trust+")", indent, indent)
	}
	t.paragraph("Rule: "+f.Rule, indent, indent)
	t.WriteString("\n")
}

// figures lists what a finding rests on: numbers and limits, and texts where they say something; plain yes and no are in
// the finding's words already.
func figures(f *finding.Finding) string {
	var parts, limits []string
	for _, g := range f.Figures {
		switch {
		case g.Kind == "limit":
			limits = append(limits, "limit "+g.Label+" "+g.Shown)
		case g.Numeric:
			shown := g.Shown
			if g.Error != "" && g.Error != shown {
				shown += " (" + g.Error + ")"
			}
			parts = append(parts, g.Label+" "+shown)
		case g.List == nil && g.Shown != "yes" && g.Shown != "no":
			parts = append(parts, g.Label+" "+source.Safe(g.Shown))
		}
	}
	return strings.Join(append(parts, limits...), "; ")
}

// unsure folds the answers that wait for the same thing: one line says what is missing, the next which rules wait.
func (t *text) unsure(list []*finding.Finding) {
	type group struct {
		first *finding.Finding
		rules []string
	}
	var groups []*group
	byReason := map[string]*group{}
	for _, f := range list {
		key := f.Subject + "\x00" + f.Reason
		g := byReason[key]
		if g == nil {
			g = &group{first: f}
			byReason[key] = g
			groups = append(groups, g)
		}
		g.rules = append(g.rules, f.Rule)
	}
	for _, g := range groups {
		sort.Strings(g.rules)
		fmt.Fprintf(t, "  %s line %d, %s\n", t.palette.unsure.Sprint("unsure"), g.first.Place.Line(), source.Safe(g.first.Subject))
		t.paragraph(upperFirst(source.Safe(g.first.Reason))+".", indent, indent)
		t.paragraph("Cannot be answered until then: "+strings.Join(g.rules, ", ")+" ("+Count(len(g.rules), "rule")+").", indent, indent)
		t.WriteString("\n")
	}
}

func upperFirst(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// paragraph wraps a text to the width. Words are never cut, and colour codes take no room worth counting.
func (t *text) paragraph(s, first, rest string) {
	line := first
	empty := true
	for _, word := range strings.Fields(s) {
		if !empty && len([]rune(line))+1+len([]rune(word)) > t.width {
			t.WriteString(strings.TrimRight(line, " ") + "\n")
			line, empty = rest, true
		}
		if !empty {
			line += " "
		}
		line += word
		empty = false
	}
	t.WriteString(strings.TrimRight(line, " ") + "\n")
}
