package report

import (
	"io"

	"forebake/engine/finding"
)

// Page is a text laid out as the text format is: its width, its colours, its prelude.
type Page struct{ *text }

// NewPage begins a page without a prelude.
func NewPage(out io.Writer, o Options) *Page { return &Page{textOf(out, o)} }

// PageOf begins a page about the formulas of a run with the prelude.
func PageOf(out io.Writer, run *finding.Run, o Options) *Page {
	p := NewPage(out, o)
	prelude(p, run)
	return p
}

// Paragraph wraps a text to the width. first and rest begin its first and its other lines.
func (p *Page) Paragraph(s, first, rest string) { p.paragraph(s, first, rest) }

// Fits reports whether a text fits into one line.
func (p *Page) Fits(s string) bool { return columns(s) <= p.width }

// Bold prints a text in bold letters.
func (p *Page) Bold(s string) string { return p.bold.Sprint(s) }

// Faint prints a text in faint letters.
func (p *Page) Faint(s string) string { return p.faint.Sprint(s) }

// Removed prints a line that is taken out in the colour of a stop.
func (p *Page) Removed(s string) string { return p.stop.Sprint(s) }

// Added prints a line that is put in in the colour of a note.
func (p *Page) Added(s string) string { return p.note.Sprint(s) }

// Word prints the word of a finding in its colour, filled up to six columns.
func (p *Page) Word(f *finding.Finding) string { return p.level(f).Sprintf("%-6s", word(f)) }

// CautionCount counts the cautions of a run, each once.
func CautionCount(run *finding.Run) int { return len(cautionsOf(run).merged()) }
