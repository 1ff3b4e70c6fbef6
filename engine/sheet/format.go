package sheet

import (
	"bytes"
	_ "embed" // the template of the page
	"fmt"
	"html/template"
	"io"
	"slices"
	"strings"
	"sync"

	"forebake/engine/jsontext"
	"forebake/engine/report"
)

// Format is one way to print a sheet.
type Format struct {
	Name   string
	Suffix string // of a file that holds it
	Write  func(w io.Writer, p *Page) error

	// Is reports whether a text is a sheet in this format, by its first
	// bytes: only such a file is written over.
	Is func(first []byte) bool
}

// Formats lists the formats, in order of name. A row gives every field.
var Formats = []Format{
	{"html", ".html", writeHTML, begins("<!DOCTYPE html>\n" + mark)},
	{"json", ".json", writeJSON, begins(jsonMark)},
	{"markdown", ".md", writeMarkdown, begins(mark)},
	{"text", ".txt", writeText, begins(textMark)},
}

// mark and textMark begin the sheets, so that a file can be told to
// be one.
const (
	mark     = "<!-- forebake sheet -->\n"
	textMark = "Bench sheet, by forebake\n"
	jsonMark = "{\n  \"format\": 1,\n  \"sheet\": {\n"
)

func begins(with string) func([]byte) bool {
	return func(first []byte) bool { return bytes.HasPrefix(first, []byte(with)) }
}

// FormatNamed finds a format by its name.
func FormatNamed(name string) (Format, bool) {
	i := slices.IndexFunc(Formats, func(f Format) bool { return f.Name == name })
	if i < 0 {
		return Format{}, false
	}
	return Formats[i], true
}

// FormatNames lists the names of the formats.
func FormatNames() []string {
	names := make([]string, len(Formats))
	for i, f := range Formats {
		names[i] = f.Name
	}
	return names
}

//go:embed sheet.html.tmpl
var pageText string

// pageTemplate is parsed when a page is first asked for.
var pageTemplate = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("page").Funcs(template.FuncMap{
		"picture": func(c *Curve, formula, part int, kind string) *picture {
			return draw(c, fmt.Sprintf("c%d-%d%s", formula, part, kind))
		},
	}).Parse(pageText))
})

func writeHTML(w io.Writer, p *Page) error {
	var b bytes.Buffer
	if err := pageTemplate().Execute(&b, p); err != nil {
		return err
	}
	// The template library drops comments; the mark is put in behind
	// the first line.
	out := bytes.Replace(b.Bytes(), []byte("<!DOCTYPE html>\n"),
		[]byte("<!DOCTYPE html>\n"+mark), 1)
	_, err := w.Write(append(bytes.TrimSpace(out), '\n'))
	return err
}

// jsonSheet is a sheet without its curves; the figures of the steps
// hold what they show.
type jsonSheet struct {
	Format int  `json:"format"` // 1: it changes when a key goes, or means something else
	Sheet  Page `json:"sheet"`
}

func writeJSON(w io.Writer, p *Page) error {
	return jsontext.Write(w, jsontext.Filled(jsonSheet{1, *p}))
}

func writeMarkdown(w io.Writer, p *Page) error {
	var b strings.Builder
	md := report.Markdown
	b.WriteString(mark + "\n## Cautions and allergens\n\n")
	for _, c := range p.Prelude.Short {
		b.WriteString("- **" + md(packNote(c)+c.Text) + "**\n")
	}
	list(&b, "Not checked", p.Prelude.Left)
	if len(p.Prelude.SetAside) > 0 {
		b.WriteString("\n### Food safety, set aside by the house\n\n")
		markdownFindings(&b, p.Prelude.SetAside)
	}
	list(&b, "Food safety, made less strict by the house", p.Prelude.Less)
	for i := range p.Formulas {
		markdownFormula(&b, &p.Formulas[i])
	}
	b.WriteString("\n## The cautions, whole, with their sources\n\n")
	for _, c := range p.Prelude.Whole {
		fmt.Fprintf(&b, "- %s Source: %s.\n", md(packNote(c)+c.Text), md(c.Source))
	}
	fmt.Fprintf(&b, "\nforebake %s, from %s. It warns; it never proves a food safe.\n", p.Version,
		md(p.File))
	_, err := io.WriteString(w, b.String())
	return err
}

// packNote names the pack of a caution that a house adds.
func packNote(c report.CautionLine) string {
	if c.Pack == "" {
		return ""
	}
	return "Added by " + c.Pack + ", not by forebake: "
}

func list(b *strings.Builder, head string, lines []string) {
	if len(lines) == 0 {
		return
	}
	fmt.Fprintf(b, "\n### %s\n\n", head)
	for _, l := range lines {
		b.WriteString("- " + report.Markdown(l) + "\n")
	}
}

func markdownFindings(b *strings.Builder, list []Finding) {
	for _, f := range list {
		because := ""
		if f.Because != "" {
			because = " Waived because " + f.Because + "."
		}
		fmt.Fprintf(b, "- **%s**, %s: %s (%s)%s\n", f.Word, report.Markdown(f.Where),
			report.Markdown(f.Text), f.Rule, report.Markdown(because))
	}
}

// cell writes a text as a cell of a table.
func cell(s string) string {
	return strings.ReplaceAll(report.Markdown(s), "|", "\\|")
}

func markdownFormula(b *strings.Builder, f *Formula) {
	fmt.Fprintf(b, "\n## %s\n\n%s\n", report.Markdown(f.Name), report.Markdown(f.facts()))
	if len(f.Open) > 0 {
		b.WriteString("\n### Open findings\n\n")
		markdownFindings(b, f.Open)
	}
	if len(f.Waived) > 0 {
		b.WriteString("\n### Waived by the house\n\n")
		markdownFindings(b, f.Waived)
	}
	for _, p := range f.Parts {
		fmt.Fprintf(b, "\n### %s: %s\n\n| ingredient | weight | %% of the %s | at |\n"+
			"| --- | ---: | ---: | ---: |\n", p.Kind, report.Markdown(p.Name), p.Of)
		for _, in := range p.Ingredients {
			fmt.Fprintf(b, "| %s | %s | %s | %s |\n", cell(in.named()), cell(in.weighed()),
				cell(in.Percent), cell(in.Temp))
		}
		if p.Total != "" {
			fmt.Fprintf(b, "| all | %s | | |\n", cell(p.Total))
		}
		if len(p.Steps) > 0 {
			b.WriteString("\n| step | clock | do | look for, probe, right | temperature | rise | " +
				"time | initials |\n| ---: | --- | --- | --- | --- | --- | --- | --- |\n")
		}
		for _, s := range p.Steps {
			fmt.Fprintf(b, "| %d | %s | %s | %s | | | | |\n", s.Number, cell(s.Clock),
				cell(join(", ", s.Does, s.How)), cell(s.checks()))
		}
		for _, c := range []*Curve{p.Temperature, p.Rise} {
			if c == nil {
				continue
			}
			fmt.Fprintf(b, "\n%s, %s, at the end of each step:\n\n| clock | step |",
				c.Title, c.Unit)
			for _, l := range c.Lines {
				b.WriteString(" " + l.Name + " |")
			}
			b.WriteString("\n| --- | --- |" + strings.Repeat(" --- |", len(c.Lines)) + "\n")
			for _, r := range c.Rows {
				fmt.Fprintf(b, "| %s | %s | %s |", r.Clock, cell(r.Step), cell(r.First))
				if r.Second != "" {
					b.WriteString(" " + cell(r.Second) + " |")
				}
				b.WriteString("\n")
			}
		}
	}
}

// facts is what stands under the name of a formula.
func (f *Formula) facts() string {
	var out []string
	if f.Makes != "" {
		out = append(out, "Makes "+f.Makes+".")
	}
	if f.Family != "" {
		out = append(out, "Family: "+f.Family+".")
	}
	if f.Keep != "" {
		out = append(out, "To keep "+f.Keep+".")
	}
	if f.Begins != "" {
		out = append(out, "Begins "+f.Begins+", ready "+f.Ready+".")
	}
	if f.Takes != "" {
		out = append(out, "Takes "+f.Takes+".")
	}
	if f.Unplanned != "" {
		out = append(out, "The clock counts from the first step: "+f.Unplanned)
	}
	return strings.Join(out, " ")
}

func (in Ingredient) named() string { return join(": ", in.Name, in.Note) }

func (in Ingredient) weighed() string {
	if in.Weight == "" {
		return join(", ", "____ g", in.Written)
	}
	return join(", ", in.Weight, in.Written)
}

// checks is what a step asks to look for and to probe.
func (s Step) checks() string {
	var out []string
	for _, one := range []Figure{{"look for", s.Look}, {"probe", s.Probe}, {"right:", s.Right}} {
		if one.Value != "" {
			out = append(out, one.Name+" "+one.Value)
		}
	}
	return strings.Join(out, "; ")
}

func join(with, a, b string) string {
	if a == "" || b == "" {
		return a + b
	}
	return a + with + b
}
