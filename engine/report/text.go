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
	t.setAside(run)
	t.lessStrict(run)
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
		t.WriteString(t.head.Sprint(source.Safe(f.Name)) + t.faint.Sprintf("  (%s)", source.Safe(fileName(f.Place))) + ": " + tally(list) + "\n")
		t.couldHurt(list)
		t.WriteString("\n")
		t.findings(list)
	}
	t.houses(run)
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

// Cautions prints the cautions of some formulas by themselves, for what stands under them.
func Cautions(w io.Writer, list []*finding.Caution, formulas int, o Options) error {
	t := &text{palette: newPalette(o.Colour), width: o.Width}
	if t.width == 0 {
		t.width = 96
	}
	t.cautions(&Run{Cautions: list, Formulas: make([]Formula, formulas)})
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

// setAside prints the food-safety findings that a house has waived, whole, before everything else that was found.
func (t *text) setAside(run *Run) {
	first := true
	for _, f := range run.Findings {
		if f.Answer != finding.Waived || !f.Safety {
			continue
		}
		if first {
			t.WriteString(t.head.Sprint("Food safety, set aside by the house") + "\n\n")
			first = false
		}
		t.paragraph(fmt.Sprintf("%s %s (%s), line %d, %s", t.stop.Sprint("waived "+f.Level.String()), source.Safe(f.Formula), source.Safe(fileName(f.Place)), f.Place.Line(), source.Safe(f.Subject)), "  ", indent)
		t.body(f, false)
		t.paragraph(fmt.Sprintf("Set aside at %s%s, because %s.", source.Safe(who(f.By)), source.Safe(until(f)), source.Safe(reason(f.Because))), indent, indent)
		t.paragraph("Rule: "+f.Rule, indent, indent)
		t.WriteString("\n")
	}
}

// lessStrict prints the food-safety packs that a house leaves out, and the settings that make food-safety rules less strict.
func (t *text) lessStrict(run *Run) {
	for _, u := range run.Unchecked {
		t.paragraph(t.stop.Sprint(upperFirst(source.Safe(u.Text())))+" ("+source.Safe(who(u.Place))+").", "", "  ")
		t.WriteString("\n")
	}
	if len(run.Loosened) == 0 {
		return
	}
	t.WriteString(t.head.Sprint("Food safety, made less strict by the house") + "\n\n")
	for _, l := range run.Loosened {
		t.paragraph(fmt.Sprintf("%s: %s is %s, and was %s (%s), because %s.", l.Rule, source.Safe(l.What), l.To, l.From, source.Safe(who(l.Place)), source.Safe(reason(l.Because))), "  ", "    ")
	}
	t.WriteString("\n")
}

// houses prints what was found in house files: it belongs to no formula.
func (t *text) houses(run *Run) {
	groups := map[string][]*finding.Finding{}
	var names []string
	for _, f := range run.Findings {
		if name := fileName(f.Place); f.Formula == "" {
			if groups[name] == nil {
				names = append(names, name) // sorted, as the findings are
			}
			groups[name] = append(groups[name], f)
		}
	}
	for _, name := range names {
		t.WriteString(t.head.Sprint(source.Safe(name)) + ": " + tally(groups[name]) + "\n\n")
		t.findings(groups[name])
	}
}

// couldHurt names the food-safety findings of a formula in a line of their own, so that nobody has to look for them among the others.
func (t *text) couldHurt(list []*finding.Finding) {
	var parts []string
	for _, f := range list {
		if f.Safety && f.Answer == finding.Flagged && f.Level != finding.Note {
			parts = append(parts, fmt.Sprintf("%s line %d (%s)", word(f), f.Place.Line(), f.Rule))
		}
	}
	if len(parts) > 0 {
		t.paragraph(t.stop.Sprint("Could hurt someone:")+" "+strings.Join(parts, ", ")+".", "", "  ")
	}
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
	var flagged, open, waived []*finding.Finding
	for _, f := range list {
		switch f.Answer {
		case finding.Unsure:
			open = append(open, f)
		case finding.Waived:
			waived = append(waived, f)
		default:
			flagged = append(flagged, f)
		}
	}
	told := map[string]bool{} // rules whose reason was given
	for _, f := range flagged {
		t.finding(f, told[f.Rule])
		told[f.Rule] = true
	}
	t.unsure(open)
	t.waived(waived)
}

// waived prints what a house has set aside, one line each; what is of food safety stands whole above.
func (t *text) waived(list []*finding.Finding) {
	for _, f := range list {
		says := fmt.Sprintf("set aside at %s%s, because %s", who(f.By), until(f), reason(f.Because))
		if f.Safety {
			says = "food safety, set aside at " + who(f.By) + "; see above"
		}
		t.paragraph(fmt.Sprintf("%s line %d, %s: %s, %s.", t.palette.unsure.Sprint("waived"), f.Place.Line(), source.Safe(f.Subject), f.Rule, source.Safe(says)), "  ", indent)
	}
	if len(list) > 0 {
		t.WriteString("\n")
	}
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
	t.body(f, told)
	t.paragraph("Rule: "+f.Rule, indent, indent)
	t.WriteString("\n")
}

// body prints what a finding says, what is in doubt about it, why, and what it rests on.
func (t *text) body(f *finding.Finding, told bool) {
	t.paragraph(source.Safe(f.Text), indent, indent)
	if f.Doubt {
		t.paragraph(source.Safe(doubt(f)), indent, indent)
	}
	if !told {
		t.paragraph("Why: "+source.Safe(f.Why), indent, indent)
	}
	if figures := figures(f); figures != "" {
		t.paragraph("Figures: "+figures+".", indent, indent)
	}
	for _, m := range f.Mends {
		t.paragraph("Mend: "+source.Safe(m.Text)+" ("+m.Trust+")", indent, indent)
	}
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

// paragraph wraps a text to the width, coloured or not at the same words. Words are never cut.
func (t *text) paragraph(s, first, rest string) {
	line := first
	empty := true
	for _, word := range strings.Fields(s) {
		if !empty && room(line)+1+room(word) > t.width {
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

// room counts the letters of a text; the codes of colours take none.
func room(s string) int {
	n, code := 0, false
	for _, r := range s {
		switch {
		case code:
			code = r != 'm'
		case r == '\x1b':
			code = true
		default:
			n++
		}
	}
	return n
}
