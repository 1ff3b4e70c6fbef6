package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/finding"
	"forebake/engine/report"
	"forebake/engine/source"
	"forebake/engine/spelling"
)

func checkCommand() *cobra.Command {
	var as []string
	var name, colour, failAt, backlogFile, writeBacklog string
	var workers int
	var timing, commit bool
	cmd := &cobra.Command{
		Use:   "check [path ...]",
		Short: "Cautions, findings, and what cannot be answered yet and why",
		Long: `Checks formula files, or all formulas of a folder (this one when none is named).
A single - reads a formula from standard input. Waivers are held against
today, or against the date that FOREBAKE_TODAY gives (2026-11-25).

Exit status: 0 nothing at the failing level, 1 findings at or above it,
2 the input or the command could not be used.`,
		ValidArgsFunction: completeFormulas,
		RunE: func(cmd *cobra.Command, args []string) error {
			outputs, err := readOutputs(as)
			if err != nil {
				return err
			}
			useColour, err := wantsColour(colour, cmd.OutOrStdout())
			if err != nil {
				return err
			}
			if workers < 0 {
				return fmt.Errorf("--workers is a number of files from 1, not %d", workers)
			}
			var level *finding.Level
			if failAt != "" {
				l, ok := finding.LevelNamed(failAt)
				if !ok {
					return fmt.Errorf("--fail-at: no level %q; the levels are %s", failAt, strings.Join(finding.LevelNames, ", "))
				}
				level = &l
			}
			if commit {
				if args = engine.OfCommit(args); len(args) == 0 {
					return nil
				}
			}
			inputs, problems, err := readInputs(cmd, args, name)
			if err != nil {
				return err
			}
			e := engine.New()
			e.Workers, e.Timed = workers, timing
			if e.Today, err = today(); err != nil {
				return err
			}
			res := e.Check(inputs)
			var backlog *engine.Backlog
			if backlogFile != "" {
				var faults source.Problems
				if backlog, faults = engine.ReadBacklog(backlogFile); len(faults) > 0 {
					return complain(cmd, faults)
				}
				res.Cover(backlog)
			}
			if wantsMends(outputs) {
				e.Suggest(inputs, res)
			}
			res.Problems = append(problems, res.Problems...)
			if len(res.Formulas) > 0 || len(res.Problems) == 0 {
				if err := write(cmd, outputs, res, report.Options{Colour: useColour}); err != nil {
					return err
				}
			}
			if timing {
				if err := report.Times(cmd.ErrOrStderr(), res.Times); err != nil {
					return err
				}
			}
			if len(res.Problems) > 0 {
				return complain(cmd, res.Problems)
			}
			if writeBacklog != "" {
				text, entries, skipped, err := res.NewBacklog(backlog, e.Today.Format(time.DateOnly))
				if err != nil {
					return fmt.Errorf("%s: %w; nothing was written", writeBacklog, err)
				}
				if err := source.WriteFile(writeBacklog, text); err != nil {
					return err
				}
				return told(cmd, writeBacklog, entries, skipped)
			}
			if res.Failed(level) {
				return exit(exitFound)
			}
			return nil
		},
	}
	flags := cmd.Flags()
	flags.StringArrayVar(&as, "as", nil, "output `format`: "+strings.Join(report.FormatNames(), ", ")+"; json:out.json writes to a file; may be given several times")
	flags.StringVar(&name, "name", "standard-input.hcl", "`name` of the file that - reads")
	flags.StringVar(&backlogFile, "backlog", "", "`file` of findings that stood when the rules were taken on: they do not count, those of food safety always do")
	flags.StringVar(&writeBacklog, "write-backlog", "", "`file` to write today's findings to; beside --backlog, what is left of that list")
	flags.StringVar(&failAt, "fail-at", "", "`level` from which findings fail the run: "+strings.Join(finding.LevelNames, ", ")+" (default: the house's, else stop)")
	flags.StringVar(&colour, "color", "auto", "colour: auto, always, never")
	flags.BoolVar(&timing, "timing", false, "tell on standard error, after the report, what each rule took")
	flags.BoolVar(&commit, "commit", false, "the paths are the changed files of a commit: formulas are checked, and with a house or rule file among them this whole folder")
	flags.IntVar(&workers, "workers", 0, "files checked at once (default: one a processor)")
	return cmd
}

// told says what a written backlog holds. Writing one is no check: it fails for nothing that was found.
func told(cmd *cobra.Command, path string, entries, skipped int) error {
	text := fmt.Sprintf("%s: %s written", path, report.Count(entries, "line"))
	if skipped > 0 {
		text += fmt.Sprintf("; %s of food safety not among them: they go on counting", report.Count(skipped, "finding"))
	}
	_, err := fmt.Fprintf(cmd.ErrOrStderr(), "forebake: %s\n", source.Safe(text))
	return err
}

// today is the day that waivers are held against: the clock's, or that of FOREBAKE_TODAY, so that a run can be repeated.
func today() (time.Time, error) {
	text := os.Getenv("FOREBAKE_TODAY")
	if text == "" {
		return time.Now(), nil
	}
	day, err := time.Parse("2006-01-02", text)
	if err != nil {
		return day, fmt.Errorf("FOREBAKE_TODAY is %q, which is no date; write year, month and day, such as 2026-11-25, or unset it", text)
	}
	return day, nil
}

// wantsMends tells whether an output shows the mends of findings; error lines do not.
func wantsMends(outputs []output) bool {
	for _, out := range outputs {
		if out.format != "lines" {
			return true
		}
	}
	return false
}

// readInputs turns the arguments into files; "-" reads standard input.
func readInputs(cmd *cobra.Command, args []string, name string) ([]engine.Input, source.Problems, error) {
	if len(args) == 0 {
		args = []string{"."}
	}
	var paths []string
	var inputs []engine.Input
	for _, a := range args {
		if a != "-" {
			paths = append(paths, a)
			continue
		}
		if len(inputs) > 0 {
			return nil, nil, errors.New("- stands twice; standard input can be read once only")
		}
		text, err := io.ReadAll(io.LimitReader(cmd.InOrStdin(), source.MaxFileBytes+1))
		if err != nil {
			return nil, nil, fmt.Errorf("standard input: %w", err)
		}
		inputs = append(inputs, engine.Input{Name: name, Text: text, Dir: "."})
	}
	found, problems := engine.Inputs(paths)
	return append(inputs, found...), problems, nil
}

// output is one --as: a format, and a file to write it to or none.
type output struct {
	format string
	file   string
}

func readOutputs(as []string) ([]output, error) {
	if len(as) == 0 {
		return []output{{format: "text"}}, nil
	}
	var out []output
	toScreen := 0
	for _, a := range as {
		format, file, hasFile := strings.Cut(a, ":")
		if report.Formats[format] == nil {
			text := fmt.Sprintf("--as: no format %q", format)
			if near := spelling.Nearest(format, report.FormatNames(), 1); len(near) > 0 {
				text += "; nearest is " + near[0]
			}
			return nil, fmt.Errorf("%s; the formats are %s", text, strings.Join(report.FormatNames(), ", "))
		}
		if hasFile && file == "" {
			return nil, fmt.Errorf("--as %s needs a file name after the colon", a)
		}
		if strings.HasSuffix(file, ".hcl") {
			return nil, fmt.Errorf("--as %s would write over a formula or rule file; name it %s", a, strings.TrimSuffix(file, ".hcl")+"."+format)
		}
		if !hasFile {
			toScreen++
		}
		out = append(out, output{format, file})
	}
	if toScreen == 0 {
		out = append([]output{{format: "text"}}, out...) // files are written beside the text, not in its place
	}
	if toScreen > 1 {
		return nil, fmt.Errorf("--as: only one format goes to standard output; give the others a file: --as json:out.json")
	}
	return out, nil
}

func write(cmd *cobra.Command, outputs []output, res *engine.Result, o report.Options) error {
	run := &report.Run{Version: engine.Version, Cautions: res.Cautions, Findings: res.Findings, Loosened: res.Loosened, Unchecked: res.Unchecked, Totals: res.Totals, Notices: res.Notices, Problems: res.Problems, Cards: res.Cards}
	for _, f := range res.Formulas {
		run.Formulas = append(run.Formulas, report.Formula{Name: f.Name, Place: f.Place})
	}
	for _, out := range outputs {
		if out.file == "" {
			if err := report.Formats[out.format](cmd.OutOrStdout(), run, o); err != nil {
				return err
			}
			continue
		}
		var text bytes.Buffer
		if err := report.Formats[out.format](&text, run, report.Options{}); err != nil {
			return err
		}
		if err := writeOutput(out.file, text.Bytes()); err != nil {
			return err
		}
	}
	return nil
}

// writeOutput writes a report to its file, whole or not at all. What is no plain file, such as a pipe, cannot be put in place by a
// rename and is written to as it is.
func writeOutput(path string, text []byte) error {
	if info, err := os.Stat(path); err == nil && !info.Mode().IsRegular() && !info.IsDir() {
		return os.WriteFile(path, text, 0o666)
	}
	return source.WriteFile(path, text)
}

// wantsColour decides on colour: on a terminal only, and not where NO_COLOR is set, unless the user says otherwise.
func wantsColour(word string, out io.Writer) (bool, error) {
	switch word {
	case "always":
		return true, nil
	case "never":
		return false, nil
	case "auto":
		f, ok := out.(*os.File)
		if !ok || os.Getenv("NO_COLOR") != "" || os.Getenv("TERM") == "dumb" {
			return false, nil
		}
		info, err := f.Stat()
		return err == nil && info.Mode()&os.ModeCharDevice != 0, nil
	}
	return false, fmt.Errorf("--color is auto, always or never, not %q", word)
}
