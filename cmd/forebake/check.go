package main

import (
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/files"
	"forebake/engine/finding"
	"forebake/engine/page"
	"forebake/engine/report"
	"forebake/engine/source"
)

// checkFlags are the flags of check.
type checkFlags struct {
	as                                  []string
	name, failAt, backlog, writeBacklog string
	workers                             int
	timing, commit, all                 bool
}

func checkCommand() *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use: "check [path ...]",
		Example: `  forebake check formulas/cinnamon-buns.hcl
  forebake check --as text --as sarif:out.sarif --fail-at risk formulas`,
		Short: "Cautions, findings, and what cannot be answered yet and why",
		Long: `Checks formula files, or all formulas of a folder (this one when none is named).
A single - reads a formula from standard input. Waivers are held against
today, or against the date that FOREBAKE_TODAY gives (2026-11-25).

Exit status: 0 nothing at the failing level, 1 findings at or above it,
2 the input or the command could not be used.`,
		ValidArgsFunction: completeFormulas,
		RunE:              f.check,
	}
	flags := cmd.Flags()
	flags.StringArrayVar(
		&f.as,
		"as",
		nil,
		"output `format`: "+strings.Join(report.FormatNames(), ", ")+
			"; json:out.json writes to a file; may be given several times",
	)
	completeFlag(cmd, "as", completeWords(report.FormatNames()))
	flags.StringVar(&f.name, "name", "standard-input.hcl", "`name` of the file that - reads")
	flags.StringVar(&f.backlog, "backlog", "", "`file` of findings that stood when the rules were "+
		"taken on: they do not count, those of food safety always do")
	completeFlag(cmd, "backlog", completeFormulas)
	flags.StringVar(&f.writeBacklog, "write-backlog", "",
		"`file` to write today's findings to; beside --backlog, what is left of that list")
	wordFlag(cmd, &f.failAt, "fail-at", "",
		"`level` from which findings fail the run, in place of the house's", failLevels)
	flags.BoolVar(&f.all, "all", false,
		"print every finding of every formula and each unsure answer; of more than three formulas "+
			"a summary is printed, and one line of what only the models' error leaves open")
	flags.BoolVar(&f.timing, "timing", false,
		"tell on standard error, after the report, what each rule took")
	flags.BoolVar(&f.commit, "commit", false,
		"the paths are the changed files of a commit: formulas are checked, and with a house or "+
			"rule file among them this whole folder")
	flags.IntVar(&f.workers, "workers", 0, "files checked at once (default: one a processor)")
	return cmd
}

// check runs the verb.
func (f *checkFlags) check(cmd *cobra.Command, args []string) error {
	outputs, err := readOutputs(f.as)
	if err != nil {
		return err
	}
	if f.workers < 0 {
		return fmt.Errorf("--workers is a number of files from 1, not %d", f.workers)
	}
	level, err := readLevel(f.failAt)
	if err != nil {
		return err
	}
	e, err := newEngine()
	if err != nil {
		return err
	}
	e.Workers, e.Timed = f.workers, f.timing
	inputs, err := f.inputs(cmd, e, args)
	if err != nil || len(inputs) == 0 {
		return err
	}
	targets := targetsOf(outputs, f.writeBacklog)
	if err := targets.check(pathsOf(inputs)); err != nil {
		return err
	}
	if err := targets.writable(); err != nil { // before the run, not after it
		return err
	}
	if f.backlog != "" {
		list, faults := e.ReadBacklog(f.backlog)
		if len(faults) > 0 {
			return complain(cmd, faults)
		}
		e.Backlog = list
	}
	res := e.Check(inputs)
	var mended []source.Place
	for _, o := range outputs {
		mended = append(mended, o.format.Mended(&res.Run, report.Options{All: f.all})...)
	}
	e.Suggest(res, mended)
	if err := targets.check(e.Opened()); err != nil {
		return err
	}
	res.House = whyFlag(res.HouseFiles())
	o := looks(cmd, cmd.OutOrStdout())
	o.All, o.Each, o.Address = f.all, f.all, files.InRepository()
	if err := write(cmd, outputs, &res.Run, o); err != nil {
		return err
	}
	if f.timing {
		if err := page.Times(cmd.ErrOrStderr(), res.Times,
			looks(cmd, cmd.ErrOrStderr())); err != nil {
			return err
		}
	}
	switch {
	case len(res.Problems) > 0:
		if f.writeBacklog != "" {
			defer cmd.PrintErrf(
				"forebake: %s: nothing was written, for a file that could not be read "+
					"is not known to have no findings\n",
				source.Safe(f.writeBacklog),
			)
		}
		return complain(cmd, res.Problems)
	case f.writeBacklog != "":
		return f.saveBacklog(cmd, res, e.Today.Format(time.DateOnly))
	case f.failAt != failAtNothing && res.Failed(level):
		return exit(exitFound)
	}
	return nil
}

// inputs gives the files to check: none for a commit without a formula,
// a rule or a house.
func (f *checkFlags) inputs(cmd *cobra.Command, e *engine.Engine, args []string) (
	[]engine.Input, error) {
	if f.commit {
		return e.OfCommit(args), nil
	}
	return readInputs(cmd, args, f.name)
}

// saveBacklog writes a run's findings as a backlog and says what the
// file holds. It fails for no finding.
func (f *checkFlags) saveBacklog(cmd *cobra.Command, res *engine.Result, today string) error {
	text, entries, skipped, err := res.NewBacklog(today)
	if err != nil {
		return fmt.Errorf("%s: %w; nothing was written", f.writeBacklog, err)
	}
	if err := files.WriteFile(f.writeBacklog, text); err != nil {
		return err
	}
	said := fmt.Sprintf("%s: %s written", f.writeBacklog, report.Count(entries, "line"))
	if skipped > 0 {
		said += fmt.Sprintf("; %s of food safety not among them: they go on counting",
			report.Count(skipped, "finding"))
	}
	_, err = fmt.Fprintf(cmd.ErrOrStderr(), "forebake: %s\n", source.Safe(said))
	return err
}

// failAtNothing is the word with which no finding fails a run: the
// report stays the same.
const failAtNothing = "nothing"

var failLevels = append(slices.Clone(finding.LevelNames), failAtNothing)

// readLevel reads the level of --fail-at; nil for none, and
// for failAtNothing.
func readLevel(name string) (*finding.Level, error) {
	if name == "" || name == failAtNothing {
		return nil, nil
	}
	level, ok := finding.LevelNamed(name)
	if !ok {
		return nil, fmt.Errorf("--fail-at: no level %q; the levels are %s", name,
			strings.Join(failLevels, ", "))
	}
	return &level, nil
}

// whyFlag is the flag with which why finds the house of this run from
// this folder; "" for the folder's own.
func whyFlag(files []string) string {
	own, err := engine.HouseAt(".")
	switch {
	case err != nil || len(files) == 0 || len(files) == 1 && files[0] == filepath.ToSlash(own):
		return ""
	case len(files) == 1:
		return " --house " + files[0]
	}
	return " --house FILE"
}

// newEngine gives an engine that judges waivers by today.
func newEngine() (*engine.Engine, error) {
	day, err := today()
	e := engine.New()
	e.Today = day
	return e, err
}

// today is the day that waivers are judged by: the clock's, or
// FOREBAKE_TODAY's, so that a run can be repeated.
func today() (time.Time, error) {
	text := os.Getenv("FOREBAKE_TODAY")
	if text == "" {
		return time.Now(), nil
	}
	day, err := time.Parse("2006-01-02", text)
	if err != nil {
		return day, fmt.Errorf("FOREBAKE_TODAY is %q, which is no date; write year, month and "+
			"day, such as 2026-11-25, or unset it", text)
	}
	return day, nil
}

// readInputs turns the arguments into inputs; "-" reads standard input.
func readInputs(cmd *cobra.Command, args []string, name string) ([]engine.Input, error) {
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
			return nil, errors.New("- stands twice; standard input can be read once only")
		}
		text, err := io.ReadAll(io.LimitReader(cmd.InOrStdin(), source.MaxFileBytes+1))
		if err != nil {
			return nil, fmt.Errorf("standard input: %w", err)
		}
		inputs = append(inputs,
			engine.Input{Name: name, Text: text, Dir: filepath.Dir(filepath.FromSlash(name))})
	}
	return append(inputs, engine.Inputs(paths)...), nil
}

// looks gives a page's colours and width on an output. The value of
// --color was checked before.
func looks(cmd *cobra.Command, out io.Writer) report.Options {
	colour, _ := wantsColour(cmd.Flag("color").Value.String(), out)
	return report.Options{Colour: colour, Width: width(out)}
}

// colourFlag declares --color of all verbs.
func colourFlag(root *cobra.Command) {
	word := new(string)
	root.PersistentFlags().StringVar(word, "color", autoColour,
		"colour `when`: "+strings.Join(colours, ", "))
	completeFlag(root, "color", completeWords(colours))
	root.PersistentPreRunE = func(*cobra.Command, []string) error {
		_, err := wantsColour(*word, nil)
		return err
	}
}

// The words of --color.
const (
	autoColour   = "auto"
	alwaysColour = "always"
	neverColour  = "never"
)

var colours = []string{autoColour, alwaysColour, neverColour}

// wantsColour decides on colour: on a terminal, unless --color says
// otherwise. Of the shared variables NO_COLOR goes first, then
// FORCE_COLOR and CLICOLOR_FORCE, then CLICOLOR=0.
func wantsColour(word string, out io.Writer) (bool, error) {
	switch word {
	case alwaysColour:
		return true, nil
	case neverColour:
		return false, nil
	case autoColour:
		set := func(name string) bool { v := os.Getenv(name); return v != "" && v != "0" }
		switch {
		case os.Getenv("NO_COLOR") != "":
			return false, nil
		case set("FORCE_COLOR") || set("CLICOLOR_FORCE"):
			return true, nil
		}
		return isTerminal(out) && os.Getenv("CLICOLOR") != "0", nil
	}
	return false, oneOf("--color is", word, colours)
}

// isTerminal reports whether an output is a terminal that takes
// control characters.
func isTerminal(out io.Writer) bool {
	f, ok := out.(*os.File)
	if !ok || os.Getenv("TERM") == "dumb" {
		return false
	}
	info, err := f.Stat()
	return err == nil && info.Mode()&os.ModeCharDevice != 0
}
