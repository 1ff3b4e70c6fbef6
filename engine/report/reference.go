package report

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
)

// RulebookText prints the rules in force, one line each.
func RulebookText(w io.Writer, book finding.Rulebook) error {
	var b strings.Builder
	rules := 0
	for _, p := range book.Packs {
		fmt.Fprintf(&b, "%s: %s", p.Name, source.Safe(p.About))
		if p.Safety {
			b.WriteString(" (food safety)")
		}
		b.WriteString("\n")
		for _, f := range p.Figures {
			fmt.Fprintf(&b, "  figure %-23s %-12s %s\n", f.Name, f.On, source.Safe(f.Is))
		}
		for _, c := range p.Rules {
			rules++
			b.WriteString(RuleLine(c))
		}
		b.WriteString("\n")
	}
	fmt.Fprintf(&b, "%s in force, and %s that no setting can reach.\n", Count(rules, "rule"), Count(len(book.Cautions), "caution"))
	for _, u := range book.Unchecked {
		fmt.Fprintf(&b, "%s: %s\n", u.Place, source.Safe(u.Text()))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// RulebookMarkdown prints the rules in force as a page: the cautions first, then each pack with what every rule says, why, and who
// set its level and limits.
func RulebookMarkdown(w io.Writer, book finding.Rulebook) error {
	var b strings.Builder
	b.WriteString("# Rules in force\n\n## Cautions\n\nPrinted first, always. No setting reaches them: they have no name.\n\n")
	for _, c := range book.Cautions {
		fmt.Fprintf(&b, "- **%s**", markdown(c.Say))
		if c.Detail != "" {
			b.WriteString(" " + markdown(c.Detail))
		}
		fmt.Fprintf(&b, " Looks at: %s. Source: %s. From %s:%d.\n", markdown(c.On), markdown(c.Source), markdown(c.File), c.Line)
	}
	rules := 0
	for _, p := range book.Packs {
		if p.NoPack {
			fmt.Fprintf(&b, "\n## %s\n\nIn force in every house: no house names this file or leaves it out.\n", upperFirst(markdown(p.Name)))
		} else {
			fmt.Fprintf(&b, "\n## Pack: %s\n", markdown(p.Name))
		}
		if p.About != "" {
			fmt.Fprintf(&b, "\n%s.\n", markdown(upperFirst(p.About)))
		}
		if p.Safety {
			b.WriteString("\nOf food safety: a house tightens it freely; what it makes less strict or sets aside shows in every report.\n")
		}
		for _, f := range p.Figures {
			figureMarkdown(&b, f)
		}
		for _, c := range p.Rules {
			rules++
			ruleMarkdown(&b, c)
		}
	}
	fmt.Fprintf(&b, "\n%s in force, and %s.\n", Count(rules, "rule"), Count(len(book.Cautions), "caution"))
	for _, u := range book.Unchecked {
		fmt.Fprintf(&b, "\n**%s** (%s).\n", markdown(upperFirst(u.Text())), at(u.Place))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func figureMarkdown(b *strings.Builder, f finding.FigureCard) {
	unit := ""
	if f.Unit != "" {
		unit = ", in " + f.Unit
	}
	fmt.Fprintf(b, "\n### Figure: %s\n\nOf %s%s. From %s:%d.\n\n- Means: %s\n- Is: `%s`\n",
		f.Name, markdown(f.On), markdown(unit), markdown(f.File), f.Line, markdown(f.Means), code(f.Is))
}

func ruleMarkdown(b *strings.Builder, c finding.Card) {
	fmt.Fprintf(b, "\n### %s\n\n%s%s, looks at %s. From %s:%d.", c.ID, c.Level, setAt(c.LevelBy), markdown(c.On), markdown(c.File), c.Line)
	if c.Doubt {
		b.WriteString(" Doubt counts as flagged.")
	}
	if len(c.Was) > 0 {
		b.WriteString(" Was once named " + strings.Join(c.Was, ", ") + ".")
	}
	b.WriteString("\n\n")
	if c.Because != "" {
		fmt.Fprintf(b, "- The house says: %s.\n", markdown(reason(c.Because)))
	}
	for _, w := range c.Waivers {
		fmt.Fprintf(b, "- %s, because %s.\n", markdown(upperFirst(waiverText(w))), markdown(reason(w.Because)))
	}
	fmt.Fprintf(b, "- Flags when: `%s`\n- Says: %s\n- Why: %s\n", code(c.When), markdown(c.Say), markdown(c.Why))
	for _, l := range c.Limits {
		fmt.Fprintf(b, "- Limit %s: %s%s\n", code(l.Name), markdown(l.Shown+from(l)), setAt(l.By))
	}
	if len(c.Levers) > 0 {
		fmt.Fprintf(b, "- Mended by: %s\n", markdown(strings.Join(c.Levers, "; ")))
	}
	fmt.Fprintf(b, "- Source: %s\n", markdown(c.Source))
}

// setAt tells who set a level or a limit.
func setAt(place string) string {
	if place == "" {
		return ""
	}
	return " (set at " + markdown(place) + ")"
}

// code makes a text safe to stand between two backticks, where nothing but a backtick ends it.
func code(s string) string {
	return strings.ReplaceAll(strings.Join(strings.Fields(source.Safe(s)), " "), "`", "'")
}

// factAbout heads the figures of each kind of subject.
var factAbout = map[string]string{"formula": "a formula", "part": "a part (a dough, a filling, ...)", "step": "a step", "ingredient": "an ingredient", "kitchen": "the kitchen"}

// CatalogueText prints every fact, step verb, unit and house key, one line each.
func CatalogueText(w io.Writer, c finding.Catalogue) error {
	var b strings.Builder
	subject := ""
	for _, f := range c.Facts {
		if f.Subject != subject {
			subject = f.Subject
			fmt.Fprintf(&b, "%sFigures of %s\n\n", gap(&b), factAbout[subject])
		}
		fmt.Fprintf(&b, "  %-28s %-9s %s", f.Name, unitOrType(f), source.Safe(f.Means)) // a rule file may hold it
		if f.Steps != "" {
			b.WriteString(" (" + f.Steps + ")")
		}
		if f.Error != "" {
			b.WriteString("; error: " + source.Safe(f.Error))
		}
		b.WriteString("\n")
	}
	b.WriteString("\nSteps\n\n")
	for _, v := range c.Verbs {
		fmt.Fprintf(&b, "  %-8s %s: %s; with %s\n", v.Name, v.Means, v.Measure, strings.Join(v.Options, ", "))
	}
	b.WriteString("\nUnits\n\n")
	for _, u := range c.Units {
		fmt.Fprintf(&b, "  %-8s %-14s = %s; also %s\n", u.Name, u.Kind, u.Is, strings.Join(u.Spelt, ", "))
	}
	b.WriteString("\nHouse file\n\n")
	for _, k := range c.Keys {
		fmt.Fprintf(&b, "  %-10s %-13s %s%s\n", k.Block, k.Name, k.Means, otherwise(k.Default))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func gap(b *strings.Builder) string {
	if b.Len() == 0 {
		return ""
	}
	return "\n"
}

func otherwise(value string) string {
	if value == "" {
		return ""
	}
	return " (default: " + value + ")"
}

func unitOrType(f finding.CatalogueFact) string {
	if f.Unit != "" {
		return f.Unit
	}
	return f.Type
}

// CatalogueMarkdown prints the same as tables.
func CatalogueMarkdown(w io.Writer, c finding.Catalogue) error {
	var b strings.Builder
	b.WriteString("# Figures, steps, units and the house file\n")
	row := func(cells ...string) {
		for i, cell := range cells {
			if i > 0 {
				cell = markdown(cell)
			}
			b.WriteString("| " + cell + " ")
		}
		b.WriteString("|\n")
	}
	subject := ""
	for _, f := range c.Facts {
		if f.Subject != subject {
			subject = f.Subject
			fmt.Fprintf(&b, "\n## Figures of %s\n\n| figure | unit | what it is | source | error |\n| --- | --- | --- | --- | --- |\n", factAbout[subject])
		}
		means := f.Means
		if f.Steps != "" {
			means += " (" + f.Steps + ")"
		}
		row("`"+f.Name+"`", unitOrType(f), means, f.Source, f.Error)
	}
	b.WriteString("\n## Steps\n\n| step | what it is | its value | options |\n| --- | --- | --- | --- |\n")
	for _, v := range c.Verbs {
		row("`"+v.Name+"`", v.Means, v.Measure, strings.Join(v.Options, ", "))
	}
	b.WriteString("\n## Units\n\n| unit | measures | is | also written |\n| --- | --- | --- | --- |\n")
	for _, u := range c.Units {
		row("`"+u.Name+"`", u.Kind, u.Is, strings.Join(u.Spelt, ", "))
	}
	b.WriteString("\n## House file\n\n| key | block | what it is | default |\n| --- | --- | --- | --- |\n")
	for _, k := range c.Keys {
		row("`"+k.Name+"`", k.Block, k.Means, k.Default)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// CatalogueJSON prints the same as one object.
func CatalogueJSON(w io.Writer, c finding.Catalogue) error {
	return WriteJSON(w, struct {
		Facts []finding.CatalogueFact `json:"facts"`
		Verbs []finding.CatalogueVerb `json:"verbs"`
		Units []finding.CatalogueUnit `json:"units"`
		Keys  []finding.CatalogueKey  `json:"keys"`
	}{c.Facts, c.Verbs, c.Units, c.Keys})
}
