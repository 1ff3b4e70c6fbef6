package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"time"

	"github.com/spf13/cobra"

	"forebake/engine"
	"forebake/engine/page"
)

func logCommand() *cobra.Command {
	var b engine.Bench
	var marks []string
	var as *string
	cmd := &cobra.Command{
		Use:   "log FILE [--step N --read \"11 C after 6 h\"] [--note TEXT] [--mark crumb=4]",
		Short: "Writes down what happened at the bench, beside the formula",
		Long: `Adds to the log beside a formula file: that of buns.hcl is buns.log.hcl. A batch
begins with --new, and by itself where there is none; --size and --room are of
its begin. What follows is of the newest batch: what was read at a step (by its
number on the sheet), notes, and marks of the tasting from 1 to 5. Nothing that
stands in a log is ever changed.

A check takes the readings of the newest batch as measured in each step, unless
the formula has its own. With nothing to write it prints the two newest batches,
as compare FILE does.`,
		Example: `  forebake log buns.hcl --new --size "36 pieces" --room 23C
  forebake log buns.hcl --step 3 --read "11 C after 6 h" --note "soft" --mark crumb=4`,
		ValidArgsFunction: completeFormulas,
		Args: func(_ *cobra.Command, args []string) error {
			if len(args) != 1 {
				return errors.New("log takes one formula file: forebake log buns.hcl --step 3 " +
					"--read \"11 C after 6 h\"")
			}
			return nil
		},
		RunE: func(cmd *cobra.Command, args []string) error {
			in, err := logInput(args[0])
			if err != nil {
				return err
			}
			for _, m := range marks {
				mark, err := engine.ReadMark(m)
				if err != nil {
					return fmt.Errorf("--mark: %w", err)
				}
				b.Marks = append(b.Marks, mark)
			}
			e, err := newEngine()
			if err != nil {
				return err
			}
			if b.Date == "" {
				b.Date = e.Today.Format(time.DateOnly)
			}
			if !b.Says() && b.Step == 0 {
				return printBatches(cmd, e, in, nil, *as)
			}
			return writeLog(cmd, e, in, b, *as)
		},
	}
	as = formFlag(cmd, "a log is printed as", asText, asJSON)
	flags := cmd.Flags()
	flags.BoolVar(&b.New, "new", false, "a batch begins")
	flags.StringVar(&b.Formula, "formula", "", "`name` of the formula, in a file of several")
	flags.StringVar(&b.Size, "size", "", "`size` of the batch that begins: \"36 pieces\"")
	flags.StringVar(&b.Room, "room", "", "`temperature` of the room as it begins: 23C")
	flags.IntVar(&b.Step, "step", 0, "`number` of the step, as on the sheet")
	flags.StringVar(&b.Read, "read", "", "what was read: \"11 C after 6 h\", \"2 x\", "+
		"\"94 C core\"")
	flags.StringVar(&b.Note, "note", "", "words of your own")
	flags.StringArrayVar(&marks, "mark", nil,
		"a `mark` from 1 to 5: 4, or crumb=4; may be repeated")
	flags.StringVar(&b.Date, "date", "", "`day` of it, if not today: 2026-11-26")
	return cmd
}

// logInput gives the formula file that a log stands beside: a file of
// its own, and no folder.
func logInput(path string) (engine.Input, error) {
	info, err := os.Stat(path)
	switch {
	case path == "-":
		return engine.Input{}, errors.New("a log stands beside a file, and standard input has " +
			"none; name the file")
	case err != nil:
		return engine.Input{}, fmt.Errorf("%s: no such file; name a formula file", path)
	case info.IsDir():
		return engine.Input{}, fmt.Errorf("%s is a folder; name one formula file", path)
	}
	path = filepath.Clean(path)
	return engine.Input{Name: filepath.ToSlash(path), Path: path, Dir: filepath.Dir(path)}, nil
}

// writeLog adds to the log and says what was added.
func writeLog(cmd *cobra.Command, e *engine.Engine, in engine.Input, b engine.Bench,
	as string) error {
	logged, res, err := e.Log(in, b)
	switch {
	case err != nil:
		return err
	case len(res.Problems) > 0:
		defer cmd.PrintErrln("forebake: nothing was written")
		return complain(cmd, res.Problems)
	}
	if err := writeFiles(logged); err != nil {
		return err
	}
	if as == asJSON {
		return page.LoggedJSON(cmd.OutOrStdout(), logged.Path, logged.Says)
	}
	return page.Logged(cmd.OutOrStdout(), logged.Path, logged.Says)
}

// printBatches prints batches of a formula file side by side.
func printBatches(cmd *cobra.Command, e *engine.Engine, in engine.Input, numbers []int,
	as string) error {
	list, res, err := e.Batches(in, numbers)
	switch {
	case err != nil:
		return err
	case len(res.Problems) > 0:
		return complain(cmd, res.Problems)
	}
	out := cmd.OutOrStdout()
	if as == asJSON {
		return page.BatchesJSON(out, &res.Run, list)
	}
	return page.Batches(out, &res.Run, list, looks(cmd, out))
}
