package page

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/report"
	"forebake/engine/source"
)

// Why prints a rule's card: its texts, source and limits, and how a
// house changes it.
func Why(w io.Writer, c finding.Card, o report.Options) error {
	t := newText(w, o)
	fmt.Fprintf(t, "%s\n\n", c.ID)
	t.settings(c)
	t.WriteString("\n")
	t.Paragraph("Flags when: "+source.Safe(c.When), "  ", "    ")
	t.Paragraph("Says: "+source.Safe(c.Say), "  ", "    ")
	t.Paragraph("Why: "+source.Safe(c.Why), "  ", "    ")
	t.Paragraph("Source: "+source.Safe(c.Source), "  ", "    ")
	if len(c.Limits) > 0 {
		t.WriteString("\n  Limits\n")
		for _, l := range c.Limits {
			fmt.Fprintf(t, "    %s = %s%s%s\n", l.Name, l.Shown, report.LimitSource(l),
				report.SetBy(l.By))
		}
	}
	t.WriteString("\n  Reads\n")
	for _, f := range c.Reads {
		line := f.Name + ": " + f.Means
		if f.Unit != "" {
			line += ", in " + f.Unit
		}
		line += ". Source: " + f.Source + "."
		if f.Error != "" {
			line += " Model, error " + f.Error + "."
		}
		t.Paragraph(source.Safe(line), "    ", "      ")
		if f.Misses != "" {
			t.Paragraph(
				source.Safe("Published points that it misses: "+f.Misses+"."),
				"      ",
				"      ",
			)
		}
	}
	if len(c.Levers) > 0 {
		t.Paragraph("What mends it: "+strings.Join(c.Levers, "; ")+".", "  ", "    ")
	}
	t.setBlock(c)
	return t.End()
}

// settings prints the level of a rule and what the house says of it.
func (t *text) settings(c finding.Card) {
	say := func(s string) { t.Paragraph(s, "  ", "  ") }
	say(fmt.Sprintf("Looks at: %s. Level: %s%s. Pack: %s (%s:%d).",
		c.On, c.Level, report.SetBy(c.LevelBy), c.Pack, c.File, c.Line))
	if c.NoteWhen != "" {
		say("No more than a note where: " + c.NoteWhen + ".")
	}
	if c.RiskWhen != "" {
		say("No more than a risk where: " + c.RiskWhen + ".")
	}
	if c.Careful {
		say("A risk where only the model's careful end is past the limit: its middle is inside, " +
			"and nothing that it stands on is unwritten.")
	}
	if c.Because != "" {
		say("The house says: " + source.Safe(report.Reason(c.Because)) + ".")
	}
	if c.Safety {
		say("Food safety: a house tightens it freely. Making it less strict needs " +
			"because = \"...\" and, like a waiver, shows in every report.")
	}
	if c.Doubt {
		say("Where a figure is missing or turns within its error, it counts as flagged.")
	}
	if c.Middle {
		say("Where the model's own error alone leaves it open, the middle counts: clear in the " +
			"usual range, unsure outside it.")
	}
	for _, w := range c.Waivers {
		say(source.Safe(report.UpperFirst(waiverText(w))+", because "+
			report.Reason(w.Because)) + ".")
	}
	if len(c.Was) > 0 {
		say("Was once named: " + strings.Join(c.Was, ", ") + ".")
	}
}

// setBlock prints the block of a house file that changes a rule, with
// its values of today.
func (t *text) setBlock(c finding.Card) {
	t.WriteString("\n  A house changes it in house.hcl:\n\n")
	fmt.Fprintf(t, "    set %q {\n      level  = %q\n", c.ID, c.Level)
	if len(c.Limits) > 0 {
		var parts []string
		for _, l := range c.Limits {
			parts = append(parts, fmt.Sprintf("%s = %v", l.Name, l.Value))
		}
		fmt.Fprintf(t, "      limits = { %s }\n", strings.Join(parts, ", "))
	}
	if c.Safety {
		t.WriteString("      because = \"...\"   # needed where this is less strict\n")
	}
	t.WriteString("    }\n")
}

// waiverText gives the line of a waiver, its formulas and its last day.
func waiverText(w finding.CardWaiver) string {
	text := "waived at " + w.By
	if w.Formula != "" {
		text += fmt.Sprintf(" for formulas named %q", w.Formula)
	}
	if w.Until != "" {
		text += " until " + w.Until
	}
	return text
}

// RuleLine prints a rule in one line of a list.
func RuleLine(c finding.Card) string {
	line := fmt.Sprintf("  %-5s %-24s %-12s", c.Level, c.ID, c.On)
	for i, l := range c.Limits {
		if i > 0 {
			line += ","
		}
		line += " " + l.Name + " " + l.Shown + report.LimitSource(l) + report.SetBy(l.By)
	}
	if c.LevelBy != "" {
		line += " level" + report.SetBy(c.LevelBy)
	}
	for _, w := range c.Waivers {
		line += " " + source.Safe(waiverText(w))
	}
	return strings.TrimRight(line, " ") + "\n"
}
