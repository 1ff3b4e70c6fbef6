package report

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/layout"
	"forebake/engine/source"
)

// markdownPage prints a run as a review comment. Findings that cannot
// be answered are folded.
type markdownPage struct {
	strings.Builder
	out  io.Writer
	each bool // each unsure answer by itself
	fold int  // how much is folded, from 0: an index of folds

	parts []func() // the parts after the cautions, each to be printed again with more folded
}

func init() { register(Format{"markdown", ".md", true, allMends, newMarkdown, endsInTotals}) }

func newMarkdown(out io.Writer, o Options) Writer { return &markdownPage{out: out, each: o.Each} }

func (p *markdownPage) Begin(Head) {}

// maxMarkdown is the most bytes of a review comment: sites take
// 65,536 characters.
const maxMarkdown = 65_000

// folds are ways to shorten a page, each on top of those before it. The
// first is nothing.
var folds = []string{"", "the reason and the figures of each finding", "notes and unsure answers",
	"the formulas of each caution", "the findings of all formulas but the worst"}

// foldedDetails is how many details of a caution, and names of
// formulas without findings, a folded page gives; foldedFormulas how
// many formulas.
const (
	foldedDetails  = 5
	foldedFormulas = 100
)

// End prints the page, folded as little as makes it fit.
func (p *markdownPage) End() error {
	for p.fold = range folds {
		p.Reset()
		for _, part := range p.parts {
			part()
		}
		if p.Len() <= maxMarkdown {
			break
		}
	}
	_, err := io.WriteString(p.out, p.String())
	return err
}

// atEnd keeps a part of the page for End.
func (p *markdownPage) atEnd(part func()) { p.parts = append(p.parts, part) }

// saysFolded says what the page leaves out, if anything.
func (p *markdownPage) saysFolded() {
	if p.fold > 0 {
		fmt.Fprintf(p, "**Folded to fit a comment:** %s. `forebake check --all` prints all.\n\n",
			strings.Join(folds[1:p.fold+1], "; "))
	}
}

func (p *markdownPage) heading(s string) { p.WriteString("## " + s + "\n\n") }

func (p *markdownPage) Cautions(c *Cautions) { p.atEnd(func() { p.putCautions(c) }) }

func (p *markdownPage) putCautions(c *Cautions) {
	list := c.merged()
	if len(list) == 0 {
		return
	}
	p.heading("Cautions")
	pack := ""
	for _, one := range list {
		if one.Pack != pack {
			pack = one.Pack
			p.WriteString("\n")
			p.heading(Markdown(finding.AddedBy(pack)))
		}
		fmt.Fprintf(p, "- **%s**", Markdown(one.Text))
		for i, d := range one.details {
			if p.fold >= 3 && i == foldedDetails {
				fmt.Fprintf(p, "\n  And %s more: `forebake cautions` prints them.",
					Count(len(one.details)-i, "line"))
				break
			}
			if p.fold >= 3 {
				d = c.shortened(d)
			}
			if line, _ := c.says(d, Markdown); line != "" {
				p.WriteString("\n  " + line)
			}
		}
		fmt.Fprintf(p, "\n  Source: %s.\n", Markdown(one.Source))
	}
	p.WriteString("\n")
}

func (p *markdownPage) Unread(list source.Problems) { p.atEnd(func() { p.putUnread(list) }) }

func (p *markdownPage) putUnread(list source.Problems) {
	if len(list) == 0 {
		return
	}
	p.heading(unreadHeading)
	for _, one := range list {
		p.WriteString("- **unread** ")
		if !one.Place.IsZero() {
			p.WriteString(At(one.Place) + ": ")
		}
		p.WriteString(Markdown(one.Text) + "\n")
	}
	p.WriteString("\n")
}

func (p *markdownPage) SetAside(list []*finding.Finding) { p.atEnd(func() { p.putSetAside(list) }) }

func (p *markdownPage) putSetAside(list []*finding.Finding) {
	if len(list) == 0 {
		return
	}
	p.heading("Food safety, set aside by the house")
	for _, f := range list {
		fmt.Fprintf(p, "- **waived %s** %s, %s, %s  \n", f.Level, Markdown(f.Formula), At(f.Place),
			Markdown(f.Subject))
		p.body(f, "  ")
		fmt.Fprintf(p, "  Set aside at %s%s, because %s. Rule: `%s`\n",
			At(f.By), Markdown(untilText(f)), Markdown(Reason(f.Because)), f.Rule)
	}
	p.WriteString("\n")
}

func (p *markdownPage) Unchecked(
	list []finding.Unchecked,
) {
	p.atEnd(func() { p.putUnchecked(list) })
}

func (p *markdownPage) putUnchecked(list []finding.Unchecked) {
	for _, u := range list {
		fmt.Fprintf(p, "**%s** (%s).\n\n", Markdown(UpperFirst(u.Text())), At(u.Place))
	}
}

func (p *markdownPage) Loosened(list []finding.Loosened) { p.atEnd(func() { p.putLoosened(list) }) }

func (p *markdownPage) putLoosened(list []finding.Loosened) {
	if len(list) == 0 {
		return
	}
	p.heading("Food safety, made less strict by the house")
	for _, l := range list {
		fmt.Fprintf(p, "- `%s`: %s is %s, and was %s (%s), because %s.\n", l.Rule, Markdown(l.What),
			Markdown(l.To), Markdown(l.From), At(l.Place), Markdown(Reason(l.Because)))
	}
	p.WriteString("\n")
}

func (p *markdownPage) Findings(f *Found) { p.atEnd(func() { p.putFindings(f) }) }

func (p *markdownPage) putFindings(f *Found) {
	p.saysFolded()
	formulas, houses, clear := f.Groups()
	if p.fold >= 4 {
		formulas = finding.WorstFirst(formulas)
		for _, g := range formulas[:min(len(formulas), foldedFormulas)] {
			fmt.Fprintf(p, "- %s, %s: %s\n%s", Markdown(g.Name), At(g.Place), tally(g.List),
				p.couldHurt(g.List, "  "))
		}
		if n := len(formulas) - foldedFormulas; n > 0 {
			hurting := 0
			for _, g := range formulas[foldedFormulas:] {
				if len(finding.Hurtful(g.List)) > 0 {
					hurting++
				}
			}
			fmt.Fprintf(p, "- and %s more; %d of them could hurt someone\n", Count(n, "formula"),
				hurting)
		}
		p.WriteString("\n")
		formulas = nil
	}
	for _, g := range formulas {
		fmt.Fprintf(p, "## %s\n\n%s: %s\n\n", Markdown(g.Name), Markdown(g.File), tally(g.List))
		if hurt := p.couldHurt(g.List, ""); hurt != "" {
			p.WriteString(hurt + "\n")
		}
		p.findings(g.List)
	}
	for _, g := range houses {
		fmt.Fprintf(p, "## %s\n\n%s\n\n", Markdown(g.File), tally(g.List))
		p.findings(g.List)
	}
	if len(clear) > 0 {
		n := len(clear)
		if p.fold >= 2 {
			clear = clear[:min(n, foldedDetails)]
		}
		for i, name := range clear {
			clear[i] = Markdown(name)
		}
		if n > len(clear) {
			clear = append(clear, fmt.Sprintf("and %d more", n-len(clear)))
		}
		fmt.Fprintf(p, "Nothing found in %s: %s.\n\n", Count(n, "formula"),
			strings.Join(clear, "; "))
	}
}

// couldHurt names a formula's food-safety findings in a line; on a
// folded page only the first of many.
func (p *markdownPage) couldHurt(list []*finding.Finding, indent string) string {
	hurt := finding.Hurtful(list)
	if len(hurt) == 0 {
		return ""
	}
	more := ""
	if n := len(hurt) - foldedDetails; n > 0 && p.fold >= 2 {
		hurt, more = hurt[:foldedDetails], fmt.Sprintf(" and %d more", n)
	}
	parts := make([]string, len(hurt))
	for i, f := range hurt {
		parts[i] = fmt.Sprintf("%s %s (`%s`)", f.Word(), At(f.Place), f.Rule)
	}
	return fmt.Sprintf("%s**Could hurt someone:** %s%s.\n", indent, strings.Join(parts, ", "), more)
}

func (p *markdownPage) Assumed(list []finding.Assumptions) {
	p.atEnd(func() {
		if line := finding.AssumedLine(list); line != "" {
			fmt.Fprintf(p, "%s\n\n", Markdown(line))
		}
	})
}

func (p *markdownPage) Notices(list []string) { p.atEnd(func() { p.putNotices(list) }) }

func (p *markdownPage) putNotices(list []string) {
	for _, n := range finding.OneLine(list) {
		fmt.Fprintf(p, "%s\n\n", Markdown(n))
	}
}

func (p *markdownPage) Totals(t finding.Totals) { p.atEnd(func() { p.putTotals(t) }) }

func (p *markdownPage) putTotals(t finding.Totals) { fmt.Fprintf(p, "%s.\n", totals(t)) }

func (p *markdownPage) findings(list []*finding.Finding) {
	var open, waived []*finding.Finding
	flagged := 0
	for _, f := range finding.Serious(list) {
		if p.fold >= 2 && (f.Answer == finding.Unsure || f.Answer == finding.Assumed ||
			f.Word() == "note") {
			continue
		}
		switch f.Answer {
		case finding.Unsure, finding.Assumed:
			open = append(open, f)
			continue
		case finding.Waived:
			waived = append(waived, f)
			continue
		}
		flagged++
		fmt.Fprintf(p, "- **%s** %s, %s", f.Word(), At(f.Place), Markdown(f.Subject))
		if f.Safety {
			p.WriteString(" (food safety)")
		}
		p.WriteString("  \n")
		p.body(f, "  ")
		fmt.Fprintf(p, "  Rule: `%s`\n", f.Rule)
	}
	if flagged > 0 {
		p.WriteString("\n")
	}
	for _, f := range waived {
		says := fmt.Sprintf("set aside at %s%s, because %s", At(f.By), Markdown(untilText(f)),
			Markdown(Reason(f.Because)))
		if f.Safety {
			says = "food safety, set aside at " + At(f.By) + "; see above"
		}
		fmt.Fprintf(p, "- waived: %s, %s: `%s`, %s.\n",
			At(f.Place), Markdown(f.Subject), f.Rule, says)
	}
	if len(waived) > 0 {
		p.WriteString("\n")
	}
	if len(open) > 0 {
		fmt.Fprintf(
			p,
			"<details><summary>%d unsure: what is missing, and what waits for it</summary>\n\n",
			len(open),
		)
		sorted := finding.OpenOf(open, p.each)
		for _, w := range sorted.Told {
			fmt.Fprintf(p, "- unsure: %s, %s: %s.\n", At(w.Place), Markdown(w.Text), waitingLine(w))
		}
		if sorted.Within != nil {
			fmt.Fprintf(p, "- unsure: %s.\n", Markdown(withinErrorLine(sorted.Within)))
		}
		p.WriteString("\n</details>\n\n")
	}
}

// body prints a finding's text, doubt, reason, figures and mends, each
// on its own line.
func (p *markdownPage) body(f *finding.Finding, indent string) {
	fmt.Fprintf(p, "%s%s  \n", indent, Markdown(f.Text))
	if f.Doubt {
		fmt.Fprintf(p, "%s%s  \n", indent, Markdown(doubt(f)))
	}
	if p.fold == 0 {
		fmt.Fprintf(p, "%sWhy: %s  \n", indent, Markdown(f.Why))
	}
	if figures := figures(f); figures != "" && p.fold == 0 {
		fmt.Fprintf(p, "%sFigures: %s.  \n", indent, Markdown(figures))
	}
	for _, m := range f.Mends {
		fmt.Fprintf(p, "%sMend: %s (%s)  \n", indent, Markdown(m.Text), m.Trust)
	}
}

// At gives the file and line of a place.
func At(p source.Place) string { return fmt.Sprintf("%s:%d", Markdown(p.FileName()), p.Line()) }

// Markdown makes a file's text safe in Markdown.
func Markdown(s string) string { return layout.Markdown(source.Safe(s)) }
