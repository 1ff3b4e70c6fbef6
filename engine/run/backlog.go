package run

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"

	"forebake/engine/backlog"
	"forebake/engine/files"
	"forebake/engine/finding"
	"forebake/engine/source"
)

var backlogFile = files.Kind{Name: "a backlog", Limit: backlog.MaxBytes}

// ReadBacklog reads a list of findings that stood when the rules were
// taken on.
func ReadBacklog(path string, texts files.Texts) (*backlog.List, source.Problems) {
	text, err := texts.Read(path, backlogFile)
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return nil, source.Problems{{Text: fmt.Sprintf("%s: no such file; forebake check "+
			"--write-backlog %s makes it", path, path)}}
	case err != nil:
		return nil, source.Problems{{Text: fmt.Sprintf("%s: %s", path, err)}}
	}
	return backlog.Read(source.New(filepath.ToSlash(path), text))
}

// cover removes a backlog's findings from the result. A notice names
// each finding that was cleared since.
func (r *Result) cover(list *backlog.List) {
	names := make([]string, len(r.Formulas))
	for i, f := range r.Formulas {
		names[i] = f.Name
	}
	left, covered, cleared := list.Cover(r.Findings, names)
	r.Findings, r.cleared = left, cleared
	r.Totals.Backlog = len(covered)
	gone := map[*finding.Finding]bool{}
	for _, f := range covered {
		gone[f] = true
	}
	for i := range r.Files {
		list := &r.Files[i].Findings
		*list = slices.DeleteFunc(*list, func(f *finding.Finding) bool { return gone[f] })
	}
	safety := map[string]bool{} // the rules of food safety
	for _, l := range r.houses {
		for _, one := range l.Rules.Rules {
			safety[one.ID] = safety[one.ID] || one.Safety
		}
	}
	reported := map[string]bool{}
	for _, e := range list.Entries {
		if safety[e.Rule] && !reported[e.Rule] {
			reported[e.Rule] = true
			r.Notices = append(
				r.Notices,
				fmt.Sprintf("%s: %s is of food safety, and no backlog covers it: "+
					"take the line out", e.Place, e.Rule),
			)
		}
	}
	for _, e := range cleared {
		if safety[e.Rule] {
			continue
		}
		times := ""
		if e.Times > 1 {
			times = fmt.Sprintf(", %d times", e.Times)
		}
		r.Notices = append(r.Notices,
			fmt.Sprintf("%s: cleared: %s on %s of %q%s; --write-backlog takes it off the list",
				e.Place, e.Rule, e.Subject, e.Formula, times))
	}
}

// NewBacklog is the list of a run's findings, as a file; with a
// backlog, what is left of it. skipped counts the food-safety findings,
// which no list takes. A list too long to be read again is an error.
func (r *Result) NewBacklog(today string) (text []byte, entries, skipped int, err error) {
	var list *backlog.List
	if r.backlog != nil {
		list = r.backlog.Less(r.cleared)
	} else {
		list, skipped = backlog.Of(r.Findings, today)
	}
	text = list.Text()
	return text, len(list.Entries), skipped, backlog.Fits(text)
}
