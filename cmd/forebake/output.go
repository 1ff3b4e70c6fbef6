package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/spf13/cobra"
	"golang.org/x/term"

	"forebake/engine"
	"forebake/engine/files"
	"forebake/engine/finding"
	"forebake/engine/report"
)

// output is one --as: a format, and a file to write it to or none.
type output struct {
	format report.Format
	file   string
}

func readOutputs(as []string) ([]output, error) {
	if len(as) == 0 {
		as = []string{"text"}
	}
	var out []output
	toScreen := 0
	for _, a := range as {
		one, err := readOutput(a)
		if err != nil {
			return nil, err
		}
		if one.file == "" {
			toScreen++
		}
		out = append(out, one)
	}
	if toScreen == 0 { // files are written beside the text, not in its place
		text, _ := report.FormatNamed("text")
		out = append([]output{{format: text}}, out...)
	}
	if toScreen > 1 {
		return nil, fmt.Errorf("--as: only one format goes to standard output; give the others a " +
			"file: --as json:out.json")
	}
	return out, nil
}

func readOutput(as string) (output, error) {
	name, file, hasFile := strings.Cut(as, ":")
	format, ok := report.FormatNamed(name)
	switch {
	case !ok:
		return output{}, noFormat(name, report.FormatNames())
	case hasFile && file == "":
		return output{}, fmt.Errorf("--as %s needs a file name after the colon", as)
	case strings.EqualFold(filepath.Ext(file), ".hcl"):
		return output{}, fmt.Errorf("--as %s would write over a formula or rule file; name it %s",
			as, file[:len(file)-len(".hcl")]+format.Suffix)
	}
	return output{format, file}, nil
}

// write prints a run to the screen and to the files asked for. Where no
// file could be read, the screen gets only a format that is a document:
// standard error says the same.
func write(cmd *cobra.Command, outputs []output, run *finding.Run, o report.Options) error {
	nothing := len(run.Formulas) == 0 && len(run.Problems) > 0
	for _, out := range outputs {
		if out.file == "" {
			if nothing && !out.format.Document {
				continue
			}
			if err := report.Write(cmd.OutOrStdout(), out.format, run, o); err != nil {
				return err
			}
			continue
		}
		var text bytes.Buffer
		inFile := report.Options{All: true, Each: o.Each, Address: o.Address}
		if err := report.Write(&text, out.format, run, inFile); err != nil {
			return err
		}
		if err := writeOutput(out.file, text.Bytes()); err != nil {
			return err
		}
	}
	return nil
}

// writeOutput writes a report to its file, whole or not at all. A pipe
// or a device cannot be renamed into place and is written directly.
func writeOutput(path string, text []byte) error {
	if info, err := os.Stat(path); err == nil && !info.Mode().IsRegular() && !info.IsDir() {
		return os.WriteFile(path, text, 0o666)
	}
	return files.WriteFile(path, text)
}

// narrowest and widest bound the columns that a text is wrapped to.
const narrowest, widest = 40, 120

// width gives the columns of a text's terminal, else those of COLUMNS,
// else 0.
func width(out io.Writer) int {
	columns := 0
	if f, ok := out.(*os.File); ok && term.IsTerminal(int(f.Fd())) {
		columns, _, _ = term.GetSize(int(f.Fd()))
	} else {
		columns, _ = strconv.Atoi(os.Getenv("COLUMNS"))
	}
	if columns <= 0 {
		return 0
	}
	return min(max(columns, narrowest), widest)
}

// widthOf gives the options of a page without colours.
func widthOf(out io.Writer) report.Options { return report.Options{Width: width(out)} }

// target is a file that a run is to write.
type target struct {
	flag string // that names it
	path string
	kind string // of the files that it may replace, with its article
	is   func(path string) bool
	own  bool // a file of its kind may have been read, and is replaced all the same
}

type targets []target

// targetsOf gives the files that a check is to write.
func targetsOf(outputs []output, writeBacklog string) targets {
	var out targets
	for _, o := range outputs {
		if o.file != "" {
			out = append(out, target{"--as", o.file, "a report in " + o.format.Name,
				isReport(o.format), false})
		}
	}
	if writeBacklog != "" {
		out = append(
			out,
			target{"--write-backlog", writeBacklog, "a backlog", engine.IsBacklog, true},
		)
	}
	return out
}

// pathsOf gives the paths of inputs.
func pathsOf(inputs []engine.Input) []string {
	var out []string
	for i := range inputs {
		if inputs[i].Path != "" {
			out = append(out, inputs[i].Path)
		}
	}
	return out
}

// check gives an error for a target that is among the files read, of
// another kind, or another target.
func (ts targets) check(read []string) error {
	for i, t := range ts {
		info, err := os.Stat(t.path)
		for _, other := range ts[:i] {
			same := strings.EqualFold(filepath.Clean(t.path), filepath.Clean(other.path))
			if there, fault := os.Stat(other.path); !same && err == nil && fault == nil {
				same = os.SameFile(info, there)
			}
			if same && (err != nil || info.Mode().IsRegular()) {
				return fmt.Errorf(
					"%s and %s both write %s; name two files",
					other.flag,
					t.flag,
					t.path,
				)
			}
		}
		if err != nil || !info.Mode().IsRegular() {
			continue // new, or a pipe; what is wrong with the path shows when it is written
		}
		fits := info.Size() > 0 && t.is(t.path)
		if fits && t.own {
			continue // the list in the folder that is checked
		}
		for _, path := range read {
			if there, err := os.Stat(path); err == nil && os.SameFile(info, there) {
				return fmt.Errorf(
					"%s %s would write over %s, which this run reads; name another file",
					t.flag,
					t.path,
					path,
				)
			}
		}
		if info.Size() > 0 && !fits {
			return fmt.Errorf(
				"%s %s: this file is not %s, and only such a one or an empty file is "+
					"written over; name another file",
				t.flag,
				t.path,
				t.kind,
			)
		}
	}
	return nil
}

// writable gives an error for a target that could not be written.
func (ts targets) writable() error {
	for _, t := range ts {
		if err := files.Writable(t.path); err != nil {
			return err
		}
	}
	return nil
}

// isReport reports whether a file is a report in a format.
func isReport(format report.Format) func(path string) bool {
	return func(path string) bool {
		first, last, err := files.Ends(path, report.MarkBytes)
		return err == nil && format.Is(first, last)
	}
}
