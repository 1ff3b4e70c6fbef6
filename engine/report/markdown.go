package report

import (
	"fmt"
	"io"
	"strings"
	"unicode"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// page prints Markdown.
type page struct {
	strings.Builder
	run *Run
}

// Markdown prints a run as a comment on a review: cautions, what a house takes from food safety, then each formula with what
// was found in it, then the totals. What cannot be answered is folded.
func Markdown(w io.Writer, run *Run, _ Options) error {
	p := &page{run: run}
	p.cautions()
	p.foodSafety()
	groups := map[string][]*finding.Finding{}
	var houses []string
	for _, f := range run.Findings {
		key := fileName(f.Place) + "\x00" + f.Formula
		if f.Formula == "" && groups[key] == nil {
			houses = append(houses, fileName(f.Place)) // sorted, as the findings are
		}
		groups[key] = append(groups[key], f)
	}
	var clear []string
	for _, f := range run.Formulas {
		list := groups[fileName(f.Place)+"\x00"+f.Name]
		if len(list) == 0 {
			clear = append(clear, markdown(f.Name))
			continue
		}
		fmt.Fprintf(p, "## %s\n\n%s: %s\n\n", markdown(f.Name), markdown(fileName(f.Place)), tally(list))
		p.findings(list)
	}
	for _, name := range houses {
		list := groups[name+"\x00"]
		fmt.Fprintf(p, "## %s\n\n%s\n\n", markdown(name), tally(list))
		p.findings(list)
	}
	if len(clear) > 0 {
		fmt.Fprintf(p, "Nothing found in %s: %s.\n\n", Count(len(clear), "formula"), strings.Join(clear, "; "))
	}
	for _, n := range run.Notices {
		fmt.Fprintf(p, "%s\n\n", markdown(n))
	}
	fmt.Fprintf(p, "%s.\n", totals(run.Totals))
	_, err := io.WriteString(w, p.String())
	return err
}

func (p *page) cautions() {
	list := merge(byPlace(p.run.Cautions))
	if len(list) == 0 {
		return
	}
	p.WriteString("## Cautions\n\n")
	for _, c := range list {
		fmt.Fprintf(p, "- **%s**", markdown(c.Text))
		for _, d := range c.details {
			who := "For " + markdown(strings.Join(d.formulas, "; "))
			switch {
			case len(p.run.Formulas) == 1:
				who = ""
			case len(d.formulas) == len(p.run.Formulas):
				who = fmt.Sprintf("For all %d formulas", len(p.run.Formulas))
			}
			switch {
			case who == "" && d.text == "":
			case d.text == "":
				p.WriteString("\n  " + who + ".")
			case who == "":
				p.WriteString("\n  " + markdown(d.text))
			default:
				p.WriteString("\n  " + who + ": " + markdown(d.text))
			}
		}
		fmt.Fprintf(p, "\n  Source: %s.\n", markdown(c.Source))
	}
	p.WriteString("\n")
}

// foodSafety prints what a house takes from food safety: findings set aside, packs left out, settings less strict.
func (p *page) foodSafety() {
	first := true
	for _, f := range p.run.Findings {
		if f.Answer != finding.Waived || !f.Safety {
			continue
		}
		if first {
			p.WriteString("## Food safety, set aside by the house\n\n")
			first = false
		}
		fmt.Fprintf(p, "- **waived %s** %s, %s, %s  \n", f.Level, markdown(f.Formula), at(f.Place), markdown(f.Subject))
		p.body(f, "  ")
		fmt.Fprintf(p, "  Set aside at %s%s, because %s. Rule: `%s`\n", at(f.By), markdown(until(f)), markdown(reason(f.Because)), f.Rule)
	}
	if !first {
		p.WriteString("\n")
	}
	for _, u := range p.run.Unchecked {
		fmt.Fprintf(p, "**%s** (%s).\n\n", markdown(upperFirst(u.Text())), at(u.Place))
	}
	if len(p.run.Loosened) > 0 {
		p.WriteString("## Food safety, made less strict by the house\n\n")
		for _, l := range p.run.Loosened {
			fmt.Fprintf(p, "- `%s`: %s is %s, and was %s (%s), because %s.\n", l.Rule, markdown(l.What), markdown(l.To), markdown(l.From), at(l.Place), markdown(reason(l.Because)))
		}
		p.WriteString("\n")
	}
}

func (p *page) findings(list []*finding.Finding) {
	var open, waived []*finding.Finding
	flagged := 0
	for _, f := range list {
		switch f.Answer {
		case finding.Unsure:
			open = append(open, f)
			continue
		case finding.Waived:
			waived = append(waived, f)
			continue
		}
		flagged++
		fmt.Fprintf(p, "- **%s** %s, %s", word(f), at(f.Place), markdown(f.Subject))
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
		says := fmt.Sprintf("set aside at %s%s, because %s", at(f.By), markdown(until(f)), markdown(reason(f.Because)))
		if f.Safety {
			says = "food safety, set aside at " + at(f.By) + "; see above"
		}
		fmt.Fprintf(p, "- waived: %s, %s: `%s`, %s.\n", at(f.Place), markdown(f.Subject), f.Rule, says)
	}
	if len(waived) > 0 {
		p.WriteString("\n")
	}
	if len(open) > 0 {
		fmt.Fprintf(p, "<details><summary>%d unsure: what is missing, and what waits for it</summary>\n\n", len(open))
		for _, f := range open {
			fmt.Fprintf(p, "- unsure: %s, %s: `%s` %s.\n", at(f.Place), markdown(f.Subject), f.Rule, markdown(strings.TrimPrefix(f.Text, f.Rule+" ")))
		}
		p.WriteString("\n</details>\n\n")
	}
}

// body prints what a finding says, what is in doubt, why, and what it rests on, each on a line of its own.
func (p *page) body(f *finding.Finding, indent string) {
	fmt.Fprintf(p, "%s%s  \n", indent, markdown(f.Text))
	if f.Doubt {
		fmt.Fprintf(p, "%s%s  \n", indent, markdown(doubt(f)))
	}
	fmt.Fprintf(p, "%sWhy: %s  \n", indent, markdown(f.Why))
	if figures := figures(f); figures != "" {
		fmt.Fprintf(p, "%sFigures: %s.  \n", indent, markdown(figures))
	}
	for _, m := range f.Mends {
		fmt.Fprintf(p, "%sMend: %s (%s)  \n", indent, markdown(m.Text), m.Trust)
	}
}

// at gives the file and line of a place.
func at(p source.Place) string { return fmt.Sprintf("%s:%d", markdown(fileName(p)), p.Line()) }

// apart is a comment of HTML that nobody sees. It parts a sign from the word behind it: sites look for mentions, references and
// addresses after the text is laid out, where a backslash before the sign is gone already.
const apart = "<!-- -->"

// markdown makes a text from a file safe to stand in Markdown: one line, with no markup, no HTML, no table cell's end, no link, no
// mention, no reference and no formula. It reads the same when it is laid out.
func markdown(s string) string {
	rs := []rune(strings.Join(strings.Fields(source.Safe(s)), " "))
	var b strings.Builder
	for i, r := range rs {
		next := ' '
		if i+1 < len(rs) {
			next = rs[i+1]
		}
		word := unicode.IsLetter(next) || unicode.IsDigit(next) || next == '"' || next == '/'
		if r == ':' && unicode.IsDigit(next) {
			word = !placed(rs[i+1:])
		}
		switch r {
		case '<':
			b.WriteString("&lt;")
		case '>':
			b.WriteString("&gt;")
		case '&':
			b.WriteString("&amp;")
		case '$': // a formula of mathematics
			b.WriteString("&#36;")
		case '\\', '`', '*', '_', '[', ']', '|', '~', '#', '!':
			b.WriteString("\\" + string(r))
		default:
			b.WriteRune(r)
		}
		if word && strings.ContainsRune("@#!$%~:", r) || r == '&' && unicode.IsDigit(next) || next == '.' && strings.HasSuffix(strings.ToLower(string(rs[max(0, i-2):i+1])), "www") ||
			r == '-' && i >= 2 && strings.EqualFold(string(rs[i-2:i]), "gh") && unicode.IsDigit(next) {
			b.WriteString(apart)
		}
	}
	return b.String()
}

// placed tells whether digits behind a colon are those of a line or column, or of a clock, not of a sign such as :100:.
func placed(rs []rune) bool {
	i := 0
	for i < len(rs) && unicode.IsDigit(rs[i]) {
		i++
	}
	if i < len(rs) && rs[i] == ':' {
		return i+1 < len(rs) && unicode.IsDigit(rs[i+1])
	}
	return i == len(rs) || !unicode.IsLetter(rs[i]) && rs[i] != '_'
}
