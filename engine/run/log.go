package run

import (
	"fmt"
	"os"
	"path/filepath"

	"forebake/engine/batch"
	"forebake/engine/files"
	"forebake/engine/formula"
	"forebake/engine/source"
)

// logFile is a log of batches.
var logFile = files.Kind{Name: "a log", Limit: batch.MaxBytes}

// LogPath is the path of the log beside an input's file; "" for none.
func (in *Input) LogPath() string {
	switch {
	case in.Path != "":
		return batch.PathOf(in.Path)
	case in.Beside != "":
		return batch.PathOf(in.Beside)
	}
	return ""
}

// log reads the log beside a formula file, nil for none.
func (h *Houses) log(in *Input) (*batch.Log, *source.File, source.Problems) {
	path := in.LogPath()
	if path == "" {
		return nil, nil, nil
	}
	if _, err := os.Stat(path); err != nil {
		return nil, nil, nil // most formulas have none
	}
	name := filepath.ToSlash(path)
	text, err := h.read(path, logFile)
	if err != nil {
		return nil, nil, source.Problems{{Text: fmt.Sprintf("%s: %s", name, err)}}
	}
	file := source.New(name, text)
	l, problems := batch.Read(file)
	return l, file, problems
}

// believe applies the newest batches' readings to a file's formulas. A
// broken log is a problem: it may turn an answer.
func (w *worker) believe(out *File, list []*formula.Formula) source.Problems {
	l, file, problems := w.houses.log(&out.Input)
	if l == nil || len(problems) > 0 {
		return problems
	}
	if w.keep {
		out.Log, out.LogText = l, file
	}
	out.Believe = func(f *formula.Formula) { l.Believe(f) }
	for _, f := range list {
		used, lost := l.Believe(f)
		if used > 0 {
			b, count, verb := l.Newest(f.Name), "1 reading", "counts"
			if used > 1 {
				count, verb = fmt.Sprintf("%d readings", used), "count"
			}
			out.notices = append(out.notices, fmt.Sprintf("%s: %s of batch %d (%s) %s as "+
				"measured in %q.", file.Name, count, b.Number, b.Date, verb, f.Name))
		}
		for _, e := range lost {
			out.notices = append(out.notices, fmt.Sprintf("%s: the reading of step %d does not "+
				"count: %q of %q is not in %q any more, or stands there twice.", e.Place, e.Step,
				e.Did, e.Part,
				f.Name))
		}
	}
	return nil
}
