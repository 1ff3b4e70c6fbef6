package engine

import (
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"

	"forebake/engine/backlog"
	"forebake/engine/finding"
	"forebake/engine/source"
)

// Backlog is a list of findings that stood when the rules were taken on.
type Backlog struct {
	list    *backlog.List
	cleared []backlog.Entry // since; known once it was laid over a run
}

// ReadBacklog reads a list.
func ReadBacklog(path string) (*Backlog, source.Problems) {
	text, err := os.ReadFile(path)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, source.Problems{{Text: fmt.Sprintf("%s: no such file; forebake check --write-backlog %s makes it", path, path)}}
	case err != nil:
		return nil, source.Problems{{Text: err.Error()}}
	}
	list, problems := backlog.Read(source.New(filepath.ToSlash(path), text))
	return &Backlog{list: list}, problems
}

// Cover lays a backlog over a run: what is on it no longer counts, and a notice says what has been cleared since.
func (r *Result) Cover(b *Backlog) {
	names := make([]string, len(r.Formulas))
	for i, f := range r.Formulas {
		names[i] = f.Name
	}
	left, covered, cleared := b.list.Cover(r.Findings, names)
	r.Findings, b.cleared = left, cleared
	r.Totals = finding.Totals{Formulas: r.Totals.Formulas, Rules: r.Totals.Rules, Backlog: len(covered)}
	for _, f := range left {
		r.Totals.Count(f)
	}
	for _, e := range cleared {
		times := ""
		if e.Times > 1 {
			times = fmt.Sprintf(", %d times", e.Times)
		}
		r.Notices = append(r.Notices, fmt.Sprintf("%s: cleared: %s on %s of %q%s; --write-backlog takes it off the list", e.Place, e.Rule, e.Subject, e.Formula, times))
	}
}

// NewBacklog is the list of what a run found, as a file; with one that was laid over the run before, it is what is left of that one.
// skipped counts the findings of food safety, which no list takes. A list too long to be read again is an error.
func (r *Result) NewBacklog(old *Backlog, today string) (text []byte, entries, skipped int, err error) {
	var l *backlog.List
	if old != nil {
		l = old.list.Less(old.cleared)
	} else {
		l, skipped = backlog.Of(r.Findings, today)
	}
	text = l.Text()
	return text, len(l.Entries), skipped, backlog.Fits(text)
}
