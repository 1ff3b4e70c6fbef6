package report

import (
	"io"

	"forebake/engine/finding"
	"forebake/engine/layout"
	"forebake/engine/source"
)

// Page is a text laid out like the text format: its width,
// colours, prelude.
type Page struct{ *text }

// NewPage begins a page without a prelude.
func NewPage(out io.Writer, o Options) *Page { return &Page{textOf(out, o)} }

// PageOf begins a page about the formulas of a run with the prelude.
func PageOf(out io.Writer, run *finding.Run, o Options) *Page {
	p := NewPage(out, o)
	prelude(p, run)
	return p
}

// Paragraph wraps a text to the width. first and rest begin its first
// and other lines.
func (p *Page) Paragraph(s, first, rest string) { p.paragraph(s, first, rest) }

// Fits reports whether a text fits into one line.
func (p *Page) Fits(s string) bool { return layout.Columns(s) <= p.width }

// Width is the columns of the page.
func (p *Page) Width() int { return p.width }

// Verbatim prints a line that is not folded.
func (p *Page) Verbatim(s string) { p.WriteString(layout.Verbatim + s + "\n") }

// Bold prints a text in bold letters.
func (p *Page) Bold(s string) string { return p.bold.Sprint(s) }

// Faint prints a text in faint letters.
func (p *Page) Faint(s string) string { return p.faint.Sprint(s) }

// Removed prints a removed line in the colour of a stop.
func (p *Page) Removed(s string) string { return p.stop.Sprint(s) }

// Added prints an added line in the colour of a note.
func (p *Page) Added(s string) string { return p.note.Sprint(s) }

// Word prints a finding's word in its colour, padded to six columns.
func (p *Page) Word(f *finding.Finding) string { return p.level(f).Sprintf("%-6s", f.Word()) }

// CautionCount counts a run's cautions, without repeats.
func CautionCount(run *finding.Run) int { return len(cautionsOf(run).merged()) }

// Heading prints a line in bold letters, and a blank one.
func (p *Page) Heading(s string) { p.heading(s) }

// List prints whole findings, like the text format.
func (p *Page) List(list []*finding.Finding) { p.findings(list) }

// Tally counts findings in words: "1 stop, 3 risk".
func Tally(list []*finding.Finding) string { return tally(list) }

// CautionLine is a caution on a page: its text, its source (which
// short lines leave out), and the house's pack that adds it, "" for a
// shipped one.
type CautionLine struct {
	Pack   string `json:"pack"`
	Text   string `json:"text"`
	Source string `json:"source"`
}

// Lines gives all cautions' short lines, in every report's order.
func (c *Cautions) Lines() []CautionLine {
	var out []CautionLine
	for _, one := range c.short() {
		out = append(out, CautionLine{Pack: one.pack, Text: one.text})
	}
	return out
}

// WholeLines gives the whole cautions, with details and source.
func (c *Cautions) WholeLines() []CautionLine {
	var out []CautionLine
	for _, one := range c.merged() {
		line := CautionLine{one.Pack, source.Safe(one.Text), source.Safe(one.Source)}
		for _, d := range one.details {
			if says, _ := c.says(d, source.Safe); says != "" {
				line.Text += " " + says
			}
		}
		out = append(out, line)
	}
	return out
}

// Walk calls the parts of a prelude that is printed differently.
func Walk(p Prelude, run *finding.Run) { prelude(p, run) }
