package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/fatih/color"

	"forebake/engine/finding"
	"forebake/engine/layout"
	"forebake/engine/source"
)

// palette gives each level its colour.
type palette struct{ stop, risk, note, unsure, bold, faint *color.Color }

func newPalette(on bool) palette {
	p := palette{
		stop: color.New(color.FgRed, color.Bold), risk: color.New(color.FgYellow,
			color.Bold), note: color.New(color.FgBlue),
		unsure: color.New(
			color.FgMagenta,
		), bold: color.New(color.Bold), faint: color.New(color.Faint),
	}
	for _, c := range []*color.Color{p.stop, p.risk, p.note, p.unsure, p.bold, p.faint} {
		if on {
			c.EnableColor()
		} else {
			c.DisableColor()
		}
	}
	return p
}

func (p palette) level(f *finding.Finding) *color.Color {
	switch f.Word() {
	case "stop":
		return p.stop
	case "risk":
		return p.risk
	case "note":
		return p.note
	}
	return p.unsure
}

// text prints for people: the prelude, then each formula with its
// findings, then the totals.
type text struct {
	strings.Builder
	palette
	width int
	all   bool // print every formula whole
	each  bool // print each unsure answer by itself
	out   io.Writer

	head Head
	any  bool // something was found
}

func init() { register(Format{"text", ".txt", false, textMends, newText, endsInTotals}) }

func newText(out io.Writer, o Options) Writer { return textOf(out, o) }

func textOf(out io.Writer, o Options) *text {
	return &text{palette: newPalette(o.Colour), width: o.Columns(), all: o.All, each: o.Each,
		out: out}
}

func (t *text) Begin(h Head) { t.head = h }

func (t *text) End() error {
	_, err := io.WriteString(t.out, layout.Fold(t.String(), t.width))
	return err
}

func (t *text) heading(s string) { t.WriteString(t.bold.Sprint(s) + "\n\n") }

// Cautions prints the short lines of all cautions.
func (t *text) Cautions(c *Cautions) {
	list := c.short()
	if len(list) == 0 {
		return
	}
	t.paragraph("(whole, with sources: forebake cautions)", t.bold.Sprint("Cautions")+" ", "  ")
	pack := ""
	for _, one := range list {
		if one.pack != pack {
			pack = one.pack
			t.WriteString("\n" + t.bold.Sprint(source.Safe(finding.AddedBy(pack))) + "\n")
		}
		t.paragraph(one.text, "! ", "  ")
	}
	t.WriteString("\n")
}

// wholeCautions prints every caution with its details and source.
func (t *text) wholeCautions(c *Cautions) {
	list := c.merged()
	if len(list) == 0 {
		return
	}
	t.heading("Cautions")
	pack := ""
	for _, one := range list {
		if one.Pack != pack {
			pack = one.Pack
			t.WriteString("\n")
			t.heading(source.Safe(finding.AddedBy(pack)))
		}
		t.paragraph(source.Safe(one.Text), "  ! ", "    ")
		for _, d := range one.details {
			line, named := c.says(d, source.Safe)
			switch {
			case named:
				t.paragraph(line, "    ", "      ")
			case line != "":
				t.paragraph(line, "    ", "    ")
			}
		}
		t.paragraph("Source: "+source.Safe(one.Source)+".", "    ", "    ")
	}
	t.WriteString("\n")
}

// unreadHeading heads the files that could not be read.
const unreadHeading = "Not read, and so not checked"

func (t *text) Unread(list source.Problems) {
	if len(list) == 0 {
		return
	}
	t.heading(unreadHeading)
	for _, p := range list {
		t.paragraph(t.stop.Sprint("unread")+" "+p.String()+".", "  ", indent)
	}
	t.WriteString("\n")
}

func (t *text) SetAside(list []*finding.Finding) {
	if len(list) == 0 {
		return
	}
	t.heading("Food safety, set aside by the house")
	for _, f := range list {
		word := t.stop.Sprint("waived " + f.Level.String())
		t.paragraph(fmt.Sprintf("%s %s (%s), %s", word, source.Safe(f.Formula),
			source.Safe(FileLine(f.Place)), source.Safe(f.Subject)), "  ", indent)
		t.body(f, false)
		t.paragraph(fmt.Sprintf("Set aside at %s%s, because %s.", source.Safe(FileLine(f.By)),
			source.Safe(untilText(f)), source.Safe(Reason(f.Because))), indent, indent)
		t.paragraph("Rule: "+f.Rule, indent, indent)
		t.WriteString("\n")
	}
}

func (t *text) Unchecked(list []finding.Unchecked) {
	for _, u := range list {
		word := t.stop.Sprint(UpperFirst(source.Safe(u.Text())))
		t.paragraph(word+" ("+source.Safe(FileLine(u.Place))+").", "", "  ")
		t.WriteString("\n")
	}
}

func (t *text) Loosened(list []finding.Loosened) {
	if len(list) == 0 {
		return
	}
	t.heading("Food safety, made less strict by the house")
	for _, l := range list {
		t.paragraph(fmt.Sprintf("%s: %s is %s, and was %s (%s), because %s.", l.Rule,
			source.Safe(l.What), l.To, l.From, source.Safe(FileLine(l.Place)),
			source.Safe(Reason(l.Because))), "  ", "    ")
	}
	t.WriteString("\n")
}

// Findings prints every formula with its findings, or for many formulas
// a summary and the worst ones.
func (t *text) Findings(f *Found) {
	t.any = len(f.All()) > 0
	formulas, houses, clear := f.Groups()
	if isSummed(formulas, clear) && !t.all {
		t.summary(formulas)
	} else {
		for _, g := range formulas {
			t.group(g, len(g.List))
		}
	}
	for _, g := range houses {
		t.WriteString(t.bold.Sprint(source.Safe(g.File)) + ": " + tally(g.List) + "\n\n")
		t.findings(g.List)
	}
	if n := len(clear); n > 0 {
		names := clear
		if n > mostWhole && !t.all {
			names = clear[:mostWhole]
		}
		for i, name := range names {
			names[i] = source.Safe(name)
		}
		text := t.bold.Sprint("Nothing found in ") + Count(n, "formula") + ": " +
			strings.Join(names, "; ")
		if n > len(names) {
			text += fmt.Sprintf("; and %d more", n-len(names))
		}
		t.paragraph(text+".", "", "  ")
		t.WriteString("\n")
	}
}

// mostWhole is the most formulas printed with all their findings. More
// have a summary: summaryLines of them, and detailLines findings of
// the worst.
const (
	mostWhole    = 3
	summaryLines = 10
	detailLines  = 3
)

// isSummed reports whether there are too many formulas to print whole.
func isSummed(formulas []finding.Group, clear []string) bool {
	return len(formulas)+len(clear) > mostWhole
}

// textMends gives the worst formula of a summary, else all.
func textMends(f *Found, o Options) []finding.Group {
	formulas, _, clear := f.Groups()
	if isSummed(formulas, clear) && !o.All {
		return finding.WorstFirst(formulas)[:min(1, len(formulas))]
	}
	return formulas
}

// summary prints one line a formula, worst first, and the worst
// findings of the worst one.
func (t *text) summary(formulas []finding.Group) {
	if len(formulas) == 0 {
		return
	}
	list := finding.WorstFirst(formulas)
	t.group(list[0], detailLines)
	t.WriteString(t.bold.Sprint("By formula, worst first") + "\n")
	t.columns(list[:min(len(list), summaryLines)])
	if n := len(list) - summaryLines; n > 0 {
		fmt.Fprintf(t, "and %s more\n", Count(n, "formula"))
	}
	t.WriteString("All findings: --all, or name one file.\n\n")
}

// leastName is the shortest that a name is cut to.
const leastName = 8

// columns prints a line a formula: place, name and findings, each in a
// column. A place too long for its column is still printed whole: an
// editor follows it.
func (t *text) columns(list []finding.Group) {
	var places, names, tallies int // the columns of each
	for _, g := range list {
		places = max(places, layout.Columns(source.Safe(FileLine(g.Place))))
		names = max(names, layout.Columns(source.Safe(g.Name)))
		tallies = max(tallies, layout.Columns(tally(g.List)))
	}
	room := t.width - tallies - 4
	places = max(0, min(places, room-leastName))
	names = min(names, max(leastName, room-places))
	for _, g := range list {
		name := t.bold.Sprintf("%-*s", names, fit(source.Safe(g.Name), names))
		t.paragraph(tally(g.List),
			fmt.Sprintf("%-*s  %s  ", places, source.Safe(FileLine(g.Place)), name), "  ")
	}
}

// fit cuts a text to the columns, with three dots.
func fit(s string, room int) string {
	if r := []rune(s); len(r) > room {
		return string(r[:max(0, room-3)]) + "..."
	}
	return s
}

// group prints a formula with at most so many of its most
// serious findings.
func (t *text) group(g finding.Group, most int) {
	t.paragraph(t.faint.Sprintf("(%s)", source.Safe(g.File))+": "+tally(g.List),
		t.bold.Sprint(source.Safe(g.Name))+"  ", "  ")
	t.couldHurt(g.List)
	t.WriteString("\n")
	list := finding.Serious(g.List)
	t.findings(list[:min(most, len(list))])
	if n := len(list) - most; n > 0 {
		t.paragraph(
			fmt.Sprintf("%d more in it: forebake check %s", n, source.Safe(g.File)),
			"  ",
			"  ",
		)
		t.WriteString("\n")
	}
}

func (t *text) Assumed(list []finding.Assumptions) {
	if line := finding.AssumedLine(list); line != "" {
		t.paragraph(t.faint.Sprint(source.Safe(line)), "", "  ")
	}
}

func (t *text) Notices(list []string) {
	for _, n := range list {
		first, others, _ := strings.Cut(n, "\n")
		t.paragraph(source.Safe(first), "", "  ")
		for line := range strings.Lines(others) {
			t.paragraph(source.Safe(strings.TrimSuffix(line, "\n")), "  ", "    ")
		}
	}
}

func (t *text) Totals(sum finding.Totals) {
	if t.any {
		t.paragraph("forebake why RULE"+source.Safe(t.head.House)+" tells a rule's source and "+
			"limits, and how a house changes them.", "", "")
	}
	t.paragraph(totals(sum)+".", "", "  ")
}

// couldHurt names a formula's food-safety findings in their own
// line, first.
func (t *text) couldHurt(list []*finding.Finding) {
	var parts []string
	for _, f := range finding.Hurtful(list) {
		parts = append(parts, fmt.Sprintf("%s %s (%s)", f.Word(),
			source.Safe(FileLine(f.Place)), f.Rule))
	}
	if len(parts) > 0 {
		t.paragraph(t.stop.Sprint("Could hurt someone:")+" "+strings.Join(parts, ", ")+".", "",
			"  ")
	}
}

func (t *text) findings(list []*finding.Finding) {
	var flagged, open, waived []*finding.Finding
	for _, f := range finding.Serious(list) {
		switch f.Answer {
		case finding.Unsure, finding.Assumed:
			open = append(open, f)
		case finding.Waived:
			waived = append(waived, f)
		default:
			flagged = append(flagged, f)
		}
	}
	reasoned := map[string]bool{} // rules whose reason was given
	for len(flagged) > 0 {
		f, also, rest := flagged[0], []*finding.Finding(nil), []*finding.Finding(nil)
		for _, g := range flagged[1:] {
			if !t.each && f.WaitsAs(g) {
				also = append(also, g)
			} else {
				rest = append(rest, g)
			}
		}
		t.finding(f, reasoned[f.Rule], also)
		reasoned[f.Rule], flagged = true, rest
	}
	t.unsure(open)
	t.waived(waived)
}

// waived prints a house's waived findings, one line each; those of food
// safety are whole in the prelude.
func (t *text) waived(list []*finding.Finding) {
	for _, f := range list {
		says := fmt.Sprintf("set aside at %s%s, because %s", FileLine(f.By), untilText(f),
			Reason(f.Because))
		if f.Safety {
			says = "food safety, set aside at " + FileLine(f.By) + "; see above"
		}
		t.paragraph(fmt.Sprintf(
			"%s %s, %s: %s, %s.",
			t.palette.unsure.Sprint("waived"),
			source.Safe(
				FileLine(f.Place),
			),
			source.Safe(f.Subject),
			f.Rule,
			source.Safe(says),
		), "  ",
			indent)
	}
	if len(list) > 0 {
		t.WriteString("\n")
	}
}

// tally counts a formula's findings: "1 stop, 3 risk".
func tally(list []*finding.Finding) string {
	counts := map[string]int{}
	for _, f := range list {
		counts[f.Word()]++
	}
	var parts []string
	for _, w := range finding.Words {
		if counts[w] > 0 {
			parts = append(parts, fmt.Sprintf("%d %s", counts[w], w))
		}
	}
	return strings.Join(parts, ", ")
}

const indent = "        "

// finding prints one finding, and shortly those that wait for the same
// reading. reasoned reports whether an earlier one gave the rule's reason.
func (t *text) finding(f *finding.Finding, reasoned bool, also []*finding.Finding) {
	t.paragraph(fmt.Sprintf("%s, %s", source.Safe(FileLine(f.Place)), source.Safe(f.Subject)),
		"  "+t.level(f).Sprintf("%-5s", f.Word())+" ", indent)
	t.body(f, reasoned)
	t.paragraph("Rule: "+f.Rule, indent, indent)
	for _, g := range also {
		t.paragraph(fmt.Sprintf("The same wait also breaks: %s %s. %s",
			t.level(g).Sprint(g.Word()), g.Rule, source.Safe(g.Text)), indent, indent)
	}
	t.WriteString("\n")
}

// body prints a finding's text, doubt, reason, figures and mends.
func (t *text) body(f *finding.Finding, reasoned bool) {
	t.paragraph(source.Safe(f.Text), indent, indent)
	if f.Doubt {
		t.paragraph(source.Safe(doubt(f)), indent, indent)
	}
	if !reasoned {
		t.paragraph("Why: "+source.Safe(f.Why), indent, indent)
	}
	if figures := figures(f); figures != "" {
		t.paragraph("Figures: "+figures+".", indent, indent)
	}
	for _, m := range f.Mends {
		t.paragraph("Mend: "+source.Safe(m.Text)+" ("+m.Trust+")", indent, indent)
	}
}

// figures lists a finding's deciding figures: numbers, limits, and
// texts. A plain yes or no is left out: the finding's text says it.
func figures(f *finding.Finding) string {
	var parts, limits []string
	for i, g := range f.Figures {
		switch {
		case slices.Contains(f.Lesser, i), slices.ContainsFunc(f.Figures[:i], g.Restates):
		case g.Shown == "unknown": // the finding says what is missing
		case g.Kind == "limit":
			limits = append(limits, "limit "+g.Label+" "+g.Shown)
		case g.Numeric:
			shown := g.Shown
			if g.Error != "" && g.Error != strings.TrimPrefix(shown, "about ") {
				shown += " (" + g.Error + ")"
			}
			parts = append(parts, g.Label+" "+shown)
		case g.List == nil && g.Shown != "yes" && g.Shown != "no":
			parts = append(parts, g.Label+" "+source.Safe(g.Shown))
		}
	}
	return strings.Join(append(parts, limits...), "; ")
}

// maxWaiting bounds the rules named for a cause.
const maxWaiting = 3

// waitingLine says how many answers wait for a cause, and names some rules.
func waitingLine(w finding.Waiting) string {
	waits := "answers wait"
	if w.Answers == 1 {
		waits = "answer waits"
	}
	rules := strings.Join(w.Rules[:min(len(w.Rules), maxWaiting)], ", ")
	if more := len(w.Rules) - maxWaiting; more > 0 {
		rules += fmt.Sprintf(" and %d more", more)
	}
	if w.Assumed {
		return fmt.Sprintf("%d more clear by that (%s)", w.Answers, rules)
	}
	return fmt.Sprintf("%d %s for it (%s)", w.Answers, waits, rules)
}

// withinErrorLine tells the answers within the models' error in one line.
func withinErrorLine(w *finding.Within) string {
	s := fmt.Sprintf("%d answers lie within the models' error: %s", w.Answers,
		strings.Join(w.Rules, ", "))
	if w.Settle != "" && w.Settles > 1 {
		s += fmt.Sprintf("; for %d of them, %s", w.Settles, w.Settle)
	}
	return s
}

// unsure prints an entry for each thing that answers wait for, what
// settles most first, and one for all that only the models leave open.
func (t *text) unsure(list []*finding.Finding) {
	open := finding.OpenOf(list, t.each)
	for _, w := range open.Told {
		t.paragraph(fmt.Sprintf("%s, %s: %s.", source.Safe(FileLine(w.Place)), source.Safe(w.Text),
			waitingLine(w)), "  "+t.palette.unsure.Sprint("unsure")+" ", indent)
	}
	if open.Within != nil {
		t.paragraph(source.Safe(withinErrorLine(open.Within))+" (each: --all).",
			"  "+t.palette.unsure.Sprint("unsure")+" ", indent)
	}
	if len(list) > 0 {
		t.WriteString("\n")
	}
}

// UpperFirst begins a text with a capital letter.
func UpperFirst(s string) string {
	if s == "" {
		return s
	}
	return strings.ToUpper(s[:1]) + s[1:]
}

// paragraph wraps a text to the width, at the same words with and
// without colour. Words are never cut.
func (t *text) paragraph(s, first, rest string) {
	line := first
	empty := true
	for _, word := range strings.Fields(s) {
		if !empty && layout.Columns(line)+1+layout.Columns(word) > t.width {
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
