// Package batch is the log of the bench: a formula's batches, with
// readings and notes at its steps and the tasting's marks.
//
// The log of buns.hcl is buns.log.hcl beside it. It only grows: entries
// are added at its end, and each new text begins with the old one.
// Batches and entries are numbered, so one that was removed or moved is
// found. Package run gives the formula the newest batch's readings.
// Nothing here reads or writes files.
package batch

import (
	"bytes"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"github.com/hashicorp/hcl/v2/hclsyntax"

	"forebake/engine/formula"
	"forebake/engine/quantity"
	"forebake/engine/reading"
	"forebake/engine/source"
)

// MaxBytes bounds a log: some two thousand entries.
const MaxBytes = source.MaxFileBytes

// Log is the batches of a formula file, oldest first.
type Log struct{ Batches []*Batch }

// Batch is one batch of a formula.
type Batch struct {
	Number  int // 1 for the first of the file
	Place   source.Place
	Formula string
	Date    string // "2026-11-26"
	Size    string // as written; "" where it is not said
	Room    formula.Given
	Entries []*Entry
}

// Entry is what was written down at one time.
type Entry struct {
	Number int // 1 for the first of the batch
	Place  source.Place
	Date   string

	// The step's number in the formula, its part and what it was, to
	// find it again.
	Step      int // 0 for the whole batch
	Part, Did string

	Reading *formula.Reading // nil for none
	Read    string           // the reading as written
	Note    string
	Marks   []Mark
}

// Mark is a mark of the tasting, from 1 to 5.
type Mark struct {
	Name  string
	Value int
}

// BestMark is the best mark.
const BestMark = 5

// PathOf is the path of the log of a formula file.
func PathOf(path string) string { return strings.TrimSuffix(path, ".hcl") + ".log.hcl" }

// Newest is a formula's newest batch; nil for none.
func (l *Log) Newest(name string) *Batch {
	for i := len(l.Batches) - 1; i >= 0; i-- {
		if l.Batches[i].Formula == name {
			return l.Batches[i]
		}
	}
	return nil
}

// Of lists the batches of a formula.
func (l *Log) Of(name string) (out []*Batch) {
	for _, b := range l.Batches {
		if b.Formula == name {
			out = append(out, b)
		}
	}
	return out
}

// StepOf finds an entry's step: the one with its number, else the only
// match of its part. It is nil where the formula has changed since.
func (e *Entry) StepOf(f *formula.Formula) *formula.Step {
	var found *formula.Step
	several := false
	for _, p := range f.Parts {
		if p.Name != e.Part {
			continue
		}
		for _, s := range p.Steps {
			if s.Text() != e.Did {
				continue
			}
			if s.Serial+1 == e.Step {
				return s
			}
			several = several || found != nil
			found = s
		}
	}
	if several {
		return nil
	}
	return found
}

// Believe gives a formula's steps the readings of its newest batch,
// unless they have their own. used counts them; lost are entries whose
// step is gone.
func (l *Log) Believe(f *formula.Formula) (used int, lost []*Entry) {
	b := l.Newest(f.Name)
	if b == nil {
		return 0, nil
	}
	given := map[*formula.Step]bool{}
	for _, e := range b.Entries {
		if e.Reading == nil {
			continue
		}
		s := e.StepOf(f)
		switch {
		case s == nil:
			lost = append(lost, e)
		case s.Reading == nil || given[s]:
			if !given[s] {
				used++
			}
			given[s] = true
			s.Reading = e.Reading // of two, that which was read last
		}
	}
	return used, lost
}

// Read reads a log. It is usable only when there are no problems.
func Read(f *source.File) (*Log, source.Problems) {
	l := &Log{}
	if n := len(f.Text); n > 0 && f.Text[n-1] != '\n' {
		return l, source.Problems{{Place: source.Place{File: f, Start: n, End: n},
			Text: "the log is cut short: its last line has no end; put back what is missing, or " +
				"take the last block out"}}
	}
	body, problems := source.Parse(f)
	if len(problems) > 0 {
		return l, problems
	}
	r := &reader{Reader: &reading.Reader{File: f}, log: l}
	r.Known(body, "a log", nil, []string{"batch", "entry"})
	for _, b := range body.Blocks {
		switch b.Type {
		case "batch":
			r.batch(b)
		case "entry":
			r.entry(b)
		}
	}
	if len(body.Blocks) == 0 && len(r.Problems) == 0 {
		r.Fault(source.Place{File: f}, "no batch in this log: forebake log FILE --new begins one")
	}
	return l, r.Problems.Sort()
}

type reader struct {
	*reading.Reader
	log *Log
}

// text reads a text attribute; "" where it is missing.
func (r *reader) text(b *hclsyntax.Block, key string) string {
	a := b.Body.Attributes[key]
	if a == nil {
		return ""
	}
	text, _, _ := r.Text(a.Expr, key)
	return text
}

// required is text for an attribute that must be there.
func (r *reader) required(b *hclsyntax.Block, key string) string {
	if b.Body.Attributes[key] == nil {
		r.Fault(r.Place(b.TypeRange), "this %s has no %s; put back what the log said",
			b.Type, key)
	}
	return r.text(b, key)
}

// date reads a day.
func (r *reader) date(b *hclsyntax.Block) string {
	text := r.required(b, "date")
	if _, err := time.Parse(time.DateOnly, text); text != "" && err != nil {
		r.Fault(r.Place(b.Body.Attributes["date"].Expr.Range()),
			"date must be year, month and day such as \"2026-11-26\", not %q", source.Safe(text))
	}
	return text
}

func (r *reader) batch(b *hclsyntax.Block) {
	label, at := r.Label(b)
	r.Known(b.Body, "a batch", []string{"formula", "date", "size", "room"}, nil)
	out := &Batch{Number: len(r.log.Batches) + 1, Place: at}
	if label != strconv.Itoa(out.Number) {
		r.Fault(at, "batch %q stands where batch %d should; a log is never changed: put back what "+
			"was taken out or moved", source.Safe(label), out.Number)
	}
	out.Formula, out.Date = r.required(b, "formula"), r.date(b)
	out.Size = r.text(b, "size")
	if a := b.Body.Attributes["room"]; a != nil {
		out.Room, _ = r.Quantity(a.Expr, quantity.Of(quantity.Temperature), "room")
	}
	r.log.Batches = append(r.log.Batches, out)
}

func (r *reader) entry(b *hclsyntax.Block) {
	label, at := r.Label(b)
	r.Known(b.Body, "an entry",
		[]string{"date", "step", "part", "did", "read", "note", "marks"}, nil)
	of, number, _ := strings.Cut(label, ".")
	n, err := strconv.Atoi(of)
	if err != nil || n < 1 || n > len(r.log.Batches) {
		r.Fault(at, "entry %q is of no batch above it; a log is never changed: put back what was "+
			"taken out or moved", source.Safe(label))
		return
	}
	to := r.log.Batches[n-1]
	e := &Entry{Number: len(to.Entries) + 1, Place: at}
	if number != strconv.Itoa(e.Number) {
		r.Fault(at, "entry %q stands where entry %d.%d should; a log is never changed: put back "+
			"what was taken out or moved", source.Safe(label), n, e.Number)
	}
	e.Date, e.Note = r.date(b), r.text(b, "note")
	if a := b.Body.Attributes["step"]; a != nil {
		if x, place, ok := r.Number(a.Expr, 1, math.MaxInt32, "step"); ok {
			if e.Step = int(x); float64(e.Step) != x {
				r.Fault(place, "step is a whole number, such as 3")
			}
		}
		e.Part, e.Did = r.required(b, "part"), r.required(b, "did")
	}
	if a := b.Body.Attributes["read"]; a != nil {
		if e.Step == 0 {
			r.Fault(r.Place(a.SrcRange), "a reading is of a step: write step = 3 beside it")
		}
		e.Read, _, _ = r.Text(a.Expr, "read")
		e.Reading = formula.ReadReading(r.Reader, a.Expr, "read")
	}
	if a := b.Body.Attributes["marks"]; a != nil {
		r.marks(a.Expr, e)
	}
	to.Entries = append(to.Entries, e)
}

func (r *reader) marks(x hclsyntax.Expression, e *Entry) {
	pairs, _ := r.Pairs(x, "marks", nil)
	seen := map[string]bool{}
	for _, p := range pairs {
		v, at, ok := r.Number(p.Value, 1, BestMark, "a mark")
		switch {
		case !ok:
		case v != math.Trunc(v):
			r.Fault(at, "a mark is a whole number from 1 to %d", BestMark)
		case seen[p.Key]:
			r.Fault(p.Place, "two marks are named %q", source.Safe(p.Key))
		default:
			e.Marks = append(e.Marks, Mark{p.Key, int(v)})
		}
		seen[p.Key] = true
	}
}

// heading begins a new log.
const heading = "# What happened at the bench. forebake log adds to the end, and changes nothing " +
	"that stands here.\n"

// Add gives the text of a log with a batch and an entry at its end,
// each nil for none. The entry is of that batch, else of its
// formula's newest one. The new text begins with the old one and
// reads without a problem.
func (l *Log) Add(name string, old []byte, of string, b *Batch, e *Entry) ([]byte, error) {
	var out bytes.Buffer
	out.Write(old)
	if len(old) == 0 {
		out.WriteString(heading)
	}
	to := l.Newest(of)
	if b != nil {
		b.Number = len(l.Batches) + 1
		to = b
		fmt.Fprintf(&out, "\nbatch \"%d\" {\n", b.Number)
		put(&out, "formula", b.Formula)
		put(&out, "date", b.Date)
		put(&out, "size", b.Size)
		put(&out, "room", b.Room.Text)
		out.WriteString("}\n")
	}
	if e != nil && to != nil {
		e.Number = len(to.Entries) + 1
		fmt.Fprintf(&out, "\nentry \"%d.%d\" {\n", to.Number, e.Number)
		put(&out, "date", e.Date)
		if e.Step > 0 {
			fmt.Fprintf(&out, "  step = %d\n", e.Step)
			put(&out, "part", e.Part)
			put(&out, "did", e.Did)
		}
		put(&out, "read", e.Read)
		put(&out, "note", e.Note)
		if len(e.Marks) > 0 {
			var marks []string
			for _, m := range e.Marks {
				marks = append(marks, fmt.Sprintf("%s = %d", reading.Quoted(m.Name), m.Value))
			}
			fmt.Fprintf(&out, "  marks = { %s }\n", strings.Join(marks, ", "))
		}
		out.WriteString("}\n")
	}
	text := out.Bytes()
	if len(text) > MaxBytes {
		return nil, fmt.Errorf("%s: with this the log is longer than %d KB; give it another name, "+
			"such as %s, and a new one is begun", name, MaxBytes>>10,
			strings.TrimSuffix(name, ".log.hcl")+"-old.log.hcl")
	}
	if _, problems := Read(source.New(name, text)); len(problems) > 0 {
		// it begins with the key, which is the flag
		return nil, fmt.Errorf("--%s", problems[0].Text)
	}
	return text, nil
}

// put writes a text, if there is one.
func put(out *bytes.Buffer, key, text string) {
	if text != "" {
		fmt.Fprintf(out, "  %s = %s\n", key, reading.Quoted(text))
	}
}
