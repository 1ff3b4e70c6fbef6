package page

import (
	"fmt"
	"io"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/jsontext"
	"forebake/engine/layout"
	"forebake/engine/report"
	"forebake/engine/source"
)

// RulebookText prints the rules in force, one line each.
func RulebookText(w io.Writer, book finding.Rulebook, o report.Options) error {
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
	fmt.Fprintf(&b, "%s in force, and %s that no setting can reach.\n", report.Count(rules, "rule"),
		report.Count(len(book.Cautions), "caution"))
	for _, u := range book.Unchecked {
		fmt.Fprintf(&b, "%s: %s\n", u.Place, source.Safe(u.Text()))
	}
	_, err := io.WriteString(w, layout.Fold(b.String(), o.Columns()))
	return err
}

// RulebookMarkdown prints the rules in force as a page: the cautions
// first, then each pack. Each rule stands with its text, its reason,
// and the lines that set its level and limits.
func RulebookMarkdown(w io.Writer, book finding.Rulebook) error {
	var b strings.Builder
	b.WriteString("# Rules in force\n\n## Cautions\n\nPrinted first, always. No setting reaches " +
		"them: they have no name.\n\n")
	for _, c := range book.Cautions {
		fmt.Fprintf(&b, "- **%s**", report.Markdown(c.Say))
		if c.Detail != "" {
			b.WriteString(" " + report.Markdown(c.Detail))
		}
		fmt.Fprintf(&b, " Looks at: %s. Source: %s. From %s:%d.\n", report.Markdown(c.On),
			report.Markdown(c.Source), report.Markdown(c.File), c.Line)
	}
	rules := 0
	for _, p := range book.Packs {
		if p.NoPack {
			fmt.Fprintf(
				&b,
				"\n## %s\n\nIn force in every house: no house names this file or leaves it out.\n",
				report.UpperFirst(report.Markdown(p.Name)),
			)
		} else {
			fmt.Fprintf(&b, "\n## Pack: %s\n", report.Markdown(p.Name))
		}
		if p.About != "" {
			fmt.Fprintf(&b, "\n%s.\n", report.Markdown(report.UpperFirst(p.About)))
		}
		if p.Safety {
			b.WriteString("\nOf food safety: a house tightens it freely; what it makes less " +
				"strict or sets aside shows in every report.\n")
		}
		for _, f := range p.Figures {
			figureMarkdown(&b, f)
		}
		for _, c := range p.Rules {
			rules++
			ruleMarkdown(&b, c)
		}
	}
	fmt.Fprintf(&b, "\n%s in force, and %s.\n", report.Count(rules, "rule"),
		report.Count(len(book.Cautions), "caution"))
	for _, u := range book.Unchecked {
		fmt.Fprintf(&b, "\n**%s** (%s).\n", report.Markdown(report.UpperFirst(u.Text())),
			report.At(u.Place))
	}
	_, err := io.WriteString(w, b.String())
	return err
}

func figureMarkdown(b *strings.Builder, f finding.FigureCard) {
	unit := ""
	if f.Unit != "" {
		unit = ", in " + f.Unit
	}
	fmt.Fprintf(
		b,
		"\n### Figure: %s\n\nOf %s%s. From %s:%d.\n\n- Means: %s\n- Is: `%s`\n",
		f.Name,
		report.Markdown(f.On),
		report.Markdown(unit),
		report.Markdown(f.File),
		f.Line,
		report.Markdown(f.Means),
		code(f.Is),
	)
}

func ruleMarkdown(b *strings.Builder, c finding.Card) {
	fmt.Fprintf(b, "\n### %s\n\n%s%s, looks at %s. From %s:%d.", c.ID, c.Level, setAt(c.LevelBy),
		report.Markdown(c.On), report.Markdown(c.File), c.Line)
	if c.Doubt {
		b.WriteString(" Doubt counts as flagged.")
	}
	if c.Careful {
		b.WriteString(" At the model's careful end alone it is a risk.")
	}
	if c.Middle {
		b.WriteString(" Within a model's own error its middle counts.")
	}
	if len(c.Was) > 0 {
		b.WriteString(" Was once named " + strings.Join(c.Was, ", ") + ".")
	}
	b.WriteString("\n\n")
	if c.Because != "" {
		fmt.Fprintf(b, "- The house says: %s.\n", report.Markdown(report.Reason(c.Because)))
	}
	for _, w := range c.Waivers {
		fmt.Fprintf(b, "- %s, because %s.\n", report.Markdown(report.UpperFirst(waiverText(w))),
			report.Markdown(report.Reason(w.Because)))
	}
	fmt.Fprintf(b, "- Flags when: `%s`\n- Says: %s\n- Why: %s\n",
		code(c.When), report.Markdown(c.Say), report.Markdown(c.Why))
	for _, l := range c.Limits {
		fmt.Fprintf(b, "- Limit %s: %s%s\n", code(l.Name),
			report.Markdown(l.Shown+report.LimitSource(l)),
			setAt(l.By))
	}
	if len(c.Levers) > 0 {
		fmt.Fprintf(b, "- Mended by: %s\n", report.Markdown(strings.Join(c.Levers, "; ")))
	}
	fmt.Fprintf(b, "- Source: %s\n", report.Markdown(c.Source))
}

// setAt names the line that set a level or a limit.
func setAt(place string) string {
	if place == "" {
		return ""
	}
	return " (set at " + report.Markdown(place) + ")"
}

// code makes a text safe between two backticks, where only a backtick
// ends it.
func code(s string) string {
	return strings.ReplaceAll(strings.Join(strings.Fields(source.Safe(s)), " "), "`", "'")
}

// factAbout is the heading above the figures of each kind of subject.
var factAbout = map[string]string{"formula": "a formula",
	"part": "a part (a dough, a filling, ...)", "step": "a step", "ingredient": "an ingredient",
	"kitchen": "the kitchen"}

// wordAbout heads the closed lists of words.
var wordAbout = map[string]string{
	"way":   "Ways of a step (by)",
	"place": "Places of a step (at)",
	"group": "Groups of steps (on, in a rule)",
}

func stepsOf(steps string) string {
	if steps == "" {
		return ""
	}
	return " (" + steps + ")"
}

func alsoWritten(words []string) string {
	if len(words) == 0 {
		return ""
	}
	return "; also " + strings.Join(words, ", ")
}

// trustsOf names the trusts of a lever's changes.
func trustsOf(l finding.CatalogueLever) string {
	if len(l.Trusts) == 0 {
		return "your wish: never changed once it is written"
	}
	return strings.Join(l.Trusts, " or ")
}

// CatalogueText prints every fact, step verb, lever, unit and house
// key, one line each.
func CatalogueText(w io.Writer, c finding.Catalogue, o report.Options) error {
	var b strings.Builder
	subject := ""
	for _, f := range c.Facts {
		if f.Subject != subject {
			subject = f.Subject
			fmt.Fprintf(&b, "%sFigures of %s\n\n", blankLine(&b), factAbout[subject])
		}
		// A rule file may hold it.
		fmt.Fprintf(&b, "  %-28s %-9s %s", f.Name, unitOrType(f), source.Safe(f.Means))
		b.WriteString(stepsOf(f.Steps))
		if f.Error != "" {
			b.WriteString("; error: " + source.Safe(f.Error))
		}
		b.WriteString("\n")
	}
	b.WriteString("\nSteps\n\n")
	for _, v := range c.Verbs {
		fmt.Fprintf(&b, "  %-8s %s: %s; with %s\n", v.Name, v.Means, v.Measure,
			strings.Join(v.Options, ", "))
	}
	list := ""
	for _, o := range c.Options {
		if o.Subject != list {
			list = o.Subject
			fmt.Fprintf(&b, "\nOptions of %s\n\n", factAbout[list])
		}
		fmt.Fprintf(&b, "  %-8s %s%s\n", o.Name, o.Means, stepsOf(o.Steps))
	}
	for _, w := range c.Words {
		if w.List != list {
			list = w.List
			fmt.Fprintf(&b, "\n%s\n\n", wordAbout[list])
		}
		fmt.Fprintf(&b, "  %-16s %s%s%s\n", w.Name, w.Means, stepsOf(w.Steps), alsoWritten(w.Spelt))
	}
	b.WriteString("\nLevers (adjust, in a rule)\n\n")
	for _, l := range c.Levers {
		fmt.Fprintf(&b, "  %-16s %s; %s%s\n", l.Names[0], l.Means, trustsOf(l),
			alsoWritten(l.Names[1:]))
	}
	b.WriteString("\nUnits\n\n")
	for _, u := range c.Units {
		fmt.Fprintf(&b, "  %-8s %-14s = %s; also %s\n", u.Name, u.Kind, u.Is,
			strings.Join(u.Spelt, ", "))
	}
	b.WriteString("\nHouse file\n\n")
	for _, k := range c.Keys {
		fmt.Fprintf(&b, "  %-10s %-13s %s%s\n", k.Block, k.Name, k.Means, orElse(k.Default))
	}
	_, err := io.WriteString(w, layout.Fold(b.String(), o.Columns()))
	return err
}

func blankLine(b *strings.Builder) string {
	if b.Len() == 0 {
		return ""
	}
	return "\n"
}

func orElse(value string) string {
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
				cell = report.Markdown(cell)
			}
			b.WriteString("| " + cell + " ")
		}
		b.WriteString("|\n")
	}
	subject := ""
	for _, f := range c.Facts {
		if f.Subject != subject {
			subject = f.Subject
			fmt.Fprintf(&b,
				"\n## Figures of %s\n\n| figure | unit | what it is | source | error |\n| --- | "+
					"--- | --- | --- | --- |\n", factAbout[subject])
		}
		row("`"+f.Name+"`", unitOrType(f), f.Means+stepsOf(f.Steps), f.Source, f.Error)
	}
	b.WriteString("\n## Steps\n\n| step | what it is | its value | options |\n| --- | --- | --- " +
		"| --- |\n")
	for _, v := range c.Verbs {
		row("`"+v.Name+"`", v.Means, v.Measure, strings.Join(v.Options, ", "))
	}
	list := ""
	for _, o := range c.Options {
		if o.Subject != list {
			list = o.Subject
			fmt.Fprintf(
				&b,
				"\n## Options of %s\n\n| option | what it is | steps |\n| --- | --- | --- |\n",
				factAbout[list],
			)
		}
		row("`"+o.Name+"`", o.Means, o.Steps)
	}
	for _, w := range c.Words {
		if w.List != list {
			list = w.List
			fmt.Fprintf(
				&b,
				"\n## %s\n\n| word | what it is | steps | also written |\n"+
					"| --- | --- | --- | --- |\n",
				wordAbout[list],
			)
		}
		row("`"+w.Name+"`", w.Means, w.Steps, strings.Join(w.Spelt, ", "))
	}
	b.WriteString("\n## Levers (adjust, in a rule)\n\n| lever | what a mend changes | trust | " +
		"also asked for as |\n| --- | --- | --- | --- |\n")
	for _, l := range c.Levers {
		row("`"+l.Names[0]+"`", l.Means, trustsOf(l), strings.Join(l.Names[1:], ", "))
	}
	b.WriteString("\n## Units\n\n| unit | measures | is | also written |\n| --- | --- | --- | " +
		"--- |\n")
	for _, u := range c.Units {
		row("`"+u.Name+"`", u.Kind, u.Is, strings.Join(u.Spelt, ", "))
	}
	b.WriteString("\n## House file\n\n| key | block | what it is | default |\n| --- | --- | --- " +
		"| --- |\n")
	for _, k := range c.Keys {
		row("`"+k.Name+"`", k.Block, k.Means, k.Default)
	}
	_, err := io.WriteString(w, b.String())
	return err
}

// CatalogueJSON prints the same as one object.
func CatalogueJSON(w io.Writer, c finding.Catalogue) error {
	return jsontext.Write(w, jsonCatalogue{catalogueFormat, c.Facts, c.Verbs, c.Options, c.Words,
		c.Units, c.Keys, c.Levers})
}

type jsonCatalogue struct {
	Format  int                       `json:"format"`
	Facts   []finding.CatalogueFact   `json:"facts"`
	Verbs   []finding.CatalogueVerb   `json:"verbs"`
	Options []finding.CatalogueOption `json:"options"`
	Words   []finding.CatalogueWord   `json:"words"`
	Units   []finding.CatalogueUnit   `json:"units"`
	Keys    []finding.CatalogueKey    `json:"keys"`
	Levers  []finding.CatalogueLever  `json:"levers"`
}
