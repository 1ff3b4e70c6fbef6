// Package page prints the pages of the verbs other than check: mend,
// compare, facts, history, why, packs, the catalogue of figures, and
// the times of a check.
//
// Pages about formulas begin with the prelude of the formats
// (report.PageOf). A page changes no answer and reads no file.
package page

import (
	"io"

	"forebake/engine/finding"
	"forebake/engine/report"
)

// text is a page under way.
type text struct{ *report.Page }

func newText(w io.Writer, o report.Options) *text { return &text{report.NewPage(w, o)} }

// write prints a page about the formulas of a run: the prelude, then
// the body.
func write(w io.Writer, run *finding.Run, o report.Options, body func(t *text)) error {
	t := &text{report.PageOf(w, run, o)}
	body(t)
	return t.End()
}
