package report

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// Why prints a rule's card: what, why, source, limits, and how a house changes it.
func Why(w io.Writer, c finding.Card) error {
	t := &text{palette: newPalette(false), width: 96}
	fmt.Fprintf(t, "%s\n\n", c.ID)
	t.paragraph(fmt.Sprintf("Looks at: %s. Level: %s%s. Pack: %s (%s:%d).", c.On, c.Level, by(c.LevelBy), c.Pack, c.File, c.Line), "  ", "  ")
	if c.Doubt {
		t.paragraph("Food safety: where a figure is missing or turns within its error, it counts as flagged.", "  ", "  ")
	}
	if len(c.Was) > 0 {
		t.paragraph("Was once named: "+strings.Join(c.Was, ", ")+".", "  ", "  ")
	}
	t.WriteString("\n")
	t.paragraph("Flags when: "+source.Safe(c.When), "  ", "    ")
	t.paragraph("Says: "+source.Safe(c.Say), "  ", "    ")
	t.paragraph("Why: "+source.Safe(c.Why), "  ", "    ")
	t.paragraph("Source: "+source.Safe(c.Source), "  ", "    ")
	if len(c.Limits) > 0 {
		t.WriteString("\n  Limits\n")
		for _, l := range c.Limits {
			fmt.Fprintf(t, "    %s = %s%s\n", l.Name, l.Shown, by(l.By))
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
		t.paragraph(source.Safe(line), "    ", "      ")
	}
	if len(c.Levers) > 0 {
		t.paragraph("What mends it: "+strings.Join(c.Levers, "; ")+".", "  ", "    ")
	}
	t.WriteString("\n  A house changes it in house.hcl:\n\n")
	fmt.Fprintf(t, "    set %q {\n      level  = %q\n", c.ID, c.Level)
	if len(c.Limits) > 0 {
		var parts []string
		for _, l := range c.Limits {
			parts = append(parts, fmt.Sprintf("%s = %v", l.Name, l.Value))
		}
		fmt.Fprintf(t, "      limits = { %s }\n", strings.Join(parts, ", "))
	}
	t.WriteString("    }\n")
	_, err := io.WriteString(w, t.String())
	return err
}

func by(place string) string {
	if place == "" {
		return ""
	}
	return " (set at " + source.Safe(place) + ")"
}

// RuleLine prints a rule in one line of a list.
func RuleLine(c finding.Card) string {
	line := fmt.Sprintf("  %-5s %-24s %-12s", c.Level, c.ID, c.On)
	for i, l := range c.Limits {
		if i > 0 {
			line += ","
		}
		line += " " + l.Name + " " + l.Shown + by(l.By)
	}
	if c.LevelBy != "" {
		line += " level" + by(c.LevelBy)
	}
	return strings.TrimRight(line, " ") + "\n"
}
