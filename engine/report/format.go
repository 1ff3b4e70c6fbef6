package report

import (
	"io"
	"slices"
	"strings"

	"forebake/engine/finding"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

// Format is one way to print a run.
type Format struct {
	Name   string
	Suffix string // of a file that holds it

	// Document is a format complete by itself: it is printed to the
	// screen even where no file could be read. Others are read beside
	// standard error, which says so.
	Document bool

	// Mends gives the formulas whose findings it prints with their
	// mends: a search for others would be for nothing.
	Mends func(f *Found, o Options) []finding.Group
	New   func(out io.Writer, o Options) Writer

	// Is reports whether a text is a report in this format, by its
	// first and last bytes: only such a file is overwritten.
	Is func(first, last []byte) bool
}

// Formats lists the formats by name. Each registers itself in its file.
// One that lacks a field does not compile, nor does one whose Writer
// lacks a method.
var Formats []Format

// register adds a format.
func register(f Format) {
	at, _ := slices.BinarySearchFunc(Formats, f.Name,
		func(f Format, name string) int { return strings.Compare(f.Name, name) })
	Formats = slices.Insert(Formats, at, f)
}

// MarkBytes is how many first and last bytes show a file's format.
const MarkBytes = 1 << 10

var totalsLine = spelling.Pattern(
	`(^|\n)(forebake: )?\d+ formulas?, \d+ rules?: \d+ stop, \d+ risk, [^\n]*\n$`)

func endsInTotals(_, last []byte) bool { return totalsLine.Match(last) }

var cautionsKey = []byte("\"cautions\": [")

func noMends(*Found, Options) []finding.Group { return nil }

func allMends(f *Found, _ Options) []finding.Group {
	formulas, _, _ := f.Groups()
	return formulas
}

// Mended gives the places of the formulas whose mends a format prints.
func (f *Format) Mended(run *finding.Run, o Options) (places []source.Place) {
	for _, g := range f.Mends(&Found{run}, o) {
		places = append(places, g.Place)
	}
	return places
}

// Writer prints one run in one format. Write calls every method once,
// in this order, with an empty list for nothing.
type Writer interface {
	Begin(h Head)
	Prelude
	Findings(f *Found)
	Assumed(list []finding.Assumptions) // what is taken for settings that are not written
	Notices(list []string)              // see finding.OneLine
	Totals(t finding.Totals)
	End() error // prints what is left, and gives the first error
}

// Prelude prints the head of every report: the cautions, and what a
// house or a broken file keeps unchecked.
type Prelude interface {
	Cautions(c *Cautions)
	Unread(list source.Problems)        // files that could not be read
	SetAside(list []*finding.Finding)   // food-safety findings that a house waives, whole
	Unchecked(list []finding.Unchecked) // food-safety packs that a house leaves out
	Loosened(list []finding.Loosened)   // food-safety rules that a house makes less strict
}

// Head is what a report may say of the whole run.
type Head struct {
	Version string
	Cards   func() []finding.Card // the rules in force by name; nil where they are not known
	House   string                // the flag with which why finds the house of this run
}

// Options are the reader's wishes.
type Options struct {
	Colour bool
	Width  int  // columns that text is wrapped to; 0 for 80
	All    bool // the findings of every formula, where a summary would stand
	// each unsure answer by itself, not those within the models'
	// error folded
	Each bool

	// Address gives the path by which a site knows a file; nil for its
	// given name.
	Address func(name string) string
}

// Columns is the width that the reader wants.
func (o Options) Columns() int {
	if o.Width == 0 {
		return 80
	}
	return o.Width
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

// Write prints a run in a format.
func Write(out io.Writer, f Format, run *finding.Run, o Options) error {
	w := f.New(out, o)
	w.Begin(Head{Version: run.Version, Cards: run.Cards, House: run.House})
	prelude(w, run)
	w.Findings(&Found{run})
	w.Assumed(run.Assumed)
	w.Notices(run.Notices)
	w.Totals(run.Totals)
	return w.End()
}

// WholeCautions prints the cautions of a run as text, each with its
// details and its source.
func WholeCautions(out io.Writer, run *finding.Run, o Options) error {
	t := textOf(out, o)
	t.wholeCautions(cautionsOf(run))
	t.Unread(run.Problems)
	return t.End()
}

// prelude prints a run's prelude. Every verb that prints about formulas
// calls it.
func prelude(p Prelude, run *finding.Run) {
	p.Cautions(cautionsOf(run))
	p.Unread(run.Problems)
	p.SetAside(run.SetAside())
	p.Unchecked(run.Unchecked)
	p.Loosened(run.Loosened)
}

// Found is a run's findings: as a list, and by what they are about.
type Found struct{ run *finding.Run }

// All gives every finding, sorted.
func (f *Found) All() []*finding.Finding { return f.run.Findings }

// Groups gives the findings by formula and by house file.
func (f *Found) Groups() (formulas, houses []finding.Group, clear []string) {
	return f.run.Groups()
}
