package engine

import (
	"cmp"
	"fmt"
	"path/filepath"
	"slices"
	"strings"

	"forebake/engine/batch"
	"forebake/engine/files"
	"forebake/engine/finding"
	"forebake/engine/formula"
	"forebake/engine/run"
	"forebake/engine/source"
)

// Bench is what is written down about a batch.
type Bench struct {
	Formula    string // of the file; "" where it holds one
	New        bool   // a batch begins with it
	Size, Room string
	Step       int // by its number on the sheet; 0 for none
	Read, Note string
	Marks      []batch.Mark
	Date       string
}

// Says reports whether there is anything to write down.
func (b *Bench) Says() bool {
	return b.New || b.Size != "" || b.Room != "" || b.Read != "" || b.Note != "" || len(b.Marks) > 0
}

// Logged is what Log has to write.
type Logged struct {
	Path string
	Says string // what is added, in one line

	rewrite files.Rewrite
}

// Write appends what was said, under the folder's lock. A log that has
// changed meanwhile stays, with an error.
func (l *Logged) Write() error { return files.WriteAll([]files.Rewrite{l.rewrite}) }

// Log computes the addition to a formula file's log. It writes nothing.
func (e *Engine) Log(in Input, b Bench) (*Logged, *Result, error) {
	res := e.do([]Input{in}, run.Options{Keep: true})
	if len(res.Problems) > 0 {
		return nil, res, nil
	}
	file := &res.Files[0]
	f, problems := theFormula(file, b.Formula)
	if err := problems.Err(); err != nil {
		return nil, res, err
	}
	l := file.Log
	var old []byte
	if l == nil {
		l = &batch.Log{}
	} else {
		old = file.LogText.Text
	}
	var begun *batch.Batch
	switch newest := l.Newest(f.Name); {
	case b.New || newest == nil:
		begun = &batch.Batch{Formula: f.Name, Date: b.Date, Size: b.Size}
		begun.Room.Text = b.Room
	case b.Size != "" || b.Room != "":
		return nil, res, fmt.Errorf("--size and --room are said as a batch begins, and batch %d "+
			"has; add --new to begin another", newest.Number)
	}
	entry, err := b.entry(f)
	if err != nil {
		return nil, res, err
	}
	path := in.LogPath()
	out := &Logged{Path: filepath.ToSlash(path)}
	text, err := l.Add(out.Path, old, f.Name, begun, entry)
	if err != nil {
		return nil, res, fmt.Errorf("%w; nothing was written", err)
	}
	out.rewrite = files.Rewrite{Path: path, Before: old, After: text, New: file.LogText == nil}
	out.Says = says(begun, entry)
	return out, res, nil
}

// entry is what is said of a step or of the batch; nil for nothing.
func (b *Bench) entry(f *formula.Formula) (*batch.Entry, error) {
	if b.Read == "" && b.Note == "" && len(b.Marks) == 0 {
		if b.Step > 0 {
			return nil, fmt.Errorf("--step %d: say what was read or noted there: --read \"11 C "+
				"after 6 h\", --note \"soft\"", b.Step)
		}
		return nil, nil
	}
	out := &batch.Entry{Date: b.Date, Step: b.Step, Read: b.Read, Note: b.Note, Marks: b.Marks}
	if b.Step == 0 {
		if b.Read != "" {
			return nil, fmt.Errorf("--read is of a step: add --step 3, by the number on the sheet")
		}
		return out, nil
	}
	for _, p := range f.Parts {
		for _, s := range p.Steps {
			if s.Serial+1 == b.Step {
				out.Part, out.Did = p.Name, s.Text()
				return out, nil
			}
		}
	}
	return nil, fmt.Errorf("--step %d: %q has steps 1 to %d, as its sheet numbers them", b.Step,
		f.Name, f.Steps)
}

// says tells in one line what is added.
func says(b *batch.Batch, e *batch.Entry) string {
	var out []string
	if b != nil {
		one := fmt.Sprintf("batch %d begun", b.Number)
		for _, text := range []string{b.Size, b.Room.Text} {
			if text != "" {
				one += ", " + text
			}
		}
		out = append(out, one)
	}
	if e != nil {
		var what []string
		if e.Step > 0 {
			what = append(what, fmt.Sprintf("step %d, %s of %s", e.Step, e.Did, e.Part))
		}
		for _, text := range []string{e.Read, e.Note} {
			if text != "" {
				what = append(what, text)
			}
		}
		for _, m := range e.Marks {
			what = append(what, fmt.Sprintf("%s %d of %d", m.Name, m.Value, batch.BestMark))
		}
		out = append(out, "added: "+strings.Join(what, "; "))
	}
	return strings.Join(out, "; ")
}

// Batches sets the batches of a file's formulas side by side: those of
// the given numbers, else each formula's newest two.
func (e *Engine) Batches(in Input, numbers []int) ([]finding.Batches, *Result, error) {
	res := e.do([]Input{in}, run.Options{Keep: true})
	if len(res.Problems) > 0 {
		return nil, res, nil
	}
	file := &res.Files[0]
	if file.Log == nil {
		return nil, res, fmt.Errorf("%s has no log; forebake log %s --new begins one",
			in.Name, in.Name)
	}
	for _, n := range numbers {
		if n < 1 || n > len(file.Log.Batches) {
			return nil, res, fmt.Errorf("no batch %d in %s; it holds batches 1 to %d", n,
				filepath.ToSlash(in.LogPath()), len(file.Log.Batches))
		}
	}
	var out []finding.Batches
	for _, f := range file.Models {
		list := file.Log.Of(f.Name)
		if len(numbers) > 0 {
			list = slices.DeleteFunc(slices.Clone(list), func(b *batch.Batch) bool {
				return !slices.Contains(numbers, b.Number)
			})
		} else {
			list = list[max(0, len(list)-2):]
		}
		if len(list) > 0 {
			out = append(out, batchesOf(f, list))
		}
	}
	return out, res, nil
}

// batchesOf sets batches side by side.
func batchesOf(f *formula.Formula, list []*batch.Batch) finding.Batches {
	out := finding.Batches{Formula: f.Name}
	rowOf := func(rows *[]finding.BatchRow, name string) *finding.BatchRow {
		for i := range *rows {
			if (*rows)[i].Name == name {
				return &(*rows)[i]
			}
		}
		*rows = append(*rows, finding.BatchRow{Name: name, Cells: make([]string, len(list))})
		return &(*rows)[len(*rows)-1]
	}
	for i, b := range list {
		out.Heads = append(out.Heads, finding.BatchHead{Number: b.Number, Date: b.Date,
			Size: b.Size,
			Room: b.Room.Text})
		for _, e := range b.Entries {
			said := e.Read
			if e.Note != "" {
				said = strings.TrimPrefix(said+"; "+e.Note, "; ")
			}
			switch {
			case e.Step > 0:
				addCell(stepRow(&out.Steps, f, e, len(list)), i, said)
			case said != "":
				addTo(&rowOf(&out.Notes, "note").Cells[i], said)
			}
			for _, m := range e.Marks {
				addTo(&rowOf(&out.Marks, m.Name).Cells[i],
					fmt.Sprintf("%d of %d", m.Value, batch.BestMark))
			}
		}
	}
	slices.SortStableFunc(out.Steps, func(a, b finding.BatchStep) int {
		return cmp.Compare(a.Number, b.Number)
	})
	return out
}

func addCell(row *finding.BatchStep, i int, said string) { addTo(&row.Cells[i], said) }

// addTo adds to what a cell says already.
func addTo(cell *string, said string) {
	if *cell != "" && said != "" {
		said = *cell + "; " + said
	}
	if said != "" {
		*cell = said
	}
}

// stepRow finds or makes the row of an entry's step.
func stepRow(rows *[]finding.BatchStep, f *formula.Formula, e *batch.Entry, n int,
) *finding.BatchStep {
	for i := range *rows {
		if r := &(*rows)[i]; r.Step == e.Did && r.Part == e.Part && r.Number == e.Step {
			return r
		}
	}
	*rows = append(*rows, finding.BatchStep{Number: e.Step, Step: e.Did, Part: e.Part,
		Cells: make([]string, n), Changed: e.StepOf(f) == nil})
	return &(*rows)[len(*rows)-1]
}

// ReadMark reads a mark: "crumb=4", or "4" for the taste.
func ReadMark(text string) (batch.Mark, error) {
	name, value, has := strings.Cut(text, "=")
	if !has {
		name, value = "taste", text
	}
	name = strings.TrimSpace(name)
	for v := 1; v <= batch.BestMark; v++ {
		if strings.TrimSpace(value) == fmt.Sprint(v) && name != "" {
			return batch.Mark{Name: name, Value: v}, nil
		}
	}
	return batch.Mark{}, fmt.Errorf("%q is no mark; write a whole number from 1 to %d, or one "+
		"with its name: crumb=4", source.Safe(text), batch.BestMark)
}
